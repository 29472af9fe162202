"""Report, annotate, remove: rows select boards, one undo step each, nothing left behind, macros record it."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects.results import results_of

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
    pump(0.2)
    yield boards
    from workbench_pkg.panels.report_panel import existing_panel

    if existing_panel() is not None:
        existing_panel().hide()


@pytest.fixture
def run(wait_until):
    """run(command): click it, and wait until it has done what it does."""
    from workbench_pkg.panels import working

    def click(name):
        FreeCADGui.runCommand(name)
        wait_until(lambda: not working.is_busy(), 60)

    return click


@pytest.fixture
def press_again(wait_until):
    """press_again(): work the report out again, and wait for it."""
    from workbench_pkg.panels import working

    def click():
        bench.widget("HeartsideReportAgain", QtWidgets.QPushButton).click()
        wait_until(lambda: not working.is_busy(), 60)

    return click


def cell(table, row, column, role=QtCore.Qt.DisplayRole):
    return table.model().index(row, column).data(role)


def test_report_lists_every_board_and_changes_nothing(piece, doc, pump, shot, run):
    before, steps = property_dump(doc), doc.UndoCount
    run("Heartside_Report")
    pump(0.3)
    table = bench.widget("HeartsideReportTable", QtWidgets.QTableWidget)
    assert table.isVisible() and table.rowCount() == 9
    shot("report")
    names = bench.texts(table)
    assert {"Board 1", "Leg 4"} <= set(names)
    assert "Likely between" in cell(table, names.index("Board 1"), 6, QtCore.Qt.ToolTipRole)
    assert "Board 1" in bench.widget("HeartsideReportText", QtWidgets.QPlainTextEdit).toPlainText()
    assert differences(before, property_dump(doc)) == []
    assert doc.UndoCount == steps


def test_sizes_follow_the_unit_system_of_the_host(piece, doc, pump, run):
    units = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units")
    before = units.GetInt("UserSchema", 0)
    try:
        FreeCAD.Units.setSchema(3)  # inches, decimal
        run("Heartside_Report")
        pump(0.2)
        table = bench.widget("HeartsideReportTable", QtWidgets.QTableWidget)
        assert '"' in cell(table, 0, 3) or "in" in cell(table, 0, 3)
        assert "mm" not in cell(table, 0, 3)
    finally:
        FreeCAD.Units.setSchema(before)


def test_choosing_a_row_selects_its_board(piece, doc, pump, run):
    run("Heartside_Report")
    table = bench.widget("HeartsideReportTable", QtWidgets.QTableWidget)
    table.selectRow(bench.texts(table).index("Board 3"))
    pump(0.2)
    assert [o.Name for o in FreeCADGui.Selection.getSelection(doc.Name)] == ["Board3"]


def test_choosing_a_finding_selects_what_it_is_about(piece, doc, pump, run):
    from workbench_pkg.actions.tag import tag

    tag([piece[1]], species=None)
    run("Heartside_Report")
    findings = bench.widget("HeartsideReportFindings", QtWidgets.QListWidget)
    bench.choose_text(findings, "Board 2")
    pump(0.2)
    assert [o.Name for o in FreeCADGui.Selection.getSelection(doc.Name)] == ["Board2"]


def eye():
    """Where the camera looks, and how much of the model it takes in."""
    camera = FreeCADGui.ActiveDocument.ActiveView.getCameraNode()
    ahead = camera.getViewVolume().getProjectionDirection().getValue()
    here = camera.position.getValue().getValue()
    far = camera.focalDistance.getValue()
    return [a + far * b for a, b in zip(here, ahead)], camera.height.getValue()


def middle_of(obj):
    return list(obj.Shape.BoundBox.Center)


def test_choosing_a_finding_brings_its_boards_close(piece, doc, pump, run, shot):
    from workbench_pkg.actions.tag import tag

    (leg,) = doc.getObjectsByLabel("Leg 1")
    tag([leg], species=None)
    run("Heartside_Report")
    bench.isometric()
    before = eye()[1]
    findings = bench.widget("HeartsideReportFindings", QtWidgets.QListWidget)
    bench.choose_text(findings, "Leg 1")
    pump(0.2)
    at, height = eye()
    assert at == pytest.approx(middle_of(leg), abs=0.5)
    assert height < before
    shot("report-finding")
    # Looked away and clicked once more: it comes back.
    bench.isometric()
    findings.clicked.emit(findings.selectedIndexes()[0])
    pump(0.2)
    assert eye()[0] == pytest.approx(middle_of(leg), abs=0.5)


def test_a_double_click_on_a_row_brings_its_board_close(piece, doc, pump, run):
    run("Heartside_Report")
    table = bench.widget("HeartsideReportTable", QtWidgets.QTableWidget)
    row = bench.texts(table).index("Board 3")
    table.selectRow(row)
    pump(0.2)
    assert eye()[0] != pytest.approx(middle_of(piece[2]), abs=0.5)
    table.doubleClicked.emit(table.model().index(row, 0))
    pump(0.2)
    assert eye()[0] == pytest.approx(middle_of(piece[2]), abs=0.5)


def test_working_out_again_shows_what_has_changed(piece, doc, pump, run, press_again):
    run("Heartside_Report")
    table = bench.widget("HeartsideReportTable", QtWidgets.QTableWidget)
    piece[0].Width = 100
    doc.recompute()
    before = cell(table, 0, 3)
    press_again()
    assert cell(table, 0, 3) != before


def test_a_report_of_a_closed_document_says_so(piece, doc, pump, run, press_again):
    run("Heartside_Report")
    FreeCAD.closeDocument(doc.Name)
    pump(0.2)
    press_again()
    assert "closed" in bench.problems()[0]


def test_text_can_be_copied(piece, doc, pump, run):
    run("Heartside_Report")
    bench.widget("HeartsideReportCopy", QtWidgets.QPushButton).click()
    assert "Board 1" in QtWidgets.QApplication.clipboard().text()


def apart_from_state(before, after):
    """Differences, without the mark of being touched that the host itself puts on what it brings back."""
    return [line for line in differences(before, after) if ".state: " not in line]


def test_annotate_undo_redo_remove(piece, doc, pump, shot, run):
    before, steps = property_dump(doc), doc.UndoCount
    run("Heartside_Annotate")
    pump(0.5)
    assert bench.problems() == []
    assert doc.UndoCount == steps + 1
    (group,) = results_of(doc)
    assert len(group.Group) == 9
    bench.isometric()
    shot("annotated", settle=1.0)
    annotated = property_dump(doc)
    doc.undo()
    pump(0.2)
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    pump(0.2)
    assert apart_from_state(annotated, property_dump(doc)) == []
    FreeCADGui.runCommand("Heartside_Remove")
    pump(0.2)
    assert differences(before, property_dump(doc)) == []
    doc.undo()
    pump(0.2)
    assert apart_from_state(annotated, property_dump(doc)) == []


def test_annotating_an_empty_document_leaves_no_trace_of_parts(main_window, doc, pump, run):
    run("Heartside_Annotate")
    pump(0.2)
    (text,) = bench.problems()
    assert "solid" in text
    labels = [o for o in doc.Objects if o.TypeId == "App::AnnotationLabel"]
    assert labels == []


def test_an_error_while_annotating_is_told_and_leaves_nothing(piece, doc, pump, monkeypatch, run):
    from workbench_pkg.actions import annotate as module

    def fail(*_):
        raise RuntimeError("the glue has not set")

    monkeypatch.setattr(module, "write_results", fail)
    before, steps = property_dump(doc), doc.UndoCount
    run("Heartside_Annotate")
    pump(0.2)
    (text,) = bench.problems()
    assert "the glue has not set" in text
    assert differences(before, property_dump(doc)) == []
    assert doc.UndoCount == steps


def test_clicks_are_recorded_as_lines_that_run_by_themselves(piece, doc, monkeypatch, pump, run):
    lines = []
    true = FreeCADGui.doCommand

    def note(line):
        lines.append(line)
        true(line)

    monkeypatch.setattr(FreeCADGui, "doCommand", note)
    run("Heartside_Annotate")
    FreeCADGui.runCommand("Heartside_Remove")
    before = property_dump(doc)
    assert any("annotate(" in line for line in lines)
    names = {"FreeCAD": FreeCAD}
    for line in lines[:2]:
        exec(line, names)
    assert results_of(doc)
    for line in lines[2:]:
        exec(line, names)
    assert differences(before, property_dump(doc)) == []
