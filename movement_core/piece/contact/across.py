"""What happens across a joint and in a gap through the year: differential movement, least and most, what to leave.

Each part swells about its own fixed point. At a joint the two differ by the difference of their strains times the
extent of the contact; a gap takes up what its two faces do.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import DAYS, month_of_day
from movement_core.errors import InputError
from movement_core.piece.contact.carried import Positions
from movement_core.piece.contact.found import Gap
from movement_core.piece.contact.joints import Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import TODAY, Span, Swelling, fixed_point, swelling_of
from movement_core.piece.course import Course, Reading
from movement_core.piece.solve import SolvedPart
from movement_core.wording import say

LIES_IN = 0.3  # sine of the angle to the contact plane under which an axis lies in it
SAME_WAY = 0.98  # cosine above which two axes are one


@dataclass(frozen=True, eq=False)
class Differential:
    """Movement of the first part less that of the second over a contact, along one direction in its plane.

    Attributes
    ----------
    direction : (3,) unit. axes : for each part which of its own axes that is (0 width, 1 thickness, 2 grain) or
        None where it runs askew.
    extent_mm : of the contact along it.
    course : mm over the whole extent since fitting, + where the first grows more than the second.
    """

    direction: Floats
    axes: tuple[int | None, int | None]
    extent_mm: float
    course: Course

    @property
    def worst_mm(self) -> float:
        """The largest differential of any day, without its sign."""
        return float(np.maximum(np.abs(self.course.least_mm), np.abs(self.course.most_mm)).max())

    @property
    def worst_month(self) -> int:
        """Month 0–11 of that day."""
        worst = np.maximum(np.abs(self.course.least_mm), np.abs(self.course.most_mm))
        return int(month_of_day(int(worst.argmax())))


@dataclass(frozen=True, eq=False)
class JointMovement:
    """Differential movement at a joint, the largest first; None of them where a part's movement is not known."""

    joint: Joint
    differentials: tuple[Differential, ...]

    @property
    def worst(self) -> Differential | None:
        return self.differentials[0] if self.differentials else None


def joint_movement(joint: Joint, first: SolvedPart, second: SolvedPart) -> JointMovement:
    """What the seasons do across a joint.

    Parameters
    ----------
    joint : between the two parts, in this order.
    first, second : the parts through the year.

    Returns
    -------
    One differential for each axis of either part that lies in the plane of the contact, since they were fitted; of
    a part that is let into the other, for every axis, over all the walls that hold it.
    """
    one, two = swelling_of(first), swelling_of(second)
    main = joint.meeting.main
    if one is None or two is None or main is None:
        return JointMovement(joint, ())
    points, normal = joint.meeting.joined, main.normal
    if joint.meeting.walls:
        normal = np.zeros(3)  # tenons, tails and tongues are held all round: every direction counts
    directions: list[Floats] = []
    for axis in (*one.axes, *two.axes):
        flat = axis - (axis @ normal) * normal
        if abs(axis @ normal) > LIES_IN or any(abs(flat @ d) > SAME_WAY for d in directions):
            continue
        directions.append(flat / np.linalg.norm(flat))
    found = []
    for direction in directions:
        extent = float(np.ptp(points @ direction))
        span = (one.along(direction) - two.along(direction)).times(extent)
        axes = _axis(one.axes, direction), _axis(two.axes, direction)
        found.append(Differential(direction, axes, extent, _course(0.0, span)))
    return JointMovement(joint, tuple(sorted(found, key=lambda one: -one.worst_mm)))


@dataclass(frozen=True, eq=False)
class GapYear:
    """A gap through the year at its narrowest and at its widest place, mm (negative: the parts press)."""

    gap: Gap
    narrowest: Course
    widest: Course

    @property
    def least_mm(self) -> float:
        return float(self.narrowest.least_mm.min())

    @property
    def least_month(self) -> int:
        return int(month_of_day(int(self.narrowest.least_mm.argmin())))

    @property
    def most_mm(self) -> float:
        return float(self.widest.most_mm.max())

    @property
    def most_month(self) -> int:
        return int(month_of_day(int(self.widest.most_mm.argmax())))


def gap_year(
    gap: Gap,
    first: SolvedPart,
    second: SolvedPart,
    fixed_first: Floats | str | float = "centre",
    fixed_second: Floats | str | float = "centre",
    positions: Positions | None = None,
) -> GapYear | None:
    """A gap through the year; None where a part's movement is not known.

    Parameters
    ----------
    gap : between the two parts, in this order; as drawn it is the gap when they were fitted.
    fixed_first, fixed_second : the point (3,) of each part that stays, or its fixed line by name or in mm from the
        middle of its width. Of a peg in its hole they do not matter.
    positions : where the whole piece takes the parts; then the fixed points are not used.
    """
    one, two = swelling_of(first), swelling_of(second)
    if one is None or two is None:
        return None
    if gap.peg is not None:
        changes = _round_changes(gap, one, two)
    else:
        stays = []
        for solved, where in ((first, fixed_first), (second, fixed_second)):
            point = where if isinstance(where, np.ndarray) else fixed_point(solved.part, where)
            stays.append(solved.part.frame.centre if positions is not None else point)
        changes = _flat_changes(gap, one, two, stays)
        if positions is not None:
            carried = positions.between(gap.first, gap.second, gap.centre) @ gap.normal
            changes += Span(carried, carried, carried)
    tight = changes.row(int(changes.least.min(axis=1).argmin()))
    wide = changes.row(int(changes.most.max(axis=1).argmax()))
    return GapYear(gap, _course(gap.least_mm, tight), _course(gap.most_mm, wide))


def _flat_changes(gap: Gap, one: Swelling, two: Swelling, stays: list[Floats]) -> Span:
    """(corners, 366) what each corner of a gap does: its two faces lie half a gap to either side of its outline."""
    half, points = gap.size_mm / 2 * gap.normal, np.concatenate(gap.outline)
    return two.shifts(points + half, stays[1], gap.normal) - one.shifts(points - half, stays[0], gap.normal)


def _round_changes(gap: Gap, one: Swelling, two: Swelling) -> Span:
    """(corners, 366) what the room round a peg does in each direction: holes grow with their wood as pegs do."""
    peg, hole = (one, two) if gap.peg == gap.first else (two, one)
    away = np.concatenate(gap.outline) - gap.centre
    away -= (away @ gap.normal)[:, None] * gap.normal
    radii = np.linalg.norm(away, axis=1)
    away /= radii[:, None]
    return (hole.along_each(away) - peg.along_each(away)).times_each(radii)


@dataclass(frozen=True)
class GapToLeave:
    """The gap to set today so that it never falls below what is wanted, and what it becomes.

    ``month`` 0–11 are those in which it is least and most.
    """

    set_mm: float
    least_mm: float
    least_month: int
    most_mm: float
    most_month: int


def gap_to_leave(year: GapYear, wanted_least_mm: float) -> GapToLeave:
    """What to leave today.

    Parameters
    ----------
    year : the gap through the year. wanted_least_mm : what must be left of it in the tightest season, mm.
    """
    if not wanted_least_mm >= 0:
        raise InputError(
            say("a least gap of {wanted_least!r} mm", wanted_least=wanted_least_mm),
            where=say("gap to leave"),
            allowed=say("0 mm or more"),
        )
    low, high = (_since_today(course) for course in (year.narrowest, year.widest))
    set_mm = wanted_least_mm - min(0.0, float(low[0].min()))
    return GapToLeave(
        set_mm,
        set_mm + float(low[0].min()),
        int(month_of_day(int(low[0].argmin()))),
        set_mm + float(high[1].max()),
        int(month_of_day(int(high[1].argmax()))),
    )


def _since_today(course: Course) -> tuple[Floats, Floats]:
    """Least and most change of each day from today: both ends of a range are followed, not crossed."""
    ends = [course.least_mm - course.today.least, course.most_mm - course.today.most]
    if course.days_mm is not None and course.today.value is not None:
        ends.append(course.days_mm - course.today.value)
    return np.min(ends, axis=0), np.max(ends, axis=0)


def _axis(axes: Floats, direction: Floats) -> int | None:
    along = np.abs(axes @ direction)
    return int(along.argmax()) if along.max() > SAME_WAY else None


def _course(drawn: float, change: Span) -> Course:
    least, most = drawn + change.least, drawn + change.most
    value = None if change.value is None else drawn + change.value
    today = Reading(None if value is None else float(value[TODAY]), float(least[TODAY]), float(most[TODAY]))
    return Course(drawn, None if value is None else value[:DAYS], least[:DAYS], most[:DAYS], today)
