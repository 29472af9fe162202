"""Hardware as plain solids, boxes, cylinders and slots: what is put in, and what is cut away for it."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import InputError
from movement_core.piece.top_place import TopPlace
from movement_core.wording import say

Floats = NDArray[np.float64]
Point = tuple[float, float, float]

BOX, CYLINDER, SLOT = "box", "cylinder", "slot"


@dataclass(frozen=True)
class Body:
    """One simple solid.

    Attributes
    ----------
    shape : "box", "cylinder" (round about z) or "slot" (along x with round ends, standing on z).
    centre_mm : its middle, global. axes : unit rows x, y, z, right-handed, global.
    size_mm : along x, y, z. A cylinder's first two are its diameter; a slot's x is its length end to end.
    """

    shape: str
    centre_mm: Point
    axes: tuple[Point, Point, Point]
    size_mm: Point

    def __post_init__(self) -> None:
        if self.shape not in (BOX, CYLINDER, SLOT) or not all(
            math.isfinite(v) and v > 0 for v in self.size_mm
        ):
            raise InputError(
                say("no solid: {shape!r} of {size}", shape=self.shape, size=self.size_mm),
                where=say("hardware"),
            )
        if self.shape == SLOT and self.size_mm[0] < self.size_mm[1]:
            raise InputError(say("a slot is at least as long as it is wide"), where=say("hardware"))

    @property
    def volume_mm3(self) -> float:
        """Volume by its closed form, mm³."""
        x, y, z = self.size_mm
        if self.shape == CYLINDER:
            return math.pi / 4 * x * y * z
        if self.shape == SLOT:
            return ((x - y) * y + math.pi / 4 * y * y) * z
        return x * y * z


@dataclass(frozen=True)
class CutBody:
    """Something to cut away.

    Attributes
    ----------
    name : "Slot 3 in Bearer 1". purpose : slot, hole, recess, mortise or groove.
    part : key of the part that it is cut from. number : of its fastener in the plan, 0 for a bar's.
    body : the solid, which stands out of the open face by ``OPEN_MM`` so that the cut is clean.
    blind : the point behind its bottom that must still be wood, global; None where it may go through.
    """

    name: str
    purpose: str
    part: str
    number: int
    body: Body
    blind: Point | None = None


@dataclass(frozen=True)
class Marker:
    """One fastener as it sits today: solids that are joined, less ``holes``. ``number``: in the plan, 0 for a bar's.

    ``own_figures`` : (name, mm) of a fastener that had to be set aside, which outrank those of the plan.
    """

    name: str
    kind: str
    number: int
    bodies: tuple[Body, ...]
    holes: tuple[Body, ...] = ()
    own_figures: tuple[tuple[str, float | None], ...] = ()
    wooden: bool = False


@dataclass(frozen=True)
class Hardware:
    """All the hardware of a plan. ``refused``: what is not cut, one sentence each with the figure."""

    markers: tuple[Marker, ...]
    cuts: tuple[CutBody, ...]
    refused: tuple[str, ...] = ()


OPEN_MM = 1.0  # a cutting body stands out of the open face by this


@dataclass(frozen=True, eq=False)
class Bench:
    """Makes solids from figures in a top's frame: (along, across, up) from the middle of its underside, mm."""

    place: TopPlace

    def point(self, along: float, across: float, up: float) -> Point:
        """Global point."""
        a, u, s = self.place.axes
        return _point(self.place.origin + along * s + across * a + up * u)

    def direction(self, along: float, across: float, up: float) -> Floats:
        a, u, s = self.place.axes
        return np.asarray(along * s + across * a + up * u)

    def box(self, low: Point, high: Point) -> Body:
        """A box between two corners, its sides along the top's axes."""
        return self.turned_box((1.0, 0.0), low, high)

    def turned_box(self, way: tuple[float, float], low: Point, high: Point) -> Body:
        """A box whose x runs along ``way`` (unit, along and across); corners in that turned frame (x, y, up)."""
        middle, size = (np.array(low) + high) / 2, np.array(high) - low
        s, x = way
        along, across = middle[0] * s - middle[1] * x, middle[0] * x + middle[1] * s
        rows = (self.direction(s, x, 0), self.direction(-x, s, 0), self.direction(0, 0, 1))
        return Body(BOX, self.point(along, across, middle[2]), _rows(rows), _point(size))

    def cylinder(self, along: float, across: float, low: float, high: float, diameter: float) -> Body:
        """An upright cylinder between two heights."""
        rows = (self.direction(1, 0, 0), self.direction(0, 1, 0), self.direction(0, 0, 1))
        centre = self.point(along, across, (low + high) / 2)
        return Body(CYLINDER, centre, _rows(rows), (diameter, diameter, high - low))

    def slot(self, along: float, across: float, low: float, high: float, length: float, width: float) -> Body:
        """A slot that runs across the grain, the way the top moves."""
        rows = (self.direction(0, 1, 0), self.direction(-1, 0, 0), self.direction(0, 0, 1))
        centre = self.point(along, across, (low + high) / 2)
        return Body(SLOT, centre, _rows(rows), (length, width, high - low))


def _point(vector: Floats) -> Point:
    x, y, z = (float(v) for v in vector)
    return (x, y, z)


def _rows(rows: tuple[Floats, Floats, Floats]) -> tuple[Point, Point, Point]:
    x, y, z = (_point(row) for row in rows)
    return (x, y, z)
