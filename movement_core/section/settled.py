"""What stiffness adds to a chained panel: how mismatched edges settle, and the stress left at the glue lines.

The chain of exact free shapes knows no stiffness. Where neighbouring boards disagree (rings, wood, moisture)
their edges do not fit, and what is left over is settled elastically. That part is small, so it is solved by
small-strain finite elements of the whole panel and added to the exact chain: finite strain stays exact.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from movement_core.errors import InputError
from movement_core.section.board import Board
from movement_core.section.elastic import CrossStiffness, Elastic, Grid, solve, strain_turn
from movement_core.section.field import Floats, numbers
from movement_core.section.panel import Panel

TYPICAL = CrossStiffness()
SAME_THICKNESS = 0.01  # greatest relative difference that the rectangular grid may pass over
INNER = 0.8  # the share of a glue line, about its middle, over which stresses are read
_PROBE = 1e-3  # points of MC: small enough for central differences of the chain to be exact to 1e-8


@dataclass(frozen=True)
class SettledPanel:
    """A panel whose boards have settled against each other; (…) as the change, n boards.

    Stresses are elastic, across the glue lines, over their inner 80 % (at the faces they grow without bound in
    theory, and in wood they creep away within days): an upper bound of what the glue must carry, and a
    measure to compare arrangements by. A mean over a glue line is always zero: nothing holds the panel.
    """

    profile: Floats  # (…, N, 2) mm, as in PanelShape
    out_of_flat_mm: Floats  # (…)
    settled_mm: Floats  # (…) how far settling moved the profile, at most
    glue_tension_mpa: Floats  # (…, n−1) greatest pull across each glue line
    glue_shear_mpa: Floats  # (…, n−1) greatest shear along each glue line, in the plane of the section


def settle(
    panel: Panel,
    mc_change: ArrayLike,
    samples: int | None = None,
    *,
    stiffness: CrossStiffness | Sequence[CrossStiffness] = TYPICAL,
    each_board: bool = False,
    fineness: int = 1,
) -> SettledPanel:
    """The panel's profile with elastic settling, and the stress at its glue lines.

    Parameters
    ----------
    panel : boards of one thickness, each with its pith outside.
    mc_change, samples, each_board : as in ``Panel.shape``.
    stiffness : one for all boards, or one a board.
    fineness : multiplies the elements each way; 1 gives the profile within 0.5 % of its range.

    Raises
    ------
    InputError : thicknesses differ by more than 1 %, a board holds its pith, or stiffnesses do not match.
    """
    boards = panel.boards
    n = len(boards)
    each = [stiffness] * n if isinstance(stiffness, CrossStiffness) else list(stiffness)
    if len(each) != n:
        raise InputError(
            f"{len(each)} stiffnesses for {n} boards",
            where="panel",
            allowed=f"1 or {n}",
            todo="give one a board",
        )
    thick = [board.thickness_mm for board in boards]
    if max(thick) > min(thick) * (1.0 + SAME_THICKNESS):
        raise InputError(
            f"thicknesses from {min(thick):g} to {max(thick):g} mm", where="panel",
            allowed=f"within {SAME_THICKNESS:.0%} of each other for settling",
            todo="plane the panel first, or use Panel.shape, which takes them as they are",
        )  # fmt: skip
    for i, board in enumerate(boards, 1):
        if board.holds_pith:
            raise InputError(
                f"the section holds its pith at {board.pith_mm}", where=board.name or f"board {i}",
                allowed="pith outside the section", todo="use Panel.shape, which solves such a board alone",
            )  # fmt: skip
    shape = panel.shape(mc_change, samples, each_board=each_board)
    solved = _solve(panel, each, fineness)

    # Both per point of MC of each board, measured alike from the chord between the ends.
    probe = np.eye(n) * _PROBE - np.array([board.mc_offset for board in boards])
    back = -np.eye(n) * _PROBE - np.array([board.mc_offset for board in boards])
    both = panel.shape(np.stack((probe, back)), samples, each_board=True).profile
    chain = (both[0] - both[1]) / (2.0 * _PROBE)
    line = panel.shape(-np.array([board.mc_offset for board in boards]), samples, each_board=True).profile
    moved = solved.at(line)
    ends = moved[:, [0, -1], :]
    share = (line[:, 0] - line[0, 0]) / (line[-1, 0] - line[0, 0])
    tilt = ends[:, :1, 1] + share * (ends[:, 1:, 1] - ends[:, :1, 1])
    full = np.stack((moved[..., 0] - ends[..., 0].mean(axis=1)[:, None], moved[..., 1] - tilt), axis=-1)

    change = numbers(mc_change, "moisture change")
    change = change if each_board else change[..., None]
    change = np.broadcast_to(change, (*change.shape[:-1], n)) + [board.mc_offset for board in boards]
    shift = np.tensordot(change, full - chain, axes=1)
    profile = shape.profile + shift
    tension, shear = _glue_stress(panel, solved, change)
    return SettledPanel(
        profile=profile,
        out_of_flat_mm=np.ptp(profile[..., 1], axis=-1),
        settled_mm=np.abs(shift[..., 1]).max(axis=-1),
        glue_tension_mpa=tension,
        glue_shear_mpa=shear,
    )


def _solve(panel: Panel, stiffness: list[CrossStiffness], fineness: int) -> Elastic:
    """Displacements and stresses per point of MC of each board alone (n loads)."""
    xs, owner = [-0.5 * panel.width_mm], []
    for i, board in enumerate(panel.boards):
        lines = _board_lines(board, fineness)
        owner += [i] * (len(lines) - 1)
        xs += list(xs[-1] + lines[1:])
    grid = Grid(np.array(xs), _through_lines(panel, fineness))
    middles = np.cumsum([b.width_mm for b in panel.boards]) - 0.5 * np.array(
        [b.width_mm for b in panel.boards]
    )
    piths = np.array([b.pith_mm for b in panel.boards])
    piths[:, 0] += middles - 0.5 * panel.width_mm
    belongs = np.array(owner)
    offset = grid.gauss_points() - piths[belongs][:, None, None, :]
    turn = strain_turn(offset / np.linalg.norm(offset, axis=-1, keepdims=True))
    local = np.stack([one.matrix() for one in stiffness])[belongs][:, None, None]
    c, s = offset[..., 0], offset[..., 1]
    square = c * c + s * s
    radial = np.stack((c * c, s * s, 2.0 * c * s), axis=-1) / square[..., None]
    tangential = np.stack((s * s, c * c, -2.0 * c * s), axis=-1) / square[..., None]
    loads = []
    for i, board in enumerate(panel.boards):
        mine = (belongs == i)[:, None, None, None]
        wood = board.species
        loads.append(mine * (wood.radial_coefficient * radial + wood.tangential_coefficient * tangential))
    return solve(grid, np.swapaxes(turn, -1, -2) @ local @ turn, np.stack(loads))


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


def _through_lines(panel: Panel, fineness: int) -> Floats:
    """Element lines through the thickness: more of them when a pith lies close to a face."""
    thickness = float(np.mean([board.thickness_mm for board in panel.boards]))
    nearest = min(
        np.hypot(
            max(0.0, abs(board.pith_mm[0]) - 0.5 * board.width_mm),
            max(0.0, abs(board.pith_mm[1]) - 0.5 * board.thickness_mm),
        )
        for board in panel.boards
    )
    count = int(np.clip(np.ceil(thickness / max(nearest, 1e-3 * thickness)), 6, 14)) * fineness
    return np.linspace(-0.5, 0.5, count + 1) * thickness


def _glue_stress(panel: Panel, solved: Elastic, change: Floats) -> tuple[Floats, Floats]:
    """Greatest tension and shear (…, n−1) over the inner part of each glue line: mean of its two sides."""
    grid = solved.grid
    points = grid.gauss_points()
    inner = np.abs(points[0, :, 0:3, 1]) <= 0.5 * INNER * (grid.ys[-1] - grid.ys[0])
    lines = np.cumsum([board.width_mm for board in panel.boards])[:-1] - 0.5 * panel.width_mm
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
