"""A sheet as PDF, drawn by the plotting library: the same page data as the HTML, true to scale on its paper."""

from __future__ import annotations

import io
import math
import warnings
from collections.abc import Sequence
from typing import Any

from movement_core.sheet.pages import model
from movement_core.sheet.pages.colours import COLOURS
from movement_core.sheet.pages.model import Arc, Area, Label, Paper, Paragraph, Pen, Sheet, Strokes, tell
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.pdf_flow import POINT_MM
from movement_core.sheet.pages.pdf_fonts import LACKING, Fonts, quiet
from movement_core.sheet.pages.pdf_items import Drawn, Fill, Page, Rule, Words
from movement_core.sheet.pages.pdf_layout import lay_out

INCH_MM = 25.4
ALIGN = {model.START: "left", model.MIDDLE: "center", model.END: "right"}


def sheet_pdf(sheet: Sheet) -> bytes:
    """The whole file.

    Raises
    ------
    HeartsideError : the plotting library is not installed.
    """
    fonts = Fonts()
    from matplotlib import rc_context
    from matplotlib.backends.backend_pdf import PdfPages

    out = io.BytesIO()
    with quiet(), rc_context({"pdf.fonttype": 42, "path.simplify": False}), warnings.catch_warnings():
        # Faces of the computer's may carry tables that the library does not know; the letters are right.
        warnings.filterwarnings("ignore", module="matplotlib|fontTools")
        pages = laid_out(sheet, fonts)
        told = {
            "Title": fonts.drawable(bare(sheet.title.words)),
            "Creator": "Heartside",
            "CreationDate": None,
        }
        with PdfPages(out, metadata=told) as pdf:
            for page in pages:
                pdf.savefig(page_figure(page, sheet.paper, fonts))
    return out.getvalue()


def laid_out(sheet: Sheet, fonts: Fonts) -> list[Page]:
    """Its pages; where letters are lacking in every face, a line at the end says so."""

    def width(text: str, size_mm: float, bold: bool) -> float:
        return fonts.width_mm(fonts.ready(text), size_mm, bold)

    pages = lay_out(sheet, width)
    if not fonts.lacking:
        return pages
    note = tell(
        "{sign} stands for letters that no typeface on this computer has; the sheet as .html has them all.",
        sign=LACKING,
    )
    more = Sheet(
        sheet.title, (*sheet.blocks, Paragraph(note, model.NOTE)), sheet.paper, sheet.foot, sheet.language
    )
    return lay_out(more, width)


def page_figure(page: Page, paper: Paper, fonts: Fonts) -> Any:
    """One page as a figure of the plotting library; its one set of axes counts in mm from the upper left corner."""
    from matplotlib.figure import Figure

    figure = Figure(figsize=(paper.width_mm / INCH_MM, paper.height_mm / INCH_MM))
    axes = figure.add_axes((0.0, 0.0, 1.0, 1.0))
    axes.set_xlim(0, paper.width_mm)
    axes.set_ylim(paper.height_mm, 0)
    axes.set_axis_off()
    artist = _Artist(axes, fonts)
    for item in page.items:
        if isinstance(item, Words):
            artist.words(item.text, item.x, item.y, item.size_mm, item.colour, item.bold, item.anchor)
        elif isinstance(item, Rule):
            artist.lines([((item.x0, item.y0), (item.x1, item.y1))], Pen(item.colour, item.width_mm))
        elif isinstance(item, Fill):
            corners = ((item.x0, item.y0), (item.x1, item.y0), (item.x1, item.y1), (item.x0, item.y1))
            artist.area(corners, item.colour, None)
        else:
            artist.picture(item)
    artist.finish()
    return figure


class _Artist:
    """Draws shapes in the order given; lines of one pen that follow each other are drawn together."""

    def __init__(self, axes: Any, fonts: Fonts) -> None:
        self.axes, self.fonts = axes, fonts
        self.order = 0
        self.waiting: list[Any] = []
        self.pen: Pen | None = None

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
        self.finish()
        drawn = self.fonts.ready(bare(text))
        self.axes.text(
            x, y, drawn,
            fontproperties=self.fonts.properties(size_mm / POINT_MM, bold),
            color=COLOURS[colour],
            ha=ALIGN[anchor],
            va="baseline",
            rotation=90 if turned else 0,
            rotation_mode="anchor",
            parse_math=False,
            zorder=self._next(),
        )  # fmt: skip

    def lines(self, lines: Sequence[Any], pen: Pen) -> None:
        if pen != self.pen:
            self.finish()
        self.pen = pen
        self.waiting += lines

    def finish(self) -> None:
        """Draw the lines that wait."""
        if not self.waiting or self.pen is None:
            return
        from matplotlib.collections import LineCollection

        pen = self.pen
        points = pen.width_mm / POINT_MM
        dash = (0, tuple(max(v / pen.width_mm, 0.01) for v in pen.dash_mm)) if pen.dash_mm else "solid"
        self.axes.add_collection(
            LineCollection(
                self.waiting,
                colors=COLOURS[pen.colour],
                linewidths=points,
                linestyles=[dash],
                zorder=self._next(),
            ),
            autolim=False,
        )
        self.waiting, self.pen = [], None

    def area(self, points: Sequence[Any], fill: str | None, pen: Pen | None) -> None:
        self.finish()
        from matplotlib.patches import Polygon

        dash = (0, tuple(v / pen.width_mm for v in pen.dash_mm)) if pen and pen.dash_mm else "solid"
        self.axes.add_patch(
            Polygon(
                points,
                closed=True,
                facecolor=COLOURS[fill] if fill else "none",
                edgecolor=COLOURS[pen.colour] if pen else "none",
                linewidth=pen.width_mm / POINT_MM if pen else 0.0,
                linestyle=dash,
                joinstyle="miter",
                zorder=self._next(),
            )
        )

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

    def _next(self) -> int:
        self.order += 1
        return self.order
