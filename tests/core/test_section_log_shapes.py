"""Boards from logs and slabs; round tops, tapers, bends, legs and end-grain blocks."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section.board import Board
from movement_core.section.log import board_from_log, live_sawn, resaw, rip
from movement_core.section.movement import section_movement
from movement_core.section.rings import Rings
from movement_core.section.shapes import bend, end_grain_block, leg, moved_outline, round_top, strain_toward


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


WOOD = Wood()
A, B = -0.0052, -0.0108


def test_live_sawn_log():
    slabs = live_sawn(WOOD, 400, (10, -5), [-150, -100, -50, 0, 50, 100, 150], kerf_mm=3)
    assert len(slabs) == 6
    assert [s.holds_pith for s in slabs] == [False, False, True, False, False, False]
    assert all(s.thickness_mm == pytest.approx(47) for s in slabs)
    # edged to the narrower face: its chord at the height furthest from the log's centre
    assert slabs[0].width_mm == pytest.approx(2 * np.sqrt(200**2 - 148.5**2))
    assert slabs[0].pith_mm == pytest.approx((10, -5 + 125))  # heart side up below the pith
    assert slabs[5].pith_mm == pytest.approx((10, -5 - 125))
    for bad in ([], [10.0], [0.0, 1.0, 50.0], [0.0, 250.0]):
        if bad == [10.0]:
            assert (
                live_sawn(WOOD, 400, (10, -5), bad) == ()
            )  # one line leaves two round-backed pieces, no slab
            continue
        with pytest.raises(InputError, match="saw lines"):
            live_sawn(WOOD, 400, (10, -5), bad)


def test_ripped_and_resawn_boards_keep_their_tree():
    board = Board(WOOD, 300, 40, (10, -60), "wide", far_pith_mm=(20, -50))
    strips = rip(board, [-50, 50], kerf_mm=4)
    assert [s.width_mm for s in strips] == pytest.approx([98, 96, 98])
    assert [s.pith_mm[0] for s in strips] == pytest.approx([10 + 101, 10, 10 - 101])
    assert [s.far_pith_mm[0] for s in strips] == pytest.approx([20 + 101, 20, 20 - 101])
    leaves = resaw(board, [0], kerf_mm=2)
    assert [s.thickness_mm for s in leaves] == pytest.approx([19, 19])
    assert [s.pith_mm[1] for s in leaves] == pytest.approx([-60 + 10.5, -60 - 10.5])
    # the strips move as that part of the board did
    whole = board.moved(np.array([(52.0, -20.0), (52.0, 20.0), (150.0, 20.0)]), -4)
    part = strips[2].moved(np.array([(-49.0, -20.0), (-49.0, 20.0), (49.0, 20.0)]), -4)
    np.testing.assert_allclose(
        np.linalg.norm(np.diff(whole, axis=0), axis=1),
        np.linalg.norm(np.diff(part, axis=0), axis=1),
        rtol=1e-12,
    )


def test_board_cut_anywhere_from_a_log():
    board = board_from_log(WOOD, (10, 20), (110, 20), 150, 25, turn_degrees=90)
    assert board.pith_mm == pytest.approx((0, 100))
    assert board_from_log(WOOD, (0, 0), (5, 0), 150, 25).holds_pith
    with pytest.raises(InputError, match="width"):
        board_from_log(WOOD, (0, 0), (100, 0), 0, 25)


def test_round_top_goes_oval():
    oval = round_top(1000, -0.01, -0.0002)
    assert (oval.along_mm, oval.across_mm) == pytest.approx((999.8, 990))
    assert oval.out_of_round_mm == pytest.approx(-9.8)
    turn = np.linspace(0, 2 * np.pi, 361)
    rim = 500 * np.stack((np.cos(turn), np.sin(turn)), axis=-1)
    moved = moved_outline(rim, (1, 1), -0.0002, -0.01)
    assert np.ptp(moved @ (1, 1)) / np.sqrt(2) == pytest.approx(999.8, rel=1e-6)
    assert np.ptp(moved @ (1, -1)) / np.sqrt(2) == pytest.approx(990, rel=1e-6)


def test_local_grain_decides_a_taper():
    assert strain_toward(90, 0.0, -0.01) == pytest.approx(-0.01)
    assert strain_toward(0, 0.0, -0.01) == pytest.approx(0.0)
    assert strain_toward(45, 0.0, -0.01) == pytest.approx(-0.005, rel=0.01)
    np.testing.assert_allclose(strain_toward([0, 90], -0.001, -0.01), [-0.001, -0.01])


def test_bends_close_as_they_dry():
    moved = bend(90, 300, 25, np.array([-0.01, 0.0, 0.01]))
    assert moved.angle_degrees[0] == pytest.approx(90 / 0.99)
    assert moved.angle_degrees[1] == 90
    assert moved.angle_degrees[2] < 90
    assert moved.end_shift_mm[1] == pytest.approx(0.0, abs=1e-9)
    # the grain keeps its length: angle × radius at mid-thickness
    middle = moved.inner_radius_mm + 0.5 * moved.thickness_mm
    np.testing.assert_allclose(moved.angle_degrees * middle, 90 * 312.5)
    with pytest.raises(InputError, match="0 to 360°"):
        bend(400, 300, 25, -0.01)


def test_rift_legs_diamond():
    corners = leg(60, 60, (200, 200), A, B)
    assert corners.out_of_square_mm > 0  # longer toward the pith, across the corner
    shear = np.radians(90 - corners.corner_degrees[[0, 2]].mean())
    assert shear == pytest.approx(A - B, rel=0.02)
    assert corners.out_of_square_mm == pytest.approx(60 * np.sqrt(2) * (A - B), rel=0.02)
    assert corners.corner_degrees.sum() == pytest.approx(360)
    square = leg(60, 60, (0, 400), A, B)
    assert abs(square.out_of_square_mm) < 1e-9
    with pytest.raises(InputError, match="surround the pith"):
        leg(60, 60, (5, 5), A, B)


def test_end_grain_blocks_move_both_ways():
    mixed = end_grain_block(400, 300, A, B)
    assert mixed.length_change_mm == pytest.approx(400 * (A + B) / 2)
    assert mixed.length_range_mm == pytest.approx((400 * B, 400 * A))
    known = end_grain_block(400, 300, A, B, ring_angle_degrees=0)
    assert (known.length_change_mm, known.width_change_mm) == pytest.approx((400 * B, 300 * A))
    # the same straight rings as a board's section
    section = section_movement(400, 300, Rings.angle(30), A, B)
    angled = end_grain_block(400, 300, A, B, ring_angle_degrees=30)
    assert angled.length_change_mm == pytest.approx(section.width_change_mm, rel=1e-3)
    assert angled.width_change_mm == pytest.approx(section.thickness_change_mm, rel=1e-3)
    assert "end grain" in mixed.note


def test_slabs_and_strips_are_numbered_and_lose_the_kerf():
    """A kerf of three millimetres is taken where none is said, half of it from either side of the line."""
    slabs = live_sawn(WOOD, 400, (0, 300), [50, 0, 100])
    assert [slab.name for slab in slabs] == ["slab 1", "slab 2"]
    assert [slab.thickness_mm for slab in slabs] == [47, 47]
    assert [slab.pith_mm[1] for slab in slabs] == [275, 225]
    board = Board(WOOD, 300, 40, (0, 300), "wide")
    strips, leaves = rip(board, [0]), resaw(Board(WOOD, 300, 40, (0, 300)), [0])
    assert [(strip.name, strip.width_mm) for strip in strips] == [("wide 1", 148.5), ("wide 2", 148.5)]
    assert [(leaf.name, leaf.thickness_mm) for leaf in leaves] == [("board 1", 18.5), ("board 2", 18.5)]
    assert [strip.far_pith_mm for strip in strips] == [None, None]


def test_saw_lines_lie_in_the_wood_and_further_apart_than_the_kerf():
    board = Board(WOOD, 300, 40, (0, 300))
    assert len(rip(board, [-148, 148, 144.5], 3)) == 4
    for wrong in ([-148.6], [148.6], [], [0, 3], [3, 0], [200]):
        with pytest.raises(InputError, match="within -150 to 150 mm, further apart than the kerf"):
            rip(board, wrong, 3)
    with pytest.raises(InputError, match="within -20 to 20 mm"):
        resaw(board, [20.1], 3)
    with pytest.raises(InputError, match="within -200 to 200 mm"):
        live_sawn(WOOD, 400, (0, 300), [-200.1, 0], 3)


def test_a_cut_beside_the_pith_says_where_it_went():
    board = Board(WOOD, 300, 40, (60, 5), boxed_heart=True, far_pith_mm=(-60, 5))
    assert [strip.boxed_heart for strip in rip(board, [0, 100])] == [True, True, False]
    assert [leaf.boxed_heart for leaf in resaw(board, [0])] == [False, True]


def test_a_board_lies_level_in_its_log_unless_it_is_turned():
    level = board_from_log(WOOD, (10, 20), (40, 100), 150, 25)
    assert level.pith_mm == (-30, -80)
    assert (level.name, level.boxed_heart) == ("", False)
    assert board_from_log(WOOD, (10, 20), (40, 100), 150, 25, 90.0, "b").pith_mm == pytest.approx((-80, 30))
    assert board_from_log(WOOD, (10, 20), (40, 100), 150, 25, -30.0).pith_mm == pytest.approx(
        (-30 * np.cos(np.pi / 6) + 80 * 0.5, -80 * np.cos(np.pi / 6) - 30 * 0.5)
    )
    with pytest.raises(InputError, match="board 'low': pith"):
        board_from_log(WOOD, (np.nan, 0), (0, 0), 150, 25, name="low")


@pytest.mark.parametrize(("across", "along"), [(-0.03, 0.0), (0.02, -0.001), (0.0, 0.01)])
def test_the_end_of_a_bend_goes_where_its_fibres_lead(across, along):
    """The middle fibre keeps its grain's length while its radius follows the thickness: its tangent summed up."""

    def end(radius, length):
        nodes, weights = np.polynomial.legendre.leggauss(40)
        turned = 0.5 * length * (nodes + 1.0) / radius
        return 0.5 * length * np.array([-(weights @ np.sin(turned)), weights @ np.cos(turned)])

    moved = bend(110, 300, 25, across, along)
    length = 312.5 * np.radians(110)
    shift = end(312.5 * (1 + across), length * (1 + along)) - end(312.5, length)
    assert moved.end_shift_mm == pytest.approx(np.hypot(*shift), rel=1e-9)
    assert moved.angle_degrees == pytest.approx(110 * (1 + along) / (1 + across))
    assert (moved.inner_radius_mm, moved.thickness_mm) == pytest.approx(
        (300 * (1 + across), 25 * (1 + across))
    )


def test_grain_keeps_its_length_where_nothing_is_said():
    assert round_top(1000, -0.01).along_mm == 1000
    assert bend(90, 300, 25, 0.0).angle_degrees == 90
    assert bend(90, 300, 25, -0.01).end_shift_mm == bend(90, 300, 25, -0.01, 0.0).end_shift_mm


def test_an_end_grain_block_of_mixed_rings_moves_between_both_strains():
    mixed = end_grain_block(400, 300, A, B)
    assert mixed.width_change_mm == pytest.approx(300 * (A + B) / 2)
    assert mixed.width_range_mm == pytest.approx((300 * B, 300 * A))
    swollen = end_grain_block(400, 300, -A, -B)
    assert swollen.width_range_mm == pytest.approx((-300 * A, -300 * B))
    known = end_grain_block(400, 300, A, B, 90.0)
    assert (known.length_change_mm, known.width_change_mm) == pytest.approx((400 * A, 300 * B))
    assert known.length_range_mm == (known.length_change_mm, known.length_change_mm)
    assert known.width_range_mm == (known.width_change_mm, known.width_change_mm)


def test_a_leg_lists_its_corners_and_diagonals():
    corners = leg(60, 40, (0, 500), A, A)  # equal strains only scale
    half = np.array([(-30, -20), (30, -20), (30, 20), (-30, 20)])
    np.testing.assert_allclose(corners.points_mm - (0, 500), (half - (0, 500)) * (1 + A), atol=1e-9)
    np.testing.assert_allclose(corners.corner_degrees, 90.0)
    np.testing.assert_allclose(corners.diagonals_mm, np.hypot(60, 40) * (1 + A))
    rift = leg(60, 40, (200, 200), A, B)
    assert rift.diagonals_mm == pytest.approx(
        [np.linalg.norm(rift.points_mm[i + 2] - rift.points_mm[i]) for i in (0, 1)]
    )
    sides = rift.points_mm[[1, 3]] - rift.points_mm[0]
    cosine = sides[0] @ sides[1] / np.prod(np.linalg.norm(sides, axis=1))
    assert rift.corner_degrees[0] == pytest.approx(np.degrees(np.arccos(cosine)))
