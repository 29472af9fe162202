"""Narrow strips fixed across a wide board: mouldings outside, drawer runners, cleats and kickers inside."""

from __future__ import annotations

from collections import defaultdict

import numpy as np

from movement_core.checks.crossing_grain import crossing_words, severity_of
from movement_core.checks.crossing_kinds import STRIP, boards_with, crossings_of_kind
from movement_core.checks.finding import Finding
from movement_core.checks.force_words import force_figures, force_words, worst_force
from movement_core.checks.remember import once_a_piece
from movement_core.checks.told import told
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

OUTSIDE_MM = (
    30.0  # what reaches no further than this beyond the strip leaves it on the outside (own judgement)
)
MOULDING, RUNNER = "moulding-across-the-side", "runner-across-the-side"


def strips_across(whole: WholePiece) -> list[Finding]:
    """One finding for each board, or glued panel, and each kind of strip that lies across it."""
    groups: dict[tuple[str, int, str], list[Crossing]] = defaultdict(list)
    for crossing in crossings_of_kind(whole, STRIP):
        kind = MOULDING if _is_outside(whole, crossing) else RUNNER
        groups[kind, boards_with(whole, crossing.carrier)[0], crossing.verdict].append(crossing)
    return [_finding(whole, kind, crossings) for (kind, _, _), crossings in groups.items()]


def _is_outside(whole: WholePiece, crossing: Crossing) -> bool:
    """Whether a strip lies on the outside of the piece."""
    main = crossing.joint.meeting.main
    assert main is not None  # it touches
    outward = main.normal if crossing.carrier == crossing.joint.parts[0] else -main.normal
    centres, axes, sizes = _boxes(whole)
    reach = centres @ outward + (np.abs(axes @ outward) * sizes).sum(axis=1) / 2
    return bool(reach.max() - reach[crossing.other] <= OUTSIDE_MM)


@once_a_piece
def _boxes(whole: WholePiece) -> tuple[Floats, Floats, Floats]:
    """Centres (N, 3), axes (N, 3, 3) and sizes (N, 3) of all parts."""
    frames = [solved.part.frame for solved in whole.parts]
    return (
        np.array([frame.centre for frame in frames]),
        np.array([frame.axes for frame in frames]),
        np.array([frame.size_mm for frame in frames]),
    )


def _finding(whole: WholePiece, kind: str, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    force = worst_force(whole, (crossing.joint.parts for crossing in crossings))
    what = say("the moulding") if kind == MOULDING else say("the strip (a runner, cleat or the like)")
    return told(
        whole,
        kind,
        severity_of(worst),
        (*(crossing.other for crossing in crossings), *(crossing.carrier for crossing in crossings)),
        crossing_words(worst, what) + force_words(force),
        _remedy(kind),
        worst.month,
        {"width_mm": worst.width_mm, "least_mm": worst.least_mm, "most_mm": worst.most_mm}
        | force_figures(force),
    )


def _remedy(kind: str) -> str:
    if kind == MOULDING:
        return say(
            "glue it in the front {width:.0f} mm and the mitre only; behind that screws in slots from inside, or "
            "dovetail keys that it slides on. If it is so already, confirm the joint as 'slides'",
            width=limit("glued across"),
        )
    return say(
        "fix it at the front and let it slide behind: slotted screws, or house it in a groove with its tenon in the "
        "rail and room at the back. If it is so already, confirm the joint as 'slides'"
    )
