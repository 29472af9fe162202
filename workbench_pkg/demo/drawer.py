"""One drawer of the sideboard: front lap-dovetailed to the sides, back housed in them, a solid bottom in grooves.

In the drawer's frame x = 0 is its left side, y = 0 its face and z = 0 where its sides run.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from workbench_pkg.demo.carcase import DRAWER_BAY, FINISH, SPECIES
from workbench_pkg.demo.dovetails import tail_outlines
from workbench_pkg.demo.fittings import facing_front, knob_hole
from workbench_pkg.demo.shapes import block, container, cut, fuse, link, new, prism, said, wood

SIDE_GAP = 1.0
WIDTH = DRAWER_BAY[1] - DRAWER_BAY[0] - 2 * SIDE_GAP
LENGTH = 395.0
FRONT_THICKNESS, SIDE_THICKNESS, BACK_THICKNESS, BOTTOM_THICKNESS = 20.0, 12.0, 12.0, 8.0
FRONT_LOW, FRONT_HIGH, SIDE_HEIGHT, BACK_HIGH = 0.8, 165.8, 164.0, 158.0
LAP = 6.0
TAILS, PIN, HALF_PIN = 4, 10.0, 8.0
GROOVE_Z, GROOVE_DEPTH, GROOVE_ROOM = 10.0, 6.0, 0.2
BACK_Y, BACK_HOUSING = 375.0, 6.0
BOTTOM_SIDE_ROOM = 1.0  # along its grain, where it does not move
BOTTOM_BEHIND_BACK = 10.0  # how far a free bottom reaches past the back
KNOBS_X = (WIDTH / 4, 3 * WIDTH / 4)
BUILT_MC = 8.0
SIDE_SPECIES, BOTTOM_SPECIES = "white oak", "yellow-poplar"


def drawer(root: Any, label: str, placement: Any, knob: Callable[..., Any], repaired: bool) -> Any:
    here = container(root, label, placement)
    groove = block(
        here,
        "Drawer bottom groove",
        (SIDE_THICKNESS - GROOVE_DEPTH, FRONT_THICKNESS - GROOVE_DEPTH, GROOVE_Z),
        (WIDTH - SIDE_THICKNESS + GROOVE_DEPTH, LENGTH + 1, GROOVE_Z + BOTTOM_THICKNESS + GROOVE_ROOM),
    )
    tails = {side: _tails(here, side) for side in ("left", "right")}
    _front(here, groove, tails)
    _sides(here, groove, tails)
    _back(here)
    _bottom(here, repaired)
    middle = (FRONT_LOW + FRONT_HIGH) / 2
    first = knob(here, "Drawer knob left", facing_front(KNOBS_X[0], middle))
    link(here, "Drawer knob right", first, facing_front(KNOBS_X[1], middle))
    return here


def _tails(here: Any, side: str) -> Any:
    """The dovetails of one side, which are part of it and cut the front."""
    x = 0.0 if side == "left" else WIDTH - SIDE_THICKNESS
    outlines = tail_outlines(FRONT_LOW, SIDE_HEIGHT, TAILS, PIN, HALF_PIN, FRONT_THICKNESS, LAP)
    pieces = [
        prism(here, f"Drawer tail {side} {number}", [(x, y, z) for z, y in outline], (SIDE_THICKNESS, 0, 0))
        for number, outline in enumerate(outlines, start=1)
    ]
    made = new(here, "Part::Compound", f"Drawer tails {side}")
    made.Links = pieces
    for piece in (*pieces, made):
        piece.Visibility = False
    return made


def _front(here: Any, groove: Any, tails: dict[str, Any]) -> None:
    blank = block(here, "Drawer front blank", (0, 0, FRONT_LOW), (WIDTH, FRONT_THICKNESS, FRONT_HIGH))
    middle = (FRONT_LOW + FRONT_HIGH) / 2
    holes = [
        knob_hole(here, f"Drawer knob hole {number}", x, middle) for number, x in enumerate(KNOBS_X, start=1)
    ]
    front = cut(here, "Drawer front", blank, [tails["left"], tails["right"], groove, *holes])
    facts: dict[str, object] = {"species": SPECIES, "grain": "x", "show": "-y", "pith": (20, 85)}
    wood(front, **facts, finish=FINISH, built=BUILT_MC)


def _sides(here: Any, groove: Any, tails: dict[str, Any]) -> None:
    middle = (WIDTH / 2, BACK_Y, GROOVE_Z)
    housing = block(
        here,
        "Drawer back housing",
        (SIDE_THICKNESS - BACK_HOUSING, BACK_Y, middle[2]),
        (WIDTH - SIDE_THICKNESS + BACK_HOUSING, BACK_Y + BACK_THICKNESS, SIDE_HEIGHT + 1),
    )
    for side, x, show in (("left", 0.0, "-x"), ("right", WIDTH - SIDE_THICKNESS, "x")):
        label = f"Drawer side {side}"
        blank = block(
            here, f"{label} blank", (x, FRONT_THICKNESS, 0), (x + SIDE_THICKNESS, LENGTH, SIDE_HEIGHT)
        )
        tailed = fuse(here, f"{label} with tails", [blank, tails[side]])
        facts = f"{SIDE_SPECIES}; grain y; show {show}; cut quarter; finish none; built {BUILT_MC:g}"
        cut(here, said(label, facts), tailed, [groove, housing])


def _back(here: Any) -> None:
    back = block(
        here,
        "Drawer back",
        (SIDE_THICKNESS - BACK_HOUSING, BACK_Y, GROOVE_Z + BOTTOM_THICKNESS),
        (WIDTH - SIDE_THICKNESS + BACK_HOUSING, BACK_Y + BACK_THICKNESS, BACK_HIGH),
    )
    wood(back, species=SIDE_SPECIES, grain="x", show="-y", cut="rift", finish="none", built=BUILT_MC)


def _bottom(here: Any, repaired: bool) -> None:
    room = BOTTOM_SIDE_ROOM if repaired else 0.0
    end = BACK_Y + BACK_THICKNESS + (BOTTOM_BEHIND_BACK if repaired else 0.0)
    edge = SIDE_THICKNESS - GROOVE_DEPTH + room
    bottom = block(
        here,
        "Drawer bottom",
        (edge, FRONT_THICKNESS - GROOVE_DEPTH, GROOVE_Z),
        (WIDTH - edge, end, GROOVE_Z + BOTTOM_THICKNESS),
    )
    grain = "x" if repaired else "y"
    wood(bottom, species=BOTTOM_SPECIES, grain=grain, show="z", rings=15, finish="none", built=BUILT_MC)
