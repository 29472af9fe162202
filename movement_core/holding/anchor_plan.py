"""The attachment plan: fewest fasteners that keep a top flat in every month, placed where the frame is."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from movement_core.holding.capacity import Capacity, fastener_capacity
from movement_core.holding.fasteners import (
    ACROSS,
    Engagement,
    Kind,
    engagement,
    find_kind,
    fits_travel,
    no_room_for_groove,
)
from movement_core.holding.free_surface import free_height
from movement_core.holding.held import ROCKS, TIPS, Held
from movement_core.holding.model import Anchor, LoadCase, Plate, Point
from movement_core.holding.plan_model import NOWHERE, TOO_WEAK, Placed, Plan, Problem, Top, Wish
from movement_core.holding.plan_words import fixed_line_note, problems_of, season_notes
from movement_core.holding.plate import Trial, hold
from movement_core.holding.rails import Rail, anchor_places
from movement_core.holding.travel import INSTALLATION_MM, seen_from_the_mover, slot, travel
from movement_core.holding.ways_out import what_would_help
from movement_core.wording import say, word

IDLE_N = 1.0  # an anchor pulled less than this holds nothing
HANDLING = 3.0  # anchors together must be allowed this many times the top's weight (own): tops get lifted
PLAIN_HOLE_MM = 0.3  # a slotted screw that travels less gets a plain hole and fixes the top there (own)
MOST_PER_RAIL = 5
MOST_TRIALS = 220


def plan_anchors(top: Top, wish: Wish) -> tuple[Plan, ...]:
    """One plan for each wanted kind: those that meet the wish first, fewest fasteners first, then flattest.

    Each is searched over regular patterns (so many on end rails, on long rails, on cross-rails) in order of
    their number, in the months that bend the top most, then re-simulated in every load case as placed.
    """
    trial = top.prepared()
    plans = [_plan_kind(top, wish, trial, find_kind(name)) for name in wish.kinds]
    if not any(plan.found for plan in plans):
        nearest = min(plans, key=_badness)
        helped = replace(nearest, what_would=what_would_help(top, wish, nearest, trial, extreme_cases(top)))
        plans = [helped if plan is nearest else plan for plan in plans]
    return tuple(sorted(plans, key=_badness))


def _badness(plan: Plan) -> tuple[bool, int, float]:
    return (not plan.found, len(plan.placed) if plan.found else 0, plan.worst_out_of_flat_mm)


@dataclass(frozen=True)
class _Place:
    rail: Rail
    kind: Kind
    from_start_mm: float
    point_mm: Point


def _plan_kind(top: Top, wish: Wish, trial: Trial, kind: Kind) -> Plan:
    refused: list[str] = []
    groups = _groups(top, wish, kind, refused)
    capacity = {
        k.kind: fastener_capacity(k, top.gravity_12, top.plate.thickness_mm, wish.safety)
        for k in {k for _, k, _ in groups}
    }
    if all(chosen != kind for _, chosen, _ in groups):  # nowhere can this kind serve: no plan of its own
        groups = []
    if not groups:
        return _finish(top, wish, kind, [], hold(trial, [], top.cases), capacity, refused)
    search = _Search(top, wish, trial, capacity, list(extreme_cases(top)))
    for patterns in _same_number(groups):
        good = []
        for pattern in patterns:
            places = _places(top.plate, wish, groups, pattern)
            score = search.score(places) if places else None
            if score is not None and score[0] <= 0:
                good.append((score, places))
        for _, places in sorted(good, key=lambda item: item[0]):
            everywhere = hold(trial, _anchors(places), top.cases)
            if _score(everywhere, places, capacity, wish)[0] <= 0 and _handled(top, places, capacity):
                return _finish(top, wish, kind, places, everywhere, capacity, refused)
            search.also(max(zip(everywhere, top.cases), key=lambda item: item[0].out_of_flat_mm)[1])
    places = search.best_places
    return _finish(top, wish, kind, places, hold(trial, _anchors(places), top.cases), capacity, refused)


class _Search:
    """Trials of one kind: the hardest load case first, the others only while there is something to win."""

    def __init__(
        self, top: Top, wish: Wish, trial: Trial, capacity: dict[str, Capacity], cases: list[LoadCase]
    ) -> None:
        self.wish, self.trial, self.capacity, self.cases = wish, trial, capacity, cases
        self.best: tuple[float, float] = (math.inf, math.inf)
        self.best_places: list[_Place] = []
        self.trials = 0
        self.last: dict[str, Held] = {}

    def also(self, case: LoadCase) -> None:
        if all(case is not other for other in self.cases):
            self.cases.append(case)

    def score(self, places: list[_Place]) -> tuple[float, float] | None:
        """(how far beyond the wish, worst out of flat); None once it cannot be the best any more."""
        if self.trials >= MOST_TRIALS:
            return None
        self.trials += 1
        anchors = _anchors(places)
        held: list[Held] = []
        score = (0.0, 0.0)
        for case in list(self.cases):
            near = [self.last[case.name]] if case.name in self.last else None
            held += hold(self.trial, anchors, [case], start=near)
            self.last[case.name] = held[-1]
            score = _score(held, places, self.capacity, self.wish)
            if score[0] > 0 and score >= self.best:
                self.cases.remove(case)
                self.cases.insert(0, case)
                return None
        if score < self.best:
            self.best, self.best_places = score, places
        return score


def _groups(top: Top, wish: Wish, kind: Kind, refused: list[str]) -> list[tuple[list[Rail], Kind, int]]:
    """Rails that are treated alike, the kind that serves them, and the fewest on each."""
    half = top.plate.length_mm / 2
    sets: dict[str, list[Rail]] = {"end": [], "cross": [], "long": []}
    ends = {
        pick(rails, key=lambda r: r.at(0)[0]).name
        for rails in [[r for r in top.rails if r.direction == ACROSS]]
        if rails
        for pick in (min, max)
    }
    for rail in top.rails:
        where = "long" if rail.direction != ACROSS else "cross"
        if rail.name in ends and abs(rail.at(rail.length_mm / 2)[0]) > 0.3 * half:
            where = "end"
        sets[where].append(rail)
    groups = []
    for rails in sets.values():
        if not rails:
            continue
        chosen = _kind_for(top, wish, kind, rails, refused)
        if chosen is None:
            continue
        spacing = chosen.most_spacing_mm
        least = 0
        if wish.trade_spacing:
            usable = max(rail.length_mm for rail in rails) - 2 * wish.clear_mm
            least = max(1, math.ceil(usable / spacing)) if spacing else 1
        groups.append((rails, chosen, least))
    return groups


def _kind_for(top: Top, wish: Wish, kind: Kind, rails: list[Rail], refused: list[str]) -> Kind | None:
    """The wanted kind if these rails have the wood for it and it follows the travel everywhere on them, else the
    stand-in, else none."""
    stand_in = find_kind(wish.stand_in) if wish.stand_in else None
    for option in [kind] + ([stand_in] if stand_in and stand_in != kind else []):
        worst = ""
        for rail in rails:
            too_small = no_room_for_groove(option, rail.breadth_mm, rail.depth_mm)
            if too_small:
                worst = f"{rail.name}: {too_small}"
                continue
            for from_start in (wish.clear_mm, rail.length_mm - wish.clear_mm):
                across = _inside(top, rail.at(from_start, _aside(rail, option)))[1]
                moves = travel(top.strain, across, wish.fixed_mm)
                fit = fits_travel(
                    option, rail.direction, float(moves.least_mm), float(moves.most_mm), top.plate.width_mm
                )
                if not fit.fits:
                    worst = f"{rail.name}: {fit.reason}"
        if not worst:
            return option
        refused.append(worst)
    return None


def _inside(top: Top, point: Point) -> Point:
    half = top.plate.length_mm / 2, top.plate.width_mm / 2
    return tuple(float(np.clip(p, -h, h)) for p, h in zip(point, half))  # type: ignore[return-value]


def _aside(rail: Rail, kind: Kind) -> float:
    return rail.breadth_mm / 2 + kind.inset_mm if kind.inset_mm else 0.0


def _same_number(groups: list[tuple[list[Rail], Kind, int]]) -> list[list[tuple[tuple[int, str], ...]]]:
    """Patterns (count and spread on each group), sorted and bundled by how many fasteners they take."""
    options = []
    for _, _, least in groups:
        counts = range(least, max(MOST_PER_RAIL, least + 2) + 1)
        options.append(
            [(n, spread) for n in counts for spread in (("even",) if n < 2 else ("even", "outer"))]
        )
    patterns = sorted(
        itertools.product(*options), key=lambda p: sum(n * len(g[0]) for (n, _), g in zip(p, groups))
    )
    bundles = itertools.groupby(patterns, key=lambda p: sum(n * len(g[0]) for (n, _), g in zip(p, groups)))
    return [list(bundle) for _, bundle in bundles]


def _places(
    plate: Plate, wish: Wish, groups: list[tuple[list[Rail], Kind, int]], pattern: tuple[tuple[int, str], ...]
) -> list[_Place]:
    found = []
    for (rails, kind, _), (count, spread) in zip(groups, pattern):
        for rail in rails:
            for from_start in anchor_places(rail, kind, count, wish.clear_mm, spread):
                point = rail.at(from_start, _aside(rail, kind))
                if plate.holds([point])[0]:  # a shaped top may stop short of its rail
                    found.append(_Place(rail, kind, from_start, point))
    return found


def _anchors(places: Sequence[_Place]) -> list[Anchor]:
    return [
        Anchor(*p.point_mm, p.kind.stiffness_n_mm, p.kind.slack_mm, p.rail.height_mm, name=p.rail.name)
        for p in places
    ]


def _score(
    held: Sequence[Held], places: Sequence[_Place], capacity: dict[str, Capacity], wish: Wish
) -> tuple[float, float]:
    """(how far beyond the wish, ≤ 0 if met; worst out of flat): smaller is better."""
    flat = max(h.out_of_flat_mm for h in held)
    over = flat / wish.flatness_mm - 1
    pulls = np.max([h.anchor_force_n for h in held], axis=0) if places else np.zeros(0)
    for place, pull in zip(places, pulls):
        allowed = capacity[place.kind.kind].allowable_n
        if allowed is not None:
            over = max(over, float(pull) / allowed - 1)
    if any(flag in h.flags for h in held for flag in (ROCKS, TIPS)):
        over = max(over, 1.0)
    return max(over, 0.0), flat


def _handled(top: Top, places: Sequence[_Place], capacity: dict[str, Capacity]) -> bool:
    """Do the anchors together carry the top's weight with room to spare, where their capacity is known?"""
    known = [capacity[p.kind.kind].allowable_n for p in places]
    if any(value is None for value in known):
        return True
    return sum(value for value in known if value is not None) >= HANDLING * top.plate.weight_n


def extreme_cases(top: Top) -> tuple[LoadCase, ...]:
    """The cases with the most crown, the most hollow and the largest range: the rest are checked afterwards."""
    across = np.linspace(-0.5, 0.5, 41) * top.plate.width_mm
    points = np.stack(np.meshgrid([-top.plate.length_mm / 2, top.plate.length_mm / 2], across), -1).reshape(
        -1, 2
    )
    heights = [free_height(top.plate, case, points) for case in top.cases]
    means = [float(np.mean(h)) for h in heights]
    ranges = [float(np.ptp(h)) for h in heights]
    chosen = {int(np.argmax(means)), int(np.argmin(means)), int(np.argmax(ranges))}
    return tuple(top.cases[i] for i in sorted(chosen))


def _engaged(place: _Place, least: float, now: float, most: float) -> Engagement | None:
    """Tongues point from the screw to the rail: on a rail toward +across the top's travel drives them in."""
    if place.rail.direction == ACROSS:
        return None
    if place.rail.at(place.from_start_mm)[1] >= place.point_mm[1]:
        return engagement(place.kind, least, now, most)
    return engagement(place.kind, *seen_from_the_mover(least, now, most))


def _finish(
    top: Top,
    wish: Wish,
    kind: Kind,
    places: Sequence[_Place],
    held: tuple[Held, ...],
    capacity: dict[str, Capacity],
    refused: list[str],
) -> Plan:
    placed = []
    for i, p in enumerate(places):
        moves = travel(top.strain, _inside(top, p.point_mm)[1], wish.fixed_mm)
        least, now, most = float(moves.least_mm), float(moves.today_mm), float(moves.most_mm)
        slotted = p.kind.kind.startswith("slotted") and most - least > PLAIN_HOLE_MM
        placed.append(
            Placed(
                p.rail.name,
                p.kind.kind,
                p.point_mm,
                p.from_start_mm,
                least,
                now,
                most,
                slot(least, now, most, p.kind.shank_mm, INSTALLATION_MM) if slotted else None,
                _engaged(p, least, now, most),
                float(max(h.anchor_force_n[i] for h in held)),
                capacity[p.kind.kind],
                tuple(h.case for h in held if h.anchor_force_n[i] > IDLE_N),
            )
        )
    problems = problems_of(placed, held, wish.flatness_mm)
    if not placed:
        nowhere = (say("{kind}: no rail can take it", kind=word(kind.name)), *refused)
        problems = (*problems, *(Problem(NOWHERE, text) for text in nowhere))
    elif not _handled(top, places, capacity):
        weak = say("anchors together are allowed less than {times:g} times the top's weight", times=HANDLING)
        problems = (*problems, Problem(TOO_WEAK, weak))
    return Plan(
        kind.kind,
        not problems and bool(placed),
        tuple(placed),
        tuple((h.case, h.out_of_flat_mm) for h in held),
        max(h.out_of_flat_mm for h in held),
        max((p.pull_n for p in placed), default=0.0),
        problems,
        tuple(refused),
        (fixed_line_note(placed, top.rails, wish.fixed_mm), *season_notes(placed, held, top.plate)),
        (),
        tuple(dict.fromkeys(link for p in placed for link in p.capacity.unknown)),
        held,
    )
