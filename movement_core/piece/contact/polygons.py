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
        side = np.empty((len(loop), 2, 2))
        side[:, 0], side[:-1, 1], side[-1:, 1] = loop, loop[1:], loop[:1]
        anticlockwise = _signed_area(loop, side[:, 1]) > 0
        edges.append(side if anticlockwise == (index == 0) else side[:, ::-1])
    return np.concatenate(edges)


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
    if not len(one) or not len(other):
        return NOTHING
    box, other_box = _edge_boxes(one), _edge_boxes(other)
    low = np.maximum(box[0].min(axis=0), other_box[0].min(axis=0))
    high = np.minimum(box[1].max(axis=0), other_box[1].max(axis=0))
    if (high - low <= SNAP_MM).any():
        return NOTHING
    for region, (lows, highs) in ((one, box), (other, other_box)):
        # Where no edge passes between the two boxes, all or nothing there is inside.
        passes = (lows < high - SNAP_MM) & (highs > low + SNAP_MM)
        if not (passes[:, 0] & passes[:, 1]).any() and not holds(region, (low + high)[None] / 2)[0]:
            return NOTHING
    boxes = _rectangle(one), _rectangle(other)
    if boxes[0] is not None and boxes[1] is not None:
        square = _shared_rectangle(boxes[0], boxes[1])
        if square is not None:
            return square
    # What lies outside the other's box cannot lie in the other.
    low, high = low - 2 * SNAP_MM, high + 2 * SNAP_MM
    near_one, near_other = (
        region[((lows <= high) & (highs >= low)).all(axis=1)]
        for region, (lows, highs) in ((one, box), (other, other_box))
    )
    if not len(near_one) and not len(near_other):
        return NOTHING
    first, second = _pieces(near_one, near_other)
    a_in, a_same, _ = _where(first, other)
    b_in, _, _ = _where(second, one)
    return np.concatenate([first[a_in | a_same], second[b_in]])


def without(one: Floats, other: Floats) -> Floats:
    """What is left of ``one`` outside ``other``."""
    if _apart(one, other):
        return one
    first, second = _pieces(one, other)
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


def _edge_boxes(region: Floats) -> tuple[Floats, Floats]:
    """Low and high corners (E, 2) of the boxes of the edges of a region."""
    return np.minimum(region[:, 0], region[:, 1]), np.maximum(region[:, 0], region[:, 1])


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


def _pieces(one: Floats, other: Floats) -> tuple[Floats, Floats]:
    """The edges of two regions, each cut wherever the boundary of the other meets them."""
    if not len(one) or not len(other):
        return one, other
    run, cutter = one[:, 1] - one[:, 0], other[:, 1] - other[:, 0]
    length, cutter_length = np.hypot(run[:, 0], run[:, 1]), np.hypot(cutter[:, 0], cutter[:, 1])
    rx, ry, cx, cy = run[:, :1], run[:, 1:], cutter[:, 0], cutter[:, 1]
    tx, ty = other[:, 0, 0] - one[:, :1, 0], other[:, 0, 1] - one[:, :1, 1]  # (n, m)
    cross, aside, aside_cutter = rx * cy - ry * cx, tx * ry - ty * rx, tx * cy - ty * cx
    long, wide = length[:, None], cutter_length[None, :]
    with np.errstate(divide="ignore", invalid="ignore"):
        slack, cutter_slack = SNAP_MM / long, SNAP_MM / wide
        # Corners of the other region that lie on an edge, also where the two run along each other.
        at, at_cutter = (tx * rx + ty * ry) / long**2, -(tx * cx + ty * cy) / wide**2
        along, along_cutter = aside_cutter / cross, aside / cross
        lies_on = (np.abs(aside) / long <= SNAP_MM) & (at > slack) & (at < 1 - slack)
        cutter_on = np.abs(aside_cutter) / wide <= SNAP_MM
    cutter_on &= (at_cutter > cutter_slack) & (at_cutter < 1 - cutter_slack)
    crosses = np.abs(cross) > 1e-9 * long * wide
    crosses &= (along > -slack) & (along < 1 + slack)
    crosses &= (along_cutter > -cutter_slack) & (along_cutter < 1 + cutter_slack)
    meets = crosses & (along > slack) & (along < 1 - slack)
    cutter_meets = crosses & (along_cutter > cutter_slack) & (along_cutter < 1 - cutter_slack)
    return (
        _cut(one, run, length, (meets, along), (lies_on, at)),
        _cut(other, cutter, cutter_length, (cutter_meets.T, along_cutter.T), (cutter_on.T, at_cutter.T)),
    )


def _cut(edges: Floats, run: Floats, length: Floats, *places: tuple[Bools, Floats]) -> Floats:
    """Edges cut at places (n, m) along them, from 0 to 1, where those hold; what has no length is left out."""
    if not any(held.any() for held, _ in places):
        return np.asarray(edges[length > SNAP_MM / 2])
    cuts = np.concatenate([np.where(held, along, 1.0) for held, along in places], axis=1)
    cuts = np.concatenate([np.zeros((len(edges), 1)), cuts, np.ones((len(edges), 1))], axis=1)
    cuts.sort(axis=1)
    low, high = cuts[:, :-1], cuts[:, 1:]
    edge, piece = np.nonzero((high - low) * length[:, None] > SNAP_MM / 2)
    start = edges[edge, 0] + low[edge, piece, None] * run[edge]
    end = edges[edge, 0] + high[edge, piece, None] * run[edge]
    return np.stack([start, end], axis=1)


def _where(pieces: Floats, region: Floats) -> tuple[Bools, Bools, Bools]:
    """For each piece: inside the region; on its boundary running the same way; on it running the other way."""
    if not len(pieces):
        none = np.zeros(0, dtype=bool)
        return none, none, none
    middle, run = (pieces[:, 0] + pieces[:, 1]) / 2, pieces[:, 1] - pieces[:, 0]
    edge = region[:, 1] - region[:, 0]
    if not edge.any(axis=1).all():  # an edge without length bounds nothing
        region, edge = region[edge.any(axis=1)], edge[edge.any(axis=1)]
    ex, ey = edge[:, 0], edge[:, 1]
    length = np.hypot(ex, ey)
    tx, ty = middle[:, :1] - region[:, 0, 0], middle[:, 1:] - region[:, 0, 1]  # (n, m)
    along = (tx * ex + ty * ey) / length**2
    on = (np.abs(tx * ey - ty * ex) / length <= 2 * SNAP_MM) & (along > 0) & (along < 1)
    sense = run[:, :1] * ex + run[:, 1:] * ey
    on &= np.abs(sense) > 0.9 * np.hypot(run[:, 0], run[:, 1])[:, None] * length
    same, against = (on & (sense > 0)).any(axis=1), (on & (sense < 0)).any(axis=1)
    both = same & against  # two regions that share an edge: the inside lies on either side of it
    inside, apart = both.copy(), ~same & ~against
    if apart.any():
        inside[apart] = holds(region, middle[apart])
    return inside, same & ~both, against & ~both


def _corners(points: Floats) -> Floats:
    """The points of a loop at which it turns."""
    before, after = points - np.roll(points, 1, axis=0), np.roll(points, -1, axis=0) - points
    cross = np.abs(before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0])
    scale = np.maximum(np.hypot(*before.T), np.hypot(*after.T))
    return np.asarray(points[cross > 10 * SNAP_MM * scale])
