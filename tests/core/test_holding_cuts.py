"""What to cut, by hand: tenons, battens, housings, grooves, slots, inserts."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.holding.end_recipes import batten, breadboard_end, sliding_dovetail
from movement_core.holding.loose_recipes import drawer_bottom, gap_to_leave, moulding, panel_in_frame, runner
from movement_core.holding.travel import WidthStrain

# front half moves by −1 … +1 %, back half by −2 … +3 %; today they stand at −0.2 and +0.4 %; no doubt of a board
UNEVEN = WidthStrain((-400.0, 0.0, 400.0), (-0.01, -0.02), (-0.002, 0.004), (0.01, 0.03), 0.0)
EVEN = WidthStrain.even(900, -0.008, 0.0, 0.006, 0.0)


def test_tenons_stand_a_margin_in_and_one_on_the_fixed_line():
    """75 mm tenons in a top of 900 by 24 mm: margin 37.5 + 24, room 777, 777 ÷ 187.5 = 4.1: five."""
    end = breadboard_end(EVEN, 24, 110)
    assert [tenon.centre_mm for tenon in end.tenons] == pytest.approx([-388.5, -194.25, 0, 194.25, 388.5])
    assert {tenon.width_mm for tenon in end.tenons} == {75.0}
    outer = end.tenons[-1]  # it moves by −0.8 and +0.6 % of 388.5; half the room of 1 mm on either side
    assert outer.slack_front_mm == pytest.approx(388.5 * 0.008 + 0.5)
    assert outer.slack_back_mm == pytest.approx(388.5 * 0.006 + 0.5)
    assert end.tenons[0].slack_front_mm == pytest.approx(outer.slack_back_mm)
    assert outer.peg.length_mm == pytest.approx(8 + 388.5 * 0.014 + 1)
    assert (end.tongue_depth_mm, end.tongue_thickness_mm) == (8, 8)
    assert end.tenon_length_mm == pytest.approx(2 / 3 * 110)
    even = breadboard_end(
        WidthStrain.even(700, -0.008, 0.0, 0.006), 24, 110
    )  # 577 ÷ 187.5 = 3.1: four, so five
    assert len(even.tenons) == 5


def test_a_narrow_end_has_one_tenon_glued_all_along():
    for width, count in ((122.0, 1), (124.0, 1), (300.0, 1), (311.0, 3)):
        end = breadboard_end(WidthStrain.even(width, -0.008, 0.0, 0.006), 24, 110)
        assert len(end.tenons) == count, width
        assert (end.glue_from_mm, end.glue_to_mm) == (-25, 25)
    thin = breadboard_end(WidthStrain.even(40.0, -0.008, 0.0, 0.006), 24, 110)
    assert (thin.glue_from_mm, thin.glue_to_mm) == (-20, 20)
    fixed = breadboard_end(EVEN, 24, 110, fixed_mm=-440)
    assert (fixed.glue_from_mm, fixed.glue_to_mm) == (-450, -415)
    assert fixed.tenons[0].centre_mm == -440 and fixed.tenons[0].peg is None


def test_an_end_stands_out_at_the_edge_that_moves_most():
    end = breadboard_end(UNEVEN, 24, 110)
    assert end.proud_at == "back"  # 400 mm by −2, +0.4 and +3 %, told from today
    assert end.proud_mm == pytest.approx((400 * 0.024, 0.0, -400 * 0.026))
    turned = WidthStrain((-400.0, 0.0, 400.0), (-0.02, -0.01), (0.004, -0.002), (0.03, 0.01), 0.0)
    front = breadboard_end(turned, 24, 110)
    assert front.proud_at == "front"
    assert front.proud_mm == pytest.approx(end.proud_mm)


@pytest.mark.parametrize("name", ["tenon_width_mm", "thickness_mm", "end_width_mm"])
def test_an_end_has_a_size(name):
    given = {"thickness_mm": 24.0, "end_width_mm": 110.0}
    assert breadboard_end(EVEN, **{**given, name: 0.5})
    for wrong in (0.0, -0.5, *([100.5] if name == "tenon_width_mm" else [])):
        with pytest.raises(InputError, match="above 0"):
            breadboard_end(EVEN, **{**given, name: wrong})
    assert breadboard_end(EVEN, 24.0, 110.0, tenon_width_mm=100.0)


def test_screws_of_a_batten_are_no_further_apart_than_asked():
    """From 30 + 25 mm inside either edge: ±395; three stretches of 131.7 mm each side of the fixed line."""
    made = batten(EVEN)
    assert [screw.across_mm for screw in made.screws] == pytest.approx([k * 395 / 3 for k in range(-3, 4)])
    outer = made.screws[-1]
    assert (outer.least_mm, outer.most_mm) == pytest.approx((-395 * 0.008, 395 * 0.006))
    assert outer.slot.length_mm == pytest.approx(4.5 + 395 * 0.014 + 1)
    wide = batten(EVEN, most_spacing_mm=400, inset_mm=10, end_mm=5, fixed_mm=-100)
    assert [screw.across_mm for screw in wide.screws] == pytest.approx([-435, -100, 167.5, 435])
    uneven = batten(UNEVEN)  # cut flush to 30 mm at the back edge, which moves most
    assert uneven.overhang_mm == pytest.approx((30 - 400 * 0.024, 30 + 400 * 0.026))
    for fixed, taken in ((395, True), (395.5, False), (-395, True), (-395.5, False)):
        if taken:
            assert batten(EVEN, fixed_mm=fixed).screws[-1 if fixed > 0 else 0].slot is None
        else:
            with pytest.raises(InputError, match="-395 to 395 mm"):
                batten(EVEN, fixed_mm=fixed)


def test_a_housing_shrinks_onto_its_batten_by_the_worse_edge():
    made = sliding_dovetail(UNEVEN, 24)
    # from today the front edge comes in by 400·0.8 %, the back edge by 400·2.4 %
    assert made.end_gap_mm == pytest.approx(400 * 0.024 + 0.5)
    assert sliding_dovetail(UNEVEN, 24, installation_mm=0.0).end_gap_mm == pytest.approx(400 * 0.024)
    front = WidthStrain((-400.0, 0.0, 400.0), (-0.02, -0.01), (0.004, -0.002), (0.03, 0.01), 0.0)
    assert sliding_dovetail(front, 24).end_gap_mm == pytest.approx(400 * 0.024 + 0.5)
    assert made.housing_mm == pytest.approx((800 * 0.985 / 1.001, 800 * 1.02 / 1.001))
    assert (made.glue_from_mm, made.glue_to_mm) == (-25, 25)
    assert sliding_dovetail(UNEVEN, 24, fixed_mm=390).glue_to_mm == 400
    assert sliding_dovetail(UNEVEN, 24, fixed_mm=-390).glue_from_mm == -400


def test_a_panel_has_the_least_groove_that_covers_and_leaves_room():
    """At either edge 250·(0.8 + 0.4) % open, 250·0.6 % shut: 0.5 wet, 2.0 today, 5.0 dry, and 3 of cover: 8 mm deep."""
    made = panel_in_frame(WidthStrain.even(500, -0.012, 0.0, 0.006, 0.0), 480)
    assert (made.gap.wettest_mm, made.gap.today_mm, made.gap.driest_mm) == pytest.approx((0.5, 2.0, 5.0))
    assert (made.groove_mm, made.cover_mm) == pytest.approx((8.0, 3.0))
    assert made.panel_width_mm == pytest.approx(480 + 2 * 6)
    assert (made.pin_mm, made.unfinished_line_mm) == pytest.approx((246, 3.0))
    halves = panel_in_frame(WidthStrain.even(500, -0.0121, 0.0, 0.006, 0.0), 480)
    assert halves.groove_mm == 8.5  # in steps of half a millimetre
    assert panel_in_frame(WidthStrain.even(500, -0.012, 0.0, 0.006, 0.0), 480, groove_mm=8.0).groove_mm == 8
    with pytest.raises(InputError, match="8 mm or more"):
        panel_in_frame(WidthStrain.even(500, -0.012, 0.0, 0.006, 0.0), 480, groove_mm=7.9)
    less = panel_in_frame(WidthStrain.even(500, -0.012, 0.0, 0.006, 0.0), 480, cover_mm=2.0, least_gap_mm=1.5)
    assert (less.groove_mm, less.gap.wettest_mm) == pytest.approx((8.0, 1.5))


def test_movements_and_gaps_may_be_nothing_but_not_less():
    assert gap_to_leave(0.0, 0.0, 0.0).today_mm == 0
    assert gap_to_leave(1.0, 2.0).wettest_mm == 0.5
    for wrong in ((-0.5, 1.0, 1.0), (1.0, -0.5, 1.0), (1.0, 1.0, -0.5)):
        with pytest.raises(InputError, match="0 or more"):
            gap_to_leave(*wrong)


def test_a_drawer_bottom_moves_from_its_front():
    made = drawer_bottom(WidthStrain.even(450, -0.008, 0.0, 0.004, 0.0))
    assert made.overhang_mm == pytest.approx((3 - 450 * 0.008, 3, 3 + 450 * 0.004))
    assert made.gap_behind.wettest_mm == 0.5 and made.gap_behind.today_mm == pytest.approx(0.5 + 450 * 0.004)
    assert made.slot.length_mm == pytest.approx(
        4 + 440 * 0.012 + 1
    )  # the screw is 10 mm inside the back edge
    assert made.slot.screw_today_mm == pytest.approx(2 + 0.5 + 440 * 0.004)
    other = drawer_bottom(
        WidthStrain.even(450, -0.008, 0.0, 0.004, 0.0), back_at_mm=175, shank_mm=5, overhang_today_mm=8
    )
    assert other.slot.length_mm == pytest.approx(5 + 400 * 0.012 + 1)
    assert other.overhang_mm[1] == 8


@pytest.mark.parametrize(
    ("make", "glue", "places", "shank", "in_carrier"),
    [
        (lambda strain: moulding(strain), 75.0, [208.33333, 341.66667, 475.0], 3.5, True),
        (lambda strain: runner(strain), 50.0, [191.66667, 333.33333, 475.0], 4.0, False),
    ],
    ids=["moulding", "runner"],
)
def test_what_crosses_a_case_side_is_screwed_behind_its_glue(make, glue, places, shank, in_carrier):
    """Screws no further apart than 150 and 200 mm, the last 25 mm from the back; a slot in the moving side is seen
    from the other way round."""
    made = make(WidthStrain.even(500, -0.008, 0.0, 0.004, 0.0))
    assert made.glue_mm == glue
    assert [place for place, _ in made.slots] == pytest.approx(places)
    for place, hole in made.slots:
        assert hole.length_mm == pytest.approx(shank + place * 0.012 + 1)
        before = place * (0.004 if in_carrier else 0.008)
        assert hole.screw_today_mm == pytest.approx(shank / 2 + 0.5 + before)
    assert made.free_mm == pytest.approx((-4.0, 2.0))
    assert made.back_gap.driest_mm == 0.5 and made.back_gap.today_mm == pytest.approx(4.5)
    assert made.back_gap.wettest_mm == pytest.approx(6.5)


def test_a_narrow_side_is_glued_over_a_third_and_screwed_once():
    side = WidthStrain.even(120, -0.008, 0.0, 0.004)
    for made in (moulding(side), runner(side)):
        assert made.glue_mm == 40
        assert [place for place, _ in made.slots] == [95]


@settings(max_examples=50, deadline=None)
@given(st.floats(10, 400))
def test_every_screw_of_a_strip_stands_behind_its_glue_and_inside_the_side(wide):
    side = WidthStrain.even(wide, -0.008, 0.0, 0.004)
    for made in (moulding(side), runner(side)):
        assert made.slots
        assert all(made.glue_mm < place < wide for place, _ in made.slots)


# Boards that differ, a part that is not centred, and a day of its own: nothing is taken from the wrong edge or moment.
SIDE = WidthStrain((10.0, 110.0, 410.0), (-0.01, -0.02), (-0.004, 0.002), (0.01, 0.006), 0.0)


def test_slack_of_a_tenon_is_counted_from_today():
    """Front half −1 … −0.2 … +1 %, back half −2 … +0.4 … +3 %, each by its distance from the fixed line."""
    end = breadboard_end(UNEVEN, 24, 110)
    for tenon in end.tenons:
        at = tenon.centre_mm
        if at == 0:
            assert (tenon.slack_front_mm, tenon.slack_back_mm, tenon.peg) == (0, 0, None)
            continue
        dry, now, wet = (-0.01, -0.002, 0.01) if at < 0 else (-0.02, 0.004, 0.03)
        least, most = sorted((dry * at, wet * at))
        assert tenon.slack_front_mm == pytest.approx(now * at - least + 0.5)
        assert tenon.slack_back_mm == pytest.approx(most - now * at + 0.5)
        assert tenon.peg.length_mm == pytest.approx(8 + most - least + 1)
        assert tenon.peg.screw_today_mm == pytest.approx(4 + 0.5 + most - now * at)


def test_a_batten_overhangs_at_the_front_where_that_moves_most():
    turned = WidthStrain((-400.0, 0.0, 400.0), (-0.02, -0.01), (0.004, -0.002), (0.03, 0.01), 0.0)
    assert batten(turned).overhang_mm == pytest.approx(batten(UNEVEN).overhang_mm)
    assert batten(turned).overhang_mm == pytest.approx((30 - 400 * 0.024, 30 + 400 * 0.026))


@pytest.mark.parametrize(("width", "screws"), [(710.0, 5), (711.0, 7)])
def test_a_batten_has_a_screw_every_hundred_and_fifty_millimetres_at_least(width, screws):
    assert len(batten(WidthStrain.even(width, -0.01, 0.0, 0.01)).screws) == screws


def test_a_panel_of_different_boards_moves_about_its_middle():
    """Pinned at 210 mm: its back edge 200 mm further on, all in the second board."""
    made = panel_in_frame(SIDE, 390)
    shut, opens = 200 * (0.006 - 0.002), 200 * (0.002 + 0.02)
    assert made.gap.today_mm == pytest.approx(0.5 + shut)
    assert made.gap.driest_mm == pytest.approx(0.5 + shut + opens)
    assert made.unfinished_line_mm == pytest.approx(opens)
    with pytest.raises(InputError, match=f"moves {shut + opens:.1f} mm at each edge"):
        panel_in_frame(SIDE, 390, groove_mm=5.0)


def test_a_drawer_bottom_of_different_boards_moves_by_the_sum_of_them():
    made = drawer_bottom(SIDE)
    dry, now, wet = 100 * -0.01 + 300 * -0.02, 100 * -0.004 + 300 * 0.002, 100 * 0.01 + 300 * 0.006
    assert made.overhang_mm == pytest.approx((3 + dry - now, 3, 3 + wet - now))
    assert made.gap_behind.today_mm == pytest.approx(0.5 + wet - now)
    assert made.gap_behind.driest_mm == pytest.approx(0.5 + wet - dry)
    at = (dry + 10 * 0.02, wet - 10 * 0.006)
    assert made.slot.length_mm == pytest.approx(4 + at[1] - at[0] + 1)


def test_a_moulding_across_different_boards_follows_each():
    made = moulding(SIDE)  # 400 mm wide: 75 of glue, the last screw at 375 from the front
    dry, now, wet = 100 * -0.01 + 300 * -0.02, 100 * -0.004 + 300 * 0.002, 100 * 0.01 + 300 * 0.006
    assert made.free_mm == pytest.approx((dry, wet))
    assert made.back_gap.today_mm == pytest.approx(0.5 + now - dry)
    assert made.back_gap.wettest_mm == pytest.approx(0.5 + wet - dry)
    place, hole = made.slots[-1]
    assert place == 375
    assert hole.length_mm == pytest.approx(3.5 + (wet - 25 * 0.006) - (dry + 25 * 0.02) + 1)


@pytest.mark.parametrize(
    ("make", "width", "screws"), [(moulding, 400, 2), (moulding, 401, 3), (runner, 475, 2), (runner, 476, 3)]
)
def test_screws_of_what_crosses_a_side_keep_their_spacing(make, width, screws):
    """150 mm behind the 75 of a moulding's glue, 200 mm behind the 50 of a runner's."""
    assert len(make(WidthStrain.even(width, -0.01, 0.0, 0.01)).slots) == screws
