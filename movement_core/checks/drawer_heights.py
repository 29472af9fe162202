"""Drawers whose sides and fronts swell in height in an opening that does not."""

from __future__ import annotations

from movement_core.checks.finding import JAMS, Finding
from movement_core.checks.told import is_wood, told
from movement_core.piece.contact.across import GapYear, gap_to_leave
from movement_core.piece.contact.found import FLAT
from movement_core.piece.limits import limit
from movement_core.piece.loose_groups import LooseGroup
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say

SAME_WAY = 0.9  # cosine: a gap opens across the grain of the part below it


def drawer_heights(whole: WholePiece) -> list[Finding]:
    """One finding for each drawer that swells against what is above it."""
    tightest: dict[LooseGroup, tuple[int, GapYear]] = {}
    for year in whole.gaps:
        at = drawer_height(whole, year)
        if at is None or year.least_mm >= limit("gap least") or year.least_mm >= year.gap.least_mm:
            continue
        group, board = at
        if group not in tightest or year.least_mm < tightest[group][1].least_mm:
            tightest[group] = board, year
    return [_finding(whole, group, board, year) for group, (board, year) in tightest.items()]


def drawer_height(whole: WholePiece, year: GapYear) -> tuple[LooseGroup, int] | None:
    """The drawer, and its board, whose height across its grain a gap has to take; None for any other gap."""
    gap = year.gap
    if gap.surface != FLAT:
        return None
    for board, other in ((gap.first, gap.second), (gap.second, gap.first)):
        frame = whole.parts[board].part.frame
        if not is_wood(whole, board) or abs(float(frame.axes[0] @ gap.normal)) < SAME_WAY:
            continue
        for group in whole.boxes:
            if not group.hung and board in group.parts and other not in group.parts:
                return group, board
    return None


def _finding(whole: WholePiece, group: LooseGroup, board: int, year: GapYear) -> Finding:
    leave = gap_to_leave(year, limit("gap left"))
    solved, gap = whole.parts[board], year.gap
    assert solved.width is not None  # its gap is known through the year
    grows = float(solved.width.most_mm.max()) - solved.width.as_drawn_mm
    other = gap.second if board == gap.first else gap.first
    return told(
        whole,
        "drawer-height-jams",
        JAMS,
        (board, other),
        _left_words(solved.width.as_drawn_mm, grows, gap.least_mm, year.least_mm),
        say(
            "leave {today:.1f} mm above it today, which becomes {least:.1f} to {most:.1f} mm; use quarter-sawn "
            "wood for sides; never plane a drawer that sticks in the damp season until it has dried",
            today=AtLeast(leave.set_mm),
            least=leave.least_mm,
            most=leave.most_mm,
        ),
        year.least_month,
        {
            "height_mm": solved.width.as_drawn_mm,
            "grows_mm": grows,
            "drawn_mm": gap.least_mm,
            "least_mm": year.least_mm,
        },
    )


def _left_words(height: float, grows: float, drawn: float, left: float) -> str:
    if left > 0:
        return say(
            "{height:.0f} mm high across its grain, it grows {grows:.1f} mm, and the opening does not grow with "
            "it: of the {drawn:.1f} mm above it {left:.1f} mm are left, and it binds",
            height=height,
            grows=grows,
            drawn=drawn,
            left=left,
        )
    return say(
        "{height:.0f} mm high across its grain, it grows {grows:.1f} mm, and the opening does not grow with it: "
        "nothing is left of the {drawn:.1f} mm above it, and {missing:.1f} mm are missing",
        height=height,
        grows=grows,
        drawn=drawn,
        missing=AtLeast(-left),
    )
