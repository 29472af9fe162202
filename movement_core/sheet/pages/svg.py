"""A picture as SVG inside HTML: millimetres as user units, words as text, a title and a description for who listens."""

from __future__ import annotations

import math
from html import escape

from movement_core.sheet.pages.colours import COLOURS
from movement_core.sheet.pages.model import Arc, Area, Label, Pen, Picture, Point, Shape, Strokes
from movement_core.sheet.pages.names import bare, clean


def picture_svg(picture: Picture) -> str:
    """The picture as one ``svg`` element. Its size is given in mm and shrinks with its place."""
    name, w, h = escape(picture.name, quote=True), picture.width_mm, picture.height_mm
    head = (
        f'<svg role="img" aria-labelledby="{name}-title {name}-told" viewBox="0 0 {_n(w)} {_n(h)}" '
        f'style="width:{_n(w)}mm">'
    )
    words = (
        f'<title id="{name}-title">{escape(bare(picture.title))}</title>'
        f'<desc id="{name}-told">{escape(bare(picture.told))}</desc>'
    )
    return "\n".join([head + words, *(_shape(shape) for shape in picture.shapes), "</svg>"])


def _shape(shape: Shape) -> str:
    if isinstance(shape, Strokes):
        path = "".join(_line(line) for line in shape.lines)
        return f'<path{_id(shape.id)} fill="none"{_pen(shape.pen)} d="{path}"/>' if path else ""
    if isinstance(shape, Area):
        return f'<path{_id(shape.id)}{_fill(shape.fill)}{_pen(shape.pen)} d="{_line(shape.points)}Z"/>'
    if isinstance(shape, Arc):
        return _arc(shape)
    return _label(shape)


def _line(points: tuple[Point, ...]) -> str:
    return "".join(f"{'L' if i else 'M'}{_n(x)} {_n(y)}" for i, (x, y) in enumerate(points))


def _arc(arc: Arc) -> str:
    (x, y), r = arc.centre, arc.radius_mm
    how = f"{_id(arc.id)}{_fill(arc.fill)}{_pen(arc.pen)}"
    if arc.end - arc.start >= 360:
        return f'<circle{how} cx="{_n(x)}" cy="{_n(y)}" r="{_n(r)}"/>'
    ends = [
        (x + r * math.cos(math.radians(a)), y + r * math.sin(math.radians(a))) for a in (arc.start, arc.end)
    ]
    large = int(arc.end - arc.start > 180)
    return (
        f'<path{how} d="M{_n(ends[0][0])} {_n(ends[0][1])}A{_n(r)} {_n(r)} 0 {large} 1 '
        f'{_n(ends[1][0])} {_n(ends[1][1])}"/>'
    )


def _label(label: Label) -> str:
    (x, y), words = label.place, escape(bare(label.text.words))
    turn = f' transform="rotate(-90 {_n(x)} {_n(y)})"' if label.turned else ""
    bold = ' font-weight="bold"' if label.bold else ""
    anchor = "" if label.anchor == "start" else f' text-anchor="{label.anchor}"'
    return (
        f'<text{_id(label.id)} x="{_n(x)}" y="{_n(y)}" font-size="{_n(label.size_mm)}"{anchor}{bold}{turn} '
        f'fill="{COLOURS[label.colour]}">{words}</text>'
    )


def _id(name: str) -> str:
    return f' data-shape="{escape(clean(name), quote=True)}"' if name else ""


def _fill(name: str | None) -> str:
    return f' fill="{COLOURS[name]}"' if name else ' fill="none"'


def _pen(pen: Pen | None) -> str:
    if pen is None:
        return ""
    dash = f' stroke-dasharray="{" ".join(_n(v) for v in pen.dash_mm)}"' if pen.dash_mm else ""
    return f' stroke="{COLOURS[pen.colour]}" stroke-width="{_n(pen.width_mm)}"{dash}'


def _n(value: float) -> str:
    return f"{value:.2f}".rstrip("0").rstrip(".") or "0"
