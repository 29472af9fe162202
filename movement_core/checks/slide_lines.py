"""Long metal slides and bars along a board's width: screwed in round holes at both ends they hold it fast."""

from __future__ import annotations

import numpy as np

from movement_core.checks.finding import UNKNOWN, Finding
from movement_core.checks.fittings import is_slim
from movement_core.checks.told import told
from movement_core.piece.contact.joints import INFERRED
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

SLIM = 4.0  # a slide is so many times as long as its next size (own judgement)


def slide_lines(whole: WholePiece) -> list[Finding]:
    """One finding for each board with slides of metal across its grain whose fixing nobody said."""
    tops = {board.part.key for top in whole.tops for board in top.place.boards}
    groups: dict[int, list[Crossing]] = {}
    for crossing in whole.crossings:
        if whole.parts[crossing.carrier].part.key not in tops and _may_hold(whole, crossing):
            groups.setdefault(crossing.carrier, []).append(crossing)
    return [_finding(whole, crossings) for crossings in groups.values()]


def _may_hold(whole: WholePiece, crossing: Crossing) -> bool:
    """Whether a metal slide lies across so much grain that two fixed screws would be too many."""
    size = np.sort(whole.parts[crossing.other].part.frame.size_mm)
    slim = float(size[2]) >= SLIM * float(size[1])
    wide = crossing.width_mm > limit("glued across") and crossing.worst_mm >= limit("strained joint")
    untold = crossing.joint.origin == INFERRED
    return bool(is_slim(whole, crossing.other) and slim and wide and untold)


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    return told(
        whole,
        "slide-line",
        UNKNOWN,
        (*(crossing.other for crossing in crossings), worst.carrier),
        say(
            "metal lies along {width:.0f} mm of the board's width, which moves {least:+.1f} to {most:+.1f} mm: taken "
            "as fixed at one point. Screwed in round holes at both ends it holds the board fast, which splits or "
            "pulls the screws out, and the drawer's line goes with it",
            width=worst.width_mm,
            least=worst.least_mm,
            most=worst.most_mm,
        ),
        say(
            "one round hole, at the front; all other screws in the slots along the slide, at the middle of their "
            "travel. If it is so already, confirm the joint as 'slides' or 'fixed at a point'"
        ),
        worst.month,
        {"width_mm": worst.width_mm, "least_mm": worst.least_mm, "most_mm": worst.most_mm},
    )
