"""The sideboard's inset frame-and-panel door, its hinges and its stop.

In the door's frame x = 0 is its left (hinge) edge, y = 0 its face and z = 0 its lower edge.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from workbench_pkg.demo.carcase import BAY_HEIGHT, DIVIDER, DOOR_BAY, FINISH, HEIGHT, SPECIES, THICKNESS
from workbench_pkg.demo.fittings import facing_front, hinge_recesses, hinges, knob, knob_hole
from workbench_pkg.demo.shapes import at, block, container, cut, fuse, said, wood

DOOR_THICKNESS = 22.0
FRAME_WIDTH = 65.0  # of stiles and rails
GROOVE_DEPTH, GROOVE_WIDTH, GROOVE_Y = 12.0, 8.0, 7.0  # GROOVE_Y: from the face to the groove
TENON_LENGTH, TENON_HEIGHT, TENON_INSET = 35.0, 40.0, 10.0  # inset from the rail's outer edge
MORTISE_ROOM = 1.0
TONGUE_ROOM = 0.4  # of the panel's tongue in the width of its groove
PANEL_TOP_ROOM = 2.0  # above the panel, which stands in the bottom rail's groove; its length does not move
FIELD_THICKNESS, FIELD_MARGIN = 5.0, 25.0
STOP_SIZE = 24.0


@dataclass(frozen=True)
class Fit:
    """How the door was fitted: gaps to the carcase, the panel's room on each side, mm; moisture, percent."""

    hinge_gap: float
    lock_gap: float
    level_gap: float
    panel_room: float
    built_mc: float


TOO_TIGHT = Fit(hinge_gap=0.6, lock_gap=0.6, level_gap=0.6, panel_room=0.0, built_mc=6.0)
RIGHT = Fit(hinge_gap=1.5, lock_gap=2.0, level_gap=1.5, panel_room=4.0, built_mc=8.5)


def door(root: Any, case: Any, repaired: bool) -> Any:
    fit = RIGHT if repaired else TOO_TIGHT
    low_z = THICKNESS + fit.level_gap
    width = DOOR_BAY[1] - DOOR_BAY[0] - fit.hinge_gap - fit.lock_gap
    height = BAY_HEIGHT - 2 * fit.level_gap
    here = container(root, "Door", at(DOOR_BAY[0] + fit.hinge_gap, 0, low_z))
    groove = block(
        here,
        "Door panel groove",
        (FRAME_WIDTH - GROOVE_DEPTH, GROOVE_Y, FRAME_WIDTH - GROOVE_DEPTH),
        (width - FRAME_WIDTH + GROOVE_DEPTH, GROOVE_Y + GROOVE_WIDTH, height - FRAME_WIDTH + GROOVE_DEPTH),
    )
    _stiles(here, fit, width, height, low_z, groove)
    _rails(here, fit, width, height, groove)
    _panel(here, fit, width, height)
    pull = facing_front(width - FRAME_WIDTH / 2, height / 2)
    knob(here, "Door pull", pull, species="black walnut" if repaired else None)
    hinges(case, THICKNESS, fit.hinge_gap)
    _stop(case, repaired)
    return here


def _tenon_levels(height: float) -> dict[str, float]:
    """The lower edges of the tenons of the two rails."""
    return {"bottom": TENON_INSET, "top": height - TENON_INSET - TENON_HEIGHT}


def _stiles(here: Any, fit: Fit, width: float, height: float, low_z: float, groove: Any) -> None:
    depth = TENON_LENGTH + MORTISE_ROOM
    mortises = {
        side: [
            block(
                here,
                f"Door mortise {side} {level}",
                (start, GROOVE_Y, z),
                (start + depth, GROOVE_Y + GROOVE_WIDTH, z + TENON_HEIGHT),
            )
            for level, z in _tenon_levels(height).items()
        ]
        for side, start in (("left", FRAME_WIDTH - depth), ("right", width - FRAME_WIDTH))
    }
    extra = {
        "left": hinge_recesses(here, 0.0, low_z),
        "right": [knob_hole(here, "Door pull hole", width - FRAME_WIDTH / 2, height / 2)],
    }
    for side, start in (("left", 0.0), ("right", width - FRAME_WIDTH)):
        label = f"Door stile {side}"
        blank = block(here, f"{label} blank", (start, 0, 0), (start + FRAME_WIDTH, DOOR_THICKNESS, height))
        facts = f"{SPECIES}; grain z; show -y; cut flat; finish {FINISH}; built {fit.built_mc:g}"
        cut(here, said(label, facts), blank, [groove, *mortises[side], *extra[side]])


def _rails(here: Any, fit: Fit, width: float, height: float, groove: Any) -> None:
    tenons = _tenon_levels(height)
    for level, z in (("bottom", 0.0), ("top", height - FRAME_WIDTH)):
        label = f"Door rail {level}"
        core = block(
            here,
            f"{label} core",
            (FRAME_WIDTH, 0, z),
            (width - FRAME_WIDTH, DOOR_THICKNESS, z + FRAME_WIDTH),
        )
        tenon = block(
            here,
            f"{label} tenons",
            (FRAME_WIDTH - TENON_LENGTH, GROOVE_Y, tenons[level]),
            (width - FRAME_WIDTH + TENON_LENGTH, GROOVE_Y + GROOVE_WIDTH, tenons[level] + TENON_HEIGHT),
        )
        facts = f"{SPECIES}; grain x; show -y; cut flat; finish {FINISH}; built {fit.built_mc:g}"
        tenoned = fuse(here, f"{label} with tenons", [core, tenon])
        cut(here, said(label, facts), tenoned, [groove])


def _panel(here: Any, fit: Fit, width: float, height: float) -> None:
    side = FRAME_WIDTH - GROOVE_DEPTH + fit.panel_room
    foot = FRAME_WIDTH - GROOVE_DEPTH
    head = height - foot - PANEL_TOP_ROOM
    front, rear = GROOVE_Y + TONGUE_ROOM / 2, GROOVE_Y + GROOVE_WIDTH - TONGUE_ROOM / 2
    tongue = block(here, "Door panel tongue", (side, front, foot), (width - side, rear, head))
    inset = FRAME_WIDTH + FIELD_MARGIN
    field = block(
        here,
        "Door panel field",
        (inset, front - FIELD_THICKNESS, inset),
        (width - inset, front, height - inset),
    )
    panel = fuse(here, "Door panel", [tongue, field])
    facts: dict[str, object] = {"species": SPECIES, "grain": "z", "show": "-y", "heart": "show", "rings": 10}
    wood(panel, **facts, finish=FINISH, built=fit.built_mc)


def _stop(case: Any, repaired: bool) -> None:
    """A cube in the corner of divider and top, behind the door."""
    x, z = DIVIDER[0], HEIGHT - THICKNESS
    low = (x - STOP_SIZE, DOOR_THICKNESS, z - STOP_SIZE)
    stop = block(case, "Door stop", low, (x, DOOR_THICKNESS + STOP_SIZE, z))
    wood(stop, species="hard maple", show="-x", cut="flat", built=8.0, **({"grain": "z"} if repaired else {}))
