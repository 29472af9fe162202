"""Widths through the year: as built, today, and how far they may be off."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import DAYS
from movement_core.air.sequence import day_of_year
from movement_core.air.year import MONTHS
from movement_core.piece.course import Course
from movement_core.piece.solve import SolvedPart
from movement_core.sheet.pages.boxes import Box, label_box, placed_free
from movement_core.sheet.pages.lengths import MM, Lengths
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import (
    END,
    MIDDLE,
    Arc,
    Area,
    Label,
    Pen,
    Picture,
    Point,
    Pointer,
    Shape,
    Strokes,
    Text,
    tell,
)
from movement_core.sheet.pages.names import isolated
from movement_core.sheet.pages.part_table import size
from movement_core.wording import say

Floats = NDArray[np.float64]

MOST = 6  # pictures, the liveliest first
LEAST_SWING_MM = 0.3  # over the year; less is not drawn
WIDTH_MM, HEIGHT_MM = 80.0, 52.0
LEFT_MM, RIGHT_MM, TOP_MM, BOTTOM_MM = 13.0, 2.0, 3.0, 5.5  # round the field
WORDS_MM = 2.3
TICKS = 5  # at most
TENTHS = (1, 2, 5, 10, 20, 50, 100, 200, 500, 1000)  # of a millimetre
SIXTY_FOURTHS = (1, 2, 4, 8, 16, 32, 64, 128, 256)  # of an inch
APART_MM = 0.8  # between two labels


@dataclass(frozen=True, eq=False)
class _Curve:
    """One width: its course, the likely error of its driest and wettest day, its part of the JSON."""

    name: str
    title: str
    course: Course
    moisture: Floats
    errors: tuple[float, float]
    entry: Mapping[str, Any]
    at: Pointer


def year_pictures(material: Material, lengths: Lengths) -> tuple[Picture, ...]:
    """The widths that change most: panels first, then boards that are in none, alike ones once."""
    curves = [*_panels(material), *_boards(material)]
    lively = sorted(curves, key=lambda c: (c.at[1] != "panels", -c.course.swing_mm))
    chosen = [curve for curve in lively if curve.course.swing_mm >= LEAST_SWING_MM][:MOST]
    day = day_of_year(material.whole.solved.today)
    return tuple(_picture(curve, day, lengths) for curve in chosen)


def _panels(material: Material) -> list[_Curve]:
    curves = []
    for place, panel in enumerate(material.whole.panels):
        width, days = panel.width, panel.boards[0].mc_days
        if width is None or days is None:
            continue
        each = [_errors(material, board) for board in panel.boards]
        errors = (sum(e[0] for e in each), sum(e[1] for e in each))  # boards of one tree err together
        entry = material.data["report"]["panels"][place]
        title = say("{name}, {count} boards", name=isolated(panel.name), count=len(panel.boards))
        curves.append(
            _Curve(f"year-panel-{place + 1}", title, width, days, errors, entry, ("report", "panels", place))
        )
    return curves


def _boards(material: Material) -> list[_Curve]:
    in_panels = {id(board) for panel in material.whole.panels for board in panel.boards}
    alike: dict[tuple[Any, ...], list[int]] = {}
    for place, solved in enumerate(material.parts):
        if id(solved) in in_panels or solved.width is None or solved.mc_days is None:
            continue
        entry = material.data["report"]["parts"][place]
        key = (entry["species"], entry["width_mm"], entry["driest_mm"], entry["wettest_mm"], entry["today_mm"],
               str(entry.get("driest_range_mm")), str(entry["doubt"]))  # fmt: skip
        alike.setdefault(key, []).append(place)
    curves = []
    for places in alike.values():
        solved, place = material.parts[places[0]], places[0]
        assert solved.width is not None and solved.mc_days is not None  # looked at above
        also = say(" and {count} alike", count=len(places) - 1) if len(places) > 1 else ""
        title = say("{number} {name}{also}", number=place + 1, name=isolated(solved.part.name), also=also)
        entry = material.data["report"]["parts"][place]
        curves.append(
            _Curve(f"year-part-{place + 1}", title, solved.width, solved.mc_days, _errors(material, solved), entry,
                   ("report", "parts", place))
        )  # fmt: skip
    return curves


def _errors(material: Material, solved: SolvedPart) -> tuple[float, float]:
    """Likely error of the driest and the wettest width, mm."""
    doubt = material.data["report"]["parts"][material.number[solved.part.key] - 1]["doubt"] or {}
    course = solved.width
    found = []
    for when, day in (("driest", solved.driest_day), ("wettest", solved.wettest_day)):
        if when not in doubt or course is None:
            found.append(0.0)
            continue
        low, high = doubt[when]["likely_mm"]
        found.append(max(0.0, (high - low - float(course.most_mm[day] - course.least_mm[day])) / 2))
    return found[0], found[1]


def _picture(curve: _Curve, today: int, lengths: Lengths) -> Picture:
    course, mc = curve.course, curve.moisture
    share = (mc - mc.min()) / max(float(np.ptp(mc)), 1e-9)
    error = curve.errors[0] + share * (curve.errors[1] - curve.errors[0])
    low, high = course.least_mm - error, course.most_mm + error
    bottom = min(float(low.min()), course.as_drawn_mm, course.today.least)
    top = max(float(high.max()), course.as_drawn_mm, course.today.most)
    pad = 0.06 * max(top - bottom, 0.1)
    field = _Field(bottom - pad, top + pad)
    x = field.x(np.arange(DAYS))
    band = [*zip(x, field.y(high)), *zip(x[::-1], field.y(low)[::-1])]
    shapes: list[Shape] = [Area(_points(band), "band", id="likely")]
    shapes += _axes(field, lengths)
    if course.days_mm is not None:
        shapes.append(Strokes((_points(zip(x, field.y(course.days_mm))),), Pen("ink", 0.4), "width"))
    else:
        ends = tuple(_points(zip(x, field.y(end))) for end in (course.least_mm, course.most_mm))
        shapes.append(Strokes(ends, Pen("ink", 0.3), "least and most"))
    built = float(field.y(course.as_drawn_mm))
    shapes.append(
        Strokes((((field.left, built), (field.right, built)),), Pen("built", 0.2, (1.6, 1.0)), "as built")
    )
    now = float(field.x(today))
    shapes.append(Strokes((((now, field.top), (now, field.bottom)),), Pen("today", 0.2, (0.5, 0.6)), "today"))
    seen = (course.today.least + course.today.most) / 2 if course.today.value is None else course.today.value
    shapes.append(Arc((now, float(field.y(seen))), 0.7, Pen("today", 0.2), fill="today"))
    shapes += _words(curve, field, now, built, lengths)
    title = say("Width of {what}, {unit}", what=curve.title, unit=lengths.unit)
    told = say(
        "Width through the year from January to December: dashed as built, dotted today; shaded where it lies two "
        "times in three. It is driest in {dry} and wettest in {wet}.",
        dry=say(curve.entry["driest_month"] or "?"), wet=say(curve.entry["wettest_month"] or "?"),
    )  # fmt: skip
    return Picture(curve.name, title, told, WIDTH_MM, HEIGHT_MM, tuple(shapes))


@dataclass(frozen=True)
class _Field:
    """The field of a curve: days and mm onto paper."""

    low: float
    high: float
    left: float = LEFT_MM
    right: float = WIDTH_MM - RIGHT_MM
    top: float = TOP_MM
    bottom: float = HEIGHT_MM - BOTTOM_MM

    def x(self, day: Any) -> Any:
        return self.left + (np.asarray(day) + 0.5) / DAYS * (self.right - self.left)

    def y(self, mm: Any) -> Any:
        return self.bottom - (np.asarray(mm) - self.low) / (self.high - self.low) * (self.bottom - self.top)


def _points(pairs: Any) -> tuple[Point, ...]:
    """Every second day is enough for a curve of this size."""
    points = [(round(float(a), 2), round(float(b), 2)) for a, b in pairs]
    return tuple(points[i] for i in range(len(points)) if i % 2 == 0 or i == len(points) - 1)


def _axes(field: _Field, lengths: Lengths) -> list[Shape]:
    months = np.linspace(field.left, field.right, 13)
    ticks = tuple(((float(m), field.bottom), (float(m), field.bottom + 0.8)) for m in months)
    frame = ((field.left, field.top), (field.left, field.bottom), (field.right, field.bottom))
    shapes: list[Shape] = [Strokes((frame, *ticks), Pen("rule", 0.15), "axes")]
    for month, start in zip(MONTHS, months):
        middle = float(start) + float(months[1] - months[0]) / 2
        shapes.append(Label(Text(say(month)[:1]), (middle, field.bottom + 3.2), WORDS_MM, MIDDLE, "quiet"))
    lines = []
    for spot in ticks_at(field.low, field.high, lengths):
        y = float(field.y(spot))
        shown = lengths.near(spot, ()).shown
        shapes.append(Label(Text(shown), (field.left - 1.2, y + 0.8), WORDS_MM, END, "quiet"))
        lines.append(((field.left - 0.8, y), (field.left, y)))
    return [*shapes, Strokes(tuple(lines), Pen("rule", 0.15))]


def ticks_at(low: float, high: float, lengths: Lengths) -> list[float]:
    """Round figures between two lengths, each another one and shown without rounding: whole steps of the unit."""
    for factor in TENTHS if lengths.units == MM else SIXTY_FOURTHS:
        step = factor * lengths.step_mm
        first, last = math.ceil(low / step), math.floor(high / step)
        if last - first < TICKS:
            return [count * step for count in range(first, last + 1)]
    return []


def _words(curve: _Curve, field: _Field, now: float, built: float, lengths: Lengths) -> list[Shape]:
    """Driest, wettest, today and as built, each near its place and over no other."""
    course, entry, at = curve.course, curve.entry, curve.at
    frame = (field.left + 0.8, field.top - 1.5, field.right, field.bottom - 0.2)
    days = course.days_mm if course.days_mm is not None else (course.least_mm + course.most_mm) / 2
    wanted: list[tuple[Text, Point, str]] = []
    for when, colour in (("driest", "dry"), ("wettest", "wet"), ("today", "today")):
        day = int(np.argmin(days)) if when == "driest" else int(np.argmax(days))
        x = now if when == "today" else float(field.x(day))
        middle = (course.today.least + course.today.most) / 2
        y = float(field.y(middle if when == "today" else days[day]))
        wanted.append(
            (tell("{when} {size}", when=say(when), size=size(entry, at, when, lengths)), (x, y), colour)
        )
    wanted.append((Text(say("as built")), (field.right, built), "built"))
    placed: list[Label] = []
    drawn = _drawn(course, field, now, built)
    for text, (x, y), colour in wanted:
        label = Label(text, (x, y), WORDS_MM, MIDDLE, colour)
        half = (label_box(label)[2] - label_box(label)[0]) / 2
        middles = [min(max(x, frame[0] + half), frame[2] - half), frame[0] + half, frame[2] - half]
        steps = [y + sign * far for far in np.arange(1.2, 30.0, 0.8) for sign in (-1, 1)]
        beside = [middles[0], middles[0] - half, middles[0] + half, now - half - 1.0, now + half + 1.0]
        near = [m for m in beside if frame[0] + half <= m <= frame[2] - half]
        places = [(m, float(h)) for h in steps for m in (*near, *middles[1:])]
        places.sort(key=_nearness(x, y))
        taken = [(box[0] - APART_MM, box[1], box[2] + APART_MM, box[3]) for box in map(label_box, placed)]
        found = placed_free(label, places, [*taken, *drawn], frame) or placed_free(
            label, places, taken, frame
        )
        if found is not None:
            placed.append(found)
    return list(placed)


def _nearness(x: float, y: float) -> Callable[[Point], float]:
    """How far a label's place is from a point, aside counting less than up or down."""
    return lambda place: math.hypot(place[0] - x, 1.5 * (place[1] - 0.6 - y))


def _drawn(course: Course, field: _Field, now: float, built: float) -> list[Box]:
    """Small boxes along the lines of a curve, for words to keep clear of."""
    days = np.arange(0, DAYS, 4)
    lines = [course.days_mm] if course.days_mm is not None else [course.least_mm, course.most_mm]
    points = [(float(x), float(y)) for line in lines for x, y in zip(field.x(days), field.y(line[days]))]
    points += [(float(x), built) for x in np.arange(field.left, field.right, 2.0)]
    points += [(now, float(y)) for y in np.arange(field.top, field.bottom, 2.0)]
    return [(x - 0.5, y - 0.4, x + 0.5, y + 0.4) for x, y in points]
