"""Tops of which something is not told, whose parts share names, or that are too thin for their hardware."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from movement_core.air.year import MONTHS
from movement_core.errors import InputError
from movement_core.piece.hardware import hardware_of
from movement_core.piece.top_place import top_places
from movement_core.piece.top_plan import anchors_drawn, plan_top
from movement_core.piece.top_shapes import month_of_case
from movement_core.piece.tops import find_tops
from movement_core.sheet.holding import plans_entry
from movement_core.sheet.pages.model import Label
from movement_core.sheet.template.pages import drilling_template
from tests.core.tables import BOTH, UP, Made, frame, solved, top
from tests.core.test_hardware_bodies import broad

BAR = (60, 400, 30), (200, 0, 685)


def only(made):
    (found,) = find_tops(solved(made))
    return found


# ---- the place --------------------------------------------------------------------------------------------------


def test_parts_of_one_name_are_told_apart_by_a_number():
    rails = [replace(one, name="Rail") for one in frame(legs=False)]
    found = only(top(UP) + rails)
    assert sorted(rail.name for rail in found.top.rails) == ["Rail", "Rail (2)", "Rail (3)", "Rail (4)"]
    named = only(top(UP) + frame(legs=False))
    assert {rail.name for rail in named.top.rails} == {
        f"{side} apron" for side in ("Front", "Back", "Left", "Right")
    }


def test_a_top_whose_long_edges_are_housed_is_none_and_says_where():
    rail = "white oak; grain x; cut flat; built 9"
    sides = [Made(f"Rail {y:+.0f}", (900, 20, 120), (0, y, 700), rail) for y in (-225.0, 225.0)]
    piece = solved(top(UP) + sides)
    (place,) = top_places(piece)
    assert place.captured == "its long edges are housed in Rail -225, Rail +225" and not find_tops(piece)


def test_a_block_whose_grain_nobody_told_carries_the_top_like_any_other():
    blocks = [
        Made(f"Block {i}", (130, 120, 125), (x, y, 700 - 62.5), "white oak; built 9")
        for i, (x, y) in enumerate([(-350, -150), (350, -150), (-350, 150), (350, 150)])
    ]
    found = only(top(UP) + blocks)
    assert {bearing.name for bearing in found.top.bearings} == {f"Block {i}" for i in range(4)}
    assert not found.place.battens and not found.place.ends


def test_a_bar_of_which_nothing_is_told_is_taken_for_a_hardwood():
    told, untold = (
        only([*top(UP), Made("Bar", *BAR, f"{wood}grain y; cut quarter; built 9")])
        for wood in ("white oak; ", "")
    )
    assert [beam.name for beam in untold.top.beams] == ["Bar"]
    assert any("its material is not said" in note for note in untold.notes)
    assert not any("its material is not said" in note for note in told.notes)
    ratio = untold.top.beams[0].bending_stiffness_n_mm2 / told.top.beams[0].bending_stiffness_n_mm2
    assert 0.7 < ratio < 1.1


def test_the_twist_of_boards_is_named_as_left_out():
    twisted = only(top((*UP[:3], f"{UP[3]}; slope 0.03")))
    assert [note for note in twisted.notes if "twist" in note and "Board 4" in note and "Board 1" not in note]
    assert not [note for note in only(top(UP)).notes if "twist" in note]


# ---- cases and plans --------------------------------------------------------------------------------------------


def test_a_case_lies_in_a_month_or_is_today():
    found = only(top(UP))
    for month, name in enumerate(MONTHS):
        assert (
            month_of_case(name, None)
            == month_of_case(f"{name}, rings of the most cup", found.moistures)
            == month
        )
    assert month_of_case("today", found.moistures) is None and month_of_case("driest day", None) is None
    # The room of this piece is driest in January and February and dampest in August.
    assert month_of_case("driest day", found.moistures) in (0, 1, 2)
    assert month_of_case("wettest day, rings of the least cup", found.moistures) in (7, 8)


def test_what_cannot_be_worked_out_has_no_plan_no_anchor_and_no_hardware():
    found = only([*top((*UP[:3], "cut flat")), *frame()])
    assert found.top is None and anchors_drawn(found) == []
    with pytest.raises(InputError, match="Board 4"):
        plan_top(found)
    good = plan_top(only(top(UP) + frame(legs=False)), 2.0, ("clip",))
    with pytest.raises(InputError, match="Board 4"):
        hardware_of(replace(good, found=found), good.plans[0])


# ---- hardware that does not fit ---------------------------------------------------------------------------------


@cache
def planned(kind, breadth, thickness):
    (found,) = find_tops(solved(top(UP, thickness=thickness) + broad(legs=False, breadth=breadth), BOTH))
    plans = plan_top(found, 3.0, (kind,))
    return plans, plans.plans[0]


def made(kind, breadth=45.0, thickness=20.0, top_mm=None):
    """The hardware of a plan; ``top_mm``: as if the top were planed so thin afterwards."""
    plans, plan = planned(kind, breadth, thickness)
    if top_mm is not None:
        place = replace(plans.found.place, thickness_mm=top_mm)
        plans = replace(plans, found=replace(plans.found, place=place))
    return plans, plan, hardware_of(plans, plan)


def test_a_top_too_thin_for_any_screw_refuses_each_fastener_in_words():
    for kind in ("clip", "slotted screw"):
        plans, plan = planned(kind, 45.0, 20.0)
        thin = replace(plans.found.place, thickness_mm=6.0)
        found = replace(plans.found, place=thin)
        with pytest.raises(InputError, match="nothing to place"):
            hardware_of(replace(plans, found=found), plan)


def test_inserts_of_a_metal_base_are_as_long_as_the_top_allows():
    steel = [replace(one, tag="steel") for one in broad(legs=False)]
    (found,) = find_tops(solved(top(UP) + steel, BOTH))
    assert found.metal
    plans = plan_top(found, 3.0)
    hardware = hardware_of(plans, plans.plans[0])
    holes = {cut.number: cut.body for cut in hardware.cuts if cut.number and cut.purpose == "hole"}
    screws = [marker for marker in hardware.markers if marker.kind == "slotted steel"]
    assert screws
    assert plans_entry(plans)["metal_base"]["insert_mm"] <= 20.0
    assert all(len(marker.bodies) == 4 for marker in screws), "screw, washer, head and insert"
    assert not holes or all(body.size_mm[2] < 20.0 for body in holes.values())


def test_a_rail_too_narrow_for_a_groove_is_refused_as_it_is_planned():
    _, plan = planned("clip", 13.0, 20.0)
    assert plan.kind == "clip" and not [placed for placed in plan.placed if placed.kind == "clip"]
    assert any("13 mm thick, it needs 15 (10 of groove, 5 behind it)" in text for text in plan.refused)


def test_a_rail_planed_too_narrow_for_a_groove_after_the_plan_is_refused_once_a_rail():
    plans, plan = planned("clip", 45.0, 20.0)
    thin = tuple(replace(rail, breadth_mm=13.0) for rail in plans.found.top.rails)
    found = replace(plans.found, top=replace(plans.found.top, rails=thin))
    hardware = hardware_of(replace(plans, found=found), plan)
    with_clips = {placed.rail for placed in plan.placed if placed.kind == "clip"}
    assert with_clips and not [cut for cut in hardware.cuts if cut.purpose == "groove"]
    for rail in with_clips:
        assert len([text for text in hardware.refused if rail in text and "groove" in text]) == 1


# ---- the template of a plan with blocks and refusals --------------------------------------------------------------


@cache
def template(refused=0, paper="a4"):
    plans, plan, hardware = made("slotted screw", breadth=20.0)
    more = tuple(
        f"Remark {n}: {'a long remark that says what does not fit and why; ' * 4}" for n in range(refused)
    )
    changed = replace(hardware, refused=(*hardware.refused, *more))
    return drilling_template(plans, plan, plans_entry(plans), changed, paper), plan, changed


def test_slots_in_blocks_are_drawn_where_the_blocks_stand():
    sheet, _, hardware = template()
    blocks = {marker.number for marker in hardware.markers if marker.kind == "block"}
    assert blocks
    drawn = {(cut.purpose, cut.number) for cut in sheet.marks.cuts}
    assert {number for purpose, number in drawn if purpose == "block"} == blocks
    for cut in sheet.marks.cuts:
        if cut.purpose != "slot" or cut.number not in blocks:
            continue
        (block,) = [one for one in sheet.marks.cuts if (one.purpose, one.number) == ("block", cut.number)]
        for axis in (0, 1):
            inside, around = ([point[axis] for point in one.points] for one in (cut, block))
            assert min(around) < min(inside) and max(inside) < max(around)


def test_the_screw_of_a_block_stands_where_the_block_has_it():
    sheet, _, hardware = template()
    own = {marker.number: dict(marker.own_figures) for marker in hardware.markers if marker.own_figures}
    assert own
    for screw in sheet.marks.screws:
        if screw.number in own:
            assert screw.place == pytest.approx(
                (own[screw.number]["from_end_mm"], own[screw.number]["from_edge_today_mm"])
            )


def said(sheet):
    return " ".join(shape.text.words for shape in sheet.pages[0].shapes if isinstance(shape, Label))


def test_what_was_refused_stands_on_the_first_sheet_as_far_as_there_is_room():
    few, many = template()[0], template(40)[0]
    assert few.marks.refused and "too narrow" in said(few) and "more remarks" not in said(few)
    assert "Remark 0" in said(many) and "Remark 39" not in said(many)
    shown = [n for n in range(40) if f"Remark {n}:" in said(many)]
    left = len(many.marks.refused) - len(few.marks.refused) - len(shown)
    assert f"and {left} more remarks: see the plan" in said(many)
