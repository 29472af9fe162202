"""The gaps to set today: by air and by meter, in the user's units, copied, kept on request and else nothing changed."""

from __future__ import annotations

import datetime

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from movement_core import equilibrium_moisture
from tests.gui import bench_piece as bench
from workbench_pkg.actions.year import settings_of
from workbench_pkg.demo.table import trestle_table
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.panels import working
from workbench_pkg.panels.stale import SETTLED_MS

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

MC = float(equilibrium_moisture(20.0, 50.0))
SCHEMA = "User parameter:BaseApp/Preferences/Units"


def cupboard(doc):
    """Two inset doors between posts, the right one hinged by what is not drawn."""
    from workbench_pkg.actions.tag import tag

    def box(label, size, at, colour):
        obj = doc.addObject("Part::Box", "Part")
        obj.Label = label
        obj.Length, obj.Width, obj.Height = size
        obj.Placement.Base = FreeCAD.Vector(*at)
        obj.ViewObject.ShapeColor = colour
        return obj

    dark, light = (0.62, 0.47, 0.3), (0.82, 0.68, 0.47)
    posts = [box(f"Post {i + 1}", (40, 24, 700), (x, 0, 0), dark) for i, x in enumerate((-40, 806))]
    floor = box("Floor", (886, 300, 20), (-40, 0, -20), dark)
    doors = [box(f"Door {i + 1}", (400, 20, 696), (x, 0, 2), light) for i, x in enumerate((2, 404))]
    tag(doors, species="white oak", grain="z", show="-y", cut="flat", heart="show", built=9)
    tag(posts, species="white oak", grain="z", show="-y", cut="rift", built=9)
    tag([floor], species="white oak", grain="x", show="z", cut="rift", built=9)
    doc.recompute()
    return doors


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    doors = cupboard(doc)
    bench.isometric()
    pump(0.2)
    return doors


def opened(pump, wait_until):
    FreeCADGui.runCommand("Heartside_GapsToday")
    wait_until(lambda: FreeCADGui.Control.activeDialog() and not working.is_busy(), 60)
    settled(pump, wait_until)
    bench.widget("HeartsideTodayWorks", QtWidgets.QCheckBox).setChecked(False)
    pump(0.1)
    return bench.widget("HeartsideTodayGaps", QtWidgets.QTableWidget)


@pytest.fixture
def gaps(piece, doc, pump, wait_until):
    return opened(pump, wait_until)


def settled(pump, wait_until, more=0.0):
    pump(0.5 + more)
    wait_until(lambda: not working.is_busy(), 60)
    pump(0.2)


def wood_at(rh):
    """What the panel says of wood in air of 20 °C."""
    return f"Wood at {float(equilibrium_moisture(20.0, rh)):.1f} %"


def label(name):
    return bench.widget(name, QtWidgets.QLabel).text()


def choose(name, value):
    box = bench.widget(name, QtWidgets.QComboBox)
    index = box.findData(value)
    box.setCurrentIndex(index)
    box.activated.emit(index)


def sizes(table):
    return [float(text.split()[0].replace(",", ".")) for text in bench.texts(table, 1)]


def test_drier_air_asks_for_wider_gaps_and_changes_nothing(gaps, doc, pump, wait_until, shot):
    before, steps = property_dump(doc), doc.UndoCount
    assert bench.texts(gaps) and wood_at(50) in label("HeartsideTodayMoisture")
    damp = bench.widget("HeartsideTodayDamp", QtWidgets.QDoubleSpinBox)
    first = sizes(gaps)
    shot("today-air")
    damp.setValue(30)
    settled(pump, wait_until)
    assert wood_at(30) in label("HeartsideTodayMoisture")
    assert max(sizes(gaps)) > max(first)
    bench.widget("HeartsideTodayCareful", QtWidgets.QCheckBox).setChecked(False)
    careful = sizes(gaps)
    settled(pump, wait_until)
    assert max(sizes(gaps)) < max(careful)
    gaps.selectRow(0)
    assert len(FreeCADGui.Selection.getSelectionEx()) == 2
    bench.press("Close")
    assert doc.UndoCount == steps and differences(before, property_dump(doc)) == []


def test_a_meter_is_corrected_and_its_doubt_told(gaps, pump, wait_until, shot):
    choose("HeartsideTodayBy", "meter")
    settled(pump, wait_until)
    assert "no reading" in label("HeartsideTrouble") and not bench.texts(gaps)
    assert not bench.widget("HeartsideTodayKeep", QtWidgets.QPushButton).isEnabled()
    bench.widget("HeartsideTodayReadings", QtWidgets.QLineEdit).setText("8 9,5 8.5 %")
    bench.widget("HeartsideTodaySpeciesSaid", QtWidgets.QCheckBox).setChecked(True)
    bench.widget("HeartsideTodaySpecies", QtWidgets.QDoubleSpinBox).setValue(-0.5)
    bench.widget("HeartsideTodayWoodSaid", QtWidgets.QCheckBox).setChecked(True)
    bench.widget("HeartsideTodayWood", QtWidgets.QDoubleSpinBox).setValue(10)
    settled(pump, wait_until)
    assert "Wood at 9.2 %" in label("HeartsideTodayMoisture")  # 8.67 - 0.5 + 0.5 · 11.1/5.6
    assert bench.texts(gaps) and not label("HeartsideTrouble")
    shot("today-meter")
    bench.widget("HeartsideTodayReadings", QtWidgets.QLineEdit).setText("eight")
    settled(pump, wait_until)
    assert "no reading" in label("HeartsideTrouble") and not bench.texts(gaps)
    bench.press("Close")


def test_the_day_is_kept_in_one_step_and_undone(gaps, doc, pump, wait_until):
    before, steps = property_dump(doc), doc.UndoCount
    bench.widget("HeartsideTodayKeep", QtWidgets.QPushButton).click()
    settled(pump, wait_until, SETTLED_MS / 1000)
    settings = settings_of(doc)
    assert settings.today == datetime.date.today() and settings.today_mc == pytest.approx(
        float(equilibrium_moisture(20.0, 50.0)), abs=0.01
    )
    assert doc.UndoCount == steps + 1
    bench.press("Close")
    doc.undo()
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    assert settings_of(doc).today_mc == pytest.approx(MC, abs=0.01)


def test_the_tables_are_copied_as_text_and_as_csv(gaps, pump):
    clipboard = QtWidgets.QApplication.clipboard()
    bench.widget("HeartsideTodayText", QtWidgets.QPushButton).click()
    text = clipboard.text()
    assert text.startswith("Gaps to set on") and "Wood at" in text and text.count("\n") >= gaps.rowCount() + 3
    bench.widget("HeartsideTodayCsv", QtWidgets.QPushButton).click()
    lines = clipboard.text().split("\n")
    assert lines[0].startswith("between,as drawn,set today")
    assert len([line for line in lines if line.strip()]) == gaps.rowCount() + 1
    bench.press("Close")


def test_inches_are_fractions_that_are_never_less(piece, pump, wait_until, shot):
    group = FreeCAD.ParamGet(SCHEMA)
    before = group.GetInt("UserSchema", 0)
    millimetres = sizes(opened(pump, wait_until))
    bench.press("Close")
    FreeCAD.Units.setSchema(3)
    try:
        table = opened(pump, wait_until)
        texts = bench.texts(table, 1)
        shot("today-inches")
        bench.press("Close")
    finally:
        FreeCAD.Units.setSchema(before)
    from fractions import Fraction

    for text, mm in zip(texts, millimetres):
        assert text.endswith('"')
        inches = sum(Fraction(part) for part in text.strip('"').split())
        assert (inches * 64).denominator == 1
        assert -0.1 < float(inches) * 25.4 - mm < 25.4 / 64 + 0.1


def test_screws_of_placed_hardware_are_told(main_window, doc, pump, wait_until, shot):
    from workbench_pkg.actions.hardware import place_plan

    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    trestle_table(doc, repaired=True)
    for obj in doc.Objects:  # the fasteners that the demo has already
        if obj.Label.endswith(" button"):
            obj.Visibility = False
    place_plan(doc, plan="slotted screw", kinds=("slotted screw",))
    FreeCADGui.runCommand("Heartside_GapsToday")
    wait_until(lambda: FreeCADGui.Control.activeDialog() and not working.is_busy(), 120)
    settled(pump, wait_until)
    wait_until(lambda: not working.is_busy(), 120)
    screws = bench.widget("HeartsideTodayScrews", QtWidgets.QTableWidget)
    assert screws.isVisible() and screws.rowCount() >= 4, label("HeartsideTrouble")
    shot("today-screws")
    bench.press("Close")


def test_a_failing_answer_is_told(gaps, doc, pump, wait_until, monkeypatch):
    from workbench_pkg.panels import today_panel

    def fail(*_):
        raise RuntimeError("out of paper")

    before = property_dump(doc)
    monkeypatch.setattr(today_panel, "todays", fail)
    bench.widget("HeartsideTodayDamp", QtWidgets.QDoubleSpinBox).setValue(60)
    settled(pump, wait_until)
    assert any("out of paper" in text for text in bench.problems())
    assert differences(before, property_dump(doc)) == []
    bench.press("Close")
