"""Bolts that the wood around them carries past their strikes: doors, lids, drawers, falls."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import JAMS, Finding
from movement_core.checks.fittings import Fitting, Fittings, fittings_of
from movement_core.checks.remember import beyond, joints_of
from movement_core.checks.told import is_wood, told, worst_day
from movement_core.piece.contact.joints import OVERLAP, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.limits import limit
from movement_core.piece.loose_groups import groups_of
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, AtMost, say


@dataclass(frozen=True, eq=False)
class _Drift:
    """One lock line: bolt and strike, the wood behind each, the largest drift and the room for it, and its month.

    ``opens_mm`` is the most that the strike goes away along the bolt, in the month ``opens_month``.
    """

    bolt: int
    strike: int
    woods: tuple[int, ...]
    drift_mm: float
    room_mm: float
    opens_mm: float
    month: int
    opens_month: int


def lock_lines(whole: WholePiece) -> list[Finding]:
    """One finding for each fitting that misses what it faces: its strike, or the hole that it shoots into."""
    fittings = fittings_of(whole)
    if fittings is None:
        return []
    owner = {part: fitting for fitting in fittings.found for part in fitting.parts}
    worst: dict[tuple[int, ...], _Drift] = {}
    linked = _linked(whole)
    for joint in whole.joints:
        if joint.meeting.contacts or joint.kind == OVERLAP or joint.meeting.main is None:
            continue
        for bolt, other in (joint.parts, joint.parts[::-1]):
            drift = _drift(fittings, owner, joint, bolt, other) if bolt in owner else None
            if drift is None or linked[drift.woods[0]] != linked[drift.woods[1]]:
                continue  # nothing says where the one goes beside the other
            pair = tuple(sorted(fittings.side[wood] for wood in drift.woods))
            if pair not in worst or _size(drift) > _size(worst[pair]):
                worst[pair] = drift
    return [_finding(whole, one) for one in worst.values() if _misses(one) or _falls_short(one)]


def _misses(one: _Drift) -> bool:
    return one.drift_mm > one.room_mm


def _falls_short(one: _Drift) -> bool:
    return one.opens_mm >= limit("lock reach")


def _size(one: _Drift) -> float:
    return max(one.drift_mm, one.opens_mm)


def _linked(whole: WholePiece) -> list[int]:
    """For each part the number of all that touches hangs together with it."""
    return groups_of(len(whole.parts), (joint.parts for joint in whole.joints if joint.meeting.contacts))


def _drift(
    fittings: Fittings, owner: dict[int, Fitting], joint: Joint, bolt: int, other: int
) -> _Drift | None:
    """How a fitting on the one side goes past what it faces on the other side."""
    meeting, main = joint.meeting, joint.meeting.main
    assert main is not None  # the caller has looked
    here = _one_side(fittings, owner[bolt])
    if other in owner:
        there = _one_side(fittings, owner[other])
    else:
        let_in = meeting.inner == bolt and bool(meeting.walls) and is_wood(fittings.whole, other)
        # Where the two woods lie on each other it is a screw in a slot, and no bolt.
        there = other if let_in and not _touch(fittings.whole, owner[bolt], other) else None
    if here is None or there is None or fittings.side[here] == fittings.side[there]:
        return None
    moved = [fittings.travel(fittings.held, part, main.centre) for part in (bolt, other)]
    if moved[0] is None or moved[1] is None:
        return None
    apart = moved[1] - moved[0]
    if other in owner:
        sense = 1.0 if bolt == joint.parts[0] else -1.0
        along = apart @ main.normal
        aside = np.linalg.norm(apart - along[:, None] * main.normal, axis=1)
        room, opens = limit("lock drift"), sense * along
    else:
        aside, room = _in_its_hole(apart, joint)
        opens = np.zeros(len(apart))
    drift, month = worst_day(aside)
    apart_month = int(month_of_day(int(opens.argmax())))
    return _Drift(bolt, other, (here, there), drift, room, float(opens.max()), month, apart_month)


def _touch(whole: WholePiece, fitting: Fitting, other: int) -> bool:
    """Whether the wood that a fitting sits on touches another part."""
    return any(
        joint.meeting.contacts and beyond(joint, wood) == other
        for wood in fitting.woods
        for joint in joints_of(whole, wood)
    )


def _in_its_hole(apart: Floats, joint: Joint) -> tuple[Floats, float]:
    """Drift across those walls of its hole that it passes first, and its room to either side of the middle."""
    walls = joint.meeting.walls
    each = [(np.abs(apart @ wall.axis), wall.slack_mm / 2) for wall in walls]
    return max(each, key=lambda one: float(one[0].max()) - one[1])


def _one_side(fittings: Fittings, fitting: Fitting) -> int | None:
    """The wood that a fitting sits on; None where it joins two sides, as a hinge does, or touches no wood."""
    sides = {fittings.side[wood] for wood in fitting.woods}
    return next(iter(fitting.woods)) if len(sides) == 1 else None


def _finding(whole: WholePiece, one: _Drift) -> Finding:
    parts = one.bolt, one.strike, *one.woods
    figures = {"drift_mm": one.drift_mm, "room_mm": one.room_mm, "opens_mm": one.opens_mm}
    if not _misses(one):
        return told(
            whole,
            "lock-line-drifts",
            JAMS,
            parts,
            say(
                "the strike goes {opens:.1f} mm away from the lock in the dry season: a bolt that shoots 6 to 10 "
                "mm hardly reaches it (common practice, no source; each taken as fixed to what it touches)",
                opens=one.opens_mm,
            ),
            say(
                "use a lock whose bolt shoots {throw:.0f} mm or more, or pack the strike out; a narrower or "
                "quarter-sawn stile, or a framed door, keeps the lock where it is",
                throw=AtLeast(one.opens_mm + 6.0),
            ),
            one.opens_month,
            figures,
        )
    return told(
        whole,
        "lock-line-drifts",
        JAMS,
        parts,
        say(
            "the bolt's line and the strike's go {drift:.1f} mm apart, and there is room for {room:.1f} mm: the lock "
            "no longer shuts (taken as drawn in line, and each as fixed to what it touches)",
            drift=one.drift_mm,
            room=AtMost(one.room_mm),
        ),
        say(
            "cut the strike {more:.1f} mm longer along that line, or fix it with screws in slots; or set lock and "
            "strike near the line at which both parts are held",
            more=AtLeast(one.drift_mm - one.room_mm + 0.5),
        ),
        one.month,
        figures,
    )
