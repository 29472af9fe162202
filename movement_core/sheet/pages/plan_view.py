"""A top from above with what holds it: rails, fasteners with their numbers, places from the datum edge and end."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np

from movement_core.holding.plan_model import Placed, Plan
from movement_core.sheet.datum import end_told
from movement_core.sheet.label_places import spread_apart
from movement_core.sheet.pages.boxes import Box, label_box, placed_free
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import PlannedTop
from movement_core.sheet.pages.model import (
    END,
    MIDDLE,
    Arc,
    Area,
    Figure,
    Label,
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
LEFT_MM, BOTTOM_MM, TOP_MM, RIGHT_MM = 19.0, 18.5, 7.0, 3.0  # for the dimensions and the names round it
SYMBOL_MM = 2.6  # least length of a slot's sign
SAME_MM = 0.05  # places nearer than this share their dimension
SHORT_EM = 20.0


def plan_picture(
    top: PlannedTop, plan: Plan, at: Pointer, lengths: Lengths, most_mm: tuple[float, float]
) -> Picture:
    """The plan of one way to hold a top. ``at``: where the plan stands in the JSON."""
    view = _View(top, most_mm)
    entry = top.entry["plans"][at[-1]]
    shapes: list[Shape] = [*view.outline(), *view.rails()]
    marks = [view.fastener(number, placed) for number, placed in enumerate(plan.placed, 1)]
    for mark, _ in marks:
        shapes += mark
    fasteners = entry["fasteners"]
    along = _places(plan.placed, fasteners, 0, "from_end_mm", at, lengths)
    across = _places(plan.placed, fasteners, 1, "from_edge_today_mm", at, lengths)
    shapes += view.dimensions_along(along) + view.dimensions_across(across)
    shapes += view.names(top.entry["datum"])
    shapes += view.numbers([box for _, box in marks], plan.placed)
    datum = top.entry["datum"]
    title = say(
        "Seen from above, through the top. Distances in {unit} from the datum: the outer edge at {edge} as it is "
        "today, and the end at {end}",
        unit=lengths.unit, edge=isolated(datum["edge"]), end=end_told(datum, isolated(datum["end"])),
    )  # fmt: skip
    told = say(
        "Plan of {name} with {count} fasteners; each number and its distances stand in the table below.",
        name=isolated(top.place.name), count=len(plan.placed),
    )  # fmt: skip
    return Picture(f"plan-{at[1]}", title, told, view.width, view.height, tuple(shapes))


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

    def __init__(self, top: PlannedTop, most_mm: tuple[float, float]) -> None:
        self.top, place = top, top.place
        self.scale = min(
            (most_mm[0] - LEFT_MM - RIGHT_MM) / place.length_mm,
            (most_mm[1] - TOP_MM - BOTTOM_MM) / place.width_mm,
        )
        self.long, self.wide = place.length_mm * self.scale, place.width_mm * self.scale
        self.width, self.height = self.long + LEFT_MM + RIGHT_MM, self.wide + TOP_MM + BOTTOM_MM

    def at(self, along: float, across: float) -> Point:
        return LEFT_MM + self.long / 2 + along * self.scale, TOP_MM + self.wide / 2 - across * self.scale

    def outline(self) -> list[Shape]:
        place = self.top.place
        half = (place.length_mm / 2, place.width_mm / 2)
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

    def fastener(self, number: int, placed: Placed) -> tuple[list[Shape], Box]:
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
        return shapes, (x - 0.8, y - reach, x + 0.8, y + reach)

    def numbers(self, marks: Sequence[Box], placed: Sequence[Placed]) -> list[Shape]:
        lines = (*self.top.place.lines_mm[1:-1], self.top.entry["wish"]["fixed_line_mm"])
        heights = [self.at(0.0, line)[1] for line in lines]
        taken: list[Box] = [*marks, *((LEFT_MM, y - 0.3, LEFT_MM + self.long, y + 0.3) for y in heights)]
        frame = (LEFT_MM + 0.2, TOP_MM + 0.2, LEFT_MM + self.long, TOP_MM + self.wide)
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
        base = TOP_MM + self.wide
        wanted = np.array([self.at(along, 0)[0] for along, _ in places])
        spacing = WORDS_MM * 1.3
        spread = _inside(spread_apart(wanted, spacing), spacing, LEFT_MM - 2, self.width)
        shapes: list[Shape] = []
        lines = [((LEFT_MM, base + 1.0), (LEFT_MM + self.long, base + 1.0))]
        for x, moved, (_, figure) in zip(wanted.tolist(), spread.tolist(), places):
            lines += [((x, base + 0.3), (x, base + 1.7)), ((x, base + 1.7), (moved, base + 3.4))]
            place = (moved + WORDS_MM * 0.35, base + 4.0)
            shapes.append(Label(tell("{at}", at=figure), place, WORDS_MM, END, turned=True))
        return [Strokes(tuple(lines), Pen("quiet", 0.15), "distances along"), *shapes]

    def dimensions_across(self, places: Sequence[Dimension]) -> list[Shape]:
        """Distances from the edge, left of the top."""
        wanted = np.array([self.at(0, across)[1] for across, _ in places])
        spacing = WORDS_MM * 1.3
        order = np.argsort(wanted)
        spread = np.empty_like(wanted)
        spread[order] = _inside(
            spread_apart(wanted, spacing)[order], spacing, TOP_MM - 4, TOP_MM + self.wide + 5
        )
        shapes: list[Shape] = []
        x = LEFT_MM
        lines = [((x - 1.0, TOP_MM), (x - 1.0, TOP_MM + self.wide))]
        for y, moved, (_, figure) in zip(wanted.tolist(), spread.tolist(), places):
            lines += [((x - 0.3, y), (x - 1.7, y)), ((x - 1.7, y), (x - 3.4, moved))]
            shapes.append(Label(tell("{at}", at=figure), (x - 4.0, moved + WORDS_MM * 0.35), WORDS_MM, END))
        return [Strokes(tuple(lines), Pen("quiet", 0.15), "distances across"), *shapes]

    def names(self, datum: Any) -> list[Shape]:
        """Which edge is which, and the datum corner."""
        middle = LEFT_MM + self.long / 2
        most = min(NAME_EM, max(SHORT_EM, self.long / WORDS_MM - 14))
        other = say("{edge} (far edge)", edge=isolated(datum["other_edge"], most))
        datum_edge = say("datum edge: {edge}", edge=isolated(datum["edge"], most))
        corner = (LEFT_MM, TOP_MM + self.wide)
        cross = 1.6
        return [
            Label(Text(other), (middle, TOP_MM - 2.0), WORDS_MM, MIDDLE, "quiet"),
            Label(Text(datum_edge), (middle, self.height - 1.0), WORDS_MM, MIDDLE, "quiet"),
            Strokes(
                (
                    ((corner[0] - cross, corner[1]), (corner[0] + cross, corner[1])),
                    ((corner[0], corner[1] - cross), (corner[0], corner[1] + cross)),
                ),
                Pen("grave", 0.4),
                "datum",
            ),
        ]


def _inside(places: Any, spacing: float, low: float, high: float) -> Any:
    """Places, ascending and ``spacing`` apart, moved into a range as far as they fit."""
    if not len(places):
        return places
    steps = np.arange(len(places)) * spacing
    places = np.maximum(places, low + spacing / 2 + steps)
    return np.minimum(places, high - spacing / 2 - steps[::-1])
