"""Measurements, woods laid elsewhere and diagnoses of a warp: what is missing, out of range, or said another way."""

from __future__ import annotations

from dataclasses import replace

import pytest

from movement_core.air.emc import equilibrium_moisture
from movement_core.errors import InputError
from movement_core.piece.measured import Measurement, learn_from, measurements_from_table
from movement_core.piece.relaid import relaid
from movement_core.piece.warp import WarpCase, diagnose
from movement_core.sheet.warp_text import LEAST_SHOWN, warp_text
from movement_core.wood import find_species
from tests.core.contact_solids import blocks, piece_of
from tests.core.test_measured_parts import DAY, YEAR, part, width_at

# ---- measurements -----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("word", "value"),
    [
        ("value_mm", -1.1e4), ("value_mm", 1.1e5), ("moisture_percent", 30.1), ("moisture_percent", -0.1),
        ("rh_percent", 101.0), ("temperature_c", -21.0), ("temperature_c", 61.0), ("tool_mm", 0.0),
    ],
)  # fmt: skip
def test_a_value_out_of_range_is_named(word, value):
    good = Measurement("one", "width", 398.0, DAY, 6.0)
    with pytest.raises(InputError, match=word):
        replace(good, **{word: value})


def test_a_doubt_of_nothing_is_refused_and_an_empty_cell_is_the_usual_one():
    text = "part,what,value_mm,date,moisture_percent,temperature_c,rh_percent,tool_mm\n\n"
    text += "one,width,398,2026-02-01,6,,,0\n,,,,,,,\none,width,398,2026-02-01,6,,,\n"
    rows, problems = measurements_from_table(text, "a.csv")
    assert [row.tool_mm for row in rows] == [0.5]
    (problem,) = problems
    assert problem.startswith("a.csv, line 3") and "tool_mm" in problem


@pytest.mark.parametrize(
    "words",
    [
        {"temperature_c": 20.0, "rh_percent": 30.0},
        {},
        {"temperature_c": 20.0},
    ],
    ids=["air of the day", "the year", "half an air"],
)
def test_without_a_meter_the_air_of_the_day_counts_and_else_the_year(words):
    one = part("one")
    told = learn_from((one,), [Measurement("one", "width", 398.0, DAY, **words)], YEAR).told
    assert told and not [text for text in told if "meter" in text and "6.0" in text]
    by_meter = [
        learn_from((one,), [Measurement("one", "width", width_at(one, 1.2, mc), DAY, mc, tool_mm=0.1)], YEAR)
        for mc in (3.0, 5.0)
    ]
    assert by_meter[0].lots["lot 7"].factor > by_meter[1].lots["lot 7"].factor > 1


def test_the_air_of_the_day_stands_for_wood_in_step_with_it():
    """Read in air of 30 %, a width that fits wood in step with that air says nothing against the table."""
    one = part("one")
    mc = float(equilibrium_moisture(20.0, 30.0))
    here = Measurement("one", "width", width_at(one, 1.0, mc), DAY, temperature_c=20.0, rh_percent=30.0)
    assert learn_from((one,), [here], YEAR).lots["lot 7"].factor == pytest.approx(1.0, abs=0.01)


@pytest.mark.parametrize(
    ("tag", "what", "said"),
    [
        ("plywood; built 8", "width", "solid wood"),
        ("white oak; grain x; built 8", "width", "rings"),
        ("grain x; built 8", "width", "species"),
        ("white oak; cut flat; heart show; grain x; show z; built 8", "cup", "range"),
    ],
)
def test_parts_of_which_nothing_can_be_learned_say_why(tag, what, said):
    (one,) = piece_of([(blocks("one", [((0, 0, 0), (1200, 400, 22))]), tag)])
    found = learn_from((one,), [Measurement("one", what, 398.0, DAY, 6.0)], YEAR)
    assert found.parts == (one,) and not found.lots
    (problem,) = found.problems
    assert problem.startswith("measurement of 'one' on 2026-02-01") and said in problem


def test_two_parts_of_one_name_are_not_guessed_at():
    one = part("one")
    found = learn_from((one, replace(one, key="other")), [Measurement("one", "width", 398.0, DAY, 6.0)], YEAR)
    assert "2 parts have that name" in found.problems[0]


# ---- woods said of another place --------------------------------------------------------------------------------


def a_board(tag):
    (one,) = piece_of([(blocks("board", [((0, 0, 0), (900, 120, 24))]), tag)])
    return one


TOLD = "white oak; grain x; show z; built 8"


def test_positions_are_turned_with_their_board_also_where_they_are_written_as_text():
    board = a_board(TOLD)
    said = {"pith": "10, -60", "built": 8.0, "hinges": "left"}
    assert relaid(said, board, 1, 1) == {"pith": [10.0, -60.0], "built": 8.0}
    assert relaid(said, board, -1, -1)["pith"] == [-10.0, 60.0]
    assert relaid({"pith": [10.0, -60.0]}, board, 1, -1)["pith"] == [10.0, 60.0]


def test_turned_end_for_end_the_far_pith_is_the_near_one():
    board = a_board(TOLD)
    said = {"pith": [10.0, -60.0], "far": [20.0, -80.0]}
    assert relaid(said, board, 1, 1) == said
    assert relaid(said, board, -1, 1) == {"pith": [-20.0, -80.0], "far": [-10.0, -60.0]}
    assert relaid({"far": [20.0, -80.0]}, board, -1, 1) == {"far": [-20.0, -80.0]}


@pytest.mark.parametrize(
    ("tag", "heart", "side"),
    [
        (f"{TOLD}; heart show", "show", "show"),
        (f"{TOLD}; heart show", "Back ", "back"),
        (f"{TOLD}; pith 0 60", "+z", "show"),
        (f"{TOLD}; pith 0 -60", "-z", "back"),
        (f"{TOLD}; rings 20; heart z", "+z", "show"),
    ],
)
def test_the_heart_side_turns_over_with_its_board(tag, heart, side):
    board = a_board(tag)
    other = {"show": "back", "back": "show"}[side]
    assert relaid({"heart": heart}, board, 1, 1)["heart"] == side
    assert relaid({"heart": heart}, board, 1, -1)["heart"] == other


@pytest.mark.parametrize("tag", [TOLD, f"{TOLD}; pith 2 3"])
def test_a_heart_side_that_is_no_face_is_asked_for(tag):
    with pytest.raises(InputError, match=r"'\+y' is neither"):
        relaid({"heart": "+y"}, a_board(tag), 1, 1)


# ---- causes of a warp -------------------------------------------------------------------------------------------

OAK = find_species("white oak")
CASE = WarpCase(OAK, 500, 20, cup_mm=3, boards=5, heart="show", flat_mc=11, now_mc=8)


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({"species": find_species("plywood")}, "solid wood"),
        ({"wet_hours": 0.05}, "hours wet"),
        ({"lying": "roof"}, "roof"),
        ({"heart": "left"}, "left"),
        ({"wet_side": "edge"}, "edge"),
        ({"most_mc": 31.0}, "most_mc"),
    ],
)
def test_a_case_out_of_range_is_named(changed, said):
    with pytest.raises(InputError, match=said):
        replace(CASE, **changed)


def causes(case):
    return {cause.name: cause for cause in diagnose(case).causes}


def test_a_wetted_face_is_a_cause_only_where_one_was_wetted():
    dry = causes(CASE)
    wet = {side: causes(replace(CASE, wet_hours=48.0, wet_side=side)) for side in ("show", "back")}
    crushed = {name for name in wet["show"] if "compression set" in name}
    (face,) = set(wet["show"]) - set(dry) - crushed
    assert len(crushed) == 1 and not crushed & set(dry)
    # A wet show face swells and the top crowns; wet behind, it goes hollow. What was crushed bends it the other way.
    assert wet["show"][face].least_mm > 0.5 and wet["back"][face].most_mm < -0.5
    for name in crushed:
        assert wet["show"][name].least_mm < wet["show"][name].most_mm <= 0
        assert wet["back"][name].most_mm > wet["back"][name].least_mm >= 0


def test_a_top_in_the_sun_dries_on_its_show_face_and_goes_hollow():
    free, sun = causes(CASE), causes(replace(CASE, lying="sun", days=10.0))
    (new,) = set(sun) - set(free)
    assert sun[new].least_mm < 0 and sun[new].most_mm <= 0


def test_the_diagnosis_reads_from_the_likeliest_to_the_unlikely():
    found = diagnose(CASE)
    text = warp_text(CASE, found)
    shown = [cause for cause in found.causes if cause.share >= LEAST_SHOWN]
    places = [
        text.index(f"{number}. {100 * cause.share:.0f} %  {cause.name}")
        for number, cause in enumerate(shown, 1)
    ]
    assert places == sorted(places) and "3.0 mm crown" in text
    assert found.measure in text and all(f"- {line}" in text for line in found.not_to)
    rest = [cause.name for cause in found.causes if cause.share < LEAST_SHOWN]
    assert ("Unlikely" in text) == bool(rest) and all(name in text for name in rest)
    certain = replace(found, causes=tuple(replace(cause, share=0.5) for cause in found.causes[:2]))
    assert "Unlikely" not in warp_text(CASE, certain)
    hollow = warp_text(replace(CASE, cup_mm=-3.0), certain)
    assert "3.0 mm hollow" in hollow


def test_dates_are_days():
    rows = "one,width,398,1.2.2026\none,width,broad,2026-02-01\none,width,398\n"
    found, problems = measurements_from_table(f"part,what,value_mm,date\n{rows}", "a.csv")
    assert not found and problems == (
        "a.csv, line 2: column date: '1.2.2026' is no date. Allowed: YYYY-MM-DD.",
        "a.csv, line 3: column value_mm: 'broad' is not a number.",
        "a.csv, line 4: column date: '' is no date. Allowed: YYYY-MM-DD.",
    )
