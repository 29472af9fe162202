"""Every task panel fits a narrow dock, in English and in German: nothing reaches past its edge, no words are cut."""

from __future__ import annotations

import FreeCADGui
import pytest
from PySide import QtCore

from tests.gui import bench_piece as bench
from tests.gui.test_gui_german import clipped
from workbench_pkg.panels import working

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = None
if QtWidgets is None:
    from PySide import QtGui as QtWidgets

DOCK = 280  # pixels, as the host gives it at first
ROOM = 235  # less scroll bar and frames
NO_PANEL = {
    *("Separator", "Accept", "Untag", "Annotate", "Remove", "CutSlots", "TakeHardware", "Report"),
    *("Template", "Schedule", "DrawTop", "ExportCut", "RemovePapers"),
}


@pytest.fixture(params=["English", "German"])
def language(request, main_window, pump):
    before = FreeCADGui.getLocale()
    FreeCADGui.setLocale(request.param)
    pump(0.2)
    yield request.param
    FreeCADGui.setLocale(before if before in FreeCADGui.supportedLocales() else "English")
    pump(0.2)


def forms():
    """The forms in the task panel that can be seen: ours are named so, and stand in a scroll area of the host's."""
    window = FreeCADGui.getMainWindow()
    return [
        each
        for each in window.findChildren(QtWidgets.QWidget, QtCore.QRegularExpression("^Heartside.*Panel$"))
        if each.isVisible()
    ]


def asks_for(form):
    """The least width of a form, and which of its widgets ask for most."""
    widest = sorted(
        ((each.minimumSizeHint().width(), each.objectName() or type(each).__name__, told(each))
         for each in form.findChildren(QtWidgets.QWidget) if is_there(each) and each.isVisibleTo(form)),
        reverse=True,
    )  # fmt: skip
    return form.minimumSizeHint().width(), widest[:5]


def is_there(widget):
    """The binding may hand out the Python side of a widget that is gone, where another was made at its address."""
    try:
        return widget.objectName() is not None
    except RuntimeError:
        return False


def told(widget):
    return str(widget.text())[:40] if hasattr(widget, "text") and callable(widget.text) else ""


def test_every_panel_fits_a_narrow_dock(language, doc, main_window, pump, wait_until, shot):
    from workbench_pkg.commands import registry

    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.tag_all(doc)
    bench.isometric()
    pump(0.3)
    docks = [each for each in main_window.findChildren(QtWidgets.QDockWidget) if each.isVisible()]
    main_window.resizeDocks(docks, [DOCK] * len(docks), QtCore.Qt.Horizontal)
    wide, cut, opened = {}, {}, []
    for name in registry.order():
        if name.partition("_")[2] in NO_PANEL or name in NO_PANEL:
            continue
        bench.select(boards[0])
        FreeCADGui.runCommand(name)
        pump(0.3)
        wait_until(lambda: not working.is_busy(), 60)
        pump(0.4)
        if not FreeCADGui.Control.activeDialog():
            continue
        opened.append(name)
        for form in forms():
            least, widest = asks_for(form)
            if least > ROOM:
                wide[name, form.objectName()] = (least, widest)
            if found := clipped(form):
                cut[name, form.objectName()] = found
        shot(f"narrow-{language}-{name}", settle=0.1)
        FreeCADGui.Control.closeDialog()
        pump(0.2)
    assert len(opened) >= 6, opened
    assert wide == {}, "\n".join(f"{where}: {found}" for where, found in wide.items())
    assert cut == {}, "\n".join(f"{where}: {found}" for where, found in cut.items())
