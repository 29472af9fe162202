"""Parts joined solid, or perhaps solid, with their grains crossing over more than practice lets pass."""

from __future__ import annotations

from collections import defaultdict

from movement_core.checks.finding import BREAKS, SHOWS, UNKNOWN, Finding
from movement_core.checks.trapped_panels import presses
from movement_core.piece.contact.joints import TENONED
from movement_core.piece.crossing import HARMLESS, IF_SOLID, SPLITS, Crossing
from movement_core.piece.crossing import UNKNOWN as NOT_KNOWN
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece

NARROW = 0.5  # a strip is no wider than this share of the board it lies across (own judgement)
ALONG = 0.9  # cosine of its grain to the direction in which the board moves


def crossing_grain(whole: WholePiece) -> list[Finding]:
    """One finding for each part, or glued panel, and what lies solid across it; strips are told by their own check."""
    groups: dict[tuple[int, str, float], list[Crossing]] = defaultdict(list)
    for crossing in judged_crossings(whole):
        if not is_strip(whole, crossing):
            groups[crossing.other, crossing.verdict, round(crossing.width_mm, 3)].append(crossing)
    return [_finding(whole, crossings) for crossings in groups.values()]


def judged_crossings(whole: WholePiece) -> list[Crossing]:
    """The crossings that are not harmless.

    Tenons have a check of their own, and so has a bottom that presses on the boards around it, with what else it
    touches.
    """
    bottoms = {room.captive.part for room in whole.rooms if not room.in_frame and presses(room)}
    return [
        crossing
        for crossing in whole.crossings
        if crossing.verdict not in (HARMLESS, NOT_KNOWN)
        and crossing.joint.kind != TENONED
        and crossing.carrier not in bottoms
    ]


def is_strip(whole: WholePiece, crossing: Crossing) -> bool:
    """Whether the other part is a narrow strip that runs across the board."""
    strip, board = whole.parts[crossing.other].part.frame, whole.parts[crossing.carrier].part.frame
    if not (strip.grain.known and board.grain.known):
        return False
    narrow = strip.width_mm <= NARROW * board.width_mm and strip.length_mm >= 2 * strip.width_mm
    return bool(narrow and abs(strip.axes[2] @ board.axes[0]) > ALONG)


def severity_of(crossing: Crossing) -> str:
    """By consequence; unknown where nobody said that it is solid."""
    if crossing.verdict == IF_SOLID:
        return UNKNOWN
    return BREAKS if crossing.width_mm > limit("glued across at most") else SHOWS


def crossing_words(crossing: Crossing, what: str) -> str:
    """What lies across how much grain, what that grain does, and what comes of it where it is solid."""
    moves = f"which moves {crossing.least_mm:+.1f} to {crossing.most_mm:+.1f} mm against it"
    practice = (
        f"{limit('glued across'):.0f} mm may be solid, some let {limit('glued across at most'):.0f} pass; common "
        "practice, no source"
    )
    fixed = crossing.fixed
    comes = ""
    if fixed is not None and fixed.tension_mpa > 0:
        chance = "not to be foretold" if fixed.split == "unknown" else fixed.split
        comes = f"up to {fixed.tension_mpa:.0f} MPa pull across the grain: a split is {chance}"
    across = f"{what} {{}} across {crossing.width_mm:.0f} mm of grain, {moves}"
    if crossing.verdict == SPLITS:
        return f"{across.format('is fixed solid')}: {comes or 'it splits'} ({practice})"
    return (
        f"{across.format('lies')}. How it is fixed is not drawn. If it is glued or screwed fast, "
        f"{comes or 'it splits'} ({practice})"
    )


def _finding(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    indices = (*dict.fromkeys(crossing.carrier for crossing in crossings), worst.other)
    stable = _stable(whole, worst.other)
    message = crossing_words(worst, "the joint")
    if stable:
        message += (
            f". {whole.name(worst.other)} is {stable} and does not move with it: the panel bows or splits"
        )
    return Finding(
        check="solid-on-stable-core" if stable else "grain-crossing",
        severity=severity_of(worst),
        parts=tuple(whole.name(i) for i in indices),
        keys=tuple(whole.parts[i].part.key for i in indices),
        message=message,
        remedy=_remedy(worst, bool(stable)),
        month=worst.month,
        figures={
            "width_mm": round(worst.width_mm, 1),
            "least_mm": round(worst.least_mm, 2),
            "most_mm": round(worst.most_mm, 2),
        },
    )


def _stable(whole: WholePiece, index: int) -> str:
    """What a part is that does not move as solid wood does; "" for solid wood."""
    species = whole.parts[index].part.species.value
    return "" if species is None or species.kind == "wood" else species.name


def _remedy(crossing: Crossing, stable: bool) -> str:
    confirm = "" if crossing.verdict == SPLITS else ". If it slides or rests already, confirm the joint so"
    if stable:
        return (
            "fix it at one line and let the rest slide, or face the core with veneer of 3 mm at most on both sides"
            + confirm
        )
    return (
        "fix it at one line, at most "
        f"{limit('glued across'):.0f} mm wide, and let the rest slide in slots, grooves or on keys; or turn the grain "
        f"of one to run with the other{confirm}"
    )
