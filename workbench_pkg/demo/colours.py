"""Colours of the demo's woods."""

from __future__ import annotations

from typing import Any

import FreeCAD as App

from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.tagging import read_tags

COLOURS = {
    "white oak": (0.80, 0.66, 0.46),
    "black cherry": (0.72, 0.45, 0.29),
    "black walnut": (0.38, 0.26, 0.19),
    "hard maple": (0.91, 0.82, 0.67),
    "yellow-poplar": (0.82, 0.82, 0.62),
    "plywood": (0.87, 0.76, 0.58),
    "brass": (0.80, 0.66, 0.30),
}
UNTAGGED = (0.62, 0.64, 0.68)
SHADES = (0.0, 0.03, -0.025, 0.015, -0.01, 0.04, -0.035)  # no two boards of a tree are quite alike


def colours_of(doc: Any) -> dict[str, tuple[float, float, float]]:
    """The colour of each object that a part of a recomputed document is drawn by, by name."""
    colours = {}
    for number, leaf in enumerate(read_leaves(doc).leaves):
        shade = SHADES[number % len(SHADES)]
        red, green, blue = (min(1.0, max(0.0, part + shade)) for part in _colour(leaf))
        drawn = [leaf.source, *getattr(leaf.source, "Group", [])]  # a body is drawn by its features
        colours.update({obj.Name: (red, green, blue) for obj in drawn if hasattr(obj, "Shape")})
    return colours


def paint_parts(doc: Any) -> None:
    """Give every part the colour of its wood; does nothing without a window."""
    if not App.GuiUp:
        return
    for name, colour in colours_of(doc).items():
        view = doc.getObject(name).ViewObject
        if hasattr(view, "ShapeColor"):
            view.ShapeColor = colour  # three numbers: the meaning of a fourth differs between versions


def _colour(leaf: Any) -> tuple[float, float, float]:
    tags = read_tags(leaf)
    told = " ".join([str(tags.properties.get("HeartsideSpecies", "")), *tags.texts])
    return next((colour for name, colour in COLOURS.items() if name in told), UNTAGGED)
