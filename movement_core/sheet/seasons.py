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
from movement_core.piece.top_names import SAME_MM, edge_names
from movement_core.piece.top_place import TopPlace
from movement_core.piece.top_plan import TopPlans
from movement_core.wording import say, word

SHAPED_MM = 0.2  # a free shape nearer to flat than this is called flat
FLAT, CROWN, HOLLOW = "flat", "crown", "hollow"
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
        return say("all year") if chosen else ""
    starts = [m for m in chosen if (m - 1) % 12 not in chosen]
    spans = []
    for start in starts:
        end = start
        while (end + 1) % 12 in chosen:
            end = (end + 1) % 12
        first, last = word(MONTHS[start]), word(MONTHS[end])
        spans.append(first if start == end else say("{first} to {last}", first=first, last=last))
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
        wants = {
            FLAT: say("it wants to lie flat"),
            CROWN: say("it wants to crown by up to {free:.1f} mm", free=free),
            HOLLOW: say("it wants to go hollow by up to {free:.1f} mm", free=free),
        }[shape]
        said = [f"{when}: {wants}", who]
        if shape != FLAT or plan.placed:
            said.append(say("{flat:.1f} mm out of flat at most", flat=flat))
        told.append("; ".join(said))
    return tuple(told)


def _shape(departure: float) -> str:
    return FLAT if abs(departure) < SHAPED_MM else CROWN if departure > 0 else HOLLOW


def _who_holds(placed: Sequence[Placed], held: Held, plans: TopPlans) -> str:
    width = plans.found.place.width_mm
    centred = [p for p in placed if abs(p.place_mm[1]) <= ON_THE_CENTRE * width]
    working = [p for p in placed if held.case in p.at_work]
    if not placed:
        return say("nothing holds it")
    if not working:
        return say("no fastener is pulled")
    at_centre, at_edges = [p for p in working if p in centred], [p for p in working if p not in centred]
    if not at_edges:
        return say("the fasteners near the middle of its width hold it alone")
    if centred and not at_centre:
        return say("the fasteners near the middle of its width do nothing, those toward the edges hold it")
    if at_centre:
        return say("fasteners near the middle and toward the edges share the holding")
    return say("the fasteners toward the edges hold it")


def centre_sentences(plans: TopPlans) -> tuple[str, ...]:
    """Whether one anchor at the middle of each end would do, drier and damper than when it was made flat."""
    found = plans.found
    if not plans.centre or found.moistures is None or found.top is None:
        return ()
    change = found.moistures.of_the_panel - float(found.moistures.flattened.mean())
    change = np.tile(change, len(plans.centre) // len(change))
    rails = say(" and ").join(plans.centre_rails)
    told = []
    for drier, chosen in ((True, change < -DIFFERS_MC), (False, change > DIFFERS_MC)):
        cases = np.flatnonzero(chosen)
        if not len(cases):
            told.append(
                say("It never gets drier than when it was made flat, as far as this year's air goes.")
                if drier
                else say("It never gets damper than when it was made flat, as far as this year's air goes.")
            )
            continue
        flat = max(plans.centre[i].out_of_flat_mm for i in cases)
        loose = max(plans.loose[i].out_of_flat_mm for i in cases)
        verdict = _verdict(flat, loose, plans.wish.flatness_mm)
        told.append(
            say(
                "While it is drier than when it was made flat, one fastener at the middle of each end ({rails}) "
                "{verdict}.",
                rails=rails,
                verdict=verdict,
            )
            if drier
            else say(
                "While it is damper than when it was made flat, one fastener at the middle of each end ({rails}) "
                "{verdict}.",
                rails=rails,
                verdict=verdict,
            )
        )
    return tuple(told)


def _verdict(flat: float, loose: float, wish: float) -> str:
    left = say(
        "{flat:.1f} mm out of flat (wished {wish:g} mm, with none {loose:.1f} mm)",
        flat=flat,
        wish=wish,
        loose=loose,
    )
    if loose - flat < max(0.05, 0.1 * loose):
        if loose <= wish:
            return say("would do nothing, and nothing is needed: {left}", left=left)
        return say("would do nothing: {left}", left=left)
    if flat <= wish:
        return say("would be enough to keep it flat: {left}", left=left)
    return say("would not be enough: {left}", left=left)


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
        return say(
            "{up}, {down}, so the top waves rather than bends one way",
            up=_side(len(up), up if len(up) < len(down) else (), True),
            down=_side(len(down), down if len(down) <= len(up) else (), False),
        )
    if up:
        what = say(
            "drier than when made flat the middle rises and the edges press down, damper the edges lift"
        )
        every = say("it lies heart side up") if len(up) == 1 else say("every board lies heart side up")
        return f"{every}: {what}"
    if down:
        what = say("drier than when made flat the edges lift, damper the middle rises")
        every = say("it lies heart side down") if len(down) == 1 else say("every board lies heart side down")
        return f"{every}: {what}"
    return ""


def _side(count: int, named: Sequence[str], heart_up: bool) -> str:
    """How many boards lie heart side up, or down, with their names where they are the fewer."""
    if heart_up:
        said = (
            say("1 board lies heart side up")
            if count == 1
            else say("{count} boards lie heart side up", count=count)
        )
    else:
        said = say("1 heart side down") if count == 1 else say("{count} heart side down", count=count)
    return f"{said} ({', '.join(named)})" if named else said


def fixed_line_sentence(plans: TopPlans, plan: Plan) -> str:
    """Which line stays put, why, and what keeps it there: plain holes of the plan's own, or a screw to add."""
    place, top = plans.found.place, plans.found.top
    assert top is not None
    where = line_words(place, plans.stays.at_mm) + _why_this_line(plans)
    plain = [p for p in plan.placed if p.kind.startswith(("slotted", "plain")) and p.slot is None]
    if plain:
        rails = sorted({p.rail for p in plain})
        return say(
            "what stays put is {where}: the plain holes in {rails} hold it there",
            where=where,
            rails=say(" and ").join(rails),
        )
    crossing = [r.name for r in top.rails if r.direction == ACROSS]
    if crossing:
        return say(
            "what stays put is {where}: add one plain screw through {rails} there, or the whole top may creep aside",
            where=where,
            rails=say(" and ").join(crossing),
        )
    return say(
        "what stays put is {where}: add one plain screw near it, or the whole top may creep aside",
        where=where,
    )


def line_words(place: TopPlace, at_mm: float) -> str:
    """A line of a top, mm across from its middle, as a maker finds it."""
    if abs(at_mm) <= SAME_MM:
        return say("the middle of its width")
    edge = edge_names(place)[0 if at_mm < 0 else 1]
    inside = place.width_mm / 2 - abs(at_mm)
    if inside <= SAME_MM:
        return say("its edge at {edge}", edge=edge)
    return say("the line {distance:.0f} mm inside its edge at {edge}", distance=inside, edge=edge)


def _why_this_line(plans: TopPlans) -> str:
    """What the boards say of it by their tags, and why it is planned otherwise; "" where they say nothing."""
    place, stays = plans.found.place, plans.stays
    if not stays.said:
        return ""
    if not stays.against:
        boards = say(" and ").join(board for board, _ in stays.said)
        return say(" (the tag 'fixed' of {boards})", boards=boards)
    lines = "; ".join(
        say("{board}: {line}", board=board, line=line_words(place, at)) for board, at in stays.said
    )
    if stays.asked:
        return say(" (asked for, though the tag 'fixed' says otherwise: {lines})", lines=lines)
    return say(
        " (the usual one, since a glued top is held at one line and the tags 'fixed' say several: {lines})",
        lines=lines,
    )
