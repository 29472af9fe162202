"""Where a screw's number and distances stand on a sheet: where they cross least of what is drawn there."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import product

from movement_core.sheet.pages.boxes import Box, label_box, overlap
from movement_core.sheet.pages.model import END, START, Label, Point, Shape, Strokes
from movement_core.sheet.template.clip import clipped

AWAY_MM = (1.5, 5.0, 9.0, 14.0, 20.0, 28.0)  # beyond the arm of the cross
OFF_MM = (0.0, -4.0, 4.0, -8.0, 8.0, -12.0, 12.0, -18.0, 18.0)  # below the screw, above it where negative
ROOM_MM = 0.6  # kept free round the words
QUIET = ("rail", "glue lines", "own part", "corners")  # may be crossed, if it must be
FARTHER = 0.05  # what a step further away costs, in crossed quiet lines
LOUD, ASTRAY, OVER = (
    20.0,
    100.0,
    400.0,
)  # the same of a line to work by, of words nearer to another screw, of words


def words_beside(
    labels: Sequence[Label],
    screw: Point,
    others: Sequence[Point],
    arm: float,
    frame: Box,
    drawn: Iterable[Shape],
    taken: Sequence[Box],
) -> list[Label]:
    """Labels, of which each ``place`` is an offset from the screw's height, beside a screw within a frame.

    ``others``: places of the other screws. ``arm``: of a screw's cross. ``drawn``: lines of the sheet.
    ``taken``: boxes of words that stand already.
    """
    lines = [
        (line, _bounds(line), 1.0 if shape.id in QUIET else LOUD)
        for shape in drawn
        if isinstance(shape, Strokes) and shape.id != "end of the drawing"
        for line in shape.lines
        if line
    ]
    best: tuple[float, list[Label]] | None = None
    for step, (away, off, side) in enumerate(product(AWAY_MM, OFF_MM, (1, -1))):
        if best is not None and FARTHER * step >= best[0]:
            break  # each further place costs more than the best one
        x, y = screw[0] + side * (arm + away), screw[1] + off
        anchor = START if side > 0 else END
        tried = [replace(one, place=(x, y + one.place[1]), anchor=anchor) for one in labels]
        box = around(tried)
        if box[0] < frame[0] or box[1] < frame[1] or box[2] > frame[2] or box[3] > frame[3]:
            continue
        cost = FARTHER * step + OVER * sum(overlap(box, other) for other in taken)
        cost += ASTRAY * any(apart(box, other) <= apart(box, screw) for other in others)
        if best is not None and cost >= best[0]:
            continue
        cost += sum(weight for line, bounds, weight in lines if _meet(bounds, box) and clipped(line, box))
        if best is None or cost < best[0]:
            best = (cost, tried)
    assert best is not None  # a sheet is wider than any words beside a screw
    return best[1]


def _bounds(line: Sequence[Point]) -> Box:
    across, down = zip(*line, strict=True)
    return min(across), min(down), max(across), max(down)


def _meet(one: Box, other: Box) -> bool:
    return one[0] <= other[2] and one[2] >= other[0] and one[1] <= other[3] and one[3] >= other[1]


def around(labels: Sequence[Label]) -> Box:
    """The box of several labels and the room round them."""
    boxes = [label_box(one) for one in labels]
    return (
        min(box[0] for box in boxes) - ROOM_MM,
        min(box[1] for box in boxes) - ROOM_MM,
        max(box[2] for box in boxes) + ROOM_MM,
        max(box[3] for box in boxes) + ROOM_MM,
    )


def apart(box: Box, point: Point) -> float:
    """How far a point lies from a box."""
    aside = max(box[0] - point[0], point[0] - box[2], 0.0)
    return math.hypot(aside, max(box[1] - point[1], point[1] - box[3], 0.0))


def apart_from(points: Sequence[Point], places: Sequence[Point], enough_mm: float) -> Point:
    """The first of some places that lies far enough from all points, else the one that lies furthest."""

    def nearest(place: Point) -> float:
        return min((math.dist(place, point) for point in points), default=enough_mm)

    free = next((place for place in places if nearest(place) >= enough_mm), None)
    return free or max(places, key=nearest)
