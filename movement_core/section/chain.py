"""Boards as links of a chain: what each hands on from edge to edge, and the line that a row of them makes.

Each glue line carries on the mean direction of the two edges it joins: the direction that a bending moment
would feel, 12/t³ ∫ y·edge(y) dy, so that what is left over is in balance with itself and dies out within
about a thickness.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.section.board import Board
from movement_core.section.field import Floats, from_chord

Complex = NDArray[np.complex128]
_HEIGHTS, _HEIGHT_WEIGHTS = np.polynomial.legendre.leggauss(8)
_SIDE_STEPS = np.array([0.0, 0.001, 0.002])  # in widths: for the slope of the surface at a board's edges
_SIDE_SLOPE = np.array([-1.5, 2.0, -0.5]) / 0.001


@dataclass(frozen=True)
class Segment:
    """A board as a link of the chain, seen from its left edge; (…) are the dimensions of the change.

    Complex numbers are x + iy, mm; a direction of 1 is an edge that stands upright.
    """

    surface: Complex  # (…, N) mid-thickness, from its left end to its right end
    turn: Complex  # (…) unit: direction of the right edge as seen from the left one
    slope_left: Floats  # (…) rad, surface over the left edge's normal, at the left edge
    slope_right: Floats  # (…) rad, surface over the right edge's normal, at the right edge
    height_left: Floats  # (…, 2) back and show corners above mid-thickness, along the left edge, mm
    height_right: Floats  # (…, 2) the same at the right edge


def segment(board: Board, mc_change: ArrayLike, samples: int) -> Segment:
    """The link a board makes, for changes of MC (…), with ``samples`` evenly spaced points."""
    w, t = board.width_mm, board.thickness_mm
    heights = np.concatenate(([-1.0], _HEIGHTS, [1.0])) * 0.5 * t
    edge = np.stack((np.full(len(heights), 0.5 * w), heights), axis=-1)
    line = np.zeros((samples, 2))
    line[:, 0] = np.linspace(-0.5 * w, 0.5 * w, samples)
    side = np.zeros((3, 2))
    side[:, 0] = 0.5 * w - w * _SIDE_STEPS
    mirror = np.array([-1.0, 1.0])
    parts = (edge * mirror, edge, side * mirror, side, line)
    moved = board.moved(np.concatenate(parts), mc_change)
    flat = moved[..., 0] + 1j * moved[..., 1]
    left, right, side_l, side_r, surface = np.split(flat, np.cumsum([len(p) for p in parts])[:-1], axis=-1)
    upright_l, upright_r = _upright(left), _upright(right)
    return Segment(
        surface=(surface - surface[..., :1]) / upright_l[..., None],
        turn=upright_r / upright_l,
        slope_left=np.angle((side_l @ _SIDE_SLOPE) / upright_l),
        slope_right=np.angle(-(side_r @ _SIDE_SLOPE) / upright_r),
        height_left=((left[..., [0, -1]] - surface[..., :1]) / upright_l[..., None]).imag,
        height_right=((right[..., [0, -1]] - surface[..., -1:]) / upright_r[..., None]).imag,
    )


def _upright(edge: Complex) -> Complex:
    """Direction (…) of an edge (…, heights) as a bending moment feels it; unit, 1 is upright."""
    across = edge[..., 1:-1] @ (_HEIGHTS * _HEIGHT_WEIGHTS)
    return np.asarray(across / np.abs(across) / 1j, dtype=np.complex128)


def chain(boards: Sequence[Board], changes: Floats, steps: Sequence[int]) -> tuple[Floats, list[Segment]]:
    """The line of glued boards for changes (…, n), ``steps`` a board: (…, N, 2) from its chord, and the links."""
    links = [segment(board, changes[..., i], step + 1) for i, (board, step) in enumerate(zip(boards, steps))]
    place, direction = np.zeros(links[0].turn.shape, complex), np.ones((), complex)
    parts: list[Complex] = []
    for link in links:
        points = place[..., None] + direction[..., None] * link.surface
        parts.append(points if not parts else points[..., 1:])
        place, direction = points[..., -1], direction * link.turn
    line = np.concatenate(parts, axis=-1)
    return from_chord(np.stack((line.real, line.imag), axis=-1)), links
