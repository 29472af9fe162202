"""The window is up with nothing in the way, draws, and can be photographed."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
from PySide import QtGui

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


def test_main_window_is_up(main_window):
    assert FreeCAD.GuiUp
    assert main_window.isVisible()
    assert (main_window.width(), main_window.height()) == (1400, 900)


def test_no_box_is_in_the_way(main_window):
    assert QtWidgets.QApplication.activeModalWidget() is None


def test_profile_is_the_private_one():
    assert "/home" in FreeCAD.getUserAppDataDir()
    assert FreeCAD.ParamGet("User parameter:BaseApp/Preferences/General").GetString("AutoloadModule")


def test_packages_come_from_the_add_on_folder():
    import movement_core
    import workbench_pkg

    for package in (movement_core, workbench_pkg):
        assert package.__file__.startswith(FreeCAD.getUserAppDataDir())


def test_model_shows_in_the_view(doc, main_window, pump, shot):
    def red_dots() -> int:
        image = QtWidgets.QApplication.primaryScreen().grabWindow(0).toImage()
        points = ((x, y) for x in range(0, 1400, 5) for y in range(0, 900, 5))
        colours = (QtGui.QColor(image.pixel(x, y)) for x, y in points)
        return sum(c.red() > 1.6 * max(c.green(), c.blue(), 40) for c in colours)

    pump(0.5)
    before = red_dots()
    board = doc.addObject("Part::Box", "Board")
    board.Length, board.Width, board.Height = 600, 140, 22
    board.ViewObject.ShapeColor = (0.9, 0.1, 0.1)
    doc.recompute()
    view = FreeCADGui.ActiveDocument.ActiveView
    view.setAnimationEnabled(False)
    view.viewIsometric()
    view.fitAll()
    shot("window-with-board", settle=1.0)
    assert red_dots() > before + 1000


def test_a_box_that_nobody_answers_is_closed_and_told(main_window, modal_watch, monkeypatch):
    monkeypatch.setitem(modal_watch._look.__globals__, "MODAL_PATIENCE_S", 1)
    box = QtWidgets.QMessageBox(main_window)
    box.setText("Is anybody there?")
    (box.exec if hasattr(box, "exec") else box.exec_)()
    assert len(modal_watch.unanswered) == 1
    assert "Is anybody there?" in modal_watch.unanswered[0]
    modal_watch.unanswered.clear()
