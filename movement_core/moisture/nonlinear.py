"""How far a diffusivity that depends on moisture and temperature moves the year's answer.

The spectral year takes one diffusivity, at the mean moisture and temperature. Here the same board is
marched with the diffusivity of each layer and day until its years repeat, and the two are compared.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import DAYS, Air, days_from_months
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture.finish import FaceFinish
from movement_core.moisture.marching import DEFAULT_CELLS, Spell, march
from movement_core.moisture.response import WoodYear, wood_year
from movement_core.moisture.transport import DEFAULT_DIFFUSION, diffusivity
from movement_core.wording import say

Array = NDArray[np.float64]

MOST_YEARS = 12
REPEATS_WITHIN_MC = 0.005  # percent points between one year and the next


@dataclass(frozen=True, eq=False)
class NonlinearYear:
    """The marched year beside the spectral one.

    Attributes
    ----------
    spectral : the spectral answer.
    mean_mc, face_difference_mc : (365,) of the marched year, percent.
    largest_difference_mc : of the mean, marched minus spectral by absolute value, percent points.
    share_of_swing : that difference ÷ the air's swing (of moisture).
    face_difference_change : largest difference of the face differences, percent points.
    years : marched until one year repeated the other.
    """

    spectral: WoodYear
    mean_mc: Array
    face_difference_mc: Array
    largest_difference_mc: float
    share_of_swing: float
    face_difference_change: float
    years: int


def nonlinear_year(
    air: Air,
    thickness_mm: float,
    specific_gravity: float,
    show: FaceFinish | str = "bare",
    back: FaceFinish | str = "bare",
    *,
    diffusion: str = DEFAULT_DIFFUSION,
    cells: int = DEFAULT_CELLS,
) -> NonlinearYear:
    """March a year with D(M, T) and compare; the faces' exchange stays that of the mean air.

    Parameters as ``wood_year``, for one board. Takes a second or so: a report, not for every board.
    """
    spectral = wood_year(air, thickness_mm, specific_gravity, show, back, diffusion=diffusion)
    slab = spectral.slab
    monthly = days_from_months(air.temperature_c) if isinstance(air, Year) else np.asarray(air.temperature_c)
    samples = np.append(spectral.air_mc, spectral.air_mc[0])
    exchanges = float(slab.show_exchange), float(slab.back_exchange)
    state: Array | float = float(spectral.mean_mc[0])
    last = spectral.mean_mc
    # a month at a time, so that the diffusivity follows the season's temperature as well
    edges = np.linspace(0, DAYS, 13).round().astype(int)
    for years in range(1, MOST_YEARS + 1):
        means, differences = [], []
        for start, end in pairwise(edges):
            temperature = float(monthly[start:end].mean())

            def rate(mc: Array, temperature: float = temperature) -> Array:
                return np.asarray(diffusivity(temperature, mc, specific_gravity, diffusion))

            piece = samples[start : end + 1]
            spell = Spell(float(end - start), piece, piece, *exchanges)
            course = march(thickness_mm, state, [spell], rate, cells=cells, longest_step_days=1.0)
            state = course.profile_mc[-1]
            moments = np.arange(end - start, dtype=np.float64)
            means.append(course.at(moments))
            differences.append(course.at(moments, "face_difference_mc"))
        mean, difference = np.concatenate(means), np.concatenate(differences)
        change, last = float(np.abs(mean - last).max()), mean
        if years > 1 and change < REPEATS_WITHIN_MC:
            break
    else:
        raise InputError(
            say(
                "the years still differ by {change:.3f} % after {years} years",
                change=change,
                years=MOST_YEARS,
            ),
            where=say("board of {thickness_mm:g} mm", thickness_mm=thickness_mm),
            allowed=say("boards whose answer settles within that time"),
            todo=say("use the spectral year for very thick or tightly closed boards"),
        )
    gap = float(np.abs(mean - spectral.mean_mc).max())
    swing = float(np.ptp(spectral.air_mc))
    return NonlinearYear(
        spectral,
        mean,
        difference,
        gap,
        gap / swing if swing > 0 else 0.0,
        float(np.abs(difference - spectral.face_difference_mc).max()),
        years,
    )
