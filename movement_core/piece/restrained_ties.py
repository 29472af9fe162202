"""Joints as springs and stops: how stiffly each kind holds, and at which points.

The stiffness of furniture joints is published for few of them; what is taken here decides little where parts are
wide, since there the wood gives more than the joint.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.piece.contact.carried import carries, held_directions
from movement_core.piece.contact.fixed_lines import FixedLines
from movement_core.piece.contact.found import FLAT, Contact, Gap
from movement_core.piece.contact.joints import (
    DOVETAILED,
    FREE,
    OVERLAP,
    PEGGED,
    POINT,
    SCREWED,
    TENONED,
    UNTOLD,
    Joint,
)
from movement_core.piece.contact.meetings import OPPOSED
from movement_core.piece.contact.polygons import Floats

# A glue line holds as stiffly as the wood right beside it shears: rolling shear of 180 MPa over some 9 mm (own).
GLUE_N_PER_MM3 = 20.0
# Screws and pegs: slip modulus ρ^1.5 d / 23 N/mm a fastener and shear plane, ρ in kg/m³, d in mm
# (EN 1995-1-1, table 7.1, dowels and screws in bored holes, recalled).
SCREW_MM, SCREWS = 4.5, 4  # where screws are not drawn (own)
POINT_SCREWS = 2  # of a hinge leaf or fitting (own)
USUAL_DENSITY = 650.0  # kg/m³ where none is known
SEAT_N_PER_MM = 10.0  # what merely lies or slides there is kept in place by its weight and friction (own)
LOOSE_N_PER_MM = 0.1  # in the directions in which it is free: a free panel floats in the middle
NO_LINES = FixedLines({}, {})
GIVE_MM3_PER_N = 0.01  # a stop gives as 5 mm of wood of 500 MPa under it, mm for one N on one mm² (own)


@dataclass(frozen=True, eq=False)
class Patch:
    """One spring of a joint: point (3,), stiffness (3, 3) N/mm, area mm² or None, and its contact's normal (3,).

    ``ends`` (K, 3) are points round all that it stands for. ``firm`` ones hold, so that they can strain the wood; the
    others only keep loose parts in place.
    """

    point: Floats
    stiffness: Floats
    area_mm2: float | None
    normal: Floats
    ends: Floats
    firm: bool = True


def slip_modulus(density_kg_m3: float, diameter_mm: float) -> float:
    """N/mm of one dowel-type fastener in shear, EN 1995-1-1 table 7.1 (recalled)."""
    return float(density_kg_m3**1.5 * diameter_mm / 23.0)


def patches_of(
    joint: Joint, density: float | None, if_solid: bool, lines: FixedLines = NO_LINES, number: int = 0
) -> list[Patch]:
    """Springs of a joint.

    Parameters
    ----------
    joint : between two parts. density : kg/m³ of the wood there, None where unknown.
    if_solid : whether a joint of which nothing is told is taken as glued, or as free.
    lines, number : the fixed lines of the piece, and the number of the joint among them; glue outranks them.
    """
    main = joint.meeting.main
    if main is None:
        return []
    pins: list[Patch] = []
    if joint.holds == FREE or (joint.holds == UNTOLD and not if_solid):
        for pin in lines.pins.get(number, ()):
            spring = SEAT_N_PER_MM * np.outer(pin.direction, pin.direction)
            pins.append(Patch(pin.point, spring, None, main.normal, pin.point[None], firm=False))
    if not carries(joint):
        return pins
    rho = USUAL_DENSITY if density is None else density
    if joint.holds == FREE or (joint.holds == UNTOLD and not if_solid):
        # All directions where nothing is told: such a joint carries, and bears nothing.
        held = lines.left(number, held_directions(joint))
        give = LOOSE_N_PER_MM * lines.left(number, np.eye(3)) if pins else LOOSE_N_PER_MM * np.eye(3)
        spring = SEAT_N_PER_MM * held + give @ (np.eye(3) - held)
        return [Patch(main.centre, spring, None, main.normal, main.centre[None], firm=False), *pins]
    if main.surface != FLAT and joint.holds != POINT and joint.kind != SCREWED:
        # A curved glue line is taken at its middle: it holds, and what it strains within itself is left out.
        spring = GLUE_N_PER_MM3 * main.area_mm2 * np.eye(3)
        return [Patch(main.centre, spring, main.area_mm2, main.normal, main.centre[None])]
    if joint.holds == POINT or main.surface != FLAT:
        drawn = joint.kind in (PEGGED, SCREWED) and main.surface != FLAT
        diameter = _diameter(main) if drawn else POINT_SCREWS * SCREW_MM
        return [
            Patch(main.centre, slip_modulus(rho, diameter) * np.eye(3), None, main.normal, main.centre[None])
        ]
    if joint.kind == SCREWED:
        each = slip_modulus(rho, SCREW_MM * SCREWS / 4) * np.eye(3)
        return [Patch(point, each, None, main.normal, point[None]) for point in four_points(main)]
    found = []
    for face in glued_faces(joint):
        ends, quarter = np.concatenate(face.outline), face.area_mm2 / 4
        spring = GLUE_N_PER_MM3 * quarter * np.eye(3)
        found += [Patch(point, spring, quarter, face.normal, ends) for point in four_points(face)]
    return found


def glued_faces(joint: Joint) -> list[Contact | Gap]:
    """The faces that glue holds: of tenons and tails the cheeks, and not the shoulders, which are end grain."""
    meeting = joint.meeting
    flat: list[Contact | Gap] = [one for one in meeting.contacts if one.surface == FLAT]
    if joint.kind in (TENONED, DOVETAILED):
        facing = [one for one in meeting.facing if one.surface == FLAT]
        cheeks = [
            one for one in facing if any(abs(one.normal @ wall.axis) > OPPOSED for wall in meeting.walls)
        ]
        flat = [one for one in cheeks if one in flat] or cheeks or flat
    main = meeting.main
    return flat or ([] if main is None else [main])


def stopping_faces(joint: Joint, if_solid: bool) -> list[Contact | Gap]:
    """Faces that would press if they came together: what faces across a gap, and what touches and is not held."""
    if joint.kind == OVERLAP:
        return []
    free = joint.holds == FREE or (joint.holds == UNTOLD and not if_solid)
    facing: list[Contact | Gap] = list(joint.meeting.facing if free else joint.meeting.gaps)
    return [one for one in facing if one.surface == FLAT]


def room_between(face: Contact | Gap) -> float:
    """mm between two faces as drawn, where they are nearest."""
    return face.least_mm if isinstance(face, Gap) else 0.0


def four_points(face: Contact | Gap) -> Floats:
    """(4, 3) points of a quarter of its area each that have its centre and its second moments.

    So springs there do exactly what springs spread over the face would do to parts that strain evenly.
    """
    normal = face.normal
    plane = np.linalg.svd(normal[None])[2][1:]  # any two directions square to it
    moment, total = np.zeros((2, 2)), 0.0
    for loop in face.outline:
        a = (loop - face.centre) @ plane.T
        b = np.concatenate([a[1:], a[:1]])
        twice = a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0]
        total += float(twice.sum()) / 2
        weighted = a.T * twice
        outer, mixed = weighted @ a + (b.T * twice) @ b, weighted @ b
        moment += (2 * outer + mixed + mixed.T) / 24
    if abs(total) < 1e-9:
        return np.repeat(face.centre[None], 4, axis=0)
    values, vectors = np.linalg.eigh(moment / total)
    radii = np.sqrt(np.maximum(values, 0.0))
    signs = np.array([(i, j) for i in (-1.0, 1.0) for j in (-1.0, 1.0)])
    return np.asarray(face.centre + (signs * radii) @ vectors.T @ plane)


def _diameter(face: Contact | Gap) -> float:
    """Of a round contact, whose normal is its axis."""
    points = np.concatenate(face.outline) - face.centre
    away = points - np.outer(points @ face.normal, face.normal)
    return 2 * float(np.linalg.norm(away, axis=1).max()) or SCREW_MM
