"""The faces of a solid as the host hands them over, once: polygons in the global frame, meshes where it curves."""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class PlanarFace:
    """One flat face, mm, in the global frame.

    Attributes
    ----------
    normal : (3,) unit, out of the solid.
    loops : the outer outline, then the holes, each (K, 3) points in order round it, not closed, either way round.
        Round outlines are polygons whose chords lie within ``bodies.CHORD_MM`` of the arc.
    """

    normal: Floats
    loops: tuple[Floats, ...]


@dataclass(frozen=True, eq=False)
class Cylinder:
    """The round part of a curved face: a peg's outside or the wall of a hole.

    Attributes
    ----------
    point, axis : (3,) a point on the axis, its unit direction. radius_mm : radius.
    low_mm, high_mm : where the face begins and ends along the axis, from ``point``.
    angle : how much of the full turn the face covers, radians.
    hollow : the wall of a hole (True) or the outside of a peg (False).
    """

    point: Floats
    axis: Floats
    radius_mm: float
    low_mm: float
    high_mm: float
    angle: float
    hollow: bool


@dataclass(frozen=True, eq=False)
class CurvedFace:
    """One curved face as a mesh.

    ``triangles`` is (T, 3, 3), corners counter-clockwise seen from outside, chords within CHORD_MM of the surface;
    ``cylinder`` what is exactly known of it where it is a full-height piece of a cylinder.
    """

    triangles: Floats
    cylinder: Cylinder | None = None


CHORD_MM = 0.02  # how far the chords of round outlines and of meshes may lie off the true line or surface


@dataclass(frozen=True, eq=False)
class Placed:
    """How a solid that may stand in the piece many times was brought to its place: x = linear · own + offset.

    ``solid`` is the same for all places of one solid and for no other; ``linear`` (3, 3), ``offset`` (3,) mm.
    """

    solid: Hashable
    linear: Floats
    offset: Floats


@dataclass(frozen=True, eq=False)
class Body:
    """All faces of one solid; ``key`` and ``name`` are those of the part it is.

    ``placed``: where it is known, which solid it is and where it stands; then what lies between it and another is
    worked out once for all pairs that stand alike.
    """

    key: str
    name: str
    planar: tuple[PlanarFace, ...]
    curved: tuple[CurvedFace, ...] = ()
    placed: Placed | None = None

    @property
    def points(self) -> Floats:
        """(N, 3) all points of the faces."""
        return np.vstack([*_points(self.planar), *(face.triangles.reshape(-1, 3) for face in self.curved)])


def _points(faces: Iterable[PlanarFace]) -> Iterable[Floats]:
    return (loop for face in faces for loop in face.loops)
