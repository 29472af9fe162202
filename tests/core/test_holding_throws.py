"""Screws, arms, tongues and what is fixed anyway, by hand and at both ends of what is asked."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from movement_core.errors import InputError, UnknownName
from movement_core.holding.capacity import choose_screw, fastener_capacity, wood_screw_withdrawal_n
from movement_core.holding.fasteners import (
    arm_stretch_mm,
    arm_throw_mm,
    engagement,
    find_kind,
    fits_travel,
    throw_mm,
)
from movement_core.holding.fixed_anyway import if_fixed, solid_width_remark
from movement_core.holding.metal_base import metal_base
from movement_core.holding.travel import WidthStrain

UNEVEN = WidthStrain((-400.0, 0.0, 400.0), (-0.01, -0.02), (-0.002, 0.004), (0.01, 0.03), 0.0)
EVEN = WidthStrain.even(900, -0.008, 0.0, 0.006, 0.0)
BUTTON, CLIP, EIGHT = (find_kind(name) for name in ("button", "clip", "figure-eight"))


def test_the_longest_insert_leaves_four_millimetres():
    """A millimetre for the hole's bottom: 25 mm of top take 20, 24 mm take 18; sizes as sold (common practice)."""
    for thickness, insert in ((35, 30), (34.9, 25), (30, 25), (29.9, 20), (25, 20), (24, 18), (23, 18), (22, 15),
                              (18, 13), (17, 12), (15, 10), (13, 8)):  # fmt: skip
        made = metal_base(EVEN, (0.0,), thickness)
        assert made.insert_mm == insert
        assert made.left_above_insert_mm == pytest.approx(thickness - insert - 1)
    assert metal_base(EVEN, (0.0,), 12.9).insert_mm is None
    assert metal_base(EVEN, (0.0,), 12.9).left_above_insert_mm is None
    assert metal_base(EVEN, (0.0,), 25, leave_mm=6.0).insert_mm == 18


def test_slots_in_steel_follow_the_top_and_washers_cover_them():
    made = metal_base(EVEN, (-350.0, 100.0), 25, screw_mm=8.0, fixed_mm=100.0)
    assert made.holes[0].slot.length_mm == pytest.approx(8 + 450 * 0.014 + 1)
    assert made.holes[0].washer_mm == pytest.approx(8 + 0.5 + 2 * 4)  # its slot is half a millimetre wider
    assert made.holes[1].slot is None
    assert (made.holes[0].least_mm, made.holes[0].most_mm) == pytest.approx((-450 * 0.006, 450 * 0.008))
    for screw in (3.0, 12.0):
        assert metal_base(EVEN, (0.0,), 25, screw_mm=screw)
    for screw in (2.9, 12.1, math.nan):
        with pytest.raises(InputError, match="3 to 12 mm"):
            metal_base(EVEN, (0.0,), 25, screw_mm=screw)


@pytest.mark.parametrize(
    ("thickness", "length"),
    [(20, 25), (17, 25), (16.9, 20), (12, 20), (11.9, None), (8, None), (30, 35), (100, 100)],
)
def test_the_longest_stock_screw_that_stays_inside(thickness, length):
    """A button is 12 mm through: a screw may be 12 + thickness − 4 long and reaches at least 6 mm into the top."""
    made = choose_screw(BUTTON, thickness)
    if length is None:
        assert made is None
        return
    assert made.length_mm == length
    inside = length - 12
    assert made.left_mm == pytest.approx(thickness - inside)
    assert made.thread_mm == pytest.approx(min(inside, 2 / 3 * length))


def test_a_screw_reaches_six_millimetres_into_the_top_or_is_none():
    assert choose_screw(replace(BUTTON, through_mm=14.0), 10.0).length_mm == 20
    assert choose_screw(replace(BUTTON, through_mm=14.5), 9.5) is None
    assert choose_screw(BUTTON, 20, leave_mm=8.5).length_mm == 20


def test_a_fastener_is_allowed_its_share_of_the_withdrawal():
    """108.25 G² D L (Wood Handbook ch. 8, recalled), a 5.5th of it; 25 mm screw, 13 mm of thread."""
    found = fastener_capacity(BUTTON, 0.6, 20.0)
    assert found.ultimate_n == pytest.approx(108.25 * 0.36 * 4.2 * 13)
    assert found.allowable_n == pytest.approx(found.ultimate_n / 5.5)
    assert wood_screw_withdrawal_n(0.6, 4.2, 13) == pytest.approx(found.ultimate_n)
    assert (found.safety, found.screw.length_mm) == (5.5, 25)
    assert fastener_capacity(BUTTON, 0.6, 20.0, leave_mm=8.5).screw.length_mm == 20


def test_an_arm_binds_by_its_geometry():
    """√((L cos α)² + (L sin α + s)²) − L for L = 3, s = 4 at 0° and at 90°."""
    assert arm_stretch_mm(3.0, 0.0, 4.0) == pytest.approx(2.0)
    assert arm_stretch_mm(3.0, 90.0, 4.0) == pytest.approx(4.0)
    assert arm_throw_mm(4.0, 0.0, 1.0) == pytest.approx((-3.0, 3.0))
    low, high = arm_throw_mm(4.0, 90.0, 1.0)
    assert (low, high) == pytest.approx((-1.0, 1.0))
    assert arm_throw_mm(4.0, -90.0, 1.0) == pytest.approx((-1.0, 1.0))


def test_a_tongue_keeps_three_millimetres_and_half_a_one_free():
    """A groove of 8 mm leaves 4.5 in all for a button, shared between both ends."""
    assert throw_mm(BUTTON, "along") == (-4.5, 4.5)
    assert throw_mm(CLIP, "along") == (-6.5, 6.5)
    assert fits_travel(BUTTON, "along", -2.0, 2.5).fits
    tight = fits_travel(BUTTON, "along", -2.0, 2.6)
    assert not tight.fits and "it gives 4.5 mm in all" in tight.reason
    exact = engagement(BUTTON, -2.0, 0.0, 2.5)
    assert (exact.least_mm, exact.today_mm, exact.most_mm) == pytest.approx((3.0, 5.0, 7.5))
    roomy = engagement(BUTTON, -1.0, 0.5, 1.5)
    assert (roomy.least_mm, roomy.today_mm, roomy.most_mm) == pytest.approx((4.0, 5.5, 6.5))
    assert engagement(BUTTON, -2.0, 0.0, 2.6) is None
    assert engagement(EIGHT, -1.0, 0.0, 1.0) is None
    assert throw_mm(BUTTON, "across") == (-math.inf, math.inf)
    assert (
        throw_mm(find_kind("plain screw"), "across")
        == (0.0, 0.0)
        == throw_mm(find_kind("plain screw"), "along")
    )
    assert throw_mm(EIGHT, "along") == pytest.approx((-0.5, 0.5))


def test_a_top_may_be_as_wide_as_practice_has_it():
    assert fits_travel(EIGHT, "across", -1.0, 1.0, 450.0).fits
    assert "450 mm" in fits_travel(EIGHT, "across", -1.0, 1.0, 450.5).reason
    assert fits_travel(BUTTON, "across", -1.0, 1.0, 3000.0).fits
    assert (
        "on the end rail: travel -4.5 to +1.0 mm, it gives -4.0 to +4.0"
        in fits_travel(EIGHT, "across", -4.5, 1).reason
    )
    with pytest.raises(UnknownName) as caught:
        find_kind("buton")
    assert "button" in caught.value.nearest


def test_what_is_kept_in_crushes_and_what_is_kept_out_splits():
    """+0.8 % kept: begins at 0.5 %, so 0.3 % of set over 300 mm; −0.4 % kept: 4 MPa at 1000 MPa."""
    kept = if_fixed(WidthStrain.even(300, -0.004, 0.0, 0.008, 0.0), 1000.0, 8.0)
    assert (kept.kept_shrinkage, kept.kept_swelling) == pytest.approx((0.004, 0.008))
    assert (kept.set_most, kept.set_most_mm) == pytest.approx((0.003, 0.9))
    assert (kept.tension_mpa, kept.compression_mpa) == pytest.approx((4.0, 8.0))
    half = if_fixed(WidthStrain.even(300, -0.004, 0.0, 0.008, 0.0), 1000.0, 8.0, let_out=0.5)
    assert (half.crush, half.set_most, half.tension_mpa) == ("none", 0, pytest.approx(2.0))
    all_out = if_fixed(WidthStrain.even(300, -0.004, 0.0, 0.008), 1000.0, 8.0, let_out=1.0)
    assert (all_out.split, all_out.tension_mpa) == ("none", 0)
    back = if_fixed(UNEVEN, 1000.0, 8.0, from_mm=0.0)
    assert back.kept_swelling == pytest.approx(0.03)
    assert if_fixed(UNEVEN, 1000.0, 8.0, to_mm=0.0).kept_swelling == pytest.approx(0.01)


@pytest.mark.parametrize(
    ("tension", "says"),
    [
        (0.0, "none"),
        (0.01, "unlikely"),
        (2.4, "unlikely"),
        (2.41, "possible"),
        (6.4, "possible"),
        (6.41, "likely"),
    ],
)
def test_a_split_is_unlikely_to_three_tenths_of_the_strength_and_likely_from_eight(tension, says):
    strain = WidthStrain.even(100, -tension / 1000 * (1 - 1e-12), 0, 0)
    assert if_fixed(strain, 1000.0, 8.0).split == says
    assert if_fixed(strain, 1000.0, None).split == ("unknown" if tension else "none")


@pytest.mark.parametrize(
    ("swelling", "says"), [(0.0049, "none"), (0.0051, "begins"), (0.0099, "begins"), (0.0101, "certain")]
)
def test_crushing_begins_at_half_a_percent_and_is_certain_at_one(swelling, says):
    assert if_fixed(WidthStrain.even(100, 0, 0, swelling), 1000.0, 8.0).crush == says


def test_fixed_parts_within_their_ranges():
    strain = WidthStrain.even(100, -0.01, 0, 0.01)
    for wrong in (-0.01, 1.01, math.nan):
        with pytest.raises(InputError, match="0 to 1"):
            if_fixed(strain, 1000.0, 8.0, let_out=wrong)
    assert if_fixed(strain, 0.5, 8.0).tension_mpa == pytest.approx(0.005)
    for wrong in (0.0, -0.5, math.inf):
        with pytest.raises(InputError, match="above 0 MPa"):
            if_fixed(strain, wrong, 8.0)
    with pytest.raises(InputError, match="rising order"):
        if_fixed(strain, 1000.0, 8.0, from_mm=10.0, to_mm=10.0)
    assert solid_width_remark(75.5, -1, 1) and "some let it pass" in solid_width_remark(100.0, -1, 1)
    assert "wider than practice" in solid_width_remark(100.5, -1, 1)
    assert "76 mm of grain that moves -1.0 to +2.0 mm" in solid_width_remark(75.6, -1, 2)


def test_screws_come_in_the_lengths_of_the_shops():
    """Common practice: the longest of them that keeps 4 mm away from the show face."""
    thin = replace(BUTTON, through_mm=2.0)
    for length in (12, 16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100):
        assert choose_screw(thin, length + 2.0).length_mm == length
        shorter = choose_screw(thin, length + 1.9)
        assert shorter is None or shorter.length_mm < length


def test_a_throw_is_that_of_the_way_the_rail_runs():
    slots = replace(find_kind("plain screw"), free_along_rail_mm=2.0, free_across_rail_mm=3.0)
    assert (throw_mm(slots, "across"), throw_mm(slots, "along")) == ((-2.0, 2.0), (-3.0, 3.0))
    assert throw_mm(find_kind("slotted screw"), "across") == (-math.inf, math.inf)
    assert throw_mm(replace(slots, free_along_rail_mm=None), "across") == (-math.inf, math.inf)
    grooved = replace(BUTTON, free_along_rail_mm=1.0)
    assert throw_mm(grooved, "across") == (-1.0, 1.0)
    assert throw_mm(replace(EIGHT, clearance_mm=None, free_along_rail_mm=1.5), "across") == (-1.5, 1.5)


def test_a_kind_fits_to_the_ends_of_its_throw():
    slots = replace(find_kind("plain screw"), free_along_rail_mm=2.0, free_across_rail_mm=3.0)
    for least, most, fits in ((-3.0, 3.0, True), (-3.0, 3.01, False), (-3.01, 3.0, False)):
        assert fits_travel(slots, "along", least, most).fits == fits
        assert fits_travel(slots, "along", least, most).throw_mm == (-3.0, 3.0)
    for least, most, fits in ((-2.0, 2.0, True), (-2.0, 2.01, False), (-2.01, 2.0, False)):
        assert fits_travel(slots, "across", least, most).fits == fits
    assert fits_travel(EIGHT, "across", -3.9, 3.9).fits
    assert fits_travel(EIGHT, "across", -1.0, 1.0, 300.0).fits
    assert not fits_travel(EIGHT, "across", -1.0, 1.0, 450.5).fits
    assert "within its throw" in fits_travel(EIGHT, "across", -1.0, 1.0).reason
