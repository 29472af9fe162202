"""A small hall bench as a STEP file with its tags in a CSV beside it: the way in for models from elsewhere.

Invented for the demo. Two seat boards, two ends that stand in housings of the seat, a stretcher. The grain of
the seat runs along it and that of the ends upright, so all three swell and shrink in depth together.
"""

from __future__ import annotations

import csv
from pathlib import Path
from typing import Any

import FreeCAD as App
import Import

from workbench_pkg.demo.faults import BENCH
from workbench_pkg.demo.shapes import block, cut, fuse, new

LENGTH, SEAT_BOARD_WIDTH, THICKNESS, HEIGHT = 1000.0, 150.0, 26.0, 430.0
END_X, END_WIDTH = 360.0, 280.0
HOUSING = 8.0
FOOT_ARCH_RADIUS, FOOT_ARCH_DROP = (
    130.0,
    80.0,
)  # the arch between the feet: radius; how far its centre is down
STRETCHER_HEIGHT, STRETCHER_THICKNESS, STRETCHER_Z = 80.0, 24.0, 200.0
TENON_LENGTH, TENON_HEIGHT, TENON_THICKNESS = 16.0, 56.0, 10.0

SPECIES = "European ash"
COLUMNS = ("part", "species", "grain", "show", "heart", "cut", "pith", "finish", "built")
TAGS = (
    ("Seat board front", SPECIES, "x", "z", "show", "", "10 85", "oil 2", "10"),
    ("Seat board back", SPECIES, "x", "z", "show", "", "-25 120", "oil 2", "10"),
    ("End left", SPECIES, "z", "-x", "", "flat", "", "oil 2", "10"),
    ("End right", SPECIES, "z", "x", "", "flat", "", "oil 2", "10"),
    ("Stretcher", SPECIES, "x", "-y", "", "quarter", "", "oil 2", "10"),
)
UNTOLD_BUILT = "Stretcher"  # its moisture as built is left out, unless repaired


def hall_bench(doc: Any) -> list[Any]:
    """The bench's five parts in an open document, its middle at x = y = 0 and the floor at z = 0."""
    low, high = HEIGHT - THICKNESS, HEIGHT
    housings = [
        block(doc, f"Housing {side}", _end_corner(x, low), (x + THICKNESS / 2, END_WIDTH / 2, low + HOUSING))
        for side, x in (("left", -END_X), ("right", END_X))
    ]
    seat = []
    for name, y in (("front", -SEAT_BOARD_WIDTH), ("back", 0.0)):
        label = f"Seat board {name}"
        blank = block(doc, f"{label} blank", (-LENGTH / 2, y, low), (LENGTH / 2, y + SEAT_BOARD_WIDTH, high))
        seat.append(cut(doc, label, blank, housings))
    ends = [_end(doc, side, x) for side, x in (("left", -END_X), ("right", END_X))]
    parts = [*seat, *ends, _stretcher(doc)]
    doc.recompute()
    return parts


def write_bench(folder: Path, repaired: bool = False) -> Path:
    """Write the STEP file and the CSV into a folder; returns the STEP file."""
    path = folder / f"{BENCH}.step"
    doc = App.newDocument("HallBench", hidden=True)
    try:
        Import.export(hall_bench(doc), str(path))
    finally:
        App.closeDocument(doc.Name)
    rows = [row if repaired or row[0] != UNTOLD_BUILT else (*row[:-1], "") for row in TAGS]
    with path.with_suffix(".wood.csv").open("w", encoding="utf-8", newline="") as table:
        csv.writer(table).writerows([COLUMNS, *rows])
    return path


def _end_corner(x: float, z: float) -> tuple[float, float, float]:
    return (x - THICKNESS / 2, -END_WIDTH / 2, z)


def _tenon(doc: Any, label: str, shoulder: float, length: float) -> Any:
    """The stretcher's tenons, from end to end, so that they cut both mortises."""
    reach, half = shoulder + length, TENON_HEIGHT / 2
    y = TENON_THICKNESS / 2
    return block(doc, label, (-reach, -y, STRETCHER_Z - half), (reach, y, STRETCHER_Z + half))


def _end(doc: Any, side: str, x: float) -> Any:
    top = HEIGHT - THICKNESS + HOUSING
    blank = block(doc, f"End {side} blank", _end_corner(x, 0), (x + THICKNESS / 2, END_WIDTH / 2, top))
    arch = new(doc, "Part::Cylinder", f"End {side} arch")
    arch.Radius, arch.Height = FOOT_ARCH_RADIUS, THICKNESS + 2
    arch.Placement = App.Placement(
        App.Vector(x - THICKNESS / 2 - 1, 0, -FOOT_ARCH_DROP), App.Rotation(App.Vector(0, 1, 0), 90)
    )
    mortise = _tenon(doc, f"End {side} mortise", END_X - THICKNESS / 2, TENON_LENGTH + 1)
    return cut(doc, f"End {side}", blank, [arch, mortise])


def _stretcher(doc: Any) -> Any:
    shoulder = END_X - THICKNESS / 2
    y, half = STRETCHER_THICKNESS / 2, STRETCHER_HEIGHT / 2
    core = block(
        doc, "Stretcher core", (-shoulder, -y, STRETCHER_Z - half), (shoulder, y, STRETCHER_Z + half)
    )
    return fuse(doc, "Stretcher", [core, _tenon(doc, "Stretcher tenons", shoulder, TENON_LENGTH)])
