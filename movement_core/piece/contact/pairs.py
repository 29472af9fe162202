"""Which bodies come near each other, and which of their flat faces look at each other: in numpy, all at once."""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass

import numpy as np

from movement_core.piece.contact.found import CONTACT_MM
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.scene import Ints, Scene

GAP_ANGLE = math.radians(15.0)  # faces of a gap run at most this much out of parallel (own judgement)
CHUNK = 200_000  # pairs worked on at once, so that memory stays small


@dataclass(frozen=True, eq=False)
class FacePairs:
    """Pairs of flat faces of two bodies (first body < second) that look at each other within reach.

    ``first``, ``second`` (P,) faces; ``least``, ``most`` (P,) distance from the first's plane to the second's
    corners along the first's normal, mm.
    """

    first: Ints
    second: Ints
    least: Floats
    most: Floats


def near_bodies(low: Floats, high: Floats, reach: float) -> tuple[Ints, Ints]:
    """(first, second) pairs of boxes within reach of each other, first < second, sorted.

    The boxes are swept along the axis on which the fewest lie side by side.
    """
    spread = np.ptp(low, axis=0) / np.maximum((high - low).mean(axis=0), 1e-9)
    axis = int(np.argmax(spread))
    order = np.argsort(low[:, axis], kind="stable")
    low_s, high_s = low[order], high[order] + reach
    ends = np.searchsorted(low_s[:, axis], high_s[:, axis], side="right")
    counts = ends - np.arange(len(order)) - 1
    found = []
    for a, b in chunks(counts):
        one = np.repeat(np.arange(a, b), counts[a:b])
        other = one + 1 + ranges(counts[a:b])
        meet = ((low_s[other] <= high_s[one]) & (low_s[one] <= high_s[other])).all(axis=1)
        found.append(np.stack([order[one[meet]], order[other[meet]]], axis=1))
    pairs = np.sort(np.concatenate(found), axis=1) if found else np.zeros((0, 2), dtype=np.int64)
    pairs = pairs[np.lexsort((pairs[:, 1], pairs[:, 0]))]
    return pairs[:, 0], pairs[:, 1]


def facing_faces(scene: Scene, first: Ints, second: Ints, reach: float) -> FacePairs:
    """Flat faces of near bodies that look at each other, whose outlines can overlap, within reach."""
    one, other = _face_pairs(scene, first, second, reach)
    parts = [
        _judge(scene, one[a : a + CHUNK], other[a : a + CHUNK], reach) for a in range(0, len(one), CHUNK)
    ]
    if not parts:
        none = np.zeros(0, dtype=np.int64)
        return FacePairs(none, none, np.zeros(0), np.zeros(0))
    return FacePairs(*(np.concatenate([getattr(part, name) for part in parts]) for name in _FIELDS))


_FIELDS = ("first", "second", "least", "most")


def _face_pairs(scene: Scene, first: Ints, second: Ints, reach: float) -> tuple[Ints, Ints]:
    """Faces of each near pair of bodies that lie within reach of the other body's box, all with all."""
    faces = scene.faces
    starts = np.searchsorted(faces.body, np.arange(len(scene.bodies) + 1))
    count = np.diff(starts)
    sides = []
    for body, other in ((first, second), (second, first)):
        pair = np.repeat(np.arange(len(body)), count[body])
        face = starts[body][pair] + ranges(count[body])
        box = other[pair]
        near = (faces.low[face] <= scene.high[box] + reach).all(axis=1)
        near &= (faces.high[face] >= scene.low[box] - reach).all(axis=1)
        pair, face = pair[near], face[near]
        sides.append((face, np.bincount(pair, minlength=len(first))))
    (a, a_count), (b, b_count) = sides
    a_start, b_start = np.cumsum(a_count) - a_count, np.cumsum(b_count) - b_count
    product = a_count * b_count
    pair = np.repeat(np.arange(len(first)), product)
    inner = ranges(product)
    wide = np.maximum(b_count[pair], 1)
    return a[a_start[pair] + inner // wide], b[b_start[pair] + inner % wide]


def _judge(scene: Scene, one: Ints, other: Ints, reach: float) -> FacePairs:
    faces = scene.faces
    facing = np.einsum("ij,ij->i", faces.normal[one], faces.normal[other]) <= -math.cos(GAP_ANGLE)
    one, other = one[facing], other[facing]
    near = (faces.low[one] <= faces.high[other] + reach).all(axis=1)
    near &= (faces.high[one] >= faces.low[other] - reach).all(axis=1)
    one, other = one[near], other[near]
    least, most, flat_low, flat_high = _seen_from(scene, other, one)
    own_low, own_high = _seen_from(scene, one, one)[2:]
    keep = (least <= reach) & (most >= -CONTACT_MM)
    width = np.minimum(flat_high, own_high) - np.maximum(flat_low, own_low)
    keep &= (width > CONTACT_MM).all(axis=1)
    return FacePairs(one[keep], other[keep], least[keep], most[keep])


def _seen_from(scene: Scene, face: Ints, plane: Ints) -> tuple[Floats, Floats, Floats, Floats]:
    """Corners of faces in the frames of other faces: least and most height (P,), low and high (P, 2) in the plane."""
    faces = scene.faces
    if not len(face):
        return np.zeros(0), np.zeros(0), np.zeros((0, 2)), np.zeros((0, 2))
    count = np.diff(faces.start)[face]
    pair = np.repeat(np.arange(len(face)), count)
    away = faces.points[faces.start[face][pair] + ranges(count)] - faces.origin[plane][pair]
    starts = np.cumsum(count) - count
    height = np.einsum("ij,ij->i", away, faces.normal[plane][pair])
    flat = np.stack(
        [np.einsum("ij,ij->i", away, axis[plane][pair]) for axis in (faces.across, faces.up)], axis=1
    )
    return (
        np.minimum.reduceat(height, starts),
        np.maximum.reduceat(height, starts),
        np.minimum.reduceat(flat, starts),
        np.maximum.reduceat(flat, starts),
    )


def ranges(counts: Ints) -> Ints:
    """0 … c − 1 for each count c, one after the other."""
    starts = np.cumsum(counts) - counts
    return np.arange(int(counts.sum())) - np.repeat(starts, counts)


def chunks(counts: Ints) -> list[tuple[int, int]]:
    """Ranges of indices whose counts add up to about CHUNK each."""
    if not len(counts):
        return []
    group = np.cumsum(counts) // CHUNK
    edges = [0, *(np.flatnonzero(np.diff(group)) + 1).tolist(), len(counts)]
    return list(itertools.pairwise(edges))
