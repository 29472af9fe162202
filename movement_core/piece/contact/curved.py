"""Curved faces: pegs in holes exactly, all else by rays from a mesh, its least width from the host's kernel.

A ray goes out from many points of a curved face, square to it. The first face of another body that it meets is
what the point looks at. Chords make these widths uncertain by MESH_MM; where a kernel is given, it is asked for the
least distance of the two faces.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterator
from typing import Protocol

import numpy as np

from movement_core.piece.contact.bodies import CHORD_MM, CurvedFace, Cylinder
from movement_core.piece.contact.found import CONTACT_MM, CURVED, ROUND, Contact, Gap, Overlap
from movement_core.piece.contact.pairs import GAP_ANGLE
from movement_core.piece.contact.polygons import Bools, Floats, holds
from movement_core.piece.contact.scene import Ints, Scene

MESH_MM = 2 * CHORD_MM  # how far widths between two meshes may be off
SAMPLE_MM = 8.0  # rays stand at most this far apart
MOST_RAYS = 2000  # from one face
CONFORMING_SHARE = (
    0.5  # of the points that look at another curved face, to touch over an area (own judgement)
)
COAXIAL = 1e-3  # sine of the angle between two axes that count as one
LEAST_AREA_MM2 = 1.0  # less of a curved gap than this is not listed


class Kernel(Protocol):
    """What the host's geometry kernel can tell exactly of curved faces and solids; indices as in the bodies."""

    def face_distance(self, body: int, face: int, other: int, other_face: int) -> float | None:
        """Least distance between two faces (flat ones are numbered first, then curved), mm; None where it fails."""

    def shared_volume(self, body: int, other: int) -> float | None:
        """Volume that two solids share, mm³; None where it fails."""


def curved_finds(
    scene: Scene, first: Ints, second: Ints, reach: float, kernel: Kernel | None
) -> tuple[list[Contact], list[Gap], list[Overlap]]:
    """Contacts, gaps and tight pegs in which a curved face takes part, of near pairs of bodies."""
    near: dict[int, list[int]] = defaultdict(list)
    for one, other in zip(first.tolist(), second.tolist()):
        near[one].append(other)
        near[other].append(one)
    contacts: list[Contact] = []
    gaps: list[Gap] = []
    tight: list[Overlap] = []
    for body in sorted(near):
        for index, face in enumerate(scene.bodies[body].curved):
            done: set[tuple[int, int]] = set()
            for other in near[body]:
                for number, met in enumerate(scene.bodies[other].curved):
                    found = _peg_in_hole(body, index, face, other, number, met, scene, reach)
                    if found is None:
                        continue
                    done.add((other, number))
                    if body > other:
                        continue  # found from the other side
                    if isinstance(found, Contact):
                        contacts.append(found)
                    elif isinstance(found, Gap):
                        gaps.append(found)
                    elif isinstance(found, Overlap):
                        tight.append(found)
            for find in _by_rays(scene, body, index, face, near[body], done, reach, kernel):
                if isinstance(find, Contact):
                    contacts.append(find)
                else:
                    gaps.append(find)
    return contacts, gaps, tight


# ---- a peg in a hole -----------------------------------------------------------------------------------------


def _peg_in_hole(
    body: int,
    index: int,
    face: CurvedFace,
    other: int,
    number: int,
    met: CurvedFace,
    scene: Scene,
    reach: float,
) -> Contact | Gap | Overlap | bool | None:
    """What a round peg and a round hole make; True for nothing within reach; None if they are no such pair."""
    one, two = face.cylinder, met.cylinder
    if one is None or two is None or one.hollow == two.hollow:
        return None
    peg, hole = (two, one) if one.hollow else (one, two)
    if np.linalg.norm(np.cross(peg.axis, hole.axis)) > COAXIAL:
        return None
    between = hole.point - peg.point
    off = float(np.linalg.norm(between - (between @ peg.axis) * peg.axis))
    room = hole.radius_mm - peg.radius_mm
    if off > max(room, 0.0) + CONTACT_MM:
        return None  # not in it
    sense = math.copysign(1.0, float(hole.axis @ peg.axis))
    shift = float(between @ peg.axis)
    ends = sorted((shift + sense * hole.low_mm, shift + sense * hole.high_mm))
    low, high = max(peg.low_mm, ends[0]), min(peg.high_mm, ends[1])
    if high - low <= CONTACT_MM or room - off > reach:
        return True
    # Halves of a split peg and a split hole look at each other by half each, whichever way they are turned.
    share = peg.angle * hole.angle / (2 * math.pi)
    radius = (peg.radius_mm + hole.radius_mm) / 2
    middle = peg.point + (low + high) / 2 * peg.axis
    one_, two_ = sorted(((body, index), (other, number)))
    faces = tuple(len(scene.bodies[b].planar) + i for b, i in (one_, two_))
    if room < -CONTACT_MM:
        volume = share / 2 * (peg.radius_mm**2 - hole.radius_mm**2) * (high - low)
        return Overlap(one_[0], two_[0], -room, volume, peg.axis, middle)
    within = other if one.hollow else body
    area, rings = share * radius * (high - low), (_ring(peg, radius, low), _ring(peg, radius, high))
    where = (one_[0], two_[0], (faces[0], faces[1]), ROUND)
    if room <= CONTACT_MM:
        return Contact(*where, area, peg.axis, middle, rings, peg=within)
    return Gap(*where, max(0.0, room - off), room + off, area, peg.axis, middle, rings, peg=within)


def _ring(peg: Cylinder, radius: float, height: float) -> Floats:
    aside = np.cross(peg.axis, np.eye(3)[np.argmin(np.abs(peg.axis))])
    aside /= np.linalg.norm(aside)
    angle = np.linspace(0, 2 * np.pi, 24, endpoint=False)[:, None]
    around = np.cos(angle) * aside + np.sin(angle) * np.cross(peg.axis, aside)
    return np.asarray(peg.point + height * peg.axis + radius * around)


# ---- everything else -----------------------------------------------------------------------------------------


def _by_rays(
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
    low, high = triangles.min(axis=(0, 1)), triangles.max(axis=(0, 1))
    hollow = face.cylinder is not None and face.cylinder.hollow
    margin = -CONTACT_MM if hollow else reach  # rays from the wall of a hole stay within it
    candidates = list(_candidates(scene, body, near, low - margin, high + margin, done))
    if not candidates:
        return
    points, normals, areas = _samples(triangles)
    near_one = _within_reach(scene, candidates, points, reach)
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
        for number, curved in enumerate(scene.bodies[other].curved):
            box = curved.triangles.reshape(-1, 3)
            if (
                (box.min(axis=0) < high).all()
                and (box.max(axis=0) > low).all()
                and (other, number) not in done
            ):
                yield other, len(scene.bodies[other].planar) + number


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
    cross = np.cross(triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0])
    double = np.linalg.norm(cross, axis=1)
    keep = double > 1e-12
    return triangles.mean(axis=1)[keep], cross[keep] / double[keep, None], double[keep] / 2


def _within_reach(scene: Scene, candidates: list[tuple[int, int]], points: Floats, reach: float) -> Bools:
    """(N,) which points lie within reach of the box of any of the faces."""
    close = np.zeros(len(points), dtype=bool)
    for low, high in (_box_of(scene, *candidate) for candidate in candidates):
        close |= ((points > low - reach) & (points < high + reach)).all(axis=1)
    return close


def _box_of(scene: Scene, body: int, number: int) -> tuple[Floats, Floats]:
    flat = len(scene.bodies[body].planar)
    if number < flat:
        face = int(scene.faces_of[body][number])
        return scene.faces.low[face], scene.faces.high[face]
    triangles = scene.bodies[body].curved[number - flat].triangles
    return triangles.min(axis=(0, 1)), triangles.max(axis=(0, 1))


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
    corners = triangles.min(axis=1), triangles.max(axis=1)
    near = (corners[0] < points.max(axis=0) + reach) & (corners[1] > points.min(axis=0) - reach)
    triangles = triangles[near.all(axis=1)]
    if not len(triangles):
        return np.full(len(points), np.inf)
    base, one, two = triangles[:, 0], triangles[:, 1] - triangles[:, 0], triangles[:, 2] - triangles[:, 0]
    outward = np.cross(one, two)
    outward_length = np.linalg.norm(outward, axis=1)
    result = np.full(len(points), np.inf)
    rows = max(1, 2_000_000 // max(1, len(triangles)))
    for start in range(0, len(points), rows):
        p, n = points[start : start + rows, None], normals[start : start + rows, None]
        slant = (n * outward).sum(axis=-1)
        away = base - p
        with np.errstate(divide="ignore", invalid="ignore"):
            height = (away * outward).sum(axis=-1) / slant
            side = np.cross(n, away)
            u, v = -(side * two).sum(axis=-1) / slant, (side * one).sum(axis=-1) / slant
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
    aside = np.cross(normal, np.eye(3)[np.argmin(np.abs(normal))])
    aside /= np.linalg.norm(aside)
    up = np.cross(normal, aside)
    middle = points.mean(axis=0)
    flat = (points - middle) @ np.stack([aside, up], axis=1)
    (x0, y0), (x1, y1) = flat.min(axis=0), flat.max(axis=0)
    return np.asarray([middle + x * aside + y * up for x, y in ((x0, y0), (x1, y0), (x1, y1), (x0, y1))])
