"""The first walk of a new user: from an untagged STEP table to a placed plan of what holds its top, click by click.

The table is the demo's, our own invention, without what was said of its wood and without its fasteners. Every click on
a widget or in the view is made and counted; those in the host's own dialogs, which differ, are counted as a user would
make them. A click is reckoned at five seconds, reading and looking included (own judgement); waiting is measured.
"""

from __future__ import annotations

import time

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtCore, QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.panels.attachment_fields import KINDS_IN_SHOP, PREFERENCES

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

MOST_CLICKS, MOST_S, CLICK_S = 40, 300, 5


class Hand:
    """A user's hand that counts."""

    def __init__(self, pump):
        self.clicks, self.typed, self.pump = 0, 0, pump

    def elsewhere(self, clicks):
        """Clicks in the host's own dialogs and lists."""
        self.clicks += clicks

    def tool(self, name):
        """A button of our toolbar, by the command behind it."""
        text = FreeCADGui.Command.get(name).getInfo()["menuText"].replace("&", "")
        (bar,) = [
            b
            for b in FreeCADGui.getMainWindow().findChildren(QtWidgets.QToolBar)
            if b.windowTitle() == "Heartside"
        ]
        (action,) = [a for a in bar.actions() if a.text().replace("&", "") == text]
        self.pump(0.6)  # the host wakes its buttons a few times a second
        assert action.isEnabled()
        bench.click(bar.widgetForAction(action))
        self.clicks += 1
        self.pump(0.3)

    def press(self, name):
        """A button or a tick of a panel."""
        button = bench.widget(name, QtWidgets.QAbstractButton)
        assert button.isEnabled() and button.isVisible()
        button.click()
        self.clicks += 1
        self.pump(0.2)

    def close(self, text):
        """One of the two buttons of the panel."""
        bench.press(text)
        self.clicks += 1
        self.pump(0.3)

    def type(self, name, text):
        """Into a line, which takes a click first."""
        bench.widget(name, QtWidgets.QLineEdit).setText(text)
        self.clicks += 1
        self.typed += len(text)
        self.pump(0.1)

    def row(self, name, text):
        """A row of a list."""
        bench.choose_text(bench.widget(name, QtWidgets.QAbstractItemView), text)
        self.clicks += 1
        self.pump(0.1)

    def choose(self, name, value):
        """An entry of a box that opens downwards."""
        combo = bench.widget(name, QtWidgets.QComboBox)
        assert combo.isVisible() and combo.isEnabled()
        at = combo.findData(value)
        combo.setCurrentIndex(at)
        combo.activated.emit(at)
        self.clicks += 2
        self.pump(0.2)

    def point(self, place, add=False):
        """A click in the view, with Ctrl to add to what is selected."""
        port = FreeCADGui.ActiveDocument.ActiveView.graphicsView().viewport()
        keys = QtCore.Qt.ControlModifier if add else QtCore.Qt.NoModifier
        kinds = (
            QtCore.QEvent.MouseMove,
            QtCore.QEvent.MouseButtonPress,
            QtCore.QEvent.MouseButtonRelease,
        )
        for kind in kinds:
            held = QtCore.Qt.LeftButton if kind == QtCore.QEvent.MouseButtonPress else QtCore.Qt.NoButton
            button = QtCore.Qt.NoButton if kind == QtCore.QEvent.MouseMove else QtCore.Qt.LeftButton
            on_screen = QtCore.QPointF(port.mapToGlobal(place.toPoint()))
            event = QtGui.QMouseEvent(kind, place, on_screen, button, held, keys)
            QtWidgets.QApplication.sendEvent(port, event)
            self.pump(0.15)
        self.clicks += 1


def pixel_of(point):
    from types import SimpleNamespace

    from workbench_pkg.views.screen import screen_of

    view = FreeCADGui.ActiveDocument.ActiveView
    port = view.graphicsView().viewport()
    size = (port.width(), port.height())
    screen = screen_of(SimpleNamespace(getSize=lambda: size, getCameraNode=view.getCameraNode))
    (place,), _ = screen.pixels(np.asarray(point, dtype=float)[None])
    return QtCore.QPointF(place[0], size[1] - place[1])


def look_from_below():
    view = FreeCADGui.ActiveDocument.ActiveView
    away = FreeCAD.Vector(-0.55, -0.75, -0.6).normalize()
    view.setCameraOrientation(
        FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1).cross(away), FreeCAD.Vector(0, 0, 1), away, "ZXY").Q
    )
    view.fitAll()


@pytest.fixture
def step(main_window, tmp_path):
    """The untagged table as a STEP file from elsewhere."""
    import Import

    from movement_core.piece.tag_sources import without_tag
    from workbench_pkg.demo.table import trestle_table
    from workbench_pkg.host.leaves import read_leaves

    whole, plain = FreeCAD.newDocument("Whole"), FreeCAD.newDocument("Plain")
    trestle_table(whole, True)
    for leaf in read_leaves(whole).leaves:
        if not {"button", "peg"} & set(leaf.name.lower().split()):
            part = plain.addObject("Part::Feature", "Part")
            part.Label, part.Shape = without_tag(leaf.name), leaf.global_solid()
    plain.recompute()
    path = tmp_path / "table.step"
    Import.export(plain.Objects, str(path))
    for doc in (whole, plain):
        FreeCAD.closeDocument(doc.Name)
    return path


@pytest.fixture
def opened(step):
    """The document that the host makes of it; closed without asking."""
    import ImportGui

    ImportGui.open(str(step))
    doc = FreeCAD.ActiveDocument
    yield doc
    if doc.Name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(doc.Name)


def top_boards(doc):
    """Where a user sees the boards of the top: the middle of each upper face, from the back to the front."""
    from workbench_pkg.host.leaves import read_leaves

    boxes = [leaf.global_solid().BoundBox for leaf in read_leaves(doc).leaves]
    top = max(box.ZMax for box in boxes)
    boards = [box for box in boxes if abs(box.ZMax - top) < 1e-3 and box.ZLength < 50]
    return [(box.Center.x + 40, box.Center.y, top) for box in sorted(boards, key=lambda b: b.Center.y)]


def test_from_an_untagged_step_table_to_a_placed_plan(opened, pump, wait_until, shot):
    from workbench_pkg.actions.reading import read_piece
    from workbench_pkg.objects import hardware as kept
    from workbench_pkg.panels import working
    from workbench_pkg.panels.attachment_panel import WORK

    FreeCAD.ParamGet(PREFERENCES).RemString(KINDS_IN_SHOP)
    doc, hand = opened, Hand(pump)
    began = time.monotonic()
    hand.elsewhere(4)  # Open, the file, Open, and the import's own question
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    hand.elsewhere(2)  # the list of workbenches, Heartside
    bench.isometric()
    hand.elsewhere(2)  # isometric, fit all

    hand.tool("Heartside_Tag")
    assert "of 20" in bench.widget("HeartsideOpenCount", QtWidgets.QLabel).text()
    assert not any(part.species.known for part in read_piece(doc).parts)
    hand.press("HeartsideOpenAll")
    if bench.widget("HeartsideTakeApart").isVisible():  # the host of 0.20 reads all solids into one object
        hand.press("HeartsideTakeApart")
        hand.press("HeartsideOpenAll")
    hand.type("HeartsideSpeciesSearch", "white oak")
    hand.row("HeartsideSpeciesList", "White oak, commercial")
    hand.press("HeartsideBuiltSaid")
    hand.choose("HeartsideCut", "rift")
    shot("walk-1-all-parts")
    hand.press("HeartsideWriteNext")
    assert "Nothing is left" in bench.widget("HeartsideOpenCount", QtWidgets.QLabel).text()

    places = top_boards(doc)
    assert len(places) == 7
    for number, place in enumerate(places):
        hand.point(pixel_of(place), add=number > 0)
    pump(0.3)
    assert "7 boards" in bench.widget("HeartsideParts", QtWidgets.QLabel).text()
    hand.choose("HeartsideCut", "flat")
    hand.choose("HeartsideHeart", "show")
    pump(0.2)
    shot("walk-2-top-boards")
    hand.close("Write the tags")

    hand.tool("Heartside_Hold")
    wait_until(lambda: not working.is_busy(WORK), 120)
    pump(0.5)
    plans = bench.widget("HeartsideHoldPlans", QtWidgets.QTableWidget)
    trouble = bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert plans.rowCount() >= 3, trouble
    shot("walk-3-plans")
    hand.close("Place")
    wait_until(lambda: not working.is_busy(WORK), 60)
    pump(0.3)
    assert not FreeCADGui.Control.activeDialog()
    (group,) = kept.placed_tops(doc)
    assert len(group.Group) > 4
    waited = time.monotonic() - began
    FreeCADGui.Selection.clearSelection()
    look_from_below()
    hand.elsewhere(1)  # a view that shows the underside
    shot("walk-4-placed")
    print(f"walk: {hand.clicks} clicks, {hand.typed} letters typed, {waited:.1f} s waited")
    assert hand.clicks <= MOST_CLICKS
    assert waited + CLICK_S * hand.clicks < MOST_S
