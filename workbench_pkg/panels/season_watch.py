"""Tells a panel what happens to its document: closed, a part gone, a part changed."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD as App

from workbench_pkg.host.qt import QtCore

TELLING = ("Shape", "Placement", "LinkPlacement", "LinkedObject", "ElementCount", "PlacementList")


class SeasonWatch:
    """A document observer until closed. It answers after the host has finished what it was doing."""

    def __init__(self, name: str, gone: Callable[[], object], changed: Callable[[str], object]) -> None:
        """name : of the document. changed : called with the name of an object that was deleted, else ""."""
        self.name, self._gone, self._changed = name, gone, changed
        self._on = True
        App.addDocumentObserver(self)

    def close(self) -> None:
        if self._on:
            self._on = False
            App.removeDocumentObserver(self)

    def _later(self, what: Callable[[], object]) -> None:
        QtCore.QTimer.singleShot(0, lambda: what() if self._on else None)

    def slotDeletedDocument(self, doc: Any) -> None:
        if doc.Name == self.name:
            self._later(self._gone)

    def slotDeletedObject(self, obj: Any) -> None:
        if obj.Document.Name == self.name:
            name = obj.Name
            self._later(lambda: self._changed(name))

    def slotChangedObject(self, obj: Any, prop: str) -> None:
        ours = obj.Document is not None and obj.Document.Name == self.name
        if ours and (prop in TELLING or prop.startswith("Heartside")):
            self._later(lambda: self._changed(""))
