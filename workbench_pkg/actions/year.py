"""The year of air that a document's piece lives in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from movement_core.air.bounds import within
from movement_core.piece.tags import GREEN
from workbench_pkg.actions.settings import LoggerAnswers, Settings, air_from_text, settings_from_texts
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.preferences import usual_year
from workbench_pkg.objects.study import (
    DATE,
    YEAR,
    asked_of,
    ensure_study,
    get_text,
    set_asked,
    set_today_moisture,
    today_moisture,
)


def set_year(doc: Any, name: str, answers: Mapping[str, Any] | None = None) -> None:
    """Keep a year in the document: the name of a year or a place of ours, or the path of a file
    of twelve months or of a logger.

    ``answers``: what a logger's file leaves open, by the names of ``LoggerAnswers``.

    Raises UnknownName or InputError, and changes nothing, where there is no such year.
    """
    air_from_text(name, answers=LoggerAnswers(**answers) if answers else None)
    with one_step(doc, "Heartside: set the year"):
        study = ensure_study(doc)
        kept = {word: said for word, said in asked_of(doc).items() if word in ("shop", "built_on")}
        study.HeartsideYear = name
        # Rooms and answers belonged to the air before.
        set_asked(study, {**kept, **({"answers": dict(answers)} if answers else {})})


def keep_today(doc: Any, date: str, moisture: float | None) -> None:
    """Keep the day that the piece is worked out for, and the moisture of its wood on it.

    Parameters
    ----------
    date : YYYY-MM-DD; "" is the day on which it is asked. moisture : percent; None: in step with the year's air.

    Raises
    ------
    InputError : no date, or a moisture that furniture wood does not have; then nothing is changed.
    """
    settings_from_texts(today=date)
    if moisture is not None:
        within(moisture, "moisture today", 0.0, GREEN, "%")
    with one_step(doc, "Heartside: set today"):
        study = ensure_study(doc)
        study.HeartsideDate = date
        set_today_moisture(study, moisture)


def year_of(doc: Any) -> str:
    """What ``set_year`` kept, or an empty text."""
    return get_text(doc, YEAR)


def settings_of(doc: Any) -> Settings:
    """What the document's study asks to be worked out with; what it leaves open is what this user prefers, or the
    usual."""
    more = asked_of(doc)
    if "answers" in more:
        more["answers"] = LoggerAnswers(**more["answers"])
    year, date = get_text(doc, YEAR) or usual_year() or None, get_text(doc, DATE) or None
    return settings_from_texts(year, date, today_moisture(doc), **more)


def keep_settings(doc: Any, settings: Settings) -> None:
    """Note in the document's study what it was asked with. The caller opens the transaction."""
    asked = dict(settings.asked)
    if not asked:
        return
    study = ensure_study(doc)
    study.HeartsideYear = asked.pop("year", "")
    study.HeartsideDate = asked.pop("today", "")
    set_today_moisture(study, asked.pop("today_mc", None))
    set_asked(study, asked)
