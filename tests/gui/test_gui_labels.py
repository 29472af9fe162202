"""Labels in the 3D view: readable at any zoom, off each other, with a leader; never a change to the document."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import numpy as np
import pytest

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.views import watching


@pytest.fixture
def labels(main_window, doc, pump):
    """The arranged labels of an annotated table."""
    from workbench_pkg.actions.annotate import annotate

    bench.small_table(doc)
    bench.tag_all(doc)
    bench.isometric()
    annotate(doc)
    pump(0.6)
    return watching.labels_of(doc)


def camera():
    return FreeCADGui.ActiveDocument.ActiveView.getCameraNode()


def boxes(labels):
    """(N, 4) left, bottom, right, top in pixels of the labels that are drawn, read back from the scene."""
    found = []
    for obj in labels.objects:
        nodes = labels.nodes[obj.Name]
        if nodes.shown():
            centre = np.array([nodes.place.translation.getValue().getValue()], dtype=float)
            (pixel,), _ = labels._screen().pixels(centre)
            half = np.array(nodes.size) / 2
            found.append([*(pixel - half), *(pixel + half)])
    return np.array(found).reshape(-1, 4)


def overlapping(found):
    pairs = 0
    for i in range(len(found)):
        for j in range(i):
            apart = (found[i, :2] >= found[j, 2:] - 1) | (found[i, 2:] <= found[j, :2] + 1)
            pairs += not apart.any()
    return pairs


def test_at_full_view_they_show_off_each_other_and_inside_the_view(labels, doc, pump):
    found = boxes(labels)
    assert len(found) >= 7
    assert overlapping(found) == 0
    width, height = FreeCADGui.ActiveDocument.ActiveView.getSize()
    assert (found[:, :2] >= 0).all()
    assert (found[:, 2:] <= [width + 1, height + 1]).all()


@pytest.mark.parametrize("kind", ["Orthographic", "Perspective"])
def test_they_never_pile_at_any_zoom(labels, pump, wait_until, kind):
    from pivy import coin

    view = FreeCADGui.ActiveDocument.ActiveView
    view.setCameraType(kind)
    try:
        for zoom in (0.15, 0.5, 1.0, 4.0, 40.0):
            bench.isometric()
            pump(0.1)
            node = camera()
            if kind == "Orthographic":
                node.height = node.height.getValue() * zoom
            else:
                ahead = node.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1))
                distance = node.focalDistance.getValue()
                node.position = node.position.getValue() + ahead * (distance * (1 - zoom))
                node.focalDistance = distance * zoom
            pump(0.4)
            wait_until(lambda: len(boxes(labels)) + labels.crowded >= 1)
            pump(0.1)
            assert overlapping(boxes(labels)) == 0, zoom
    finally:
        view.setCameraType("Orthographic")


def test_from_afar_they_thin_out_and_say_how_many_are_left_out(labels, pump, shot):
    near = len(boxes(labels))
    node = camera()
    node.height = node.height.getValue() * 10
    pump(0.5)
    shot("labels-from-afar")
    assert len(boxes(labels)) < near
    assert labels.crowded == 9 - len(boxes(labels))
    assert labels.note.shown()
    bench.isometric()
    pump(0.5)
    assert labels.crowded == 0
    assert labels.note_in is None


def test_close_up_every_board_in_view_has_its_label(labels, doc, pump, shot):
    node = camera()
    bench.isometric()
    FreeCADGui.ActiveDocument.ActiveView.viewTop()
    FreeCADGui.ActiveDocument.ActiveView.fitAll()
    node.height = node.height.getValue() / 2.5
    pump(0.5)
    shot("labels-close-up")
    assert labels.crowded == 0
    shown = {o.LabelText[0] for o in labels.objects if labels.nodes[o.Name].shown()}
    assert {"Board 2", "Board 3", "Board 4"} <= shown


def test_fit_all_is_not_disturbed(labels, pump):
    height = camera().height.getValue()
    for _ in range(3):
        FreeCADGui.ActiveDocument.ActiveView.fitAll()
        pump(0.3)
    assert camera().height.getValue() == pytest.approx(height, rel=1e-3)


def test_leaders_start_at_their_parts(labels):
    for obj in labels.objects:
        nodes = labels.nodes[obj.Name]
        start = nodes.line.point.getValues()[0].getValue()
        if nodes.shown():
            first, last = obj.HeartsideSpan
            along, off = last - first, FreeCAD.Vector(*start) - first
            assert off.cross(along).Length / along.Length < 1e-3


def test_looking_around_writes_nothing(labels, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    modified = FreeCADGui.ActiveDocument.Modified
    for turn in ("viewTop", "viewFront", "viewRight", "viewIsometric"):
        getattr(FreeCADGui.ActiveDocument.ActiveView, turn)()
        pump(0.3)
    assert differences(before, property_dump(doc)) == []
    assert doc.UndoCount == steps
    assert FreeCADGui.ActiveDocument.Modified == modified


def test_they_follow_while_the_camera_moves(labels, pump):
    (obj, *_) = [o for o in labels.objects if labels.nodes[o.Name].shown()]
    nodes = labels.nodes[obj.Name]
    before = nodes.place.translation.getValue().getValue()
    node = camera()
    node.height = node.height.getValue() * 1.2
    pump(0.06)  # less than the rest after which all are placed anew
    assert nodes.place.translation.getValue().getValue() != before


def test_at_rest_nothing_is_done(labels, doc, pump, monkeypatch):
    bench.isometric()
    pump(0.6)
    done = []
    true = type(labels)._put
    monkeypatch.setattr(type(labels), "_put", lambda self, *rest: (done.append(1), true(self, *rest)))
    for _ in range(3):
        FreeCADGui.ActiveDocument.ActiveView.redraw()
        pump(0.3)
    assert done == []
    node = camera()
    node.height = node.height.getValue() * 1.1
    pump(0.5)
    assert 2 <= len(done) <= 4  # carried along, then settled; and not for ever


def test_new_words_are_drawn(labels, doc, pump):
    obj = labels.objects[0]
    size = labels.nodes[obj.Name].size
    obj.LabelText = ["A much longer name for this very board", "second", "third", "fourth"]
    pump(0.3)
    assert labels.nodes[obj.Name].size[0] > size[0]
    assert overlapping(boxes(labels)) == 0


def test_hiding_one_hides_it(labels, doc, pump):
    (obj, *_) = [o for o in labels.objects if labels.nodes[o.Name].shown()]
    obj.ViewObject.Visibility = False
    pump(0.4)
    assert obj.Name not in {o.Name for o in labels.objects}
    obj.ViewObject.Visibility = True
    pump(0.4)
    assert labels.nodes[obj.Name].shown()


def test_removing_undoing_and_redoing_keep_up(labels, doc, pump):
    from workbench_pkg.actions.annotate import remove

    remove(doc)
    pump(0.3)
    assert watching.labels_of(doc) is None
    doc.undo()
    pump(0.4)
    again = watching.labels_of(doc)
    assert len(boxes(again)) >= 7
    assert all(again.nodes[o.Name].is_attached(o.ViewObject.RootNode) for o in again.objects)
    doc.redo()
    pump(0.3)
    assert watching.labels_of(doc) is None


def test_they_come_up_again_with_their_file(labels, doc, pump, tmp_path):
    path = str(tmp_path / "labelled.FCStd")
    doc.saveAs(path)
    FreeCAD.closeDocument(doc.Name)
    pump(0.2)
    assert not watching._labels
    again = FreeCAD.openDocument(path)
    pump(0.6)
    bench.isometric()
    pump(0.5)
    assert len(boxes(watching.labels_of(again))) >= 7


def test_nothing_watches_a_document_without_labels(main_window, doc, pump):
    bench.small_table(doc)
    pump(0.3)
    assert watching._busy not in watching._watchers
    assert watching._timer is None or not watching._timer.isActive()


def test_readable_on_dark_and_light(labels, pump, shot):
    settings = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/View")
    try:
        settings.SetBool("Gradient", False)
        settings.SetBool("Simple", True)
        for name, value in (("dark", 0x181818FF), ("light", 0xF4F4F4FF)):
            settings.SetUnsigned("BackgroundColor", value)
            shot(f"labels-on-{name}", settle=0.6)
            assert len(boxes(labels)) >= 7
    finally:
        for name in ("Gradient", "Simple"):
            settings.RemBool(name)
        settings.RemUnsigned("BackgroundColor")


def test_two_hundred_labels_settle(main_window, doc, pump, shot):
    from workbench_pkg.host.marks import mark

    floor = doc.addObject("Part::Box", "Floor")
    floor.Length, floor.Width, floor.Height = 1900, 900, 1
    doc.recompute()
    for i in range(200):
        label = doc.addObject("App::AnnotationLabel", "HeartsideLabel")
        label.LabelText = [f"Part {i}", "100.0 mm"]
        label.BasePosition = FreeCAD.Vector(100.0 * (i % 20), 100.0 * (i // 20), 0)
        mark(label, "label")
    pump(0.5)
    bench.isometric()
    pump(1.0)
    labels = watching.labels_of(doc)
    shot("two-hundred-labels")
    assert len(labels.nodes) == 200
    assert overlapping(boxes(labels)) == 0
    assert len(boxes(labels)) > 20
    assert len(boxes(labels)) + labels.crowded == 200
