"""Height of a panel's stress-free shape at any point."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.holding.model import LoadCase, Plate

Array = NDArray[np.float64]


def free_height(plate: Plate, case: LoadCase, points_mm: ArrayLike) -> Array:
    """(K,) height of the stress-free shape at points (K, 2), mm: rings, kinks and twist.

    Bow along the grain is not in it: boards of one panel may bow differently, which no stress-free shape can
    follow, so bow is a load.
    """
    along, across = np.asarray(points_mm, dtype=float).reshape(-1, 2).T
    near = case.free.height(across) + case.free.twist_per_mm * along * across
    if case.free_far is None:
        return np.asarray(near)
    far = case.free_far.height(across) + case.free_far.twist_per_mm * along * across
    share = along / plate.length_mm + 0.5
    result: Array = (1 - share) * near + share * far
    return result
