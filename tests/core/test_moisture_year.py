"""The wood's answer to a year: limits, signs, shapes and errors."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.air.daily import DailyAir, days_from_months, month_of_day, months_from_days
from movement_core.air.year import Year
from movement_core.errors import InputError, UnknownName
from movement_core.moisture.response import SlabTransport, slab_year, wood_year

WINTER_DRY = Year(
    "invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test"
)
finishes = st.sampled_from(["bare", "oil 2", "varnish 3", "shellac 2", "epoxy 3"])


def test_thin_bare_wood_follows_the_air() -> None:
    year = wood_year(WINTER_DRY, 0.5, 0.4)
    assert np.abs(year.mean_mc - year.air_mc).max() < 0.02
    assert float(year.lag_days) < 0.5


def test_thick_filmed_wood_hardly_answers() -> None:
    year = wood_year(WINTER_DRY, 400, 0.7, "epoxy 3", "epoxy 3")
    assert float(year.swing_share) < 0.02
    assert np.abs(year.mean_mc - year.air_mc.mean()).max() < 0.05


def test_finish_changes_when_and_how_much_but_never_the_mean() -> None:
    bare, varnished = (wood_year(WINTER_DRY, 20, 0.68, finish, finish) for finish in ("bare", "varnish 3"))
    assert varnished.lag_days > bare.lag_days + 7
    assert varnished.swing_share < bare.swing_share
    assert float(varnished.mean_mc.mean()) == pytest.approx(float(bare.air_mc.mean()), abs=1e-9)


def test_a_thick_top_lags_by_weeks() -> None:
    assert 14 < float(wood_year(WINTER_DRY, 35, 0.68, "varnish 2", "varnish 2").lag_days) < 80


def test_the_open_face_leads_and_is_the_damper_one_in_the_damp_season() -> None:
    year = wood_year(WINTER_DRY, 20, 0.6, "bare", "varnish 6")
    july, january = 200, 15
    assert year.face_difference_mc[july] > 0.2  # show face damper: crown
    assert year.face_difference_mc[january] < -0.2
    mirrored = wood_year(WINTER_DRY, 20, 0.6, "varnish 6", "bare")
    assert np.allclose(mirrored.face_difference_mc, -year.face_difference_mc, atol=1e-10)
    assert np.allclose(mirrored.mean_mc, year.mean_mc, atol=1e-10)


def test_equal_faces_have_no_difference() -> None:
    year = wood_year(WINTER_DRY, 25, 0.6, "varnish 2", "varnish 2")
    assert np.abs(year.face_difference_mc).max() < 1e-9


def test_blocked_face_is_half_of_a_board_twice_as_thick() -> None:
    half = wood_year(WINTER_DRY, 15, 0.6, "bare", "blocked")
    whole = wood_year(WINTER_DRY, 30, 0.6, "bare", "bare")
    assert np.allclose(half.mean_mc, whole.mean_mc, atol=1e-9)
    assert np.allclose(half.show_mc, whole.show_mc, atol=1e-9)


def test_another_air_behind_gives_a_steady_difference() -> None:
    damp = Year("invented damp cellar", (21,) * 12, (75,) * 12, "invented for a test")
    year = wood_year(WINTER_DRY, 12, 0.5, "varnish 2", "varnish 2", back_air=damp)
    assert (year.face_difference_mc < 0).all()
    assert year.air_mc.mean() < year.mean_mc.mean() < year.back_air_mc.mean()
    blocked = wood_year(WINTER_DRY, 12, 0.5, "bare", "blocked", back_air=damp)
    assert blocked.mean_mc.mean() == pytest.approx(year.air_mc.mean(), abs=1e-9)


def test_slow_waves_have_no_cancellation() -> None:
    """A sheet of 0.1 mm in a year-long wave: the closed forms would subtract equal numbers."""
    slab = SlabTransport(np.array(0.1), np.array(300.0), np.array(1e4), np.array(0.0), "test")
    wave = 10 + np.sin(2 * np.pi * np.arange(365) / 365)
    year = slab_year(wave, slab)
    assert np.abs(year.mean_mc - wave).max() < 1e-6
    # quasi-steady: M = M(t) − M′ (t² − z²)-like parabola, whose first moment about the middle is t² M′ /
    # (24 D)
    slope = 2 * np.pi / 365 * np.cos(2 * np.pi * np.arange(365) / 365)
    expected = 12 * slope * 0.1**2 / 300 / 24
    assert np.abs(year.face_difference_mc - expected).max() < 2e-3 * np.abs(expected).max()


@settings(max_examples=40, deadline=None)
@given(
    st.floats(1, 100), st.floats(0.2, 1.1), finishes, finishes,
    st.lists(st.floats(5, 95), min_size=12, max_size=12),
)  # fmt: skip
def test_the_mean_never_leaves_the_range_of_the_air(
    thickness: float, gravity: float, show: str, back: str, humidities: list[float]
) -> None:
    air = Year("drawn at random", (18,) * 12, tuple(humidities), "random")
    year = wood_year(air, thickness, gravity, show, back)
    slack = 0.002 * (np.ptp(year.air_mc) + 1e-6)
    assert year.driest_mc >= year.air_mc.min() - slack
    assert year.wettest_mc <= year.air_mc.max() + slack
    assert float(year.mean_mc.mean()) == pytest.approx(float(year.air_mc.mean()), abs=1e-8)


def test_array_elements_equal_single_boards() -> None:
    thickness = np.array([[10.0, 20.0, 30.0], [12.0, 22.0, 600.0]])
    gravity = np.array([0.4, 0.6, 0.8])
    together = wood_year(WINTER_DRY, thickness, gravity, ["bare", "oil 2", "varnish 2"], "blocked")
    assert together.mean_mc.shape == (2, 3, 365)
    single = wood_year(WINTER_DRY, 22.0, 0.6, "oil 2", "blocked")
    assert np.allclose(together.mean_mc[1, 1], single.mean_mc, atol=1e-12)
    assert np.allclose(together.lag_days[1, 1], single.lag_days)
    assert single.mean_mc.shape == (365,) and np.ndim(single.lag_days) == 0


def test_more_boards_than_one_block() -> None:
    thickness = np.linspace(5, 50, 1000)
    many = wood_year(WINTER_DRY, thickness, 0.6)
    assert np.allclose(many.mean_mc[777], wood_year(WINTER_DRY, thickness[777], 0.6).mean_mc, atol=1e-12)


def test_steady_air_has_no_share() -> None:
    still = Year("museum store", (20,) * 12, (50,) * 12, "invented for a test")
    year = wood_year(still, 20, 0.6)
    assert np.isnan(year.swing_share) and np.ptp(year.mean_mc) < 1e-9


@pytest.mark.parametrize(
    ("arguments", "word"),
    [
        ({"thickness_mm": 0}, "thickness"),
        ({"thickness_mm": float("nan")}, "thickness"),
        ({"thickness_mm": [20, -3]}, r"thickness\[1\]"),
        ({"specific_gravity": 680}, "specific gravity"),
        ({"show": "blocked", "back": "blocked"}, "both faces"),
        ({"show": "varnish"}, "coats"),
        ({"thickness_mm": [1, 2, 3], "specific_gravity": [0.5, 0.6]}, "broadcast|fit"),
        ({"diffusivity_factor": 0}, "diffusivity factor"),
    ],
)
def test_bad_input_is_refused(arguments: dict, word: str) -> None:
    with pytest.raises(InputError, match=word):
        wood_year(WINTER_DRY, **({"thickness_mm": 20, "specific_gravity": 0.6} | arguments))


def test_unknown_names_carry_the_nearest() -> None:
    with pytest.raises(UnknownName, match="varnish"):
        wood_year(WINTER_DRY, 20, 0.6, "varnsh 2")
    with pytest.raises(UnknownName, match="cell wall"):
        wood_year(WINTER_DRY, 20, 0.6, diffusion="magic")


def test_humidity_passed_as_moisture_is_refused() -> None:
    slab = SlabTransport(np.array(20.0), np.array(3.0), np.array(4.0), np.array(4.0), "test")
    with pytest.raises(InputError, match="month 1"):
        slab_year([45.0] * 12, slab)
    with pytest.raises(InputError, match="shape"):
        slab_year([8.0] * 24, slab)


def test_days_and_months() -> None:
    months = np.array([5, 5, 6, 7, 8, 10, 11, 11, 10, 8, 6, 5.0])
    days = days_from_months(months)
    assert days.min() >= months.min() and days.max() <= months.max()
    assert np.abs(months_from_days(days) - months).max() < 0.15 * np.abs(np.diff(months)).max()
    assert np.allclose(days_from_months(np.full(12, 7.0)), 7.0)
    assert [month_of_day(day) for day in (0, 30, 31, 364, 365)] == [0, 0, 1, 11, 0]


def test_daily_air_refuses_a_wrong_year() -> None:
    with pytest.raises(InputError, match="365 days"):
        DailyAir("short", np.full(300, 20.0), np.full(300, 50.0), "test")
    humid = np.full(365, 50.0)
    humid[40] = 140
    with pytest.raises(InputError, match="40"):
        DailyAir("bad", np.full(365, 20.0), humid, "test")
    air = DailyAir("good", np.full(365, 20.0), np.full(365, 50.0), "test")
    assert air.months.rh_percent == (50.0,) * 12
    assert wood_year(air, 20, 0.5).mean_mc == pytest.approx(air.moisture[0], abs=1e-9)


def test_saturated_air_of_every_temperature_is_usable() -> None:
    """The mean moisture of a year can lie above what saturated air at its mean temperature gives."""
    wet = Year(
        "cellar", (-25, -20, -10, 0, 5, 10, 15, 10, 5, 0, -10, -20), (100,) * 12, "invented for a test"
    )
    assert 24 < wood_year(wet, 20, 0.6).driest_mc < 29.1
    assert 24 < wood_year(wet, 20, 0.6, "varnish 2", "blocked").driest_mc < 29.1
