"""Where a piece's tops are, and what carries, stiffens or captures them: from the boxes of the parts.

A top is a glued panel or one wide board that lies level, is not housed in other parts along two opposite edges,
is no layer between others, and so is held by what it rests on. Everything is told in the top's own frame, however
the piece stands.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from movement_core.holding.model import Point
from movement_core.holding.polygon import convex_hull, polygon_area
from movement_core.piece.panels import GluedPanel, glued_panels
from movement_core.piece.solve import SolvedPart, SolvedPiece
from movement_core.wording import say

Floats = NDArray[np.float64]

LEVEL = 0.985  # cosine: a face within 10° of level carries things and bears its own weight (own)
LEAST_TOP_MM = 150.0  # narrower single boards are rails and slats, no tops (own)
TOUCH_MM = 0.5  # nearer than this is touching
SMALL_MM = 80.0  # a part no longer than this under a top is a fastener or a block, no frame (own)
EDGE_SHARE = 0.5  # an edge housed along half of its length is captured
RECTANGLE_SHARE = 0.97  # a top that fills less of its box is round or shaped (own)
SAME_WAY = 0.97  # cosine: grain within 14°
COVERED_SHARE = 0.5  # a panel that other parts cover above and below over half of it is a layer, no top (own)
NAMED = 3  # so many parts are named where a reason lists them
EASED_MM = 3.0  # a face that ends this near to a shoulder ends there: its edge is eased (own)
BEYOND_SHARE = 0.3  # of an end's breadth, which lies beyond the shoulder at least (own)


@dataclass(frozen=True, eq=False)
class Near:
    """One part near a top, in the top's frame: its box's low and high corner (along, across, up), mm.

    ``up`` is measured from the top's underside; ``outline_mm`` is the face that is highest, seen from above.
    """

    solved: SolvedPart
    name: str
    low: Floats
    high: Floats
    outline_mm: tuple[Point, ...]


@dataclass(frozen=True, eq=False)
class TopPlace:
    """A level panel and what touches it.

    Attributes
    ----------
    boards : from −across to +across. over : whether a board's show face looks down.
    axes : (3, 3) rows across, up, along (the grain) in the global frame; origin : middle of its underside.
    under : parts whose upper edges it rests on. let_in : parts let into its underside.
    length_mm : along the grain; at an end with a board across it up to the shoulder that meets that board, which is
        what one sees and measures from. tips_mm : how far tongues and tenons reach beyond, toward −along and +along.
    faces_mm : (2, 2) where its underside and its upper face end toward −along and +along; empty where not known.
    battens : bars under it across its grain that nothing else carries. ends : boards across its two ends.
    no_shoulder : the ends whose shoulder is not found: the length counts to the tips let into them.
    outline_mm : its edge as a polygon of (along, across) points where it is not the whole rectangle, else empty.
    fasteners : small parts that touch its underside. captured : why it is no top; empty if it is.
    """

    boards: tuple[SolvedPart, ...]
    over: tuple[bool, ...]
    axes: Floats
    origin: Floats
    length_mm: float
    width_mm: float
    thickness_mm: float
    volume_share: float
    outline_mm: tuple[Point, ...] = ()
    under: tuple[Near, ...] = ()
    let_in: tuple[Near, ...] = ()
    battens: tuple[Near, ...] = ()
    ends: tuple[Near, ...] = ()
    fasteners: tuple[Near, ...] = ()
    captured: str = ""
    tips_mm: tuple[float, float] = (0.0, 0.0)
    faces_mm: tuple[tuple[float, float], ...] = ()
    no_shoulder: tuple[str, ...] = ()

    @property
    def name(self) -> str:
        """The board's name, or the first and the last board's."""
        names = [board.part.name for board in self.boards]
        return names[0] if len(names) == 1 else f"{names[0]} … {names[-1]}"

    @property
    def lines_mm(self) -> tuple[float, ...]:
        """(n+1,) edges and glue lines across, as drawn."""
        widths = [board.part.frame.width_mm for board in self.boards]
        lines = np.concatenate([[0.0], np.cumsum(widths)]) - sum(widths) / 2
        return tuple(float(line) for line in lines)

    @property
    def tied(self) -> tuple[Near, ...]:
        """Small parts that touch the top and something that carries it: the fasteners that are drawn."""
        return tuple(one for one in self.fasteners if any(touch(one, other) for other in self.under))


def top_places(piece: SolvedPiece, panels: Sequence[GluedPanel] | None = None) -> tuple[TopPlace, ...]:
    """Every level panel and wide level board, those that are captured elsewhere included (they say so).

    ``panels``: the glued panels of the piece, where they have been worked out already.
    """
    panels = glued_panels(piece) if panels is None else panels
    glued = {id(board) for panel in panels for board in panel.boards}
    boxes = _boxes(piece)
    found = [_touching(boxes, _bare(panel.boards, panel.axes)) for panel in panels if _level(panel.axes[1])]
    for solved in piece.parts:
        frame = solved.part.frame
        wide = frame.grain.known and frame.length_mm > frame.width_mm >= LEAST_TOP_MM
        flat = wide and frame.width_mm >= 4 * frame.thickness_mm
        if id(solved) not in glued and solved.part.moves and flat and _level(frame.axes[1]):
            found.append(_touching(boxes, _bare((solved,), frame.axes)))
    return tuple(found)


def _level(up: Floats) -> bool:
    return abs(float(up[2])) > LEVEL


def _bare(boards: Sequence[SolvedPart], axes: Floats) -> TopPlace:
    """The place of boards from left to right along ``axes[0]``, turned so that its up looks up."""
    if axes[1][2] < 0:
        axes, boards = np.array([-axes[0], -axes[1], axes[2]]), boards[::-1]
    corners = np.vstack([_corners(board) for board in boards]) @ axes.T  # across, up, along
    low, high = corners.min(axis=0), corners.max(axis=0)
    middle = (low + high) / 2
    origin = np.array([middle[0], low[1], middle[2]]) @ axes
    over = tuple(bool(board.part.frame.axes[1] @ axes[1] < 0) for board in boards)
    width, thickness, length = (float(v) for v in high - low)
    place = TopPlace(tuple(boards), over, axes, origin, length, width, thickness, 1.0)
    return _filled(replace(place, faces_mm=_faces(place)))


def _filled(place: TopPlace) -> TopPlace:
    """With its outline, and how much of its box is wood, tongues and tenons beyond its shoulders included."""
    length, width = place.length_mm, place.width_mm
    volume = sum(board.part.volume_mm3 for board in place.boards)
    outline = _outline(place.boards, place.axes, place.origin, length, width)
    return replace(place, volume_share=volume / (width * place.thickness_mm * length), outline_mm=outline)


def _faces(place: TopPlace) -> tuple[tuple[float, float], ...]:
    """Where the underside and the upper face end along; empty where the shape of a board is not known."""
    outlines = [board.part.outline for board in place.boards if board.part.outline is not None]
    if len(outlines) < len(place.boards):
        return ()
    local = (np.vstack([outline.points for outline in outlines]) - place.origin) @ place.axes.T
    ends = []
    for level in (0.0, place.thickness_mm):
        along = local[np.abs(local[:, 1] - level) <= TOUCH_MM, 2]
        if not along.size:
            return ()
        ends.append((float(along.min()), float(along.max())))
    return tuple(ends)


def _shoulder(place: TopPlace, side: int, inner: float) -> float | None:
    """How far from its middle the top ends at a board across its end; None where it is let in and the shape not known.

    ``inner`` is how far the inner side of that board is. Tongues and tenons of the top reach beyond its shoulder, at
    the inner side; a tongue of the board reaches into the top, whose faces then go to its tip.
    """
    tip = place.length_mm / 2
    if tip - inner <= TOUCH_MM:
        return tip
    if not place.faces_mm:
        return None
    faces = [ends[1] if side > 0 else -ends[0] for ends in place.faces_mm]
    if any(abs(face - inner) <= EASED_MM for face in faces):
        return inner
    return tip if tip - max(faces) <= EASED_MM else max(faces)


def _to_shoulders(place: TopPlace, ends: Sequence[Near]) -> TopPlace:
    """The same place, told from shoulder to shoulder."""
    tip = place.length_mm / 2
    reach, lost = {-1: tip, 1: tip}, []
    for side in reach:
        there = [one for one in ends if side * (one.low[0] + one.high[0]) > 0]
        if there:
            nearest = min(there, key=lambda one: _inner(one, side))
            shoulder = _shoulder(place, side, _inner(nearest, side))
            if shoulder is None:
                lost.append(nearest.name)
            else:
                reach[side] = shoulder
    middle = (reach[1] - reach[-1]) / 2
    if lost or reach[1] + reach[-1] < place.length_mm:
        place = _filled(
            replace(
                place,
                origin=place.origin + middle * place.axes[2],
                length_mm=reach[1] + reach[-1],
                tips_mm=(tip - reach[-1], tip - reach[1]),
                faces_mm=tuple((low - middle, high - middle) for low, high in place.faces_mm),
                no_shoulder=tuple(lost),
            )
        )
    return place


def _inner(one: Near, side: int) -> float:
    """How far the inner side of a board across an end is from the top's middle."""
    return float(one.low[0] if side > 0 else -one.high[0])


def _outline(
    boards: Sequence[SolvedPart], axes: Floats, origin: Floats, length: float, width: float
) -> tuple[Point, ...]:
    """The hull of the boards seen from above, (along, across) mm; empty where it is the rectangle."""
    outlines = [board.part.outline for board in boards if board.part.outline is not None]
    if len(outlines) < len(boards):
        return ()
    flat = (np.vstack([outline.points for outline in outlines]) - origin) @ axes.T[:, [2, 0]]
    half = np.array([length, width]) / 2
    hull = convex_hull(np.clip(flat, -half, half))
    return (
        ()
        if polygon_area(hull) > RECTANGLE_SHARE * length * width
        else tuple((float(s), float(x)) for s, x in hull)
    )


def _corners(solved: SolvedPart) -> Floats:
    """(8, 3) corners of a part's box, global."""
    frame = solved.part.frame
    signs = np.array([[i, j, k] for i in (-0.5, 0.5) for j in (-0.5, 0.5) for k in (-0.5, 0.5)])
    return np.asarray(frame.centre + (signs * frame.size_mm) @ frame.axes)


@dataclass(frozen=True, eq=False)
class _Boxes:
    """The boxes of all parts of a piece: corners (n, 8, 3), global, and how much of its box each part fills."""

    parts: tuple[SolvedPart, ...]
    corners: Floats
    filled: Floats
    all_named_differently: bool

    def names(self, others: NDArray[np.int64]) -> list[str]:
        """Names of some of the parts, those that come again with a number."""
        names = [self.parts[index].part.name for index in others.tolist()]
        if self.all_named_differently:
            return names
        taken: dict[str, int] = {}
        for at, name in enumerate(names):
            taken[name] = taken.get(name, 0) + 1
            if taken[name] > 1:
                names[at] = f"{name} ({taken[name]})"
        return names


def _boxes(piece: SolvedPiece) -> _Boxes:
    parts = tuple(piece.parts)
    corners = np.array([_corners(solved) for solved in parts]).reshape(-1, 8, 3)
    volumes = np.array([solved.part.volume_mm3 for solved in parts])
    boxes = np.array([np.prod(solved.part.frame.size_mm) for solved in parts])
    names = {solved.part.name for solved in parts}
    return _Boxes(
        parts, corners, np.minimum(volumes / np.maximum(boxes, 1e-9), 1.0), len(names) == len(parts)
    )


def _touching(boxes: _Boxes, place: TopPlace) -> TopPlace:
    own = {id(board) for board in place.boards}
    others = np.array([i for i, solved in enumerate(boxes.parts) if id(solved) not in own], dtype=np.int64)
    names = boxes.names(others)
    beside, _ = _beside(boxes, place, others, names)
    place = _to_shoulders(place, [one for one in beside.values() if _is_end(place, one)])
    beside, reach = _beside(boxes, place, others, names)
    half = np.array([place.length_mm, place.width_mm]) / 2
    words = ("under", "let_in", "battens", "ends", "fasteners", "passing", "above")
    kinds: dict[str, list[Near]] = {word: [] for word in words}
    covered = {True: 0.0, False: 0.0}  # area, mm²: above, below
    for at, one in beside.items():
        overlap = np.minimum(one.high[:2], half) - np.maximum(one.low[:2], -half)
        lies_on = bool(one.low[2] >= place.thickness_mm - TOUCH_MM)
        if overlap.min() > TOUCH_MM and (lies_on or one.high[2] <= TOUCH_MM):
            covered[lies_on] += float(np.prod(overlap) * boxes.filled[others[at]])
        if _is_end(place, one):
            kinds["ends"].append(one)
        elif overlap.min() <= TOUCH_MM:
            continue
        elif lies_on and one.low[2] > TOUCH_MM:
            kinds["above"].append(one)
        elif one.low[2] > TOUCH_MM:
            continue
        elif one.high[2] >= place.thickness_mm - TOUCH_MM:
            kinds["passing"].append(one)
        elif one.low[2] > -TOUCH_MM:  # inlaid from above, or a slip of modelling: it carries nothing
            continue
        elif one.high[2] <= TOUCH_MM:
            if (one.high - one.low).max() <= SMALL_MM:
                kinds["fasteners"].append(one)
            else:
                loose = is_across(place, one) and not _carried(at, *reach)
                kinds["battens" if loose else "under"].append(one)
        else:
            kinds["let_in"].append(one)
    captured = _captured(place, kinds["passing"])
    if not captured and min(covered.values()) >= COVERED_SHARE * place.length_mm * place.width_mm:
        below = [*kinds["under"], *kinds["battens"], *kinds["fasteners"]]
        captured = say(
            "it is a layer between others: on it {above}, under it {below}",
            above=_some(kinds["above"]),
            below=_some(below),
        )
    return replace(
        place,
        under=tuple(kinds["under"]),
        let_in=tuple(kinds["let_in"]),
        battens=tuple(kinds["battens"]),
        ends=tuple(kinds["ends"]),
        fasteners=tuple(kinds["fasteners"]),
        captured=captured,
    )


def _beside(
    boxes: _Boxes, place: TopPlace, others: NDArray[np.int64], names: Sequence[str]
) -> tuple[dict[int, Near], tuple[Floats, Floats]]:
    """The parts that touch the top's box or reach into it, by their place in ``others``; low and high of all."""
    local = (boxes.corners[others] - place.origin) @ place.axes.T[:, [2, 0, 1]]  # along, across, up
    lows, highs = local.min(axis=1), local.max(axis=1)
    half = np.array([place.length_mm, place.width_mm]) / 2
    plate = np.array([[-half[0], -half[1], 0.0], [half[0], half[1], place.thickness_mm]])
    near = ((lows <= plate[1] + TOUCH_MM) & (highs >= plate[0] - TOUCH_MM)).all(axis=1)
    found = {}
    for at in np.flatnonzero(near).tolist():
        highest = local[at][np.argsort(-local[at][:, 2], kind="stable")[:4], :2]
        found[at] = Near(boxes.parts[others[at]], names[at], lows[at], highs[at], _around(highest))
    return found, (lows, highs)


def _some(found: Sequence[Near]) -> str:
    names = [one.name for one in found[:NAMED]]
    first = ", ".join(names)
    return (
        say("{first} and {count} more", first=first, count=len(found) - NAMED)
        if len(found) > NAMED
        else first
    )


def _around(points: Floats) -> tuple[Point, ...]:
    """Four points of a face in the order of a walk round it."""
    middle = points.mean(axis=0)
    order = np.argsort(np.arctan2(points[:, 1] - middle[1], points[:, 0] - middle[0]))
    return tuple((float(s), float(x)) for s, x in points[order])


def _grain(place: TopPlace, one: Near) -> Floats | None:
    """Direction of a part's grain in the top's frame (along, across, up)."""
    frame = one.solved.part.frame
    if not frame.grain.known:
        return None
    across, up, along = place.axes @ frame.axes[2]
    return np.asarray(np.abs([along, across, up]), dtype=np.float64)


def is_across(place: TopPlace, one: Near) -> bool:
    """Whether a long part's grain (or a metal bar) runs across the top's grain."""
    grain = _grain(place, one)
    metal = one.solved.part.species.value is not None and one.solved.part.species.value.kind == "inert"
    reach = one.high - one.low
    runs_across = bool(reach[1] > 2 * reach[0])
    return runs_across and (metal or (grain is not None and bool(grain[1] > SAME_WAY)))


def _is_end(place: TopPlace, one: Near) -> bool:
    """A board across an end of the top, on its level: a breadboard end."""
    grain = _grain(place, one)
    if grain is None or not one.solved.part.moves or grain[1] < SAME_WAY:
        return False
    middle, reach = (one.low + one.high) / 2, one.high - one.low
    level = abs(middle[2] - place.thickness_mm / 2) <= 0.25 * place.thickness_mm
    thick_as = 0.5 <= reach[2] / place.thickness_mm <= 1.5
    shared = min(one.high[1], place.width_mm / 2) - max(one.low[1], -place.width_mm / 2)
    inner = abs(middle[0]) - reach[0] / 2
    shoulder = _shoulder(place, 1 if middle[0] > 0 else -1, inner)
    if shoulder is None:
        shoulder = place.length_mm / 2
    meets = inner - shoulder <= TOUCH_MM and inner + reach[0] - shoulder >= BEYOND_SHARE * reach[0]
    return bool(level and thick_as and meets and shared >= EDGE_SHARE * place.width_mm)


def _carried(bar: int, lows: Floats, highs: Floats) -> bool:
    """Whether any other part of some size touches a bar: a leg below it, an apron at its end."""
    meets = ((lows <= highs[bar] + TOUCH_MM) & (highs >= lows[bar] - TOUCH_MM)).all(axis=1)
    meets &= (highs - lows).max(axis=1) > SMALL_MM
    meets[bar] = False
    return bool(meets.any())


def touch(one: Near, other: Near) -> bool:
    """Whether two boxes meet."""
    return bool(np.all(other.low <= one.high + TOUCH_MM) and np.all(other.high >= one.low - TOUCH_MM))


def _captured(place: TopPlace, passing: Sequence[Near]) -> str:
    """Why the panel is no top: parts that reach through its whole thickness along two opposite edges."""
    size = np.array([place.length_mm, place.width_mm])
    for axis in (1, 0):
        held: dict[int, tuple[float, list[str]]] = {-1: (0.0, []), 1: (0.0, [])}
        for one in passing:
            for side in (-1, 1):
                reaches = (
                    one.high[axis] >= size[axis] / 2 - 1 if side > 0 else one.low[axis] <= 1 - size[axis] / 2
                )
                other = 1 - axis
                shared = min(one.high[other], size[other] / 2) - max(one.low[other], -size[other] / 2)
                if reaches and shared >= 0.1 * size[other]:
                    length, names = held[side]
                    held[side] = (length + float(shared), [*names, one.name])
        if all(length >= EDGE_SHARE * size[1 - axis] for length, _ in held.values()):
            holders = ", ".join(dict.fromkeys(held[-1][1] + held[1][1]))
            if axis:
                return say("its long edges are housed in {holders}", holders=holders)
            return say("its ends are housed in {holders}", holders=holders)
    return ""
