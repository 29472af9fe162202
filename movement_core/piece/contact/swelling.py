"""How a solved part swells and shrinks: its strains along its own axes, day by day, and what they do to a point.

Along the grain wood is taken as still: it changes a hundredth of what it does across (THEORY, Size change).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from weakref import WeakKeyDictionary

import numpy as np

from movement_core.air.daily import DAYS
from movement_core.holding.travel import fixed_line_mm
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.course import Course
from movement_core.piece.part import Part
from movement_core.piece.solve import SolvedPart

TODAY = DAYS  # place of today behind the 365 days
LEFT_OUT = 1e-9  # of the largest course of a piece


@dataclass(frozen=True, eq=False)
class Span:
    """A figure on each of 365 days and today, mm or a fraction: its value where known, and its range; (…, 366)."""

    value: Floats | None
    least: Floats
    most: Floats

    def __add__(self, other: Span) -> Span:
        if self.certain and other.certain:
            both = self.least + other.least
            return Span(both, both, both)
        known = self.value is not None and other.value is not None
        value = self.value + other.value if known else None  # type: ignore[operator]
        return Span(value, self.least + other.least, self.most + other.most)

    def __sub__(self, other: Span) -> Span:
        return self + other.times(-1.0)

    def times(self, factor: float) -> Span:
        if self.certain:
            only = self.least * factor
            return Span(only, only, only)
        ends = (self.least * factor, self.most * factor)
        least, most = ends if factor >= 0 else ends[::-1]
        return Span(None if self.value is None else self.value * factor, least, most)

    @property
    def certain(self) -> bool:
        """Whether value and range are one array, so that it is reckoned with once and not three times."""
        return self.value is self.least and self.least is self.most

    def times_each(self, factors: Floats) -> Span:
        """(…, 366) the same times each of some factors (…)."""
        by = factors[..., None]
        if self.certain:
            only = np.asarray(self.least * by)
            return Span(only, only, only)
        low, high = self.least * by, self.most * by
        value = None if self.value is None else np.asarray(self.value * by)
        return Span(value, np.minimum(low, high), np.maximum(low, high))

    def row(self, place: int) -> Span:
        """One of several, by its place."""
        if self.certain:
            only = self.least[place]
            return Span(only, only, only)
        value = None if self.value is None else self.value[place]
        return Span(value, self.least[place], self.most[place])

    @property
    def middle(self) -> Floats:
        """Its value, or the middle of its range."""
        return self.value if self.value is not None else (self.least + self.most) / 2


_ZEROS = np.zeros(DAYS + 1)
STILL = Span(_ZEROS, _ZEROS, _ZEROS)


@dataclass(frozen=True, eq=False)
class Swelling:
    """Strains of a part along the rows of its frame's ``axes`` (3, 3) about any point of it, since it was fitted."""

    axes: Floats
    centre: Floats
    strains: tuple[Span, Span, Span]

    def along(self, direction: Floats) -> Span:
        """Strain along a unit direction."""
        return _sum(self.strains, [float(cosine) ** 2 for cosine in self.axes @ direction])

    def shift(self, point: Floats, fixed: Floats, direction: Floats) -> Span:
        """How far a point goes along a unit direction while another, the fixed one, stays, mm."""
        return self.shifts(point[None], fixed, direction).row(0)

    def shifts(self, points: Floats, fixed: Floats, direction: Floats) -> Span:
        """(N, 366) how far each of some points (N, 3) goes so, mm."""
        return self._each((self.axes @ direction) * ((points - fixed) @ self.axes.T))

    def along_each(self, directions: Floats) -> Span:
        """(N, 366) strain along each of some unit directions (N, 3)."""
        return self._each((directions @ self.axes.T) ** 2)

    def _each(self, factors: Floats) -> Span:
        """(N, 366) strains times the factors (N, 3) of each axis, added up."""
        result: Span | None = None
        for strain, along in zip(self.strains, factors.T):
            if strain is not STILL:
                more = strain.times_each(along)
                result = more if result is None else result + more
        return STILL.times_each(np.zeros(len(factors))) if result is None else result


MOST_KEPT = 500  # sums of the strains of one wood that are remembered, each some 3 to 9 kB
_SUMS: WeakKeyDictionary[Span, dict[tuple[Span | float, ...], Span]] = WeakKeyDictionary()


def _sum(strains: tuple[Span, Span, Span], factors: Sequence[float]) -> Span:
    """Strains times their factors, added up; parts of the same wood, square to each other, ask the same again."""
    kept = _SUMS.setdefault(strains[0], {})
    key: tuple[Span | float, ...] = (strains[1], strains[2], *factors)
    if key not in kept:
        found = _summed(strains, factors)
        if len(kept) >= MOST_KEPT:
            return found
        kept[key] = found
    return kept[key]


def _summed(strains: Sequence[Span], factors: Sequence[float]) -> Span:
    """What stays still adds nothing."""
    result: Span | None = None
    for strain, factor in zip(strains, factors):
        if strain is not STILL and not (factor == 0.0 and strain.certain):
            more = strain.times(factor)
            result = more if result is None else result + more
    return STILL if result is None else result


def swelling_of(solved: SolvedPart) -> Swelling | None:
    """Strains of a solved part; None where its movement is not known."""
    if solved not in _SWELLINGS:  # every joint of it asks
        _SWELLINGS[solved] = _swelling_of(solved)
    return _SWELLINGS[solved]


_SWELLINGS: WeakKeyDictionary[SolvedPart, Swelling | None] = WeakKeyDictionary()


def _swelling_of(solved: SolvedPart) -> Swelling | None:
    part = solved.part
    species = part.species.value
    if species is None or solved.width is None:
        return None
    frame = part.frame
    if species.kind == "inert":
        return Swelling(frame.axes, frame.centre, (STILL, STILL, STILL))
    across = _strain(solved.width)
    through = STILL if solved.thickness is None else _strain(solved.thickness)
    if species.kind == "sheet":
        thin = int(np.argmin(frame.size_mm))
        strains = [through if axis == thin else across for axis in range(3)]
        return Swelling(frame.axes, frame.centre, (strains[0], strains[1], strains[2]))
    return Swelling(frame.axes, frame.centre, (across, through, STILL))


def courses(swellings: Sequence[Swelling | None]) -> tuple[Floats, Floats]:
    """Strains of many parts as few states (N, 3, states) times their courses (states, 366), to a part in 10⁹.

    In the middle of their range, and 0 where they are not known. Gram and Schmidt's way, the largest course that is
    left next: parts that are alike follow one course, and what is linear in the strains need be found for each state
    only, not for each day.
    """
    place: dict[Span, int] = {STILL: 0}
    which = [
        [0, 0, 0] if one is None else [place.setdefault(span, len(place)) for span in one.strains]
        for one in swellings
    ]
    each = np.array([span.middle for span in place])
    rest = each.copy()
    found: list[Floats] = []
    least = LEFT_OUT * float(np.linalg.norm(rest, axis=1).max())
    while len(found) < min(rest.shape):
        sizes = np.linalg.norm(rest, axis=1)
        largest = int(sizes.argmax())
        if sizes[largest] <= least:
            break
        course = rest[largest] / sizes[largest]
        for before in found:  # once more, against rounding
            course = course - (course @ before) * before
        course = course / np.linalg.norm(course)
        found.append(course)
        rest -= np.outer(rest @ course, course)
    days = np.array(found or [_ZEROS])  # a piece in which nothing moves has one course too
    return np.asarray((each @ days.T)[np.array(which, dtype=np.intp).reshape(-1, 3)]), days


def fixed_point(part: Part, where: str | float = "centre") -> Floats:
    """(3,) a point of the fixed line of a part: ``centre``, ``front`` (−width/2), ``back`` or mm from the middle."""
    return np.asarray(part.frame.centre + fixed_line_mm(where, part.frame.width_mm) * part.frame.axes[0])


_KNOWN: WeakKeyDictionary[Course, Span] = WeakKeyDictionary()


def _strain(course: Course) -> Span:
    """Strains of a course; parts of the same wood share their courses, and every joint asks again."""
    if course not in _KNOWN:
        _KNOWN[course] = _worked_out(course)
    return _KNOWN[course]


def _worked_out(course: Course) -> Span:
    drawn = course.as_drawn_mm
    least = np.append(course.least_mm, course.today.least)
    most = np.append(course.most_mm, course.today.most)
    value = None
    if course.days_mm is not None and course.today.value is not None:
        value = np.append(course.days_mm, course.today.value) / drawn - 1
    low, high = least / drawn - 1, most / drawn - 1
    if value is not None and np.array_equal(value, low) and np.array_equal(value, high):
        return Span(value, value, value)
    return Span(value, low, high)
