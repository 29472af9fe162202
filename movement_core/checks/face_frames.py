"""Face frames, and plinths, on carcases whose boards move along them."""

from __future__ import annotations

from movement_core.checks.crossing_grain import confirm_words, crossing_finding, crossing_words
from movement_core.checks.crossing_kinds import FACE_FRAME, crossings_by_part
from movement_core.checks.finding import Finding
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def face_frames(whole: WholePiece) -> list[Finding]:
    """One finding for each piece of a frame that lies across the grain on the edges or ends of a carcase."""
    return [_finding(whole, crossings) for crossings in crossings_by_part(whole, FACE_FRAME)]


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    return crossing_finding(
        whole,
        "frame-across-the-side",
        crossings,
        crossing_words(worst, say("a piece of the frame on its edges (face frame, plinth)")),
        say(
            "glue it over {width:.0f} mm at one end of the board and hold the rest with screws in slots from "
            "inside, or with keys; or let the carcase's grain run along it: upright in the sides, level in top and "
            "bottom{confirm}",
            width=limit("glued across"),
            confirm=confirm_words(worst),
        ),
    )
