"""Joints, laid boards and today's gaps in German: nothing of ours in English, nothing cut off."""

from __future__ import annotations

import FreeCADGui
from PySide import QtGui

from tests.gui import bench_piece as bench
from tests.gui.test_gui_german import clipped, english_in, german, piece
from workbench_pkg.panels import working

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

__all__ = ["german", "piece"]


def opened(command, name, pump, wait_until):
    FreeCADGui.runCommand(command)
    wait_until(lambda: not working.is_busy(), 60)
    pump(0.8)
    wait_until(lambda: not working.is_busy(), 60)
    return bench.widget(name)


def test_joints(piece, pump, wait_until, shot):
    panel = opened("Heartside_Joints", "HeartsideJointsPanel", pump, wait_until)
    bench.widget("HeartsideJointsTable", QtWidgets.QTableWidget).selectRow(0)
    pump(0.3)
    assert english_in(panel) == []
    shot("german-joints")
    assert clipped(panel) == []
    FreeCADGui.Control.closeDialog()


def test_gaps_today(piece, pump, wait_until, shot):
    panel = opened("Heartside_GapsToday", "HeartsideTodayPanel", pump, wait_until)
    assert english_in(panel) == []
    assert clipped(panel) == []
    shot("german-today")
    FreeCADGui.Control.closeDialog()


def test_laid_boards(piece, pump, wait_until, shot):
    from workbench_pkg.actions.tag import tag

    for number, board in enumerate(piece):
        tag([board], cut=None, heart=None, pith=(5 * number, -60 - 5 * number))
    panel = opened("Heartside_LayBoards", "HeartsideArrangement", pump, wait_until)
    panel.view.flipped(1)
    assert english_in(panel) == []
    assert clipped(panel) == []
    shot("german-lay-boards")
    panel.close()
