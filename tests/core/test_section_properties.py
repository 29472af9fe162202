"""What must hold for every board, whatever its numbers."""

from __future__ import annotations

import numpy as np
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from movement_core.section.board import Board
from movement_core.section.field import free_shape, from_chord
from movement_core.section.movement import free_section, section_movement
from movement_core.section.panel import Panel
from movement_core.section.rings import Rings

fixed = settings(deadline=None, derandomize=True)


class Wood:
    def __init__(self, radial=0.0013, tangential=0.0027):
        self.radial_coefficient, self.tangential_coefficient = radial, tangential


widths = st.floats(20.0, 400.0)
thicknesses = st.floats(8.0, 80.0)
strain = st.floats(-0.1, 0.1)
change = st.floats(-12.0, 12.0)


@st.composite
def sections(draw):
    """Width, thickness and a pith outside, at a distance or touching the edge."""
    width, thickness = draw(widths), draw(thicknesses)
    side = draw(st.sampled_from("xy"))
    sign = draw(st.sampled_from((-1.0, 1.0)))
    away = draw(st.floats(0.5, 600.0))
    along = draw(st.floats(-300.0, 300.0))
    pith = (sign * (width / 2 + away), along) if side == "x" else (along, sign * (thickness / 2 + away))
    return width, thickness, pith


def outline(width, thickness):
    x, y = np.meshgrid(np.linspace(-0.5, 0.5, 7) * width, np.linspace(-0.5, 0.5, 5) * thickness)
    return np.stack((x.ravel(), y.ravel()), axis=-1)


@fixed
@given(sections())
def test_no_change_no_movement(section):
    width, thickness, pith = section
    points = outline(width, thickness)
    np.testing.assert_allclose(free_shape(points, pith, 0.0, 0.0), points, atol=1e-9)


@fixed
@given(sections(), strain)
def test_equal_strains_only_scale(section, value):
    width, thickness, pith = section
    points = outline(width, thickness)
    scaled = np.array(pith) + (1 + value) * (points - pith)
    np.testing.assert_allclose(free_shape(points, pith, value, value), scaled, atol=1e-9)


@fixed
@given(sections(), strain, strain)
def test_mirrored_section_mirrored_answer(section, a, b):
    width, thickness, pith = section
    points = outline(width, thickness)
    for mirror in ((-1.0, 1.0), (1.0, -1.0)):
        there = free_shape(points * mirror, np.array(pith) * mirror, a, b)
        np.testing.assert_allclose(there, free_shape(points, pith, a, b) * mirror, atol=1e-9)


@fixed
@given(sections(), strain, strain, st.floats(0.0, 6.3))
def test_turned_section_turned_answer(section, a, b, angle):
    width, thickness, pith = section
    points = outline(width, thickness)
    for turn in (np.pi / 2, angle):
        matrix = np.array([[np.cos(turn), np.sin(turn)], [-np.sin(turn), np.cos(turn)]])
        there = free_shape(points @ matrix, np.array(pith) @ matrix, a, b)
        np.testing.assert_allclose(there, free_shape(points, pith, a, b) @ matrix, atol=1e-8)


@fixed
@given(sections(), strain, strain)
def test_there_and_back(section, a, b):
    width, thickness, pith = section
    points = outline(width, thickness)
    seen = np.arctan2(*((points - pith) @ np.stack((np.array(pith)[::-1] * (1, -1), -np.array(pith)), -1)).T)
    assume(np.ptp(seen) * max(1.0, (1 + b) / (1 + a)) < 3.1)  # else the moved section surrounds its pith
    back = free_shape(free_shape(points, pith, a, b), pith, -a / (1 + a), -b / (1 + b))
    np.testing.assert_allclose(back, points, atol=1e-8)


@fixed
@given(widths, thicknesses, strain, strain, st.floats(0.0, 90.0))
def test_far_pith_is_the_flat_limit(width, thickness, a, b, degrees):
    turn = np.radians(degrees)
    pith = 1e7 * np.array([np.sin(turn), np.cos(turn)])
    points = outline(width, thickness)
    moved = free_shape(points, pith, a, b)
    tangent, radial = np.array([np.cos(turn), -np.sin(turn)]), np.array([np.sin(turn), np.cos(turn)])
    flat = np.outer(points @ tangent * (1 + b), tangent) + np.outer(points @ radial * (1 + a), radial)
    np.testing.assert_allclose(moved - moved.mean(axis=0), flat - flat.mean(axis=0), atol=0.02)


@settings(fixed, max_examples=30)
@given(st.lists(st.tuples(sections(), strain, strain), min_size=1, max_size=6))
def test_one_call_for_many_boards_is_each_by_itself(rows):
    widths_, thick, piths = (np.array([row[0][k] for row in rows]) for k in range(3))
    a, b = np.array([row[1] for row in rows]), np.array([row[2] for row in rows])
    many = free_section(widths_, thick, piths, a, b)
    for i, (section, one_a, one_b) in enumerate(rows):
        one = free_section(*section, one_a, one_b)
        for name in ("width_change_mm", "thickness_least_mm", "cup_mm", "diamond_degrees"):
            np.testing.assert_allclose(getattr(many, name)[i], getattr(one, name), rtol=1e-9, atol=1e-9)


@fixed
@given(st.floats(20.0, 100.0), st.floats(0.001, 0.05))
def test_half_the_width_quarters_the_cup_as_the_pith_recedes(width, share):
    """Common practice, no source: true only in the limit; the ratio approaches 4 with (width ÷ distance)²."""
    distance = width / share
    cups = [
        free_section(w, 1.0, np.array((0.0, distance)), -0.004, -0.01).cup_mm for w in (width, 0.5 * width)
    ]
    assume(cups[1] > 1e-6)  # far piths: the cup itself must stay above rounding
    assert abs(cups[0] / cups[1] - 4.0) < 2.0 * share**2 + 1e-4


@settings(fixed, max_examples=60)
@given(sections(), change)
def test_section_movement_and_profile_tell_one_story(section, points):
    width, thickness, pith = section
    board = Board(Wood(), width, thickness, pith)
    moved = section_movement(width, thickness, Rings.at(*pith), *board.strains(points))
    profile = board.profile(points, samples=801)
    far = np.abs(profile[:, 1]).argmax()
    np.testing.assert_allclose(moved.cup_mm, profile[far, 1], rtol=0.02, atol=2e-5)
    for surface, name in (("show", "width_change_show_mm"), ("back", "width_change_back_mm")):
        face = board.profile(points, surface=surface)
        np.testing.assert_allclose(getattr(moved, name), face[-1, 0] - face[0, 0] - width, atol=1e-9)
    assert moved.thickness_least_mm <= moved.thickness_change_mm + 1e-12
    assert moved.thickness_change_mm <= moved.thickness_most_mm + 1e-12


@settings(fixed, max_examples=40)
@given(st.lists(sections(), min_size=1, max_size=5), change)
def test_panel_mirrors_and_turns_over(raw, points):
    boards = [Board(Wood(), w, 25.0, p) for w, _, p in raw if abs(p[0]) >= w / 2 or abs(p[1]) >= 12.5]
    assume(boards)
    shape = Panel(boards).shape(points, settle=False)
    mirrored = Panel([b.turned(end_for_end=True) for b in reversed(boards)]).shape(points, settle=False)
    over = Panel([b.turned(over=True) for b in reversed(boards)]).shape(points, settle=False)
    near = {"rtol": 1e-4, "atol": 1e-7}
    np.testing.assert_allclose(mirrored.out_of_flat_mm, shape.out_of_flat_mm, rtol=1e-6, atol=1e-9)
    np.testing.assert_allclose(mirrored.kink_rad[..., ::-1], shape.kink_rad, **near)
    np.testing.assert_allclose(over.kink_rad[..., ::-1], -shape.kink_rad, **near)
    np.testing.assert_allclose(over.average_curvature_per_mm, -shape.average_curvature_per_mm, **near)
    np.testing.assert_allclose(over.width_mm, shape.width_mm, rtol=1e-9)


@settings(fixed, max_examples=40)
@given(sections(), change)
def test_a_board_glued_of_two_halves_is_the_board(section, points):
    """Ripping a board and gluing it again as it grew changes nothing: the chain and the settling are exact there."""
    width, thickness, pith = section
    halves = [Board(Wood(), width / 2, thickness, (pith[0] + s * width / 4, pith[1])) for s in (1, -1)]
    whole = Board(Wood(), width, thickness, pith)
    glued = Panel(halves).shape(points, samples=41)
    np.testing.assert_allclose(glued.profile, whole.profile(points, samples=41), atol=2e-6)
    np.testing.assert_allclose(glued.kink_rad, 0.0, atol=1e-6)
    np.testing.assert_allclose(glued.step_show_mm, 0.0, atol=1e-9)


@fixed
@given(sections(), change)
def test_from_chord_is_a_rigid_motion(section, points):
    width, _, pith = section
    line = np.stack((np.linspace(-0.5, 0.5, 9) * width, np.zeros(9)), axis=-1)
    moved = free_shape(line, pith, 0.0013 * points, 0.0027 * points)
    np.testing.assert_allclose(
        np.linalg.norm(np.diff(from_chord(moved), axis=0), axis=-1),
        np.linalg.norm(np.diff(moved, axis=0), axis=-1),
    )
