"""Regions of a plane, bounded by straight edges, with or without holes: what two of them share, what one leaves.

A region is (E, 2, 2) directed edges (from, to) with its inside on the left, in any order. Edges that lie on each
other, corners on edges and equal regions are the rule in furniture, not the exception: every edge is cut where the
other region's boundary meets it, each piece is told apart by its middle (inside, outside, on the boundary the same
way or the other way), and the pieces that bound the answer are kept.
"""

from __future__ import annotations

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
    one, other = _near(one, other)
    if not len(one) or not len(other):
        return NOTHING
    first, second = _pieces(one, other), _pieces(other, one)
    a_in, a_same, _ = _where(first, other)
    b_in, _, _ = _where(second, one)
    return np.concatenate([first[a_in | a_same], second[b_in]])


def without(one: Floats, other: Floats) -> Floats:
    """What is left of ``one`` outside ``other``."""
    if not len(one) or not len(other):
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


def _near(one: Floats, other: Floats) -> tuple[Floats, Floats]:
    """Both regions, or nothing where their boxes do not meet."""
    if not len(one) or not len(other):
        return NOTHING, NOTHING
    a, b = one.reshape(-1, 2), other.reshape(-1, 2)
    apart = (a.min(axis=0) > b.max(axis=0)) | (b.min(axis=0) > a.max(axis=0))
    return (NOTHING, NOTHING) if apart.any() else (one, other)


def _pieces(one: Floats, other: Floats) -> Floats:
    """The edges of ``one`` cut wherever the boundary of ``other`` meets them."""
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
    middle, run = pieces.mean(axis=1), pieces[:, 1] - pieces[:, 0]
    edge = region[:, 1] - region[:, 0]
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
