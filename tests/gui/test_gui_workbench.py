"""The workbench: found, opened from the list, with toolbar, menu and context menu; greyed where it cannot work."""

from __future__ import annotations

import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

COMMANDS = (
    "Heartside_Tag",
    "Heartside_Untag",
    "Heartside_CopyWood",
    "Heartside_Accept",
    "Heartside_Hints",
    "Heartside_Year",
    "Heartside_Report",
    "Heartside_Annotate",
    "Heartside_Remove",
    "Heartside_Joints",
    "Heartside_LayBoards",
    "Heartside_GapsToday",
    "Heartside_Hold",
    "Heartside_CutSlots",
    "Heartside_TakeHardware",
    "Heartside_SeeYear",
    "Heartside_Sheet",
    "Heartside_Template",
    "Heartside_Schedule",
    "Heartside_DrawTop",
    "Heartside_ExportCut",
    "Heartside_RemovePapers",
)


@pytest.fixture
def workbench(main_window, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    pump(0.3)
    yield FreeCADGui.activeWorkbench()
    FreeCADGui.activateWorkbench("PartWorkbench")


def test_the_host_lists_it_with_its_icon(main_window):
    listed = FreeCADGui.listWorkbenches()
    assert bench.WORKBENCH in listed
    assert listed[bench.WORKBENCH].MenuText == "Heartside"
    assert listed[bench.WORKBENCH].Icon.endswith("heartside.svg")


def test_every_command_is_known_with_text_tip_and_icon(workbench):
    import os

    for name in COMMANDS:
        command = FreeCADGui.Command.get(name)
        assert command is not None
        info = command.getInfo()
        assert info["menuText"] and info["toolTip"]
        assert os.path.exists(info["pixmap"])


def test_toolbar_and_menu_show_them_all(workbench, main_window):
    bars = [b for b in main_window.findChildren(QtWidgets.QToolBar) if b.windowTitle() == "Heartside"]
    assert len(bars) == 1 and bars[0].isVisible()
    assert len([a for a in bars[0].actions() if not a.isSeparator()]) == len(COMMANDS)
    titles = [a.text().replace("&", "") for a in main_window.menuBar().actions()]
    assert "Heartside" in titles


def test_nothing_is_offered_without_a_document(workbench, pump):
    pump(0.4)
    assert not any(FreeCADGui.Command.get(name).isActive() for name in COMMANDS)


def test_all_is_offered_with_one_but_not_beside_an_open_panel(workbench, doc, pump):
    bench.small_table(doc)
    assert all(FreeCADGui.Command.get(name).isActive() for name in COMMANDS)
    FreeCADGui.runCommand("Heartside_Tag")
    assert not any(FreeCADGui.Command.get(name).isActive() for name in COMMANDS)


def test_the_button_of_the_toolbar_opens_the_panel(workbench, doc, main_window, pump):
    (board, *_) = bench.small_table(doc)
    bench.select(board)
    pump(0.6)  # the host wakes its buttons a few times a second
    (bar,) = [b for b in main_window.findChildren(QtWidgets.QToolBar) if b.windowTitle() == "Heartside"]
    (action,) = [a for a in bar.actions() if a.text().replace("&", "").startswith("Tag wood")]
    bench.click(bar.widgetForAction(action))
    pump(0.3)
    assert bench.widget("HeartsideTagPanel").isVisible()


def test_context_menu_offers_tagging_only_where_something_is_selected(doc):
    from workbench_pkg.commands.registry import fill_context_menu

    class Taker:
        def appendContextMenu(self, name, commands):
            self.taken = commands

    taker = Taker()
    board = bench.small_table(doc)[0]
    FreeCADGui.Selection.clearSelection()
    fill_context_menu(taker, "View")
    assert "Heartside_Tag" not in taker.taken
    bench.select(board)
    fill_context_menu(taker, "View")
    assert "Heartside_Tag" in taker.taken
