"""Notices whether a document was changed since one looked last."""

from __future__ import annotations

from typing import Any

import FreeCAD as App


class Changes:
    """``take`` says whether anything of a document changed since the last time, from undo steps to labels."""

    def __init__(self, doc: Any) -> None:
        self._doc = doc
        self._changed = True
        self._on = True
        App.addDocumentObserver(self)

    def take(self) -> bool:
        was, self._changed = self._changed, False
        return was

    def close(self) -> None:
        """It may be called again."""
        if self._on:
            self._on = False
            App.removeDocumentObserver(self)

    def _note(self, doc: Any) -> None:
        if doc == self._doc:
            self._changed = True

    def slotCreatedObject(self, obj: Any) -> None:
        self._note(obj.Document)

    def slotDeletedObject(self, obj: Any) -> None:
        self._note(obj.Document)

    def slotChangedObject(self, obj: Any, prop: str) -> None:
        self._note(obj.Document)

    def slotUndoDocument(self, doc: Any) -> None:
        self._note(doc)

    def slotRedoDocument(self, doc: Any) -> None:
        self._note(doc)
