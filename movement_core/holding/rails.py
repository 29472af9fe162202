"""Where the frame is: the rails under a panel that can take fasteners, and what else it rests on."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import InputError
from movement_core.holding.fasteners import ACROSS, ALONG, Kind
from movement_core.holding.model import Bearing, Plate, Point
from movement_core.holding.polygon import clip_to_rectangle
from movement_core.wording import say

Array = NDArray[np.float64]

TOUCHING_MM = 0.5  # a member whose top is this near to the panel's underside carries it (own)
LEG_SHAPE = 3.0  # a footprint less than this many times as long as broad is a leg or block, no rail (own)


@dataclass(frozen=True)
class Rail:
    """A straight rail under the panel: apron, cross-rail, bearer, steel bar.

    Parameters
    ----------
    start_mm, end_mm : ends of its centre line, (along, across), panel frame.
    breadth_mm : of its top. height_mm : of its top above the plane of the support.
    joints_mm : distances from its start of joints to keep clear of (legs, cross-rails), its two ends included
        by themselves. depth_mm : how high the wood of the rail is; None where not known.
    """

    name: str
    start_mm: Point
    end_mm: Point
    breadth_mm: float
    height_mm: float = 0.0
    joints_mm: tuple[float, ...] = ()
    depth_mm: float | None = None

    def __post_init__(self) -> None:
        if not (math.isfinite(self.length_mm) and self.length_mm > 0 and self.breadth_mm > 0):
            raise InputError(
                say("length and breadth must be above 0"), where=say("rail {name!r}", name=self.name)
            )

    @property
    def length_mm(self) -> float:
        return math.dist(self.start_mm, self.end_mm)

    @property
    def direction(self) -> str:
        """Which way it runs by the panel's grain, "along" or "across": the nearer of the two."""
        along, across = (abs(b - a) for a, b in zip(self.start_mm, self.end_mm))
        return ALONG if along >= across else ACROSS

    def at(self, from_start_mm: float, aside_mm: float = 0.0) -> Point:
        """The point so far from its start, shifted aside toward the panel's centre."""
        start, end = np.array(self.start_mm), np.array(self.end_mm)
        axis = (end - start) / self.length_mm
        normal = np.array([-axis[1], axis[0]])
        if normal @ (start + end) > 1e-9:
            normal = -normal
        place = start + axis * from_start_mm + normal * aside_mm
        return float(place[0]), float(place[1])

    def bearing(self) -> Bearing:
        """Its top as something to rest on."""
        half = self.breadth_mm / 2
        length = self.length_mm
        corners = (self.at(0, half), self.at(length, half), self.at(length, -half), self.at(0, -half))
        return Bearing(corners, self.height_mm, name=self.name)


@dataclass(frozen=True)
class Member:
    """One part near a panel: the outline of its top face seen from above, how high that lies, and how high it is."""

    name: str
    outline_mm: tuple[Point, ...]
    top_mm: float
    depth_mm: float | None = None


@dataclass(frozen=True)
class Under:
    """What lies under a panel: rails for fasteners, and all that it rests on (rails included)."""

    rails: tuple[Rail, ...]
    bearings: tuple[Bearing, ...]


def what_lies_under(
    plate: Plate, members: Sequence[Member], underside_mm: float, touching_mm: float = TOUCHING_MM
) -> Under:
    """The members that carry a panel, from their footprints.

    Parameters
    ----------
    plate : the panel. members : parts with outlines in the panel's frame, tops on one height scale with
        ``underside_mm``. touching_mm : how near a top must be to the underside.

    Returns
    -------
    Under : long straight footprints as rails, clipped to the panel, with the crossings of others and of legs
        as joints to keep clear of; heights are measured from the underside.
    """
    half = np.array([plate.length_mm / 2, plate.width_mm / 2])
    rails: list[Rail] = []
    bearings: list[Bearing] = []
    for member in members:
        height = member.top_mm - underside_mm
        outline = clip_to_rectangle(np.asarray(member.outline_mm, dtype=float), half)
        if abs(height) > touching_mm or len(outline) < 3:
            continue
        bearings.append(Bearing(tuple(map(_point, outline)), height, name=member.name))
        start, end, breadth = _centre_line(outline)
        if math.dist(start, end) >= LEG_SHAPE * breadth:
            ends = _point(start), _point(end)
            rails.append(Rail(member.name, *ends, breadth, height, depth_mm=member.depth_mm))
    with_joints = []
    for rail in rails:
        joints = [
            place
            for bearing in bearings
            if bearing.name != rail.name
            for place in [_crossing(rail, np.asarray(bearing.outline_mm))]
            if place is not None
        ]
        with_joints.append(replace(rail, joints_mm=tuple(sorted(joints))))
    return Under(tuple(with_joints), tuple(bearings))


def _point(place: Array) -> Point:
    return float(place[0]), float(place[1])


def _centre_line(outline: Array) -> tuple[Array, Array, float]:
    """Ends of the centre line and the breadth of the smallest rectangle along one of the outline's edges."""
    best: tuple[float, Array, Array, float] | None = None
    for a, b in zip(outline, np.roll(outline, -1, axis=0)):
        if math.dist(a, b) < 1e-6:
            continue
        axis = (b - a) / math.dist(a, b)
        normal = np.array([-axis[1], axis[0]])
        u, v = outline @ axis, outline @ normal
        area = float(np.ptp(u) * np.ptp(v))
        if best is None or area < best[0] - 1e-9:
            if np.ptp(u) < np.ptp(v):
                axis, normal, u, v = normal, axis, v, u
            middle = normal * (v.min() + v.max()) / 2
            best = (area, axis * u.min() + middle, axis * u.max() + middle, float(np.ptp(v)))
    assert best is not None
    return best[1], best[2], best[3]


def _crossing(rail: Rail, outline: Array) -> float | None:
    """Where another footprint meets a rail, from the rail's start; None if it stays clear of it."""
    start, end = np.array(rail.start_mm), np.array(rail.end_mm)
    axis = (end - start) / rail.length_mm
    u = (outline - start) @ axis
    v = (outline - start) @ np.array([-axis[1], axis[0]])
    reach = rail.breadth_mm / 2 + 1.0
    if v.min() > reach or v.max() < -reach or u.min() > rail.length_mm + 1 or u.max() < -1:
        return None
    return float(np.clip((u.min() + u.max()) / 2, 0.0, rail.length_mm))


def anchor_places(
    rail: Rail, kind: Kind, count: int, clear_mm: float, spread: str = "even"
) -> tuple[float, ...]:
    """Distances from a rail's start of ``count`` fasteners, clear of its joints; fewer where there is no room.

    ``spread`` "even" puts them in the middle of equal stretches, "outer" puts the first and last as near the
    ends as ``clear_mm`` and the joints allow.
    """
    low, high = clear_mm, rail.length_mm - clear_mm
    if count < 1 or high < low:
        return ()
    shares = (np.arange(count) + 0.5) / count
    if spread == "outer" and count > 1:
        shares = np.linspace(0.0, 1.0, count)
    placed: list[float] = []
    for place in low + shares * (high - low):
        free = _clear_of(float(place), rail, clear_mm, low, high)
        if free is not None and all(abs(free - other) >= 2 * kind.shank_mm for other in placed):
            placed.append(free)
    return tuple(placed)


def _clear_of(place: float, rail: Rail, clear: float, low: float, high: float) -> float | None:
    """The nearest point to ``place`` that keeps ``clear`` from every joint; None if there is none."""
    options = [place] + [joint + side * clear for joint in rail.joints_mm for side in (-1, 1)]
    good = [
        option
        for option in options
        if low - 1e-9 <= option <= high + 1e-9
        and all(abs(option - joint) >= clear - 1e-9 for joint in rail.joints_mm)
    ]
    return min(good, key=lambda option: (abs(option - place), option)) if good else None
