"""The first sheet of a template: what it is, how to lay it, and which sheet lies where."""

from __future__ import annotations

from movement_core.sheet.datum import END, end_told, length_told
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.measure import width_em
from movement_core.sheet.pages.model import (
    MIDDLE,
    START,
    Area,
    Label,
    Pen,
    Picture,
    Point,
    Shape,
    Strokes,
    Text,
)
from movement_core.sheet.pages.names import isolated, sentence
from movement_core.sheet.template.beside import apart_from
from movement_core.sheet.template.marks import TemplateMarks
from movement_core.sheet.template.tiles import Tiling
from movement_core.wording import say

SIDE_MM, TITLE_MM, WORDS_MM, LINE_MM = 16.0, 5.5, 3.1, 4.6
MAP_SHARE = 0.42  # of the paper's height at most
NAME_AT = (
    (0.5, 0.5),
    *((u, v) for v in (0.5, 0.3, 0.7) for u in (0.3, 0.7)),
)  # of a tile in the map, by its size


def overview_picture(marks: TemplateMarks, tiling: Tiling, lengths: Lengths) -> Picture:
    """A map of the sheets, not to scale, and what to do."""
    paper = tiling.paper
    wide = paper.width_mm - 2 * SIDE_MM
    shapes: list[Shape] = [
        Label(
            Text(say("Drilling template, {name}", name=isolated(marks.name, 40.0))),
            (SIDE_MM, 22.0), TITLE_MM, START, bold=True,
        )
    ]  # fmt: skip
    y = 31.0
    for line in _instructions(marks, tiling, lengths):
        for part in wrapped(line, wide / WORDS_MM):
            shapes.append(Label(Text(part), (SIDE_MM, y), WORDS_MM))
            y += LINE_MM
        y += 1.0
    scale = min(
        (wide - 8.0) / marks.length_mm, MAP_SHARE * paper.height_mm / marks.width_today_mm,
        (paper.height_mm - y - 18.0) / marks.width_today_mm,
    )  # fmt: skip
    shapes += _map(marks, tiling, (SIDE_MM + 4.0, y + 6.0), scale)
    y += 16.0 + marks.width_today_mm * scale
    for number, line in enumerate(marks.refused):
        parts = wrapped(sentence(line), wide / WORDS_MM)
        if y + LINE_MM * len(parts) > paper.height_mm - 12.0:
            left = len(marks.refused) - number
            shapes.append(
                Label(Text(say("and {count} more remarks: see the plan", count=left)), (SIDE_MM, y), WORDS_MM)
            )
            break
        for part in parts:
            shapes.append(Label(Text(part), (SIDE_MM, y), WORDS_MM))
            y += LINE_MM
    told = say("Which of the {count} sheets lies where on the top, seen from below.", count=len(tiling.tiles))
    return Picture(
        "template",
        say("Sheets of the drilling template"),
        told,
        paper.width_mm,
        paper.height_mm,
        tuple(shapes),
    )


def _instructions(marks: TemplateMarks, tiling: Tiling, lengths: Lengths) -> list[str]:
    size = [lengths.near(value, ()).shown for value in (marks.length_mm, marks.width_today_mm)]
    long = length_told(size[0], marks.between_shoulders)
    last = isolated(marks.datum["other_edge"])
    return [
        say(
            "{screws} screws on {count} sheets of {paper}, full size. Only sheets with something to drill are printed.",
            screws=len(marks.screws), count=len(tiling.tiles), paper=tiling.paper.name,
        ),
        say("1. Print at 100 %, actual size. Measure the rulers on every sheet: 100 mm and 4 inches, both ways."),
        say(
            "2. Turn the top over. The datum is its outer edge at {edge} and its end at {end}, drawn strongly.",
            edge=isolated(marks.datum["edge"]), end=end_told(marks.datum, isolated(marks.datum["end"])),
        ),
        say(
            "3. The top should measure {long} × {wide} {unit} today, from {edge} to {last}. If its width differs, its "
            "wood is not as moist as was taken: say what it is, and print anew.",
            long=long, wide=size[1], unit=lengths.unit, edge=isolated(marks.datum["edge"]), last=last,
        ),
        say("4. Lay each sheet by the distances of its upper left cross; neighbours overlap, cross on cross."),
        say(
            "5. Circles are holes in the top, where its screws are today. Blue is in the frame: slots in full lines, "
            "recesses and grooves in short dashes. Mind the depth: a stop on the drill."
        ),
    ]  # fmt: skip


def _map(marks: TemplateMarks, tiling: Tiling, corner: Point, scale: float) -> list[Shape]:
    def at(point: Point) -> Point:
        return corner[0] + point[0] * scale, corner[1] + point[1] * scale

    long, wide = marks.length_mm, marks.width_today_mm
    shapes: list[Shape] = [Area(tuple(at(p) for p in marks.outline), "wood", Pen("ink", 0.3), "top")]
    for tile in tiling.tiles:
        (x0, y0), (x1, y1) = tile.low, (min(tile.high[0], long), min(tile.high[1], wide))
        box = (at((x0, y0)), at((x1, y0)), at((x1, y1)), at((x0, y1)))
        shapes.append(Area(box, "paper", Pen("quiet", 0.2), f"sheet {tile.name}"))
    for cut in marks.cuts:
        if cut.purpose in ("slot", "mortise", "groove"):
            shapes.append(Strokes((tuple(at(p) for p in (*cut.points, cut.points[0])),), Pen("wet", 0.15)))
    marked = [at(screw.place) for screw in marks.screws]
    dots = tuple(
        line for x, y in marked for line in (((x - 0.7, y), (x + 0.7, y)), ((x, y - 0.7), (x, y + 0.7)))
    )
    shapes.append(Strokes(dots, Pen("ink", 0.25), "screws"))
    for tile in tiling.tiles:
        size = min(4.0, 0.2 * scale * tiling.step_mm[0])
        low, high = at(tile.low), at((min(tile.high[0], long), min(tile.high[1], wide)))
        places = [(low[0] + u * (high[0] - low[0]), low[1] + v * (high[1] - low[1])) for u, v in NAME_AT]
        x, y = apart_from(marked, places, 1.4 * size)
        shapes.append(Label(Text(tile.name), (x, y + 0.36 * size), size, MIDDLE))
    datum = (at((0.0, wide)), at((0.0, 0.0)), at((long, 0.0)))
    shapes.append(Strokes((datum,), Pen("grave", 0.7), "datum"))
    edge = Text(say("datum edge: {edge}", edge=isolated(marks.datum["edge"])))
    shapes.append(Label(edge, (at((long / 2, 0.0))[0], corner[1] - 2.0), WORDS_MM, MIDDLE))
    room = 0.9 * wide * scale / WORDS_MM - (9 if marks.datum.get("end_is", END) == END else 16)
    end = Text(say("datum end: {end}", end=end_told(marks.datum, isolated(marks.datum["end"], room))))
    x, y = at((0.0, wide / 2))
    shapes.append(Label(end, (x - 2.0, y), WORDS_MM, MIDDLE, turned=True))
    return shapes


def wrapped(text: str, most_em: float) -> list[str]:
    """Words on lines of so many em at most; a longer word stands alone."""
    lines: list[str] = []
    for word in text.split(" "):
        if lines and width_em(f"{lines[-1]} {word}") <= most_em:
            lines[-1] = f"{lines[-1]} {word}"
        else:
            lines.append(word)
    return lines
