"""The faces of leaf solids for finding what touches what, read once each, and the host's kernel for the rest.

A solid that stands in the piece many times, through links or a link array, is read once in its own frame and
carried to each of its places by the leaf's matrix.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

import FreeCAD as App
import numpy as np
import Part
from numpy.typing import NDArray

from movement_core.piece.contact.bodies import Body, CurvedFace, Cylinder, Placed, PlanarFace
from movement_core.piece.vectors import cross
from workbench_pkg.host.leaf import Leaf, moved
from workbench_pkg.host.own import OwnSolid
from workbench_pkg.host.shapes import affine

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class _OwnFaces:
    """Faces of a solid in its own frame, and the host's faces in the same order, flat ones first."""

    solid: Any
    planar: list[tuple[Floats, tuple[Floats, ...]]]  # normal, loops
    curved: list[tuple[Floats, Cylinder | None]]  # triangles, what is exactly known
    shapes: list[Any]


@dataclass(eq=False)
class LeafFaces:
    """The bodies of leaves, in their order, and exact answers about them: the core's ``Kernel``.

    It holds copies of the solids and looks at no document, so it may be asked from another thread than the window's.
    """

    bodies: tuple[Body, ...]
    _own: list[_OwnFaces]
    _places: list[tuple[Any, bool]]  # matrix, and whether it stretches, shears or mirrors
    _placed: dict[tuple[int, int], Any] = field(default_factory=dict)

    def face_distance(self, body: int, face: int, other: int, other_face: int) -> float | None:
        try:
            return float(self._face(body, face).distToShape(self._face(other, other_face))[0])
        except Exception:  # the kernel gives up in its own ways; the mesh's figure stands then
            return None

    def shared_volume(self, body: int, other: int) -> float | None:
        try:
            common = self._solid(body).common(self._solid(other))
            return float(abs(common.Volume))
        except Exception:
            return None

    def _face(self, body: int, face: int) -> Any:
        key = body, face
        if key not in self._placed:
            shape = self._own[body].shapes[face].copy()
            matrix, scaled = self._places[body]
            if scaled:
                shape = shape.transformGeometry(matrix)
            else:
                shape.transformShape(matrix)
            self._placed[key] = shape
        return self._placed[key]

    def _solid(self, body: int) -> Any:
        return moved(self._own[body].solid.copy(), *self._places[body])


def faces_of(leaves: Sequence[Leaf]) -> LeafFaces:
    """Read the faces of leaves. Raises what the host raises on a solid it cannot read."""
    known: dict[OwnSolid, _OwnFaces] = {}
    own, bodies = [], []
    for leaf in leaves:
        if leaf.own not in known:
            known[leaf.own] = _own_faces(leaf.own)
        own.append(known[leaf.own])
        bodies.append(_body(leaf, known[leaf.own]))
    places = [(App.Matrix(leaf.matrix), leaf.is_scaled()) for leaf in leaves]
    return LeafFaces(tuple(bodies), own, places)


def _body(leaf: Leaf, own: _OwnFaces) -> Body:
    linear, offset = affine(leaf.matrix)
    mirrored = np.linalg.det(linear) < 0
    upright = np.linalg.inv(linear)
    planar = []
    for normal, loops in own.planar:
        carried = normal @ upright
        length = math.sqrt(carried @ carried)
        planar.append(PlanarFace(carried / length, tuple(loop @ linear.T + offset for loop in loops)))
    scaled = leaf.is_scaled()
    curved = []
    for triangles, cylinder in own.curved:
        corners = triangles @ linear.T + offset
        known = None if scaled or cylinder is None else _carried(cylinder, linear, offset)
        curved.append(CurvedFace(corners[:, ::-1] if mirrored else corners, known))
    return Body(leaf.key, leaf.name, tuple(planar), tuple(curved), Placed(own, linear, offset))


def _carried(one: Cylinder, linear: Floats, offset: Floats) -> Cylinder:
    point, axis = linear @ one.point + offset, linear @ one.axis
    return Cylinder(point, axis, one.radius_mm, one.low_mm, one.high_mm, one.angle, one.hollow)


def _own_faces(solid: OwnSolid) -> _OwnFaces:
    curved, curved_shapes = [], []
    flat = [face for face in solid.faces if face.flat]
    for face, mesh in zip((face.shape for face in solid.faces if not face.flat), solid.meshes):
        triangles = _triangles(face, mesh, solid.outward)
        if len(triangles):
            curved.append((triangles, _cylinder(face, solid.outward)))
            curved_shapes.append(face)
    planar = [(face.normal, loops) for face, loops in zip(flat, solid.loops) if face.normal is not None]
    return _OwnFaces(solid.solid, planar, curved, [face.shape for face in flat] + curved_shapes)


def _triangles(face: Any, mesh: tuple[Floats, NDArray[np.int64]], outward: float) -> Floats:
    """(T, 3, 3) triangles of a curved face, seen anticlockwise from outside."""
    points, corners = mesh
    triangles = points[corners]
    seen = cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    triangles, seen = triangles[(size := np.linalg.norm(seen, axis=1)) > 1e-12], seen[size > 1e-12]
    if not len(triangles):
        return np.zeros((0, 3, 3))
    largest = int(np.argmax(np.linalg.norm(seen, axis=1)))
    u, v = face.Surface.parameter(Part.Vertex(*triangles[largest].mean(axis=0)).Point)
    agrees = _vector(face.normalAt(u, v)) @ seen[largest] * outward > 0
    return triangles if agrees else triangles[:, ::-1]


def _cylinder(face: Any, outward: float) -> Cylinder | None:
    """What is exactly known of a face that is a full-height piece of a cylinder."""
    surface = face.Surface
    if not isinstance(surface, Part.Cylinder):
        return None
    u0, u1, v0, v1 = face.ParameterRange
    radius = surface.Radius
    if abs(face.Area - radius * (u1 - u0) * (v1 - v0)) > 1e-6 * face.Area:
        return None  # its ends are not square
    axis, centre = _vector(surface.Axis), _vector(surface.Center)
    point = _vector(face.valueAt((u0 + u1) / 2, (v0 + v1) / 2))
    from_axis = point - centre - ((point - centre) @ axis) * axis
    normal = _vector(face.normalAt((u0 + u1) / 2, (v0 + v1) / 2))
    low, high = sorted(float((_vector(face.valueAt(u0, v)) - centre) @ axis) for v in (v0, v1))
    return Cylinder(centre, axis, radius, low, high, u1 - u0, bool(normal @ from_axis * outward < 0))


def _vector(host: Any) -> Floats:
    return np.array((host.x, host.y, host.z))
