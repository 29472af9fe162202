"""Recipes for parts that must stay loose: panels in frames, drawer bottoms, mouldings, drawer runners."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from movement_core.errors import InputError
from movement_core.holding.fixed_anyway import SOLID_WIDTH_MM
from movement_core.holding.travel import Slot, WidthStrain, seen_from_the_mover, slot, travel
from movement_core.wording import say

LEAST_COVER_MM = 3.0  # tongue that must stay in its groove in the driest state (common practice)
FROM_THE_BACK_MM = 25.0  # of the last screw, or half of what is free where that is less (own)
LEAST_PLAY_MM = 0.5  # room that must be left in the wettest state (own)


@dataclass(frozen=True)
class Gap:
    """One gap through the year, mm: in the driest state, today, in the wettest."""

    driest_mm: float
    today_mm: float
    wettest_mm: float


def gap_to_leave(
    shut_mm: float, open_mm: float, least_mm: float = LEAST_PLAY_MM, nearest: str = "wettest"
) -> Gap:
    """The gap to leave today beside an edge that can come ``shut_mm`` nearer and go ``open_mm`` away.

    The smallest that never jams: ``least_mm`` is left when the edge is nearest.

    Parameters
    ----------
    shut_mm, open_mm : movement of the edge from today, each ≥ 0, its spread included.
    nearest : state in which it is nearest, "wettest" or "driest".
    """
    if nearest not in ("wettest", "driest"):
        raise InputError(
            say("nearest {nearest!r}", nearest=nearest),
            where=say("gap to leave"),
            allowed=say("wettest or driest"),
        )
    if shut_mm < 0 or open_mm < 0 or least_mm < 0:
        raise InputError(say("movements and the least gap must be 0 or more"), where=say("gap to leave"))
    today = least_mm + shut_mm
    far = today + open_mm
    return Gap(far, today, least_mm) if nearest == "wettest" else Gap(least_mm, today, far)


@dataclass(frozen=True)
class PanelInFrame:
    """A solid panel in a grooved frame.

    Attributes
    ----------
    groove_mm : depth of each groove across the panel's grain.
    gap : between each edge of the panel and the bottom of its groove.
    panel_width_mm : to cut today. opening_mm : between the frame's inner edges.
    cover_mm : tongue still in the groove in the driest state.
    pin_mm : from the panel's front edge to the pin or spot of glue at mid-width, one at each end.
    unfinished_line_mm : of the tongue that shows in the driest state if only what shows today was finished.
    """

    groove_mm: float
    gap: Gap
    panel_width_mm: float
    opening_mm: float
    cover_mm: float
    pin_mm: float
    unfinished_line_mm: float


def panel_in_frame(
    strain: WidthStrain,
    opening_mm: float,
    *,
    cover_mm: float = LEAST_COVER_MM,
    least_gap_mm: float = LEAST_PLAY_MM,
    groove_mm: float | None = None,
) -> PanelInFrame:
    """Groove depth and today's size of a panel that is pinned at mid-width.

    Parameters
    ----------
    strain : of the panel; its lines give the width it was planned at, about the opening and two grooves.
    opening_mm : between the stiles. cover_mm : to keep in the driest state. least_gap_mm : in the wettest.
    groove_mm : a given depth; default the least that serves, in steps of half a millimetre.

    Raises
    ------
    InputError : the given groove cannot both cover and leave room: with the least depth that can.
    """
    edge = travel(strain, strain.lines_mm[-1], (strain.lines_mm[0] + strain.lines_mm[-1]) / 2)
    shut, opens = float(edge.most_mm - edge.today_mm), float(edge.today_mm - edge.least_mm)
    gap = gap_to_leave(shut, opens, least_gap_mm)
    least_groove = float(np.ceil(2 * (gap.driest_mm + cover_mm) - 1e-9) / 2)
    depth = least_groove if groove_mm is None else groove_mm
    if depth < gap.driest_mm + cover_mm - 1e-9:
        raise InputError(
            say(
                "groove {depth:g} mm deep for a panel that moves {shut:.1f} mm at each edge",
                depth=depth,
                shut=shut + opens,
            ),
            where=say("panel in its frame"),
            allowed=say("{least_groove:g} mm or more", least_groove=least_groove),
            todo=say("deepen the groove, divide the panel, or accept less cover"),
        )
    width = opening_mm + 2 * (depth - gap.today_mm)
    return PanelInFrame(depth, gap, width, opening_mm, depth - gap.driest_mm, width / 2, opens)


@dataclass(frozen=True)
class DrawerBottom:
    """A solid bottom, grain from side to side, fixed in the front's groove, free at the back.

    ``overhang_mm`` is how far it reaches past the drawer back in driest, today and wettest; ``slot`` is the
    open slot of the screw up into the back.
    """

    gap_behind: Gap
    overhang_mm: tuple[float, float, float]
    slot: Slot


def drawer_bottom(
    strain: WidthStrain,
    *,
    back_at_mm: float | None = None,
    shank_mm: float = 4.0,
    overhang_today_mm: float = 3.0,
) -> DrawerBottom:
    """Room behind, overhang and slot of a drawer bottom fixed at its front edge (−across).

    Parameters
    ----------
    back_at_mm : place of the screw into the drawer back, across; default 10 mm inside the bottom's back edge.
    overhang_today_mm : past the drawer back today; it must not shrink off it.
    """
    front, back = strain.lines_mm[0], strain.lines_mm[-1]
    at = back - 10.0 if back_at_mm is None else back_at_mm
    edge, screw = travel(strain, back, front), travel(strain, at, front)
    shut, opens = float(edge.most_mm - edge.today_mm), float(edge.today_mm - edge.least_mm)
    over = tuple(
        float(overhang_today_mm + m - edge.today_mm) for m in (edge.driest_mm, edge.today_mm, edge.wettest_mm)
    )
    hole = slot(
        *seen_from_the_mover(float(screw.least_mm), float(screw.today_mm), float(screw.most_mm)), shank_mm
    )
    return DrawerBottom(gap_to_leave(shut, opens), (over[0], over[1], over[2]), hole)


@dataclass(frozen=True)
class AppliedPart:
    """A moulding, runner, kicker or stop whose grain crosses the part that carries it.

    ``glue_mm`` is the stretch at the front that may be glued; ``slots`` those of the screws behind it, each
    (place from the front, slot); ``free_mm`` the movement at its far end; ``back_gap`` the room to leave there.
    """

    glue_mm: float
    slots: tuple[tuple[float, Slot], ...]
    free_mm: tuple[float, float]
    back_gap: Gap


def _applied(
    strain: WidthStrain, glue_mm: float, most_spacing_mm: float, shank_mm: float, slot_in_carrier: bool
) -> AppliedPart:
    front, back = strain.lines_mm[0], strain.lines_mm[-1]
    free = back - front - glue_mm
    end = glue_mm + free - min(FROM_THE_BACK_MM, free / 2)
    count = max(1, int(np.ceil((end - glue_mm) / most_spacing_mm)))
    places = np.linspace(glue_mm, end, count + 1)[1:]
    there = travel(strain, front + places, front)
    # The carrier moves, the applied part stays with the front.
    slots = []
    for i, place in enumerate(places):
        moves = (float(there.least_mm[i]), float(there.today_mm[i]), float(there.most_mm[i]))
        slots.append(
            (float(place), slot(*(seen_from_the_mover(*moves) if slot_in_carrier else moves), shank_mm))
        )
    edge = travel(strain, back, front)
    least, now, most = float(edge.least_mm), float(edge.today_mm), float(edge.most_mm)
    return AppliedPart(
        glue_mm, tuple(slots), (least, most), gap_to_leave(now - least, most - now, nearest="driest")
    )


def moulding(strain: WidthStrain, *, shank_mm: float = 3.5) -> AppliedPart:
    """A moulding across a solid case side: mitre glued at the front (−across), behind it screws from inside
    the case through slots in the side.

    Parameters
    ----------
    strain : of the case side the moulding crosses.
    """
    return _applied(strain, min(SOLID_WIDTH_MM, strain.width_mm / 3), 150.0, shank_mm, slot_in_carrier=True)


def runner(strain: WidthStrain, *, shank_mm: float = 4.0) -> AppliedPart:
    """A drawer runner across a solid case side: fixed at the front, slots in it behind, a gap at its back end."""
    return _applied(strain, min(50.0, strain.width_mm / 3), 200.0, shank_mm, slot_in_carrier=False)
