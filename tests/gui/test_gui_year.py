"""The year panel: choose, cancel, undo, a file of months, a bad file."""

from __future__ import annotations

import FreeCADGui
import pytest
from PySide import QtCore, QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.actions.settings import DEFAULT_YEAR
from workbench_pkg.actions.year import year_of
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects.study import find_study

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

MARITIME = "heated maritime home"


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.isometric()
    pump(0.2)
    return boards


def open_panel(pump):
    FreeCADGui.runCommand("Heartside_Year")
    pump(0.2)
    return bench.widget("HeartsideYearList", QtWidgets.QListWidget)


def choose(rows, name):
    bench.choose_text(rows, name)


def chosen(rows):
    """The text that the current row stands for."""
    return rows.currentIndex().data(QtCore.Qt.UserRole)


def test_choosing_a_year_is_one_undo_step(piece, doc, pump, shot):
    before, steps = property_dump(doc), doc.UndoCount
    rows = open_panel(pump)
    assert chosen(rows) == DEFAULT_YEAR
    choose(rows, MARITIME)
    assert "wettest" in bench.widget("HeartsideYearAbout", QtWidgets.QLabel).text()
    shot("year")
    bench.press("Take this year")
    assert year_of(doc) == MARITIME
    assert doc.UndoCount == steps + 1
    doc.undo()
    assert find_study(doc) is None
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    assert year_of(doc) == MARITIME


def test_cancel_leaves_nothing(piece, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    choose(open_panel(pump), MARITIME)
    bench.press("Cancel")
    assert differences(before, property_dump(doc)) == []
    assert doc.UndoCount == steps


def test_the_panel_comes_back_with_what_was_chosen(piece, doc, pump):
    choose(open_panel(pump), MARITIME)
    bench.press("Take this year")
    pump(0.2)
    rows = open_panel(pump)
    assert chosen(rows) == MARITIME
    steps = doc.UndoCount
    bench.press("Take this year")
    assert doc.UndoCount == steps


def test_study_stands_in_the_tree_with_its_panel_on_a_double_click(piece, doc, pump):
    choose(open_panel(pump), MARITIME)
    bench.press("Take this year")
    study = find_study(doc)
    assert study.Label == "Heartside study"
    view = study.ViewObject
    assert view.Proxy.getIcon().endswith("study.svg")
    assert view.Proxy.doubleClicked(view) is True
    pump(0.2)
    assert bench.widget("HeartsideYearPanel").isVisible()


def test_it_stands_there_again_after_a_save_without_a_window(piece, doc, pump, tmp_path):
    import zipfile

    import FreeCAD

    from workbench_pkg.objects.proxies import StudyView
    from workbench_pkg.objects.study import ensure_study

    ensure_study(doc)
    whole, half = tmp_path / "whole.FCStd", tmp_path / "half.FCStd"
    doc.saveAs(str(whole))
    FreeCAD.closeDocument(doc.Name)
    with zipfile.ZipFile(whole) as old, zipfile.ZipFile(half, "w") as new:  # what such a save leaves
        for name in old.namelist():
            if name == "Document.xml" or name.endswith(".brp"):
                new.writestr(name, old.read(name))
    again = FreeCAD.openDocument(str(half))
    pump(0.3)
    view = find_study(again).ViewObject
    assert isinstance(view.Proxy, StudyView)
    assert view.Proxy.getIcon().endswith("study.svg")
    assert view.Proxy.doubleClicked(view) is True


def test_answers_stand_below_the_study(piece, doc, pump):
    from workbench_pkg.actions.annotate import annotate
    from workbench_pkg.objects.results import results_of
    from workbench_pkg.objects.study import ensure_study

    view = ensure_study(doc).ViewObject
    assert view.Proxy.claimChildren() == []
    bench.tag_all(doc)
    annotate(doc)
    pump(0.2)
    assert view.Proxy.claimChildren() == results_of(doc)


def test_a_file_of_months(piece, doc, pump, tmp_path):
    path = tmp_path / "cellar.csv"
    rows = ["month,temperature_c,rh_percent", *(f"{m},{12 + m % 3},{60 + m}" for m in range(1, 13))]
    path.write_text("\n".join(rows), encoding="utf-8")
    open_panel(pump)
    panel_of(pump).choose(str(path))
    assert "cellar.csv" in bench.widget("HeartsideYearList", QtWidgets.QListWidget).currentIndex().data()
    bench.press("Take this year")
    assert year_of(doc) == str(path)


def test_a_place_is_found_by_its_name(piece, doc, pump):
    rows = open_panel(pump)
    bench.widget("HeartsideYearSearch", QtWidgets.QLineEdit).setText("atlan")
    (shown,) = bench.shown_texts(rows)
    bench.choose_text(rows, shown)
    bench.press("Take this year")
    assert year_of(doc).startswith("Atlanta")
    from workbench_pkg.actions.year import settings_of

    assert "Atlanta" in settings_of(doc).year.name


def test_a_bad_file_is_told_and_chooses_nothing_new(piece, doc, pump, tmp_path):
    path = tmp_path / "bad.csv"
    path.write_text("month,temperature_c,rh_percent\n1,20,140\n", encoding="utf-8")
    rows = open_panel(pump)
    count = rows.count()
    panel_of(pump).choose(str(path))
    assert bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert rows.count() == count
    bench.press("Cancel")
    assert find_study(doc) is None


def panel_of(pump):
    """The Python side of the open panel, where the file dialog, which is the system's own, would hand its answer."""
    import gc

    from workbench_pkg.panels.year_panel import YearPanel

    (panel,) = [
        each
        for each in gc.get_objects()
        if isinstance(each, YearPanel) and each.form is bench.widget("HeartsideYearPanel")
    ]
    return panel


def test_what_a_logger_leaves_open_is_answered_in_the_panel(piece, doc, pump, tmp_path, shot):
    path = tmp_path / "shed.csv"
    days = [f"{d:02}/{m:02}/2025;12:00;{62 + m};{40 + m}" for m in range(1, 10) for d in range(1, 13)]
    path.write_text("day;clock;warmth;damp\n" + "\n".join(days), encoding="utf-8")
    rows = open_panel(pump)
    panel = panel_of(pump)
    panel.choose(str(path))
    pump(0.2)
    trouble = bench.widget("HeartsideTrouble", QtWidgets.QLabel)
    assert trouble.text() and "columns" not in trouble.text() and "_" not in trouble.text()
    assert bench.widget("HeartsideLogger").isVisible()
    shot("year-logger-open")
    count = rows.count()
    bench.press("Take this year")  # nothing can be chosen yet
    assert find_study(doc) is None and bench.widget("HeartsideLogger").isVisible()

    def say(name, value):
        box = bench.widget(name, QtWidgets.QComboBox)
        box.setCurrentIndex(box.findData(value))
        box.activated.emit(box.currentIndex())

    say("HeartsideLoggerDate", "1")
    say("HeartsideLoggerTime", "2")
    say("HeartsideLoggerTemperature", "3")
    say("HeartsideLoggerHumidity", "4")
    say("HeartsideLoggerUnit", "F")
    say("HeartsideLoggerDates", "dmy")
    assert "too few logged days" in trouble.text() and "complete_with" not in trouble.text()
    say("HeartsideLoggerRest", DEFAULT_YEAR)
    assert trouble.text() == "" and rows.count() == count + 1
    shot("year-logger-answered")
    bench.press("Take this year")
    assert year_of(doc) == str(path)
    from workbench_pkg.actions.year import settings_of

    settings = settings_of(doc)
    assert settings.asked["answers"]["date_order"] == "dmy"
    assert settings.year is not None
    open_panel(pump)
    again = bench.widget("HeartsideLoggerDates", QtWidgets.QComboBox)
    assert again.isVisible() and again.currentData() == "dmy"
    steps = doc.UndoCount
    bench.press("Take this year")
    assert doc.UndoCount == steps
    doc.undo()
    assert find_study(doc) is None
