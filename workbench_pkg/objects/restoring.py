"""Gives our objects their Python side back after a file was opened, and brings them up to the form of this release.

The host restores a proxy by itself only while the file still names its class. A host without the add-on drops
the name when it saves; then the marker property is all that is left, and this observer goes by it. No version
tells Python when a document has been read, but every one ends with making a document active.

Whatever is wrong with one object is told in words and leaves the others alone: what is raised here would stand as a
traceback in the host's report.
"""

from __future__ import annotations

from typing import Any

import FreeCAD as App

_TYPES = ("App::FeaturePython", "App::DocumentObjectGroup")  # studies; groups of answers, papers, hardware

_told: set[tuple[str, str]] = set()  # names of document and object that something was told of


class Restorer:
    """Document observer: looks at each document once it becomes active."""

    def slotActivateDocument(self, doc: Any) -> None:
        for each in App.listDocuments().values():  # files that came along as links were not made active
            restore(each)

    def slotDeletedDocument(self, doc: Any) -> None:
        _told.difference_update([told for told in _told if told[0] == doc.Name])


def restore(doc: Any) -> int:
    """Re-attach and migrate our objects in a document; how many were looked at."""
    candidates = [obj for kind in _TYPES for obj in doc.findObjects(kind)]
    ours = [obj for obj in candidates if "HeartsideKind" in obj.PropertiesList]
    for obj in ours:
        bring_up(obj)
    return len(ours)


def bring_up(obj: Any) -> None:
    """Re-attach and migrate one object of ours. What cannot be is left as it is and told, once while it is open."""
    from movement_core.errors import InputError
    from movement_core.wording import say
    from workbench_pkg.host.marks import SCHEMA, refuse_newer
    from workbench_pkg.objects import study

    unmarked = SCHEMA not in obj.PropertiesList
    try:
        refuse_newer([obj])
        if obj.HeartsideKind == study.KIND:
            study.attach(obj)
            study.migrate(obj)
        elif obj.isDerivedFrom("App::DocumentObjectGroup"):
            _migrate_group(obj)
    except InputError as error:
        _tell(obj, str(error))
    except Exception as error:  # the host's own have no common base
        reason = " ".join(f"{type(error).__name__}: {error}".split())
        _tell(obj, say("{label}: it was not brought up to this release ({why})", label=obj.Label, why=reason))
    else:
        if unmarked:
            _tell(obj, say("{label}: it did not say its form, and is taken for the first", label=obj.Label))


def _migrate_group(group: Any) -> None:
    """Bring a group and what is of ours in it up to the form of this release: only the number differs."""
    from workbench_pkg.host.marks import CURRENT_SCHEMA, kind_of, mark, schema_of

    for obj in (group, *getattr(group, "Group", ())):
        if kind_of(obj) and schema_of(obj) < CURRENT_SCHEMA:
            mark(obj, kind_of(obj))


def _tell(obj: Any, text: str) -> None:
    if (obj.Document.Name, obj.Name) not in _told:
        _told.add((obj.Document.Name, obj.Name))
        App.Console.PrintWarning(f"Heartside: {text}\n")


_observer: Restorer | None = None


def watch() -> None:
    """Start watching; once a session."""
    global _observer
    if _observer is None:
        _observer = Restorer()
        App.addDocumentObserver(_observer)
