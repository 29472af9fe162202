"""The one fixed line that the maker gave a part: where its joints hold it across its width, and where they let it go.

A part swells away from the line that is held. Joints that hold all of a part (glue, tenons) or one point of it
(hinges, pegs) tell that line themselves. Where a joint leaves the part free, or nothing is told of it, the maker may
say the line; then the part is held there, and nowhere else, in the direction across its width.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.piece.contact.joints import FREE, OVERLAP, UNTOLD, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.part import Part

REACH_MM = (
    5.0  # a joint this far from the line still holds it: grooves and small gaps lie between (own judgement)
)


@dataclass(frozen=True, eq=False)
class Pin:
    """A point (3,) of the fixed line, where both parts of a joint stay together along ``direction`` (3,), unit."""

    point: Floats
    direction: Floats


@dataclass(frozen=True, eq=False)
class FixedLines:
    """What the fixed lines of a piece do at its joints, by the number of the joint.

    ``freed`` : unit directions in which the joint itself does not hold any more. ``pins`` : what holds instead.
    """

    freed: Mapping[int, tuple[Floats, ...]]
    pins: Mapping[int, tuple[Pin, ...]]

    def left(self, number: int, held: Floats) -> Floats:
        """(3, 3) what a joint still holds of the directions that it held."""
        for direction in self.freed.get(number, ()):
            still = np.eye(3) - np.outer(direction, direction)
            held = still @ held @ still
        return held


def fixed_lines(parts: Sequence[Part], joints: Sequence[Joint]) -> FixedLines:
    """Pins of every part whose fixed line was said.

    Where no joint reaches the line, the one that lies nearest to it holds it there: by something that is not drawn.

    Parameters
    ----------
    parts : as the joints number them. joints : between them, those that merely face each other across a gap too.
    """
    freed: dict[int, list[Floats]] = {}
    pins: dict[int, list[Pin]] = {}
    said = {index for index, part in enumerate(parts) if part.fixed_mm is not None}
    if not said:
        return FixedLines({}, {})
    of_part: dict[int, list[int]] = {}
    for number, joint in enumerate(joints):
        if joint.holds in (FREE, UNTOLD) and joint.kind != OVERLAP and len(joint.meeting.joined):
            for index in said & set(joint.parts):
                of_part.setdefault(index, []).append(number)
    for index, numbers in of_part.items():
        frame, fixed = parts[index].frame, parts[index].fixed_mm or 0.0
        across = frame.axes[0]
        away = []
        for number in numbers:
            along = (joints[number].meeting.joined - frame.centre) @ across
            away.append(max(float(along.min()) - fixed, fixed - float(along.max()), 0.0))
            freed.setdefault(number, []).append(across)
        reach = max(REACH_MM, min(away))
        for number, distance in zip(numbers, away):
            if distance <= reach:
                main = joints[number].meeting.main
                points = joints[number].meeting.joined
                middle = points.mean(axis=0) if main is None else main.centre
                place = middle + (fixed - float((middle - frame.centre) @ across)) * across
                pins.setdefault(number, []).append(Pin(place, across))
    return FixedLines(
        {number: tuple(ways) for number, ways in freed.items()},
        {number: tuple(found) for number, found in pins.items()},
    )
