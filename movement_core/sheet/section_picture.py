"""The section of a panel or a board on one day, its movement magnified: plain lines to be drawn."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.piece.part import Part
from movement_core.sheet.bending import Floats
from movement_core.sheet.grain_marks import ring_lines
from movement_core.sheet.motion import PieceMotion

STEPS = 24  # of a face across its board


@dataclass(frozen=True, eq=False)
class BoardSection:
    """One board: its outline (K, 2), rings (K, 2) each and whether they were told, middle line (STEPS + 1, 2)."""

    name: str
    outline: Floats
    rings: tuple[Floats, ...]
    told: bool
    middle: Floats


def section_picture(
    motion: PieceMotion, parts: Sequence[Part], indices: Sequence[int], day: int, factor: float
) -> tuple[BoardSection, ...]:
    """Sections of boards that lie together, in the frame of the first: x across, y toward its show face, mm.

    Parameters
    ----------
    motion : of the piece. parts : its parts in the same order.
    indices : of the boards, from left to right. day : 0 = 1 January. factor : that magnifies the movement.

    Returns
    -------
    One a board; the whole is moved so that its middle as drawn lies at 0, 0.
    """
    first = motion.parts[indices[0]]
    middle = np.mean([motion.parts[i].centre for i in indices], axis=0)
    matrices = motion.matrices(day, factor)
    carried = np.mean([motion.shift[i, day] for i in indices], axis=0) * factor
    found = []
    for index in indices:
        part = parts[index]
        width, thickness = part.frame.width_mm, part.frame.thickness_mm

        def placed(flat: Floats, index: int = index) -> Floats:
            points = np.column_stack([flat, np.zeros(len(flat))])
            bent = bent_points(motion, index, points, day, factor)
            moved = np.column_stack([bent, np.ones(len(bent))]) @ matrices[index][:, :3]
            return np.asarray((moved - middle - carried) @ first.axes[:2].T)

        x = np.linspace(-width / 2, width / 2, STEPS + 1)
        show = np.column_stack([x, np.full(len(x), thickness / 2)])
        back = show[::-1] * [1.0, -1.0]
        rings = part.rings.value
        lines: list[Floats] = []
        if rings is not None and part.frame.grain.known:
            for line in ring_lines(width, thickness, rings.pith_mm, rings.middle_angle_degrees):
                inside = (np.abs(line[:, 0]) <= width / 2) & (np.abs(line[:, 1]) <= thickness / 2)
                ends = np.flatnonzero(np.diff(np.concatenate([[0], inside.astype(int), [0]])))
                lines += [placed(line[a:b]) for a, b in ends.reshape(-1, 2) if b - a >= 2]
        told = part.rings.origin == "tagged" and rings is not None and rings.pith_mm is not None
        found.append(
            BoardSection(
                part.name,
                placed(np.concatenate([show, back])),
                tuple(lines),
                told,
                placed(np.column_stack([x, np.zeros(len(x))])),
            )
        )
    return tuple(found)


def bent_points(motion: PieceMotion, index: int, points: Floats, day: int, factor: float) -> Floats:
    """Points (N, 3) of a part's frame after its bends, before its matrix."""
    bends = motion.parts[index].bends
    if not bends:
        return points
    amounts, stretch = motion.bend_factors(index, day, factor)
    shift = np.sum([amount * bend.field(points) for amount, bend in zip(amounts, bends)], axis=0)
    return np.asarray(points + shift / stretch)


def out_of_flat_mm(boards: Sequence[BoardSection]) -> float:
    """Crown (+) or hollow (−) of the whole over the chord between its edges, as drawn, mm."""
    line = np.concatenate([board.middle for board in boards])
    line = line[np.argsort(line[:, 0])]
    chord = line[-1] - line[0]
    away = (chord[0] * (line - line[0])[:, 1] - chord[1] * (line - line[0])[:, 0]) / np.hypot(*chord)
    return float(away[np.abs(away).argmax()])
