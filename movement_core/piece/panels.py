"""Edge-glued panels among the parts of a piece, and their shape through the year.

Boards whose grain and faces run the same way, and whose long edges meet, are taken as one glued panel: from
geometry alone, so that a maker who drew the boards one by one gets the whole top. What the panel does needs the
pith of every board; without it the width is still the sum of the boards.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import months_from_days
from movement_core.errors import HeartsideError
from movement_core.piece.part import Part
from movement_core.piece.solve import SolvedPart, SolvedPiece
from movement_core.section.board import Board
from movement_core.section.panel import Panel, PanelShape

Floats = NDArray[np.float64]

EDGE_GAP_MM = 0.2  # edges further apart are not glued
LEVEL_SHARE = 0.25  # boards offset by more than this share of their thickness lie on different levels
PARALLEL = 0.9999  # cosine: directions within 0.8° run the same way
ALONG_SHARE = 0.5  # edges meet along at least half of the shorter board


@dataclass(frozen=True, eq=False)
class GluedPanel:
    """Boards that form a panel, from left to right in the frame of the first.

    Attributes
    ----------
    boards : the solved boards in that order.
    over, turned : for each, whether its show face is the panel's back, and whether its grain runs the other way.
    axes : (3, 3) rows width, thickness (toward the show face), grain of the panel in the global frame.
    panel : the panel for the section room, or None where a board's pith or species is not known; ``why_not`` tells.
    shape : its shape in the twelve months and today, (13, …), or None.
    """

    boards: tuple[SolvedPart, ...]
    over: tuple[bool, ...]
    turned: tuple[bool, ...]
    axes: Floats
    panel: Panel | None
    shape: PanelShape | None
    why_not: str = ""

    @property
    def name(self) -> str:
        """First and last board's names."""
        return f"{self.boards[0].part.name} … {self.boards[-1].part.name}"

    @property
    def width_mm(self) -> float:
        """Width as drawn."""
        return sum(board.part.frame.width_mm for board in self.boards)


def glued_panels(piece: SolvedPiece) -> tuple[GluedPanel, ...]:
    """Every panel of two boards or more."""
    wooden = [solved for solved in piece.parts if _is_board(solved.part)]
    groups = _groups([solved.part for solved in wooden])
    return tuple(_panel([wooden[index] for index in group]) for group in groups)


def _is_board(part: Part) -> bool:
    known = part.frame.grain.known and part.moves
    return known and part.frame.length_mm > part.frame.width_mm > part.frame.thickness_mm


def _groups(parts: Sequence[Part]) -> list[list[int]]:
    """Connected boards, each group of two or more sorted across its first board's width."""
    neighbours: dict[int, set[int]] = {index: set() for index in range(len(parts))}
    for one in range(len(parts)):
        for other in range(one + 1, len(parts)):
            if _edge_to_edge(parts[one], parts[other]):
                neighbours[one].add(other)
                neighbours[other].add(one)
    groups, seen = [], set()
    for start in neighbours:
        if start in seen or not neighbours[start]:
            continue
        group, waiting = [], [start]
        while waiting:
            index = waiting.pop()
            if index in seen:
                continue
            seen.add(index)
            group.append(index)
            waiting += neighbours[index] - seen
        across = parts[group[0]].frame.axes[0]
        groups.append(sorted(group, key=lambda index: float(parts[index].frame.centre @ across)))
    return groups


def _edge_to_edge(one: Part, other: Part) -> bool:
    a, b = one.frame, other.frame
    if abs(a.axes[2] @ b.axes[2]) < PARALLEL or abs(a.axes[1] @ b.axes[1]) < PARALLEL:
        return False
    across, through, along = a.axes @ (b.centre - a.centre)
    gap = abs(across) - (a.width_mm + b.width_mm) / 2
    level = abs(through) <= LEVEL_SHARE * min(a.thickness_mm, b.thickness_mm)
    shared = (a.length_mm + b.length_mm) / 2 - abs(along)
    meet = shared >= ALONG_SHARE * min(a.length_mm, b.length_mm)
    return bool(abs(gap) <= EDGE_GAP_MM and level and meet)


def _panel(boards: list[SolvedPart]) -> GluedPanel:
    axes = boards[0].part.frame.axes
    over = tuple(bool(board.part.frame.axes[1] @ axes[1] < 0) for board in boards)
    turned = tuple(bool(board.part.frame.axes[2] @ axes[2] < 0) for board in boards)
    unknown = [board.part.name for board in boards if not _has_pith(board)]
    if unknown:
        why = f"the pith is not known of {', '.join(unknown)}"
        return GluedPanel(tuple(boards), over, turned, axes, None, None, why)
    try:
        panel = Panel([_board(board, axes) for board in boards])
        shape = panel.shape(_changes(boards), each_board=True)
    except HeartsideError as error:
        return GluedPanel(tuple(boards), over, turned, axes, None, None, str(error))
    return GluedPanel(tuple(boards), over, turned, axes, panel, shape)


def _has_pith(solved: SolvedPart) -> bool:
    rings = solved.part.rings.value
    moisture = solved.part.flattened_mc.known and solved.mc_days is not None
    return rings is not None and rings.pith_mm is not None and moisture


def _board(solved: SolvedPart, axes: Floats) -> Board:
    part = solved.part
    rings, species = part.rings.value, part.species.value
    assert rings is not None and rings.pith_mm is not None and species is not None  # or the pith is not known
    own = part.frame.axes
    x, y = rings.pith_mm
    pith = (x * float(np.sign(own[0] @ axes[0])), y * float(np.sign(own[1] @ axes[1])))
    return Board(species, part.frame.width_mm, part.frame.thickness_mm, pith, name=part.name)


def _changes(boards: Sequence[SolvedPart]) -> Floats:
    """(13, n) points of moisture since each board was made flat: the twelve months, and today."""
    columns = []
    for solved in boards:
        assert solved.mc_days is not None and solved.today_mc is not None  # checked by _has_pith
        flattened = solved.part.flattened_mc.value
        assert flattened is not None
        columns.append(np.append(months_from_days(solved.mc_days), solved.today_mc) - flattened)
    return np.stack(columns, axis=-1)
