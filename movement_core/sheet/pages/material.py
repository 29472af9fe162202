"""What a movement sheet is drawn from: the worked-out piece, and the same as JSON, to which every figure points."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np

from movement_core.air.year import MONTHS
from movement_core.piece.captive_room import CaptiveRoom
from movement_core.piece.contact.bodies import Body
from movement_core.piece.solve import SolvedPart
from movement_core.piece.top_place import TopPlace
from movement_core.piece.top_plan import TopPlans, plan_top
from movement_core.piece.whole import WholePiece
from movement_core.sheet.holding import plans_entry, untold_entry
from movement_core.sheet.pages.lengths import MM
from movement_core.sheet.pages.room import room_entry
from movement_core.sources import told_basis
from movement_core.wood import Species

SCHEMA = "heartside-sheet-1"
FIT_MM = 3.0  # gaps drawn wider than this are rooms, not fits (own)
MOVES_MM = 0.2  # gaps that change by less over the year are set as drawn (own)


@dataclass(frozen=True, eq=False)
class PlannedTop:
    """A top and its plans, or why there are none."""

    place: TopPlace
    plans: TopPlans | None
    entry: Mapping[str, Any]


def planned_tops(
    whole: WholePiece, flatness_mm: float | None = None, kinds: Sequence[str] = ()
) -> tuple[PlannedTop, ...]:
    """Every top of a piece that nothing else holds captive, with its plans; the usual kinds where none is named."""
    found = []
    for top in whole.tops:
        if top.place.captured:
            continue
        if top.top is None:
            found.append(PlannedTop(top.place, None, untold_entry(top)))
            continue
        plans = plan_top(top, flatness_mm, kinds)
        found.append(PlannedTop(top.place, plans, plans_entry(plans)))
    return tuple(found)


@dataclass(frozen=True, eq=False)
class Material:
    """Everything a sheet shows.

    Attributes
    ----------
    report : of ``file_entry``. whole : the piece with what lies between its parts.
    bodies : faces of its parts, for the pictures; parts without one are only left out of those.
    tops : the tops with their plans. units : of the lengths in the sentences of all these, "mm" or "inch".
    """

    report: Mapping[str, Any]
    whole: WholePiece
    bodies: Sequence[Body] = ()
    tops: Sequence[PlannedTop] = ()
    units: str = MM

    @property
    def parts(self) -> Sequence[SolvedPart]:
        """In the order in which they are numbered."""
        return self.whole.solved.parts

    @cached_property
    def number(self) -> Mapping[str, int]:
        """Key of a part → its number on the sheet."""
        return {solved.part.key: place for place, solved in enumerate(self.parts, 1)}

    @cached_property
    def names(self) -> Sequence[str]:
        """All names that may stand in sentences."""
        panels = [panel.name for panel in self.whole.panels]
        return [solved.part.name for solved in self.parts] + panels + [top.place.name for top in self.tops]

    @cached_property
    def data(self) -> dict[str, Any]:
        """The sheet as JSON: the report, the tops, and what the sheet works out of them. Units stand in the names."""
        report, piece = self.report, self.whole.solved
        return {
            "schema": SCHEMA,
            "report": dict(report),
            "tops": [dict(top.entry) for top in self.tops],
            "parts": [_part(place, entry) for place, entry in enumerate(report["parts"], 1)],
            "panels": [{"total_mm": _total(panel)} for panel in report["panels"]],
            "gaps": [i for i, gap in enumerate(report["gaps"]) if _is_fit(gap)],
            "grooves": [_groove(self.whole, room) for room in self.whole.rooms],
            "woods": [_wood(species) for species in _woods(self.parts)],
            "air": {
                "temperature_c": [round(float(v), 1) for v in piece.year.temperature_c],
                "rh_percent": [round(float(v), 1) for v in piece.year.rh_percent],
                "rh_least_percent": round(min(piece.year.rh_percent), 1),
                "rh_most_percent": round(max(piece.year.rh_percent), 1),
                "moisture_least_percent": min(report["year"]["moisture_percent"]),
                "moisture_most_percent": max(report["year"]["moisture_percent"]),
            },
            "room": room_entry(self.whole),
        }


def _part(number: int, entry: Mapping[str, Any]) -> dict[str, Any]:
    """What the sheet adds to one part: its number, its movement over the year, its error and what would narrow it."""
    doubt = entry["doubt"] or {}
    errors = {
        when: (day["likely_mm"][1] - day["likely_mm"][0] - _open(entry, when)) / 2
        for when, day in doubt.items()
        if when != "today"
    }
    worst = max(errors, key=lambda when: errors[when]) if errors else None
    likely = errors[worst] if worst else None
    rules = doubt[worst]["rules"] if worst else None
    share = doubt[worst]["shares"].get(rules, 0.0) if worst and rules else 0.0
    return {
        "number": number,
        "total_mm": _total(entry),
        "likely_error_mm": None if likely is None else round(likely, 3),
        "rules": rules,
        "error_if_measured_mm": None if likely is None else round(likely * float(np.sqrt(1 - share)), 3),
    }


def _open(entry: Mapping[str, Any], when: str) -> float:
    low, high = entry.get(f"{when}_range_mm", (0.0, 0.0))
    return float(high - low)


def _total(entry: Mapping[str, Any]) -> float | None:
    """How much wider it is at its wettest than at its driest; where ranges are known, between their nearest views."""
    ends: list[tuple[float, float]] = []
    for when in ("driest", "wettest"):
        value, spread = entry[f"{when}_mm"], entry.get(f"{when}_range_mm")
        if value is None and not spread:
            return None
        ends.append((value, value) if spread is None else (spread[0], spread[1]))
    (dry_low, dry_high), (wet_low, wet_high) = ends
    return round(max(wet_low - dry_low, wet_high - dry_high), 3)


def _is_fit(gap: Mapping[str, Any]) -> bool:
    moves = gap["most_mm"] - gap["least_mm"] >= MOVES_MM
    return bool(gap["works"] and gap["drawn_mm"] <= FIT_MM and moves)


def _groove(whole: WholePiece, room: CaptiveRoom) -> dict[str, Any]:
    """A panel in grooves: its room in the damp season, and what still covers its edges in the dry one."""
    part = whole.parts[room.captive.part].part
    return {
        "key": part.key,
        "name": part.name,
        "room_mm": _rounded(room.room_mm),
        "room_least_mm": _rounded(room.least_room_mm),
        "room_least_month": MONTHS[room.growth_month],
        "cover_mm": _rounded(room.cover_mm),
        "cover_least_mm": _rounded(room.least_cover_mm),
        "cover_least_month": MONTHS[room.shrinkage_month],
    }


def _rounded(value: float | None) -> float | None:
    return None if value is None else round(float(value), 3) + 0.0


def _woods(parts: Sequence[SolvedPart]) -> list[Species]:
    found = {s.part.species.value.name: s.part.species.value for s in parts if s.part.species.value}
    return list(found.values())


def _wood(species: Species) -> dict[str, Any]:
    """A material's figures per 1 % of moisture, in percent, and their sources."""
    rests = dict.fromkeys(
        told_basis(str(species.sources[name]))
        for name in ("radial_coefficient", "tangential_coefficient", "thickness_coefficient")
        if name in species.sources
    )
    return {
        "name": species.name,
        "botanical": species.botanical,
        "kind": species.kind,
        "radial_percent_per_percent": round(100 * species.radial_coefficient, 4),
        "tangential_percent_per_percent": round(100 * species.tangential_coefficient, 4),
        "variation_percent": round(100 * species.variation, 1),
        "basis": species.basis,
        "sources": list(rests),
    }
