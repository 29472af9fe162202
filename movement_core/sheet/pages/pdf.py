"""A sheet as PDF, drawn by the plotting library: the same page data as the HTML, true to scale on its paper."""

from __future__ import annotations

import io
import warnings
from collections.abc import Callable, Sequence
from typing import Any

from movement_core.sheet.pages import model
from movement_core.sheet.pages.model import Paper, Paragraph, Sheet, tell
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.pdf_drawing import INCH_MM, PageDrawing
from movement_core.sheet.pages.pdf_fonts import LACKING, Fonts, quiet
from movement_core.sheet.pages.pdf_items import Page
from movement_core.sheet.pages.pdf_layout import lay_out


def sheet_pdf(sheet: Sheet) -> bytes:
    """The whole file.

    Raises
    ------
    HeartsideError : the plotting library is not installed.
    """
    return pdf_file(sheet.title.words, sheet.paper, lambda fonts: laid_out(sheet, fonts))


def pdf_file(title: str, paper: Paper, pages: Callable[[Fonts], Sequence[Page]]) -> bytes:
    """A file of pages, which are laid out with the faces that the computer has."""
    fonts = Fonts()
    from matplotlib import rc_context
    from matplotlib.backends.backend_pdf import PdfPages

    out = io.BytesIO()
    with quiet(), rc_context({"pdf.fonttype": 42, "path.simplify": False}), warnings.catch_warnings():
        # Faces of the computer's may carry tables that the library does not know; the letters are right.
        warnings.filterwarnings("ignore", module="matplotlib|fontTools")
        drawn = pages(fonts)
        told = {"Title": fonts.drawable(bare(title)), "Creator": "Heartside", "CreationDate": None}
        with PdfPages(out, metadata=told) as pdf:
            for page in drawn:
                pdf.savefig(page_figure(page, paper, fonts))
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
    """One page as a figure of the plotting library, drawn straight by its renderer: no axes, no ticks."""
    from matplotlib.artist import Artist
    from matplotlib.figure import Figure

    class Whole(Artist):
        """Everything on the page, in its order."""

        def draw(self, renderer: Any) -> None:
            PageDrawing(renderer, fonts, paper.height_mm).items(page.items)

    figure = Figure(figsize=(paper.width_mm / INCH_MM, paper.height_mm / INCH_MM))
    figure.add_artist(Whole(), clip=False)
    return figure
