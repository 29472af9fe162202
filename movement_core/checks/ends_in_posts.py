"""Solid boards whose ends are let into posts, legs or stiles over more than practice lets be glued there."""

from __future__ import annotations

from collections import defaultdict

from movement_core.checks.crossing_grain import crossing_words, severity_of
from movement_core.checks.crossing_kinds import POST, boards_with, crossings_of_kind
from movement_core.checks.finding import Finding
from movement_core.checks.force_words import force_figures, force_words, worst_force
from movement_core.checks.told import told
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say


def ends_in_posts(whole: WholePiece) -> list[Finding]:
    """One finding for each board, or glued panel, whose ends would be held fast by what they are let into."""
    groups: dict[tuple[int, str], list[Crossing]] = defaultdict(list)
    for crossing in crossings_of_kind(whole, POST):
        groups[boards_with(whole, crossing.carrier)[0], crossing.verdict].append(crossing)
    return [_finding(whole, crossings) for crossings in groups.values()]


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    force = worst_force(whole, (crossing.joint.parts for crossing in crossings))
    return told(
        whole,
        "end-held-by-a-post",
        severity_of(worst),
        (*(crossing.carrier for crossing in crossings), *(crossing.other for crossing in crossings)),
        crossing_words(worst, say("the upright that its end is let into (a post, leg or stile)"))
        + force_words(force),
        say(
            "glue its end over {width:.0f} mm at most, in the middle or at the edge that has to stay flush, and leave "
            "the rest dry in the groove, with {room:.1f} mm of room where the groove is closed; or make it a frame "
            "with a free panel. If it slides already, confirm the joint as 'slides'",
            width=limit("glued across"),
            room=AtLeast(worst.worst_mm + 0.5),
        ),
        worst.month,
        {"width_mm": worst.width_mm, "least_mm": worst.least_mm, "most_mm": worst.most_mm}
        | force_figures(force),
    )
