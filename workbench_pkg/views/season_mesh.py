"""Mesh and edges of a leaf solid where it stands, read once from the host when a picture of the year is made."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.shapes import affine

Floats = NDArray[np.float64]

FINENESS = 0.0015  # deflection of curved faces, of the solid's diagonal
LEAST_MM, MOST_MM = 0.05, 2.0


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
    outward = -1.0 if solid.Volume < 0 else 1.0
    deflection = min(max(FINENESS * solid.BoundBox.DiagonalLength, LEAST_MM), MOST_MM)
    points, normals, triangles, count = [], [], [], 0
    for face in solid.Faces:
        corners, faces = face.copy().tessellate(deflection)
        if not faces:
            continue
        at = np.array([tuple(corner) for corner in corners])
        three = np.array(faces, dtype=np.int64)
        cross = np.cross(at[three[:, 1]] - at[three[:, 0]], at[three[:, 2]] - at[three[:, 0]])
        if _looks_inward(face, at[three], cross, outward):
            three, cross = three[:, ::-1], -cross
        normal = np.zeros_like(at)
        for corner in range(3):
            np.add.at(normal, three[:, corner], cross)
        normal /= np.maximum(np.linalg.norm(normal, axis=1, keepdims=True), 1e-12)
        points.append(at)
        normals.append(normal)
        triangles.append(three + count)
        count += len(at)
    if not points:
        raise ValueError("the host gives no mesh of it")
    edges = [edge.discretize(Deflection=deflection) for edge in solid.Edges if not edge.Degenerated]
    return LeafMesh(
        np.concatenate(points),
        np.concatenate(normals),
        np.concatenate(triangles),
        tuple(np.array([tuple(point) for point in edge]) for edge in edges if len(edge) > 1),
    )


def _looks_inward(face: Any, triangles: Floats, cross: Floats, outward: float) -> bool:
    """Whether the mesh of a face is turned inward: asked where its largest triangle lies."""
    largest = int(np.linalg.norm(cross, axis=1).argmax())
    middle = triangles[largest].mean(axis=0)
    vector = face.CenterOfMass
    vector.x, vector.y, vector.z = (float(value) for value in middle)
    u, v = face.Surface.parameter(vector)
    normal = face.normalAt(u, v)
    return bool((normal.x, normal.y, normal.z) @ cross[largest] * outward < 0)
