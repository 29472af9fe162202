"""Solids in the same place: found and measured by cutting each near face with the other solid.

The surface of what two solids share is the part of each one's surface that lies inside the other. A face is moved
a hair inward first, so that faces that merely touch share nothing, and the other solid is cut by its plane: what
the section has in common with the face is the part inside. The volume follows from those parts (Gauss's theorem).
"""

from __future__ import annotations

import math
from collections.abc import Hashable, Iterator, Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.contact.alike import Alike
from movement_core.piece.contact.bodies import CHORD_MM, CurvedFace
from movement_core.piece.contact.found import CONTACT_MM, Overlap
from movement_core.piece.contact.pairs import chunks, ranges
from movement_core.piece.contact.polygons import SNAP_MM, Floats, area, mean_width, shared, without
from movement_core.piece.contact.rays import Kernel
from movement_core.piece.contact.scene import ACROSS_RAY, RAY, Ints, Scene, Shell
from movement_core.piece.vectors import box_of

Bools = NDArray[np.bool_]

HAIR_MM = 1e-4  # how far a face is moved inward to measure what lies inside
LEAST_VOLUME_MM3 = 1.0  # less is what a kernel makes of faces that touch
MOST_PROBES = 500  # points of a curved face that are looked for inside another solid
MOST_PAIRS = 100_000  # of points and boxes of facets that are compared at once
MOST_ASKED, DEAR = 24, 4
"""Volumes of curved overlaps that a kernel is asked for in one piece, and as how many one counts in which a face is no
cylinder (own judgement): a boolean takes a fiftieth of a second, such a one a tenth, and two such faces seconds."""
ROUND_OFF_MM = 4 * CHORD_MM  # a peg in a hole of its size overlaps it by the chords of both meshes


def overlaps(scene: Scene, first: Ints, second: Ints, kernel: Kernel | None = None) -> list[Overlap]:
    """Every pair of near bodies that share more than a touch; volumes of curved ones from a kernel if given.

    The kernel is not asked where two solids with faces that are no cylinders meet, nor beyond MOST_ASKED: there the
    volume stays unknown, and that they overlap is what their meshes tell.
    """
    found = []
    left = MOST_ASKED
    alike = Alike(scene.bodies)
    known: dict[Hashable, tuple[int, Overlap | None]] = {}  # kind of pair → a first body, and what it shares
    first, second = _not_apart(scene, first, second)
    for one, other, kind in zip(first.tolist(), second.tolist(), alike.kinds(first, second)):
        if kind in known:
            met, overlap = known[kind]
            if overlap is not None:
                overlap = _carried(overlap, one, other, *alike.motion(met, one))
        else:
            overlap = overlap_of(scene, one, other)
            if overlap is not None and not overlap.exact and kernel is not None:
                cost = _cost(scene, overlap)
                if cost <= left:
                    left -= cost
                    overlap = _asked(overlap, kernel)
            if kind is not None:
                known[kind] = one, overlap
        if overlap is not None:
            found.append(overlap)
    return found


def _carried(overlap: Overlap, first: int, second: int, turn: Floats, shift: Floats) -> Overlap:
    """The same overlap between two other bodies that stand alike."""
    centre, direction = turn @ overlap.centre + shift, turn @ overlap.direction
    return replace(overlap, first=first, second=second, centre=centre, direction=direction)


def _cost(scene: Scene, overlap: Overlap) -> int:
    """As how many volumes that of an overlap counts; more than there are where it is not to be asked for."""
    formed = [
        any(face.cylinder is None for face in scene.bodies[body].curved)
        for body in (overlap.first, overlap.second)
    ]
    return MOST_ASKED + 1 if all(formed) else DEAR if any(formed) else 1


def _asked(overlap: Overlap, kernel: Kernel) -> Overlap | None:
    """An overlap of curved solids as the kernel sees it: none at all, perhaps."""
    volume = kernel.shared_volume(overlap.first, overlap.second)
    if volume is None:
        return overlap
    return None if volume < LEAST_VOLUME_MM3 else replace(overlap, volume_mm3=volume)


def overlap_of(scene: Scene, one: int, other: int) -> Overlap | None:
    """What two bodies share, or None where they touch at most."""
    if scene.bodies[one].curved or scene.bodies[other].curved:
        return _curved_overlap(scene, one, other)
    for body, solid in _telling_sides(scene, one, other):
        if any(mean_width(region) > CONTACT_MM for _, region in _inside(scene, body, solid, CONTACT_MM)):
            return _measured(scene, one, other)
    return None


def _curved_overlap(scene: Scene, one: int, other: int) -> Overlap | None:
    """The same of two bodies of which either is curved: how deep, and not how much."""
    sides = _telling_sides(scene, one, other)
    found = [each for side in sides for each in _inside(scene, *side, CONTACT_MM)]
    if not any(mean_width(region) > ROUND_OFF_MM for _, region in found) and not (
        len(sides) > 1 and _mesh_inside(scene, one, other)
    ):
        return None
    if len(sides) == 1:
        ((body, solid),) = sides
        found += _inside(scene, solid, body, CONTACT_MM)
    return _deep(scene, one, other, found, math.nan)


def _telling_sides(scene: Scene, one: int, other: int) -> list[tuple[int, int]]:
    """(body, solid) the bodies whose faces tell whether the two share anything, each beside the other.

    Two solids share something only where the surface of the one runs inside the other, or where it holds all of it.
    So the faces of one tell, where they are all flat and it is too small to hold the other; else those of both.
    """
    sides = [(one, other), (other, one)]
    sides.sort(key=lambda side: len(scene.faces_of[side[0]]))
    for body, solid in sides:
        holds = (scene.low[body] < scene.low[solid] + CONTACT_MM).all()
        holds &= (scene.high[body] > scene.high[solid] - CONTACT_MM).all()
        if not holds and not scene.bodies[body].curved:
            return [(body, solid)]
    return [(one, other), (other, one)]


def _measured(scene: Scene, one: int, other: int) -> Overlap:
    """Volume and depth from the faces of each that lie inside the other."""
    faces = scene.faces
    found, volume = [], 0.0
    origin = (scene.low[one] + scene.high[one]) / 2
    for body, solid in ((one, other), (other, one)):
        for face, region in _inside(scene, body, solid, HAIR_MM):
            if body == other:  # a face that both have in common counts once
                for twin in _flush(scene, face, one):
                    flat = faces.onto(faces.back(faces.regions[twin], twin), face)
                    region = without(region, flat)
            if not len(region):
                continue
            height = float((faces.origin[face] - origin) @ faces.normal[face])
            volume += area(region) * height / 3
            found.append((face, region))
    return _deep(scene, one, other, found, volume)


def _deep(
    scene: Scene, one: int, other: int, found: Sequence[tuple[int, Floats]], volume_mm3: float
) -> Overlap:
    """An overlap by the regions of faces that lie inside the other body; by the boxes where there are none."""
    faces = scene.faces
    if not found:
        low = np.maximum(scene.low[one], scene.low[other])
        high = np.minimum(scene.high[one], scene.high[other])
        thin = int(np.argmin(high - low))
        depth = float((high - low)[thin])
        return Overlap(one, other, depth, math.nan, np.eye(3)[thin], (low + high) / 2, exact=False)
    cloud = np.concatenate([faces.back(region.reshape(-1, 2), face) for face, region in found])
    normals = faces.normal[[face for face, _ in found]]
    extents = np.ptp(normals @ cloud.T, axis=1)
    thinnest = int(np.argmin(extents))
    return Overlap(
        one,
        other,
        depth_mm=float(extents[thinnest]),
        volume_mm3=volume_mm3,
        direction=normals[thinnest],
        centre=np.add(*box_of(cloud)) / 2,
        exact=not math.isnan(volume_mm3),
    )


def _inside(scene: Scene, body: int, solid: int, inward: float) -> Iterator[tuple[int, Floats]]:
    """Each face of a body, moved inward, with the region of it that lies inside another body."""
    faces = scene.faces
    mine = scene.faces_of[body]
    low, high = scene.low[solid], scene.high[solid]
    near = (faces.low[mine] < high + inward).all(axis=1) & (faces.high[mine] > low - inward).all(axis=1)
    shell = scene.shell(solid)
    if near.any():
        near &= ~_beyond(scene, body, shell, inward)
    for face in mine[near].tolist():
        origin = faces.origin[face] - inward * faces.normal[face]
        section = shell.section(origin, faces.normal[face], faces.across[face], faces.up[face])
        if len(section):
            region = shared(faces.regions[face], section)
            if len(region):
                yield face, region


def _beyond(scene: Scene, body: int, shell: Shell, inward: float) -> Bools:
    """For each face of a body, moved inward, whether a plane along a flat face of another has all of that behind it."""
    faces, mine = scene.faces, scene.faces_of[body]
    normals, ends = shell.ends
    if not len(ends):
        return np.zeros(len(mine), dtype=bool)
    first, last = mine[0], mine[-1] + 1
    start = faces.start[first : last + 1]
    height = faces.points[start[0] : start[-1]] @ normals
    lowest = np.minimum.reduceat(height, start[:-1] - start[0]) - inward * (
        faces.normal[first:last] @ normals
    )
    return np.asarray((lowest > ends - SNAP_MM / 2).any(axis=1))


def _flush(scene: Scene, face: int, body: int) -> list[int]:
    """Faces of a body that lie in the plane of a face and look the same way."""
    faces, mine = scene.faces, scene.faces_of[body]
    same = faces.normal[mine] @ faces.normal[face] > 1 - 1e-9
    height = (faces.origin[mine] - faces.origin[face]) @ faces.normal[face]
    return list(mine[same & (np.abs(height) < HAIR_MM)].tolist())


def _mesh_inside(scene: Scene, one: int, other: int) -> bool:
    """Whether the middle of a curved facet of either lies well inside the other."""
    for body, solid in ((one, other), (other, one)):
        chosen = []
        for probes in scene.probes(body, ROUND_OFF_MM):
            near = ((probes > scene.low[solid]) & (probes < scene.high[solid])).all(axis=1)
            chosen.append(probes[near][:: max(1, int(near.sum()) // MOST_PROBES)])
        if any(map(len, chosen)) and inside(scene, solid, np.concatenate(chosen)).any():
            return True
    return False


def inside(scene: Scene, body: int, points: Floats) -> Bools:
    """(N,) which points (N, 3) lie inside a body: how often a ray from each crosses its surface, odd or even."""
    shell = scene.shell(body)
    (edges, starts, low, high), spots = shell.seen, points @ ACROSS_RAY
    point, facet = _in_boxes(spots, low, high)  # only a facet in whose box a point is seen can hide it
    count = np.diff(np.append(starts, len(edges)))[facet]
    row = np.repeat(np.arange(len(facet)), count)
    away = edges[starts[facet][row] + ranges(count)] - spots[point][row][:, None]
    x, y = away[..., 0], away[..., 1]
    crossed = (y[:, 0] > 0) != (y[:, 1] > 0)
    with np.errstate(divide="ignore", invalid="ignore"):
        right = x[:, 0] - y[:, 0] * (x[:, 1] - x[:, 0]) / (y[:, 1] - y[:, 0]) > 0
        over = np.bincount(row[crossed & right], minlength=len(facet)) % 2 == 1
        normals = shell.normals[shell.facet[starts]][facet]
        distance = np.einsum("ni,ni->n", shell.edges[starts[facet], 0] - points[point], normals) / (
            normals @ RAY
        )
    return np.asarray(np.bincount(point[over & (distance > 0)], minlength=len(points)) % 2 == 1)


def _in_boxes(spots: Floats, low: Floats, high: Floats) -> tuple[Ints, Ints]:
    """Which points (N, 2) lie in which boxes. Many are halved into neighbours, which meet only the boxes near them."""
    least, most = box_of(spots)
    (x0, y0), (x1, y1) = least, most
    near = np.flatnonzero((high[:, 0] >= x0) & (high[:, 1] >= y0) & (low[:, 0] <= x1) & (low[:, 1] <= y1))
    low, high = low[near], high[near]
    if len(spots) > 1 and len(spots) * len(near) > MOST_PAIRS:
        order = np.argsort(spots[:, (most - least).argmax()], kind="stable")
        halves = [(half, _in_boxes(spots[half], low, high)) for half in np.array_split(order, 2)]
        return np.concatenate([half[point] for half, (point, _) in halves]), np.concatenate(
            [near[box] for _, (_, box) in halves]
        )
    (x, y), ((x0, y0), (x1, y1)) = spots.T[..., None], (low.T, high.T)
    point, box = np.nonzero((x >= x0) & (x <= x1) & (y >= y0) & (y <= y1))
    return point, near[box]


def _not_apart(scene: Scene, first: Ints, second: Ints) -> tuple[Ints, Ints]:
    """The pairs that no flat face of either parts: all of one body on its inner side, all of the other outside."""
    meet = (
        np.minimum(scene.high[first], scene.high[second]) - np.maximum(scene.low[first], scene.low[second])
    ) > 0
    first, second = first[meet.all(axis=1)], second[meet.all(axis=1)]
    points, start = _corners(scene)
    outer = _outer_faces(scene, points, start)
    for swap in (False, True):
        one, other = (second, first) if swap else (first, second)
        parted = _parted(scene, outer, points, start, one, other)
        first, second = first[~parted], second[~parted]
    return first, second


def _corners(scene: Scene) -> tuple[Floats, Ints]:
    """Distinct points of each body, one body after the other, and where each begins."""
    faces = scene.faces
    clouds = []
    known: dict[Hashable, Ints] = {}  # solid → which of its points are distinct
    split = np.searchsorted(faces.body, np.arange(len(scene.bodies) + 1))
    for index, body in enumerate(scene.bodies):
        flat = faces.points[faces.start[split[index]] : faces.start[split[index + 1]]]
        meshes = [curved.triangles.reshape(-1, 3) for curved in body.curved if not _is_hole(curved)]
        cloud = np.concatenate([flat, *meshes])
        solid = None if body.placed is None else body.placed.solid
        distinct = known.get(solid) if solid is not None else None
        if distinct is None:
            distinct = _distinct(np.round(cloud, 6))
            if solid is not None:
                known[solid] = distinct
        clouds.append(cloud[distinct])
    starts = np.concatenate([[0], np.cumsum([len(cloud) for cloud in clouds])])
    return np.concatenate(clouds), starts


def _distinct(points: Floats) -> Ints:
    """Indices of the points (N, 3) of which none is the same as another."""
    order = np.lexsort(points.T)
    new = np.ones(len(points), dtype=bool)
    new[1:] = (points[order[1:]] != points[order[:-1]]).any(axis=1)
    return np.asarray(order[new])


def _is_hole(curved: CurvedFace) -> bool:
    return curved.cylinder is not None and curved.cylinder.hollow


def _outer_faces(scene: Scene, points: Floats, start: Ints) -> Bools:
    """(F,) whether all of a face's body lies on its inner side."""
    faces = scene.faces
    outer = np.zeros(len(faces.body), dtype=bool)
    for body, mine in enumerate(scene.faces_of):
        cloud = points[start[body] : start[body + 1]]
        offset = np.einsum("ij,ij->i", faces.origin[mine], faces.normal[mine])
        outer[mine] = (cloud @ faces.normal[mine].T - offset).max(axis=0, initial=-np.inf) < CONTACT_MM
    return outer


def _parted(scene: Scene, outer: Bools, points: Floats, start: Ints, one: Ints, other: Ints) -> Bools:
    """(P,) whether an outer face of ``one`` has all of ``other`` before it."""
    faces = scene.faces
    parted = np.zeros(len(one), dtype=bool)
    kept = np.flatnonzero(outer)
    starts = np.searchsorted(faces.body[kept], np.arange(len(scene.bodies) + 1))
    per_pair = np.diff(starts)[one]
    size = np.diff(start)[other]
    for a, b in chunks(per_pair * size):
        pair = np.repeat(np.arange(a, b), per_pair[a:b])
        face = kept[starts[one[pair]] + ranges(per_pair[a:b])]
        count = size[pair]
        if not len(pair):
            continue
        row = np.repeat(np.arange(len(pair)), count)
        away = points[start[other[pair]][row] + ranges(count)] - faces.origin[face][row]
        height = np.einsum("ij,ij->i", away, faces.normal[face][row])
        lowest = np.minimum.reduceat(height, np.cumsum(count) - count)
        parted[pair[lowest > -CONTACT_MM]] = True
    return parted
