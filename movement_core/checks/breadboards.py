"""Breadboard ends: glued along, with tongues or pegs that bind, or proud and short of the edges in season."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.crossing_grain import confirm_words, crossing_finding, crossing_words
from movement_core.checks.crossing_kinds import (
    ALONG,
    BREADBOARD,
    boards_with,
    crossings_by_part,
    is_breadboard,
)
from movement_core.checks.finding import BREAKS, SHOWS, Finding
from movement_core.checks.remember import beyond, joints_of
from movement_core.checks.told import told
from movement_core.piece.contact.found import CURVED, ROUND, Contact, Gap
from movement_core.piece.contact.joints import OVERLAP, TENONED, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.crossing import IF_SOLID, SPLITS, Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, AtMost, say

FLUSH_MM = 3.0  # an end drawn within this of the board's edges is meant to be level with them (own judgement)
PEG_MM = 20.0  # a peg or screw is no thicker than this (own judgement)
BINDS_MM = 0.3  # a tongue or peg that lacks more than this binds; less the wood gives (own judgement)


@dataclass(frozen=True, eq=False)
class _End:
    """One breadboard end and the boards it lies across.

    ``across`` (3,) and ``middle`` along it; ``width_mm``, ``length_mm`` of boards and end along it; ``strain`` of the
    boards, least and most of 365 days; ``proud_mm`` of the end beyond each edge as drawn.
    """

    end: int
    boards: tuple[int, ...]
    across: Floats
    middle: float
    width_mm: float
    length_mm: float
    strain: tuple[Floats, Floats]

    @property
    def proud_mm(self) -> float:
        return (self.length_mm - self.width_mm) / 2


def breadboards(whole: WholePiece) -> list[Finding]:
    """Findings on every breadboard end: glued or screwed along, tongue or pegs that bind, proud or short."""
    found = []
    for end in _ends(whole):
        found += [one for one in (_proud(whole, end), _tongue(whole, end), _pegs(whole, end)) if one]
    return found + [
        _fixed(whole, crossings)
        for crossings in crossings_by_part(whole, BREADBOARD)
        if not _told_by_its_tenons(whole, crossings)
    ]


def _told_by_its_tenons(whole: WholePiece, crossings: list[Crossing]) -> bool:
    """Whether nobody said how a tongue is fixed whose tenons beside it, of the same top, are told as too many."""
    first = crossings[0]
    return first.verdict == IF_SOLID and any(
        one.joint.kind == TENONED
        and one.verdict in (SPLITS, IF_SOLID)
        and one.other == first.other
        and one.carrier in boards_with(whole, first.carrier)
        for one in whole.crossings
    )


def _ends(whole: WholePiece) -> list[_End]:
    lies: dict[int, set[int]] = defaultdict(set)
    for joint in whole.joints:
        if joint.kind == OVERLAP:
            continue
        for board, end in (joint.parts, joint.parts[::-1]):
            if is_breadboard(whole, joint, board, end):
                lies[end].add(boards_with(whole, board)[0])
    found = []
    for end, firsts in lies.items():
        for first in sorted(firsts):
            one = _end(whole, end, boards_with(whole, first))
            found += [one] if one else []
    return found


def _end(whole: WholePiece, end: int, boards: tuple[int, ...]) -> _End | None:
    widths = [whole.parts[board].width for board in boards]
    known = [width for width in widths if width is not None]
    if len(known) < len(widths):
        return None
    frame = whole.parts[boards[0]].part.frame
    drawn = sum(width.as_drawn_mm for width in known)
    places = [
        float(whole.parts[b].part.frame.centre @ frame.axes[0])
        + side * whole.parts[b].part.frame.width_mm / 2
        for b in boards
        for side in (-1, 1)
    ]
    strip = whole.parts[end].part.frame
    return _End(
        end,
        boards,
        frame.axes[0],
        (min(places) + max(places)) / 2,
        drawn,
        float(np.abs(strip.axes @ frame.axes[0]) @ strip.size_mm),
        (
            np.sum([width.least_mm for width in known], axis=0) / drawn - 1,
            np.sum([width.most_mm for width in known], axis=0) / drawn - 1,
        ),
    )


# ---- proud and short -------------------------------------------------------------------------------------------


def _proud(whole: WholePiece, end: _End) -> Finding | None:
    if abs(end.proud_mm) > FLUSH_MM:
        return None
    # The end does not change along its grain; the boards' edges draw back from it, and pass it.
    stands = end.proud_mm - end.strain[0] * end.width_mm / 2
    short = end.proud_mm - end.strain[1] * end.width_mm / 2
    most, least = float(stands.max()), float(short.min())
    if max(most, -least) < limit("breadboard proud"):
        return None
    dry = most >= -least
    return told(
        whole,
        "breadboard-proud",
        SHOWS,
        (end.end, *end.boards),
        say(
            "at each edge it stands {least:+.1f} to {most:+.1f} mm from the top through the year (+ proud, - "
            "short), if the top is held in the middle",
            least=least,
            most=most,
        ),
        say(
            "that is how breadboard ends are: say it to the client; cut them level at the moisture that the home has "
            "longest and ease the corners, or make the top of quarter-sawn wood; or hold it flat with battens below"
        ),
        int(month_of_day(int(stands.argmax() if dry else short.argmin()))),
        {"drawn_mm": end.proud_mm, "least_mm": least, "most_mm": most, "width_mm": end.width_mm},
    )


# ---- tongues and pegs ------------------------------------------------------------------------------------------


def _lacks(end: _End, found: Contact | Gap, sense: float) -> tuple[float, float, int]:
    """What room beside a face that looks across the grain lacks, what the face travels, and in which month.

    ``sense`` +1 where the normal points out of the boards: there it closes as the face travels that way.
    """
    room = found.least_mm if isinstance(found, Gap) else 0.0
    at = float(found.centre @ end.across) - end.middle
    way = sense * float(np.sign(found.normal @ end.across))
    least, most = (strain * at * way for strain in end.strain)
    travel = np.maximum(least, most)
    day = int(travel.argmax())
    return float(travel[day]) - room, float(travel[day]), int(month_of_day(day))


def _tongue(whole: WholePiece, end: _End) -> Finding | None:
    """The ends of tongues and tenons in closed grooves and mortises."""
    binding: dict[tuple[int, bool], tuple[float, float, int]] = {}
    for joint in _between(whole, end):
        board = beyond(joint, end.end)
        faces = [
            found
            for found in joint.meeting.facing
            if found.surface not in (ROUND, CURVED) and abs(float(found.normal @ end.across)) >= ALONG
        ]
        places = [float(found.centre @ end.across) - end.middle for found in faces]
        middle = bool(places) and min(places) < 0 < max(places)
        if middle and np.ptp(places) <= min(limit("tenon at most"), end.width_mm / 2):
            continue  # the tenon in the middle, which is to fit closely: what moves there is told as a tenon
        for found, at in zip(faces, places):
            sense = 1.0 if board == joint.parts[0] else -1.0
            one = _lacks(end, found, sense)
            outward = sense * float(found.normal @ end.across) * at > 0
            if one[0] > BINDS_MM and one[0] > binding.get((board, outward), (0.0,))[0]:
                binding[board, outward] = one
    if not binding:
        return None
    lacks, travels, month = max(binding.values())
    sides = [
        say("{lacks:.1f} mm toward the edge at {part}", lacks=AtLeast(one[0] + 0.5), part=whole.name(board))
        if outward
        else say(
            "{lacks:.1f} mm toward the middle at {part}", lacks=AtLeast(one[0] + 0.5), part=whole.name(board)
        )
        for (board, outward), one in sorted(binding.items())
    ]
    return told(
        whole,
        "breadboard-tongue-binds",
        BREAKS,
        (end.end, *end.boards),
        say(
            "its tongue or tenon moves {travels:.1f} mm in the mortise and has {room:.1f} mm of room there: it "
            "splits the end, or the top",
            travels=travels,
            room=AtMost(travels - lacks),
        ),
        say(
            "cut the mortise longer: {sides}; tenons fit closely at the middle only, and have more room the farther "
            "out they are",
            sides=", ".join(sides),
        ),
        month,
        {"travels_mm": travels, "room_mm": travels - lacks},
    )


def _pegs(whole: WholePiece, end: _End) -> Finding | None:
    """Pegs and screws through an end and the tongue in it, away from the middle and without a slot."""
    binding: dict[int, tuple[float, float, int, float]] = {}
    for board in end.boards:
        for joint in joints_of(whole, board):
            peg = beyond(joint, board)
            if peg == end.end or not _goes_through(whole, peg, end) or joint.kind == OVERLAP:
                continue
            at = float(whole.parts[peg].part.frame.centre @ end.across) - end.middle
            travel = np.maximum(np.abs(end.strain[0]), np.abs(end.strain[1])) * abs(at)
            day = int(travel.argmax())
            room = _room_of(joint, end.across)
            if room is None:
                continue
            lacks = float(travel[day]) - room
            if lacks > BINDS_MM and (peg not in binding or lacks > binding[peg][0]):
                binding[peg] = lacks, float(travel[day]), int(month_of_day(day)), abs(at)
    if not binding:
        return None
    lacks, travels, month, at = max(binding.values())
    figures = {"at": at, "travels": travels, "room": AtMost(travels - lacks)}
    return told(
        whole,
        "breadboard-peg-binds",
        BREAKS,
        (*sorted(binding, key=lambda peg: -binding[peg][0]), end.end, *end.boards),
        say(
            "a peg {at:.0f} mm from the middle of the top, where it moves {travels:.1f} mm, has {room:.1f} mm of "
            "room: the top splits between its pegs",
            **figures,
        )
        if len(binding) == 1
        else say(
            "{count} pegs bind; at the one that binds most, {at:.0f} mm from the middle of the top, it moves "
            "{travels:.1f} mm and has {room:.1f} mm of room: the top splits between its pegs",
            count=len(binding),
            **figures,
        ),
        say(
            "slot its hole in the tongue {lacks:.1f} mm to either side; only the peg in the middle fits closely",
            lacks=AtLeast(lacks + 0.5),
        )
        if len(binding) == 1
        else say(
            "slot their holes in the tongue, that of the one that binds most {lacks:.1f} mm to either side; only the "
            "peg in the middle fits closely",
            lacks=AtLeast(lacks + 0.5),
        ),
        month,
        {"from_middle_mm": at, "travels_mm": travels, "room_mm": travels - lacks},
    )


def _goes_through(whole: WholePiece, peg: int, end: _End) -> bool:
    """Whether a small part also sits in the breadboard end."""
    if float(np.sort(whole.parts[peg].part.frame.size_mm)[1]) > PEG_MM:
        return False
    return any(
        beyond(joint, peg) == end.end and bool(joint.meeting.contacts or joint.meeting.gaps)
        for joint in joints_of(whole, peg)
        if peg not in end.boards
    )


def _room_of(joint: Joint, across: Floats) -> float | None:
    """Room of a peg in its hole along a direction, the lesser of both ways; None where nothing faces it there."""
    rooms = []
    for found in joint.meeting.facing:
        looks = abs(float(found.normal @ across))
        # The normal of a round fit is the axis of the hole.
        if (looks < 1 - ALONG) if found.surface == ROUND else (looks > ALONG):
            rooms.append(found.least_mm if isinstance(found, Gap) else 0.0)
    return min(rooms) if rooms else None


def _between(whole: WholePiece, end: _End) -> list[Joint]:
    return [joint for joint in joints_of(whole, end.end) if beyond(joint, end.end) in end.boards]


# ---- glued along -----------------------------------------------------------------------------------------------


def _fixed(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    return crossing_finding(
        whole,
        "breadboard-glued",
        crossings,
        crossing_words(worst, say("a breadboard end")),
        say(
            "glue the middle {width:.0f} mm at most; let the rest slide: a tongue in a groove, tenons with room, "
            "pegs in slots that get longer toward the edges{confirm}",
            width=limit("glued across"),
            confirm=confirm_words(worst),
        ),
    )
