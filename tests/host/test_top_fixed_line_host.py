"""A top whose maker said which line of it is held: planned from there, placed so, and set so on another day."""

from __future__ import annotations

import datetime

import bench  # noqa: F401  (puts the host's own modules on the path)
import pytest

from workbench_pkg.actions.check import work_out
from workbench_pkg.actions.hardware import PlaceWish, place_plan, plans_of
from workbench_pkg.actions.tag import tag
from workbench_pkg.actions.today import read_placed, todays
from workbench_pkg.demo.table import trestle_table
from workbench_pkg.objects import hardware as kept

KINDS = ("slotted screw",)


@pytest.fixture
def table(doc):
    trestle_table(doc, repaired=True)
    for obj in doc.Objects:  # the fasteners that the demo has already
        if obj.Label.endswith(" button"):
            obj.Visibility = False
    return doc


def board(doc, name):
    (found,) = [obj for obj in doc.Objects if obj.Label == name]
    return found


def test_the_plan_starts_from_the_line_that_a_board_says(table):
    place = plans_of(table, PlaceWish("", None, KINDS)).plans.found.place
    assert plans_of(table, PlaceWish("", None, KINDS)).plans.wish.fixed_mm == 0.0
    first = place.boards[0].part
    tag([board(table, first.name)], fixed="centre")
    after = plans_of(table, PlaceWish("", None, KINDS))
    assert after.plans.wish.fixed_mm == pytest.approx(sum(place.lines_mm[:2]) / 2)
    assert f"tag 'fixed' of {first.name}" in after.entry["plans"][0]["fixed_line"]
    asked = plans_of(table, PlaceWish("", None, KINDS, "centre"))
    assert asked.plans.wish.fixed_mm == 0.0 and "asked for" in asked.entry["plans"][0]["fixed_line"]


@pytest.mark.parametrize(("fixed", "rails"), [("Top board 1", ()), ("", ("Bearer 1",))])
def test_what_is_set_today_rests_on_the_line_and_the_rails_that_were_asked_for(table, fixed, rails):
    place_plan(table, kinds=KINDS, fixed=fixed, rails=rails)
    (group,) = kept.placed_tops(table)
    plan = plans_of(table, PlaceWish("", None, KINDS, fixed, rails)).plans
    assert group.HeartsideFixedAt.Value == pytest.approx(plan.wish.fixed_mm, abs=1e-3)
    assert list(group.HeartsideRails) == [rail.name for rail in plan.found.top.rails]
    steps = todays(work_out(table).whole, read_placed(table), datetime.date(2026, 1, 15), [9.0])
    while True:
        try:
            next(steps)
        except StopIteration as end:
            found = end.value
            break
    assert found.told == () and len(found.screws) == len(plan.plans[0].placed) > 0
