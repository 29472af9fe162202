"""Width, thickness, cup and diamonding for every way the rings are known, and what stays unknown."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section import movement
from movement_core.section.movement import _peak, free_section, section_movement
from movement_core.section.rings import Rings

A, B = -4 * 0.0013, -4 * 0.0027


def flat_strain(degrees):
    """Strain of straight rings at an angle: C_T cos² + C_R sin² (transformation of strain, Wood Handbook ch. 5)."""
    turn = np.radians(degrees)
    return B * np.cos(turn) ** 2 + A * np.sin(turn) ** 2


@pytest.mark.parametrize("degrees", [0.0, 17.0, 45.0, 72.0, 90.0])
def test_ring_angle_alone_gives_width_but_no_cup(degrees):
    moved = section_movement(200, 20, Rings.angle(degrees), A, B)
    assert moved.width_change_mm == pytest.approx(200 * flat_strain(degrees), rel=2e-3)
    assert moved.thickness_change_mm == pytest.approx(20 * flat_strain(90 - degrees), rel=2e-3)
    assert moved.cup_mm is None
    assert moved.cup_range_mm is None
    assert movement.RADIUS_UNKNOWN in moved.flags


def test_quarter_sawn_thickness_moves_tangentially():
    moved = section_movement(90, 22, Rings.cut("quarter"), A, B)
    assert moved.thickness_change_mm == pytest.approx(22 * B, rel=1e-4)
    assert moved.width_change_mm == pytest.approx(90 * A, rel=1e-4)
    low, high = moved.width_range_mm
    assert low == pytest.approx(90 * flat_strain(60), rel=1e-3)
    assert high == pytest.approx(90 * A, rel=1e-4)
    assert movement.CLASS_ONLY in moved.flags


def test_radius_range_gives_a_cup_range_that_holds_every_cup_between():
    moved = section_movement(150, 20, Rings.angle(10, heart="show", radius_range_mm=(60, 250)), A, B)
    assert moved.cup_mm is None
    low, high = moved.cup_range_mm
    assert 0 < low < high
    assert movement.RADIUS_A_RANGE in moved.flags
    for radius in (60, 100, 170, 250):
        one = section_movement(150, 20, Rings.angle(10, heart="show", radius_mm=radius), A, B)
        assert low - 1e-9 <= one.cup_mm <= high + 1e-9
        assert moved.width_range_mm[0] <= one.width_change_mm <= moved.width_range_mm[1]


def test_unknown_heart_side_makes_the_sign_unknown():
    moved = section_movement(150, 20, Rings.cut("flat", radius_range_mm=(60, 250)), A, B)
    low, high = moved.cup_range_mm
    assert low == pytest.approx(-high)
    assert movement.HEART_UNKNOWN in moved.flags


def test_radii_that_would_box_the_heart_are_left_out_and_said():
    moved = section_movement(90, 90, Rings.angle(0, heart="back", radius_range_mm=(20, 200)), A, B)
    assert movement.MAYBE_BOXED in moved.flags
    assert np.isfinite(moved.cup_range_mm).all()


def test_rift_square_diamonds_by_the_shear_of_its_rings():
    # shear (C_T − C_R)·sin 2θ·ΔM, at its most for rings at 45°
    moved = section_movement(60, 60, Rings.angle(45, heart="show", pith_side="right"), A, B)
    assert abs(moved.diamond_degrees) == pytest.approx(np.degrees(abs(B - A)), rel=0.01)
    other = section_movement(60, 60, Rings.angle(45, heart="show", pith_side="left"), A, B)
    assert other.diamond_degrees == pytest.approx(-moved.diamond_degrees)
    unsure = section_movement(60, 60, Rings.angle(45), A, B)
    assert unsure.diamond_degrees is None
    assert movement.SIDE_UNKNOWN in unsure.flags


def test_known_pith_leaves_nothing_open():
    moved = section_movement(200, 20, Rings.at(0, 60), A, B)
    assert moved.flags == ()
    assert moved.width_range_mm == (moved.width_change_mm, moved.width_change_mm)
    assert moved.width_change_back_mm < moved.width_change_mm < moved.width_change_show_mm  # bark face most
    assert moved.cup_mm > 0
    assert moved.ring_angle_range_degrees[0] == pytest.approx(0)
    assert moved.ring_angle_range_degrees[1] == pytest.approx(np.degrees(np.arctan2(100, 60)))


def test_picked_points_spread_the_cup():
    moved = section_movement(120, 20, Rings.through([(-40, 0), (40, 0), (0, 8)]), A, B)
    assert moved.cup_range_mm[0] < moved.cup_mm < moved.cup_range_mm[1]


def test_boxed_heart_is_solved_and_flagged():
    moved = section_movement(70, 70, Rings.at(5, -8), A, B)
    assert moved.pith_inside
    assert any("holds its pith" in flag for flag in moved.flags)
    # between the two strains, as it must be: rings run every way round the heart
    for change in (moved.width_change_mm, moved.thickness_change_mm):
        assert 70 * B < change < 70 * A
    equal = section_movement(70, 70, Rings.at(5, -8), -0.01, -0.01)
    assert equal.width_change_mm == pytest.approx(-0.7)
    assert equal.cup_mm == pytest.approx(0.0, abs=1e-9)


def test_strains_in_an_array_are_the_single_ones():
    rings = Rings.angle(20, heart="show", radius_range_mm=(60, 200))
    many = section_movement(120, 25, rings, np.array([A, 0.0, -A]), np.array([B, 0.0, -B]))
    assert many.width_change_mm.shape == (3,)
    for i, sign in enumerate((1.0, 0.0, -1.0)):
        one = section_movement(120, 25, rings, sign * A, sign * B)
        assert many.width_change_mm[i] == pytest.approx(one.width_change_mm, abs=1e-9)
        assert many.cup_range_mm[0][i] == pytest.approx(one.cup_range_mm[0], abs=1e-9)
    boxed = section_movement(70, 70, Rings.at(5, -8), np.array([A, 0.0]), np.array([B, 0.0]))
    assert boxed.cup_mm.shape == (2,)
    assert boxed.width_change_mm[1] == pytest.approx(0.0, abs=1e-12)


def test_bad_numbers_say_what_and_what_is_allowed():
    for bad, says in (((0.0, 20), "width 0 mm"), ((90, float("nan")), "nan")):
        with pytest.raises(InputError, match=says):
            section_movement(*bad, Rings.at(0, 60), A, B)
    with pytest.raises(InputError, match="leaves no wood"):
        section_movement(90, 20, Rings.at(0, 60), -1.0, B)
    with pytest.raises(InputError, match="width"):
        free_section(np.array([90.0, -1.0]), 20.0, np.array((0.0, 60.0)), A, B)


@pytest.mark.parametrize("top", [0.31, 0.5, 0.74])
def test_the_peak_of_a_parabola_is_found_between_its_samples(top):
    places = np.linspace(0.0, 1.0, 9)
    for peak in (-2.0, 3.0):
        assert _peak(peak * (1.0 - (places - top) ** 2)) == pytest.approx(peak, rel=1e-12)
    assert _peak(np.full((2, 9), 0.25)) == pytest.approx(0.25)  # flat: nothing to add
