"""Events, waits, acceptance and as-built moisture, worked out by hand."""

from __future__ import annotations

import datetime
import math

import numpy as np
import pytest

from movement_core.air.emc import equilibrium_moisture
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture import acceptance as accepting
from movement_core.moisture.acceptance import acceptance
from movement_core.moisture.events import (
    BoardInAir,
    days_to_come_within,
    delivery,
    event_of,
    lying_on_bench,
    wet_face,
)
from movement_core.moisture.glue import glue_line_excess, glue_wait
from movement_core.moisture.journey import built_moisture, over_plausible
from movement_core.moisture.marching import March, march
from movement_core.moisture.spread import Uncertain
from movement_core.moisture.transport import diffusivity

ROOM = BoardInAir(20, 0.65, 20, 50)
STEADY = Year("invented, steady", (20,) * 12, (50,) * 12, "invented for a test")
HOME = Year("invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test")


def course(days, difference=(), mean=()):
    """A march of which only these fields are looked at."""
    count = len(days)
    zero = np.zeros(count)
    row = [np.array(given, dtype=float) if len(given) else zero for given in (mean, difference)]
    return March(np.array(days, dtype=float), row[0], zero, zero, zero, row[1], zero, zero, zero)


def test_an_event_is_told_by_its_worst_and_its_last_tenth():
    event = event_of(
        "made up", course([0, 1, 2, 3, 5, 8], [0, 2, -4, 0.41, 0.39, 0.1], [8, 9, 7.5, 6, 6.5, 7])
    )
    assert (event.name, event.worst_day, event.worst_face_difference_mc) == ("made up", 2, -4)
    assert event.faded_day == 5  # a tenth of 4 is 0.4, and the day after the last above it counts
    assert event.mean_change_mc == -2
    assert event_of("", course([0, 1, 2], [0, 1, 0.5])).faded_day is None
    assert event_of("", course([0, 1, 2], [0, 0.05, 0.01])).faded_day == 0  # nobody notices a twentieth
    assert event_of("", course([0, 1, 2], [0, 0.06, 0.04])).faded_day == 2
    assert event_of("", course([0, 1, 2], [0.06, 0.01, 0.04])).faded_day == 1


def test_coming_within_is_for_good():
    walk = course([0, 1, 2, 4, 7], mean=[12, 9, 11, 8.5, 8])
    assert days_to_come_within(walk, 8.0, 1.0) == 4
    assert days_to_come_within(walk, 8.0, 0.5) == 4
    assert days_to_come_within(walk, 8.0, 0.4) == 7
    assert days_to_come_within(walk, 8.0, 4.0) == 0
    assert days_to_come_within(walk, 9.0, 0.9) is None


def test_a_board_in_air_is_bare_and_its_diffusivity_follows_its_moisture():
    show, back = ROOM.exchanges()
    assert show == back > 0
    assert BoardInAir(20, 0.65, 20, 50, "bare", "blocked").exchanges() == (show, 0)
    assert BoardInAir(20, 0.65, 20, 50, "blocked", "bare").exchanges() == (0, back)
    rate = ROOM.rate(12.0)
    assert rate(np.array([6.0, 12.0])) == pytest.approx(diffusivity(20, [6.0, 12.0], 0.65))
    steady = BoardInAir(20, 0.65, 20, 50, depends_on_moisture=False, diffusivity_factor=3.0)
    assert steady.rate(12.0) == pytest.approx(3 * float(diffusivity(20, 12.0, 0.65)))
    spell = ROOM.spell(7.0)
    assert (spell.days, spell.show_air_mc, spell.back_air_mc) == (7.0, ROOM.air_mc, ROOM.air_mc)
    assert (spell.show_exchange, spell.back_exchange) == (show, back)


def test_events_are_followed_long_enough_to_fade():
    """Two months after something short, a year after a delivery."""
    quiet = BoardInAir(20, 0.65, 20, 50, depends_on_moisture=False)
    assert wet_face(quiet, 12).course.time_days[-1] == pytest.approx(60.5)
    assert lying_on_bench(quiet, 12.0, 3).course.time_days[-1] == pytest.approx(63)
    assert delivery(quiet, 12.0).course.time_days[-1] == pytest.approx(365)
    assert wet_face(quiet, 12, follow_days=3).course.time_days[-1] == pytest.approx(3.5)


def test_a_wet_face_begins_as_dry_as_its_room_and_only_that_face_is_wet():
    quiet = BoardInAir(20, 0.65, 20, 50, "varnish 2", "bare", depends_on_moisture=False)
    for face, near, far in (("show", "show_mc", "back_mc"), ("back", "back_mc", "show_mc")):
        event = wet_face(quiet, 2, face=face, follow_days=1)
        assert event.course.mean_mc[0] == pytest.approx(quiet.air_mc)
        wet = event.course.time_days <= 2 / 24 + 1e-9
        assert getattr(event.course, near)[wet].max() > quiet.air_mc + 0.5
        assert getattr(event.course, far)[wet].max() == pytest.approx(quiet.air_mc, abs=0.05)
        assert event.name == f"{face} face wet for 2 h"
    assert wet_face(quiet, 2, start_mc=15, follow_days=1).course.mean_mc[0] == pytest.approx(15)
    bare = wet_face(BoardInAir(20, 0.65, 20, 50, depends_on_moisture=False), 2, follow_days=1)
    assert bare.course.show_mc.max() == pytest.approx(28, abs=0.01)  # at fibre saturation at once


def test_a_top_on_the_bench_is_closed_below_until_it_is_lifted():
    quiet = BoardInAir(20, 0.65, 20, 50, depends_on_moisture=False)
    event = lying_on_bench(quiet, 12.0, 3, follow_days=30)
    lying = event.course.time_days <= 3
    assert event.worst_day <= 3 + 1e-9
    assert (event.course.face_difference_mc[lying] <= 1e-12).all()
    assert event.course.mean_mc[0] == pytest.approx(12)


def test_a_delivery_comes_with_its_profile():
    profile = np.linspace(14.0, 10.0, 40)
    event = delivery(BoardInAir(20, 0.65, 20, 50), profile, follow_days=30)
    assert event.course.profile_mc[0] == pytest.approx(profile)
    assert event.name.startswith("delivered at 12.0 %")


def test_glue_brings_half_its_weight_in_water():
    """180 g/m² of which half is water (common practice, no source): 90 g beside the line before any has left."""
    rate, gravity, days = float(diffusivity(20, 8, 0.5)), 0.5, 0.005
    peak = float(glue_line_excess(days, 200, gravity, 20, 50))
    grams = peak * math.sqrt(4 * math.pi * rate * days) / 100 * gravity * 1000
    assert grams == pytest.approx(90, rel=0.01)
    assert float(glue_line_excess(days, 200, gravity, 20, 50, diffusivity_factor=4.0)) == pytest.approx(
        peak / 2, rel=0.01
    )


def test_a_glue_line_is_waited_for_until_its_sink_may_stay():
    wait = glue_wait(20, 0.65, 0.0018, 20, 50)
    for days, factor in ((wait.days, 1.0), (wait.fastest_days, 3.0), (wait.slowest_days, 1 / 3)):
        at, before = glue_line_excess([days, 0.99 * days], 20, 0.65, 20, 50, diffusivity_factor=factor)
        assert 10 * 0.0018 * at <= 0.01 < 10 * 0.0018 * before  # half the thickness on each face
    assert wait.excess_after_a_day_mc == pytest.approx(float(glue_line_excess(1, 20, 0.65, 20, 50)))
    assert wait.sink_after_a_day_mm == pytest.approx(10 * 0.0018 * wait.excess_after_a_day_mc)
    still = glue_wait(20, 0.65, 0.0, 20, 50)
    assert (still.excess_after_a_day_mc, still.sink_after_a_day_mm) == (0, 0)
    with pytest.raises(InputError, match=r"0\.5 to 1000 mm"):
        glue_wait(0.49, 0.65, 0.0018, 20, 50)
    with pytest.raises(InputError, match="after a year"):
        glue_wait(1000, 0.65, 0.02, 0, 50, sink_mm=1e-4, spread_g_m2=2000)


SHOP = BoardInAir(20, 0.65, 20, 42, depends_on_moisture=False)


@pytest.fixture
def short_waits(monkeypatch):
    """Only verdicts are looked at: a month of waiting is marched instead of two years."""
    monkeypatch.setattr(accepting, "LONGEST_WAIT_DAYS", 30.0)


def test_stock_is_ready_within_two_points_and_even_within_one_and_a_half(short_waits):
    """Two points are common practice; the difference from core to skin is our own."""
    target = acceptance(SHOP, STEADY, 9).target_mc
    assert target == pytest.approx(float(equilibrium_moisture(20, 50)))
    for away, ready in ((1.99, True), (2.01, False), (-1.99, True), (-2.01, False)):
        found = acceptance(SHOP, STEADY, target + away, target + away)
        assert found.ready == ready
        if not ready:
            assert found.reasons == (
                f"2.0 % {'damper' if away > 0 else 'drier'} than in use ({target:.1f} %)",
            )
    for between_mc, ready in ((1.49, True), (1.51, False), (-1.49, True), (-1.51, False)):
        found = acceptance(SHOP, STEADY, target + between_mc, target)
        assert found.ready == ready
        assert found.core_minus_skin_mc == pytest.approx(between_mc)
        assert found.mean_mc == pytest.approx(target + 2 / 3 * between_mc)
        assert found.days_to_wait == 0 or not ready
    assert found.home_range_mc == pytest.approx((target, target))


def test_a_verdict_is_doubtful_within_the_readings_own_error(short_waits):
    target = acceptance(SHOP, STEADY, 9).target_mc
    for away, doubtful in ((0.9, False), (1.1, True), (2.9, True), (3.1, False)):
        assert acceptance(SHOP, STEADY, target + away, target + away).doubtful == doubtful


def test_wet_stock_waits_from_thirty_percent_on(monkeypatch):
    monkeypatch.setattr(accepting, "LONGEST_WAIT_DAYS", 120.0)
    at_30, wetter = (acceptance(SHOP, STEADY, mc, mc) for mc in (30.0, 45.0))
    assert at_30.notes == () and len(wetter.notes) == 1
    assert wetter.days_to_wait == pytest.approx(at_30.days_to_wait)
    assert "30 %" in wetter.notes[0]
    assert len(acceptance(SHOP, STEADY, 12).notes) == 1
    assert acceptance(SHOP, STEADY, 12).core_minus_skin_mc == 0


def test_stock_dries_at_the_mean_of_what_it_is_and_what_the_room_makes_of_it(monkeypatch):
    """The diffusivity of its own march: constant, at the mean of its moisture and the room's."""
    monkeypatch.setattr(accepting, "LONGEST_WAIT_DAYS", 120.0)
    target = float(equilibrium_moisture(20, 50))
    rate = float(diffusivity(20, (16.0 + SHOP.air_mc) / 2, 0.65))
    drying = march(20, 16.0, [SHOP.spell(120.0)], rate)
    expected = days_to_come_within(drying, target, 2.0)
    found = acceptance(SHOP, STEADY, 16.0, 16.0, core_to_skin_mc=9.0)
    assert found.days_to_wait == pytest.approx(expected)
    assert found.room_mc == SHOP.air_mc


def test_the_wait_ends_when_both_conditions_hold_for_good(monkeypatch):
    monkeypatch.setattr(accepting, "LONGEST_WAIT_DAYS", 200.0)
    target = acceptance(SHOP, STEADY, 9).target_mc
    uneven = acceptance(SHOP, STEADY, target + 2.4, target, core_to_skin_mc=1.0)
    assert len(uneven.reasons) == 1 and uneven.days_to_wait > 0
    coarse = acceptance(SHOP, STEADY, target + 2.4, target, core_to_skin_mc=2.0)
    assert 0 < coarse.days_to_wait < uneven.days_to_wait


def test_moisture_as_built_is_given_told_by_the_shop_or_missing():
    given = built_moisture(9.0)
    assert (given.mc, given.basis, given.likely_range) == (9.0, "given", (8.5, 9.5))
    assert given.uncertainty == Uncertain(9.0, 0.5)
    day = datetime.date(2024, 2, 10)
    shop = built_moisture(shop=STEADY, date=day)
    still = float(equilibrium_moisture(20, 50))
    assert shop.mc == pytest.approx(still)
    assert shop.likely_range == pytest.approx((still - 1, still + 1))
    assert shop.uncertainty == Uncertain(shop.mc, 1.0)
    assert "20 °C mean" in shop.basis and "2024-02-10" in shop.basis
    lagging = built_moisture(shop=HOME, date=day, thickness_mm=40, specific_gravity=0.65).mc
    assert (
        lagging > built_moisture(shop=HOME, date=day).mc
    )  # thick wood is still damper than the winter's air
    for half in ({"thickness_mm": 40}, {"specific_gravity": 0.65}):
        assert built_moisture(shop=HOME, date=day, **half).mc == built_moisture(shop=HOME, date=day).mc
    for half, missing in (({"shop": HOME}, "add the date"), ({"date": day}, "add the shop's year")):
        with pytest.raises(InputError, match=f"belong together.*{missing}"):
            built_moisture(**half)


def test_thirty_days_of_air_before_it_was_built():
    """A made-up year by days: the mean of the thirty that end with the day itself, over New Year too."""
    from movement_core.air.daily import DailyAir, daily_moisture

    humidity = 40 + 20 * np.sin(np.arange(365) / 11.0)
    air = DailyAir("made up", np.full(365, 20.0), humidity, "made up")
    daily = daily_moisture(air)
    for date, day in ((datetime.date(2023, 4, 10), 99), (datetime.date(2023, 1, 10), 9)):
        expected = np.mean([daily[k % 365] for k in range(day - 29, day + 1)])
        assert built_moisture(shop=air, date=date).mc == pytest.approx(expected)


def test_a_missing_moisture_is_tried_at_every_whole_percent():
    missing = built_moisture()
    assert (missing.mc, missing.basis, missing.likely_range) == (None, "missing", (6.0, 14.0))
    tried, answers = over_plausible(lambda mc: 2 * mc, missing)
    assert tried.tolist() == [6, 7, 8, 9, 10, 11, 12, 13, 14]
    assert answers.tolist() == (2 * tried).tolist()
    assert len(over_plausible(lambda mc: mc, missing, 2)[0]) == 2
    assert len(over_plausible(lambda mc: mc, missing, 1000)[0]) == 1000
    for wrong in (1, 1001):
        with pytest.raises(InputError, match="2 to 1000"):
            over_plausible(lambda mc: mc, missing, wrong)
