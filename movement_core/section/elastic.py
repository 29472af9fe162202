"""Stress and shape of a rectangular section whose rings cannot all have their way: our own finite elements.

Biquadratic plane elements on a rectangular grid, cylindrically orthotropic about each element's own pith.
Node lines couple only to their neighbours, so block elimination with plain numpy solves thousands of unknowns
in milliseconds. Plane stress in the section with the two cross-grain moduli: the grain is some twelve times
stiffer than either, so that a long board's plane-strain moduli differ by one or two percent only.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.errors import InputError
from movement_core.section.field import Floats
from movement_core.wording import say

_GAUSS = np.sqrt(0.6) * np.array([-1.0, 0.0, 1.0])
_GAUSS_WEIGHT = np.array([5.0, 8.0, 5.0]) / 9.0


@dataclass(frozen=True)
class CrossStiffness:
    """Stiffness across the grain. Free shapes hang on the ratios only, stresses on the values.

    The default is a wood in the middle: the means of E_R 0.098, E_T 0.054, G_RT 0.016 (of E_L, taken as
    11.5 GPa) and ν_RT 0.56 over seven woods of the Wood Handbook, FPL-GTR-190, Tables 5-1 and 5-2: mahogany,
    sweetgum, walnut, yellow-poplar, Douglas-fir, loblolly and red pine. All recalled, not read again.
    """

    radial_mpa: float = 1130.0
    tangential_mpa: float = 620.0
    shear_mpa: float = 180.0
    poisson_rt: float = 0.56
    basis: str = "a wood in the middle of seven; Wood Handbook FPL-GTR-190 Tables 5-1 and 5-2 (recalled)"

    def __post_init__(self) -> None:
        values = (self.radial_mpa, self.tangential_mpa, self.shear_mpa)
        # stable material: the 2×2 compliance is positive definite
        if not all(0.0 < v < 1e6 for v in values) or not (
            self.poisson_rt**2 < self.radial_mpa / self.tangential_mpa
        ):
            raise InputError(
                say(
                    "cross-grain stiffness {values} MPa with Poisson ratio {poisson_rt:g}",
                    values=values,
                    poisson_rt=self.poisson_rt,
                ),
                where=say("cross stiffness"),
                allowed=say("moduli above 0, poisson_rt² below E_R ÷ E_T"),
                todo=say("give moduli in MPa"),
            )

    def matrix(self) -> Floats:
        """(3, 3) stress from strain in (radial, tangential, engineering shear), MPa."""
        coupling = -self.poisson_rt / self.radial_mpa
        compliance = np.array(
            [
                [1.0 / self.radial_mpa, coupling, 0.0],
                [coupling, 1.0 / self.tangential_mpa, 0.0],
                [0.0, 0.0, 1.0 / self.shear_mpa],
            ]
        )
        return np.asarray(np.linalg.inv(compliance), dtype=np.float64)


TYPICAL = CrossStiffness()
CONIFER = CrossStiffness(
    900.0, 550.0, 60.0, 0.5,
    "a conifer: shear between rings a tenth and less of E_T; Wood Handbook FPL-GTR-190 Table 5-1 (recalled)",
)  # fmt: skip


def strain_turn(direction: Floats) -> Floats:
    """(…, 3, 3) from strain (xx, yy, engineering xy) to (radial along ``direction``, tangential, shear)."""
    c, s = direction[..., 0], direction[..., 1]
    rows = ((c * c, s * s, c * s), (s * s, c * c, -c * s), (-2 * c * s, 2 * c * s, c * c - s * s))
    return np.stack([np.stack(row, axis=-1) for row in rows], axis=-2)


def _shape(xi: Floats) -> tuple[Floats, Floats]:
    """Values and derivatives (n, 3) of the three quadratic shape functions at ``xi`` in −1…1."""
    value = np.stack((0.5 * xi * (xi - 1.0), 1.0 - xi * xi, 0.5 * xi * (xi + 1.0)), axis=-1)
    slope = np.stack((xi - 0.5, -2.0 * xi, xi + 0.5), axis=-1)
    return value, slope


@dataclass(frozen=True)
class Grid:
    """Element lines of a section: ``xs`` (nx+1,) across, ``ys`` (ny+1,) through, mm, increasing."""

    xs: Floats
    ys: Floats

    def gauss_points(self) -> Floats:
        """(nx, ny, 9, 2) mm."""
        x = _spread(self.xs, _GAUSS)
        y = _spread(self.ys, _GAUSS)
        shape = (len(self.xs) - 1, len(self.ys) - 1, 3, 3)
        grid_x = np.broadcast_to(x[:, None, :, None], shape)
        grid_y = np.broadcast_to(y[None, :, None, :], shape)
        return np.stack((grid_x, grid_y), axis=-1).reshape(*shape[:2], 9, 2)

    def strain_matrices(self) -> tuple[Floats, Floats]:
        """(nx, ny, 9, 3, 18) strain from an element's displacements, and (nx, ny, 9) areas, mm²."""
        value, slope = _shape(_GAUSS)
        d_x = np.einsum("ga,hb->ghab", slope, value).reshape(9, 9)
        d_y = np.einsum("ga,hb->ghab", value, slope).reshape(9, 9)
        step_x, step_y = np.diff(self.xs)[:, None, None, None], np.diff(self.ys)[None, :, None, None]
        d_x, d_y = np.broadcast_arrays(2.0 * d_x / step_x, 2.0 * d_y / step_y)
        matrix = np.zeros((*d_x.shape[:2], 9, 3, 9, 2))
        matrix[..., 0, :, 0] = d_x
        matrix[..., 1, :, 1] = d_y
        matrix[..., 2, :, 0] = d_y
        matrix[..., 2, :, 1] = d_x
        area = np.outer(_GAUSS_WEIGHT, _GAUSS_WEIGHT).reshape(9) * (0.25 * step_x * step_y)[..., 0]
        return matrix.reshape(*d_x.shape[:2], 9, 3, 18), area

    def nodes(self) -> Floats:
        """(2nx+1, 2ny+1, 2) mm."""
        x, y = (np.insert(ends, slice(1, None), 0.5 * (ends[1:] + ends[:-1])) for ends in (self.xs, self.ys))
        return np.stack(np.meshgrid(x, y, indexing="ij"), axis=-1)

    def interpolated(self, values: Floats, points: Floats) -> Floats:
        """Nodal values (loads, 2nx+1, 2ny+1, 2) at points (N, 2): (loads, N, 2)."""
        column, x_value = _locate(self.xs, points[:, 0])
        row, y_value = _locate(self.ys, points[:, 1])
        out = np.zeros((len(values), len(points), 2))
        for i in range(3):
            for j in range(3):
                weight = (x_value[:, i] * y_value[:, j])[:, None]
                out += weight * values[:, 2 * column + i, 2 * row + j]
        return out

    def strains(self, displacement: Floats) -> Floats:
        """(loads, nx, ny, 9, 3) strain at the Gauss points of nodal displacements (loads, 2nx+1, 2ny+1, 2)."""
        matrix, _ = self.strain_matrices()
        n_x, n_y = matrix.shape[:2]
        corner = np.zeros((len(displacement), n_x, n_y, 9, 2))
        for i in range(3):
            for j in range(3):
                corner[..., 3 * i + j, :] = displacement[:, i : i + 2 * n_x : 2, j : j + 2 * n_y : 2]
        flat = corner.reshape(len(displacement), n_x, n_y, 18)
        return np.asarray(np.einsum("xygsd,lxyd->lxygs", matrix, flat, optimize=True), dtype=np.float64)


def _spread(lines: Floats, xi: Floats) -> Floats:
    return 0.5 * (lines[:-1, None] + lines[1:, None]) + 0.5 * np.diff(lines)[:, None] * xi


@dataclass(frozen=True)
class Elastic:
    """Displacements (loads, 2nx+1, 2ny+1, 2), mm; stresses (loads, nx, ny, 9, 3), MPa: xx, yy, xy."""

    grid: Grid
    displacement: Floats
    stress: Floats

    def at(self, points: Floats) -> Floats:
        """Displacement (loads, N, 2) at points (N, 2) of the section."""
        return self.grid.interpolated(self.displacement, points)


def _locate(lines: Floats, where: Floats) -> tuple[np.ndarray[tuple[int], np.dtype[np.intp]], Floats]:
    cell = np.clip(np.searchsorted(lines, where, side="right") - 1, 0, len(lines) - 2)
    xi = 2.0 * (where - lines[cell]) / (lines[cell + 1] - lines[cell]) - 1.0
    return cell, _shape(xi)[0]


def solve(grid: Grid, stiffness: Floats, eigenstrain: Floats) -> Elastic:
    """Displacements and stresses of a section that nothing holds, whose crumbs would each strain alone.

    Parameters
    ----------
    grid : the element lines.
    stiffness : (nx, ny, 9, 3, 3) MPa in section axes at each Gauss point.
    eigenstrain : (loads, nx, ny, 9, 3) strain (xx, yy, engineering xy) at each Gauss point.
    """
    matrix, area = grid.strain_matrices()
    weighted = stiffness * area[..., None, None]
    n_x, n_y = area.shape[:2]
    flat = matrix.reshape(n_x, n_y, 27, 18)
    forced = (weighted @ matrix).reshape(n_x, n_y, 27, 18)
    element = np.swapaxes(flat, -1, -2) @ forced
    load = np.einsum("xygsd,lxygs->xydl", forced.reshape(n_x, n_y, 9, 3, 18), eigenstrain)

    loads = len(eigenstrain)
    line = 2 * (2 * n_y + 1)
    stiff = np.zeros((n_x, 3, line, 3, line))
    force = np.zeros((n_x, 3, line, loads))
    for j in range(n_y):
        rows = slice(4 * j, 4 * j + 6)
        stiff[:, :, rows, :, rows] += element[:, j].reshape(n_x, 3, 6, 3, 6)
        force[:, :, rows] += load[:, j].reshape(n_x, 3, 6, loads)
    lines = _eliminate(stiff, force)
    displacement = np.moveaxis(lines.reshape(2 * n_x + 1, 2 * n_y + 1, 2, loads), -1, 0)

    crumbs = grid.strains(displacement) - eigenstrain
    stress = np.einsum("xygst,lxygt->lxygs", stiffness, crumbs, optimize=True)
    return Elastic(grid, displacement, stress)


def _eliminate(stiff: Floats, force: Floats) -> Floats:
    """Block elimination: element columns (nx, 3 lines, D, 3 lines, D) → displacements (2nx+1, D, loads)."""
    n_x, _, line, _, _ = stiff.shape
    loads = force.shape[-1]
    ends = (0, 2)
    middle = stiff[:, 1, :, 1, :]
    to_ends = np.concatenate([stiff[:, 1, :, e, :] for e in ends], axis=-1)  # (nx, D, 2D)
    solved = np.linalg.solve(middle, np.concatenate((to_ends, force[:, 1]), axis=-1))
    from_ends, free = solved[..., : 2 * line], solved[..., 2 * line :]
    back = np.swapaxes(to_ends, -1, -2)
    outer = stiff[:, ends][:, :, :, ends].reshape(n_x, 2 * line, 2 * line) - back @ from_ends
    pull = force[:, ends].reshape(n_x, 2 * line, loads) - back @ free

    diagonal = np.zeros((n_x + 1, line, line))
    right = np.zeros((n_x + 1, line, loads))
    diagonal[:-1] += outer[:, :line, :line]
    diagonal[1:] += outer[:, line:, line:]
    right[:-1] += pull[:, :line]
    right[1:] += pull[:, line:]
    upper = outer[:, :line, line:].copy()
    # Three supports that a body in balance never leans on: both directions at a corner, x at the one above.
    for dof in (0, 1, line - 2):
        diagonal[0, dof, :] = 0.0
        diagonal[0, dof, dof] = 1.0
        right[0, dof] = 0.0
        upper[0, dof, :] = 0.0
    next_line = np.zeros((n_x, line, line))
    value = np.zeros((n_x + 1, line, loads))
    for i in range(n_x):
        both = np.linalg.solve(diagonal[i], np.concatenate((upper[i], right[i]), axis=-1))
        next_line[i], value[i] = both[:, :line], both[:, line:]
        diagonal[i + 1] -= upper[i].T @ next_line[i]
        right[i + 1] -= upper[i].T @ value[i]
    value[n_x] = np.linalg.solve(diagonal[n_x], right[n_x])
    for i in range(n_x - 1, -1, -1):
        value[i] -= next_line[i] @ value[i + 1]
    out = np.zeros((2 * n_x + 1, line, loads))
    out[0::2] = value
    out[1::2] = free - from_ends @ np.concatenate((value[:-1], value[1:]), axis=-2)
    return out


def stretches(start: float, end: float, count: int, ratio: float) -> Floats:
    """``count`` lengths from ``start`` to ``end``, each ``ratio`` times the one before."""
    lengths = ratio ** np.arange(count)
    shares = np.concatenate(([0.0], np.cumsum(lengths))) / lengths.sum()
    return np.asarray(start + (end - start) * shares, dtype=np.float64)
