"""The measurements a document's study holds: as JSON for us, and as plain lines for whoever looks."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from workbench_pkg.host.marks import add_property, explained
from workbench_pkg.objects.study import ensure_study, get_text

MEASURED, LISTED = "HeartsideMeasured", "HeartsideMeasuredList"


def kept_rows(doc: Any) -> str:
    """The JSON text; "" where nothing was measured."""
    return get_text(doc, MEASURED)


def keep_rows(doc: Any, text: str | None, lines: Sequence[str]) -> None:
    """Note them in place of what was there; None takes them away. The caller opens the transaction."""
    study = ensure_study(doc)
    if text is None:
        for name in (MEASURED, LISTED):
            if name in study.PropertiesList:
                study.removeProperty(name)
        return
    add_property(study, "App::PropertyString", MEASURED, explained("Measurements taken later, as JSON"))
    add_property(study, "App::PropertyStringList", LISTED, explained("The same measurements, to be read"))
    setattr(study, MEASURED, text)
    setattr(study, LISTED, list(lines))
