"""Lines of words and the pages that they fill, from top to bottom."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from movement_core.sheet.pages.model import Sheet
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.pdf_items import Item, Words

Width = Callable[[str, float, bool], float]

POINT_MM = 25.4 / 72
TITLE, SECTION, INNER, BODY, SMALL, TABLE = (pt * POINT_MM for pt in (16, 12, 10, 9.2, 8, 7.2))
LINE = 1.3  # distance of lines by their size
ASCENT = 0.8  # of the first line's base below its top, by the size
MEASURE_MM = 185.0  # longest line of running text
FOOT_MM = 8.0  # kept for the line under each page
KEEP_MM = 26.0  # a heading wants this much below it
GAP_MM = 5.0  # between pictures
BLANK_MM = 6.5  # height of a line to write on
# A sign is never parted from its number, nor the two sides of a fraction, nor a number at its comma.
_BREAKS = re.compile(
    r"(?<=[ –])|(?<=[\-/,])(?!\d)|(?<=[\u2e80-\u9fff\uac00-\ud7af])|(?=[\u2e80-\u9fff\uac00-\ud7af])"
)


def wrap(text: str, width_mm: float, size_mm: float, width: Width, bold: bool = False) -> list[str]:
    """Lines of a text that fit a width; a word that is too long for a line is cut anywhere."""
    lines = []
    for paragraph in bare(text).split("\n"):
        line = ""
        for piece in _BREAKS.split(paragraph):
            if not piece:
                continue
            if line and width((line + piece).rstrip(), size_mm, bold) > width_mm:
                lines.append(line.rstrip())
                line = ""
            while width(piece.rstrip(), size_mm, bold) > width_mm and len(piece) > 1:
                cut = _cut(piece, width_mm, size_mm, width, bold)
                lines.append(piece[:cut])
                piece = piece[cut:]
            line += piece if line else piece.lstrip()
        lines.append(line.rstrip())
    return lines


def _cut(piece: str, width_mm: float, size_mm: float, width: Width, bold: bool) -> int:
    """How many letters of a word fit, at least one."""
    low, high = 1, len(piece)
    while low < high:
        middle = (low + high + 1) // 2
        if width(piece[:middle], size_mm, bold) <= width_mm:
            low = middle
        else:
            high = middle - 1
    return low


@dataclass
class Flow:
    """The pages so far, and how far down the last one is filled."""

    sheet: Sheet
    width: Width
    pages: list[list[Item]] = field(default_factory=lambda: [[]])

    def __post_init__(self) -> None:
        paper = self.sheet.paper
        self.left, self.top = paper.margin_mm, paper.margin_mm
        self.right, self.bottom = (
            paper.width_mm - paper.margin_mm,
            paper.height_mm - paper.margin_mm - FOOT_MM,
        )
        self.y = self.top

    @property
    def across(self) -> float:
        return self.right - self.left

    @property
    def room(self) -> float:
        return self.bottom - self.y

    @property
    def fresh(self) -> bool:
        return self.y <= self.top + 1e-6

    def new_page(self) -> None:
        if not self.fresh:
            self.pages.append([])
            self.y = self.top

    def need(self, height: float) -> None:
        if height > self.room + 1e-6:
            self.new_page()

    def skip(self, height: float) -> None:
        if not self.fresh:
            self.y += height

    def put(self, item: Item) -> None:
        self.pages[-1].append(item)

    def lines(
        self, lines: Sequence[str], x: float, size: float, colour: str = "ink", bold: bool = False
    ) -> None:
        """Lines one below another, going on over the page where they must."""
        for line in lines:
            self.need(size * LINE)
            self.put(Words(line, x, self.y + size * ASCENT + size * (LINE - 1) / 2, size, colour, bold))
            self.y += size * LINE
