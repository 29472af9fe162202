"""Elastic parts joined by springs and stops: where they go, how they strain and what their joints bear.

A part is shifted as a whole and strains evenly along each of its own three axes between the outermost of its joints;
beyond them it strains freely. Three bars, one along each axis, stand for its stiffness. It is not turned and does not
bend, and the bars do not pull each other thin. So what is found is a little too stiff, and its forces are too large.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from movement_core.errors import InputError
from movement_core.piece.contact.blocks import BlockSystem, Ints, add_to
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.pressing import pressing_forces
from movement_core.wording import say

GROUND_N_PER_MM = 1e-4  # keeps parts that nothing holds where they are
FAST_N_PER_MM = 1e6  # holds the part that is taken to stay


@dataclass(frozen=True, eq=False)
class ElasticParts:
    """Parts as three bars each.

    Attributes
    ----------
    axes : (N, 3, 3) own axes as rows. centre : (N, 3) mm, from which own coordinates count.
    stiffness_n : (N, 3) force per unit strain along each axis: modulus × section, > 0.
    low_mm, high_mm : (N, 3) own coordinates between which a part strains as its joints make it, low < high.
    """

    axes: Floats
    centre: Floats
    stiffness_n: Floats
    low_mm: Floats
    high_mm: Floats

    def __post_init__(self) -> None:
        if not (self.high_mm > self.low_mm).all() or not (self.stiffness_n > 0).all():
            raise InputError(
                say("a bar without length or stiffness"),
                where=say("network of parts"),
                allowed=say("low < high, stiffness > 0 N"),
            )

    def coordinates(self, which: Ints, points: Floats) -> tuple[Floats, Floats]:
        """(…, 3) own coordinates of points within the joints, and what of them lies beyond, mm."""
        own = np.einsum("jab,jb->ja", self.axes[which], points - self.centre[which])
        inside = np.clip(own, self.low_mm[which], self.high_mm[which])
        return inside, own - inside


@dataclass(frozen=True, eq=False)
class Ties:
    """Springs between points that two parts share: pairs (M, 2), points (M, 3) mm, stiffness (M, 3, 3) N/mm."""

    pairs: Ints
    points: Floats
    stiffness: Floats


@dataclass(frozen=True, eq=False)
class Stops:
    """Faces that press when they meet.

    ``pairs`` (C, 2), ``points`` (C, 2, 3) mm on the face of the first and of the second, ``normals`` (C, 3) unit, out
    of the first toward the second, ``room_mm`` (C,) between the faces as drawn, ``give_mm_per_n`` (C,) > 0 of the
    wood right at the stop.
    """

    pairs: Ints
    points: Floats
    normals: Floats
    room_mm: Floats
    give_mm_per_n: Floats


@dataclass(frozen=True, eq=False)
class Solution:
    """A network in its states.

    Attributes
    ----------
    shift_mm : (N, 3, states) of the point of each part at its own zero, were its even strain to reach that far.
    strain : (N, 3, states) along the own axes between the joints. kept : (N, 3, states) less the free strain: what
        is kept from the part, + where it is pulled.
    stop_force_n : (C, states) pressing the two parts apart, ≥ 0.
    """

    shift_mm: Floats
    strain: Floats
    kept: Floats
    stop_force_n: Floats

    def at(self, course: Floats) -> Solution:
        """Sums of the states: ``course`` (states, days) tells how much of each there is on each day."""
        each = (self.shift_mm, self.strain, self.kept, self.stop_force_n)
        return Solution(*(_summed(values, course) for values in each))

    def plus(self, other: Solution, share: Floats) -> Solution:
        """This and shares (its states, states here) of another's states."""
        return Solution(
            self.shift_mm + _summed(other.shift_mm, share),
            self.strain + _summed(other.strain, share),
            self.kept + _summed(other.kept, share),
            share,
        )


class Network:
    """Parts and ties, put together and eliminated once for as many loads and stops as are asked for.

    Parameters
    ----------
    parts, ties : as above. ground : the part that is taken to stay.
    """

    def __init__(self, parts: ElasticParts, ties: Ties, ground: int = 0) -> None:
        self.parts, self.ties = parts, ties
        one, other = self._sides(ties.pairs, ties.points, ties.points)
        count = len(parts.centre)
        matrix = np.zeros((count, 6, 6))
        matrix[:, range(3), range(3)] = GROUND_N_PER_MM
        matrix[ground, range(3), range(3)] += FAST_N_PER_MM
        matrix[:, range(3, 6), range(3, 6)] = parts.stiffness_n * (parts.high_mm - parts.low_mm)
        add_to(matrix, ties.pairs[:, 0], _across(one, ties.stiffness, one))
        add_to(matrix, ties.pairs[:, 1], _across(other, ties.stiffness, other))
        self._one, self._other = one, other
        self._system = BlockSystem(matrix, ties.pairs, -_across(one, ties.stiffness, other))

    def solve(self, free_strain: Floats, stops: Stops | None = None) -> Solution:
        """States of the network.

        Parameters
        ----------
        free_strain : (N, 3, states) that each part would take along its own axes if nothing held it.
        stops : that may close; None: none does.
        """
        found = self.untouched(free_strain)
        if stops is None or not len(stops.pairs):
            return found
        pushed = self.pushed(stops)
        return found.plus(pushed, pressing_forces(self.room_mm(stops, found), self.give(stops, pushed)))

    def untouched(self, free_strain: Floats) -> Solution:
        """As ``solve``, were there no stops: linear in the strains."""
        parts, ties = self.parts, self.ties
        beyond = self._beyond(ties.pairs, ties.points, ties.points, free_strain)
        load = np.zeros((len(parts.centre), 6, free_strain.shape[2]))
        load[:, 3:] = (parts.stiffness_n * (parts.high_mm - parts.low_mm))[:, :, None] * free_strain
        pull = ties.stiffness @ beyond
        add_to(load, ties.pairs[:, 0], np.swapaxes(self._one, 1, 2) @ pull)
        add_to(load, ties.pairs[:, 1], -np.swapaxes(self._other, 1, 2) @ pull)
        return self._solution(load, free_strain, np.zeros((0, free_strain.shape[2])))

    def pushed(self, stops: Stops) -> Solution:
        """As many states as stops: in each, one of them presses with 1 N and nothing swells."""
        one, other = self._sides(stops.pairs, stops.points[:, 0], stops.points[:, 1])
        count = len(stops.pairs)
        load = np.zeros((len(self.parts.centre), 6, count))
        each = np.arange(count)
        load[stops.pairs[:, 0], :, each] -= np.einsum("cab,ca->cb", one, stops.normals)
        load[stops.pairs[:, 1], :, each] += np.einsum("cab,ca->cb", other, stops.normals)
        return self._solution(load, np.zeros((len(load), 3, count)), np.eye(count))

    def give(self, stops: Stops, pushed: Solution) -> Floats:
        """(C, C) mm by which a force of 1 N at one stop opens another."""
        opened = self.room_mm(stops, pushed) - stops.room_mm[:, None]
        return np.asarray((opened + opened.T) / 2 + np.diag(stops.give_mm_per_n))

    def _solution(self, load: Floats, free_strain: Floats, stop_force: Floats) -> Solution:
        found = self._system.solve(load)
        return Solution(found[:, :3], found[:, 3:], found[:, 3:] - free_strain, stop_force)

    def tie_force_n(self, solution: Solution, which: Sequence[int] | None = None) -> Floats:
        """(K, 3, states) force on the first part of ties; the second bears the opposite.

        ``which`` : places of ties that all join the same two parts, in that order; None: all ties, one after another.
        """
        if which is None:
            count = len(self.ties.pairs)
            found = [self.tie_force_n(solution, [place]) for place in range(count)]
            return np.concatenate(found) if found else np.zeros((0, 3, solution.strain.shape[2]))
        way = self._tie_ways[which]
        strain, kept = solution.strain, solution.kept
        parts = self.ties.pairs[which[0]].tolist()
        states = [
            row
            for part in parts
            for row in (solution.shift_mm[part], strain[part], strain[part] - kept[part])
        ]
        force = way.reshape(-1, way.shape[2]) @ np.concatenate(states)  # one product, not one a tie
        return np.asarray(force.reshape(len(which), 3, -1))

    @cached_property
    def _tie_ways(self) -> Floats:
        """(M, 3, 18) force on the first part of each tie from the shift, strain and free strain of both."""
        ties, ways = self.ties, []
        for part, side, sign in ((ties.pairs[:, 0], self._one, -1.0), (ties.pairs[:, 1], self._other, 1.0)):
            _, over = self.parts.coordinates(part, ties.points)
            beyond = np.swapaxes(self.parts.axes[part], 1, 2) * over[:, None, :]
            ways += [sign * side, sign * beyond]
        return np.asarray(ties.stiffness @ np.concatenate(ways, axis=2))

    def room_mm(self, stops: Stops, solution: Solution) -> Floats:
        """(C, states) room between the faces of stops, of a solution; negative where they would overlap."""
        found = np.concatenate([solution.shift_mm, solution.strain], axis=1)
        one, other = self._sides(stops.pairs, stops.points[:, 0], stops.points[:, 1])
        first, second = stops.pairs.T
        moved = other @ found[second] - one @ found[first]
        free_strain = solution.strain - solution.kept
        moved = moved + self._beyond(stops.pairs, stops.points[:, 0], stops.points[:, 1], free_strain)
        return np.asarray(stops.room_mm[:, None] + np.einsum("ca,cas->cs", stops.normals, moved))

    def _sides(self, pairs: Ints, first: Floats, second: Floats) -> tuple[Floats, Floats]:
        """(M, 3, 6) movement of a point of each part of pairs from that part's six unknowns."""
        return self._moved_by(pairs[:, 0], first), self._moved_by(pairs[:, 1], second)

    def _moved_by(self, which: Ints, points: Floats) -> Floats:
        inside, _ = self.parts.coordinates(which, points)
        stretch = np.swapaxes(self.parts.axes[which], 1, 2) * inside[:, None, :]
        shift = np.broadcast_to(np.eye(3), (len(which), 3, 3))
        return np.concatenate([shift, stretch], axis=2)

    def _beyond(self, pairs: Ints, first: Floats, second: Floats, free_strain: Floats) -> Floats:
        """(M, 3, states) movement of second less first that their free ends beyond all joints add."""
        total = np.zeros((len(pairs), 3, free_strain.shape[2]))
        for which, points, sign in ((pairs[:, 0], first, -1.0), (pairs[:, 1], second, 1.0)):
            _, over = self.parts.coordinates(which, points)
            far = np.flatnonzero(np.abs(over).max(axis=1, initial=0.0) > 0)
            if len(far):
                axes = np.swapaxes(self.parts.axes[which[far]], 1, 2)
                total[far] += sign * (axes @ (over[far, :, None] * free_strain[which[far]]))
        return total


def _summed(values: Floats, course: Floats) -> Floats:
    """(…, days) of values (…, states) and how much of each state there is on each day, as one product."""
    lead, (states, days) = values.shape[:-1], course.shape
    return np.asarray((values.reshape(math.prod(lead), states) @ course).reshape(*lead, days))


def _across(one: Floats, stiffness: Floats, other: Floats) -> Floats:
    return np.asarray(np.swapaxes(one, 1, 2) @ stiffness @ other)
