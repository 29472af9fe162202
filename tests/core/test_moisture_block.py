"""Legs and blocks, and the spread of a year."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.indoor import Rooms, indoor_air
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture.block import block_year
from movement_core.moisture.response import with_factor, wood_year
from movement_core.moisture.year_spread import year_moisture_spread

HOME = Year("invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test")


@pytest.mark.parametrize("thickness", [8.0, 20.0, 60.0])
@pytest.mark.parametrize("finish", ["bare", "varnish 3"])
def test_a_very_wide_block_is_a_board(thickness: float, finish: str) -> None:
    block = block_year(HOME, 9999, thickness, 0.65, finish)
    board = wood_year(HOME, thickness, 0.65, finish, finish)
    swing = np.ptp(block.air_mc)
    assert np.abs(block.mean_mc - board.mean_mc).max() < 5e-3 * swing
    assert block.lag_days == pytest.approx(float(board.lag_days), abs=0.5)


def test_a_leg_is_quicker_than_a_board_and_a_stub_quicker_still() -> None:
    board = wood_year(HOME, 60, 0.65)
    leg = block_year(HOME, 60, 60, 0.65)
    stub = block_year(HOME, 60, 60, 0.65, length_mm=80)
    assert board.swing_share < leg.swing_share < stub.swing_share <= 1
    assert block_year(HOME, 60, 60, 0.65, length_mm=5000).swing_share == pytest.approx(
        leg.swing_share, abs=0.02
    )
    assert block_year(HOME, 60, 60, 0.65, length_mm=80, end_finish="blocked").swing_share == pytest.approx(
        leg.swing_share
    )
    for one in (leg, stub):
        assert one.mean_mc.mean() == pytest.approx(one.air_mc.mean(), abs=1e-9)


def test_range_of_the_diffusivity() -> None:
    board = wood_year(HOME, 25, 0.65, "varnish 2", "varnish 2")
    slow, quick = with_factor(board, 1 / 3), with_factor(board, 3)
    assert slow.swing_share < board.swing_share < quick.swing_share


def test_spread_of_a_year() -> None:
    found = year_moisture_spread(HOME, 25, 0.65, "varnish 2", "bare")
    assert found.value.shape == (365,)
    assert found.value == pytest.approx(wood_year(HOME, 25, 0.65, "varnish 2", "bare").mean_mc)
    assert np.all(found.sd > 1.3) and np.all(found.sd < 2.2)
    assert found.ruling_cause in ("climate", "sorption")
    logged = year_moisture_spread(HOME, 40, 0.65, "varnish 2", "bare", climate_sd_mc=0.1, sorption_sd_mc=0.1)
    assert logged.ruling_cause == "diffusivity"


def test_fahrenheit_taken_for_celsius_is_refused() -> None:
    hot = Year("thermometer in °F", (68,) * 12, (45,) * 12, "invented")
    with pytest.raises(InputError, match="°F"):
        wood_year(hot, 20, 0.6)
    with pytest.raises(InputError, match="°F"):
        block_year(hot, 20, 20, 0.6)
    with pytest.raises(InputError, match="°F"):
        indoor_air([50.0, 70.0], 50, Rooms())
