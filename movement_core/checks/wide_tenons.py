"""Tenons so wide, or so far apart, that the wood around them cannot move with them."""

from __future__ import annotations

from collections import defaultdict

from movement_core.checks.crossing_kinds import boards_with
from movement_core.checks.finding import BREAKS, SHOWS, UNKNOWN, Finding
from movement_core.checks.told import told
from movement_core.piece.contact.joints import TENONED
from movement_core.piece.crossing import IF_SOLID, SPLITS, Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def wide_tenons(whole: WholePiece) -> list[Finding]:
    """One finding for the tenons of each part, or glued panel, in another, where they hold more than practice lets."""
    groups: dict[tuple[int, int], list[Crossing]] = defaultdict(list)
    for crossing in whole.crossings:
        if crossing.joint.kind == TENONED and crossing.verdict in (SPLITS, IF_SOLID):
            groups[boards_with(whole, crossing.carrier)[0], crossing.other].append(crossing)
    return [_finding(whole, crossings) for crossings in groups.values()]


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    crossing = crossings[0]
    widest = max(crossing.tenons_mm, default=crossing.width_mm)
    if len(crossing.tenons_mm) > 1 and widest <= limit("tenon"):
        return _divided(whole, crossings)
    share = min(widest / crossing.width_mm, 1.0)
    least, most = crossing.least_mm * share, crossing.most_mm * share
    return told(
        whole,
        "wide-tenon",
        BREAKS if widest > limit("tenon at most") else SHOWS,
        (*(one.carrier for one in crossings), crossing.other),
        say(
            "a tenon {width:.0f} mm wide, taken as glued, crosses the other's grain and moves {least:+.1f} to "
            "{most:+.1f} mm against it (tenons are divided above {some:.0f} to {limit:.0f} mm; common practice, no "
            "source)",
            width=widest,
            least=least,
            most=most,
            some=limit("tenon"),
            limit=limit("tenon at most"),
        ),
        say(
            "divide it into two tenons, glue the one that keeps the shown edge flush, leave the other dry in a longer "
            "mortise; or peg it in slots"
        ),
        crossing.month,
        {"width_mm": widest, "least_mm": least, "most_mm": most},
    )


def _divided(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    """Several tenons, none of them too wide, that would be too much if all were glued."""
    crossing = crossings[0]
    severity = UNKNOWN
    if crossing.verdict == SPLITS:
        severity = BREAKS if crossing.width_mm > limit("tenon at most") else SHOWS
    return told(
        whole,
        "wide-tenon",
        severity,
        (*(one.carrier for one in crossings), crossing.other),
        say(
            "{count} tenons, the widest {own:.0f} mm, reach over {width:.0f} mm of grain, which moves {least:+.1f} to "
            "{most:+.1f} mm against what they are let into. If all of them are glued, the wood between them splits "
            "(up to {some:.0f} to {limit:.0f} mm may be glued in one piece; common practice, no source)",
            count=len(crossing.tenons_mm),
            own=max(crossing.tenons_mm),
            width=crossing.width_mm,
            least=crossing.least_mm,
            most=crossing.most_mm,
            some=limit("tenon"),
            limit=limit("tenon at most"),
        ),
        say(
            "glue one of them, in the middle or where the edge has to stay flush, and leave the others dry in mortises "
            "that are longer by what they move; or peg them in slots. If it is so already, confirm the joints as "
            "'slides'"
        ),
        crossing.month,
        {"width_mm": crossing.width_mm, "least_mm": crossing.least_mm, "most_mm": crossing.most_mm},
    )
