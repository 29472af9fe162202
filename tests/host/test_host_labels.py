"""Labels and the results group: made, found, removed, and nothing else touched."""

from __future__ import annotations

import FreeCAD as App
import pytest
from bench import box

from workbench_pkg.host.labels import (
    GROUP_LABEL,
    add_label,
    our_objects,
    remove_results,
    results_group,
)
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.marks import kind_of, mark
from workbench_pkg.host.property_dump import differences, property_dump


def test_label_points_and_marks(doc):
    label = add_label(doc, ["Top", "today 400.0"], (1, 2, 3), (11, 22, 33), part="Top/0", name="Top label")
    group = results_group(doc)
    assert label in group.Group and group.Label == GROUP_LABEL
    assert list(label.LabelText) == ["Top", "today 400.0"]
    assert label.BasePosition == App.Vector(1, 2, 3)
    assert label.TextPosition == App.Vector(10, 20, 30)  # the host counts it from the base
    assert label.HeartsidePart == "Top/0" and label.Label == "Top label"
    assert [(obj.HeartsideKind, obj.HeartsideSchema) for obj in (group, label)] == [
        ("results", 1),
        ("label", 1),
    ]
    assert group.getTypeIdOfProperty("HeartsideSchema") == "App::PropertyInteger"
    assert kind_of(label) == "label" and kind_of(box(doc, "Board")) == ""


def test_one_group_however_often_and_under_whatever_name(doc):
    group = results_group(doc)
    group.Label = "My own name for it"
    assert results_group(doc) == group
    add_label(doc, ["a"], (0, 0, 0), (1, 1, 1))
    assert [kind_of(obj) for obj in our_objects(doc)] == ["results", "label"]
    assert our_objects(doc, ["label"]) == group.Group


def test_marking_twice_is_marking_once(doc):
    board = box(doc, "Ghost")
    mark(mark(board, "ghost"), "ghost")
    assert kind_of(board) == "ghost"


def test_annotating_and_removing_leaves_the_document_as_it_was(doc):
    box(doc, "Board")
    doc.recompute()
    before = property_dump(doc)
    for i in range(3):
        add_label(doc, [f"label {i}"], (0, 0, i), (10, 10, i))
    doc.recompute()
    assert [leaf.name for leaf in read_leaves(doc, hidden=True).leaves] == ["Board"]
    assert remove_results(doc) == 4
    assert differences(before, property_dump(doc)) == []


def test_removing_takes_only_what_is_ours(doc):
    board = box(doc, "Board")
    own_label = doc.addObject("App::AnnotationLabel", "UsersLabel")
    add_label(doc, ["x"], (0, 0, 0), (1, 1, 1))
    group = results_group(doc)
    inner = mark(doc.addObject("App::DocumentObjectGroup", "Inner"), "ghosts")
    ghost = mark(box(doc, "Ghost"), "ghost")
    group.addObject(inner)
    inner.addObject(ghost)
    group.addObject(board)
    inner.addObject(own_label)
    study = mark(doc.addObject("App::FeaturePython", "Study"), "study")
    assert remove_results(doc) == 4
    assert [obj.Name for obj in doc.Objects] == ["Board", "UsersLabel", "Study"]
    assert study.HeartsideKind == "study"
    assert remove_results(doc) == 0


def test_labels_survive_saving_and_opening(doc, tmp_path):
    box(doc, "Board")
    add_label(doc, ["größer", "1"], (1, 2, 3), (4, 5, 6), part="Board/0")
    doc.recompute()
    doc.saveAs(str(tmp_path / "a.FCStd"))
    App.closeDocument(doc.Name)
    again = App.openDocument(str(tmp_path / "a.FCStd"), True)
    (label,) = our_objects(again, ["label"])
    assert list(label.LabelText) == ["größer", "1"] and label.HeartsidePart == "Board/0"
    assert label in results_group(again).Group
    assert remove_results(again) == 2
    assert [obj.Name for obj in again.Objects] == ["Board"]


def test_one_undo_takes_all_labels_away(doc):
    doc.UndoMode = 1
    doc.openTransaction("Annotate")
    add_label(doc, ["a"], (0, 0, 0), (1, 1, 1))
    doc.commitTransaction()
    doc.undo()
    assert our_objects(doc) == []
    doc.redo()
    assert len(our_objects(doc)) == 2


def test_qt_comes_through_one_import():
    qt = pytest.importorskip("workbench_pkg.host.qt", reason="no Qt binding for this Python")
    assert qt.QtCore.QObject and qt.QtGui.QColor
    assert issubclass(qt.QtWidgets.QPushButton, qt.QtCore.QObject)
    both = qt.QtWidgets.QDialogButtonBox.Ok | qt.QtWidgets.QDialogButtonBox.Cancel
    assert qt.enum_value(both) == 0x400 | 0x400000
    assert qt.enum_value(qt.QtWidgets.QDialogButtonBox.Ok) == 0x400
    assert qt.enum_value(7) == 7
