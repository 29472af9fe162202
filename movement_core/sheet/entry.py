"""The report of one file as plain data, ready for JSON. Every other form of the report is made from this."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import month_of_day
from movement_core.air.year import MONTHS
from movement_core.checks import Finding
from movement_core.piece.course import Course
from movement_core.piece.doubt import Doubt, cup_doubt, thickness_doubt, width_doubt
from movement_core.piece.facts import Fact
from movement_core.piece.panels import GluedPanel, glued_panels
from movement_core.piece.part import Part
from movement_core.piece.solve import CUP_NOTES, SolvedPart, SolvedPiece
from movement_core.piece.whole import WholePiece
from movement_core.section.panel import PanelShape
from movement_core.section.twist import Twist
from movement_core.sheet.between import between_entry
from movement_core.sheet.identity import finding_ids
from movement_core.sources import told_basis
from movement_core.wording import say, word

Floats = NDArray[np.float64]


def file_entry(
    path: str,
    piece: SolvedPiece,
    findings: Sequence[Finding],
    errors: Sequence[str] = (),
    hidden: Sequence[str] = (),
    told: Sequence[str] = (),
    whole: WholePiece | None = None,
) -> dict[str, Any]:
    """Everything about one file: units stand in the names, None is *not known*.

    ``whole``: the piece with what lies between its parts; without it the entry has no joints, crossings and gaps.
    """
    problems = [{"message": str(p), "part": p.part} for s in piece.parts for p in s.part.problems]
    problems += [
        {"message": f"part {s.part.name!r}: {s.trouble}", "part": s.part.name}
        for s in piece.parts
        if s.trouble
    ]
    return {
        "path": path,
        "year": {
            "name": piece.year.name,
            "basis": told_basis(piece.air.basis),
            "notes": list(told),
            "moisture_percent": [round(float(m), 2) for m in piece.year.moisture],
            "driest_month": MONTHS[piece.year.driest_month],
            "wettest_month": MONTHS[piece.year.wettest_month],
        },
        "today": {
            "date": piece.today.isoformat(),
            "moisture_percent": _rounded(piece.today_mc),
            "metered": piece.metered_mc is not None,
        },
        "parts": _part_entries(piece),
        "panels": [panel_entry(panel) for panel in (glued_panels(piece) if whole is None else whole.panels)],
        **between_entry(whole),
        "hidden": list(hidden),
        "findings": [
            {"id": one, **finding_entry(finding)}
            for one, finding in zip(finding_ids(findings, path), findings)
        ],
        "errors": [{"message": message, "part": ""} for message in errors] + problems,
    }


DOLLS_MM = (
    60.0  # a piece whose longest wooden part is shorter was hardly drawn in millimetres (own judgement)
)


def _part_entries(piece: SolvedPiece) -> list[dict[str, Any]]:
    """Every part; the longest of wood asks whether the piece was drawn in other units, where it is as small."""
    entries = [part_entry(solved) for solved in piece.parts]
    wooden = [entry for entry in entries if entry["kind"] in (None, "wood")]
    longest = max(wooden, key=lambda entry: max(entry["box_mm"]), default=None)
    if longest is not None and 0 < max(longest["box_mm"]) < DOLLS_MM:
        longest["notes"].append(
            say(
                "no part of wood is longer than its {length:.1f} mm: drawn in inches or metres? Every figure here "
                "takes what is drawn for millimetres",
                length=max(longest["box_mm"]),
            )
        )
    return entries


def part_entry(solved: SolvedPart) -> dict[str, Any]:
    """One part: what it is, how it lies, and its width today, driest and wettest."""
    part, frame = solved.part, solved.part.frame
    species = part.species.value
    known = frame.grain.known
    entry: dict[str, Any] = {
        "name": part.name,
        "key": part.key,
        "species": species.name if species else None,
        "kind": species.kind if species else None,
        "cut": solved.cut,
        "ring_angle_deg": _rounded(solved.ring_angle_deg, 1),
        "length_mm": _rounded(frame.length_mm) if known else None,
        "width_mm": _rounded(frame.width_mm) if known else None,
        "thickness_mm": _rounded(frame.thickness_mm) if known else None,
        "box_mm": sorted((_rounded(float(v)) or 0.0 for v in frame.size_mm), reverse=True),
        "axes": dict(zip(("width", "thickness", "grain"), _axes(frame.axes))) if known else None,
        "centre_mm": [_rounded(float(v)) for v in frame.centre],
        **_course_entry(solved.width, solved),
        "doubt": _doubts(solved, width_doubt),
        "thickness": _doubted(solved, solved.thickness, thickness_doubt),
        "twist": _twist_entry(solved.twist),
        "cup": _doubted(solved, solved.cup, cup_doubt),
        "moisture": {
            "glued_percent": part.glued_mc.value,
            "flattened_percent": part.flattened_mc.value,
            "fitted_percent": part.fitted_mc.value,
            "today_percent": _rounded(solved.today_mc),
        },
        "facts": {name: _fact(fact) for name, fact in facts_of(part).items()},
        "missing": list(part.missing),
        "notes": [_noted(note) for note in solved.notes],
    }
    return entry


def _noted(note: str) -> str:
    """A note in the language spoken; those of ours that hold lengths in the unit of the sheet too."""
    return say(note) if note in CUP_NOTES else word(note)


def panel_entry(panel: GluedPanel) -> dict[str, Any]:
    """An edge-glued panel: its boards, its width through the year, and how far from flat it goes when held nowhere."""
    lays = zip(panel.boards, panel.over, panel.turned)
    entry: dict[str, Any] = {
        "name": panel.name,
        "boards": [{"name": b.part.name, "over": over, "turned": turned} for b, over, turned in lays],
        "width_mm": _rounded(panel.width_mm),
        **_course_entry(panel.width, panel.boards[0]),
        "profile_unknown": panel.why_not or None,
        "months": None,
        "today": None,
    }
    if panel.shape is not None:
        drawn = panel.drawn_steps_mm
        lines = [_profile_entry(panel.shape, at, drawn) for at in range(13)]
        entry["months"] = dict(zip(MONTHS, lines[:12]))
        entry["today"] = lines[12]
    return entry


def _profile_entry(shape: PanelShape, at: int, drawn: Floats) -> dict[str, float | None]:
    tension, shear = shape.glue_tension_mpa, shape.glue_shear_mpa
    steps = np.abs(np.concatenate([shape.step_show_mm[at], shape.step_back_mm[at]]) - drawn)
    return {
        "out_of_flat_mm": _rounded(shape.out_of_flat_mm[at]),
        "departure_mm": _rounded(shape.departure_mm[at]),
        "greatest_step_mm": _rounded(steps.max()),
        "glue_tension_mpa": None if tension is None else _rounded(tension[at].max()),
        "glue_shear_mpa": None if shear is None else _rounded(shear[at].max()),
    }


def facts_of(part: Part) -> dict[str, Fact[Any]]:
    """Every fact of a part under the word a user knows it by."""
    return {
        "species": part.species,
        "grain": part.frame.grain,
        "show": part.frame.show,
        "rings": part.rings,
        "finish": part.finish,
        "figure": part.figure,
        "glued": part.glued_mc,
        "flattened": part.flattened_mc,
        "fitted": part.fitted_mc,
    }


def finding_entry(finding: Finding) -> dict[str, Any]:
    return {
        "check": finding.check,
        "severity": finding.severity,
        "parts": list(finding.parts),
        "keys": list(finding.keys),
        "message": finding.message,
        "remedy": finding.remedy,
        "month": None if finding.month is None else MONTHS[finding.month],
        "figures": dict(finding.figures),
    }


def _course_entry(course: Course | None, solved: SolvedPart) -> dict[str, Any]:
    days = {"driest": solved.driest_day, "wettest": solved.wettest_day}
    entry: dict[str, Any] = {}
    for name in ("today", "driest", "wettest"):
        reading = None if course is None else course.today if name == "today" else course.on(days[name])
        entry[f"{name}_mm"] = _rounded(reading.single) if reading else None
        if reading is not None and reading.open:
            entry[f"{name}_range_mm"] = [_rounded(reading.least), _rounded(reading.most)]
        if name != "today":
            entry[f"{name}_month"] = MONTHS[month_of_day(days[name])] if reading and solved.moves else None
    return entry


def _twist_entry(twist: Twist | None) -> dict[str, Any] | None:
    """Least and most turn of the far end and lift of a corner, driest and wettest; None where nothing tells it."""
    if twist is None:
        return None
    rings, both, lift = twist.from_rings_degrees, twist.degrees, twist.corner_lift_mm
    entry: dict[str, Any] = {"notes": [word(flag) for flag in twist.flags]}
    for place, when in enumerate(("driest", "wettest")):
        entry[f"{when}_from_rings_deg"] = None if rings is None else _rounded(rings[place])
        entry[f"{when}_deg"] = None if both is None else [_rounded(end[place]) for end in both]
        entry[f"{when}_corner_lift_mm"] = None if lift is None else [_rounded(end[place]) for end in lift]
    return entry


def _doubted(
    solved: SolvedPart, course: Course | None, doubt: Callable[[SolvedPart, str], Doubt | None]
) -> dict[str, Any] | None:
    return {**_course_entry(course, solved), "doubt": _doubts(solved, doubt)} if course else None


def _doubts(solved: SolvedPart, doubt: Callable[[SolvedPart, str], Doubt | None]) -> dict[str, Any] | None:
    """Likely and nearly certain ranges of the three days, the shares of the causes, and the one that rules."""
    days = {when: doubt(solved, when) for when in ("today", "driest", "wettest")}
    return {
        when: {
            "likely_mm": [_rounded(v) for v in found.likely_mm],
            "nearly_certain_mm": [_rounded(v) for v in found.nearly_certain_mm],
            "shares": {cause: _rounded(share) for cause, share in found.shares.items()},
            "rules": found.rules,
        }
        for when, found in days.items()
        if found is not None
    } or None


def _fact(fact: Fact[Any]) -> dict[str, str]:
    return {"origin": fact.origin, "reason": word(fact.reason)}


def _axes(rows: Any) -> list[list[float]]:
    return [[round(float(v), 9) + 0.0 for v in row] for row in rows]


def _rounded(value: float | None, digits: int = 3) -> float | None:
    return None if value is None else round(float(value), digits) + 0.0
