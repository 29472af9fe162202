"""Doors, drawers and the like: parts joined to each other, with room all round, that hang or rest in the piece.

Told from the joints and gaps alone. What such a group touches flat on one side it rests on, and on one more side,
square to that, it stops at what is there when it is shut: a drawer's side on its runner, and its back at the back of
the case, are not taken for glued joints.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations

import numpy as np

from movement_core.piece.contact.found import FLAT
from movement_core.piece.contact.joints import (
    CONFIRMED,
    INFERRED,
    NEAR,
    OVERLAP,
    RESTS,
    SLIDES,
    UNKNOWN,
    Joint,
)
from movement_core.piece.contact.meetings import CURVED_FIT, FACE
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.part import Part
from movement_core.wording import say

ONE_WAY = 0.85  # cosine: contacts looking within 30° of each other lie on one side (own judgement)
OPPOSITE = -0.9
LEAST_PARTS = 2  # a single board in a gap may be a cleat that is glued: it is left unknown
MOST_SIDES = 2  # what it rests on, and what it stops at when it is shut
SQUARE = 0.5  # cosine: two directions more than 60° apart stand across each other (own judgement)
PLANE_MM = 0.2  # contacts lie in one plane (own judgement)
SAME_LINE = 0.99  # cosine: contacts that look along one line, either way
REACH_MM = 0.5  # a box reaches no further than this past what stands beside it (own judgement)
MOST_SHARE = 0.5  # of the wood (own judgement)


@dataclass(frozen=True)
class LooseGroup:
    """Parts (indices) that move in the piece as one.

    ``hung``: on hardware, else it rests or nothing holds it. ``kept``: one part that is laid in, and kept elsewhere
    while it is not in use. ``butted``: its corners are drawn blunt, so that only how it stands shows that it is one
    thing: nothing that it touches is taken for resting on that account.
    """

    parts: frozenset[int]
    hung: bool
    kept: bool = False
    butted: bool = False


def loose_groups(parts: Sequence[Part], joints: Sequence[Joint]) -> tuple[LooseGroup, ...]:
    """Every group with room on two opposite sides that is joined to the rest by hardware or by lying on it only.

    What is kept elsewhere when it is not in use is a group by itself.
    """
    inert = {i for i, part in enumerate(parts) if part.species.value and part.species.value.kind == "inert"}
    kept = {i for i, part in enumerate(parts) if part.kept is not None}
    found = [LooseGroup(frozenset({index}), False, True) for index in sorted(kept)]
    apart = inert | kept
    firm = _together(
        len(parts), (joint.parts for joint in joints if is_firm(joint) and not apart & set(joint.parts))
    )
    for one in _standing(parts, joints, inert, sorted(firm, key=min)):
        if len(one.inside) >= LEAST_PARTS and _is_loose(one.touched, one.gaps, bool(one.hardware)):
            found.append(LooseGroup(one.inside, bool(one.hardware)))
    return (*found, *_butted(parts, joints, inert, apart, {i for group in found for i in group.parts}))


@dataclass(frozen=True, eq=False)
class _Standing:
    """Parts that joints make one of, and how they stand in the rest.

    ``touched``: joints with the rest, each with the direction out of the group; ``gaps``: directions of gaps at its
    outside; ``beside``: what stands beyond each of them; ``hardware``: what of metal touches it.
    """

    inside: frozenset[int]
    touched: list[tuple[Joint, Floats]]
    gaps: list[Floats]
    beside: list[int]
    hardware: set[int]


def _standing(
    parts: Sequence[Part],
    joints: Sequence[Joint],
    inert: set[int],
    together: Collection[frozenset[int]],
) -> list[_Standing]:
    """How sets of parts stand in the rest; each part belongs to one of them."""
    owner = {index: group for group, inside in enumerate(together) for index in inside}
    groups = [_Standing(inside, [], [], [], set()) for inside in together]
    middle = [_middle([parts[i] for i in sorted(inside)]) for inside in together]
    for joint in joints:
        one, other = joint.parts
        if owner[one] == owner[other]:
            continue
        metal = inert & set(joint.parts)
        for mine, beyond, sign in ((one, other, 1.0), (other, one, -1.0)):
            standing = groups[owner[mine]]
            if metal:
                standing.hardware.update(metal - {mine} if joint.meeting.contacts else ())
            elif joint.meeting.contacts:
                standing.touched.extend((joint, sign * contact.normal) for contact in joint.meeting.contacts)
            for gap in joint.meeting.gaps:
                outward = sign * gap.normal
                at = float((gap.centre - middle[owner[mine]]) @ outward)
                if not metal and gap.surface == FLAT and at > 0:
                    standing.gaps.append(outward)
                    standing.beside.append(beyond)
    return groups


def _butted(
    parts: Sequence[Part], joints: Sequence[Joint], inert: set[int], apart: set[int], told: set[int]
) -> list[LooseGroup]:
    """Boxes whose corners are drawn blunt: parts that touch each other any way, and the rest as a drawer does.

    Whatever touches holds, but for what ``_cuts`` lets go and what the maker said to slide or rest. Nothing of metal
    may hold such a box to the rest, it must not reach past what stands beside it, as a frame does round the doors in
    it, and it must not be most of the piece.
    """
    if not any(joint.meeting.gaps for joint in joints):
        return []  # without room nothing moves as a box
    wood, on_metal = wood_mm3(parts), _touched_by_metal(joints, inert)
    holding = {
        number: joint.parts
        for number, joint in enumerate(joints)
        if not apart & set(joint.parts)
        and (
            joint.kind == OVERLAP
            or (
                joint.kind not in (NEAR, RESTS)
                and not _said_free(joint)
                and (joint.meeting.contacts or is_firm(joint))
            )
        )
    }
    found: list[LooseGroup] = []
    judged: set[frozenset[int]] = set()
    for cut in _cuts(joints):
        together = _together(len(parts), (pair for number, pair in holding.items() if number not in cut))
        new = {
            inside
            for inside in together
            if len(inside) >= LEAST_PARTS and inside not in judged and not inside & told
        }
        judged |= new
        new = {inside for inside in new if not is_most(wood, inside)}
        for one in _standing(parts, joints, inert, sorted(together, key=min)) if new else ():
            inside = one.inside
            if inside not in new or any(on_metal[metal] - inside for metal in one.hardware):
                continue
            touched = [(joint, normal) for joint, normal in one.touched if not _said_free(joint)]
            if _is_loose(touched, one.gaps, False) and _is_loose(touched, _outside(parts, one), False):
                found.append(LooseGroup(inside, False, butted=True))
                told = told | inside
    return found


def _cuts(joints: Sequence[Joint]) -> Iterator[frozenset[int]]:
    """Which joints (places) may let go of a box at a time: none, those along one line, those in one plane besides.

    A box rests along the line, on both its runners, and stops in the plane, where a corner that is drawn blunt lies
    in another plane than the back of the case. Only what lies flat lets go.
    """
    flat = {number: joint for number, joint in enumerate(joints) if _lies_flat(joint)}
    ways: list[tuple[Floats, list[int]]] = []  # a line, and what lies flat along it
    planes: list[tuple[int, float, list[int]]] = []  # which line, how far along it, what lies there
    for number, joint in flat.items():
        normals = [contact.normal for contact in joint.meeting.contacts]
        if any(abs(float(normal @ normals[0])) <= SAME_LINE for normal in normals):
            continue  # it is held two ways
        along = next((i for i, (line, _) in enumerate(ways) if abs(normals[0] @ line) > SAME_LINE), len(ways))
        if along == len(ways):
            ways.append((normals[0], []))
        line, members = ways[along]
        members.append(number)
        heights = [float(contact.centre @ line) for contact in joint.meeting.contacts]
        if max(heights) - min(heights) > PLANE_MM:
            continue
        for which, height, stops in planes:
            if which == along and abs(height - heights[0]) <= PLANE_MM:
                stops.append(number)
                break
        else:
            planes.append((along, heights[0], [number]))
    yield frozenset()
    for _, members in ways:
        yield frozenset(members)
    for along, _, stops in planes:
        yield frozenset(stops)
        for other, (line, members) in enumerate(ways):
            if other != along and _square(line, ways[along][0]):
                yield frozenset(members) | frozenset(stops)


def _together(count: int, pairs: Iterable[tuple[int, int]]) -> set[frozenset[int]]:
    """The sets of parts that pairs of them make one of."""
    members: dict[int, set[int]] = defaultdict(set)
    for index, group in enumerate(groups_of(count, pairs)):
        members[group].add(index)
    return {frozenset(inside) for inside in members.values()}


def wood_mm3(parts: Sequence[Part]) -> list[float]:
    """Volume of each part, 0 of what is metal, glass or stone."""
    inert = (part.species.value is not None and part.species.value.kind == "inert" for part in parts)
    return [0.0 if still else part.volume_mm3 for part, still in zip(parts, inert)]


def is_most(wood: Sequence[float], inside: Collection[int]) -> bool:
    """Whether some parts are more than half of the wood of a piece: they are what stands there, and no box in it."""
    return sum(wood[index] for index in inside) > MOST_SHARE * sum(wood)


def _touched_by_metal(joints: Sequence[Joint], inert: set[int]) -> dict[int, set[int]]:
    """Part of metal → what else it touches."""
    found: dict[int, set[int]] = defaultdict(set)
    for joint in joints:
        for metal, other in (joint.parts, joint.parts[::-1]):
            if metal in inert and joint.meeting.contacts:
                found[metal].add(other)
    return found


def _lies_flat(joint: Joint) -> bool:
    return joint.kind == UNKNOWN and joint.meeting.shape == FACE


def _said_free(joint: Joint) -> bool:
    """Whether the maker said that something which lies flat, or touches nowhere, slides or rests."""
    return joint.origin == CONFIRMED and joint.kind in (SLIDES, RESTS) and joint.meeting.inner is None


def _outside(parts: Sequence[Part], one: _Standing) -> list[Floats]:
    """The directions of those gaps beyond which the group does not reach past what stands there."""
    inside = sorted(one.inside)
    return [
        outward
        for outward, beside in zip(one.gaps, one.beside)
        if _reach(parts, inside, outward) <= _reach(parts, [beside], outward) + REACH_MM
    ]


def _reach(parts: Sequence[Part], inside: Sequence[int], way: Floats) -> float:
    """How far the boxes of some parts reach along a direction, mm."""
    frames = [parts[index].frame for index in inside]
    centres, axes = np.array([one.centre for one in frames]), np.array([one.axes for one in frames])
    sizes = np.array([one.size_mm for one in frames])
    return float((centres @ way + (np.abs(axes @ way) * sizes).sum(axis=1) / 2).max())


def settled(joints: Sequence[Joint], groups: Sequence[LooseGroup]) -> tuple[Joint, ...]:
    """The joints, with what loose groups lie on or against told as resting. What the maker confirmed stays."""

    kept = {index for group in groups if group.kept for index in group.parts}

    def settle(joint: Joint) -> Joint:
        laid_in = joint.origin == INFERRED and joint.kind not in (NEAR, OVERLAP) and kept & set(joint.parts)
        if laid_in and joint.meeting.shape == FACE:
            return replace(
                joint, kind=RESTS, reason=say("one of them is kept elsewhere when not in use: it is laid in")
            )
        crossing = any(
            (joint.parts[0] in group.parts) != (joint.parts[1] in group.parts)
            for group in groups
            if not group.butted
        )
        if joint.origin == INFERRED and joint.kind == UNKNOWN and crossing:
            reason = say(
                "one of them belongs to a door or drawer, with room on either side: it rests or stops there"
            )
            return replace(joint, kind=RESTS, reason=reason)
        return joint

    return tuple(settle(joint) for joint in joints)


def is_firm(joint: Joint) -> bool:
    """Whether a joint makes one thing of two parts, as far as moving about goes."""
    if joint.kind in (NEAR, RESTS, OVERLAP) or (joint.origin != INFERRED and joint.kind == SLIDES):
        return False
    return joint.kind != UNKNOWN or joint.meeting.shape not in (FACE, CURVED_FIT)


def groups_of(count: int, pairs: Iterable[tuple[int, int]]) -> list[int]:
    """For each of some parts the number of the group that pairs of them make of it."""
    owner = list(range(count))

    def root(index: int) -> int:
        while owner[index] != index:
            owner[index] = owner[owner[index]]
            index = owner[index]
        return index

    for one, other in pairs:
        owner[root(one)] = root(other)
    return [root(index) for index in range(count)]


def _middle(parts: Sequence[Part]) -> Floats:
    centres = np.array([part.frame.centre for part in parts])
    return np.asarray((centres.min(axis=0) + centres.max(axis=0)) / 2)


def _is_loose(touched: Sequence[tuple[Joint, Floats]], gaps: Sequence[Floats], hung: bool) -> bool:
    """Whether it rests on one side at most and stops at one more, square to it, with room on both sides of a line."""
    if any(joint.kind not in (UNKNOWN, RESTS) or joint.meeting.shape != FACE for joint, _ in touched):
        return False
    sides: list[Floats] = []
    for _, normal in touched:
        if not any(normal @ side >= ONE_WAY for side in sides):
            sides.append(normal)
    if len(sides) > MOST_SIDES or any(not _square(one, other) for one, other in combinations(sides, 2)):
        return False
    pairs = [one for one, other in combinations(gaps, 2) if one @ other < OPPOSITE]
    if not any(all(_square(one, side) for side in sides) for one in pairs):
        return False
    return hung or bool(touched) or any(_square(one, pairs[0]) for one in pairs)


def _square(one: Floats, other: Floats) -> bool:
    return abs(float(one @ other)) < SQUARE
