"""Lines cut off at the edges of a rectangle."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from movement_core.sheet.pages.model import Point

Box = tuple[float, float, float, float]


def clipped(points: Sequence[Point], box: Box) -> list[tuple[Point, ...]]:
    """The runs of an open line inside a box (x0, y0, x1, y1).

    >>> clipped([(-5.0, 1.0), (5.0, 1.0)], (0.0, 0.0, 3.0, 3.0))
    [((0.0, 1.0), (3.0, 1.0))]
    """
    runs: list[list[Point]] = []
    for start, end in pairwise(points):
        piece = _segment(start, end, box)
        if piece is None:
            continue
        if runs and runs[-1][-1] == piece[0]:
            runs[-1].append(piece[1])
        else:
            runs.append(list(piece))
    return [tuple(run) for run in runs]


def _segment(start: Point, end: Point, box: Box) -> tuple[Point, Point] | None:
    """The part of a straight line inside a box, None where there is none."""
    low, high = 0.0, 1.0
    for axis in (0, 1):
        run = end[axis] - start[axis]
        for side, limit in ((-1, box[axis]), (1, box[axis + 2])):
            room, toward = side * (limit - start[axis]), side * run
            if toward == 0:
                if room < 0:
                    return None
            elif toward > 0:
                high = min(high, room / toward)
            else:
                low = max(low, room / toward)
    if low >= high:
        return None

    def at(share: float) -> Point:
        if share in (0.0, 1.0):
            return end if share else start
        return start[0] + share * (end[0] - start[0]), start[1] + share * (end[1] - start[1])

    return at(low), at(high)
