"""All bodies of a piece as flat arrays, so that pairs are compared in numpy and not one by one."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.contact.bodies import Body
from movement_core.piece.contact.polygons import Floats, region_of
from movement_core.piece.vectors import box_of, cross

Ints = NDArray[np.int64]


@dataclass(frozen=True, eq=False)
class Faces:
    """Every flat face of every body, F in all.

    ``body`` (F,) owner; ``number`` (F,) which face of its owner; ``normal`` (F, 3); ``origin`` (F, 3) a corner;
    ``across``, ``up`` (F, 3) axes in the face, with the normal right-handed; ``low``, ``high`` (F, 3) global box;
    ``points`` (N, 3) corners of all outer loops, those of face f from ``start[f]`` to ``start[f + 1]``.
    """

    body: Ints
    number: Ints
    normal: Floats
    origin: Floats
    across: Floats
    up: Floats
    low: Floats
    high: Floats
    points: Floats
    start: Ints
    regions: tuple[Floats, ...]

    def onto(self, points: Floats, face: int) -> Floats:
        """(…, 2) coordinates of points (…, 3) in the frame of a face."""
        away = points - self.origin[face]
        return np.stack([away @ self.across[face], away @ self.up[face]], axis=-1)

    def back(self, flat: Floats, face: int) -> Floats:
        """(…, 3) global points of (…, 2) points in the plane of a face."""
        return np.asarray(
            self.origin[face] + flat[..., :1] * self.across[face] + flat[..., 1:] * self.up[face]
        )

    def region_in(self, face: int, plane: int) -> Floats:
        """The region of a face seen in the frame of another that it looks at, inside on the left."""
        flat = self.onto(self.back(self.regions[face], face), plane)
        return flat[:, ::-1] if self.normal[face] @ self.normal[plane] < 0 else flat


RAY = np.array([0.5773, 0.7071, 0.4083]) / np.linalg.norm([0.5773, 0.7071, 0.4083])  # along no usual face
_ASIDE = cross(RAY, np.array([0.0, 0.0, 1.0]))
_ASIDE /= np.linalg.norm(_ASIDE)
FEW_EDGES = 1000  # of a shell: fewer are not sifted before they are cut
ROUNDING = 1e-12  # of the size of a place: more than products of it lose
ACROSS_RAY = np.stack([_ASIDE, cross(RAY, _ASIDE)], axis=1)  # (3, 2) what is seen looking along the ray


@dataclass(frozen=True, eq=False)
class Shell:
    """The whole surface of one body as facets that bound it: flat faces with all their edges, and mesh triangles.

    ``edges`` (E, 2, 3), ``facet`` (E,) the facet each edge belongs to, ``normals`` (facets, 3), those of the ``flat``
    faces first.
    """

    edges: Floats
    facet: Ints
    normals: Floats
    flat: int

    @cached_property
    def ends(self) -> tuple[Floats, Floats]:
        """How far the body reaches along the normal of each flat face: the normals (3, faces), the heights (faces,)."""
        normals = self.normals[: self.flat].T
        return normals, (self.edges[:, 0] @ normals).max(axis=0, initial=-np.inf)

    @cached_property
    def seen(self) -> tuple[Floats, Ints, Floats, Floats]:
        """Looking along RAY: the edges (E, 2, 2), the first edge of each facet, and the facets' boxes, low and high."""
        edges = self.edges @ ACROSS_RAY
        starts = np.flatnonzero(np.diff(self.facet, prepend=-1))
        low = np.minimum.reduceat(np.minimum(edges[:, 0], edges[:, 1]), starts)
        return edges, starts, low, np.maximum.reduceat(np.maximum(edges[:, 0], edges[:, 1]), starts)

    def section(self, origin: Floats, normal: Floats, across: Floats, up: Floats) -> Floats:
        """(E, 2, 2) region in which a plane cuts the body, in the frame (origin, across, up) of the plane."""
        edges, facet = self._about(origin, normal)
        away = (edges - origin) @ normal
        above = away > 0
        cut = above[:, 0] != above[:, 1]
        if not cut.any():
            return np.zeros((0, 2, 2))
        edges, away, facet = edges[cut], away[cut], facet[cut]
        share = away[:, 0] / (away[:, 0] - away[:, 1])
        points = edges[:, 0] + share[:, None] * (edges[:, 1] - edges[:, 0]) - origin
        # point · (normal × facet's normal) = facet's normal · (point × normal)
        along = np.einsum("ij,ij->i", cross(points, normal), self.normals[facet])
        order = np.lexsort((along, facet))
        return np.asarray((points[order] @ np.stack([across, up], axis=1)).reshape(-1, 2, 2))

    def _about(self, origin: Floats, normal: Floats) -> tuple[Floats, Ints]:
        """The edges that a plane may cut, and their facets: of a fine mesh only those not clearly on one side."""
        if len(self.edges) <= FEW_EDGES:
            return self.edges, self.facet
        level = float(origin @ normal)
        one, other = (self.edges.reshape(-1, 3) @ normal).reshape(-1, 2).T - level
        slack = ROUNDING * (abs(level) + self._reach)
        near = (np.minimum(one, other) <= slack) & (np.maximum(one, other) >= -slack)
        return self.edges[near], self.facet[near]

    @cached_property
    def _reach(self) -> float:
        """No point is farther from the zero of the frame, along any axis."""
        return float(max(self.edges.max(), -self.edges.min()))


@dataclass(frozen=True, eq=False)
class Scene:
    """The bodies of a piece, their boxes (B, 3) and their flat faces."""

    bodies: tuple[Body, ...]
    low: Floats
    high: Floats
    faces: Faces

    @cached_property
    def faces_of(self) -> list[Ints]:
        """For each body the indices of its flat faces."""
        split = np.searchsorted(self.faces.body, np.arange(len(self.bodies) + 1))
        return [np.arange(a, b) for a, b in itertools.pairwise(split.tolist())]

    @cached_property
    def curved_boxes(self) -> list[list[tuple[Floats, Floats]]]:
        """For each body the (low, high) boxes of its curved faces."""
        return [[box_of(face.triangles) for face in body.curved] for body in self.bodies]

    @cached_property
    def shells(self) -> dict[int, Shell]:
        return {}

    @cached_property
    def known_probes(self) -> dict[tuple[int, float], list[Floats]]:
        return {}

    def probes(self, body: int, depth: float) -> list[Floats]:
        """For each curved face of a body points (N, 3) so deep below the middles of its facets."""
        if (body, depth) not in self.known_probes:
            self.known_probes[body, depth] = [
                _probes(curved.triangles, depth) for curved in self.bodies[body].curved
            ]
        return self.known_probes[body, depth]

    def shell(self, body: int) -> Shell:
        """The facets of a body, made when first asked for."""
        if body not in self.shells:
            self.shells[body] = _shell(self.bodies[body])
        return self.shells[body]


def scene_of(bodies: Sequence[Body]) -> Scene:
    """Lay the faces of bodies out in arrays."""
    owners, numbers, normals, origins, across, counts = [], [], [], [], [], []
    corners: list[Floats] = []
    low, high = np.zeros((len(bodies), 3)), np.zeros((len(bodies), 3))
    for index, body in enumerate(bodies):
        boxes = [loop for face in body.planar for loop in face.loops[:1]]
        boxes += [face.triangles.reshape(-1, 3) for face in body.curved]
        low[index], high[index] = box_of(np.concatenate(boxes))
        for number, face in enumerate(body.planar):
            outer = face.loops[0]
            owners.append(index)
            numbers.append(number)
            normals.append(face.normal)
            origins.append(outer[0])
            across.append(outer[1] - outer[0])
            counts.append(len(outer))
            corners.append(outer)
    if not owners:
        empty = np.zeros((0, 3))
        none = np.zeros(0, dtype=np.int64)
        faces = Faces(
            none, none, empty, empty, empty, empty, empty, empty, empty, np.zeros(1, dtype=np.int64), ()
        )
        return Scene(tuple(bodies), low, high, faces)
    normal = np.array(normals)
    x = np.array(across)
    x -= np.einsum("ij,ij->i", x, normal)[:, None] * normal
    for place in np.flatnonzero(~(np.linalg.norm(x, axis=1) > 0)).tolist():
        x[place] = _longest_in(corners[place], normal[place])
    x /= np.linalg.norm(x, axis=1, keepdims=True)
    y = cross(normal, x)
    origin, points = np.array(origins), np.concatenate(corners)
    start = np.concatenate([[0], np.cumsum(counts)])
    regions = tuple(
        region_of([np.stack([(loop - o) @ u, (loop - o) @ v], axis=-1) for loop in face.loops])
        for face, o, u, v in zip((face for body in bodies for face in body.planar), origin, x, y)
    )
    faces = Faces(
        np.array(owners),
        np.array(numbers),
        normal,
        origin,
        x,
        y,
        np.minimum.reduceat(points, start[:-1]),
        np.maximum.reduceat(points, start[:-1]),
        points,
        start,
        regions,
    )
    return Scene(tuple(bodies), low, high, faces)


def _probes(triangles: Floats, depth: float) -> Floats:
    inward = cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    size = np.linalg.norm(inward, axis=1)
    middle, inward = triangles.mean(axis=1)[size > 0], inward[size > 0]  # a facet without area has no inside
    return np.asarray(middle - depth * inward / size[size > 0, None])


def _longest_in(outline: Floats, normal: Floats) -> Floats:
    """(3,) the longest edge of an outline, as it lies in the plane, where the first has no length."""
    edges = np.roll(outline, -1, axis=0) - outline
    edges -= np.outer(edges @ normal, normal)
    flat = np.linalg.norm(edges, axis=1)
    at = int(np.argmax(flat))
    if flat[at] > 0:
        return np.asarray(edges[at])
    return cross(normal, np.eye(3)[np.argmin(np.abs(normal))])  # a face that is but a point: any way will do


def _shell(body: Body) -> Shell:
    edges, facet, normals = [], [], []
    for number, face in enumerate(body.planar):
        for loop in face.loops:
            edges.append(np.stack([loop, np.roll(loop, -1, axis=0)], axis=1))
            facet.append(np.full(len(loop), number))
        normals.append(face.normal[None])
    count = len(normals)
    for curved in body.curved:
        triangles = curved.triangles
        edges.append(triangles[:, [(0, 1), (1, 2), (2, 0)]].reshape(-1, 2, 3))
        facet.append(np.repeat(np.arange(count, count + len(triangles)), 3))
        normals.append(cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0]))
        count += len(triangles)
    return Shell(np.concatenate(edges), np.concatenate(facet), np.concatenate(normals), len(body.planar))
