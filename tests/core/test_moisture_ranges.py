"""Every figure of the moisture room is taken at the ends of its range and refused just beyond, with the range named."""

from __future__ import annotations

import re

import numpy as np
import pytest

from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture import acceptance as accepting
from movement_core.moisture.acceptance import acceptance
from movement_core.moisture.compression import compression_set, narrower_after_mm
from movement_core.moisture.consequence import gradient_curvature, width_through_year
from movement_core.moisture.events import BoardInAir, wet_face
from movement_core.moisture.glue import glue_line_excess, glue_wait
from movement_core.moisture.journey import built_moisture
from movement_core.moisture.learned import Observed, learn_lot, learned_coefficient
from movement_core.moisture.marching import Spell
from movement_core.moisture.meter import (
    air_moisture,
    mean_of_core_and_skin,
    meter_moisture,
    parabolic_profile,
    pin_depth_mm,
    stick_moisture,
)
from movement_core.moisture.response import wood_year
from movement_core.moisture.slab import half_time_days, uptake
from movement_core.moisture.spread import Uncertain, size_change_spread
from movement_core.moisture.transport import diffusivity, dry_density, exchange

INF = np.inf


def change(**given):
    """The spread of a change of size, with one figure given."""
    figures = {
        "size_mm": 500.0,
        "radial_coefficient": 0.0018,
        "tangential_coefficient": 0.00365,
        "mc_change": 4.0,
    }
    return size_change_spread(**{**figures, **given})


def learned(**given):
    """A learned coefficient, with one figure given."""
    figures = {"coefficient": 0.00365, "size_mm": 500.0, "measured_change_mm": 5.0, "mc_change": 3.0}
    return learned_coefficient(**{**figures, **given})


def observed(**given):
    """What a lot learns from one measurement, with one figure of it given."""
    figures = {
        "predicted_mm": 5.0,
        "measured_mm": 5.2,
        "per_percent_mm": 1.8,
        "moisture_sd": 0.3,
        "tool_sd_mm": 0.1,
    }
    return Observed(**{**figures, **given})


def stick(**given):
    """A moisture from a stick, with one figure given."""
    figures = {"width_mm": 302.0, "width_then_mm": 300.0, "mc_then": 8.0, "coefficient": 0.0036}
    return stick_moisture(**{**figures, **given})


HOME = Year("invented", (21,) * 12, (50,) * 12, "invented for a test")
YEAR = wood_year(HOME, 20, 0.65)
STOCK = BoardInAir(20, 0.65, 20, 50, depends_on_moisture=False)


def accepted(**given):
    """Stock accepted for a home, with one figure given."""
    return acceptance(STOCK, HOME, **{"core_mc": 9.0, "skin_mc": 9.0, **given})


RANGES = [
    ("specific gravity", lambda v: dry_density(v), 0.1, 1.3),
    ("temperature", lambda v: diffusivity(v, 10, 0.6), -30.0, 100.0),
    ("permeance", lambda v: exchange(v, 20, 50, 0.6), 0.0, 1e9),
    ("as-built moisture", lambda v: built_moisture(given_mc=v), 0.0, 30.0),
    ("days after gluing", lambda v: glue_line_excess(v, 20, 0.6, 20, 50), 1e-6, 1e5),
    ("water in the glue", lambda v: glue_line_excess(5, 20, 0.6, 20, 50, water_share=v), 0.0, 1.0),
    ("glue spread", lambda v: glue_line_excess(5, 20, 0.6, 20, 50, spread_g_m2=v), 0.0, 2000.0),
    ("sink", lambda v: glue_wait(20, 0.6, 0.0036, 20, 50, sink_mm=v), 1e-4, 10.0),
    ("coefficient", lambda v: compression_set(v, 3.0), 0.0, 0.02),
    ("rise of moisture", lambda v: compression_set(0.0036, v), -30.0, 30.0),
    ("share let out", lambda v: compression_set(0.0036, 3.0, v), 0.0, 1.0),
    ("width", lambda v: narrower_after_mm(v, compression_set(0.0036, 8.0)), 1e-3, 1e5),
    ("value", lambda v: Uncertain(v, 1.0), -1e12, 1e12),
    ("standard deviation", lambda v: Uncertain(1.0, v), 0.0, 1e12),
    ("size", lambda v: change(size_mm=v), 1e-3, 1e5),
    ("radial", lambda v: change(radial_coefficient=v), 0.0, 0.02),
    ("tangential", lambda v: change(tangential_coefficient=v), 0.0, 0.02),
    ("ring angle", lambda v: change(ring_angle_deg=v), 0.0, 90.0),
    ("doubt of the ring angle", lambda v: change(ring_angle_sd_deg=v), 0.0, 45.0),
    ("change of moisture", lambda v: change(mc_change=v), -30.0, 30.0),
    ("coefficient of variation", lambda v: change(coefficient_cv=v), 0.0, 1.0),
    ("doubt of the moisture", lambda v: change(mc_change_sd=v), 0.0, 15.0),
    ("doubt of the climate", lambda v: change(climate_sd=v), 0.0, 15.0),
    ("reading", lambda v: meter_moisture(v), 0.0, 120.0),
    ("wood temperature", lambda v: meter_moisture(9, wood_temperature_c=v), -30.0, 80.0),
    ("species correction", lambda v: meter_moisture(12, species_correction=v), -10.0, 10.0),
    ("temperature of the air", lambda v: air_moisture(v, 50), -20.0, 60.0),
    ("relative humidity", lambda v: air_moisture(20, v), 0.0, 95.0),
    ("core", lambda v: mean_of_core_and_skin(v, 9), 0.0, 120.0),
    ("skin", lambda v: mean_of_core_and_skin(9, v), 0.0, 120.0),
    ("height", lambda v: parabolic_profile(9, 8, v), 0.0, 1.0),
    ("thickness", lambda v: pin_depth_mm(v), 1.0, 1000.0),
    ("moisture then", lambda v: stick(mc_then=v), 0.0, 30.0),
    ("hours wet", lambda v: wet_face(BoardInAir(20, 0.65, 20, 50), v), 0.01, 8760.0),
    ("days of the spell", lambda v: Spell(v, 8.0, 8.0, 1.0, 1.0), 1e-6, 1e5),
    ("Fourier number", lambda v: uptake(v, 10.0), 0.0, INF),
    ("Biot number", lambda v: uptake(0.1, v), 0.0, INF),
    ("thickness of a slab", lambda v: half_time_days(v, 10.0), 1e-3, 1e4),
    ("diffusivity", lambda v: half_time_days(25.0, v), 1e-9, 1e9),
    ("exchange", lambda v: half_time_days(25.0, 10.0, v), 0.0, INF),
    ("prior coefficient", lambda v: learned(coefficient=v), 1e-5, 0.02),
    ("prior spread", lambda v: learned(coefficient_cv=v), 1e-3, 1.0),
    ("size measured", lambda v: learned(size_mm=v, measured_change_mm=0.0), 1.0, 1e5),
    ("change measured", lambda v: learned(measured_change_mm=v), -125.0, 125.0),
    ("moisture change", lambda v: learned(mc_change=v), -30.0, 30.0),
    ("moisture doubt", lambda v: learned(mc_change_sd=v), 0.0, 15.0),
    ("calipers", lambda v: learned(caliper_sd_mm=v), 1e-4, 10.0),
    ("spread of lots", lambda v: learn_lot([observed()], v), 1e-4, 1.0),
    ("tool", lambda v: learn_lot([observed(tool_sd_mm=v)]), 1e-4, 1e6),
    ("doubt of its moisture", lambda v: learn_lot([observed(moisture_sd=v)]), 0.0, 1e6),
    ("doubt of its start", lambda v: learn_lot([observed(start_sd_mc=v)]), 0.0, 1e6),
    ("doubt of its first size", lambda v: learn_lot([observed(start_sd_mm=v)]), 0.0, 1e6),
    ("width of a stick", lambda v: stick(width_mm=v, width_then_mm=300.0), 1.0, 5000.0),
    ("width of it then", lambda v: stick(width_mm=300.0, width_then_mm=v), 1.0, 5000.0),
    ("coefficient of a stick", lambda v: stick(coefficient=v), 1e-5, 0.02),
    ("thickness that cups", lambda v: gradient_curvature(0.0036, 1.0, v), 0.1, 1000.0),
    ("moisture of a width", lambda v: width_through_year(300.0, 0.0036, YEAR, v), 0.0, 30.0),
    ("width in a year", lambda v: width_through_year(v, 0.0036, YEAR, 9.0), 1e-3, 1e5),
    ("core of stock", lambda v: accepted(core_mc=v), 0.0, 120.0),
    ("skin of stock", lambda v: accepted(skin_mc=v), 0.0, 120.0),
    ("tolerance", lambda v: accepted(within_mc=v), 0.1, 10.0),
    ("doubt of readings", lambda v: accepted(reading_sd_mc=v), 0.0, 10.0),
    ("moisture of a diffusivity", lambda v: diffusivity(20, v, 0.6), 0.0, 30.0),
    ("density of a diffusivity", lambda v: diffusivity(20, 10, v), 0.1, 1.3),
    ("measured", lambda v: learn_lot([observed(measured_mm=v)]), -1e5, 1e5),
]


@pytest.fixture(autouse=True)
def short_waits(monkeypatch):
    """A week of waiting is marched instead of two years."""
    monkeypatch.setattr(accepting, "LONGEST_WAIT_DAYS", 7.0)


def beyond(end, sign):
    """Just beyond an end, by less than one where the end is one or more."""
    return end + sign * (0.4 if abs(end) >= 1 else max(abs(end), 1e-3) * 1e-3)


def taken(call, value):
    """Whether a figure is within its range; together with the other figures it may still make no sense."""
    try:
        call(value)
    except InputError as refused:
        return "is not a usable" not in str(refused)
    return True


@pytest.mark.parametrize("missing", [None, float("nan"), [0.6, None]])
def test_of_a_missing_figure_it_is_told_that_it_is_missing(missing):
    with pytest.raises(InputError, match=r"no specific gravity is given\..*Allowed: 0.1 to 1.3") as refused:
        wood_year(HOME, 20, missing)
    assert ("[1]" in str(refused.value)) == isinstance(missing, list)


@pytest.mark.parametrize(("what", "call", "low", "high"), RANGES, ids=[row[0] for row in RANGES])
def test_a_figure_is_taken_to_the_ends_of_its_range_and_refused_beyond(what, call, low, high):
    assert taken(call, low)
    with pytest.raises(InputError, match=re.escape(f"Allowed: {low:g} to")):
        call(beyond(low, -1))
    if np.isfinite(high):
        assert taken(call, high)
        with pytest.raises(InputError, match="Allowed") as refused:
            call(beyond(high, 1))
        assert f" to {high:g}" in str(refused.value)
    with pytest.raises(InputError):
        call(np.nan)
