"""Tags: properties, a line of text, and a table beside the model."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.piece.tag_sources import (
    merge,
    tags_from_properties,
    tags_from_table,
    tags_from_text,
    turned,
    values_by_word,
    without_tag,
)
from movement_core.piece.tags import PROPERTY_WORDS, WORDS
from movement_core.wood import find_species

FULL = "Top 1 wood{white oak; grain x; heart show; pith 0 80; show +z; finish varnish 2; built 9 %}"


def test_a_full_line_says_everything():
    tags = tags_from_text("Top 1", FULL, "label")
    assert not tags.problems
    assert tags.species == find_species("Quercus alba")
    assert tags.grain == (1, 0, 0) and tags.show == (0, 0, 1)
    assert tags.pith_mm == (0, 80) and tags.heart == "show"
    assert (tags.glued_mc, tags.flattened_mc, tags.fitted_mc) == (9, 9, 9)
    assert tags.said["fitted"] == "label, word 'built'"
    assert without_tag(FULL) == "Top 1"


@pytest.mark.parametrize("text", ["grain: x", "grain=x", "grain +X", "GRAIN x", "grain 1,0,0", "grain 2 0 0"])
def test_ways_to_write_a_direction(text):
    assert tags_from_text("p", f"wood{{{text}}}", "label").grain == (1, 0, 0)


@pytest.mark.parametrize(
    "text", ["pith 0,-80", "pith 0 -80", "pith (0, -80)", "pith 0 mm -80 mm", "pith 0/-80"]
)
def test_ways_to_write_a_pith(text):
    assert tags_from_text("p", f"wood{{{text}}}", "label").pith_mm == (0, -80)


def test_a_decimal_comma_is_understood_where_one_number_stands():
    assert tags_from_text("p", "wood{fitted 8,5 %}", "label").fitted_mc == 8.5


def test_a_wood_whose_name_begins_with_a_word_of_ours():
    """The first item is the species if there is one of that name, whatever word it begins with."""
    assert tags_from_text("p", "wood{species red oak, northern; heart back}", "label").heart == "back"


def test_words_in_their_own_right_outrank_built():
    tags = tags_from_text("p", "wood{built 9; glued 8}", "label")
    assert (tags.glued_mc, tags.fitted_mc) == (8, 9)


@pytest.mark.parametrize(
    ("text", "word", "said"),
    [
        ("wood{wite oak}", "species", "nearest"),
        ("wood{white oak; grian x}", "grian", "did you mean 'grain'?"),
        ("wood{white oak; grain w}", "grain", "x, y, z"),
        ("wood{white oak; grain 0 0 0}", "grain", "no length"),
        ("wood{white oak; heart top}", "heart", "show, back"),
        ("wood{white oak; cut quater}", "cut", "did you mean 'quarter'?"),
        ("wood{white oak; rings 95}", "rings", "0 to 90"),
        ("wood{white oak; built 85}", "built", "2 to 30"),
        ("wood{white oak; built nan}", "built", "not a moisture content"),
        ("wood{white oak; pith 5}", "pith", "2 numbers"),
        ("wood{white oak; finish shelac 2}", "finish", "shellac"),
        ("wood{white oak; figure stripey}", "figure", "plain"),
        ("wood{white oak; built 8; built 9}", "built", "said twice"),
        ("wood{white oak", "wood", "no closing brace"),
        ("wood{white oak} wood{beech}", "wood", "a second"),
    ],
)
def test_a_bad_item_names_the_part_the_word_and_the_way_out(text, word, said):
    tags = tags_from_text("Leg 2", text, "label")
    (problem,) = tags.problems
    assert (problem.part, problem.word) == ("Leg 2", word)
    assert said in problem.message
    assert str(problem).startswith("part 'Leg 2': label")


def test_words_said_again_and_again_are_told_once_and_many_that_are_not_ours_in_one_line():
    again = tags_from_text("p", "wood{white oak; built 8" + "; oka; built 9" * 5000 + "}", "label")
    assert [problem.word for problem in again.problems] == ["oka", "built"]
    many = "; ".join(f"w{number}" for number in range(25))
    *told, rest = tags_from_text("p", f"wood{{white oak; {many}; grain x}}", "label").problems
    assert [problem.word for problem in told] == [f"w{number}" for number in range(20)]
    assert rest.message == "label: 5 more words are not ours"


def test_a_bad_item_costs_only_itself():
    tags = tags_from_text("p", "wood{white oak; grian x; built 9}", "label")
    assert tags.species is not None and tags.fitted_mc == 9 and len(tags.problems) == 1


@given(st.text(max_size=80))
def test_no_text_stops_the_reading(text):
    for whole in (text, f"wood{{{text}}}", f"wood{{{text}"):
        tags_from_text("p", whole, "label")
        without_tag(whole)


def test_properties_are_the_same_words():
    tags = tags_from_properties(
        "p", {"HeartsideSpecies": "beech, American", "HeartsidePith": (0.0, -55.5), "HeartsideRingAngle": 12.0,
              "HeartsideFinish": "", "HeartsideUnheardOf": 3}
    )  # fmt: skip
    assert not tags.problems
    assert tags.pith_mm == (0, -55.5) and tags.ring_angle_deg == 12 and tags.finish is None
    assert tags.said["pith"] == "property HeartsidePith"
    assert set(PROPERTY_WORDS.values()) == set(WORDS)


def test_properties_outrank_the_label():
    said = merge(
        tags_from_properties("p", {"HeartsideGrain": "y"}),
        tags_from_text("p", "wood{white oak; grain x}", "label"),
    )
    assert said.grain == (0, 1, 0) and said.species is not None
    assert said.said["grain"] == "property HeartsideGrain"


@pytest.mark.parametrize("separator", [",", ";"])
def test_a_table_beside_the_model(separator):
    rows = [
        "\ufeffPart,species,grain,built",
        'Shelf,"oak, white",x,9',
        "Back,plywood,,",
        ",,,",
        "Shelf,ash,,",
    ]
    text = "\r\n".join(row if separator == "," else row.replace('"oak, white"', "white oak").replace(",", ";")
                       for row in rows)  # fmt: skip
    tags, problems = tags_from_table(text, "shelf.wood.csv")
    assert set(tags) == {"Shelf", "Back"}
    assert tags["Shelf"].species == find_species("white oak")
    assert tags["Shelf"].said["grain"] == "shelf.wood.csv, line 2"
    (problem,) = problems
    assert "line 5" in problem.message and "twice" in problem.message


def test_a_table_says_which_column_and_line_is_wrong():
    tags, problems = tags_from_table("part,grian,built\nShelf,x,9\n,,8\nBack,,99", "t.csv")
    assert [p.message.split(":")[0] for p in problems] == ["t.csv, line 1", "t.csv, line 3"]
    assert tags["Back"].problems[0].message.startswith("t.csv, line 4, word 'built'")
    with pytest.raises(InputError, match="no column 'part'"):
        tags_from_table("name,species\na,b", "t.csv")


def test_text_without_a_tag_says_nothing():
    tags = tags_from_text("p", "driftwood lamp", "label")
    assert not tags.said and not tags.problems and without_tag("driftwood lamp") == "driftwood lamp"


def test_tags_of_another_object_turn_with_its_axes_and_flip_in_a_mirror():
    tags = tags_from_text("p", "wood{white oak; grain x; heart +z; pith 5 60; slope 0.02}", "label")
    quarter_turn = [[0, 1, 0], [-1, 0, 0], [0, 0, 1]]
    one = turned(tags, quarter_turn, "'Board'")
    assert one.grain == (0, 1, 0) and one.heart == (0, 0, 1) and one.pith_mm == (5, 60)
    assert one.said["grain"] == "label of 'Board'"
    mirror = turned(tags, [[1, 0, 0], [0, -1, 0], [0, 0, 1]], "'Board'")
    assert mirror.grain == (1, 0, 0) and mirror.pith_mm == (-5, 60) and mirror.grain_slope == -0.02


def test_a_row_longer_than_the_heading_is_not_read_by_halves():
    tags, problems = tags_from_table("part,species,built\nA,ash white,9,5\nB,,8", "t.csv")
    assert set(tags) == {"B"} and "line 2" in problems[0].message and "point" in problems[0].message


def test_what_a_label_says_can_be_shown_beside_properties():
    tags = tags_from_text("p", "wood{white oak; grain -x; heart show; pith 0 80; rings 10; built 9}", "label")
    assert values_by_word(tags) == {
        "species": "White oak, commercial",
        "grain": "-x",
        "heart": "show",
        "pith": (0, 80),
        "rings": 10,
        "built": 9,
    }


@pytest.mark.parametrize("word", ["built", "glued", "flattened", "fitted"])
@pytest.mark.parametrize("value", ["0.09", "0,1", "1.9"])
def test_a_moisture_as_a_fraction_is_refused_with_what_was_meant(word, value):
    tags = tags_from_text("board", f"x wood{{{word} {value}}}", "label")
    (problem,) = tags.problems
    assert "2 to 30 %" in str(problem) and "write percent" in str(problem)
    assert tags.fitted_mc is None and tags.glued_mc is None


def test_a_word_that_is_hardly_like_another_is_not_taken_for_it():
    (problem,) = tags_from_text("board", "x wood{white oak; faser x}", "label").problems
    assert "'faser'" in str(problem) and "did you mean" not in str(problem)
