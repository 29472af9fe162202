"""A solid in its own frame, read once however often links show it: its faces, edges, meshes and sizes.

Everything is a copy of the document's solid, so what is read here neither meshes nor changes the document, and the
same board gives the same figures at every place where it stands.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import FreeCAD as App
import numpy as np
import Part
from numpy.typing import NDArray

from movement_core.piece.contact.bodies import CHORD_MM
from movement_core.piece.vectors import box_of, square_to
from workbench_pkg.host.meshing import mesh_of

Vectors = NDArray[np.float64]

STRAIGHT = (Part.Line, Part.LineSegment)


@dataclass(frozen=True, eq=False)
class OwnFace:
    """A face of the host with what is read of it: whether it is flat; on a flat one its outward unit normal (3,)."""

    shape: Any
    flat: bool
    normal: Vectors | None


@dataclass(frozen=True, eq=False)
class OwnOutline:
    """What a ``SolidOutline`` is made of, in the own frame: points (N, 3), normals (F, 3), areas (F,), runs (E, 3)."""

    points: Vectors
    normals: Vectors
    areas: Vectors
    runs: Vectors


class OwnSolid:
    """One solid of a document's object, with the object's placement taken off."""

    def __init__(self, solid: Any, placement: Any) -> None:
        self._given = solid
        self._placement = placement
        self._ranges: dict[bytes, tuple[Vectors, Vectors]] = {}

    @cached_property
    def solid(self) -> Any:
        """The copy that all is read from; whoever changes it takes a copy of it first."""
        solid = self._given.copy()
        solid.Placement = self._placement.inverse().multiply(solid.Placement)
        return solid

    @cached_property
    def length_mm(self) -> float:
        """Longest side of its box, roughly; no finite number where it stands nowhere or has no end."""
        box = self.solid.BoundBox
        low, high = np.array([[box.XMin, box.YMin, box.ZMin], [box.XMax, box.YMax, box.ZMax]])
        return float((high - low).max()) if np.isfinite([low, high]).all() else math.nan

    @cached_property
    def signed_volume_mm3(self) -> float:
        """Below 0 where the solid is inside out."""
        return float(self.solid.Volume)

    @cached_property
    def outward(self) -> float:
        """−1 where the solid is inside out and its normals look inward, else 1."""
        return -1.0 if self.signed_volume_mm3 < 0 else 1.0

    @cached_property
    def faces(self) -> tuple[OwnFace, ...]:
        found = []
        for face in self.solid.Faces:
            flat = is_planar(face)
            found.append(OwnFace(face, flat, _normal(face) * self.outward if flat else None))
        return tuple(found)

    @cached_property
    def flat(self) -> bool:
        """Whether all faces are flat."""
        return all(face.flat for face in self.faces)

    @cached_property
    def vertices(self) -> Vectors:
        """(V, 3) corners."""
        return _rows([_xyz(vertex.Point) for vertex in self.solid.Vertexes])

    @cached_property
    def loops(self) -> tuple[tuple[Vectors, ...], ...]:
        """The outer outline and the holes of each flat face, in the order of the flat faces."""
        return tuple(_loops(face.shape) for face in self.faces if face.flat)

    @cached_property
    def meshes(self) -> tuple[tuple[Vectors, NDArray[np.int64]], ...]:
        """Points (N, 3) and triangles (T, 3) of each curved face, in the order of the curved faces."""
        found = []
        for face in self.faces:
            if not face.flat:
                found.append(mesh_of(face.shape, CHORD_MM))
        return tuple(found)

    @cached_property
    def outline(self) -> OwnOutline:
        points = [self.vertices]
        curved = [face.shape for face in self.faces if not face.flat]
        points += [mesh[0] for face, mesh in zip(curved, self.meshes) if not _is_hollow(face, self.outward)]
        runs = [run for run in map(_straight_run, self.solid.Edges) if run is not None]
        planar = [face for face in self.faces if face.flat]
        normals = np.array([face.normal for face in planar], dtype=float).reshape(-1, 3)
        areas = np.array([face.shape.Area for face in planar], dtype=float)
        return OwnOutline(np.concatenate(points), normals, areas, _rows(runs))

    def ranges(self, directions: Vectors) -> tuple[Vectors, Vectors]:
        """Least and greatest s · d over the points s of the solid for each of the rows d (3, 3)."""
        if self.flat:
            return box_of(self.vertices @ directions.T)
        key = (np.round(directions, 12) + 0.0).tobytes()
        if key not in self._ranges:  # asked again for every link
            self._ranges[key] = _curved_ranges(self.solid, directions)
        return self._ranges[key]


def is_planar(face: Any) -> bool:
    surface = face.Surface
    if isinstance(surface, Part.Plane):
        return True
    if isinstance(surface, (Part.BSplineSurface, Part.BezierSurface)):  # imports write planes so
        return bool(surface.isPlanar())
    return False


def run_along(edge: Any) -> Vectors:
    """Points along an edge, its ends included."""
    if isinstance(edge.Curve, STRAIGHT):
        return np.array([tuple(edge.Vertexes[0].Point), tuple(edge.Vertexes[-1].Point)])
    return np.array([tuple(point) for point in edge.discretize(Deflection=CHORD_MM)])


# ---- outlines of faces ---------------------------------------------------------------------------------------


SAME_MM = 1e-7  # the host's own confusion distance


def _loops(face: Any) -> tuple[Vectors, ...]:
    wires = face.Wires
    if len(wires) > 1:
        outer = face.OuterWire
        wires = [outer, *(wire for wire in wires if not wire.isSame(outer))]
    return tuple(_points(wire) for wire in wires)


def _points(wire: Any) -> Vectors:
    """(K, 3) points in order round a wire: its corners, and on curves as many as the chords need."""
    edges = wire.OrderedEdges
    if all(isinstance(edge.Curve, STRAIGHT) for edge in edges):
        return np.array([tuple(vertex.Point) for vertex in wire.OrderedVertexes])
    runs = [run_along(edge) for edge in edges]
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


def _normal(face: Any) -> Vectors:
    u0, u1, v0, v1 = face.ParameterRange
    return np.array(_xyz(face.normalAt((u0 + u1) / 2, (v0 + v1) / 2)))


def _is_hollow(face: Any, outward: float) -> bool:
    """The wall of a hole or the like: nothing of the solid's convex hull lies on it but perhaps its vertices."""
    surface = face.Surface
    if not isinstance(surface, (Part.Cylinder, Part.Cone)):
        return False
    u0, u1, v0, v1 = face.ParameterRange
    u, v = (u0 + u1) / 2, (v0 + v1) / 2
    from_axis = face.valueAt(u, v) - surface.Center
    axis = surface.Axis
    from_axis -= axis * from_axis.dot(axis)
    return bool(face.normalAt(u, v).dot(from_axis) * outward < 0)


def _straight_run(edge: Any) -> tuple[float, float, float] | None:
    """From end to end of an edge if it is straight, whatever kind of curve carries it."""
    if edge.Degenerated:
        return None
    ends = edge.Vertexes
    if len(ends) != 2:
        return None
    run = ends[1].Point - ends[0].Point
    length = run.Length
    if length <= 1e-6:
        return None
    straight = isinstance(edge.Curve, STRAIGHT) or abs(edge.Length - length) < 1e-7 * edge.Length
    return _xyz(run) if straight else None


# ---- sizes ---------------------------------------------------------------------------------------------------


def _curved_ranges(solid: Any, directions: Vectors) -> tuple[Vectors, Vectors]:
    """Least and greatest s · d over the solid for each row d of directions."""
    scale = np.linalg.norm(directions, axis=1)
    unit = directions / scale[:, None]
    if np.allclose(unit @ unit.T, np.eye(3), atol=1e-9):
        low, high = _turned_box(solid, unit)
    else:  # sheared by the link: the directions are not square to each other, so one box each
        boxes = [_turned_box(solid, _frame_from(direction)) for direction in unit]
        low, high = np.array([box[0][0] for box in boxes]), np.array([box[1][0] for box in boxes])
    return low * scale, high * scale


def _turned_box(solid: Any, frame: Vectors) -> tuple[Vectors, Vectors]:
    """Exact box of the solid in a frame of three orthonormal rows."""
    mirrored = np.linalg.det(frame) < 0
    rows = frame * np.array([[1.0], [1.0], [-1.0 if mirrored else 1.0]])
    turn = App.Matrix()
    turn.A = (*rows[0], 0.0, *rows[1], 0.0, *rows[2], 0.0, 0.0, 0.0, 0.0, 1.0)
    turned = solid.copy()
    turned.Placement = App.Placement(turn).multiply(turned.Placement)
    # BoundBox takes in the poles of curved surfaces and follows any tessellation made before; this is exact.
    # More than one argument, or one that is no bool, fails on 0.20.
    box = turned.optimalBoundingBox(False)
    low = np.array([box.XMin, box.YMin, box.ZMin])
    high = np.array([box.XMax, box.YMax, box.ZMax])
    if mirrored:
        low[2], high[2] = -high[2], -low[2]
    return low, high


def _frame_from(direction: Vectors) -> Vectors:
    """Right-handed orthonormal rows, the first along a unit direction."""
    return np.array([direction, *square_to(direction)])


def _xyz(vector: Any) -> tuple[float, float, float]:
    return vector.x, vector.y, vector.z


def _rows(vectors: list[tuple[float, float, float]]) -> Vectors:
    return np.array(vectors, dtype=float).reshape(-1, 3)
