"""The attachment plan keeps what it promises, re-simulated as placed; the tops here are our own examples."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.holding import cautions
from movement_core.holding.anchor_plan import plan_anchors
from movement_core.holding.fasteners import find_kind, fits_travel
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import Anchor, Elastic, LoadCase, Plate
from movement_core.holding.plan_model import Top, Wish
from movement_core.holding.plate import hold
from movement_core.holding.rails import Rail
from movement_core.holding.travel import WidthStrain

OAK = Elastic(13500, 1080, 1090, 0.42)


def top(
    length=1000.0, width=500.0, dry=1.2e-4, wet=-0.4e-4, boards=4, moves=(-0.006, 0.0, 0.004), thickness=20.0
):
    """Same-way boards heart side up on four aprons; driest and wettest and two months between."""
    a, b = length / 2 - 40, width / 2 - 40
    rails = (
        Rail("front apron", (-a, -b), (a, -b), 20),
        Rail("back apron", (-a, b), (a, b), 20),
        Rail("left apron", (-a, -b), (-a, b), 20),
        Rail("right apron", (a, -b), (a, b), 20),
    )
    lines = tuple(np.linspace(-width / 2, width / 2, boards + 1))

    def shape(crown):
        return FreeCurvature(lines, (crown,) * boards, (-0.6 * crown * width / boards,) * (boards - 1))

    cases = tuple(
        LoadCase(name, shape(crown))
        for name, crown in (("driest", dry), ("spring", dry / 2), ("as built", 0.0), ("wettest", wet))
    )
    return Top(Plate(length, width, thickness, OAK, 750), rails, WidthStrain.even(width, *moves), cases, 0.63)


TABLE = top()


@pytest.fixture(scope="module")
def plans():
    return plan_anchors(TABLE, Wish(1.0))


def test_a_plan_is_found_and_the_best_comes_first(plans):
    assert plans[0].found
    found = [len(plan.placed) for plan in plans if plan.found]
    assert found == sorted(found)
    assert all(not later.found for later in plans[len(found) :])


def test_every_plan_holds_when_simulated_again_from_its_own_words(plans):
    for plan in plans:
        if not plan.found:
            assert plan.problems
            continue
        anchors = [
            Anchor(*p.place_mm, find_kind(p.kind).stiffness_n_mm, find_kind(p.kind).slack_mm)
            for p in plan.placed
        ]
        again = hold(TABLE.prepared(), anchors, TABLE.cases)
        assert max(h.out_of_flat_mm for h in again) <= 1.0
        assert max(h.out_of_flat_mm for h in again) == pytest.approx(plan.worst_out_of_flat_mm, rel=1e-6)
        for i, p in enumerate(plan.placed):
            pull = max(h.anchor_force_n[i] for h in again)
            assert pull == pytest.approx(p.pull_n, abs=0.01)
            if p.capacity.allowable_n is not None:
                assert pull <= p.capacity.allowable_n
            rail = next(r for r in TABLE.rails if r.name == p.rail)
            assert fits_travel(find_kind(p.kind), rail.direction, p.least_mm, p.most_mm).fits
            assert 40 - 1e-6 <= p.from_rail_start_mm <= rail.length_mm - 40 + 1e-6
            assert (p.slot is not None) == (p.kind == "slotted screw" and p.most_mm - p.least_mm > 0.3)


def test_never_fewer_than_trade_spacing(plans):
    for plan in plans:
        for rail in TABLE.rails:
            mine = [p for p in plan.placed if p.rail == rail.name]
            if plan.found and mine:
                spacing = find_kind(mine[0].kind).most_spacing_mm
                assert spacing is None or len(mine) >= (rail.length_mm - 80) / spacing


def test_short_top_that_only_dries_needs_its_ends_alone():
    """Heart side up, drying only, short: the middle of the ends suffices (common practice, no source)."""
    drying = top(length=800, dry=1.0e-4, wet=0.0)
    (plan,) = plan_anchors(drying, Wish(0.8, kinds=("button",), trade_spacing=False))
    assert plan.found and len(plan.placed) == 2
    assert {p.rail for p in plan.placed} == {"left apron", "right apron"}
    assert all(abs(p.place_mm[1]) < 1 for p in plan.placed)
    assert any("enough by themselves" in note for note in plan.notes)


def test_the_same_top_that_also_swells_needs_more_and_says_so():
    both = top(length=800, dry=1.0e-4, wet=-1.0e-4)
    (plan,) = plan_anchors(both, Wish(0.8, kinds=("button",), trade_spacing=False))
    assert plan.found and len(plan.placed) > 2
    assert any(abs(p.place_mm[1]) > 100 for p in plan.placed)


def test_fewest_first_a_looser_wish_never_takes_more():
    counts = []
    for flatness in (0.7, 1.0, 2.0):
        (plan,) = plan_anchors(TABLE, Wish(flatness, kinds=("button",), trade_spacing=False))
        assert plan.found
        counts.append(len(plan.placed))
    assert counts == sorted(counts, reverse=True)


def test_none_exists_then_it_says_what_would():
    stiff = top(dry=6e-4, wet=-6e-4, thickness=28)
    plans = plan_anchors(stiff, Wish(0.3))
    assert not any(plan.found for plan in plans)
    said = " ".join(plans[0].what_would)
    assert "battens" in said and "cross-rail" in said and "boards that cup no more than" in said
    assert any("out of flat, wished" in problem.text for problem in plans[0].problems)


def test_kind_that_cannot_make_the_travel_is_refused_with_the_figure():
    wide = top(width=900, moves=(-0.012, 0.0, 0.008))
    plans = {plan.kind: plan for plan in plan_anchors(wide, Wish(3.0, kinds=("figure-eight", "button")))}
    assert not plans["figure-eight"].found and plans["figure-eight"].placed == ()
    assert any("+0.5 mm" in text for text in plans["figure-eight"].refused)
    buttons = plans["button"]
    assert any("long rail" in text for text in buttons.refused)
    kinds = {p.rail: p.kind for p in buttons.placed}
    assert kinds["front apron"] == "slotted screw" and kinds["left apron"] == "button"


@pytest.mark.parametrize(
    ("kind", "depth", "breadth", "figure"),
    [
        ("clip", 17.0, 30.0, "17 mm high, it needs 20 (12 down to the groove, 3 of groove, 5 below it)"),
        ("clip", 60.0, 14.0, "14 mm thick, it needs 15 (10 of groove, 5 behind it)"),
        ("button", 20.0, 30.0, "20 mm high, it needs 21 (10 down to the groove, 6 of groove, 5 below it)"),
    ],
)
def test_a_kind_is_refused_where_the_rail_has_not_the_wood_for_its_groove(kind, depth, breadth, figure):
    low = replace(
        TABLE,
        rails=tuple(
            replace(rail, depth_mm=depth, breadth_mm=breadth) if rail.direction == "across" else rail
            for rail in TABLE.rails
        ),
    )
    (plan,) = plan_anchors(low, Wish(1.0, (kind,), stand_in=""))
    across = {rail.name for rail in low.rails if rail.direction == "across"}
    assert all(placed.rail not in across for placed in plan.placed)
    assert any(figure in text for text in plan.refused), plan.refused
    enough = replace(low, rails=tuple(replace(r, depth_mm=21.0, breadth_mm=30.0) for r in low.rails))
    (plan,) = plan_anchors(enough, Wish(1.0, (kind,), stand_in=""))
    assert any(placed.rail in across for placed in plan.placed)


def test_overloaded_screws_are_a_problem_not_a_plan():
    weak = replace(top(dry=2.5e-4), gravity_12=0.2)
    (plan,) = plan_anchors(weak, Wish(3.0, kinds=("clip",), trade_spacing=False))
    if plan.found:
        assert all(p.pull_n <= (p.capacity.allowable_n or 0) for p in plan.placed)
    else:
        assert any("allowed" in problem.text for problem in plan.problems)
    strong = plan_anchors(top(dry=2.5e-4), Wish(3.0, kinds=("clip",), trade_spacing=False))[0]
    assert strong.found and len(strong.placed) < len(plan.placed) + (not plan.found) * 99


def test_unknown_density_leaves_capacity_unknown():
    (plan,) = plan_anchors(replace(TABLE, gravity_12=None), Wish(1.0, kinds=("button",)))
    assert plan.found
    assert all(p.capacity.allowable_n is None for p in plan.placed)
    assert any("withdrawal" in link for link in plan.unknown_links)


def test_every_plan_carries_the_cautions(plans):
    for plan in plans:
        assert cautions.NOT_FOR_LOAD in plan.cautions and cautions.NOT_LIFTING_POINTS in plan.cautions


@pytest.mark.parametrize(
    "make",
    [
        lambda: Wish(0.0),
        lambda: Wish(1.0, kinds=()),
        lambda: replace(TABLE, cases=()),
        lambda: replace(TABLE, strain=WidthStrain.even(300, 0, 0, 0)),
    ],
)
def test_bad_wishes_are_refused(make):
    with pytest.raises(InputError):
        make()


def test_something_holds_the_fixed_line(plans):
    for plan in plans:
        if plan.found:
            plain = [p for p in plan.placed if p.kind == "slotted screw" and p.slot is None]
            assert ("held by the plain holes" in plan.notes[0]) == bool(plain)
            assert plain or "add one plain screw" in plan.notes[0]


def test_round_top_on_a_cross_of_rails():
    """Anchors stay on the top; our own example."""
    angles = 2 * np.pi * np.arange(60) / 60
    rim = tuple((float(400 * np.cos(a)), float(400 * np.sin(a))) for a in angles)
    plate = Plate(800, 800, 22, OAK, 750, rim)
    rails = (Rail("long bearer", (-395, 0), (395, 0), 40), Rail("cross bearer", (0, -395), (0, 395), 40))
    cases = (
        LoadCase("driest", FreeCurvature.even(800, 4e-5)),
        LoadCase("wettest", FreeCurvature.even(800, -4e-5)),
    )
    round_top = Top(plate, rails, WidthStrain.even(800, -0.006, 0.0, 0.004), cases, 0.63)
    (plan,) = plan_anchors(round_top, Wish(3.5, kinds=("slotted screw",)))
    assert plan.found
    assert np.all(plate.holds([p.place_mm for p in plan.placed]))
    assert plan.worst_out_of_flat_mm < 3.5
    assert np.isnan(plan.held[0].height_mm[0, 0]) and not np.isnan(plan.held[0].height_mm[16, 20])


def test_top_without_a_frame_is_told_what_it_needs():
    bare = replace(TABLE, rails=())
    plans = plan_anchors(bare, Wish(0.5, kinds=("button",)))
    assert not plans[0].found and plans[0].placed == ()
    assert any("no rail can take it" in problem.text for problem in plans[0].problems)
    assert any("battens" in sentence for sentence in plans[0].what_would)
    assert any("breadboard ends" in sentence for sentence in plans[0].what_would)


@pytest.mark.parametrize("flatness", [2.0, 3.0])
def test_mixed_faces_take_more_anchors_than_same_way_boards_that_only_dry(flatness):
    """Common practice, no source: the same curvature in every board, heart sides up or one of three turned."""
    lines = (-250.0, -83.0, 83.0, 250.0)
    counts = []
    for crown in ((2e-4, 2e-4, 2e-4), (2e-4, 2e-4, -2e-4)):
        kinks = tuple(-0.3 * (a + b) * 167 / 2 for a, b in pairwise(crown))
        case = LoadCase("driest", FreeCurvature(lines, crown, kinks))
        wish = Wish(flatness, kinds=("button",), trade_spacing=False)
        (plan,) = plan_anchors(replace(TABLE, cases=(case,)), wish)
        assert plan.found
        counts.append(len(plan.placed))
    assert counts[0] < counts[1]
