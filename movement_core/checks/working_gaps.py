"""Doors and drawers that jam, or whose gap grows too wide to look right; other gaps that close."""

from __future__ import annotations

from movement_core.checks.drawer_heights import drawer_height
from movement_core.checks.finding import JAMS, SHOWS, Finding
from movement_core.checks.told import told
from movement_core.piece.contact.across import GapYear, gap_to_leave
from movement_core.piece.contact.found import FLAT
from movement_core.piece.contact.joints import NEAR
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, AtMost, say


def working_gaps(whole: WholePiece) -> list[Finding]:
    """One finding for each pair of parts whose gap closes, and for each gap round a door or drawer that gapes."""
    near = {joint.parts for joint in whole.joints if joint.kind == NEAR}
    tightest: dict[tuple[int, int], GapYear] = {}
    widest: dict[tuple[int, int], GapYear] = {}
    for year in whole.gaps:
        pair = year.gap.first, year.gap.second
        works = whole.is_between_groups(*pair)
        if year.gap.surface != FLAT or not (works or pair in near):
            continue
        high = works and drawer_height(whole, year) is not None  # told by the check of drawers' heights
        tight = (
            not high
            and year.least_mm < (limit("gap least") if works else 0.0)
            and year.least_mm < year.gap.least_mm
        )
        if tight and (pair not in tightest or year.least_mm < tightest[pair].least_mm):
            tightest[pair] = year
        wide = year.most_mm > limit("gap most") and year.gap.most_mm <= limit("gap drawn")
        if works and wide and (pair not in widest or year.most_mm > widest[pair].most_mm):
            widest[pair] = year
    return [_jams(whole, year) for year in tightest.values()] + [_gapes(whole, y) for y in widest.values()]


def _jams(whole: WholePiece, year: GapYear) -> Finding:
    leave = gap_to_leave(year, limit("gap left"))
    works = whole.is_between_groups(year.gap.first, year.gap.second)
    what = say("it binds") if works else say("the parts press on each other")
    left = (
        say("{left:.1f} mm", left=AtMost(year.least_mm))
        if year.least_mm > 0
        else say("nothing and {missing:.1f} mm are missing", missing=AtLeast(-year.least_mm))
    )
    return _finding(
        whole,
        year,
        "inset-jams" if works else "gap-closes",
        JAMS,
        say(
            "the gap between them, {drawn:.1f} mm as drawn, comes down to {left}: {what}",
            drawn=year.gap.least_mm,
            left=left,
            what=what,
        ),
        say(
            "leave {today:.1f} mm today, which becomes {least:.1f} to {most:.1f} mm; never plane a part that sticks "
            "in the damp season until it has dried",
            today=AtLeast(leave.set_mm),
            least=leave.least_mm,
            most=leave.most_mm,
        ),
        year.least_month,
    )


def _gapes(whole: WholePiece, year: GapYear) -> Finding:
    return _finding(
        whole,
        year,
        "gap-too-wide",
        SHOWS,
        say(
            "the gap between them, {drawn:.1f} mm as drawn, opens to {most:.1f} mm",
            drawn=year.gap.least_mm,
            most=year.most_mm,
        ),
        say("use quarter-sawn wood or narrower parts, or let the door or front cover the edge"),
        year.most_month,
    )


def _finding(
    whole: WholePiece, year: GapYear, check: str, severity: str, message: str, remedy: str, month: int
) -> Finding:
    pair = year.gap.first, year.gap.second
    inside = [i for i in pair if any(i in group.parts for group in whole.loose)]
    figures = {"drawn_mm": year.gap.least_mm, "least_mm": year.least_mm, "most_mm": year.most_mm}
    return told(whole, check, severity, [*inside, *pair], message, remedy, month, figures)
