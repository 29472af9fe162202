"""What the joints of a piece bear when its parts may not move as they want to: forces and stresses through the year.

Elastic, and so rather too much: wood that is held for months relaxes, wood that is held while its moisture changes
relaxes more, and joints slip before they break. The relaxed figure takes off only what is published for steady
climate.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from movement_core.air.daily import DAYS, month_of_day
from movement_core.piece.contact.across import GapYear, gap_year
from movement_core.piece.contact.carried import Positions
from movement_core.piece.contact.found import Gap
from movement_core.piece.contact.joints import END, FREE, OVERLAP, POINT, UNTOLD, Joint
from movement_core.piece.contact.polygons import Floats
from movement_core.piece.contact.swelling import swelling_of
from movement_core.piece.restrained_network import PieceNetwork, PieceParts, Push, piece_network
from movement_core.piece.solve import SolvedPart
from movement_core.sources import RECALLED, Source
from movement_core.wording import say

# Share of a steady stress that is left after some months of constant strain, least and most.
RELAXED = (0.6, 0.7)
RELAXED_SOURCE = Source(
    "Wood Handbook, FPL-GTR-190", "ch. 5, stress relaxation: 60 to 70 % within a few months", RECALLED
)
SQUARE_ON = 0.7  # cosine: forces within 45° of square to a face pull or press, others shear (own judgement)
NO_FORCE_N = 1.0  # less than this is none
NO_STRESS_MPA = 1e-3
PULLED, PRESSED, SHEARED = "pulled", "pressed", "sheared"


@dataclass(frozen=True, eq=False)
class RestrainedJoint:
    """What one joint bears in its worst day of the year, elastic, before the wood gives way; stresses are means.

    Attributes
    ----------
    joint : of the piece. force_n : along the worst direction, what goes through it or, where its two halves pull
        against each other, what crosses its middle, whichever is more; None where it is not known, and ``reason``
        says why.
    direction : (3,) unit. way : ``pulled``, ``pressed`` or ``sheared``; "" without force.
    area_mm2, stress_mpa : the area that bears it, and force ÷ area; None where there is no area to speak of.
    strength_mpa : of the weaker wood that way, clear and at 12 %; None where no figure is known.
    month : 0–11 of that day; None without force. assumed : whether it is only a joint if someone made it one:
        unknown joints are taken as glued.
    """

    joint: Joint
    force_n: float | None
    direction: Floats | None = None
    way: str = ""
    area_mm2: float | None = None
    stress_mpa: float | None = None
    strength_mpa: float | None = None
    month: int | None = None
    assumed: bool = False
    reason: str = ""

    @property
    def relaxed_n(self) -> tuple[float, float] | None:
        """What is left of the force after some months, least and most, N."""
        return None if self.force_n is None else (RELAXED[0] * self.force_n, RELAXED[1] * self.force_n)


@dataclass(frozen=True, eq=False)
class RestrainedPart:
    """Stress across the grain of one part, over all its section and days, elastic, MPa.

    ``tension_mpa`` and ``compression_mpa`` ≥ 0 along its width, with months 0–11 (None without stress); the strengths
    of its wood, None where unknown. All None where the part's movement is not known or it is no wood.
    """

    tension_mpa: float | None
    tension_month: int | None
    compression_mpa: float | None
    compression_month: int | None
    tension_strength_mpa: float | None
    compression_strength_mpa: float | None


@dataclass(frozen=True, eq=False)
class HeldPositions(Positions):
    """Positions of parts that are also kept from straining.

    ``kept`` (parts, 3, 366) strains along their own axes between ``low_mm`` and ``high_mm``, beyond the free ones.
    """

    axes: Floats
    centre: Floats
    kept: Floats
    low_mm: Floats
    high_mm: Floats
    at_zero_mm: Floats  # (parts, 366, 3) shift of each part's own zero

    def between(self, one: int, other: int, point: Floats | None = None) -> Floats:
        """(366, 3) shift of the other part less that of the one, at a point, beyond their free swelling about their
        middles; without a point, of their middles."""
        return np.asarray(self._at(other, point) - self._at(one, point))

    def _at(self, part: int, point: Floats | None) -> Floats:
        if point is None:
            return np.asarray(self.shift_mm[part])
        own = self.axes[part] @ (point - self.centre[part])
        inside = np.clip(own, self.low_mm[part], self.high_mm[part])
        return np.asarray(self.at_zero_mm[part] + (self.kept[part] * inside[:, None]).T @ self.axes[part])


@dataclass(frozen=True, eq=False)
class Restrained:
    """A whole piece with its forces.

    Attributes
    ----------
    joints : one for each joint of the piece, in that order. parts : one for each part, by the joints known to hold;
        parts_if_solid : were every unknown joint glued.
    positions : where the parts are by the joints known to hold, unknown ones carrying along and straining nothing, and
        nothing stopped; for the gaps.
    caveats : what to say beside the figures.
    """

    joints: tuple[RestrainedJoint, ...]
    parts: tuple[RestrainedPart, ...]
    parts_if_solid: tuple[RestrainedPart, ...]
    positions: HeldPositions
    caveats: tuple[str, ...]

    @cached_property
    def _by_pair(self) -> Mapping[tuple[int, int], RestrainedJoint]:
        return {found.joint.parts: found for found in self.joints}

    def between(self, one: int, other: int) -> RestrainedJoint | None:
        """The joint of two parts, in either order."""
        return self._by_pair.get((min(one, other), max(one, other)))


def caveats() -> tuple[str, ...]:
    """What to say beside any figure of this file."""
    return (
        say(
            "elastic, before the wood gives way, with parts that neither turn nor bend and joints that do not slip; a "
            "stress is the mean over its area, and at the ends of a long glue line several times that"
        ),
        say(
            "held for months, wood keeps {low:.0f} % to {high:.0f} % of such a stress ({source}), and less where its "
            "moisture changes meanwhile, for which no figure is to be had",
            low=100 * RELAXED[0],
            high=100 * RELAXED[1],
            source=RELAXED_SOURCE,
        ),
    )


def restrained(solved: Sequence[SolvedPart], joints: Sequence[Joint], ground: int = 0) -> Restrained:
    """Forces of all joints of a piece through the year.

    Parameters
    ----------
    solved : the parts, as the joints number them. joints : between them. ground : the part that is taken to stay.
    """
    untold = any(joint.holds == UNTOLD and joint.kind != OVERLAP for joint in joints)
    known = [swelling_of(one) is not None for one in solved]
    pieces = PieceParts(solved, joints)
    as_if = piece_network(pieces, True, ground)
    told = piece_network(pieces, False, ground) if untold else as_if
    found = []
    for number, joint in enumerate(joints):
        assumed = joint.holds == UNTOLD and joint.kind != OVERLAP
        pushes = (as_if if assumed else told).pushes(number)
        found.append(_joint(solved, known, joint, pushes, assumed))
    notes = dict.fromkeys(note for network in (told, as_if) for note in network.notes)
    return Restrained(
        tuple(found),
        tuple(
            _part(one, told.stress_mpa[index] if known[index] else None) for index, one in enumerate(solved)
        ),
        tuple(
            _part(one, as_if.stress_mpa[index] if known[index] else None) for index, one in enumerate(solved)
        ),
        _positions(known, told),
        (*caveats(), *notes),
    )


def gap_years(solved: Sequence[SolvedPart], gaps: Sequence[Gap], forces: Restrained) -> tuple[GapYear, ...]:
    """Every gap through the year by the same network, of which both parts are known."""
    years = (gap_year(gap, solved[gap.first], solved[gap.second], positions=forces.positions) for gap in gaps)
    return tuple(year for year in years if year is not None)


def _positions(known: Sequence[bool], network: PieceNetwork) -> HeldPositions:
    parts = network.parts
    inside = np.clip(0.0, parts.low_mm, parts.high_mm)
    kept = network.kept
    at_zero = np.swapaxes(network.shift_mm, 1, 2)
    middle = at_zero + np.swapaxes(np.swapaxes(parts.axes, 1, 2) @ (kept * inside[:, :, None]), 1, 2)
    unknown = tuple(index for index, told in enumerate(known) if not told)
    return HeldPositions(
        middle,
        np.zeros(0),  # joints give here and wood with them: their forces tell what they bear
        unknown,
        axes=parts.axes,
        centre=parts.centre,
        kept=kept,
        low_mm=parts.low_mm,
        high_mm=parts.high_mm,
        at_zero_mm=at_zero,
    )


def _joint(
    solved: Sequence[SolvedPart], known: Sequence[bool], joint: Joint, pushes: Sequence[Push], assumed: bool
) -> RestrainedJoint:
    if joint.kind == OVERLAP:
        return RestrainedJoint(joint, None, reason=say("the two solids are drawn in the same place"))
    for index in joint.parts:
        if not known[index]:
            name = solved[index].part.name
            return RestrainedJoint(
                joint, None, assumed=assumed, reason=say("the movement of {name} is not known", name=name)
            )
    if not pushes:
        if joint.holds == FREE:
            return RestrainedJoint(joint, 0.0, reason=say("free to move, and nothing presses"))
        return RestrainedJoint(joint, None, assumed=assumed, reason=say("nothing tells where it holds"))
    axes = np.concatenate([solved[index].part.frame.axes for index in joint.parts])  # (6, 3)
    force = np.stack([push.force_n[:, :DAYS] for push in pushes])  # (pushes, 3, days) on the first part
    along = np.einsum("da,pas->dps", axes, force)
    through, crossing = along.sum(axis=1), _crossing(pushes, axes, along)
    borne = np.maximum(np.abs(through), np.abs(through) / 2 + np.abs(crossing))  # (6, days)
    axis, day = np.unravel_index(int(borne.argmax()), borne.shape)
    worst = float(borne[axis, day])
    if worst < NO_FORCE_N:
        return RestrainedJoint(joint, 0.0, assumed=assumed)
    sign = 1.0 if through[axis, day] >= 0 else -1.0
    share = np.maximum(sign * along[axis, :, day], 0.0)
    bearing = share > 1e-3 * share.max()
    normals = np.array([push.normal for push in pushes])
    square = normals @ axes[axis]
    how = SHEARED
    if share @ np.abs(square) > SQUARE_ON * share.sum():
        # The normal points out of the first part: a force on it along the normal pulls the two apart.
        how = PULLED if float((share * square).sum()) * sign > 0 else PRESSED
    areas = [push.area_mm2 for push, bears in zip(pushes, bearing.tolist()) if bears]
    area = None if joint.holds == POINT or None in areas else sum(one for one in areas if one is not None)
    reason = "" if area else say("fasteners bear it: there is no area to spread it over")
    return RestrainedJoint(
        joint,
        worst,
        sign * axes[axis],
        how,
        area,
        worst / area if area else None,
        _strength(solved, joint, how) if area else None,
        int(month_of_day(int(day))),
        assumed,
        reason,
    )


def _crossing(pushes: Sequence[Push], axes: Floats, along: Floats) -> Floats:
    """(6, days) what one half of a joint pulls against the other along each axis: Σ f s ÷ extent.

    Glue that ties two parts together along a line bears most near its two ends; this is the force in the middle.
    """
    places = np.array([push.point for push in pushes]) @ axes.T  # (pushes, 6)
    ends = np.concatenate([push.ends for push in pushes]) @ axes.T
    extent = np.ptp(ends, axis=0)
    middle = (ends.max(axis=0) + ends.min(axis=0)) / 2
    turning = np.einsum("pd,dps->ds", places - middle, along)
    return np.asarray(turning / np.where(extent > 1e-6, extent, np.inf)[:, None])


def _strength(solved: Sequence[SolvedPart], joint: Joint, how: str) -> float | None:
    """Of the weaker wood; None where a wood there has no figure, or it is end grain on end grain."""
    found = []
    for index, side in zip(joint.parts, joint.sides):
        species = solved[index].part.species.value
        if species is None:
            return None
        if species.kind != "wood" or (side == END and how != SHEARED):
            continue
        field = {
            PULLED: species.tension_perp_mpa,
            PRESSED: species.compression_perp_mpa,
            SHEARED: species.shear_mpa,
        }
        if field[how] is None:
            return None
        found.append(float(field[how] or 0.0))
    return min(found, default=None)


def _part(solved: SolvedPart, stress_mpa: Floats | None) -> RestrainedPart:
    """``stress_mpa`` (366,) stress along the width, tension positive; None where it is not known."""
    species = solved.part.species.value
    if species is None or species.kind != "wood" or stress_mpa is None:
        return RestrainedPart(None, None, None, None, None, None)
    days = stress_mpa[:DAYS]
    ends = []
    for stress in (days, -days):
        worst = float(stress.max())
        worst = worst if worst > NO_STRESS_MPA else 0.0
        ends.append((worst, int(month_of_day(int(stress.argmax()))) if worst > 0 else None))
    (tension, dry), (compression, wet) = ends
    return RestrainedPart(
        tension, dry, compression, wet, species.tension_perp_mpa, species.compression_perp_mpa
    )
