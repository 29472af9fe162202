"""Numbers at the parts of a picture: inside a part where it has room, else in the margin with a leader."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from movement_core.sheet.label_places import spread_apart
from movement_core.sheet.pages.measure import ASCENT, width_mm
from movement_core.sheet.pages.model import Point
from movement_core.sheet.pages.seen import Seen

Floats = NDArray[np.float64]
Mask = NDArray[np.bool_]

LEAST_SEEN = 40  # points of the grid: what shows less is not numbered in this picture
CLEAR_MM = 0.5  # kept free round a number inside a part
LINE = 1.35  # distance of two numbers in a margin, by their size
MOST_COLUMNS = 2  # of numbers in a margin: leaders pass between the numbers of the nearer one
LEADER_MM = 5.0  # from a margin's numbers to the picture
DEEPEST = 20  # steps of the grid: how far into a part a leader's end is put


@dataclass(frozen=True)
class Spot:
    """Where a part shows, mm on paper. ``inside``: its number has room around that point."""

    index: int
    place: Point
    inside: bool


def spots(seen: Seen, indices: Sequence[int], texts: Sequence[str], size_mm: float) -> list[Spot]:
    """Where each of some bodies shows; those that hardly do are left out.

    Parameters
    ----------
    indices : the bodies. texts : their numbers, in that order. size_mm : of the font.
    """
    bodies = seen.bodies
    boxes = _boxes(bodies)
    found = []
    for index, text in zip(indices, texts):
        box = boxes.get(index)
        if box is None:
            continue
        rows, columns = box
        mine = bodies[rows, columns] == index
        if mine.sum() < LEAST_SEEN:
            continue
        faces = np.where(mine, seen.faces[rows, columns], -1)
        high = math.ceil((size_mm * ASCENT + 2 * CLEAR_MM) / seen.step_mm)
        wide = math.ceil((width_mm(text, size_mm) + 2 * CLEAR_MM) / seen.step_mm)
        at = _room(faces, high, wide)
        inside = at is not None
        row, column = _deepest(mine) if at is None else at
        place = (column + columns.start + 0.5) * seen.step_mm, (row + rows.start + 0.5) * seen.step_mm
        found.append(Spot(index, place, inside))
    return found


def _boxes(bodies: NDArray[np.int64]) -> dict[int, tuple[slice, slice]]:
    """The part of the grid in which each body shows."""
    rows, columns = np.nonzero(bodies >= 0)
    if not len(rows):
        return {}
    which = bodies[rows, columns]
    order = np.argsort(which, kind="stable")
    which, rows, columns = which[order], rows[order], columns[order]
    starts = np.flatnonzero(np.r_[True, which[1:] != which[:-1]])
    low_r, high_r = np.minimum.reduceat(rows, starts), np.maximum.reduceat(rows, starts)
    low_c, high_c = np.minimum.reduceat(columns, starts), np.maximum.reduceat(columns, starts)
    return {
        int(which[start]): (slice(int(a), int(b) + 1), slice(int(c), int(d) + 1))
        for start, a, b, c, d in zip(starts, low_r, high_r, low_c, high_c)
    }


def _room(faces: NDArray[np.int64], high: int, wide: int) -> tuple[float, float] | None:
    """Middle (row, column) of a rectangle of so many points on one face, the nearest to that face's middle."""
    numbers, counts = np.unique(faces[faces >= 0], return_counts=True)
    for number in numbers[np.argsort(-counts)][:3]:
        mask = faces == number
        if mask.shape[0] < high or mask.shape[1] < wide:
            continue
        sums = np.pad(mask.astype(np.int64).cumsum(axis=0).cumsum(axis=1), ((1, 0), (1, 0)))
        full = (
            sums[high:, wide:] - sums[:-high, wide:] - sums[high:, :-wide] + sums[:-high, :-wide]
        ) == high * wide
        if full.any():
            return _nearest(np.argwhere(full) + np.array([(high - 1) / 2, (wide - 1) / 2]), np.argwhere(mask))
    return None


def _deepest(mask: Mask) -> tuple[float, float]:
    """A point well inside a mask: what is left after taking its edge off again and again."""
    left = np.pad(mask, 1)
    for _ in range(DEEPEST):
        inner = left.copy()
        inner[1:, :] &= left[:-1, :]
        inner[:-1, :] &= left[1:, :]
        inner[:, 1:] &= left[:, :-1]
        inner[:, :-1] &= left[:, 1:]
        if not inner.any():
            break
        left = inner
    return _nearest(np.argwhere(left) - 1.0, np.argwhere(mask))


def _nearest(places: NDArray[Any], around: NDArray[Any]) -> tuple[float, float]:
    """The place nearest to the middle of others."""
    best = places[int(np.argmin(((places - around.mean(axis=0)) ** 2).sum(axis=1)))]
    return float(best[0]), float(best[1])


@dataclass(frozen=True)
class Numbered:
    """A number's place: the middle of its words on the base line; ``leader`` from it to the part, or empty."""

    index: int
    place: Point
    leader: tuple[Point, ...] = ()


@dataclass(frozen=True)
class Margins:
    """What numbers need beside a picture, mm: left and right, and the picture's least height."""

    left: float
    right: float
    height: float


def capacity(size_mm: float, high_mm: float) -> int:
    """How many numbers with leaders stand beside a picture of a height."""
    return 2 * MOST_COLUMNS * max(1, int(high_mm / (LINE * size_mm)) - 1)


def margins(count: int, size_mm: float, widest_mm: float, most_high_mm: float) -> Margins:
    """Room for so many numbers with leaders, half on each side; more than one column where they are many."""
    a_side = math.ceil(count / 2)
    rows = max(1, int(most_high_mm / (LINE * size_mm)))
    columns = max(1, math.ceil(a_side / rows))
    side = columns * (widest_mm + size_mm) + LEADER_MM if count else 0.0
    return Margins(side, side, (math.ceil(a_side / columns) + 1) * LINE * size_mm)


def placed(
    found: Sequence[Spot], width: float, height: float, size_mm: float, widest_mm: float
) -> list[Numbered]:
    """Places of numbers round a picture of so many mm, in its own measure: margins lie beyond 0 and ``width``.

    Half of those with leaders stand on each side, in the order of their height, so that leaders do not cross much.
    """
    base = size_mm * ASCENT / 2
    result = [Numbered(s.index, (s.place[0], s.place[1] + base)) for s in found if s.inside]
    out = sorted((s for s in found if not s.inside), key=lambda s: s.place[0])
    half = (len(out) + 1) // 2
    for side, members in ((-1, out[:half]), (1, out[half:])):
        members = sorted(members, key=lambda s: s.place[1])
        rows = max(1, int(height / (LINE * size_mm)))
        columns = max(1, math.ceil(len(members) / rows))
        spacing = LINE * size_mm / columns
        wanted = np.array([s.place[1] for s in members])
        heights = _within(spread_apart(wanted, spacing), spacing, height, LINE * size_mm / 2)
        for place, (spot, y) in enumerate(zip(members, heights.tolist())):
            column = place % columns
            aside = LEADER_MM + column * (widest_mm + size_mm) + widest_mm / 2 + size_mm / 4
            x = -aside if side < 0 else width + aside
            end = x - side * (widest_mm / 2 + size_mm * 0.2)
            elbow = -LEADER_MM if side < 0 else width + LEADER_MM  # level past the numbers of a nearer column
            result.append(Numbered(spot.index, (x, y + base), ((end, y), (elbow, y), spot.place)))
    return result


def _within(heights: Floats, spacing: float, height: float, edge: float) -> Floats:
    """Heights, ascending and ``spacing`` apart, moved so that none lies nearer than ``edge`` to 0 or ``height``."""
    if not len(heights):
        return heights
    steps = np.arange(len(heights)) * spacing
    low, high = edge, height - edge
    heights = np.maximum(heights, low + steps)
    return np.asarray(np.minimum(heights, high - steps[::-1]))
