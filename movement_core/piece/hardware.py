"""From a plan to solids: every fastener as it sits today, and the slots, holes and grooves that let it travel.

Slots, recesses, mortises and grooves lie in the frame, which stays; screws sit where they are today. Holes in the top
lie where they are in the boards as drawn, that is as fitted, since they move with the wood. So a screw that is drawn
today stands off its hole by what the top has moved there since it was fitted.
"""

from __future__ import annotations

from collections.abc import Iterable

from movement_core.errors import HeartsideError, InputError
from movement_core.holding.fasteners import BUTTON, CLIP, PLATE, SLOT, find_kind
from movement_core.holding.plan_model import Placed, Plan
from movement_core.holding.rails import Rail
from movement_core.piece.hardware_bars import add_battens, add_ends
from movement_core.piece.hardware_blocks import block
from movement_core.piece.hardware_bodies import Bench, CutBody, Hardware
from movement_core.piece.hardware_screws import LEAST_BESIDE_MM, Passing, Site, bar_of, beside_mm, through_bar
from movement_core.piece.hardware_tongues import clip_grooves, figure_eight, tongued
from movement_core.piece.top_place import Near
from movement_core.piece.top_plan import TopPlans
from movement_core.wording import say


def hardware_of(plans: TopPlans, plan: Plan) -> Hardware:
    """The solids of a plan, and those of the battens and breadboard ends that are drawn.

    Raises
    ------
    InputError : the plan has no fastener and no batten or breadboard end is drawn.
    """
    found = plans.found
    place = found.place
    if found.top is None:
        raise InputError(
            "; ".join(found.why_not),
            where=say("top {name!r}", name=found.name),
            todo=say("say what is missing"),
        )
    site = Site(Bench(place), place.thickness_mm)
    rails = {rail.name: rail for rail in found.top.rails}
    near = {one.name: one for one in place.under}
    for number, placed in enumerate(plan.placed, 1):
        try:
            _fastener(site, plans, number, placed, rails[placed.rail], near[placed.rail])
        except HeartsideError as error:
            site.refuse(str(error))
    clip_grooves(site, plan, rails, near)
    add_battens(site, found)
    add_ends(site, found)
    if not site.markers:
        raise InputError(
            say("there is nothing to place: the plan has no fastener"),
            where=say("top {name!r}", name=found.name),
            todo=say("choose another plan"),
        )
    return Hardware(tuple(site.markers), tuple(site.cuts), tuple(dict.fromkeys(site.refused)))


def _fastener(site: Site, plans: TopPlans, number: int, placed: Placed, rail: Rail, one: Near) -> None:
    kind = find_kind(placed.kind)
    if kind.shape == PLATE:
        figure_eight(site, number, kind, placed, rail, one)
    elif kind.shape in (CLIP, BUTTON):
        tongued(site, number, kind, placed, rail, one)
    else:
        bar = bar_of(one, rail.height_mm, rail.breadth_mm, rail.direction)
        along, across = placed.place_mm
        passing = Passing(
            number, along, across, placed.least_mm, placed.today_mm, placed.most_mm, placed.slot, kind.shank_mm,
            kind.through_mm,
        )  # fmt: skip
        if kind.shape == SLOT and beside_mm(bar, passing) < LEAST_BESIDE_MM:
            block(site, plans, number, placed, rail)
        else:
            through_bar(site, kind, bar, passing, "screw")


def parts_cut(cuts: Iterable[CutBody]) -> dict[str, list[CutBody]]:
    """Cutting bodies by the key of their part, in order."""
    found: dict[str, list[CutBody]] = {}
    for cut in cuts:
        found.setdefault(cut.part, []).append(cut)
    return found
