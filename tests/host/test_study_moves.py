"""The study holds on: its links let the model be recomputed, deleted, copied; it goes along to other documents."""

from __future__ import annotations

import FreeCAD
import pytest

from tests.host import bench
from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.actions.check import read_document, work_out
from workbench_pkg.actions.tag import tag
from workbench_pkg.actions.year import set_year, settings_of
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects.proxies import Study
from workbench_pkg.objects.results import report_of, results_of
from workbench_pkg.objects.study import (
    asked_of,
    ensure_study,
    find_study,
    flatness_mm,
    parts_of,
    set_asked,
    set_flatness,
)


@pytest.fixture
def piece(doc):
    doc.UndoMode = 1
    boards = [bench.box(doc, f"Board{i}", placement=bench.at(0, 110 * i, 0)) for i in range(3)]
    container = doc.addObject("App::Part", "Container")
    container.addObject(boards[2])
    doc.recompute()
    tag(boards, species="white oak", grain="x", show="z", cut="flat", heart="show", built=9)
    return boards


def test_it_points_at_its_parts_without_holding_them(doc, piece):
    annotate(doc)
    study = find_study(doc)
    assert parts_of(study) == piece
    assert study.OutList == [] and all(study not in board.InList for board in piece)
    piece[0].Length = 500
    assert "Touched" not in study.State
    doc.recompute()
    doc.removeObject(piece[1].Name)
    assert parts_of(study) == [piece[0], piece[2]]
    assert study.isValid()


def test_undoing_a_deletion_brings_the_link_back(doc, piece):
    annotate(doc)
    doc.openTransaction("delete")
    doc.removeObject(piece[0].Name)
    doc.commitTransaction()
    doc.undo()
    assert piece[0].Name in [part.Name for part in parts_of(find_study(doc))]


def test_renamed_it_is_the_same(doc, piece):
    set_year(doc, "heated maritime home")
    find_study(doc).Label = "Air of the client's house"
    annotate(doc)
    assert settings_of(doc).asked["year"] == "heated maritime home"
    assert [obj.Label for obj in doc.Objects if obj.TypeId == "App::FeaturePython"] == [
        "Air of the client's house"
    ]


def test_what_was_asked_stands_in_plain_properties(doc):
    study = ensure_study(doc)
    set_asked(study, {"shop": "museum", "built_on": "2026-01-15", "rooms": {"heating_c": 20.0}})
    set_flatness(study, 2.0)
    assert (study.HeartsideShop, study.HeartsideBuiltOn) == ("museum", "2026-01-15")
    assert study.getTypeIdOfProperty("HeartsideFlatness") == "App::PropertyLength" and flatness_mm(doc) == 2.0
    assert asked_of(doc) == {"shop": "museum", "built_on": "2026-01-15", "rooms": {"heating_c": 20.0}}
    set_asked(study, {})
    set_flatness(study, None)
    assert asked_of(doc) == {} and flatness_mm(doc) is None
    assert "HeartsideShop" not in study.PropertiesList


def test_a_study_of_an_earlier_release_that_kept_its_shop_otherwise_is_understood(doc):
    study = ensure_study(doc)
    study.addProperty("App::PropertyString", "HeartsideAsked", "Heartside", "")
    study.HeartsideAsked = '{"shop": "museum", "built_on": "2026-01-15"}'
    assert asked_of(doc) == {"shop": "museum", "built_on": "2026-01-15"}


def test_copied_to_another_document_with_its_parts_it_points_at_the_copies(doc, piece, tmp_path):
    set_year(doc, "heated maritime home")
    annotate(doc)
    other = FreeCAD.newDocument("Other")
    other.copyObject([find_study(doc), *piece], True)
    other.recompute()
    copy = find_study(other)
    assert isinstance(copy.Proxy, Study) and copy.HeartsideYear == "heated maritime home"
    assert all(part.Document == other for part in parts_of(copy))
    work_out(other)
    other.saveAs(str(tmp_path / "other.FCStd"))
    FreeCAD.closeDocument(other.Name)
    again = FreeCAD.openDocument(str(tmp_path / "other.FCStd"))
    assert find_study(again).HeartsideYear == "heated maritime home"


def test_duplicated_in_its_document_the_first_counts(doc, piece):
    set_year(doc, "heated maritime home")
    study = find_study(doc)
    copy = doc.copyObject(study)
    copy.HeartsideYear = "museum"
    assert find_study(doc) == study and settings_of(doc).asked["year"] == "heated maritime home"


def test_a_piece_can_be_linked_from_another_file(doc, piece, tmp_path):
    annotate(doc)
    doc.saveAs(str(tmp_path / "store.FCStd"))
    main = FreeCAD.newDocument("Main")
    main.UndoMode = 1
    main.saveAs(str(tmp_path / "main.FCStd"))
    link = main.addObject("App::Link", "Link")
    link.LinkedObject = piece[0]
    main.recompute()
    before, theirs = property_dump(main), property_dump(doc)
    annotate(main)
    assert [part["name"] for part in report_of(main)["parts"]] == ["Link"]
    assert parts_of(find_study(main)) == [link]
    assert differences(theirs, property_dump(doc)) == []
    main.save()
    path = main.FileName
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)
    again = FreeCAD.openDocument(path)
    again.UndoMode = 1
    assert parts_of(find_study(again)) == [again.Link]
    remove(again)
    assert differences(before, property_dump(again)) == []


def test_an_answer_made_the_study_and_takes_it_along(doc, piece):
    before, steps = property_dump(doc), doc.UndoCount
    annotate(doc)
    assert doc.UndoCount == steps + 1 and find_study(doc) is not None
    annotate(doc)
    remove(doc)
    assert find_study(doc) is None and differences(before, property_dump(doc)) == []
    doc.undo()
    assert len(results_of(doc)) == 1 and find_study(doc) is not None


def test_a_question_is_answered_without_its_document(doc, piece):
    expected = work_out(doc).entry
    question = read_document(doc)
    FreeCAD.closeDocument(doc.Name)
    from workbench_pkg.actions.check import answer

    assert answer(question).entry == expected
