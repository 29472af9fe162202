"""Parts held by their edges in the grooves of others: on how many sides, how deep, and how much room there is."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.piece.contact.found import FLAT
from movement_core.piece.contact.meetings import GROOVE, MORTISE, SQUARE, Meeting, Opposed
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.frame import Frame

ALONG_SHARE = 0.5  # a side is held when walls run along at least half of it (own judgement)
NEAR_EDGE = 0.5  # … and lie in the outer half of the part


@dataclass(frozen=True, eq=False)
class HeldSide:
    """One side of a part in the groove of another.

    Attributes
    ----------
    axis : 0 an edge (across the grain), 2 an end (along it), 1 a face; of a frame without grain the side of its box.
    sign : −1 or +1 along that axis. direction : (3,) out of the part.
    other : the body with the groove. depth_mm : how far the part goes in.
    room_mm : from the part to the bottom of the groove; None where no bottom is within reach.
    slack_mm : room between the groove's walls. meeting : where it was read from.
    """

    axis: int
    sign: int
    direction: Floats
    other: int
    depth_mm: float
    room_mm: float | None
    slack_mm: float
    meeting: Meeting


@dataclass(frozen=True, eq=False)
class Captive:
    """A part and the sides on which it is held; a side held by several parts counts once in ``count``."""

    part: int
    sides: tuple[HeldSide, ...]

    @property
    def count(self) -> int:
        return len({(side.axis, side.sign) for side in self.sides})

    def on(self, axis: int, sign: int) -> tuple[HeldSide, ...]:
        return tuple(side for side in self.sides if (side.axis, side.sign) == (axis, sign))

    def between(self, axis: int) -> bool:
        """Whether it is held at both ends of an axis."""
        return bool(self.on(axis, -1) and self.on(axis, 1))


def captives_of(frames: Sequence[Frame], meetings: Sequence[Meeting], least: int = 2) -> tuple[Captive, ...]:
    """Every part held on two sides or more, or on as many as ``least`` says.

    Parameters
    ----------
    frames : frame of each body, in order.
    meetings : of all pairs.
    least : sides on which a part must be held.
    """
    sides: dict[int, list[HeldSide]] = defaultdict(list)
    for meeting in meetings:
        if meeting.shape in (GROOVE, MORTISE) and meeting.inner is not None:
            side = _held_side(frames[meeting.inner], meeting, meeting.inner)
            if side is not None:
                sides[meeting.inner].append(side)
    found = (Captive(part, tuple(held)) for part, held in sorted(sides.items()))
    return tuple(captive for captive in found if captive.count >= least)


def _held_side(frame: Frame, meeting: Meeting, inner: int) -> HeldSide | None:
    walls = [wall for wall in meeting.walls if wall.inner == inner and not wall.leans]
    wall = max(walls, key=lambda one: float(np.ptp(one.outline, axis=0).sum()))
    through = int(np.argmax(np.abs(frame.axes @ wall.axis)))
    best: tuple[float, int, int] | None = None
    for axis in (a for a in range(3) if a != through):
        own = (wall.outline - frame.centre) @ frame.axes[axis] / (frame.size_mm[axis] / 2)
        sign = 1 if own.mean() > 0 else -1
        if abs(own.mean()) > NEAR_EDGE and (best is None or abs(own.mean()) > best[0]):
            best = float(abs(own.mean())), axis, sign
    if best is None:
        return None
    _, axis, sign = best
    along = 3 - through - axis
    if float(np.ptp(wall.outline @ frame.axes[along])) < ALONG_SHARE * frame.size_mm[along]:
        return None  # a tenon or a lug, not the side
    direction = sign * frame.axes[axis]
    other = meeting.second if inner == meeting.first else meeting.first
    return HeldSide(
        axis,
        sign,
        direction,
        other,
        float(np.ptp(wall.outline @ direction)),
        _room(meeting, inner, direction, wall),
        wall.slack_mm,
        meeting,
    )


def _room(meeting: Meeting, inner: int, direction: Floats, wall: Opposed) -> float | None:
    """Least space between the part and the bottom of its groove."""
    sense = 1.0 if inner == meeting.first else -1.0
    rooms = []
    for found in meeting.facing:
        ahead = found.surface == FLAT and sense * float(found.normal @ direction) > 1 - SQUARE
        if ahead and _between_walls(found.centre, wall):
            rooms.append(getattr(found, "least_mm", 0.0))
    return min(rooms) if rooms else None


def _between_walls(centre: Floats, wall: Opposed) -> bool:
    """Whether a bottom lies between two walls, and is no shoulder outside them."""
    heights = wall.outline @ wall.axis
    return bool(heights.min() - 1e-6 <= centre @ wall.axis <= heights.max() + 1e-6)
