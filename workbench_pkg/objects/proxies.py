"""The classes that documents name. They stay in this file, under these names, for ever.

A document stores module and class name of each object's proxy; moving one would orphan every file made before.
No proxy holds data: everything is in plain properties, so that a file opens whole without the add-on.
"""

from __future__ import annotations

from typing import Any


class _Stateless:
    """A proxy of which only the class is stored; 0.20 asks for the state by one name, 1.0 and later by another."""

    def dumps(self) -> None:
        return None

    def loads(self, state: object) -> None:
        return None

    def __getstate__(self) -> None:
        return None

    def __setstate__(self, state: object) -> None:
        return None


class Study(_Stateless):
    """What a document is studied with: the year of air, the day, the moisture of today."""

    def __init__(self, obj: Any) -> None:
        obj.Proxy = self

    def execute(self, obj: Any) -> None:
        """Nothing: a study is worked out on command, so that recomputing the model costs nothing."""

    def onDocumentRestored(self, obj: Any) -> None:
        """The host has read the object back: bring it up to the form that this release writes."""
        from workbench_pkg.objects.restoring import bring_up

        bring_up(obj)


class StudyView(_Stateless):
    """How a study stands in the tree. It has nothing of its own in the 3D view."""

    def __init__(self, view_object: Any) -> None:
        view_object.Proxy = self

    def attach(self, view_object: Any) -> None:
        from pivy import coin  # the host's own; only in the window

        self.Object = view_object.Object
        # Something empty to show: the tree greys what shows nothing.
        view_object.addDisplayMode(coin.SoGroup(), "Standard")

    def getIcon(self) -> str:
        from workbench_pkg.views import study_view

        return study_view.tree_icon(getattr(self, "Object", None))

    def claimChildren(self) -> list[Any]:
        from workbench_pkg.views import study_view

        return study_view.children(self.Object) if hasattr(self, "Object") else []

    def getDisplayModes(self, view_object: Any) -> list[str]:
        return ["Standard"]

    def getDefaultDisplayMode(self) -> str:
        return "Standard"

    def setDisplayMode(self, mode: str) -> str:
        return mode

    def doubleClicked(self, view_object: Any) -> bool:
        from workbench_pkg.views import study_view

        study_view.open_panel(view_object.Object)
        return True
