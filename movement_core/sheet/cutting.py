"""Cuts triangles and lines at planes, so that a mesh can bend: plain arrays in and out."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]
Indices = NDArray[np.int64]

SAME = 1e-9


def cut_triangles(
    points: Floats, normals: Floats, triangles: Indices, axis: int, places: Sequence[float]
) -> tuple[Floats, Floats, Indices]:
    """Cut a mesh at planes across an axis, so that no triangle reaches over one of them.

    Parameters
    ----------
    points, normals : (N, 3) of the vertices. triangles : (T, 3) indices.
    places : where on the axis.

    Returns
    -------
    Points, normals and triangles; area, orientation and the vertices that were there stay, in their order.
    """
    for place in places:
        points, normals, triangles = _cut_at(points, normals, triangles, axis, place)
    return points, normals, triangles


def _cut_at(
    points: Floats, normals: Floats, triangles: Indices, axis: int, place: float
) -> tuple[Floats, Floats, Indices]:
    height = points[triangles, axis] - place
    scale = SAME * max(1.0, float(np.ptp(points[:, axis])) if len(points) else 1.0)
    side = np.where(np.abs(height) <= scale, 0, np.sign(height)).astype(int)
    over = (side.min(axis=1) < 0) & (side.max(axis=1) > 0) if len(side) else np.zeros(0, dtype=bool)
    if not over.any():
        return points, normals, triangles
    made: dict[tuple[int, int], int] = {}

    def between(one: int, other: int) -> int:
        """Number of the vertex on an edge."""
        return made.setdefault((min(one, other), max(one, other)), len(points) + len(made))

    halves = [
        half
        for corners, signs in zip(triangles[over].tolist(), side[over].tolist())
        for half in _halves(corners, signs, between)
    ]
    low, high = np.array(list(made)).T
    part = ((place - points[low, axis]) / (points[high, axis] - points[low, axis]))[:, None]
    added = points[low] + part * (points[high] - points[low])
    added[:, axis] = place
    leaning = normals[low] + part * (normals[high] - normals[low])
    leaning /= np.linalg.norm(leaning, axis=1, keepdims=True)
    return (
        np.concatenate([points, added]),
        np.concatenate([normals, leaning]),
        np.concatenate([triangles[~over], np.array(halves, dtype=np.int64)]),
    )


def _halves(
    corners: list[int], signs: list[int], between: Callable[[int, int], int]
) -> list[tuple[int, int, int]]:
    """The two or three triangles that one falls into; ``between`` gives the vertex on an edge."""
    on = [i for i in range(3) if signs[i] == 0]
    if on:
        a, b, c = (corners[(on[0] + i) % 3] for i in range(3))
        middle = between(b, c)
        return [(a, b, middle), (a, middle, c)]
    alone = next(i for i in range(3) if signs.count(signs[i]) == 1)
    a, b, c = (corners[(alone + i) % 3] for i in range(3))
    first, second = between(a, b), between(a, c)
    return [(a, first, second), (first, b, c), (first, c, second)]


def cut_line(line: Floats, axis: int, places: Sequence[float]) -> Floats:
    """A polyline (N, 3) with further points where it crosses planes across an axis."""
    for place in places:
        height = line[:, axis] - place
        crossing = np.flatnonzero((height[:-1] * height[1:]) < 0)
        if len(crossing):
            part = height[crossing] / (height[crossing] - height[crossing + 1])
            added = line[crossing] + part[:, None] * (line[crossing + 1] - line[crossing])
            line = np.insert(line, crossing + 1, added, axis=0)
    return line


def even_places(size: float, count: int) -> list[float]:
    """The planes that cut a size about 0 into so many slices."""
    return [float(v) for v in np.linspace(-size / 2, size / 2, count + 1)[1:-1]]
