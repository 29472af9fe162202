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
from workbench_pkg.host.leaves import read_leaves

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
    assert as_text(entry)
    if not entry["parts"]:
        assert entry["hidden"] and "hidden" in entry["errors"][-1]["message"]
        return
    doc = App.openDocument(str(path), True)
    try:
        leaves = {leaf.key: leaf for leaf in read_leaves(doc).leaves}
        assert set(leaves) == {part["key"] for part in entry["parts"]}
        for part in entry["parts"]:
            assert sorted(part["missing"]) in (
                ["moisture", "rings", "species"],
                ["grain", "moisture", "rings", "species"],
            )
            solid = leaves[part["key"]].global_solid()
            # No box is smaller than what is in it, nor longer than the diagonal of the box along the axes.
            size = part["box_mm"]
            assert size[0] >= size[1] >= size[2] > 0
            assert size[0] <= solid.optimalBoundingBox(False).DiagonalLength * 1.0001 + 0.01
            assert size[0] * size[1] * size[2] >= abs(solid.Volume) * 0.999
    finally:
        App.closeDocument(doc.Name)
