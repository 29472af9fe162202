"""A section that holds its pith (boxed heart): solved by finite elements, since no stress-free shape exists.

Equal strains only scale the section, so the answer is a·x + (b − a)·U(x) with one solution U that hangs on
nothing but the section's proportions, the place of the pith and the stiffness ratios. Small strains.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import ArrayLike

from movement_core.errors import InputError
from movement_core.section.elastic import (
    TYPICAL,
    CrossStiffness,
    Elastic,
    Grid,
    solve,
    strain_turn,
    stretches,
)
from movement_core.section.field import Floats, numbers, strains
from movement_core.wording import phrase, say

WARNING = phrase(
    "the section holds its pith: it cannot stay free of stress and will check from the pith "
    "outward; its shape is elastic, uncracked, by finite elements"
)


@dataclass(frozen=True)
class BoxedHeart:
    """The solved section: one elastic answer for any pair of strains."""

    width_mm: float
    thickness_mm: float
    pith_mm: tuple[float, float]
    stiffness: CrossStiffness
    unit: Elastic  # tangential − radial strain of 1, radial strain 0

    def moved(self, points_mm: ArrayLike, radial_strain: ArrayLike, tangential_strain: ArrayLike) -> Floats:
        """Where points (N, 2) go, mm: (…, N, 2) for strains (…); small strains, centre kept."""
        points = numbers(points_mm, phrase("points"), pairs=True)
        radial, tangential = (value[..., None, None] for value in strains(radial_strain, tangential_strain))
        return np.asarray(
            points * (1.0 + radial) + (tangential - radial) * self.unit.at(points)[0], dtype=np.float64
        )

    def stress_mpa(self, radial_strain: float, tangential_strain: float) -> tuple[Floats, Floats]:
        """Gauss points (M, 2) mm and stress there (M, 3) MPa: xx, yy, xy. Unbounded at the pith itself."""
        points = self.unit.grid.gauss_points().reshape(-1, 2)
        return points, (tangential_strain - radial_strain) * self.unit.stress[0].reshape(-1, 3)


def solve_boxed_heart(
    width_mm: float,
    thickness_mm: float,
    pith_mm: tuple[float, float],
    stiffness: CrossStiffness = TYPICAL,
    fineness: int = 1,
) -> BoxedHeart:
    """Solve a section that holds its pith.

    Parameters
    ----------
    width_mm, thickness_mm : size of the section, mm.
    pith_mm : strictly inside it, section frame, mm.
    stiffness : cross-grain moduli; their ratios decide the shape.
    fineness : multiplies the number of elements each way; 1 is within 0.5 % of the refined answer.

    Raises
    ------
    InputError : the pith is not inside: use free_shape, which is exact.
    """
    inside = abs(pith_mm[0]) < 0.5 * width_mm and abs(pith_mm[1]) < 0.5 * thickness_mm
    if not inside:
        raise InputError(
            say(
                "pith ({x:g}, {y:g}) mm is outside a section of {width_mm:g} × {thickness_mm:g} mm",
                x=pith_mm[0],
                y=pith_mm[1],
                width_mm=width_mm,
                thickness_mm=thickness_mm,
            ),
            allowed=say("a pith inside"),
            todo=say("use free_shape: it is exact there"),
        )
    return _solved(
        float(width_mm), float(thickness_mm), (float(pith_mm[0]), float(pith_mm[1])), stiffness, fineness
    )


@lru_cache(maxsize=64)
def _solved(
    width: float, thickness: float, pith: tuple[float, float], stiffness: CrossStiffness, fineness: int
) -> BoxedHeart:
    grid = Grid(_lines(width, pith[0], fineness), _lines(thickness, pith[1], fineness))
    offset = grid.gauss_points() - np.asarray(pith)
    turn = strain_turn(offset / np.linalg.norm(offset, axis=-1, keepdims=True))
    local = stiffness.matrix()
    section = np.swapaxes(turn, -1, -2) @ local @ turn
    # Tangential strain of 1 in section axes: the inverse turn of (0, 1, 0) is the tensor t⊗t.
    c, s = offset[..., 0], offset[..., 1]
    square = c * c + s * s
    tangential = np.stack((s * s / square, c * c / square, -2.0 * c * s / square), axis=-1)
    solved = solve(grid, section, tangential[None])
    return BoxedHeart(width, thickness, pith, stiffness, _without_rigid_motion(solved))


def _lines(size: float, pith: float, fineness: int) -> Floats:
    """Element lines finest at the pith, growing outward both ways."""
    ratio = 1.15 ** (1.0 / fineness)
    half, parts = 0.5 * size, []
    for end in (-half, half):
        share = abs(end - pith) / size
        count = round(fineness * (8 + 6 * share))
        parts.append(stretches(pith, end, count, ratio))
    return np.concatenate((parts[0][::-1], parts[1][1:]))


def _without_rigid_motion(solved: Elastic) -> Elastic:
    """The same answer with the section's centre left in place and its average turn taken out."""
    grid = solved.grid
    half = 0.5 * (grid.xs[-1] - grid.xs[0]), 0.5 * (grid.ys[-1] - grid.ys[0])
    corners = np.array([(-half[0], -half[1]), (half[0], -half[1]), (half[0], half[1]), (-half[0], half[1])])
    shift = solved.at(corners)[0]
    centre = shift.mean(axis=0)
    turn = (corners[:, 0] @ shift[:, 1] - corners[:, 1] @ shift[:, 0]) / (corners**2).sum()
    nodes = grid.nodes()
    rigid = np.stack((centre[0] - turn * nodes[..., 1], centre[1] + turn * nodes[..., 0]), axis=-1)
    return Elastic(grid, solved.displacement - rigid, solved.stress)
