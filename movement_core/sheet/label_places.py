"""Where the labels of a piece stand in space: two columns beside it, as seen from the usual corner view.

Each label stands on the side its part is nearer to, in the order of the parts' height in that view, so that
leaders do not cross and labels do not cover each other or the piece.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

RIGHT = np.array([1.0, 1.0, 0.0]) / np.sqrt(2)  # of the picture, in the corner view from +x −y +z
UP = np.array([-1.0, 1.0, 2.0]) / np.sqrt(6)
ASIDE = 0.18  # distance of the columns from the piece, in diagonals of its box
SPACING = 0.055  # least distance of two labels, in diagonals


def label_places(anchors_mm: Floats) -> Floats:
    """Places (N, 3) of the labels for anchor points (N, 3) on the parts, mm."""
    anchors = np.asarray(anchors_mm, dtype=np.float64).reshape(-1, 3)
    if not len(anchors):
        return anchors
    low, high = anchors.min(axis=0), anchors.max(axis=0)
    centre, diagonal = (low + high) / 2, max(float(np.linalg.norm(high - low)), 1.0)
    across, height = (anchors - centre) @ RIGHT, (anchors - centre) @ UP
    order = np.argsort(across, kind="stable")
    left = np.zeros(len(anchors), dtype=bool)
    left[order[: (len(anchors) + 1) // 2]] = True
    places = np.empty_like(anchors)
    for side, rack in ((left, across.min() - ASIDE * diagonal), (~left, across.max() + ASIDE * diagonal)):
        heights = spread_apart(height[side], SPACING * diagonal)
        places[side] = centre + rack * RIGHT + heights[:, None] * np.array([0.0, 0.0, 1.0]) / UP[2]
    return places


def spread_apart(heights: Floats, spacing: float) -> Floats:
    """Heights moved as little as needed to stand at least ``spacing`` apart, order kept."""
    if not len(heights):
        return heights
    order = np.argsort(heights, kind="stable")
    steps = np.arange(len(heights)) * spacing
    # Least squares with x[i+1] − x[i] ≥ spacing is isotonic regression of x − i·spacing: pool what falls back.
    pools: list[list[float]] = []
    for value in heights[order] - steps:
        pools.append([float(value), 1.0])
        while len(pools) > 1 and pools[-2][0] >= pools[-1][0]:
            mean, count = pools.pop()
            pools[-1] = [
                (pools[-1][0] * pools[-1][1] + mean * count) / (pools[-1][1] + count),
                pools[-1][1] + count,
            ]
    moved: Floats = np.concatenate([np.full(int(count), mean) for mean, count in pools]) + steps
    result = np.empty_like(moved)
    result[order] = moved
    return result
