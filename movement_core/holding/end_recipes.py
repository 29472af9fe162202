"""Recipes for what stiffens a top across its grain: breadboard ends, battens, cleats, sliding dovetails."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from movement_core.errors import InputError
from movement_core.holding.travel import (
    INSTALLATION_MM,
    Slot,
    Travel,
    WidthStrain,
    seen_from_the_mover,
    slot,
    travel,
)
from movement_core.wording import say

PEG_MM, SCREW_MM = 8.0, 4.5  # of breadboard ends; shank of a batten's screws (common practice)
GLUE_ZONE_MM = 25.0  # either side of the fixed line (common practice; others use 150 mm overall)


@dataclass(frozen=True)
class Tenon:
    """One tenon of a breadboard end.

    ``slack_front_mm`` and ``slack_back_mm`` are the gaps to leave today in the mortise toward −across and
    +across; ``peg`` is the slot in the tenon, None where the peg fits tight at the fixed line.
    """

    centre_mm: float
    width_mm: float
    slack_front_mm: float
    slack_back_mm: float
    peg: Slot | None


@dataclass(frozen=True)
class BreadboardEnd:
    """A breadboard end: what to cut and what it will show.

    Attributes
    ----------
    tongue_mm : thickness and depth of the tongue between the tenons.
    tenon_length_mm, tenons : the tenons from −across to +across.
    glue_from_mm, glue_to_mm : the only stretch to glue.
    proud_mm : (driest, today, wettest) how far the end stands out beyond the top's edge at the edge that moves
        most; negative: it is short of it. proud_at : "back" or "front".
    """

    tongue_thickness_mm: float
    tongue_depth_mm: float
    tenon_length_mm: float
    tenons: tuple[Tenon, ...]
    glue_from_mm: float
    glue_to_mm: float
    proud_mm: tuple[float, float, float]
    proud_at: str


def breadboard_end(
    strain: WidthStrain,
    thickness_mm: float,
    end_width_mm: float,
    *,
    fixed_mm: float = 0.0,
    peg_mm: float = PEG_MM,
    tenon_width_mm: float = 75.0,
    installation_mm: float = INSTALLATION_MM,
) -> BreadboardEnd:
    """Proportions and slack of a breadboard end, cut to the top's width as it is today.

    Parameters
    ----------
    strain : of the top's boards since fitting. thickness_mm : of the top. end_width_mm : of the end piece.
    fixed_mm : line where it is glued and pegged tight. tenon_width_mm : wanted; tenons wider than 100 mm are
        divided in practice. installation_mm : room for what was not cut true.

    Notes
    -----
    Tongue a third of the thickness; tenons two thirds of the end's width long, an odd number, about a tenon's
    width apart at most twice; pegs in slots, longer toward the edges (common practice, no source). The slack
    at each tenon and its peg slot are our own arithmetic from its travel.
    """
    if not 0 < tenon_width_mm <= 100:
        raise InputError(
            say("tenon {tenon_width:g} mm wide", tenon_width=tenon_width_mm),
            where=say("breadboard end"),
            allowed=say("above 0 to 100 mm"),
        )
    if thickness_mm <= 0 or end_width_mm <= 0:
        raise InputError(say("thickness and width of the end must be above 0"), where=say("breadboard end"))
    edges = (strain.lines_mm[0], strain.lines_mm[-1])
    margin = tenon_width_mm / 2 + thickness_mm  # keep the last mortise closed toward the end piece's own end
    room = strain.width_mm - 2 * margin
    count = math.floor(room / (2.5 * tenon_width_mm)) + 1 if room > 0 else 1
    count += 1 - count % 2
    if count == 1:
        centres = np.array([fixed_mm])
    else:
        centres = np.linspace(edges[0] + margin, edges[1] - margin, count)
        centres[np.argmin(np.abs(centres - fixed_mm))] = fixed_mm
    there = travel(strain, centres, fixed_mm)
    tenons = []
    for i, centre in enumerate(centres):
        at_fixed = abs(centre - fixed_mm) < 1e-9
        # As the top moves toward +across its tenon closes the gap on that side.
        front = float(there.today_mm[i] - there.least_mm[i]) + installation_mm / 2
        back = float(there.most_mm[i] - there.today_mm[i]) + installation_mm / 2
        hole = None if at_fixed else _peg_slot(there, i, peg_mm, installation_mm)
        slack = (0.0, 0.0) if at_fixed else (front, back)
        tenons.append(Tenon(float(centre), tenon_width_mm, *slack, hole))
    edge = travel(strain, np.array(edges), fixed_mm)
    worst = int(np.argmax(edge.most_mm - edge.least_mm))
    outward = 1.0 if worst == 1 else -1.0
    proud = tuple(
        float(-outward * (getattr(edge, f"{state}_mm")[worst] - edge.today_mm[worst]))
        for state in ("driest", "today", "wettest")
    )
    return BreadboardEnd(
        thickness_mm / 3,
        thickness_mm / 3,
        2 / 3 * end_width_mm,
        tuple(tenons),
        max(fixed_mm - GLUE_ZONE_MM, edges[0]),
        min(fixed_mm + GLUE_ZONE_MM, edges[1]),
        (proud[0], proud[1], proud[2]),
        "back" if worst == 1 else "front",
    )


def _peg_slot(there: Travel, i: int, peg_mm: float, installation_mm: float) -> Slot:
    """Slot in the moving tenon round a peg that stays."""
    moves = seen_from_the_mover(*(float(a[i]) for a in (there.least_mm, there.today_mm, there.most_mm)))
    return slot(*moves, peg_mm, installation_mm)


@dataclass(frozen=True)
class BattenScrew:
    """A screw of a batten: place across the top, travel, and its slot; None on the fixed line: a plain hole."""

    across_mm: float
    least_mm: float
    most_mm: float
    slot: Slot | None


@dataclass(frozen=True)
class Batten:
    """A batten, cleat or channel across the grain: its screws, and the room its ends need.

    ``end_room_mm`` is what must stay free beyond each of its ends where the top's edges could carry something
    against it; ``overhang_mm`` how far the top stands beyond the batten in driest and wettest, at the edge
    that moves most, if it was cut flush to ``inset_mm`` today.
    """

    screws: tuple[BattenScrew, ...]
    overhang_mm: tuple[float, float]


def batten(
    strain: WidthStrain,
    *,
    inset_mm: float = 30.0,
    fixed_mm: float = 0.0,
    shank_mm: float = SCREW_MM,
    most_spacing_mm: float = 150.0,
    end_mm: float = 25.0,
    installation_mm: float = INSTALLATION_MM,
) -> Batten:
    """Screws and slots of a batten that stays while the top moves: one plain hole on the fixed line.

    Parameters
    ----------
    strain : of the top's boards since fitting. inset_mm : from the top's edges to the batten's ends.
    most_spacing_mm : of the screws. end_mm : from the batten's ends to its last screws.
    """
    low, high = strain.lines_mm[0] + inset_mm + end_mm, strain.lines_mm[-1] - inset_mm - end_mm
    if not low <= fixed_mm <= high:
        raise InputError(
            say("fixed line at {fixed:g} mm", fixed=fixed_mm),
            where=say("batten"),
            allowed=say("{low:g} to {high:g} mm, where it has screws", low=low, high=high),
        )
    places = [fixed_mm]
    for end in (low, high):
        count = math.ceil(abs(end - fixed_mm) / most_spacing_mm)
        places += [fixed_mm + (end - fixed_mm) * k / count for k in range(1, count + 1)]
    across = np.array(sorted(places))
    there = travel(strain, across, fixed_mm)
    screws = tuple(
        BattenScrew(
            float(x),
            float(there.least_mm[i]),
            float(there.most_mm[i]),
            None
            if abs(x - fixed_mm) < 1e-9
            else slot(
                float(there.least_mm[i]),
                float(there.today_mm[i]),
                float(there.most_mm[i]),
                shank_mm,
                installation_mm,
            ),
        )
        for i, x in enumerate(across)
    )
    edge = travel(strain, np.array([strain.lines_mm[0], strain.lines_mm[-1]]), fixed_mm)
    outward = np.array([-1.0, 1.0])
    worst = int(np.argmax(edge.most_mm - edge.least_mm))
    over = [
        float(outward[worst] * (a[worst] - edge.today_mm[worst])) for a in (edge.driest_mm, edge.wettest_mm)
    ]
    return Batten(screws, (inset_mm + over[0], inset_mm + over[1]))


@dataclass(frozen=True)
class SlidingDovetail:
    """A sliding-dovetail batten in its housing.

    Attributes
    ----------
    depth_mm : of the housing, a third of the top's thickness at most (common practice).
    glue_from_mm, glue_to_mm : the only stretch to glue or pin.
    end_gap_mm : least room to leave today between the batten's end and the end of a stopped housing; the top
        shrinks onto it. housing_mm : (driest, wettest) length of the housing, if it is the top's width today.
    """

    depth_mm: float
    glue_from_mm: float
    glue_to_mm: float
    end_gap_mm: float
    housing_mm: tuple[float, float]


def sliding_dovetail(
    strain: WidthStrain,
    thickness_mm: float,
    *,
    fixed_mm: float = 0.0,
    installation_mm: float = INSTALLATION_MM,
) -> SlidingDovetail:
    """Housing depth, glue zone and end room of a batten that slides in a dovetailed housing across the top."""
    edges = np.array([strain.lines_mm[0], strain.lines_mm[-1]])
    there = travel(strain, edges, fixed_mm)
    inward = np.array([there.most_mm[0] - there.today_mm[0], there.today_mm[1] - there.least_mm[1]])
    now = 1 + strain.mean("today")
    lengths = tuple(float(strain.width_mm * (1 + strain.mean(s)) / now) for s in ("driest", "wettest"))
    return SlidingDovetail(
        thickness_mm / 3,
        max(fixed_mm - GLUE_ZONE_MM, float(edges[0])),
        min(fixed_mm + GLUE_ZONE_MM, float(edges[1])),
        float(inward.max()) + installation_mm / 2,
        (lengths[0], lengths[1]),
    )
