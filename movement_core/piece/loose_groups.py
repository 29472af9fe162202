"""Doors, drawers and the like: parts joined to each other, with room all round, that hang or rest in the piece.

Told from the joints and gaps alone. What such a group touches flat on one side it rests on, so that a drawer's side
on its runner is not taken for a glued joint.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass, replace

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
    for one in _standing(parts, joints, inert, inert | kept, is_firm):
        if len(one.inside) >= LEAST_PARTS and _is_loose(one.touched, one.gaps, bool(one.hardware)):
            found.append(LooseGroup(frozenset(one.inside), bool(one.hardware)))
    return (*found, *_butted(parts, joints, inert, inert | kept, {i for group in found for i in group.parts}))


@dataclass(frozen=True, eq=False)
class _Standing:
    """Parts that joints make one of, and how they stand in the rest.

    ``touched``: joints with the rest, each with the direction out of the group; ``gaps``: directions of gaps at its
    outside; ``beside``: what stands beyond each of them; ``hardware``: what of metal touches it.
    """

    inside: set[int]
    touched: list[tuple[Joint, Floats]]
    gaps: list[Floats]
    beside: list[int]
    hardware: set[int]


def _standing(
    parts: Sequence[Part],
    joints: Sequence[Joint],
    inert: set[int],
    apart: set[int],
    holds: Callable[[Joint], bool],
) -> list[_Standing]:
    """The groups that the joints which hold make, but for those of parts ``apart``."""
    owner = groups_of(
        len(parts), [joint for joint in joints if holds(joint) and not apart & set(joint.parts)]
    )
    members: dict[int, set[int]] = defaultdict(set)
    for index, group in enumerate(owner):
        members[group].add(index)
    groups = {group: _Standing(inside, [], [], [], set()) for group, inside in members.items()}
    middle = {group: _middle([parts[i] for i in inside]) for group, inside in members.items()}
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
    return list(groups.values())


def _butted(
    parts: Sequence[Part], joints: Sequence[Joint], inert: set[int], apart: set[int], told: set[int]
) -> list[LooseGroup]:
    """Boxes whose corners are drawn blunt: parts that touch each other any way, and the rest along one line at most.

    Whatever touches holds, but for what lies flat along that line, and what the maker said to slide or rest. Nothing
    of metal may hold such a box to the rest, it must not reach past what stands beside it, as a frame does round the
    doors in it, and it must not be most of the piece.
    """
    lines: list[Floats] = []
    for joint in joints:
        if _lies_flat(joint):
            for contact in joint.meeting.contacts:
                if not any(abs(float(contact.normal @ line)) > SAME_LINE for line in lines):
                    lines.append(contact.normal)
    wood, on_metal = wood_mm3(parts), _touched_by_metal(joints, inert)
    found: list[LooseGroup] = []
    judged: set[frozenset[int]] = set()
    for line in (None, *lines):

        def holds(joint: Joint, line: Floats | None = line) -> bool:
            if joint.kind == OVERLAP:
                return True
            if joint.kind in (NEAR, RESTS) or _said_free(joint):
                return False
            if not joint.meeting.contacts:
                return is_firm(joint)
            along = line is not None and all(
                abs(float(contact.normal @ line)) > SAME_LINE for contact in joint.meeting.contacts
            )
            return not (along and _lies_flat(joint))

        for one in _standing(parts, joints, inert, apart, holds):
            inside = frozenset(one.inside)
            if len(inside) < LEAST_PARTS or inside in judged or inside & told:
                continue
            judged.add(inside)
            if is_most(wood, inside):
                continue
            if any(on_metal[metal] - inside for metal in one.hardware):
                continue
            touched = [(joint, normal) for joint, normal in one.touched if not _said_free(joint)]
            if _is_loose(touched, one.gaps, False) and _is_loose(touched, _outside(parts, one), False):
                found.append(LooseGroup(inside, False, butted=True))
                told = told | inside
    return found


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


def groups_of(count: int, joints: Sequence[Joint]) -> list[int]:
    """For each part the number of the group that joints make of it."""
    owner = list(range(count))

    def root(index: int) -> int:
        while owner[index] != index:
            owner[index] = owner[owner[index]]
            index = owner[index]
        return index

    for joint in joints:
        one, other = (root(index) for index in joint.parts)
        owner[one] = other
    return [root(index) for index in range(count)]


def _middle(parts: Sequence[Part]) -> Floats:
    centres = np.array([part.frame.centre for part in parts])
    return np.asarray((centres.min(axis=0) + centres.max(axis=0)) / 2)


def _is_loose(touched: Sequence[tuple[Joint, Floats]], gaps: Sequence[Floats], hung: bool) -> bool:
    if any(joint.kind not in (UNKNOWN, RESTS) or joint.meeting.shape != FACE for joint, _ in touched):
        return False
    if any(normal @ touched[0][1] < ONE_WAY for _, normal in touched):
        return False
    pairs = [one for i, one in enumerate(gaps) for other in gaps[i + 1 :] if one @ other < OPPOSITE]
    if not pairs:
        return False
    aside = [one for one in pairs if not touched or abs(one @ touched[0][1]) < 0.5]
    return bool(aside) and (hung or bool(touched) or any(abs(one @ pairs[0]) < 0.5 for one in pairs))
