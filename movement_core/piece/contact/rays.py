"""What a curved face looks at, by rays from its mesh; the least width from the host's kernel where there is one.

A ray goes out from many points of the face, square to it. The first face of another body that it meets is what the
point looks at. Chords make these widths uncertain by MESH_MM.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Protocol

import numpy as np

from movement_core.piece.contact.bodies import CHORD_MM, CurvedFace, Cylinder
from movement_core.piece.contact.found import CONTACT_MM, CURVED, Contact, Gap
from movement_core.piece.contact.pairs import GAP_ANGLE
from movement_core.piece.contact.polygons import Bools, Floats, holds
from movement_core.piece.contact.scene import Scene
from movement_core.piece.vectors import box_of, cross, square_to

MESH_MM = 2 * CHORD_MM  # how far widths between two meshes may be off
SAMPLE_MM = 8.0  # rays stand at most this far apart
MOST_RAYS = 2000  # from one face
CONFORMING_SHARE = (
    0.5  # of the points that look at another curved face, to touch over an area (own judgement)
)
FEW_RAYS = 16  # fewer are not halved
MOST_PAIRS = 100_000  # of rays and triangles that are met at once
LEAST_AREA_MM2 = 1.0  # less of a curved gap than this is not listed


class Kernel(Protocol):
    """What the host's geometry kernel can tell exactly of curved faces and solids; indices as in the bodies."""

    def face_distance(self, body: int, face: int, other: int, other_face: int) -> float | None:
        """Least distance between two faces (flat ones are numbered first, then curved), mm; None where it fails."""

    def shared_volume(self, body: int, other: int) -> float | None:
        """Volume that two solids share, mm³; None where it fails."""


def by_rays(
    scene: Scene,
    body: int,
    index: int,
    face: CurvedFace,
    near: list[int],
    done: set[tuple[int, int]],
    reach: float,
    kernel: Kernel | None,
) -> Iterator[Contact | Gap]:
    triangles = face.triangles
    low, high = scene.curved_boxes[body][index]
    hollow = face.cylinder is not None and face.cylinder.hollow
    margin = -CONTACT_MM if hollow else reach  # rays from the wall of a hole stay within it
    candidates = [
        candidate
        for candidate in _candidates(scene, body, near, low - margin, high + margin, done)
        if face.cylinder is None or _in_range(scene, face.cylinder, *candidate, reach)
    ]
    if not candidates:
        return
    triangles = triangles[_within_reach(scene, candidates, *_boxes(triangles), reach)]
    if not len(triangles):
        return
    points, normals, areas = _samples(triangles)
    near_one = _within_reach(scene, candidates, points, points, reach)
    points, normals, areas = _thinned(points[near_one], normals[near_one], areas[near_one])
    if not len(points):
        return
    heights = np.full((len(candidates), len(points)), np.inf)
    for row, (other, number) in enumerate(candidates):
        heights[row] = _heights(scene, other, number, points, normals, reach)
    heights[(heights > reach) | (heights < -MESH_MM)] = np.inf
    nearest = heights.argmin(axis=0)
    for row, (other, number) in enumerate(candidates):
        mine = (nearest == row) & np.isfinite(heights[row])
        flat = len(scene.bodies[other].planar)
        if not mine.any() or (number >= flat and other < body):
            continue  # two curved faces: told from the first body's side
        yield from _told(
            scene,
            (body, len(scene.bodies[body].planar) + index),
            (other, number),
            points[mine],
            normals[mine],
            areas[mine],
            heights[row, mine],
            number >= flat,
            kernel,
        )


def _candidates(
    scene: Scene, body: int, near: list[int], low: Floats, high: Floats, done: set[tuple[int, int]]
) -> Iterator[tuple[int, int]]:
    """Faces of near bodies whose boxes meet a box: (body, face), flat ones first."""
    faces = scene.faces
    for other in near:
        mine = scene.faces_of[other]
        meet = (faces.low[mine] < high).all(axis=1) & (faces.high[mine] > low).all(axis=1)
        yield from ((other, int(number)) for number in faces.number[mine[meet]])
        for number, (box_low, box_high) in enumerate(scene.curved_boxes[other]):
            if (other, number) not in done and (box_low < high).all() and (box_high > low).all():
                yield other, len(scene.bodies[other].planar) + number


def _in_range(scene: Scene, cylinder: Cylinder, body: int, number: int, reach: float) -> bool:
    """Whether rays square to a cylinder's axis, between its ends, can meet a face at all."""
    planar = scene.bodies[body].planar
    if number < len(planar):
        face = planar[number]
        slant = abs(float(face.normal @ cylinder.axis))
        if slant > math.sin(GAP_ANGLE):
            return False
        points = face.loops[0]
        radius = cylinder.radius_mm + (0.0 if cylinder.hollow else reach)
        off = abs(float((points[0] - cylinder.point) @ face.normal))
        if off > radius + slant * (abs(cylinder.low_mm) + abs(cylinder.high_mm)):
            return False  # the whole plane passes by
    else:
        points = scene.bodies[body].curved[number - len(planar)].triangles.reshape(-1, 3)
    along = (points - cylinder.point) @ cylinder.axis
    return bool(along.max() > cylinder.low_mm + CONTACT_MM and along.min() < cylinder.high_mm - CONTACT_MM)


def _samples(triangles: Floats) -> tuple[Floats, Floats, Floats]:
    """Points (N, 3), outward normals (N, 3) and areas (N,) that stand for the triangles, close enough together."""
    for _ in range(12):
        sides = np.linalg.norm(np.roll(triangles, -1, axis=1) - triangles, axis=2)
        wide = sides.max(axis=1) > SAMPLE_MM
        if not wide.any():
            break
        # Halve the longest side: turned so that it runs from corner 0 to corner 1.
        turn = (sides[wide].argmax(axis=1)[:, None] + np.arange(3)) % 3
        a, b, c = np.take_along_axis(triangles[wide], turn[..., None], axis=1).transpose(1, 0, 2)
        middle = (a + b) / 2
        halves = [np.stack([a, middle, c], axis=1), np.stack([middle, b, c], axis=1)]
        triangles = np.concatenate([triangles[~wide], *halves])
    outward = cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    double = np.linalg.norm(outward, axis=1)
    keep = double > 1e-12
    return triangles.mean(axis=1)[keep], outward[keep] / double[keep, None], double[keep] / 2


def _within_reach(
    scene: Scene, candidates: list[tuple[int, int]], low: Floats, high: Floats, reach: float
) -> Bools:
    """(N,) which of some boxes, low (N, 3) to high, lie within reach of the box of any of the faces."""
    close = np.zeros(len(low), dtype=bool)
    for box_low, box_high in (_box_of(scene, *candidate) for candidate in candidates):
        close |= _meet(low, high, box_low - reach, box_high + reach)
    return close


def _boxes(triangles: Floats) -> tuple[Floats, Floats]:
    """The boxes of triangles, low and high (T, 3)."""
    a, b, c = triangles[:, 0], triangles[:, 1], triangles[:, 2]  # a hundred thousand of them: no inner axis
    return np.minimum(np.minimum(a, b), c), np.maximum(np.maximum(a, b), c)


def _meet(low: Floats, high: Floats, box_low: Floats, box_high: Floats) -> Bools:
    """(N,) which boxes meet one box."""
    x, y, z = ((high > box_low) & (low < box_high)).T
    return np.asarray(x & y & z)


def _box_of(scene: Scene, body: int, number: int) -> tuple[Floats, Floats]:
    flat = len(scene.bodies[body].planar)
    if number < flat:
        face = int(scene.faces_of[body][number])
        return scene.faces.low[face], scene.faces.high[face]
    return scene.curved_boxes[body][number - flat]


def _thinned(points: Floats, normals: Floats, areas: Floats) -> tuple[Floats, Floats, Floats]:
    """At most MOST_RAYS of the samples, evenly by area, each then standing for the same share of it."""
    if len(points) <= MOST_RAYS:
        return points, normals, areas
    total = float(areas.sum())
    at = np.searchsorted(np.cumsum(areas), (np.arange(MOST_RAYS) + 0.5) * total / MOST_RAYS)
    at = np.minimum(at, len(points) - 1)
    return points[at], normals[at], np.full(MOST_RAYS, total / MOST_RAYS)


def _heights(scene: Scene, body: int, number: int, points: Floats, normals: Floats, reach: float) -> Floats:
    """How far from each point along its normal a face lies; infinite where the ray misses it or slants too much."""
    planar = scene.bodies[body].planar
    if number >= len(planar):
        return _to_mesh(scene.bodies[body].curved[number - len(planar)].triangles, points, normals, reach)
    faces, face = scene.faces, int(scene.faces_of[body][number])
    slant = normals @ faces.normal[face]
    result = np.full(len(points), np.inf)
    facing = np.flatnonzero(slant < -math.cos(GAP_ANGLE))
    if not len(facing):
        return result
    height = (faces.origin[face] - points[facing]) @ faces.normal[face] / slant[facing]
    foot = faces.onto(points[facing] + height[:, None] * normals[facing], face)
    inside = holds(faces.regions[face], foot)
    result[facing[inside]] = height[inside]
    return result


def _to_mesh(triangles: Floats, points: Floats, normals: Floats, reach: float) -> Floats:
    """Heights above a mesh: (N,), infinite where a ray meets none of the triangles within reach."""
    return _among(triangles, *_boxes(triangles), points, normals, reach)


def _among(
    triangles: Floats, low: Floats, high: Floats, points: Floats, normals: Floats, reach: float
) -> Floats:
    """``_to_mesh`` among triangles with their boxes. Many rays are halved into neighbours, each of which meets only
    the triangles near it."""
    least, most = box_of(points)
    near = _meet(low, high, least - reach, most + reach)
    triangles, low, high = triangles[near], low[near], high[near]
    if not len(triangles):
        return np.full(len(points), np.inf)
    if len(points) > FEW_RAYS and len(points) * len(triangles) > MOST_PAIRS:
        order = np.argsort(points[:, (most - least).argmax()], kind="stable")
        result = np.empty(len(points))
        for half in np.array_split(order, 2):
            result[half] = _among(triangles, low, high, points[half], normals[half], reach)
        return result
    origin = points.mean(axis=0)  # near all of them, so that products of places lose nothing
    points = points - origin
    base, one, two = (
        triangles[:, 0] - origin,
        triangles[:, 1] - triangles[:, 0],
        triangles[:, 2] - triangles[:, 0],
    )
    outward = cross(one, two)
    outward_length = np.linalg.norm(outward, axis=1)
    level = np.einsum("ij,ij->i", base, outward)
    aside_one, aside_two, turned = cross(base, one), cross(base, two), cross(normals, points)
    result = np.full(len(points), np.inf)
    rows = max(1, 2_000_000 // len(triangles))
    for start in range(0, len(points), rows):
        some = slice(start, start + rows)
        p, n, t = points[some], normals[some], turned[some]
        slant = n @ outward.T
        # With r = base − p: (n × r) · side = n · (base × side) − (n × p) · side, which are products of matrices.
        with np.errstate(divide="ignore", invalid="ignore"):
            height = (level - p @ outward.T) / slant
            u, v = (t @ two.T - n @ aside_two.T) / slant, (n @ aside_one.T - t @ one.T) / slant
            hit = (u >= -1e-9) & (v >= -1e-9) & (u + v <= 1 + 1e-9)
        hit &= slant < -math.cos(GAP_ANGLE) * outward_length
        height = np.where(hit & (height > -MESH_MM), height, np.inf)
        result[start : start + rows] = height.min(axis=1)
    return result


def _told(
    scene: Scene,
    mine: tuple[int, int],
    theirs: tuple[int, int],
    points: Floats,
    normals: Floats,
    areas: Floats,
    heights: Floats,
    both_curved: bool,
    kernel: Kernel | None,
) -> Iterator[Contact | Gap]:
    """The contact or the gap that the rays tell of."""
    touching = np.abs(heights) <= MESH_MM
    conform = both_curved and float(areas[touching].sum()) > CONFORMING_SHARE * float(areas.sum())
    chosen = touching if conform else np.ones(len(points), dtype=bool)
    total = float(areas[chosen].sum())
    if total < LEAST_AREA_MM2:
        return
    weight = areas[chosen, None]
    towards = (normals[chosen] * weight).sum(axis=0)
    length = float(np.linalg.norm(towards))
    normal = towards / length if length > 1e-9 * total else normals[chosen][0]
    centre = ((points + heights[:, None] / 2 * normals)[chosen] * weight).sum(axis=0) / total
    one, two, sense = (mine, theirs, 1.0) if mine[0] < theirs[0] else (theirs, mine, -1.0)
    where = (one[0], two[0], (one[1], two[1]), CURVED)
    around = (_box_loop(points[chosen], normal),)
    if conform:
        yield Contact(*where, total, sense * normal, centre, around, exact=False)
        return
    least, most, exact = max(0.0, float(heights.min())), float(heights.max()), False
    if kernel is not None:
        known = kernel.face_distance(*mine, *theirs)
        if known is not None:
            least, exact = (0.0 if known <= CONTACT_MM else known), True
    yield Gap(*where, min(least, most), most, total, sense * normal, centre, around, exact)


def _box_loop(points: Floats, normal: Floats) -> Floats:
    """A rectangle round points, square to a direction."""
    aside, up = square_to(normal)
    middle = points.mean(axis=0)
    flat = (points - middle) @ np.stack([aside, up], axis=1)
    (x0, y0), (x1, y1) = box_of(flat)
    return np.asarray([middle + x * aside + y * up for x, y in ((x0, y0), (x1, y0), (x1, y1), (x0, y1))])
