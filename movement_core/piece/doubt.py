"""How sure each figure of a part is: the causes of doubt, their shares, and which of them rules.

A board differs from its species, its moisture was metered or not at all, the year is a typical one, and rings are
read by eye. *Likely* holds the truth about two times in three, *nearly certain* about nineteen times in twenty.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from weakref import WeakKeyDictionary

import numpy as np

from movement_core.moisture.spread import size_change_spread
from movement_core.piece.course import Course, Reading
from movement_core.piece.solve import SolvedPart
from movement_core.wood import board_variation

# Standard deviations. Meters read within 1 % of the truth at best (common practice, no source): half of that for
# what the maker states of a whole board, all of it for a single reading today. The others are own judgement.
STATED_MC_SD = 0.5
METERED_MC_SD = 1.0
CLIMATE_MC_SD = 1.0
PITH_ANGLE_SD = 3.0
STATED_ANGLE_SD = 5.0
RADIUS_CV = 0.1

_KNOWN: WeakKeyDictionary[Course, dict[tuple[object, ...], Doubt | None]] = WeakKeyDictionary()


@dataclass(frozen=True)
class Doubt:
    """Ranges of one figure on one day, mm, and what makes them.

    ``shares``: cause → part of the variance, 0 to 1. ``rules``: the cause with the largest share, whose measurement
    would narrow the figure most.
    """

    likely_mm: tuple[float, float]
    nearly_certain_mm: tuple[float, float]
    shares: Mapping[str, float]

    @property
    def rules(self) -> str | None:
        return max(self.shares, key=lambda cause: self.shares[cause]) if self.shares else None


def width_doubt(solved: SolvedPart, when: str) -> Doubt | None:
    """Doubt of the width "today", "driest" or "wettest"; None where the width or the moisture is not known."""
    return _once(solved, solved.width, when, lambda: _size_doubt(solved, solved.width, when, turned=False))


def thickness_doubt(solved: SolvedPart, when: str) -> Doubt | None:
    """The same of the thickness."""
    return _once(
        solved, solved.thickness, when, lambda: _size_doubt(solved, solved.thickness, when, turned=True)
    )


def cup_doubt(solved: SolvedPart, when: str) -> Doubt | None:
    """Doubt of the cup, linear in its causes; None where only a range of cups is known."""
    return _once(solved, solved.cup, when, lambda: _cup_doubt(solved, when))


def _once(
    solved: SolvedPart, course: Course | None, when: str, work_out: Callable[[], Doubt | None]
) -> Doubt | None:
    """The doubt of a course on a day: parts of the same wood share their courses, and so their doubts."""
    if course is None:
        return None
    part = solved.part
    facts = (part.species.value, part.rings.value, part.figure.value, part.fitted_mc.value)
    since = (part.flattened_mc.value, solved.today_mc, solved.metered, solved.driest_day, solved.wettest_day)
    key = (when, id(facts[0]), *facts[1:], *since)
    known = _KNOWN.setdefault(course, {})
    if key not in known:
        known[key] = work_out()
    return known[key]


def _cup_doubt(solved: SolvedPart, when: str) -> Doubt | None:
    course = solved.cup
    species, change = solved.part.species.value, _change(solved, when, "flattened")
    if (
        course is None
        or course.days_mm is None
        or species is None
        or change is None
        or solved.mc_days is None
    ):
        return None
    reading = reading_of(solved, course, when)
    swing = float(np.ptp(solved.mc_days))
    slope = (
        0.0
        if swing < 1e-9
        else float(course.days_mm[solved.wettest_day] - course.days_mm[solved.driest_day]) / swing
    )
    value = reading.value or 0.0
    moisture, climate = _moisture_sds(solved, when)
    causes = {
        "coefficient": (value * _variation(solved)) ** 2,
        "moisture": (slope * moisture) ** 2,
        "climate": (slope * climate) ** 2,
        "rings": (value * RADIUS_CV) ** 2,
    }
    return _doubt(reading, causes)


def reading_of(solved: SolvedPart, course: Course, when: str) -> Reading:
    """A course's figure "today", "driest" or "wettest"."""
    days = {"driest": solved.driest_day, "wettest": solved.wettest_day}
    return course.today if when == "today" else course.on(days[when])


def _size_doubt(solved: SolvedPart, course: Course | None, when: str, turned: bool) -> Doubt | None:
    species, change = solved.part.species.value, _change(solved, when, "fitted")
    if course is None or species is None or change is None:
        return None
    radial, tangential, angle = species.radial_coefficient, species.tangential_coefficient, 0.0
    if species.kind == "sheet":
        radial = tangential = (species.thickness_coefficient or 0.0) if turned else radial
    elif solved.ring_angle_deg is not None:
        angle = 90.0 - solved.ring_angle_deg if turned else solved.ring_angle_deg
    moisture, climate = _moisture_sds(solved, when)
    found = size_change_spread(
        course.as_drawn_mm,
        radial,
        tangential,
        float(np.clip(change, -30.0, 30.0)),
        ring_angle_deg=angle,
        mc_change_sd=moisture,
        climate_sd=climate,
        ring_angle_sd_deg=_angle_sd(solved),
        coefficient_cv=_variation(solved),
    )
    variance = float(found.sd) ** 2
    causes = {cause: float(share) * variance for cause, share in found.shares.items()}
    return _doubt(reading_of(solved, course, when), causes, variance)


def _doubt(reading: Reading, causes: Mapping[str, float], variance: float | None = None) -> Doubt:
    total = sum(causes.values()) if variance is None else variance
    sd = float(np.sqrt(total))
    least, most = reading.least, reading.most
    shares = {cause: part / total for cause, part in causes.items() if total > 0 and part > 0}
    return Doubt((least - sd, most + sd), (least - 2 * sd, most + 2 * sd), shares)


def _change(solved: SolvedPart, when: str, since: str) -> float | None:
    start: float | None = getattr(solved.part, f"{since}_mc").value
    if start is None or solved.mc_days is None or solved.today_mc is None:
        return None
    days = {"driest": solved.driest_day, "wettest": solved.wettest_day}
    now = solved.today_mc if when == "today" else float(solved.mc_days[days[when]])
    return now - start


def _moisture_sds(solved: SolvedPart, when: str) -> tuple[float, float]:
    """Doubt of the moistures at building (and of a meter today), and of the air."""
    if when == "today" and solved.metered:
        return float(np.hypot(STATED_MC_SD, METERED_MC_SD)), 0.0
    return STATED_MC_SD, CLIMATE_MC_SD


def _angle_sd(solved: SolvedPart) -> float:
    rings = solved.part.rings.value
    if rings is None or rings.angle_range_degrees is not None:
        return 0.0  # the whole range is shown already
    return PITH_ANGLE_SD if rings.pith_mm is not None else STATED_ANGLE_SD


def _variation(solved: SolvedPart) -> float:
    species = solved.part.species.value
    assert species is not None  # the callers have looked
    return (
        board_variation(species, solved.part.figure.value or "plain")
        if species.kind == "wood"
        else species.variation
    )
