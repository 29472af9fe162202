"""Twist: never a false zero."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section import twist
from movement_core.section.board import Board
from movement_core.section.twist import board_twist


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


WOOD = Wood()


def test_no_slope_no_twist_known_even_where_the_rings_part_is():
    plain = board_twist(Board(WOOD, 100, 20, (0, 60), length_mm=1000), -4)
    assert plain.degrees is None
    assert plain.corner_lift_mm is None
    assert plain.from_rings_degrees is None
    assert twist.SLOPE_UNKNOWN in plain.flags
    rings = board_twist(Board(WOOD, 100, 20, (0, 60), length_mm=1000, far_pith_mm=(20, 60)), -4)
    assert rings.from_rings_degrees != 0
    assert rings.degrees is None


def test_stated_straight_grain_leaves_the_rings_part():
    board = Board(WOOD, 100, 20, (0, 60), length_mm=1000, far_pith_mm=(20, 60), grain_slope=0.0)
    found = board_twist(board, np.array([-4.0, 0.0, 4.0]))
    np.testing.assert_allclose(found.degrees[0], found.from_rings_degrees)
    assert found.degrees[0][1] == 0
    a, b = -4 * 0.0013, -4 * 0.0027
    # (b − a)/(1 + a) × change of the centre's angle
    assert found.degrees[0][0] == pytest.approx(
        np.degrees(np.arctan2(20, 60)) * (b - a) / (1 + a) * -1, rel=1e-9
    )
    assert found.corner_lift_mm[1][0] == pytest.approx(100 * np.tan(np.radians(abs(found.degrees[1][0]))))


def test_same_rings_at_both_ends_and_straight_grain_do_not_twist():
    board = Board(WOOD, 100, 20, (0, 60), length_mm=1000, far_pith_mm=(0, 60), grain_slope=0.0)
    assert board_twist(board, -4).degrees == (0, 0)


def test_spiral_grain_gives_a_range_and_follows_its_sign():
    right = board_twist(Board(WOOD, 100, 20, (0, 60), length_mm=1000, grain_slope=0.03), -4)
    left = board_twist(Board(WOOD, 100, 20, (0, 60), length_mm=1000, grain_slope=-0.03), -4)
    assert 0 < right.degrees[0] < right.degrees[1]  # drying tightens the screw
    assert left.degrees == pytest.approx((-right.degrees[1], -right.degrees[0]))
    assert twist.FAR_END_TAKEN_ALIKE in right.flags
    double = board_twist(Board(WOOD, 100, 20, (0, 60), length_mm=2000, grain_slope=0.03), -4)
    assert double.degrees == pytest.approx((2 * right.degrees[0], 2 * right.degrees[1]))


def test_turning_a_board_does_not_change_its_hand():
    board = Board(WOOD, 100, 20, (15, 60), length_mm=1000, far_pith_mm=(40, 55), grain_slope=0.02)
    straight = board_twist(board, -4)
    for over in (False, True):
        for ends in (False, True):
            turned = board_twist(board.turned(over=over, end_for_end=ends), -4)
            assert turned.degrees == pytest.approx(straight.degrees, rel=0.2)
            assert turned.from_rings_degrees == pytest.approx(straight.from_rings_degrees)


def test_without_length_or_with_the_pith_inside():
    assert twist.LENGTH_UNKNOWN in board_twist(Board(WOOD, 100, 20, (0, 60), grain_slope=0.03), -4).flags
    with pytest.raises(InputError, match="holds its pith"):
        board_twist(Board(WOOD, 100, 20, (0, 5), boxed_heart=True), -4)


def test_a_pith_that_crosses_behind_the_board_turns_it_by_the_short_way():
    """Seen from the pith the centre goes from 180° − α to −180° + α: by 2α, not by the rest of the circle."""
    board = Board(
        WOOD, 100, 20, (60, 1), length_mm=1000, far_pith_mm=(60, -1), grain_slope=0.0, name="crossed"
    )
    a, b = -4 * 0.0013, -4 * 0.0027
    turn = np.degrees(2 * np.arctan2(1, 60)) * (b - a) / (1 + a)
    assert board_twist(board, -4).from_rings_degrees == pytest.approx(-turn)
    back = Board(WOOD, 100, 20, (60, -1), length_mm=1000, far_pith_mm=(60, 1), grain_slope=0.0)
    assert board_twist(back, -4).from_rings_degrees == pytest.approx(turn)


def test_a_corner_may_stay_down_where_the_twist_may_go_either_way():
    """Rings one way and spiral grain the other: with the law unsure the sum may be anything between, nothing too."""
    a, b = -4 * 0.0013, -4 * 0.0027
    free = {"length_mm": 1000, "far_pith_mm": (20, 60)}
    rings = np.degrees(np.arctan2(20, 60)) * (a - b) / (1 + a)
    spiral = board_twist(Board(WOOD, 100, 20, (0, 60), length_mm=1000, grain_slope=-0.01), -4).degrees
    slope = -0.01 * rings / (-0.5 * (spiral[0] + spiral[1]))  # the mean of both laws undoes the rings' part
    found = board_twist(Board(WOOD, 100, 20, (0, 60), grain_slope=slope, **free), -4)
    assert found.degrees[0] < 0 < found.degrees[1]
    assert found.degrees[0] == pytest.approx(-found.degrees[1])
    assert found.corner_lift_mm == (0.0, pytest.approx(100 * np.tan(np.radians(found.degrees[1]))))
    one_way = board_twist(Board(WOOD, 100, 20, (0, 60), grain_slope=-slope, **free), -4)
    assert one_way.from_slope_degrees[0] + one_way.from_rings_degrees == pytest.approx(one_way.degrees[0])
    lifts = sorted(100 * abs(np.tan(np.radians(turn))) for turn in one_way.degrees)
    assert one_way.corner_lift_mm == pytest.approx(tuple(lifts))
    assert lifts[0] > 0
    assert one_way.flags == ()


def test_spiral_grain_of_a_slope_that_grows_outward_turns_a_pole_as_published():
    """Turn = 2·s·b ÷ r₀ per length (Stevens and Johnston 1960, recalled); a far pith makes both laws one half apart."""
    board = Board(WOOD, 40, 40, (0, 4000), length_mm=1000, grain_slope=0.02)
    least, most = board_twist(board, -4).degrees
    b = -4 * 0.0027
    assert most == pytest.approx(np.degrees(2 * 0.02 * -b * 1000 / 4000))
    assert least == pytest.approx(0.5 * most, rel=1e-3)  # the same slope everywhere: 1 ÷ r instead of 2 ÷ r₀


@pytest.mark.parametrize(
    ("width", "thickness", "beta"), [(40, 40, 0.1406), (80, 40, 0.229), (40, 160, 0.281)]
)
def test_the_stress_function_gives_the_torsion_constants_of_the_handbooks(width, thickness, beta):
    """J = β·a·b³ (Timoshenko and Goodier, Theory of Elasticity, table for rectangular bars): 2 ∫∫ φ for ∇²φ = −2."""
    nodes, weights = np.polynomial.legendre.leggauss(40)
    x, y = 0.5 * width * nodes[:, None], 0.5 * thickness * nodes[None, :]
    long, short = max(width, thickness), min(width, thickness)
    unscaled = twist.torsion_function(x, y, width, thickness)
    total = (weights[:, None] * weights[None, :] * unscaled).sum() * width * thickness / 4
    assert 2 * 8 * short**2 / np.pi**3 * total == pytest.approx(beta * long * short**3, rel=2e-3)
    on_the_rim = twist.torsion_function(
        np.array([width / 2, 0.0]), np.array([3.0, thickness / 2]), width, thickness
    )
    assert (
        np.abs(on_the_rim).max()
        < 1e-3 * twist.torsion_function(np.zeros(1), np.zeros(1), width, thickness)[0]
    )
