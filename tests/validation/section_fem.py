"""Finite elements by scikit-fem for sections of wood: the reference that the exact map and the chain are held to.

Quadratic quadrilaterals, small strain, plane stress in the section, stiffness and free strain turned to the
rings of the board each element belongs to; vertices on every glue line and at mid-thickness.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest

skfem = pytest.importorskip("skfem", reason="scikit-fem is the reference of these checks")
pytest.importorskip("scipy", reason="scikit-fem needs scipy to solve")

from skfem.element import DiscreteField  # noqa: E402


@dataclass(frozen=True)
class Wood:
    radial_coefficient: float = 0.0013
    tangential_coefficient: float = 0.0027


@dataclass(frozen=True)
class Moduli:
    """MPa; ν_RT. From memory of the Wood Handbook (FPL-GTR-190, Tables 5-1, 5-2), as ratios of E_L."""

    radial: float
    tangential: float
    shear: float
    poisson_rt: float


WALNUT = Moduli(1230.0, 650.0, 240.0, 0.72)
POPLAR = Moduli(1000.0, 470.0, 120.0, 0.70)
SOFTWOOD = Moduli(900.0, 550.0, 60.0, 0.50)  # the low rolling shear of conifers
MODULI = {"walnut": WALNUT, "poplar": POPLAR, "softwood": SOFTWOOD}


def solve_section(boards, mc_change, moduli=WALNUT, columns=10, rows=6):
    """Vertices (V, 2) of boards laid side by side, before and after ``mc_change`` points of MC (one or each)."""
    changes = np.broadcast_to(mc_change, len(boards))
    thickness = boards[0].thickness_mm
    total = sum(board.width_mm for board in boards)
    lines, starts = [-0.5 * total], []
    for board in boards:
        starts.append(lines[-1])
        spaced = 0.5 - 0.5 * np.cos(np.linspace(0, np.pi, columns + 1)[1:])
        lines += list(starts[-1] + board.width_mm * spaced)
    mesh = skfem.MeshQuad.init_tensor(np.array(lines), np.linspace(-0.5, 0.5, rows + 1) * thickness)
    basis = skfem.Basis(mesh, skfem.ElementVector(skfem.ElementQuad2()), intorder=5)
    middle = mesh.p[0][mesh.t].mean(axis=0)
    owner = np.searchsorted(np.array(starts), middle) - 1
    piths = np.array([(s + 0.5 * b.width_mm + b.pith_mm[0], b.pith_mm[1]) for s, b in zip(starts, boards)])

    def field(values):
        return DiscreteField(np.broadcast_to(np.asarray(values)[owner][:, None], basis.dx.shape).copy())

    radial = [b.species.radial_coefficient * m for b, m in zip(boards, changes)]
    tangential = [b.species.tangential_coefficient * m for b, m in zip(boards, changes)]
    given = {
        "px": field(piths[:, 0]), "py": field(piths[:, 1]), "a": field(radial), "b": field(tangential)
    }  # fmt: skip
    nu_tr = moduli.poisson_rt * moduli.tangential / moduli.radial
    share = 1.0 / (1.0 - moduli.poisson_rt * nu_tr)

    def stress(e_xx, e_yy, g_xy, w):
        """(xx, yy, xy) stress of a strain, through the ring frame."""
        c, s = w.x[0] - w["px"], w.x[1] - w["py"]
        r = np.hypot(c, s)
        c, s = c / r, s / r
        e_r = e_xx * c * c + e_yy * s * s + g_xy * c * s
        e_t = e_xx * s * s + e_yy * c * c - g_xy * c * s
        g_rt = 2 * (e_yy - e_xx) * c * s + g_xy * (c * c - s * s)
        s_r = share * (moduli.radial * e_r + nu_tr * moduli.radial * e_t)
        s_t = share * (moduli.tangential * e_t + nu_tr * moduli.radial * e_r)
        t_rt = moduli.shear * g_rt
        xx = s_r * c * c + s_t * s * s - 2 * t_rt * c * s
        yy = s_r * s * s + s_t * c * c + 2 * t_rt * c * s
        return xx, yy, (s_r - s_t) * c * s + t_rt * (c * c - s * s)

    def strain(u):
        return u.grad[0, 0], u.grad[1, 1], u.grad[0, 1] + u.grad[1, 0]

    @skfem.BilinearForm
    def stiffness(u, v, w):
        return sum(p * q for p, q in zip(stress(*strain(u), w), strain(v)))

    @skfem.LinearForm
    def load(v, w):
        c, s = w.x[0] - w["px"], w.x[1] - w["py"]
        square = c * c + s * s
        free = (
            (w["a"] * c * c + w["b"] * s * s) / square,
            (w["a"] * s * s + w["b"] * c * c) / square,
            2 * (w["a"] - w["b"]) * c * s / square,
        )
        return sum(p * q for p, q in zip(stress(*free, w), strain(v)))

    corner = mesh.nodes_satisfying(lambda x: (x[0] < lines[0] + 1e-9) & (x[1] < -0.5 * thickness + 1e-9))
    above = mesh.nodes_satisfying(lambda x: (x[0] < lines[0] + 1e-9) & (x[1] > 0.5 * thickness - 1e-9))
    held = np.array([*basis.nodal_dofs[:, corner[0]], basis.nodal_dofs[0, above[0]]])
    matrix, force = stiffness.assemble(basis, **given), load.assemble(basis, **given)
    moved = skfem.solve(*skfem.condense(matrix, force, D=held))
    before = mesh.p.T
    return before, before + moved[basis.nodal_dofs].T


def line_at(before, after, height):
    """The vertices (N, 2) at one height of the section, left to right, from the chord between their ends."""
    at = np.flatnonzero(np.abs(before[:, 1] - height) < 1e-6)
    points = after[at[np.argsort(before[at, 0])]]
    chord = points[-1] - points[0]
    length = np.hypot(*chord)
    shift = points - 0.5 * (points[0] + points[-1])
    return np.stack((shift @ chord, shift @ [-chord[1], chord[0]]), axis=-1) / length


def random_pith(rng, width, thickness, nearest=3.0, radii=(25.0, 250.0)):
    """A pith at least ``nearest`` mm outside the section."""
    while True:
        radius, turn = np.exp(rng.uniform(*np.log(radii))), rng.uniform(0, 2 * np.pi)
        x, y = radius * np.cos(turn), radius * np.sin(turn)
        if np.hypot(max(0, abs(x) - width / 2), max(0, abs(y) - thickness / 2)) >= nearest:
            return float(x), float(y)
