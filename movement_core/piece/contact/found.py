"""What is found between two solids: contacts, gaps and overlaps, in the global frame."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

CONTACT_MM = 0.01  # faces closer than this touch, overlaps no deeper than this are none (own judgement)
REACH_MM = 10.0  # gaps up to this size are looked for, unless another reach is asked for (own judgement)

FLAT, ROUND, CURVED = "flat", "round", "curved"


@dataclass(frozen=True, eq=False)
class Contact:
    """An area on which two solids touch.

    Attributes
    ----------
    first, second : indices of the bodies, first < second. faces : their faces, flat ones first, then curved.
    surface : ``flat``, ``round`` (a peg in a hole of its size) or ``curved``.
    area_mm2 : area. normal : (3,) unit, out of the first body; of round contacts the axis of the peg.
    centre : (3,) centre of area. outline : loops (K, 3) round it, the outer ones and the holes.
    exact : False where the figures come from a mesh. peg : of round contacts the body that sits in the hole.
    """

    first: int
    second: int
    faces: tuple[int, int]
    surface: str
    area_mm2: float
    normal: Floats
    centre: Floats
    outline: tuple[Floats, ...]
    exact: bool = True
    peg: int | None = None


@dataclass(frozen=True, eq=False)
class Gap:
    """An area on which two solids face each other across empty space.

    ``least_mm`` and ``most_mm`` are the smallest and the largest width over the area, measured along ``normal``,
    which is square to the first body's face and points to the second; of round gaps it is the axis of the peg and
    the width is measured at right angles to it. The other attributes are those of Contact.
    """

    first: int
    second: int
    faces: tuple[int, int]
    surface: str
    least_mm: float
    most_mm: float
    area_mm2: float
    normal: Floats
    centre: Floats
    outline: tuple[Floats, ...]
    exact: bool = True
    peg: int | None = None

    @property
    def size_mm(self) -> float:
        """Width in the middle."""
        return (self.least_mm + self.most_mm) / 2


@dataclass(frozen=True, eq=False)
class Overlap:
    """Two solids in the same place: a slip in the model.

    ``depth_mm`` is the least thickness of what they share, measured along the normals of its faces, and
    ``direction`` that normal; ``volume_mm3`` is the shared volume, ``centre`` the middle of its box. Where a figure
    comes from a mesh ``exact`` is False.
    """

    first: int
    second: int
    depth_mm: float
    volume_mm3: float
    direction: Floats
    centre: Floats
    exact: bool = True


@dataclass(frozen=True, eq=False)
class Touching:
    """All that is found between the bodies of a piece."""

    contacts: tuple[Contact, ...]
    gaps: tuple[Gap, ...]
    overlaps: tuple[Overlap, ...]
    notes: tuple[str, ...] = ()
