"""Recipes and what happens if a part is fixed anyway. Rules of proportion are common practice, no source."""

from __future__ import annotations

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.holding.end_recipes import batten, breadboard_end, sliding_dovetail
from movement_core.holding.fixed_anyway import if_fixed, mitre_gap_mm, solid_width_remark
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.loose_recipes import drawer_bottom, gap_to_leave, moulding, panel_in_frame, runner
from movement_core.holding.metal_base import metal_base
from movement_core.holding.model import Elastic, LoadCase, Plate
from movement_core.holding.plate import hold, prepare
from movement_core.holding.stiffeners import bar, bar_stress_mpa, tongue_load_n_mm
from movement_core.holding.travel import WidthStrain

TOP = WidthStrain.even(900, driest=-0.008, today=0.0, wettest=0.006)
STRAINS = st.tuples(st.floats(-0.02, 0.0), st.floats(0, 1), st.floats(0.0, 0.02)).map(
    lambda t: (t[0], t[0] + t[1] * (t[2] - t[0]), t[2])
)


def test_breadboard_end_proportions():
    end = breadboard_end(TOP, 24, 110)
    assert end.tongue_thickness_mm == pytest.approx(8)
    assert end.tenon_length_mm == pytest.approx(2 / 3 * 110)
    assert len(end.tenons) % 2 == 1 and len(end.tenons) >= 3
    assert end.tenons[len(end.tenons) // 2].peg is None
    assert (end.glue_from_mm, end.glue_to_mm) == (-25, 25)
    lengths = [t.peg.length_mm for t in end.tenons if t.peg and t.centre_mm > 0]
    assert lengths == sorted(lengths)  # longer toward the edges


def test_breadboard_end_stands_proud_when_dry_and_short_when_damp():
    """Proud or short by the top's edge: half the width times the strain; 1.5–6 mm on wide tables (read)."""
    end = breadboard_end(TOP, 24, 110)
    assert end.proud_mm == pytest.approx((450 * 0.008, 0.0, -450 * 0.006))
    front_fixed = breadboard_end(TOP, 24, 110, fixed_mm=-450)
    assert front_fixed.proud_at == "back"
    assert front_fixed.proud_mm[0] == pytest.approx(900 * 0.008)


@settings(max_examples=60, deadline=None)
@given(st.floats(250, 1300), STRAINS, st.floats(-0.5, 0.5))
def test_no_tenon_ever_closes_its_slack(width, strains, fixed_share):
    strain = WidthStrain.even(width, *strains, spread=0.15)
    end = breadboard_end(strain, 22, 100, fixed_mm=fixed_share * width)
    for tenon in end.tenons:
        if abs(tenon.centre_mm - fixed_share * width) < 1e-9:
            assert tenon.slack_back_mm == tenon.slack_front_mm == 0.0
            continue
        for state in ("driest", "wettest"):
            moved = float(
                strain.moved(state, tenon.centre_mm, fixed_share * width)
                - strain.moved("today", tenon.centre_mm, fixed_share * width)
            )
            assert tenon.slack_back_mm - moved > 0 and tenon.slack_front_mm + moved > 0


def test_batten_has_one_plain_hole_and_slots_that_grow_outward():
    made = batten(TOP)
    plain = [s for s in made.screws if s.slot is None]
    assert [s.across_mm for s in plain] == [0.0]
    right = [s.slot.length_mm for s in made.screws if s.slot and s.across_mm > 0]
    assert right == sorted(right)
    assert made.overhang_mm == pytest.approx((30 - 3.6, 30 + 2.7))
    with pytest.raises(InputError, match="where it has screws"):
        batten(TOP, fixed_mm=440)


def test_sliding_dovetail_leaves_room_for_the_top_to_shrink_onto_it():
    made = sliding_dovetail(TOP, 24, fixed_mm=0.0)
    assert made.end_gap_mm == pytest.approx(450 * 0.008 * 1.15 + 0.5)
    assert made.housing_mm == pytest.approx((900 * 0.992, 900 * 1.006))
    assert made.depth_mm == pytest.approx(8)


@settings(max_examples=60, deadline=None)
@given(st.floats(100, 700), STRAINS)
def test_panel_neither_bottoms_nor_leaves_its_groove(width, strains):
    strain = WidthStrain.even(width, *strains)
    made = panel_in_frame(strain, opening_mm=width - 16)
    assert made.gap.wettest_mm == pytest.approx(0.5)
    assert made.cover_mm >= 3.0 - 1e-9
    assert made.panel_width_mm == pytest.approx(made.opening_mm + 2 * (made.groove_mm - made.gap.today_mm))
    assert made.groove_mm - made.gap.driest_mm == pytest.approx(made.cover_mm)


def test_shallow_groove_is_refused_with_the_least_that_serves():
    with pytest.raises(InputError, match="or more"):
        panel_in_frame(WidthStrain.even(500, -0.01, 0, 0.01), 484, groove_mm=6)


def test_panel_slack_is_near_the_trade_rule():
    """Panel in groove: 3 mm a side (read): a 450 mm flat-sawn panel between 6 and 11 % MC, fitted at 8 %."""
    made = panel_in_frame(WidthStrain.even(450, -2 * 0.003, 0.0, 3 * 0.003), 434)
    assert made.gap.today_mm == pytest.approx(3.0, abs=0.6)


def test_drawer_bottom_moves_at_the_back_only():
    """Drawer bottoms move up to 3 mm front to back (read)."""
    made = drawer_bottom(WidthStrain.even(450, -0.006, 0.0, 0.0))
    assert made.overhang_mm[0] == pytest.approx(3.0 - 2.7)
    assert made.overhang_mm[1] == pytest.approx(3.0)
    # The screw stays in the drawer back while the bottom shrinks forward: in the slot it goes backward.
    assert made.slot.screw_today_mm < made.slot.length_mm / 2


def test_moulding_and_runner_are_glued_at_the_front_only():
    side = WidthStrain.even(500, -0.006, 0.0, 0.004)
    for made in (moulding(side), runner(side)):
        assert made.glue_mm <= 75
        assert all(place > made.glue_mm for place, _ in made.slots)
        lengths = [hole.length_mm for _, hole in made.slots]
        assert lengths == sorted(lengths) and lengths[-1] > 4 + 1
        assert made.back_gap.driest_mm < made.back_gap.wettest_mm  # the side shrinks under it


def test_gap_to_leave_never_jams():
    gap = gap_to_leave(shut_mm=1.2, open_mm=2.0)
    assert (gap.wettest_mm, gap.today_mm, gap.driest_mm) == pytest.approx((0.5, 1.7, 3.7))
    with pytest.raises(InputError):
        gap_to_leave(-1.0, 0.0)


# Fixed anyway


def test_stress_is_stiffness_times_what_is_kept():
    fixed = if_fixed(TOP, 1000.0, 5.0)
    assert fixed.tension_mpa == pytest.approx(8.0)
    assert fixed.split == "likely"
    assert fixed.compression_mpa == pytest.approx(6.0)
    assert fixed.crush == "begins"
    assert fixed.set_most_mm == pytest.approx(0.001 * 900)


def test_two_fixed_lines_are_a_conflict_over_their_distance_only():
    near = if_fixed(TOP, 1000.0, 5.0, from_mm=-30, to_mm=30)
    assert near.set_most_mm == pytest.approx(0.001 * 60)
    assert near.tension_mpa == pytest.approx(8.0)  # the strain does not care how far apart they are
    with pytest.raises(InputError, match="rising"):
        if_fixed(TOP, 1000.0, 5.0, from_mm=30, to_mm=-30)


def test_classes_of_risk():
    def split(share, strength=5.0):
        return if_fixed(WidthStrain.even(100, -share * 5.0 / 1000, 0, 0), 1000.0, strength).split

    assert [split(s) for s in (0.0, 0.2, 0.5, 1.0)] == ["none", "unlikely", "possible", "likely"]
    assert split(1.0, None) == "unknown"
    crush = [if_fixed(WidthStrain.even(100, 0, 0, s), 1000.0, 5.0).crush for s in (0.004, 0.007, 0.02)]
    assert crush == ["none", "begins", "certain"]


def test_nothing_solid_across_more_than_75_mm_passes_unremarked():
    assert solid_width_remark(75, -0.3, 0.2) is None
    assert "100" in (solid_width_remark(90, -0.3, 0.2) or "")
    assert "wider than practice" in (solid_width_remark(140, -0.3, 0.2) or "")


def test_mitre_opens_at_the_heel_when_dry():
    """75 mm flat-sawn red oak (C_T 0.00369), −4 % MC: 1.1 mm narrower, 1.6 mm gap (worked example of ours)."""
    strain = -4 * 0.00369
    assert 75 * -strain == pytest.approx(1.1, abs=0.05)
    assert mitre_gap_mm(75, strain) == pytest.approx(1.6, abs=0.05)
    assert mitre_gap_mm(75, 0.01) == pytest.approx(-math.sqrt(2) * 0.75)


@pytest.mark.parametrize(
    "make",
    [
        lambda: breadboard_end(TOP, 24, 110, tenon_width_mm=140),
        lambda: breadboard_end(TOP, 0, 110),
        lambda: if_fixed(TOP, -1.0, 5.0),
        lambda: if_fixed(TOP, 1000.0, 5.0, let_out=2.0),
    ],
)
def test_bad_recipes_are_refused(make):
    with pytest.raises(InputError):
        make()


def test_metal_base_has_slots_but_on_the_fixed_line():
    made = metal_base(TOP, (-350.0, 0.0, 350.0), 25)
    assert made.holes[1].slot is None
    assert made.holes[0].slot is not None
    assert made.holes[0].slot.length_mm == pytest.approx(350 * 0.014 * 1.15 + 6 + 1)
    assert made.insert_mm == 20 and made.left_above_insert_mm == pytest.approx(4)
    assert made.holes[0].washer_mm > made.holes[0].slot.width_mm + 6
    assert any("breathing" in caution for caution in made.cautions)
    assert metal_base(TOP, (0.0,), 10).insert_mm is None
    with pytest.raises(InputError, match="3 to 12"):
        metal_base(TOP, (0.0,), 25, screw_mm=20)


def test_breadboard_end_bends_and_its_tongue_is_loaded():
    plate = Plate(1500, 900, 24, Elastic(13500, 1080, 1090, 0.42))
    end = bar((735, -450), (735, 450), 100, 24, 13000, name="breadboard end")
    assert end.bending_stiffness_n_mm2 == pytest.approx(13000 * 100 * 24**3 / 12)
    (held,) = hold(prepare(plate, [], [end]), [], [LoadCase("dry", FreeCurvature.even(900, 8e-5))])
    stress = bar_stress_mpa(held.beams[0], 100, 24)
    assert 0.5 < stress < 13000 * 8e-5 * 12  # less than bent to the whole free curvature
    assert tongue_load_n_mm(held.beams[0], end.length_mm) > 0
