"""Legs, short parts and blocks: moisture that comes in from two or three directions.

A step of the air spreads in a rectangular block as the product of its slabs: what has not yet changed is the
product of what each slab alone would not yet have changed (Newman's rule; Crank 1975 §2.2, recalled). A
year is a sum of small steps. The same finish is taken on all long sides; the ends may have their own.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.air.bounds import within
from movement_core.air.daily import DAYS, Air
from movement_core.moisture.finish import FaceFinish, as_face
from movement_core.moisture.response import mean_air
from movement_core.moisture.slab import uptake
from movement_core.moisture.transport import DEFAULT_DIFFUSION, diffusivity, exchange
from movement_core.wording import phrase

Array = NDArray[np.float64]

# Diffusivity along ÷ across the grain: up to 12 (spruce) and 15 (beech), Sonderegger et al. 2011 (abstract,
# read).
ALONG_TO_ACROSS = 10.0
LONGEST_MEMORY_DAYS = 40 * DAYS


@dataclass(frozen=True, eq=False)
class BlockYear:
    """A block's year.

    Attributes
    ----------
    mean_mc, air_mc : (365,) mean of the block and the air's equilibrium, percent.
    lag_days : how late the yearly wave is. swing_share : range of the mean ÷ range of the air; nan in
        steady air.
    """

    mean_mc: Array
    air_mc: Array
    lag_days: float
    swing_share: float


def block_year(
    air: Air,
    width_mm: float,
    thickness_mm: float,
    specific_gravity: float,
    finish: FaceFinish | str = "bare",
    *,
    length_mm: float | None = None,
    end_finish: FaceFinish | str = "bare",
    diffusion: str = DEFAULT_DIFFUSION,
    diffusivity_factor: float = 1.0,
) -> BlockYear:
    """Mean moisture of a leg or a block through a year of this air.

    Parameters
    ----------
    width_mm, thickness_mm : across the grain. length_mm : along it; None = so long that its ends do not
        matter.
    finish, end_finish : of the four long sides, and of the two ends. The rest as ``wood_year``.

    Error: daily steps, within 0.5 % of the air's swing for parts above 5 mm; against ``wood_year`` in the
    tests.
    """
    temperature, daily, rh = mean_air(air)
    across = float(diffusivity(temperature, daily.mean(), specific_gravity, diffusion))
    across *= float(within(diffusivity_factor, phrase("diffusivity factor"), 1e-3, 1e3, ""))
    side, end = (
        float(exchange(as_face(face).permeance_ng(), temperature, rh, specific_gravity))
        for face in (finish, end_finish)
    )
    sides = [(width_mm, across, side), (thickness_mm, across, side)]
    if length_mm is not None:
        sides.append((length_mm, across * ALONG_TO_ACROSS, end))
    moments = np.arange(LONGEST_MEMORY_DAYS) + 0.5
    left = np.ones(moments.size)
    for size, rate, out in sides:
        half = float(within(size, phrase("size of the block"), 0.5, 10000.0, "mm")) / 2
        left *= 1 - uptake(rate * moments / half**2, out * half / rate)
    taken = 1 - left
    kernel = np.diff(taken, prepend=0.0)
    kernel[-1] += left[-1]  # what a huge block would take up later still: its mean is the air's mean
    folded = kernel.reshape(-1, DAYS).sum(0)
    transfer = np.fft.rfft(folded)
    mean = np.fft.irfft(np.fft.rfft(daily) * transfer, DAYS)
    lag = -float(np.angle(transfer[1])) / (2 * np.pi / DAYS)
    swing = float(np.ptp(daily))
    share = float(np.ptp(mean)) / swing if swing > 1e-9 else float("nan")
    return BlockYear(mean, daily, lag, share)
