"""Fasteners that reach into the side or the top of a rail: wooden buttons, clips, figure-eight plates."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.holding.fasteners import BUTTON, CLIP, GROOVES_MM, Kind, find_kind, no_room_for_groove
from movement_core.holding.plan_model import Placed, Plan
from movement_core.holding.rails import Rail
from movement_core.holding.travel import INSTALLATION_MM
from movement_core.piece.hardware_bodies import OPEN_MM, Marker
from movement_core.piece.hardware_screws import PILOT_SHARE, Site, capital, into_top
from movement_core.piece.top_place import Near
from movement_core.wording import say

# Sizes of our own choice for what is drawn and cut, mm.
BUTTON_WIDTH_MM, BUTTON_BEHIND_MM = 30.0, 13.0  # along the rail; behind the screw (common practice)
BUTTON_DROP_MM, BUTTON_GROOVE_MM = GROOVES_MM[BUTTON]
CLIP_DROP_MM, CLIP_GROOVE_MM = GROOVES_MM[CLIP]
TONGUE_MM, CLIP_WIDTH_MM = 5.5, 20.0  # height of a button's tongue; of a clip along the rail
DISC_MM, DISC_ROOM_MM, NECK_MM = 16.0, 1.0, 8.0  # of a figure-eight plate; room about it in its recess (own)
RAIL_SCREW_MM = 20.0  # of a figure-eight plate's screw into its rail (own)


@dataclass(frozen=True, eq=False)
class Side:
    """The inner face of a rail at a fastener: x runs along the rail, y into the frame; from the panel's middle.

    ``along`` and ``out`` are unit vectors (along, across); ``face`` is where the inner face lies along ``out``.
    """

    along: tuple[float, float]
    out: tuple[float, float]
    face: float

    def turned(self, point: tuple[float, float]) -> tuple[float, float]:
        """A place (along, across) as (x, y) of this frame."""
        return (
            point[0] * self.along[0] + point[1] * self.along[1],
            point[0] * self.out[0] + point[1] * self.out[1],
        )


def side_of(rail: Rail, placed: Placed) -> Side:
    centre = np.array(rail.at(placed.from_rail_start_mm))
    out = np.array(rail.at(placed.from_rail_start_mm, 1.0)) - centre
    along = (float(out[1]), -float(out[0]))  # (along, out, up) is right-handed
    return Side(along, (float(out[0]), float(out[1])), float(out @ centre) + rail.breadth_mm / 2)


def _sway(side: Side, placed: Placed) -> tuple[float, float, float]:
    """Travel along the rail: least, today, most, in the rail's own x."""
    ends = sorted((placed.least_mm * side.along[1], placed.most_mm * side.along[1]))
    return ends[0], placed.today_mm * side.along[1], ends[1]


def _screwed(site: Site, kind: Kind, where: str) -> float | None:
    """How far a stock screw goes into the top, mm; None, and told, where none stays inside."""
    inside = into_top(site, kind, kind.through_mm)
    if inside is None:
        site.refuse(
            say(
                "{where}: no stock screw stays inside the top of {thick:.1f} mm",
                where=where,
                thick=site.thickness_mm,
            )
        )
    return inside


def tongued(site: Site, number: int, kind: Kind, placed: Placed, rail: Rail, one: Near) -> None:
    """A wooden button in its mortise, or a clip; the grooves of clips run along the rail, see ``clip_grooves``."""
    side, bench = side_of(rail, placed), site.bench
    where = f"{kind.kind} {number} on {rail.name}"
    inside = _screwed(site, kind, where)
    if inside is None:
        return
    along, across = placed.place_mm
    x, y = side.turned((along, across + placed.today_mm))
    assert kind.groove_mm is not None
    engaged = placed.engaged.today_mm if placed.engaged else kind.groove_mm - 2.0
    tip = side.face - engaged
    shank = bench.cylinder(along, across + placed.today_mm, -kind.through_mm, inside, kind.shank_mm)
    head = bench.cylinder(along, across + placed.today_mm, -kind.through_mm - 2.5, -kind.through_mm, 8.0)
    if kind.shape == BUTTON:
        half, low = BUTTON_WIDTH_MM / 2, -BUTTON_DROP_MM - TONGUE_MM
        shoulder = tip + kind.groove_mm + 2.0
        shapes = [
            bench.turned_box(side.along, (x - half, shoulder, low), (x + half, y + BUTTON_BEHIND_MM, 0.0)),
            bench.turned_box(side.along, (x - half, tip, low), (x + half, shoulder, -BUTTON_DROP_MM)),
        ]
    else:
        half, plate = CLIP_WIDTH_MM / 2, kind.through_mm
        step = side.face + 2.0
        low = -CLIP_DROP_MM - plate
        shapes = [
            bench.turned_box(side.along, (x - half, step, -plate), (x + half, y + 8.0, 0.0)),
            bench.turned_box(side.along, (x - half, step, low), (x + half, step + plate, 0.0)),
            bench.turned_box(side.along, (x - half, tip, low), (x + half, step + plate, -CLIP_DROP_MM)),
        ]
    wooden = kind.shape == BUTTON
    site.markers.append(Marker(capital(where), kind.kind, number, (*shapes, shank, head), wooden=wooden))
    site.hole_in_top(number, along, across, inside, PILOT_SHARE * kind.shank_mm)
    if kind.shape == BUTTON and _deep_enough(site, rail, one, kind):
        least, _, most = _sway(side, placed)
        x0, _ = side.turned(placed.place_mm)
        room = BUTTON_WIDTH_MM / 2 + INSTALLATION_MM / 2
        top = rail.height_mm - BUTTON_DROP_MM
        low_corner = (x0 + least - room, side.face - kind.groove_mm, top - BUTTON_GROOVE_MM)
        mortise = bench.turned_box(side.along, low_corner, (x0 + most + room, side.face + OPEN_MM, top))
        site.cut("mortise", one.solved.part.key, rail.name, number, mortise)


def _deep_enough(site: Site, rail: Rail, one: Near, kind: Kind) -> bool:
    """Whether a rail has the wood for a groove in its inner face; refuses with words where not."""
    too_small = no_room_for_groove(kind, rail.breadth_mm, rail.height_mm - float(one.low[2]))
    if too_small:
        site.refuse(say("{rail}: {why}; not cut", rail=rail.name, why=too_small))
    return not too_small


def clip_grooves(site: Site, plan: Plan, rails: dict[str, Rail], near: dict[str, Near]) -> None:
    """One groove a rail for each kind of clip on it, from its first to its last."""
    for name, clip in dict.fromkeys((p.rail, p.kind) for p in plan.placed if find_kind(p.kind).shape == CLIP):
        rail, one, kind = rails[name], near[name], find_kind(clip)
        if not _deep_enough(site, rail, one, kind):
            continue
        assert kind.groove_mm is not None
        ends: list[float] = []
        for placed in (p for p in plan.placed if (p.rail, p.kind) == (name, clip)):
            side = side_of(rail, placed)
            least, _, most = _sway(side, placed)
            x, _ = side.turned(placed.place_mm)
            room = CLIP_WIDTH_MM / 2 + INSTALLATION_MM / 2
            ends += [x + least - room, x + most + room]
        top = rail.height_mm - CLIP_DROP_MM
        low = (min(ends), side.face - kind.groove_mm, top - CLIP_GROOVE_MM)
        groove = site.bench.turned_box(side.along, low, (max(ends), side.face + OPEN_MM, top))
        site.cut("groove", one.solved.part.key, rail.name, 0, groove)


def figure_eight(site: Site, number: int, kind: Kind, placed: Placed, rail: Rail, one: Near) -> None:
    """Two discs joined: one let into the rail's top and screwed to it, one screwed to the top, which it swings with."""
    side, bench = side_of(rail, placed), site.bench
    where = f"{kind.name} {number} on {rail.name}"
    inside = _screwed(site, kind, where)
    assert kind.arm_mm is not None
    if inside is None:
        return
    along, across = placed.place_mm
    in_rail = (along - kind.arm_mm * side.out[0], across - kind.arm_mm * side.out[1])
    today = (along, across + placed.today_mm)
    arm = np.array(today) - in_rail
    length = float(np.hypot(*arm))
    unit = (float(arm[0] / length), float(arm[1] / length))
    start = in_rail[0] * unit[0] + in_rail[1] * unit[1]
    aside = -in_rail[0] * unit[1] + in_rail[1] * unit[0]
    plate = kind.through_mm
    low_corner = (start, aside - NECK_MM / 2, -plate)
    shapes = [
        bench.cylinder(*in_rail, -plate, 0.0, DISC_MM),
        bench.cylinder(*today, -plate, 0.0, DISC_MM),
        bench.turned_box(unit, low_corner, (start + length, aside + NECK_MM / 2, 0.0)),
        bench.cylinder(*today, -plate - 2.0, inside, kind.shank_mm),
        bench.cylinder(*in_rail, -plate - RAIL_SCREW_MM, 0.0, kind.shank_mm),
    ]
    site.markers.append(Marker(capital(where), kind.kind, number, tuple(shapes)))
    site.hole_in_top(number, along, across, inside, PILOT_SHARE * kind.shank_mm)
    top = rail.height_mm
    key = one.solved.part.key
    recess = bench.cylinder(*in_rail, top - plate, top + OPEN_MM, DISC_MM + DISC_ROOM_MM)
    site.cut("recess", key, rail.name, number, recess)
    pilot = bench.cylinder(
        *in_rail, top - plate - RAIL_SCREW_MM, top - plate + 0.1, PILOT_SHARE * kind.shank_mm
    )
    site.cut("hole", key, rail.name, number, pilot)
