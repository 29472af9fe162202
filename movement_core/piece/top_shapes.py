"""What a top wants to be, month by month: the free shape of its boards, and how much they grow.

A board whose pith is not known, but whose ring angle and heart side are, is followed at both ends of what is
possible: once with the rings that cup it least, once with those that cup it most.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import product

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import month_of_day, months_from_days
from movement_core.air.year import MONTHS
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import LoadCase
from movement_core.holding.travel import WidthStrain
from movement_core.moisture.consequence import gradient_curvature
from movement_core.piece.course import Course, Reading
from movement_core.piece.doubt import width_doubt
from movement_core.piece.panels import board_as_laid
from movement_core.piece.solve import SolvedPart, with_likely_radius
from movement_core.piece.top_place import TopPlace
from movement_core.section.board import Board
from movement_core.section.panel import Panel
from movement_core.wood import strain_at_ring_angle
from movement_core.wording import phrase, say, word

Floats = NDArray[np.float64]

DRIEST, WETTEST, TODAY = "driest day", "wettest day", "today"
CASES = (*MONTHS, DRIEST, WETTEST, TODAY)
QUARTER_FROM_DEG = 60.0  # rings at least this steep: the heart side may be unknown, both are followed
FITS_MM = 0.02  # one parabola a board is enough where it misses the profile by less than this
MOST_PIECES = 4


@dataclass(frozen=True, eq=False)
class Moistures:
    """Moisture of each board in each of the ``CASES``, percent: (15, n); and the days that are the extremes."""

    mean: Floats
    face_difference: Floats  # show less back
    flattened: Floats  # (n,)
    driest_day: int
    wettest_day: int

    @property
    def of_the_panel(self) -> Floats:
        """(15,) mean over the boards."""
        return np.asarray(self.mean.mean(axis=1))


def month_of_case(name: str, moistures: Moistures | None) -> int | None:
    """Month 0–11 of a load case; None for today."""
    word = name.split(",")[0]
    if word in MONTHS:
        return MONTHS.index(word)
    if moistures is None or word == TODAY:
        return None
    return int(month_of_day(moistures.driest_day if word == DRIEST else moistures.wettest_day))


def what_is_missing(boards: Sequence[SolvedPart]) -> tuple[str, ...]:
    """What must be said of the boards before their free shape can be told; empty if it can."""
    found = []
    for solved in boards:
        part = solved.part
        if solved.trouble:  # of an absurd size, say
            found.append(f"{part.name}: {solved.trouble}")
            continue
        said = [f"{word(fact)} ({reason})" for fact, reason in part.missing.items() if fact != "rings"]
        if part.rings.value is None:
            said.append(say("rings ({reason})", reason=part.rings.reason))
        elif part.rings.value.pith_mm is None and not _piths(solved):
            said.append(say("heart (say which face was nearer the centre of the tree, or the pith itself)"))
        if said:
            found.append(f"{part.name}: {'; '.join(said)}")
    return tuple(found)


def moistures_of(boards: Sequence[SolvedPart]) -> Moistures:
    """Moistures of boards of which nothing is missing."""
    days, faces, today, flattened = [], [], [], []
    for solved in boards:
        assert solved.mc_days is not None and solved.face_difference_days is not None  # nothing is missing
        assert solved.today_mc is not None and solved.part.flattened_mc.value is not None
        days.append(solved.mc_days)
        faces.append(solved.face_difference_days)
        today.append(solved.today_mc)
        flattened.append(solved.part.flattened_mc.value)
    every, uneven = np.stack(days), np.stack(faces)  # (n, 365)
    whole = every.mean(axis=0)
    driest, wettest, day = int(np.argmin(whole)), int(np.argmax(whole)), boards[0].day

    def cases(values: Floats, now: Floats) -> Floats:
        months = months_from_days(values)
        return np.vstack([months.T, values[:, driest], values[:, wettest], now])

    mean = cases(every, np.array(today))
    return Moistures(mean, cases(uneven, uneven[:, day]), np.array(flattened), driest, wettest)


def load_cases(place: TopPlace, moistures: Moistures) -> tuple[LoadCase, ...]:
    """The free shapes of a top in all ``CASES``; twice as many where some rings are known only roughly.

    Raises
    ------
    InputError : a board holds its pith, or the boards do not make one panel.
    """
    readings = _readings(place)
    found = []
    for label, boards in readings:
        for name, free in zip(CASES, _free(place, boards, moistures)):
            found.append(LoadCase(f"{name}, {label}" if label else name, free))
    return tuple(found)


LEAST_CUP, MOST_CUP = phrase("rings of the least cup"), phrase("rings of the most cup")


def _readings(place: TopPlace) -> list[tuple[str, list[Board]]]:
    """The boards as laid; two readings of them where the pith of some is not known."""
    piths: list[list[tuple[float, float]]] = [_piths(solved) for solved in place.boards]
    if all(len(options) == 1 for options in piths):
        return [("", [board_as_laid(b, place.axes, p[0]) for b, p in zip(place.boards, piths)])]
    least, most = [], []
    for solved, options in zip(place.boards, piths):
        boards = [board_as_laid(solved, place.axes, pith) for pith in options]
        bend = [_departure(board) for board in boards]
        least.append(boards[int(np.argmin(bend))])
        most.append(boards[int(np.argmax(bend))])
    return [(LEAST_CUP, least), (MOST_CUP, most)]


def _departure(board: Board) -> float:
    """Crown of a board that dries by 1 %, mm, its sign kept."""
    height = board.profile(-1.0)[:, 1]
    return float(height[np.argmax(np.abs(height))])


def _piths(solved: SolvedPart) -> list[tuple[float, float]]:
    """The pith in the board's own frame, or its possible places at the ends of every range; empty if unknown."""
    rings, frame = solved.part.rings.value, solved.part.frame
    if rings is None:
        return []
    if rings.pith_mm is not None:
        return [rings.pith_mm]
    rings, _ = with_likely_radius(rings, frame.width_mm, frame.thickness_mm)
    angle = rings.middle_angle_degrees
    angles = rings.angle_range_degrees or (angle, angle)
    if rings.radius_range_mm is None or (rings.heart is None and min(angles) < QUARTER_FROM_DEG):
        return []
    found = []
    for radius, degrees in product(rings.radius_range_mm, {*angles, angle}):
        x, y = rings.pith_at(radius, degrees)
        for sign in (1.0,) if rings.heart else (1.0, -1.0):
            outside = abs(x) >= frame.width_mm / 2 or abs(y) >= frame.thickness_mm / 2
            if outside:
                found.append((x, sign * y))
    return found


def _free(place: TopPlace, boards: list[Board], moistures: Moistures) -> list[FreeCurvature]:
    """The free shape in each of the cases: rings first, then what uneven moisture adds."""
    change = moistures.mean - moistures.flattened
    shape = Panel(boards).shape(change, each_board=True)
    marks = [0, *shape.glue_lines, shape.profile.shape[-2] - 1]
    profiles = []
    for profile in shape.profile:  # moved onto the drawn lines, so that all cases share them
        across = np.interp(profile[:, 0], profile[marks, 0], place.lines_mm)
        profiles.append(np.column_stack([across, profile[:, 1]]))
    pieces = 1 if all(_fits(p, place.lines_mm) for p in profiles) else MOST_PIECES
    uneven = _uneven_curvature(place, moistures)
    found = []
    for profile, bends in zip(profiles, uneven):
        free = FreeCurvature.from_profile(profile, place.lines_mm, pieces)
        crown = np.array(free.crown_per_mm) + np.repeat(bends, pieces)
        found.append(FreeCurvature(free.lines_mm, tuple(crown), free.kinks_rad))
    return found


def _fits(profile: Floats, lines: Sequence[float]) -> bool:
    simple = FreeCurvature.from_profile(profile, lines, 1)
    return bool(np.max(np.abs(simple.height(profile[:, 0]) - profile[:, 1])) < FITS_MM)


def _uneven_curvature(place: TopPlace, moistures: Moistures) -> Floats:
    """(15, n) crown from one face being damper than the other, 1/mm."""
    columns = []
    for column, (solved, over) in enumerate(zip(place.boards, place.over)):
        species, rings = solved.part.species.value, solved.part.rings.value
        assert species is not None and rings is not None  # nothing is missing
        coefficient = strain_at_ring_angle(
            species.radial_coefficient, species.tangential_coefficient, rings.middle_angle_degrees
        )
        bend = gradient_curvature(
            coefficient, moistures.face_difference[:, column], solved.part.frame.thickness_mm
        )
        columns.append(-bend if over else bend)
    return np.stack(columns, axis=-1)


# ---- growth ----------------------------------------------------------------------------------------------


def width_strain(place: TopPlace, moistures: Moistures, with_doubt: bool = True) -> WidthStrain:
    """Strain of each board since fitting on the top's driest and wettest day and today.

    ``with_doubt`` widens driest and wettest by the likely error of each board (coefficient, moistures, climate),
    so that slots have room for it; the strain's own spread is then 0. Without, the figures are the plain ones.
    """
    driest, today, wettest = [], [], []
    for solved in place.boards:
        course = solved.width
        assert course is not None  # nothing is missing
        drawn = course.as_drawn_mm
        low, high = course.on(moistures.driest_day), course.on(moistures.wettest_day)
        now = _middle(course.today)
        dry, wet = low.least if with_doubt else _middle(low), high.most if with_doubt else _middle(high)
        if with_doubt:
            dry, wet = dry - _error(solved, course, "driest"), wet + _error(solved, course, "wettest")
        driest.append(min(dry, now) / drawn - 1)
        wettest.append(max(wet, now) / drawn - 1)
        today.append(now / drawn - 1)
    return WidthStrain(place.lines_mm, tuple(driest), tuple(today), tuple(wettest), spread=0.0)


def _middle(reading: Reading) -> float:
    return reading.value if reading.value is not None else (reading.least + reading.most) / 2


def _error(solved: SolvedPart, course: Course, when: str) -> float:
    """Likely error of a width beyond the range that is shown anyway, mm."""
    doubt = width_doubt(solved, when)
    if doubt is None:
        return 0.0
    day = {"driest": solved.driest_day, "wettest": solved.wettest_day}[when]
    return max(0.0, doubt.likely_mm[1] - course.on(day).most)
