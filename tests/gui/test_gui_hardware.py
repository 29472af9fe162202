"""The attachment panel and what it places: compared, shown, placed, cut, undone, taken out; errors; Esc and Cancel."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import Part
import pytest
from PySide import QtCore, QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.demo.table import trestle_table
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects import hardware as kept
from workbench_pkg.panels.attachment_fields import KINDS_IN_SHOP, PREFERENCES

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


@pytest.fixture(autouse=True)
def shop():
    """What the shop has, as a first user finds it."""
    group = FreeCAD.ParamGet(PREFERENCES)
    group.RemString(KINDS_IN_SHOP)
    yield group
    group.RemString(KINDS_IN_SHOP)


@pytest.fixture
def table(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    root = trestle_table(doc, repaired=True)
    for obj in doc.Objects:  # the fasteners that the demo has already
        if obj.Label.endswith(" button"):
            obj.Visibility = False
    bench.isometric()
    pump(0.3)
    return root


@pytest.fixture
def plans(table, doc, wait_until, pump):
    """The open panel, its plans worked out."""
    FreeCADGui.runCommand("Heartside_Hold")
    found = bench.widget("HeartsideHoldPlans", QtWidgets.QTableWidget)
    worked_out(wait_until, pump)
    assert found.rowCount() == 4, bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    return found


def worked_out(wait_until, pump):
    """Let a change be noticed, and its answer come."""
    from workbench_pkg.panels import working
    from workbench_pkg.panels.attachment_panel import WORK

    pump(0.5)
    wait_until(lambda: not working.is_busy(WORK), 60)
    pump(0.2)


def named(doc, label):
    (obj,) = [o for o in doc.Objects if o.Label == label]
    return obj


def look_from(direction, box=None):
    """Look along a direction at a box, or at everything."""
    from workbench_pkg.views.zooming import zoom_to

    view = FreeCADGui.ActiveDocument.ActiveView
    view.setAnimationEnabled(False)
    away = FreeCAD.Vector(*direction).negative()
    side = FreeCAD.Vector(0, 0, 1).cross(away)
    turn = FreeCAD.Rotation(side, FreeCAD.Vector(0, 0, 1), away, "ZXY")
    view.setCameraOrientation(turn.Q)
    view.fitAll()
    if box is not None:
        name = FreeCAD.ActiveDocument.Name
        zoom_to(name, (box.XMin, box.YMin, box.ZMin), (box.XMax, box.YMax, box.ZMax))


FROM_BELOW = (0.55, 0.75, 0.5)
RAILS = ("Bearer 1", "Bearer 2")


def with_room(window):
    """The panel as wide as a maker would draw it, and nothing along the lower edge."""
    for dock in window.findChildren(QtWidgets.QDockWidget):
        if dock.objectName() in ("Combo View", "Model"):
            window.resizeDocks([dock], [430], QtCore.Qt.Horizontal)
        elif dock.isVisible() and dock.objectName() != "Tasks":
            dock.hide()


def apart_from_state(before, after):
    return [line for line in differences(before, after) if ".state: " not in line]


# ---- the panel --------------------------------------------------------------------------------------------


def test_plans_stand_side_by_side_and_nothing_is_written(plans, doc, shot, main_window):
    before, steps = property_dump(doc), doc.UndoCount
    names = bench.texts(plans)
    assert {"Buttons", "Clips", "Figure-eights", "Slotted screws"} == set(names)
    flat = bench.texts(plans, 2)[0]
    assert "mm" in flat and "," in flat
    assert "/" in bench.texts(plans, 3)[0]
    words = bench.widget("HeartsideHoldWords", QtWidgets.QTextBrowser).toPlainText()
    assert "holds the top flat" in words and "lifting points" in words and "local codes" in words
    look_from(FROM_BELOW)
    with_room(main_window)
    shot("hold-panel", settle=1.0)
    plans.selectRow(bench.texts(plans).index("Figure-eights"))
    area = bench.widget("HeartsideHoldPanel").parentWidget()
    while area is not None and not isinstance(area, QtWidgets.QScrollArea):
        area = area.parentWidget()
    if area is not None:
        area.verticalScrollBar().setValue(area.verticalScrollBar().maximum())
    shot("hold-panel-words")
    rails = bench.texts(bench.widget("HeartsideHoldRails", QtWidgets.QListWidget))
    assert len(rails) == 4 and any(text.startswith("Bearer 1") for text in rails)
    assert differences(before, property_dump(doc)) == [] and doc.UndoCount == steps


def test_a_plan_that_does_not_hold_says_why(plans):
    plans.selectRow(bench.texts(plans).index("Figure-eights"))
    words = bench.widget("HeartsideHoldWords", QtWidgets.QTextBrowser).toPlainText()
    assert "does not hold" in words and words.count("450 mm") == 1


def test_the_chosen_plan_is_drawn_in_the_view_and_goes_with_the_panel(plans, doc, pump):
    graph = FreeCADGui.ActiveDocument.ActiveView.getSceneGraph()
    names = [graph.getChild(i).getName().getString() for i in range(graph.getNumChildren())]
    assert names.count("HeartsideHardwarePreview") == 1
    bench.press("Cancel")
    pump(0.2)
    names = [graph.getChild(i).getName().getString() for i in range(graph.getNumChildren())]
    assert "HeartsideHardwarePreview" not in names


@pytest.mark.parametrize("way", ["Cancel", "Esc"])
def test_leaving_without_ok_leaves_nothing(plans, doc, pump, way):
    before, steps = property_dump(doc), doc.UndoCount
    if way == "Esc":
        target = bench.widget("HeartsideHoldPanel")
        press = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, QtCore.Qt.Key_Escape, QtCore.Qt.NoModifier)
        QtWidgets.QApplication.sendEvent(target, press)
    else:
        bench.press("Cancel")
    pump(0.3)
    assert not FreeCADGui.Control.activeDialog()
    assert differences(before, property_dump(doc)) == [] and doc.UndoCount == steps


def test_the_kinds_of_the_shop_are_kept(plans, wait_until, pump, shop):
    for name in ("HeartsideKindButton", "HeartsideKindClip", "HeartsideKindFigureEight"):
        bench.widget(name, QtWidgets.QCheckBox).click()
    worked_out(wait_until, pump)
    assert bench.texts(plans) == ["Slotted screws"]
    assert shop.GetString(KINDS_IN_SHOP) == "slotted screw"
    bench.press("Cancel")
    pump(0.2)
    FreeCADGui.runCommand("Heartside_Hold")
    again = bench.widget("HeartsideHoldPlans", QtWidgets.QTableWidget)
    worked_out(wait_until, pump)
    assert bench.texts(again) == ["Slotted screws"]
    bench.widget("HeartsideKindSlottedScrew", QtWidgets.QCheckBox).click()
    worked_out(wait_until, pump)
    assert "Tick at least one" in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    bench.press("Place")
    assert FreeCADGui.Control.activeDialog()  # there is nothing to place


def test_rails_pointed_at_in_the_view_are_the_frame(plans, doc, wait_until, pump):
    bench.select(named(doc, "Bearer 1"), named(doc, "Bearer 2"))
    worked_out(wait_until, pump)
    from workbench_pkg.actions import hardware as action

    assert set(action._last.wish.rails) == {"Bearer 1", "Bearer 2"}
    used = {p.rail for plan in action._last.plans.plans for p in plan.placed}
    assert used <= {"Bearer 1", "Bearer 2"}


def test_flatness_follows_the_units_of_the_host(plans, wait_until, pump):
    from workbench_pkg.actions import hardware as action

    box = bench.widget("HeartsideHoldFlatness")
    box.setProperty("rawValue", 3.0)
    worked_out(wait_until, pump)
    assert action._last.wish.flatness_mm == 3.0


def test_a_document_without_a_top_says_so(main_window, doc, pump, wait_until):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    leg = doc.addObject("Part::Box", "Leg")
    leg.Length, leg.Width, leg.Height = 60, 60, 700
    doc.recompute()
    FreeCADGui.runCommand("Heartside_Hold")
    worked_out(wait_until, pump)
    assert "there is no top" in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    bench.press("Place")
    assert FreeCADGui.Control.activeDialog() and kept.root_of(doc) is None


def test_a_top_of_which_something_is_not_said_tells_what(main_window, doc, pump, wait_until):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    trestle_table(doc, repaired=False)
    FreeCADGui.runCommand("Heartside_Hold")
    worked_out(wait_until, pump)
    words = bench.widget("HeartsideHoldWords", QtWidgets.QTextBrowser).toPlainText()
    assert "Top board 6" in words and "moisture" in words
    bench.press("Place")
    assert FreeCADGui.Control.activeDialog() and kept.root_of(doc) is None


# ---- placed, cut, taken out -------------------------------------------------------------------------------


def test_click_to_result_undo_redo_take_out(plans, doc, pump, shot, main_window):
    before, steps = property_dump(doc), doc.UndoCount
    plans.selectRow(bench.texts(plans).index("Buttons"))
    pump(0.2)
    bench.press("Place")
    pump(0.3)
    assert not FreeCADGui.Control.activeDialog() and bench.problems() == []
    assert doc.UndoCount == steps + 1
    (group,) = kept.placed_tops(doc)
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(group.Group[0])
    assert group.HeartsidePlan == "button" and group.HeartsideHolds
    with_room(main_window)
    look_from(FROM_BELOW)
    shot("hardware-placed", settle=1.0)
    near = FreeCAD.BoundBox()
    for obj in group.Group:
        if obj.TypeId == "Part::Feature" and obj.HeartsideRail == "Bearer 2":
            near.add(obj.Shape.BoundBox)
    look_from(FROM_BELOW, near)
    shot("hardware-near", settle=0.6)
    doc.undo()
    pump(0.2)
    assert apart_from_state(before, property_dump(doc)) == []
    doc.redo()
    pump(0.2)
    assert kept.root_of(doc) is not None
    placed = property_dump(doc)
    FreeCADGui.runCommand("Heartside_CutSlots")
    pump(0.5)
    assert doc.UndoCount == steps + 2
    assert {"Bearer 1", "Bearer 2"} <= {c.Label.removesuffix(" with slots") for c in kept.cuts_of(doc)}
    bench.problems()
    shot("slots-cut", settle=1.0)
    doc.undo()
    pump(0.2)
    assert apart_from_state(placed, property_dump(doc)) == []
    doc.redo()
    pump(0.2)
    FreeCADGui.runCommand("Heartside_TakeHardware")
    pump(0.3)
    assert apart_from_state(before, property_dump(doc)) == []


@pytest.mark.parametrize("kind", ["slotted screw", "button", "clip"])
def test_a_section_through_a_fastener(table, doc, pump, shot, main_window, kind):
    """The piece is cut through the middle of a fastener, along the way that the top moves."""
    from workbench_pkg.actions.cutting import cut_slots
    from workbench_pkg.actions.hardware import place_plan
    from workbench_pkg.host.leaves import read_leaves

    place_plan(doc, plan=kind, kinds=[kind], flatness_mm=4.0, rails=RAILS)
    report = cut_slots(doc)
    assert report.cut
    (group,) = kept.placed_tops(doc)
    markers = [o for o in group.Group if o.TypeId == "Part::Feature"]
    marker = markers[0]
    cuts = [b for b in kept.cut_bodies(doc) if b.HeartsideNumber == marker.HeartsideNumber]
    frame = next(c for c in cuts or kept.cut_bodies(doc) if c.HeartsidePurpose == "hole").Placement
    across, up = (frame.Rotation.multVec(FreeCAD.Vector(*axis)) for axis in ((0, 1, 0), (0, 0, 1)))
    along = frame.Rotation.multVec(FreeCAD.Vector(1, 0, 0))
    through = along if kind == "slotted screw" else across
    centre = marker.Shape.BoundBox.Center
    half = Part.makeBox(400, 400, 400, FreeCAD.Vector(-200, -200, 0))
    half.Placement = FreeCAD.Placement(centre, FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), through))
    pieces = [(leaf.name, leaf.global_solid(), None) for leaf in read_leaves(doc).leaves]
    pieces += [(o.Label, o.Shape, o.ViewObject.ShapeColor) for o in markers[:1]]
    other = FreeCAD.newDocument("Section")
    for name, solid, colour in pieces:
        if solid.BoundBox.intersect(half.BoundBox):
            kept_half = solid.common(half)
            if kept_half.Volume > 1:
                obj = other.addObject("Part::Feature", "Half")
                obj.Label, obj.Shape = name, kept_half
                obj.ViewObject.ShapeColor = colour or (
                    (0.80, 0.63, 0.42) if "oard" in name else (0.70, 0.50, 0.30)
                )
    with_room(main_window)
    pump(0.3)
    look_from(tuple(through), marker.Shape.BoundBox)
    FreeCADGui.ActiveDocument.ActiveView.getCameraNode().height = 110.0
    shot(f"section-{kind.replace(' ', '-')}", settle=0.8)
    assert up.z > 0.99


def test_cutting_without_hardware_is_told(table, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    FreeCADGui.runCommand("Heartside_CutSlots")
    pump(0.2)
    assert "no hardware is placed" in bench.problems()[0]
    FreeCADGui.runCommand("Heartside_TakeHardware")
    assert differences(before, property_dump(doc)) == [] and doc.UndoCount == steps


def test_an_error_while_placing_stays_in_the_panel_and_leaves_nothing(plans, doc, pump, monkeypatch):
    def fail(*_):
        raise RuntimeError("the screw box is empty")

    monkeypatch.setattr(kept, "write_hardware", fail)
    before, steps = property_dump(doc), doc.UndoCount
    bench.press("Place")
    pump(0.2)
    assert "the screw box is empty" in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert FreeCADGui.Control.activeDialog()
    assert differences(before, property_dump(doc)) == [] and doc.UndoCount == steps


def test_clicks_are_recorded_as_lines_that_run_by_themselves(plans, doc, pump, monkeypatch):
    lines = []
    true = FreeCADGui.doCommand

    def note(line):
        lines.append(line)
        true(line)

    monkeypatch.setattr(FreeCADGui, "doCommand", note)
    bench.press("Place")
    FreeCADGui.runCommand("Heartside_CutSlots")
    FreeCADGui.runCommand("Heartside_TakeHardware")
    bench.problems()
    assert any("place_plan(" in line for line in lines) and any("cut_slots(" in line for line in lines)
    names = {"FreeCAD": FreeCAD}
    for line in lines[:4]:
        exec(line, names)
    assert kept.cuts_of(doc)
    for line in lines[4:]:
        exec(line, names)
    assert kept.root_of(doc) is None
