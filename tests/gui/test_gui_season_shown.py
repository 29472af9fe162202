"""The year in the model: what is shown of it, in which view, layer and place."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import numpy as np
import Part
import pytest

from tests.gui import bench_piece as bench
from tests.gui.season_piece import QtWidgets, different, everything_gone, find, picture, vectors_of
from tests.running.fixtures import output


@pytest.mark.parametrize("stem", ["trestle_table", "sideboard"])
def test_the_demo_models_look_right(demo, see, pump, shot, stem, main_window):
    FreeCAD.openDocument(str(demo[stem]))
    for dock in main_window.findChildren(QtWidgets.QDockWidget):
        if dock.objectName() in ("Tasks", "Combo View", "Model"):
            dock.setVisible(True)
    bench.isometric()
    panel = see()
    pump(0.5)
    bench.isometric()
    panel.show_day(panel.motion.driest_day)
    shot(f"year-{stem}-driest")
    find("HeartsideSeason_ghosts").setChecked(True)
    find("HeartsideSeason_rings").setChecked(True)
    panel.show_day(panel.motion.wettest_day)
    shot(f"year-{stem}-wettest")
    panel.list.setCurrentRow(0)
    pump(0.3)
    shot(f"year-{stem}-zoomed")


def test_no_view_cuts_off_what_moves_toward_the_eye(table, see, pump):
    """The planes of the camera are set from what the views know of."""
    panel = see()
    view = FreeCADGui.ActiveDocument.ActiveView
    for box in panel.layers.values():
        box.setChecked(False)
    find("HeartsideSeason_rings").setChecked(True)
    panel.magnify.setCurrentIndex(panel.magnify.count() - 1)
    panel.magnify.activated.emit(panel.magnify.currentIndex())
    scene = panel.scene
    view.viewTop()
    for day in (panel.motion.driest_day, panel.motion.wettest_day):
        panel.show_day(day)
        pump(0.2)
        camera = view.getCameraNode()
        top = camera.position.getValue()[2] - camera.nearDistance.getValue()
        bottom = camera.position.getValue()[2] - camera.farDistance.getValue()
        heights = np.concatenate([vectors_of(lines.vectors)[:, 2] for lines in (scene.edges, *scene.marks)])
        heights = heights + scene.carrier.origin[2]
        assert bottom < heights.min() and heights.max() < top


def test_rings_stay_on_the_end_of_a_stub_tenon(see, pump, shot):
    doc = FreeCAD.newDocument("Stub")
    rail = doc.addObject("Part::Feature", "Rail")
    stub = Part.makeBox(30, 30, 8, FreeCAD.Vector(400, 25, 6))
    rail.Shape = Part.makeBox(400, 80, 20).fuse(stub)
    rail.Label = "Rail wood{white oak; grain x; show z; pith 0 60; built 9}"
    doc.recompute()
    bench.isometric()
    panel = see()
    find("HeartsideSeason_rings").setChecked(True)
    pump(0.2)
    shot("season-stub-tenon")
    rings = panel.scene._grain_marks(0).rings
    spans = [
        np.ptp(np.concatenate([line for line in rings if sign * line[0, 2] > 0]), axis=0)
        for sign in (-1.0, 1.0)
    ]
    (stub, sawn) = sorted(spans, key=lambda span: span[0])
    assert 20 < stub[0] <= 30 and 4 < stub[1] <= 8  # the stub alone
    assert 70 < sawn[0] <= 80 and 15 < sawn[1] <= 20  # the other end is as wide as the rail


def test_true_size_and_magnified(table, see, tmp_path, pump):
    panel = see()
    panel.show_day(panel.motion.driest_day)
    box = panel.magnify
    box.setCurrentIndex(box.findData(1))
    box.activated.emit(box.currentIndex())
    assert panel.scene.factor == 1
    leg = next(figure for figure in panel.scene.figures.values() if figure.motion.name.startswith("Leg"))
    one = leg.matrix.matrix.getValue().getValue()
    box.setCurrentIndex(box.findData(20))
    box.activated.emit(box.currentIndex())
    twenty = leg.matrix.matrix.getValue().getValue()
    grown = [np.linalg.norm(np.array(m)[0, :3]) - 1 for m in (one, twenty)]
    assert grown[1] == pytest.approx(20 * grown[0], rel=0.01) and abs(grown[0]) > 1e-3


@pytest.mark.parametrize("layer", ["colours", "places", "ghosts", "rings", "caption"])
def test_each_layer_goes_on_and_off_and_all_with_one_click(table, see, pump, tmp_path, layer):
    panel = see()
    find("HeartsideSeasonOff").click()
    assert not any(panel.scene.layers.values())
    if layer == "places":
        assert not panel.scene.places.nodes, "nothing is tight in a table that stands alone"
        return
    plain = picture(tmp_path / "plain.png")
    panel.layers[layer].setChecked(True)
    pump(0.1)
    assert different(plain, picture(tmp_path / "with.png")) > 0.0005
    find("HeartsideSeasonOff").click()
    pump(0.1)
    assert different(plain, picture(tmp_path / "without.png")) == 0


def test_a_row_of_the_list_selects_zooms_and_goes_to_its_day(demo, see, pump):
    FreeCAD.openDocument(str(demo["sideboard"]))
    bench.isometric()
    panel = see()
    height = FreeCADGui.ActiveDocument.ActiveView.getCameraNode().height.getValue()
    margin = panel.rows[0].margin
    assert margin.used >= 1 and panel.scene.places.nodes
    panel.list.setCurrentRow(0)
    pump(0.1)
    assert FreeCADGui.Selection.getSelectionEx("", 0)
    assert panel.slider.value() == margin.day
    assert FreeCADGui.ActiveDocument.ActiveView.getCameraNode().height.getValue() < height / 1.5
    scene = panel.scene
    own = {n: (r.start, r.stop) for n, r in scene.edges.vectors.gathered.rows.items()}
    drawn = [n for n in scene.pointed.coordIndex.getValues() if n >= 0]
    pointed = {scene.figures[n].motion.key for n, (a, b) in own.items() if any(a <= i < b for i in drawn)}
    assert pointed == set(margin.keys)


def test_every_view_of_the_document_shows_it(table, see, pump):
    from workbench_pkg.views.zooming import views_of

    panel = see()
    FreeCADGui.runCommand("Std_ViewCreate")
    pump(0.9)
    views = views_of(panel.scene.name)
    assert len(views) == 2
    assert all(view.getSceneGraph().findChild(panel.scene.root) >= 0 for view in views)
    panel.reject()
    assert everything_gone(panel)


def silhouette(image):
    """Black wherever something is drawn on white."""
    shape = bench.QtGui.QImage(image)
    for x in range(0, image.width(), 4):
        for y in range(0, image.height(), 4):
            shape.setPixel(x, y, 0xFFFFFFFF if image.pixel(x, y) == 0xFFFFFFFF else 0xFF000000)
    return shape


def test_links_arrays_and_scaled_ones_are_shown_in_place(doc, see, pump, tmp_path):
    board = doc.addObject("Part::Box", "Board")
    board.Length, board.Width, board.Height = 600, 120, 20
    link = doc.addObject("App::Link", "Other")
    link.LinkedObject = board
    link.Placement.Base.y = 200
    row = doc.addObject("App::Link", "Row")
    row.LinkedObject = board
    row.ElementCount = 2
    row.Placement.Base.y = 400
    doc.recompute()
    from workbench_pkg.actions.tag import tag

    tag([board], species="white oak", cut="flat", built=9)
    for obj in doc.Objects:
        obj.ViewObject.Visibility = True
    bench.isometric()
    panel = see()
    assert not bench.problems()
    assert len(panel.scene.figures) == len({leaf.key for leaf in panel.scene.leaves.values()}) >= 4
    panel.all_off()
    panel.magnify.setCurrentIndex(0)
    bench.isometric()
    pump(0.2)
    ours = picture(tmp_path / "ours.png")
    panel.reject()
    pump(0.2)
    host = picture(tmp_path / "host.png")
    (
        ours.save(str(output() / "shots" / "links-ours.png")),
        host.save(str(output() / "shots" / "links-host.png")),
    )
    assert different(silhouette(ours), silhouette(host)) < 0.03, (
        "at true size they stand where the host draws them"
    )
