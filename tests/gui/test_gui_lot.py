"""The lot of boards in the tag panel: entered, chosen again, copied, undone."""

from __future__ import annotations

import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


@pytest.fixture
def boards(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    found = bench.small_table(doc)
    bench.isometric()
    pump(0.2)
    return found


@pytest.fixture
def run(pump):
    def start(name):
        FreeCADGui.runCommand(name)
        pump(0.3)

    return start


def field():
    return bench.widget("HeartsideLot", QtWidgets.QComboBox)


def test_a_lot_is_entered_undone_and_offered_to_the_next_board(boards, run, doc, pump, shot):
    before, steps = property_dump(doc), doc.UndoCount
    bench.select(boards[0], boards[1])
    run("Heartside_Tag")
    bench.widget("HeartsideFoldMore", QtWidgets.QToolButton).click()
    field().setEditText("plank 7")
    pump(0.1)
    assert field().toolTip() and field().whatsThis()
    area = field()
    while not isinstance(area, QtWidgets.QScrollArea):
        area = area.parentWidget()
    area.ensureWidgetVisible(field())
    shot("lot")
    bench.press("Write the tags")
    pump(0.2)
    assert [board.HeartsideLot for board in boards[:2]] == ["plank 7"] * 2
    assert doc.UndoCount == steps + 1
    doc.undo()
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    bench.select(boards[2])
    run("Heartside_Tag")
    assert field().findData("plank 7") >= 0 and field().currentData() == ""
    bench.select(boards[0])
    pump(0.3)
    assert field().currentText() == "plank 7"
    bench.select(boards[0], boards[2])
    pump(0.3)
    assert field().currentData() == "mixed"
    bench.press("Write the tags")
    assert not getattr(boards[2], "HeartsideLot", "")


def test_a_lot_is_taken_back(boards, run, doc, pump):
    from workbench_pkg.actions.tag import tag

    tag(boards[:1], lot="plank 7")
    bench.select(boards[0])
    run("Heartside_Tag")
    field().setCurrentIndex(field().findData(""))
    bench.press("Write the tags")
    assert not getattr(boards[0], "HeartsideLot", "")


def test_copying_wood_takes_the_lot(boards, run, doc, pump):
    from workbench_pkg.actions.tag import tag

    tag(boards[:1], species="white oak", lot="plank 7")
    bench.select(boards[0])
    run("Heartside_CopyWood")
    assert "lot plank 7" in bench.widget("HeartsideCopySays", QtWidgets.QLabel).text()
    bench.select(boards[1])
    pump(0.3)
    bench.press("Copy the wood")
    pump(0.2)
    assert boards[1].HeartsideLot == "plank 7"
