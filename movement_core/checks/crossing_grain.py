"""Parts joined solid, or perhaps solid, with their grains crossing over more than practice lets pass."""

from __future__ import annotations

from collections import defaultdict

from movement_core.checks.crossing_kinds import PLAIN, crossings_of_kind
from movement_core.checks.finding import BREAKS, SHOWS, UNKNOWN, Finding
from movement_core.checks.force_words import force_figures, force_words, worst_force
from movement_core.checks.told import told
from movement_core.piece.crossing import IF_SOLID, SPLITS, Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtMost, say


def crossing_grain(whole: WholePiece) -> list[Finding]:
    """One finding for each part, or glued panel, and what lies solid across it that no other check knows better."""
    groups: dict[tuple[int, str, float], list[Crossing]] = defaultdict(list)
    for crossing in crossings_of_kind(whole, PLAIN):
        groups[crossing.other, crossing.verdict, round(crossing.width_mm, 3)].append(crossing)
    return [_finding(whole, crossings) for crossings in groups.values()]


def severity_of(crossing: Crossing) -> str:
    """By consequence; unknown where nobody said that it is solid."""
    if crossing.verdict == IF_SOLID:
        return UNKNOWN
    return BREAKS if crossing.width_mm > limit("glued across at most") else SHOWS


def crossing_words(crossing: Crossing, what: str) -> str:
    """What lies across how much grain, what that grain does, and what comes of it where it is solid."""
    practice = say(
        "{solid:.0f} mm may be solid, some let {most:.0f} mm pass; common practice, no source",
        solid=limit("glued across"),
        most=AtMost(limit("glued across at most")),
    )
    fixed = crossing.fixed
    comes = say("it splits")
    if fixed is not None and fixed.tension_mpa > 0:
        chance = say("not to be foretold") if fixed.split == "unknown" else say(fixed.split)
        comes = say(
            "up to {tension:.0f} MPa pull across the grain: a split is {chance}",
            tension=fixed.tension_mpa,
            chance=chance,
        )
    figures = {"width": crossing.width_mm, "least": crossing.least_mm, "most": crossing.most_mm}
    if crossing.verdict == SPLITS:
        return say(
            "{what} is fixed solid across {width:.0f} mm of grain, which moves {least:+.1f} to {most:+.1f} mm "
            "against it: {comes} ({practice})",
            what=what,
            comes=comes,
            practice=practice,
            **figures,
        )
    return say(
        "{what} lies across {width:.0f} mm of grain, which moves {least:+.1f} to {most:+.1f} mm against it. How "
        "it is fixed is not drawn. If it is glued or screwed fast, {comes} ({practice})",
        what=what,
        comes=comes,
        practice=practice,
        **figures,
    )


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    return crossing_finding(
        whole,
        "grain-crossing",
        crossings,
        crossing_words(worst, say("the joint")),
        say(
            "fix it at one line, at most {width:.0f} mm wide, and let the rest slide in slots, grooves or on "
            "keys; or turn the grain of one to run with the other{confirm}",
            width=limit("glued across"),
            confirm=confirm_words(worst),
        ),
    )


def crossing_finding(
    whole: WholePiece, check: str, crossings: list[Crossing], message: str, remedy: str
) -> Finding:
    """The finding on several crossings against one part: the boards, then that part, the worst one's figures, and the
    force that the joints bear at most."""
    worst = max(crossings, key=lambda one: one.worst_mm)
    force = worst_force(whole, (crossing.joint.parts for crossing in crossings))
    return told(
        whole,
        check,
        severity_of(worst),
        (*(crossing.carrier for crossing in crossings), worst.other),
        message + force_words(force),
        remedy,
        worst.month,
        {"width_mm": worst.width_mm, "least_mm": worst.least_mm, "most_mm": worst.most_mm}
        | force_figures(force),
    )


def confirm_words(crossing: Crossing) -> str:
    """What to add to a remedy where nobody said how it is joined."""
    return "" if crossing.verdict == SPLITS else say(". If it slides or rests already, confirm the joint so")
