"""The panel that shows the year in the model, as tests open it, and what they look at."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import numpy as np
import pytest

from tests.gui import bench_piece as bench

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = None
if QtWidgets is None:
    from PySide import QtGui as QtWidgets


def find(name):
    return FreeCADGui.getMainWindow().findChild(QtWidgets.QWidget, name)


@pytest.fixture(scope="session")
def demo(tmp_path_factory):
    """The demo models as files."""
    from workbench_pkg.demo.build import build_demo

    return {path.stem: path for path in build_demo(tmp_path_factory.mktemp("demo"))}


@pytest.fixture
def opened(monkeypatch):
    """opened(): the panel that the command opens, once it is there."""
    from workbench_pkg.panels import season_panel

    return bench.kept_panels(monkeypatch, season_panel, "SeasonPanel")


@pytest.fixture
def see(opened, main_window, wait_until, pump):
    """see(): run the command and give the panel."""

    def run():
        count = len(opened)
        FreeCADGui.activateWorkbench(bench.WORKBENCH)
        pump(0.1)
        FreeCADGui.runCommand("Heartside_SeeYear")
        wait_until(lambda: len(opened) > count, 60)
        pump(0.2)
        return opened[-1]

    return run


@pytest.fixture
def table(doc, main_window):
    """A tagged table of nine parts, every board bending."""
    from workbench_pkg.actions.tag import tag

    boards = bench.small_table(doc)
    bench.tag_all(doc)
    for number, board in enumerate(boards):
        tag([board], pith=(10.0 * number, 70.0))
    bench.isometric()
    return doc


def everything_gone(panel):
    """Whether no view shows anything of ours and every part is drawn again."""
    from workbench_pkg.views.zooming import views_of

    left = [
        view
        for view in views_of(panel.scene.name)
        for node in (panel.scene.root, panel.scene.reach.root)
        if view.getSceneGraph().findChild(node) >= 0
    ]
    doc = FreeCAD.listDocuments().get(panel.scene.name)
    hidden = [
        obj.Name
        for obj in (doc.Objects if doc else ())
        for i in range(obj.ViewObject.RootNode.getNumChildren())
        if obj.ViewObject.RootNode.getChild(i).getName().getString() == "HeartsideUnseen"
    ]
    return not left and not hidden and not FreeCADGui.Control.activeDialog()


def picture(path):
    """A picture of the active view, as an image."""
    view = FreeCADGui.ActiveDocument.ActiveView
    view.saveImage(str(path), 500, 380, "White")
    return bench.QtGui.QImage(str(path))


def different(one, other):
    """Share of points on a grid at which two pictures differ."""
    points = [(x, y) for x in range(0, one.width(), 4) for y in range(0, one.height(), 4)]
    return sum(one.pixel(*point) != other.pixel(*point) for point in points) / len(points)


def vectors_of(vectors):
    """(N, 3) what a field of the scene holds, read by the scene's own words."""
    return np.array([vectors.field[i].getValue() for i in range(vectors.field.getNum())])
