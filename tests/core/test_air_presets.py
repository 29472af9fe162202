"""Finding indoor years, and the sorption equation's refusals."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.emc import equilibrium_moisture
from movement_core.air.presets import all_presets, all_years, find_year, half_a_year_later
from movement_core.errors import InputError, UnknownName
from movement_core.sources import PROVENANCES


def test_ten_years_and_more_each_with_its_basis():
    assert len(all_years()) >= 10
    assert len({year.name for year in all_years()}) == len(all_years())
    for preset in all_presets():
        assert preset.year.basis and preset.source.provenance in PROVENANCES
        for name in (preset.year.name, *preset.other_names):
            assert find_year(name) is preset.year


@pytest.mark.parametrize(
    "name, found",
    [
        ("Heated Cold-Winter Home", "heated cold-winter home"),
        ("cold winter home", "heated cold-winter home"),
        ("maritime unheated shop", "unheated shop, maritime"),
        ("Unheated shop (maritime)", "unheated shop, maritime"),
        ("monsoon", "monsoon home"),
    ],
)
def test_years_by_other_names(name, found):
    assert find_year(name).name == found


@pytest.mark.parametrize(
    "wrong, near",
    [("muzeum", "museum"), ("unheated shop", "unheated shop, continental"), ("arid", "arid upland home")],
)
def test_unknown_or_unclear_years_get_the_nearest(wrong, near):
    with pytest.raises(UnknownName) as caught:
        find_year(wrong)
    assert near in caught.value.nearest and near in str(caught.value)


def test_the_southern_year_is_half_a_year_later():
    north = find_year("heated cold-winter home")
    south = half_a_year_later(north)
    np.testing.assert_array_equal(south.moisture, np.roll(north.moisture, 6))
    assert abs(south.driest_month - north.driest_month) == 6
    assert half_a_year_later(south).rh_percent == north.rh_percent
    assert south.basis == north.basis and south.name != north.name


def test_moisture_rises_with_humidity_and_falls_with_warmth():
    t, rh = np.meshgrid(np.linspace(-20, 60, 40), np.linspace(1, 99, 60))
    mc = equilibrium_moisture(t, rh)
    assert (np.diff(mc, axis=0) > 0).all()
    warm = t[:, 1:] > 10  # below about 0 °C the equation turns over slightly
    assert (np.diff(mc, axis=1)[warm] < 0).all()
    assert equilibrium_moisture(20, 0) == 0


@pytest.mark.parametrize(
    "t, rh, word", [(20, 101, "humidity"), (20, float("nan"), "humidity"), (140, 50, "temp")]
)
def test_impossible_air_is_refused(t, rh, word):
    with pytest.raises(InputError, match=word):
        equilibrium_moisture(t, rh)


def test_the_first_bad_place_of_an_array_is_named():
    with pytest.raises(InputError, match=r"relative humidity\[1, 2\]"):
        equilibrium_moisture(20, [[40, 50, 60], [40, 50, -3]])
