"""Notices when an answer no longer fits its document: the model, its tags or what was asked have changed since.

The document itself is not written to for that. Costs nothing while no document has an answer. Imported at the start
of the window, so it imports nothing but the host.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

import FreeCAD as App

SETTLED_MS = 500  # looked at once nothing has changed for so long
AFFORDABLE_S = 0.3  # where looking takes longer, a change of the document itself counts as one of the answer
TREE = "tree"
_GROUP_TYPE = "App::DocumentObjectGroup"
_MATTERS = {
    "Shape", "Placement", "Visibility", "Label", "Label2", "Description", "Group", "LinkedObject",
    "LinkTransform", "LinkPlacement", "ElementCount", "ElementList", "PlacementList", "VisibilityList",
    "Scale", "ScaleVector", "ScaleList",
}  # fmt: skip


@dataclass
class _Followed:
    """An answer that somebody shows. ``stale`` None: not looked at yet."""

    fingerprint: str
    changed: Callable[[bool], object]
    stale: bool | None = None


_followed: dict[tuple[str, str], _Followed] = {}  # document's name, who shows the answer
_touched: set[str] = set()  # documents to look at, "" for one that others may link to
_cost_s: dict[str, float] = {}
_watchers: list[Any] = []
_timer: Any = None


class _Quiet:
    """Always there: hears when a group is made, which an answer is, and when a document comes up."""

    def slotCreatedObject(self, obj: Any) -> None:
        if obj.TypeId == _GROUP_TYPE:
            _soon(obj.Document.Name)

    def slotActivateDocument(self, doc: Any) -> None:
        documents: dict[str, Any] = App.listDocuments()
        for name, each in documents.items():
            if (name, TREE) not in _followed and each.findObjects(_GROUP_TYPE):
                _soon(name)

    def slotDeletedDocument(self, doc: Any) -> None:
        for name, who in list(_followed):
            if name == doc.Name:
                forget(name, who)


class _Busy:
    """There while an answer is shown: hears what may make it stale."""

    def slotChangedObject(self, obj: Any, prop: str) -> None:
        if prop in _MATTERS or prop.startswith("Heartside"):
            self._touch(obj)

    def slotDeletedObject(self, obj: Any) -> None:
        self._touch(obj)

    def slotUndoDocument(self, doc: Any) -> None:
        _soon(doc.Name)

    slotRedoDocument = slotUndoDocument

    def _touch(self, obj: Any) -> None:
        kind = getattr(obj, "HeartsideKind", "")
        if kind != "label":
            name = obj.Document.Name
            _soon(name if any(name == known for known, _ in _followed) else "")


_quiet, _busy = _Quiet(), _Busy()


def watch() -> None:
    """Start watching; once a session."""
    if _quiet not in _watchers:
        App.addDocumentObserver(_quiet)
        _watchers.append(_quiet)


def is_stale(doc: Any) -> bool:
    """Whether the answer that a document holds is known to be stale."""
    found = _followed.get((doc.Name, TREE))
    return found is not None and found.stale is True


def follow(doc: Any, who: str, fingerprint: str, changed: Callable[[bool], object]) -> None:
    """Call back with True when an answer of this fingerprint becomes stale, with False when it fits again."""
    _followed[doc.Name, who] = _Followed(fingerprint, changed)
    _run_busy()
    _soon(doc.Name)


def forget(name: str, who: str) -> None:
    """Follow an answer no longer."""
    _followed.pop((name, who), None)
    _run_busy()


def _soon(name: str) -> None:
    """Look at a document once it has settled."""
    global _timer
    if _timer is None:
        from workbench_pkg.host.qt import QtCore

        _timer = QtCore.QTimer()
        _timer.setSingleShot(True)
        _timer.timeout.connect(_look)
    _touched.add(name)
    _timer.start(SETTLED_MS)


def _look() -> None:
    names = set(_touched)
    _touched.clear()
    if "" in names:
        names |= {name for name, _ in _followed if _cost_s.get(name, 0.0) <= AFFORDABLE_S}
    documents: dict[str, Any] = App.listDocuments()
    for name in names & set(documents):
        _find_answer(documents[name])
        shown = [each for (known, _), each in _followed.items() if known == name]
        if shown:
            _judge(documents[name], shown)


def _find_answer(doc: Any) -> None:
    """Follow the answer that a document holds, for the tree; or forget it where it is gone."""
    from workbench_pkg.objects.results import noted_fingerprint
    from workbench_pkg.objects.study import find_study

    noted = noted_fingerprint(doc)
    known = _followed.get((doc.Name, TREE))
    if noted is None:
        if known is not None:
            forget(doc.Name, TREE)
            _show_in_tree(find_study(doc))
    elif known is None or known.fingerprint != noted:
        name = doc.Name

        def changed(stale: bool) -> None:
            _show_in_tree(find_study(App.getDocument(name)))

        _followed[name, TREE] = _Followed(noted, changed)
        _run_busy()


def _judge(doc: Any, shown: list[_Followed]) -> None:
    now = None
    if _cost_s.get(doc.Name, 0.0) <= AFFORDABLE_S or any(each.stale is None for each in shown):
        from workbench_pkg.actions.fingerprint import fingerprint

        began = time.perf_counter()
        try:
            now = fingerprint(doc)
        except Exception as error:  # a document in the middle of something: it will settle again
            App.Console.PrintLog(f"Heartside: the document could not be looked at: {error}\n")
            return
        _cost_s[doc.Name] = time.perf_counter() - began
    for each in shown:
        stale = each.fingerprint != now
        if stale != bool(each.stale):
            each.stale = stale
            each.changed(stale)
        each.stale = stale


def _show_in_tree(study: Any) -> None:
    if study is not None and study.ViewObject is not None:
        study.ViewObject.signalChangeIcon()


def _run_busy() -> None:
    """Have the busy observer exactly while an answer is shown."""
    if _followed and _busy not in _watchers:
        App.addDocumentObserver(_busy)
        _watchers.append(_busy)
    elif not _followed and _busy in _watchers:
        App.removeDocumentObserver(_busy)
        _watchers.remove(_busy)
