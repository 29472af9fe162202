"""What lies between the parts, as text: how many joints cross the grain, and what to leave at doors and drawers."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.piece.crossing import HARMLESS, IF_SOLID, SPLITS, UNKNOWN
from movement_core.piece.restrained import RELAXED
from movement_core.wording import say, word

FIT_MM = 3.0  # gaps drawn wider than this are rooms, not fits: their figures are in the data
MOVES_MM = 0.2  # gaps that change by less over the year are set as drawn
STRAINED, MOST_STRAINED = 0.3, 5  # of the strength: joints below it are not told; how many are


def between_sentences(entry: Mapping[str, Any]) -> list[str]:
    """What is to be told of contacts as a whole: notes, how many joints cross the grain, which bear most."""
    lines: list[str] = list(entry.get("between_notes", []))
    crossings: Sequence[Mapping[str, Any]] = entry.get("crossings", [])
    if crossings:
        verdicts = Counter(crossing["verdict"] for crossing in crossings)
        words = _verdict_words()
        told = ", ".join(f"{count} {words[verdict]}" for verdict, count in verdicts.most_common())
        one = len(crossings) == 1
        lines.append(
            say("Grain crosses at 1 joint: {told}. The report as JSON lists each with its reason.", told=told)
            if one
            else say(
                "Grain crosses at {count} joints: {told}. The report as JSON lists each with its reason.",
                count=len(crossings),
                told=told,
            )
        )
    return lines + _strained_lines(entry.get("joints", []), crossings)


def gap_lines(entry: Mapping[str, Any]) -> list[str]:
    """A heading and the rows of the gaps that work; none where there is no such gap."""
    alike: dict[tuple[str, ...], list[str]] = {}
    for gap in sorted(entry.get("gaps", []), key=lambda one: one["least_mm"] - one["most_mm"]):
        fits = gap["works"] and gap["drawn_mm"] <= FIT_MM and gap["most_mm"] - gap["least_mm"] >= MOVES_MM
        if fits:
            alike.setdefault(_figures(gap), []).append(" | ".join(gap["parts"]))
    if not alike:
        return []
    heading = (say("leave today"), say("becomes"), say("as drawn"), say("is then"), say("between"))
    rows = _table([heading, *((*figures, _some(pairs)) for figures, pairs in alike.items())])
    return [say("Gaps round doors, drawers and lids that move, mm"), *rows]


def _verdict_words() -> dict[str, str]:
    return {
        HARMLESS: say("harmless"),
        SPLITS: say("solid and too wide"),
        IF_SOLID: say("too wide if they are solid"),
        UNKNOWN: say("not known"),
    }


def _strained_lines(joints: Sequence[Mapping[str, Any]], crossings: Sequence[Mapping[str, Any]]) -> list[str]:
    """The joints that bear most of their strength, the worst first; unknown ones only where being solid would hurt."""
    hurts = {frozenset(one["keys"]) for one in crossings if one["verdict"] == IF_SOLID}
    worst = sorted(
        (
            (joint["stress_mpa"] / joint["strength_mpa"], joint)
            for joint in joints
            if joint.get("stress_mpa") is not None and joint.get("strength_mpa")
            if not joint["if_solid"] or frozenset(joint["keys"]) in hurts
        ),
        key=lambda one: -one[0],
    )
    told = [joint for share, joint in worst if share >= STRAINED][:MOST_STRAINED]
    if not told:
        return []
    low, high = RELAXED
    heading = say(
        "Joints that bear most, before the wood gives way; after some months {low:.0f} % to {high:.0f} % of it is left",
        low=100 * low,
        high=100 * high,
    )
    return [heading, *(_strained(joint) for joint in told)]


def _strained(joint: Mapping[str, Any]) -> str:
    line = say(
        "{parts}: {kn:.1f} kN in {month}, {way} with {stress:.1f} MPa (clear wood bears {strength:.1f})",
        parts=" | ".join(joint["parts"]),
        kn=joint["force_n"] / 1000,
        month=say(joint["month"]),
        way=word(joint["way"]),
        stress=joint["stress_mpa"],
        strength=joint["strength_mpa"],
    )
    return say("{line}, if it is solid", line=line) if joint["if_solid"] else line


def _figures(gap: Mapping[str, Any]) -> tuple[str, ...]:
    return (
        f"{gap['leave_today_mm']:.1f}",
        say(
            "{least:.1f} {dry} to {most:.1f} {wet}",
            least=gap["becomes_least_mm"],
            dry=say(gap["becomes_least_month"])[:3],
            most=gap["becomes_most_mm"],
            wet=say(gap["becomes_most_month"])[:3],
        ),
        f"{gap['drawn_mm']:.1f}",
        say("{least:.1f} to {most:.1f}", least=gap["least_mm"], most=gap["most_mm"]),
    )


def _table(rows: Sequence[tuple[str, ...]]) -> list[str]:
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]) - 1)]
    return ["  ".join([*(cell.ljust(width) for cell, width in zip(row, widths)), row[-1]]) for row in rows]


def _some(pairs: Sequence[str], most: int = 2) -> str:
    shown = ", ".join(pairs[:most])
    if len(pairs) <= most:
        return shown
    return say("{first} and {count} more", first=shown, count=len(pairs) - most)
