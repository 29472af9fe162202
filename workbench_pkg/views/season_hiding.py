"""Hides objects in the 3D view without a word to the document: a node that draws nothing, put in and taken out.

Properties, undo steps and the saved file know nothing of it, and what the user hides or shows meanwhile stays so.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from pivy import coin

from workbench_pkg.host.leaf import AS_OBJECT, Leaf

_NAME = "HeartsideUnseen"


class Unseen:
    """The objects that are hidden now."""

    def __init__(self) -> None:
        self._put: list[tuple[Any, Any]] = []

    def hide(self, leaves: Iterable[Leaf]) -> None:
        """Hide what draws these leaves."""
        for obj in {id(o): o for o in map(drawn_by, leaves)}.values():
            root = getattr(obj.ViewObject, "RootNode", None)
            if root is None:
                continue
            style = coin.SoDrawStyle()
            style.setName(_NAME)
            style.style = coin.SoDrawStyle.INVISIBLE
            style.setOverride(True)
            root.insertChild(style, 0)
            self._put.append((root, style))

    def restore(self) -> None:
        """Show all again."""
        for root, style in self._put:
            if root.findChild(style) >= 0:
                root.removeChild(style)
        self._put.clear()

    @property
    def count(self) -> int:
        return len(self._put)


def drawn_by(leaf: Leaf) -> Any:
    """The object whose scene draws a leaf: the outermost link on its way, else the object that has its shape."""
    path = ""
    for name in ("", *leaf.sub.split(".")[:-1]):
        path += f"{name}." if name else ""
        obj = leaf.root.getSubObject(path, retType=AS_OBJECT) if path else leaf.root
        if obj is not None and obj.hasExtension("App::LinkBaseExtension") and obj.ViewObject is not None:
            return obj
    return leaf.source
