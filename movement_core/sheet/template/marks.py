"""What a drilling template shows, in mm from the datum: x from the datum end, y from the datum edge as it is today.

Holes in the top stand where the screws are today. Slots, recesses, mortises and grooves are in the frame, which stays;
they too are told where they are today, seen from the top's edge. Looked at from below, x runs right and y runs down.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from movement_core.holding.plan_model import Plan
from movement_core.piece.hardware_bodies import BOX, CYLINDER, Body, Hardware
from movement_core.piece.top_place import TopPlace
from movement_core.piece.top_plan import TopPlans
from movement_core.sheet.datum import between_shoulders

Point = tuple[float, float]
ARC_STEPS = 24  # chords of a half circle: off by less than 0.03 mm at 10 mm radius
SAME_NUMBER = ("from_end_mm", "from_edge_today_mm")


@dataclass(frozen=True)
class CutOutline:
    """Closed outline of something cut in the frame. ``purpose``: slot, hole, recess, mortise, groove or block."""

    purpose: str
    number: int
    points: tuple[Point, ...]


@dataclass(frozen=True)
class ScrewMark:
    """One fastener. ``place`` : of its screw today. ``hole_mm`` : of the hole in the top; None where it has none."""

    number: int
    kind: str
    rail: str
    place: Point
    hole_mm: float | None


@dataclass(frozen=True, eq=False)
class TemplateMarks:
    """All that is drawn of one plan. ``outline``, ``glue_lines`` : of the top as it is today.

    ``between_shoulders`` : whether tongues or tenons reach beyond the length.
    """

    name: str
    datum: Mapping[str, str]
    length_mm: float
    width_today_mm: float
    screws: tuple[ScrewMark, ...]
    cuts: tuple[CutOutline, ...]
    outline: tuple[Point, ...]
    glue_lines: tuple[float, ...]
    rails: tuple[tuple[Point, ...], ...]
    refused: tuple[str, ...]
    between_shoulders: bool = False


def template_marks(
    plans: TopPlans, plan: Plan, entry: Mapping[str, Any], hardware: Hardware
) -> TemplateMarks:
    """The marks of a plan. ``entry``: of ``plans_entry``. ``hardware``: of ``hardware_of`` for the same plan."""
    found, place = plans.found, plans.found.place
    assert found.strain is not None and found.top is not None  # or there were no plans
    strain, fixed, low = found.strain, plans.wish.fixed_mm, place.lines_mm[0]
    edge = low + float(strain.moved("today", low, fixed))

    def still(point: Point) -> Point:
        """A place of the frame, (along, across)."""
        return (point[0] + place.length_mm / 2, point[1] - edge)

    def moved(point: Point) -> Point:
        """A place of the top, which has moved since it was fitted."""
        within = min(max(point[1], low), place.lines_mm[-1])
        return still((point[0], point[1] + float(strain.moved("today", within, fixed))))

    half = (place.length_mm / 2, place.width_mm / 2)
    box = ((-half[0], -half[1]), (half[0], -half[1]), (half[0], half[1]), (-half[0], half[1]))
    boards = {board.part.key for board in place.boards}
    holes = {cut.number: cut.body.size_mm[0] for cut in hardware.cuts if cut.number and cut.part in boards}
    aside = {marker.number: dict(marker.own_figures) for marker in hardware.markers if marker.own_figures}
    told = next(one for one in entry["plans"] if one["kind"] == plan.kind)["fasteners"]
    screws = []
    for number, (placed, fastener) in enumerate(zip(plan.placed, told), 1):
        here = still((placed.place_mm[0], placed.place_mm[1] + placed.today_mm))
        if number in aside:
            x, y = (aside[number][word] for word in SAME_NUMBER)
            assert x is not None and y is not None
            here = (x, y)
        screws.append(ScrewMark(number, fastener["kind"], placed.rail, here, holes.get(number)))
    rails = {rail.name for rail in found.top.rails}
    keys = {one.solved.part.key for one in place.under if one.name in rails}
    cuts = [
        CutOutline(cut.purpose, cut.number, tuple(still(point) for point in body_outline(cut.body, place)))
        for cut in hardware.cuts
        if cut.part in keys
    ]
    for marker in hardware.markers:
        if marker.kind != "block":
            continue
        for body, purpose in ((marker.bodies[0], "block"), *((hole, "slot") for hole in marker.holes)):
            points = tuple(still(point) for point in body_outline(body, place))
            cuts.append(CutOutline(purpose, marker.number, points))
    return TemplateMarks(
        name=place.name,
        datum=dict(entry["datum"]),
        length_mm=place.length_mm,
        width_today_mm=moved((0.0, place.lines_mm[-1]))[1],
        screws=tuple(screws),
        cuts=tuple(cuts),
        outline=tuple(moved(corner) for corner in (place.outline_mm or box)),
        glue_lines=tuple(moved((0.0, line))[1] for line in place.lines_mm[1:-1]),
        rails=tuple(tuple(still(p) for p in rail.bearing().outline_mm) for rail in found.top.rails),
        refused=hardware.refused,
        between_shoulders=between_shoulders(place),
    )


def body_outline(body: Body, place: TopPlace) -> tuple[Point, ...]:
    """A body seen along the top's thickness, as (along, across) points."""
    a, _, s = place.axes
    centre = np.array(body.centre_mm) - place.origin
    middle = np.array([centre @ s, centre @ a])
    rows = np.array([[np.array(axis) @ s, np.array(axis) @ a] for axis in body.axes[:2]])
    x, y = body.size_mm[0] / 2, body.size_mm[1] / 2
    if body.shape == BOX:
        local = [(-x, -y), (x, -y), (x, y), (-x, y)]
    else:
        reach = 0.0 if body.shape == CYLINDER else x - y
        turns = [math.pi * i / ARC_STEPS for i in range(ARC_STEPS + 1)]
        local = [(reach + y * math.sin(t), -y * math.cos(t)) for t in turns]
        local += [(-reach - y * math.sin(t), y * math.cos(t)) for t in turns]
    points = np.array(local) @ rows + middle
    return tuple((float(along), float(across)) for along, across in points)
