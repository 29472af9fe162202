"""Water from the glue: how long to wait before planing, or the joints sink.

Glue brings water into the edges it joins. The wood beside the line swells; planed flat while swollen, it
sinks when the water has gone. The water spreads sideways from the line and leaves through the faces: with
constant diffusivity the two are independent, so the excess moisture at the line is a product of exact
solutions,

    ΔM(t) = water / (dry density · √(4π D t)) · (1 − share that a slab has given off by then).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.bounds import within
from movement_core.errors import InputError
from movement_core.moisture.slab import uptake
from movement_core.moisture.transport import (
    DEFAULT_DIFFUSION,
    diffusivity,
    dry_density,
    exchange,
    still_air_permeance,
)
from movement_core.wording import phrase, say

Array = NDArray[np.float64]

# White glue: spread per joint and share of water. Common practice, no source.
SPREAD_G_PER_M2 = 180.0
WATER_SHARE = 0.5
VISIBLE_SINK_MM = 0.01  # own judgement: about what shows under a gloss in raking light
LONGEST_WAIT_DAYS = 365.0


@dataclass(frozen=True)
class GlueWait:
    """How long a glued panel must wait before it is planed or sanded flat.

    Attributes
    ----------
    days : wait. fastest_days, slowest_days : with three times the diffusivity, and with a third of it.
    excess_after_a_day_mc : moisture above the rest at the glue line one day after gluing, percent.
    sink_after_a_day_mm : how deep the line would sink if planed then.
    """

    days: float
    fastest_days: float
    slowest_days: float
    excess_after_a_day_mc: float
    sink_after_a_day_mm: float


def glue_line_excess(
    days: ArrayLike,
    thickness_mm: float,
    specific_gravity: float,
    temperature_c: float,
    rh_percent: float,
    *,
    wood_mc: float = 8.0,
    spread_g_m2: float = SPREAD_G_PER_M2,
    water_share: float = WATER_SHARE,
    diffusion: str = DEFAULT_DIFFUSION,
    diffusivity_factor: float = 1.0,
) -> Array:
    """Moisture above that of the rest of the board at the glue line, percent, mean through the thickness."""
    time = within(days, phrase("days after gluing"), 1e-6, 1e5, phrase("days"))
    share = float(within(water_share, phrase("share of water in the glue"), 0.0, 1.0, ""))
    spread = float(within(spread_g_m2, phrase("glue spread"), 0.0, 2000.0, "g/m²"))
    rate = float(diffusivity(temperature_c, wood_mc, specific_gravity, diffusion)) * diffusivity_factor
    out = float(exchange(still_air_permeance(), temperature_c, rh_percent, specific_gravity))
    water_depth = 100 * spread * share / 1000 / float(dry_density(specific_gravity)) * 1000  # percent × mm
    half = thickness_mm / 2
    left = 1 - uptake(rate * time / half**2, out * half / rate)
    return np.asarray(water_depth / np.sqrt(4 * np.pi * rate * time) * left)[()]


def glue_wait(
    thickness_mm: float,
    specific_gravity: float,
    thickness_coefficient: float,
    temperature_c: float,
    rh_percent: float,
    *,
    sink_mm: float = VISIBLE_SINK_MM,
    wood_mc: float = 8.0,
    spread_g_m2: float = SPREAD_G_PER_M2,
    water_share: float = WATER_SHARE,
) -> GlueWait:
    """Days until the glue line would sink by no more than ``sink_mm`` on each face if planed flat.

    Parameters
    ----------
    thickness_coefficient : strain per 1 % MC through the thickness (radial for flat-sawn, tangential for
        quarter-sawn boards). wood_mc : moisture of the wood, percent. The rest as ``glue_line_excess``.

    The diffusivity is known within a factor of three either way: both ends are given.
    """
    within(thickness_mm, phrase("thickness"), 0.5, 1000.0, "mm")
    within(sink_mm, phrase("sink that may remain"), 1e-4, 10.0, "mm")
    times = np.geomspace(0.01, LONGEST_WAIT_DAYS, 2000)

    def sink(factor: float, days: ArrayLike) -> Array:
        excess = glue_line_excess(
            days, thickness_mm, specific_gravity, temperature_c, rh_percent,
            wood_mc=wood_mc, spread_g_m2=spread_g_m2, water_share=water_share, diffusivity_factor=factor,
        )  # fmt: skip
        return np.asarray(thickness_mm / 2 * thickness_coefficient * excess)

    def wait(factor: float) -> float:
        depth = sink(factor, times)
        enough = np.flatnonzero(depth <= sink_mm)
        if enough.size == 0:
            raise InputError(
                say("the joint would still sink by more than {sink:g} mm after a year", sink=sink_mm),
                where=say("water from the glue"),
                allowed=say("a sink that can be reached"),
                todo=say("allow a deeper sink, use less water, or warm the room"),
            )
        return float(times[enough[0]])

    one_day = float(sink(1.0, 1.0))
    return GlueWait(
        wait(1.0),
        wait(3.0),
        wait(1 / 3),
        one_day / (thickness_mm / 2 * thickness_coefficient) if thickness_coefficient else 0.0,
        one_day,
    )
