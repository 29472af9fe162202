"""Shape facts of a leaf solid, exact where the host can be exact.

Everything is read from the solid in its own frame, where its surfaces still have their true types, and
carried to the global frame by the leaf's matrix; so links that are scaled or mirrored need no rebuilt shape.
"""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import numpy as np
import Part
from numpy.typing import NDArray

from movement_core.piece.outline import SolidOutline
from workbench_pkg.host.leaf import Leaf

Vectors = NDArray[np.float64]

CHORD_MM = 0.05  # how far the points on curved faces may leave chords off the true surface


def outline(leaf: Leaf) -> SolidOutline:
    """Vertices, planar faces and straight edges of a leaf in the global frame; see SolidOutline.

    Points on curved faces come from a tessellation (true points of the surface, chords within CHORD_MM of it
    in the solid's own frame), so their extents fall short by up to that; use `extents` for sizes.
    """
    solid = leaf.local_solid()
    linear, offset = affine(leaf.matrix)
    faces, edges = list(solid.Faces), list(solid.Edges)

    outward = -1.0 if solid.Volume < 0 else 1.0  # an inside-out solid has its normals turned inward
    points = [_xyz(vertex.Point) for vertex in solid.Vertexes]
    planar = []
    for face in faces:
        if is_planar(face):
            planar.append(face)
        elif not _is_hollow(face, outward):
            points += [_xyz(p) for p in face.copy().tessellate(CHORD_MM)[0]]

    normals = _rows([_normal(face) for face in planar]) * outward
    areas = np.array([face.Area for face in planar], dtype=float)
    # A plane of area A and unit normal n goes to area and normal A · cof(L) n, cof(L) = det(L) · L⁻ᵀ.
    carried = normals @ (np.linalg.inv(linear) * abs(np.linalg.det(linear)))
    stretch = np.linalg.norm(carried, axis=1)

    runs = _rows([run for run in map(_straight_run, edges) if run is not None]) @ linear.T
    lengths = np.linalg.norm(runs, axis=1)

    axes = linear.T
    return SolidOutline(
        own_axes=axes / np.linalg.norm(axes, axis=1, keepdims=True),
        points=_rows(points) @ linear.T + offset,
        face_normals=carried / stretch[:, None],
        face_areas=areas * stretch,
        edge_directions=runs / lengths[:, None],
        edge_lengths=lengths,
        volume_mm3=volume(leaf),
    )


def volume(leaf: Leaf) -> float:
    """Volume of a leaf in mm³, from its own frame: the host's figure for stretched curved solids is off."""
    linear, _ = affine(leaf.matrix)
    return float(abs(leaf.solid.Volume * np.linalg.det(linear)))


def extents(leaf: Leaf, axes: Vectors) -> tuple[Vectors, Vectors]:
    """Exact extents of a leaf along three orthonormal axes, mm.

    Parameters
    ----------
    leaf : the solid; planar, round, curved, rotated, from a scaled or mirrored link.
    axes : (3, 3) rows are the axes in the global frame.

    Returns
    -------
    centre : (3,) middle of the box in the global frame.
    lengths : (3,) its size along each axis.
    """
    axes = np.asarray(axes, dtype=float)
    if axes.shape != (3, 3) or not np.allclose(axes @ axes.T, np.eye(3), atol=1e-6):
        raise ValueError("axes must be three orthonormal rows")
    linear, offset = affine(leaf.matrix)
    solid = leaf.local_solid()
    # x = L s + t, so a · x = (Lᵀ a) · s + a · t: the extents of the solid in its own frame along Lᵀ a.
    directions = axes @ linear
    if _all_flat(solid):
        along = _rows([_xyz(vertex.Point) for vertex in solid.Vertexes]) @ directions.T
        low, high = along.min(axis=0), along.max(axis=0)
    else:
        low, high = _curved_ranges(solid, directions)
    low, high = low + axes @ offset, high + axes @ offset
    return (low + high) / 2 @ axes, high - low


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
    aside = np.cross(direction, np.eye(3)[np.argmin(np.abs(direction))])
    aside /= np.linalg.norm(aside)
    return np.array([direction, aside, np.cross(direction, aside)])


def affine(matrix: Any) -> tuple[Vectors, Vectors]:
    """(3, 3) linear part and (3,) translation of a host matrix."""
    full = np.array(matrix.A, dtype=float).reshape(4, 4)
    return full[:3, :3], full[:3, 3]


def _xyz(vector: Any) -> tuple[float, float, float]:
    return vector.x, vector.y, vector.z


def _rows(vectors: list[tuple[float, float, float]]) -> Vectors:
    return np.array(vectors, dtype=float).reshape(-1, 3)


def is_planar(face: Any) -> bool:
    surface = face.Surface
    if isinstance(surface, Part.Plane):
        return True
    if isinstance(surface, (Part.BSplineSurface, Part.BezierSurface)):  # imports write planes so
        return bool(surface.isPlanar())
    return False


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


def _all_flat(solid: Any) -> bool:
    return all(is_planar(face) for face in solid.Faces)


def _normal(face: Any) -> tuple[float, float, float]:
    u0, u1, v0, v1 = face.ParameterRange
    return _xyz(face.normalAt((u0 + u1) / 2, (v0 + v1) / 2))


def _straight_run(edge: Any) -> tuple[float, float, float] | None:
    """From end to end of an edge if it is straight, whatever kind of curve carries it."""
    if edge.Degenerated or len(edge.Vertexes) != 2:
        return None
    first, last = edge.Vertexes[0].Point, edge.Vertexes[1].Point
    run = last - first
    return _xyz(run) if run.Length > 1e-6 and abs(edge.Length - run.Length) < 1e-7 * edge.Length else None
