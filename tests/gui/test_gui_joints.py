"""The joints panel: listed, filtered, shown in the view, said, taken back; the fixed line pointed at in the model."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects.joints import kept_joints
from workbench_pkg.panels import working
from workbench_pkg.panels.stale import SETTLED_MS

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


def framed_door(doc):
    """A panel free in a frame, and a cleat across its back of which nothing is known."""
    sizes = {
        "Stile left": ((60, 24, 700), (-60, 0, 0)),
        "Stile right": ((60, 24, 700), (400, 0, 0)),
        "Rail below": ((400, 24, 60), (0, 0, 0)),
        "Rail above": ((400, 24, 60), (0, 0, 640)),
    }
    from workbench_pkg.actions.tag import tag

    panel = doc.addObject("Part::Box", "Panel")
    panel.Length, panel.Width, panel.Height = 412, 8, 600
    panel.Placement.Base = FreeCAD.Vector(-6, 8, 50)
    panel.ViewObject.ShapeColor = (0.82, 0.68, 0.47)
    groove = doc.addObject("Part::Box", "Groove")
    groove.Length, groove.Width, groove.Height = 424, 8, 600
    groove.Placement.Base = FreeCAD.Vector(-12, 8, 50)
    for label, (size, at) in sizes.items():
        box = doc.addObject("Part::Box", "Frame")
        box.Length, box.Width, box.Height = size
        box.Placement.Base = FreeCAD.Vector(*at)
        cut = doc.addObject("Part::Cut", "Part")
        cut.Base, cut.Tool, cut.Label = box, groove, label
        cut.ViewObject.ShapeColor = (0.62, 0.47, 0.3)
        box.Visibility = False
        tag(
            [cut], species="white oak", grain="z" if "Stile" in label else "x", show="-y", cut="rift", built=9
        )
    groove.Visibility = False
    cleat = doc.addObject("Part::Box", "Cleat")
    cleat.Length, cleat.Width, cleat.Height = 380, 20, 40
    cleat.Placement.Base = FreeCAD.Vector(10, 16, 300)
    tag([panel], species="white oak", grain="z", show="-y", cut="flat", heart="show", built=9)
    tag([cleat], species="white oak", grain="x", show="y", cut="rift", built=9)
    doc.recompute()
    return panel, cleat


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    parts = framed_door(doc)
    bench.isometric()
    pump(0.2)
    return parts


@pytest.fixture
def table(piece, doc, pump, wait_until):
    FreeCADGui.runCommand("Heartside_Joints")
    wait_until(lambda: FreeCADGui.Control.activeDialog() and not working.is_busy(), 60)
    pump(0.3)
    return bench.widget("HeartsideJointsTable", QtWidgets.QTableWidget)


def settled(pump, wait_until):
    pump(SETTLED_MS / 1000 + 0.3)
    wait_until(lambda: not working.is_busy(), 60)
    pump(0.2)


def button(name):
    return bench.widget(name, QtWidgets.QPushButton)


def choose(name, value):
    box = bench.widget(name, QtWidgets.QComboBox)
    index = box.findData(value)
    assert index >= 0
    box.setCurrentIndex(index)
    box.activated.emit(index)


def kinds(table):
    return [text.split("\n")[1] for text in bench.texts(table)]


def row_of(table, *names):
    for row, text in enumerate(bench.texts(table)):
        if set(text.split("\n")[0].split(" – ")) == set(names):
            table.selectRow(row)
            return row
    raise AssertionError(f"{names} not in {bench.texts(table)}")


def marks_node():
    from pivy import coin

    view = FreeCADGui.ActiveDocument.ActiveView
    search = coin.SoSearchAction()
    search.setName("HeartsideJointMarks")
    search.apply(view.getSceneGraph())
    return search.getPath()


def test_the_joint_across_the_panel_is_said_and_taken_back(table, piece, doc, pump, wait_until, shot):
    before, steps = property_dump(doc), doc.UndoCount
    row_of(table, "Panel", "Cleat")
    pump(0.3)
    assert {s.Object.Name for s in FreeCADGui.Selection.getSelectionEx()} == {"Panel", "Cleat"}
    assert marks_node() is not None
    about = bench.widget("HeartsideJointsAbout", QtWidgets.QLabel)
    assert "Not known" in about.text() and "move by up to" in about.text()
    shot("joints")
    choose("HeartsideJointsKind", "slides")
    button("HeartsideJointsChange").click()
    settled(pump, wait_until)
    assert list(kept_joints(doc).values()) == ["slides"] and doc.UndoCount == steps + 1
    choose("HeartsideJointsFilter", "said")
    row_of(table, "Panel", "Cleat")
    assert "slides" in kinds(table)[0] and "confirmed" in about.text()
    doc.undo()
    settled(pump, wait_until)
    assert differences(before, property_dump(doc)) == [] and bench.texts(table) == []
    doc.redo()
    settled(pump, wait_until)
    row_of(table, "Panel", "Cleat")
    button("HeartsideJointsForget").click()
    settled(pump, wait_until)
    assert kept_joints(doc) == {}
    bench.press("Close")
    assert marks_node() is None and not FreeCADGui.Control.activeDialog()


def test_several_are_confirmed_at_once(table, doc, pump, wait_until):
    choose("HeartsideJointsFilter", "touch")
    steps = doc.UndoCount
    table.selectAll()
    inferred = [t for t in kinds(table) if "inferred" in t]
    assert len(inferred) >= 2
    button("HeartsideJointsConfirm").click()
    settled(pump, wait_until)
    assert len(kept_joints(doc)) == len(inferred) and doc.UndoCount == steps + 1
    assert not any("inferred" in text for text in kinds(table))
    bench.press("Close")


def test_words_and_filters_keep_the_list_short(table, pump):
    choose("HeartsideJointsFilter", "all")
    every = len(bench.texts(table))
    bench.widget("HeartsideJointsWords", QtWidgets.QLineEdit).setText("cleat")
    assert 0 < len(bench.texts(table)) < every
    assert all("Cleat" in text for text in bench.texts(table))
    bench.widget("HeartsideJointsWords", QtWidgets.QLineEdit).setText("")
    choose("HeartsideJointsFilter", "unknown")
    assert all(text == "not known" for text in kinds(table))
    bench.press("Close")


def click_in_view(doc, obj, element, point):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(doc.Name, obj.Name, element, *point)


@pytest.mark.parametrize(
    ("point", "word", "told"),
    [
        ((-6, 8, 300), "-x", "its edge"),
        ((200, 8, 300), "centre", "its middle"),
        ((300, 8, 200), "100.0", "100"),
    ],
)
def test_the_fixed_line_is_pointed_at_in_the_view(
    table, piece, doc, pump, wait_until, shot, point, word, told
):
    panel, _ = piece
    before, steps = property_dump(doc), doc.UndoCount
    choose("HeartsideJointsFilter", "all")
    row_of(table, "Panel", "Cleat")
    button("HeartsideJointsPoint").setChecked(True)
    pump(0.1)
    click_in_view(doc, panel, "Face3", point)
    settled(pump, wait_until)
    assert panel.HeartsideFixed in (word, f"-{word}") and doc.UndoCount == steps + 1
    assert not button("HeartsideJointsPoint").isChecked()
    row_of(table, "Panel", "Cleat")
    pump(0.2)
    assert "Panel is held" in bench.widget("HeartsideJointsLine", QtWidgets.QLabel).text()
    shot(f"joints-fixed-{word}")
    doc.undo()
    settled(pump, wait_until)
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    settled(pump, wait_until)
    button("HeartsideJointsUnfix").click()
    settled(pump, wait_until)
    assert "HeartsideFixed" not in panel.PropertiesList
    bench.press("Close")


def test_esc_leaves_pointing_first_and_nothing_behind(table, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    button("HeartsideJointsPoint").setChecked(True)
    pump(0.1)
    bench.press("Close")
    assert FreeCADGui.Control.activeDialog() and not button("HeartsideJointsPoint").isChecked()
    bench.press("Close")
    assert not FreeCADGui.Control.activeDialog()
    assert doc.UndoCount == steps and differences(before, property_dump(doc)) == []


def test_what_cannot_be_kept_is_told_and_changes_nothing(table, doc, pump, monkeypatch):
    from workbench_pkg.actions import joint

    def fail(*_):
        raise RuntimeError("no room on the disk")

    before = property_dump(doc)
    monkeypatch.setattr(joint, "keep_joints", fail)
    row_of(table, "Panel", "Cleat")
    button("HeartsideJointsChange").click()
    pump(0.2)
    trouble = bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert "no room on the disk" in trouble
    assert differences(before, property_dump(doc)) == []
    bench.press("Close")


def test_the_panel_closes_with_its_document(table, doc, pump, wait_until):
    other = FreeCAD.newDocument("Other")
    try:
        FreeCAD.closeDocument(doc.Name)
        pump(0.5)
        wait_until(lambda: not FreeCADGui.Control.activeDialog(), 10)
    finally:
        FreeCAD.closeDocument(other.Name)
    assert not bench.problems()


def test_a_document_without_solids_is_told(main_window, doc, pump, wait_until):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    FreeCADGui.runCommand("Heartside_Joints")
    wait_until(lambda: not working.is_busy(), 30)
    pump(0.2)
    assert any("This document is empty" in text for text in bench.problems())
    assert not FreeCADGui.Control.activeDialog()


def test_what_is_said_is_recorded_as_lines_that_run_by_themselves(table, doc, pump, wait_until, monkeypatch):
    lines = []
    run = FreeCADGui.doCommand

    def noted(line):
        lines.append(line)
        run(line)

    monkeypatch.setattr(FreeCADGui, "doCommand", noted)
    row_of(table, "Panel", "Cleat")
    choose("HeartsideJointsKind", "screwed")
    button("HeartsideJointsChange").click()
    settled(pump, wait_until)
    bench.press("Close")
    kept = kept_joints(doc)
    assert list(kept.values()) == ["screwed"]
    doc.undo()
    assert kept_joints(doc) == {}
    exec("\n".join(lines), {"FreeCAD": FreeCAD})
    assert kept_joints(doc) == kept
