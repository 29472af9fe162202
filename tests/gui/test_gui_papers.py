"""Papers from the window: schedule, drawing page with its exports, and all of it taken out again."""

from __future__ import annotations

import os
from pathlib import Path

import FreeCADGui
import pytest

from tests.gui import bench_piece as bench
from workbench_pkg.demo.table import trestle_table
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects import papers as kept


@pytest.fixture
def piece(main_window, doc, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    trestle_table(doc, repaired=True)
    doc.recompute()
    bench.isometric()
    pump(0.2)


def test_schedule_and_drawing_come_and_go(piece, doc, pump, shot, wait_until, tmp_path):
    before, steps = property_dump(doc), doc.UndoCount
    FreeCADGui.runCommand("Heartside_Schedule")
    wait_until(lambda: kept.objects_of_kind(doc, kept.SCHEDULE) or bench.problems(), 60)
    (sheet,) = kept.objects_of_kind(doc, kept.SCHEDULE)
    assert doc.UndoCount == steps + 1
    sheet.ViewObject.doubleClicked()
    pump(0.5)
    shot("schedule")
    FreeCADGui.runCommand("Heartside_DrawTop")
    wait_until(lambda: kept.objects_of_kind(doc, kept.PAGE) or bench.problems(), 60)
    (page,) = kept.objects_of_kind(doc, kept.PAGE)
    assert doc.UndoCount == steps + 2
    view = next(one for one in page.Views if one.TypeId == "TechDraw::DrawViewPart")
    wait_until(lambda: len(view.getVisibleEdges()) > 8, 60)
    page.ViewObject.doubleClicked()
    pump(1.0)
    shot("drawing")
    import TechDraw
    import TechDrawGui

    folder = Path(os.environ["HEARTSIDE_TEST_OUTPUT"])  # to be looked at beside the pictures
    exports = {
        "pdf": TechDrawGui.exportPageAsPdf,
        "svg": TechDrawGui.exportPageAsSvg,
        "dxf": TechDraw.writeDXFPage,
    }
    for ending, export in exports.items():
        target = folder / f"drawing.{ending}"
        export(page, str(target))
        wait_until(lambda made=target: made.exists() and made.stat().st_size > 2000, 60)
    FreeCADGui.runCommand("Heartside_RemovePapers")
    pump(0.3)
    assert differences(before, property_dump(doc)) == []
    assert not bench.problems()
