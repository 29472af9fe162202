"""Legs, short parts and blocks: moisture that comes in from two or three directions.

A step of the air spreads in a rectangular block as the product of its slabs: what has not yet changed is the
product of what each slab alone would not yet have changed (Newman's rule; Crank 1975 §2.2, recalled). A
year is a sum of small steps. Edges are finished like the show face; the back and the ends may have their own finish.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from movement_core.air.bounds import within
from movement_core.air.daily import DAYS, Air
from movement_core.moisture.finish import FaceFinish, as_face
from movement_core.moisture.harmonics import solve_harmonics
from movement_core.moisture.response import mean_air
from movement_core.moisture.slab import uptake
from movement_core.moisture.transport import DEFAULT_DIFFUSION, diffusivity, exchange
from movement_core.wording import phrase

Array = NDArray[np.float64]

# Diffusivity along ÷ across the grain: up to 12 (spruce) and 15 (beech), Sonderegger et al. 2011 (abstract,
# read).
ALONG_TO_ACROSS = 10.0
LONGEST_MEMORY_YEARS = 40
MEMORIES = 16  # times that a step fades to 1/e until it is forgotten: 1e-7 of it is left
MOST_STEPS_A_DAY = 16  # steps a day for a board that forgets within a year, fewer for those that take longer
SIZES_MM = (0.5, 10000.0)


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
    back: FaceFinish | str | None = None,
    *,
    length_mm: float | None = None,
    end_finish: FaceFinish | str = "bare",
    diffusion: str = DEFAULT_DIFFUSION,
    diffusivity_factor: float = 1.0,
) -> BlockYear:
    """Mean moisture of a leg or a block through a year of this air.

    Parameters
    ----------
    width_mm, thickness_mm : across the grain, the latter between show face and back. length_mm : along it; None = so
        long that its ends do not matter.
    finish : of the show face and the two edges. back : of the back; None = like the show face. end_finish : of the two
        ends. The rest as ``wood_year``.

    Error: the thickness as exact as ``wood_year``, to which a block comes the nearer the wider it is; the width and the
    length within 0.5 % of the air's swing for parts above 5 mm.
    """
    temperature, daily, rh = mean_air(air)
    across = float(diffusivity(temperature, daily.mean(), specific_gravity, diffusion))
    across *= float(within(diffusivity_factor, phrase("diffusivity factor"), 1e-3, 1e3, ""))
    side, other, end = (
        float(exchange(as_face(face).permeance_ng(), temperature, rh, specific_gravity))
        for face in (finish, finish if back is None else back, end_finish)
    )
    through = float(within(thickness_mm, phrase("size of the block"), *SIZES_MM, "mm"))
    left = _left_through(through, across, side, other)
    sides = [(width_mm, across, side)]
    if length_mm is not None:
        sides.append((length_mm, across * ALONG_TO_ACROSS, end))
    moments = np.arange(left.size) + 0.5
    for size, rate, out in sides:
        half = float(within(size, phrase("size of the block"), *SIZES_MM, "mm")) / 2
        left = left * (1 - uptake(rate * moments / half**2, out * half / rate))
    taken = (
        np.diff(1 - left, prepend=0.0).reshape(-1, DAYS).sum(0)
    )  # on each day after a step, years laid onto one
    taken += left[-1] / DAYS  # what a huge block would take up later still: the mean of the air
    transfer = np.fft.rfft(taken)
    mean = np.fft.irfft(np.fft.rfft(daily) * transfer, DAYS)
    lag = -float(np.angle(transfer[1])) / (2 * np.pi / DAYS)
    swing = float(np.ptp(daily))
    share = float(np.ptp(mean)) / swing if swing > 1e-9 else float("nan")
    return BlockYear(mean, daily, lag, share)


@lru_cache(maxsize=256)
def _left_through(thickness_mm: float, rate: float, show: float, back: float) -> Array:
    """(whole years of days,) what of a step of the air on both faces has not gone in through the thickness by the
    middle of each day: the sum of the exact answers to one day of other air.

    ``rate`` : diffusivity, mm²/day. ``show``, ``back`` : exchange of the faces, mm/day.
    """
    if show + back == 0:
        return np.ones(LONGEST_MEMORY_YEARS * DAYS)
    depth = (
        thickness_mm * max(show, back) / (show + back)
    )  # that the quicker face has to fill: half, or all of it
    memory = (
        depth**2 / rate * (0.41 + rate / (max(show, back) * depth))
    )  # days to 1/e, once a step is long past
    years = int(np.clip(np.ceil(MEMORIES * memory / DAYS), 1, LONGEST_MEMORY_YEARS))
    finer = max(1, MOST_STEPS_A_DAY // years)
    step = np.zeros(finer * years * DAYS)
    step[0] = 1.0
    fields = [np.array([[figure]]) for figure in (thickness_mm, rate / finer, show / finer, back / finer)]
    left = (1 - np.cumsum(solve_harmonics(fields, step, step)[0][0, 0])).reshape(-1, finer)
    middle = np.asarray((left[:, (finer - 1) // 2] + left[:, finer // 2]) / 2, dtype=np.float64)
    middle.flags.writeable = False
    return middle
