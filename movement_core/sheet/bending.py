"""How a part bends out of shape, for a picture: displacement of its points per unit of what drives it.

A picture magnifies movement, so it wants movement that is linear in what drives it: each bend is a field over the
part's points times a course through the year. Width and thickness are left out; they are a plain stretch.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

from movement_core.section.board import Board

Floats = NDArray[np.float64]

STEP_MC = 1.0  # percent points of moisture, by which the field of the rings is differentiated
STEP_SHARE = 1e-3  # of the width or thickness, by which a bend is differentiated


class Bend(Protocol):
    """A bend of a part. ``amount`` (366,): what drives it on 365 days and today."""

    @property
    def amount(self) -> Floats: ...

    def field(self, points_mm: Floats) -> Floats:
        """(N, 3) displacement, mm, of points (N, 3) of the part's frame for an amount of 1."""
        ...


@dataclass(frozen=True, eq=False)
class RingBend:
    """Cup and diamonding from the rings; amount: points of moisture since the part was flat."""

    board: Board
    amount: Floats

    def field(self, points_mm: Floats) -> Floats:
        width, thickness = self.board.width_mm, self.board.thickness_mm
        half = np.array([[width / 2, 0.0], [-width / 2, 0.0], [0.0, thickness / 2], [0.0, -thickness / 2]])
        flat = np.concatenate([np.asarray(points_mm, dtype=np.float64)[:, :2], half])
        grown, shrunk = (self.board.moved(flat, step) for step in (STEP_MC, -STEP_MC))
        shift = (grown - shrunk) / (2 * STEP_MC)
        right, left, show, back = shift[-4:]
        # Taken off: how the whole goes, turns and stretches, so that both edges keep their places at mid-thickness.
        turn = (right[1] - left[1]) / width
        stretch = np.array([(right[0] - left[0]) / width, (show[1] - back[1]) / thickness])
        plain = (right + left) / 2 + flat * stretch + turn * np.column_stack([-flat[:, 1], flat[:, 0]])
        bent = np.zeros((len(points_mm), 3))
        bent[:, :2] = (shift - plain)[: len(points_mm)]
        return bent


@dataclass(frozen=True, eq=False)
class ArcBend:
    """A plain arc across the width, from one face being damper; amount: curvature, 1/mm, crown above 0."""

    width_mm: float
    amount: Floats

    def field(self, points_mm: Floats) -> Floats:
        x, y = points_mm[:, 0], points_mm[:, 1]
        return np.column_stack([x * y, self.width_mm**2 / 8 - x**2 / 2, np.zeros(len(x))])


@dataclass(frozen=True, eq=False)
class TwistBend:
    """Twist along the grain; amount: turn of the far end against the near end, rad, width toward thickness."""

    length_mm: float
    amount: Floats

    def field(self, points_mm: Floats) -> Floats:
        x, y, along = points_mm[:, 0], points_mm[:, 1], points_mm[:, 2] / self.length_mm
        return np.column_stack([-y * along, x * along, np.zeros(len(x))])


def normals_field(bend: Bend, points_mm: Floats, normals: Floats, size_mm: Floats) -> Floats:
    """(N, 3) change of unit normals (N, 3) at points (N, 3) for an amount of 1: −(∇u)ᵀ n, by differences.

    size_mm : (3,) of the part along its axes.
    """
    change = np.zeros_like(normals)
    for axis in range(3):
        step = np.zeros(3)
        step[axis] = STEP_SHARE * size_mm[axis]
        inward = np.where(points_mm[:, axis] > 0, -1.0, 1.0)[:, None]  # a point of the board still
        slope = inward * (bend.field(points_mm + inward * step) - bend.field(points_mm)) / step[axis]
        change[:, axis] = -np.einsum("nk,nk->n", slope, normals)
    return change
