"""What lies between the parts, as plain data: joints, crossings of grain, gaps through the year and what to leave."""

from __future__ import annotations

from typing import Any

from movement_core.air.year import MONTHS
from movement_core.piece.contact.across import GapYear, gap_to_leave
from movement_core.piece.contact.joints import NEAR, Joint
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

STILL_MM = 0.05  # gaps that change by less over the year are not told


def between_entry(whole: WholePiece | None) -> dict[str, Any]:
    """Joints of parts that touch, every crossing with its verdict and reason, every gap that moves, and notes."""
    if whole is None:
        return {"joints": [], "crossings": [], "gaps": [], "force_caveats": [], "between_notes": []}
    touching = [joint for joint in whole.joints if joint.kind != NEAR]
    return {
        "joints": [_joint_entry(whole, joint) for joint in touching],
        "crossings": [_crossing_entry(whole, crossing) for crossing in whole.crossings],
        "gaps": [
            _gap_entry(whole, year, held) for year, held in zip(whole.gaps, whole.held_gaps) if _moves(year)
        ],
        "between_notes": list(whole.touching.notes),
        "force_caveats": [] if whole.forces is None else list(whole.forces.caveats),
    }


def _pair(whole: WholePiece, one: int, other: int) -> dict[str, Any]:
    return {
        "parts": [whole.name(one), whole.name(other)],
        "keys": [whole.parts[i].part.key for i in (one, other)],
    }


def _joint_entry(whole: WholePiece, joint: Joint) -> dict[str, Any]:
    return {
        **_pair(whole, *joint.parts),
        "kind": joint.kind,
        "origin": joint.origin,
        "reason": joint.reason,
        "shape": joint.meeting.shape,
        "area_mm2": round(joint.meeting.area_mm2, 1),
        **_force_entry(whole, joint),
    }


def _force_entry(whole: WholePiece, joint: Joint) -> dict[str, Any]:
    """What a joint bears at most in the year; null with the reason where that is not known."""
    found = None if whole.forces is None else whole.forces.between(*joint.parts)
    if found is None or found.force_n is None:
        why = say("too many parts to work it out") if found is None else found.reason
        return {"force_n": None, "stress_mpa": None, "month": None, "force_note": why}
    relaxed = found.relaxed_n or (0.0, 0.0)
    return {
        "force_n": round(found.force_n, 1),
        "relaxed_n": [round(force, 1) for force in relaxed],
        "way": found.way or None,
        "stress_mpa": None if found.stress_mpa is None else round(found.stress_mpa, 3),
        "strength_mpa": found.strength_mpa,
        "month": None if found.month is None else MONTHS[found.month],
        "if_solid": found.assumed,
        "force_note": found.reason or None,
    }


def _crossing_entry(whole: WholePiece, crossing: Crossing) -> dict[str, Any]:
    return {
        **_pair(whole, crossing.carrier, crossing.other),
        "kind": crossing.joint.kind,
        "origin": crossing.joint.origin,
        "verdict": crossing.verdict,
        "reason": crossing.reason,
        "width_mm": round(crossing.width_mm, 2),
        "least_mm": round(crossing.least_mm, 3) + 0.0,
        "most_mm": round(crossing.most_mm, 3) + 0.0,
        "month": None if crossing.month is None else MONTHS[crossing.month],
    }


def _moves(year: GapYear) -> bool:
    return year.most_mm - year.least_mm - (year.gap.most_mm - year.gap.least_mm) >= STILL_MM


def _gap_entry(whole: WholePiece, year: GapYear, held: GapYear) -> dict[str, Any]:
    """A gap as drawn, through the year and today, and what to leave today for it never to fall below its least."""
    gap, leave = year.gap, gap_to_leave(year, limit("gap left"))
    today = year.narrowest.today
    return {
        **_pair(whole, gap.first, gap.second),
        "works": whole.is_between_groups(gap.first, gap.second),
        "surface": gap.surface,
        "direction": [round(float(v), 6) + 0.0 for v in gap.normal],
        "drawn_mm": round(gap.least_mm, 3),
        "today_mm": round((today.least + today.most) / 2 if today.value is None else today.value, 3) + 0.0,
        "least_mm": round(year.least_mm, 3) + 0.0,
        "least_month": MONTHS[year.least_month],
        "most_mm": round(year.most_mm, 3) + 0.0,
        "most_month": MONTHS[year.most_month],
        "held_least_mm": round(held.least_mm, 3) + 0.0,
        "held_most_mm": round(held.most_mm, 3) + 0.0,
        "leave_today_mm": round(leave.set_mm, 3),
        "becomes_least_mm": round(leave.least_mm, 3) + 0.0,
        "becomes_least_month": MONTHS[leave.least_month],
        "becomes_most_mm": round(leave.most_mm, 3),
        "becomes_most_month": MONTHS[leave.most_month],
    }
