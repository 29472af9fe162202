"""How close everything in a piece comes to its limit, and where: gaps that jam or gape, panels in grooves, joints
across the grain. For a picture that colours parts and marks places by it.

A margin's *used* share is 0 where nothing of the room is ever used and 1 at the limit that the checks judge by.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import BREAKS, JAMS, SHOWS, UNKNOWN
from movement_core.piece.captive_room import CaptiveRoom
from movement_core.piece.contact.across import GapYear
from movement_core.piece.contact.found import FLAT
from movement_core.piece.contact.joints import NEAR, TENONED
from movement_core.piece.crossing import IF_SOLID, SPLITS, Crossing
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say

Floats = NDArray[np.float64]
Length = Callable[[float], str]

JAM, GAPE, PRESS, SLIP, SPLIT = "jams", "gapes", "presses", "slips out", "splits"
WORTH_MARKING = 0.5  # shares below this are not marked in the model


@dataclass(frozen=True, eq=False)
class Margin:
    """One thing that has a limit.

    Attributes
    ----------
    kind : JAM, GAPE, PRESS, SLIP or SPLIT.
    keys, names : of the parts concerned, the one that the place lies on first.
    used : share of its room used at the worst, 1 at the limit; None where it depends on what nobody said.
    day : the day of the worst, 0 = 1 January.
    text : a few words with the figure and the month.
    place : (3,) in the model. outline : loops (K, 3) round the area; empty where there is none.
    """

    kind: str
    keys: tuple[str, ...]
    names: tuple[str, ...]
    used: float | None
    day: int
    text: str
    place: Floats
    outline: tuple[Floats, ...] = ()

    @property
    def month(self) -> int:
        return int(month_of_day(self.day))

    @property
    def over(self) -> bool:
        return self.used is not None and self.used >= 1


def margins_of(whole: WholePiece, length: Length = "{:.1f} mm".format) -> tuple[Margin, ...]:
    """Every margin of a piece, worst first; those that nobody can judge yet after what is over its limit.

    length : writes a length in mm for the reader.
    """
    found = [*_of_gaps(whole, length), *_of_rooms(whole, length), *_of_crossings(whole, length)]
    return tuple(sorted(found, key=lambda one: -(0.999 if one.used is None else one.used)))


def shares_of_parts(
    margins: Iterable[Margin], findings: Iterable[Mapping[str, object]], keys: Iterable[str]
) -> dict[str, float | None]:
    """The largest share of each part by its key; None where only what nobody said could tell.

    A part with a finding that breaks, jams or shows is at its limit at least. findings : as in a report.
    """
    shares: dict[str, float | None] = dict.fromkeys(keys, 0.0)
    asked: set[str] = set()
    for margin in margins:
        for key in margin.keys:
            if margin.used is None:
                asked.add(key)
            elif key in shares:
                shares[key] = max(shares[key] or 0.0, margin.used)
    for finding in findings:
        concerned = [str(key) for key in finding["keys"]]  # type: ignore[attr-defined]
        if finding["severity"] in (BREAKS, JAMS, SHOWS):
            shares |= {key: max(shares[key] or 0.0, 1.0) for key in concerned if key in shares}
        elif finding["severity"] == UNKNOWN:
            asked |= set(concerned)
    return {key: None if key in asked and (share or 0.0) < 1 else share for key, share in shares.items()}


# ---- gaps ---------------------------------------------------------------------------------------------------


def _of_gaps(whole: WholePiece, length: Length) -> list[Margin]:
    """The tightest and, round doors and drawers, the widest gap of each pair of parts."""
    near = {joint.parts for joint in whole.joints if joint.kind == NEAR}
    best: dict[tuple[str, int, int], Margin] = {}
    for year in whole.gaps:
        pair = year.gap.first, year.gap.second
        works = whole.is_between_groups(*pair)
        if year.gap.surface != FLAT or not (works or pair in near):
            continue
        for margin in _of_gap(whole, year, works, length):
            name = margin.kind, *pair
            if name not in best or (margin.used or 0) > (best[name].used or 0):
                best[name] = margin
    return list(best.values())


def _of_gap(whole: WholePiece, year: GapYear, works: bool, length: Length) -> list[Margin]:
    drawn, widest = year.gap.least_mm, year.gap.most_mm
    least = limit("gap least") if works else 0.0
    found = []
    used = _share(drawn - year.least_mm, drawn - least)
    day = int(year.narrowest.least_mm.argmin())
    if used > 0:
        if year.least_mm > 0:
            text = say("{left} of {drawn} left", left=length(year.least_mm), drawn=length(drawn))
        else:
            text = say("closes, {missing} missing", missing=length(-year.least_mm))
        found.append(_margin(whole, JAM, year, used, day, text))
    if works and widest <= limit("gap drawn"):
        used = _share(year.most_mm - widest, limit("gap most") - widest)
        text = say("opens to {most}", most=length(year.most_mm))
        found.append(_margin(whole, GAPE, year, used, int(year.widest.most_mm.argmax()), text))
    return found


def _share(taken: float, room: float) -> float:
    """Share of a room that is taken; what has no room and takes any is at its limit."""
    if taken <= 0:
        return 0.0
    return taken / room if room > taken * 1e-3 else 1000.0


def _margin(whole: WholePiece, kind: str, year: GapYear, used: float, day: int, text: str) -> Margin:
    pair = year.gap.first, year.gap.second
    return Margin(kind, *_called(whole, pair), used, day, text, year.gap.centre, year.gap.outline)


def _called(whole: WholePiece, indices: Sequence[int]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Keys and names of parts."""
    return tuple(whole.parts[i].part.key for i in indices), tuple(whole.name(i) for i in indices)


# ---- panels in grooves --------------------------------------------------------------------------------------


def _of_rooms(whole: WholePiece, length: Length) -> list[Margin]:
    found = []
    for room in whole.rooms:
        if room.room_mm is not None:
            used = _share(room.growth_mm, room.room_mm - limit("panel room"))
            text = say("grows {grown}, room {room}", grown=length(room.growth_mm), room=length(room.room_mm))
            found.append(_held(whole, PRESS, room, used, int(room.width.most_mm.argmax()), text))
        kept = limit("panel cover")
        used = _share(room.cover_mm - room.least_cover_mm, room.cover_mm - kept)
        text = say("{cover} left in the groove", cover=length(room.least_cover_mm))
        found.append(_held(whole, SLIP, room, used, int(room.width.least_mm.argmin()), text))
    return [margin for margin in found if margin.used]


def _held(whole: WholePiece, kind: str, room: CaptiveRoom, used: float, day: int, text: str) -> Margin:
    indices = (room.captive.part, *room.holders)
    frame = whole.parts[room.captive.part].part.frame
    place = frame.centre + frame.axes[0] * frame.width_mm / 2
    return Margin(kind, *_called(whole, indices), used, day, text, place)


# ---- joints across the grain --------------------------------------------------------------------------------


def _of_crossings(whole: WholePiece, length: Length) -> list[Margin]:
    """One for each pair that crosses: what it moves against what practice lets pass solid."""
    best: dict[tuple[int, int], Margin] = {}
    for crossing in whole.crossings:
        margin = _of_crossing(whole, crossing, length)
        if margin is None:
            continue
        pair = crossing.carrier, crossing.other
        rank = 0.999 if margin.used is None else margin.used
        if pair not in best or rank > (0.999 if best[pair].used is None else best[pair].used or 0.0):
            best[pair] = margin
    return list(best.values())


def _of_crossing(whole: WholePiece, crossing: Crossing, length: Length) -> Margin | None:
    if crossing.verdict not in (SPLITS, IF_SOLID):
        return None
    widest = limit("tenon" if crossing.joint.kind == TENONED else "glued across")
    used = max(1.0, crossing.width_mm / widest) if crossing.verdict == SPLITS else None
    moves = length(max(-crossing.least_mm, crossing.most_mm))
    if used is None:
        text = say("say how it is fixed: {moves} of movement across {width}", moves=moves,
                   width=length(crossing.width_mm))  # fmt: skip
    else:
        text = say("solid across {width} that moves {moves}", width=length(crossing.width_mm), moves=moves)
    worst = crossing.movement.worst
    day = 0
    if worst is not None:
        day = int(np.maximum(np.abs(worst.course.least_mm), np.abs(worst.course.most_mm)).argmax())
    main = crossing.joint.meeting.main
    indices = crossing.carrier, crossing.other
    place = whole.parts[crossing.other].part.frame.centre if main is None else main.centre
    outline = () if main is None else main.outline
    return Margin(SPLIT, *_called(whole, indices), used, day, text, place, outline)
