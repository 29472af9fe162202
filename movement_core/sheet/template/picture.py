"""One sheet of a template as a picture of the whole paper, at full size: 1 mm of the picture is 1 mm of the top."""

from __future__ import annotations

import math
from collections.abc import Sequence

from movement_core.sheet.datum import end_told
from movement_core.sheet.pages.boxes import Box
from movement_core.sheet.pages.lengths import INCH_MM, Lengths
from movement_core.sheet.pages.model import (
    END,
    MIDDLE,
    START,
    Figure,
    Label,
    Paper,
    Pen,
    Picture,
    Point,
    Shape,
    Strokes,
    Text,
    tell,
)
from movement_core.sheet.pages.names import isolated
from movement_core.sheet.template.beside import around, words_beside
from movement_core.sheet.template.clip import clipped
from movement_core.sheet.template.marks import ARC_STEPS, TemplateMarks
from movement_core.sheet.template.tiles import BOTTOM_MM, LEFT_MM, OVERLAP_MM, RIGHT_MM, TOP_MM, Tile, Tiling
from movement_core.wording import say

TITLE_MM, WORDS_MM, NUMBER_MM, SMALL_MM = 4.2, 2.7, 4.0, 2.3
CROSS_MM, CORNER_MM = 6.0, 4.0  # arms of a screw's cross; of a corner's
TEN_CM, FOUR_INCHES = 100.0, 4
DASHES = {
    "slot": (),
    "hole": (),
    "mortise": (),
    "block": (3.0, 1.0),
    "recess": (1.5, 1.0),
    "groove": (1.5, 1.0),
}


def tile_picture(marks: TemplateMarks, tiling: Tiling, tile: Tile, lengths: Lengths) -> Picture:
    """One sheet."""
    paper = tiling.paper
    drawer = _Tile(paper, tile)
    shapes: list[Shape] = [*drawer.frame(), *drawer.top(marks), *drawer.marks(marks)]
    shapes += drawer.told(marks, lengths, shapes)
    shapes += drawer.words(marks, tiling, lengths)
    shapes += [*rulers(paper), *_grain(paper)]
    title = say("Sheet {tile} of the drilling template for {name}", tile=tile.name, name=isolated(marks.name))
    told = say(
        "Screws, holes and slots at full size, seen from below; every number stands in the plan's table."
    )
    return Picture(f"tile-{tile.name}", title, told, paper.width_mm, paper.height_mm, tuple(shapes))


class _Tile:
    """Maps mm from the datum onto the paper."""

    def __init__(self, paper: Paper, tile: Tile) -> None:
        self.paper, self.tile = paper, tile
        x0, y0, x1, y1 = tile.frame
        self.shift = (LEFT_MM - x0, TOP_MM - y0)
        self.box = (LEFT_MM, TOP_MM, LEFT_MM + x1 - x0, TOP_MM + y1 - y0)

    def at(self, point: Point) -> Point:
        return point[0] + self.shift[0], point[1] + self.shift[1]

    def line(self, points: Sequence[Point], closed: bool = False) -> list[tuple[Point, ...]]:
        """A line of the top, as far as it lies on this sheet."""
        moved = [self.at(point) for point in points]
        return clipped([*moved, moved[0]] if closed else moved, self.box)

    def strokes(self, lines: Sequence[tuple[Point, ...]], pen: Pen, name: str) -> list[Shape]:
        return [Strokes(tuple(lines), pen, name)] if lines else []

    def frame(self) -> list[Shape]:
        """Where the drawing ends, where the next sheet's own part begins, and the corners to lay on each other."""
        x0, y0, x1, y1 = self.box
        o, arm = OVERLAP_MM, CORNER_MM
        edge = ((x0, y0), (x1, y0), (x1, y1), (x0, y1), (x0, y0))
        own = ((x0 + o, y0 + o), (x1 - o, y0 + o), (x1 - o, y1 - o), (x0 + o, y1 - o), (x0 + o, y0 + o))
        arms = []
        for x, y in own[:4]:
            arms += [((x - arm, y), (x + arm, y)), ((x, y - arm), (x, y + arm))]
        return [
            Strokes((edge,), Pen("rule", 0.1), "end of the drawing"),
            Strokes((own,), Pen("rule", 0.1, (4.0, 2.0)), "own part"),
            Strokes(tuple(arms), Pen("ink", 0.25), "corners"),
        ]

    def top(self, marks: TemplateMarks) -> list[Shape]:
        """The top's edge, its datum edge and end drawn strongly, its glue lines and the frame below it."""
        end, wide = marks.length_mm, marks.width_today_mm
        shapes: list[Shape] = []
        for outline in marks.rails:
            shapes += self.strokes(self.line(outline, closed=True), Pen("rule", 0.15, (5.0, 1.5)), "rail")
        glue = [run for y in marks.glue_lines for run in self.line(((0.0, y), (end, y)))]
        shapes += self.strokes(glue, Pen("ring", 0.15), "glue lines")
        shapes += self.strokes(self.line(marks.outline, closed=True), Pen("ink", 0.3), "top")
        edge, head = self.line(((0.0, 0.0), (end, 0.0))), self.line(((0.0, 0.0), (0.0, wide)))
        shapes += self.strokes([*edge, *head], Pen("grave", 0.7), "datum")
        return shapes

    def marks(self, marks: TemplateMarks) -> list[Shape]:
        """What is cut in the frame; a cross for each screw and a circle for its hole."""
        shapes: list[Shape] = []
        for cut in marks.cuts:
            pen = Pen("wet", 0.25, DASHES[cut.purpose])
            shapes += self.strokes(
                self.line(cut.points, closed=True), pen, f"{cut.purpose} {cut.number} in the frame"
            )
        for screw in marks.screws:
            x, y = screw.place
            cross = [*self.line(((x - CROSS_MM, y), (x + CROSS_MM, y)))]
            cross += self.line(((x, y - CROSS_MM), (x, y + CROSS_MM)))
            shapes += self.strokes(cross, Pen("ink", 0.12), f"screw {screw.number}")
            if screw.hole_mm:
                shapes += self.strokes(
                    self.line(circle(screw.place, screw.hole_mm / 2)), Pen("ink", 0.3), f"hole {screw.number}"
                )
        return shapes

    def told(self, marks: TemplateMarks, lengths: Lengths, drawn: Sequence[Shape]) -> list[Shape]:
        """The number of each screw of this sheet and its two distances, clear of what is drawn."""
        shapes: list[Shape] = []
        taken: list[Box] = []
        for screw in marks.screws:
            if self.tile.owns(screw.place):
                labels = _distances(screw.number, screw.place, lengths)
                others = [self.at(one.place) for one in marks.screws if one is not screw]
                told = words_beside(labels, self.at(screw.place), others, CROSS_MM, self.box, drawn, taken)
                taken.append(around(told))
                shapes += told
        return shapes

    def words(self, marks: TemplateMarks, tiling: Tiling, lengths: Lengths) -> list[Shape]:
        tile, (x0, y0, x1, y1) = self.tile, self.box
        corner = [_plain(value, lengths) for value in tile.low]
        name = isolated(marks.name, 34.0)
        lines = [
            say("Lay it on the upturned top: seen from below. All distances in {unit}.", unit=lengths.unit),
            say(
                "Its upper left cross: {end} from the datum end at {at_end}, {edge} from the datum edge of {at_edge}.",
                end=corner[0], edge=corner[1], at_end=end_told(marks.datum, isolated(marks.datum["end"], 14.0)),
                at_edge=isolated(marks.datum["edge"], 14.0),
            ),
        ]  # fmt: skip
        shapes: list[Shape] = [
            Label(Text(tile.name), (x0, 13.0), TITLE_MM * 1.6, START, bold=True, id="tile"),
            Label(
                Text(say("Drilling template, {name}", name=name)), (x0 + 20, 13.0), TITLE_MM, START, bold=True
            ),
        ]
        shapes += [
            Label(Text(line), (x0, 18.0 + 3.6 * i), WORDS_MM, START, "ink") for i, line in enumerate(lines)
        ]
        beside = {(one.row, one.column): one.name for one in tiling.tiles}
        middle_x, middle_y = (x0 + x1) / 2, (y0 + y1) / 2
        for row, column, place, turned in (
            (-1, 0, (middle_x, y0 - 1.0), False),
            (1, 0, (middle_x, y1 + 3.2), False),
            (0, -1, (x0 - 1.2, middle_y), True),
            (0, 1, (x1 + 3.2, middle_y), True),
        ):
            other = beside.get((tile.row + row, tile.column + column))
            if other:
                words = Text(say("here follows {tile}", tile=other))
                shapes.append(Label(words, place, WORDS_MM, MIDDLE, "quiet", turned=turned))
        return shapes


def _distances(number: int, place: Point, lengths: Lengths) -> list[Label]:
    """Three labels one below the other; their places count from the screw's height."""
    end, edge = (
        lengths.near(value, ("screws", number - 1, word))
        for value, word in zip(place, ("from_end_mm", "from_edge_today_mm"))
    )
    return [
        Label(Text(str(number)), (0.0, -0.8), NUMBER_MM, bold=True, id=f"number {number}"),
        Label(tell("{end} from the end", end=end), (0.0, 2.2), SMALL_MM, id=f"end {number}"),
        Label(tell("{edge} from the edge", edge=edge), (0.0, 5.0), SMALL_MM, id=f"edge {number}"),
    ]


def _plain(mm: float, lengths: Lengths) -> Figure:
    return lengths.near(mm, ())


def circle(centre: Point, radius: float) -> tuple[Point, ...]:
    """A closed circle as a line."""
    turns = [math.pi * i / ARC_STEPS for i in range(2 * ARC_STEPS + 1)]
    return tuple((centre[0] + radius * math.cos(t), centre[1] + radius * math.sin(t)) for t in turns)


def rulers(paper: Paper) -> list[Shape]:
    """100 mm and 4 inches to measure after printing, one way and the other."""
    shapes: list[Shape] = []
    x0, y0 = LEFT_MM, paper.height_mm - 19.0
    shapes += _ruler((x0, y0), across=True)
    shapes += _ruler((13.5, TOP_MM), across=False)
    words = Text(
        say("Print at 100 %, actual size. Measure both rulers; if either is not true, do not drill by this.")
    )
    shapes.append(Label(words, (x0, paper.height_mm - 8.5), WORDS_MM, START, "grave", bold=True))
    return shapes


def _ruler(start: Point, across: bool) -> list[Shape]:
    def at(along: float, aside: float) -> Point:
        """``aside`` < 0: the side of the millimetres."""
        return (start[0] + along, start[1] + aside) if across else (start[0] + aside, start[1] + along)

    way = "across" if across else "down"
    mm = [((at(0, 0)), at(TEN_CM, 0))]
    mm += [(at(10.0 * i, 0), at(10.0 * i, -3.0 if i % 5 == 0 else -1.8)) for i in range(11)]
    inch_end = FOUR_INCHES * INCH_MM
    inches = [(at(0, 1.0), at(inch_end, 1.0))]
    inches += [(at(INCH_MM * i / 2, 1.0), at(INCH_MM * i / 2, 4.0 if i % 2 == 0 else 2.6)) for i in range(9)]
    shapes: list[Shape] = [
        Strokes(tuple(mm), Pen("ink", 0.15), f"ruler mm {way}"),
        Strokes(tuple(inches), Pen("ink", 0.15), f"ruler inch {way}"),
    ]
    for i in (0, 50, 100):
        place = at(i, -3.6) if across else at(i + 0.8, -3.4)
        shapes.append(Label(Text(str(i)), place, SMALL_MM, MIDDLE if across else END))
    for i in range(FOUR_INCHES + 1):
        place = at(i * INCH_MM, 6.4) if across else at(i * INCH_MM + 0.8, 4.4)
        shapes.append(Label(Text(str(i)), place, SMALL_MM, MIDDLE if across else START))
    shapes.append(Label(Text("mm"), at(-2.0, -3.4), SMALL_MM, END))
    inch = (at(-2.0, 6.4), END) if across else (at(-2.0, 4.4), START)
    shapes.append(Label(Text("in"), inch[0], SMALL_MM, inch[1]))
    return shapes


def _grain(paper: Paper) -> list[Shape]:
    """Which way the grain runs: along the paper's width."""
    x0, x1, y = (
        paper.width_mm - RIGHT_MM - 42.0,
        paper.width_mm - RIGHT_MM,
        paper.height_mm - BOTTOM_MM + 13.0,
    )
    heads = (
        ((x0 + 2.5, y - 1.2), (x0, y), (x0 + 2.5, y + 1.2)),
        ((x1 - 2.5, y - 1.2), (x1, y), (x1 - 2.5, y + 1.2)),
    )
    return [
        Strokes((((x0, y), (x1, y)), *heads), Pen("ring", 0.35), "grain"),
        Label(Text(say("grain of the top")), ((x0 + x1) / 2, y - 1.6), WORDS_MM, MIDDLE),
    ]
