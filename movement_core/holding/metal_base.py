"""A top on a metal base: slots, washers, inserts, and the lower face that cannot breathe."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from movement_core.errors import InputError
from movement_core.holding.travel import Slot, WidthStrain, slot, travel
from movement_core.wording import phrase, say

INSERT_LENGTHS_MM = (8, 10, 12, 13, 15, 18, 20, 25, 30)  # sold in most places (common practice)
LEAVE_MM = 4.0  # wood between an insert's hole and the show face (common practice)
BLOCKED_FACE = phrase(
    "A flat steel face keeps the top's lower face from breathing: the upper one gives and takes moisture alone and "
    "the top cups toward the dry side. Raise it on washers or spacers of 3 mm or more, or finish both faces alike "
    "and ventilate the base."
)
NO_WOOD_TO_STEEL_GLUE = phrase(
    "Steel does not move with the seasons: never glue or screw the top to it solid."
)


@dataclass(frozen=True)
class BaseHole:
    """One hole in the base: place across, its slot along the travel (None: round hole), washer, insert."""

    across_mm: float
    least_mm: float
    most_mm: float
    slot: Slot | None
    washer_mm: float


@dataclass(frozen=True)
class MetalBase:
    """Holes of a metal base, the longest threaded insert that stays inside the top (None: none), and cautions."""

    holes: tuple[BaseHole, ...]
    insert_mm: float | None
    left_above_insert_mm: float | None
    cautions: tuple[str, ...] = (BLOCKED_FACE, NO_WOOD_TO_STEEL_GLUE)


def metal_base(
    strain: WidthStrain,
    across_mm: tuple[float, ...],
    thickness_mm: float,
    *,
    screw_mm: float = 6.0,
    fixed_mm: float = 0.0,
    leave_mm: float = LEAVE_MM,
) -> MetalBase:
    """Slots in a metal base under a solid top, one round hole where a screw lies on the fixed line.

    Parameters
    ----------
    strain : of the top's boards since fitting. across_mm : places of the machine screws across the top.
    thickness_mm : of the top. screw_mm : of the machine screw. leave_mm : to keep above the insert's hole.

    Notes
    -----
    A washer must bear on both sides of its slot in every position: at least the slot's width and 4 mm on each
    side of it (own). The pull an insert stands has no published figure.
    """
    if not (math.isfinite(screw_mm) and 3 <= screw_mm <= 12):
        raise InputError(
            say("screw {screw!r} mm", screw=screw_mm), where=say("metal base"), allowed=say("3 to 12 mm")
        )
    there = travel(strain, np.array(across_mm, dtype=float), fixed_mm)
    holes = []
    for i, place in enumerate(across_mm):
        least, now, most = (float(a[i]) for a in (there.least_mm, there.today_mm, there.most_mm))
        cut = None if abs(place - fixed_mm) < 1e-9 else slot(least, now, most, screw_mm)
        holes.append(BaseHole(float(place), least, most, cut, screw_mm + 0.5 + 2 * 4.0))
    fitting = [length for length in INSERT_LENGTHS_MM if length + 1.0 <= thickness_mm - leave_mm]
    insert = float(max(fitting)) if fitting else None
    return MetalBase(tuple(holes), insert, None if insert is None else thickness_mm - insert - 1.0)
