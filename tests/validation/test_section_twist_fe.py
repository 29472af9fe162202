"""Twist from spiral grain against a torsion problem solved by finite elements, and by hand for whole poles.

Reference: scikit-fem, the warping problem of a prism with an eigen-shear 2bs about the pith (small strain, shear
stiffness alike both ways). Pole formula of Stevens and Johnston (1960): twist = 2·s·shrinkage·length/r (recalled).
"""

from __future__ import annotations

import numpy as np
import pytest

skfem = pytest.importorskip("skfem", reason="scikit-fem is the reference of these checks")
from skfem.helpers import dot, grad  # noqa: E402

from movement_core.section.board import Board  # noqa: E402
from movement_core.section.twist import board_twist, spiral_rates, torsion_function  # noqa: E402
from movement_core.sources import DERIVED, RECALLED  # noqa: E402
from tests.validation.record import compared  # noqa: E402
from tests.validation.section_fem import Wood  # noqa: E402


def solved_rate(width, thickness, pith, power):
    """Turn per length, for b·s = −1 at the section's centre, slope growing with the radius to ``power``."""
    mesh = skfem.MeshQuad.init_tensor(
        np.linspace(-width / 2, width / 2, 41), np.linspace(-thickness / 2, thickness / 2, 17)
    )
    basis = skfem.Basis(mesh, skfem.ElementQuad2())
    centre = np.hypot(*pith)

    def shear(x):
        dx, dy = x[0] - pith[0], x[1] - pith[1]
        r = np.hypot(dx, dy)
        return 2.0 * (r / centre) ** power * np.array([-dy, dx]) / r

    def turn(x):
        return np.array([-x[1], x[0]])

    laplace = skfem.BilinearForm(lambda u, v, _: dot(grad(u), grad(v))).assemble(basis)
    free = skfem.LinearForm(lambda v, w: dot(shear(w.x), grad(v))).assemble(basis)
    bent = skfem.LinearForm(lambda v, w: dot(turn(w.x), grad(v))).assemble(basis)
    held = np.array([0])
    warp_free, warp_bent = (skfem.solve(*skfem.condense(laplace, f, D=held)) for f in (free, bent))
    polar = skfem.Functional(lambda w: w.x[0] ** 2 + w.x[1] ** 2).assemble(basis) - bent @ warp_bent
    pull = skfem.Functional(lambda w: dot(turn(w.x), shear(w.x))).assemble(basis) - bent @ warp_free
    return pull / polar


@pytest.mark.parametrize(
    ("width", "thickness", "pith"),
    [(100, 20, (0, 60)), (100, 20, (80, 0)), (60, 60, (40, 40)), (20, 90, (25, -30)), (150, 30, (-30, 50))],
)
def test_both_laws_of_slope(width, thickness, pith):
    rates = spiral_rates(Board(Wood(), width, thickness, pith))
    for power, rate in zip((0, 1), rates):
        solved, source = solved_rate(width, thickness, pith, power), "scikit-fem, warping of a prism"
        compared("rate of twist from spiral grain", source, DERIVED, solved, rate, "1/mm", share=1e-4)


def test_flat_sawn_board_far_from_the_pith_by_hand():
    board = Board(Wood(), 80, 20, (0, 400), length_mm=1000, grain_slope=0.02)
    twist = board_twist(board, -4.0)
    shrinkage = 4 * 0.0027
    by_hand = np.degrees(shrinkage * 0.02 * 1000 / 400)  # slope the same at every radius: s·b·L/r
    assert twist.from_slope_degrees[0] == pytest.approx(by_hand, rel=0.01)
    ours, source = twist.from_slope_degrees[1], "Stevens and Johnston (1960), poles"
    compared("twist of a pole", source, RECALLED, 2 * by_hand, ours, "°", share=1e-9)
    #   # growing with it: the pole


def test_torsion_function_gives_the_known_stiffness_of_rectangles():
    # Torsion constant of rectangles ÷ (long · short³): Timoshenko and Goodier, Theory of Elasticity (recalled).
    for ratio, known in ((1.0, 0.1406), (2.0, 0.229), (4.0, 0.281), (10.0, 0.312)):
        nodes, weights = np.polynomial.legendre.leggauss(60)
        x, y = 0.5 * ratio * nodes[:, None], 0.5 * nodes[None, :]
        value = torsion_function(x, y, ratio, 1.0, terms=60)
        total = (weights[:, None] * weights[None, :] * value).sum() * 0.25 * ratio
        # φ solves ∇²φ = −2; the series leaves out its factor 8/π³
        ours, source = 2 * total * 8 / np.pi**3 / ratio, "Timoshenko and Goodier, Theory of Elasticity"
        compared("torsion constants of rectangles", source, RECALLED, known, ours, "", share=2e-3)


def test_straight_log_sawn_askew_agrees_with_the_shape_of_the_whole_log():
    # A straight-grained log keeps its prismatic shape, so a board sawn askew turns by what the map turns.
    board = Board(Wood(), 80, 20, (-10, -60), length_mm=1000, far_pith_mm=(15, -70), grain_slope=0.0)
    a, b = -4 * 0.0013, -4 * 0.0027
    angles = [np.arctan2(-y, -x) for x, y in (board.pith_mm, board.far_pith_mm)]
    turned = [angle * (1 + b) / (1 + a) - angle for angle in angles]
    assert board_twist(board, -4.0).degrees[0] == pytest.approx(np.degrees(turned[1] - turned[0]))
