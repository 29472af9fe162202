"""Battens under a top and breadboard ends, as drawn: where to screw, glue and leave room."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from movement_core.errors import HeartsideError
from movement_core.holding.end_recipes import PEG_MM, SCREW_MM, batten, breadboard_end
from movement_core.holding.travel import Slot
from movement_core.piece.top_place import Near
from movement_core.piece.tops import FoundTop


def bar_recipes(found: FoundTop) -> list[dict[str, Any]]:
    """One recipe for each batten and breadboard end: places across from the top's middle, mm, as drawn."""
    return [
        *(_safely(_batten, "batten", found, one) for one in found.place.battens),
        *(_safely(_end, "breadboard end", found, one) for one in found.place.ends),
    ]


def _safely(
    recipe: Callable[[FoundTop, Near], dict[str, Any]], kind: str, found: FoundTop, one: Near
) -> dict[str, Any]:
    try:
        return {"part": one.name, "kind": kind, "why_not": None, **recipe(found, one)}
    except HeartsideError as error:
        return {"part": one.name, "kind": kind, "why_not": str(error)}


def _batten(found: FoundTop, one: Near) -> dict[str, Any]:
    strain = found.top.strain if found.top else None
    assert strain is not None
    inset = max(0.0, strain.width_mm / 2 - float(one.high[1]), strain.width_mm / 2 + float(one.low[1]))
    made = batten(strain, inset_mm=inset)
    return {
        "screw_mm": SCREW_MM,
        "screws": [
            {
                "across_mm": round(screw.across_mm, 1),
                "travel_least_mm": round(screw.least_mm, 2),
                "travel_most_mm": round(screw.most_mm, 2),
                **_slot(screw.slot),
            }
            for screw in made.screws
        ],
        "overhang_driest_mm": round(made.overhang_mm[0], 1),
        "overhang_wettest_mm": round(made.overhang_mm[1], 1),
    }


def _end(found: FoundTop, one: Near) -> dict[str, Any]:
    top = found.top
    assert top is not None and found.strain is not None
    breadth = float(one.high[0] - one.low[0])
    made = breadboard_end(top.strain, found.place.thickness_mm, breadth)
    expected = breadboard_end(found.strain, found.place.thickness_mm, breadth).proud_mm
    return {
        "tongue_thickness_mm": round(made.tongue_thickness_mm, 1),
        "tongue_depth_mm": round(made.tongue_depth_mm, 1),
        "tenon_length_mm": round(made.tenon_length_mm, 1),
        "peg_mm": PEG_MM,
        "tenons": [
            {
                "across_mm": round(tenon.centre_mm, 1),
                "width_mm": round(tenon.width_mm, 1),
                "slack_front_today_mm": round(tenon.slack_front_mm, 1),
                "slack_back_today_mm": round(tenon.slack_back_mm, 1),
                **_slot(tenon.peg),
            }
            for tenon in made.tenons
        ],
        "glue_from_mm": round(made.glue_from_mm, 1),
        "glue_to_mm": round(made.glue_to_mm, 1),
        "proud_driest_mm": round(made.proud_mm[0], 1),
        "proud_wettest_mm": round(made.proud_mm[2], 1),
        "proud_driest_expected_mm": round(expected[0], 1),
        "proud_wettest_expected_mm": round(expected[2], 1),
    }


def _slot(slot: Slot | None) -> dict[str, Any]:
    return {
        "slot_length_mm": None if slot is None else round(slot.length_mm, 1),
        "screw_from_slot_end_today_mm": None if slot is None else round(slot.screw_today_mm, 1),
    }
