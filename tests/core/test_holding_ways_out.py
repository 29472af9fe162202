"""Each way out of a plan that fails is as good as its own sentence says, simulated again from its figures."""

from __future__ import annotations

import re
from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from movement_core.holding.anchor_plan import (
    extreme_cases,
)
from movement_core.holding.capacity import Capacity
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import Anchor, Beam, LoadCase
from movement_core.holding.plan_model import Placed, Wish
from movement_core.holding.plate import hold
from movement_core.holding.rails import Rail
from movement_core.holding.stiffeners import bar
from movement_core.holding.travel import WidthStrain
from movement_core.holding.ways_out import (
    _anchors,
    _battens,
    _breadboard_ends,
    _cross_rail,
    _eased,
    _flatter_boards,
    _thickness,
)
from tests.core.test_holding_plan import top

KNOWN = Capacity(100.0, 550.0, "withdrawal", (), 5.5, None, None)
UNKNOWN = replace(KNOWN, allowable_n=None, ultimate_n=None)


def placed(kind="button", across=0.0, pull=0.0, at_work=(), capacity=KNOWN, cut=None, rail="left apron"):
    return Placed(rail, kind, (-460.0, across), 100.0, -1.0, 0.0, 1.0, cut, None, pull, capacity, at_work)


@pytest.fixture(scope="module")
def stuck():
    """A top that no plan holds, a plan of four buttons for it, and its hardest cases."""
    made = top(dry=6e-4, wet=-6e-4, thickness=28)
    points = [(-430.0, -150.0), (-430.0, 150.0), (430.0, -150.0), (430.0, 150.0)]
    anchors = tuple(replace(placed(capacity=KNOWN), place_mm=point) for point in points)
    cases = extreme_cases(made)
    plan = SimpleNamespace(placed=anchors, worst_out_of_flat_mm=9.9, worst_pull_n=777.0)
    return made, plan, cases


def figures(sentence):
    return [float(number) for number in re.findall(r"\d+(?:\.\d+)?", sentence)]


def simulated(made, plan, cases, more=()):
    found = hold(made.prepared(), [*_anchors(plan), *more], cases)
    return max(h.out_of_flat_mm for h in found), max(h.worst_anchor_n for h in found)


def test_battens_are_simulated_as_they_are_described(stuck):
    made, plan, cases = stuck
    said = _battens(made, Wish(0.1), plan, cases)
    count, breadth, depth, flat, before = figures(said)
    assert (count, before) == (4, 9.9)
    assert "slotted but for the centre" in said
    bars = tuple(
        bar((s, -210), (s, 210), breadth, depth, 12000.0, screws_mm=tuple(420 * k / 6 for k in range(7)))
        for s in (-375, -125, 125, 375)
    )
    assert simulated(replace(made, beams=bars), plan, cases)[0] == pytest.approx(flat, abs=0.051)
    assert figures(_battens(made, Wish(50.0), plan, cases))[0] == 2
    small = replace(
        made, plate=replace(made.plate, width_mm=80), strain=WidthStrain.even(80, 0, 0, 0), rails=()
    )
    assert _battens(small, Wish(0.1), plan, cases) == ""


def test_breadboard_ends_are_simulated_as_they_are_described(stuck):
    made, plan, cases = stuck
    breadth, play, flat = figures(_breadboard_ends(made, plan, cases))
    ends = tuple(bar((s, -249), (s, 249), breadth, 28, 12000.0, play_mm=play) for s in (-490, 490))
    assert simulated(replace(made, beams=ends), plan, cases)[0] == pytest.approx(flat, abs=0.051)
    assert isinstance(ends[0], Beam)
    half = made.plate.width_mm / 2
    outline = ((-500.0, -half), (500.0, -half), (500.0, half))
    shaped = replace(made, plate=replace(made.plate, outline_mm=outline))
    assert _breadboard_ends(shaped, plan, cases) == ""


def test_a_cross_rail_is_offered_where_there_is_none_and_room_for_one(stuck):
    made, plan, cases = stuck
    said = _cross_rail(made, plan, cases)
    more = [Anchor(0.0, x) for x in (-168.0, 0.0, 168.0)]
    railed = replace(made, rails=(*made.rails, Rail("new", (0.0, -210.0), (0.0, 210.0), 20.0)))
    assert simulated(railed, plan, cases, more)[0] == pytest.approx(figures(said)[-1], abs=0.051)
    near, far = (Rail("cross", (s, -200), (s, 200), 20) for s in (160.0, 170.0))  # a sixth of 1000 is 167
    assert _cross_rail(replace(made, rails=(*made.rails, near)), plan, cases) == ""
    assert _cross_rail(replace(made, rails=(*made.rails, far)), plan, cases) != ""
    assert _cross_rail(replace(made, rails=()), plan, cases) == ""
    narrow = replace(made, plate=replace(made.plate, width_mm=80), strain=WidthStrain.even(80, 0, 0, 0))
    assert _cross_rail(narrow, plan, cases) == ""


def test_flatter_boards_are_as_flat_as_they_have_to_be(stuck):
    made, plan, cases = stuck
    free = SimpleNamespace(placed=tuple(replace(p, capacity=UNKNOWN) for p in plan.placed))
    wish = Wish(1.0)
    (share, *_) = figures(_flatter_boards(wish, free, made.prepared(), cases))
    for percent, meets in ((share - 0.5, True), (share + 1.5, False)):
        eased = [_eased(case, percent / 100) for case in cases]
        assert (simulated(made, plan, eased)[0] <= 1.0) == meets
    weak = SimpleNamespace(
        placed=tuple(replace(p, capacity=replace(KNOWN, allowable_n=20.0)) for p in plan.placed)
    )
    (less, *_) = figures(_flatter_boards(wish, weak, made.prepared(), cases))
    assert less < share  # the pull binds as well as the flatness
    assert simulated(made, plan, [_eased(case, (less + 1.5) / 100) for case in cases])[1] > 20.0
    assert _flatter_boards(Wish(1e-9), free, made.prepared(), cases) == ""


def test_easing_takes_the_same_share_of_everything():
    free = FreeCurvature((-1, 0, 2), (1e-4, 3e-4), (0.01,), (2e-5, 4e-5), 6e-6)
    eased = _eased(LoadCase("a", free, free), 0.25)
    for one in (eased.free, eased.free_far):
        assert one.lines_mm == free.lines_mm
        for name in ("crown_per_mm", "kinks_rad", "bow_per_mm", "twist_per_mm"):
            assert np.array(getattr(one, name)) == pytest.approx(np.array(getattr(free, name)) / 4)
    assert _eased(LoadCase("a", free), 0.5).free_far is None


def test_a_thinner_top_is_simulated_as_thin_as_it_is_said_to_be(stuck):
    made, plan, cases = stuck
    said = _thickness(made, plan, cases)
    thick, pull, before, flat = figures(said)
    assert (thick, before) == (round(0.85 * 28), 777)
    thinner = replace(made, plate=replace(made.plate, thickness_mm=0.85 * 28))
    assert simulated(thinner, plan, cases) == (pytest.approx(flat, abs=0.051), pytest.approx(pull, abs=0.51))
