"""Doors, drawers and the like: parts joined to each other, with room all round, that hang or rest in the piece.

Told from the joints and gaps alone. What such a group touches flat on one side it rests on, so that a drawer's side
on its runner is not taken for a glued joint.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from movement_core.piece.contact.found import FLAT
from movement_core.piece.contact.joints import INFERRED, NEAR, OVERLAP, RESTS, SLIDES, UNKNOWN, Joint
from movement_core.piece.contact.meetings import CURVED_FIT, FACE
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.part import Part
from movement_core.wording import say

ONE_WAY = 0.85  # cosine: contacts looking within 30° of each other lie on one side (own judgement)
OPPOSITE = -0.9
LEAST_PARTS = 2  # a single board in a gap may be a cleat that is glued: it is left unknown


@dataclass(frozen=True)
class LooseGroup:
    """Parts (indices) that move in the piece as one.

    ``hung``: on hardware, else it rests or nothing holds it. ``kept``: one part that is laid in, and kept elsewhere
    while it is not in use.
    """

    parts: frozenset[int]
    hung: bool
    kept: bool = False


def loose_groups(parts: Sequence[Part], joints: Sequence[Joint]) -> tuple[LooseGroup, ...]:
    """Every group with room on two opposite sides that is joined to the rest by hardware or by lying on it only.

    What is kept elsewhere when it is not in use is a group by itself.
    """
    inert = {i for i, part in enumerate(parts) if part.species.value and part.species.value.kind == "inert"}
    kept = {i for i, part in enumerate(parts) if part.kept is not None}
    owner = groups_of(
        len(parts), [joint for joint in joints if is_firm(joint) and not (inert | kept) & set(joint.parts)]
    )
    members: dict[int, set[int]] = defaultdict(set)
    for index, group in enumerate(owner):
        members[group].add(index)
    middle = {group: _middle([parts[i] for i in inside]) for group, inside in members.items()}
    touched: dict[int, list[tuple[Joint, Floats]]] = defaultdict(list)
    hardware: dict[int, set[int]] = defaultdict(set)
    gaps: dict[int, list[Floats]] = defaultdict(list)
    for joint in joints:
        one, other = joint.parts
        if owner[one] == owner[other]:
            continue
        metal = inert & set(joint.parts)
        for mine, sign in ((one, 1.0), (other, -1.0)):
            group = owner[mine]
            if metal:
                hardware[group] |= metal - {mine} if joint.meeting.contacts else set()
            elif joint.meeting.contacts:
                touched[group] += [(joint, sign * contact.normal) for contact in joint.meeting.contacts]
            for gap in joint.meeting.gaps:
                outward = sign * gap.normal
                if not metal and gap.surface == FLAT and (gap.centre - middle[group]) @ outward > 0:
                    gaps[group].append(outward)
    found = [LooseGroup(frozenset({index}), False, True) for index in sorted(kept)]
    for group, inside in members.items():
        if len(inside) < LEAST_PARTS or not _is_loose(touched[group], gaps[group], bool(hardware[group])):
            continue
        found.append(LooseGroup(frozenset(inside), bool(hardware[group])))
    return tuple(found)


def settled(joints: Sequence[Joint], groups: Sequence[LooseGroup]) -> tuple[Joint, ...]:
    """The joints, with what loose groups lie on or against told as resting. What the maker confirmed stays."""

    kept = {index for group in groups if group.kept for index in group.parts}

    def settle(joint: Joint) -> Joint:
        laid_in = joint.origin == INFERRED and joint.kind not in (NEAR, OVERLAP) and kept & set(joint.parts)
        if laid_in and joint.meeting.shape == FACE:
            return replace(
                joint, kind=RESTS, reason=say("one of them is kept elsewhere when not in use: it is laid in")
            )
        crossing = any((joint.parts[0] in group.parts) != (joint.parts[1] in group.parts) for group in groups)
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
