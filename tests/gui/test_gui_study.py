"""The study in the tree: its children and icon, stale when the model changes, fresh again when it is undone."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects.results import results_of
from workbench_pkg.objects.study import find_study, parts_of
from workbench_pkg.panels import stale, working

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.tag_all(doc)
    bench.isometric()
    yield boards
    from workbench_pkg.panels.report_panel import existing_panel

    if existing_panel() is not None:
        existing_panel().close()


def icon_of(doc):
    return find_study(doc).ViewObject.Proxy.getIcon().replace("\\", "/").rpartition("/")[2]


def tree_texts(doc):
    """Texts of the document's branch in the tree, with their depth."""
    found = []

    def walk(item, depth):
        found.append((depth, item.text(0)))
        for row in range(item.childCount()):
            walk(item.child(row), depth + 1)

    for tree in FreeCADGui.getMainWindow().findChildren(QtWidgets.QTreeWidget):
        for row in range(tree.topLevelItemCount()):
            walk(tree.topLevelItem(row), 0)
    return found


def test_the_answer_stands_below_the_study_and_the_parts_where_they_were(piece, doc, pump, shot):
    annotate(doc)
    pump(0.8)
    study = find_study(doc)
    assert parts_of(study) == [o for o in doc.Objects if o.TypeId == "Part::Box"]
    assert study.ViewObject.Proxy.claimChildren() == results_of(doc)
    texts = tree_texts(doc)
    depth = {text: level for level, text in texts}
    assert depth["Heartside results"] == depth["Heartside study"] + 1
    assert depth["Board 1"] == depth["Heartside study"]
    assert icon_of(doc) == "study.svg"
    assert study.ViewObject.isVisible()  # what is not is grey in the tree
    shot("study")


def test_a_change_of_the_model_makes_it_stale_and_undo_takes_that_back(piece, doc, pump, wait_until, shot):
    annotate(doc)
    pump(0.8)
    assert not stale.is_stale(doc)
    before = property_dump(doc)
    doc.openTransaction("change")
    piece[0].Width = 90
    doc.recompute()
    doc.commitTransaction()
    wait_until(lambda: stale.is_stale(doc))
    assert icon_of(doc) == "study_stale.svg"
    shot("study-stale")
    doc.undo()
    wait_until(lambda: not stale.is_stale(doc))
    assert icon_of(doc) == "study.svg"
    assert [d for d in differences(before, property_dump(doc)) if ".state" not in d] == []


@pytest.mark.parametrize("change", ["tag", "year", "place", "hide", "label", "delete"])
def test_what_else_makes_it_stale(piece, doc, pump, wait_until, change):
    from workbench_pkg.actions.tag import tag
    from workbench_pkg.actions.year import set_year

    annotate(doc)
    pump(0.8)
    assert not stale.is_stale(doc)
    if change == "tag":
        tag([piece[0]], species="black walnut")
    elif change == "year":
        set_year(doc, "heated maritime home")
    elif change == "place":
        piece[0].Placement.Base.z += 5
    elif change == "hide":
        piece[0].Visibility = False
    elif change == "label":
        piece[0].Label = "First board"
    else:
        doc.removeObject(piece[0].Name)
    wait_until(lambda: stale.is_stale(doc))
    annotate(doc)
    wait_until(lambda: not stale.is_stale(doc))


def test_colours_and_the_camera_do_not(piece, doc, pump):
    annotate(doc)
    pump(0.8)
    piece[0].ViewObject.ShapeColor = (0.1, 0.2, 0.3)
    bench.isometric()
    pump(0.8)
    assert not stale.is_stale(doc)


def test_the_report_says_that_it_is_stale(piece, doc, pump, wait_until, shot):
    FreeCADGui.runCommand("Heartside_Report")
    wait_until(lambda: not working.is_busy(), 60)
    word = bench.widget("HeartsideReportStale", QtWidgets.QLabel)
    assert not word.isVisible()
    piece[0].Width = 90
    doc.recompute()
    wait_until(word.isVisible)
    shot("report-stale")
    bench.widget("HeartsideReportAgain", QtWidgets.QPushButton).click()
    wait_until(lambda: not working.is_busy(), 60)
    pump(0.8)
    assert not word.isVisible()


def test_it_is_known_to_be_stale_after_saving_and_opening(piece, doc, pump, wait_until, tmp_path):
    annotate(doc)
    piece[0].Width = 90
    doc.recompute()
    doc.saveAs(str(tmp_path / "stale.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "stale.FCStd"))
    wait_until(lambda: stale.is_stale(again))
    assert icon_of(again) == "study_stale.svg"


def test_it_is_known_to_be_fresh_after_saving_and_opening(piece, doc, pump, wait_until, tmp_path):
    annotate(doc)
    doc.saveAs(str(tmp_path / "fresh.FCStd"))
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(str(tmp_path / "fresh.FCStd"))
    wait_until(lambda: (again.Name, stale.TREE) in stale._followed)
    pump(0.8)
    assert stale._followed[again.Name, stale.TREE].stale is False


def test_documents_without_an_answer_are_not_listened_to(main_window, doc, pump):
    bench.small_table(doc)
    bench.tag_all(doc)
    pump(0.8)
    assert stale._busy not in stale._watchers
    annotate(doc)
    pump(0.8)
    assert stale._busy in stale._watchers
    remove(doc)
    pump(0.8)
    assert stale._busy not in stale._watchers and find_study(doc) is None


def test_a_study_that_says_something_stays_when_the_answer_goes(piece, doc, pump):
    from workbench_pkg.actions.year import set_year

    annotate(doc)
    set_year(doc, "heated maritime home")
    remove(doc)
    assert find_study(doc).HeartsideYear == "heated maritime home"
    assert parts_of(find_study(doc)) == []
