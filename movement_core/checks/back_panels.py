"""Solid backs in rabbets or on the rear edges: pressed, out of their rabbets, or nailed all round."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.crossing_grain import confirm_words, crossing_finding, crossing_words
from movement_core.checks.crossing_kinds import BACK, boards_with, crossings_of_kind, is_back
from movement_core.checks.finding import BREAKS, SHOWS, Finding
from movement_core.checks.remember import beyond, joints_of, once_a_piece
from movement_core.checks.told import is_wood, told
from movement_core.piece.contact.found import FLAT, Gap
from movement_core.piece.crossing import Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, AtMost, say

ALONG = 0.9  # cosine: a face looks across the back's grain, or through it


def back_panels(whole: WholePiece) -> list[Finding]:
    """One finding for each back that presses or comes out of its rabbets, and for each that is fixed across."""
    rooms = [_judge(whole, room) for room in _rooms(whole)]
    return [finding for finding in rooms if finding] + [_fixed(whole, each) for each in _alike(whole)]


def _alike(whole: WholePiece) -> list[list[Crossing]]:
    """Crossings of backs, put together where several boards lie on the same parts."""
    crossed: dict[tuple[int, str], list[Crossing]] = defaultdict(list)
    for crossing in crossings_of_kind(whole, BACK):
        crossed[boards_with(whole, crossing.carrier)[0], crossing.verdict].append(crossing)
    groups: dict[tuple[frozenset[int], str], list[Crossing]] = defaultdict(list)
    for (_, verdict), crossings in crossed.items():
        groups[frozenset(crossing.other for crossing in crossings), verdict] += crossings
    return list(groups.values())


@dataclass(frozen=True, eq=False)
class _Room:
    """A back between two edges: its boards, the parts beside them, room and least cover (None: not in a rabbet)."""

    boards: tuple[int, ...]
    beside: tuple[int, ...]
    room_mm: float
    cover_mm: float | None


@once_a_piece
def _rooms(whole: WholePiece) -> list[_Room]:
    found = {}
    for index in range(len(whole.parts)):
        boards = boards_with(whole, index)
        if boards[0] == index and is_back(whole, index):
            room = _room(whole, boards)
            if room is not None:
                found[index] = room
    return list(found.values())


def _room(whole: WholePiece, boards: tuple[int, ...]) -> _Room | None:
    """Room beside both edges of a back, where both face something; and how far it lies on what is behind it."""
    frame = whole.parts[boards[0]].part.frame
    centres = [whole.parts[board].part.frame.centre for board in boards]
    middle = np.mean(centres, axis=0)
    rooms: dict[int, tuple[float, int]] = {}
    covers: dict[int, float] = {}
    for board in boards:
        for joint in joints_of(whole, board):
            other = beyond(joint, board)
            if other in boards or not is_wood(whole, other):
                continue
            for one in joint.meeting.facing:
                if one.surface != FLAT:
                    continue
                points = np.concatenate(one.outline)
                side = 1 if float((one.centre - middle) @ frame.axes[0]) > 0 else -1
                sense = 1.0 if board == joint.parts[0] else -1.0
                if float(np.ptp(points @ frame.axes[2])) <= frame.length_mm / 2:
                    continue  # a rail or a peg, not the edge of an opening
                if sense * side * float(one.normal @ frame.axes[0]) > ALONG:
                    room = one.least_mm if isinstance(one, Gap) else 0.0
                    if side not in rooms or room < rooms[side][0]:
                        rooms[side] = room, other
                if not isinstance(one, Gap) and abs(float(one.normal @ frame.axes[1])) > ALONG:
                    covers[side] = float(np.ptp(points @ frame.axes[0]))
    if len(rooms) < 2:
        return None
    cover = min(covers.values()) if len(covers) == 2 else None
    return _Room(boards, (rooms[-1][1], rooms[1][1]), rooms[-1][0] + rooms[1][0], cover)


def _judge(whole: WholePiece, room: _Room) -> Finding | None:
    widths = [whole.parts[board].width for board in room.boards]
    if any(width is None for width in widths):
        return None
    known = [width for width in widths if width is not None]
    drawn = sum(width.as_drawn_mm for width in known)
    most = np.sum([width.most_mm for width in known], axis=0) - drawn
    least = np.sum([width.least_mm for width in known], axis=0) - drawn
    growth, shrinkage = float(most.max()), -float(least.min())
    figures = {"room_mm": room.room_mm, "growth_mm": growth, "shrinkage_mm": shrinkage}
    parts = (*room.boards, *room.beside)
    if growth > room.room_mm + limit("panel room"):
        return told(
            whole,
            "back-presses",
            BREAKS,
            parts,
            say(
                "it grows {growth:.1f} mm wider than drawn and its rabbets leave it {room:.1f} mm: it pushes the "
                "sides apart, or buckles",
                growth=AtLeast(growth),
                room=AtMost(room.room_mm),
            ),
            say(
                "leave {leave:.1f} mm beside each edge, or make it of shiplapped boards, each fixed at one line; "
                "or use plywood",
                leave=AtLeast((growth + 1.0) / 2),
            ),
            int(month_of_day(int(most.argmax()))),
            figures,
        )
    # It lies in the middle of its rabbets, so each edge draws back by half.
    if room.cover_mm is not None and room.cover_mm - shrinkage / 2 < limit("panel cover") and shrinkage > 0:
        left = room.cover_mm - shrinkage / 2
        return told(
            whole,
            "back-leaves-its-rabbet",
            BREAKS if left < 0 else SHOWS,
            parts,
            _left_words(shrinkage, left),
            say("cut the rabbets deeper, or fix it in the middle and cover its edges with a strip"),
            int(month_of_day(int(least.argmin()))),
            {**figures, "left_mm": left},
        )
    return None


def _left_words(shrinkage: float, left: float) -> str:
    if left < 0:
        return say(
            "it shrinks {shrinkage:.1f} mm, so that its edges come {short:.1f} mm short of their rabbets",
            shrinkage=shrinkage,
            short=AtLeast(-left),
        )
    return say(
        "it shrinks {shrinkage:.1f} mm: {left:.1f} mm of it are left on its rabbet at each edge, {wanted:.0f} mm "
        "are wanted",
        shrinkage=shrinkage,
        left=AtMost(left),
        wanted=AtLeast(limit("panel cover")),
    )


def _fixed(whole: WholePiece, crossings: list[Crossing]) -> Finding:
    worst = max(crossings, key=lambda one: one.worst_mm)
    return crossing_finding(
        whole,
        "back-fixed-across",
        crossings,
        crossing_words(worst, say("the back")),
        say(
            "fix it in the middle {width:.0f} mm of its width and give all other screws slots; or make it of "
            "shiplapped boards, each fixed at one line{confirm}",
            width=limit("glued across"),
            confirm=confirm_words(worst),
        ),
    )
