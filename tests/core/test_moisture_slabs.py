"""Slabs, blocks and films against roots, limits and sums."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture.block import block_year
from movement_core.moisture.exclusion import exclusion_percent, fit_film
from movement_core.moisture.response import wood_year
from movement_core.moisture.slab import biot_roots, half_time_days, uptake

HOME = Year("invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test")


def test_roots_lie_each_in_its_half_period_and_fulfil_their_equation():
    for biot in (1e-3, 1.0, 50.0):
        roots = biot_roots(biot)
        assert roots.shape == (40,)
        assert (roots > np.arange(40) * np.pi).all() and (roots < (np.arange(40) + 0.5) * np.pi).all()
        np.testing.assert_allclose(roots * np.sin(roots), biot * np.cos(roots), atol=1e-9)


def test_half_times_of_a_board_without_and_with_a_film():
    """0.049 t²/D without resistance (Crank 1975 §4.3, recalled); ln 2 · t/2h where the film rules all (derived)."""
    assert float(half_time_days(20.0, 3.0)) == pytest.approx(0.0492 * 400 / 3, rel=2e-3)
    assert float(half_time_days(20.0, 3.0, faces=1)) == pytest.approx(0.0492 * 1600 / 3, rel=2e-3)
    assert float(half_time_days(20.0, 1e5, 0.5)) == pytest.approx(np.log(2) * 10 / 0.5, rel=1e-3)
    assert float(half_time_days(20.0, 1e5, 0.5, 1)) == pytest.approx(np.log(2) * 20 / 0.5, rel=1e-3)
    half = float(half_time_days(20.0, 3.0, 0.9))
    assert float(uptake(3.0 * half / 100, 0.9 * 10 / 3)) == pytest.approx(0.5, abs=1e-6)


def test_uptake_begins_by_the_face_and_ends_by_the_slowest_wave():
    """h t early on, 2√(t/π) where nothing resists; later one exponential of the first root (Crank, recalled)."""
    assert float(uptake(1e-6, 2.0)) == pytest.approx(2e-6, rel=0.01)
    assert float(uptake(1e-4, np.inf)) == pytest.approx(2 * np.sqrt(1e-4 / np.pi), rel=1e-3)
    assert (float(uptake(0.0, 2.0)), float(uptake(50.0, 2.0))) == (0.0, pytest.approx(1.0))
    root = float(biot_roots(2.0, 1)[0])
    left = [1 - float(uptake(time, 2.0)) for time in (1.0, 2.0)]
    assert left[1] / left[0] == pytest.approx(np.exp(-(root**2)), rel=1e-6)
    first = 2 * 4 / (root**2 * (root**2 + 4 + 2))
    assert left[0] == pytest.approx(first * np.exp(-(root**2)), rel=1e-5)


def test_a_block_that_breathes_at_its_ends_only_is_a_board_ten_times_as_quick():
    """Along the grain moisture goes ten times as fast as across it; blocked sides leave the ends alone."""
    ends = block_year(HOME, 60, 60, 0.65, "blocked", length_mm=120)
    board = wood_year(HOME, 120, 0.65, diffusivity_factor=10.0)
    np.testing.assert_allclose(ends.mean_mc, board.mean_mc, atol=5e-3 * np.ptp(ends.air_mc))
    assert ends.lag_days == pytest.approx(float(board.lag_days), abs=0.5)
    assert ends.swing_share == pytest.approx(np.ptp(ends.mean_mc) / np.ptp(ends.air_mc))
    still = block_year(Year("still", (20,) * 12, (50,) * 12, "invented"), 60, 60, 0.65)
    assert np.isnan(still.swing_share)


def test_a_block_within_its_ranges():
    given = {"width_mm": 60.0, "thickness_mm": 60.0, "specific_gravity": 0.65}
    for name, low, high, says in (
        ("width_mm", 0.5, 10000.0, "0.5 to 10000 mm"),
        ("thickness_mm", 0.5, 10000.0, "0.5 to 10000 mm"),
        ("length_mm", 0.5, 10000.0, "0.5 to 10000 mm"),
        ("diffusivity_factor", 1e-3, 1e3, "0.001 to 1000"),
    ):
        for taken in (low, high):
            assert block_year(HOME, **{**given, name: taken})
        for wrong in (0.9 * low, high + 0.4):
            with pytest.raises(InputError) as caught:
                block_year(HOME, **{**given, name: wrong})
            assert says in str(caught.value)


@pytest.mark.parametrize("resistance", [0.05, 1.0, 40.0])
def test_a_film_is_read_off_its_exclusion(resistance):
    found = fit_film(exclusion_percent(resistance).tolist())
    twice = fit_film(exclusion_percent(2 * resistance).tolist())
    assert found.permeance_ng == pytest.approx(2 * twice.permeance_ng, rel=1e-3)
    assert np.abs(found.misfit_points).max() < 0.01
    one_day = fit_film([None, float(exclusion_percent(resistance)[1]), None])
    assert one_day.permeance_ng == pytest.approx(found.permeance_ng, rel=1e-3)
    assert np.isnan(one_day.misfit_points[0]) and abs(one_day.misfit_points[1]) < 0.01


def test_films_at_the_ends_of_the_test():
    """Nothing kept out: no film. All kept out: the tightest film that fourteen days can tell from a closed one."""
    assert fit_film([0, 0, 0]).permeance_ng == np.inf
    tight = fit_film([100, 100, 100])
    assert 0 < tight.permeance_ng < fit_film([99.9, 99.9, 99.9]).permeance_ng
    assert tight.misfit_points == pytest.approx((0, 0, 0), abs=0.1)
    assert exclusion_percent([0.0, 1e9]) == pytest.approx(np.array([[0.0] * 3, [100.0] * 3]))
    loose = fit_film([1e-4, 1e-4, 1e-4])
    assert loose.permeance_ng > fit_film([1, 1, 1]).permeance_ng
    for wrong in ([-0.1, 5, 5], [5, 100.1, 5], [None, None, None], [5, 5]):
        with pytest.raises(InputError, match="percentages 0 to 100"):
            fit_film(wrong)
