"""Colours of the demo's woods. Only the real window keeps colours: a headless save drops them."""

from __future__ import annotations

from typing import Any

import FreeCAD as App

COLOURS = {
    "white oak": (0.80, 0.66, 0.46),
    "black cherry": (0.70, 0.42, 0.27),
    "black walnut": (0.38, 0.26, 0.19),
    "hard maple": (0.91, 0.82, 0.67),
    "yellow-poplar": (0.82, 0.82, 0.62),
    "plywood": (0.87, 0.76, 0.58),
    "brass": (0.80, 0.66, 0.30),
}
UNTAGGED = (0.62, 0.64, 0.68)


def paint(obj: Any, species: str, shade: float = 0.0) -> None:
    """Give an object its wood's colour, a little lighter or darker by `shade`; nothing without a window."""
    view = getattr(obj, "ViewObject", None)
    if not App.GuiUp or view is None or not hasattr(view, "ShapeColor"):
        return
    colour = COLOURS.get(species, UNTAGGED)
    # Three numbers: the meaning of a fourth differs between versions.
    view.ShapeColor = tuple(min(1.0, max(0.0, channel + shade)) for channel in colour)
