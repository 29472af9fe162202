"""Screws that pass a rail or a batten, and where all hardware of a top is gathered."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from movement_core.holding.capacity import LEAVE_MM, choose_screw
from movement_core.holding.fasteners import ACROSS, STEEL, Kind
from movement_core.holding.metal_base import INSERT_LENGTHS_MM
from movement_core.holding.travel import Slot
from movement_core.piece.hardware_bodies import OPEN_MM, Bench, Body, CutBody, Marker, Point
from movement_core.piece.top_place import Near
from movement_core.wording import say

# Sizes of our own choice for what is drawn and cut, mm.
PILOT_SHARE = 0.7  # of the shank: lead hole in hardwood (common practice, from memory)
WASHER_EDGE_MM = 3.5  # of a washer on either side of its slot (own)
WASHER_MM = 1.2
LEAST_BESIDE_MM = 2.0  # wood to leave beside a slot or recess, else it is not cut (own)
INSERT_MM = 9.0  # diameter of a threaded insert (common practice)


@dataclass(eq=False)
class Site:
    """Where hardware is gathered: the top's bench, and what has come together so far."""

    bench: Bench
    thickness_mm: float
    markers: list[Marker] = field(default_factory=list)
    cuts: list[CutBody] = field(default_factory=list)
    refused: list[str] = field(default_factory=list)

    def cut(
        self, purpose: str, part: str, where: str, number: int, body: Body, blind: Point | None = None
    ) -> None:
        name = (
            f"{purpose.capitalize()} {number} in {where}" if number else f"{purpose.capitalize()} in {where}"
        )
        self.cuts.append(CutBody(name, purpose, part, number, body, blind))

    def refuse(self, sentence: str) -> None:
        self.refused.append(sentence)

    def hole_in_top(self, number: int, along: float, across: float, depth: float, diameter: float) -> None:
        """A blind hole up into the boards that it touches; never nearer than ``LEAVE_MM`` to the show face."""
        if depth > self.thickness_mm - LEAVE_MM + 1e-9:
            self.refuse(
                say(
                    "hole {number}: {depth:.1f} mm deep in a top of {thick:.1f} mm comes too near to the show face",
                    number=number,
                    depth=depth,
                    thick=self.thickness_mm,
                )
            )
            return
        lines, boards = self.bench.place.lines_mm, self.bench.place.boards
        for low, high, board in zip(lines, lines[1:], boards):
            if low - diameter / 2 < across < high + diameter / 2:
                body = self.bench.cylinder(along, across, -OPEN_MM, depth, diameter)
                inside = min(max(across, low + 0.5), high - 0.5)
                behind = self.bench.point(along, inside, depth + LEAVE_MM / 2)
                self.cut("hole", board.part.key, board.part.name, number, body, behind)


@dataclass(frozen=True, eq=False)
class Bar:
    """A rail or batten that a screw passes: its part, its top and bottom below the underside, and its breadth."""

    key: str
    name: str
    top: float
    bottom: float
    breadth: float
    runs: str

    @property
    def depth(self) -> float:
        return self.top - self.bottom


@dataclass(frozen=True)
class Passing:
    """A screw that passes a bar: its number, place as fitted, travel there, slot, shank, what it passes at most."""

    number: int
    along: float
    across: float
    least: float
    today: float
    most: float
    slot: Slot | None
    shank: float
    through: float


def bar_of(one: Near, rail_top: float, breadth: float, runs: str) -> Bar:
    return Bar(one.solved.part.key, one.name, rail_top, float(one.low[2]), breadth, runs)


def beside_mm(bar: Bar, screw: Passing) -> float:
    """Wood that is left of a bar on either side of a screw's slot, and of the recess of its washer, mm."""
    length, width = _hole(screw)
    if bar.depth > screw.through + 1e-6:
        length, width = _recess(screw)
    return (bar.breadth - (width if bar.runs == ACROSS else length)) / 2


def _hole(screw: Passing) -> tuple[float, float]:
    """Length and width of what the shank passes."""
    return (screw.slot.length_mm, screw.slot.width_mm) if screw.slot else (screw.shank, screw.shank)


def _recess(screw: Passing) -> tuple[float, float]:
    """Length and width of what the washer slides in."""
    wide = washer_mm(screw.shank) + 1.0
    return wide + (screw.most - screw.least if screw.slot else 0.0), wide


def washer_mm(shank: float) -> float:
    """Diameter of the washer that covers a screw's slot on both sides."""
    return shank + 0.5 + 2 * WASHER_EDGE_MM


def through_bar(site: Site, kind: Kind, bar: Bar, screw: Passing, word: str) -> None:
    """A screw with its washer through a slot, or a plain hole, in a bar; the head lies in a recess of a deep one."""
    through = min(screw.through, bar.depth)
    where = f"{word} {screw.number} on {bar.name}" if screw.number else f"{word} on {bar.name}"
    shapes = screw_shapes(site, kind, screw, bar.top - through, through, where)
    if not shapes:
        return
    site.markers.append(Marker(capital(where), kind.kind, screw.number, shapes))
    left = beside_mm(bar, screw)
    if left < LEAST_BESIDE_MM:
        site.refuse(
            say(
                "{bar} is {breadth:.0f} mm broad: a slot {length:.1f} mm long with room for its washer leaves "
                "{left:.1f} mm beside it, so it is not cut",
                bar=bar.name,
                breadth=bar.breadth,
                length=_hole(screw)[0],
                left=max(left, 0.0),
            )
        )
        return
    under, level, bench = bar.depth > through + 1e-6, bar.top - through, site.bench
    low = level - (0.1 if under else OPEN_MM)  # into its recess, so that no skin is left between the two
    middle = screw.across + (screw.least + screw.most) / 2
    bottom, (long, wide) = bar.bottom - OPEN_MM, _recess(screw)
    if screw.slot:
        hole = bench.slot(screw.along, middle, low, bar.top + OPEN_MM, *_hole(screw))
        site.cut("slot", bar.key, bar.name, screw.number, hole)
    else:
        hole = bench.cylinder(screw.along, screw.across, low, bar.top + OPEN_MM, screw.shank)
        site.cut("hole", bar.key, bar.name, screw.number, hole)
    if under and screw.slot:
        room = bench.slot(screw.along, middle, bottom, level, long, wide)
        site.cut("recess", bar.key, bar.name, screw.number, room)
    elif under:
        room = bench.cylinder(screw.along, screw.across, bottom, level, wide)
        site.cut("recess", bar.key, bar.name, screw.number, room)


def screw_shapes(
    site: Site, kind: Kind, screw: Passing, level: float, through: float, where: str
) -> tuple[Body, ...]:
    """Shank, washer and head of a screw as it sits today, its hole in the top added; empty where none fits.

    ``level`` : where its washer bears. ``through`` : what it passes before the top.
    """
    inside = into_top(site, kind, through)
    if inside is None:
        site.refuse(
            say(
                "{where}: no stock screw stays inside the top of {thick:.1f} mm",
                where=where,
                thick=site.thickness_mm,
            )
        )
        return ()
    bench, today, shank = site.bench, screw.across + screw.today, screw.shank
    head = level - WASHER_MM
    shapes = [
        bench.cylinder(screw.along, today, head - 0.1, inside, shank),
        bench.cylinder(screw.along, today, head, level, washer_mm(shank)),
        bench.cylinder(screw.along, today, head - 0.6 * shank, head, 2 * shank),
    ]
    diameter, deep = PILOT_SHARE * shank, inside
    if kind.shape == STEEL:
        diameter, deep = INSERT_MM, inside + 1.0
        shapes.append(bench.cylinder(screw.along, today, 0.0, inside, INSERT_MM))
    site.hole_in_top(screw.number, screw.along, screw.across, deep, diameter)
    return tuple(shapes)


def into_top(site: Site, kind: Kind, through: float) -> float | None:
    """How deep the longest stock screw (or insert) that stays inside reaches into the top, mm."""
    if kind.shape == STEEL:
        fitting = [length for length in INSERT_LENGTHS_MM if length + 1.0 <= site.thickness_mm - LEAVE_MM]
        return float(max(fitting)) if fitting else None
    screw = choose_screw(replace(kind, through_mm=through), site.thickness_mm)
    return None if screw is None else screw.length_mm - through


def capital(text: str) -> str:
    return text[:1].upper() + text[1:]
