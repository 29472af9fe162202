"""The rings on a part's ends and an arrow along its grain, as lines in the part's frame, for a picture.

What is tagged is drawn in full, what was inferred is broken into dashes; what is missing is not drawn.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.facts import TAGGED
from movement_core.piece.part import Part
from movement_core.section.board import holds_pith

Floats = NDArray[np.float64]
Lines = tuple[Floats, ...]

RINGS = 9  # at most so many across a section: a picture of how they run, not a count
APART_MM = 5.0  # … and no closer than this
STEPS = 48  # of an arc across the section
DASH = 5  # steps drawn, and as many left out
PROUD_MM = 0.4  # lines stand so far off the wood


@dataclass(frozen=True, eq=False)
class GrainMarks:
    """Polylines (K, 3) in the part's frame, and whether each of the two facts was told."""

    rings: Lines
    arrow: Lines
    rings_told: bool
    grain_told: bool


def grain_marks(part: Part, ends: tuple[Lines, Lines] | None = None) -> GrainMarks:
    """Marks of a part; none where its grain is not known.

    ends : outlines (K, 2) of its near and its far end in its section frame; None: the whole rectangle.
    """
    frame = part.frame
    told = part.frame.grain.origin == TAGGED, part.rings.origin == TAGGED
    if not frame.grain.known or not part.moves:
        return GrainMarks((), (), told[1], told[0])
    arrow = _arrow(frame.width_mm, frame.thickness_mm, frame.length_mm)
    rings = part.rings.value
    lines: list[Floats] = []
    if rings is not None:
        for sign, outline in zip((-1.0, 1.0), ends or ((), ())):
            at = rings.far_end if sign > 0 and rings.far_end is not None else rings
            flat = ring_lines(frame.width_mm, frame.thickness_mm, at.pith_mm, at.middle_angle_degrees)
            broken = rings.pith_mm is None or not told[1]
            height = sign * (frame.length_mm / 2 + PROUD_MM)
            for line in _inside(flat, outline, frame.width_mm, frame.thickness_mm):
                for piece in dashes(line) if broken else [line]:
                    lines.append(np.column_stack([piece, np.full(len(piece), height)]))
    shown = arrow if told[0] else (*dashes(arrow[0], 1), *arrow[1:])  # the head whole, or it is none
    return GrainMarks(tuple(lines), shown, told[1], told[0])


def ring_lines(
    width: float, thickness: float, pith: tuple[float, float] | None, angle_degrees: float
) -> list[Floats]:
    """Arcs (STEPS, 2) about the pith over a section; straight lines at the ring angle where the pith is unknown."""
    reach = np.hypot(width, thickness) / 2
    if pith is None:
        turn = np.radians(angle_degrees)
        along, across = np.array([np.cos(turn), np.sin(turn)]), np.array([-np.sin(turn), np.cos(turn)])
        steps = np.linspace(-reach, reach, STEPS)
        extent = (abs(across[0]) * width + abs(across[1]) * thickness) / 2
        offsets = np.linspace(-extent, extent, _count(2 * extent) + 2)[1:-1]
        return [offset * across + steps[:, None] * along for offset in offsets]
    corners = np.array([(x, y) for x in (-width / 2, width / 2) for y in (-thickness / 2, thickness / 2)])
    far = float(np.hypot(*(corners - pith).T).max())
    outside = np.maximum(np.abs(pith) - np.array([width, thickness]) / 2, 0.0)
    near = float(np.hypot(*outside))
    radii = np.linspace(near, far, _count(far - near) + 2)[1:-1]
    if holds_pith(width, thickness, pith):
        angles = np.linspace(0, 2 * np.pi, 2 * STEPS)
    else:
        middle = float(np.arctan2(-pith[1], -pith[0]))
        away = (np.arctan2(corners[:, 1] - pith[1], corners[:, 0] - pith[0]) - middle + np.pi) % (2 * np.pi)
        angles = np.linspace(middle + away.min() - np.pi, middle + away.max() - np.pi, 2 * STEPS)
    turned = np.column_stack([np.cos(angles), np.sin(angles)])
    return [np.asarray(pith) + radius * turned for radius in radii]


def _count(extent: float) -> int:
    return int(min(max(extent / APART_MM, 2), RINGS))


def dashes(line: Floats, step: int = DASH) -> list[Floats]:
    """Every other stretch of a line."""
    return [line[i : i + step + 1] for i in range(0, len(line) - 1, 2 * step)]


def _inside(lines: list[Floats], outline: Lines, width: float, thickness: float) -> list[Floats]:
    """The stretches of lines that lie on the end."""
    found = []
    for line in lines:
        if len(outline):
            keep = _on_outline(line, outline)
        else:
            keep = (np.abs(line[:, 0]) <= width / 2) & (np.abs(line[:, 1]) <= thickness / 2)
        edges = np.flatnonzero(np.diff(np.concatenate([[0], keep.astype(int), [0]])))
        found += [line[a:b] for a, b in edges.reshape(-1, 2) if b - a >= 2]
    return found


def _on_outline(points: Floats, outline: Lines) -> NDArray[np.bool_]:
    """Which points (N, 2) lie within loops, holes counting out: a ray to the right crosses an odd number of times."""
    odd = np.zeros(len(points), dtype=bool)
    x, y = points[:, 0, None], points[:, 1, None]
    for loop in outline:
        start, end = loop, np.roll(loop, -1, axis=0)
        spans = (start[:, 1] > y) != (end[:, 1] > y)
        rise = np.where(spans, end[:, 1] - start[:, 1], 1.0)
        at = start[:, 0] + (y - start[:, 1]) / rise * (end[:, 0] - start[:, 0])
        odd ^= ((spans & (x < at)).sum(axis=1) % 2).astype(bool)
    return odd


def _arrow(width: float, thickness: float, length: float) -> Lines:
    """A shaft and two barbs on the show face, pointing along the grain."""
    half = min(0.25 * length, 1.1 * width)
    barb = min(0.14 * width, 0.3 * half)
    high = thickness / 2 + PROUD_MM
    shaft = np.linspace(-half, half, 9)
    shaft_line = np.column_stack([np.zeros(9), np.full(9, high), shaft])
    barbs = [
        np.column_stack(
            [np.linspace(0, side * barb, 3), np.full(3, high), np.linspace(half, half - 1.8 * barb, 3)]
        )
        for side in (-1, 1)
    ]
    return shaft_line, *barbs
