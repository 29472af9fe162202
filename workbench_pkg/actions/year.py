"""The year of air that a document's piece lives in."""

from __future__ import annotations

from typing import Any

from workbench_pkg.actions.settings import Settings, air_from_text, settings_from_texts
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.objects.study import DATE, YEAR, ensure_study, get_text, today_moisture


def set_year(doc: Any, name: str) -> None:
    """Keep a year in the document: the name of a year or a place of ours, or the path of a file
    of twelve months or of a logger.

    Raises UnknownName or InputError, and changes nothing, where there is no such year.
    """
    air_from_text(name)
    with one_step(doc, "Heartside: set the year"):
        ensure_study(doc).HeartsideYear = name


def year_of(doc: Any) -> str:
    """What ``set_year`` kept, or an empty text."""
    return get_text(doc, YEAR)


def settings_of(doc: Any) -> Settings:
    """What the document's study asks to be worked out with; what it leaves open is the usual."""
    return settings_from_texts(get_text(doc, YEAR) or None, get_text(doc, DATE) or None, today_moisture(doc))
