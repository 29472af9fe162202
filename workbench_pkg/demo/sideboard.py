"""A sideboard in black cherry: dovetailed carcase, an inset frame-and-panel door, three drawers, a base moulding.

Invented for the demo; see ``faults`` for what is wrong with it. In the sideboard's frame x runs to the right
along its front, y = 0 is the front and +y the depth, z = 0 is the underside of the carcase.
"""

from __future__ import annotations

from typing import Any

from workbench_pkg.demo.carcase import (
    BAY_HEIGHT,
    DRAWER_BAY,
    DRAWER_OPENING,
    RAIL_THICKNESS,
    THICKNESS,
    WIDTH,
    carcase,
)
from workbench_pkg.demo.colours import paint_parts
from workbench_pkg.demo.door import door
from workbench_pkg.demo.drawer import SIDE_GAP, drawer
from workbench_pkg.demo.fittings import knob
from workbench_pkg.demo.foot import FOOT_HEIGHT, imported_foot
from workbench_pkg.demo.moulding import base_moulding
from workbench_pkg.demo.shapes import at, container, link

DRAWERS = 3
FEET_X, FEET_Y = (60.0, WIDTH - 60.0), (50.0, 360.0)


def sideboard(doc: Any, repaired: bool = False) -> Any:
    """Build the sideboard in an open document; returns its root container."""
    root = container(doc, "Sideboard", at(z=FOOT_HEIGHT))
    feet_places = [(x, y) for y in FEET_Y for x in FEET_X]
    case = container(root, "Carcase")
    carcase(case, feet_places, repaired)
    base_moulding(case, repaired)
    door(root, case, repaired)
    _drawers(root, repaired)
    _feet(root, feet_places)
    doc.recompute()
    paint_parts(doc)
    return root


def _drawers(root: Any, repaired: bool) -> None:
    x = DRAWER_BAY[0] + SIDE_GAP
    step = DRAWER_OPENING + RAIL_THICKNESS
    heights = [THICKNESS + BAY_HEIGHT - DRAWER_OPENING - i * step for i in range(DRAWERS)]
    first = drawer(root, "Drawer 1", at(x, 0, heights[0]), knob, repaired)
    for number, z in enumerate(heights[1:], start=2):
        link(root, f"Drawer {number}", first, at(x, 0, z))


def _feet(root: Any, places: list[tuple[float, float]]) -> None:
    foot = imported_foot(root, "Foot 1")
    foot.Placement = at(*places[0])
    for number, (x, y) in enumerate(places[1:], start=2):
        link(root, f"Foot {number}", foot, at(x, y))
