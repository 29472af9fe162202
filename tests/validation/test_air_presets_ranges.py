"""The indoor years against the ranges their basis states, and against published ones.

Sources: Wood Handbook FPL-GTR-190 (2010) Table 13-2 and Fig. 13-1, p. 13-5 (averages read, ranges recalled);
EN 15251 humidity categories (read); the other ranges are common practice, no source.
"""

from __future__ import annotations

import pytest

from movement_core.air.presets import all_presets, find_year
from movement_core.sources import PRACTICE, READ, RECALLED
from tests.validation.record import compared, within_range
from tests.validation.wood_tables import published_rows


@pytest.mark.parametrize("preset", all_presets(), ids=lambda p: p.year.name)
def test_months_stay_within_the_stated_moisture_and_use_it(preset):
    low, high = preset.stated_mc
    moisture = preset.year.moisture
    assert low <= moisture.min() and moisture.max() <= high
    assert moisture.max() - moisture.min() > 0.4 * (high - low), "the stated range is far wider than the year"


RANGES = {row["region"]: row for row in published_rows("handbook_recommended_moisture")}


@pytest.mark.parametrize(
    "name, region",
    [
        ("heated cold-winter home", "most of U.S."),
        ("humidified cold-winter home", "most of U.S."),
        ("arid upland home", "dry southwestern"),
        ("hot and damp, cooled", "damp warm coastal"),
    ],
)
def test_mean_moisture_within_the_handbooks_recommended_range(name, region):
    mean = find_year(name).moisture.mean()
    low, high = (float(RANGES[region][side]) for side in ("low", "high"))
    within_range(
        "mean indoor moisture of wood by region", "Wood Handbook FPL-GTR-190, Table 13-2", RECALLED, low, high,
        mean, "% MC",
    )  # fmt: skip


@pytest.mark.parametrize(
    "name, low, high", [("heated cold-winter home", 25, 60), ("heated office, cold winters", 20, 70)]
)
def test_humidities_within_the_design_limits_of_the_standard(name, low, high):
    """EN 15251 categories II and III: the driest and dampest that a building is to be designed for."""
    rh = find_year(name).rh_percent
    source = "EN 15251, humidity categories II and III"
    compared("driest month of the standard's category", source, READ, low, min(rh), "% RH", within=0)
    within_range("dampest month of the standard's category", source, READ, low, high, max(rh), "% RH")


def test_museum_keeps_fifty_percent_within_five():
    """Common practice, no source: 50 ± 5 % relative humidity."""
    rh = find_year("museum").rh_percent
    within_range("humidity of the museum", "common practice, no source", PRACTICE, 45, 55, rh, "% RH")


def test_the_dry_season_is_not_always_winter():
    assert find_year("heated cold-winter home").driest_month in (0, 1, 11)
    assert find_year("lightly heated maritime home").driest_month in (4, 5, 6)
    assert find_year("monsoon home").driest_month in (2, 3, 4)
