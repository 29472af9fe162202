"""Moist air against psychrolib (an implementation of the ASHRAE Handbook Fundamentals formulas), and
through real weather.

The weather years ship inside pvlib: typical meteorological years of the US National Renewable Energy
Laboratory.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from movement_core.air.emc import equilibrium_moisture
from movement_core.air.indoor import Rooms, indoor_air
from movement_core.air.moist_air import (
    dew_point,
    humidity_of_moisture,
    humidity_ratio,
    relative_humidity,
    saturation_pressure,
)
from movement_core.air.places import all_places, find_place
from movement_core.moisture.response import wood_year
from movement_core.sources import DERIVED, READ, RECALLED
from tests.validation.record import compared, within_range

ASHRAE = "psychrolib (ASHRAE Handbook Fundamentals)"
WEATHER = "typical meteorological years (NREL) shipped with pvlib"

psychrolib = pytest.importorskip("psychrolib", reason="psychrolib is the reference for moist air")
PRESSURE = 101325.0


@pytest.fixture(autouse=True)
def _metric() -> None:
    psychrolib.SetUnitSystem(psychrolib.SI)


def test_saturation_pressure_to_a_thousandth() -> None:
    temperature = np.arange(-40, 61, 0.5)
    reference = np.array([psychrolib.GetSatVapPres(t) for t in temperature])
    ours = saturation_pressure(temperature)
    compared("saturation pressure, −40 to 60 °C", ASHRAE, DERIVED, reference, ours, "Pa", share=1e-3)


def test_humidity_ratio_to_a_thousandth() -> None:
    rng = np.random.default_rng(1)
    temperature, rh, pressure = (
        rng.uniform(-30, 45, 300),
        rng.uniform(1, 100, 300),
        rng.uniform(75e3, 105e3, 300),
    )
    for t, h, p in zip(temperature, rh, pressure):
        reference = psychrolib.GetHumRatioFromRelHum(t, h / 100, p)
        ours = float(humidity_ratio(t, h, p))
        compared("humidity ratio", ASHRAE, DERIVED, reference, ours, "kg/kg", share=1e-3)


def test_outdoor_to_indoor_humidity_to_a_thousandth() -> None:
    """Air of every winter and summer warmed or cooled to a room's temperature, dry side only."""
    rng = np.random.default_rng(2)
    for t, h, inside in zip(rng.uniform(-25, 35, 300), rng.uniform(10, 100, 300), rng.uniform(5, 30, 300)):
        ratio = psychrolib.GetHumRatioFromRelHum(t, h / 100, PRESSURE)
        ours = float(relative_humidity(inside, humidity_ratio(t, h)))
        reference = (
            psychrolib.GetVapPresFromHumRatio(ratio, PRESSURE) / psychrolib.GetSatVapPres(inside) * 100
        )
        compared("air warmed or cooled indoors", ASHRAE, DERIVED, reference, ours, "% RH", share=1.5e-3)


def test_dew_point() -> None:
    for t, h in ((20, 50), (-10, 80), (30, 20), (0.5, 99)):
        reference = psychrolib.GetTDewPointFromRelHum(t, h / 100)
        compared("dew point", ASHRAE, DERIVED, reference, float(dew_point(t, h)), "°C", within=0.03)


def test_humidity_of_moisture_is_the_inverse() -> None:
    temperature, rh = np.meshgrid([-20.0, 0, 20, 35], np.linspace(1, 99, 30))
    assert np.abs(humidity_of_moisture(temperature, equilibrium_moisture(temperature, rh)) - rh).max() < 1e-5


def _hourly(file: str):
    pvlib = pytest.importorskip("pvlib", reason="pvlib ships the weather years")
    path = Path(pvlib.__file__).parent / "data" / file
    if file.endswith("tm2"):
        table, _ = pvlib.iotools.read_tmy2(path)
        return (
            table["DryBulb"].to_numpy() / 10,
            table["RHum"].to_numpy().astype(float),
            table.index.month.to_numpy(),
        )
    table, _ = pvlib.iotools.read_tmy3(path, map_variables=True)
    return (
        table["temp_air"].to_numpy(),
        table["relative_humidity"].to_numpy().astype(float),
        table.index.month.to_numpy(),
    )


STATIONS = (("703165TY.csv", "Sand Point"), ("723170TYA.CSV", "Greensboro"), ("12839.tm2", "Miami"))


@pytest.mark.parametrize(("file", "place"), STATIONS)
def test_weather_year_hour_by_hour(file: str, place: str) -> None:
    """8760 hours outdoors → indoors; psychrolib does every 97th of them its own way; months as the place
    table has them.
    """
    temperature, rh, month = _hourly(file)
    rooms = Rooms(heating_c=20, moisture_gain_g_m3=0, warmer_by_c=0)
    inside = indoor_air(temperature, rh, rooms, below_freezing="ice")
    assert inside.rh_percent.shape == (8760,)
    for i in range(0, 8760, 97):
        ratio = psychrolib.GetHumRatioFromRelHum(temperature[i], rh[i] / 100, PRESSURE)
        reference = (
            100
            * psychrolib.GetVapPresFromHumRatio(ratio, PRESSURE)
            / psychrolib.GetSatVapPres(max(temperature[i], 20))
        )
        found = inside.rh_percent[i]
        compared("weather years indoors", ASHRAE, DERIVED, min(reference, 100), found, "% RH", share=1.5e-3)
    table = find_place(place).outdoor
    for what, unit, values, ours in (
        ("temperature", "°C", temperature, table.temperature_c),
        ("humidity", "% RH", rh, table.rh_percent),
    ):
        means = [float(values[month == m].mean()) for m in range(1, 13)]
        compared(f"monthly {what} of the place table", WEATHER, READ, means, ours, unit, within=0.051)


@pytest.mark.parametrize(("cooling", "allowed"), [(None, 0.8), (25.0, 2.1)])
@pytest.mark.parametrize(("file", "place"), STATIONS)
def test_monthly_means_give_nearly_what_hours_give(
    file: str, place: str, cooling: float | None, allowed: float
) -> None:
    """The monthly way against the mean of the hourly way, percent moisture of wood: the agreement as it is."""
    temperature, rh, month = _hourly(file)
    rooms = Rooms(heating_c=20, cooling_c=cooling)
    hourly = indoor_air(temperature, rh, rooms)
    hourly_mc = equilibrium_moisture(hourly.temperature_c, hourly.rh_percent)
    by_hours = np.array([hourly_mc[month == m].mean() for m in range(1, 13)])
    compared(
        f"monthly means instead of hours, {'cooled' if cooling else 'heated only'}", WEATHER, DERIVED, by_hours,
        find_place(place).indoors(rooms).moisture, "% MC", within=allowed,
        note="months hide the swings within them; cooled rooms cut off the damp hours, which a mean cannot",
    )  # fmt: skip


def test_heated_homes_are_as_dry_as_measured() -> None:
    """ASHRAE Transactions 72 (abstract, read): Canadian houses average 25 to 30 % in the heating season;
    with little vapour from living (draughty houses) the model gives that for Montreal, and never more than
    the classes of EN 15251."""
    winter = find_place("Montreal").indoors(Rooms(heating_c=21, moisture_gain_g_m3=2.5)).rh_percent
    within_range(
        "heated houses in a cold winter", "ASHRAE Transactions 72, abstract: 25 to 30 %", READ, 20, 32,
        np.mean([winter[i] for i in (0, 1, 2, 11)]), "% RH", published=27.5,
        note="with little vapour from living: draughty houses; the middle of the published range is shown",
    )  # fmt: skip


def test_heated_homes_against_en_15026() -> None:
    """EN 15026 Annex C, normal occupancy (recalled, low confidence): 35 % at −10 °C outside to 65 % at 20
    °C.
    """
    outside = np.array([-10.0, 0.0, 10.0, 20.0])
    ours = indoor_air(outside, np.full(4, 80.0), Rooms(heating_c=20, moisture_gain_g_m3=5)).rh_percent
    compared(
        "heated homes, −10 to 20 °C outside", "EN 15026, Annex C, normal occupancy", RECALLED,
        np.interp(outside, [-10, 20], [35, 65]), ours, "% RH", within=10, note="recalled with low confidence",
    )  # fmt: skip


def test_every_place_has_a_year_and_a_source() -> None:
    places = all_places()
    assert len(places) >= 30
    for place in places:
        assert place.temperature_source.title and place.humidity_source.title
        year = wood_year(place.indoors(Rooms()), 20, 0.6)
        assert 3 < year.driest_mc <= year.wettest_mc < 22
