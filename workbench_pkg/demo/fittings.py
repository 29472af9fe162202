"""Small parts of the sideboard that are not its own joinery: hinges, knobs, and the turned foot's measures."""

from __future__ import annotations

from typing import Any

from workbench_pkg.demo.shapes import at, block, fuse, link, new, turned, wood

HINGES_Z = (82.0, 460.0)  # lower ends, in the carcase's frame
HINGE_LENGTH, HINGE_DEPTH, HINGE_LET_IN = 50.0, 16.0, 1.2
BARREL_RADIUS = 3.0
FOOT_PIN_RADIUS, FOOT_PIN_DEPTH = 12.5, 14.0
KNOB_PIN_RADIUS, KNOB_PIN_LENGTH = 5.0, 13.0
KNOB_HOLE_DEPTH = 14.0


def hinge_recesses(home: Any, face: float, z_shift: float = 0.0) -> list[Any]:
    """Cutters for both hinge leaves in a board whose face, square to x, is at `face`; see ``HINGES_Z``."""
    made = []
    for number, z in enumerate(HINGES_Z, start=1):
        low = (face - HINGE_LET_IN, -1.0, z - z_shift)
        high = (face + HINGE_LET_IN, HINGE_DEPTH, z - z_shift + HINGE_LENGTH)
        made.append(block(home, f"{home.Label} hinge recess {number}", low, high))
    return made


def hinges(home: Any, face: float, gap: float) -> None:
    """Two butt hinges, closed, between a side's face and a door `gap` mm away from it."""
    z = HINGES_Z[0]
    leaves = block(
        home,
        "Hinge leaves",
        (face - HINGE_LET_IN, -BARREL_RADIUS, z),
        (face + gap + HINGE_LET_IN, HINGE_DEPTH, z + HINGE_LENGTH),
    )
    barrel = new(home, "Part::Cylinder", "Hinge barrel")
    barrel.Radius, barrel.Height = BARREL_RADIUS, HINGE_LENGTH
    barrel.Placement = at(face + gap / 2, -BARREL_RADIUS, z)
    first = wood(fuse(home, "Hinge 1", [leaves, barrel]), species="brass")
    link(home, "Hinge 2", first, at(0, 0, HINGES_Z[1] - z))


def knob(home: Any, label: str, place: Any, species: str | None = "black walnut") -> Any:
    """A turned knob, its axis along its own z, its shoulder at z = 0 and its pin below it."""
    profile = [
        (0, 24),
        (0, -KNOB_PIN_LENGTH),
        (KNOB_PIN_RADIUS, -KNOB_PIN_LENGTH),
        (KNOB_PIN_RADIUS, 0),
        (9, 0),
    ]
    curve = [(7, 6), (9, 11), (14, 15.5), (13, 21), (6, 23.7)]
    made = turned(home, label, profile, curve)
    made.Placement = place
    return wood(made, grain="z", cut="flat", built=8.0, **({"species": species} if species else {}))


def facing_front(x: float, z: float) -> Any:
    """The place of a knob on a front at y = 0."""
    return at(x, 0, z, axis=(1, 0, 0), angle=90)


def knob_hole(home: Any, label: str, x: float, z: float) -> Any:
    """Cutter for a knob's pin in a front at y = 0."""
    hole = new(home, "Part::Cylinder", label)
    hole.Radius, hole.Height = KNOB_PIN_RADIUS, KNOB_HOLE_DEPTH
    hole.Placement = at(x, KNOB_HOLE_DEPTH, z, axis=(1, 0, 0), angle=90)
    return hole
