"""Fixed shelves and dividers whose grain, or whose core, does not move with the sides that they are let into.

A shelf whose grain runs from side to side moves in depth with the sides, as a dovetailed carcase does: no finding.
"""

from __future__ import annotations

from movement_core.checks.crossing_grain import confirm_words, crossing_finding, crossing_words
from movement_core.checks.crossing_kinds import SHELF, crossings_by_part
from movement_core.checks.finding import Finding
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say


def shelves_across(whole: WholePiece) -> list[Finding]:
    """One finding for each shelf that would hold the sides fast, or they it."""
    return [_finding(whole, crossings) for crossings in crossings_by_part(whole, SHELF)]


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    return crossing_finding(
        whole,
        "shelf-across-the-side",
        crossings,
        crossing_words(worst, say("the shelf")),
        say(
            "let its grain run from side to side, so that it moves in depth with the sides; or glue it in the front "
            "{width:.0f} mm of its housings only and let it slide behind, short of the back by {room:.1f} "
            "mm{confirm}",
            width=limit("glued across"),
            room=AtLeast(worst.worst_mm + 0.5),
            confirm=confirm_words(worst),
        ),
    )
