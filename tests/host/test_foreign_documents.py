"""Documents that nobody here made: every FCStd in the host's own resource folder gets an orderly report."""

from __future__ import annotations

import datetime
import zipfile
from pathlib import Path

import FreeCAD as App
import pytest

from movement_core.errors import FileError
from movement_core.sheet.text import as_text
from workbench_pkg.actions.check import check_file
from workbench_pkg.actions.settings import Settings

FOLDERS = {Path(App.getResourceDir()), Path("/usr/share/freecad")}
FILES = sorted({p.resolve() for folder in FOLDERS for p in folder.rglob("*") if p.suffix.lower() == ".fcstd"})


def test_there_are_such_documents():
    assert len(FILES) >= 3


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_an_orderly_report_and_right_sizes(path):
    try:
        entry = check_file(path, Settings(today=datetime.date(2026, 3, 1)), shown=path.name)
    except FileError as error:
        assert "no solids" in str(error) or not zipfile.is_zipfile(path), error
        return
    assert entry["parts"] and as_text(entry)
    doc = App.openDocument(str(path), True)
    try:
        for part in entry["parts"]:
            assert sorted(part["missing"]) in (
                ["moisture", "rings", "species"],
                ["grain", "moisture", "rings", "species"],
            )
            box = doc.getObject(part["key"].split("/")[0].split(".")[0])
            assert box is not None
            # No box is smaller than what is in it, nor longer than the diagonal of the box along the axes.
            size, diagonal = part["box_mm"], box.Shape.BoundBox.DiagonalLength if hasattr(box, "Shape") else None
            assert size[0] >= size[1] >= size[2] > 0
            if diagonal and not box.hasExtension("App::LinkBaseExtension"):
                assert size[0] <= diagonal * 1.0001
                solid = box.Shape.Solids[int(part["key"].rsplit("/", 1)[1])]
                assert size[0] * size[1] * size[2] >= abs(solid.Volume) * 0.9999
    finally:
        App.closeDocument(doc.Name)
