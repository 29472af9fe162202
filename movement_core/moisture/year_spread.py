"""How sure the moisture of a year is: the air's doubt, and the diffusivity's factor of three."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from movement_core.air.bounds import within
from movement_core.air.daily import Air, daily_moisture
from movement_core.moisture.response import Faces, SlabTransport, slab_transport, slab_year
from movement_core.moisture.spread import DEFAULT_SEED, Spread, Uncertain, spread, within_factor
from movement_core.moisture.transport import RANGE_FACTOR
from movement_core.wording import phrase

Array = NDArray[np.float64]

CLIMATE_SD_MC = 1.0  # percent points: a preset or a typical climate against the real room (own)
SORPTION_SD_MC = (
    1.0  # percent points: extractives, kiln history, hysteresis move single boards by 1 to 3 points
)


def year_moisture_spread(
    air: Air,
    thickness_mm: float,
    specific_gravity: float,
    show: Faces = "bare",
    back: Faces = "bare",
    *,
    climate_sd_mc: float = CLIMATE_SD_MC,
    sorption_sd_mc: float = SORPTION_SD_MC,
    samples: int = 512,
    seed: int = DEFAULT_SEED,
) -> Spread:
    """Mean moisture of one board on each day, (365,), with ranges and the share of each cause.

    Causes: ``climate`` and ``sorption`` shift the whole year (standard deviations in percent points; give a
    logged room about 0.3), ``diffusivity`` is known within a factor of three.
    """
    slab = slab_transport(air, thickness_mm, specific_gravity, show, back)
    daily = daily_moisture(air)

    def mean(climate: Array, sorption: Array, diffusivity: Array) -> Array:
        some = SlabTransport(
            slab.thickness_mm,
            slab.diffusivity * diffusivity,
            slab.show_exchange,
            slab.back_exchange,
            slab.method,
        )
        return slab_year(daily, some).mean_mc + (climate + sorption)[:, None]

    return spread(
        mean,
        {
            "climate": Uncertain(
                0.0, float(within(climate_sd_mc, phrase("doubt of the climate"), 0.0, 10.0, "%"))
            ),
            "sorption": Uncertain(
                0.0, float(within(sorption_sd_mc, phrase("doubt of sorption"), 0.0, 10.0, "%"))
            ),
            "diffusivity": within_factor(1.0, RANGE_FACTOR),
        },
        samples=samples,
        seed=seed,
    )
