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
from movement_core.piece.course import Course, Reading
from movement_core.piece.edges import boards_edge_to_edge
from movement_core.piece.solve import SolvedPart, SolvedPiece
from movement_core.section.board import Board
from movement_core.section.panel import Panel, PanelShape
from movement_core.wording import say

Floats = NDArray[np.float64]


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

    @property
    def drawn_steps_mm(self) -> Floats:
        """Steps at the glue lines before anything moves, show faces then back faces: boards of unequal thickness."""
        assert self.panel is not None  # asked only where there is a shape
        flat = self.panel.shape(0.0, settle=False)  # nothing moves, so nothing has to settle
        return np.concatenate([flat.step_show_mm, flat.step_back_mm])

    @property
    def width(self) -> Course | None:
        """Width through the year, the sum of the boards; None where one of them is not known."""
        courses = [board.width for board in self.boards if board.width is not None]
        if len(courses) < len(self.boards):
            return None
        values = [course.days_mm for course in courses if course.days_mm is not None]
        today = [course.today for course in courses]
        known = len(values) == len(courses)
        return Course(
            self.width_mm,
            np.sum(values, axis=0) if known else None,
            np.sum([course.least_mm for course in courses], axis=0),
            np.sum([course.most_mm for course in courses], axis=0),
            Reading(
                sum(reading.value or 0.0 for reading in today) if known else None,
                sum(reading.least for reading in today),
                sum(reading.most for reading in today),
            ),
        )


def glued_panels(piece: SolvedPiece) -> tuple[GluedPanel, ...]:
    """Every panel of two boards or more."""
    groups = boards_edge_to_edge([solved.part for solved in piece.parts])
    known: dict[tuple[object, ...], PanelShape] = {}
    return tuple(_panel([piece.parts[index] for index in group], known) for group in groups)


def _panel(boards: list[SolvedPart], known: dict[tuple[object, ...], PanelShape]) -> GluedPanel:
    """The panel of boards from left to right; ``known`` holds the shapes of those already worked out."""
    axes = boards[0].part.frame.axes
    over = tuple(bool(board.part.frame.axes[1] @ axes[1] < 0) for board in boards)
    turned = tuple(bool(board.part.frame.axes[2] @ axes[2] < 0) for board in boards)
    unknown = [board.part.name for board in boards if not _has_pith(board)]
    if unknown:
        why = say("the pith or the moisture is not known of {names}", names=", ".join(unknown))
        return GluedPanel(tuple(boards), over, turned, axes, None, None, why)
    alike = same_woods(boards, axes)
    try:
        panel = Panel([board_as_laid(board, axes) for board in boards])
        if alike not in known:
            known[alike] = panel.shape(_changes(boards), each_board=True)
    except HeartsideError as error:
        return GluedPanel(tuple(boards), over, turned, axes, None, None, str(error))
    return GluedPanel(tuple(boards), over, turned, axes, panel, known[alike])


def same_woods(boards: Sequence[SolvedPart], axes: Floats) -> tuple[object, ...]:
    """All that the free shape of boards laid side by side hangs on, but their names and place.

    Parts of the same wood share their moistures (``solve_piece``), so these count by identity; sizes count to a
    millionth of a millimetre.
    """
    found: list[object] = []
    for solved in boards:
        part, own = solved.part, solved.part.frame.axes
        over, side = bool(own[1] @ axes[1] < 0), bool(own[0] @ axes[0] < 0)
        size = tuple(np.round(part.frame.size_mm, 6).tolist())
        woods = (id(part.species.value), part.rings.value, part.figure.value, size, over, side)
        found.append((*woods, id(solved.mc_days), id(solved.width), solved.today_mc, part.flattened_mc.value))
    return tuple(found)


def _has_pith(solved: SolvedPart) -> bool:
    rings = solved.part.rings.value
    moisture = solved.part.flattened_mc.known and solved.mc_days is not None
    return rings is not None and rings.pith_mm is not None and moisture


def board_as_laid(solved: SolvedPart, axes: Floats, pith_mm: tuple[float, float] | None = None) -> Board:
    """A board for the section room, as it lies in a panel.

    Parameters
    ----------
    solved : the board. axes : (3, 3) rows width, thickness, grain of the panel in the global frame.
    pith_mm : its pith in its own section frame, where not its own but a possible one is asked about.
    """
    part = solved.part
    rings, species = part.rings.value, part.species.value
    assert rings is not None and species is not None  # callers have looked
    pith = pith_mm or rings.pith_mm
    assert pith is not None
    own = part.frame.axes
    x, y = pith
    laid = (x * float(np.sign(own[0] @ axes[0])), y * float(np.sign(own[1] @ axes[1])))
    return Board(species, part.frame.width_mm, part.frame.thickness_mm, laid, name=part.name)


def _changes(boards: Sequence[SolvedPart]) -> Floats:
    """(13, n) points of moisture since each board was made flat: the twelve months, and today."""
    columns = []
    for solved in boards:
        assert solved.mc_days is not None and solved.today_mc is not None  # checked by _has_pith
        flattened = solved.part.flattened_mc.value
        assert flattened is not None
        columns.append(np.append(months_from_days(solved.mc_days), solved.today_mc) - flattened)
    return np.stack(columns, axis=-1)
