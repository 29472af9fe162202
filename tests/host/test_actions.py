"""The actions in a real document: tag, set the year, work out, annotate, remove; one undo step each."""

from __future__ import annotations

import FreeCAD as App
import numpy as np
import pytest

from movement_core.errors import InputError
from workbench_pkg.actions.annotate import annotate, annotate_file, label_lines, remove
from workbench_pkg.actions.check import check_document, work_out
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.actions.tag import tag, untag
from workbench_pkg.actions.year import set_year, settings_of, year_of
from workbench_pkg.host.marks import objects_of_kind
from workbench_pkg.host.property_dump import property_dump
from workbench_pkg.objects.results import report_of, results_of


def board(doc, label="Board", size=(1000, 140, 22), at=(0, 0, 0)):
    box = doc.addObject("Part::Box", "Board")
    box.Length, box.Width, box.Height = size
    box.Placement.Base = App.Vector(*at)
    box.Label = label
    return box


@pytest.fixture
def piece(doc):
    """A tagged board, a rotated one with its tag in the label, and one that says nothing."""
    one = board(doc, "Shelf")
    tag([one], species="white oak", grain="x", pith=(0, -60), built=9)
    two = board(doc, "Rail wood{beech, American; cut quarter; built 8}", (600, 80, 22), (0, 300, 0))
    two.Placement.Rotation = App.Rotation(App.Vector(1, 2, 3), 40)
    board(doc, "Silent", (500, 60, 20), (0, 600, 0))
    doc.recompute()
    doc.UndoMode = 1
    return doc


def test_the_report_knows_every_part(piece):
    entry = check_document(piece)
    parts = {part["name"]: part for part in entry["parts"]}
    assert set(parts) == {"Shelf", "Rail", "Silent"}
    shelf, rail = parts["Shelf"], parts["Rail"]
    assert (shelf["length_mm"], shelf["width_mm"], shelf["thickness_mm"]) == (1000, 140, 22)
    assert (rail["length_mm"], rail["width_mm"], rail["thickness_mm"]) == pytest.approx((600, 80, 22))
    assert shelf["cut"] == "flat" and shelf["ring_angle_deg"] == 0 and rail["cut"] == "quarter"
    assert shelf["driest_mm"] < shelf["today_mm"] < shelf["wettest_mm"]
    assert parts["Silent"]["missing"] == ["species", "rings", "moisture"]
    assert [f["check"] for f in entry["findings"]] == ["missing-facts"]


def test_tag_writes_typed_properties_and_is_one_undo_step(piece):
    silent = piece.getObjectsByLabel("Silent")[0]
    before = property_dump(piece)
    tag([silent], species="quercus alba", rings=30, show="+z", glued=8.5)
    assert silent.HeartsideSpecies == "White oak, commercial"
    assert silent.HeartsideRingAngle.Value == 30 and silent.HeartsideGlued == 8.5
    piece.undo()
    assert property_dump(piece) == before
    piece.redo()
    untag([silent])
    assert property_dump(piece) == before


@pytest.mark.parametrize(
    ("facts", "said"),
    [({"species": "wite oak"}, "nearest"), ({"grain": "w"}, "x, y, z"), ({"colour": "red"}, "not a word"),
     ({"built": 80}, "2 to 30"), ({"built": None, "colour": None}, "not a word")],
)  # fmt: skip
def test_a_wrong_fact_changes_nothing(piece, facts, said):
    shelf = piece.getObjectsByLabel("Shelf")[0]
    before = property_dump(piece)
    with pytest.raises(InputError, match=said):
        tag([shelf], **{"cut": "flat", **facts})
    assert property_dump(piece) == before
    with pytest.raises(InputError, match="select"):
        tag([], species="ash, white")


def test_none_takes_a_fact_away(piece):
    shelf = piece.getObjectsByLabel("Shelf")[0]
    tag([shelf], pith=None, built=None)
    assert "HeartsidePith" not in shelf.PropertiesList
    assert check_document(piece)["parts"][0]["missing"] == ["rings", "moisture"]


def test_the_year_is_kept_in_the_document(piece):
    before = property_dump(piece)
    set_year(piece, "museum")
    assert year_of(piece) == "museum" and settings_of(piece).year.name == "museum"
    assert check_document(piece)["year"]["name"] == "museum"
    piece.undo()
    assert year_of(piece) == "" and property_dump(piece) == before
    with pytest.raises(InputError, match="nearest"):
        set_year(piece, "musem")


def test_annotate_and_remove_leave_the_document_as_it_was(piece):
    before = property_dump(piece)
    entry = annotate(piece)
    assert len(objects_of_kind(piece, "label")) == 3
    (group,) = results_of(piece)
    assert len(group.Group) == 3 and report_of(piece) == entry
    shelf = next(o for o in group.Group if o.HeartsidePart.startswith("Board/"))
    assert shelf.HeartsideToday.Value == pytest.approx(entry["parts"][0]["today_mm"])
    assert shelf.HeartsideDriestMonth == entry["parts"][0]["driest_month"]
    assert list(shelf.LabelText) == list(label_lines(entry["parts"][0]))
    assert shelf.LabelText[1].startswith("width today 139.")
    assert remove(piece) == 4
    assert property_dump(piece) == before
    assert remove(piece) == 0


def test_annotating_twice_replaces_and_undo_brings_back(piece):
    before = property_dump(piece)
    annotate(piece)
    once = [o.Label for o in piece.Objects]
    annotate(piece)
    assert sorted(o.Label for o in piece.Objects) == sorted(once)
    piece.undo()
    piece.undo()
    assert property_dump(piece) == before


def test_a_failure_leaves_nothing(piece, monkeypatch):
    before = property_dump(piece)

    def fail(*_):
        raise RuntimeError("planted")

    monkeypatch.setattr("workbench_pkg.objects.results._label", fail)
    with pytest.raises(RuntimeError, match="planted"):
        annotate(piece)
    assert property_dump(piece) == before


def test_labels_are_no_parts_and_do_not_disturb_the_model(piece):
    annotate(piece)
    assert len(check_document(piece)["parts"]) == 3
    assert not [o for o in piece.Objects if "Touched" in o.State]


def test_instances_of_a_link_array_move_with_their_own_place(doc):
    leg = board(doc, "Leg wood{white oak; cut rift; built 9}", (700, 50, 50))
    leg.Visibility = False
    array = doc.addObject("App::Link", "Legs")
    array.LinkedObject = leg
    array.ShowElement = False
    array.ElementCount = 3
    array.PlacementList = [App.Placement(App.Vector(i * 100, 0, 0), App.Rotation()) for i in range(3)]
    doc.recompute()
    answer = work_out(doc)
    assert [solved.part.frame.centre[0] for solved in answer.piece.parts] == pytest.approx([350, 450, 550])
    assert len({entry["key"] for entry in answer.entry["parts"]}) == 3
    assert all(entry["today_mm"] for entry in answer.entry["parts"])


def test_a_board_keeps_its_tag_when_a_mortise_is_cut_into_it(doc):
    top = board(doc, "Top", (1000, 140, 22))
    tag([top], species="white oak", grain="x", pith=(0, -60), built=9)
    tool = board(doc, "Mortise", (60, 20, 22), (100, 50, 0))
    cut = doc.addObject("Part::Cut", "Cut")
    cut.Base, cut.Tool = top, tool
    cut.Label = "Top with mortise"
    doc.recompute()
    (part,) = check_document(doc)["parts"]
    assert part["name"] == "Top with mortise" and part["missing"] == []
    assert part["facts"]["species"]["reason"] == "property HeartsideSpecies of 'Top'"
    plain = board(doc, "Plain", (1000, 140, 22), (0, 300, 0))
    tag([plain], species="white oak", grain="x", pith=(0, -60), built=9)
    doc.recompute()
    other = next(p for p in check_document(doc)["parts"] if p["name"] == "Plain")
    assert (part["today_mm"], part["cup"]["driest_mm"]) == (other["today_mm"], other["cup"]["driest_mm"])


def test_boards_of_different_woods_fused_into_one_are_told(doc):
    one, two = board(doc, "One", (1000, 140, 22)), board(doc, "Two", (1000, 100, 22), (0, 140, 0))
    tag([one], species="teak", grain="x", cut="flat", built=8)
    tag([two], species="white oak", grain="x", cut="flat", built=9)
    fuse = doc.addObject("Part::Fuse", "Fuse")
    fuse.Base, fuse.Tool = one, two
    doc.recompute()
    entry = check_document(doc)
    (error,) = entry["errors"]
    assert "fused of Teak and White oak, commercial" in error["message"]
    tag([two], species="teak")
    assert not check_document(doc)["errors"]


def test_a_tag_on_a_container_is_not_passed_over_in_silence(doc):
    inner = board(doc, "Shelf")
    tag([inner], species="white oak", grain="x", pith=(0, -60), built=9)
    part = doc.addObject("App::Part", "Carcase")
    part.addObject(inner)
    part.Label = "Carcase wood{teak; built 8}"
    doc.recompute()
    (error,) = check_document(doc)["errors"]
    assert "'Carcase'" in error["message"] and "tag the parts inside" in error["message"]


def test_tag_takes_one_object_and_points_in_any_shape(piece):
    silent = piece.getObjectsByLabel("Silent")[0]
    tag(silent, species="white oak", pith=np.array([0.0, -60.0]), points=[(-20, 5), (0, 8), (20, 5)])
    assert list(silent.HeartsidePith) == [0, -60]
    assert list(silent.HeartsideRingPoints) == [-20, 5, 0, 8, 20, 5]
    tag((obj for obj in [silent]), points=np.array([[-20, 5], [0, 9], [20, 5]]), grain=App.Vector(1, 0, 0))
    assert list(silent.HeartsideRingPoints) == [-20, 5, 0, 9, 20, 5]
    tag(silent, built=np.float64(9.0), rings=np.array(30.0))
    assert silent.HeartsideBuilt == 9 and silent.HeartsideRingAngle.Value == 30
    untag(silent)
    assert not [name for name in silent.PropertiesList if name.startswith("Heartside")]


@pytest.mark.parametrize("nothing", [None, "Silent", b"Silent", 7, [None], ["Silent"], [[]]])
def test_what_is_no_object_is_refused_in_words(piece, nothing):
    for action in (lambda: tag(nothing, built=9), lambda: untag(nothing)):
        with pytest.raises(InputError, match="no part"):
            action()


def test_a_deleted_object_and_one_of_another_document_are_refused(piece):
    shelf, silent = piece.getObjectsByLabel("Shelf")[0], piece.getObjectsByLabel("Silent")[0]
    other = App.newDocument("other", hidden=True)
    try:
        with pytest.raises(InputError, match="another document"):
            tag([shelf, board(other)], built=8)
    finally:
        App.closeDocument(other.Name)
    piece.removeObject(silent.Name)
    with pytest.raises(InputError, match="no part"):
        tag([shelf, silent], built=8)
    assert shelf.HeartsideBuilt == 9, "nothing is changed"


@pytest.mark.parametrize("pith", [[0], ["left"], [[0, 1], [2]], {"x": 1}, [None, 2], np.zeros((2, 2))])
def test_points_that_are_none_are_refused_in_words(piece, pith):
    silent = piece.getObjectsByLabel("Silent")[0]
    with pytest.raises(InputError, match="pith"):
        tag(silent, pith=pith)
    assert "HeartsidePith" not in silent.PropertiesList


def test_an_annotated_copy_is_asked_the_same_again(doc, tmp_path):
    one = board(doc, "Shelf")
    tag([one], species="white oak", grain="x", pith=(0, -60), built=9)
    doc.recompute()
    model, copy = tmp_path / "model.FCStd", tmp_path / "copy.FCStd"
    doc.saveAs(str(model))
    asked = settings_from_texts("Oslo", "2026-03-15", 11.0, rooms={"heating_c": 18.0, "humidifier_rh": 40.0})
    App.closeDocument(doc.Name)
    entry = annotate_file(model, copy, asked)
    again = App.openDocument(str(copy), True)
    assert check_document(again)["parts"] == entry["parts"]
    assert again.HeartsideStudy.HeartsideYear == "Oslo"
    set_year(again, "museum")
    assert "HeartsideAsked" not in again.HeartsideStudy.PropertiesList
    assert check_document(again)["year"]["name"] == "museum"
    App.closeDocument(again.Name)
