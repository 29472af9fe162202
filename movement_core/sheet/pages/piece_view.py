"""Pictures of the piece with its parts numbered, so many that every part is seen in one of them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import numpy as np

from movement_core.piece.contact.bodies import Body
from movement_core.sheet.pages.measure import ASCENT, DESCENT, width_mm
from movement_core.sheet.pages.model import (
    GRAVE,
    MIDDLE,
    Area,
    Label,
    Pen,
    Picture,
    Point,
    Shape,
    Strokes,
    Text,
)
from movement_core.sheet.pages.numbering import Numbered, capacity, margins, placed, spots
from movement_core.sheet.pages.seen import ABOVE, BELOW, Seen, Side, see
from movement_core.wording import say

NUMBER_MM = 2.6  # size of the numbers' font
MOST_PICTURES = 6
FRAME_MM = 1.0  # kept free round everything
BOX_MM = 0.4  # between a marked number and its frame


def piece_pictures(
    bodies: Sequence[Body], numbers: Mapping[str, int], marks: Mapping[str, str], most_mm: tuple[float, float]
) -> tuple[tuple[Picture, ...], tuple[int, ...]]:
    """The piece from the front; then, of what is not numbered yet, from behind, and with the numbered parts taken away.

    Parameters
    ----------
    bodies : faces of the parts. numbers : key of a part → its number. marks : key → grave or mild.
    most_mm : width and height that a picture may take.

    Returns
    -------
    The pictures, and the numbers of the parts that are in none of them.
    """
    bodies = [body for body in bodies if body.key in numbers and len(body.points)]
    left = {body.key for body in bodies}
    pictures: list[Picture] = []
    shown = list(bodies)
    for turn in range(MOST_PICTURES):
        if not left:
            break
        side = ABOVE if turn != 1 else BELOW
        if turn >= 2:
            shown = [body for body in bodies if body.key in left]
        view = _Numbers(shown, left, numbers, marks)
        picture, done = view.picture(side, most_mm, f"piece-{turn + 1}", _title(turn, side))
        if not done:
            continue
        pictures.append(picture)
        left -= done
    return tuple(pictures), tuple(sorted(numbers[key] for key in left))


def _title(turn: int, side: Side) -> str:
    if turn < 2:
        return say("The piece {side}", side=say(side.name))
    return say("What has no number in the pictures before, {side}", side=say(side.name))


class _Numbers:
    """Numbers some of the bodies that are drawn."""

    def __init__(
        self, bodies: Sequence[Body], wanted: set[str], numbers: Mapping[str, int], marks: Mapping[str, str]
    ) -> None:
        self.bodies, self.marks = bodies, marks
        self.wanted = [i for i, body in enumerate(bodies) if body.key in wanted]
        self.text = {i: str(numbers[body.key]) for i, body in enumerate(bodies)}
        self.widest = max((width_mm(text, NUMBER_MM, bold=True) for text in self.text.values()), default=0.0)

    def picture(
        self, side: Side, most_mm: tuple[float, float], name: str, title: str
    ) -> tuple[Picture, set[str]]:
        """A picture from a side, and the keys of the bodies numbered in it."""
        width, height = most_mm[0] - 2 * FRAME_MM, most_mm[1] - 2 * FRAME_MM
        most = min(len(self.wanted), capacity(NUMBER_MM, height))
        room = margins(most, NUMBER_MM, self.widest, height)
        seen = see(self.bodies, side, (max(width - room.left - room.right, width / 3), height))
        found = spots(seen, self.wanted, [self.text[i] for i in self.wanted], NUMBER_MM)
        outside = [spot for spot in found if not spot.inside][: capacity(NUMBER_MM, height)]
        found = [
            spot for spot in found if spot.inside or spot in outside
        ]  # the rest waits for the next picture
        room = margins(len(outside), NUMBER_MM, self.widest, height)
        tall = max(seen.height_mm, room.height)
        drop = (tall - seen.height_mm) / 2
        moved = [type(s)(s.index, (s.place[0], s.place[1] + drop), s.inside) for s in found]
        numbers = placed(moved, seen.width_mm, tall, NUMBER_MM, self.widest)
        shift = (FRAME_MM + room.left, FRAME_MM)
        shapes = [*self._lines(seen, (shift[0], shift[1] + drop)), *self._labels(numbers, shift)]
        size = (seen.width_mm + room.left + room.right + 2 * FRAME_MM, tall + 2 * FRAME_MM)
        told = say(
            "Line drawing of {count} parts, {side}; the numbers are those of the table of parts.",
            count=len(self.bodies),
            side=say(side.name),
        )
        return Picture(name, title, told, *size, tuple(shapes)), {self.bodies[n.index].key for n in numbers}

    def _lines(self, seen: Seen, shift: Point) -> list[Shape]:
        drawn: list[Shape] = []
        plain: list[tuple[Point, ...]] = []
        for body, lines in zip(self.bodies, seen.lines):
            moved = np.round(lines + np.array(shift), 2)
            strokes = [((float(a[0]), float(a[1])), (float(b[0]), float(b[1]))) for a, b in moved]
            if self.marks.get(body.key) == GRAVE and strokes:
                drawn.append(Strokes(tuple(strokes), Pen("grave", 0.35), f"part-{body.key}"))
            else:
                plain += strokes
        return [Strokes(tuple(plain), Pen("ink", 0.15), "parts"), *drawn]

    def _labels(self, numbers: Sequence[Numbered], shift: Point) -> list[Shape]:
        shapes: list[Shape] = []
        leaders: list[tuple[Point, ...]] = []
        for one in numbers:
            mark = self.marks.get(self.bodies[one.index].key, "")
            text, x, y = self.text[one.index], one.place[0] + shift[0], one.place[1] + shift[1]
            if one.leader:
                leaders.append(tuple((p[0] + shift[0], p[1] + shift[1]) for p in one.leader))
            if mark:
                half = width_mm(text, NUMBER_MM, bold=True) / 2 + BOX_MM
                top, bottom = y - NUMBER_MM * ASCENT - BOX_MM / 2, y + NUMBER_MM * DESCENT / 2
                box = ((x - half, top), (x + half, top), (x + half, bottom), (x - half, bottom))
                shapes.append(Area(box, "paper", Pen(mark, 0.25), f"mark-{text}"))
            shapes.append(
                Label(Text(text), (x, y), NUMBER_MM, MIDDLE, mark or "ink", bold=True, id=f"number-{text}")
            )
        ends = [_dot(line[-1]) for line in leaders]
        return [Strokes(tuple(leaders), Pen("quiet", 0.12), "leaders"), *ends, *shapes]


def _dot(place: Point) -> Area:
    x, y = place
    return Area(((x - 0.3, y), (x, y - 0.3), (x + 0.3, y), (x, y + 0.3)), "quiet")
