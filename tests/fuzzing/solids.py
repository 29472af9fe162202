"""Solids as the host might hand them over, sound and spoilt: to their frames, and to what touches what."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.contact.bodies import Body, CurvedFace, PlanarFace
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.joints import joints_of
from movement_core.piece.contact.meetings import meetings_of
from movement_core.piece.outline import SolidOutline
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.tag_sources import tags_from_text

Floats = NDArray[np.float64]
SIZES = (1e-6, 1e-3, 0.1, 1.0, 20.0, 120.0, 900.0, 1e5, 1e7)


def _box(rng: random.Random) -> tuple[Floats, Floats]:
    """Corner and size of a box, often on a coarse grid so that boxes meet."""
    if rng.random() < 0.6:
        return (
            np.array([20.0 * rng.randrange(-3, 4) for _ in range(3)]),
            np.array([20.0 * rng.randrange(1, 6) for _ in range(3)]),
        )
    return np.array([rng.uniform(-50, 50) for _ in range(3)]), np.array([rng.choice(SIZES) for _ in range(3)])


def _faces(corner: Floats, size: Floats) -> list[PlanarFace]:
    faces = []
    for axis in range(3):
        u, v = (axis + 1) % 3, (axis + 2) % 3
        for side in (0, 1):
            points = np.tile(corner.astype(float), (4, 1))
            points[:, axis] += side * size[axis]
            points[[1, 2], u] += size[u]
            points[[2, 3], v] += size[v]
            faces.append(PlanarFace((2 * side - 1) * np.eye(3)[axis], (points[:: 2 * side - 1],)))
    return faces


def _spoilt(rng: random.Random, points: Floats) -> Floats:
    points = points.copy()
    how = rng.randrange(6)
    if how == 0:
        points[rng.randrange(len(points))] = points[0]
    elif how == 1:
        points[:] = points[0]
    elif how == 2:
        points = points[rng.sample(range(len(points)), len(points))]
    elif how == 3:
        points *= rng.choice((1e-9, -1.0, 1e6))
    elif how == 4:
        points[rng.randrange(len(points)), rng.randrange(3)] += rng.choice((1e-7, 0.3, 1e5))
    else:
        points = np.repeat(points, 2, axis=0)
    return points


def contacts(rng: random.Random, folder: Path) -> Callable[[], object]:
    """Some boxes, faces of which may be spoilt, missing, or meshes."""
    bodies = []
    solids = []
    for index in range(rng.randrange(2, 5)):
        corner, size = _box(rng)
        planar, curved = _faces(corner, size), []
        if rng.random() < 0.5:
            at = rng.randrange(6)
            planar[at] = replace(planar[at], loops=(_spoilt(rng, planar[at].loops[0]),))
        if rng.random() < 0.2:
            del planar[rng.randrange(len(planar))]
        if rng.random() < 0.2:
            face = planar.pop()
            p = face.loops[0]
            curved.append(CurvedFace(np.stack([p[[0, 1, 2]], p[[0, 2, 3 % len(p)]]])))
        if rng.random() < 0.1:
            planar.append(PlanarFace(np.array([0.0, 0.0, 1.0]), (*planar[0].loops, planar[0].loops[0] * 0.5)))
        bodies.append(Body(f"k{index}", f"n{index}", tuple(planar), tuple(curved)))
        solids.append(
            Solid(f"k{index}", f"n{index}", _outline(corner, size), tags_from_text("n", "wood{oak}", "label"))
        )

    def read() -> None:
        joints_of(parts_of(solids), meetings_of(contacts_of(bodies)))

    return read


def _outline(corner: Floats, size: Floats) -> SolidOutline:
    axes = np.eye(3)
    unit = np.array([[i, j, k] for i in (0, 1) for j in (0, 1) for k in (0, 1)], dtype=float)
    areas = np.array([size[1] * size[2], size[0] * size[2], size[0] * size[1]])
    return SolidOutline(
        axes,
        corner + unit * size,
        np.vstack([axes, -axes]),
        np.concatenate([areas, areas]),
        np.repeat(axes, 4, axis=0),
        np.repeat(size, 4),
        float(np.prod(size)),
    )


WORDS = (
    "oak",
    "oak; grain x",
    "oak; pith 0 -70",
    "oak; grain 1 1 1; heart show; cut flat",
    "oak; rings 30; fixed +y",
    "",
)


def frames(rng: random.Random, folder: Path) -> Callable[[], object]:
    """Outlines with flat, tiny, turned and spoilt ones, and tags that may not fit them."""
    solids = []
    for index in range(rng.randrange(1, 5)):
        outline = _outline(*_box(rng))
        if rng.random() < 0.4:
            outline = replace(outline, points=_spoilt(rng, outline.points))
        if rng.random() < 0.2:
            none = np.empty((0, 3))
            outline = replace(outline, face_normals=none, face_areas=np.empty(0))
            outline = replace(outline, edge_directions=none, edge_lengths=np.empty(0))
        if rng.random() < 0.2:
            outline = replace(outline, volume_mm3=rng.choice((0.0, -1.0, 1e-30, 1e30)))
        tags = tags_from_text(f"n{index}", f"wood{{{rng.choice(WORDS)}}}", "label")
        solids.append(Solid(f"k{index}", f"n{index}", outline, tags))
    return lambda: parts_of(solids)
