"""A top from above with what holds it: rails, fasteners with their numbers, battens and breadboard ends, places."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from movement_core.holding.plan_model import Placed
from movement_core.sheet.datum import end_told
from movement_core.sheet.label_places import spread_apart
from movement_core.sheet.pages.bar_view import (
    Bar,
    Onto,
    bar_distances,
    bar_distances_told,
    bar_names,
    bar_note,
    bar_shapes,
    bars_of,
    bars_told,
)
from movement_core.sheet.pages.boxes import Box, label_box, placed_free
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import PlannedTop
from movement_core.sheet.pages.measure import width_mm
from movement_core.sheet.pages.model import (
    END,
    MIDDLE,
    START,
    Arc,
    Area,
    Figure,
    Label,
    Paragraph,
    Pen,
    Picture,
    Point,
    Pointer,
    Shape,
    Strokes,
    Text,
    tell,
)
from movement_core.sheet.pages.names import NAME_EM, isolated
from movement_core.wording import say

WORDS_MM, NUMBER_MM = 2.3, 2.4
LEFT_MM, BOTTOM_MM, TOP_MM = 19.0, 18.5, 7.0  # for the dimensions and the names round it
NAMED_MM, BARE_MM = 5.0, 3.0  # below it and beside it where there are no dimensions
TICK_MM = 4.0  # from the top to the words of a distance
SYMBOL_MM = 2.6  # least length of a slot's sign
SAME_MM = 0.05  # places nearer than this share their dimension
SPACING_MM = WORDS_MM * 1.3
ABOVE_MM, BELOW_MM = 4.0, 5.0  # that distances across may stand beyond the top
SHORT_EM = 20.0
AROUND_EM = 14.0  # of the words round a name


def plan_picture(
    top: PlannedTop, planned: bool, at: Pointer, lengths: Lengths, most_mm: tuple[float, float]
) -> tuple[Picture, list[Paragraph]]:
    """The first way to hold a top, its battens and breadboard ends; and what their signs mean.

    ``planned`` : whether its fasteners are shown, else only the bars. ``at`` : where the top stands in the JSON.
    """
    assert top.plans is not None  # else there is nothing to show
    placed = top.plans.plans[0].placed if planned else ()
    bars = bars_of(top, at)
    beside = bar_distances(bars, lengths)
    view = _View(top, bars, most_mm, planned, [figure for _, figure in beside])
    if not view.has_room(len(beside)):
        beside = []  # the tables have them
    shapes: list[Shape] = [*view.outline(), *view.rails()]
    taken: list[Box] = []
    bar_signs = [bar_shapes(bar, top.place, view.onto) for bar in bars]
    for sign, boxes in [*bar_signs, *(view.fastener(number, one) for number, one in enumerate(placed, 1))]:
        shapes += sign
        taken += boxes
    datum = view.names(top.entry["datum"], planned)
    outside = [label_box(shape) for shape in datum if isinstance(shape, Label)]
    named, left = bar_names(bars, view.onto, [*taken, *outside], (0.0, 0.0, view.width, view.height))
    taken += [label_box(label) for label in named]
    if planned:
        where = (*at, "plans", 0)
        fasteners = top.entry["plans"][0]["fasteners"]
        shapes += view.dimensions_along(_places(placed, fasteners, 0, "from_end_mm", where, lengths))
        across = _places(placed, fasteners, 1, "from_edge_today_mm", where, lengths)
        shapes += view.dimensions_across(across, -1)
    if beside:
        shapes += view.dimensions_across(beside, 1)
    shapes += [*datum, *view.numbers(taken, placed), *named]
    title, told = _title(top, planned, bars if beside else (), lengths), _told(top, len(placed), bars)
    picture = Picture(f"plan-{at[-1]}", title, told, view.width, view.height, tuple(shapes))
    return picture, bar_note(bars, left)


def _title(top: PlannedTop, planned: bool, bars: Sequence[Bar], lengths: Lengths) -> str:
    """What one looks at, and what its distances are measured from."""
    datum = top.entry["datum"]
    said = [say("Seen from above, through the top")]
    if planned:
        said = [
            say(
                "Seen from above, through the top. Distances in {unit} from the datum: the outer edge at {edge} as it "
                "is today, and the end at {end}",
                unit=lengths.unit, edge=isolated(datum["edge"]), end=end_told(datum, isolated(datum["end"])),
            )
        ]  # fmt: skip
    if bars:
        said.append(bar_distances_told(bars, lengths.unit, isolated(datum["other_edge"])))
    return ". ".join(said)


def _told(top: PlannedTop, count: int, bars: Sequence[Bar]) -> str:
    name = isolated(top.place.name)
    said = [say("Plan of {name}.", name=name)]
    if count:
        said = [
            say(
                "Plan of {name} with {count} fasteners; each number and its distances stand in the table below.",
                name=name, count=count,
            )
        ]  # fmt: skip
    return " ".join([*said, *([bars_told(bars)] if bars else [])])


Dimension = tuple[float, Figure]  # where it is in the top's frame, and what is written there


def _places(
    placed: Sequence[Placed], fasteners: Sequence[Any], axis: int, word: str, at: Pointer, lengths: Lengths
) -> list[Dimension]:
    """Every place once, ascending."""
    found: list[Dimension] = []
    for number, (one, entry) in sorted(
        enumerate(zip(placed, fasteners)), key=lambda item: item[1][0].place_mm[axis]
    ):
        figure = lengths.near(entry[word], (*at, "fasteners", number, word))
        if not found or (one.place_mm[axis] - found[-1][0] > SAME_MM and figure.shown != found[-1][1].shown):
            found.append((one.place_mm[axis], figure))
    return found


class _View:
    """A top's frame (along, across) onto paper: along runs right, across runs up."""

    def __init__(
        self,
        top: PlannedTop,
        bars: Sequence[Bar],
        most_mm: tuple[float, float],
        planned: bool,
        beside: Sequence[Figure],
    ) -> None:
        self.top, place = top, top.place
        self.half = np.array([place.length_mm, place.width_mm]) / 2
        points = np.vstack([-self.half, self.half, *(np.array(bar.outline_mm) for bar in bars)])
        self.low, self.high = points.min(axis=0), points.max(axis=0)
        words = max((width_mm(figure.shown, WORDS_MM) for figure in beside), default=0.0)
        self.left, right = LEFT_MM if planned else BARE_MM, BARE_MM + bool(beside) * (TICK_MM + words)
        long, wide = (self.high - self.low).tolist()
        bottom = BOTTOM_MM if planned else NAMED_MM
        self.scale = min((most_mm[0] - self.left - right) / long, (most_mm[1] - TOP_MM - bottom) / wide)
        middle = -float(self.low[0]) * self.scale  # from the left edge of what is drawn
        words = (SHORT_EM + AROUND_EM) * WORDS_MM / 2  # either side of the top's middle
        self.left = max(self.left, words - middle)
        self.right, self.bottom = self.left + long * self.scale, TOP_MM + wide * self.scale
        self.width = max(self.right + right, self.left + middle + words)
        self.height = self.bottom + bottom
        self.long = place.length_mm * self.scale
        self.onto = Onto(self.at, self.scale)

    def at(self, along: float, across: float) -> Point:
        return (
            self.left + (along - float(self.low[0])) * self.scale,
            TOP_MM + (float(self.high[1]) - across) * self.scale,
        )

    def has_room(self, count: int) -> bool:
        """Whether so many distances stand one above the other beside the top."""
        return bool(count * SPACING_MM <= self.bottom - TOP_MM + ABOVE_MM + BELOW_MM)

    def outline(self) -> list[Shape]:
        place = self.top.place
        half = self.half.tolist()
        box = ((-half[0], -half[1]), (half[0], -half[1]), (half[0], half[1]), (-half[0], half[1]))
        corners = place.outline_mm or box
        edge = tuple(self.at(*corner) for corner in corners)
        glue = tuple((self.at(-half[0], line), self.at(half[0], line)) for line in place.lines_mm[1:-1])
        wish = self.top.entry["wish"]["fixed_line_mm"]
        fixed = ((self.at(-half[0], wish), self.at(half[0], wish)),)
        return [
            Area(edge, "wood", Pen("ink", 0.3), "top"),
            Strokes(glue, Pen("ring", 0.12), "glue lines"),
            Strokes(fixed, Pen("today", 0.25, (3.0, 0.8, 0.6, 0.8)), "fixed line"),
        ]

    def rails(self) -> list[Shape]:
        plans = self.top.plans
        assert plans is not None and plans.found.top is not None  # there is a plan
        shapes: list[Shape] = []
        for rail in plans.found.top.rails:
            corners = tuple(self.at(*corner) for corner in rail.bearing().outline_mm)
            shapes.append(Area(corners, "paper", Pen("rule", 0.2), f"rail {rail.name}"))
        return shapes

    def fastener(self, number: int, placed: Placed) -> tuple[list[Shape], list[Box]]:
        """The sign of a fastener and the box it takes: a screw's head, with its slot the way it lets the top go."""
        x, y = self.at(*placed.place_mm)
        reach = 0.0
        shapes: list[Shape] = []
        if placed.slot is not None or placed.most_mm - placed.least_mm > 0.05:
            length = placed.slot.length_mm if placed.slot else placed.most_mm - placed.least_mm
            reach = max(length * self.scale, SYMBOL_MM) / 2
            shapes.append(Strokes((((x, y - reach), (x, y + reach)),), Pen("quiet", 0.5), f"way {number}"))
        shapes.append(Arc((x, y), 0.65, Pen("ink", 0.2), fill="paper", id=f"fastener {number}"))
        reach = max(reach, 0.8)
        return shapes, [(x - 0.8, y - reach, x + 0.8, y + reach)]

    def numbers(self, marks: Sequence[Box], placed: Sequence[Placed]) -> list[Shape]:
        lines = (*self.top.place.lines_mm[1:-1], self.top.entry["wish"]["fixed_line_mm"])
        (left, top), (right, bottom) = (
            self.at(-self.half[0], self.half[1]),
            self.at(self.half[0], -self.half[1]),
        )
        heights = [self.at(0.0, line)[1] for line in lines]
        taken: list[Box] = [*marks, *((left, y - 0.3, right, y + 0.3) for y in heights)]
        frame = (left + 0.2, top + 0.2, right, bottom)
        shapes: list[Shape] = []
        for number, one in enumerate(placed, 1):
            x, y = self.at(*one.place_mm)
            label = Label(
                Text(str(number)), (x, y), NUMBER_MM, MIDDLE, bold=True, id=f"fastener number {number}"
            )
            places = []
            for far in (2.6, 3.8, 5.2, 7.0):
                places += [(x + far, y + 0.9), (x - far, y + 0.9), (x, y - far), (x, y + far + 1.5)]
                places += [(x + far, y - far), (x - far, y - far), (x + far, y + far), (x - far, y + far)]
            found = placed_free(label, places, taken, frame)
            if found is not None:
                shapes.append(found)
                taken.append(label_box(found))
        return shapes

    def dimensions_along(self, places: Sequence[Dimension]) -> list[Shape]:
        """Distances from the end, below the top: a tick at each, its words turned and spread where they are near."""
        base = self.bottom
        wanted = np.array([self.at(along, 0)[0] for along, _ in places])
        spread = _inside(spread_apart(wanted, SPACING_MM), SPACING_MM, self.left - 2, self.width)
        shapes: list[Shape] = []
        start, end = (self.at(side * self.half[0], 0)[0] for side in (-1, 1))
        lines = [((start, base + 1.0), (end, base + 1.0))]
        for x, moved, (_, figure) in zip(wanted.tolist(), spread.tolist(), places):
            lines += [((x, base + 0.3), (x, base + 1.7)), ((x, base + 1.7), (moved, base + 3.4))]
            place = (moved + WORDS_MM * 0.35, base + 4.0)
            shapes.append(Label(tell("{at}", at=figure), place, WORDS_MM, END, turned=True))
        return [Strokes(tuple(lines), Pen("quiet", 0.15), "distances along"), *shapes]

    def dimensions_across(self, places: Sequence[Dimension], side: int) -> list[Shape]:
        """Distances, left of the top (−1) of fasteners from its edge, right of it (1) of bars from the middle."""
        wanted = np.array([self.at(0, across)[1] for across, _ in places])
        order = np.argsort(wanted)
        spread = np.empty_like(wanted)
        spread[order] = _inside(
            spread_apart(wanted, SPACING_MM)[order], SPACING_MM, TOP_MM - ABOVE_MM, self.bottom + BELOW_MM
        )
        shapes: list[Shape] = []
        x = self.left if side < 0 else self.right
        top, bottom = (self.at(0, end * self.half[1])[1] for end in (1, -1))
        lines = [((x + side, top), (x + side, bottom))]
        anchor = END if side < 0 else START
        for y, moved, (_, figure) in zip(wanted.tolist(), spread.tolist(), places):
            lines += [
                ((x + side * 0.3, y), (x + side * 1.7, y)),
                ((x + side * 1.7, y), (x + side * 3.4, moved)),
            ]
            place = (x + side * TICK_MM, moved + WORDS_MM * 0.35)
            shapes.append(Label(tell("{at}", at=figure), place, WORDS_MM, anchor))
        name = "distances across" if side < 0 else "distances of bars across"
        return [Strokes(tuple(lines), Pen("quiet", 0.15), name), *shapes]

    def names(self, datum: Any, planned: bool) -> list[Shape]:
        """Which edge is which, and the datum corner where distances are measured from it."""
        middle = self.at(0.0, 0.0)[0]
        most = min(NAME_EM, max(SHORT_EM, self.long / WORDS_MM - AROUND_EM))
        other = say("{edge} (far edge)", edge=isolated(datum["other_edge"], most))
        datum_edge = say("datum edge: {edge}", edge=isolated(datum["edge"], most))
        labels: list[Shape] = [
            Label(Text(other), (middle, TOP_MM - 2.0), WORDS_MM, MIDDLE, "quiet"),
            Label(Text(datum_edge), (middle, self.height - 1.0), WORDS_MM, MIDDLE, "quiet"),
        ]
        if not planned:
            return labels
        (x, y), cross = self.at(-self.half[0], -self.half[1]), 1.6
        lines = (((x - cross, y), (x + cross, y)), ((x, y - cross), (x, y + cross)))
        return [*labels, Strokes(lines, Pen("grave", 0.4), "datum")]


def _inside(places: Any, spacing: float, low: float, high: float) -> Any:
    """Places, ascending and ``spacing`` apart, moved into a range as far as they fit."""
    if not len(places):
        return places
    steps = np.arange(len(places)) * spacing
    places = np.maximum(places, low + spacing / 2 + steps)
    return np.minimum(places, high - spacing / 2 - steps[::-1])
