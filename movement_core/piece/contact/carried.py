"""Parts that carry other parts along: where every part of a piece goes when all of them swell.

Each part swells about its own middle and is carried by its joints. A joint wants the same point of both parts to
stay together, in the directions in which it holds; what cannot be had in all joints at once is shared out by least
squares and left as strain of the joints. Parts are shifted, not turned: the small turns of a piece racked by
uneven swelling are not followed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import DAYS
from movement_core.piece.contact.joints import HOUSED, NEAR, OVERLAP, POINT, SLIDES, UNTOLD, WHOLE, Joint
from movement_core.piece.contact.meetings import Meeting
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import swelling_of
from movement_core.piece.solve import SolvedPart

LOOSE = 1e-5  # weight of what merely lies in place beside what is held: a free panel floats in the middle
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

    def between(self, one: int, other: int) -> Floats:
        """(366, 3) shift of the other part less that of the one."""
        return np.asarray(self.shift_mm[other] - self.shift_mm[one])


def carried_positions(solved: Sequence[SolvedPart], joints: Sequence[Joint], ground: int = 0) -> Positions:
    """Positions of all parts through the year.

    Parameters
    ----------
    solved : the parts, in the order that the joints number them.
    joints : between them; those that hold nothing hold nothing here.
    ground : the part whose middle is taken to stay.
    """
    count = len(solved)
    swellings = [swelling_of(one) for one in solved]
    matrix = GROUNDED * np.eye(3 * count)
    wanted = np.zeros((3 * count, DAYS + 1))
    rows: list[tuple[int, int, Floats, Floats]] = []  # one, other, projection (3, 3), own difference (366, 3)
    for joint in joints:
        one, other = joint.parts
        main = joint.meeting.main
        if joint.kind in (NEAR, OVERLAP) or main is None:
            continue
        apart = np.zeros((DAYS + 1, 3))
        for part, sign in ((one, -1.0), (other, 1.0)):
            swelling = swellings[part]
            if swelling is not None:
                moves = [swelling.shift(main.centre, swelling.centre, axis).middle for axis in np.eye(3)]
                apart += sign * np.stack(moves, axis=1)
        held = _held(joint)
        weight = held + LOOSE * (np.eye(3) - held)
        rows.append((one, other, held, apart))
        # Least squares of shift_other − shift_one + apart = 0, weighted.
        a, b = slice(3 * one, 3 * one + 3), slice(3 * other, 3 * other + 3)
        for place, sign in ((a, -1.0), (b, 1.0)):
            matrix[place, place] += weight
            wanted[place] -= sign * weight @ apart.T
        matrix[a, b] -= weight
        matrix[b, a] -= weight
    here = slice(3 * ground, 3 * ground + 3)
    matrix[here, here] += np.eye(3) * FAST
    solution = np.linalg.solve(matrix, wanted).reshape(count, 3, DAYS + 1)
    shift: Floats = np.asarray(solution.transpose(0, 2, 1), dtype=np.float64)
    strained = [
        float(np.linalg.norm((shift[other] - shift[one] + apart) @ held, axis=1).max())
        for one, other, held, apart in rows
    ]
    places = iter(strained)
    used = [joint.kind not in (NEAR, OVERLAP) and joint.meeting.main is not None for joint in joints]
    unknown = tuple(index for index, one in enumerate(swellings) if one is None)
    return Positions(shift, np.array([next(places) if use else 0.0 for use in used]), unknown)


def _held(joint: Joint) -> Floats:
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
