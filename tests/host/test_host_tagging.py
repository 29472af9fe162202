"""Tags as properties: on the instance first, through links, array elements, saving, copying and removing."""

from __future__ import annotations

import json

import FreeCAD as App
import pytest
from bench import array, box, by_name, link

from movement_core.errors import InputError
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.tagging import FACTS, own_facts, read_tags, remove_tags, write_tags

AGREED = {
    "HeartsideSpecies": "white oak",
    "HeartsideGrain": "x",
    "HeartsideShowFace": "z",
    "HeartsideCut": "flat",
    "HeartsideHeart": "show",
    "HeartsideRingAngle": 12.5,
    "HeartsidePith": (0.0, -80.0),
    "HeartsideFarPith": (5.0, -90.0),
    "HeartsideRingRadius": 80.0,
    "HeartsideRingPoints": (-30.0, 5.0, 0.0, 8.0, 30.0, 5.0),
    "HeartsideGrainSlope": 0.03,
    "HeartsideFinish": "varnish 2",
    "HeartsideGlued": 8.0,
    "HeartsideFlattened": 8.5,
    "HeartsideFitted": 9.0,
    "HeartsideBuilt": 9.5,
    "HeartsideLooks": 2.0,
    "HeartsideKept": "museum",
    "HeartsideFigure": "plain",
}
SAMPLES = {"App::PropertyString": "some text", "App::PropertyFloatList": (1.5, -2.0)}
EVERY_FACT = {name: AGREED.get(name, SAMPLES.get(kind, 12.5)) for name, (kind, _) in FACTS.items()}


def tags_of(doc, name):
    doc.recompute()
    return read_tags(by_name(read_leaves(doc))[name])


def test_every_fact_comes_back_as_written_also_from_the_file(doc, tmp_path):
    assert set(AGREED) <= set(FACTS)
    board = box(doc, "Board")
    write_tags(board, EVERY_FACT)
    assert tags_of(doc, "Board").properties == EVERY_FACT
    assert {board.getGroupOfProperty(name) for name in EVERY_FACT} == {"Heartside"}
    path = str(tmp_path / "tagged.FCStd")
    doc.saveAs(path)
    App.closeDocument(doc.Name)
    assert tags_of(App.openDocument(path, True), "Board").properties == EVERY_FACT


def test_label_and_description_are_handed_over_as_they_are(doc):
    board = box(doc, "Board")
    board.Label, board.Label2 = "Top 1 wood{oak; grain x}", "wood{heart show}"
    assert tags_of(doc, "Top 1 wood{oak; grain x}").texts == ("Top 1 wood{oak; grain x}", "wood{heart show}")


def test_a_link_answers_first_for_itself_then_for_its_target(doc):
    board = box(doc, "Board")
    write_tags(board, {"HeartsideSpecies": "white oak", "HeartsideCut": "flat"})
    copy = link(doc, "Copy", board)
    write_tags(copy, {"HeartsideCut": "quarter"})
    assert tags_of(doc, "Copy").properties == {"HeartsideSpecies": "white oak", "HeartsideCut": "quarter"}
    assert board.HeartsideCut == "flat"  # writing to a link must not fall through to what it links to
    assert own_facts(copy) == {"HeartsideCut": "quarter"}
    assert tags_of(doc, "Copy").texts == ("Copy", "Board")


def test_a_chain_of_links(doc):
    board = box(doc, "Board")
    board.Visibility = False
    write_tags(board, {"HeartsideSpecies": "ash", "HeartsideCut": "flat", "HeartsideHeart": "show"})
    first = link(doc, "First", board)
    write_tags(first, {"HeartsideCut": "rift", "HeartsideHeart": "back"})
    second = link(doc, "Second", first)
    write_tags(second, {"HeartsideHeart": "z"})
    assert tags_of(doc, "Second").properties == {
        "HeartsideSpecies": "ash",
        "HeartsideCut": "rift",
        "HeartsideHeart": "z",
    }


@pytest.mark.parametrize("shown", [True, False])
def test_array_elements_one_by_one(doc, shown):
    slat = box(doc, "Slat")
    slat.Visibility = False
    slats = array(doc, "Slats", slat, 3, (0, 120, 0), shown)
    write_tags(slat, {"HeartsideSpecies": "beech"})
    write_tags(slats, {"HeartsideCut": "flat"})
    doc.recompute()
    leaves = read_leaves(doc).leaves
    write_tags(leaves[1].owner, {"HeartsideCut": "quarter", "HeartsidePith": (1, 2)}, leaves[1].element)
    got = [read_tags(leaf).properties for leaf in read_leaves(doc).leaves]
    common = {"HeartsideSpecies": "beech", "HeartsideCut": "flat"}
    assert got == [common, {**common, "HeartsideCut": "quarter", "HeartsidePith": (1.0, 2.0)}, common]
    remove_tags(leaves[1].owner, leaves[1].element)
    assert read_tags(read_leaves(doc).leaves[1]).properties == common


def test_element_facts_of_a_hidden_array_are_json_on_the_array_and_survive_saving(doc, tmp_path):
    slats = array(doc, "Slats", box(doc, "Slat"), 12, (0, 120, 0), False)
    doc.Slat.Visibility = False
    write_tags(slats, {"HeartsideSpecies": "beech"}, 11)
    write_tags(slats, {"HeartsideSpecies": "ash"}, 2)
    assert json.loads(slats.HeartsideElements) == {
        "2": {"HeartsideSpecies": "ash"},
        "11": {"HeartsideSpecies": "beech"},
    }
    path = str(tmp_path / "array.FCStd")
    doc.recompute()
    doc.saveAs(path)
    App.closeDocument(doc.Name)
    again = App.openDocument(path, True)
    assert tags_of(again, "Slats 12").properties == {"HeartsideSpecies": "beech"}
    assert tags_of(again, "Slats 1").properties == {}
    write_tags(again.Slats, {"HeartsideSpecies": None}, 11)
    write_tags(again.Slats, {"HeartsideSpecies": None}, 2)
    assert "HeartsideElements" not in again.Slats.PropertiesList


def test_a_spoilt_element_table_names_the_array(doc):
    slats = array(doc, "Slats", box(doc, "Slat"), 2, (0, 120, 0), False)
    slats.addProperty("App::PropertyString", "HeartsideElements").HeartsideElements = "[1, 2"
    doc.recompute()
    leaf = next(leaf for leaf in read_leaves(doc).leaves if leaf.owner == slats)
    with pytest.raises(InputError, match="Slats"):
        read_tags(leaf)


def test_draft_link_array_carries_tags_of_its_base_and_its_own(doc):
    import Draft

    board = box(doc, "Board")
    write_tags(board, {"HeartsideSpecies": "elm", "HeartsideCut": "flat"})
    made = Draft.make_ortho_array(
        board, App.Vector(500, 0, 0), App.Vector(0, 150, 0), App.Vector(0, 0, 50), 2, 1, 1, use_link=True
    )
    write_tags(made, {"HeartsideCut": "rift"})
    doc.recompute()
    for leaf in read_leaves(doc).leaves:
        assert read_tags(leaf).properties == {"HeartsideSpecies": "elm", "HeartsideCut": "rift"}
    assert board.HeartsideCut == "flat"


def test_copies_keep_their_tags(doc):
    write_tags(box(doc, "Board"), {"HeartsideSpecies": "elm", "HeartsideRingAngle": 30})
    copy = doc.copyObject(doc.Board)
    assert own_facts(copy) == {"HeartsideSpecies": "elm", "HeartsideRingAngle": 30.0}


def test_removing_leaves_nothing_behind(doc):
    board = box(doc, "Board")
    before = set(board.PropertiesList)
    write_tags(board, EVERY_FACT)
    board.addProperty("App::PropertyString", "HeartsideKind").HeartsideKind = "not a fact"
    remove_tags(board)
    assert set(board.PropertiesList) == before | {"HeartsideKind"}


def test_none_takes_one_fact_away(doc):
    board = box(doc, "Board")
    write_tags(board, {"HeartsideSpecies": "elm", "HeartsideCut": "flat"})
    write_tags(board, {"HeartsideCut": None, "HeartsideGrain": None})
    assert own_facts(board) == {"HeartsideSpecies": "elm"}


@pytest.mark.parametrize(
    "facts",
    [{"HeartsideColour": "red"}, {"HeartsideGlued": "damp"}, {"HeartsideSpecies": 3}, {"HeartsidePith": 4}],
)
def test_wrong_facts_are_refused_before_anything_is_written(doc, facts):
    board = box(doc, "Board")
    with pytest.raises(InputError, match="Board"):
        write_tags(board, {"HeartsideCut": "flat", **facts})
    assert own_facts(board) == {}


def test_a_property_of_the_wrong_type_is_replaced(doc):
    board = box(doc, "Board")
    board.addProperty("App::PropertyInteger", "HeartsideGlued").HeartsideGlued = 8
    write_tags(board, {"HeartsideGlued": 8.5})
    assert own_facts(board) == {"HeartsideGlued": 8.5}


def test_tagging_does_not_make_dependents_compute_again(doc):
    board, other = box(doc, "Board"), box(doc, "Other")
    cut = doc.addObject("Part::Cut", "CutBoard")
    cut.Base, cut.Tool = board, other
    doc.recompute()
    write_tags(board, EVERY_FACT)
    assert "Touched" not in board.State and "Touched" not in cut.State
    remove_tags(board)
    assert "Touched" not in board.State and "Touched" not in cut.State


def test_one_undo_takes_a_tagging_back(doc):
    doc.UndoMode = 1
    board = box(doc, "Board")
    doc.openTransaction("Tag")
    write_tags(board, EVERY_FACT)
    doc.commitTransaction()
    doc.undo()
    assert own_facts(board) == {}
    doc.redo()
    assert own_facts(board) == EVERY_FACT
