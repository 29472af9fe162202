"""Places, rooms, stays in sequence, and what the wood was when it was built."""

from __future__ import annotations

import datetime

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from movement_core.air.daily import DailyAir
from movement_core.air.indoor import Rooms, indoor_air, indoor_year
from movement_core.air.moist_air import dew_point, humidity_of_moisture, humidity_ratio, saturation_pressure
from movement_core.air.places import all_places, find_place
from movement_core.air.sequence import Stay, Stays, day_of_year, steady_air
from movement_core.air.year import Year
from movement_core.errors import InputError, UnknownName
from movement_core.moisture.journey import built_moisture, journey, over_plausible
from movement_core.moisture.response import wood_year

DAY = datetime.date
SHOP = Year(
    "invented shop", (16,) * 12, (62, 60, 58, 55, 55, 57, 60, 62, 64, 65, 65, 63), "invented for a test"
)
HOME = Year(
    "invented home", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test"
)


def test_heating_dries_and_cooling_in_damp_places_dries_too() -> None:
    cold = find_place("Minneapolis")
    assert cold.indoors(Rooms()).rh_percent[0] < 40 < cold.outdoor.rh_percent[0]
    damp = find_place("Singapore")
    assert damp.indoors(Rooms(cooling_c=24)).moisture.max() < damp.indoors(Rooms()).moisture.min() - 2


def test_the_dry_season_is_not_always_winter() -> None:
    """Common practice: heated homes are driest in winter; arid and monsoon places have their own dry
    season.
    """
    assert find_place("Stockholm").indoors(Rooms()).driest_month in (0, 1, 11)
    assert find_place("Delhi").outdoor.driest_month in (3, 4)
    assert find_place("Sydney").indoors(Rooms()).driest_month in (5, 6, 7, 8)


def test_machines_hold_their_limits_and_say_so() -> None:
    outside = np.array([-20.0, 0, 10, 20, 30])
    air = indoor_air(outside, 80, Rooms(humidifier_rh=40, dehumidifier_rh=55))
    assert air.rh_percent.min() == pytest.approx(40) and air.rh_percent.max() == pytest.approx(55)
    assert air.humidified[0] and not air.humidified[-1]
    assert air.dehumidified[-1] and not (air.humidified & air.dehumidified).any()
    plain = indoor_air(outside, 80, Rooms())
    assert not (plain.humidified | plain.dehumidified | plain.cooled).any()


def test_unheated_rooms_condense_openly() -> None:
    air = indoor_air([-5.0, 10.0], 98, Rooms(heating_c=None, warmer_by_c=0, moisture_gain_g_m3=5))
    assert air.condensing.all() and (air.rh_percent == 100).all()
    year = indoor_year(
        find_place("Dublin").outdoor, Rooms(heating_c=None, warmer_by_c=0, moisture_gain_g_m3=8)
    )
    assert "condenses" in year.basis


@given(st.floats(-25, 38), st.floats(5, 100), st.floats(0, 8))
def test_warming_alone_keeps_the_vapour(outside: float, rh: float, gain: float) -> None:
    rooms = Rooms(heating_c=20, warmer_by_c=0, moisture_gain_g_m3=0)
    air = indoor_air(outside, rh, rooms)
    if not air.condensing:
        assert float(air.humidity_ratio_kg) == pytest.approx(
            float(humidity_ratio(outside, rh, below_freezing="water")), rel=1e-9
        )
    wetter = indoor_air(outside, rh, Rooms(heating_c=20, warmer_by_c=0, moisture_gain_g_m3=gain))
    assert wetter.rh_percent >= air.rh_percent - 1e-9


@pytest.mark.parametrize(
    "call",
    [lambda: Rooms(heating_c=68), lambda: Rooms(heating_c=25, cooling_c=22),
     lambda: Rooms(humidifier_rh=60, dehumidifier_rh=50),
     lambda: indoor_air(70, 140, Rooms()), lambda: indoor_air(20, float("nan"), Rooms()),
     lambda: indoor_air(20, 50, Rooms(), pressure_pa=1013.25), lambda: saturation_pressure(300),
     lambda: saturation_pressure(0, below_freezing="snow"), lambda: humidity_of_moisture(20, 29.9),
     lambda: dew_point(20, 0)],
)  # fmt: skip
def test_impossible_air_is_refused(call) -> None:
    with pytest.raises(InputError):
        call()


def test_places_by_name() -> None:
    assert find_place("sao paulo").name == "São Paulo"
    assert find_place("Boston, Massachusetts").outdoor.rh_percent[0] == pytest.approx(62, abs=5)
    with pytest.raises(UnknownName, match="Berlin"):
        find_place("Berlim")
    assert len({place.name for place in all_places()}) == len(all_places())


def test_days_in_days_out() -> None:
    air = DailyAir("invented", np.full(365, -5.0), np.full(365, 80.0), "invented")
    inside = indoor_year(air, Rooms())
    assert isinstance(inside, DailyAir) and 20 < inside.rh_percent[0] < 40


def test_stays_follow_one_another() -> None:
    with pytest.raises(InputError, match="a gap"):
        Stays(
            (
                Stay("a", SHOP, DAY(2024, 1, 1), DAY(2024, 2, 1)),
                Stay("b", HOME, DAY(2024, 2, 3), DAY(2024, 3, 1)),
            )
        )
    with pytest.raises(InputError, match="overlap"):
        Stays(
            (
                Stay("a", SHOP, DAY(2024, 1, 1), DAY(2024, 2, 1)),
                Stay("b", HOME, DAY(2024, 1, 3), DAY(2024, 3, 1)),
            )
        )
    with pytest.raises(InputError, match="ends"):
        Stays((Stay("a", SHOP, DAY(2024, 2, 1), DAY(2024, 1, 1)),))
    with pytest.raises(InputError, match="no stay"):
        Stays(())
    assert day_of_year(DAY(2024, 2, 29)) == day_of_year(DAY(2023, 2, 28)) == 58
    assert day_of_year(DAY(2024, 12, 31)) == 364


def test_shop_van_home() -> None:
    stays = Stays((
        Stay("shop", SHOP, DAY(2024, 6, 1), DAY(2024, 9, 1)),
        Stay("van", steady_air("van", 10, 80), DAY(2024, 9, 1), DAY(2024, 9, 15), "wrapped", "wrapped"),
        Stay("home", HOME, DAY(2024, 9, 15), DAY(2026, 9, 15), "varnish 2", "bare"),
    ))  # fmt: skip
    course = journey(stays, 20, 0.65, 10.5)
    assert len(course.dates) == course.mean_mc.size == (DAY(2026, 9, 15) - DAY(2024, 6, 1)).days
    van = slice(92, 106)
    assert np.ptp(course.mean_mc[van]) < 0.35  # wrapped: the damp van hardly reaches it
    winter = course.dates.index(DAY(2025, 2, 10))
    assert course.mean_mc[winter] < course.mean_mc[91] - 2
    assert (
        course.face_difference_mc[course.dates.index(DAY(2024, 11, 1))] > 0.2
    )  # bare back dries first: crown
    # a year later it is where the repeating year says
    settled = wood_year(HOME, 20, 0.65, "varnish 2", "bare")
    last = course.mean_mc[-365:]
    offset = day_of_year(DAY(2025, 9, 15))
    assert np.abs(last - np.roll(settled.mean_mc, -offset)).max() < 0.2


def test_what_it_was_when_built() -> None:
    given_mc = built_moisture(9.0)
    assert given_mc.mc == 9 and given_mc.basis == "given"
    lagged = built_moisture(shop=SHOP, date=DAY(2024, 3, 1), thickness_mm=30, specific_gravity=0.65)
    airy = built_moisture(shop=SHOP, date=DAY(2024, 3, 1))
    assert lagged.mc is not None and airy.mc is not None and abs(lagged.mc - airy.mc) < 1.5
    assert "2024-03-01" in lagged.basis
    missing = built_moisture()
    assert missing.mc is None and missing.basis == "missing"
    moistures, answers = over_plausible(lambda mc: 500 * 0.0036 * (7 - mc), missing)
    assert moistures[0] == 6 and moistures[-1] == 14 and answers[0] > 0 > answers[-1]
    with pytest.raises(InputError, match="date"):
        built_moisture(shop=SHOP)
    with pytest.raises(InputError):
        built_moisture(45)
