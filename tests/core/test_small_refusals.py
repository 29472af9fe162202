"""Small helpers of several rooms at the ends of what they allow, and one step beyond."""

from __future__ import annotations

import math

import numpy as np
import pytest

from movement_core.air.bounds import within
from movement_core.air.daily import DailyAir, days_from_months, months_from_days
from movement_core.air.months_table import is_months_table
from movement_core.errors import InputError
from movement_core.holding.model import Beam, Bearing, Elastic, Plate
from movement_core.moisture.meter import mean_of_core_and_skin, parabolic_profile
from movement_core.sheet.cutting import cut_line, even_places
from movement_core.sheet.pages.colours import contrast, luminance

WOOD = Elastic(13000.0, 1000.0, 900.0, 0.4)


def test_a_range_holds_its_ends_and_names_what_lies_outside():
    assert within([0.0, 40.0], "moisture", 0.0, 40.0, "%").tolist() == [0.0, 40.0]
    for bad in (-0.01, 40.01, math.nan):
        with pytest.raises(InputError, match=r"moisture\[1\]"):
            within([3.0, bad], "moisture", 0.0, 40.0, "%")
    with pytest.raises(InputError, match="'damp' is not a number"):
        within("damp", "moisture", 0.0, 40.0, "%")


@pytest.mark.parametrize(("core", "skin"), [(120.1, 8.0), (-0.1, 8.0), (8.0, 120.1), (8.0, -0.1)])
def test_core_and_skin_lie_between_dry_and_green(core, skin):
    """Mean of a parabola: two thirds of the core and one of the skin (derived)."""
    assert mean_of_core_and_skin(120.0, 0.0) == pytest.approx(80.0)
    assert mean_of_core_and_skin(0.0, 120.0) == pytest.approx(40.0)
    with pytest.raises(InputError):
        mean_of_core_and_skin(core, skin)


@pytest.mark.parametrize("height", [-0.01, 1.01])
def test_a_profile_ends_at_the_faces(height):
    assert parabolic_profile(12.0, 8.0, [0.0, 0.25, 0.5, 1.0]).tolist() == [8.0, 11.0, 12.0, 8.0]
    with pytest.raises(InputError, match="height"):
        parabolic_profile(12.0, 8.0, height)


def test_a_plain_year_comes_back_from_its_days():
    assert months_from_days(days_from_months(np.full(12, 7.5))) == pytest.approx(np.full(12, 7.5))
    for wrong, way in ((11, days_from_months), (366, months_from_days)):
        with pytest.raises(InputError, match=f"shape \\({wrong},\\)"):
            way(np.zeros(wrong))
    with pytest.raises(InputError, match="365 days"):
        DailyAir("short", np.full(364, 20.0), np.full(365, 50.0), "made up")


@pytest.mark.parametrize(
    ("text", "is_one"),
    [
        ("month,temperature_c,rh_percent\n", True),
        ('\ufeff"Temperature_F" ; RH_percent', True),
        ("temperature_c,humidity", False),
        ("rh_percent,month", False),
        ("", False),
    ],
)
def test_a_table_of_months_is_known_by_its_heading(text, is_one):
    assert is_months_table(text) is is_one


@pytest.mark.parametrize(
    "outline",
    [
        ((0.0, 0.0), (10.0, 0.0)),
        ((0.0, 0.0), (10.0, 0.0), (20.0, 0.0)),
        ((-501.0, 0.0), (10.0, 0.0), (0.0, 100.0)),
        ((0.0, 0.0), (10.0, 0.0), (0.0, 201.0)),
    ],
    ids=["two points", "no area", "too long", "too wide"],
)
def test_the_outline_of_a_plate_is_a_polygon_inside_it(outline):
    assert (
        Plate(1000.0, 400.0, 20.0, WOOD, 0.0, ((-500.0, -200.0), (500.0, -200.0), (0.0, 200.0))).area_mm2
        == 2e5
    )
    with pytest.raises(InputError, match="plate outline"):
        Plate(1000.0, 400.0, 20.0, WOOD, 0.0, outline)


def test_a_bar_has_two_ends_and_its_screws_between_them():
    assert Beam((0.0, 0.0), (0.0, 300.0), 1e6, (0.0, 300.0)).length_mm == 300.0
    with pytest.raises(InputError, match="one point"):
        Beam((5.0, 5.0), (5.0, 5.0), 1e6)
    for place in (-0.1, 300.1):
        with pytest.raises(InputError, match="0 to 300 mm"):
            Beam((0.0, 0.0), (0.0, 300.0), 1e6, (place,))
    with pytest.raises(InputError, match="bending_stiffness"):
        Beam((0.0, 0.0), (0.0, 300.0), 0.0)


@pytest.mark.parametrize("outline", [((0.0, 0.0),), ((0.0, 0.0), (math.nan, 1.0)), ((0.0, 1.0, 2.0),) * 2])
def test_a_bearing_has_two_points_or_more(outline):
    with pytest.raises(InputError, match="2 or more finite"):
        Bearing(outline)


def test_a_line_gains_a_point_at_each_plane_that_it_crosses():
    line = np.array([(-10.0, 0.0, 0.0), (10.0, 4.0, 0.0), (-10.0, 8.0, 0.0)])
    cut = cut_line(line, 0, [0.0, 20.0])
    assert cut.tolist() == [[-10, 0, 0], [0, 2, 0], [10, 4, 0], [0, 6, 0], [-10, 8, 0]]
    assert cut_line(line, 2, [0.0]).tolist() == line.tolist(), "what lies in the plane is not cut by it"
    assert even_places(40.0, 4) == [-10.0, 0.0, 10.0] and even_places(40.0, 1) == []


def test_contrast_of_colours():
    """WCAG 2.1 (recalled): black on white is 21 to 1, a colour on itself 1 to 1; #767676 on white just passes 4.5."""
    assert contrast("#000000", "#ffffff") == contrast("#ffffff", "#000000") == pytest.approx(21.0)
    assert contrast("#336699", "#336699") == 1.0
    assert contrast("#777777", "#ffffff") < 4.5 < contrast("#767676", "#ffffff")
    assert luminance("#0a0a0a") == pytest.approx(10 / 255 / 12.92)
