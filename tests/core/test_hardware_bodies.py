"""Hardware of plans as plain solids: where it lies, its room through every day of the year, what is refused."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.holding import fasteners
from movement_core.holding.capacity import LEAVE_MM
from movement_core.holding.fasteners import find_kind
from movement_core.piece.hardware import hardware_of, parts_cut
from movement_core.piece.hardware_bodies import BOX, CYLINDER, OPEN_MM, SLOT, Body
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import find_tops
from tests.core.tables import BOTH, UP, Made, frame, solved, top

SQUARE = ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
BATTEN = Made("Batten", (60, 400, 30), (200, 0, 685), "white oak; grain y; cut quarter; built 9")
END = Made("End", (90, 440, 20), (495, 0, 710), "white oak; grain y; cut quarter; built 9")


def broad(legs=True, breadth=45.0, height=None):
    """The frame with broader aprons, and less high ones if asked for."""
    made = []
    for one in frame(legs=legs):
        x, y, z = one.size
        if "apron" in one.name:
            tall = z if height is None else height
            size = (breadth if x == 20 else x, breadth if y == 20 else y, tall)
            one = Made(one.name, size, (*one.centre[:2], 700.0 - tall / 2), one.tag)
        made.append(one)
    return made


def planned(made, kind="slotted screw", flatness=1.0, air=BOTH, turn=None, fixed="centre"):
    (found,) = find_tops(solved(made, air, turn))
    plans = plan_top(found, flatness, (kind,), fixed)
    return plans, plans.plans[0], hardware_of(plans, plans.plans[0])


def in_top_frame(plans, body):
    """Centre of a body as (along, across, up) of its top."""
    place = plans.found.place
    across, up, along = place.axes @ (np.array(body.centre_mm) - place.origin)
    return along, across, up


def day_by_day(found, across):
    """(365,) where a point of the top is on every day, from the widths of its boards: another way than the plan's."""
    lines = np.array(found.place.lines_mm)
    widths = np.stack([board.width.days_mm for board in found.place.boards], axis=1)
    edges = np.concatenate([np.zeros((365, 1)), np.cumsum(widths, axis=1)], axis=1)
    return np.array([np.interp(across, lines, row) - np.interp(0.0, lines, row) for row in edges])


# ---- solids -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("shape", "size", "volume"),
    [
        (BOX, (2.0, 3.0, 4.0), 24.0),
        (CYLINDER, (6.0, 6.0, 10.0), math.pi * 90),
        (SLOT, (15.0, 5.0, 10.0), (10 * 5 + math.pi * 6.25) * 10),
    ],
)
def test_volumes_by_closed_form(shape, size, volume):
    assert Body(shape, (0.0, 0.0, 0.0), SQUARE, size).volume_mm3 == pytest.approx(volume, rel=1e-12)


@pytest.mark.parametrize(
    ("shape", "size"), [(BOX, (0.0, 1.0, 1.0)), ("ball", (1.0, 1.0, 1.0)), (SLOT, (4.0, 5.0, 1.0))]
)
def test_what_is_no_solid_is_refused(shape, size):
    with pytest.raises(InputError):
        Body(shape, (0.0, 0.0, 0.0), SQUARE, size)


def test_every_body_stands_on_right_handed_unit_axes():
    for kind in ("slotted screw", "button", "clip"):
        _, _, made = planned(top(UP) + frame(), kind, 2.0)
        for body in [c.body for c in made.cuts] + [b for m in made.markers for b in (*m.bodies, *m.holes)]:
            axes = np.array(body.axes)
            assert axes @ axes.T == pytest.approx(np.eye(3), abs=1e-9)
            assert np.linalg.det(axes) == pytest.approx(1.0)


# ---- slots ------------------------------------------------------------------------------------------------


def test_a_slot_is_as_long_as_its_travel_its_shank_and_a_millimetre():
    plans, plan, made = planned(top(UP) + broad())
    slots = {cut.number: cut for cut in made.cuts if cut.purpose == "slot"}
    assert slots
    for number, cut in slots.items():
        placed = plan.placed[number - 1]
        shank = find_kind(placed.kind).shank_mm
        assert cut.body.size_mm[0] == pytest.approx(placed.most_mm - placed.least_mm + shank + 1.0, abs=1e-9)
        assert cut.body.size_mm[1] == shank + 0.5
        way = np.array(cut.body.axes[0]) @ plans.found.place.axes[0]
        assert abs(way) == pytest.approx(1.0)  # it runs across the grain, the way the top moves


@settings(max_examples=12, deadline=None)
@given(
    built=st.floats(5.0, 14.0),
    turn=st.floats(0.0, 6.2),
    fixed=st.sampled_from(["centre", "Board 1", "Board 4"]),
)
def test_every_screw_stays_inside_its_slot_on_every_day(built, turn, fixed):
    c, s = math.cos(turn), math.sin(turn)
    turned = np.array([[c, s, 0.0], [-s, c, 0.0], [0.0, 0.0, 1.0]])
    plans, plan, made = planned(top(UP, built=built) + broad(), turn=turned, fixed=fixed)
    found = plans.found
    still = day_by_day(found, plans.wish.fixed_mm)
    for cut in (cut for cut in made.cuts if cut.purpose == "slot"):
        placed = plan.placed[cut.number - 1]
        fitted = placed.place_mm[1]
        screw = plans.wish.fixed_mm + day_by_day(found, fitted) - still
        _, middle, _ = in_top_frame(plans, cut.body)
        reach = cut.body.size_mm[0] / 2 - find_kind(placed.kind).shank_mm / 2
        assert np.all(np.abs(screw - middle) <= reach)


def test_a_screw_is_drawn_in_its_slot_where_it_is_today():
    plans, plan, made = planned(top(UP) + broad())
    slots = {cut.number: cut.body for cut in made.cuts if cut.purpose == "slot"}
    for marker in (m for m in made.markers if m.number in slots):
        placed = plan.placed[marker.number - 1]
        _, screw, _ = in_top_frame(plans, marker.bodies[0])
        _, middle, _ = in_top_frame(plans, slots[marker.number])
        from_end = screw - middle + slots[marker.number].size_mm[0] / 2
        assert from_end == pytest.approx(placed.slot.screw_today_mm, abs=1e-9)


def test_the_washer_runs_free_in_its_recess_at_both_extremes():
    plans, plan, made = planned(top(UP) + broad())
    recesses = {cut.number: cut.body for cut in made.cuts if cut.purpose == "recess"}
    assert recesses
    for marker in (m for m in made.markers if m.number in recesses):
        placed, body = plan.placed[marker.number - 1], recesses[marker.number]
        _, middle, _ = in_top_frame(plans, body)
        washer = marker.bodies[1].size_mm[0]
        for travel in (placed.least_mm, placed.most_mm):
            assert abs(placed.place_mm[1] + travel - middle) + washer / 2 <= body.size_mm[0] / 2


def test_nothing_comes_near_the_show_face():
    for kind in ("slotted screw", "button", "clip", "figure-eight"):
        plans, _, made = planned(top(UP) + broad(), kind, 2.0)
        thick = plans.found.place.thickness_mm
        for body in [cut.body for cut in made.cuts] + [b for m in made.markers for b in m.bodies]:
            _, _, up = in_top_frame(plans, body)
            assert up + body.size_mm[2] / 2 <= thick - LEAVE_MM + 1e-9
        keys = {board.part.key for board in plans.found.place.boards}
        assert all(cut.blind for cut in made.cuts if cut.part in keys)


@pytest.mark.parametrize("kind, cut", [("button", "mortise"), ("clip", "groove")])
def test_another_kind_of_the_same_shape_is_drawn_and_cut_like_it(kind, cut, monkeypatch):
    _, _, known = planned(top(UP) + broad(), kind, 2.0)
    table = (*fasteners.all_kinds(), replace(find_kind(kind), kind="house kind"))
    monkeypatch.setattr(fasteners, "all_kinds", lambda: table)
    _, _, made = planned(top(UP) + broad(), "house kind", 2.0)
    assert [m.bodies for m in made.markers] == [m.bodies for m in known.markers]
    assert [c.body for c in made.cuts if c.purpose == cut] == [c.body for c in known.cuts if c.purpose == cut]
    assert {m.kind for m in made.markers} == {"house kind"}


def test_holes_in_the_top_lie_in_the_boards_as_drawn():
    plans, plan, made = planned(top(UP) + broad())
    keys = {board.part.key: board for board in plans.found.place.boards}
    holes = [cut for cut in made.cuts if cut.part in keys]
    assert {cut.number for cut in holes} == set(range(1, len(plan.placed) + 1))
    for cut in holes:
        along, across, _ = in_top_frame(plans, cut.body)
        assert (along, across) == pytest.approx(plan.placed[cut.number - 1].place_mm, abs=1e-9)


def test_a_hole_on_a_glue_line_is_cut_from_both_boards():
    from movement_core.piece.hardware_bodies import Bench
    from movement_core.piece.hardware_screws import Site

    (found,) = find_tops(solved(top(UP) + broad()))
    site = Site(Bench(found.place), found.place.thickness_mm)
    site.hole_in_top(1, 0.0, found.place.lines_mm[1] + 0.5, 12.0, 3.0)
    assert len(site.cuts) == 2 and len(parts_cut(site.cuts)) == 2
    site.hole_in_top(2, 0.0, 0.0, 17.0, 3.0)
    assert len(site.cuts) == 2 and "show face" in site.refused[0]


# ---- other kinds ------------------------------------------------------------------------------------------


def test_a_button_has_a_mortise_that_it_can_travel_in():
    plans, plan, made = planned(top(UP) + frame(), "button", 2.0)
    mortises = {cut.number: cut.body for cut in made.cuts if cut.purpose == "mortise"}
    buttons = [m for m in made.markers if m.kind == "button"]
    assert len(buttons) == len(mortises) > 0
    rails = {rail.name: rail for rail in plans.found.top.rails}
    for marker in buttons:
        placed, body = plan.placed[marker.number - 1], mortises[marker.number]
        tongue = marker.bodies[1]
        offset = np.array(tongue.centre_mm) - body.centre_mm
        rail = rails[placed.rail]
        swing = placed.most_mm - placed.least_mm if rail.direction == "across" else 0.0
        assert body.size_mm[0] == pytest.approx(30.0 + swing + 1.0)
        beside = body.size_mm[0] / 2 - tongue.size_mm[0] / 2 - abs(offset @ np.array(body.axes[0]))
        assert beside >= 0.5 - 1e-9  # today too
        # depth of the tongue in the rail, against the plan's figure
        if placed.engaged is not None:
            inner = body.size_mm[1] / 2 - OPEN_MM
            tip = -(offset @ np.array(body.axes[1])) + tongue.size_mm[1] / 2
            assert tip + inner == pytest.approx(placed.engaged.today_mm, abs=1e-9)


def test_clips_share_one_groove_a_rail():
    _, plan, made = planned(top(UP) + frame(), "clip", 2.0)
    with_clips = {p.rail for p in plan.placed if p.kind == "clip"}
    grooves = [cut for cut in made.cuts if cut.purpose == "groove"]
    assert len(grooves) == len(with_clips) > 0
    assert all(cut.body.size_mm[1:] == pytest.approx((10.0 + OPEN_MM, 3.0)) for cut in grooves)


def test_a_figure_eight_is_let_in_flush_and_swings():
    _, plan, made = planned(top(UP, thickness=24.0) + frame(), "figure-eight", 3.0)
    eights = [m for m in made.markers if m.kind == "figure-eight"]
    assert eights
    recesses = {cut.number: cut.body for cut in made.cuts if cut.purpose == "recess"}
    for marker in eights:
        placed, body = plan.placed[marker.number - 1], recesses[marker.number]
        arm = math.dist(marker.bodies[0].centre_mm, marker.bodies[1].centre_mm)
        assert abs(arm - 16.0) <= 0.5 + 1e-9  # what its holes give
        assert body.size_mm == pytest.approx((17.0, 17.0, 2.5 + OPEN_MM))
        assert marker.bodies[0].centre_mm[:2] == pytest.approx(body.centre_mm[:2])
        assert placed.kind == "figure-eight"


def test_a_narrow_rail_carries_its_slots_in_blocks_beside_it():
    plans, plan, made = planned(top(UP) + broad(breadth=20.0))
    blocks = [m for m in made.markers if m.kind == "block"]
    assert blocks and any("20 mm broad, too narrow" in text for text in made.refused)
    assert not any(cut.purpose == "slot" for cut in made.cuts)
    rails = {rail.name: rail for rail in plans.found.top.rails}
    screws = {m.number: m for m in made.markers if m.kind == "slotted screw"}
    for marker in blocks:
        rail = rails[plan.placed[marker.number - 1].rail]
        (body,), (hole,) = marker.bodies, marker.holes
        told = dict(marker.own_figures)
        along, across, up = in_top_frame(plans, body)
        reach = (
            max(abs(along - rail.at(0)[0]), 0) if rail.direction == "across" else abs(across - rail.at(0)[1])
        )
        assert reach == pytest.approx(10.0 + body.size_mm[1] / 2)  # it touches the rail's inner face
        assert up == -10.0 and body.size_mm[2] == 20.0
        _, middle, _ = in_top_frame(plans, hole)
        _, screw, _ = in_top_frame(plans, screws[marker.number].bodies[0])
        if hole.shape == SLOT:
            travel = told["travel_most_mm"] - told["travel_least_mm"]
            assert hole.size_mm[0] == pytest.approx(travel + 4.5 + 1.0)
            assert screw - middle + hole.size_mm[0] / 2 == pytest.approx(told["screw_from_slot_end_today_mm"])
            low, high = across - body.size_mm[1] / 2, across + body.size_mm[1] / 2
            assert min(middle - low, high - middle) - hole.size_mm[0] / 2 > 5.0
            still = day_by_day(plans.found, 0.0)
            pilot = screw - told["travel_today_mm"]
            days = day_by_day(plans.found, pilot) - still
            assert np.all(np.abs(days - middle) <= hole.size_mm[0] / 2 - 2.25)


def test_a_thin_rail_gets_a_shorter_screw():
    plans, _, made = planned(top(UP) + broad(legs=False, height=12.0))
    assert made.cuts and not any(cut.purpose == "recess" for cut in made.cuts)
    for marker in made.markers:
        _, _, up = in_top_frame(plans, marker.bodies[0])
        assert up + marker.bodies[0].size_mm[2] / 2 <= plans.found.place.thickness_mm - LEAVE_MM


# ---- battens and ends -------------------------------------------------------------------------------------


def test_a_drawn_batten_gets_one_plain_hole_and_slots():
    plans, _, made = planned([*top(UP), BATTEN])
    in_batten = [cut for cut in made.cuts if "Batten" in cut.name]
    holes = [cut for cut in in_batten if cut.purpose == "hole"]
    slots = [cut for cut in in_batten if cut.purpose == "slot"]
    assert len(holes) == 1 and len(slots) >= 2
    assert in_top_frame(plans, holes[0].body)[1] == pytest.approx(0.0, abs=1e-9)
    outward = sorted((abs(in_top_frame(plans, c.body)[1]), c.body.size_mm[0]) for c in slots)
    lengths = [length for _, length in outward]
    assert lengths[-1] == max(lengths) and min(lengths) >= 4.5 + 1.0


def test_a_breadboard_end_gets_mortises_with_room_and_blind_pegs():
    plans, _, made = planned([*top(UP), *frame(), END])
    mortises = [c for c in made.cuts if c.purpose == "mortise" and c.name.endswith("End")]
    pegs = [m for m in made.markers if m.kind == "peg"]
    (tenons,) = [m for m in made.markers if m.kind == "breadboard end"]
    assert len(mortises) == len(pegs) == len(tenons.holes) == len(tenons.bodies) - 1 >= 3
    for peg, hole in zip(pegs, tenons.holes):
        _, at, up = in_top_frame(plans, peg.bodies[0])
        assert up + peg.bodies[0].size_mm[2] / 2 <= plans.found.place.thickness_mm - LEAVE_MM + 1e-9
        _, middle, _ = in_top_frame(plans, hole)
        assert abs(at - middle) + 4.0 <= hole.size_mm[0] / 2 + 1e-9
    for tenon, mortise in zip(tenons.bodies[1:], mortises):
        _, at, _ = in_top_frame(plans, tenon)
        _, middle, _ = in_top_frame(plans, mortise.body)
        room = (mortise.body.size_mm[1] - tenon.size_mm[1]) / 2
        assert abs(at - middle) <= room + 1e-9
    assert sum(room.body.size_mm[1] > 75.5 for room in mortises) == len(mortises) - 1  # one stays: no slack


def test_an_end_drawn_with_its_tenons_is_left_alone():
    deep = Made("End", (100, 440, 20), (490, 0, 710), END.tag)
    _, _, made = planned([*top(UP), *frame(), deep])
    assert any("drawn with its tongue" in text for text in made.refused)
    assert not [cut for cut in made.cuts if cut.name.endswith("End")]


def test_no_fastener_is_nothing_to_place():
    with pytest.raises(InputError, match="nothing to place"):
        planned(top(tuple("rings 90" for _ in range(4))))
