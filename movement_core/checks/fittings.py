"""Metal fittings of a piece and the wood on either side of them: hinges, locks and strikes, bed hooks, slides.

Assumed, since nothing in a model says it: a small solid of a material that does not move is a fitting; fittings that
touch each other are one (the leaves of a hinge); what a fitting touches it is fixed to at its middle.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import DAYS
from movement_core.checks.remember import once_a_piece
from movement_core.checks.told import is_inert
from movement_core.piece.contact.carried import Positions, carried_positions
from movement_core.piece.contact.joints import OVERLAP, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import swelling_of
from movement_core.piece.loose_groups import groups_of, is_firm
from movement_core.piece.whole import MOST_CARRIED, WholePiece

LESSER_MM = 80.0  # a fitting measures no more than this in its two lesser sizes (own judgement)
LONGEST_MM = (
    250.0  # … and a hinge, lock or hook no more than this in its length; longer ones are slides and bars
)


@dataclass(frozen=True, eq=False)
class Fitting:
    """One fitting: its solids, its middle (3,), and the joint with each wooden part that it touches."""

    parts: tuple[int, ...]
    middle: Floats
    woods: dict[int, Joint]


@dataclass(frozen=True, eq=False)
class Fittings:
    """All fittings of a piece.

    ``side`` numbers for each part the group that wood joined to wood makes of it; ``apart`` where those groups take
    their parts if no fitting held them; ``held`` where everything goes as the fittings hold it.
    """

    whole: WholePiece
    found: tuple[Fitting, ...]
    side: Sequence[int]
    apart: Positions
    held: Positions

    def travel(self, positions: Positions, part: int, point: Floats) -> Floats | None:
        """(365, 3) how far a point of a part goes; None where the part's movement is not known."""
        solved = self.whole.parts[part]
        swelling = swelling_of(solved)
        if swelling is None:
            return None
        own = [swelling.shift(point, swelling.centre, axis).middle for axis in np.eye(3)]
        return np.asarray((positions.shift_mm[part] + np.stack(own, axis=1))[:DAYS])

    def span(self, one: tuple[int, Floats], other: tuple[int, Floats]) -> Floats | None:
        """(365,) what the distance of two points, each of a part of the same side, changes by."""
        first, second = (self.travel(self.apart, part, point) for part, point in (one, other))
        if first is None or second is None:
            return None
        way = other[1] - one[1]
        return np.asarray((second - first) @ (way / np.linalg.norm(way)))


def is_slim(whole: WholePiece, index: int) -> bool:
    """Whether a part may be a fitting or a slide: what does not move, and is small in its two lesser sizes."""
    size = np.sort(whole.parts[index].part.frame.size_mm)
    return is_inert(whole, index) and float(size[1]) <= LESSER_MM


def is_fitting(whole: WholePiece, index: int) -> bool:
    """Whether a part may be a hinge, a lock, a hook, a bolt or one piece of such."""
    return is_slim(whole, index) and float(whole.parts[index].part.frame.size_mm.max()) <= LONGEST_MM


@once_a_piece
def fittings_of(whole: WholePiece) -> Fittings | None:
    """The fittings of a piece; None where it has none, or too many parts to say where they go."""
    metal = {index for index in range(len(whole.parts)) if is_fitting(whole, index)}
    if not metal or len(whole.parts) > MOST_CARRIED:
        return None
    touching = [j for j in whole.joints if j.meeting.contacts and j.kind != OVERLAP]
    owner = groups_of(len(whole.parts), (j.parts for j in touching if metal.issuperset(j.parts)))
    members: dict[int, list[int]] = defaultdict(list)
    for index in sorted(metal):
        members[owner[index]].append(index)
    woods: dict[int, dict[int, Joint]] = defaultdict(dict)
    for joint in touching:
        inside = metal & set(joint.parts)
        if len(inside) == 1:
            (fitting,) = inside
            wood = joint.parts[1] if joint.parts[0] == fitting else joint.parts[0]
            woods[owner[fitting]].setdefault(wood, joint)
    found = tuple(
        Fitting(
            tuple(inside), np.mean([whole.parts[i].part.frame.centre for i in inside], axis=0), woods[group]
        )
        for group, inside in members.items()
    )
    wooden = [joint for joint in whole.joints if not metal & set(joint.parts)]
    side = groups_of(len(whole.parts), (joint.parts for joint in wooden if is_firm(joint)))
    thrown = [joint for joint in whole.joints if metal & set(joint.parts) and not joint.meeting.contacts]
    rest = [joint for joint in whole.joints if joint not in thrown]
    return Fittings(
        whole, found, side, carried_positions(whole.parts, wooden), carried_positions(whole.parts, rest)
    )
