"""What of a piece is seen from one side: the visible parts of its edges, and where each part shows.

A buffer of depths over a grid of points decides what hides what, so that parts of any shape may reach through each
other. Lines stay lines: only where they begin and end is found on the grid.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.contact.bodies import Body
from movement_core.wording import phrase

Floats = NDArray[np.float64]
Ints = NDArray[np.int64]

NOTHING = -1
MOST_POINTS = 500_000  # of the grid: a large picture gets a coarser one
GRID_PER_MM = 5.0  # points of the grid in a millimetre of paper
FRONT = 1e-6  # cosine from which a face looks at the viewer
SAME_MM = 1e-3  # points nearer than this are one
HIDDEN_MM = 0.25  # of paper: how much deeper than the front an edge may seem for the coarseness of the grid
SHORTEST_MM = 0.5  # of paper: shorter runs of a longer edge are noise of the grid
_MIX = (0x9E3779B97F4A7C15, 0xC2B2AE3D27D4EB4F, 0x165667B19E3779F9)  # odd numbers that scatter whole ones
SAMPLES_PER_MM = 8.0  # along an edge, on paper


@dataclass(frozen=True)
class Side:
    """A viewpoint at infinity: unit vectors to the right and up in the picture, and toward the viewer."""

    name: str
    right: tuple[float, float, float]
    up: tuple[float, float, float]

    @property
    def axes(self) -> Floats:
        right, up = np.array(self.right), np.array(self.up)
        right, up = right / np.linalg.norm(right), up / np.linalg.norm(up)
        return np.array([right, up, np.cross(right, up)])


ABOVE = Side(phrase("from the front, above"), (1, 1, 0), (-1, 1, 2))
BELOW = Side(phrase("from behind, below"), (-1, -1, 0), (-1, 1, 2))


@dataclass(frozen=True, eq=False)
class Seen:
    """Bodies seen from one side, on paper: x to the right, y down, mm, from the picture's upper left corner.

    Attributes
    ----------
    lines : for each body (K, 2, 2) visible pieces of its edges.
    faces : (H, W) which face lies in front at each point of the grid, or NOTHING; owner : body of each face.
    step_mm : distance of the grid's points; point (row, column) lies at ((column + ½) · step, (row + ½) · step).
    """

    lines: tuple[Floats, ...]
    faces: Ints
    owner: Ints
    step_mm: float
    width_mm: float
    height_mm: float

    @property
    def bodies(self) -> Ints:
        """(H, W) which body lies in front, or NOTHING."""
        known = np.append(self.owner, NOTHING)
        return np.asarray(known[self.faces], dtype=np.int64)


def see(bodies: Sequence[Body], side: Side, most_mm: tuple[float, float]) -> Seen:
    """Draw bodies from a side into a frame of at most so many mm (width, height).

    Everything is drawn to one scale, which fills the frame one way or the other.
    """
    axes = side.axes
    points = np.vstack([body.points for body in bodies]) @ axes.T
    low, high = points.min(axis=0), points.max(axis=0)
    extent = np.maximum(high[:2] - low[:2], 1e-9)
    scale = float(min(most_mm[0] / extent[0], most_mm[1] / extent[1]))
    width, height = (float(v) for v in extent * scale)

    def onto_paper(given: Floats) -> Floats:
        """(…, 3) global → x, y on paper and the nearness to the viewer, all in mm of paper."""
        view = given @ axes.T
        return np.stack(
            [
                (view[..., 0] - low[0]) * scale,
                (high[1] - view[..., 1]) * scale,
                (view[..., 2] - low[2]) * scale,
            ],
            axis=-1,
        )

    grid = _Grid(width, height)
    owner: list[int] = []
    edges: list[Floats] = []
    edge_body: list[Ints] = []
    for index, body in enumerate(bodies):
        found: list[Floats] = []
        for face in body.planar:
            if float(face.normal @ axes[2]) <= FRONT:
                continue
            loops = [onto_paper(np.asarray(loop, dtype=np.float64)) for loop in face.loops]
            grid.add(loops, len(owner))
            owner.append(index)
            found += [np.stack([loop, np.roll(loop, -1, axis=0)], axis=1) for loop in loops]
        for curved in body.curved:
            triangles = onto_paper(np.asarray(curved.triangles, dtype=np.float64))
            front = _looks_at_us(triangles)
            grid.add_mesh(triangles[front], len(owner))
            owner.append(index)
            found.append(_outlines(triangles[front]))
        lines = _once(np.concatenate(found)) if found else np.zeros((0, 2, 3))
        edges.append(lines)
        edge_body.append(np.full(len(lines), index))
    all_edges, bodies_of = np.concatenate(edges), np.concatenate(edge_body)
    visible, which = _visible(all_edges, grid)
    lines_of = tuple(visible[bodies_of[which] == index] for index in range(len(bodies)))
    return Seen(lines_of, grid.face, np.array(owner, dtype=np.int64), grid.step, width, height)


class _Grid:
    """Nearness to the viewer, and the face in front, over the points of a picture."""

    def __init__(self, width_mm: float, height_mm: float) -> None:
        self.step = max(1.0 / GRID_PER_MM, float(np.sqrt(width_mm * height_mm / MOST_POINTS)))
        shape = (int(np.ceil(height_mm / self.step)) + 1, int(np.ceil(width_mm / self.step)) + 1)
        self.near = np.full(shape, -np.inf)
        self.face = np.full(shape, NOTHING, dtype=np.int64)

    def add(self, loops: Sequence[Floats], number: int) -> None:
        """Put a flat face before what lies behind it. Loops: outline and holes, (K, 3) on paper."""
        outline = loops[0]
        flat = np.vstack(loops)[:, :2] / self.step - 0.5  # in steps of the grid: its points are whole numbers
        c0, r0 = (int(v) for v in np.maximum(np.ceil(flat.min(axis=0)), 0))
        c1, r1 = (int(v) for v in np.floor(flat.max(axis=0)))
        r1, c1 = min(r1, self.near.shape[0] - 1), min(c1, self.near.shape[1] - 1)
        if r1 < r0 or c1 < c0:
            return
        normal = _normal(outline)
        if abs(normal[2]) < FRONT:
            return
        inside = _filled(loops, self.step, (r0, r1), (c0, c1))
        rows, columns = np.nonzero(inside)
        x, y = (columns + c0 + 0.5) * self.step, (rows + r0 + 0.5) * self.step
        start = outline[0]
        near = start[2] - (normal[0] * (x - start[0]) + normal[1] * (y - start[1])) / normal[2]
        rows, columns = rows + r0, columns + c0
        ahead = near > self.near[rows, columns] + 1e-9
        self.near[rows[ahead], columns[ahead]] = near[ahead]
        self.face[rows[ahead], columns[ahead]] = number

    def add_mesh(self, triangles: Floats, number: int) -> None:
        """The same for triangles (T, 3, 3) that may be many and smaller than the grid: all of them at once."""
        flat = triangles[..., :2] / self.step - 0.5
        first = np.maximum(np.ceil(flat[..., 1].min(axis=1)), 0).astype(np.int64)
        last = np.minimum(np.floor(flat[..., 1].max(axis=1)), self.near.shape[0] - 1).astype(np.int64)
        which, rows = _counted(first, last)
        ends = np.stack([flat[which], np.roll(flat[which], -1, axis=1)], axis=2)  # edges (R, 3, 2, 2)
        ya, yb = ends[:, :, 0, 1], ends[:, :, 1, 1]
        with np.errstate(divide="ignore", invalid="ignore"):
            share = (rows[:, None] - ya) / (yb - ya)
        crossed = (share >= 0) & (share <= 1)
        x = ends[:, :, 0, 0] + np.where(crossed, share, 0.0) * (ends[:, :, 1, 0] - ends[:, :, 0, 0])
        left = np.where(crossed, x, np.inf).min(axis=1)
        right = np.where(crossed, x, -np.inf).max(axis=1)
        some = crossed.any(axis=1)
        which, rows, left, right = which[some], rows[some], left[some], right[some]
        low = np.maximum(np.ceil(left - 1e-9), 0).astype(np.int64)
        high = np.minimum(np.floor(right + 1e-9), self.near.shape[1] - 1).astype(np.int64)
        span, columns = _counted(low, high)
        which, rows = which[span], rows[span]
        sides = triangles[which, 1:] - triangles[which, :1]
        normal = np.asarray(np.cross(sides[:, 0], sides[:, 1]), dtype=np.float64)
        steep = np.abs(normal[:, 2]) > 1e-12
        which, rows, columns = which[steep], rows[steep], columns[steep]
        normal = normal[steep]
        start = triangles[which, 0]
        aside = (columns + 0.5) * self.step - start[:, 0]
        below = (rows + 0.5) * self.step - start[:, 1]
        deep = (normal[:, 0] * aside + normal[:, 1] * below) / normal[:, 2]
        # A sliver has no plane to speak of.
        near = np.minimum(start[:, 2] - deep, triangles[which, :, 2].max(axis=1))
        before = self.near[rows, columns]
        np.maximum.at(self.near, (rows, columns), near)
        ahead = near > before + 1e-9
        self.face[rows[ahead], columns[ahead]] = number


def _counted(first: Ints, last: Ints) -> tuple[Ints, Ints]:
    """Whole numbers from ``first`` to ``last`` of each place, one after another, and the place each belongs to."""
    count = np.maximum(last - first + 1, 0)
    which = np.repeat(np.arange(len(first)), count)
    return which, np.arange(count.sum()) - np.repeat(np.cumsum(count) - count, count) + first[which]


def _normal(outline: Floats) -> Floats:
    """A normal of a flat outline, however many corners it has (half the sum of cross products: its area vector)."""
    rest = outline - outline[0]
    return np.asarray(np.cross(rest, np.roll(rest, -1, axis=0)).sum(axis=0))


def _filled(
    loops: Sequence[Floats], step: float, rows: tuple[int, int], columns: tuple[int, int]
) -> NDArray[np.bool_]:
    """Which points of a part of the grid lie inside loops, by parity: each edge turns what lies to its right."""
    height, width = rows[1] - rows[0] + 1, columns[1] - columns[0] + 1
    turns = np.zeros((height, width + 1), dtype=np.int32)
    for loop in loops:
        flat = loop[:, :2] / step - 0.5
        for (xa, ya), (xb, yb) in zip(flat.tolist(), np.roll(flat, -1, axis=0).tolist()):
            if ya > yb:
                xa, ya, xb, yb = xb, yb, xa, ya
            first, last = max(int(np.ceil(ya)), rows[0]), min(int(np.ceil(yb)) - 1, rows[1])
            if last < first:
                continue
            at = np.arange(first, last + 1)
            x = xa + (at - ya) * (xb - xa) / (yb - ya)
            column = np.clip(np.ceil(x) - columns[0], 0, width).astype(np.int64)
            turns[at - rows[0], column] += 1  # one crossing a row, so no place is named twice
    return np.asarray(np.cumsum(turns[:, :-1], axis=1, dtype=np.int32) % 2 == 1)


def _looks_at_us(triangles: Floats) -> NDArray[np.bool_]:
    """Whether triangles on paper, counter-clockwise seen from outside, look at the viewer (y runs down)."""
    a, b = triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0]
    return np.asarray(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0] < 0)


def _outlines(triangles: Floats) -> Floats:
    """Edges (K, 2, 3) where the front of a curved face turns away from the viewer, or ends: those of one triangle."""
    edges = np.stack([triangles, np.roll(triangles, -1, axis=1)], axis=2).reshape(-1, 2, 3)
    _, first, count = np.unique(_keys(edges), return_index=True, return_counts=True)
    return np.asarray(edges[first[count == 1]])


def _keys(edges: Floats) -> NDArray[np.uint64]:
    """(K,) numbers that are the same for the same edge, whichever way it runs."""
    whole = np.round(edges / SAME_MM).astype(np.int64).astype(np.uint64)
    mixed = whole * np.array(_MIX, dtype=np.uint64)  # wraps round, as hashing does
    ends = (
        mixed[..., 0]
        ^ (mixed[..., 1] << np.uint64(21))
        ^ (mixed[..., 2] << np.uint64(42))
        ^ mixed.sum(axis=-1)
    )
    return np.asarray(ends[:, 0] * ends[:, 1] + ends[:, 0] + ends[:, 1])


def _once(edges: Floats) -> Floats:
    """Every edge once, and none without length on paper."""
    long = np.hypot(*(edges[:, 1, :2] - edges[:, 0, :2]).T) > SAME_MM
    edges = edges[long]
    if not len(edges):
        return edges
    return np.asarray(edges[np.unique(_keys(edges), return_index=True)[1]])


def _visible(edges: Floats, grid: _Grid) -> tuple[Floats, Ints]:
    """The visible pieces (K, 2, 2) of edges (N, 2, 3), and which edge each is of."""
    if not len(edges):
        return np.zeros((0, 2, 2)), np.zeros(0, dtype=np.int64)
    length = np.hypot(*(edges[:, 1, :2] - edges[:, 0, :2]).T)
    count = np.maximum(3, np.ceil(length * SAMPLES_PER_MM).astype(np.int64) + 1)
    which = np.repeat(np.arange(len(edges)), count)
    place = np.arange(count.sum()) - np.repeat(np.cumsum(count) - count, count)
    share = place / (count[which] - 1)
    at = edges[which, 0] + share[:, None] * (edges[which, 1] - edges[which, 0])
    behind = _least_around(grid.near)
    row = np.clip((at[:, 1] / grid.step).astype(np.int64), 0, behind.shape[0] - 1)
    column = np.clip((at[:, 0] / grid.step).astype(np.int64), 0, behind.shape[1] - 1)
    shown = at[:, 2] + HIDDEN_MM >= behind[row, column]
    begins = shown & ((place == 0) | ~np.roll(shown, 1))
    ends = shown & ((place == count[which] - 1) | ~np.roll(shown, -1))
    first, last = np.flatnonzero(begins), np.flatnonzero(ends)
    pieces = np.stack([at[first, :2], at[last, :2]], axis=1)
    of = which[first]
    long = np.hypot(*(pieces[:, 1] - pieces[:, 0]).T)
    keep = (long >= SHORTEST_MM) | ((long > 0) & (long >= 0.6 * length[of]))
    return pieces[keep], of[keep]


def _least_around(near: Floats) -> Floats:
    """The least nearness at each point and its eight neighbours: an outline is not hidden by its own face."""
    padded = np.pad(near, 1, constant_values=-np.inf)
    h, w = near.shape
    shifted = [padded[i : i + h, j : j + w] for i in range(3) for j in range(3)]
    return np.asarray(np.min(shifted, axis=0))
