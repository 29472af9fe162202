"""A whole piece as a network of elastic parts, springs and stops, solved through the year.

The strains of all parts through the year are sums of a few courses: a few states are solved, and every day is made of
them. Only what the stops press is looked for day by day.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from movement_core.piece.contact.blocks import Ints
from movement_core.piece.contact.fixed_lines import fixed_lines
from movement_core.piece.contact.found import Contact, Gap
from movement_core.piece.contact.joints import GLUED_EDGE, UNTOLD, Joint
from movement_core.piece.contact.network import ElasticParts, Network, Solution, Stops, Ties
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.pressing import pressing_forces
from movement_core.piece.contact.swelling import courses, swelling_of
from movement_core.piece.restrained_parts import WIDTH, Hold, elastic_parts, moduli_of
from movement_core.piece.restrained_ties import (
    GIVE_MM3_PER_N,
    Patch,
    patches_of,
    room_between,
    stopping_faces,
)
from movement_core.piece.solve import SolvedPart
from movement_core.piece.stiffness import BoardStiffness
from movement_core.wood import Species
from movement_core.wording import say

PRESS_MM = 0.02  # faces that overlap by less would do so by the roughness of the wood (own judgement)
ROUNDS = 6  # of looking for further stops that close because of the first
DRY_WEIGHT = 1.12  # of wood at 12 % ÷ its oven-dry weight
MOST_STOPS = (
    300  # that are followed at once, the deepest overlaps first: more than furniture has, less than a stack
)

Face = tuple[int, Contact | Gap]  # number of the joint, and what faces each other there


@dataclass(frozen=True, eq=False)
class Push:
    """What one spring or stop does to the first part of its joint, (3, 366) N, and where.

    ``point`` (3,), ``area_mm2`` or None, the face's ``normal`` (3,), and ``ends`` (K, 3) points round all that it
    stands for.
    """

    force_n: Floats
    point: Floats
    area_mm2: float | None
    normal: Floats
    ends: Floats


@dataclass(frozen=True, eq=False)
class PieceNetwork:
    """A network through the year.

    Attributes
    ----------
    parts : as the network has them. shift_mm : (N, 3, 366) of their own zeros, and kept : (N, 3, 366) strains kept
        from them, with nothing stopped. stress_mpa : (N, 366) along each part's width, tension positive, with stops.
    network, held : with the closed stops, and its state of each day.
    patches, stops : the springs and the closed stops, with the numbers of their joints. notes : what was not followed.
    """

    parts: ElasticParts
    shift_mm: Floats
    kept: Floats
    stress_mpa: Floats
    network: Network
    held: Solution
    patches: tuple[tuple[int, Patch], ...]
    stops: tuple[Face, ...]
    notes: tuple[str, ...]

    @cached_property
    def _of_joint(self) -> dict[int, tuple[list[int], list[int]]]:
        """Places of the springs that hold and of the closed stops, by the number of their joint."""
        found: dict[int, tuple[list[int], list[int]]] = defaultdict(lambda: ([], []))
        for place, (number, patch) in enumerate(self.patches):
            if patch.firm:
                found[number][0].append(place)
        for place, (number, _) in enumerate(self.stops):
            found[number][1].append(place)
        return dict(found)

    def pushes(self, joint: int) -> list[Push]:
        """All springs of a joint that hold and all its stops that close, by its number."""
        springs, closed = self._of_joint.get(joint, ([], []))
        found = []
        forces = self.network.tie_force_n(self.held, springs) if springs else ()
        for place, force in zip(springs, forces):
            patch = self.patches[place][1]
            found.append(Push(force, patch.point, patch.area_mm2, patch.normal, patch.ends))
        for place in closed:
            face = self.stops[place][1]
            force = -face.normal[:, None] * self.held.stop_force_n[place]
            found.append(Push(force, face.centre, face.area_mm2, face.normal, np.concatenate(face.outline)))
        return found


class PieceParts:
    """What the networks of a piece have in common, whether its unknown joints are taken as glued or as free.

    ``solved`` : the parts, as the joints number them. ``joints`` : between them.
    """

    def __init__(self, solved: Sequence[SolvedPart], joints: Sequence[Joint]) -> None:
        self.solved, self.joints = solved, joints
        self.swellings = [swelling_of(one) for one in solved]
        boards: dict[tuple[Species, float], BoardStiffness] = {}
        self.moduli = [moduli_of(one, boards) for one in solved]
        self.lines = fixed_lines([one.part for one in solved], joints)
        self.modes, self.course = courses(self.swellings)
        self._density = [_density(one) for one in solved]
        self._patches: dict[int, list[Patch]] = {}  # of joints of which something is told, by their number

    def patches(self, number: int, if_solid: bool) -> list[Patch]:
        """Springs of a joint, by its number."""
        joint = self.joints[number]
        if number in self._patches:
            return self._patches[number]
        dense = [one for one in (self._density[part] for part in joint.parts) if one is not None]
        density = sum(dense) / len(dense) if dense else None
        found = patches_of(joint, density, if_solid, self.lines, number)
        if joint.holds != UNTOLD:
            self._patches[number] = found
        return found


def piece_network(piece: PieceParts, if_solid: bool, ground: int = 0) -> PieceNetwork:
    """The network of a piece, solved.

    Parameters
    ----------
    piece : its parts and joints. ground : the part that is taken to stay.
    if_solid : whether unknown joints are taken as glued, or as free.
    """
    solved, joints, moduli = piece.solved, piece.joints, piece.moduli
    patches, holds, faces = _between(piece, if_solid)
    ties = Ties(
        np.array([joints[number].parts for number, _ in patches], dtype=np.intp).reshape(-1, 2),
        np.array([patch.point for _, patch in patches]).reshape(-1, 3),
        np.array([patch.stiffness for _, patch in patches]).reshape(-1, 3, 3),
    )
    modes, course = piece.modes, piece.course
    network = Network(elastic_parts(solved, moduli, holds), ties, ground)
    free = states = network.untouched(modes)
    days = course
    stops = _stops(joints, faces)
    closed = np.zeros(len(faces), dtype=bool)
    order = np.zeros(0, dtype=np.intp)
    more = np.zeros(len(faces), dtype=bool)
    first = network.parts
    for _ in range(ROUNDS):
        overlap = -room_days(network, stops, states, days).min(axis=1, initial=np.inf)
        more = (overlap > PRESS_MM) & ~closed
        deepest = np.flatnonzero(more)[np.argsort(-overlap[more], kind="stable")]
        chosen = deepest[: MOST_STOPS - int(closed.sum())]
        if not len(chosen):
            break
        closed[chosen] = True
        order = np.flatnonzero(closed)
        pressed_on = [hold for place in order.tolist() for hold in _stop_holds(joints, faces[place])]
        network = Network(elastic_parts(solved, moduli, [*holds, *pressed_on]), ties, ground)
        some = _chosen(stops, order)
        unstopped, pushed = network.untouched(modes), network.pushed(some)
        force = pressing_forces(room_days(network, some, unstopped, course), network.give(some, pushed))
        states, days = _beside(unstopped, pushed), np.concatenate([course, force])
    across = np.array([one.e_mpa[WIDTH] for one in moduli])
    loose, held = free.at(course), states.at(days)
    return PieceNetwork(
        first,
        loose.shift_mm,
        loose.kept,
        np.asarray(across[:, None] * held.kept[:, WIDTH]),
        network,
        held,
        tuple(patches),
        tuple(faces[place] for place in order.tolist()),
        _left_open(int((more & ~closed).sum())),
    )


def _left_open(count: int) -> tuple[str, ...]:
    if not count:
        return ()
    return (say("{count} faces that meet were not followed: what they press is not told", count=count),)


def room_days(network: Network, stops: Stops, states: Solution, course: Floats) -> Floats:
    """(stops, days) room at stops, of states and how much of each there is on each day."""
    moved = network.room_mm(stops, states) - stops.room_mm[:, None]
    return np.asarray(stops.room_mm[:, None] + moved @ course)


def _between(piece: PieceParts, if_solid: bool) -> tuple[list[tuple[int, Patch]], list[Hold], list[Face]]:
    """Springs of all joints, where they take hold, and the faces that may press."""
    patches: list[tuple[int, Patch]] = []
    holds: list[Hold] = []
    faces: list[Face] = []
    every_way = np.eye(3)
    for number, joint in enumerate(piece.joints):
        found = piece.patches(number, if_solid)
        patches += [(number, patch) for patch in found]
        firm = [patch for patch in found if patch.firm]
        if firm:
            points = np.concatenate([patch.ends for patch in firm])
            passes = joint.kind == GLUED_EDGE
            holds += [Hold(part, points, every_way, passes) for part in joint.parts]
        if all(piece.swellings[part] is not None for part in joint.parts):
            faces += [(number, face) for face in stopping_faces(joint, if_solid)]
    return patches, holds, faces


def _density(solved: SolvedPart) -> float | None:
    """kg/m³ at 12 %."""
    species = solved.part.species.value
    if species is None or species.kind != "wood" or species.specific_gravity_12 is None:
        return None
    return 1000 * DRY_WEIGHT * species.specific_gravity_12


def _stop_holds(joints: Sequence[Joint], one: Face) -> list[Hold]:
    number, face = one
    points = np.concatenate(face.outline)
    return [Hold(part, points, np.outer(face.normal, face.normal)) for part in joints[number].parts]


def _stops(joints: Sequence[Joint], faces: Sequence[Face]) -> Stops:
    normals = np.array([face.normal for _, face in faces]).reshape(-1, 3)
    centre = np.array([face.centre for _, face in faces]).reshape(-1, 3)
    half = (
        np.array([face.size_mm / 2 if isinstance(face, Gap) else 0.0 for _, face in faces])[:, None] * normals
    )
    return Stops(
        np.array([joints[number].parts for number, _ in faces], dtype=np.intp).reshape(-1, 2),
        np.stack([centre - half, centre + half], axis=1),
        normals,
        np.array([room_between(face) for _, face in faces]),
        np.array([GIVE_MM3_PER_N / max(face.area_mm2, 1.0) for _, face in faces]),
    )


def _chosen(stops: Stops, which: Ints) -> Stops:
    return Stops(
        stops.pairs[which],
        stops.points[which],
        stops.normals[which],
        stops.room_mm[which],
        stops.give_mm_per_n[which],
    )


def _beside(one: Solution, other: Solution) -> Solution:
    """The states of both, one's first; stops press in the other's only."""
    still = np.zeros((len(other.stop_force_n), one.strain.shape[2]))
    return Solution(
        np.concatenate([one.shift_mm, other.shift_mm], axis=2),
        np.concatenate([one.strain, other.strain], axis=2),
        np.concatenate([one.kept, other.kept], axis=2),
        np.concatenate([still, other.stop_force_n], axis=1),
    )
