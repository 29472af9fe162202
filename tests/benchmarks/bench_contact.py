"""Contacts of a thousand solids against the host's exact distances on the same pairs, and how the cost grows.

    python3 -m tests.benchmarks.bench_contact [--quick] [--every N] [--most N]

Growth needs no host: turned stacks of 100 to 3,000 blocks, a quarter of them bored, seconds a solid, for contacts and
for where the parts go and what their joints bear. The rest
needs a Python that can import FreeCAD (its libraries are looked for where Debian puts them): a 10 × 10 × 10 stack,
a quarter drilled, read from a document, and an invented wardrobe of 301 solids with doors, dovetailed drawers, pegs
and knobs (tests/host/wardrobe.py). Our time is reading the faces and finding contacts, gaps and overlaps; the host's
is distToShape on every pair whose boxes come within reach. ``--every N`` asks the host for every Nth pair only and
multiplies. Judged are ratios of one run on one core; exit 1 when one is missed.
"""

# ruff: noqa: E402  (the threads must be told before numpy loads)
from __future__ import annotations

import os

for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")

import datetime
import math
import sys
import tempfile
import time
from pathlib import Path

import numpy as np

from movement_core.air.presets import find_year
from movement_core.piece.contact.carried import carried_positions
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.joints import joints_of
from movement_core.piece.contact.meetings import meetings_of
from movement_core.piece.contact.pairs import near_bodies
from movement_core.piece.restrained import restrained
from movement_core.piece.solve import solve_piece
from tests.benchmarks.rows import Curve, Measured, Row, finish, shortest
from tests.core.contact_solids import blocks, bored, piece_of, pose

REACH = 10.0
SIZES = ((5, 5, 4), (10, 6, 5), (10, 10, 10), (15, 20, 10))
LONG, WIDE, THICK = 120.0, 60.0, 22.0
GROWTH, SHARE = 1.5, 0.1
NETWORK_GROWTH = 4.0  # of where the parts go and what their joints bear, a part, from 100 to 3,000
LIBRARIES = ("/usr/lib/freecad/lib", "/usr/lib/freecad-python3/lib")


def stack(shape, where):
    """Blocks in a grid, each touching its neighbours; every fourth has a hole."""
    bodies = []
    for number, (i, j, k) in enumerate(np.ndindex(shape)):
        low = (i * LONG, j * WIDE, k * THICK)
        high = tuple(np.add(low, (LONG, WIDE, THICK)))
        middle = (low[0] + LONG / 2, low[1] + WIDE / 2)
        name = f"block {number}"
        made = bored(name, low, high, 8.0, where, middle, 24) if number % 4 == 0 else None
        bodies.append(made or blocks(name, [(low, high)], where=where))
    return bodies


def touching(shape):
    a, b, c = shape
    return (a - 1) * b * c + a * (b - 1) * c + a * b * (c - 1)


def growth(sizes):
    """How seconds a solid grow from the smallest stack to the largest."""
    each, points = [], []
    for shape in sizes:
        bodies = stack(shape, pose(1))
        seconds, found = shortest(2, lambda b=bodies: contacts_of(b, REACH))
        flat = sum(contact.surface == "flat" for contact in found.contacts)
        if flat != touching(shape) or found.overlaps:
            raise SystemExit(f"{len(bodies)} blocks: {flat} contacts, {len(found.overlaps)} overlaps: wrong")
        each.append(seconds / len(bodies))
        points.append((len(bodies), seconds))
        print(f"{len(bodies):5d} blocks: {seconds:7.2f} s, {1e3 * each[-1]:.2f} ms each, {flat} contacts")
    row = Row(
        f"contacts of {points[-1][0]} solids, a solid", f"of {points[0][0]}", each[-1] / each[0], most=GROWTH
    )
    return Measured([row], [Curve("contacts", "solids", "s", tuple(points))])


def network_growth(sizes):
    """How positions and forces grow, a part; turned stacks again, as woods built at other moistures.

    Processor time. Every other block has its grain crosswise, and all joints are unknown or glued edges, so that all
    blocks strain each other, more closely than furniture does.
    """
    year, day = find_year("heated cold-winter home"), datetime.date(2026, 3, 15)
    each, counts = [], []
    for shape in sizes:
        where = pose(1)
        bodies = stack(shape, where)
        tags = [
            f"white oak; pith 0 -200; built {8 + n % 5 / 2:g}; grain {'xy'[n % 2]}"
            for n in range(len(bodies))
        ]
        parts = piece_of(list(zip(bodies, tags)), where)
        solved = solve_piece(parts, year, day).parts
        joints = joints_of(parts, meetings_of(contacts_of(bodies, REACH)))
        marks = [time.process_time()]
        carried_positions(solved, joints)
        marks.append(time.process_time())
        forces = restrained(solved, joints)
        marks.append(time.process_time())
        each.append(np.diff(marks) / len(bodies))
        counts.append(len(bodies))
        most = max(one.force_n or 0.0 for one in forces.joints)
        print(
            f"{len(bodies):5d} blocks, {len(joints)} joints: {1e3 * each[-1][0]:.2f} ms a part for positions, "
            f"{1e3 * each[-1][1]:.2f} ms for forces, {most / 1000:.1f} kN at most"
        )
    told = Measured()
    for what, spent in zip(("positions of parts", "forces of joints"), np.transpose(each)):
        ratio = float(spent[-1] / spent[0])
        told.rows.append(
            Row(f"{what}, {counts[-1]} parts, a part", f"of {counts[0]}", ratio, most=NETWORK_GROWTH)
        )
        told.curves.append(Curve(what, "parts", "s", tuple(zip(counts, (spent * counts).tolist()))))
    return told


def reach_host():
    """The host as a library, in a profile of its own; None where there is none."""
    os.environ.setdefault("FREECAD_USER_HOME", tempfile.mkdtemp(prefix="heartside-bench-"))
    sys.path += [folder for folder in LIBRARIES if os.path.isdir(folder)]
    try:
        import FreeCAD
    except ImportError:
        return None
    modules = Path(FreeCAD.getResourceDir()) / "Mod"
    sys.path += [str(modules), *sorted(str(folder) for folder in modules.iterdir())]
    return FreeCAD


def drilled_stack(App):
    import Part

    doc = App.newDocument("Stack", hidden=True)
    container = doc.addObject("App::Part", "Turned")
    container.Placement = App.Placement(App.Vector(50, 20, 10), App.Rotation(App.Vector(1, 2, 3), 40))
    for number, (i, j, k) in enumerate(np.ndindex(10, 10, 10)):
        shape = Part.makeBox(LONG, WIDE, THICK)
        if number % 4 == 0:
            for x in (20, 60, 100):
                shape = shape.cut(Part.makeCylinder(4, THICK, App.Vector(x, WIDE / 2, 0)))
        made = doc.addObject("Part::Feature", f"Block{number}")
        made.Shape = shape
        made.Placement.Base = App.Vector(i * LONG, j * WIDE, k * THICK)
        container.addObject(made)
    doc.recompute()
    return doc


def wardrobe_of(App):
    """The invented wardrobe of three bays, 301 solids (tests/host/wardrobe.py)."""
    sys.path.insert(0, str(Path(__file__).resolve().parents[1] / "host"))
    from wardrobe import wardrobe

    doc = App.newDocument("Wardrobe", hidden=True)
    wardrobe(doc)
    return doc


def against_host(title, doc, every):
    """Our time over the host's on one document, as a row."""
    from workbench_pkg.host.faces import faces_of
    from workbench_pkg.host.leaves import read_leaves

    leaves = [leaf for leaf in read_leaves(doc).leaves if leaf.visible]
    reading, read = shortest(1, lambda: faces_of(leaves))
    finding, found = shortest(1, lambda: contacts_of(read.bodies, REACH, read))
    low, high = (
        np.array([getattr(body.points, end)(axis=0) for body in read.bodies]) for end in ("min", "max")
    )
    pairs = list(zip(*near_bodies(low, high, REACH)))
    solids = [leaf.global_solid() for leaf in leaves]
    asked = pairs[::every]
    theirs, _ = shortest(1, lambda: [solids[a].distToShape(solids[b])[0] for a, b in asked])
    theirs *= len(pairs) / len(asked)
    ours = reading + finding
    print(
        f"{title}: {len(leaves)} solids, {len(pairs)} near pairs: faces {reading:.2f} s + contacts {finding:.2f} s "
        f"({len(found.contacts)} contacts, {len(found.gaps)} gaps, {len(found.overlaps)} overlaps); "
        f"host's distances {theirs:.1f} s ({len(asked)} asked)"
    )
    what = f"faces and contacts of the {title}, {len(leaves)} solids"
    return Row(what, "the host's distances of the same pairs", ours / theirs, most=SHARE)


def measure(asked):
    sizes = [shape for shape in SIZES if math.prod(shape) <= asked.most]
    told = growth(sizes).joined(network_growth(sizes))
    App = reach_host()
    if App is None:
        told.left_out.append("contacts against the host's distances: no FreeCAD for this Python")
        return told
    for title, make in (("stack", drilled_stack), ("wardrobe", wardrobe_of)):
        told.rows.append(against_host(title, make(App), asked.every))
    return told


WORDS = (
    ("--every", 1, 20, "ask the host for every Nth pair only"),
    ("--most", 3000, 1000, "largest stack"),
)

if __name__ == "__main__":
    finish(measure, __doc__, WORDS)
