"""Solid panels held by both edges in grooves: how much room they have, and what is left of it and of their cover."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from movement_core.air.daily import month_of_day
from movement_core.piece.contact.captives import Captive
from movement_core.piece.course import Course
from movement_core.piece.solve import SolvedPart

WIDTH = 0  # the axis across the grain
IN_PLANE = 0.7  # cosine: holders whose faces look as the panel's do lie in its plane, as a frame does (own judgement)


@dataclass(frozen=True, eq=False)
class CaptiveRoom:
    """One panel between two grooves across its grain.

    Attributes
    ----------
    captive : the panel and the sides it is held on. holders : indices of the parts at its two edges.
    room_mm : beside both edges together, as drawn; None where a groove has no bottom within reach.
    cover_mm : of the tongue in its groove as drawn, the lesser of the two. depth_mm : of that groove.
    play_mm : room of the tongue in the width of the groove, as drawn; None where no wall tells.
    width : the panel through the year. in_frame : whether the holders lie in its plane, as a frame's do.
    """

    captive: Captive
    holders: tuple[int, ...]
    room_mm: float | None
    cover_mm: float
    play_mm: float | None
    width: Course
    thickness: Course | None
    in_frame: bool

    @property
    def growth_mm(self) -> float:
        """The most that it is ever wider than drawn."""
        return float(self.width.most_mm.max()) - self.width.as_drawn_mm

    @property
    def growth_month(self) -> int:
        return int(month_of_day(int(self.width.most_mm.argmax())))

    @property
    def shrinkage_mm(self) -> float:
        """The most that it is ever narrower than drawn."""
        return self.width.as_drawn_mm - float(self.width.least_mm.min())

    @property
    def shrinkage_month(self) -> int:
        return int(month_of_day(int(self.width.least_mm.argmin())))

    @property
    def least_room_mm(self) -> float | None:
        """Room beside both edges together when it is widest; below 0 it presses."""
        return None if self.room_mm is None else self.room_mm - self.growth_mm

    @property
    def least_cover_mm(self) -> float:
        """Tongue left in the groove when it is narrowest and lies in the middle."""
        return self.cover_mm - max(0.0, self.shrinkage_mm) / 2

    @property
    def most_play_mm(self) -> float | None:
        """Room in the width of the groove when the panel is thinnest."""
        if self.play_mm is None or self.thickness is None:
            return self.play_mm
        thinner = 1 - float(self.thickness.least_mm.min()) / self.thickness.as_drawn_mm
        return self.play_mm + max(0.0, thinner) * self.tongue_mm

    @property
    def tongue_mm(self) -> float:
        """Thickness at the edge, between the walls."""
        walls = [wall for side in self.captive.on(WIDTH, 1) for wall in side.meeting.walls]
        spans = [float(np.ptp(wall.outline @ wall.axis)) - wall.slack_mm for wall in walls]
        return min(spans, default=0.0)


def captive_rooms(parts: Sequence[SolvedPart], captives: Sequence[Captive]) -> tuple[CaptiveRoom, ...]:
    """The room of every solid panel that is held by both its edges and of which the width is known."""
    found = (_room(parts, captive) for captive in captives if captive.between(WIDTH))
    return tuple(room for room in found if room is not None)


def _room(parts: Sequence[SolvedPart], captive: Captive) -> CaptiveRoom | None:
    panel = parts[captive.part]
    species, frame = panel.part.species.value, panel.part.frame
    if species is None or species.kind != "wood" or panel.width is None or not frame.grain.known:
        return None
    sides = [side for sign in (-1, 1) for side in captive.on(WIDTH, sign)]
    rooms: list[float | None] = []
    for sign in (-1, 1):
        known = [side.room_mm for side in captive.on(WIDTH, sign) if side.room_mm is not None]
        rooms.append(min(known) if known else None)
    total = None if None in rooms else float(sum(room for room in rooms if room is not None))
    through = [
        wall.slack_mm
        for side in sides
        for wall in side.meeting.walls
        if wall.inner == captive.part and abs(wall.axis @ frame.axes[1]) > IN_PLANE
    ]
    holders = tuple(dict.fromkeys(side.other for side in sides))
    in_plane = [abs(parts[i].part.frame.axes[1] @ frame.axes[1]) > IN_PLANE for i in holders]
    return CaptiveRoom(
        captive,
        holders,
        total,
        min(side.depth_mm for side in sides),
        min(through) if through else None,
        panel.width,
        panel.thickness,
        all(in_plane),
    )
