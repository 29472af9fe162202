"""What a sheet is made of: frozen data that HTML, PDF and tests read alike. Nothing here draws or measures.

Lengths on the paper are millimetres, x to the right, y down from a picture's upper left corner. Text that a user wrote
(names of parts, the job) stands between the marks of Unicode isolates, so that a name written from right to left does
not turn the words round it; the forms turn the marks into what they have for it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from movement_core.wording import say

Pointer = tuple[str | int, ...]  # keys and places that lead to a value in the sheet's JSON
Point = tuple[float, float]

NEAREST, UP, DOWN = "nearest", "up", "down"


@dataclass(frozen=True)
class Figure:
    """A figure as it is shown, and where in the JSON it stands.

    ``rounding``: which way it was rounded; what has to be safe is rounded to the safe side.
    """

    shown: str
    at: Pointer
    rounding: str = NEAREST

    def __str__(self) -> str:
        return self.shown

    def __format__(self, spec: str) -> str:
        return format(self.shown, spec)


@dataclass(frozen=True)
class Text:
    """Words, and the figures in them."""

    words: str = ""
    figures: tuple[Figure, ...] = ()

    def __str__(self) -> str:
        return self.words

    def __format__(self, spec: str) -> str:
        return format(self.words, spec)


def tell(template: str, /, **values: object) -> Text:
    """A sentence with its figures: values that are figures or texts hand theirs on.

    >>> tell("{wide} mm", wide=Figure("12.5", ("width",))).figures[0].at
    ('width',)
    """
    figures: list[Figure] = []
    for value in values.values():
        figures += [value] if isinstance(value, Figure) else value.figures if isinstance(value, Text) else ()
    return Text(say(template, **values), tuple(figures))


def joined(texts: Sequence[Text | Figure | str], between: str = " ") -> Text:
    """Texts one after another; empty ones are left out."""
    kept = [text for text in texts if str(text)]
    figures: list[Figure] = []
    for text in kept:
        if isinstance(text, Figure):
            figures.append(text)
        elif isinstance(text, Text):
            figures += text.figures
    return Text(between.join(str(text) for text in kept), tuple(figures))


# ---- blocks -----------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Heading:
    """``level`` 2 opens a section, 3 stands inside one. ``new_page``: begins on a page of its own."""

    words: str
    level: int = 2
    new_page: bool = False


PLAIN, NOTE, CAUTION = "plain", "note", "caution"


@dataclass(frozen=True)
class Paragraph:
    text: Text
    kind: str = PLAIN


@dataclass(frozen=True)
class Listing:
    items: tuple[Text, ...]
    kind: str = PLAIN


@dataclass(frozen=True)
class Field:
    """A line of a form: what is known, or None for a line to write on."""

    label: str
    value: Text | None


@dataclass(frozen=True)
class Form:
    """Fields in so many columns, read along each row."""

    fields: tuple[Field, ...]
    columns: int = 2


LEFT, RIGHT, CENTRE = "left", "right", "centre"


@dataclass(frozen=True)
class Column:
    """``share``: of the table's width, by weight. ``group``: a heading over neighbouring columns of the same group."""

    title: str
    share: float = 1.0
    align: str = LEFT
    group: str = ""


GRAVE, MILD = "grave", "mild"


@dataclass(frozen=True)
class Row:
    """``mark``: grave, mild or nothing; forms show it by more than colour."""

    cells: tuple[Text, ...]
    mark: str = ""


@dataclass(frozen=True)
class Table:
    """The first column names what each row is about."""

    caption: str
    columns: tuple[Column, ...]
    rows: tuple[Row, ...]


def without_empty(table: Table, keep: int = 2) -> Table:
    """The table without the columns that hold nothing in any row; the first ``keep`` stay."""
    full = [i for i in range(len(table.columns)) if i < keep or any(row.cells[i].words for row in table.rows)]
    return Table(
        table.caption,
        tuple(table.columns[i] for i in full),
        tuple(Row(tuple(row.cells[i] for i in full), row.mark) for row in table.rows),
    )


# ---- pictures ---------------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Pen:
    colour: str = "ink"  # a name of ``colours.COLOURS``
    width_mm: float = 0.2
    dash_mm: tuple[float, ...] = ()


@dataclass(frozen=True)
class Strokes:
    """Open lines, all drawn with one pen."""

    lines: tuple[tuple[Point, ...], ...]
    pen: Pen
    id: str = ""


@dataclass(frozen=True)
class Area:
    """A polygon, filled, outlined or both."""

    points: tuple[Point, ...]
    fill: str | None = None
    pen: Pen | None = None
    id: str = ""


@dataclass(frozen=True)
class Arc:
    """Part of a circle, from ``start`` to ``end`` degrees, clockwise from +x as y runs down; 0 to 360 is the whole."""

    centre: Point
    radius_mm: float
    pen: Pen
    start: float = 0.0
    end: float = 360.0
    fill: str | None = None
    id: str = ""


START, MIDDLE, END = "start", "middle", "end"


@dataclass(frozen=True)
class Label:
    """Words in a picture on one line: ``place`` is on the base line, at the start, middle or end of the words.

    ``turned``: read from below, turned a quarter to the left.
    """

    text: Text
    place: Point
    size_mm: float = 2.5  # of the font
    anchor: str = START
    colour: str = "ink"
    bold: bool = False
    turned: bool = False
    id: str = ""


Shape = Strokes | Area | Arc | Label


@dataclass(frozen=True)
class Picture:
    """A drawing of so many mm. ``told``: what it shows, in words, for who cannot see it."""

    name: str
    title: str
    told: str
    width_mm: float
    height_mm: float
    shapes: tuple[Shape, ...]


@dataclass(frozen=True)
class Pictures:
    """Pictures side by side as far as they fit."""

    pictures: tuple[Picture, ...]


Block = Heading | Paragraph | Listing | Form | Table | Pictures


@dataclass(frozen=True)
class Paper:
    """A sheet of paper as it lies before the reader, mm, and the margin kept free all round."""

    name: str
    width_mm: float
    height_mm: float
    margin_mm: float = 12.0

    @property
    def content_mm(self) -> float:
        return self.width_mm - 2 * self.margin_mm


@dataclass(frozen=True)
class Sheet:
    """A whole sheet. ``foot``: the line under every page, beside the page's number."""

    title: Text
    blocks: tuple[Block, ...]
    paper: Paper
    foot: Text
    language: str = "en"
