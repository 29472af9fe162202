"""What the rooms below a piece refuse by name, and what they answer at the last step before it."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from movement_core.errors import InputError, UnknownName
from movement_core.holding.capacity import fastener_capacity
from movement_core.holding.contact_points import contact_points
from movement_core.holding.fasteners import find_kind
from movement_core.holding.held import BeamResult
from movement_core.holding.loose_recipes import gap_to_leave
from movement_core.holding.model import Bearing, Elastic, Plate
from movement_core.holding.polygon import convex_hull
from movement_core.holding.rails import Member, what_lies_under
from movement_core.holding.stiffeners import tongue_load_n_mm
from movement_core.moisture.glue import glue_wait
from movement_core.moisture.journey import built_moisture, over_plausible
from movement_core.moisture.learned import Observed, change_worth_measuring
from movement_core.moisture.marching import Spell
from movement_core.moisture.meter import meter_moisture
from movement_core.moisture.spread import Uncertain, spread
from movement_core.piece.captured import reasons_to_ask
from movement_core.piece.facts import MISSING, TAGGED, Fact
from movement_core.section.board import Board
from movement_core.section.boxed_heart import solve_boxed_heart
from movement_core.section.laying import Laying, judged
from movement_core.section.lays import Candidate, product_of_lays
from movement_core.sources import Source
from movement_core.wood import find_species
from movement_core.wood.basis import published

OAK = find_species("white oak")
WOOD = Elastic(13000.0, 1000.0, 900.0, 0.4)


def test_a_safety_factor_is_one_or_more():
    button = find_kind("button")
    once, twice = (fastener_capacity(button, 0.68, 20.0, safety) for safety in (1.0, 2.0))
    assert once.allowable_n == once.ultimate_n == pytest.approx(2 * twice.allowable_n)
    for wrong in (0.99, math.inf, math.nan):
        with pytest.raises(InputError, match="safety factor"):
            fastener_capacity(button, 0.68, 20.0, wrong)


def test_a_gap_is_nearest_in_the_wet_or_the_dry_season():
    wet, dry = gap_to_leave(2.0, 3.0, 0.5), gap_to_leave(2.0, 3.0, 0.5, "driest")
    assert (wet.wettest_mm, wet.today_mm, wet.driest_mm) == (0.5, 2.5, 5.5)
    assert (dry.driest_mm, dry.today_mm, dry.wettest_mm) == (0.5, 2.5, 5.5)
    with pytest.raises(InputError, match="'damp'"):
        gap_to_leave(2.0, 3.0, 0.5, "damp")
    with pytest.raises(InputError, match="0 or more"):
        gap_to_leave(-0.1, 3.0)


@pytest.mark.parametrize(("forces", "length"), [((5.0,), 300.0), ((), 300.0), ((5.0, 4.0), 0.0)])
def test_a_tongue_is_a_joint_all_along(forces, length):
    bar = BeamResult("end", 0.1, 5.0, np.array(forces), np.zeros((len(forces), 2)))
    with pytest.raises(InputError, match="no joint all along"):
        tongue_load_n_mm(bar, length)


def test_the_hull_of_a_fine_circle_leaves_out_corners_that_hardly_stand_out():
    angle = 2 * np.pi * np.arange(720) / 720
    circle = 50 * np.column_stack([np.cos(angle), np.sin(angle)])
    hull = convex_hull(circle)
    assert 8 < len(hull) < 60
    x, y = hull.T
    assert abs(float((x * np.roll(y, -1) - y * np.roll(x, -1)).sum() / 2)) == pytest.approx(
        np.pi * 2500, rel=0.02
    )
    assert convex_hull(np.array([(1.0, 2.0), (1.0, 2.0), (3.0, 4.0)])).tolist() == [[1, 2], [3, 4]]


def test_a_bearing_whose_outline_repeats_a_corner_bears_the_same():
    plate = Plate(1000.0, 400.0, 20.0, WOOD, 0.0)
    square = ((-50.0, -50.0), (50.0, -50.0), (50.0, 50.0), (-50.0, 50.0))
    once, twice = (
        contact_points(plate, (Bearing(outline),), 10.0) for outline in (square, (*square, square[-1]))
    )
    assert once.points_mm.shape == twice.points_mm.shape
    assert float(once.stiffness_n_mm.sum()) == pytest.approx(float(twice.stiffness_n_mm.sum()))


def test_a_rail_whose_outline_repeats_a_corner_is_the_same_rail():
    plate = Plate(1000.0, 400.0, 20.0, WOOD, 0.0)
    outline = ((-400.0, -10.0), (400.0, -10.0), (400.0, 10.0), (-400.0, 10.0))
    (one,), (other,) = (
        what_lies_under(plate, [Member("rail", corners, 0.0)], 0.0).rails
        for corners in (outline, (*outline, outline[-1]))
    )
    assert one == other and one.breadth_mm == pytest.approx(20) and one.length_mm == pytest.approx(800)


def test_water_of_a_glue_that_never_leaves_far_enough_is_said():
    assert glue_wait(20.0, 0.6, 0.0019, 20.0, 50.0).days > 0
    with pytest.raises(InputError, match="after a year"):
        glue_wait(900.0, 0.6, 0.0037, 5.0, 50.0, sink_mm=1e-4)


@pytest.mark.parametrize("points", [1, 1001])
def test_a_plausible_range_is_followed_at_two_points_or_more(points):
    unknown = built_moisture()
    at, answers = over_plausible(lambda mc: 2 * mc, unknown, 2)
    assert tuple(at) == unknown.likely_range and answers.tolist() == (2 * at).tolist()
    with pytest.raises(InputError, match=f"{points} points"):
        over_plausible(lambda mc: mc, unknown, points)


def test_what_moisture_does_not_move_is_never_worth_measuring():
    reading = Observed(0.0, 0.1, per_percent_mm=0.0, moisture_sd=1.0, tool_sd_mm=0.5)
    assert change_worth_measuring(reading) == math.inf
    assert 0 < change_worth_measuring(replace(reading, per_percent_mm=1.0)) < 30


@pytest.mark.parametrize("air", [np.zeros((2, 3)) + 9.0, np.zeros(0)])
def test_the_air_of_a_spell_is_a_number_or_a_row(air):
    with pytest.raises(InputError, match="show_air_mc"):
        Spell(10.0, air, 9.0, 1.0, 1.0)


def test_a_pad_meter_without_densities_says_what_is_missing():
    bare = meter_moisture(9.0, kind="pad")
    told = meter_moisture(9.0, kind="pad", set_gravity=0.5, specific_gravity=0.6)
    assert bare.mc == 9.0 and told.mc == pytest.approx(7.5) and bare.sd > told.sd
    assert any("species correction" in note for note in bare.notes) and not told.notes


def test_a_function_that_gives_one_answer_for_all_samples_has_no_spread():
    found = spread(lambda mc: 5.0, {"mc": Uncertain(9.0, 1.0)}, samples=64)
    assert found.value == 5.0 and found.sd == 0.0


def test_a_fact_has_a_value_or_says_that_it_is_missing():
    assert not Fact(None, MISSING, "say it").known
    for value, origin in ((None, TAGGED), (3.0, MISSING)):
        with pytest.raises(ValueError, match="cannot have the value"):
            Fact(value, origin, "why")


@pytest.mark.parametrize("pith", [(0.0, 1.0, 2.0), ((0.0, 1.0), (2.0, 3.0))])
def test_a_pith_is_one_point(pith):
    with pytest.raises(InputError, match="pith has shape"):
        Board(OAK, 100.0, 20.0, pith)


@pytest.mark.parametrize("pith", [(50.0, 0.0), (0.0, -10.0), (80.0, 80.0)])
def test_a_boxed_heart_lies_inside(pith):
    with pytest.raises(InputError, match="free_shape") as caught:
        solve_boxed_heart(100.0, 20.0, pith)
    assert f"pith ({pith[0]:g}, {pith[1]:g}) mm is outside a section of 100 × 20 mm" in str(caught.value)


def test_a_laying_is_of_the_boards_there_are():
    boards = [Candidate(Board(OAK, 100.0, 20.0, (0.0, -80.0)))] * 2
    whole = Laying((1, 0), (False, True), (False, False))
    assert judged(boards, (-3.0, 2.0), whole).departure_mm > 0
    with pytest.raises(InputError, match="2 places for 1 boards"):
        judged(boards[:1], (-3.0, 2.0), whole)


def test_a_board_that_may_lie_no_way_leaves_no_combination():
    assert product_of_lays([[0, 1], [2]]).tolist() == [[0, 2], [1, 2]]
    assert product_of_lays([[0, 1], []]).shape == (0, 2)


def test_sources_are_ours_and_say_how_they_were_got():
    assert "Wood Handbook" in published("coefficients").title
    with pytest.raises(UnknownName, match=r"wood_sources\.csv\. Allowed: coefficients, "):
        published("a book that nobody wrote")
    with pytest.raises(ValueError, match="provenance 'heard'"):
        Source("a book", "page 1", "heard")


@pytest.mark.parametrize("start", [10.0, 60.1, -5.0])
def test_shrinkage_begins_at_fibre_saturation(start):
    with pytest.raises(InputError, match="start_mc"):
        replace(OAK, start_mc=start)


def test_of_no_solid_nothing_is_asked():
    assert reasons_to_ask([]) == []
