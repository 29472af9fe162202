"""A whole piece through the year: the moisture of every part, and what it does to its width, thickness and cup.

The model is taken to be drawn at the sizes the parts had when they were fitted. Width and thickness therefore
start from the moisture at fitting; cup starts from the moisture when the part was last made flat.
"""

from __future__ import annotations

import datetime
from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import DAYS, DailyAir, daily_moisture, month_of_day
from movement_core.air.sequence import day_of_year
from movement_core.air.year import Year
from movement_core.errors import HeartsideError, InputError
from movement_core.moisture.consequence import crown_mm, gradient_curvature
from movement_core.moisture.journey import PLAUSIBLE_BUILT_MC
from movement_core.piece.course import Course, Reading
from movement_core.piece.moistures import USUAL_GRAVITY, PartMoisture, glued_edges, moistures_of
from movement_core.piece.part import Part
from movement_core.section.board import Board
from movement_core.section.movement import (
    HEART_UNKNOWN,
    RADIUS_A_RANGE,
    SIDE_UNKNOWN,
    SectionMovement,
    section_movement,
)
from movement_core.section.rings import Rings
from movement_core.section.twist import Twist, board_twist
from movement_core.wood import Species, strain_at_ring_angle
from movement_core.wording import phrase, say

Floats = NDArray[np.float64]

# Where a ring's radius is not said, cup is shown over the radii of boards from small and large logs (own judgement).
LIKELY_RADII_MM = (40.0, 250.0)
# What the section says of figures that are not shown here, or that the note on the radius says already.
UNTOLD = (RADIUS_A_RANGE, SIDE_UNKNOWN)
RADIUS_NOTE = phrase(  # with LIKELY_RADII_MM
    "ring radius not said: cup shown for radii from half the width, at least 40 mm, to 250 mm or the width"
)
CUP_NOTES = (RADIUS_NOTE, HEART_UNKNOWN)
TODAY = -1  # place of today behind the 365 days


@dataclass(frozen=True, eq=False)
class SolvedPart:
    """One part through the year. A course is None where something it needs is missing.

    Attributes
    ----------
    part : the part with its facts.
    mc_days : (365,) mean moisture of the part, percent, or None for what holds no moisture.
    today_mc : its moisture today, percent, or None.
    driest_day, wettest_day : days of the year, 0 = 1 January.
    width, thickness : sizes across the grain; cup : crown (+) or hollow (−) over the width, show face up.
    notes : what the reader must know about these figures.
    """

    part: Part
    mc_days: Floats | None
    today_mc: float | None
    driest_day: int
    wettest_day: int
    width: Course | None
    thickness: Course | None
    cup: Course | None
    section: SectionMovement | None = None
    twist: Twist | None = None  # in the driest and the wettest state, in that order
    day: int = 0  # today as a day of the year
    metered: bool = False  # whether today's moisture was read with a meter
    face_difference_days: Floats | None = (
        None  # (365,) moisture of the show face less that of the back, percent
    )
    notes: tuple[str, ...] = ()
    trouble: str = ""  # why the part could not be worked out, where it could not

    @property
    def driest_month(self) -> int:
        return int(month_of_day(self.driest_day))

    @property
    def wettest_month(self) -> int:
        return int(month_of_day(self.wettest_day))

    @property
    def moves(self) -> bool:
        """Whether the seasons change the part at all."""
        return self.width is not None and self.width.swing_mm > 1e-9

    @property
    def cut(self) -> str | None:
        return None if self.section is None else self.section.cut_class

    @property
    def ring_angle_deg(self) -> float | None:
        rings = self.part.rings.value
        return None if rings is None or self.section is None else rings.middle_angle_degrees


@dataclass(frozen=True, eq=False)
class SolvedPiece:
    """Every part through the year of its air."""

    parts: tuple[SolvedPart, ...]
    air: Year | DailyAir
    today: datetime.date
    metered_mc: float | None

    @property
    def year(self) -> Year:
        """The air as twelve months."""
        return self.air if isinstance(self.air, Year) else self.air.months

    @property
    def today_mc(self) -> float:
        """Moisture today: by meter, else what wood in step with the air would have."""
        if self.metered_mc is not None:
            return self.metered_mc
        return float(daily_moisture(self.air)[day_of_year(self.today)])


def solve_piece(
    parts: Sequence[Part],
    air: Year | DailyAir,
    today: datetime.date,
    today_mc: float | None = None,
    covered: Collection[str] | None = None,
) -> SolvedPiece:
    """Work out every part of a piece for a year of air.

    Parameters
    ----------
    parts : the parts with their facts; those that are kept elsewhere are worked out in the air of that place.
    air : the air of the place, which repeats year by year.
    today : the day for which ``today`` figures are given.
    today_mc : moisture of the wood today by meter, percent; None: in step with the year on that day.
    covered : keys of the boards whose edges are glued to others; None: those that lie edge to edge in ``parts``.
    """
    day = day_of_year(today)
    moistures = moistures_of(parts, air, glued_edges(parts) if covered is None else covered)
    known: dict[tuple[object, ...], SolvedPart] = {}
    solved = []
    for part, moisture in zip(parts, moistures):
        alike = _same_wood(part, moisture)
        first = known.get(alike)
        metered = None if part.kept else today_mc  # the meter read the piece, not what is kept elsewhere
        one = _tried(part, moisture, day, metered) if first is None else replace(first, part=part)
        if not one.trouble:  # what is wrong is told with the part's own name
            known.setdefault(alike, one)
        solved.append(one)
    return SolvedPiece(tuple(solved), air, today, today_mc)


def _same_wood(part: Part, moisture: PartMoisture | None) -> tuple[object, ...]:
    """All that the year of a part hangs on but its name and place: parts that share it are worked out once.

    Sizes count to a millionth of a millimetre, since a host carries the same board to two places with two roundings.
    """
    return (
        id(part.species.value),
        id(moisture),
        tuple(np.round(part.frame.size_mm, 6).tolist()),
        part.frame.grain.known,
        part.rings.value,
        part.figure.value,
        part.fitted_mc.value,
        part.flattened_mc.value,
        tuple(part.missing),
    )


# ---- movement ---------------------------------------------------------------------------------------------


def _tried(part: Part, moisture: PartMoisture | None, day: int, metered: float | None) -> SolvedPart:
    """The part worked out, or why it could not be: an absurd size costs its own part only."""
    try:
        return _solve(part, moisture, day, metered)
    except HeartsideError as error:
        return SolvedPart(part, None, None, 0, 0, None, None, None, trouble=str(error))


def _solve(part: Part, moisture: PartMoisture | None, day: int, metered: float | None) -> SolvedPart:
    species = part.species.value
    if species is None:
        return SolvedPart(part, None, None, 0, 0, None, None, None)
    if moisture is None:  # holds no moisture
        width, thickness = (_still(size) for size in _sizes(part))
        return SolvedPart(part, None, None, 0, 0, width, thickness, None)
    driest, wettest = int(np.argmin(moisture.mean)), int(np.argmax(moisture.mean))
    today = float(moisture.mean[day]) if metered is None else metered
    mc = np.append(moisture.mean, today)
    known = SolvedPart(
        part,
        moisture.mean,
        today,
        driest,
        wettest,
        None,
        None,
        None,
        day=day,
        metered=metered is not None,
        face_difference_days=moisture.face_difference,
    )
    if part.missing.keys() - {"rings", "moisture"}:
        return known
    known = replace(known, notes=moisture.notes)
    if not part.fitted_mc.known:
        return _over_plausible(known, moisture, mc)
    return _solve_from(known, moisture, mc, part.fitted_mc.value or 0.0)


def _solve_from(known: SolvedPart, moisture: PartMoisture, mc: Floats, fitted: float) -> SolvedPart:
    """The part's courses from its moisture at fitting; ``mc`` holds the 365 days and today."""
    species = known.part.species.value
    assert species is not None  # _solve has looked
    if species.kind == "sheet":
        return _solve_sheet(known, species, fitted, mc)
    today = moisture.face_difference[known.day]
    return _solve_board(known, species, fitted, mc, np.append(moisture.face_difference, today))


def _over_plausible(known: SolvedPart, moisture: PartMoisture, mc: Floats) -> SolvedPart:
    """A part whose moisture at fitting is not known, over the range that it plausibly had."""
    ends = [_solve_from(replace(known, notes=()), moisture, mc, fitted) for fitted in PLAUSIBLE_BUILT_MC]
    low, high = PLAUSIBLE_BUILT_MC
    note = say(
        "moisture when built not said: shown for {low:g} to {high:g} %, and no cup", low=low, high=high
    )
    return replace(
        ends[0],
        width=_spanning(ends[0].width, ends[1].width),
        thickness=_spanning(ends[0].thickness, ends[1].thickness),
        cup=None,
        notes=(*known.notes, *(n for n in ends[0].notes if n not in CUP_NOTES), note),
    )


def _spanning(one: Course | None, other: Course | None) -> Course | None:
    if one is None or other is None:
        return None
    today = Reading(None, min(one.today.least, other.today.least), max(one.today.most, other.today.most))
    least, most = np.minimum(one.least_mm, other.least_mm), np.maximum(one.most_mm, other.most_mm)
    return Course(one.as_drawn_mm, None, least, most, today)


def _sizes(part: Part) -> tuple[float, float]:
    """Width and thickness; of a part whose grain means nothing, the middle and the least side of its box."""
    if part.frame.grain.known:
        return part.frame.width_mm, part.frame.thickness_mm
    least, middle, _ = sorted(float(v) for v in part.frame.size_mm)
    return middle, least


def _still(size: float) -> Course:
    days = np.full(DAYS, size)
    return Course(size, days, days, days, Reading(size, size, size))


def _course(drawn: float, value: Floats | None, least: Floats, most: Floats) -> Course:
    """A course from figures of 365 days and today, in that order."""
    today = Reading(None if value is None else float(value[TODAY]), float(least[TODAY]), float(most[TODAY]))
    return Course(drawn, None if value is None else value[:TODAY], least[:TODAY], most[:TODAY], today)


def _solve_sheet(known: SolvedPart, species: Species, fitted: float, mc: Floats) -> SolvedPart:
    width, thickness = _sizes(known.part)
    wide = width * (1 + species.strain("in plane", fitted, mc))
    notes = known.notes
    if species.thickness_coefficient is None:
        return replace(known, width=_course(width, wide, wide, wide), notes=notes)
    thick = thickness * (1 + species.strain("thickness", fitted, mc))
    return replace(
        known,
        width=_course(width, wide, wide, wide),
        thickness=_course(thickness, thick, thick, thick),
        notes=notes,
    )


def _solve_board(
    known: SolvedPart, species: Species, fitted: float, mc: Floats, face_difference: Floats
) -> SolvedPart:
    part = known.part
    width, thickness = part.frame.width_mm, part.frame.thickness_mm
    radial, tangential = (species.strain(way, fitted, mc) for way in ("radial", "tangential"))
    rings = part.rings.value
    if rings is None:
        flat = section_movement(width, thickness, Rings.angle(0.0), radial, tangential)
        quarter = section_movement(width, thickness, Rings.angle(90.0), radial, tangential)
        note = say("rings not said: shown from quarter-sawn to flat-sawn, and no cup")
        return replace(
            known,
            width=_between(width, flat.width_change_mm, quarter.width_change_mm),
            thickness=_between(thickness, flat.thickness_change_mm, quarter.thickness_change_mm),
            notes=(*known.notes, note),
        )
    rings, notes = with_likely_radius(rings, width, thickness)
    moved = section_movement(width, thickness, rings, radial, tangential)
    cup = _cup(part, species, rings, moved, mc, face_difference)
    if species.specific_gravity_12 is None:
        notes += (
            say(
                "density of {name} not known: {usual_gravity} taken for how fast it answers",
                name=species.name,
                usual_gravity=USUAL_GRAVITY,
            ),
        )
    return replace(
        known,
        width=_course(width, width + moved.width_change_mm, *(width + end for end in moved.width_range_mm)),
        thickness=_course(
            thickness,
            thickness + moved.thickness_change_mm,
            *(thickness + end for end in moved.thickness_range_mm),
        ),
        cup=cup,
        section=moved,
        twist=_twist(known, species, rings),
        notes=(*known.notes, *notes, *(flag for flag in moved.flags if flag not in UNTOLD)),
    )


def _twist(known: SolvedPart, species: Species, rings: Rings) -> Twist | None:
    """Twist since the part was last flat, driest and wettest; None where nothing was said that could tell it."""
    part, days = known.part, known.mc_days
    flattened = part.flattened_mc.value
    nothing_said = rings.slope is None and rings.far_end is None
    if rings.pith_mm is None or flattened is None or days is None or nothing_said:
        return None
    frame = part.frame
    try:
        board = Board.from_rings(
            species, frame.width_mm, frame.thickness_mm, rings, part.name, length_mm=frame.length_mm
        )
        return board_twist(board, days[[known.driest_day, known.wettest_day]] - flattened)
    except InputError:
        return None  # it holds its pith, which is told elsewhere


def _between(drawn: float, one: Floats, other: Floats) -> Course:
    return _course(drawn, None, drawn + np.minimum(one, other), drawn + np.maximum(one, other))


def with_likely_radius(rings: Rings, width: float, thickness: float) -> tuple[Rings, tuple[str, ...]]:
    """The rings with the likely radii where none was said, and the note that says so."""
    if rings.pith_mm is not None or rings.radius_range_mm is not None:
        return rings, ()
    low = max(LIKELY_RADII_MM[0], 0.51 * width, 0.51 * thickness)  # the pith is not in the board
    high = max(LIKELY_RADII_MM[1], 2 * low)
    return replace(rings, radius_range_mm=(low, high)), (RADIUS_NOTE,)


def _cup(
    part: Part, species: Species, rings: Rings, moved: SectionMovement, mc: Floats, face_difference: Floats
) -> Course | None:
    """Cup from the rings since the part was last flat, and from one face being damper than the other."""
    flattened = part.flattened_mc.value
    if flattened is None or moved.cup_range_mm is None:
        return None
    width, thickness = part.frame.width_mm, part.frame.thickness_mm
    ringed = moved
    if flattened != part.fitted_mc.value:
        strains = [species.strain(way, flattened, mc) for way in ("radial", "tangential")]
        ringed = section_movement(width, thickness, rings, *strains)
    if ringed.cup_range_mm is None:
        return None
    coefficient = strain_at_ring_angle(
        species.radial_coefficient, species.tangential_coefficient, ringed.ring_angle_degrees
    )
    uneven = crown_mm(width, gradient_curvature(coefficient, face_difference, thickness))
    least, most = (end + uneven for end in ringed.cup_range_mm)
    value = None if ringed.cup_mm is None else ringed.cup_mm + uneven
    return _course(0.0, value, least, most)
