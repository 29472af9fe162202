"""The room that the labels of a picture take, and finding free room for one more."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from movement_core.sheet.pages.measure import ASCENT, DESCENT, width_mm
from movement_core.sheet.pages.model import END, MIDDLE, Label, Picture, Point
from movement_core.sheet.pages.names import bare

Box = tuple[float, float, float, float]  # left, top, right, bottom, mm


def label_box(label: Label) -> Box:
    """The box of a label's words, by the widest of the usual faces."""
    wide = width_mm(bare(label.text.words), label.size_mm, label.bold)
    up, down = label.size_mm * ASCENT, label.size_mm * DESCENT
    before = wide if label.anchor == END else wide / 2 if label.anchor == MIDDLE else 0.0
    x, y = label.place
    if label.turned:  # read from below: the words run up
        return (x - up, y - (wide - before), x + down, y + before)
    return (x - before, y - up, x + wide - before, y + down)


def overlap(one: Box, other: Box, slack_mm: float = 0.0) -> bool:
    """Whether two boxes share more than ``slack_mm`` both ways."""
    return (
        min(one[2], other[2]) - max(one[0], other[0]) > slack_mm
        and min(one[3], other[3]) - max(one[1], other[1]) > slack_mm
    )


def labels_of(picture: Picture) -> list[Label]:
    return [shape for shape in picture.shapes if isinstance(shape, Label)]


def clashes(picture: Picture, slack_mm: float = 0.1) -> list[tuple[str, str]]:
    """Pairs of labels that lie over each other, and labels that leave the picture (beside an empty text)."""
    boxes = [(bare(label.text.words), label_box(label)) for label in labels_of(picture)]
    found = []
    frame = (0.0, 0.0, picture.width_mm, picture.height_mm)
    for i, (words, box) in enumerate(boxes):
        if (
            box[0] < frame[0] - 0.05
            or box[1] < frame[1] - 0.05
            or box[2] > frame[2] + 0.05
            or box[3] > frame[3] + 0.05
        ):
            found.append((words, ""))
        found += [(words, other) for other, theirs in boxes[i + 1 :] if overlap(box, theirs, slack_mm)]
    return found


def placed_free(label: Label, places: Sequence[Point], taken: Iterable[Box], frame: Box) -> Label | None:
    """The label at the first of some places where it lies inside a frame and over none of the boxes; else None."""
    taken = list(taken)
    for place in places:
        tried = replace(label, place=place)
        box = label_box(tried)
        inside = box[0] >= frame[0] and box[1] >= frame[1] and box[2] <= frame[2] and box[3] <= frame[3]
        if inside and not any(overlap(box, other) for other in taken):
            return tried
    return None
