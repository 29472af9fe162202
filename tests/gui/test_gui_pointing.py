"""Saying how a board lies by pointing: true clicks and drags over the 3D view, rings drawn live, nothing left."""

from __future__ import annotations

import itertools
import json

import FreeCAD
import FreeCADGui
import numpy as np
import pytest
from PySide import QtCore, QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

OAK = "White oak, commercial"


@pytest.fixture
def kept(monkeypatch):
    """The panels that the command opens."""
    from workbench_pkg.panels import tag_panel

    return bench.kept_panels(monkeypatch, tag_panel, "TagPanel")


@pytest.fixture
def board(main_window, doc, pump):
    """One board in a turned container, its grain along the object's y, seen from the end."""
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    box = doc.addObject("Part::Box", "Board")
    box.Length, box.Width, box.Height = 120, 600, 30
    part = doc.addObject("App::Part", "Frame")
    part.addObject(box)
    part.Placement = FreeCAD.Placement(
        FreeCAD.Vector(500, 200, 700), FreeCAD.Rotation(FreeCAD.Vector(0.3, -1, 2), 40)
    )
    doc.recompute()
    from workbench_pkg.actions.tag import tag

    tag([box], species="white oak", grain="y", show="z")
    bench.isometric()
    bench.select(box)  # unfolds the tree, which the host counts as a change of state
    pump(0.3)
    return box


def open_panel(kept, pump, *objects):
    bench.select(*objects)
    FreeCADGui.runCommand("Heartside_Tag")
    pump(0.3)
    return kept[-1]


def button(name):
    return bench.widget(f"HeartsidePoint_{name}", QtWidgets.QPushButton)


def the_part(panel):
    (leaf,) = panel.chosen.leaves
    return panel.pointing.part, leaf


def viewport():
    return FreeCADGui.ActiveDocument.ActiveView.graphicsView().viewport()


def pixel_of(point):
    """Where a point of the model is drawn, by the host's own projection: widget pixels, y downwards."""
    from types import SimpleNamespace

    from workbench_pkg.views.screen import screen_of

    view, port = FreeCADGui.ActiveDocument.ActiveView, viewport()
    size = (port.width(), port.height())
    screen = screen_of(SimpleNamespace(getSize=lambda: size, getCameraNode=view.getCameraNode))
    (place,), _ = screen.pixels(np.asarray(point, dtype=float)[None])
    return QtCore.QPointF(place[0], size[1] - place[1])


def mouse(kind, place):
    port = viewport()
    is_move = kind == QtCore.QEvent.MouseMove
    held = QtCore.Qt.NoButton if kind == QtCore.QEvent.MouseButtonRelease else QtCore.Qt.LeftButton
    event = QtGui.QMouseEvent(
        kind,
        place,
        QtCore.QPointF(port.mapToGlobal(place.toPoint())),
        QtCore.Qt.NoButton if is_move else QtCore.Qt.LeftButton,
        held,
        QtCore.Qt.NoModifier,
    )
    QtWidgets.QApplication.sendEvent(port, event)


def click(point):
    mouse(QtCore.QEvent.MouseButtonPress, pixel_of(point))
    mouse(QtCore.QEvent.MouseButtonRelease, pixel_of(point))


def drag(start, *places):
    mouse(QtCore.QEvent.MouseButtonPress, pixel_of(start))
    for place in places:
        mouse(QtCore.QEvent.MouseMove, pixel_of(place))
    mouse(QtCore.QEvent.MouseButtonRelease, pixel_of(places[-1]))


def mm_per_pixel(part, far):
    from workbench_pkg.actions.pointing import place_on_end

    one, other = (pixel_of(place_on_end(part, x, 0.0, far)) for x in (-30.0, 30.0))
    return 60.0 / np.hypot(one.x() - other.x(), one.y() - other.y())


def facing_end(part):
    """Whether the far end is the one that faces the camera."""
    view = FreeCADGui.ActiveDocument.ActiveView
    return float(np.array(tuple(view.getViewDirection())) @ part.frame.axes[2]) < 0


def on_end(part, x, y):
    from workbench_pkg.actions.pointing import place_on_end

    return place_on_end(part, x, y, facing_end(part))


def nothing_of_ours_in(name):
    from workbench_pkg.views.zooming import views_of

    for view in views_of(name):
        scene = view.getSceneGraph()
        for i in range(scene.getNumChildren()):
            if scene.getChild(i).getName().getString() == "HeartsidePointing":
                return False
    doc = FreeCAD.getDocument(name)
    roots = [o.ViewObject.RootNode for o in doc.Objects if hasattr(o.ViewObject, "RootNode")]
    return not any(
        root.getChild(i).getName().getString() == "HeartsideUnseen"
        for root in roots
        for i in range(root.getNumChildren())
    )


def rings_seen(path):
    """Changes from light to dark down the middle of the view in a picture of the window: each drawn ring is one."""
    image, port = QtGui.QImage(str(path)), viewport()
    middle = port.mapToGlobal(QtCore.QPoint(port.width() // 2, port.height() // 2))
    heights = range(middle.y() - 60, middle.y() + 60)
    column = [QtGui.QColor(image.pixel(middle.x() - 20, y)) for y in heights]
    dark = [max(c.red(), c.green(), c.blue()) < 90 for c in column]
    return sum(now and not before for before, now in itertools.pairwise(dark))


@pytest.mark.parametrize("camera", ["Orthographic", "Perspective"])
def test_the_centre_is_clicked_then_dragged_and_written_in_one_step(board, doc, kept, pump, shot, camera):
    FreeCADGui.ActiveDocument.ActiveView.setCameraType(camera)
    bench.isometric()
    pump(0.3)
    before, steps = property_dump(doc), doc.UndoCount
    panel = open_panel(kept, pump, board)
    part, _ = the_part(panel)
    button("pith").click()
    click(on_end(part, 25.0, -60.0))
    pump(0.1)
    assert list(differences(before, property_dump(doc))) == []
    (across, through) = panel.fields.answers()["pith"]
    near = 1.5 * mm_per_pixel(part, facing_end(part))
    assert (across, through) == pytest.approx((25.0, -60.0), abs=near)
    assert not button("pith").isChecked() and FreeCADGui.Selection.getSelection() == [board]
    shot(f"pointing-centre-{camera.lower()}")
    drag(on_end(part, across, through), on_end(part, 0.0, -50.0), on_end(part, -10.0, -45.0))
    pump(0.1)
    moved = panel.fields.answers()["pith"]
    assert moved == pytest.approx((-10.0, -45.0), abs=near)
    bench.press("Write the tags")
    pump(0.2)
    assert tuple(board.HeartsidePith) == pytest.approx(moved, abs=1e-6)
    assert doc.UndoCount == steps + 1
    after = property_dump(doc)
    doc.undo()
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    assert differences(after, property_dump(doc)) == []
    assert nothing_of_ours_in(doc.Name)
    FreeCADGui.ActiveDocument.ActiveView.setCameraType("Orthographic")


@pytest.mark.parametrize("camera", ["Orthographic", "Perspective"])
def test_an_exact_ray_gives_an_exact_tag(board, doc, kept, pump, camera):
    from workbench_pkg.actions.pointing import ray_between
    from workbench_pkg.panels.tag_pointing import Eye

    panel = open_panel(kept, pump, board)
    part, _ = the_part(panel)
    target = on_end(part, 17.25, -63.5)
    sign = 1.0 if facing_end(part) else -1.0
    away = 1e6 if camera == "Orthographic" else 700.0
    eye = Eye(ray_between(target + away * sign * part.frame.axes[2] + 40.0, target), lambda _: 1e9)
    panel.pointing.start("pith")
    assert panel.pointing.press(eye)
    panel.pointing.drop(eye)
    bench.press("Write the tags")
    pump(0.2)
    assert tuple(board.HeartsidePith) == pytest.approx((17.25, -63.5), abs=1e-6)


def test_three_points_on_a_ring(board, doc, kept, pump, shot):
    """Points of a circle about a centre that is known: the tag's rings have it."""
    panel = open_panel(kept, pump, board)
    part, _ = the_part(panel)
    button("end").click()
    pump(0.3)
    centre, radius = np.array([10.0, -90.0]), 95.0
    places = [centre + radius * np.array([np.sin(t), np.cos(t)]) for t in (-0.5, 0.02, 0.45)]
    button("points").click()
    far = panel.pointing.end_is_far
    from workbench_pkg.actions.pointing import place_on_end

    for number, (x, y) in enumerate(places):
        click(place_on_end(part, x, y, far))
        pump(0.1)
        if number == 1:
            assert "2 of 3" in bench.widget("HeartsideTagState", QtWidgets.QLabel).text()
            shot("pointing-two-of-three")
    shot("pointing-three-points")
    assert panel.pointing.part.rings.value.pith_mm == pytest.approx(tuple(centre), abs=6.0)
    given = panel.fields.answers()["points"]
    np.testing.assert_allclose(np.reshape(given, (3, 2)), places, atol=1.5 * mm_per_pixel(part, far))
    bench.press("Write the tags")
    pump(0.2)
    assert tuple(board.HeartsideRingPoints) == pytest.approx(given, abs=1e-6)
    assert nothing_of_ours_in(doc.Name)


def test_a_point_beside_the_wood_is_refused_and_the_others_stay(board, doc, kept, pump):
    panel = open_panel(kept, pump, board)
    part, _ = the_part(panel)
    button("points").click()
    click(on_end(part, -40.0, 5.0))
    click(on_end(part, 0.0, -60.0))
    pump(0.1)
    assert "beside the end" in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert len(panel.pointing.picked) == 1
    click(on_end(part, -39.8, 5.1))
    click(on_end(part, 40.0, 5.0))
    assert "apart" in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert "points" not in panel.fields.answers()
    bench.press("Cancel")


def test_the_heart_face_is_clicked(board, doc, kept, pump, shot):
    panel = open_panel(kept, pump, board)
    part, _ = the_part(panel)
    view = np.array(tuple(FreeCADGui.ActiveDocument.ActiveView.getViewDirection()))
    up = float(view @ part.frame.axes[1]) < 0
    face = part.frame.centre + (1 if up else -1) * part.frame.thickness_mm / 2 * part.frame.axes[1]
    button("heart").click()
    click(face)
    pump(0.1)
    shot("pointing-heart")
    bench.press("Write the tags")
    pump(0.2)
    assert board.HeartsideHeart == ("z" if up else "-z")


def test_a_click_without_a_button_selects_as_ever(board, doc, kept, pump):
    panel = open_panel(kept, pump, board)
    part, _ = the_part(panel)
    assert not panel.pointing.is_busy()
    click(on_end(part, 0.0, 300.0))  # beside the board
    pump(0.3)
    assert panel.fields.answers() == {}


def test_escape_ends_pointing_first_and_then_the_panel(board, doc, kept, pump):
    before = property_dump(doc)
    panel = open_panel(kept, pump, board)
    part, _ = the_part(panel)
    button("points").click()
    click(on_end(part, -40.0, 5.0))
    event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, QtCore.Qt.Key_Escape, QtCore.Qt.NoModifier)
    QtWidgets.QApplication.sendEvent(viewport(), event)
    pump(0.2)
    assert FreeCADGui.Control.activeDialog() and not panel.pointing.is_busy()
    assert panel.pointing.picked == []
    bench.press("Cancel")
    pump(0.2)
    assert not FreeCADGui.Control.activeDialog()
    assert differences(before, property_dump(doc)) == []
    assert nothing_of_ours_in(doc.Name)


def test_looking_at_the_end_hides_the_others_and_comes_back(main_window, doc, kept, pump, shot):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    from workbench_pkg.actions.tag import tag

    tag(boards, species="white oak", grain="x", show="z", pith=(10, -80))
    bench.isometric()
    pump(0.2)
    camera = FreeCADGui.ActiveDocument.ActiveView.getCameraNode()
    stood = tuple(camera.position.getValue().getValue())
    panel = open_panel(kept, pump, boards[2])
    shot("pointing-in-a-table")
    button("end").click()
    pump(0.3)
    assert panel.view.unseen.count == 8
    assert rings_seen(shot("pointing-at-the-end")) > 3
    view = np.array(tuple(FreeCADGui.ActiveDocument.ActiveView.getViewDirection()))
    part, _ = the_part(panel)
    assert abs(view @ part.frame.axes[2]) == pytest.approx(1.0, abs=1e-5)
    button("end").click()
    pump(0.2)
    assert panel.view.unseen.count == 0
    assert tuple(camera.position.getValue().getValue()) == pytest.approx(stood, abs=1e-3)
    button("end").click()
    bench.press("Cancel")
    pump(0.2)
    assert nothing_of_ours_in(doc.Name)


def test_the_arrow_is_turned_and_the_rings_stay(board, doc, kept, pump):
    from workbench_pkg.actions.tag import tag

    tag([board], pith=(20.0, -70.0))
    panel = open_panel(kept, pump, board)
    button("flip").click()
    pump(0.1)
    bench.press("Write the tags")
    assert board.HeartsideGrain == "-y"
    assert tuple(board.HeartsidePith) == pytest.approx((-20.0, -70.0), abs=1e-6)
    panel = open_panel(kept, pump, board)
    button("turn").click()
    pump(0.1)
    bench.press("Write the tags")
    assert board.HeartsideGrain == "z"
    assert "HeartsidePith" not in board.PropertiesList
    assert panel.view is not None


def test_what_was_inferred_is_accepted_with_one_click_and_written_with_ok(main_window, doc, kept, pump, shot):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.isometric()
    before, steps = property_dump(doc), doc.UndoCount
    open_panel(kept, pump, boards[0])
    shown = bench.widget("HeartsideKnown0", QtWidgets.QLabel).text()
    assert "inferred" in shown and "longest edge" in shown
    bench.widget("HeartsideAccept0", QtWidgets.QPushButton).click()
    pump(0.1)
    assert differences(before, property_dump(doc)) == []
    shot("pointing-accepted")
    bench.press("Write the tags")
    assert boards[0].HeartsideGrain in ("x", "-x") and "HeartsideShowFace" not in boards[0].PropertiesList
    assert doc.UndoCount == steps + 1


def test_inferred_grain_of_several_boards_is_each_ones_own(main_window, doc, kept, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    steps = doc.UndoCount
    open_panel(kept, pump, boards[0], doc.Leg1, doc.Leg2)
    assert "3 boards" in bench.widget("HeartsideKnown0", QtWidgets.QLabel).text()
    bench.widget("HeartsideAccept0", QtWidgets.QPushButton).click()
    bench.choose_text(bench.widget("HeartsideSpeciesList", QtWidgets.QListWidget), OAK)
    bench.press("Write the tags")
    pump(0.2)
    assert boards[0].HeartsideGrain.lstrip("-") == "x"
    assert doc.Leg1.HeartsideGrain.lstrip("-") == doc.Leg2.HeartsideGrain.lstrip("-") == "z"
    assert [o.HeartsideSpecies for o in (boards[0], doc.Leg1, doc.Leg2)] == [OAK] * 3
    assert doc.UndoCount == steps + 1


def test_open_parts_are_stepped_through_written_and_zoomed_to(main_window, doc, kept, pump, shot):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.isometric()
    steps = doc.UndoCount
    open_panel(kept, pump)
    count = bench.widget("HeartsideOpenCount", QtWidgets.QLabel)
    assert "9 of 9" in count.text()
    bench.widget("HeartsideOpenNext", QtWidgets.QToolButton).click()
    pump(0.3)
    assert FreeCADGui.Selection.getSelection() == [boards[0]]
    bench.choose_text(bench.widget("HeartsideSpeciesList", QtWidgets.QListWidget), OAK)
    bench.widget("HeartsideBuiltSaid", QtWidgets.QCheckBox).setChecked(True)
    combo = bench.widget("HeartsideCut", QtWidgets.QComboBox)
    combo.setCurrentIndex(combo.findData("flat"))
    bench.widget("HeartsideWriteNext", QtWidgets.QPushButton).click()
    pump(0.3)
    assert boards[0].HeartsideSpecies == OAK and doc.UndoCount == steps + 1
    assert "8 of 9" in count.text()
    assert FreeCADGui.Selection.getSelection() == [boards[1]]
    shot("pointing-next-board")
    bench.widget("HeartsideOpenPrevious", QtWidgets.QToolButton).click()
    pump(0.3)
    assert FreeCADGui.Selection.getSelection() == [doc.Leg4]
    bench.press("Cancel")
    assert doc.UndoCount == steps + 1


def test_what_was_entered_stays_while_boards_are_added(main_window, doc, kept, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    open_panel(kept, pump, boards[0])
    bench.choose_text(bench.widget("HeartsideSpeciesList", QtWidgets.QListWidget), OAK)
    FreeCADGui.Selection.addSelection(doc.Name, boards[1].Name)
    pump(0.3)
    bench.press("Write the tags")
    assert [b.HeartsideSpecies for b in boards[:2]] == [OAK] * 2


def test_elements_of_a_link_array_take_facts_of_their_own(board, doc, kept, pump):
    array = doc.addObject("App::Link", "Slats")
    array.LinkedObject = board
    array.ShowElement = False
    array.ElementCount = 3
    doc.recompute()
    open_panel(kept, pump, array)
    panel = kept[-1]
    key = panel.chosen.leaves[1].key
    panel.take({key: {"grain": "x"}})
    bench.choose_text(bench.widget("HeartsideSpeciesList", QtWidgets.QListWidget), "Walnut, black")
    bench.press("Write the tags")
    said = json.loads(array.HeartsideElements)
    assert [said[i].get("HeartsideGrain") for i in "012"] == [None, "x", None]
    assert {facts["HeartsideSpecies"] for facts in said.values()} == {"Walnut, black"}
