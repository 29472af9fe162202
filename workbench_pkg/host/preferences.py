"""What this user prefers. It counts in the window only: the command line gives everybody the same answer."""

from __future__ import annotations

from typing import Any

import FreeCAD as App

PATH = "User parameter:BaseApp/Preferences/Mod/Heartside"
YEAR, FLATNESS, LABELS = "UsualYear", "Flatness", "ShowLabels"


def _group() -> Any:
    return App.ParamGet(PATH)


def usual_year() -> str:
    """Name of the year of air where a document says none; "" is the one that everybody has."""
    return str(_group().GetString(YEAR, "")) if App.GuiUp else ""


def usual_flatness_mm() -> float | None:
    """The most that a top may be out of flat where a document says nothing; None is the usual."""
    value = float(_group().GetFloat(FLATNESS, 0.0)) if App.GuiUp else 0.0
    return value if value > 0.0 else None


def shows_labels() -> bool:
    """Whether the labels of an answer are to be seen at once."""
    return bool(_group().GetBool(LABELS, True)) if App.GuiUp else True


def keep(year: str, flatness_mm: float | None, labels: bool) -> None:
    """Keep all of it; "" and None are the usual."""
    group = _group()
    group.SetString(YEAR, year)
    group.SetFloat(FLATNESS, flatness_mm or 0.0)
    group.SetBool(LABELS, labels)
