"""Words for the axes of a board's own frame: how long it is that way, and where that points in the room."""

from __future__ import annotations

import FreeCAD as App

from workbench_pkg.host.leaves import Leaf
from workbench_pkg.host.units import length_text

translate = App.Qt.translate

AXES = {
    "x": (1.0, 0.0, 0.0),
    "y": (0.0, 1.0, 0.0),
    "z": (0.0, 0.0, 1.0),
    "-x": (-1.0, 0.0, 0.0),
    "-y": (0.0, -1.0, 0.0),
    "-z": (0.0, 0.0, -1.0),
}


def along(leaf: Leaf | None) -> list[tuple[str, str]]:
    """(words, axis) for the three directions that grain may run in."""
    if leaf is None:
        return [(axis, axis) for axis in "xyz"]
    box = leaf.local_solid().BoundBox
    sizes = {"x": box.XLength, "y": box.YLength, "z": box.ZLength}
    order = sorted(sizes, key=lambda axis: -sizes[axis])
    return [(f"{axis}: {length_text(sizes[axis])}", axis) for axis in order]


def outward(leaf: Leaf | None) -> list[tuple[str, str]]:
    """(words, axis) for the six sides of a board."""
    if leaf is None:
        return [(axis, axis) for axis in AXES]
    return [(f"{axis}: {_pointing(leaf, axis)}", axis) for axis in AXES]


def _pointing(leaf: Leaf, axis: str) -> str:
    base = leaf.matrix.multVec(App.Vector())
    v = leaf.matrix.multVec(App.Vector(*AXES[axis])) - base
    sides = {
        translate("Heartside", "to the right"): v.x,
        translate("Heartside", "to the left"): -v.x,
        translate("Heartside", "to the back"): v.y,
        translate("Heartside", "to the front"): -v.y,
        translate("Heartside", "up"): v.z,
        translate("Heartside", "down"): -v.z,
    }
    name = max(sides, key=lambda side: sides[side])
    straight = sides[name] > 0.99 * v.Length
    return name if straight else translate("Heartside", "about {side}").format(side=name)
