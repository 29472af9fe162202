"""Gives our objects their Python side back after a file was opened.

The host restores a proxy by itself only while the file still names its class. A host without the add-on drops
the name when it saves; then the marker property is all that is left, and this observer goes by it. No version
tells Python when a document has been read, but every one ends with making a document active.
"""

from __future__ import annotations

from typing import Any

import FreeCAD as App


class Restorer:
    """Document observer: looks at each document once it becomes active."""

    def slotActivateDocument(self, doc: Any) -> None:
        for each in App.listDocuments().values():  # files that came along as links were not made active
            restore(each)


def restore(doc: Any) -> int:
    """Re-attach and migrate our objects in a document; how many were looked at."""
    candidates = doc.findObjects("App::FeaturePython")
    ours = [obj for obj in candidates if "HeartsideKind" in obj.PropertiesList]
    if ours:
        from workbench_pkg.objects import study

        for obj in ours:
            if obj.HeartsideKind == study.KIND:
                study.attach(obj)
                study.migrate(obj)
    return len(ours)


_observer: Restorer | None = None


def watch() -> None:
    """Start watching; once a session."""
    global _observer
    if _observer is None:
        _observer = Restorer()
        App.addDocumentObserver(_observer)
