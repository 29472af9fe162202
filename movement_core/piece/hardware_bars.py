"""Hardware of battens and breadboard ends that are drawn: screws in slots, mortises, tenons with their peg slots."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.errors import HeartsideError
from movement_core.holding.capacity import LEAVE_MM
from movement_core.holding.end_recipes import PEG_MM, BreadboardEnd, batten, breadboard_end
from movement_core.holding.fasteners import ACROSS, find_kind
from movement_core.holding.travel import WidthStrain
from movement_core.piece.hardware_bodies import OPEN_MM, Body, Marker
from movement_core.piece.hardware_screws import Passing, Site, bar_of, through_bar
from movement_core.piece.top_place import Near
from movement_core.piece.tops import FoundTop
from movement_core.wording import say

PEG_SHARE = 0.4  # of a tenon's length, from its shoulder to its peg (common practice)
LEAST_CHEEK_MM = 2.0  # a peg must reach into the upper cheek by this (own)
TENON_ROOM_MM = 1.0  # at the bottom of a mortise (own)
DRAWN_IN_MM = 1.0  # an end that reaches this far into the top is drawn with its tenons


def add_battens(site: Site, found: FoundTop) -> None:
    """Screws and slots of every batten under the top, as ``bar_recipes`` tells them: the middle stays."""
    strain = found.top.strain if found.top else None
    assert strain is not None
    for one in found.place.battens:
        inset = max(0.0, strain.width_mm / 2 - float(one.high[1]), strain.width_mm / 2 + float(one.low[1]))
        try:
            made = batten(strain, inset_mm=inset)
        except HeartsideError as error:
            site.refuse(f"{one.name}: {error}")
            continue
        kind = find_kind("slotted screw")
        bar = bar_of(one, 0.0, float(one.high[0] - one.low[0]), ACROSS)
        along = float(one.low[0] + one.high[0]) / 2
        for screw in made.screws:
            today = float(strain.moved("today", [screw.across_mm], 0.0)[0])
            passing = Passing(
                0, along, screw.across_mm, screw.least_mm, today, screw.most_mm, screw.slot,
                kind.shank_mm, kind.through_mm,
            )  # fmt: skip
            through_bar(site, kind, bar, passing, "batten screw")


def add_ends(site: Site, found: FoundTop) -> None:
    """Tongue, tenons, mortises and pegs of every breadboard end, as ``bar_recipes`` tells them."""
    strain, place = found.top.strain if found.top else None, found.place
    assert strain is not None
    for one in place.ends:
        side = float(np.sign(one.low[0] + one.high[0]))
        shoulder = side * place.length_mm / 2
        reach = shoulder - float(one.low[0] if side > 0 else one.high[0])
        tip = place.tips_mm[1 if side > 0 else 0]
        if max(side * reach, tip) > DRAWN_IN_MM or one.name in place.no_shoulder:
            site.refuse(
                say(
                    "{end} is drawn with its tongue or tenons already: pegs and mortises are left as they are drawn",
                    end=one.name,
                )
            )
            continue
        try:
            made = breadboard_end(strain, place.thickness_mm, float(one.high[0] - one.low[0]), peg_mm=PEG_MM)
        except HeartsideError as error:
            site.refuse(f"{one.name}: {error}")
            continue
        _end(site, _End(one, side, shoulder, made), strain)


@dataclass(frozen=True, eq=False)
class _End:
    """One breadboard end: its part, the side of the top (−1, 1), where its inner face lies along, its recipe."""

    one: Near
    side: float
    shoulder: float
    made: BreadboardEnd


def _end(site: Site, end: _End, strain: WidthStrain) -> None:
    made, bench, thick = end.made, site.bench, site.thickness_mm
    key, name = end.one.solved.part.key, end.one.name
    low_up, high_up = (thick - made.tongue_thickness_mm) / 2, (thick + made.tongue_thickness_mm) / 2

    def outward(across: tuple[float, float], deep: float, start: float = 0.0) -> Body:
        ends = sorted((end.shoulder + end.side * start, end.shoulder + end.side * deep))
        return bench.box((ends[0], across[0], low_up), (ends[1], across[1], high_up))

    edges = float(strain.lines_mm[0]), float(strain.lines_mm[-1])
    moved = [float(v) for v in strain.moved("today", list(edges), 0.0)]
    tongue = outward((edges[0] + moved[0], edges[1] + moved[1]), made.tongue_depth_mm)
    groove = outward((float(end.one.low[1]) - OPEN_MM, float(end.one.high[1]) + OPEN_MM),
                     made.tongue_depth_mm + TENON_ROOM_MM, -OPEN_MM)  # fmt: skip
    site.cut("groove", key, name, 0, groove)
    tenons, peg_slots = [tongue], []
    for tenon in made.tenons:
        centre, half = tenon.centre_mm, tenon.width_mm / 2
        today = float(strain.moved("today", [centre], 0.0)[0])
        tenons.append(outward((centre + today - half, centre + today + half), made.tenon_length_mm))
        room = (centre + today - half - tenon.slack_front_mm, centre + today + half + tenon.slack_back_mm)
        site.cut("mortise", key, name, 0, outward(room, made.tenon_length_mm + TENON_ROOM_MM, -OPEN_MM))
        at = end.shoulder + end.side * PEG_SHARE * made.tenon_length_mm
        deep = thick - LEAVE_MM
        if deep < high_up + LEAST_CHEEK_MM:
            site.refuse(
                say(
                    "{end}: a top of {thick:.0f} mm leaves no room for a peg that stays below the show face; no peg",
                    end=name,
                    thick=thick,
                )
            )
            continue
        peg = bench.cylinder(at, centre, 0.0, deep, PEG_MM)
        site.markers.append(Marker(say("Peg in {end}", end=name), "peg", 0, (peg,), wooden=True))
        blind = bench.point(at, centre, deep + LEAVE_MM / 2)
        site.cut("hole", key, name, 0, bench.cylinder(at, centre, -OPEN_MM, deep, PEG_MM), blind)
        if tenon.peg is None:
            peg_slots.append(bench.cylinder(at, centre + today, low_up - OPEN_MM, high_up + OPEN_MM, PEG_MM))
        else:
            first = centre - tenon.peg.screw_today_mm + tenon.peg.length_mm / 2
            long, wide = tenon.peg.length_mm, tenon.peg.width_mm
            peg_slots.append(bench.slot(at, first, low_up - OPEN_MM, high_up + OPEN_MM, long, wide))
    title = say("Tongue and tenons for {end}", end=name)
    site.markers.append(Marker(title, "breadboard end", 0, tuple(tenons), tuple(peg_slots), wooden=True))
