"""What lies between the parts, as text: how many joints cross the grain, and what to leave at doors and drawers."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.piece.crossing import HARMLESS, IF_SOLID, SPLITS, UNKNOWN
from movement_core.piece.restrained import RELAXED
from movement_core.wording import say

VERDICT_WORDS = {
    HARMLESS: "harmless",
    SPLITS: "solid and too wide",
    IF_SOLID: "too wide if they are solid",
    UNKNOWN: "not known",
}
FIT_MM = 3.0  # gaps drawn wider than this are rooms, not fits: their figures are in the data
MOVES_MM = 0.2  # gaps that change by less over the year are set as drawn
STRAINED, MOST_STRAINED = 0.3, 5  # of the strength: joints below it are not told; how many are
HEADING = ("leave today", "becomes", "as drawn", "is then", "between")


def between_lines(entry: Mapping[str, Any]) -> list[str]:
    """Lines without indent; none where nothing was found between the parts."""
    lines: list[str] = list(entry.get("between_notes", []))
    crossings: Sequence[Mapping[str, Any]] = entry.get("crossings", [])
    if crossings:
        verdicts = Counter(crossing["verdict"] for crossing in crossings)
        told = ", ".join(f"{count} {VERDICT_WORDS[verdict]}" for verdict, count in verdicts.most_common())
        lines.append(
            f"Grain crosses at {len(crossings)} joint{'s' if len(crossings) > 1 else ''}: {told}. "
            "The report as JSON lists each with its reason."
        )
    lines += _strained_lines(entry.get("joints", []), crossings)
    alike: dict[tuple[str, ...], list[str]] = {}
    for gap in sorted(entry.get("gaps", []), key=lambda one: one["least_mm"] - one["most_mm"]):
        fits = gap["works"] and gap["drawn_mm"] <= FIT_MM and gap["most_mm"] - gap["least_mm"] >= MOVES_MM
        if fits:
            alike.setdefault(_figures(gap), []).append(" | ".join(gap["parts"]))
    if alike:
        lines.append("Gaps round doors and drawers that move, mm")
        lines += _table([HEADING, *((*figures, _some(pairs)) for figures, pairs in alike.items())])
    return lines


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
        "Joints that bear most, as elastic upper bounds; after some months {low:.0%} to {high:.0%} of it is left",
        low=low,
        high=high,
    )
    return [heading, *(_strained(joint) for joint in told)]


def _strained(joint: Mapping[str, Any]) -> str:
    line = say(
        "{parts}: {kn:.1f} kN in {month}, {way} with {stress:.1f} MPa (clear wood bears {strength:.1f})",
        parts=" | ".join(joint["parts"]),
        kn=joint["force_n"] / 1000,
        month=joint["month"],
        way=joint["way"],
        stress=joint["stress_mpa"],
        strength=joint["strength_mpa"],
    )
    return say("{line}, if it is solid", line=line) if joint["if_solid"] else line


def _figures(gap: Mapping[str, Any]) -> tuple[str, ...]:
    return (
        f"{gap['leave_today_mm']:.1f}",
        f"{gap['becomes_least_mm']:.1f} {gap['becomes_least_month'][:3]} to "
        f"{gap['becomes_most_mm']:.1f} {gap['becomes_most_month'][:3]}",
        f"{gap['drawn_mm']:.1f}",
        f"{gap['least_mm']:.1f} to {gap['most_mm']:.1f}",
    )


def _table(rows: Sequence[tuple[str, ...]]) -> list[str]:
    widths = [max(len(row[column]) for row in rows) for column in range(len(HEADING) - 1)]
    return ["  ".join([*(cell.ljust(width) for cell, width in zip(row, widths)), row[-1]]) for row in rows]


def _some(pairs: Sequence[str], most: int = 2) -> str:
    shown = ", ".join(pairs[:most])
    return shown if len(pairs) <= most else f"{shown} and {len(pairs) - most} more"
