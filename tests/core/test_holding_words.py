"""What a plan says, each sentence on the case it is for, and the small steps of its search by hand."""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.holding.anchor_plan import (
    _aside,
    _badness,
    _engaged,
    _groups,
    _handled,
    _inside,
    _Place,
    _same_number,
    _score,
    extreme_cases,
)
from movement_core.holding.capacity import Capacity
from movement_core.holding.fasteners import find_kind
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.held import ROCKS, TIPS
from movement_core.holding.model import LoadCase
from movement_core.holding.plan_model import OUT_OF_FLAT, PULLED, UNSTEADY, Placed, Wish
from movement_core.holding.plan_words import fixed_line_note, problems_of, season_notes
from movement_core.holding.rails import Rail
from movement_core.holding.travel import WidthStrain, slot
from tests.core.test_holding_plan import top

BUTTON, SLOTTED = find_kind("button"), find_kind("slotted screw")
KNOWN = Capacity(100.0, 550.0, "withdrawal", (), 5.5, None, None)
UNKNOWN = replace(KNOWN, allowable_n=None, ultimate_n=None)


def placed(kind="button", across=0.0, pull=0.0, at_work=(), capacity=KNOWN, cut=None, rail="left apron"):
    return Placed(rail, kind, (-460.0, across), 100.0, -1.0, 0.0, 1.0, cut, None, pull, capacity, at_work)


def held(case="driest", flat=0.5, flags=(), lifted=(), pulls=()):
    gaps = tuple(SimpleNamespace(gap_mm=gap) for gap in lifted)
    return SimpleNamespace(
        case=case, out_of_flat_mm=flat, flags=flags, lifted=gaps, anchor_force_n=np.array(pulls)
    )


# Sentences


def test_a_problem_for_each_wish_that_is_not_met():
    found = problems_of(
        [placed(pull=99.0), placed(pull=101.0), placed(pull=900.0, capacity=UNKNOWN)],
        [held(flat=1.0), held("wettest", 1.01), held("spring", flags=(ROCKS, TIPS, "deep"))],
        1.0,
    )
    assert [problem.kind for problem in found] == [OUT_OF_FLAT, UNSTEADY, UNSTEADY, PULLED]
    assert found[0].text == "wettest: 1.01 mm out of flat, wished 1.00 mm"
    assert found[1].text.startswith("spring: free to rock") and found[2].text.startswith("spring: tips")
    assert "left apron at 100 mm: pulled with 101 N, allowed 100 N" in found[3].text
    assert problems_of([placed(pull=100.0)], [held(flat=1.0)], 1.0) == ()


def test_the_fixed_line_is_kept_by_plain_holes_or_by_a_screw_to_add():
    """A plain hole is that of a screw without a slot; a button has no slot either and fixes nothing."""
    rails = [
        Rail("left apron", (-460, -200), (-460, 200), 20),
        Rail("back apron", (-460, 200), (460, 200), 20),
    ]
    cut = slot(-1.0, 0.0, 1.0, 4.5)
    holes = [
        placed("slotted screw", rail="right apron"),
        placed("plain screw"),
        placed("slotted screw", cut=cut, rail="x"),
    ]
    note = fixed_line_note([*holes, placed("button", rail="y")], rails, 50.0)
    assert note == "fixed line at +50 mm across: held by the plain holes on left apron, right apron"
    to_add = fixed_line_note([placed("button"), placed("slotted screw", cut=cut)], rails, 0.0)
    assert "add one plain screw where left apron cross it" in to_add
    assert "on the rail nearest to it" in fixed_line_note([placed("button")], rails[1:], 0.0)


@pytest.mark.parametrize(
    ("work", "says"),
    [
        ((False, False, False), "driest: 0.5 mm out of flat; no anchor is pulled"),
        (
            (True, False, False),
            "do all the holding and are enough by themselves; 2 of 3 anchors idle",
        ),
        ((False, True, True), "near the middle of the width do nothing, those toward the edges hold; 1 of 3"),
        ((True, True, False), "driest: 0.5 mm out of flat; 1 of 3 anchors idle"),
        ((True, True, True), "driest: 0.5 mm out of flat"),
    ],
)
def test_each_season_says_what_holds(work, says):
    """The middle is what lies within 15 % of the width, 75 of 500 mm, either side."""
    plate = top().plate
    anchors = [
        placed(across=x, at_work=("driest",) if works else ("wettest",))
        for x, works in zip((75, 76, -200), work)
    ]
    (note,) = season_notes(anchors, [held()], plate)
    assert says in note
    if all(work):
        assert note == says


def test_a_season_tells_gaps_flags_and_that_nothing_holds():
    plate = top().plate
    notes = season_notes([placed(at_work=("driest",))], [held(lifted=(0.2, 0.7), flags=(ROCKS,))], plate)
    assert notes[0].endswith("it stands off its frame by up to 0.7 mm") and notes[1].startswith(
        "driest: free"
    )
    assert season_notes([], [held(flat=2.0)], plate) == ("driest: nothing holds it, 2.0 mm out of flat",)
    edges = season_notes([placed(across=200.0, at_work=("driest",))], [held()], plate)
    assert edges == ("driest: 0.5 mm out of flat",)  # none near the middle, none idle: nothing more to say


# The search's own helpers


def test_rails_are_ends_where_they_are_outermost_and_near_the_end():
    """An end rail lies beyond three tenths of the half length and is the outermost of its side."""
    made = top()

    def rails(*alongs):
        return tuple(Rail(f"at {s}", (s, -200), (s, 200), 20) for s in alongs)

    def named(alongs):
        groups = _groups(replace(made, rails=rails(*alongs)), Wish(1.0), BUTTON, [])
        return [[rail.name for rail in found] for found, _, _ in groups]

    assert named((-160, 0, 400)) == [["at -160", "at 400"], ["at 0"]]
    assert named((-140, 0, 400)) == [["at 400"], ["at -140", "at 0"]]
    assert named((-400, -300, 400)) == [["at -400", "at 400"], ["at -300"]]
    long = Rail("front", (-460, -200), (460, -200), 20)
    groups = _groups(replace(made, rails=(long, *rails(-400, 400))), Wish(1.0), SLOTTED, [])
    assert [[rail.name for rail in found] for found, _, _ in groups] == [["at -400", "at 400"], ["front"]]


def test_trade_spacing_asks_for_so_many_on_the_longest_rail():
    made = top()
    spacing = BUTTON.most_spacing_mm
    rails = (
        Rail("a", (-400, 0), (-400, 80 + 2 * spacing), 20),
        Rail("b", (400, 0), (400, 81 + 2 * spacing), 20),
    )
    for some, least in ((rails[:1], 2), (rails, 3)):
        (group,) = _groups(replace(made, rails=some), Wish(1.0), BUTTON, [])
        assert group[2] == least
    (group,) = _groups(replace(made, rails=rails), Wish(1.0, trade_spacing=False), BUTTON, [])
    assert group[2] == 0


def test_patterns_are_tried_fewest_fasteners_first():
    two = [Rail("a", (0, 0), (0, 9), 2), Rail("b", (0, 0), (0, 9), 2)]
    bundles = _same_number([(two, BUTTON, 1), (two[:1], BUTTON, 0)])
    counts = [{2 * first[0] + second[0] for first, second in bundle} for bundle in bundles]
    assert all(len(count) == 1 for count in counts)
    numbers = [next(iter(count)) for count in counts]
    assert numbers == sorted(numbers) and numbers[0] == 2 and numbers[-1] == 2 * 5 + 5
    assert bundles[0] == [((1, "even"), (0, "even"))]
    assert set(bundles[1]) == {((1, "even"), (1, "even"))}
    assert ((2, "outer"), (0, "even")) in bundles[2] and ((1, "even"), (2, "outer")) in bundles[2]
    spreads = {pattern[0] for bundle in bundles for pattern in bundle}
    assert spreads == {(1, "even")} | {(n, spread) for n in range(2, 6) for spread in ("even", "outer")}
    most = max(count for bundle in _same_number([(two[:1], BUTTON, 7)]) for ((count, _),) in bundle)
    assert most == 9  # two more than the least, where that is many


def test_a_place_beyond_the_panel_travels_as_its_edge():
    made = top()
    assert _inside(made, (900.0, -900.0)) == (500.0, -250.0)
    assert _inside(made, (-900.0, 100.0)) == (-500.0, 100.0)


def test_a_button_stands_inside_its_rail_and_a_screw_in_it():
    rail = Rail("left apron", (-460, -200), (-460, 200), 20)
    assert _aside(rail, BUTTON) == 10 + BUTTON.inset_mm > 10
    assert SLOTTED.inset_mm == 0 and _aside(rail, SLOTTED) == 0


def test_a_score_is_the_worst_share_beyond_what_is_wished():
    places = [_Place(Rail("a", (0, 0), (0, 9), 2), BUTTON, 4.0, (0.0, 4.0))]
    wish, capacity = Wish(1.0), {"button": KNOWN}
    assert _score([held(flat=0.8, pulls=[100.0])], places, capacity, wish) == (0.0, 0.8)
    assert _score([held(flat=1.5, pulls=[0.0])], places, capacity, wish) == pytest.approx((0.5, 1.5))
    assert _score([held(flat=0.5, pulls=[0.0]), held(flat=0.6, pulls=[130.0])], places, capacity, wish) == (
        pytest.approx(0.3), 0.6,
    )  # fmt: skip
    assert _score([held(flat=0.5, pulls=[900.0])], places, {"button": UNKNOWN}, wish) == (0.0, 0.5)
    for flag in (ROCKS, TIPS):
        assert _score([held(flat=0.5, flags=(flag,))], [], capacity, wish) == (1.0, 0.5)
    assert _score([held(flat=3.5, flags=(ROCKS,))], [], capacity, wish) == (2.5, 3.5)


def test_anchors_together_carry_three_times_the_weight():
    made = top()
    place = _Place(Rail("a", (0, 0), (0, 9), 2), BUTTON, 4.0, (0.0, 4.0))
    need = 3 * made.plate.weight_n
    assert _handled(made, [place, place], {"button": replace(KNOWN, allowable_n=need / 2)})
    assert not _handled(made, [place, place], {"button": replace(KNOWN, allowable_n=0.499 * need)})
    assert _handled(made, [place], {"button": UNKNOWN})


def test_found_plans_come_by_number_and_others_by_flatness():
    plans = [
        SimpleNamespace(found=found, placed=[None] * count, worst_out_of_flat_mm=flat)
        for found, count, flat in (
            (False, 2, 1.5),
            (True, 8, 0.9),
            (True, 6, 1.0),
            (False, 9, 1.2),
            (True, 6, 0.8),
        )
    ]
    assert sorted(plans, key=_badness) == [plans[4], plans[2], plans[1], plans[3], plans[0]]


def test_cases_are_the_most_crown_the_most_hollow_and_the_widest_range():
    made = top()
    order = [made.cases[i] for i in (2, 0, 1, 3)]
    assert [case.name for case in extreme_cases(replace(made, cases=tuple(order)))] == ["driest", "wettest"]
    ends = (
        LoadCase("flat", FreeCurvature.even(500, 0.0)),
        LoadCase("near end", FreeCurvature.even(500, 5e-4), FreeCurvature.even(500, 0.0)),
        LoadCase("far end", FreeCurvature.even(500, 0.0), FreeCurvature.even(500, -5e-4)),
        LoadCase("crown", FreeCurvature.even(500, 2.1e-4)),
        LoadCase("hollow", FreeCurvature.even(500, -2.1e-4)),
    )
    assert [case.name for case in extreme_cases(replace(made, cases=ends))] == ["near end", "far end"]
    lines = made.cases[0].free.lines_mm
    waves = LoadCase("waves", FreeCurvature(lines, (9e-4, -9e-4, 9e-4, -9e-4)))
    chosen = extreme_cases(replace(made, cases=(*order, waves)))
    assert [case.name for case in chosen] == ["driest", "wettest", "waves"]


def test_tongues_point_to_their_rail():
    """On the back rail the top's growth drives a tongue in, on the front rail its shrinkage does."""
    back, front = (Rail("r", (-400, x), (400, x), 20) for x in (200.0, -200.0))
    into, out = (
        _engaged(_Place(rail, BUTTON, 400.0, rail.at(400.0, 30.0)), -1.0, 0.0, 3.0) for rail in (back, front)
    )
    assert into.most_mm - into.today_mm == pytest.approx(3.0)
    assert out.most_mm - out.today_mm == pytest.approx(1.0)
    across = Rail("end", (-460, -200), (-460, 200), 20)
    assert _engaged(_Place(across, BUTTON, 100.0, (-430.0, -100.0)), -1.0, 0.0, 3.0) is None


# What is asked


def test_a_wish_is_of_some_flatness_and_some_kind():
    assert Wish(1e-6).flatness_mm == 1e-6
    for wrong in (0.0, -1.0, np.inf, np.nan):
        with pytest.raises(InputError, match="above 0 mm"):
            Wish(wrong)
    with pytest.raises(InputError, match="no kinds"):
        Wish(1.0, kinds=())


def test_a_top_has_cases_and_the_strain_of_its_own_width():
    made = top()
    assert replace(made, strain=WidthStrain.even(501.0, 0, 0, 0)).strain.width_mm == 501
    for width in (498.9, 501.1):
        with pytest.raises(InputError, match="the panel is 500 mm wide"):
            replace(made, strain=WidthStrain.even(width, 0, 0, 0))
    with pytest.raises(InputError, match="no load case"):
        replace(made, cases=())
    assert (made.bearings, made.beams) == ((), ())
