"""A round peg in a round hole, exactly: where it fits, how much room it has, or how much too thick it is."""

from __future__ import annotations

import math

import numpy as np

from movement_core.piece.contact.bodies import CurvedFace, Cylinder
from movement_core.piece.contact.found import CONTACT_MM, ROUND, Contact, Gap, Overlap
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.scene import Scene
from movement_core.piece.vectors import square_to

COAXIAL = 1e-3  # sine of the angle between two axes that count as one


def peg_in_hole(
    body: int,
    index: int,
    face: CurvedFace,
    other: int,
    number: int,
    met: CurvedFace,
    scene: Scene,
    reach: float,
) -> Contact | Gap | Overlap | bool | None:
    """What a round peg and a round hole make; True for nothing to tell; None if they are no such pair."""
    one, two = face.cylinder, met.cylinder
    if one is None or two is None or one.hollow == two.hollow:
        return None
    peg, hole = (two, one) if one.hollow else (one, two)
    if 1.0 - float(peg.axis @ hole.axis) ** 2 > COAXIAL**2:
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
    if high - low <= CONTACT_MM or room - off > reach or body > other:
        return True  # nothing there, or it is told from the other side
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
    area, rings = share * radius * (high - low), _rings(peg, radius, (low, high))
    where = (one_[0], two_[0], (faces[0], faces[1]), ROUND)
    if room <= CONTACT_MM:
        return Contact(*where, area, peg.axis, middle, rings, peg=within)
    return Gap(*where, max(0.0, room - off), room + off, area, peg.axis, middle, rings, peg=within)


_ANGLES = np.linspace(0, 2 * np.pi, 24, endpoint=False)
_ROUND = np.stack([np.cos(_ANGLES), np.sin(_ANGLES)], axis=1)


def _rings(peg: Cylinder, radius: float, heights: tuple[float, ...]) -> tuple[Floats, ...]:
    around = radius * (_ROUND @ np.stack(square_to(peg.axis)))
    return tuple(np.asarray(peg.point + height * peg.axis + around) for height in heights)
