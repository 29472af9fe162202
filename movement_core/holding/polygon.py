"""Plane polygons: clipping to a rectangle, inside or not, distance to the edge, hull and area."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]


def clip_to_rectangle(outline: Array, half: Array) -> Array:
    """The part of a line or polygon inside −half … half: Sutherland–Hodgman clipping, (K, 2), K may be 0."""
    closed = len(outline) > 2
    for axis in (0, 1):
        for sign in (1.0, -1.0):
            limit = half[axis]
            inside = sign * outline[:, axis] <= limit + 1e-9
            kept: list[Array] = []
            pairs = range(len(outline)) if closed else range(1, len(outline))
            if not closed and len(outline) and inside[0]:
                kept.append(outline[0])
            for i in pairs:
                before, here = outline[i - 1], outline[i]
                if inside[i - 1] != inside[i]:
                    share = (sign * limit - before[axis]) / (here[axis] - before[axis])
                    kept.append(before + share * (here - before))
                if inside[i]:
                    kept.append(here)
            outline = np.array(kept).reshape(-1, 2)
            if len(outline) < 2:
                return np.zeros((0, 2))
    return outline


def inside_polygon(points: Array, outline: Array) -> NDArray[np.bool_]:
    """(N,) which points lie inside a simple polygon: even-odd rule."""
    x, y = points[:, :1], points[:, 1:]
    x1, y1 = outline.T
    x2, y2 = np.roll(outline, -1, axis=0).T
    crosses = (y1 > y) != (y2 > y)
    with np.errstate(divide="ignore", invalid="ignore"):
        at = (x2 - x1) * (y - y1) / (y2 - y1) + x1
    odd: NDArray[np.bool_] = np.sum(crosses & (x < at), axis=1) % 2 == 1
    return odd


def distance_to_edge(points: Array, outline: Array) -> Array:
    """(N,) least distance of points to a polygon's edge."""
    start, way = outline[None], (np.roll(outline, -1, axis=0) - outline)[None]
    along = np.sum((points[:, None] - start) * way, axis=-1) / np.maximum(np.sum(way**2, axis=-1), 1e-30)
    nearest = start + np.clip(along, 0.0, 1.0)[..., None] * way
    result: Array = np.min(np.linalg.norm(points[:, None] - nearest, axis=-1), axis=1)
    return result


FLAT_MM = 0.2  # a corner of a hull that stands out less than this is left out


def convex_hull(points: Array) -> Array:
    """(K, 2) corners of the convex hull of (N, 2) points, in the sense of the first axis to the second.

    Corners that stand out by less than ``FLAT_MM`` are left out. Andrew's monotone chain.
    """
    ordered = np.unique(np.round(points, 6), axis=0)
    if len(ordered) < 3:
        return ordered
    corners = [*_half_hull(ordered), *_half_hull(ordered[::-1])]
    hull = np.array(corners)
    while len(hull) > 4:
        before, after = np.roll(hull, 1, axis=0), np.roll(hull, -1, axis=0)
        chord = np.linalg.norm(after - before, axis=1)
        stands_out = np.abs(_cross(hull - before, after - before)) / np.maximum(chord, 1e-12)
        least = int(np.argmin(stands_out))
        if stands_out[least] >= FLAT_MM:
            break
        hull = np.delete(hull, least, axis=0)
    return hull


def _half_hull(ordered: Array) -> list[Array]:
    chain: list[Array] = []
    for point in ordered:
        while len(chain) > 1 and _cross(chain[-1] - chain[-2], point - chain[-2]) <= 0:
            chain.pop()
        chain.append(point)
    return chain[:-1]


def _cross(a: Array, b: Array) -> Array:
    return np.asarray(a[..., 0] * b[..., 1] - a[..., 1] * b[..., 0])


def polygon_area(outline: Array) -> float:
    """Area of a simple polygon (K, 2), positive; 0 for fewer than three points."""
    if len(outline) < 3:
        return 0.0
    x, y = outline.T
    return float(abs(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1))) / 2)
