"""What a study shows in the tree: our sign, the answers below it, and its panel on a double click."""

from __future__ import annotations

from typing import Any

import FreeCADGui as Gui

from workbench_pkg.objects.results import results_of
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.stale import is_stale


def tree_icon(obj: Any) -> str:
    """Our sign; with a mark on it while the answer below no longer fits the model."""
    return icon("study_stale" if obj is not None and is_stale(obj.Document) else "study")


def children(obj: Any) -> list[Any]:
    """The groups of answers of the study's document."""
    return results_of(obj.Document)


def open_panel(obj: Any) -> None:
    """The year panel of the study's document, unless another panel is open."""
    if not Gui.Control.activeDialog():
        from workbench_pkg.panels.year_panel import YearPanel

        Gui.Control.showDialog(YearPanel(obj.Document))
