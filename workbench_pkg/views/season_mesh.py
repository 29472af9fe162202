"""Mesh and edges of a leaf solid where it stands, read once from the host when a picture of the year is made."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import MeshPart
import numpy as np
from numpy.typing import NDArray

from movement_core.wording import say
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.shapes import affine

Floats = NDArray[np.float64]

FINENESS = 0.0015  # deflection of curved faces, of the solid's diagonal
LEAST_MM, MOST_MM = 0.05, 2.0
TURN_RAD = 0.5  # of a round between two chords, as the host's own display


@dataclass(frozen=True, eq=False)
class LeafMesh:
    """(N, 3) points and normals, (T, 3) triangles, edges (K, 3) each, in mm; vertices are shared within a face only."""

    points: Floats
    normals: Floats
    triangles: NDArray[np.int64]
    edges: tuple[Floats, ...]


class MeshReader:
    """Reads the meshes of leaves; a solid that stands in the piece many times is read once."""

    def __init__(self) -> None:
        self._known: dict[tuple[str, str, int], LeafMesh] = {}

    def read(self, leaf: Leaf) -> LeafMesh:
        """The mesh in the document's frame. Raises what the host raises on a solid it cannot mesh."""
        key = leaf.source.Document.Name, leaf.source.Name, leaf.index
        if key not in self._known:
            self._known[key] = _own_mesh(leaf.local_solid())
        own = self._known[key]
        linear, offset = affine(leaf.matrix)
        normals = own.normals @ np.linalg.inv(linear)
        normals /= np.maximum(np.linalg.norm(normals, axis=1, keepdims=True), 1e-12)
        mirrored = np.linalg.det(linear) < 0
        return LeafMesh(
            own.points @ linear.T + offset,
            normals,
            own.triangles[:, ::-1] if mirrored else own.triangles,
            tuple(edge @ linear.T + offset for edge in own.edges),
        )


def _own_mesh(solid: Any) -> LeafMesh:
    deflection = min(max(FINENESS * solid.BoundBox.DiagonalLength, LEAST_MM), MOST_MM)
    # Not the solid's own tessellate: that divides a small round ten times finer than is asked.
    mesh = MeshPart.meshFromShape(
        Shape=solid.copy(),
        LinearDeflection=deflection,
        AngularDeflection=TURN_RAD,
        Relative=False,
        Segments=True,
    )
    vectors, corners = mesh.Topology
    if not corners:
        raise ValueError(say("the host gives no mesh of it"))
    at, facets = (
        np.array([[vector.x, vector.y, vector.z] for vector in vectors]),
        np.array(corners, dtype=np.int64),
    )
    if solid.Volume < 0:  # an inside-out solid
        facets = facets[:, ::-1]
    faces = [facets[list(mesh.getSegment(i))] for i in range(mesh.countSegments())] or [facets]
    points, normals, triangles, count = [], [], [], 0
    for face in faces:
        used, three = np.unique(face, return_inverse=True)
        three = three.reshape(-1, 3)
        own = at[used]
        points.append(own)
        normals.append(_normals(own, three))
        triangles.append(three + count)
        count += len(own)
    edges: list[Any] = [
        edge.discretize(Deflection=deflection) for edge in solid.Edges if not edge.Degenerated
    ]
    return LeafMesh(
        np.concatenate(points),
        np.concatenate(normals),
        np.concatenate(triangles),
        tuple(np.array([tuple(point) for point in edge]) for edge in edges if len(edge) > 1),
    )


def _normals(points: Floats, triangles: NDArray[np.int64]) -> Floats:
    """Normals at the vertices of one face, by the areas of the triangles around each."""
    cross = np.cross(
        points[triangles[:, 1]] - points[triangles[:, 0]], points[triangles[:, 2]] - points[triangles[:, 0]]
    )
    summed = np.zeros_like(points)
    for corner in range(3):
        np.add.at(summed, triangles[:, corner], cross)
    return np.asarray(summed / np.maximum(np.linalg.norm(summed, axis=1, keepdims=True), 1e-12))
