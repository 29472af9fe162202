"""However a task panel ends, nothing of it stays: no observer, no node in the view, no second life of the panel."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.panels import stale, working
from workbench_pkg.views import watching

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

PANELS = (
    "Heartside_Tag",
    "Heartside_Year",
    "Heartside_CopyWood",
    "Heartside_Hints",
    "Heartside_Joints",
    "Heartside_GapsToday",
    "Heartside_Hold",
    "Heartside_SeeYear",
    "Heartside_Sheet",
)
NODES = ("HeartsidePointing", "HeartsideHardwarePreview", "HeartsideJointMarks")
ALWAYS = (watching._quiet, watching._busy, stale._quiet, stale._busy)  # of the session, not of a panel


@pytest.fixture
def observers(monkeypatch):
    """Those of ours that observe selection or documents at the moment."""
    there = []
    places = (
        (FreeCADGui.Selection, "addObserver", "removeObserver"),
        (FreeCAD, "addDocumentObserver", "removeDocumentObserver"),
    )
    for module, add, remove in places:
        monkeypatch.setattr(module, add, noted(getattr(module, add), there.append))
        monkeypatch.setattr(module, remove, noted(getattr(module, remove), there.remove))
    return lambda: [one for one in there if one not in ALWAYS]


def noted(real, note):
    """The same call, noted by its first argument; taking away what is not there fails."""

    def call(one, *more):
        real(one, *more)
        note(one)

    return call


@pytest.fixture
def opened(main_window, doc, pump, wait_until, observers):
    """opened(command): its panel over a tagged table, worked out, with observers at work."""
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.tag_all(doc)
    bench.select(boards[0])
    pump(0.2)

    def run(name):
        FreeCADGui.runCommand(name)
        wait_until(FreeCADGui.Control.activeDialog, 300)  # plans may still be worked out in it
        pump(0.2)
        assert observers()

    return run


def nodes(doc):
    """Names of our nodes in the views of a document."""
    from pivy import coin

    found = []
    for view in FreeCADGui.getDocument(doc.Name).mdiViewsOfType("Gui::View3DInventor"):
        for name in NODES:
            search = coin.SoSearchAction()
            search.setName(name)
            search.apply(view.getSceneGraph())
            if search.getPath() is not None:
                found.append(name)
    return found


@pytest.mark.parametrize("name", PANELS)
def test_closed_by_the_host(name, opened, observers, doc, pump):
    opened(name)
    FreeCADGui.Control.closeDialog()
    pump(0.3)
    assert observers() == [] and nodes(doc) == []
    bench.select(doc.Board2)  # whoever still listened would fail now
    pump(0.2)
    opened(name)


@pytest.mark.parametrize("name", PANELS)
def test_closed_by_its_own_button(name, opened, observers, doc, pump, wait_until):
    opened(name)
    for text in ("Cancel", "Close"):
        try:
            bench.press(text)
            break
        except AssertionError:
            continue
    wait_until(lambda: not FreeCADGui.Control.activeDialog(), 10)
    pump(0.2)
    assert observers() == [] and nodes(doc) == []


@pytest.mark.parametrize("name", PANELS)
def test_its_document_is_closed(name, opened, observers, doc, pump, wait_until):
    opened(name)
    FreeCAD.closeDocument(doc.Name)
    wait_until(lambda: not FreeCADGui.Control.activeDialog(), 10)
    pump(0.3)
    assert observers() == []
    assert not bench.problems()


@pytest.mark.parametrize("name", PANELS)
def test_another_document_is_closed(name, opened, observers, doc, pump):
    opened(name)
    before = len(observers())
    other = FreeCAD.newDocument("Another", hidden=True)
    FreeCAD.closeDocument(other.Name)
    pump(0.2)
    assert FreeCADGui.Control.activeDialog() and len(observers()) == before


@pytest.mark.parametrize("name", PANELS)
def test_refused_by_the_host(name, opened, observers, doc, pump, wait_until):
    """A macro may call a command beside an open panel, where the host refuses a second one."""
    from workbench_pkg.commands import registry

    opened("Heartside_Year")
    before = len(observers())
    (command,) = [each for module in registry.MODULES for each in module.COMMANDS if each.name == name]
    command.Activated()
    wait_until(lambda: not working.is_busy(), 300)
    pump(0.2)
    assert bench.problems()
    assert len(observers()) == before and nodes(doc) == []


def test_plans_that_are_still_worked_out_are_dropped(main_window, doc, pump, wait_until, observers):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    bench.small_table(doc)
    bench.tag_all(doc)
    FreeCADGui.runCommand("Heartside_Hold")
    assert working.is_busy("HeartsideHold")
    FreeCADGui.Control.closeDialog()
    pump(0.2)
    assert not working.is_busy("HeartsideHold") and observers() == []
    pump(1.0)
    assert not bench.problems() and nodes(doc) == []
