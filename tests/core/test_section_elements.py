"""The finite elements of a section against what calculus says of them: patches, bending, meshes, rigid motion."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.section.board import Board
from movement_core.section.boxed_heart import _lines, solve_boxed_heart
from movement_core.section.elastic import (
    CONIFER,
    TYPICAL,
    CrossStiffness,
    Grid,
    solve,
    strain_turn,
    stretches,
)
from movement_core.section.settled import _board_lines, _through_lines

GRID = Grid(np.array([-30.0, -22.0, -5.0, 11.0, 30.0]), np.array([-8.0, -3.0, 1.0, 8.0]))


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


def quadratic(points):
    """A displacement (…, 2) of second degree, and its strain (xx, yy, engineering xy) by hand."""
    x, y = points[..., 0], points[..., 1]
    moved = np.stack((x * y + 2.0 * y * y - x, x * x - 3.0 * x * y + 0.5 * y), axis=-1)
    return moved, np.stack((y - 1.0, 0.5 - 3.0 * x, x + 4.0 * y + 2.0 * x - 3.0 * y), axis=-1)


def test_elements_hold_any_displacement_of_second_degree():
    moved, _ = quadratic(GRID.nodes())
    assert GRID.nodes().shape == (9, 7, 2)
    assert GRID.nodes()[0, 0].tolist() == [-30.0, -8.0] and GRID.nodes()[1, 1].tolist() == [-26.0, -5.5]
    points = np.array([(-30.0, -8.0), (30.0, 8.0), (-13.7, 0.9), (11.0, 1.0), (29.0, -7.0), (2.0, 2.0)])
    np.testing.assert_allclose(GRID.interpolated(moved[None], points)[0], quadratic(points)[0], atol=1e-10)
    found = GRID.strains(moved[None])[0]
    np.testing.assert_allclose(found, quadratic(GRID.gauss_points())[1], atol=1e-10)


def test_elements_return_what_stands_at_their_nodes():
    given = np.random.default_rng(1).normal(size=(2, 9, 7, 2))
    there = GRID.interpolated(given, GRID.nodes().reshape(-1, 2))
    np.testing.assert_allclose(there.reshape(2, 9, 7, 2), given, atol=1e-12)


def test_areas_and_moments_over_the_gauss_points_are_those_of_the_rectangle():
    _, area = GRID.strain_matrices()
    x, y = np.moveaxis(GRID.gauss_points(), -1, 0)
    assert area.sum() == pytest.approx(60.0 * 16.0)
    assert (area * x * x).sum() == pytest.approx(60.0**3 * 16.0 / 12.0)
    assert (area * y**4).sum() == pytest.approx(60.0 * 2 * 8.0**5 / 5.0)


def everywhere(matrix):
    return np.broadcast_to(matrix, (4, 3, 9, 3, 3))


def turned(degrees, stiffness=TYPICAL):
    turn = strain_turn(np.array([np.cos(np.radians(degrees)), np.sin(np.radians(degrees))]))
    return turn.T @ stiffness.matrix() @ turn


@pytest.mark.parametrize("degrees", [0.0, 33.0, 90.0])
def test_even_strain_and_even_bending_leave_no_stress(degrees):
    """ε = const and ε_xx = k·y come from a displacement, so a free section takes them without stress, whatever its
    stiffness: u = k·x·y, v = −k·x²/2."""
    even = np.broadcast_to([-0.01, 0.02, 0.005], (4, 3, 9, 3))
    bent = np.zeros((4, 3, 9, 3))
    bent[..., 0] = 1e-3 * GRID.gauss_points()[..., 1]
    solved = solve(GRID, everywhere(turned(degrees)), np.stack((even, bent)))
    np.testing.assert_allclose(solved.stress, 0.0, atol=1e-8)
    corners = np.array([(-30.0, -8.0), (30.0, -8.0), (30.0, 8.0), (-30.0, 8.0)])
    for moved, (lower, upper) in zip(solved.at(corners), ((-0.01, -0.01), (-0.008, 0.008))):
        after = corners + moved
        assert after[1, 0] - after[0, 0] == pytest.approx(60.0 * (1.0 + lower), rel=1e-9)
        assert after[2, 0] - after[3, 0] == pytest.approx(60.0 * (1.0 + upper), rel=1e-9)
    through = np.diff(corners + solved.at(corners)[0], axis=0)[1]
    assert through[1] == pytest.approx(16.0 * 1.02, rel=1e-9)


def test_a_strip_that_wants_to_bend_both_ways_is_stressed_by_the_difference():
    """ε_xx = k·y²: far from the ends a slender strip stays flat and even, so σ_xx = E·k·(h²/12 − y²) (derived)."""
    long = Grid(np.linspace(-60.0, 60.0, 25), np.linspace(-5.0, 5.0, 7))
    points = long.gauss_points()
    wish = np.zeros((1, 24, 6, 9, 3))
    wish[0, ..., 0] = 1e-4 * points[..., 1] ** 2
    stiff = CrossStiffness(1000.0, 500.0, 200.0, 0.3)
    stress = solve(long, np.broadcast_to(stiff.matrix(), (24, 6, 9, 3, 3)), wish).stress[0]
    middle = np.abs(points[..., 0]) < 20.0
    expected = 1000.0 * 1e-4 * (10.0**2 / 12.0 - points[middle][:, 1] ** 2)
    np.testing.assert_allclose(stress[middle][:, 0], expected, atol=2e-2 * 1000.0 * 1e-4 * 25.0)
    np.testing.assert_allclose(stress[middle][:, 1:], 0.0, atol=2e-2)


def test_axes_turn_as_strain_does():
    """A pull along a direction is radial there and nothing else; two turns of a quarter come back."""
    for degrees in (0.0, 20.0, 90.0, 135.0):
        way = np.array([np.cos(np.radians(degrees)), np.sin(np.radians(degrees))])
        pull = np.array([way[0] ** 2, way[1] ** 2, 2.0 * way[0] * way[1]])
        np.testing.assert_allclose(strain_turn(way) @ pull, [1.0, 0.0, 0.0], atol=1e-12)
        across = np.array([way[1] ** 2, way[0] ** 2, -2.0 * way[0] * way[1]])
        np.testing.assert_allclose(strain_turn(way) @ across, [0.0, 1.0, 0.0], atol=1e-12)
    np.testing.assert_allclose(strain_turn(np.array([0.0, 1.0])) @ [0.0, 0.0, 1.0], [0.0, 0.0, -1.0])


def test_stiffness_inverts_its_compliance():
    """A pull of E_R along the radius strains it by 1 and narrows the other way by ν_RT (definition)."""
    for one in (TYPICAL, CONIFER):
        assert 0.0 < one.poisson_rt < 1.0 and one.basis
        pull = one.matrix() @ [1.0, -one.poisson_rt, 0.0]
        np.testing.assert_allclose(pull, [one.radial_mpa, 0.0, 0.0], atol=1e-9)
        np.testing.assert_allclose(one.matrix() @ [0.0, 0.0, 1.0], [0.0, 0.0, one.shear_mpa])
        np.testing.assert_allclose(one.matrix(), one.matrix().T)


def test_stretches_grow_by_their_ratio():
    assert stretches(2.0, 9.0, 3, 2.0).tolist() == pytest.approx([2.0, 3.0, 5.0, 9.0])
    assert stretches(0.0, -1.0, 4, 1.0).tolist() == pytest.approx([0.0, -0.25, -0.5, -0.75, -1.0])


@pytest.mark.parametrize("fineness", [1, 2])
def test_lines_about_a_pith_grow_outward_by_a_seventh_at_most(fineness):
    lines = _lines(80.0, 13.0, fineness)
    assert (lines[0], lines[-1]) == pytest.approx((-40.0, 40.0))
    at = int(np.argmin(np.abs(lines - 13.0)))
    assert lines[at] == 13.0
    right, left = np.diff(lines[at:]), -np.diff(lines[at::-1])
    for steps in (right, left):
        np.testing.assert_allclose(steps[1:] / steps[:-1], 1.15 ** (1.0 / fineness))
    assert len(lines) - 1 >= 16 * fineness
    assert len(left) > len(right) >= 8 * fineness  # more where there is more to cover


@pytest.mark.parametrize("pith", [(5.0, -8.0), (-20.0, 3.0)])
def test_a_solved_section_keeps_its_place_and_direction(pith):
    size = np.array([70.0, 50.0])
    solved = solve_boxed_heart(*size, pith)
    corners = 0.5 * size * np.array([(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)])
    shift = solved.moved(corners, -0.005, -0.011) - corners
    np.testing.assert_allclose(shift.mean(axis=0), 0.0, atol=1e-9)
    grid = solved.unit.grid
    assert pith[0] in grid.xs and pith[1] in grid.ys  # the elements meet at the pith
    assert (corners[:, 0] * shift[:, 1] - corners[:, 1] * shift[:, 0]).sum() == pytest.approx(0.0, abs=1e-8)


def test_stress_of_a_boxed_heart_comes_of_the_difference_of_its_strains():
    solved = solve_boxed_heart(70.0, 50.0, (5.0, -8.0))
    points, stress = solved.stress_mpa(-0.005, -0.011)
    assert (np.abs(points) < (35.0, 25.0)).all() and len(points) == len(stress)
    np.testing.assert_allclose(solved.stress_mpa(-0.01, -0.01)[1], 0.0, atol=1e-15)
    np.testing.assert_allclose(solved.stress_mpa(0.0, -0.012)[1], 2.0 * stress)
    # drying, the rings shorten more than the radius: pulled along the rings at the rim, pressed near the pith
    rim = (points[:, 1] > 23.5) & (np.abs(points[:, 0] - 5.0) < 5.0)
    assert rim.any() and stress[rim, 0].min() > 0.0
    near = np.hypot(points[:, 0] - 5.0, points[:, 1] + 8.0) < 1.0
    assert near.any() and stress[near, 0].max() < 0.0


@pytest.mark.parametrize("pith", [(0.0, 60.0), (0.0, 10.5)])
def test_lines_of_a_board_run_from_edge_to_edge_alike_both_ways(pith):
    lines = _board_lines(Board(Wood(), 100.0, 20.0, pith), 1)
    assert (lines[0], lines[-1]) == (0.0, 100.0)
    steps = np.diff(lines)
    np.testing.assert_allclose(steps, steps[::-1], rtol=1e-3)
    assert steps.max() <= 15.1  # no element is wider than 0.15 of the board
    middle = steps[len(steps) // 2]
    assert steps[0] < 20.0 / 6 and steps[0] < steps[2]  # fine at the edges …
    assert (middle < 20.0 / 20) == (pith[1] < 20.0)  # … and where the pith is near
    twice = _board_lines(Board(Wood(), 100.0, 20.0, pith), 2)
    assert len(twice) - 1 in (2 * (len(lines) - 1), 2 * (len(lines) - 1) - 1)


@pytest.mark.parametrize(
    ("distance", "count"), [(60.0, 6), (20.0 / 6, 6), (20.0 / 9.5, 10), (20.0 / 14, 14), (0.0, 14)]
)
def test_a_pith_close_to_a_face_gets_more_lines_through_the_thickness(distance, count):
    """As many elements through the thickness as the pith's distance goes into it, six to fourteen."""
    far, near = Board(Wood(), 100.0, 20.0, (0.0, 90.0)), Board(Wood(), 100.0, 20.0, (0.0, -10.0 - distance))
    beside = Board(Wood(), 100.0, 20.0, (50.0 + distance, 4.0))
    for boards in ([far, near], [beside, far]):
        lines = _through_lines(boards, 1)
        np.testing.assert_allclose(lines, np.linspace(-10.0, 10.0, count + 1))
        assert len(_through_lines(boards, 3)) == 3 * count + 1
