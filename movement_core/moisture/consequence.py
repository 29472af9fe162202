"""From moisture to movement: width through the year, and the cup that uneven moisture adds to that of the
rings.

Width is taken linear in moisture here (Wood Handbook FPL-GTR-190 Eq. 13-2, p. 13-15); callers that want
another basis give the strain themselves. The cup of a gradient is that of a bar bent by a linear strain.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.moisture.response import WoodYear
from movement_core.wording import phrase

Array = NDArray[np.float64]


def gradient_curvature(
    coefficient: ArrayLike,
    face_difference_mc: ArrayLike,
    thickness_mm: ArrayLike,
    flattened_at: ArrayLike = 0.0,
) -> Array:
    """Curvature across the board from uneven moisture, 1/mm; positive = crown (the show face is the longer
    one).

    Parameters
    ----------
    coefficient : strain per 1 % MC across the width.
    face_difference_mc : show minus back, percent (``WoodYear.face_difference_mc``).
    flattened_at : the face difference at the moment the board was planed flat, percent.

    Source: κ = (12/t³) ∫ C ΔM y dy. A coefficient that differs through the thickness needs the integral
    itself.
    """
    thickness = within(thickness_mm, phrase("thickness"), 0.1, 1000.0, "mm")
    difference = np.asarray(face_difference_mc, dtype=np.float64) - np.asarray(flattened_at, dtype=np.float64)
    return np.asarray(np.asarray(coefficient, dtype=np.float64) * difference / thickness)[()]


def crown_mm(width_mm: ArrayLike, curvature_per_mm: ArrayLike) -> Array:
    """Height of the middle over the edges, mm, of a strip this wide (along its arc) with this curvature.

    Exact for a circle: (1 − cos(κw/2))/κ. Add it to the crown from the rings (both small against the width).
    """
    half = np.asarray(width_mm, dtype=np.float64) / 2
    turn = np.asarray(curvature_per_mm, dtype=np.float64) * half
    # (1 − cos x)/x = sin²(x/2)/(x/2): no cancellation at small curvature
    return np.asarray(half * np.sin(turn / 2) * np.sinc(turn / 2 / np.pi))[()]


def width_through_year(
    width_mm: float, coefficient: float, year: WoodYear, width_taken_at_mc: ArrayLike
) -> Array:
    """(…, 365) width in mm of a board that was this wide at that moisture."""
    taken = within(width_taken_at_mc, phrase("moisture the width was taken at"), 0.0, 30.0, "%")
    width = float(within(width_mm, phrase("width"), 1e-3, 1e5, "mm"))
    return np.asarray(width * (1 + coefficient * (year.mean_mc - np.asarray(taken)[..., None])))


def crown_through_year(
    width_mm: float, coefficient: float, year: WoodYear, flattened_at: ArrayLike = 0.0
) -> Array:
    """(…, 365) crown in mm (negative: hollow) from uneven moisture alone; add the crown from the rings.

    ``flattened_at`` is the face difference, percent, when the board was last planed flat: 0 if it was even
    then.
    """
    thickness = np.asarray(year.slab.thickness_mm)[..., None]
    level = np.asarray(flattened_at, dtype=np.float64)[..., None]
    return crown_mm(width_mm, gradient_curvature(coefficient, year.face_difference_mc, thickness, level))
