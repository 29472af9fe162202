"""What a held top does through the year, in sentences: months that are alike are told together."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from movement_core.air.year import MONTHS
from movement_core.holding.fasteners import ACROSS
from movement_core.holding.held import Held
from movement_core.holding.model import LoadCase
from movement_core.holding.plan_model import Placed, Plan
from movement_core.holding.plan_words import ON_THE_CENTRE
from movement_core.piece.top_plan import TopPlans, edge_names

SHAPED_MM = 0.2  # a free shape nearer to flat than this is called flat
DIFFERS_MC = 0.2  # percent: nearer to the built moisture than this is as built


def free_departure(case: LoadCase) -> float:
    """Greatest height of a free shape over the chord between its edges, mm: crown above 0, hollow below."""
    lines = case.free.lines_mm
    height = case.free.height(np.linspace(lines[0], lines[-1], 201))
    return float(height[np.argmax(np.abs(height))])


def month_span(months: Sequence[int]) -> str:
    """ "November to February, June" from month numbers 0–11, running on over the turn of the year."""
    chosen = sorted(set(months))
    if not chosen or len(chosen) == 12:
        return "all year" if chosen else ""
    starts = [m for m in chosen if (m - 1) % 12 not in chosen]
    spans = []
    for start in starts:
        end = start
        while (end + 1) % 12 in chosen:
            end = (end + 1) % 12
        spans.append(MONTHS[start] if start == end else f"{MONTHS[start]} to {MONTHS[end]}")
    return ", ".join(spans)


def season_sentences(plans: TopPlans, plan: Plan) -> tuple[str, ...]:
    """What the plan's fasteners do in which months; alike months together, in the order of the year."""
    top = plans.found.top
    assert top is not None  # or there were no plan
    months: dict[
        int, tuple[float, Held]
    ] = {}  # where rings are known roughly, the reading that bends it more
    for case, held in zip(top.cases, plan.held):
        name, departure = case.name.split(",")[0], free_departure(case)
        if name in MONTHS:
            month = MONTHS.index(name)
            if month not in months or abs(departure) > abs(months[month][0]):
                months[month] = (departure, held)
    alike: dict[tuple[str, str], list[tuple[int, float, float]]] = {}
    for month, (departure, held) in months.items():
        key = (_shape(departure), _who_holds(plan.placed, held, plans))
        alike.setdefault(key, []).append((month, abs(departure), held.out_of_flat_mm))
    told = []
    for (shape, who), found in alike.items():
        when = month_span([month for month, _, _ in found])
        free, flat = (max(one[at] for one in found) for at in (1, 2))
        wants = "it wants to lie flat" if shape == "flat" else f"it wants to {shape} by up to {free:.1f} mm"
        left = "" if shape == "flat" and not plan.placed else f"; {flat:.1f} mm out of flat at most"
        told.append(f"{when}: {wants}; {who}{left}")
    return tuple(told)


def _shape(departure: float) -> str:
    return "flat" if abs(departure) < SHAPED_MM else "crown" if departure > 0 else "go hollow"


def _who_holds(placed: Sequence[Placed], held: Held, plans: TopPlans) -> str:
    width = plans.found.place.width_mm
    centred = [p for p in placed if abs(p.place_mm[1]) <= ON_THE_CENTRE * width]
    working = [p for p in placed if held.case in p.at_work]
    if not placed:
        return "nothing holds it"
    if not working:
        return "no fastener is pulled"
    at_centre, at_edges = [p for p in working if p in centred], [p for p in working if p not in centred]
    if not at_edges:
        return "the fasteners near the middle of its width hold it alone"
    if centred and not at_centre:
        return "the fasteners near the middle of its width do nothing, those toward the edges hold it"
    return (
        "fasteners near the middle and toward the edges share the holding"
        if at_centre
        else ("the fasteners toward the edges hold it")
    )


def centre_sentences(plans: TopPlans) -> tuple[str, ...]:
    """Whether one anchor at the middle of each end would do, drier and damper than when it was made flat."""
    found = plans.found
    if not plans.centre or found.moistures is None or found.top is None:
        return ()
    change = found.moistures.of_the_panel - float(found.moistures.flattened.mean())
    change = np.tile(change, len(plans.centre) // len(change))
    where = f"one fastener at the middle of each end ({' and '.join(plans.centre_rails)})"
    told = []
    for way, chosen in (("drier", change < -DIFFERS_MC), ("damper", change > DIFFERS_MC)):
        cases = np.flatnonzero(chosen)
        if not len(cases):
            told.append(f"It never gets {way} than when it was made flat, as far as this year's air goes.")
            continue
        flat = max(plans.centre[i].out_of_flat_mm for i in cases)
        loose = max(plans.loose[i].out_of_flat_mm for i in cases)
        told.append(
            f"While it is {way} than when it was made flat, {where} {_verdict(flat, loose, plans.wish.flatness_mm)}."
        )
    return tuple(told)


def _verdict(flat: float, loose: float, wish: float) -> str:
    left = f"{flat:.1f} mm out of flat (wished {wish:g}, with none {loose:.1f})"
    if loose - flat < max(0.05, 0.1 * loose):
        return f"would do nothing{', and nothing is needed' if loose <= wish else ''}: {left}"
    return f"would {'be enough to keep it flat' if flat <= wish else 'not be enough'}: {left}"


def hearts(plans: TopPlans) -> str:
    """How the boards lie: which of them heart side up, and what that means while they dry."""
    place = plans.found.place
    up: list[str] = []
    down: list[str] = []
    for solved, over in zip(place.boards, place.over):
        rings = solved.part.rings.value
        if rings is None or (rings.pith_mm is None and rings.heart is None):
            continue
        toward_show = rings.pith_mm[1] > 0 if rings.pith_mm is not None else rings.heart == "show"
        (down if toward_show == over else up).append(solved.part.name)
    if up and down:
        fewer, way = (down, "down") if len(down) <= len(up) else (up, "up")
        return (
            f"{len(up)} boards lie heart side up, {len(down)} heart side down ({way}: {', '.join(fewer)}), so the top "
            "waves rather than bends one way"
        )
    if up:
        return (
            f"{_every(up)} heart side up: drier than when made flat the middle rises and the edges press down, damper "
            "the edges lift"
        )
    if down:
        return f"{_every(down)} heart side down: drier than when made flat the edges lift, damper the middle rises"
    return ""


def _every(boards: Sequence[str]) -> str:
    return "it lies" if len(boards) == 1 else "every board lies"


def fixed_line_sentence(plans: TopPlans, plan: Plan) -> str:
    """What keeps the fixed line where it is: plain holes of the plan's own, or a screw to add."""
    place, top = plans.found.place, plans.found.top
    assert top is not None
    edges = edge_names(place)
    at = plans.wish.fixed_mm
    where = "the middle of its width"
    if abs(at) > 1e-6:
        where = f"its edge at {edges[0] if at < 0 else edges[1]}"
    plain = [p for p in plan.placed if p.kind.startswith(("slotted", "plain")) and p.slot is None]
    if plain:
        rails = sorted({p.rail for p in plain})
        return f"what stays put is {where}: the plain holes in {' and '.join(rails)} hold it there"
    crossing = [r.name for r in top.rails if r.direction == ACROSS]
    if crossing:
        return (
            f"what stays put is {where}: add one plain screw through {' and '.join(crossing)} there, or the whole top "
            "may creep aside"
        )
    return f"what stays put is {where}: add one plain screw near it, or the whole top may creep aside"
