"""Tenons so wide that the wood around them cannot move with them."""

from __future__ import annotations

from movement_core.checks.finding import BREAKS, SHOWS, Finding
from movement_core.checks.told import told
from movement_core.piece.contact.joints import TENONED
from movement_core.piece.crossing import SPLITS, Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def wide_tenons(whole: WholePiece) -> list[Finding]:
    """One finding for each tenon, taken as glued, that is wider than practice lets pass and moves."""
    wide = (c for c in whole.crossings if c.joint.kind == TENONED and c.verdict == SPLITS)
    return [_finding(whole, crossing) for crossing in wide]


def _finding(whole: WholePiece, crossing: Crossing) -> Finding:
    indices = crossing.carrier, crossing.other
    return told(
        whole,
        "wide-tenon",
        BREAKS if crossing.width_mm > limit("tenon at most") else SHOWS,
        indices,
        say(
            "a tenon {width:.0f} mm wide, taken as glued, crosses the other's grain and moves {least:+.1f} to "
            "{most:+.1f} mm against it (tenons are divided above {some:.0f} to {limit:.0f} mm; common practice, no "
            "source)",
            width=crossing.width_mm,
            least=crossing.least_mm,
            most=crossing.most_mm,
            some=limit("tenon"),
            limit=limit("tenon at most"),
        ),
        say(
            "divide it into two tenons, glue the one that keeps the shown edge flush, leave the other dry in a longer "
            "mortise; or peg it in slots"
        ),
        crossing.month,
        {
            "width_mm": round(crossing.width_mm, 1),
            "least_mm": round(crossing.least_mm, 2),
            "most_mm": round(crossing.most_mm, 2),
        },
    )
