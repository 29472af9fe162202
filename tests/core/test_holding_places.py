"""Travel, rails and places on them, constants of boards and free heights, by hand."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.holding.elastic import ElasticRatios, board_elastic, elastic_ratios
from movement_core.holding.fasteners import (
    find_kind,
)
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import Elastic, Plate
from movement_core.holding.rails import Member, Rail, anchor_places, what_lies_under
from movement_core.holding.travel import WidthStrain, fixed_line_mm, seen_from_the_mover, slot, travel
from movement_core.sources import Source

UNEVEN = WidthStrain((-400.0, 0.0, 400.0), (-0.01, -0.02), (-0.002, 0.004), (0.01, 0.03), 0.0)
BUTTON = find_kind("button")


def test_ends_of_a_strain_a_fixed_line_and_a_slot():
    assert WidthStrain.even(100, 0.0, 0.0, 0.0, 0.999).spread == 0.999
    assert WidthStrain.even(100, 0.01, 0.01, 0.01).driest == (0.01,)
    assert travel(WidthStrain.even(100, -0.01, 0, 0.01), 50.0).most_mm == pytest.approx(0.5 * 1.15)  # ±15 %
    assert [fixed_line_mm(where, 600) for where in ("centre", "front", "back")] == [0, -300, 300]
    assert fixed_line_mm(300, 600) == 300
    for wrong in (300.1, -300.1, math.nan):
        with pytest.raises(InputError, match="within ±300 mm"):
            fixed_line_mm(wrong, 600)
    made = slot(-2.0, 0.5, 1.0, 5.0)
    assert (made.length_mm, made.width_mm, made.screw_today_mm) == (9.0, 5.5, 2.5 + 0.5 + 2.5)
    assert (made.low_margin_mm, made.high_margin_mm) == (0.5, 0.5)
    for today in (-2.0, 1.0):
        assert slot(-2.0, today, 1.0, 5.0)
    for today in (-2.1, 1.1):
        with pytest.raises(InputError, match="-2 to 1 mm"):
            slot(-2.0, today, 1.0, 5.0)
    assert seen_from_the_mover(-2.0, 0.5, 1.0) == (-1.0, -0.5, 2.0)
    assert UNEVEN.mean("wettest") == pytest.approx(0.02)
    unequal = WidthStrain((0.0, 100.0, 400.0), (0.0, 0.0), (0.0, 0.0), (0.01, 0.03))
    assert unequal.mean("wettest") == pytest.approx(0.025)  # by the widths


def test_fasteners_stand_in_the_middle_of_equal_stretches_or_out_to_the_ends():
    rail = Rail("apron", (-300, 0), (300, 0), 20)
    assert anchor_places(rail, BUTTON, 1, 40.0) == (300,)
    assert anchor_places(rail, BUTTON, 2, 40.0) == pytest.approx((170, 430))
    assert anchor_places(rail, BUTTON, 3, 40.0, "outer") == pytest.approx((40, 300, 560))
    assert anchor_places(rail, BUTTON, 1, 40.0, "outer") == (300,)
    assert anchor_places(rail, BUTTON, 0, 40.0) == ()
    assert anchor_places(Rail("short", (0, 0), (80, 0), 20), BUTTON, 1, 40.0) == (40,)
    assert anchor_places(Rail("shorter", (0, 0), (79.9, 0), 20), BUTTON, 1, 40.0) == ()


def test_fasteners_give_way_to_joints_and_to_each_other():
    """A joint in the middle: the place next to it that is clear, the nearer end first; two shanks apart at least."""
    jointed = Rail("apron", (-300, 0), (300, 0), 20, joints_mm=(300.0,))
    assert anchor_places(jointed, BUTTON, 1, 40.0) == (260,)
    aside = Rail("apron", (-300, 0), (300, 0), 20, joints_mm=(290.0,))
    assert anchor_places(aside, BUTTON, 1, 40.0) == (330,)
    blocked = Rail("apron", (0, 0), (100, 0), 20, joints_mm=(30.0, 70.0))
    assert anchor_places(blocked, BUTTON, 1, 40.0) == ()
    tight = Rail(
        "apron", (0, 0), (100, 0), 20
    )  # 20 mm for three: 6.7 mm apart are less than two shanks of 4.2
    assert anchor_places(tight, BUTTON, 3, 40.0) == pytest.approx((40 + 10 / 3, 40 + 50 / 3))
    assert len(anchor_places(tight, BUTTON, 3, 40.0, "outer")) == 3


PLATE = Plate(1200, 700, 22, Elastic(13000, 1000, 1000, 0.4), 700)


def member(long, broad, top=0.0, name="bar"):
    return Member(name, ((0, 0), (long, 0), (long, broad), (0, broad)), top)


def test_what_is_three_times_as_long_as_broad_is_a_rail():
    for long, rails in ((60.0, 1), (59.0, 0)):
        under = what_lies_under(PLATE, [member(long, 20.0)], 0.0)
        assert (len(under.rails), len(under.bearings)) == (rails, 1)
    (rail,) = what_lies_under(PLATE, [member(60.0, 20.0)], 0.0).rails
    assert (rail.start_mm, rail.end_mm, rail.breadth_mm) == ((0, 10), (60, 10), 20)


def test_what_lies_within_half_a_millimetre_carries():
    for top, carries in ((0.5, 1), (-0.5, 1), (0.51, 0), (-0.51, 0)):
        under = what_lies_under(PLATE, [member(60.0, 20.0, top)], 0.0)
        assert len(under.bearings) == carries
        if carries:
            assert under.rails[0].height_mm == under.bearings[0].height_mm == top
    assert len(what_lies_under(PLATE, [member(60.0, 20.0, 3.0)], 1.0, 2.0).bearings) == 1


def test_a_rail_bears_with_its_whole_top():
    rail = Rail("apron", (-300, -200), (300, -200), 20, 0.3)
    bearing = rail.bearing()
    assert sorted(bearing.outline_mm) == [(-300, -210), (-300, -190), (300, -210), (300, -190)]
    assert (bearing.height_mm, bearing.name) == (0.3, "apron")
    assert Rail("level", (0, 0), (9, 0), 2).bearing().height_mm == 0
    assert rail.at(150, 30) == (-150, -170)
    assert Rail("b", (0, 0), (3, 4), 5).length_mm == 5
    assert (Rail("b", (0, 0), (4, 4), 5).direction, Rail("b", (0, 0), (4, 5), 5).direction) == (
        "along",
        "across",
    )
    assert Rail("b", (0, 0), (0.5, 0), 0.5).breadth_mm == 0.5
    for wrong in ((0, 0), 5.0), ((1, 0), 0.0), ((1, 0), -0.5), ((math.inf, 0), 5.0):
        with pytest.raises(InputError, match="above 0"):
            Rail("b", (0, 0), *wrong)


RATIOS = ElasticRatios(
    "made up", 0.05, 0.1, 0.08, 0.06, 0.02, 0.4, 0.5, 0.6, 0.25, 0.05, 0.03, Source("made up")
)


@pytest.mark.parametrize("angle", [0.0, 30.0, 45.0, 60.0, 90.0])
def test_constants_in_the_face_by_turning_the_compliance(angle):
    """1/E = cos⁴/E_T + sin⁴/E_R + (1/G_RT − 2 ν_RT/E_R) sin² cos²; ν_RT/E_R is the mean of both published ones."""
    s, c = math.sin(math.radians(angle)), math.cos(math.radians(angle))
    back = (0.6 / 0.1 + 0.25 / 0.05) / 2
    across = 1 / (c**4 / 0.05 + s**4 / 0.1 + (1 / 0.02 - 2 * back) * (s * c) ** 2)
    found = board_elastic(RATIOS, 10000, angle)
    assert found.e_along_mpa == pytest.approx(11000)
    assert found.e_across_mpa == pytest.approx(11000 * across)
    assert found.shear_mpa == pytest.approx(11000 / (c**2 / 0.06 + s**2 / 0.08))
    poisson_t, poisson_r = (0.5 + 0.03 / 0.05) / 2, (0.4 + 0.05 / 0.1) / 2
    assert found.poisson == pytest.approx(c**2 * poisson_t + s**2 * poisson_r)
    assert f"rings at {angle:g}° to the face, MOE 10000 MPa" in found.basis


def test_either_poisson_ratio_of_the_cross_section_serves():
    back_only = replace(RATIOS, mu_rt=None)  # ν_RT = ν_TR·E_R/E_T
    assert board_elastic(back_only, 10000, 45) == board_elastic(
        replace(RATIOS, mu_rt=0.5, mu_tr=None), 10000, 45
    )
    assert board_elastic(RATIOS, 10000).basis.startswith("made up, rings at 0°")
    with pytest.raises(InputError, match="mu_rt"):
        board_elastic(replace(RATIOS, mu_rt=None, mu_tr=None), 10000, 45)
    assert elastic_ratios("OAK, RED").species == "Oak, red"


def test_heights_beyond_the_edges_run_on_with_the_slope_of_the_edge():
    """κx²/2 from a crown of 400 mm: the slope at its edges is κ·200; and boards of different curvature by hand."""
    free = FreeCurvature.even(400, 1e-4)
    assert free.height([-300, 300]) == pytest.approx([-1e-4 * 200 * 100] * 2)
    assert free.height([-200, 0, 200]) == pytest.approx([0, 2.0, 0])
    uneven = FreeCurvature((0, 100, 300), (2e-4, 0.0), (0.01,))
    # level at the left: down 1 mm at 100 with a slope of −0.02 − 0.01; straight on to −1 − 6 mm; chord −7 mm
    assert uneven.height([0, 100, 300]) == pytest.approx([0, -1 + 7 / 3, 0])
    assert uneven.height([-30, 330]) == pytest.approx([-30 * 7 / 300, -30 * (0.03 - 7 / 300)])
    assert np.shape(free.height(np.zeros((2, 3)))) == (2, 3)


def test_a_profile_is_divided_into_as_many_stretches_a_board_as_asked():
    places = np.linspace(-100, 100, 81)
    profile = np.column_stack([places, 1e-4 * (100**2 - places**2) / 2])
    default = FreeCurvature.from_profile(profile, (-100.0, 0.0, 100.0))
    assert default.lines_mm == tuple(np.linspace(-100, 100, 9))  # four a board
    assert default.crown_per_mm == pytest.approx([1e-4] * 8)
    assert default.kinks_rad == pytest.approx([0.0] * 7, abs=1e-12)
    assert len(FreeCurvature.from_profile(profile, (-100.0, 0.0, 100.0), 1).crown_per_mm) == 2
    assert len(FreeCurvature.from_profile(profile[::10], (-100.0, 0.0, 100.0), 2).crown_per_mm) == 4
    with pytest.raises(InputError, match="3 or more in each of 2"):
        FreeCurvature.from_profile(profile[::20], (-100.0, 0.0, 100.0), 2)
