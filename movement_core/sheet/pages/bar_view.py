"""Battens and breadboard ends in the picture of a top: outlines, names, and where their recipes screw, peg and glue."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain
from typing import Any

import numpy as np

from movement_core.piece.hardware_bars import PEG_SHARE
from movement_core.piece.top_place import Near, TopPlace
from movement_core.sheet.pages.boxes import Box, label_box, placed_free
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import PlannedTop
from movement_core.sheet.pages.model import (
    MIDDLE,
    NOTE,
    Arc,
    Area,
    Figure,
    Label,
    Paragraph,
    Pen,
    Point,
    Pointer,
    Shape,
    Strokes,
    Text,
)
from movement_core.sheet.pages.names import NAME_EM, isolated
from movement_core.wording import say

NAME_MM = 2.3
SCREW_MM, PEG_MM = 0.55, 0.7  # least radii of their signs
BEYOND_MM = 0.9  # a slot's sign stands out of its screw's or peg's by this at least
HATCH_MM = 0.8
LEAST_ROOM_MM = 0.6  # between a name and what else is drawn
SHORTER_EM = (NAME_EM, 16.0, 11.0, 7.0)  # a name is cut until it has room
HIDDEN = Pen("quiet", 0.15, (1.0, 0.6))


@dataclass(frozen=True, eq=False)
class Bar:
    """A batten or a breadboard end: its recipe, and where that stands in the JSON.

    ``side`` : −1 or 1, the end of the top that it is across; 0 for a batten. ``outline_mm`` : what one sees of it
    from above, (along, across) in the top's frame; of an end only what lies beyond the top's shoulder.
    ``shoulder_mm`` : where along that is; None where it is not found.
    """

    one: Near
    recipe: Mapping[str, Any]
    at: Pointer
    side: int
    outline_mm: tuple[Point, ...]
    shoulder_mm: float | None

    @property
    def places(self) -> Iterator[tuple[float, Pointer]]:
        """Where across its screws or tenons are, mm, and where that stands in the JSON."""
        for word in ("screws", "tenons"):
            for number, each in enumerate(self.recipe.get(word, ())):
                yield each["across_mm"], (*self.at, word, number, "across_mm")


def bars_of(top: PlannedTop, at: Pointer) -> tuple[Bar, ...]:
    """The battens of a top, then its breadboard ends. ``at``: where the top stands in the JSON."""
    place = top.place
    recipes = [(recipe, (*at, "recipes", i)) for i, recipe in enumerate(top.entry["recipes"])]
    split = len(place.battens)
    battens = [Bar(one, *told, 0, one.outline_mm, None) for one, told in zip(place.battens, recipes[:split])]
    return (*battens, *(_end(place, one, *told) for one, told in zip(place.ends, recipes[split:])))


def _end(place: TopPlace, one: Near, recipe: Mapping[str, Any], at: Pointer) -> Bar:
    side = 1 if one.low[0] + one.high[0] > 0 else -1
    if one.name in place.no_shoulder:
        return Bar(one, recipe, at, side, one.outline_mm, None)
    shoulder = side * place.length_mm / 2
    outline = tuple((side * max(side * along, side * shoulder), across) for along, across in one.outline_mm)
    return Bar(one, recipe, at, side, outline, shoulder)


@dataclass(frozen=True)
class Onto:
    """From a top's frame onto the paper: ``at`` takes (along, across), ``scale`` is mm on paper a mm."""

    at: Callable[[float, float], Point]
    scale: float

    def box(self, one: Point, other: Point) -> Box:
        """The box on paper between two corners of the top's frame."""
        (x0, y0), (x1, y1) = self.at(*one), self.at(*other)
        return min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)

    def bar_box(self, bar: Bar) -> Box:
        points = np.array(bar.outline_mm)
        low, high = points.min(axis=0), points.max(axis=0)
        return self.box((float(low[0]), float(low[1])), (float(high[0]), float(high[1])))


# ---- what is drawn --------------------------------------------------------------------------------------------


def bar_shapes(bar: Bar, place: TopPlace, onto: Onto) -> tuple[list[Shape], list[Box]]:
    """A bar with its marks, and the boxes that the marks take."""
    name, recipe = bar.one.name, bar.recipe
    corners = tuple(onto.at(*corner) for corner in bar.outline_mm)
    if bar.side == 0:
        shapes: list[Shape] = [Area(corners, "paper", Pen("quiet", 0.2), f"batten {name}")]
        along = float(bar.one.low[0] + bar.one.high[0]) / 2
        signs = [
            _sign(onto, along, screw, SCREW_MM, "ink", f"screw {number} of {name}")
            for number, screw in enumerate(recipe.get("screws", ()), 1)
        ]
    else:
        shapes = [Area(corners, "wood", Pen("ink", 0.3), f"breadboard end {name}")]
        signs = []
        if bar.shoulder_mm is not None and not recipe["why_not"]:
            hidden, signs = _joint(bar, bar.shoulder_mm, place, onto)
            shapes += hidden
    for sign, _ in signs:
        shapes += sign
    return shapes, [box for _, box in signs]


Sign = tuple[list[Shape], Box]


def _sign(onto: Onto, along: float, hole: Mapping[str, Any], radius: float, fill: str, name: str) -> Sign:
    """A screw or a peg, and its slot where it has one, the way it stands in it today."""
    (x, y), length = onto.at(along, hole["across_mm"]), hole["slot_length_mm"]
    low = high = radius
    shapes: list[Shape] = []
    if length:
        low = hole["screw_from_slot_end_today_mm"] * onto.scale
        high = length * onto.scale - low
        if min(low, high) < radius + BEYOND_MM:
            low = high = max(low, high, radius + BEYOND_MM)
        shapes.append(Strokes((((x, y - high), (x, y + low)),), Pen("quiet", 0.5), f"slot of {name}"))
    shapes.append(Arc((x, y), radius, Pen("ink", 0.2), fill=fill, id=name))
    return shapes, (x - radius, y - high, x + radius, y + low)


def _joint(bar: Bar, shoulder: float, place: TopPlace, onto: Onto) -> tuple[list[Shape], list[Sign]]:
    """Tongue, tenons and glue inside a breadboard end, and its pegs."""
    recipe, name = bar.recipe, bar.one.name

    def outward(share: float) -> float:
        return shoulder + bar.side * share

    def around(low: float, high: float, reach: float) -> tuple[Point, ...]:
        corners = ((shoulder, low), (outward(reach), low), (outward(reach), high), (shoulder, high))
        return tuple(onto.at(*corner) for corner in corners)

    long, tongue = recipe["tenon_length_mm"], outward(recipe["tongue_depth_mm"])
    edges = [-place.width_mm / 2]
    for tenon in recipe["tenons"]:
        edges += [tenon["across_mm"] - tenon["width_mm"] / 2, tenon["across_mm"] + tenon["width_mm"] / 2]
    edges.append(place.width_mm / 2)
    between = tuple(
        (onto.at(tongue, low), onto.at(tongue, high))
        for low, high in zip(edges[::2], edges[1::2])
        if high > low
    )
    shapes: list[Shape] = [Strokes(between, HIDDEN, f"tongue in {name}")]
    glue = (recipe["glue_from_mm"], recipe["glue_to_mm"])
    shapes.append(
        Strokes(
            _hatched(onto.box((shoulder, glue[0]), (outward(long), glue[1]))),
            Pen("ring", 0.2),
            f"glue in {name}",
        )
    )
    signs = []
    radius = max(PEG_MM, recipe["peg_mm"] / 2 * onto.scale)
    for number, tenon in enumerate(recipe["tenons"], 1):
        centre, wide = tenon["across_mm"], tenon["width_mm"]
        corners = around(centre - wide / 2, centre + wide / 2, long)
        shapes.append(Strokes((corners,), HIDDEN, f"tenon {number} in {name}"))
        signs.append(
            _sign(onto, outward(PEG_SHARE * long), tenon, radius, "paper", f"peg {number} in {name}")
        )
    return shapes, signs


def _hatched(box: Box) -> tuple[tuple[Point, Point], ...]:
    """Slanted lines, rising to the right, that fill a box."""
    left, top, right, bottom = box
    wide, high = right - left, bottom - top
    lines = []
    for start in np.arange(HATCH_MM / 2, wide + high, HATCH_MM * 2**0.5).tolist():
        low, far = (
            max(0.0, start - high),
            min(wide, start),
        )  # from the left edge or the bottom to the top or right
        lines.append(((left + low, top + start - low), (left + far, top + start - far)))
    return tuple(lines)


# ---- words ----------------------------------------------------------------------------------------------------


def bar_names(bars: Sequence[Bar], onto: Onto, taken: list[Box], frame: Box) -> tuple[list[Label], list[str]]:
    """Their names, in them or above; those for which there is no room. The boxes of names are added to ``taken``."""
    shapes: list[Label] = []
    left = []
    for bar in bars:
        for most in SHORTER_EM:
            found = _named(bar, onto.bar_box(bar), isolated(bar.one.name, most), taken, frame)
            if found is not None:
                shapes.append(found)
                taken.append(label_box(found))
                break
        else:
            left.append(bar.one.name)
    return shapes, left


def _named(bar: Bar, box: Box, name: str, taken: Sequence[Box], frame: Box) -> Label | None:
    """A name along its bar, else above it."""
    label = Label(Text(name), (0.0, 0.0), NAME_MM, MIDDLE, "quiet", id=f"name of {bar.one.name}")
    left, top, right, bottom = box
    inner = (left + LEAST_ROOM_MM, top + LEAST_ROOM_MM, right - LEAST_ROOM_MM, bottom - LEAST_ROOM_MM)
    wide = [(x0 - LEAST_ROOM_MM, y0, x1 + LEAST_ROOM_MM, y1) for x0, y0, x1, y1 in taken]
    down = [top + (bottom - top) * share for share in (0.5, 0.25, 0.75, 0.375, 0.625, 0.125, 0.875)]
    # From the outer side inward: tongues and tenons fill the inner part of an end.
    steps = np.arange(left, right, 0.3).tolist()
    across = sorted(steps, key=lambda x: -bar.side * x) if bar.side else sorted(
        steps, key=lambda x: abs(x - (left + right) / 2)
    )  # fmt: skip
    places = [(x, y) for x, y in chain.from_iterable([(x, y) for y in down] for x in across)]
    turned = Label(label.text, (0.0, 0.0), NAME_MM, MIDDLE, "quiet", turned=True, id=label.id)
    found = placed_free(turned, places, wide, inner)
    if found is not None:
        return found
    middle = (left + right) / 2
    half = (label_box(label)[2] - label_box(label)[0]) / 2
    beside = [min(max(x, frame[0] + half), frame[2] - half) for x in (middle, left + half, right - half)]
    return placed_free(label, [(x, top - far) for far in (2.0, 4.6) for x in beside], wide, frame)


def bar_note(bars: Sequence[Bar], left: Sequence[str]) -> list[Paragraph]:
    """What the signs of bars mean, and what is not drawn of them."""
    told = []
    if any(bar.recipe.get("screws") for bar in bars):
        told.append(
            say("On a batten a dot is a screw: with a stroke through it in a slot, alone in a plain hole.")
        )
    if any(bar.recipe.get("tenons") and bar.shoulder_mm is not None for bar in bars):
        told.append(
            say(
                "In a breadboard end tongue and tenons are dashed. A ring is a peg: with a stroke through it in a slot "
                "of its tenon, alone tight. Glue only where it is hatched."
            )
        )
    lost = [bar.one.name for bar in bars if bar.side and bar.shoulder_mm is None]
    if lost:
        told.append(
            say(
                "Tenons, pegs and glue are not drawn where the shoulder is not found: {names}.",
                names=", ".join(isolated(name) for name in lost),
            )
        )
    if left:
        told.append(
            say("No room in the picture to name {names}.", names=", ".join(isolated(name) for name in left))
        )
    return [Paragraph(Text(" ".join(told)), NOTE)] if told else []


def bar_distances(bars: Sequence[Bar], lengths: Lengths) -> list[tuple[float, Figure]]:
    """Where across their screws and tenons are, from the top's middle, each place once, ascending."""
    found: dict[str, tuple[float, Figure]] = {}
    for across, at in sorted(chain.from_iterable(bar.places for bar in bars)):
        figure = lengths.signed(across, at)
        found.setdefault(figure.shown, (across, figure))
    return list(found.values())


def bar_distances_told(bars: Sequence[Bar], unit: str, other: str) -> str:
    """What stands beside the top. ``other`` : the edge that positive places lie toward."""
    what = [say("screws of battens")] if any(bar.recipe.get("screws") for bar in bars) else []
    what += [say("tenons of breadboard ends")] if any(bar.recipe.get("tenons") for bar in bars) else []
    return say(
        "On the right, in {unit} from the middle of the top, + toward {other}: {what}",
        unit=unit,
        other=other,
        what=", ".join(what),
    )


def bars_told(bars: Sequence[Bar]) -> str:
    """Which they are, for who cannot see them."""
    return say(
        "Battens and breadboard ends: {names}; their screws, tenons, pegs and glue stand in the tables below.",
        names=", ".join(isolated(bar.one.name) for bar in bars),
    )
