"""What lies under a panel, and places for fasteners clear of joints."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.holding.fasteners import find_kind
from movement_core.holding.model import Elastic, Plate
from movement_core.holding.rails import Member, Rail, _crossing, anchor_places, what_lies_under

PLATE = Plate(1200, 700, 22, Elastic(13000, 1000, 1000, 0.4), 700)


def box(name, s0, x0, s1, x1, top=0.0):
    return Member(name, ((s0, x0), (s1, x0), (s1, x1), (s0, x1)), top)


TABLE = [
    box("front apron", -500, -300, 500, -280), box("back apron", -500, 280, 500, 300),
    box("left apron", -520, -260, -500, 260), box("right apron", 500, -260, 520, 260),
    box("cross-rail", -10, -280, 10, 280), box("shelf", -400, -200, 400, 200, top=-300),
    box("leg", -550, -320, -500, -270), box("beyond", 700, -100, 800, 100),
]  # fmt: skip


def test_rails_bearings_and_joints_are_found():
    under = what_lies_under(PLATE, TABLE, 0.2)
    assert [rail.name for rail in under.rails] == [
        "front apron", "back apron", "left apron", "right apron", "cross-rail"
    ]  # fmt: skip
    assert {bearing.name for bearing in under.bearings} == {rail.name for rail in under.rails} | {"leg"}
    front = under.rails[0]
    assert front.direction == "along" and front.breadth_mm == pytest.approx(20)
    assert front.length_mm == pytest.approx(1000)
    assert any(abs(joint - 500) < 1 for joint in front.joints_mm)  # where the cross-rail meets it
    assert under.rails[4].direction == "across"
    assert under.bearings[0].height_mm == pytest.approx(-0.2)


def test_rail_beyond_the_edge_is_cut_to_the_panel():
    (rail,) = what_lies_under(PLATE, [box("long bearer", -900, -20, 900, 20)], 0.0).rails
    assert rail.length_mm == pytest.approx(1200)


def test_turned_rail_keeps_its_breadth():
    c, s = math.cos(0.4), math.sin(0.4)
    corners = tuple(
        (c * a - s * b, s * a + c * b) for a, b in ((-250, -15), (250, -15), (250, 15), (-250, 15))
    )
    (rail,) = what_lies_under(PLATE, [Member("brace", corners, 0.0)], 0.0).rails
    assert rail.breadth_mm == pytest.approx(30) and rail.length_mm == pytest.approx(500)
    assert rail.direction == "along"


def test_aside_is_toward_the_panels_centre():
    for sign in (-1, 1):
        rail = Rail("apron", (-400, sign * 300), (400, sign * 300), 20)
        assert abs(rail.at(100, 30)[1]) == pytest.approx(270)


@settings(max_examples=80, deadline=None)
@given(
    st.floats(120, 2000),
    st.integers(1, 6),
    st.sampled_from(["even", "outer"]),
    st.lists(st.floats(0, 1), max_size=4),
)
def test_places_are_clear_of_ends_and_joints(length, count, spread, shares):
    rail = Rail("apron", (0, 0), (length, 0), 20, joints_mm=tuple(share * length for share in shares))
    places = anchor_places(rail, find_kind("button"), count, 40.0, spread)
    assert len(places) <= count
    for place in places:
        assert 40 - 1e-6 <= place <= length - 40 + 1e-6
        assert all(abs(place - joint) >= 40 - 1e-6 for joint in rail.joints_mm)


def test_no_room_no_place():
    assert anchor_places(Rail("block", (0, 0), (60, 0), 20), find_kind("clip"), 1, 40.0) == ()
    with pytest.raises(InputError, match="above 0"):
        Rail("nothing", (0, 0), (0, 0), 20)


@pytest.mark.parametrize(
    ("low", "high", "met"),
    [(-10, -1.5, None), (-10, -0.5, 0.0), (40, 60, 50.0), (100.5, 110, 100.0), (101.5, 110, None)],
)
def test_a_rail_is_met_by_what_ends_within_a_millimetre_of_it(low, high, met):
    rail = Rail("apron", (0.0, 0.0), (100.0, 0.0), 20.0)
    for x, there in ((0.0, True), (-20.5, True), (-21.5, False), (20.5, False)):
        outline = np.array([(low, x), (high, x), (high, x + 10.0), (low, x + 10.0)])
        assert _crossing(rail, outline) == (met if there and x <= 10.5 else None)
