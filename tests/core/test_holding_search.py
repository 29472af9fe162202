"""The search for a plan, step by step, with what each trial would hold given instead of simulated."""

from __future__ import annotations

import math
from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from movement_core.holding import anchor_plan
from movement_core.holding.anchor_plan import _anchors, _finish, _groups, _kind_for, _Place, _places, _Search
from movement_core.holding.capacity import Capacity
from movement_core.holding.fasteners import find_kind
from movement_core.holding.plan_model import NOWHERE, OUT_OF_FLAT, PULLED, TOO_WEAK, Wish
from movement_core.holding.rails import Rail
from movement_core.holding.travel import WidthStrain
from tests.core.test_holding_plan import top

BUTTON, SLOTTED, EIGHT = (find_kind(name) for name in ("button", "slotted screw", "figure-eight"))
STRONG = Capacity(1e6, 5e6, "withdrawal", ("tongue",), 5.5, None, None)
LEFT = Rail("left", (-460.0, -200.0), (-460.0, 200.0), 20.0, 0.25)


def place(kind=BUTTON, rail=LEFT, at=100.0):
    return _Place(rail, kind, at, rail.at(at, 10.0))


def held(case, flat, *pulls, flags=()):
    return SimpleNamespace(
        case=case, out_of_flat_mm=flat, anchor_force_n=np.array(pulls), flags=flags, lifted=()
    )


@pytest.fixture
def searching(monkeypatch):
    """A search over three cases, and how flat each is said to be; every trial that was held is listed."""
    flat, asked = {}, []

    def hold(trial, anchors, cases, *, start=None):
        (case,) = cases
        asked.append((case.name, None if start is None else start[0].case))
        return (held(case.name, flat[case.name], *[0.0] * len(anchors)),)

    monkeypatch.setattr(anchor_plan, "hold", hold)
    cases = [SimpleNamespace(name=name) for name in ("dry", "spring", "wet")]
    return _Search(top(), Wish(1.0), None, {"button": STRONG}, cases), flat, asked


def test_the_best_score_is_kept_and_a_worse_one_is_dropped_at_its_first_bad_case(searching):
    search, flat, asked = searching
    flat.update(dry=2.0, spring=1.0, wet=1.5)
    first, second = [place()], [place(at=200.0)]
    assert search.score(first) == (1.0, 2.0)  # a full wish beyond what is asked
    assert (search.best, search.best_places) == ((1.0, 2.0), first)
    flat.update(dry=1.2, spring=1.1, wet=3.0)
    assert search.score(second) is None and search.best_places is first
    assert [case.name for case in search.cases] == ["wet", "dry", "spring"]  # the one that told it goes first
    flat.update(wet=2.5)
    asked.clear()
    assert search.score(second) is None
    assert [name for name, _ in asked] == ["wet"]  # and spares the others
    flat.update(dry=0.9, spring=0.2, wet=0.8)
    assert search.score(second) == (0.0, 0.9)
    assert search.best_places is second
    flat.update(dry=0.95)
    assert search.score(first) == (0.0, 0.95) and search.best_places is second  # it serves, if not the best


def test_a_trial_starts_from_the_last_one_of_its_case(searching):
    search, flat, asked = searching
    flat.update(dry=0.5, spring=0.5, wet=0.5)
    search.score([place()])
    search.score([place()])
    assert asked == [(name, None) for name in ("dry", "spring", "wet")] + [
        (name, name) for name in ("dry", "spring", "wet")
    ]


def test_a_case_is_added_once_and_trials_come_to_an_end(searching, monkeypatch):
    search, flat, asked = searching
    flat.update(dry=0.5, spring=0.5, wet=0.5, autumn=0.5)
    search.also(search.cases[1])
    assert len(search.cases) == 3
    search.also(SimpleNamespace(name="autumn"))
    assert [case.name for case in search.cases] == ["dry", "spring", "wet", "autumn"]
    monkeypatch.setattr(anchor_plan, "MOST_TRIALS", 2)
    assert search.score([place()]) and search.score([place()])
    asked.clear()
    assert search.score([place()]) is None and asked == []


def test_a_rail_takes_the_wanted_kind_or_the_stand_in_or_none():
    wide = top(width=900, moves=(-0.012, 0.0, 0.008))
    ends = [rail for rail in wide.rails if rail.direction == "across"]
    refused: list[str] = []
    assert _kind_for(wide, Wish(1.0), BUTTON, ends, refused) is BUTTON and refused == []
    assert _kind_for(wide, Wish(1.0), EIGHT, ends, refused) == SLOTTED
    assert len(refused) == 1 and refused[0].startswith("right apron: figure-eight")
    assert _kind_for(wide, Wish(1.0, stand_in=None), EIGHT, ends, []) is None
    assert _kind_for(wide, Wish(1.0, stand_in="button"), EIGHT, ends, []) == BUTTON
    assert _kind_for(wide, Wish(1.0, stand_in="figure-eight"), EIGHT, ends, refused) is None
    assert len(refused) == 2  # not asked twice
    long = [rail for rail in wide.rails if rail.direction == "along"]
    groups = _groups(replace(wide, rails=tuple(long + ends)), Wish(1.0, stand_in=None), BUTTON, [])
    assert [[rail.name for rail in rails] for rails, _, _ in groups] == [["left apron", "right apron"]]


def test_anchors_stand_on_their_rails_and_on_the_top():
    anchor = _anchors([place()])[0]
    assert (anchor.along_mm, anchor.across_mm) == (-450.0, -100.0)
    assert (anchor.stiffness_n_mm, anchor.slack_mm) == (BUTTON.stiffness_n_mm, BUTTON.slack_mm)
    assert (anchor.seat_mm, anchor.name) == (0.25, "left")
    made = top()
    groups = [([LEFT], SLOTTED, 0), ([Rail("front", (-450.0, -210.0), (450.0, -210.0), 20.0)], SLOTTED, 0)]
    found = _places(made.plate, Wish(1.0), groups, ((2, "outer"), (1, "even")))
    assert [one.point_mm for one in found] == [(-460.0, -160.0), (-460.0, 160.0), (0.0, -210.0)]
    assert [one.from_start_mm for one in found] == [40.0, 360.0, 450.0]
    beyond = [([Rail("out", (-600.0, 0.0), (-400.0, 0.0), 20.0)], SLOTTED, 0)]
    kept = _places(made.plate, Wish(1.0), beyond, ((2, "outer"),))
    assert [one.point_mm for one in kept] == [(-440.0, 0.0)]  # the other would miss the top


def finished(places, results, capacity=STRONG, wish=Wish(1.0), refused=()):  # noqa: B008 (frozen)
    kinds = {one.kind.kind: capacity for one in places}
    return _finish(top(), wish, BUTTON, places, tuple(results), kinds, list(refused))


def test_a_plan_tells_where_each_fastener_stands_travels_and_works():
    """±0.6 and 0.4 % of the distance from the fixed line, widened by 15 %; less than one newton is idle."""
    plan = finished([place(), place(SLOTTED)], [held("dry", 0.4, 0.9, 50.0), held("wet", 0.7, 30.0, 1.0)])
    button, screw = plan.placed
    assert (button.rail, button.kind, button.place_mm, button.from_rail_start_mm) == (
        "left", "button", (-450.0, -100.0), 100.0,
    )  # fmt: skip
    assert (button.least_mm, button.today_mm, button.most_mm) == pytest.approx((-0.46, 0.0, 0.69))
    assert (button.pull_n, button.at_work, screw.at_work) == (30.0, ("wet",), ("dry",))
    assert button.slot is None and screw.slot.length_mm == pytest.approx(4.5 + 1.15 + 1)
    assert (plan.found, plan.worst_out_of_flat_mm, plan.worst_pull_n) == (True, 0.7, 50.0)
    assert plan.out_of_flat_mm == (("dry", 0.4), ("wet", 0.7))
    assert plan.unknown_links == ("tongue",)
    assert len(plan.notes) == 3


@pytest.mark.parametrize(("strain", "slotted"), [(0.0013, False), (0.0014, True)])
def test_a_screw_that_hardly_travels_gets_a_plain_hole(strain, slotted):
    """0.3 mm of travel 100 mm from the fixed line: twice 0.13 or 0.14 mm by 1.15."""
    made = replace(top(), strain=WidthStrain.even(500, -strain, 0.0, strain))
    plan = _finish(
        made, Wish(1.0), SLOTTED, [place(SLOTTED)], (held("dry", 0.4, 9.0),), {"slotted screw": STRONG}, []
    )
    assert (plan.placed[0].slot is not None) == slotted


def test_a_plan_that_fails_says_by_what():
    flat = finished([place()], [held("dry", 1.1, 5.0)])
    assert (flat.found, [one.kind for one in flat.problems]) == (False, [OUT_OF_FLAT])
    weak = replace(STRONG, allowable_n=400.0)
    pulled = finished([place()], [held("dry", 0.4, 401.0)], weak)
    assert [one.kind for one in pulled.problems] == [PULLED]
    light = finished([place()], [held("dry", 0.4, 1.0)], replace(STRONG, allowable_n=20.0))
    assert [one.kind for one in light.problems] == [TOO_WEAK]
    assert "less than 3 times the top's weight" in light.problems[0].text
    nothing = finished([], [held("dry", 0.4)], refused=("left: too far",))
    assert (nothing.found, [one.kind for one in nothing.problems]) == (False, [NOWHERE, NOWHERE])
    assert nothing.problems[1].text == "left: too far" == nothing.refused[0]
    assert (nothing.worst_pull_n, nothing.unknown_links) == (0.0, ())
    assert not math.isnan(nothing.worst_out_of_flat_mm)


def test_where_no_kind_serves_the_nearest_plan_says_what_would(monkeypatch):
    plans = {
        "button": replace(finished([place()], [held("dry", 1.8, 5.0)]), kind="button"),
        "clip": replace(finished([place()], [held("dry", 1.3, 5.0)]), kind="clip"),
    }
    monkeypatch.setattr(anchor_plan, "_plan_kind", lambda top, wish, trial, kind: plans[kind.kind])
    monkeypatch.setattr(
        anchor_plan, "what_would_help", lambda top, wish, nearest, trial, cases: (nearest.kind,)
    )
    found = anchor_plan.plan_anchors(top(), Wish(1.0, kinds=("button", "clip")))
    assert [(plan.kind, plan.what_would) for plan in found] == [("clip", ("clip",)), ("button", ())]
    plans["button"] = replace(plans["button"], found=True)
    found = anchor_plan.plan_anchors(top(), Wish(1.0, kinds=("button", "clip")))
    assert [(plan.kind, plan.what_would) for plan in found] == [("button", ()), ("clip", ())]
