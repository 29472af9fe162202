"""The sideboard's turned foot: drawn in a document of its own, sent through a STEP file, and imported.

A STEP file carries an object's label, and so the tag in it, but 0.20 reads the solid without its label: there
the same tag goes on as typed properties.
"""

from __future__ import annotations

import tempfile
from pathlib import Path
from typing import Any

import FreeCAD as App
import Import
import Part

from workbench_pkg.demo.fittings import FOOT_PIN_DEPTH, FOOT_PIN_RADIUS
from workbench_pkg.demo.shapes import said, turned, wood
from workbench_pkg.host.version import host_version

FOOT_HEIGHT = 150.0
FLANGE_RADIUS, TOE_RADIUS = 26.0, 13.0
SPECIES, GRAIN, CUT, BUILT_MC = "black cherry", "z", "rift", 8.0


def write_foot(path: Path, label: str) -> None:
    """Draw the foot (its shoulder at z = 0, its pin above, its toe at -FOOT_HEIGHT) and write it as STEP."""
    doc = App.newDocument("TurnedFoot", hidden=True)
    try:
        profile = [
            (TOE_RADIUS, -FOOT_HEIGHT),
            (0.0, -FOOT_HEIGHT),
            (0.0, FOOT_PIN_DEPTH),
            (FOOT_PIN_RADIUS, FOOT_PIN_DEPTH),
            (FOOT_PIN_RADIUS, 0.0),
            (FLANGE_RADIUS, 0.0),
            (FLANGE_RADIUS, -14.0),
        ]
        curve = [(20, -20), (24, -38), (27, -55), (23, -85), (17, -120)]
        foot = turned(doc, label, profile, curve)
        doc.recompute()
        Import.export([foot], str(path))
    finally:
        App.closeDocument(doc.Name)


def imported_foot(home: Any, label: str) -> Any:
    """The foot, imported from STEP into a container."""
    doc = home.Document
    before = {obj.Name for obj in doc.Objects}
    with tempfile.TemporaryDirectory(prefix="heartside-foot-") as scratch:
        path = Path(scratch) / "turned_foot.step"
        write_foot(path, said(label, f"{SPECIES}; grain {GRAIN}; cut {CUT}; built {BUILT_MC:g}"))
        if host_version() < (1, 0, 0):
            Part.insert(str(path), doc.Name)  # the other import crashes 0.20 on files of several solids
        else:
            Import.insert(str(path), doc.Name)
    arrived = [obj for obj in doc.Objects if obj.Name not in before and hasattr(obj, "Shape")]
    foot = next(obj for obj in arrived if obj.Shape.Solids)
    home.addObject(foot)
    if "wood{" not in foot.Label:
        foot.Label = label
        wood(foot, species=SPECIES, grain=GRAIN, cut=CUT, built=BUILT_MC)
    return foot
