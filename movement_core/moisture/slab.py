"""A board stepped from one air to another: exact answers for constant diffusivity.

Crank, *The Mathematics of Diffusion* (2nd ed., 1975), plane sheet with surface evaporation (§4.3.6),
recalled: both faces alike, step in the air at time 0. Used to read films off exclusion tests, to say how
long a board takes, and to check the spectral and the marched solutions.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.wording import phrase

Array = NDArray[np.float64]

TERMS = 40


def biot_roots(biot: ArrayLike, terms: int = TERMS) -> Array:
    """(…, terms) positive roots β of β tan β = Biot, by bisection, each in its own half period."""
    number = np.asarray(biot, dtype=np.float64)[..., None]
    low = np.broadcast_to(np.arange(terms) * np.pi, (*number.shape[:-1], terms)).copy()
    high = low + np.pi / 2
    sign = np.where(np.arange(terms) % 2, -1.0, 1.0)
    for _ in range(54):
        middle = (low + high) / 2
        below = sign * (middle * np.sin(middle) - number * np.cos(middle)) < 0
        low, high = np.where(below, middle, low), np.where(below, high, middle)
    return (low + high) / 2


def uptake(fourier: ArrayLike, biot: ArrayLike) -> Array:
    """Share of the final change that a board has taken up after a step of the air on both faces.

    Parameters
    ----------
    fourier : D t / l², l the half thickness (the whole one when only one face is open); ≥ 0.
    biot : h l / D; ``numpy.inf`` for a face with no resistance.

    Returns
    -------
    Share 0 … 1, of the broadcast shape; better than 1e-4.

    Source: Crank (1975) §4.3.6 and, for short times, §4.3.2 (recalled).
    """
    time = within(fourier, phrase("Fourier number"), 0.0, np.inf, "")
    number = within(biot, phrase("Biot number"), 0.0, np.inf, "")
    finite = np.where(np.isinf(number), 1e9, number)
    roots = biot_roots(finite)
    weight = 2 * finite[..., None] ** 2 / (
        roots**2 * (roots**2 + finite[..., None] ** 2 + finite[..., None])
    )  # fmt: skip
    series = 1 - (weight * np.exp(-(roots**2) * time[..., None])).sum(-1)
    # A cut series is too high at short times. So are the two laws of the beginning, which are exact there.
    early = np.minimum(finite * time, 2 * np.sqrt(time / np.pi))
    return np.asarray(np.clip(np.minimum(series, early), 0.0, 1.0))[()]


def half_time_days(
    thickness_mm: ArrayLike,
    diffusivity_mm2_day: ArrayLike,
    exchange_mm_day: ArrayLike = np.inf,
    faces: int = 2,
) -> Array:
    """Days until half of a step in the air has gone into the board (to 1e-6 of itself).

    ``exchange_mm_day`` is that of each open face; ``faces`` 2, or 1 where the other face is blocked.
    """
    thickness = within(thickness_mm, phrase("thickness"), 1e-3, 1e4, "mm")
    depth = thickness / 2 if faces == 2 else thickness
    rate = within(diffusivity_mm2_day, phrase("diffusivity"), 1e-9, 1e9, "mm²/day")
    biot = within(exchange_mm_day, phrase("exchange"), 0.0, np.inf, "mm/day") * depth / rate
    biot, _ = np.broadcast_arrays(biot, depth)
    low, high = np.zeros(biot.shape), 1.0 + 2.0 / np.maximum(biot, 1e-9)
    for _ in range(60):
        middle = (low + high) / 2
        early = uptake(middle, biot) < 0.5
        low, high = np.where(early, middle, low), np.where(early, high, middle)
    return np.asarray((low + high) / 2 * depth**2 / rate)[()]
