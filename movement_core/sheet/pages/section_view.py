"""Sections of glued panels and wide boards: rings as built, and the cup of the driest and wettest time, exaggerated."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from movement_core.air.year import MONTHS
from movement_core.piece.panels import GluedPanel
from movement_core.piece.solve import SolvedPart
from movement_core.section.rings import Rings
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import (
    MIDDLE,
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
from movement_core.wording import say

Floats = NDArray[np.float64]

WIDE_BOARD_MM = 120.0  # narrower single boards cup too little to be drawn (own)
MOST_BOARDS = 6  # single boards drawn, the liveliest first
SMALL_MM = 124.0  # width of a picture of a single board
SLENDER = 14.0  # width ÷ thickness from which a section takes the whole width of the paper
RING_MM = 1.3  # distance of rings on paper: a picture of their run, not a count of years
RISE_MM = 7.0  # height of the largest cup on paper
EXAGGERATIONS = (1, 2, 5, 10, 20, 50, 100)
FLAT_MM = 0.05
WORDS_MM, NAME_MM = 2.6, 2.4
USUAL_RADIUS_MM = 120.0  # of rings drawn where only their angle is known (own)
SAMPLES = 61


@dataclass(frozen=True)
class _Face:
    """One board of a section: its left edge, width and thickness, pith in its own section frame or None, number."""

    left: float
    width: float
    thickness: float
    pith: tuple[float, float] | None
    number: str


@dataclass(frozen=True)
class _Bend:
    """What a section does at one time: heights (2, N) least and most over its width, and the words for it."""

    when: str
    colour: str
    heights: Floats
    words: Text


def section_pictures(material: Material, lengths: Lengths, most_mm: float) -> tuple[Picture, ...]:
    """A picture of every glued panel, then of the liveliest single boards, alike ones once."""
    drawn = []
    for place, panel in enumerate(material.whole.panels):
        drawn.append(_panel(material, place, panel, lengths, most_mm))
    in_panels = {id(board) for panel in material.whole.panels for board in panel.boards}
    singles: dict[tuple[Any, ...], list[int]] = {}
    for place, solved in enumerate(material.parts):
        part = solved.part
        if (
            id(solved) in in_panels
            or not part.moves
            or solved.cup is None
            or part.frame.width_mm < WIDE_BOARD_MM
        ):
            continue
        entry = material.data["report"]["parts"][place]
        key = (entry["width_mm"], entry["thickness_mm"], str(entry["cup"]), str(part.rings.value))
        singles.setdefault(key, []).append(place)
    lively = sorted(singles.values(), key=lambda places: -_liveliness(material.parts[places[0]]))
    drawn += [_board(material, places, lengths, most_mm) for places in lively[:MOST_BOARDS]]
    return tuple(drawn)


def _liveliness(solved: SolvedPart) -> float:
    cup = solved.cup
    return 0.0 if cup is None else float(np.max(np.abs([cup.least_mm, cup.most_mm])))


# ---- panels ------------------------------------------------------------------------------------------------


def _panel(material: Material, place: int, panel: GluedPanel, lengths: Lengths, most_mm: float) -> Picture:
    entry, at = material.data["report"]["panels"][place], ("report", "panels", place)
    faces, left = [], -panel.width_mm / 2
    for board, over in zip(panel.boards, panel.over):
        frame, rings = board.part.frame, board.part.rings.value
        pith = _pith(rings, frame.width_mm)
        if pith is not None and over:
            pith = (-pith[0], -pith[1])
        number = str(material.number[board.part.key])
        faces.append(_Face(left, frame.width_mm, frame.thickness_mm, pith, number))
        left += frame.width_mm
    bends = []
    if panel.shape is not None and entry["months"]:
        for when, colour in (("driest", "dry"), ("wettest", "wet")):
            month = entry[f"{when}_month"]
            figures = entry["months"][month]
            profile = panel.shape.profile[MONTHS.index(month)]
            heights = np.interp(np.linspace(0, 1, SAMPLES), *_along(profile))
            words = _said(
                when, month, figures["departure_mm"], (*at, "months", month, "departure_mm"), lengths
            )
            bends.append(_Bend(when, colour, np.array([heights, heights]), words))
    named = isolated(panel.name)
    title = say("{name}: {count} boards edge to edge", name=named, count=len(panel.boards))
    if not bends:
        reason = entry["profile_unknown"] or ""
        title = say("{title}; its cup is not known: {reason}", title=title, reason=reason)
    return _picture(f"section-panel-{place + 1}", title, faces, bends, most_mm)


def _along(profile: Floats) -> tuple[Floats, Floats]:
    x = profile[:, 0]
    return (x - x[0]) / (x[-1] - x[0]), profile[:, 1]


# ---- boards ------------------------------------------------------------------------------------------------


def _board(material: Material, places: Sequence[int], lengths: Lengths, most_mm: float) -> Picture:
    place = places[0]
    solved = material.parts[place]
    entry, at = material.data["report"]["parts"][place], ("report", "parts", place)
    frame, rings = solved.part.frame, solved.part.rings.value
    pith = _pith(rings, frame.width_mm)
    face = _Face(-frame.width_mm / 2, frame.width_mm, frame.thickness_mm, pith, str(place + 1))
    x = np.linspace(-1, 1, SAMPLES)
    bends = []
    for when, colour in (("driest", "dry"), ("wettest", "wet")):
        low, high, words = _cup(entry["cup"], (*at, "cup"), when, lengths)
        bends.append(_Bend(when, colour, np.array([low * (1 - x**2), high * (1 - x**2)]), words))
    also = ""
    if len(places) > 1:
        also = say(" (also {numbers})", numbers=", ".join(str(p + 1) for p in places[1:9]))
    title = say("{number} {name}{also}", number=place + 1, name=isolated(entry["name"]), also=also)
    if rings is not None and rings.pith_mm is None:
        title = say("{title}; rings drawn by their angle alone", title=title)
    wide = most_mm if frame.width_mm / frame.thickness_mm >= 2 * SLENDER else min(SMALL_MM, most_mm)
    return _picture(f"section-part-{place + 1}", title, [face], bends, wide)


def _pith(rings: Rings | None, width_mm: float) -> tuple[float, float] | None:
    """Where the rings are drawn round: the pith, or one that gives the angle said, at a usual distance."""
    if rings is None or rings.pith_mm is not None:
        return None if rings is None else rings.pith_mm
    return rings.pith_at(max(USUAL_RADIUS_MM, 0.6 * width_mm))


def _cup(cup: Mapping[str, Any], at: Pointer, when: str, lengths: Lengths) -> tuple[float, float, Text]:
    """Least and most cup of a time, and the words for it."""
    month, value, spread = cup[f"{when}_month"] or "", cup[f"{when}_mm"], cup.get(f"{when}_range_mm")
    if not spread:
        return value, value, _said(when, month, value, (*at, f"{when}_mm"), lengths)
    low, high = spread
    figures = [lengths.signed(v, (*at, f"{when}_range_mm", i)) for i, v in enumerate(spread)]
    if figures[0].shown == figures[1].shown:
        return low, high, _said(when, month, high, (*at, f"{when}_range_mm", 1), lengths)
    words = tell(
        "{when}, {month}: between {low} and {high} {unit} (+ crown, − hollow)",
        when=say(when), month=say(month), low=figures[0], high=figures[1], unit=lengths.unit,
    )  # fmt: skip
    return low, high, words


def _said(when: str, month: str, mm: float, at: Pointer, lengths: Lengths) -> Text:
    height = lengths.signed(mm, at)
    if abs(mm) < FLAT_MM or height.shown == lengths.near(0.0, at).shown:
        return tell("{when}, {month}: flat", when=say(when), month=say(month))
    way = say("crown") if mm > 0 else say("hollow")
    return tell(
        "{when}, {month}: {way}, {height} {unit}",
        when=say(when), month=say(month), way=way, height=height, unit=lengths.unit,
    )  # fmt: skip


# ---- drawing -----------------------------------------------------------------------------------------------


def _picture(
    name: str, title: str, faces: Sequence[_Face], bends: Sequence[_Bend], most_mm: float
) -> Picture:
    width = sum(face.width for face in faces)
    thick = max(face.thickness for face in faces)
    paper = most_mm if width / thick >= SLENDER else min(SMALL_MM, most_mm)
    scale = (paper - 2.0) / width
    middle = paper / 2
    top = NAME_MM * 1.5
    shapes = [shape for face in faces for shape in _as_built(face, middle, top + thick * scale / 2, scale)]
    y = top + thick * scale + 2.0
    largest = max((float(np.abs(bend.heights).max()) for bend in bends), default=0.0)
    factor = max((f for f in EXAGGERATIONS if largest * scale * f <= RISE_MM), default=1)
    for bend in bends:
        drawn, y = _bent(bend, middle, y, width, thick, scale, factor)
        shapes += drawn
    told = say(
        "Cross-section seen on the end of the grain, show face up, with the run of the rings as built{bends}.",
        bends=say("; below it {words}, heights drawn {factor} times too large", factor=factor,
                  words="; ".join(bend.words.words for bend in bends)) if bends else "",
    )  # fmt: skip
    if bends:
        title = say("{title}. Heights × {factor}", title=title, factor=factor)
    return Picture(name, title, told, paper, y + 0.5, tuple(shapes))


def _as_built(face: _Face, middle: float, y: float, scale: float) -> list[Shape]:
    """A board at rest: its outline, its rings, its number above."""
    left, w, h = middle + face.left * scale, face.width * scale, face.thickness * scale
    box = ((left, y - h / 2), (left + w, y - h / 2), (left + w, y + h / 2), (left, y + h / 2))
    shapes: list[Shape] = [Area(box, "wood")]
    if face.pith is not None:
        centre = (left + w / 2 + face.pith[0] * scale, y - face.pith[1] * scale)
        rings = _rings(centre, (left, y - h / 2, left + w, y + h / 2))
        shapes.append(Strokes(tuple(rings), Pen("ring", 0.12), f"rings-{face.number}"))
    shapes.append(Area(box, None, Pen("ink", 0.25), f"board-{face.number}"))
    shapes.append(Label(Text(face.number), (left + w / 2, y - h / 2 - 0.8), NAME_MM, MIDDLE, bold=True))
    return shapes


def _rings(centre: Point, box: tuple[float, float, float, float]) -> list[tuple[Point, ...]]:
    """Arcs round a centre inside a box, as lines of short chords."""
    x0, y0, x1, y1 = box
    corners = [math.hypot(x - centre[0], y - centre[1]) for x in (x0, x1) for y in (y0, y1)]
    nearest = math.hypot(max(x0 - centre[0], 0, centre[0] - x1), max(y0 - centre[1], 0, centre[1] - y1))
    lines: list[tuple[Point, ...]] = []
    for radius in np.arange(math.floor(nearest / RING_MM) + 1, max(corners) / RING_MM) * RING_MM:
        chords = int(min(720, max(24, 2 * math.pi * radius / 0.6)))
        # Only the angles under which the box is seen: a far pith makes short arcs of large circles.
        angles = _angles(centre, box, chords, float(radius))
        x, y = centre[0] + radius * np.cos(angles), centre[1] + radius * np.sin(angles)
        inside = (x >= x0) & (x <= x1) & (y >= y0) & (y <= y1)
        edges = np.flatnonzero(np.diff(np.r_[False, inside, False].astype(int)))
        for start, end in zip(edges[::2], edges[1::2]):
            if end - start >= 2:
                lines.append(
                    tuple(
                        (round(float(a), 2), round(float(b), 2)) for a, b in zip(x[start:end], y[start:end])
                    )
                )
    return lines


def _angles(centre: Point, box: tuple[float, float, float, float], chords: int, radius: float) -> Floats:
    x0, y0, x1, y1 = box
    if x0 <= centre[0] <= x1 and y0 <= centre[1] <= y1:
        return np.linspace(0, 2 * math.pi, chords)
    corners = np.array([(x, y) for x in (x0, x1) for y in (y0, y1)]) - np.array(centre)
    toward = math.atan2((y0 + y1) / 2 - centre[1], (x0 + x1) / 2 - centre[0])
    off = (np.arctan2(corners[:, 1], corners[:, 0]) - toward + math.pi) % (2 * math.pi) - math.pi
    span = float(np.ptp(off))
    count = int(np.clip(span * radius / 0.4, 24, 800))
    return toward + np.linspace(float(off.min()), float(off.max()), count)


def _bent(
    bend: _Bend, middle: float, y: float, width: float, thick: float, scale: float, factor: int
) -> tuple[list[Shape], float]:
    """One bent shape below ``y`` with its words; where that ends."""
    x = middle + np.linspace(-width / 2, width / 2, bend.heights.shape[1]) * scale
    rise = bend.heights * scale * factor
    y += WORDS_MM * 1.25
    label = Label(bend.words, (x[0], y), WORDS_MM, "start", bend.colour)
    base = y + 1.2 + max(0.0, float(rise.max())) + thick * scale / 2
    shapes: list[Shape] = [
        Strokes(
            (((float(x[0]), base), (float(x[-1]), base)),),
            Pen("rule", 0.12, (1.0, 0.8)),
            f"chord-{bend.when}",
        )
    ]
    half = thick * scale / 2
    unsure = float(np.ptp(bend.heights, axis=0).max()) * scale * factor > 0.3
    for place, heights in enumerate(rise if unsure else rise[:1]):
        upper = [(float(a), float(base - h - half)) for a, h in zip(x, heights)]
        lower = [(float(a), float(base - h + half)) for a, h in zip(x, heights)]
        pen = Pen(bend.colour, 0.3, (1.5, 0.8) if unsure and place == 0 else ())
        shapes.append(Area((*upper, *reversed(lower)), None, pen, f"{bend.when}-{place}"))
    bottom = base + half + max(0.0, -float(rise.min()))
    return [*shapes, label], bottom + 1.5
