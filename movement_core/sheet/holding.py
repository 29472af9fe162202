"""How to hold a top, as plain data: the alternatives, and every fastener of each with its place and its room."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from movement_core.air.year import MONTHS
from movement_core.holding.fasteners import (
    ACROSS,
    ENGAGED_MM,
    GROOVE_PLAY_MM,
    Kind,
    find_kind,
    throw_mm,
)
from movement_core.holding.fixed_anyway import if_fixed
from movement_core.holding.held import Held
from movement_core.holding.metal_base import metal_base
from movement_core.holding.plan_model import OUT_OF_FLAT, PULLED, Placed, Plan
from movement_core.holding.plan_words import case_told
from movement_core.holding.rails import Rail
from movement_core.piece.top_names import edge_names, end_names
from movement_core.piece.top_place import TopPlace
from movement_core.piece.top_plan import TopPlans
from movement_core.piece.top_shapes import DRIEST, TODAY, WETTEST
from movement_core.piece.tops import FoundTop
from movement_core.sheet.bar_recipes import bar_recipes
from movement_core.sheet.datum import between_shoulders, end_is
from movement_core.sheet.seasons import (
    centre_sentences,
    fixed_line_sentence,
    free_departure,
    hearts,
    season_sentences,
)
from movement_core.wording import say, word

SCHEMA = "heartside-hold-1"
LEAST_BESIDE_SLOT_MM = 8.0  # wood to leave on either side of a slot across a rail (own)


def untold_entry(found: FoundTop) -> dict[str, Any]:
    """A top that cannot be worked out: what is missing of it."""
    return {**_place_entry(found.place), "missing": list(found.why_not), "plans": []}


def plans_entry(plans: TopPlans) -> dict[str, Any]:
    """Everything about one top and its plans: units stand in the names, None is *not known* or *none*."""
    found = plans.found
    top, moistures = found.top, found.moistures
    assert top is not None and moistures is not None  # or there were no plans
    edges, ends = edge_names(found.place), end_names(found.place)
    cases = [case.name for case in top.cases]
    return {
        **_place_entry(found.place),
        "missing": [],
        "fitted_percent": _rounded(found.fitted_mc, 2),
        "moisture_percent": _by_month(moistures.of_the_panel),
        "hearts": hearts(plans) or None,
        "wish": {
            "flatness_mm": plans.wish.flatness_mm,
            "kinds": list(plans.wish.kinds),
            "fixed_line_mm": _rounded(plans.wish.fixed_mm),
            "fixed_line_asked": plans.stays.asked,
            "fixed_lines_said_mm": {name: _rounded(at) for name, at in plans.stays.said},
        },
        "datum": {
            "edge": edges[0],
            "other_edge": edges[1],
            "end": ends[0],
            "other_end": ends[1],
            "end_is": end_is(found.place, ends[0]),
        },
        "rails": [_rail_entry(rail, found.place) for rail in top.rails],
        "rests_also_on": [bearing.name for bearing in top.bearings],
        "free_departure_mm": {c.name: _rounded(free_departure(c), 2) for c in top.cases},
        "unheld_out_of_flat_mm": _flat(cases, plans.loose),
        "drawn_fasteners": len(found.place.tied),
        "as_drawn_out_of_flat_mm": _flat(cases, plans.drawn),
        "flat_by_itself": plans.flat_by_itself,
        "middle_of_ends": {
            "rails": list(plans.centre_rails),
            "out_of_flat_mm": _flat(cases, plans.centre),
            "says": list(centre_sentences(plans)),
        },
        "plans": [_plan_entry(plan, plans) for plan in plans.plans],
        "if_fixed": _fixed_entry(found),
        "metal_base": _metal_entry(plans),
        "recipes": bar_recipes(found),
        "notes": list(found.notes),
        "cautions": [word(text) for text in dict.fromkeys((*found.cautions, *plans.plans[0].cautions))],
    }


def _place_entry(place: TopPlace) -> dict[str, Any]:
    return {
        "name": place.name,
        "boards": [board.part.name for board in place.boards],
        "keys": [board.part.key for board in place.boards],
        "length_mm": _rounded(place.length_mm),
        "length_between_shoulders": between_shoulders(place),
        "width_mm": _rounded(place.width_mm),
        "thickness_mm": _rounded(place.thickness_mm),
    }


def _by_month(values: Iterable[float]) -> dict[str, float | None]:
    return {name: _rounded(float(v), 2) for name, v in zip((*MONTHS, DRIEST, WETTEST, TODAY), values)}


def _flat(cases: Sequence[str], held: Sequence[Held]) -> dict[str, float | None]:
    return {name: _rounded(one.out_of_flat_mm, 2) for name, one in zip(cases, held)}


def _rail_entry(rail: Rail, place: TopPlace) -> dict[str, Any]:
    part = {one.name: one.solved.part for one in place.under}.get(rail.name)
    species = part.species.value if part else None
    return {
        "name": rail.name,
        "species": species.name if species else None,
        "runs": rail.direction,
        "length_mm": _rounded(rail.length_mm),
        "breadth_mm": _rounded(rail.breadth_mm),
        "joints_mm": sorted(round(_from_datum(rail, joint), 1) for joint in rail.joints_mm),
        "measured_from": _measured_from(rail, place),
    }


def _measured_from(rail: Rail, place: TopPlace) -> str:
    """Which end of a rail its distances count from: that toward the top's datum."""
    toward = (edge_names(place) if rail.direction == ACROSS else end_names(place))[0]
    return say("its end toward {where}", where=toward)


def _from_datum(rail: Rail, from_start_mm: float) -> float:
    """A distance along a rail, counted from its end toward −across (or −along)."""
    axis = 1 if rail.direction == ACROSS else 0
    return from_start_mm if rail.start_mm[axis] <= rail.end_mm[axis] else rail.length_mm - from_start_mm


def _plan_entry(plan: Plan, plans: TopPlans) -> dict[str, Any]:
    kind = find_kind(plan.kind)
    flat = dict(plan.out_of_flat_mm)
    worst = max(flat, key=lambda name: flat[name])
    allowed = [p.capacity.allowable_n for p in plan.placed if p.capacity.allowable_n is not None]
    used = list(dict.fromkeys(p.kind for p in plan.placed))
    return {
        "kind": plan.kind,
        "name": word(kind.name),
        "kinds_used": {name: sum(p.kind == name for p in plan.placed) for name in used},
        "found": plan.found,
        "count": len(plan.placed),
        "out_of_flat_mm": {name: _rounded(value, 2) for name, value in flat.items()},
        "driest_out_of_flat_mm": _rounded(_worst_of(flat, DRIEST), 2),
        "wettest_out_of_flat_mm": _rounded(_worst_of(flat, WETTEST), 2),
        "worst_out_of_flat_mm": _rounded(plan.worst_out_of_flat_mm, 2),
        "worst_case": worst,
        "worst_pull_n": _rounded(plan.worst_pull_n, 0),
        "allowable_pull_n": _rounded(min(allowed), 0) if allowed else None,
        "problems": [problem.text for problem in plan.problems],
        "other_problems": [
            problem.text for problem in plan.problems if problem.kind not in (OUT_OF_FLAT, PULLED)
        ],
        "refused": list(plan.refused),
        "what_would": list(plan.what_would),
        "seasons": list(season_sentences(plans, plan)),
        "fixed_line": fixed_line_sentence(plans, plan),
        "remarks": _remarks(plan, plans),
        "flags": sorted(
            {f"{case_told(held.case)}: {word(flag)}" for held in plan.held for flag in held.flags}
        ),
        "hardware": [_hardware(name, plan) for name in used],
        "fasteners": [_fastener(i, placed, plans) for i, placed in enumerate(plan.placed, 1)],
    }


def _remarks(plan: Plan, plans: TopPlans) -> list[str]:
    """Slots that leave too little of the rail beside them, rails without a fastener, what a lid needs instead."""
    top = plans.found.top
    assert top is not None
    breadth = {rail.name: rail.breadth_mm for rail in top.rails if rail.direction != ACROSS}
    found = []
    for rail, wide in breadth.items():
        slots = [p.slot.length_mm for p in plan.placed if p.rail == rail and p.slot is not None]
        left = (wide - max(slots)) / 2 if slots else wide
        if left < LEAST_BESIDE_SLOT_MM:
            found.append(
                say(
                    "{rail} is {wide:.0f} mm broad: a slot of {slot:.1f} mm across it leaves {left:.1f} mm on each "
                    "side; slot a cleat or a block screwed to its face instead",
                    rail=rail,
                    wide=wide,
                    slot=max(slots),
                    left=max(left, 0),
                )
            )
    empty = [rail.name for rail in top.rails if all(p.rail != rail.name for p in plan.placed)]
    if empty and plan.placed:
        found.append(say("no fastener on {rails}", rails=", ".join(empty)))
    if plan.placed and not plans.found.place.tied:
        found.append(
            say(
                "this is for a top that stays where it is: if it opens, as a lid does, fasten it to nothing below it; "
                "battens across it, screwed in slots, or breadboard ends keep it flat"
            )
        )
    return found


def _worst_of(flat: dict[str, float], case: str) -> float:
    """Of a case that may have been followed for two readings of the rings, the worse."""
    return max(value for name, value in flat.items() if name.split(",")[0] == case)


def _hardware(name: str, plan: Plan) -> dict[str, Any]:
    """What to buy or make of one kind: its screw, what is known to give first, what is not known."""
    kind = find_kind(name)
    capacity = next(p.capacity for p in plan.placed if p.kind == name)
    screw = capacity.screw
    return {
        "kind": name,
        "name": word(kind.name),
        "count": sum(p.kind == name for p in plan.placed),
        "screw_length_mm": screw.length_mm if screw else None,
        "screw_shank_mm": kind.shank_mm,
        "wood_left_above_mm": _rounded(screw.left_mm, 1) if screw else None,
        "passes_before_top_mm": kind.through_mm,
        "allowable_pull_n": _rounded(capacity.allowable_n, 0),
        "weakest_known_link": word(capacity.weakest),
        "safety": capacity.safety,
        "unknown_links": [word(link) for link in capacity.unknown],
        "note": word(kind.note),
    }


def _fastener(number: int, placed: Placed, plans: TopPlans) -> dict[str, Any]:
    found, top = plans.found, plans.found.top
    assert top is not None and found.strain is not None
    rail = next(rail for rail in top.rails if rail.name == placed.rail)
    along, across = placed.place_mm
    low = found.strain.lines_mm[0]
    edge, here = (float(v) for v in found.strain.moved("today", [low, across], plans.wish.fixed_mm))
    slot, engaged = placed.slot, placed.engaged
    mid = (placed.least_mm + placed.most_mm) / 2
    on_rail = _from_datum(rail, placed.from_rail_start_mm)
    return {
        "number": number,
        "rail": placed.rail,
        "kind": placed.kind,
        "from_edge_today_mm": _rounded(across - low + here - edge, 1),
        "from_end_mm": _rounded(along + found.place.length_mm / 2, 1),
        "on_rail_mm": _rounded(on_rail, 1),
        "free": _free_way(placed, rail),
        "travel_least_mm": _rounded(placed.least_mm, 2),
        "travel_today_mm": _rounded(placed.today_mm, 2),
        "travel_most_mm": _rounded(placed.most_mm, 2),
        "slot_length_mm": _rounded(slot.length_mm, 1) if slot else None,
        "slot_width_mm": _rounded(slot.width_mm, 1) if slot else None,
        "slot_middle_on_rail_mm": _rounded(on_rail + (mid if rail.direction == ACROSS else 0.0), 1)
        if slot
        else None,
        "slot_middle_aside_mm": _rounded(mid, 1) if slot and rail.direction != ACROSS else None,
        "screw_from_slot_end_today_mm": _rounded(slot.screw_today_mm, 1) if slot else None,
        "tongue_today_mm": _rounded(engaged.today_mm, 1) if engaged else None,
        "tongue_range_mm": [_rounded(engaged.least_mm, 1), _rounded(engaged.most_mm, 1)] if engaged else None,
        "margin_mm": _rounded(_margin(placed, rail, find_kind(placed.kind)), 1),
        "pull_n": _rounded(placed.pull_n, 0),
        "allowable_pull_n": _rounded(placed.capacity.allowable_n, 0),
        "pulled_in": list(placed.at_work),
    }


def _free_way(placed: Placed, rail: Rail) -> str:
    """Which way the fastener lets the top move there."""
    kind = find_kind(placed.kind)
    if kind.kind.startswith("slotted"):
        if placed.slot is None:
            return say("not at all: it fixes the top here")
        if rail.direction == ACROSS:
            return say("along its slot, with the rail")
        return say("along its slot, across the rail")
    if kind.arm_mm is not None:
        return say("as far as its arm swings")
    if rail.direction == ACROSS:
        return say("along the groove")
    return say("in and out of the groove") if kind.groove_mm else say("not at all")


def _margin(placed: Placed, rail: Rail, kind: Kind) -> float | None:
    """Room left in the worst month, mm; None where its groove is as long as one cares to make it."""
    if placed.slot is not None:
        return min(placed.slot.low_margin_mm, placed.slot.high_margin_mm)
    if placed.engaged is not None and kind.groove_mm is not None:
        deepest = kind.groove_mm - GROOVE_PLAY_MM
        return min(placed.engaged.least_mm - ENGAGED_MM, deepest - placed.engaged.most_mm)
    low, high = throw_mm(kind, rail.direction)
    room = min(placed.least_mm - low, high - placed.most_mm)
    return None if room == float("inf") else room


def _fixed_entry(found: FoundTop) -> dict[str, Any] | None:
    """What would happen if it were glued or screwed solid over its whole width."""
    strain, top = found.strain, found.top
    assert strain is not None and top is not None
    known = [
        species.tension_perp_mpa for b in found.place.boards for species in [b.part.species.value] if species
    ]
    strengths = [value for value in known if value is not None]
    strength = min(strengths) if len(strengths) == len(known) else None
    fixed = if_fixed(strain, top.plate.elastic.e_across_mpa, strength)
    return {
        "shrinkage_kept_mm": _rounded(fixed.kept_shrinkage * strain.width_mm, 1),
        "swelling_kept_mm": _rounded(fixed.kept_swelling * strain.width_mm, 1),
        "tension_mpa": _rounded(fixed.tension_mpa, 1),
        "strength_mpa": _rounded(strength, 1),
        "split": fixed.split,
        "crush": fixed.crush,
        "set_at_most_mm": _rounded(fixed.set_most_mm, 1),
    }


def _metal_entry(plans: TopPlans) -> dict[str, Any] | None:
    """Inserts and washers where the base is metal."""
    found, best = plans.found, plans.plans[0]
    if not found.metal or found.top is None or not best.placed:
        return None
    across = tuple(sorted({round(p.place_mm[1], 3) for p in best.placed}))
    base = metal_base(found.top.strain, across, found.place.thickness_mm, fixed_mm=plans.wish.fixed_mm)
    return {
        "insert_mm": base.insert_mm,
        "wood_left_above_mm": _rounded(base.left_above_insert_mm, 1),
        "washer_mm": _rounded(max(hole.washer_mm for hole in base.holes), 1),
    }


def _rounded(value: float | None, digits: int = 3) -> float | None:
    return None if value is None else round(float(value), digits) + 0.0
