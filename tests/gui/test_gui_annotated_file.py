"""A copy that was annotated without a window shows its model and its labels in the window."""

from __future__ import annotations

import FreeCAD as App
import FreeCADGui as Gui
import pytest

from workbench_pkg.actions.annotate import annotate_file
from workbench_pkg.actions.settings import Settings
from workbench_pkg.host.marks import objects_of_kind

MAKE = """
import FreeCAD as App, sys
doc = App.newDocument("m", hidden=True)
for i in range(2):
    box = doc.addObject("Part::Box", "Board")
    box.Label = "Board %d wood{white oak; pith 0 -60; built 9}" % i
    box.Length, box.Width, box.Height = 800, 120, 20
    box.Placement.Base.y = 200 * i
doc.recompute()
doc.saveAs(sys.argv[1])
"""


@pytest.mark.parametrize("made_in_a_window", [True, False])
def test_model_and_labels_are_seen(tmp_path, pump, shot, made_in_a_window):
    from workbench_pkg.setup import run_in_host

    script = tmp_path / "make.py"
    script.write_text(MAKE, encoding="utf-8")
    model, copy = tmp_path / "model.FCStd", tmp_path / "copy.FCStd"
    run_in_host(script, [str(model)])
    if made_in_a_window:
        doc = App.openDocument(str(model))
        for obj in doc.Objects:
            obj.ViewObject.Visibility = True
            obj.ViewObject.ShapeColor = (0.7, 0.5, 0.3)
        doc.save()
        App.closeDocument(doc.Name)
    annotator = tmp_path / "annotate.py"
    annotator.write_text(
        "import sys; from pathlib import Path\n"
        f"from {annotate_file.__module__} import annotate_file\nfrom {Settings.__module__} import Settings\n"
        "annotate_file(Path(sys.argv[1]), Path(sys.argv[2]), Settings())\n",
        encoding="utf-8",
    )
    run = run_in_host(annotator, [str(model), str(copy)])
    assert run.returncode == 0, run.chatter
    doc = App.openDocument(str(copy))
    try:
        pump(1)
        assert len(objects_of_kind(doc, "label")) == 2
        for obj in doc.Objects:
            assert obj.ViewObject.Visibility, obj.Label
        if made_in_a_window:
            assert doc.Board.ViewObject.ShapeColor[:3] == pytest.approx((0.7, 0.5, 0.3), abs=0.01)
        Gui.activeDocument().activeView().fitAll()
        pump(1)
        shot(f"annotated without a window, {'looks kept' if made_in_a_window else 'no looks'}")
    finally:
        App.closeDocument(doc.Name)
