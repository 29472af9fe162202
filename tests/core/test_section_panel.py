"""Edge-glued panels: sampling, kinks, steps, glue lines, and what is refused."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section.board import Board
from movement_core.section.elastic import TYPICAL, CrossStiffness
from movement_core.section.panel import Panel
from movement_core.section.settled import Settling


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


class OtherWood:
    radial_coefficient, tangential_coefficient = 0.0019, 0.0038


WOOD = Wood()


def same_way(count=5, heart=60.0):
    return [Board(WOOD, 100, 20, (0, heart), f"b{i}") for i in range(count)]


def test_profile_has_the_points_asked_for_with_every_glue_line_among_them():
    panel = Panel([Board(WOOD, w, 20, (0, 60)) for w in (30, 110, 75)])
    for samples in (4, 5, 17, 100):
        shape = panel.shape(0.0, samples)
        assert shape.profile.shape == (samples, 2)
        for line, at in zip(shape.glue_lines, (30, 140)):
            assert shape.profile[line, 0] == pytest.approx(at - 215 / 2)
    assert panel.profile([-4, 0, 3], samples=16).shape == (3, 16, 2)
    with pytest.raises(InputError, match="4 to"):
        panel.profile(-4, samples=3)


def test_points_are_shared_out_by_width():
    """No step given to another board would bring both nearer to their shares of the width."""
    for widths in ((30, 110, 75), (100, 100, 100), (10, 500, 90), (61, 64, 58, 67), (15, 109, 106)):
        panel = Panel([Board(WOOD, w, 20, (0, 60)) for w in widths])
        for samples in (len(widths) + 1, 12, 24, 101):
            at = (0, *panel.shape(0.0, samples, settle=False).glue_lines, samples - 1)
            steps = np.diff(at)
            wish = np.array(widths) / sum(widths) * (samples - 1)
            assert steps.min() >= 1
            for i, j in permutations(range(len(widths)), 2):
                given = steps + np.eye(len(widths), dtype=int)[j] - np.eye(len(widths), dtype=int)[i]
                assert given[i] < 1 or ((given - wish) ** 2).sum() >= ((steps - wish) ** 2).sum() - 1e-9
    assert Panel(same_way(2)).profile(-4).shape == (81, 2)  # forty steps a board where nothing is said


def test_a_panel_of_one_board_has_no_glue_line():
    for change in (-4.0, np.array([-4.0, 0.0]), np.zeros((2, 3)) - 2.0):
        shape = Panel(same_way(1)).shape(change, 9)
        for none in (shape.kink_rad, shape.step_show_mm, shape.step_back_mm):
            assert none.shape == (*np.shape(change), 0)
        assert shape.glue_tension_mpa.shape == shape.glue_shear_mpa.shape == (*np.shape(change), 0)
        assert shape.glue_lines == ()
        assert np.abs(shape.settled_mm).max() < 1e-9
        np.testing.assert_allclose(shape.profile, same_way(1)[0].profile(change, 9), atol=1e-9)


def test_a_panel_is_scalloped():
    shape = Panel(same_way()).shape(-4)
    assert (shape.surface_curvature_per_mm > 0).all()
    assert (shape.kink_rad < 0).all()  # each glue line turns back a little
    # the arc of the whole is far flatter than the arc of each board
    assert 0 < shape.average_curvature_per_mm < 0.3 * shape.surface_curvature_per_mm.min()
    # edge turns and the scallops together make the height at the middle
    arc = shape.average_curvature_per_mm * 400**2 / 8  # over the middles of the outer boards
    assert shape.out_of_flat_mm == pytest.approx(
        arc + shape.surface_curvature_per_mm[0] * 100**2 / 8, rel=0.4
    )


def test_alternating_turns_one_arc_into_waves():
    """Common practice, no source: for like boards with centred piths alternating never raises the departure."""
    for heart in (30.0, 60.0, 150.0, 600.0):
        for count in (2, 3, 5, 8):
            one_way = Panel(same_way(count, heart)).shape(-4)
            boards = [b.turned(over=bool(i % 2)) for i, b in enumerate(same_way(count, heart))]
            waves = Panel(boards).shape(-4)
            assert abs(waves.departure_mm) <= abs(one_way.departure_mm) + 1e-9
            heights = waves.profile[:, 1]
            if count > 2:
                assert min(heights.max(), -heights.min()) > 0.2 * np.abs(heights).max()


def test_alternating_off_centre_piths_can_be_worse():
    boards = [Board(WOOD, 150, 20, (x, 66)) for x in (-105, -105, 105, 105)]
    one_way = Panel(boards).shape(-4).departure_mm
    alternating = Panel([b.turned(over=bool(i % 2)) for i, b in enumerate(boards)]).shape(-4).departure_mm
    assert abs(alternating) > 4 * abs(one_way)


def test_narrow_boards_cup_less():
    """Common practice, no source."""
    sags = [
        Panel([Board(WOOD, 480 / n, 20, (0, 60)) for _ in range(n)]).shape(-4).out_of_flat_mm
        for n in (1, 2, 4, 8)
    ]
    assert (np.diff(sags) < 0).all()


def test_own_woods_and_moistures_are_kept_apart():
    boards = [Board(WOOD, 90, 20, (0, 60)), Board(OtherWood(), 90, 20, (0, 60), mc_offset=1.5)]
    shape = Panel(boards).shape(np.array([-4.0, 0.0]))
    assert shape.surface_curvature_per_mm[1, 0] == pytest.approx(0.0, abs=1e-12)
    assert shape.surface_curvature_per_mm[1, 1] < 0.0  # damper than it was glued: it alone swells
    each = Panel([boards[0], Board(OtherWood(), 90, 20, (0, 60))]).shape(
        np.array([[-4.0, -2.5], [0.0, 1.5]]), each_board=True
    )
    np.testing.assert_allclose(shape.profile, each.profile, atol=1e-7)
    with pytest.raises(InputError, match=r"\(…, 2\)"):
        Panel(boards).shape(np.zeros(3), each_board=True)


def test_glue_lines_carry_stress_only_where_boards_disagree():
    alike = [Board(WOOD, 100, 20, (50, 60)), Board(WOOD, 100, 20, (-50, 60))]  # one board, ripped
    calm = Panel(alike).shape(-4)
    assert calm.glue_tension_mpa == pytest.approx(0.0, abs=1e-4)
    at_odds_boards = [Board(WOOD, 100, 20, (0, 500)), Board(WOOD, 100, 20, (500, 0))]
    at_odds = Panel(at_odds_boards).shape(-4)
    assert at_odds.glue_shear_mpa[0] > 0.05
    assert at_odds.settled_mm < 0.1 * at_odds.out_of_flat_mm + 0.01
    half = Panel(at_odds_boards).shape(-2)
    assert half.glue_shear_mpa[0] == pytest.approx(0.5 * at_odds.glue_shear_mpa[0])
    soft = CrossStiffness(113.0, 62.0, 18.0, 0.56)
    softer = Panel([replace(b, stiffness=soft) for b in at_odds_boards]).shape(-4)
    np.testing.assert_allclose(softer.profile, at_odds.profile, atol=1e-9)  # shape hangs on ratios only
    assert softer.glue_shear_mpa[0] == pytest.approx(0.1 * at_odds.glue_shear_mpa[0])


def test_panels_that_cannot_be_settled_say_why_and_keep_their_chain():
    thick = Panel([Board(WOOD, 100, 20, (0, 60)), Board(WOOD, 100, 22, (0, 60))]).shape(-4)
    assert thick.glue_shear_mpa is None
    assert "thicknesses from 20 to 22 mm" in thick.note
    # two millimetres thicker and joined at mid-thickness: a millimetre prouder at either face
    assert (thick.step_show_mm[0], thick.step_back_mm[0]) == pytest.approx((1.0, 1.0), rel=0.05)
    thin = Panel([Board(WOOD, 100, 22, (0, 60)), Board(WOOD, 100, 20, (0, 60))]).shape(-4)
    assert (thin.step_show_mm[0], thin.step_back_mm[0]) == pytest.approx((-1.0, -1.0), rel=0.05)
    boxed = Panel([Board(WOOD, 100, 20, (0, 60)), Board(WOOD, 100, 20, (0, 0), boxed_heart=True)]).shape(-4)
    assert "holds its pith" in boxed.note
    assert np.isfinite(boxed.profile).all()
    plain = Panel(same_way(2)).shape(-4, settle=False)
    assert plain.settled_mm is None


def test_a_board_without_a_name_is_called_by_its_place():
    boxed = Board(WOOD, 100, 20, (0, 0), boxed_heart=True)
    assert Panel([*same_way(1), boxed]).shape(-4).note == "not settled: board 2 holds its pith"
    with pytest.raises(InputError, match="board 1: 40 mm thick beside board 2 of 20 mm"):
        Panel([Board(WOOD, 100, 40, (0, 60)), Board(WOOD, 100, 20, (0, 60))])


def test_wood_that_never_moves_stays_where_it_is():
    class Still:
        radial_coefficient = tangential_coefficient = 0.0

    shape = Panel([Board(Still(), 100, 20, (0, 60)), Board(Still(), 60, 20, (0, -60))]).shape(-4)
    assert np.abs(shape.profile[:, 1]).max() < 1e-12 and shape.width_change_mm == pytest.approx(0)
    assert np.abs(shape.glue_shear_mpa).max() < 1e-12


def test_settling_is_fine_enough():
    """Twice the elements each way move the profile by less than half a percent of its range, as promised."""
    boards = [
        Board(WOOD, 100, 20, (0, 500)),
        Board(OtherWood(), 60, 20, (500, 0)),
        Board(WOOD, 80, 20, (0, -40)),
    ]
    change, steps = np.full(3, -4.0), (40, 40, 40)
    once, twice = (Settling(boards, [TYPICAL] * 3, fineness).shift(change, steps) for fineness in (1, 2))
    whole = Panel(boards).shape(-4.0, 121).out_of_flat_mm
    assert np.abs(once - twice)[:, 1].max() < 0.005 * whole


def test_what_is_refused():
    with pytest.raises(InputError, match="without boards"):
        Panel([])
    with pytest.raises(InputError, match=r"b2: 40 mm thick beside b1 of 20 mm.*1\.25"):
        Panel([Board(WOOD, 100, 20, (0, 60), "b1"), Board(WOOD, 100, 40, (0, 60), "b2")])
    with pytest.raises(InputError, match="board 2 is a float"):
        Panel([Board(WOOD, 100, 20, (0, 60)), 3.0])
    with pytest.raises(InputError, match="stiffnesses for 2 boards"):
        Panel(same_way(2)).shape(-4, stiffness=[CrossStiffness()] * 3)
    with pytest.raises(InputError, match="E_R ÷ E_T"):
        CrossStiffness(600.0, 600.0, 100.0, 1.2)


def test_panels_compare_by_their_boards():
    one, two = Panel(same_way(2)), Panel(same_way(2))
    one.profile(-4)
    assert one == two
    assert one != Panel(same_way(3))
