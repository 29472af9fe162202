"""Makes the frozen document of the host that runs this: ``freecadcmd tests/documents/make.py`` in the project.

One for each release of the host, made once and never again: later releases of ours must open what earlier ones
wrote. The piece is our own invention: two boards, one of them a link, and a shelf on a bracket of metal.
"""

from __future__ import annotations

import datetime
import os
import sys
from pathlib import Path

sys.path.insert(0, os.getcwd())  # the host runs this from the project's folder

import FreeCAD

import workbench_pkg.objects.proxies  # noqa: F401
from movement_core import find_year
from workbench_pkg.actions.annotate import annotate
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.tag import tag
from workbench_pkg.actions.year import set_year
from workbench_pkg.objects.study import find_study

YEAR = "heated maritime home"
DAY = datetime.date(2026, 1, 15)


def build() -> FreeCAD.Document:
    """The document as this release writes it."""
    doc = FreeCAD.newDocument("frozen")
    board = doc.addObject("Part::Box", "Board")
    board.Length, board.Width, board.Height = 900, 150, 24
    twin = doc.addObject("App::Link", "Twin")
    twin.LinkedObject = board
    twin.Placement.Base = FreeCAD.Vector(0, 150, 0)
    shelf = doc.addObject("Part::Box", "Shelf")
    shelf.Label = "Shelf wood{black walnut; grain x; show z; rings 70; built 8}"
    shelf.Length, shelf.Width, shelf.Height = 600, 200, 20
    shelf.Placement = FreeCAD.Placement(
        FreeCAD.Vector(0, 0, 400), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 20)
    )
    bracket = doc.addObject("Part::Box", "Bracket")
    bracket.Length, bracket.Width, bracket.Height = 40, 40, 300
    bracket.Placement.Base = FreeCAD.Vector(20, 20, 90)
    doc.recompute()
    facts = {"grain": "x", "show": "z", "finish": "varnish 2", "figure": "plain"}
    tag([board], species="white oak", pith=(12, -70), glued=8, flattened=9, fitted=9.5, **facts)
    tag([twin], species="white oak", cut="flat", heart="back", built=9, **facts)
    tag([bracket], species="steel")
    set_year(doc, YEAR)
    find_study(doc).HeartsideDate = DAY.isoformat()
    annotate(doc, Settings(find_year(YEAR), DAY))
    return doc


def main() -> None:
    """Write it beside this script, unless it is there."""
    release = ".".join(FreeCAD.Version()[:2])
    path = Path("tests/documents") / f"frozen-0.1-host-{release}.FCStd"
    if "HEARTSIDE_FROZEN" in os.environ:
        path = Path(os.environ["HEARTSIDE_FROZEN"]) / path.name
    if path.exists():
        print(f"{path} is there already and stays as it is", file=sys.stderr)
        return
    build().saveAs(str(path.resolve()))


if __name__ in ("__main__", "make"):  # the host runs scripts under their own name
    main()
    sys.stdout.flush()
    os._exit(0)
