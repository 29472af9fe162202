"""Which boards the selection stands for, and what they say already."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.piece.tag_sources import without_tag
from workbench_pkg.actions.copying import said_of
from workbench_pkg.host.leaves import Leaf, read_leaves
from workbench_pkg.host.qt import QtCore


@dataclass(frozen=True, eq=False)
class Chosen:
    """The boards of the selection in one document, each once, in the order of the tree."""

    leaves: tuple[Leaf, ...]

    def names(self) -> list[str]:
        return [without_tag(leaf.name) for leaf in self.leaves]

    def targets(self) -> list[tuple[Any, int | None]]:
        """What to tag: objects, with the number of the element where one of a link array is meant."""
        found: list[tuple[Any, int | None]] = []
        for leaf in self.leaves:
            if (leaf.owner, leaf.element) not in found:
                found.append((leaf.owner, leaf.element))
        return found

    def said(self) -> list[dict[str, object]]:
        """What each board says by its properties, and where they are silent by its label, by word."""
        return [said_of(leaf) for leaf in self.leaves]


def chosen_boards(doc: Any | None = None) -> Chosen:
    """The boards that are selected in a document, the active one when None."""
    doc = doc or App.ActiveDocument
    if doc is None:
        return Chosen(())
    picked = [s for s in Gui.Selection.getSelectionEx(doc.Name, 0) if s.Object is not None]
    if not picked:
        return Chosen(())
    reading = read_leaves(doc, hidden=True)
    found: dict[str, Leaf] = {}
    for one in picked:
        for sub in one.SubElementNames or ("",):
            for leaf in reading.find(one.Object, sub):
                found.setdefault(leaf.key, leaf)
    return Chosen(tuple(leaf for leaf in reading.leaves if leaf.key in found))


class SelectionWatch:
    """Calls back, once for many changes at a time, when the selection changes; until closed."""

    def __init__(self, changed: Any) -> None:
        self._timer = QtCore.QTimer()
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(changed)
        self._on = True
        Gui.Selection.addObserver(self)

    def close(self) -> None:
        """It may be called again."""
        if self._on:
            self._on = False
            self._timer.stop()
            Gui.Selection.removeObserver(self)

    def _soon(self) -> None:
        self._timer.start(0)

    def addSelection(self, *_: Any) -> None:
        self._soon()

    def removeSelection(self, *_: Any) -> None:
        self._soon()

    def setSelection(self, *_: Any) -> None:
        self._soon()

    def clearSelection(self, *_: Any) -> None:
        self._soon()
