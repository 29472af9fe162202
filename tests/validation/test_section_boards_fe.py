"""The exact free shape of boards against finite elements (scikit-fem), table and random boards.

Reference: scikit-fem, ring-rotated orthotropic elasticity, small strain (tests/validation/section_fem.py). The
change is −0.4 points of MC, so that small-strain elements may be compared with a map that is exact at any strain.
"""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.section.board import Board
from movement_core.section.boxed_heart import solve_boxed_heart
from movement_core.section.elastic import CrossStiffness
from movement_core.section.field import free_shape
from movement_core.sources import DERIVED, OWN
from tests.validation.record import compared
from tests.validation.section_fem import POPLAR, WALNUT, Wood, line_at, random_pith, solve_section

ELEMENTS = "scikit-fem, ring-rotated orthotropic elasticity"

SMALL = -0.4


def sag_and_chord(profile):
    return profile[np.abs(profile[:, 1]).argmax(), 1], np.ptp(profile[:, 0])


@pytest.mark.parametrize(
    ("pith", "sag", "chord"),
    [
        ((0.0, 50.0), 0.05769, 199.8267),
        ((0.0, 190.0), 0.02596, 199.7921),
        ((-40.0, 90.0), 0.03868, 199.8125),
        ((-400.0, 0.0), 0.00000, 199.8959),
        ((0.0, 25.0), 0.06910, 199.8476),
    ],
)
def test_lower_face_of_a_200_by_20_board(pith, sag, chord):
    # Figures computed beforehand with scikit-fem and the map, 200 × 20 mm, C_T 0.0027, C_R 0.0013.
    board = Board(Wood(), 200, 20, pith)
    mapped = sag_and_chord(board.profile(SMALL, samples=401, surface="back"))
    source = "figures computed beforehand with scikit-fem"
    compared("sag of a 200 × 20 board", source, OWN, sag, mapped[0], "mm", within=6e-6)
    compared("chord of a 200 × 20 board", source, OWN, chord, mapped[1], "mm", within=6e-5)
    solved = sag_and_chord(line_at(*solve_section([board], SMALL, columns=40), -10))
    assert solved[0] == pytest.approx(sag, abs=3e-5)
    assert solved[1] == pytest.approx(chord, abs=2e-4)


@pytest.mark.parametrize("number", range(32))
def test_random_boards(number):
    rng = np.random.default_rng(4000 + number)
    width, thickness = rng.uniform(40, 300), rng.uniform(12, 60)
    tangential = rng.uniform(0.0018, 0.0040)
    wood = Wood(tangential * rng.uniform(0.4, 0.9), tangential)
    board = Board(wood, width, thickness, random_pith(rng, width, thickness))
    moduli = (WALNUT, POPLAR)[number % 2]
    columns = 30 if width < 4 * thickness else 60
    before, after = solve_section([board], SMALL, moduli, columns=columns, rows=10)
    for surface, height in (("back", -0.5), ("middle", 0.0), ("show", 0.5)):
        solved = line_at(before, after, height * thickness)
        mapped = line_at(before, board.moved(before, SMALL), height * thickness)  # at the very same vertices
        sag, chord = sag_and_chord(mapped)
        assert np.abs(solved - mapped)[:, 1].max() <= 0.005 * abs(sag) + 2e-6, (
            surface
        )  # 2e-6: no sag, no share
        room = 0.005 * abs(sag) + 2e-6
        compared("sag of random boards", ELEMENTS, DERIVED, solved[:, 1], mapped[:, 1], "mm", within=room)
        width = np.ptp(solved[:, 0])
        compared("width of random boards", ELEMENTS, DERIVED, width, chord, "mm", within=1e-3)  # 1 µm


def test_the_map_is_exact_at_large_strain_too():
    # The metric itself, not a solution of it: neighbouring points a little apart stretch by 1+a and 1+b.
    rng = np.random.default_rng(7)
    pith, a, b, step = np.array((15.0, 70.0)), -0.06, -0.13, 1e-5
    points = rng.uniform((-90, -20), (90, 20), (200, 2))
    outward = points - pith
    outward /= np.linalg.norm(outward, axis=1, keepdims=True)
    around = np.stack((-outward[:, 1], outward[:, 0]), axis=1)
    for way, strain in ((outward, a), (around, b)):
        ends = [free_shape(points + sign * step * way, pith, a, b) for sign in (-1, 1)]
        stretch = np.linalg.norm(ends[1] - ends[0], axis=1) / (2 * step)
        np.testing.assert_allclose(stretch, 1 + strain, rtol=1e-8)


@pytest.mark.parametrize(
    ("size", "pith"), [((200, 50), (10, 8)), ((60, 60), (-12, 5)), ((150, 30), (40, -10))]
)
def test_boxed_heart_against_finite_elements(size, pith):
    stiffness = CrossStiffness(WALNUT.radial, WALNUT.tangential, WALNUT.shear, WALNUT.poisson_rt)
    solved = solve_boxed_heart(*size, pith, stiffness)
    finer = solve_boxed_heart(*size, pith, stiffness, fineness=2)
    wood = Wood()
    board = Board(wood, *size, pith, boxed_heart=True)
    before, after = solve_section([board], SMALL, WALNUT, columns=48, rows=28)
    strains = wood.radial_coefficient * SMALL, wood.tangential_coefficient * SMALL
    for height in (-0.5, 0.0, 0.5):
        fe = line_at(before, after, height * size[1])
        answers = [line_at(before, one.moved(before, *strains), height * size[1]) for one in (solved, finer)]
        biggest = np.abs(answers[1][:, 1]).max()
        assert np.abs(answers[0][:, 1] - answers[1][:, 1]).max() <= 0.005 * biggest  # refinement
        room = 0.01 * biggest
        compared("boxed heart", ELEMENTS, DERIVED, fe[:, 1], answers[1][:, 1], "mm", within=room)
        assert np.ptp(answers[0][:, 0]) == pytest.approx(np.ptp(fe[:, 0]), abs=1e-3)
