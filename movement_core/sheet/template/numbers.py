"""The numbers of a template's fasteners as single strokes, for drawings that have to carry them as lines."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from movement_core.sheet.pages.boxes import Box
from movement_core.sheet.pages.measure import width_em
from movement_core.sheet.pages.model import END, Label, Pen, Point, Strokes, Text
from movement_core.sheet.template.beside import around, words_beside
from movement_core.sheet.template.marks import TemplateMarks

Line = tuple[Point, ...]

# Digits as open lines, x to the right from 0 to 4, y down from 0 to 6, as lettering of technical drawings has them.
DIGITS: Mapping[str, tuple[Line, ...]] = {
    "0": (((1, 0), (3, 0), (4, 1), (4, 5), (3, 6), (1, 6), (0, 5), (0, 1), (1, 0)),),
    "1": (((0.5, 1.5), (2, 0), (2, 6)),),
    "2": (((0, 1), (1, 0), (3, 0), (4, 1), (4, 2), (0, 6), (4, 6)),),
    "3": (((0, 0), (4, 0), (2, 2.5), (3, 2.5), (4, 3.5), (4, 5), (3, 6), (1, 6), (0, 5)),),
    "4": (((3, 6), (3, 0), (0, 4), (4, 4)),),
    "5": (((4, 0), (0.5, 0), (0, 2.5), (3, 2.5), (4, 3.5), (4, 5), (3, 6), (1, 6), (0, 5)),),
    "6": (((3.5, 0), (2, 0), (0, 2.5), (0, 5), (1, 6), (3, 6), (4, 5), (4, 3.5), (3, 2.5), (0, 2.5)),),
    "7": (((0, 0), (4, 0), (1.5, 6)),),
    "8": (
        ((1, 2.8), (0, 2), (0, 1), (1, 0), (3, 0), (4, 1), (4, 2), (3, 2.8), (1, 2.8)),
        ((1, 2.8), (0, 3.7), (0, 5), (1, 6), (3, 6), (4, 5), (4, 3.7), (3, 2.8)),
    ),
    "9": (((4, 3.5), (1, 3.5), (0, 2.5), (0, 1), (1, 0), (3, 0), (4, 1), (4, 3.5), (2, 6), (0.5, 6)),),
}
DIGIT_HIGH = 6.0
OUTSIDE_MM = 15.0  # beside a top that is drawn too narrow for them
HIGH_EM, STEP_EM, WIDE_EM = 0.72, 0.64, 0.44  # of a digit, by the font whose room it takes


@dataclass(frozen=True)
class DrawnNumber:
    """A fastener's number. ``lines``: mm from the datum, as its ``ScrewMark``. ``box``: the room it takes there."""

    number: int
    lines: tuple[Line, ...]
    box: Box


def drawn_numbers(
    marks: TemplateMarks, scale: float, arm_mm: float, high_mm: float
) -> tuple[DrawnNumber, ...]:
    """Each fastener's number beside it, clear of what is drawn, as far as there is room.

    ``scale``: of the drawing. ``arm_mm``, ``high_mm``: of a screw's cross and of a digit, on the paper.
    """

    def paper(points: tuple[Point, ...]) -> tuple[Point, ...]:
        return tuple((x * scale, y * scale) for x, y in points)

    end, wide = marks.length_mm, marks.width_today_mm
    drawn = [Strokes((paper(((0.0, y), (end, y))),), Pen(), "glue lines") for y in marks.glue_lines]
    drawn += [Strokes((paper((*cut.points, cut.points[0])),), Pen(), cut.purpose) for cut in marks.cuts]
    for screw in marks.screws:
        (x, y) = paper((screw.place,))[0]
        cross = (((x - arm_mm, y), (x + arm_mm, y)), ((x, y - arm_mm), (x, y + arm_mm)))
        drawn.append(Strokes(cross, Pen(), "screw"))
    drawn.append(Strokes((paper((*marks.outline, marks.outline[0])),), Pen(), "top"))
    frame = (-OUTSIDE_MM, -OUTSIDE_MM, end * scale + OUTSIDE_MM, wide * scale + OUTSIDE_MM)
    size = high_mm / HIGH_EM
    found: list[DrawnNumber] = []
    taken: list[Box] = []
    for screw in marks.screws:
        label = Label(Text(str(screw.number)), (0.0, high_mm / 2), size)
        others = paper(tuple(one.place for one in marks.screws if one is not screw))
        told = words_beside([label], paper((screw.place,))[0], others, arm_mm, frame, drawn, taken)
        taken.append(around(told))
        lines = tuple(tuple((x / scale, y / scale) for x, y in line) for line in _strokes(told[0]))
        x0, y0, x1, y1 = taken[-1]
        found.append(DrawnNumber(screw.number, lines, (x0 / scale, y0 / scale, x1 / scale, y1 / scale)))
    return tuple(found)


def _strokes(label: Label) -> list[Line]:
    """The digits of a label in the room that its font would take."""
    words, size = label.text.words, label.size_mm
    left = label.place[0] - (width_em(words) * size if label.anchor == END else 0.0)
    unit_y = HIGH_EM * size / DIGIT_HIGH
    unit_x = WIDE_EM * size / 4
    top = label.place[1] - HIGH_EM * size
    return [
        tuple((left + STEP_EM * size * at + 0.1 * size + x * unit_x, top + y * unit_y) for x, y in line)
        for at, digit in enumerate(words)
        for line in DIGITS[digit]
    ]
