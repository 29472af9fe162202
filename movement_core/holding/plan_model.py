"""What an attachment plan is asked and what it answers, as frozen data."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from movement_core.errors import InputError
from movement_core.holding import cautions
from movement_core.holding.capacity import Capacity
from movement_core.holding.fasteners import SAFETY, Engagement
from movement_core.holding.held import Held
from movement_core.holding.model import Beam, Bearing, LoadCase, Plate, Point
from movement_core.holding.plate import Trial, prepare
from movement_core.holding.rails import Rail
from movement_core.holding.travel import Slot, WidthStrain
from movement_core.wording import say


@dataclass(frozen=True)
class Wish:
    """What the maker wants of a plan.

    Parameters
    ----------
    flatness_mm : most the top may be out of flat, in every load case.
    kinds : fastener kinds to compare, by their names in the table; one plan each.
    stand_in : kind for a rail where the wanted one cannot make the travel; None leaves that rail empty.
    fixed_mm : the fixed line across the top.
    trade_spacing : never fewer on a rail than the kind's widest spacing in trade practice.
    clear_mm : distance to keep from joints and rail ends.
    safety : ultimate over allowable pull.
    """

    flatness_mm: float
    kinds: tuple[str, ...] = ("button", "clip", "figure-eight", "slotted screw")
    stand_in: str | None = "slotted screw"
    fixed_mm: float = 0.0
    trade_spacing: bool = True
    clear_mm: float = 40.0
    safety: float = SAFETY

    def __post_init__(self) -> None:
        if not (math.isfinite(self.flatness_mm) and self.flatness_mm > 0):
            raise InputError(
                say("flatness {flatness!r} mm", flatness=self.flatness_mm),
                where=say("wish"),
                allowed=say("above 0 mm"),
            )
        if not self.kinds:
            raise InputError(
                say("no kinds to compare"), where=say("wish"), todo=say("name one or more fastener kinds")
            )


OUT_OF_FLAT, PULLED, UNSTEADY, NOWHERE, TOO_WEAK = "out of flat", "pulled", "unsteady", "nowhere", "too weak"


@dataclass(frozen=True)
class Problem:
    """Why a plan does not meet the wish: ``kind`` is one of ``OUT_OF_FLAT`` … ``TOO_WEAK``."""

    kind: str
    text: str


@dataclass(frozen=True)
class Placed:
    """One fastener of a plan. Places in the panel frame and from its rail's start; travel across the grain.

    ``pull_n`` is the greatest over the load cases; ``slot`` is None for kinds that need none, ``engaged`` (a
    tongue's depth in its groove) for all but tongues on long rails; ``at_work`` names
    the load cases in which it holds anything.
    """

    rail: str
    kind: str
    place_mm: Point
    from_rail_start_mm: float
    least_mm: float
    today_mm: float
    most_mm: float
    slot: Slot | None
    engaged: Engagement | None
    pull_n: float
    capacity: Capacity
    at_work: tuple[str, ...]


@dataclass(frozen=True, eq=False)
class Plan:
    """One way to hold the top.

    Attributes
    ----------
    kind : the wanted kind. found : whether it meets the wish in every load case, re-simulated as placed.
    placed : its fasteners. out_of_flat_mm : (case, mm) for every load case. worst_out_of_flat_mm, worst_pull_n.
    problems : why it does not meet the wish; empty if found. refused : kinds refused on rails, with the figure.
    notes : what it does in each season. what_would : re-simulated ways out, for a plan that is not found.
    unknown_links : parts of the load path without a published figure. cautions : to show with it.
    held : the re-simulation, one for each load case.
    """

    kind: str
    found: bool
    placed: tuple[Placed, ...]
    out_of_flat_mm: tuple[tuple[str, float], ...]
    worst_out_of_flat_mm: float
    worst_pull_n: float
    problems: tuple[Problem, ...]
    refused: tuple[str, ...]
    notes: tuple[str, ...]
    what_would: tuple[str, ...]
    unknown_links: tuple[str, ...]
    held: tuple[Held, ...]
    cautions: tuple[str, ...] = field(default=cautions.FOR_A_PLAN)


@dataclass(frozen=True)
class Top:
    """Everything about a top that its plans share.

    Parameters
    ----------
    plate : the panel. rails : that can take fasteners; each is also rested on. bearings : rested on only.
    strain : across the grain of its boards since fitting. cases : free shapes, one for each month or season.
    gravity_12 : specific gravity at 12 % moisture; None where unknown: then capacities are unknown.
    beams : battens and breadboard ends it already has.
    """

    plate: Plate
    rails: tuple[Rail, ...]
    strain: WidthStrain
    cases: tuple[LoadCase, ...]
    gravity_12: float | None = None
    bearings: tuple[Bearing, ...] = ()
    beams: tuple[Beam, ...] = ()

    def __post_init__(self) -> None:
        if not self.cases:
            raise InputError(
                say("no load case"),
                where=say("top"),
                todo=say("give the driest and the wettest month at least"),
            )
        if abs(self.strain.width_mm - self.plate.width_mm) > 1.0:
            raise InputError(
                say(
                    "strain given over {width:g} mm, the panel is {width2:g} mm wide",
                    width=self.strain.width_mm,
                    width2=self.plate.width_mm,
                ),
                where=say("top"),
            )

    def prepared(self) -> Trial:
        lines = sorted({line for case in self.cases for line in case.free.lines_mm[1:-1]})
        rests = [rail.bearing() for rail in self.rails] + list(self.bearings)
        return prepare(self.plate, rests, self.beams, glue_lines_mm=lines)
