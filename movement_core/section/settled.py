"""What stiffness adds to a chained panel: how mismatched edges settle, and the stress left at the glue lines.

The chain of exact free shapes knows no stiffness. Where neighbouring boards disagree (rings, wood, moisture)
their edges do not fit, and what is left over is settled elastically. That part is small, so it is solved by
small-strain finite elements of the whole panel and added to the exact chain: finite strain stays exact.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from movement_core.section.board import Board
from movement_core.section.chain import chain
from movement_core.section.elastic import CrossStiffness, Elastic, Grid, solve, strain_turn
from movement_core.section.field import Floats, free_shape
from movement_core.wording import say

SAME_THICKNESS = 0.01  # greatest relative difference that the rectangular grid may pass over
INNER = 0.8  # the share of a glue line, about its middle, over which stresses are read
_PROBE = 1e-3  # points of MC: small enough for central differences of the chain to be exact to 1e-8


def why_not_settled(boards: Sequence[Board]) -> str:
    """Why these boards cannot be settled, in words; empty when they can."""
    thick = [board.thickness_mm for board in boards]
    if max(thick) > min(thick) * (1.0 + SAME_THICKNESS):
        return say("thicknesses from {least:g} to {most:g} mm", least=min(thick), most=max(thick))
    for i, board in enumerate(boards, 1):
        if board.holds_pith:
            return say("{name} holds its pith", name=board.name or say("board {number}", number=i))
    return ""


class Settling:
    """The elastic answer of a panel per point of MC of each of its n boards; linear, solved once.

    Parameters
    ----------
    boards : of one thickness, each with its pith outside (``why_not_settled`` says so).
    stiffness : one a board.
    fineness : multiplies the elements each way; 1 gives the profile within 0.5 % of its range.
    """

    def __init__(
        self, boards: Sequence[Board], stiffness: Sequence[CrossStiffness], fineness: int = 1
    ) -> None:
        self.boards = tuple(boards)
        self.offsets = np.array([board.mc_offset for board in boards])
        widths = np.array([board.width_mm for board in boards])
        middles = np.cumsum(widths) - 0.5 * widths - 0.5 * widths.sum()
        self.middles = np.stack((middles, np.zeros_like(middles)), axis=-1)
        self._known: dict[tuple[int, ...], Floats] = {}

        lines = [_board_lines(board, fineness) for board in boards]
        starts = middles - 0.5 * widths
        xs = np.concatenate([starts[:1], *(start + line[1:] for start, line in zip(starts, lines))])
        self.owner = np.repeat(
            np.arange(len(boards)), [len(line) - 1 for line in lines]
        )  # of element columns
        self.grid = Grid(xs, _through_lines(boards, fineness))
        # Each board would take its own free shape; the elements' own strain of it is used, not the exact one, so
        # that a board which fits its neighbours (or has none) settles by exactly nothing on any mesh.
        nodes = self.grid.nodes()
        self.free = np.stack([self._free_move(i, nodes) for i in range(len(boards))])
        mine = self.owner == np.arange(len(boards))[:, None]
        crumbs = self.grid.strains(self.free) * mine[:, :, None, None, None]
        offset = (
            self.grid.gauss_points() - (self.middles + [b.pith_mm for b in boards])[self.owner][:, None, None]
        )
        turn = strain_turn(offset / np.linalg.norm(offset, axis=-1, keepdims=True))
        local = np.stack([one.matrix() for one in stiffness])[self.owner][:, None, None]
        self.solved: Elastic = solve(self.grid, np.swapaxes(turn, -1, -2) @ local @ turn, crumbs)

    def _free_move(self, index: int, points: Floats) -> Floats:
        """Displacement (…, 2) per point of MC that the board alone would give points (…, 2) of the panel."""
        board = self.boards[index]
        wood, pith = board.species, np.array(board.pith_mm)
        local = points - self.middles[index]
        step = _PROBE / max(wood.radial_coefficient, wood.tangential_coefficient, 1e-9) * 1e-3
        flat = local.reshape(-1, 1, 2)  # one by one: points beyond the board may lie all around its pith
        ends = [
            free_shape(
                flat, pith, sign * step * wood.radial_coefficient, sign * step * wood.tangential_coefficient
            )
            for sign in (1.0, -1.0)
        ]
        return np.asarray((ends[0] - ends[1]).reshape(points.shape) / (2.0 * step), dtype=np.float64)

    def shift(self, changes: Floats, steps: Sequence[int]) -> Floats:
        """How far settling moves the chained profile (…, N, 2), mm, for changes (…, n)."""
        key = tuple(steps)
        if key not in self._known:
            self._known[key] = self._per_point(key)
        return np.asarray(np.tensordot(changes + self.offsets, self._known[key], axes=1), dtype=np.float64)

    def _per_point(self, steps: tuple[int, ...]) -> Floats:
        """(n, N, 2): elastic profile less chained profile, per point of MC, both measured from the chord."""
        n = len(self.boards)
        probe = np.stack((np.eye(n), -np.eye(n))) * _PROBE - self.offsets
        both, _ = chain(self.boards, probe, steps)
        chained = (both[0] - both[1]) / (2.0 * _PROBE)
        line, _ = chain(self.boards, -self.offsets, steps)
        moved = self.solved.at(line)
        # between the nodes the boards keep their exact shape; only what settling adds is interpolated
        column = np.clip(np.searchsorted(self.grid.xs, line[:, 0], side="right") - 1, 0, len(self.owner) - 1)
        for i in range(n):
            here = self.owner[column] == i
            own = self._free_move(i, line[here])
            moved[i, here] += own - self.grid.interpolated(self.free[i : i + 1], line[here])[0]
        ends = moved[:, [0, -1], :]
        share = (line[:, 0] - line[0, 0]) / (line[-1, 0] - line[0, 0])
        tilt = ends[:, :1, 1] + share * (ends[:, 1:, 1] - ends[:, :1, 1])
        elastic = np.stack(
            (moved[..., 0] - ends[..., 0].mean(axis=1)[:, None], moved[..., 1] - tilt), axis=-1
        )
        return np.asarray(elastic - chained, dtype=np.float64)

    def glue_stress(self, changes: Floats) -> tuple[Floats, Floats]:
        """Greatest tension and shear (…, n−1), MPa, over the inner part of each glue line."""
        return _glue_stress(self.boards, self.solved, changes + self.offsets)


def _board_lines(board: Board, fineness: int) -> Floats:
    """Element lines across a board from 0 to its width: fine at both edges and near the pith."""
    w, t = board.width_mm, board.thickness_mm
    x = np.linspace(0.0, w, 801)
    to_pith = np.hypot(x - 0.5 * w - board.pith_mm[0], max(0.0, abs(board.pith_mm[1]) - 0.5 * t))
    size = np.minimum(t / 8.0 + 0.4 * np.minimum(x, w - x), np.maximum(0.6 * to_pith, t / 40.0))
    size = np.minimum(size, 0.15 * w)
    elements = np.concatenate(([0.0], np.cumsum(0.5 * (1.0 / size[1:] + 1.0 / size[:-1]) * np.diff(x))))
    count = int(np.ceil(elements[-1] * fineness))
    return np.interp(np.linspace(0.0, elements[-1], count + 1), elements, x)


def _through_lines(boards: Sequence[Board], fineness: int) -> Floats:
    """Element lines through the thickness: more of them when a pith lies close to a face."""
    thickness = float(np.mean([board.thickness_mm for board in boards]))
    nearest = min(
        np.hypot(
            max(0.0, abs(board.pith_mm[0]) - 0.5 * board.width_mm),
            max(0.0, abs(board.pith_mm[1]) - 0.5 * board.thickness_mm),
        )
        for board in boards
    )
    count = int(np.clip(np.ceil(thickness / max(nearest, 1e-3 * thickness)), 6, 14)) * fineness
    return np.linspace(-0.5, 0.5, count + 1) * thickness


def _glue_stress(boards: Sequence[Board], solved: Elastic, change: Floats) -> tuple[Floats, Floats]:
    """Greatest tension and shear (…, n−1) over the inner part of each glue line: mean of its two sides."""
    grid = solved.grid
    points = grid.gauss_points()
    inner = np.abs(points[0, :, 0:3, 1]) <= 0.5 * INNER * (grid.ys[-1] - grid.ys[0])
    lines = np.cumsum([board.width_mm for board in boards])[:-1] - 0.5 * sum(b.width_mm for b in boards)
    pulls, shears = [], []
    for line in lines:
        right = int(np.argmin(np.abs(grid.xs - line)))
        # Gauss points are three by three, x first: the last three of the left element, the first of the right.
        sides = 0.5 * (solved.stress[:, right - 1, :, 6:9] + solved.stress[:, right, :, 0:3])[:, inner]
        both = np.tensordot(change, sides, axes=1)  # (…, heights, 3)
        pulls.append(both[..., 0].max(axis=-1))
        shears.append(np.abs(both[..., 2]).max(axis=-1))
    none = np.zeros((*change.shape[:-1], 0))
    return (np.stack(pulls, axis=-1), np.stack(shears, axis=-1)) if pulls else (none, none)
