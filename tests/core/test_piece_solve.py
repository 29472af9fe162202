"""A piece through the year: sizes today, driest and wettest, and what is missing."""

from __future__ import annotations

import datetime

import numpy as np
import pytest

from movement_core import Year
from movement_core.air.presets import find_year
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import tags_from_text
from movement_core.section.movement import section_movement
from movement_core.section.rings import Rings
from movement_core.wood import find_species
from tests.core.solids import box

HOME = find_year("heated cold-winter home")
DAY = datetime.date(2026, 3, 15)


def solved(tag, size=(1000, 200, 20), air=HOME, today=DAY, mc=None):
    text = f"wood{{{tag}}}"
    parts = parts_of([Solid("a", "A", box(size), tags_from_text("A", text, "label"))])
    assert not parts[0].problems, parts[0].problems
    return solve_piece(parts, air, today, mc).parts[0]


def steady(rh):
    """Air that never changes: wood comes into step with it whatever its finish."""
    return Year("steady", (20.0,) * 12, (rh,) * 12, "test")


def test_in_steady_air_the_width_is_what_the_section_says():
    air = steady(65.0)
    mc = float(air.moisture[0])
    one = solved("white oak; pith 0 -60; built 8", air=air)
    oak = find_species("white oak")
    strains = [float(oak.strain(way, 8, mc)) for way in ("radial", "tangential")]
    expected = section_movement(200, 20, Rings.at(0, -60), *strains)
    assert one.width.today.value == pytest.approx(200 + float(expected.width_change_mm))
    assert one.thickness.on(100).value == pytest.approx(20 + float(expected.thickness_change_mm))
    assert one.cup.today.value == pytest.approx(float(expected.cup_mm))
    assert one.width.swing_mm < 1e-9


def test_driest_and_wettest_bracket_every_day_and_the_months_are_right():
    one = solved("white oak; pith 0 -60; built 8")
    days = one.width.days_mm
    assert days.min() == one.width.on(one.driest_day).value
    assert days.max() == one.width.on(one.wettest_day).value
    lag = one.driest_day / 30.4 - HOME.driest_month
    assert -0.6 < lag < 3.0, "the wood follows the air by weeks, never leads it by a month"


def test_sizes_start_at_fitting_and_cup_at_flattening():
    late = solved("white oak; pith 0 -60; flattened 12; fitted 8", air=steady(45.0))
    early = solved("white oak; pith 0 -60; built 8", air=steady(45.0))
    assert late.width.today.value == early.width.today.value
    assert late.cup.today.value != early.cup.today.value
    mc = float(steady(45.0).moisture[0])
    flat = solved(f"white oak; pith 0 -60; flattened {mc:.10f}; fitted 12", air=steady(45.0))
    assert abs(flat.cup.today.value) < 1e-6


def test_the_meter_decides_today_and_only_today():
    one = solved("white oak; pith 0 -60; built 8")
    wet = solved("white oak; pith 0 -60; built 8", mc=14.0)
    assert wet.today_mc == 14 and wet.width.today.value > one.width.today.value
    np.testing.assert_array_equal(one.width.days_mm, wet.width.days_mm)


def test_a_cut_without_a_radius_gives_width_but_a_range_of_cup():
    one = solved("white oak; cut flat; heart show; built 12", air=steady(30.0))
    assert one.width.today.value is not None and one.width.today.open
    assert one.cup.today.value is None and one.cup.today.least > 0, (
        "heart up and drier than when flattened: crown"
    )
    assert any("ring radius not said" in note for note in one.notes)
    unknown = solved("white oak; cut flat; built 12", air=steady(30.0))
    assert unknown.cup.today.least == pytest.approx(-unknown.cup.today.most)


def test_unknown_rings_give_a_range_from_quarter_to_flat_and_no_cup():
    one = solved("white oak; built 8")
    assert list(one.part.missing) == ["rings"]
    flat, quarter = solved("white oak; rings 0; built 8"), solved("white oak; rings 90; built 8")
    today = one.width.today
    assert today.value is None and one.cup is None
    assert (today.least, today.most) == pytest.approx(
        sorted((flat.width.today.value, quarter.width.today.value)), abs=1e-4
    )


def test_a_quarter_sawn_boards_thickness_moves_tangentially():
    one = solved("white oak; rings 90; built 8", air=steady(65.0))
    oak = find_species("white oak")
    mc = float(steady(65.0).moisture[0])
    assert one.thickness.today.value == pytest.approx(20 * (1 + float(oak.strain("tangential", 8, mc))))


@pytest.mark.parametrize(
    ("tag", "lacks"),
    [("grain x", ["species", "rings", "moisture"]), ("white oak; cut flat", ["moisture"]),
     ("white oak; built 9", ["rings"]), ("steel", []), ("plywood; built 8", [])],
)  # fmt: skip
def test_what_is_missing_is_listed(tag, lacks):
    one = solved(tag)
    assert list(one.part.missing) == lacks
    if "species" in lacks:
        assert one.width is None
    elif "moisture" in lacks:
        assert one.width.today.value is None and one.width.today.open and one.cup is None


def test_steel_stays_and_plywood_hardly_moves():
    steel, plywood, oak = solved("steel"), solved("plywood; built 8"), solved("white oak; cut flat; built 8")
    assert steel.width.swing_mm == 0 and not steel.moves
    assert 0 < plywood.width.swing_mm < oak.width.swing_mm / 5


def test_one_moisture_serves_where_the_others_are_not_said():
    part = solved("white oak; cut flat; flattened 7").part
    assert part.fitted_mc.value == 7 and part.fitted_mc.origin == "inferred"
    assert "not said when fitted" in part.fitted_mc.reason


def test_a_damper_show_face_adds_a_crown():
    """A board varnished below and bare above: when the air turns damp its show face swells first."""
    even = solved("white oak; rings 0; built 8")
    one = solved("white oak; pith 0 -5000; finish show bare, back varnish 3; built 8")
    cup = one.cup.days_mm
    damp_turn = (HOME.driest_month * 30 + 110) % 365
    assert cup[damp_turn] > 0.2
    assert even.cup is not None


def test_contradictions_between_tags_are_problems():
    text = "wood{white oak; pith 0 -60; heart show; cut quarter; rings 80}"
    (part,) = parts_of([Solid("a", "A", box((1000, 200, 20)), tags_from_text("A", text, "label"))])
    assert [p.word for p in part.problems] == ["rings", "heart", "cut"]
    assert part.rings.value.pith_mm == (0, -60)


def test_heart_alone_is_taken_as_flat_sawn_and_says_so():
    part = solved("white oak; heart +z; built 9").part
    assert part.rings.origin == "inferred" and "flat-sawn" in part.rings.reason
    assert part.rings.value.heart == "show"


def test_a_board_that_holds_its_pith_is_solved_and_noted():
    one = solved("white oak; pith 10 2; built 12", size=(700, 70, 70))
    assert one.section.pith_inside and one.width is not None


def test_every_way_to_say_where_the_rings_are_comes_to_the_same_board():
    """A pith 100 mm above a section, said as itself, by three points, and by angle, radius and heart side."""
    ring = [(x, 100 - (110**2 - x**2) ** 0.5) for x in (-60, 5, 70)]
    points = " ".join(f"{v:.9f}" for point in ring for v in point)
    ways = ["pith 0 100", f"points {points}", "rings 0; radius 100; heart show"]
    parts = [solved(f"white oak; {way}; built 12", air=steady(30.0)) for way in ways]
    cups = [part.cup.today.value for part in parts]
    assert cups[0] > 0.3 and cups == pytest.approx([cups[0]] * 3, rel=1e-6)
    flat = solved("white oak; cut flat; radius 100; heart show; built 12", air=steady(30.0))
    assert flat.cup.today.value is None and flat.cup.today.least <= cups[0] <= flat.cup.today.most + 1e-6


def test_twist_is_missing_until_the_slope_is_said():
    plain = solved("white oak; pith 0 100; built 12")
    out = solved("white oak; pith 0 100; far 30 100; built 12")
    spiral = solved("white oak; pith 0 100; slope 0.03; built 12")
    assert plain.twist is None
    assert out.twist.from_rings_degrees is not None and out.twist.degrees is None
    assert spiral.twist.degrees is not None and abs(spiral.twist.degrees[1][0]) > 0.1


def test_an_absurd_part_costs_only_itself():
    tags = tags_from_text("", "wood{white oak; pith 0 -60; built 8}", "label")
    solids = [Solid(name, name, box((1000, 200, t)), tags) for name, t in (("Sliver", 0.05), ("Board", 20))]
    sliver, board = solve_piece(parts_of(solids), HOME, DAY).parts
    assert "0.1 to 1000 mm" in sliver.trouble and sliver.width is None
    assert not board.trouble and board.width is not None


@pytest.mark.parametrize(
    ("tag", "word"),
    [("heart +x; cut flat; grain x", "heart"), ("pith 0 80; radius 500", "radius"),
     ("pith 0 80; points -30 5 0 8 30 5", "points"), ("pith 0 80; heart back", "heart")],
)  # fmt: skip
def test_what_was_said_of_the_rings_must_agree(tag, word):
    text = f"wood{{white oak; show z; {tag}; built 9}}"
    (part,) = parts_of([Solid("a", "A", box((1000, 200, 20)), tags_from_text("A", text, "label"))])
    assert [problem.word for problem in part.problems] == [word]
