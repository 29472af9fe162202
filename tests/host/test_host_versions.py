"""The host that was found is one we support, and both packages work inside it."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import FreeCAD
import numpy
import Part

SUPPORTED = ((0, 20), (1, 0), (1, 1))


def test_version_is_one_we_test_on(host_version):
    assert host_version[:2] in SUPPORTED


def test_there_is_no_window():
    assert not FreeCAD.GuiUp


def test_profile_is_the_private_one():
    home = Path(os.environ["FREECAD_USER_HOME"]).resolve()
    assert Path(FreeCAD.getUserAppDataDir()).resolve().is_relative_to(home)


def test_numpy_is_the_hosts_own():
    # A newer numpy in the environment would break the host's compiled modules.
    own = Path(sys.prefix).resolve()
    if sys.prefix != sys.base_prefix:
        assert not Path(numpy.__file__).resolve().is_relative_to(own)


def test_core_gives_the_published_moisture_inside_the_host():
    # USDA Wood Handbook, table of equilibrium moisture: 21.1 °C (70 °F), 65 % → 12.0 percent (from memory)
    from movement_core.air.emc import equilibrium_moisture

    assert abs(float(equilibrium_moisture(21.1, 65.0)) - 12.0) < 0.1


def test_core_and_extension_come_from_this_project():
    import movement_core
    import workbench_pkg

    root = Path(__file__).resolve().parents[2]
    for package in (movement_core, workbench_pkg):
        assert Path(package.__file__).resolve().is_relative_to(root)


def test_a_solid_can_be_made_measured_and_saved(doc, tmp_path):
    board = doc.addObject("Part::Box", "Board")
    board.Length, board.Width, board.Height = 600, 140, 22
    doc.recompute()
    assert abs(board.Shape.Volume - 600 * 140 * 22) < 1e-3
    path = str(tmp_path / "board.FCStd")
    doc.saveAs(path)
    FreeCAD.closeDocument(doc.Name)
    again = FreeCAD.openDocument(path)
    assert isinstance(again.Objects[0].Shape, Part.Solid)


def test_documents_of_the_last_test_are_gone():
    assert FreeCAD.listDocuments() == {}
