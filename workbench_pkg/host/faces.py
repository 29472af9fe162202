"""The faces of leaf solids for finding what touches what, read once each, and the host's kernel for the rest.

A solid that stands in the piece many times, through links or a link array, is read once in its own frame and
carried to each of its places by the leaf's matrix.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any

import FreeCAD as App
import numpy as np
import Part
from numpy.typing import NDArray

from movement_core.piece.contact.bodies import CHORD_MM, Body, CurvedFace, Cylinder, PlanarFace
from workbench_pkg.host.leaf import Leaf, moved
from workbench_pkg.host.shapes import affine, is_planar

Floats = NDArray[np.float64]

SAME_MM = 1e-7  # the host's own confusion distance


@dataclass(frozen=True, eq=False)
class _OwnFaces:
    """Faces of a solid in its own frame, and the host's faces in the same order, flat ones first."""

    solid: Any
    planar: list[tuple[Floats, list[Floats]]]  # normal, loops
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
    known: dict[tuple[str, str, int], _OwnFaces] = {}
    own, bodies = [], []
    for leaf in leaves:
        key = leaf.source.Document.Name, leaf.source.Name, leaf.index
        if key not in known:
            known[key] = _own_faces(leaf.local_solid())
        own.append(known[key])
        bodies.append(_body(leaf, known[key]))
    places = [(App.Matrix(leaf.matrix), leaf.is_scaled()) for leaf in leaves]
    return LeafFaces(tuple(bodies), own, places)


def _body(leaf: Leaf, own: _OwnFaces) -> Body:
    linear, offset = affine(leaf.matrix)
    mirrored = np.linalg.det(linear) < 0
    upright = np.linalg.inv(linear)
    planar = []
    for normal, loops in own.planar:
        carried = normal @ upright
        planar.append(
            PlanarFace(carried / np.linalg.norm(carried), tuple(loop @ linear.T + offset for loop in loops))
        )
    scaled = leaf.is_scaled()
    curved = []
    for triangles, cylinder in own.curved:
        corners = triangles @ linear.T + offset
        known = None if scaled or cylinder is None else _carried(cylinder, linear, offset)
        curved.append(CurvedFace(corners[:, ::-1] if mirrored else corners, known))
    return Body(leaf.key, leaf.name, tuple(planar), tuple(curved))


def _carried(one: Cylinder, linear: Floats, offset: Floats) -> Cylinder:
    point, axis = linear @ one.point + offset, linear @ one.axis
    return Cylinder(point, axis, one.radius_mm, one.low_mm, one.high_mm, one.angle, one.hollow)


def _own_faces(solid: Any) -> _OwnFaces:
    outward = -1.0 if solid.Volume < 0 else 1.0
    planar, curved, flat_shapes, curved_shapes = [], [], [], []
    for face in solid.Faces:
        if is_planar(face):
            loops = _loops(face)
            planar.append((_normal(face) * outward, loops))
            flat_shapes.append(face)
        else:
            triangles = _mesh(face, outward)
            if len(triangles):
                curved.append((triangles, _cylinder(face, outward)))
                curved_shapes.append(face)
    return _OwnFaces(solid, planar, curved, flat_shapes + curved_shapes)


def _loops(face: Any) -> list[Floats]:
    """The outer outline and the holes of a flat face."""
    wires = face.Wires
    if len(wires) > 1:
        outer = face.OuterWire
        wires = [outer, *(wire for wire in wires if not wire.isSame(outer))]
    return [_points(wire) for wire in wires]


def _points(wire: Any) -> Floats:
    """(K, 3) points in order round a wire: its corners, and on curves as many as the chords need."""
    points: list[tuple[float, float, float]] = []
    edges = wire.OrderedEdges
    if all(isinstance(edge.Curve, (Part.Line, Part.LineSegment)) for edge in edges):
        points = [tuple(vertex.Point) for vertex in wire.OrderedVertexes]
        return np.array(points)
    runs = [_run(edge) for edge in edges]
    for index, run in enumerate(runs):
        following = runs[(index + 1) % len(runs)]
        ahead = min(np.linalg.norm(run[-1] - end) for end in (following[0], following[-1]))
        behind = min(np.linalg.norm(run[0] - end) for end in (following[0], following[-1]))
        if index == 0 and behind < ahead:
            runs[0] = run[::-1]
        elif index and np.linalg.norm(run[0] - runs[index - 1][-1]) > np.linalg.norm(
            run[-1] - runs[index - 1][-1]
        ):
            runs[index] = run[::-1]
    joined = np.concatenate([run[:-1] for run in runs])
    apart = np.linalg.norm(joined - np.roll(joined, 1, axis=0), axis=1) > SAME_MM
    return np.asarray(joined[apart])


def _run(edge: Any) -> Floats:
    """Points along an edge, its ends included."""
    if isinstance(edge.Curve, (Part.Line, Part.LineSegment)):
        return np.array([tuple(edge.Vertexes[0].Point), tuple(edge.Vertexes[-1].Point)])
    return np.array([tuple(point) for point in edge.discretize(Deflection=CHORD_MM)])


def _normal(face: Any) -> Floats:
    u0, u1, v0, v1 = face.ParameterRange
    return _vector(face.normalAt((u0 + u1) / 2, (v0 + v1) / 2))


def _mesh(face: Any, outward: float) -> Floats:
    """(T, 3, 3) triangles of a curved face, seen anticlockwise from outside."""
    points, corners = face.copy().tessellate(CHORD_MM)
    if not corners:
        return np.zeros((0, 3, 3))
    triangles = np.array([tuple(point) for point in points])[np.array(corners)]
    cross = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    triangles, cross = triangles[(size := np.linalg.norm(cross, axis=1)) > 1e-12], cross[size > 1e-12]
    if not len(triangles):
        return np.zeros((0, 3, 3))
    largest = int(np.argmax(np.linalg.norm(cross, axis=1)))
    u, v = face.Surface.parameter(Part.Vertex(*triangles[largest].mean(axis=0)).Point)
    agrees = _vector(face.normalAt(u, v)) @ cross[largest] * outward > 0
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
