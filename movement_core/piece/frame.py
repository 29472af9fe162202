"""Where a part's grain, width and thickness lie, from its tags and its shape.

The frame is right-handed: x across the width, y through the thickness toward the show face, z along the grain.
A direction that is not tagged is inferred with its reason, or stays missing with the question to answer.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.facts import Fact, inferred, missing, tagged
from movement_core.piece.outline import SolidOutline
from movement_core.piece.tags import Tags
from movement_core.piece.vectors import box_of, cross
from movement_core.wording import phrase, say

FloatArray = NDArray[np.float64]
# Exact extents of the solid along three orthonormal rows: (centre, lengths), mm. The host knows curved faces.
Measure = Callable[[FloatArray], tuple[FloatArray, FloatArray]]

ASK_BELOW_RATIO = (
    1.5  # length ÷ width under which the longest edge is no evidence of the grain (own judgement)
)
EDGES = phrase("{length:.4g} mm against {width:.4g} mm")  # how much longer the longest edge is
SAME_LENGTH = 0.01  # edges within 1 % of each other are equally long


@dataclass(frozen=True, eq=False)
class Frame:
    """Axes of a part as rows (width x, thickness y, grain z) in the global frame, its centre and its size, mm.

    With the grain missing, the rows are the sides of the tightest box in ascending order and mean no more.
    """

    axes: FloatArray
    centre: FloatArray
    size_mm: FloatArray  # along the rows
    grain: Fact[tuple[float, float, float]]
    show: Fact[tuple[float, float, float]]

    @property
    def width_mm(self) -> float:
        return float(self.size_mm[0])

    @property
    def thickness_mm(self) -> float:
        return float(self.size_mm[1])

    @property
    def length_mm(self) -> float:
        return float(self.size_mm[2])


def find_frame(
    outline: SolidOutline,
    tags: Tags,
    measure: Measure | None = None,
    piece_centre: FloatArray | None = None,
    ask: str = "",
) -> Frame:
    """Frame of one part.

    Parameters
    ----------
    outline : shape of the solid.
    tags : what the user said; directions in the object's own axes.
    measure : exact extents along given axes; without it the outline's points are measured.
    piece_centre : (3,) centre of the whole piece, mm, from which faces look outward.
    ask : why the longest edge must not decide here (the part is captured, say); empty if it may.
    """
    measure = _remembering(measure or (lambda axes: extents_of_points(outline.points, axes)))
    grain = _tagged_direction(outline, tags, "grain")
    box = _tightest_box(outline)
    if grain is None:
        grain_fact, direction = _infer_grain(box, measure, ask)
    else:
        grain_fact, direction = tagged(_triple(grain), tags.said.get("grain", "tag")), grain
    if direction is None:
        axes = _ascending(box, measure)
    else:
        axes = _across(outline, box, direction, tags)
        if grain_fact.origin != "tagged" and measure(axes)[1][0] < measure(axes)[1][1]:
            axes = np.array([-axes[1], axes[0], axes[2]])  # the thickness is the smaller of the two
    show, axes = _show_face(outline, tags, axes, measure, piece_centre, direction is not None)
    centre, size = measure(axes)
    return Frame(axes, centre, size, grain_fact, show)


def _remembering(measure: Measure) -> Measure:
    """The same measure, asked only once for the same axes: the host takes its time over curved solids."""
    known: dict[bytes, tuple[FloatArray, FloatArray]] = {}

    def remembered(axes: FloatArray) -> tuple[FloatArray, FloatArray]:
        # Another order or sense of the axes is the same box: ask in one order and sense, and turn the answer.
        sense = np.where(axes[np.arange(3), np.abs(axes).argmax(axis=1)] < 0, -1.0, 1.0)
        upright = axes * sense[:, None]
        order = np.lexsort(np.round(upright, 9).T)
        key = (np.round(upright[order], 9) + 0.0).tobytes()
        if key not in known:
            known[key] = measure(upright[order])
        centre, size = known[key]
        return centre, size[np.argsort(order)]

    return remembered


def extents_of_points(points: FloatArray, axes: FloatArray) -> tuple[FloatArray, FloatArray]:
    """Centre (3,) and lengths (3,) of the box of (N, 3) points along three orthonormal rows."""
    low, high = box_of(points @ axes.T)
    return (low + high) / 2 @ axes, high - low


def _triple(vector: FloatArray) -> tuple[float, float, float]:
    x, y, z = (float(v) for v in vector)
    return (x, y, z)


def _tagged_direction(outline: SolidOutline, tags: Tags, word: str) -> FloatArray | None:
    own = getattr(tags, word)
    return None if own is None else np.asarray(own, dtype=np.float64) @ outline.own_axes


def _unit(vector: FloatArray) -> FloatArray:
    return vector / np.linalg.norm(vector)


def _without(vector: FloatArray, direction: FloatArray) -> FloatArray:
    return vector - (vector @ direction) * direction


def _main_normal(outline: SolidOutline, across: FloatArray | None = None) -> FloatArray | None:
    """Normal of the plane with the most face area (both sides together), at right angles to ``across`` if given."""
    normals, areas = outline.face_normals, outline.face_areas
    if across is not None and len(normals):
        keep = np.abs(normals @ across) < 0.2  # tapered faces still count
        normals, areas = normals[keep], areas[keep]
    if not len(normals):
        return None
    together = (np.abs(normals @ normals.T) > 0.9999) @ areas
    return np.asarray(normals[int(np.argmax(np.round(together, 3)))], dtype=np.float64)


def _tightest_box(outline: SolidOutline) -> FloatArray:
    """Axes (rows) of the tight box: the largest plane's normal, then the tightest rectangle in that plane."""
    normal = _main_normal(outline)
    if normal is None:
        return outline.own_axes.copy()
    candidates = [*outline.edge_directions, *outline.own_axes, *outline.face_normals]
    return _tightest_around(outline, normal, candidates)


def _tightest_around(outline: SolidOutline, normal: FloatArray, candidates: list[FloatArray]) -> FloatArray:
    given = np.array(candidates).reshape(-1, 3)
    flats = given - np.outer(given @ normal, normal)
    sizes = np.linalg.norm(flats, axis=1)
    flats = flats[sizes >= 0.5] / sizes[sizes >= 0.5, None]
    if not len(flats):
        raise ValueError(say("no direction lies in the plane"))  # own_axes always hold two that do
    same = np.abs(flats @ flats.T) > 0.99999
    tried: list[int] = []
    met = np.zeros(len(flats), dtype=bool)
    for place in range(len(flats)):
        if not met[place]:
            tried.append(place)
            met |= same[place]
    flats = flats[tried]
    ups = cross(np.broadcast_to(normal, flats.shape), flats)
    areas = (np.ptp(flats @ outline.points.T, axis=1) * np.ptp(ups @ outline.points.T, axis=1)).tolist()
    best = 0
    for place, area in enumerate(areas):
        if area < areas[best] * (1 - 1e-6):
            best = place
    return np.array([flats[best], ups[best], normal])


def _ascending(box: FloatArray, measure: Measure) -> FloatArray:
    order = np.argsort(measure(box)[1], kind="stable")
    axes = box[order]
    return axes if np.linalg.det(axes) > 0 else np.array([axes[0], axes[1], -axes[2]])


def _infer_grain(
    box: FloatArray, measure: Measure, ask: str
) -> tuple[Fact[tuple[float, float, float]], FloatArray | None]:
    size = measure(box)[1]
    order = np.argsort(size, kind="stable")
    thickness, width, length = (float(v) for v in size[order])
    if length - width < SAME_LENGTH * length:
        same = (
            say("all three edges")
            if length - thickness < SAME_LENGTH * length
            else say("the two longest edges")
        )
        return missing(
            say(
                "no longest edge: {same} are {length:.4g} mm; tag the grain, for example 'grain x'",
                same=same,
                length=length,
            )
        ), None
    if length < ASK_BELOW_RATIO * width:
        why = say(
            "length {length:.4g} is under {ask_below_ratio} × width {width:.4g} mm",
            length=length,
            ask_below_ratio=ASK_BELOW_RATIO,
            width=width,
        )
        return missing(say("{why}, so the longest edge does not tell; tag the grain", why=why)), None
    if ask:
        return missing(say("{ask}, so the longest edge does not tell; tag the grain", ask=ask)), None
    direction = box[order[2]]
    reason = ", ".join([say("the longest edge"), say(EDGES, length=length, width=width)])
    return inferred(_triple(direction), reason), direction


def _across(outline: SolidOutline, box: FloatArray, grain: FloatArray, tags: Tags) -> FloatArray:
    """Axes with z along the grain and y the thickness: a tagged show face, else the largest plane along the grain."""
    show = _tagged_direction(outline, tags, "show")
    if show is not None and np.linalg.norm(_without(show, grain)) > 0.5:
        y = _unit(_without(show, grain))
    else:
        normal = _main_normal(outline, across=grain)
        flat = None if normal is None else _without(normal, grain)
        y = _unit(_without(_least_parallel(box, grain), grain)) if flat is None else _unit(flat)
        if flat is None:  # a turned leg: the tightest rectangle round the grain, thickness the smaller side
            tight = _tightest_around(outline, grain, [*box, *outline.own_axes])
            size = extents_of_points(outline.points, tight)[1]
            y = tight[0] if size[0] < size[1] else tight[1]
    return np.array([cross(y, grain), y, grain])


def _least_parallel(axes: FloatArray, direction: FloatArray) -> FloatArray:
    return np.asarray(axes[int(np.argmin(np.abs(axes @ direction)))], dtype=np.float64)


def _show_face(
    outline: SolidOutline,
    tags: Tags,
    axes: FloatArray,
    measure: Measure,
    piece_centre: FloatArray | None,
    grain_known: bool,
) -> tuple[Fact[tuple[float, float, float]], FloatArray]:
    show = _tagged_direction(outline, tags, "show")
    y = axes[1]
    if show is not None:
        if grain_known and abs(show @ axes[2]) > 0.7:
            return missing(say("the tagged show face is an end of the grain; tag a side")), axes
        turned = axes if show @ y >= 0 else np.array([-axes[0], -y, axes[2]])
        return tagged(_triple(turned[1] if grain_known else show), tags.said.get("show", "tag")), turned
    if not grain_known:
        return missing(say("unknown while the grain is")), axes
    flip = np.array([-axes[0], -y, axes[2]])
    if abs(y[2]) > 0.5:
        return inferred(_triple(y if y[2] > 0 else -y), say("the face that looks up")), axes if y[
            2
        ] > 0 else flip
    if piece_centre is not None:
        outward = float((measure(axes)[0] - piece_centre) @ y)
        if abs(outward) > 1.0:
            chosen = axes if outward > 0 else flip
            return inferred(_triple(chosen[1]), say("the face that looks out of the piece")), chosen
    return missing(say("neither face looks up or out of the piece; tag the show face")), axes
