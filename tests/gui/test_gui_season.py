"""The year in the model: opened, slid, played, laid over, closed; the document never knows."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import numpy as np
import Part
import pytest

from tests.gui import bench_piece as bench
from tests.running.fixtures import output
from workbench_pkg.host.property_dump import differences, property_dump

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = None
if QtWidgets is None:
    from PySide import QtGui as QtWidgets

PANEL = "HeartsideSeasonPanel"


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

    made = []

    class Kept(season_panel.SeasonPanel):
        def __init__(self, *arguments, **named):
            super().__init__(*arguments, **named)
            made.append(self)

    monkeypatch.setattr(season_panel, "SeasonPanel", Kept)
    return made


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


# ---- the document never knows -----------------------------------------------------------------------------------


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


def silhouette(image):
    """Black wherever something is drawn on white."""
    shape = bench.QtGui.QImage(image)
    for x in range(0, image.width(), 4):
        for y in range(0, image.height(), 4):
            shape.setPixel(x, y, 0xFFFFFFFF if image.pixel(x, y) == 0xFFFFFFFF else 0xFF000000)
    return shape


def test_all_of_it_leaves_the_document_and_its_undo_steps_as_they_were(table, see, pump, tmp_path):
    saved = tmp_path / "before.FCStd"
    table.saveCopy(str(saved))
    before, steps, modified = property_dump(table), table.UndoCount, FreeCADGui.ActiveDocument.Modified
    first = picture(tmp_path / "first.png")
    panel = see()
    assert len(panel.scene.figures) == 9 and panel.scene.unseen.count == 9
    for box in panel.layers.values():
        box.setChecked(True)
    for day in (0, 100, 250):
        panel.slider.setValue(day)
    panel.list.setCurrentRow(0)
    pump(0.2)
    assert different(first, picture(tmp_path / "second.png")) > 0.02
    assert differences(before, property_dump(table)) == []
    while_open = tmp_path / "open.FCStd"
    table.saveCopy(str(while_open))
    assert gui_half(while_open) == gui_half(saved)
    panel.reject()
    pump(0.2)
    assert everything_gone(panel)
    assert differences(before, property_dump(table)) == []
    assert (table.UndoCount, FreeCADGui.ActiveDocument.Modified) == (steps, modified)
    bench.isometric()
    FreeCADGui.Selection.clearSelection()
    pump(0.2)
    assert different(first, picture(tmp_path / "third.png")) < 0.001


def gui_half(path):
    """What a saved file tells of the window, without where the camera stands and what the tree has drawn yet."""
    import re
    import zipfile

    with zipfile.ZipFile(path) as archive:
        text = archive.read("GuiDocument.xml").decode()
    return re.sub(r'<Camera settings=.*?/>|treeRank="-?\d+"', "", text, flags=re.S)


def test_sliding_moves_vertices_and_asks_nothing_of_the_kernel(table, see, monkeypatch):
    from workbench_pkg.host import leaf
    from workbench_pkg.views import season_mesh

    panel = see()

    def refused(*_):
        raise AssertionError("the kernel was asked")

    monkeypatch.setattr(leaf.Leaf, "local_solid", refused)
    monkeypatch.setattr(leaf.Leaf, "global_solid", refused)
    monkeypatch.setattr(season_mesh.MeshReader, "read", refused)
    scene = panel.scene
    nodes = {index: figure.surface for index, figure in scene.figures.items()}
    bending = {index for index, figure in scene.figures.items() if figure.motion.bends}
    assert {scene.figures[index].motion.name[:5] for index in bending} == {"Board"}
    assert set(scene.surfaces.points.gathered.rows) == bending, "only what bends has its vertices moved"
    moved = scene.moved
    there = vectors_of(scene.surfaces.points)
    changed = []

    class Hears:
        def slotChangedObject(self, obj, prop):
            changed.append((obj.Name, prop))

    hears = Hears()
    FreeCAD.addDocumentObserver(hears)
    try:
        for day in range(0, 365, 30):
            panel.slider.setValue(day)
    finally:
        FreeCAD.removeDocumentObserver(hears)
    assert changed == [] and panel.is_open
    assert all(scene.figures[index].surface == node for index, node in nodes.items())
    shown = 2 * scene.surfaces.points.gathered.count + scene.edges.vectors.gathered.count
    assert scene.moved - moved in (12 * shown, 13 * shown), "each day once; the first may be shown already"
    assert np.abs(vectors_of(scene.surfaces.points) - there).max() > 0.1
    for index in set(scene.figures) - bending:
        drawn = scene.figures[index].matrix.matrix.getValue().getValue()
        assert np.allclose(drawn, panel.motion.matrices(scene.day, panel.factor)[index], atol=1e-3)


def vectors_of(vectors):
    """(N, 3) what a field of the scene holds, read by the scene's own words."""
    return np.array([vectors.field[i].getValue() for i in range(vectors.field.getNum())])


def test_the_vertices_stand_where_the_core_puts_them(table, see):
    from movement_core.sheet.carried import Gathered

    panel = see()
    scene, motion = panel.scene, panel.motion
    points = scene.surfaces.points
    drawn_before = vectors_of(points)
    panel.show_day(motion.wettest_day)
    for vectors, moves in ((points, "points"), (scene.surfaces.normals, "normals")):
        assert isinstance(vectors.gathered, Gathered)
        expected = np.zeros((vectors.gathered.count, 3), dtype=np.float32)
        vectors.gathered.write(getattr(scene.carrier.on(scene.day, panel.factor), moves), expected)
        np.testing.assert_array_equal(vectors_of(vectors), expected)
    assert np.abs(vectors_of(points) - drawn_before).max() > 0.5
    # Board 1 at true size on the day of making: its corners are those of the document's box.
    rows = points.gathered.rows[0]
    size = motion.parts[0].size_mm
    reach = np.ptp(vectors_of(points)[rows] @ motion.parts[0].axes.T, axis=0)
    assert np.all(np.abs(reach / size - 1) < 1.0) and reach[2] == pytest.approx(size[2], rel=0.02)
    # The vertices of a face lie outside of its normals' backs: the board is not inside out.
    normals = vectors_of(scene.surfaces.normals)[rows]
    outward = vectors_of(points)[rows] - vectors_of(points)[rows].mean(axis=0)
    assert np.all(np.einsum("nk,nk->n", normals, outward) > 0)


def test_it_plays_only_when_asked_and_stops(table, see, pump, wait_until):
    panel = see()
    day = panel.slider.value()
    pump(0.4)
    assert panel.slider.value() == day
    panel.run.click()
    wait_until(lambda: panel.slider.value() != day, 5)
    assert find("HeartsideSeasonDate").text() != ""
    panel.run.click()
    pump(0.2)
    day = panel.slider.value()
    pump(0.3)
    assert panel.slider.value() == day
    panel.slider.setValue(364)
    panel._tick()
    assert panel.slider.value() == 1


def test_the_day_its_air_and_the_moisture_are_told(table, see):
    panel = see()
    find("HeartsideSeasonDriest").click()
    dry = find("HeartsideSeasonAir").text()
    find("HeartsideSeasonWettest").click()
    wet = find("HeartsideSeasonAir").text()
    assert dry != wet and "°C" in wet and "% RH" in wet
    assert f"{panel.motion.mc.max():.1f} %" in wet and f"{panel.motion.mc.min():.1f} %" in dry
    assert panel.slider.value() == panel.motion.wettest_day


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


def test_escape_closes_it(table, see, pump):
    from PySide import QtCore

    panel = see()
    event = bench.QtGui.QKeyEvent(QtCore.QEvent.KeyPress, QtCore.Qt.Key_Escape, QtCore.Qt.NoModifier)
    QtWidgets.QApplication.sendEvent(panel.slider, event)
    pump(0.2)
    assert everything_gone(panel)


def test_every_widget_is_reached_by_the_keyboard(table, see):
    from PySide import QtCore

    panel = see()
    for widget in (
        panel.slider,
        panel.run,
        panel.magnify,
        panel.list,
        panel.off,
        panel.which,
        *panel.layers.values(),
    ):
        assert widget.focusPolicy() & QtCore.Qt.TabFocus


def test_the_document_may_be_closed_meanwhile(table, see, pump):
    panel = see()
    panel.run.click()
    FreeCAD.closeDocument(table.Name)
    pump(0.4)
    assert not panel.is_open and not panel.player.isActive()
    assert not FreeCADGui.Control.activeDialog()


def test_a_part_may_be_deleted_meanwhile_and_come_back(table, see, pump, tmp_path):
    panel = see()
    table.openTransaction("delete")
    table.removeObject("Board3")
    table.commitTransaction()
    pump(0.2)
    assert panel.is_open and len(panel.scene.figures) == 8
    assert find("HeartsideSeasonStale").isVisible()
    panel.show_day(20)
    table.undo()
    pump(0.2)
    panel.show_day(120)
    panel.reject()
    pump(0.2)
    assert everything_gone(panel) and table.getObject("Board3") is not None


def test_a_change_offers_to_work_out_again(table, see, opened, pump, wait_until):
    panel = see()
    assert not find("HeartsideSeasonStale").isVisible()
    table.getObject("Board1").Width = 140
    table.recompute()
    pump(0.2)
    assert find("HeartsideSeasonStale").isVisible()
    find("HeartsideSeasonAgain").click()
    wait_until(lambda: len(opened) == 2, 60)
    pump(0.2)
    assert not panel.is_open and opened[1].is_open
    assert len(opened[1].scene.figures) == 9


def test_whatever_fails_shows_the_parts_again(table, see, pump, monkeypatch):
    panel = see()

    def broken(*_):
        raise RuntimeError("lost")

    monkeypatch.setattr(panel.scene, "show", broken)
    panel.slider.setValue(5)
    pump(0.2)
    assert everything_gone(panel)
    assert any("lost" in text for text in bench.problems())


def test_a_panel_closed_by_others_takes_all_away(table, see, pump):
    panel = see()
    FreeCADGui.Control.closeDialog()
    pump(0.3)
    assert not panel.is_open and everything_gone(panel)


def test_a_document_without_a_solid_is_told(doc, main_window, wait_until, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    FreeCADGui.runCommand("Heartside_SeeYear")
    texts = []
    wait_until(lambda: texts.extend(bench.problems()) or texts, 20)
    assert "This document is empty" in texts[0]


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
