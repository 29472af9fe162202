"""Solids for the tests of contacts, made without a host: blocks with cuts, prisms, pegs; turned and moved at will."""

from __future__ import annotations

from collections import defaultdict

import numpy as np

from movement_core.piece.contact.bodies import Body, CurvedFace, Cylinder, PlanarFace
from movement_core.piece.outline import SolidOutline
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.tag_sources import tags_from_text

STILL = (np.eye(3), np.zeros(3))


def pose(seed):
    """A random turn (3, 3) and shift (3,): a point p goes to turn @ p + shift."""
    rng = np.random.default_rng(seed)
    q, _ = np.linalg.qr(rng.normal(size=(3, 3)))
    return (q if np.linalg.det(q) > 0 else -q), rng.uniform(-2000, 2000, 3)


def placed(faces, name, where=STILL, curved=()):
    """A body from (normal, loops) pairs, put in its place."""
    turn, shift = where
    planar = tuple(
        PlanarFace(
            turn @ np.asarray(normal, float), tuple(np.asarray(p, float) @ turn.T + shift for p in loops)
        )
        for normal, loops in faces
    )
    return Body(name, name, planar, tuple(curved))


def blocks(name, add, cut=(), where=STILL):
    """Boxes ((low), (high)) put together, less others: exact faces, with holes where they have some."""
    corners = np.array([*add, *cut], dtype=float)
    grid = [np.unique(corners[:, :, axis]) for axis in range(3)]
    middle = [(g[:-1] + g[1:]) / 2 for g in grid]
    at = np.stack(np.meshgrid(*middle, indexing="ij"), axis=-1)
    filled = np.zeros(at.shape[:3], dtype=bool)
    for boxes, value in ((add, True), (cut, False)):
        for low, high in boxes:
            filled[((at > low) & (at < high)).all(axis=-1)] = value
    return cells(name, grid, filled, where)


def cells(name, grid, filled, where=STILL):
    """The solid that fills the marked cells of a grid of three coordinate lists."""
    faces = []
    for axis in range(3):
        padded = np.pad(filled, [(1, 1) if a == axis else (0, 0) for a in range(3)])
        for sign in (1, -1):
            shown = padded & ~np.roll(padded, -sign, axis=axis)
            for layer in range(padded.shape[axis]):
                plane = np.take(shown, layer, axis=axis)
                if not plane.any():
                    continue
                height = grid[axis][layer - 1 + (sign > 0)]
                u, v = [a for a in range(3) if a != axis]
                for loops in rings_of(plane, grid[u], grid[v]):
                    placed_loops = []
                    for loop in loops:
                        points = np.full((len(loop), 3), height)
                        points[:, [u, v]] = loop
                        placed_loops.append(points)
                    faces.append((sign * np.eye(3)[axis], placed_loops))
    return placed(faces, name, where)


def rings_of(plane, xs, ys):
    """Faces of the marked cells of a plane: for each joined group of cells its outer loop and its holes."""
    for group in groups_of(plane):
        after = defaultdict(list)
        for i, j in group:
            ring = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)]
            for here, there, beside in zip(ring, ring[1:] + ring[:1], ((0, -1), (1, 0), (0, 1), (-1, 0))):
                if (i + beside[0], j + beside[1]) not in group:
                    after[here].append(there)
        loops = []
        while after:
            here = next(iter(after))
            loop, came = [], None
            while here in after:
                ways = after[here]
                # Where cells meet at a corner only: keep to the same cell, which lies to the left.
                ways.sort(key=lambda way, h=here, c=came: -turn_of(c, h, way))
                there = ways.pop(0)
                if not ways:
                    del after[here]
                loop.append((xs[here[0]], ys[here[1]]))
                came, here = here, there
            loops.append(straightened(np.array(loop, dtype=float)))
        loops.sort(key=lambda p: -abs(shoelace(p)))
        yield loops


def groups_of(plane):
    left = {(int(i), int(j)) for i, j in np.argwhere(plane)}
    while left:
        group, waiting = set(), [left.pop()]
        while waiting:
            i, j = waiting.pop()
            group.add((i, j))
            for near in ((i + 1, j), (i - 1, j), (i, j + 1), (i, j - 1)):
                if near in left:
                    left.remove(near)
                    waiting.append(near)
        yield group


def turn_of(came, here, there):
    if came is None:
        return 0.0
    (a, b), (c, d) = np.subtract(here, came), np.subtract(there, here)
    return float(np.arctan2(a * d - b * c, a * c + b * d))


def straightened(loop):
    before, after = loop - np.roll(loop, 1, axis=0), np.roll(loop, -1, axis=0) - loop
    return loop[np.abs(before[:, 0] * after[:, 1] - before[:, 1] * after[:, 0]) > 0]


def shoelace(loop):
    x, y = loop.T
    return float((x * np.roll(y, -1) - y * np.roll(x, -1)).sum() / 2)


def prism(name, outline, low, high, where=STILL, holes=()):
    """An outline (K, 2) in x and y, with holes, pushed from z = low to z = high."""
    loops = [np.asarray(outline, float), *(np.asarray(hole, float) for hole in holes)]
    lift = lambda loop, z: np.column_stack([loop, np.full(len(loop), float(z))])  # noqa: E731
    faces = [
        ((0, 0, -1), [lift(loop, low) for loop in loops]),
        ((0, 0, 1), [lift(loop, high) for loop in loops]),
    ]
    for index, loop in enumerate(loops):
        anticlockwise = loop if (shoelace(loop) > 0) == (index == 0) else loop[::-1]
        for a, b in zip(anticlockwise, np.roll(anticlockwise, -1, axis=0)):
            run = (b - a) / np.linalg.norm(b - a)
            side = [(*a, low), (*b, low), (*b, high), (*a, high)]
            faces.append(((run[1], -run[0], 0.0), [np.array(side)]))
    return placed(faces, name, where)


def circle(radius, count, centre=(0.0, 0.0)):
    angle = 2 * np.pi * np.arange(count) / count
    return np.column_stack([np.cos(angle), np.sin(angle)]) * radius + np.asarray(centre)


def cylinder_face(radius, low, high, where=STILL, centre=(0.0, 0.0), hollow=False, count=64):
    """The curved face of an upright peg, or of the hole that takes it."""
    turn, shift = where
    ring = circle(radius, count, centre)
    after = np.roll(ring, -1, axis=0)
    lift = lambda points, z: np.column_stack([points, np.full(len(points), float(z))])  # noqa: E731
    a, b, c, d = lift(ring, low), lift(after, low), lift(after, high), lift(ring, high)
    triangles = np.concatenate([np.stack([a, b, c], axis=1), np.stack([a, c, d], axis=1)])
    if hollow:
        triangles = triangles[:, ::-1]
    known = Cylinder(
        turn @ np.array([*centre, 0.0]) + shift,
        turn @ np.array([0, 0, 1.0]),
        radius,
        low,
        high,
        2 * np.pi,
        hollow,
    )
    return CurvedFace(triangles @ turn.T + shift, known)


def peg(name, radius, low, high, where=STILL, centre=(0.0, 0.0), count=64):
    """A round peg along z."""
    ring = circle(radius, count, centre)
    ends = [
        ((0, 0, sign), [np.column_stack([ring, np.full(count, float(z))])])
        for sign, z in ((-1, low), (1, high))
    ]
    return placed(ends, name, where, [cylinder_face(radius, low, high, where, centre, count=count)])


def bored(name, low, high, radius, where=STILL, centre=(0.0, 0.0), count=64):
    """A block between two corners with a round hole right through along z."""
    (x0, y0, z0), (x1, y1, z1) = low, high
    body = prism(name, [(x0, y0), (x1, y0), (x1, y1), (x0, y1)], z0, z1, where)
    ring = circle(radius, count, centre)
    turn, shift = where
    faces = list(body.planar)
    for index, z in ((0, z0), (1, z1)):
        hole = np.column_stack([ring, np.full(count, float(z))]) @ turn.T + shift
        faces[index] = PlanarFace(faces[index].normal, (*faces[index].loops, hole))
    return Body(name, name, tuple(faces), (cylinder_face(radius, z0, z1, where, centre, True, count),))


def outline_of(body, turn):
    """What the host would tell of the shape of a flat-faced body for its grain frame."""
    loops = [face.loops[0] for face in body.planar]
    edges = np.concatenate([np.roll(loop, -1, axis=0) - loop for loop in loops])
    length = np.linalg.norm(edges, axis=1)
    areas, volume = [], 0.0
    for face in body.planar:
        rings = [np.cross(p, np.roll(p, -1, axis=0)).sum(axis=0) @ face.normal / 2 for p in face.loops]
        area = abs(rings[0]) - sum(abs(one) for one in rings[1:])
        areas.append(area)
        volume += area * (face.loops[0][0] @ face.normal) / 3
    return SolidOutline(
        own_axes=turn.T,
        points=body.points,
        face_normals=np.array([face.normal for face in body.planar]),
        face_areas=np.array(areas),
        edge_directions=edges / length[:, None],
        edge_lengths=length,
        volume_mm3=float(volume),
    )


def piece_of(pairs, where=STILL):
    """The parts of bodies with their tags: [(body, 'white oak; grain x; …'), …] as drawn before they were turned."""
    turn, _ = where
    return parts_of(
        [
            Solid(
                body.key,
                body.name,
                outline_of(body, turn),
                tags_from_text(body.name, f"wood{{{tag}}}", "label"),
            )
            for body, tag in pairs
        ]
    )
