"""Where a panel can rest: points sampled on the edges and the inside of its bearings."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.holding.model import Bearing, Plate
from movement_core.holding.polygon import clip_to_rectangle, inside_polygon

Array = NDArray[np.float64]

MOST_INSIDE = 150  # contact points inside one wide bearing
EDGE_BREADTH_MM = (
    20.0  # breadth that the stiffness per mm of edge was estimated for; areas are shared out by it
)


@dataclass(frozen=True, eq=False)
class ContactPoints:
    """m sampled points of the support.

    ``runs`` are index ranges of points that follow each other on one edge of one bearing.
    """

    points_mm: Array  # (m, 2)
    height_mm: Array  # (m,)
    reach_mm: Array  # (m,) length of edge that each point stands for
    stiffness_n_mm: Array  # (m,)
    bearing: NDArray[np.int64]  # (m,)
    runs: tuple[tuple[int, int], ...]


def contact_points(
    plate: Plate,
    bearings: Sequence[Bearing],
    spacing_mm: float | None = None,
    glue_lines_mm: Sequence[float] = (),
) -> ContactPoints:
    """Sample the part of each bearing that lies under the panel.

    Edges are sampled every ``spacing_mm`` (default: an eightieth of the panel's longer side, at least 8 mm)
    and where they cross a glue line, each point standing for half a step to either side; wide flat bearings
    are sampled inside too. What lies beyond the
    panel's edge is cut off, a bearing wholly beyond it vanishes.
    """
    spacing = spacing_mm or max(8.0, max(plate.length_mm, plate.width_mm) / 80)
    half = np.array([plate.length_mm / 2, plate.width_mm / 2])
    points: list[Array] = []
    reach: list[Array] = []
    owner: list[Array] = []
    runs: list[tuple[int, int]] = []
    count = 0
    for index, bearing in enumerate(bearings):
        outline = clip_to_rectangle(np.asarray(bearing.outline_mm, dtype=float), half)
        if not len(outline):
            continue
        pieces = (
            [_edge(outline[0], outline[1], spacing, glue_lines_mm)]
            if len(outline) == 2
            else _polygon(outline, spacing, glue_lines_mm)
        )
        for place, length in (part for piece in pieces for part in _on_the_plate(plate, *piece)):
            points.append(place)
            reach.append(length)
            owner.append(np.full(len(place), index))
            runs.append((count, count + len(place)))
            count += len(place)
    if not points:
        none = np.zeros(0)
        return ContactPoints(np.zeros((0, 2)), none, none, none, np.zeros(0, dtype=np.int64), ())
    bearing_of = np.concatenate(owner).astype(np.int64)
    stiffness = np.array([b.stiffness_n_mm2 for b in bearings])[bearing_of]
    length = np.concatenate(reach)
    heights = np.array([b.height_mm for b in bearings])[bearing_of]
    return ContactPoints(np.vstack(points), heights, length, stiffness * length, bearing_of, tuple(runs))


def _on_the_plate(plate: Plate, places: Array, reach: Array) -> list[tuple[Array, Array]]:
    """The stretches of an edge that lie under the panel's outline."""
    if not plate.outline_mm:
        return [(places, reach)]
    inside = np.concatenate([[False], plate.holds(places), [False]])
    starts = np.flatnonzero(~inside[:-1] & inside[1:])
    ends = np.flatnonzero(inside[:-1] & ~inside[1:])
    return [(places[a:b], reach[a:b]) for a, b in zip(starts, ends)]


def _edge(start: Array, end: Array, spacing: float, glue_lines: Sequence[float]) -> tuple[Array, Array]:
    length = math.dist(start, end)
    share = np.linspace(0.0, 1.0, max(2, math.ceil(length / spacing) + 1))
    rise = end[1] - start[1]
    if len(glue_lines) and abs(rise) > 1e-6:
        crossings = (np.asarray(glue_lines, dtype=float) - start[1]) / rise
        crossings = crossings[(crossings > 0) & (crossings < 1)]
        near = np.any(np.abs(share[:, None] - crossings) * length < spacing / 4, axis=1)
        near[[0, -1]] = False
        share = np.unique(np.concatenate([share[~near], crossings]))
    steps = np.diff(share) * length
    reach = np.concatenate([steps[:1], steps[:-1] + steps[1:], steps[-1:]]) / 2
    return start + share[:, None] * (end - start), reach


def _polygon(outline: Array, spacing: float, glue_lines: Sequence[float]) -> list[tuple[Array, Array]]:
    pieces = []
    for start, end in zip(outline, np.roll(outline, -1, axis=0)):
        if math.dist(start, end) > 1e-6:
            pieces.append(_edge(start, end, spacing, glue_lines))
    low, high = outline.min(axis=0), outline.max(axis=0)
    if np.min(high - low) > 2 * spacing:
        pitch = max(2.5 * spacing, math.sqrt(float(np.prod(high - low)) / MOST_INSIDE))
        axes = [np.arange(a + pitch / 2, b, pitch) for a, b in zip(low, high)]
        grid = np.stack(np.meshgrid(*axes, indexing="ij"), axis=-1).reshape(-1, 2)
        grid = grid[inside_polygon(grid, outline)]
        if len(grid):
            pieces.append((grid, np.full(len(grid), pitch**2 / EDGE_BREADTH_MM)))
    return pieces
