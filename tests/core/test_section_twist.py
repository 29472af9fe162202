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
