"""Parts that carry other parts along: where every part of a piece goes when all of them swell.

Each part swells about its own middle and is carried by its joints. A joint wants the same point of both parts to
stay together, in the directions in which it holds; what cannot be had in all joints at once is shared out by least
squares and left as strain of the joints. Where the maker said which line of a part is held, its free joints hold it
there (``fixed_lines``). Parts are shifted, not turned: the small turns of a piece racked by
uneven swelling are not followed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.piece.contact.blocks import BlockSystem, Ints, add_to
from movement_core.piece.contact.fixed_lines import fixed_lines
from movement_core.piece.contact.joints import HOUSED, NEAR, OVERLAP, POINT, SLIDES, UNTOLD, WHOLE, Joint
from movement_core.piece.contact.meetings import Meeting
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import Swelling, courses, swelling_of
from movement_core.piece.solve import SolvedPart

LOOSE = 1e-5  # weight of what merely lies in place beside what is held: a free panel floats in the middle
PINNED = 1e-2  # weight of a fixed line that was said: glue and tenons outrank it
FAST = 1e3  # weight of what is taken to stay
GROUNDED = 1e-9  # keeps parts that nothing holds where they are


@dataclass(frozen=True, eq=False)
class Positions:
    """Shift of the middle of each part, (parts, 366, 3) mm: 365 days and today, since the piece was fitted.

    ``strained_mm`` (joints,) is the largest movement, of any day, that a joint would have to take in the directions
    in which it holds; ``unknown`` are parts whose own movement is not known and was left out.
    """

    shift_mm: Floats
    strained_mm: Floats
    unknown: tuple[int, ...]

    def between(self, one: int, other: int, point: Floats | None = None) -> Floats:
        """(366, 3) shift of the other part less that of the one, which is the same at all points."""
        return np.asarray(self.shift_mm[other] - self.shift_mm[one])


def carried_positions(solved: Sequence[SolvedPart], joints: Sequence[Joint], ground: int = 0) -> Positions:
    """Positions of all parts through the year.

    Parameters
    ----------
    solved : the parts, in the order that the joints number them.
    joints : between them; those that hold nothing hold nothing here.
    ground : the part whose middle is taken to stay.
    """
    swellings = [swelling_of(one) for one in solved]
    lines = fixed_lines([one.part for one in solved], joints)
    rows = [  # (number of the joint, point, directions in which it holds, in which it keeps in place)
        (number, _centre(joint), lines.left(number, held_directions(joint)), LOOSE * np.eye(3))
        for number, joint in enumerate(joints)
        if carries(joint)
    ]
    for number, pins in lines.pins.items():
        for pin in pins:
            rows.append(
                (number, pin.point, PINNED * np.outer(pin.direction, pin.direction), np.zeros((3, 3)))
            )
    used = np.array([row[0] for row in rows], dtype=np.intp)
    pairs = np.array([joints[number].parts for number in used], dtype=np.intp).reshape(-1, 2)
    points = np.array([row[1] for row in rows]).reshape(-1, 3)
    held = np.array([row[2] for row in rows]).reshape(-1, 3, 3)
    # Least squares of shift_other − shift_one + apart = 0, weighted.
    weight = held + np.array([row[3] for row in rows]).reshape(-1, 3, 3) @ (np.eye(3) - held)
    strains, days = courses(swellings)
    first, second = _own_shifts(swellings, strains, pairs, points)
    apart = second - first
    matrix = np.tile(GROUNDED * np.eye(3), (len(solved), 1, 1))
    wanted = np.zeros((len(solved), 3, len(days)))
    pull = weight @ apart
    for place, sign in ((pairs[:, 0], 1.0), (pairs[:, 1], -1.0)):
        add_to(matrix, place, weight)
        add_to(wanted, place, sign * pull)
    matrix[ground] += np.eye(3) * FAST
    shift = BlockSystem(matrix, pairs, -weight).solve(wanted)
    left = (np.swapaxes(held, 1, 2) @ (shift[pairs[:, 1]] - shift[pairs[:, 0]] + apart)) @ days
    strained = np.zeros(len(joints))
    np.maximum.at(strained, used, np.linalg.norm(left, axis=1).max(axis=1))
    unknown = tuple(index for index, one in enumerate(swellings) if one is None)
    return Positions(np.ascontiguousarray(np.swapaxes(shift @ days, 1, 2)), strained, unknown)


def carries(joint: Joint) -> bool:
    """Whether two parts touch there, so that one can carry the other."""
    return joint.kind not in (NEAR, OVERLAP) and joint.meeting.main is not None


def _centre(joint: Joint) -> Floats:
    main = joint.meeting.main
    return np.zeros(3) if main is None else main.centre


def _own_shifts(
    swellings: Sequence[Swelling | None], strains: Floats, pairs: Ints, points: Floats
) -> tuple[Floats, Floats]:
    """(joints, 3, states) how far a point of each part of a pair goes by its own swelling about its middle."""
    axes = np.array([np.eye(3) if one is None else one.axes for one in swellings])
    centre = np.array([np.zeros(3) if one is None else one.centre for one in swellings])

    def shift(which: Ints) -> Floats:
        from_middle = np.einsum("jab,jb->ja", axes[which], points - centre[which])
        return np.asarray(np.swapaxes(axes[which], 1, 2) @ (from_middle[:, :, None] * strains[which]))

    return shift(pairs[:, 0]), shift(pairs[:, 1])


def held_directions(joint: Joint) -> Floats:
    """(3, 3) projection on the directions in which a joint holds."""
    if joint.holds in (WHOLE, POINT, UNTOLD):
        return np.eye(3)
    meeting = joint.meeting
    if joint.kind == HOUSED:
        return _onto([wall.axis for wall in meeting.walls])
    if joint.kind == SLIDES:
        return _across_the_run(meeting)
    return _onto([contact.normal for contact in meeting.contacts])


def _across_the_run(meeting: Meeting) -> Floats:
    """All directions but the one in which a slide runs: square to all its walls."""
    normals = np.array([found.normal for found in meeting.facing])
    run = np.linalg.svd(normals)[2][-1]
    return np.asarray(np.eye(3) - np.outer(run, run))


def _onto(directions: list[Floats]) -> Floats:
    if not directions:
        return np.zeros((3, 3))
    values, vectors = np.linalg.eigh(np.array(directions).T @ np.array(directions))
    kept = vectors[:, values > 1e-6]
    return np.asarray(kept @ kept.T)
