"""Bars across a top's grain that screws or pins in round, tight holes hold fast to it at lines apart."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.checks.finding import BREAKS, Finding
from movement_core.checks.remember import beyond, joints_of, once_a_piece
from movement_core.holding.fixed_anyway import Fixed, if_fixed
from movement_core.piece.contact.found import ROUND, Gap
from movement_core.piece.contact.joints import CONFIRMED, FREE, PEGGED, POINT, SCREWED, WHOLE, Joint
from movement_core.piece.limits import limit
from movement_core.piece.top_place import TOUCH_MM, Near, TopPlace, is_across, touch
from movement_core.piece.top_shapes import DRIEST, WETTEST, month_of_case
from movement_core.piece.tops import FoundTop
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

SLIM_MM = 20.0  # a screw or pin is no thicker than this (own judgement)
TIGHT_MM = 0.3  # less room than this round a shank lets nothing move (own judgement)
SAME_LINE_MM = 5.0  # screws of one bar nearer than this across the grain are one line (own judgement)


@dataclass(frozen=True, eq=False)
class ScrewedBar:
    """One bar and the screws through it into the top: ``tight`` those in round holes that leave no room."""

    bar: Near
    screws: tuple[Near, ...]
    tight: tuple[Near, ...]

    @property
    def lines_mm(self) -> tuple[float, ...]:
        """Where it is held fast, mm across from the middle of the top."""
        lines: list[float] = []
        for at in sorted(float(one.low[1] + one.high[1]) / 2 for one in self.tight):
            if not lines or at - lines[-1] > SAME_LINE_MM:
                lines.append(at)
        return tuple(lines)


def crossing_bars(place: TopPlace) -> list[Near]:
    """Battens, breadboard ends, and what it rests on whose grain (or metal) runs across its own."""
    return [*place.battens, *place.ends, *(one for one in place.under if is_across(place, one))]


def is_answered(whole: WholePiece, place: TopPlace, bar: Near) -> bool:
    """Whether the maker confirmed every joint of a bar with the top's boards: other checks judge them as confirmed."""
    boards = {board.part.key for board in place.boards}
    joints = [joint for joint, other in _joints(whole, bar) if other in boards and joint.meeting.contacts]
    return bool(joints) and all(joint.origin == CONFIRMED for joint in joints)


@once_a_piece
def screwed_bars(whole: WholePiece) -> tuple[tuple[FoundTop, tuple[ScrewedBar, ...]], ...]:
    """Of every top that can be worked out the bars that screws hold, as far as their holes are drawn."""
    found = []
    for top in whole.tops:
        if top.top is not None:
            bars = [bar for bar in crossing_bars(top.place) if not is_answered(whole, top.place, bar)]
            screwed = (_screwed(whole, top.place, bar) for bar in bars)
            found.append((top, tuple(one for one in screwed if one is not None)))
    return tuple(found)


def screws_told(whole: WholePiece) -> frozenset[tuple[str, str]]:
    """(board, screw) by their keys of the screws that findings here tell of: no other check tells of them again."""
    return frozenset(
        (board.part.key, screw.solved.part.key)
        for found, bars in screwed_bars(whole)
        for bar in _held_fast(found, bars)
        for screw in bar.tight
        for board in found.place.boards
    )


def held_by_screws(whole: WholePiece, found: FoundTop) -> tuple[ScrewedBar, ...]:
    """The bars of one top that screws hold."""
    return next((bars for top, bars in screwed_bars(whole) if top is found), ())


def fixed_at_lines(whole: WholePiece, found: FoundTop) -> list[Finding]:
    """One finding on the bars of a top that screws hold fast at lines apart: that which strains it most tells how."""
    bars = _held_fast(found, held_by_screws(whole, found))
    if not bars:
        return []
    worst = max(bars, key=lambda one: max(map(abs, _change(found, one))))
    low, high = worst.lines_mm[0], worst.lines_mm[-1]
    change, fixed = _change(found, worst), fixed_between(found, low, high)
    dries = -change[0] >= change[1]
    return [
        Finding(
            check="fixed-across-the-grain",
            severity=BREAKS,
            parts=(found.place.name, *(bar.bar.name for bar in bars)),
            keys=(
                *(board.part.key for board in found.place.boards),
                *(bar.bar.solved.part.key for bar in bars),
            ),
            message=say(
                "{names}: held to the top at {count} lines {apart:.0f} mm apart across its grain, by screws or pins in "
                "round holes without room; it moves {least:+.1f} to {most:+.1f} mm between them: up to {stress:.0f} "
                "MPa across the grain, split: {split}",
                names=", ".join(bar.bar.name for bar in bars),
                count=len(worst.lines_mm),
                apart=high - low,
                least=min(change[0], 0.0),
                most=max(change[1], 0.0),
                stress=fixed.tension_mpa,
                split=say(fixed.split),
            ),
            remedy=say(
                "leave one round hole in each, nearest to the middle of the top; make slots along the bar of the "
                "others, longer the farther out they are; 'hold' on the command line gives places and lengths"
            ),
            month=month_of_case(DRIEST if dries else WETTEST, found.moistures),
            figures={
                "apart_mm": round(high - low, 1),
                "change_driest_mm": round(change[0], 2),
                "change_wettest_mm": round(change[1], 2),
                "tension_mpa": round(fixed.tension_mpa, 1),
            },
        )
    ]


def _joints(whole: WholePiece, one: Near) -> list[tuple[Joint, str]]:
    """The joints of a part near a top, each with the key of the other part."""
    index = whole.index.get(one.solved.part.key)
    if index is None:
        return []
    return [(joint, whole.parts[beyond(joint, index)].part.key) for joint in joints_of(whole, index)]


def _screwed(whole: WholePiece, place: TopPlace, bar: Near) -> ScrewedBar | None:
    """The screws of a bar that reach into the top; None where it has none whose hole in it is drawn."""
    boards = {board.part.key for board in place.boards}
    screws, tight = [], []
    for one in place.let_in:
        slim = float(np.sort(one.solved.part.frame.size_mm)[1]) <= SLIM_MM
        if not (slim and one.low[2] < -TOUCH_MM and touch(one, bar)):
            continue
        joints = _joints(whole, one)
        in_bar = [joint for joint, other in joints if other == bar.solved.part.key]
        if not in_bar or not any(joint.meeting.facing for joint in in_bar):
            continue  # drawn through solid wood, or its faces are not known
        screws.append(one)
        free = any(
            joint.origin == CONFIRMED and joint.holds == FREE for joint, other in joints if other in boards
        )
        if not free and any(_is_tight(joint) for joint in in_bar):
            tight.append(one)
    return ScrewedBar(bar, tuple(screws), tuple(tight)) if screws else None


def _is_tight(joint: Joint) -> bool:
    """Whether a screw or pin has no room in its hole: as confirmed, else as drawn."""
    if joint.origin == CONFIRMED:
        return joint.holds in (WHOLE, POINT)
    rooms = [
        found.least_mm if isinstance(found, Gap) else 0.0
        for found in joint.meeting.facing
        if found.surface == ROUND
    ]
    return joint.kind in (SCREWED, PEGGED) and bool(rooms) and min(rooms) < TIGHT_MM


def _held_fast(found: FoundTop, bars: Sequence[ScrewedBar]) -> list[ScrewedBar]:
    """Those held at lines farther apart than practice lets pass, with wood between them that moves as much."""
    return [
        bar
        for bar in bars
        if len(bar.lines_mm) > 1
        and bar.lines_mm[-1] - bar.lines_mm[0] > limit("glued across")
        and max(map(abs, _change(found, bar))) >= limit("strained joint")
    ]


def _change(found: FoundTop, bar: ScrewedBar) -> tuple[float, float]:
    """How much the top between the outermost lines of a bar changes: driest, wettest, mm."""
    assert found.strain is not None  # the top is worked out
    low, high = bar.lines_mm[0], bar.lines_mm[-1]
    driest, wettest = (float(found.strain.moved(when, high, low)) for when in ("driest", "wettest"))
    return driest, wettest


def fixed_between(found: FoundTop, low: float, high: float) -> Fixed:
    """What the wood of a top bears that is fixed at two lines."""
    assert found.strain is not None and found.top is not None
    woods = [board.part.species.value for board in found.place.boards]
    known = [wood.tension_perp_mpa for wood in woods if wood is not None]
    strengths = [value for value in known if value is not None]
    strength = min(strengths) if len(strengths) == len(woods) else None
    return if_fixed(found.strain, found.top.plate.elastic.e_across_mpa, strength, from_mm=low, to_mm=high)
