"""Which sheets a template takes: a grid from the datum corner, of which only what shows something is printed."""

from __future__ import annotations

import math
from dataclasses import dataclass

from movement_core.sheet.pages.model import Paper
from movement_core.sheet.template.marks import Point, TemplateMarks

OVERLAP_MM = 10.0  # shown beyond a tile's own part, on each of its four sides (own)
# Kept free round the drawing: for rulers and words, and for the edge that printers leave white (own).
LEFT_MM, TOP_MM, RIGHT_MM, BOTTOM_MM = 24.0, 27.0, 11.0, 29.0


@dataclass(frozen=True)
class Tile:
    """One sheet. ``low``, ``high`` : corners of its own part, mm from the datum; the overlap lies round it."""

    row: int
    column: int
    low: Point
    high: Point

    @property
    def name(self) -> str:
        """A1 at the datum corner, A2 further along the grain, B1 further across."""
        letters, row = "", self.row + 1
        while row:
            row, rest = divmod(row - 1, 26)
            letters = chr(65 + rest) + letters
        return f"{letters}{self.column + 1}"

    @property
    def frame(self) -> tuple[float, float, float, float]:
        """All that it shows: x0, y0, x1, y1."""
        o = OVERLAP_MM
        return self.low[0] - o, self.low[1] - o, self.high[0] + o, self.high[1] + o

    def owns(self, point: Point) -> bool:
        return self.low[0] <= point[0] < self.high[0] and self.low[1] <= point[1] < self.high[1]

    def shows(self, box: tuple[float, float, float, float]) -> bool:
        """Whether all of a box lies on it."""
        x0, y0, x1, y1 = self.frame
        return x0 <= box[0] and y0 <= box[1] and box[2] <= x1 and box[3] <= y1


@dataclass(frozen=True)
class Tiling:
    """The sheets to print, in the order of their names. ``step_mm``: size of a tile's own part."""

    paper: Paper
    step_mm: Point
    tiles: tuple[Tile, ...]


def tiling(marks: TemplateMarks, paper: Paper) -> Tiling:
    """The sheets of a template, the paper upright or lying, whichever takes fewer."""
    lying = Paper(paper.name, paper.height_mm, paper.width_mm, paper.margin_mm)
    return min((_tiling(marks, one) for one in (paper, lying)), key=lambda found: len(found.tiles))


def screw_box(marks: TemplateMarks, number: int) -> tuple[float, float, float, float]:
    """What a fastener takes: its hole and what is cut for it."""
    screw = next(one for one in marks.screws if one.number == number)
    reach = (screw.hole_mm or 0.0) / 2
    xs, ys = (
        [screw.place[axis] - reach, screw.place[axis] + reach]
        + [point[axis] for cut in marks.cuts if cut.number == number for point in cut.points]
        for axis in (0, 1)
    )
    return min(xs), min(ys), max(xs), max(ys)


def _tiling(marks: TemplateMarks, paper: Paper) -> Tiling:
    step = (
        paper.width_mm - LEFT_MM - RIGHT_MM - 2 * OVERLAP_MM,
        paper.height_mm - TOP_MM - BOTTOM_MM - 2 * OVERLAP_MM,
    )
    wanted: set[tuple[int, int]] = set()
    for screw in marks.screws:
        home = _cell(screw.place, step)
        wanted.add(home)
        box = screw_box(marks, screw.number)
        if not _tile(home, step).shows(box):  # more of it than the overlap takes: the neighbours too
            (c0, r0), (c1, r1) = _cell(box[:2], step), _cell(box[2:], step)
            wanted |= {(c, r) for c in range(c0, c1 + 1) for r in range(r0, r1 + 1)}
    tiles = sorted((_tile(cell, step) for cell in wanted), key=lambda tile: (tile.row, tile.column))
    return Tiling(paper, step, tuple(tiles))


def _cell(point: Point, step: Point) -> tuple[int, int]:
    """Column and row; what stands out beyond the datum edges belongs to the first."""
    return max(math.floor(point[0] / step[0]), 0), max(math.floor(point[1] / step[1]), 0)


def _tile(cell: tuple[int, int], step: Point) -> Tile:
    column, row = cell
    return Tile(
        row,
        column,
        (column * step[0], row * step[1]),
        ((column + 1) * step[0], (row + 1) * step[1]),
    )
