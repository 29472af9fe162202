"""Every pair of parts joined with their grains crossing, and what becomes of it: harmless and why, or how bad.

The parts' own strains differ across the joint; solid over a width, that difference splits the wood, or the glue.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import DAYS
from movement_core.holding.fixed_anyway import Fixed, if_fixed
from movement_core.holding.travel import WidthStrain
from movement_core.piece.captured import THIN_BOTTOM_MM
from movement_core.piece.contact.across import Differential, JointMovement
from movement_core.piece.contact.joints import (
    CONFIRMED,
    DOVETAILED,
    FREE,
    HOUSED,
    NEAR,
    OVERLAP,
    PLAY_MM,
    POINT,
    TENONED,
    UNTOLD,
    Joint,
)
from movement_core.piece.contact.meetings import SQUARE
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import swelling_of
from movement_core.piece.limits import limit
from movement_core.piece.solve import SolvedPart
from movement_core.piece.stiffness import board_stiffness
from movement_core.wording import phrase, say

HARMLESS, SPLITS, IF_SOLID, UNKNOWN = "harmless", "splits", "if glued, splits", "not known"
APART_MM = 1.0  # cheeks further apart than this are those of two tenons (own judgement)
SAME_STRAIN = 1e-5  # strains closer than this do not differ
FREE_BECAUSE = {
    FREE: phrase("it is free to move"),
    POINT: phrase("it is fixed at one point, and the rest is free to move"),
}


@dataclass(frozen=True, eq=False)
class Crossing:
    """One joint across the grain.

    Attributes
    ----------
    movement : what the seasons do across it. verdict : one of the four above; ``reason`` says why.
    carrier, other : indices of the part that moves more across its grain at the joint, and of the other one.
    width_mm : of the joint across the carrier's grain, over all boards of a glued panel that it crosses.
    tenons_mm : of the tenons that it is judged with the width of each across that grain, in their order.
    least_mm, most_mm : movement over that width since fitting, of all days. month : 0–11, of the larger.
    fixed : stresses if it were solid, where the wood's stiffness is known.
    """

    movement: JointMovement
    verdict: str
    reason: str
    carrier: int
    other: int
    width_mm: float = 0.0
    least_mm: float = 0.0
    most_mm: float = 0.0
    month: int | None = None
    fixed: Fixed | None = None
    tenons_mm: tuple[float, ...] = ()

    @property
    def joint(self) -> Joint:
        return self.movement.joint

    @property
    def worst_mm(self) -> float:
        return max(-self.least_mm, self.most_mm)


@dataclass(frozen=True, eq=False)
class _Crossed:
    """A crossing before it is judged: its width, and least and most movement, since several are judged as one."""

    movement: JointMovement
    differential: Differential
    carrier: int
    other: int
    points: Floats

    @property
    def width_mm(self) -> float:
        return float(np.ptp(self.points @ self.differential.direction))

    @property
    def ends_mm(self) -> tuple[float, float]:
        course = self.differential.course
        factor = self.width_mm / self.differential.extent_mm if self.differential.extent_mm > 0 else 1.0
        sign = 1.0 if self.carrier == self.movement.joint.parts[0] else -1.0
        ends = sorted((sign * factor * float(v)) for v in (course.least_mm.min(), course.most_mm.max()))
        return min(ends[0], 0.0), max(ends[1], 0.0)


def crossings_of(
    parts: Sequence[SolvedPart],
    movements: Sequence[JointMovement],
    panel_of: Mapping[int, int],
    with_tops: Collection[frozenset[int]],
) -> tuple[Crossing, ...]:
    """Every joint across the grain, in the order of the joints.

    Parameters
    ----------
    parts : the solved parts, as the joints number them. movements : what the seasons do across each joint.
    panel_of : index of a board → number of the glued panel that it is part of: what crosses several of its boards
        is judged over all of them.
    with_tops : pairs that are judged elsewhere, with the top that one of them is part of.
    """
    found: list[tuple[int, Crossing]] = []
    crossed: dict[int, _Crossed] = {}
    for number, movement in enumerate(movements):
        joint = movement.joint
        if joint.kind in (NEAR, OVERLAP) or not joint.meeting.contacts or not _crosses(parts, joint):
            continue
        if not movement.differentials:
            missing = [parts[i].part.name for i in joint.parts if swelling_of(parts[i]) is None]
            reason = say("the movement of {names} is not known", names=say(" and ").join(missing))
            found.append((number, Crossing(movement, UNKNOWN, reason, *joint.parts)))
            continue
        one = _crossed(parts, movement)
        if one is not None:
            crossed[number] = one
    # Tenons are taken as glued, and what lies beside them, a tongue between two, say, is not: each is judged alone.
    groups: dict[tuple[int, int, bool], list[int]] = defaultdict(list)
    for number, one in crossed.items():
        tenoned = one.movement.joint.kind == TENONED
        groups[panel_of.get(one.carrier, -1 - number), one.other, tenoned].append(number)
    for numbers in groups.values():
        together = [crossed[number] for number in numbers]
        width = _width_of(together)
        tenons = _tenons_of(together)
        ends = [one.ends_mm for one in together]
        least, most = sum(low for low, _ in ends), sum(high for _, high in ends)
        for number in numbers:
            one = crossed[number]
            tops = frozenset(one.movement.joint.parts) in with_tops
            found.append((number, _judged(parts, one, width, least, most, tops, tenons)))
    return tuple(crossing for _, crossing in sorted(found, key=lambda item: item[0]))


def _crosses(parts: Sequence[SolvedPart], joint: Joint) -> bool:
    """Whether grains cross there, or solid wood meets what has no grain of its own."""
    kinds = []
    for index in joint.parts:
        species = parts[index].part.species.value
        kinds.append("wood" if species is None else species.kind)
    return joint.parallel is not True if kinds == ["wood", "wood"] else "wood" in kinds


def _crossed(parts: Sequence[SolvedPart], movement: JointMovement) -> _Crossed | None:
    """The worst direction in which wood moves across its grain there; None where nothing differs."""
    best: tuple[float, _Crossed] | None = None
    points = _contact_points(movement.joint)
    for one in movement.differentials:
        if one.extent_mm <= 0 or one.worst_mm / one.extent_mm < SAME_STRAIN:
            continue
        own = [_own_strain(parts[i], one.direction) for i in movement.joint.parts]
        across = [
            strain if _is_wood(parts[i]) and axis != 2 else -1.0
            for i, axis, strain in zip(movement.joint.parts, one.axes, own)
        ]
        if max(across) < 0:
            continue  # along the grain of both, or no wood
        place = int(np.argmax(across))
        carrier, other = movement.joint.parts[place], movement.joint.parts[1 - place]
        if best is None or one.worst_mm > best[0]:
            best = one.worst_mm, _Crossed(movement, one, carrier, other, points)
    return None if best is None else best[1]


def _contact_points(joint: Joint) -> Floats:
    """Points of everything that touches: of what sits between walls those alone, so that shoulders do not count."""
    walls = [wall.outline for wall in joint.meeting.walls]
    if walls and joint.kind in (TENONED, DOVETAILED):
        return np.concatenate(walls)
    return np.concatenate([np.concatenate(contact.outline) for contact in joint.meeting.contacts])


def _own_strain(solved: SolvedPart, direction: Floats) -> float:
    swelling = swelling_of(solved)
    if swelling is None:
        return 0.0
    span = swelling.along(direction)
    return float(np.maximum(np.abs(span.least), np.abs(span.most))[:DAYS].max())


def _is_wood(solved: SolvedPart) -> bool:
    species = solved.part.species.value
    return species is not None and species.kind == "wood"


def _width_of(together: Sequence[_Crossed]) -> float:
    points = np.concatenate([one.points for one in together])
    return float(np.ptp(points @ together[0].differential.direction))


def _tenons_of(together: Sequence[_Crossed]) -> tuple[float, ...]:
    """Width of each tenon across the grain, by their cheeks: those of one shoulder that stand apart are several."""
    direction = together[0].differential.direction
    spans = sorted(
        (float((wall.outline @ direction).min()), float((wall.outline @ direction).max()))
        for one in together
        if one.movement.joint.kind == TENONED
        for wall in one.movement.joint.meeting.walls
        if abs(float(wall.axis @ direction)) < SQUARE
    )
    merged: list[tuple[float, float]] = []
    for low, high in spans:
        if merged and low <= merged[-1][1] + APART_MM:
            merged[-1] = merged[-1][0], max(high, merged[-1][1])
        else:
            merged.append((low, high))
    return tuple(high - low for low, high in merged)


def _judged(
    parts: Sequence[SolvedPart],
    one: _Crossed,
    width: float,
    least: float,
    most: float,
    with_top: bool,
    tenons: tuple[float, ...],
) -> Crossing:
    joint = one.movement.joint
    fixed = _if_solid(parts[one.carrier], width, least, most)
    verdict, reason = _verdict(joint, width, max(-least, most), with_top)
    divided = len(tenons) > 1 and max(tenons) <= limit("tenon") and joint.origin != CONFIRMED
    if verdict == SPLITS and divided:
        verdict, reason = (
            IF_SOLID,
            say("the tenon is divided: whether every part of it is glued is not drawn"),
        )
    if joint.kind == HOUSED and joint.origin != CONFIRMED and not with_top:
        verdict, reason = _as_if_glued(parts, joint, width, max(-least, most)) or (verdict, reason)
    if verdict != HARMLESS and _is_veneer(parts[one.carrier], parts[one.other]):
        thick = parts[one.carrier].part.frame.thickness_mm
        verdict = HARMLESS
        reason = say(
            "veneer of {thick:.1f} mm follows what it is glued to (common practice, no source)", thick=thick
        )
    month = one.differential.worst_month
    return Crossing(
        one.movement, verdict, reason, one.carrier, one.other, width, least, most, month, fixed, tenons
    )


def _verdict(joint: Joint, width: float, worst: float, with_top: bool) -> tuple[str, str]:
    if with_top and joint.origin != CONFIRMED:
        return HARMLESS, say("judged with the top as a whole, and how it is held")
    if joint.holds in FREE_BECAUSE:
        return HARMLESS, f"{FREE_BECAUSE[joint.holds]}: {joint.reason}"
    if joint.kind == DOVETAILED and worst <= limit("moves across"):
        return (
            HARMLESS,
            say(
                "the grain runs round the corner, so both move together: {worst:.1f} mm apart at most",
                worst=worst,
            ),
        )
    if worst <= limit("moves across"):
        return HARMLESS, say("they move only {worst:.1f} mm apart", worst=worst)
    widest = limit("tenon") if joint.kind == TENONED else limit("glued across")
    if width <= widest:
        return (
            HARMLESS,
            say(
                "only {width:.0f} mm wide: up to {widest:.0f} mm may be solid (common practice, no source)",
                width=width,
                widest=widest,
            ),
        )
    return (IF_SOLID if joint.holds == UNTOLD else SPLITS), joint.reason


def _as_if_glued(
    parts: Sequence[SolvedPart], joint: Joint, width: float, worst: float
) -> tuple[str, str] | None:
    """The verdict on a shelf or divider that fills its groove, which may be glued there as well as not."""
    walls = [wall for wall in joint.meeting.walls if wall.inner == joint.meeting.inner]
    if joint.meeting.inner is None or not walls or worst <= limit("moves across"):
        return None
    frame = parts[joint.meeting.inner].part.frame
    thick = float(frame.size_mm.min())
    fills = all(
        wall.slack_mm <= PLAY_MM and float(np.ptp(wall.outline @ wall.axis)) >= thick - PLAY_MM
        for wall in walls
    )
    if not fills or thick < THIN_BOTTOM_MM or width <= limit("glued across"):
        return None
    name = parts[joint.meeting.inner].part.name
    return IF_SOLID, say(
        "{name} fills its groove and is thick for a panel that is left free: glue is not drawn", name=name
    )


def _is_veneer(board: SolvedPart, core: SolvedPart) -> bool:
    """Whether solid wood on what is no solid wood is thin enough to be glued to it."""
    return not _is_wood(core) and board.part.frame.thickness_mm <= limit("veneer")


def _if_solid(solved: SolvedPart, width: float, least: float, most: float) -> Fixed | None:
    species, angle = solved.part.species.value, solved.ring_angle_deg
    if species is None or angle is None or width <= 0:
        return None
    strain = WidthStrain.even(width, least / width, 0.0, most / width)
    stiff = board_stiffness(species, angle).elastic.e_across_mpa
    return if_fixed(strain, stiff, species.tension_perp_mpa)
