"""Meshes of curved faces, as coarse as the chords allow: the host's own divides small rounds ten times finer.

A face that is turned about an axis, with edges along and across that axis, is laid out in rings of one meridian. Any
other is meshed by the host.
"""

from __future__ import annotations

from typing import Any

import numpy as np
import Part
from numpy.typing import NDArray

from movement_core.errors import InputError
from movement_core.piece.vectors import cross
from movement_core.wording import say

Vectors = NDArray[np.float64]
Triangles = NDArray[np.int64]

LEAST_STEPS = 12  # in a full turn: a thin peg is still round
MOST_FACETS = 250_000  # of one face (own judgement): a ball of 1 m has as many; more take seconds
SAME = 1e-6  # parameters nearer to each other than this, over their range, are the same

_TURNED = (Part.Cylinder, Part.Cone, Part.Sphere, Part.Toroid, Part.SurfaceOfRevolution)


def mesh_of(face: Any, chord_mm: float) -> tuple[Vectors, Triangles]:
    """Points (N, 3) of a face's surface and triangles (T, 3) of them, chords within ``chord_mm``; either way round.

    Raises InputError where it would take more than MOST_FACETS of them.
    """
    found = _rings(face, chord_mm) if isinstance(face.Surface, _TURNED) else None
    if found is not None:
        return found
    _bounded(_least_facets(face, chord_mm))
    # A copy: a mesh that lies there already, or that of the neighbour, would be taken over.
    points, corners = face.copy().tessellate(chord_mm)
    return (
        np.array([tuple(point) for point in points], dtype=float).reshape(-1, 3),
        np.array(corners, dtype=np.int64).reshape(-1, 3),
    )


def _rings(face: Any, chord_mm: float) -> tuple[Vectors, Triangles] | None:
    """The mesh of a turned face whose edges are rings and meridians; None where they are not."""
    surface, (u0, u1, v0, v1) = face.Surface, face.ParameterRange
    if not np.isfinite([u0, u1, v0, v1]).all() or not _is_whole(face, surface, (u0, u1, v0, v1)):
        return None
    centre, axis = _axis(surface)
    edge = surface.uIso(u0).toShape(v0, v1)
    meridian = np.array([tuple(point) for point in edge.discretize(Deflection=chord_mm / 2)])
    if len(meridian) > 2:
        chord_mm /= 2  # the other half goes to the meridian
    away = meridian - centre
    along = np.outer(away @ axis, axis)
    radius = float(np.linalg.norm(away - along, axis=1).max())
    turn = u1 - u0
    step = 2 * np.arccos(max(1 - chord_mm / radius, 0.0)) if radius > chord_mm else np.pi
    count = max(int(np.ceil(turn / step)), int(np.ceil(LEAST_STEPS * turn / (2 * np.pi))), 1)
    _bounded(2.0 * count * (len(meridian) - 1))
    angles = turn * np.arange(count + 1) / count
    sense = _sense(surface, (u0, u1), (v0 + v1) / 2, centre, axis)
    out, aside = away - along, cross(axis, away - along) * sense
    points = (
        centre + along + np.cos(angles)[:, None, None] * out + np.sin(angles)[:, None, None] * aside
    )  # (count + 1, meridian, 3)
    rows = len(meridian)
    ring, place = (
        index.ravel() for index in np.meshgrid(np.arange(count), np.arange(rows - 1), indexing="ij")
    )
    a, b = ring * rows + place, (ring + 1) * rows + place
    corners = np.concatenate([np.stack([a, b, b + 1], axis=1), np.stack([a, b + 1, a + 1], axis=1)])
    return points.reshape(-1, 3), corners.astype(np.int64)


def _bounded(facets: float) -> None:
    if facets > MOST_FACETS:
        raise InputError(
            say("a round face of it would take {count:,.0f} facets", count=facets),
            allowed=say("up to {most:,}", most=MOST_FACETS),
            todo=say("check its units, or the scale of its link"),
        )


def _least_facets(face: Any, chord_mm: float) -> float:
    """How many facets a face that is round both ways takes at least; 0 where it is not known to be."""
    surface = face.Surface
    if isinstance(surface, Part.Sphere):
        product = surface.Radius**2
    elif isinstance(surface, Part.Toroid):
        product = surface.MinorRadius * (surface.MinorRadius + surface.MajorRadius)
    else:
        return 0.0
    # A chord c of a circle of radius r is as long as √(8 r c); a facet is half of two such.
    return float(face.Area / (4 * chord_mm * np.sqrt(product)))


def _is_whole(face: Any, surface: Any, bounds: tuple[float, float, float, float]) -> bool:
    """Whether the face fills its range of parameters: every edge runs along a side of it."""
    wires = face.Wires
    if not 1 <= len(wires) <= 2:
        return False
    u0, u1, v0, v1 = bounds
    for edge in face.Edges:
        if edge.Degenerated:
            continue
        first, last = edge.ParameterRange
        seen = [
            surface.parameter(edge.valueAt(first + share * (last - first))) for share in (0.0, 0.3, 0.6, 1.0)
        ]
        u, v = np.array(seen).T
        sides_v = [np.abs(v - side).max() <= SAME * max(v1 - v0, 1.0) for side in (v0, v1)]
        turns = [np.abs(np.angle(np.exp(1j * (u[1:3] - side)))).max() <= SAME for side in (u0, u1)]
        if not any(sides_v) and not any(turns):
            return False
    return True


def _axis(surface: Any) -> tuple[Vectors, Vectors]:
    if isinstance(surface, Part.SurfaceOfRevolution):
        centre, axis = surface.Location, surface.Direction
    else:
        centre, axis = surface.Center, surface.Axis
    along = np.array([axis.x, axis.y, axis.z])
    return np.array([centre.x, centre.y, centre.z]), along / np.linalg.norm(along)


def _sense(surface: Any, turn: tuple[float, float], v: float, centre: Vectors, axis: Vectors) -> float:
    """Whether a growing parameter turns right-handed about the axis (1) or left-handed (−1)."""
    u0, u1 = turn
    here = np.array(tuple(surface.value(u0, v))) - centre
    there = np.array(tuple(surface.value(u0 + min(u1 - u0, 1.0) / 2, v))) - centre
    return 1.0 if cross(here, there) @ axis >= 0 else -1.0
