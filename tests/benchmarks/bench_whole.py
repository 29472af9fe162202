"""A whole check against the host's own open, recompute and mesh, stage by stage, and how it grows.

    python3 -m tests.benchmarks.bench_whole [--quick] [--most N]

Needs a Python that can import FreeCAD. Models: the demo's table and sideboard, an invented wardrobe of some 300
solids (tests/host/wardrobe.py), and stacks of 100, 300, 1,000 and 3,000 tagged blocks, a quarter of them drilled,
every one an object of its own. Seconds are processor seconds of this process on one core, so that other work on the
machine does not count; everything is imported, and one model checked, before anything is timed. The host opens the
file, computes everything in it anew, and meshes every shown shape once at the fineness of its window. Judged are the
ratios of one run (≤ 3) and the exponent of the growth; exit 1 when one is missed. Of plain boxes the ratio is told
only: the host meshes a box in less time than it takes to read its tags.
"""

# ruff: noqa: E402  (the threads must be told before numpy loads)
from __future__ import annotations

import os

for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

import itertools
import math
import sys
import tempfile
import time
from pathlib import Path

import numpy as np

from tests.benchmarks.bench_contact import LONG, THICK, WIDE, reach_host
from tests.benchmarks.rows import Curve, Measured, Row, finish, shortest

MOST_RATIO, MOST_EXPONENT = 3.0, 1.15
STACKS = ((5, 5, 4), (10, 6, 5), (10, 10, 10), (15, 20, 10))
DEVIATION = 0.5  # percent of a shape's mean size: the host's window meshes so


def stack_file(App, folder, shape, drilled=True):
    """Blocks in a grid, glued up of layers, as objects of their own; every fourth has three holes."""
    import Part

    from workbench_pkg.demo.shapes import wood

    name = f"{'stack' if drilled else 'plain'}{math.prod(shape)}"
    doc = App.newDocument(name, hidden=True)
    container = doc.addObject("App::Part", "Turned")
    for number, (i, j, k) in enumerate(np.ndindex(shape)):
        solid = Part.makeBox(LONG, WIDE, THICK)
        if drilled and number % 4 == 0:
            for x in (20, 60, 100):
                solid = solid.cut(Part.makeCylinder(4, THICK, App.Vector(x, WIDE / 2, 0)))
        made = doc.addObject("Part::Feature", f"Block{number}")
        made.Shape = solid
        made.Placement.Base = App.Vector(i * LONG, j * WIDE, k * THICK)
        wood(made, species="white oak", grain="x", show="z", heart="show", pith=(0.0, 60.0), built=9.0)
        container.addObject(made)
    return saved(App, doc, folder, name)


def wardrobe_file(App, folder):
    sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "host"))
    from wardrobe import wardrobe

    doc = App.newDocument("Wardrobe", hidden=True)
    wardrobe(doc)
    return saved(App, doc, folder, "wardrobe")


def saved(App, doc, folder, name):
    doc.recompute()
    path = folder / f"{name}.FCStd"
    doc.saveAs(str(path))
    App.closeDocument(doc.Name)
    return path


def hosts_own(App, path):
    """Seconds of opening, of computing everything anew, of meshing every shown shape."""
    opening, doc = shortest(1, lambda: App.openDocument(str(path), True))

    def compute():
        for obj in doc.Objects:
            obj.touch()
        doc.recompute()

    def mesh():
        for obj in doc.Objects:
            if obj.isDerivedFrom("Part::Feature") and obj.Visibility and not obj.Shape.isNull():
                box = obj.Shape.BoundBox
                size = (box.XLength + box.YLength + box.ZLength) / 3
                obj.Shape.copy().tessellate(max(size * DEVIATION / 100, 1e-3))

    computing, meshing = shortest(1, compute)[0], shortest(1, mesh)[0]
    App.closeDocument(doc.Name)
    return opening, computing, meshing


def ours(path, settings):
    """Seconds of each stage of a check, and the report."""
    from movement_core.checks import CHECKS, by_gravity
    from movement_core.piece.solve import solve_piece
    from movement_core.piece.whole import whole_piece
    from movement_core.sheet.entry import file_entry
    from workbench_pkg.actions.check import read_document
    from workbench_pkg.host.documents import opened

    start = time.process_time()
    marks = [("", start)]
    with opened(path) as doc:
        marks.append(("open", time.process_time()))
        asked = read_document(doc, settings)
        marks.append(("read", time.process_time()))
        piece = solve_piece(asked.read.parts, settings.year, settings.today, settings.today_mc)
        marks.append(("solve", time.process_time()))
        whole = whole_piece(piece, asked.faces.bodies, asked.faces, asked.confirmed)
        marks.append(("contacts", time.process_time()))
        found = by_gravity([finding for check in CHECKS for finding in check(whole)])
        marks.append(("checks", time.process_time()))
        entry = file_entry(str(path), piece, found, asked.told, asked.read.hidden, settings.told, whole)
        marks.append(("report", time.process_time()))
    marks.append(("close", time.process_time()))
    stages = {name: after - before for (_, before), (name, after) in itertools.pairwise(marks)}
    return marks[-1][1] - start, stages, entry


def judged(App, path, settings):
    """Our seconds over the host's on one file, as a row; with how many parts and seconds."""
    host = hosts_own(App, path)
    seconds, stages, entry = ours(path, settings)
    shares = ", ".join(f"{name} {100 * spent / seconds:.0f} %" for name, spent in stages.items())
    print(
        f"{path.stem:14s} {len(entry['parts']):5d} solids: check {seconds:6.2f} s, host {sum(host):6.2f} s (open "
        f"{host[0]:.2f}, compute {host[1]:.2f}, mesh {host[2]:.2f})   {shares}",
        flush=True,
    )
    count = len(entry["parts"])
    against = "the host's open, recompute and mesh"
    most = None if path.stem.startswith("plain") else MOST_RATIO
    row = Row(f"whole check, {path.stem}, {count} solids", against, seconds / sum(host), most=most)
    return count, seconds, row


def measure(asked):
    App = reach_host()
    if App is None:
        return Measured(left_out=["a whole check against the host's own work: no FreeCAD for this Python"])
    from workbench_pkg.actions.settings import settings_from_texts
    from workbench_pkg.demo.build import build_demo

    settings = settings_from_texts("", "2026-03-15", None)
    told, stacks = Measured(), []
    with tempfile.TemporaryDirectory() as scratch:
        folder = Path(scratch)
        demos = [path for path in build_demo(folder) if path.suffix == ".FCStd"]
        ours(demos[0], settings)
        makers = [lambda p=path: p for path in demos]
        makers.append(lambda: wardrobe_file(App, folder))
        makers += [
            lambda s=shape: stack_file(App, folder, s) for shape in STACKS if math.prod(shape) <= asked.most
        ]
        makers.append(lambda: stack_file(App, folder, STACKS[1], drilled=False))
        for make in makers:
            path = make()
            count, seconds, row = judged(App, path, settings)
            told.rows.append(row)
            if path.stem.startswith("stack"):
                stacks.append((count, seconds))
    curve = Curve("whole check, open to report", "solids", "s", tuple(stacks))
    told.curves.append(curve)
    if len(stacks) < 2:
        return told
    grows = f"exponent of a whole check, {stacks[0][0]} to {stacks[-1][0]} solids"
    told.rows.append(Row(grows, "1: in proportion", curve.exponent, most=MOST_EXPONENT, unit=""))
    return told


WORDS = (("--most", 3000, 300, "largest stack"),)

if __name__ == "__main__":
    finish(measure, __doc__, WORDS)
