"""What would keep a top flat when no plan does: each way out is simulated, not guessed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from movement_core.holding.fasteners import find_kind
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import Anchor, Beam, LoadCase
from movement_core.holding.plan_model import PULLED, Plan, Top, Wish
from movement_core.holding.plate import Trial, hold
from movement_core.holding.rails import Rail
from movement_core.wording import say

# A batten and a breadboard end to try: our own examples, plain hardwood.
BATTEN_E_MPA, BATTEN_BREADTH_MM, BATTEN_DEPTH_MM = 12000.0, 45.0, 30.0
END_BREADTH_MM, TONGUE_PLAY_MM = 110.0, 0.3


def what_would_help(
    top: Top, wish: Wish, nearest: Plan, trial: Trial, cases: Sequence[LoadCase]
) -> tuple[str, ...]:
    """Sentences on battens, a cross-rail, flatter boards, and thickness, each with its re-simulated figure.

    ``trial`` is the top as prepared, ``cases`` those of its load cases that bend it most.
    """
    said = [_battens(top, wish, nearest, cases), _breadboard_ends(top, nearest, cases)]
    said.append(_cross_rail(top, nearest, cases))
    said.append(_flatter_boards(wish, nearest, trial, cases))
    if any(problem.kind == PULLED for problem in nearest.problems):
        said.append(_thickness(top, nearest, cases))
    return tuple(sentence for sentence in said if sentence)


def _anchors(plan: Plan) -> list[Anchor]:
    kinds = [find_kind(p.kind) for p in plan.placed]
    return [Anchor(*p.place_mm, k.stiffness_n_mm, k.slack_mm) for p, k in zip(plan.placed, kinds)]


def _worst(trial: Trial, anchors: list[Anchor], cases: Sequence[LoadCase]) -> tuple[float, float]:
    held = hold(trial, anchors, cases)
    return max(h.out_of_flat_mm for h in held), max(h.worst_anchor_n for h in held)


def _battens(top: Top, wish: Wish, plan: Plan, cases: Sequence[LoadCase]) -> str:
    half = top.plate.width_mm / 2 - 40
    if half <= 0:
        return ""
    stiffness = BATTEN_E_MPA * BATTEN_BREADTH_MM * BATTEN_DEPTH_MM**3 / 12
    screws = tuple(2 * half * k / 6 for k in range(7))
    said = ""
    for count in (2, 4):
        places = [top.plate.length_mm * ((k + 0.5) / count - 0.5) for k in range(count)]
        battens = tuple(Beam((s, -half), (s, half), stiffness, screws) for s in places)
        flat, _ = _worst(replace(top, beams=top.beams + battens).prepared(), _anchors(plan), cases)
        size = f"{BATTEN_BREADTH_MM:.0f} × {BATTEN_DEPTH_MM:.0f} mm"
        said = say(
            "{count} battens of {size}, slotted but for the centre, would leave {flat:.1f} mm out of flat instead of "
            "{worst:.1f} mm",
            count=count,
            size=size,
            flat=flat,
            worst=plan.worst_out_of_flat_mm,
        )
        if flat <= wish.flatness_mm:
            break
    return said


def _breadboard_ends(top: Top, plan: Plan, cases: Sequence[LoadCase]) -> str:
    """Two ends as thick as the top, joined all along by a tongue with a little play."""
    plate = top.plate
    half = plate.width_mm / 2 - 1.0
    if plate.outline_mm or half <= 0:
        return ""
    at = plate.length_mm / 2 - 10.0
    stiffness = BATTEN_E_MPA * END_BREADTH_MM * plate.thickness_mm**3 / 12
    ends = tuple(Beam((s, -half), (s, half), stiffness, play_mm=TONGUE_PLAY_MM) for s in (-at, at))
    flat, _ = _worst(replace(top, beams=top.beams + ends).prepared(), _anchors(plan), cases)
    return say(
        "breadboard ends {breadth:.0f} mm wide, a tongue with {play:g} mm of play, would leave {flat:.1f} mm out of "
        "flat",
        breadth=END_BREADTH_MM,
        play=TONGUE_PLAY_MM,
        flat=flat,
    )


def _cross_rail(top: Top, plan: Plan, cases: Sequence[LoadCase]) -> str:
    if any(
        r.direction == "across" and abs(r.at(r.length_mm / 2)[0]) < top.plate.length_mm / 6 for r in top.rails
    ):
        return ""
    half = top.plate.width_mm / 2 - 40
    if half <= 0 or not top.rails:
        return ""
    rail = Rail(say("cross-rail to add"), (0.0, -half), (0.0, half), 20.0)
    more = [Anchor(0.0, share * half) for share in (-0.8, 0.0, 0.8)]
    flat, _ = _worst(replace(top, rails=(*top.rails, rail)).prepared(), _anchors(plan) + more, cases)
    return say(
        "a cross-rail in the middle with three anchors would leave {flat:.1f} mm out of flat", flat=flat
    )


def _flatter_boards(wish: Wish, plan: Plan, trial: Trial, cases: Sequence[LoadCase]) -> str:
    """Boards that cup less (narrower, quarter-sawn, nearer to their built moisture): how much less?"""
    low, high = 0.0, 1.0
    for _ in range(7):
        share = (low + high) / 2
        flat, pull = _worst(trial, _anchors(plan), [_eased(case, share) for case in cases])
        allowed = min(
            (p.capacity.allowable_n for p in plan.placed if p.capacity.allowable_n), default=float("inf")
        )
        if flat <= wish.flatness_mm and pull <= allowed:
            low = share
        else:
            high = share
    if low == 0.0:
        return ""
    return say(
        "boards that cup no more than {share:.0f} % of these would do with this plan: narrower boards (halving the "
        "width leaves a quarter to two fifths of the cup), quarter-sawn ones, or building nearer to the moisture of "
        "use",
        share=100 * low,
    )


def _eased(case: LoadCase, share: float) -> LoadCase:
    def ease(free: FreeCurvature) -> FreeCurvature:
        return FreeCurvature(
            free.lines_mm,
            tuple(c * share for c in free.crown_per_mm),
            tuple(k * share for k in free.kinks_rad),
            tuple(b * share for b in free.bow_per_mm),
            free.twist_per_mm * share,
        )

    return LoadCase(case.name, ease(case.free), ease(case.free_far) if case.free_far else None)


def _thickness(top: Top, plan: Plan, cases: Sequence[LoadCase]) -> str:
    thinner = replace(top, plate=replace(top.plate, thickness_mm=0.85 * top.plate.thickness_mm))
    flat, pull = _worst(thinner.prepared(), _anchors(plan), cases)
    return say(
        "a top {thick:.0f} mm thick would pull with {pull:.0f} N instead of {worst:.0f} N ({flat:.1f} mm out of flat): "
        "a thicker one cups as much and pulls harder",
        thick=0.85 * top.plate.thickness_mm,
        pull=pull,
        worst=plan.worst_pull_n,
        flat=flat,
    )
