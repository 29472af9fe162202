"""Regions of a plane, bounded by straight edges, with or without holes: what two of them share, what one leaves.

A region is (E, 2, 2) directed edges (from, to) with its inside on the left, in any order. Edges that lie on each
other, corners on edges and equal regions are the rule in furniture, not the exception: every edge is cut where the
other region's boundary meets it, each piece is told apart by its middle (inside, outside, on the boundary the same
way or the other way), and the pieces that bound the answer are kept.
"""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

SNAP_MM = 1e-6  # points and lines closer than this are the same
NOTHING = np.zeros((0, 2, 2))


def region_of(loops: list[Floats]) -> Floats:
    """Edges of a face from its loops (K, 2), the outer first, whichever way they run."""
    edges = []
    for index, loop in enumerate(loops):
        following = np.roll(loop, -1, axis=0)
        anticlockwise = _signed_area(loop, following) > 0
        wanted = index == 0
        edges.append(np.stack((loop, following) if anticlockwise == wanted else (following, loop), axis=1))
    return np.concatenate(edges)


def turned_over(region: Floats) -> Floats:
    """The same region seen after a mirroring of the plane: its edges run the other way."""
    return region[:, ::-1]


def area(region: Floats) -> float:
    """Area, mm²."""
    if not len(region):
        return 0.0
    origin = region[0, 0]
    return _signed_area(region[:, 0] - origin, region[:, 1] - origin)


def mean_width(region: Floats) -> float:
    """Area over half the perimeter: what tells a strip from a line, mm."""
    around = float(np.linalg.norm(region[:, 1] - region[:, 0], axis=1).sum())
    return 2 * area(region) / around if around else 0.0


def centroid(region: Floats) -> Floats:
    """(2,) centre of area."""
    origin = region[0, 0]
    start, end = region[:, 0] - origin, region[:, 1] - origin
    cross = start[:, 0] * end[:, 1] - start[:, 1] * end[:, 0]
    return np.asarray(((start + end) * cross[:, None]).sum(axis=0) / (3 * cross.sum()) + origin)


def shared(one: Floats, other: Floats) -> Floats:
    """The region that lies in both."""
    if _apart(one, other):
        return NOTHING
    boxes = _rectangle(one), _rectangle(other)
    if boxes[0] is not None and boxes[1] is not None:
        square = _shared_rectangle(boxes[0], boxes[1])
        if square is not None:
            return square
    # What lies outside the other's box cannot lie in the other.
    near_one, near_other = _within_box(one, other), _within_box(other, one)
    if not len(near_one) and not len(near_other):
        return NOTHING
    first, second = _pieces(near_one, near_other), _pieces(near_other, near_one)
    a_in, a_same, _ = _where(first, other)
    b_in, _, _ = _where(second, one)
    return np.concatenate([first[a_in | a_same], second[b_in]])


def without(one: Floats, other: Floats) -> Floats:
    """What is left of ``one`` outside ``other``."""
    if _apart(one, other):
        return one
    first, second = _pieces(one, other), _pieces(other, one)
    a_in, a_same, a_against = _where(first, other)
    b_in, _, _ = _where(second, one)
    return np.concatenate([first[~(a_in | a_same | a_against) | a_against], second[b_in][:, ::-1]])


def holds(region: Floats, points: Floats) -> Bools:
    """(N,) whether points (N, 2) lie inside; of points on the boundary either may be said.

    By how often the boundary winds round a point, which hair cracks between its edges do not upset as they would
    the counting of crossings: edges that meet rarely do so to the last digit.
    """
    start, end = region[None, :, 0] - points[:, None], region[None, :, 1] - points[:, None]
    cross = start[..., 0] * end[..., 1] - start[..., 1] * end[..., 0]
    dot = start[..., 0] * end[..., 0] + start[..., 1] * end[..., 1]
    return np.asarray(np.arctan2(cross, dot).sum(axis=1) > np.pi)


def outline(region: Floats) -> list[Floats]:
    """Closed loops (K, 2) round a region, largest first, straight runs made one edge; slivers are left out."""
    square = _rectangle(region)
    if square is not None:
        return [np.array(square)]
    run = region[:, 1] - region[:, 0]
    region, run = (one[np.hypot(*run.T) > SNAP_MM] for one in (region, run))
    meets = np.asarray((np.abs(region[:, None, 1] - region[None, :, 0]) <= 10 * SNAP_MM).all(axis=2))
    turn = np.arctan2(
        run[:, None, 0] * run[None, :, 1] - run[:, None, 1] * run[None, :, 0], run @ run.T
    )  # from each edge into each that begins where it ends
    left = np.ones(len(region), dtype=bool)
    loops = []
    for first in range(len(region)):
        if not left[first]:
            continue
        loop, here = [], first
        while True:
            loop.append(here)
            left[here] = False
            ways = np.flatnonzero(meets[here])
            ways = ways[left[ways] | (ways == first)]
            if not len(ways):
                break
            # Where two loops meet in a point, the one that turns most to the left keeps them apart.
            here = int(ways[np.argmax(turn[here, ways])])
            if here == first:
                break
        corners = _corners(region[loop, 0])
        if len(corners) > 2:
            loops.append(corners)
    return sorted(loops, key=lambda corners: -abs(_signed_area(corners, np.roll(corners, -1, axis=0))))


def half_plane(normal: Floats, limit: float, around: Floats) -> Floats:
    """A square region of the points with normal · p ≤ limit, wide enough for all points (N, 2) around."""
    size = 4 * (1.0 + float(np.ptp(around, axis=0).sum()))
    middle = around.mean(axis=0)
    unit = normal / np.linalg.norm(normal)
    foot = middle + unit * (limit / float(np.linalg.norm(normal)) - float(unit @ middle))
    side = np.array([-unit[1], unit[0]])
    square = [
        foot - size * side,
        foot + size * side,
        foot + size * (side - unit),
        foot - size * (side + unit),
    ]
    return region_of([np.array(square)])


def _signed_area(start: Floats, end: Floats) -> float:
    origin = start[0]
    start, end = start - origin, end - origin
    return float((start[:, 0] * end[:, 1] - start[:, 1] * end[:, 0]).sum() / 2)


def _apart(one: Floats, other: Floats) -> bool:
    """Whether the boxes of two regions share no area."""
    if not len(one) or not len(other):
        return True
    a, b = one.reshape(-1, 2), other.reshape(-1, 2)
    (a0, a1), (b0, b1) = a.min(axis=0).tolist(), b.min(axis=0).tolist()
    (a2, a3), (b2, b3) = a.max(axis=0).tolist(), b.max(axis=0).tolist()
    return bool(min(a2, b2) - max(a0, b0) <= SNAP_MM or min(a3, b3) - max(a1, b1) <= SNAP_MM)


def _within_box(region: Floats, other: Floats) -> Floats:
    """The edges of a region whose boxes meet the box of another."""
    corners = other.reshape(-1, 2)
    low, high = corners.min(axis=0) - 2 * SNAP_MM, corners.max(axis=0) + 2 * SNAP_MM
    meets = (region.min(axis=1) <= high) & (region.max(axis=1) >= low)
    return np.asarray(region[meets[:, 0] & meets[:, 1]])


Corners = list[tuple[float, float]]


def _rectangle(region: Floats) -> Corners | None:
    """The corners of a region that is one rectangle, anticlockwise; None where it is anything else."""
    if len(region) != 4:
        return None
    edges = region.tolist()
    corners: Corners = []
    (x, y), (end_x, end_y) = edges[0]
    left = edges[1:]
    corners.append((x, y))
    while left:  # the edges come in any order
        for at, ((ax, ay), (bx, by)) in enumerate(left):
            if abs(ax - end_x) <= SNAP_MM and abs(ay - end_y) <= SNAP_MM:
                corners.append((ax, ay))
                end_x, end_y = bx, by
                del left[at]
                break
        else:
            return None
    if abs(end_x - x) > SNAP_MM or abs(end_y - y) > SNAP_MM:
        return None
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = corners
    if abs(ax + cx - bx - dx) > SNAP_MM or abs(ay + cy - by - dy) > SNAP_MM:
        return None  # no parallelogram
    run, rise = (bx - ax, by - ay), (dx - ax, dy - ay)
    longer = max(abs(run[0]), abs(run[1]), abs(rise[0]), abs(rise[1]))
    square = abs(run[0] * rise[0] + run[1] * rise[1]) <= SNAP_MM * longer
    return corners if square and run[0] * rise[1] - run[1] * rise[0] > 0 else None


def _shared_rectangle(one: Corners, other: Corners) -> Floats | None:
    """What two rectangles share whose sides are parallel; None where they are turned to each other."""
    (ax, ay), (bx, by), (cx, cy), _ = one
    long, wide = math.hypot(bx - ax, by - ay), math.hypot(cx - bx, cy - by)
    if min(long, wide) <= SNAP_MM:
        return None
    ux, uy = (bx - ax) / long, (by - ay) / long
    seen = [((x - ax) * ux + (y - ay) * uy, (y - ay) * ux - (x - ax) * uy) for x, y in other]
    along, across = sorted(u for u, _ in seen), sorted(v for _, v in seen)
    if max(along[1] - along[0], along[3] - along[2], across[1] - across[0], across[3] - across[2]) > SNAP_MM:
        return None
    low_u, high_u = max(along[0], 0.0), min(along[3], long)
    low_v, high_v = max(across[0], 0.0), min(across[3], wide)
    if high_u - low_u <= SNAP_MM or high_v - low_v <= SNAP_MM:
        return NOTHING
    corners = [
        (ax + u * ux - v * uy, ay + u * uy + v * ux)
        for u, v in ((low_u, low_v), (high_u, low_v), (high_u, high_v), (low_u, high_v))
    ]
    return np.array([(corners[at], corners[(at + 1) % 4]) for at in range(4)])


def _pieces(one: Floats, other: Floats) -> Floats:
    """The edges of ``one`` cut wherever the boundary of ``other`` meets them."""
    if not len(one) or not len(other):
        return one
    run, cutter = one[:, 1] - one[:, 0], other[:, 1] - other[:, 0]
    length, cutter_length = np.hypot(*run.T), np.hypot(*cutter.T)
    to = other[None, :, 0] - one[:, None, 0]  # (n, m, 2)
    cross = run[:, None, 0] * cutter[None, :, 1] - run[:, None, 1] * cutter[None, :, 0]
    with np.errstate(divide="ignore", invalid="ignore"):
        along = (to[..., 0] * cutter[None, :, 1] - to[..., 1] * cutter[None, :, 0]) / cross
        along_cutter = (to[..., 0] * run[:, None, 1] - to[..., 1] * run[:, None, 0]) / cross
        slack, cutter_slack = SNAP_MM / length[:, None], SNAP_MM / cutter_length[None, :]
        meets = np.abs(cross) > 1e-9 * length[:, None] * cutter_length[None, :]
        meets &= (along > slack) & (along < 1 - slack)
        meets &= (along_cutter > -cutter_slack) & (along_cutter < 1 + cutter_slack)
        # Corners of the other region that lie on this edge, also where the two run along each other.
        square = length**2
        at = (to @ run[:, :, None])[..., 0] / square[:, None]
        off = np.abs(to[..., 0] * run[:, None, 1] - to[..., 1] * run[:, None, 0]) / length[:, None]
    lies_on = (off <= SNAP_MM) & (at > slack) & (at < 1 - slack)
    if not meets.any() and not lies_on.any():
        return np.asarray(one[length > SNAP_MM / 2])
    cuts = np.concatenate([np.where(meets, along, 1.0), np.where(lies_on, at, 1.0)], axis=1)
    cuts = np.concatenate([np.zeros((len(one), 1)), cuts, np.ones((len(one), 1))], axis=1)
    cuts.sort(axis=1)
    low, high = cuts[:, :-1], cuts[:, 1:]
    edge, piece = np.nonzero((high - low) * length[:, None] > SNAP_MM / 2)
    start = one[edge, 0] + low[edge, piece, None] * run[edge]
    end = one[edge, 0] + high[edge, piece, None] * run[edge]
    return np.stack([start, end], axis=1)


def _where(pieces: Floats, region: Floats) -> tuple[Bools, Bools, Bools]:
    """For each piece: inside the region; on its boundary running the same way; on it running the other way."""
    if not len(pieces):
        none = np.zeros(0, dtype=bool)
        return none, none, none
    middle, run = pieces.mean(axis=1), pieces[:, 1] - pieces[:, 0]
    edge = region[:, 1] - region[:, 0]
    region, edge = region[edge.any(axis=1)], edge[edge.any(axis=1)]  # an edge without length bounds nothing
    length = np.hypot(*edge.T)
    to = middle[:, None] - region[None, :, 0]
    along = (to * edge[None]).sum(axis=2) / length**2
    off = np.abs(to[..., 0] * edge[None, :, 1] - to[..., 1] * edge[None, :, 0]) / length
    on = (off <= 2 * SNAP_MM) & (along > 0) & (along < 1)
    sense = run[:, None, 0] * edge[None, :, 0] + run[:, None, 1] * edge[None, :, 1]
    parallel = np.abs(sense) > 0.9 * np.hypot(*run.T)[:, None] * length
    on &= parallel
    same, against = (on & (sense > 0)).any(axis=1), (on & (sense < 0)).any(axis=1)
    both = same & against  # two regions that share an edge: the inside lies on either side of it
    inside = (holds(region, middle) & ~same & ~against) | both
    return inside, same & ~both, against & ~both


def _corners(points: Floats) -> Floats:
    """The points of a loop at which it turns."""
    before, after = points - np.roll(points, 1, axis=0), np.roll(points, -1, axis=0) - points
    cross = np.abs(before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0])
    scale = np.maximum(np.hypot(*before.T), np.hypot(*after.T))
    return np.asarray(points[cross > 10 * SNAP_MM * scale])
