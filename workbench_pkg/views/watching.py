"""Notices which documents have labels and keeps those arranged. Costs nothing while there are none.

Imported at the start of the window, so it imports nothing but the host; the rest comes with the first label.
"""

from __future__ import annotations

from typing import Any

import FreeCAD as App

_LABEL_TYPE = "App::AnnotationLabel"
_LOOK_MS = 300

_watchers: list[Any] = []
_labels: dict[str, Any] = {}  # document's name → Labels
_waiting: set[str] = set()
_timer: Any = None


class _Quiet:
    """Always there: hears when a label is made and when a document comes up."""

    def slotCreatedObject(self, obj: Any) -> None:
        if obj.TypeId == _LABEL_TYPE:
            _read_soon(obj.Document.Name)

    def slotActivateDocument(self, doc: Any) -> None:
        documents: dict[str, Any] = App.listDocuments()
        for name, each in documents.items():
            if name not in _labels and each.findObjects(_LABEL_TYPE):
                _read_soon(name)

    def slotDeletedDocument(self, doc: Any) -> None:
        _forget(doc.Name)


class _Busy:
    """There while a document has labels: hears what happens to them."""

    def slotChangedObject(self, obj: Any, prop: str) -> None:
        if obj.TypeId == _LABEL_TYPE:
            _read_soon(obj.Document.Name)

    def slotDeletedObject(self, obj: Any) -> None:
        if obj.TypeId == _LABEL_TYPE:
            _read_soon(obj.Document.Name)


_quiet, _busy = _Quiet(), _Busy()


def watch() -> None:
    """Start watching; once a session."""
    if _quiet not in _watchers:
        App.addDocumentObserver(_quiet)
        _watchers.append(_quiet)


def labels_of(doc: Any) -> Any | None:
    """The arranged labels of a document, or None where it has none."""
    return _labels.get(doc.Name)


def _read_soon(name: str) -> None:
    """Read the document's labels once the command that made or changed them has ended."""
    if name not in _waiting:
        from workbench_pkg.host.qt import QtCore

        _waiting.add(name)
        QtCore.QTimer.singleShot(0, lambda: _read(name))


def _read(name: str) -> None:
    _waiting.discard(name)
    if name not in App.listDocuments():
        _forget(name)
        return
    if name not in _labels:
        from workbench_pkg.views.labels import Labels

        _labels[name] = Labels(name)
    if not _labels[name].read():
        _forget(name)
    _follow()


def _forget(name: str) -> None:
    gone = _labels.pop(name, None)
    if gone is not None:
        gone.close()
        _follow()


def _follow() -> None:
    """Run the slow look and the busy observer exactly while there are labels."""
    global _timer
    if _labels and _busy not in _watchers:
        from workbench_pkg.host.qt import QtCore

        App.addDocumentObserver(_busy)
        _watchers.append(_busy)
        if _timer is None:
            _timer = QtCore.QTimer()
            _timer.timeout.connect(_look)
        _timer.start(_LOOK_MS)
    elif not _labels and _busy in _watchers:
        App.removeDocumentObserver(_busy)
        _watchers.remove(_busy)
        _timer.stop()


def _look() -> None:
    for labels in list(_labels.values()):
        labels.look()
