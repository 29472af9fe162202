"""Draws the items of a page by a renderer of the plotting library, in mm from the upper left corner of the paper."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from typing import Any

from movement_core.sheet.pages import model
from movement_core.sheet.pages.colours import COLOURS
from movement_core.sheet.pages.model import Arc, Area, Label, Pen, Strokes
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.pdf_fonts import POINT_MM, Fonts
from movement_core.sheet.pages.pdf_items import Drawn, Fill, Item, Rule, Words

INCH_MM = 25.4
BEFORE = {model.START: 0.0, model.MIDDLE: 0.5, model.END: 1.0}
"""Share of a text's width that lies before its place."""


class PageDrawing:
    """One page while it is drawn; lines of one pen that follow each other are drawn together.

    Text goes to the renderer as it is: laying it out again, letter by letter, took longer than all the rest.
    """

    def __init__(self, renderer: Any, fonts: Fonts, height_mm: float) -> None:
        from matplotlib.transforms import Affine2D

        self.renderer, self.fonts = renderer, fonts
        self.point = renderer.points_to_pixels(1.0)
        mm = self.point / POINT_MM
        self.to_paper = Affine2D().scale(mm, -mm).translate(0.0, height_mm * mm)
        self.waiting: list[Sequence[model.Point]] = []
        self.pen: Pen | None = None

    def items(self, items: Iterable[Item]) -> None:
        """Draw them in their order."""
        for item in items:
            if isinstance(item, Words):
                self.words(item.text, item.x, item.y, item.size_mm, item.colour, item.bold, item.anchor)
            elif isinstance(item, Rule):
                self.lines([((item.x0, item.y0), (item.x1, item.y1))], Pen(item.colour, item.width_mm))
            elif isinstance(item, Fill):
                corners = ((item.x0, item.y0), (item.x1, item.y0), (item.x1, item.y1), (item.x0, item.y1))
                self.area(corners, item.colour, None)
            else:
                self.picture(item)
        self.finish()

    def words(
        self,
        text: str,
        x: float,
        y: float,
        size_mm: float,
        colour: str,
        bold: bool,
        anchor: str,
        turned: bool = False,
    ) -> None:
        """A line of text whose baseline starts, has its middle or ends at a place."""
        self.finish()
        drawn = self.fonts.ready(bare(text))
        if not drawn.strip():
            return
        face = self.fonts.properties(size_mm / POINT_MM, bold)
        across, down = self.to_paper.transform((x, y))
        before = BEFORE[anchor]
        if before:
            width = self._width(drawn, face, size_mm, bold)
            across, down = (across, down - before * width) if turned else (across - before * width, down)
        context = self._context(colour)
        self.renderer.draw_text(context, across, down, drawn, face, 90.0 if turned else 0.0)
        context.restore()

    def _width(self, text: str, face: Any, size_mm: float, bold: bool) -> float:
        """In the renderer's units: by the faces' tables, or by the renderer where it may join letters."""
        if text.isascii():
            return float(self.fonts.width_mm(text, size_mm, bold) / POINT_MM * self.point)
        width, _, _ = self.renderer.get_text_width_height_descent(text, face, ismath=False)
        return float(width)

    def lines(self, lines: Sequence[Any], pen: Pen) -> None:
        """Lines, drawn as soon as another pen or another kind of item comes."""
        if pen != self.pen:
            self.finish()
        self.pen = pen
        self.waiting += lines

    def finish(self) -> None:
        """Draw the lines that wait."""
        if self.waiting and self.pen is not None:
            self._path(self.waiting, False, self.pen, None)
        self.waiting, self.pen = [], None

    def area(self, points: Sequence[Any], fill: str | None, pen: Pen | None) -> None:
        """A closed outline, filled, drawn round, or both."""
        self.finish()
        self._path([points], True, pen, fill)

    def picture(self, drawn: Drawn) -> None:
        """A picture's shapes, moved and shrunk to their place; pens keep their width."""
        x0, y0, k = drawn.x, drawn.y, drawn.scale

        def at(points: Sequence[model.Point]) -> list[model.Point]:
            return [(x0 + x * k, y0 + y * k) for x, y in points]

        for shape in drawn.picture.shapes:
            if isinstance(shape, Strokes):
                self.lines([at(line) for line in shape.lines], shape.pen)
            elif isinstance(shape, Area):
                self.area(at(shape.points), shape.fill, shape.pen)
            elif isinstance(shape, Arc):
                self._arc(shape, at)
            else:
                self._label(shape, at, k)
        self.finish()

    def _arc(self, arc: Arc, at: Any) -> None:
        count = max(16, int(abs(arc.end - arc.start) / 6))
        angles = [math.radians(arc.start + (arc.end - arc.start) * i / count) for i in range(count + 1)]
        (x, y), r = arc.centre, arc.radius_mm
        points = at([(x + r * math.cos(a), y + r * math.sin(a)) for a in angles])
        if arc.fill or arc.end - arc.start >= 360:
            self.area(points, arc.fill, arc.pen)
        else:
            self.lines([points], arc.pen)

    def _label(self, label: Label, at: Any, k: float) -> None:
        ((x, y),) = at([label.place])
        self.words(
            label.text.words, x, y, label.size_mm * k, label.colour, label.bold, label.anchor, label.turned
        )

    def _path(self, lines: Sequence[Any], closed: bool, pen: Pen | None, fill: str | None) -> None:
        from matplotlib.colors import to_rgb
        from matplotlib.path import Path

        seen = pen.colour if pen else fill
        if seen is None:
            return
        points: list[model.Point] = []
        codes: list[int] = []
        for line in lines:
            points += line
            codes += [int(Path.MOVETO)] + [int(Path.LINETO)] * (len(line) - 1)
            if closed:
                points.append(line[0])
                codes.append(int(Path.CLOSEPOLY))
        context = self._context(seen)
        context.set_linewidth(pen.width_mm / POINT_MM * self.point if pen else 0.0)
        if pen and pen.dash_mm:
            least = 0.01 * pen.width_mm  # a dot is a dash without length, which the format does not know
            context.set_dashes(0.0, [max(v, least) / POINT_MM * self.point for v in pen.dash_mm])
        if closed:
            context.set_joinstyle("miter")
        self.renderer.draw_path(
            context, Path(points, codes), self.to_paper, to_rgb(COLOURS[fill]) if fill else None
        )
        context.restore()

    def _context(self, colour: str) -> Any:
        """What the renderer is told of a pen; restored after use."""
        context = self.renderer.new_gc()
        context.set_foreground(COLOURS[colour])
        return context
