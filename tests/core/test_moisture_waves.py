"""A year's waves, and transport figures, against what can be said of them without computing."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture.harmonics import _twelve_moments
from movement_core.moisture.response import (
    SlabTransport,
    mean_air,
    slab_transport,
    slab_year,
    with_factor,
    wood_year,
)
from movement_core.moisture.transport import diffusivity, exchange, still_air_permeance

HOME = Year("invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test")


def slab(thickness=20.0, rate=3.0, show=4.0, back=4.0):
    return SlabTransport(np.array(thickness), np.array(rate), np.array(show), np.array(back), "made up")


@pytest.mark.parametrize("depth", [1e-4, 0.019, 0.021, 0.5, 3.0])
def test_twelve_moments_are_the_integral(depth):
    """12 ∫ exp(−q z)(z − t/2) dz / t² by Gauss and Legendre, below and above where the series takes over."""
    x = (1 + 1j) * depth
    nodes, weights = np.polynomial.legendre.leggauss(60)
    place = 0.5 * (nodes + 1)
    integral = 12 * (0.5 * weights * np.exp(-x * place) * (place - 0.5)).sum()
    decay, inverse = np.exp(-x), 1 / x
    found = _twelve_moments(*(np.array([[one]]) for one in (depth, decay, inverse, (1 - decay) * inverse)))
    assert found[0, 0] == pytest.approx(integral, rel=2e-5)


def test_a_slow_wave_lags_by_the_time_constant_of_its_film():
    """A thin sheet behind a film: one store of t behind 2 faces of h, so tan(ω lag) = ω t ÷ (h + h) (derived)."""
    omega = 2 * np.pi / 365
    wave = 10 + 2 * np.cos(omega * np.arange(365))
    year = slab_year(wave, slab(4.0, 1e4, 0.03, 0.05))
    turn = np.arctan(omega * 4.0 / 0.08)
    assert year.lag_days == pytest.approx(turn / omega, rel=1e-3)
    assert year.swing_share == pytest.approx(np.cos(turn), rel=1e-3)
    np.testing.assert_allclose(
        year.mean_mc, 10 + 2 * np.cos(turn) * np.cos(omega * np.arange(365) - turn), atol=2e-3
    )
    assert (year.driest_day, year.wettest_day) == (int(year.mean_mc.argmin()), int(year.mean_mc.argmax()))
    assert (year.driest_mc, year.wettest_mc) == (year.mean_mc.min(), year.mean_mc.max())
    assert year.lag_days == pytest.approx(365 / 2 - year.driest_day, abs=1) or year.driest_day > 182


def test_two_airs_are_waves_of_their_own():
    """What is linear adds up: air on the show face alone and on the back alone give both together."""
    show = 10 + 2 * np.sin(np.arange(365) / 58.1)
    back = 8 + np.cos(np.arange(365) / 58.1)
    board = slab(20.0, 3.0, 2.0, 0.5)
    both = slab_year(show, board, back)
    parts = slab_year(show, board, np.zeros(365)), slab_year(np.zeros(365), board, back)
    for name in ("mean_mc", "show_mc", "back_mc", "face_difference_mc"):
        np.testing.assert_allclose(getattr(both, name), sum(getattr(part, name) for part in parts), atol=1e-9)
    assert both.swing_share == pytest.approx(np.ptp(both.mean_mc) / np.ptp((show + back) / 2))
    same = slab_year(show, board, show.copy())
    np.testing.assert_allclose(same.mean_mc, slab_year(show, board).mean_mc, atol=1e-12)


def test_a_factor_of_the_diffusivity_is_another_board():
    year = wood_year(HOME, 25, 0.65, "varnish 2", "bare")
    quick = wood_year(HOME, 25, 0.65, "varnish 2", "bare", diffusivity_factor=3.0)
    np.testing.assert_allclose(with_factor(year, 3.0).mean_mc, quick.mean_mc)
    assert float(quick.slab.diffusivity) == pytest.approx(3 * float(year.slab.diffusivity))


def test_a_slab_is_figured_at_the_mean_of_its_air():
    figures = slab_transport(HOME, 20, 0.65, "bare", "varnish 2")
    temperature, daily, rh = mean_air(HOME)
    assert temperature == pytest.approx(21.0)
    assert float(figures.diffusivity) == pytest.approx(float(diffusivity(temperature, daily.mean(), 0.65)))
    bare = float(exchange(still_air_permeance(), temperature, rh, 0.65))
    assert float(figures.show_exchange) == pytest.approx(bare)
    assert 0 < float(figures.back_exchange) < bare
    assert figures.method.startswith("diffusivity 'cell wall' at 21 °C and ")
    assert "1/3 to 3 times" in figures.method
    plain = slab_transport(HOME, 20, 0.65)
    assert float(plain.back_exchange) == float(plain.show_exchange) == pytest.approx(bare)


@pytest.mark.parametrize(
    ("name", "low", "high", "says"),
    [("thickness_mm", 0.1, 1000.0, "0.1 to 1000 mm"), ("diffusivity_factor", 1e-3, 1e3, "0.001 to 1000")],
)
def test_a_slab_within_its_ranges(name, low, high, says):
    given = {"thickness_mm": 20.0, "specific_gravity": 0.65}
    for taken in (low, high):
        assert slab_transport(HOME, **{**given, name: taken})
    for wrong in (0.9 * low, high + 0.4):
        with pytest.raises(InputError) as caught:
            slab_transport(HOME, **{**given, name: wrong})
        assert says in str(caught.value)


def test_no_room_is_warmer_than_forty_five_degrees_the_year_round():
    assert mean_air(Year("hot", (45,) * 12, (30,) * 12, "invented"))[0] == pytest.approx(45.0)
    with pytest.raises(InputError, match="up to 45 °C"):
        mean_air(Year("hotter", (45.4,) * 12, (30,) * 12, "invented"))
