"""Where labels go on the screen: near what they belong to, off each other, hidden where there is no room.

Plain arrays in, plain arrays out, in pixels with y upwards; knows neither host nor window.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

DIRECTIONS = 16
GAPS_PX = (20.0, 36.0, 58.0, 88.0, 126.0, 172.0, 226.0, 290.0)
SPACE_PX = 5.0  # kept free between two labels
BORDER_PX = 6.0  # kept free along the edge of the view
FULLEST = 0.35  # of the view's area: beyond this labels hide the piece that they explain
ANCHOR_PX = 5.0  # nearer than this a leader would seem to end at somebody else's point
SHORTEST_REACH_PX = 60.0
SMALLEST_PX, LARGE_PX = 26.0, 150.0  # no label below; above, one part is as important as another
KEEP_BONUS, COVERED, PASSED, AWAY = 30.0, 45.0, 40.0, 16.0  # prices, in pixels of a longer leader


@dataclass(frozen=True)
class Layout:
    """Answer for N labels.

    centres : (N, 2) centre of each label, pixels.
    shown : (N,) False where it is outside the view, or where there was no room.
    choice : (N,) number of the candidate place taken, −1 where none; handed back next time, it keeps labels calm.
    crowded : how many lie in the view but found no room.
    """

    centres: Floats
    shown: NDArray[np.bool_]
    choice: NDArray[np.int64]
    crowded: int


def arrange(
    anchors: Floats,
    sizes: Floats,
    view: tuple[float, float],
    ranks: NDArray[np.int64] | None = None,
    previous: NDArray[np.int64] | None = None,
    free: Floats | None = None,
    extents: Floats | None = None,
) -> Layout:
    """Place labels one after the other, higher ranks first, each at its cheapest free place.

    anchors : (N, 2) point that each label belongs to, pixels.
    sizes : (N, 2) width and height of each label, pixels.
    view : width and height of the view, pixels.
    ranks : (N,) higher is placed earlier; all alike when None.
    previous : `choice` of the layout before; a place that is still free is kept.
    extents : (N,) how large on the screen what it belongs to is, pixels: the larger comes first within a rank,
        and what is too small to point at gets no label unless its rank says so. Unknown when None.
    free : (M, 4) left, bottom, right, top of boxes in which no label may lie.
    """
    count = len(anchors)
    centres, choice = np.array(anchors, dtype=float), np.full(count, -1, dtype=np.int64)
    inside = np.all((anchors >= 0) & (anchors <= np.asarray(view)), axis=1) if count else np.zeros(0, bool)
    ranks = np.zeros(count, dtype=np.int64) if ranks is None else ranks
    extents = np.full(count, np.inf) if extents is None else extents
    visible = np.flatnonzero(inside & ((extents >= SMALLEST_PX) | (ranks > 0)))
    if not len(visible):
        return Layout(centres, np.zeros(count, bool), choice, int(inside.sum()))
    before = np.full(count, -1) if previous is None or len(previous) != count else previous
    free = np.zeros((0, 4)) if free is None else free
    best: tuple[int, NDArray[np.int64], Floats] = (-1, choice, centres)
    for order in _orders(anchors, visible, ranks, extents):
        attempt = _fill(order, anchors, sizes, view, before, free)
        worth = int((ranks[attempt[0] >= 0] * count + 1).sum())
        if worth > best[0]:
            best = (worth, *attempt)
        if np.all(attempt[0][visible] >= 0):
            break
    _, choice, centres = best
    shown = choice >= 0
    return Layout(centres, shown, choice, int(inside.sum() - shown.sum()))


def _orders(
    anchors: Floats, visible: NDArray[np.int64], ranks: NDArray[np.int64], extents: Floats
) -> list[NDArray[np.int64]]:
    """Higher ranks first; within a rank the larger first, or from the outside in, or from the inside out."""
    reach = np.hypot(*(anchors[visible] - anchors[visible].mean(axis=0)).T)
    size = -np.minimum(extents[visible], LARGE_PX)
    keys = ((reach * 0.0, size), (-reach, size), (reach, size))
    return [visible[np.lexsort((first, second, -ranks[visible]))] for first, second in keys]


def _fill(
    order: NDArray[np.int64],
    anchors: Floats,
    sizes: Floats,
    view: tuple[float, float],
    before: NDArray[np.int64],
    free: Floats,
) -> tuple[NDArray[np.int64], Floats]:
    """Choices and centres when labels are placed in this order."""
    centres, choice = np.array(anchors, dtype=float), np.full(len(anchors), -1, dtype=np.int64)
    taken = _Taken(anchors[order], view, free)
    for i in order:
        best = taken.best_place(anchors[i], sizes[i], int(before[i]))
        if best is not None:
            choice[i], centres[i] = best
            taken.add(anchors[i], centres[i], sizes[i])
    return choice, centres


class _Taken:
    """What is on the screen already."""

    def __init__(self, anchors: Floats, view: tuple[float, float], kept_free: Floats) -> None:
        self.anchors, self.view = anchors, np.asarray(view, dtype=float)
        self.middle = anchors.mean(axis=0)
        extent = float(np.hypot(*np.ptp(anchors, axis=0)))
        self.reach = max(SHORTEST_REACH_PX, 0.6 * extent)  # a small picture does not get a crown of labels
        self.kept_low, self.kept_high = kept_free[:, :2], kept_free[:, 2:]
        self.low, self.high = np.zeros((0, 2)), np.zeros((0, 2))
        self.starts, self.ends = np.zeros((0, 2)), np.zeros((0, 2))
        self.area = 0.0
        self.directions = _directions()
        self.gaps = np.array([gap for gap in GAPS_PX if gap <= self.reach])

    def best_place(self, anchor: Floats, size: Floats, before: int) -> tuple[int, Floats] | None:
        """Number and centre of the cheapest free place for a label, or None."""
        if self.area + size.prod() > FULLEST * self.view.prod():
            return None
        centres = _places(anchor, size, self.directions, self.gaps)
        low, high = centres - size / 2, centres + size / 2
        free = np.all((low >= BORDER_PX) & (high <= self.view - BORDER_PX), axis=1)
        free &= ~_overlap(low - SPACE_PX, high + SPACE_PX, self.low, self.high).any(axis=1)
        free &= ~_overlap(low, high, self.kept_low, self.kept_high).any(axis=1)
        free &= ~_covers(low, high, anchor[None, :]).any(axis=1)
        free &= ~self._struck(anchor, centres, low, high)
        candidates = np.flatnonzero(free)
        if not len(candidates):
            return None
        low, high, centres = low[candidates], high[candidates], centres[candidates]
        cost = np.repeat(self.gaps, DIRECTIONS)[candidates] + AWAY * self._turned(anchor, candidates)
        cost += COVERED * _covers(low, high, self.anchors).sum(axis=1)
        others = self.anchors[np.hypot(*(self.anchors - anchor).T) > ANCHOR_PX]
        starts = np.broadcast_to(anchor, centres.shape)
        cost += PASSED * (_distance_to_segments(others, starts, centres) < ANCHOR_PX).sum(axis=1)
        cost -= KEEP_BONUS * (candidates == before)
        best = int(np.argmin(cost))
        return int(candidates[best]), centres[best]

    def add(self, anchor: Floats, centre: Floats, size: Floats) -> None:
        self.low = np.vstack([self.low, centre - size / 2])
        self.high = np.vstack([self.high, centre + size / 2])
        self.starts, self.ends = np.vstack([self.starts, anchor]), np.vstack([self.ends, centre])
        self.area += float(size.prod())

    def _turned(self, anchor: Floats, candidates: NDArray[np.int64]) -> Floats:
        """0 where a place lies outward from the middle of all anchors and upward, 2 where it lies opposite."""
        outward = anchor - self.middle + np.array([0.0, 12.0])
        length = float(np.hypot(*outward)) or 1.0
        return 1.0 - self.directions[candidates % DIRECTIONS] @ (outward / length)

    def _struck(self, anchor: Floats, centres: Floats, low: Floats, high: Floats) -> NDArray[np.bool_]:
        """Places where its leader would run over a label, a leader or a point, or another's leader over it."""
        starts = np.broadcast_to(anchor, centres.shape)
        over = _segments_in_boxes(starts, centres, self.low, self.high).any(axis=1)
        under = _segments_in_boxes(self.starts, self.ends, low, high).any(axis=0)
        crossed = _segments_cross(starts, centres, self.starts, self.ends).any(axis=1)
        return np.asarray(over | under | crossed, dtype=np.bool_)


def _directions() -> Floats:
    angles = np.arange(DIRECTIONS) * (2 * np.pi / DIRECTIONS) + np.pi / 4
    return np.column_stack([np.cos(angles), np.sin(angles)])


def _places(anchor: Floats, size: Floats, directions: Floats, gaps: Floats) -> Floats:
    """(K, 2) centres: the label's near side stands `gap` away from the anchor in each direction."""
    half = np.clip(1.6 * directions, -1.0, 1.0) * size / 2
    return np.concatenate([anchor + gap * directions + half for gap in gaps])


def _overlap(low: Floats, high: Floats, other_low: Floats, other_high: Floats) -> NDArray[np.bool_]:
    apart = (low[:, None] >= other_high[None]) | (high[:, None] <= other_low[None])
    return np.asarray(~apart.any(axis=2), dtype=np.bool_)


def _covers(low: Floats, high: Floats, points: Floats) -> NDArray[np.bool_]:
    return np.all((points[None] >= low[:, None] - 2) & (points[None] <= high[:, None] + 2), axis=2)


def _cross(a: Floats, b: Floats) -> Floats:
    return a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0]


def _segments_cross(p: Floats, q: Floats, r: Floats, s: Floats) -> NDArray[np.bool_]:
    """(K, M) whether segment p–q crosses segment r–s."""
    p, q, r, s = p[:, None], q[:, None], r[None], s[None]
    first = _cross(q - p, r - p) * _cross(q - p, s - p)
    second = _cross(s - r, p - r) * _cross(s - r, q - r)
    return (first < 0) & (second < 0)


def _distance_to_segments(points: Floats, starts: Floats, ends: Floats) -> Floats:
    """(K, M) distances of M points from K segments."""
    run = ends - starts
    length = np.maximum((run**2).sum(axis=1), 1e-12)
    offset = points[None] - starts[:, None]
    part = np.clip((offset * run[:, None]).sum(axis=2) / length[:, None], 0.0, 1.0)
    return np.asarray(np.linalg.norm(offset - part[..., None] * run[:, None], axis=2))


def _segments_in_boxes(p: Floats, q: Floats, low: Floats, high: Floats) -> NDArray[np.bool_]:
    """(K, M) whether segment p–q passes through a box."""
    step = (q - p)[:, None]
    step = np.where(np.abs(step) < 1e-9, 1e-9, step)
    near, far = (low[None] - p[:, None]) / step, (high[None] - p[:, None]) / step
    enter = np.minimum(near, far).max(axis=2)
    leave = np.maximum(near, far).min(axis=2)
    return np.maximum(enter, 0.0) < np.minimum(leave, 1.0)
