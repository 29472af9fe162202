"""The year in the model: slid, played, closed; the document never knows."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import numpy as np
import pytest

from tests.gui import bench_piece as bench
from tests.gui.season_piece import QtWidgets, different, everything_gone, find, picture, vectors_of
from workbench_pkg.host.property_dump import differences, property_dump


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
