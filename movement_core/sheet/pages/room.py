"""Which humidity keeps a piece within its room: found from the gaps and grooves that the seasons use up."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from movement_core.air.emc import equilibrium_moisture
from movement_core.piece.captive_room import CaptiveRoom
from movement_core.piece.contact.across import GapYear, gap_to_leave
from movement_core.piece.limits import limit
from movement_core.piece.solve import SolvedPart
from movement_core.piece.whole import WholePiece
from movement_core.wording import phrase

Floats = NDArray[np.float64]

STEEPEST_MC = 1e-3  # percent: a part that swings by less tells nothing of its moisture
RH = np.arange(1.0, 99.01, 0.1)
ROOMS_RH = (5.0, 90.0)  # beyond these no room is kept
PRESSES, BARES, JAMS = phrase("presses in its grooves"), phrase("leaves its groove"), phrase("jam")


@dataclass(frozen=True)
class Bound:
    """A moisture beyond which something gives way: above it where ``upper``, else below it."""

    what: str
    parts: tuple[str, ...]
    moisture_percent: float
    upper: bool


def bounds(whole: WholePiece) -> tuple[Bound, ...]:
    """Every limit that a groove or a working gap sets, the gaps set today as the sheet says."""
    found = [bound for room in whole.rooms for bound in _of_room(whole, room)]
    for gap in whole.gaps:
        if whole.is_between_groups(gap.gap.first, gap.gap.second):
            found += _of_gap(whole, gap)
    return tuple(found)


def room_entry(whole: WholePiece) -> dict[str, Any]:
    """The humidity to keep, percent, and what sets each end of it.

    The year's own humidities where nothing gives way before them; None for both where even today's would be too much.
    """
    year = whole.solved.year
    dry, wet = int(np.argmin(year.rh_percent)), int(np.argmax(year.rh_percent))
    low, high = float(year.rh_percent[dry]), float(year.rh_percent[wet])
    told = []
    known = bounds(whole)
    for upper, month in ((False, dry), (True, wet)):
        driest, dampest = equilibrium_moisture(float(year.temperature_c[month]), ROOMS_RH)
        mine = [b for b in known if b.upper == upper and driest < b.moisture_percent < dampest]
        if not mine:
            continue  # no room's air gets there
        first = min(mine, key=lambda bound: bound.moisture_percent if upper else -bound.moisture_percent)
        humidity = humidity_of(first.moisture_percent, float(year.temperature_c[month]))
        told.append(
            {
                "end": "most" if upper else "least",
                "rh_percent": round(humidity, 1),
                "moisture_percent": round(first.moisture_percent, 2),
                "what": first.what,
                "parts": list(first.parts),
            }
        )
        low, high = (low, min(high, humidity)) if upper else (max(low, humidity), high)
    holds = math.ceil(low - 1e-6) <= math.floor(high + 1e-6)
    return {
        "rh_least_percent": math.ceil(low - 1e-6) if holds else None,
        "rh_most_percent": math.floor(high + 1e-6) if holds else None,
        "limits": told,
    }


def humidity_of(moisture_percent: float, temperature_c: float) -> float:
    """Relative humidity, 1 to 99 %, in which wood comes to a moisture content, at a temperature."""
    return float(np.interp(moisture_percent, equilibrium_moisture(temperature_c, RH), RH))


def _of_room(whole: WholePiece, room: CaptiveRoom) -> list[Bound]:
    """Where a captured panel fills its grooves, and where too little of it is left in them."""
    panel = whole.parts[room.captive.part]
    names = (panel.part.name,)
    most, least = _line(panel, room.width.most_mm), _line(panel, room.width.least_mm)
    drawn = room.width.as_drawn_mm
    found = []
    if most is not None and room.room_mm is not None:
        found.append(Bound(PRESSES, names, most.moisture_at(drawn + room.room_mm), True))
    if least is not None and room.in_frame:
        found.append(
            Bound(BARES, names, least.moisture_at(drawn - 2 * (room.cover_mm - limit("panel cover"))), False)
        )
    return found


def _of_gap(whole: WholePiece, year: GapYear) -> list[Bound]:
    """Where a gap, set today as the sheet says, falls below the least that works."""
    leave = gap_to_leave(year, limit("gap left"))
    parts = [whole.parts[i] for i in (year.gap.first, year.gap.second)]
    mover = max(parts, key=lambda solved: 0.0 if solved.mc_days is None else float(np.ptp(solved.mc_days)))
    line = _line(mover, leave.set_mm + year.narrowest.least_mm - year.narrowest.today.least)
    if line is None:
        return []
    names = tuple(solved.part.name for solved in parts)
    return [Bound(JAMS, names, line.moisture_at(limit("gap least")), line.slope < 0)]


@dataclass(frozen=True)
class _Line:
    """A size as a straight line of its part's moisture."""

    slope: float
    start: float

    def moisture_at(self, size_mm: float) -> float:
        return (size_mm - self.start) / self.slope


def _line(solved: SolvedPart, days_mm: Floats) -> _Line | None:
    """The line through a course's 365 days; None where nothing moves."""
    moisture: Sequence[float] | Floats | None = solved.mc_days
    if moisture is None or np.ptp(moisture) < STEEPEST_MC or np.ptp(days_mm) < STEEPEST_MC:
        return None
    slope, start = np.polyfit(moisture, days_mm, 1)
    return _Line(float(slope), float(start)) if abs(slope) > 1e-6 else None
