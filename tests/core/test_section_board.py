"""Boards: shapes, signs, laying the other way up, and what is refused."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section.board import Board
from movement_core.section.field import free_shape
from movement_core.section.rings import Rings


@dataclass(frozen=True)
class Wood:
    radial_coefficient: float = 0.0013
    tangential_coefficient: float = 0.0027


WOOD = Wood()


def test_profile_is_measured_from_its_chord():
    profile = Board(WOOD, 200, 20, (-40, 90)).profile(-4, samples=33)
    assert profile.shape == (33, 2)
    assert profile[[0, -1], 1] == pytest.approx(0.0, abs=1e-12)
    assert profile[0, 0] == pytest.approx(-profile[-1, 0])


def test_heart_side_up_crowns_as_it_dries_and_hollows_as_it_swells():
    board = Board(WOOD, 200, 20, (0, 90))
    assert board.profile(-4)[20, 1] > 0.1
    assert board.profile(4)[20, 1] < -0.1
    assert board.turned(over=True).profile(-4)[20, 1] < -0.1


def test_faces_of_one_board_keep_their_order():
    board = Board(WOOD, 200, 20, (0, 60))
    chords = [np.ptp(board.profile(-4, surface=s)[:, 0]) for s in ("back", "middle", "show")]
    assert chords[0] < chords[1] < chords[2]  # the bark face narrows most


def test_changes_in_an_array_are_the_single_ones():
    board = Board(WOOD, 120, 25, (30, -70))
    changes = np.array([[-4.0, 0.0, 2.5], [1.0, -1.0, 3.0]])
    many = board.profile(changes, samples=9)
    assert many.shape == (2, 3, 9, 2)
    for at in np.ndindex(2, 3):
        np.testing.assert_allclose(many[at], board.profile(changes[at], samples=9), atol=1e-12)


def test_own_moisture_offset_adds_to_the_change():
    damp = Board(WOOD, 120, 25, (0, 70), mc_offset=-2)
    dry = Board(WOOD, 120, 25, (0, 70))
    np.testing.assert_allclose(damp.profile(-3), dry.profile(-5))


def test_turning_over_and_end_for_end():
    board = Board(WOOD, 120, 25, (30, 70), far_pith_mm=(40, 60))
    over = board.turned(over=True)
    assert (over.pith_mm, over.far_pith_mm) == ((-30, -70), (-40, -60))
    ended = board.turned(end_for_end=True)
    assert (ended.pith_mm, ended.far_pith_mm) == ((-40, 60), (-30, 70))
    assert board.turned(over=True, end_for_end=True).pith_mm == (40, -60)
    assert over.turned(over=True) == board


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"width_mm": 0.0}, ("width 0 mm", "0.1 to 5000 mm")),
        ({"thickness_mm": -3.0}, ("thickness -3 mm", "0.1 to 1000 mm")),
        ({"width_mm": float("nan")}, ("nan", "finite")),
        ({"pith_mm": (float("inf"), 0.0)}, ("inf", "finite")),
        ({"pith_mm": (10.0, 5.0)}, ("(10, 5)", "|y| ≥ 10 mm")),
        ({"far_pith_mm": (0.0, 0.0)}, ("(0, 0)", "|x| ≥ 50 mm")),
        ({"species": object()}, ("radial_coefficient", "0 to 0.02")),
        ({"length_mm": 0.0}, ("length 0 mm", "1 to 20000 mm")),
    ],
)
def test_bad_input_names_the_board_the_value_and_the_range(change, says):
    good = {"species": WOOD, "width_mm": 100.0, "thickness_mm": 20.0, "pith_mm": (0.0, 60.0), "name": "A1"}
    with pytest.raises(InputError) as caught:
        Board(**{**good, **change})
    for text in ("board 'A1'", *says):
        assert text in str(caught.value)


def test_too_great_a_change_and_too_few_samples_are_refused():
    board = Board(WOOD, 100, 20, (0, 60))
    for bad in (-101.0, float("nan")):
        with pytest.raises(InputError, match="moisture change"):
            board.profile(bad)
    with pytest.raises(InputError, match="1 samples"):
        board.profile(-4, samples=1)
    with pytest.raises(InputError, match="surface 'top'"):
        board.profile(-4, surface="top")


def test_boards_from_rings():
    board = Board.from_rings(WOOD, 100, 20, Rings.angle(0, heart="back", radius_mm=80).with_slope(0.02))
    assert board.pith_mm == pytest.approx((0, -80))
    assert board.grain_slope == 0.02
    with pytest.raises(InputError, match="radius is unknown"):
        Board.from_rings(WOOD, 100, 20, Rings.angle(20, heart="back"), "B2")


def test_points_around_the_pith_are_refused_by_the_exact_map():
    square = np.array([(-10.0, -10.0), (10.0, -10.0), (10.0, 10.0), (-10.0, 10.0)])
    with pytest.raises(InputError, match="surround the pith"):
        free_shape(square, (3.0, 2.0), -0.01, -0.02)
    assert np.isfinite(free_shape(square, (10.0, 0.0), -0.01, -0.02)).all()  # on the edge it still holds
    with pytest.raises(
        InputError, match=r"surround the pith \(3, 2\) mm"
    ):  # of several the first that cannot be
        free_shape(square, [(0.0, 60.0), (3.0, 2.0), (0.0, -50.0), (1.0, 1.0)], -0.01, -0.02)
    with pytest.raises(InputError, match="centre of the section"):
        free_shape(square, (0.0, 0.0), -0.01, -0.02)
