"""The gaps to set today, and what each becomes: for a meter's reading with its doubt, rounded the safe way."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from movement_core.piece.contact.across import gap_to_leave
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece

FIT_MM = 6.0  # gaps drawn wider than this are rooms, not fits (own judgement)
MOVES_MM = 0.05  # gaps that change by less over the year are set as drawn (own judgement)
STEP_MM = 0.1  # what a maker reads off feeler gauges and rules


@dataclass(frozen=True)
class GapToday:
    """One gap to set.

    Attributes
    ----------
    parts, keys : the two parts it lies between. works : round a door, a drawer or the like.
    drawn_mm : in the model. set_mm : to leave today, rounded up; least_mm, most_mm : what it becomes then, with their
        months 0–11.
    """

    parts: tuple[str, str]
    keys: tuple[str, str]
    works: bool
    drawn_mm: float
    set_mm: float
    least_mm: float
    least_month: int
    most_mm: float
    most_month: int

    @property
    def swing_mm(self) -> float:
        return self.most_mm - self.least_mm


def rounded_up(size_mm: float, step_mm: float) -> float:
    """The next whole step that is not less."""
    return math.ceil(size_mm / step_mm - 1e-6) * step_mm


def gaps_today(pieces: Sequence[WholePiece], step_mm: float = STEP_MM) -> tuple[GapToday, ...]:
    """Every gap that moves and is a fit, those of doors and drawers first, then by how much they move.

    Parameters
    ----------
    pieces : the piece today, and where its moisture is doubtful the same at the least and at the most that it may be;
        a gap is set so that it holds in all of them.
    step_mm : what gaps are set in, an inch's 64th for example.
    """
    whole, least = pieces[0], limit("gap left")
    found = []
    for number, year in enumerate(whole.gaps):
        gap = year.gap
        moves = year.most_mm - year.least_mm - (gap.most_mm - gap.least_mm)
        if moves < MOVES_MM or gap.least_mm > FIT_MM:
            continue
        leaves = [gap_to_leave(one.gaps[number], least) for one in pieces]
        wanted = rounded_up(max(one.set_mm for one in leaves), step_mm)
        tight = min(leaves, key=lambda one: wanted - one.set_mm + one.least_mm)
        wide = max(leaves, key=lambda one: wanted - one.set_mm + one.most_mm)
        ends = gap.first, gap.second
        found.append(
            GapToday(
                (whole.name(ends[0]), whole.name(ends[1])),
                (whole.parts[ends[0]].part.key, whole.parts[ends[1]].part.key),
                whole.is_between_groups(*ends),
                gap.least_mm,
                wanted,
                wanted - tight.set_mm + tight.least_mm,
                tight.least_month,
                wanted - wide.set_mm + wide.most_mm,
                wide.most_month,
            )
        )
    return tuple(sorted(found, key=lambda one: (not one.works, -one.swing_mm)))


def as_table(
    gaps: Sequence[GapToday],
    headings: Sequence[str],
    size: Callable[[float], str],
    months: Sequence[str],
    separator: str = "",
    step_mm: float = STEP_MM,
) -> str:
    """The gaps as text in columns, or with a separator as CSV.

    Parameters
    ----------
    headings : of the seven columns of ``cells``.
    size : writes a length. months : names of the twelve. separator : of CSV; "" makes columns for reading.
    step_mm : as for ``cells``.
    """
    rows = [tuple(headings), *(cells(gap, size, months, step_mm) for gap in gaps)]
    if separator:
        return "".join(separator.join(_quoted(cell, separator) for cell in row) + "\r\n" for row in rows)
    widths = [max(len(row[column]) for row in rows) for column in range(len(headings))]
    return "\n".join(
        "  ".join(cell.ljust(width) for cell, width in zip(row, widths)).rstrip() for row in rows
    )


def cells(
    gap: GapToday, size: Callable[[float], str], months: Sequence[str], step_mm: float = STEP_MM
) -> tuple[str, ...]:
    """One row: between, as drawn, set today, least, in, most, in; in whole steps, the least down and the most up."""
    return (
        " | ".join(gap.parts),
        size(gap.drawn_mm),
        size(gap.set_mm),
        size(-rounded_up(-gap.least_mm, step_mm) + 0.0),
        months[gap.least_month],
        size(rounded_up(gap.most_mm, step_mm)),
        months[gap.most_month],
    )


def _quoted(cell: str, separator: str) -> str:
    if cell[:1] in "=+-@\t" and not cell[1:2].isdigit():
        cell = "'" + cell  # no name of a part becomes a formula of a spreadsheet
    return (
        '"' + cell.replace('"', '""') + '"' if any(c in cell for c in (separator, '"', "\n", "\r")) else cell
    )
