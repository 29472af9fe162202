"""Marched events, glue, meters, acceptance, compression set, consequence."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture.acceptance import acceptance
from movement_core.moisture.compression import compression_set, narrower_after_mm
from movement_core.moisture.consequence import (
    crown_mm,
    crown_through_year,
    gradient_curvature,
    width_through_year,
)
from movement_core.moisture.events import BoardInAir, days_to_come_within, delivery, lying_on_bench, wet_face
from movement_core.moisture.glue import glue_line_excess, glue_wait
from movement_core.moisture.marching import Spell, march
from movement_core.moisture.meter import (
    mean_of_core_and_skin,
    meter_moisture,
    parabolic_profile,
    pin_depth_mm,
    stick_moisture,
)
from movement_core.moisture.nonlinear import nonlinear_year
from movement_core.moisture.response import wood_year

HOME = Year("invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test")
ROOM = BoardInAir(20, 0.65, 20, 50)


def test_closed_board_keeps_its_water() -> None:
    profile = np.linspace(6, 14, 40)
    course = march(20, profile, [Spell(200, 5, 5, 0, 0)], 3.0)
    assert np.ptp(course.mean_mc) < 1e-9
    assert np.abs(course.profile_mc[-1] - course.mean_mc[0]).max() < 1e-3


@settings(max_examples=15, deadline=None)
@given(st.floats(2, 60), st.floats(4, 20), st.floats(4, 20), st.floats(0.05, 50), st.floats(0.5, 20))
def test_marching_stays_between_start_and_air(
    t: float, start: float, air: float, h: float, rate: float
) -> None:
    course = march(t, start, [Spell(30, air, air, h, 0)], rate)
    low, high = min(start, air), max(start, air)
    slack = 1e-3 * (high - low) + 1e-9
    assert course.profile_mc.min() >= low - slack and course.profile_mc.max() <= high + slack


def test_a_wet_face_crowns_then_fades() -> None:
    event = wet_face(ROOM, 8)
    assert event.worst_day == pytest.approx(8 / 24, abs=0.05)
    assert event.worst_face_difference_mc > 3  # the wet show face is the longer one: crown
    assert event.faded_day is not None and 1 < event.faded_day < 30
    assert wet_face(ROOM, 8, face="back").worst_face_difference_mc == pytest.approx(
        -event.worst_face_difference_mc
    )
    varnished = wet_face(BoardInAir(20, 0.65, 20, 50, "varnish 3", "varnish 3"), 8)
    assert varnished.worst_face_difference_mc < event.worst_face_difference_mc / 5


def test_a_top_on_the_bench_goes_the_way_of_its_open_face() -> None:
    """Common practice: overnight on the bench a top from a damp store goes hollow, in damp air it crowns."""
    dry, damp = lying_on_bench(ROOM, 12.0, 3), lying_on_bench(ROOM, 6.0, 3)
    assert dry.worst_face_difference_mc < -0.5 and damp.worst_face_difference_mc > 0.5
    assert dry.worst_day <= 3.01
    assert dry.faded_day is not None and dry.faded_day > 3


def test_delivery_from_damp_to_dry() -> None:
    board = BoardInAir(25, 0.65, 21, 35, "varnish 3", "bare")
    event = delivery(board, 12.0)
    assert event.worst_face_difference_mc > 0  # the bare back dries first, the show face is damper: crown
    assert event.mean_change_mc == pytest.approx(board.air_mc - 12, abs=0.3)
    equal = delivery(BoardInAir(25, 0.65, 21, 35, "varnish 3", "varnish 3"), 12.0)
    assert abs(equal.worst_face_difference_mc) < 1e-6
    slow = days_to_come_within(event.course, board.air_mc, 1.0)
    fast = days_to_come_within(delivery(BoardInAir(25, 0.65, 21, 35), 12.0).course, board.air_mc, 1.0)
    assert fast is not None and slow is not None and 7 < fast < slow
    assert days_to_come_within(event.course, 3.0, 0.5) is None


def test_glue_waits_longer_in_thick_dense_wood_and_for_finer_work() -> None:
    wait = glue_wait(20, 0.65, 0.0018, 20, 50)
    assert 1 < wait.fastest_days < wait.days < wait.slowest_days < 60
    assert glue_wait(20, 0.65, 0.0018, 20, 50, sink_mm=0.03).days < wait.days
    assert glue_wait(40, 0.65, 0.0018, 20, 50).days > wait.days
    assert glue_wait(20, 0.4, 0.0018, 20, 50).days < wait.days
    assert glue_wait(20, 0.65, 0.0018, 20, 50, water_share=0).days < 0.02


def test_glue_water_is_conserved_early() -> None:
    """Before the faces give anything off, the water in the wood is what the glue brought."""
    time, gravity = 0.005, 0.5
    rate = 3.0
    peak = float(glue_line_excess(time, 200, gravity, 20, 50, spread_g_m2=200, water_share=0.5))
    from movement_core.moisture.transport import diffusivity

    rate = float(diffusivity(20, 8, gravity))
    x = np.linspace(-5, 5, 20001)
    profile = peak * np.exp(-(x**2) / (4 * rate * time))
    grams = profile.sum() * (x[1] - x[0]) / 100 * gravity * 1e6 / 1e3  # percent·mm × g/mm·m²
    assert grams == pytest.approx(100, rel=0.01)


def test_meter_corrections() -> None:
    cold = meter_moisture(8, wood_temperature_c=21.1 - 11.2, species_correction=0)
    assert cold.mc == pytest.approx(9.0) and cold.sd == pytest.approx(1.0)
    blind = meter_moisture([8, 8.4, 9])
    assert blind.sd > 2 and len(blind.notes) == 2
    pad = meter_moisture(10, kind="pad", set_gravity=0.5, specific_gravity=0.65)
    assert pad.mc == pytest.approx(10 * 0.5 / 0.65)
    assert meter_moisture(4, wood_temperature_c=21.1, species_correction=0).notes
    low, high = cold.likely
    assert cold.nearly_certain[0] < low < cold.mc < high < cold.nearly_certain[1]


@pytest.mark.parametrize(
    "arguments",
    [{"readings": []}, {"readings": -1}, {"readings": 8, "kind": "radio"}, {"readings": float("nan")},
     {"readings": 8, "kind": "pad", "set_gravity": 0.5}, {"readings": 8, "wood_temperature_c": 200},
     {"readings": 1, "species_correction": -5, "wood_temperature_c": 20}],
)  # fmt: skip
def test_meter_refuses(arguments: dict) -> None:
    with pytest.raises(InputError):
        meter_moisture(**arguments)


def test_pins_at_a_fifth_of_the_thickness_read_the_mean() -> None:
    """Common practice drives pins to a fifth or a quarter of the thickness; a parabola's mean stands at
    0.211.
    """
    depth = pin_depth_mm(25)
    assert 25 / 5 < depth < 25 / 4
    assert float(parabolic_profile(14, 8, depth / 25)) == pytest.approx(float(mean_of_core_and_skin(14, 8)))


def test_a_stick_as_a_gauge() -> None:
    stick = stick_moisture(301.08, 300, 8, 0.0036)
    assert stick.mc == pytest.approx(9.0)
    assert stick_moisture(50.1, 50, 8, 0.0036).sd > stick.sd and stick_moisture(50.1, 50, 8, 0.0036).notes
    with pytest.raises(InputError, match="stick says"):
        stick_moisture(330, 300, 8, 0.0036)


def test_acceptance() -> None:
    shop = BoardInAir(27, 0.65, 20, 42)
    good = acceptance(shop, HOME, 8.5, 8.0)
    assert good.ready and good.days_to_wait == 0 and not good.reasons
    wet = acceptance(shop, HOME, 14, 9)
    assert not wet.ready and len(wet.reasons) == 2 and wet.days_to_wait is not None and wet.days_to_wait > 14
    thick = acceptance(BoardInAir(54, 0.65, 20, 42), HOME, 14, 9)
    assert thick.days_to_wait is not None and thick.days_to_wait > 2.5 * wet.days_to_wait
    hopeless = acceptance(BoardInAir(27, 0.65, 15, 80), HOME, 14, 14)
    assert hopeless.days_to_wait is None and hopeless.room_mc > 14
    assert acceptance(shop, HOME, 8.5).notes
    edge = good.target_mc + 1.8
    assert acceptance(shop, HOME, edge, edge).doubtful
    assert not acceptance(shop, HOME, edge, edge, reading_sd_mc=0.1).doubtful


def test_compression_set_begins_past_the_crushing_strain() -> None:
    crushed = compression_set(0.0036, np.array([-3.0, 1.0, 2.0, 5.0]))
    assert crushed.restrained_strain == pytest.approx([0, 0.0036, 0.0072, 0.018])
    assert crushed.set_least == pytest.approx([0, 0, 0, 0.008])
    assert crushed.set_most == pytest.approx([0, 0, 0.0022, 0.013])
    assert compression_set(0.0036, 5, let_out=1).set_most == 0
    least, most = narrower_after_mm(500, crushed)
    assert most[-1] == pytest.approx(6.5) and least[-1] == pytest.approx(4)


def test_width_and_crown_through_the_year() -> None:
    year = wood_year(HOME, 20, 0.65, "varnish 3", "bare")
    width = width_through_year(500, 0.0036, year, 9.0)
    assert width.shape == (365,) and np.argmin(width) == year.driest_day
    assert width.max() - width.min() == pytest.approx(500 * 0.0036 * (year.wettest_mc - year.driest_mc))
    crown = crown_through_year(500, 0.0036, year)
    assert crown[20] > 0 > crown[190]  # winter: the bare back is drier, show face up; summer: the other way
    flattened = crown_through_year(500, 0.0036, year, year.face_difference_mc[20])
    assert flattened[20] == pytest.approx(0, abs=1e-9)
    assert crown_mm(500, 0.0) == 0
    curvature = float(gradient_curvature(0.0036, 1.0, 20))
    assert float(crown_mm(500, curvature)) == pytest.approx(curvature * 500**2 / 8, rel=1e-3)
    assert float(crown_mm(1000, np.pi / 1000)) == pytest.approx(1000 / np.pi)  # half a circle


def test_moisture_dependence_moves_the_year_by_a_few_hundredths_of_its_swing() -> None:
    bare = nonlinear_year(HOME, 20, 0.65, cells=24)
    uneven = nonlinear_year(HOME, 25, 0.65, "varnish 3", "bare", cells=24)
    assert 0.001 < bare.share_of_swing < 0.05 and 0.001 < uneven.share_of_swing < 0.05
    assert uneven.face_difference_change < 0.25


@pytest.mark.parametrize(
    "call",
    [lambda: march(20, 8, [], 2.0), lambda: march(20, [8, 9], [Spell(1, 6, 6, 1, 1)], 2.0),
     lambda: march(0, 8, [Spell(1, 6, 6, 1, 1)], 2.0), lambda: Spell(0, 6, 6, 1, 1), lambda: Spell(1, 60, 6, 1, 1),
     lambda: Spell(1, 6, 6, -1, 1), lambda: march(20, 8, [Spell(1, 6, 6, 1, 1)], 2.0, cells=3),
     lambda: wet_face(ROOM, 8, face="edge"), lambda: wet_face(ROOM, -1), lambda: glue_wait(20, 0.6, 0.002, 20, 140),
     lambda: compression_set(0.5, 3), lambda: compression_set(0.003, 3, 2), lambda: acceptance(ROOM, HOME, 130)],
)  # fmt: skip
def test_bad_input_is_refused(call) -> None:
    with pytest.raises(InputError):
        call()
