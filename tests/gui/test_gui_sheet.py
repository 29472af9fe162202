"""The movement sheet from the window: what is asked, what is written, what is refused, and that nothing waits."""

from __future__ import annotations

import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.panels import working

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    bench.small_table(doc)
    bench.tag_all(doc)
    bench.isometric()
    pump(0.2)


def open_panel(pump):
    FreeCADGui.runCommand("Heartside_Sheet")
    pump(0.2)
    return bench.widget("HeartsideSheetFile", QtWidgets.QLineEdit)


def choose(name, value):
    box = bench.widget(name, QtWidgets.QComboBox)
    index = box.findData(value)
    box.setCurrentIndex(index)
    box.activated.emit(index)


def trouble():
    return bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()


def written(path, wait_until):
    wait_until(lambda: path.exists() and not working.is_busy(), 120)
    return path.read_bytes()


def test_the_bench_gets_its_sheet(piece, doc, pump, shot, wait_until, tmp_path):
    before, steps = property_dump(doc), doc.UndoCount
    file = open_panel(pump)
    bench.widget("HeartsideSheetJob", QtWidgets.QLineEdit).setText("Tisch <Küche>")
    target = tmp_path / "sheet.html"
    file.setText(str(target))
    pump(0.2)
    shot("sheet")
    bench.press("Write the sheet")
    assert not FreeCADGui.Control.activeDialog()  # it does not wait for the work
    text = written(target, wait_until).decode("utf-8")
    assert "Tisch &lt;Küche&gt;" in text and text.count("<tr") > 9
    assert doc.UndoCount == steps and differences(before, property_dump(doc)) == []
    assert not bench.problems()


def test_the_client_gets_a_page_as_pdf(piece, pump, wait_until, tmp_path):
    file = open_panel(pump)
    choose("HeartsideSheetReader", "client")
    choose("HeartsideSheetPaper", "letter")
    choose("HeartsideSheetUnits", "inch")
    file.setText(str(tmp_path / "page.html"))
    choose("HeartsideSheetKind", ".pdf")
    assert file.text() == str(tmp_path / "page.pdf")
    bench.press("Write the sheet")
    assert written(tmp_path / "page.pdf", wait_until).startswith(b"%PDF-")
    assert not bench.problems()


def test_a_file_that_is_there_is_replaced_only_when_told(piece, pump, wait_until, tmp_path):
    target = tmp_path / "mine.html"
    target.write_text("mine", encoding="utf-8")
    file = open_panel(pump)
    replace = bench.widget("HeartsideSheetReplace", QtWidgets.QCheckBox)
    assert not replace.isVisible()
    file.setText(str(target))
    pump(0.1)
    assert replace.isVisible() and not replace.isChecked()
    bench.press("Write the sheet")
    assert "there" in trouble() and target.read_text(encoding="utf-8") == "mine"
    replace.setChecked(True)
    bench.press("Write the sheet")
    wait_until(lambda: target.read_bytes() != b"mine" and not working.is_busy(), 120)
    assert target.read_text(encoding="utf-8").startswith("<!DOCTYPE html>")


@pytest.mark.parametrize("name", ["", "sheet.html", "sheet.docx", "missing/sheet.html"])
def test_a_file_that_cannot_be_written_is_told_before_the_work(piece, pump, tmp_path, name):
    file = open_panel(pump)
    file.setText(name if name in ("", "sheet.html") else str(tmp_path / name))
    bench.press("Write the sheet")
    assert trouble()
    assert FreeCADGui.Control.activeDialog() and not working.is_busy()
    bench.press("Cancel")


def test_cancelled_work_writes_nothing(piece, pump, tmp_path, wait_until):
    target = tmp_path / "never.html"
    open_panel(pump).setText(str(target))
    bench.press("Write the sheet")
    working.cancel_all()
    wait_until(lambda: not working.is_busy(), 60)
    pump(1.0)
    assert not target.exists()


def test_the_name_follows_form_and_reader_until_the_user_chooses_one(piece, pump, tmp_path):
    file = open_panel(pump)
    assert file.text().endswith("-sheet.html")
    choose("HeartsideSheetReader", "client")
    assert file.text().endswith("-client.html")
    choose("HeartsideSheetKind", ".pdf")
    assert file.text().endswith("-client.pdf")
    file.setText(str(tmp_path / "mine.pdf"))
    choose("HeartsideSheetReader", "bench")
    assert file.text() == str(tmp_path / "mine.pdf")
    bench.press("Cancel")
