"""Solid bottoms and backs let into the boards around them, with less room across their grain than they swell."""

from __future__ import annotations

from movement_core.checks.finding import BREAKS, Finding
from movement_core.checks.force_words import force_figures, force_words, worst_force
from movement_core.checks.told import told
from movement_core.checks.trapped_panels import presses, room_figures, trapped_lengths
from movement_core.piece.captive_room import IN_PLANE, WIDTH, CaptiveRoom
from movement_core.piece.contact.found import FLAT
from movement_core.piece.loose_groups import LooseGroup
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say


def drawer_bottoms(whole: WholePiece) -> list[Finding]:
    """One finding for each bottom or back that pushes the boards around it apart."""
    return [_finding(whole, room) for room in whole.rooms if not room.in_frame and presses(room)]


def _finding(whole: WholePiece, room: CaptiveRoom) -> Finding:
    drawer = next((group for group in whole.boxes if room.captive.part in group.parts), None)
    indices = (room.captive.part, *room.holders)
    force = worst_force(whole, ((room.captive.part, holder) for holder in room.holders))
    return told(
        whole,
        "drawer-bottom" if drawer is not None else "trapped-bottom-or-back",
        BREAKS,
        indices,
        say(
            "across its grain it grows {growth:.1f} mm wider than drawn and its grooves leave it {room:.1f} mm: "
            "{short:.1f} mm too little. It pushes them apart, or buckles",
            **trapped_lengths(room),
        )
        + force_words(force),
        _remedy(whole, room, drawer),
        room.growth_month,
        room_figures(room) | force_figures(force),
    )


def _remedy(whole: WholePiece, room: CaptiveRoom, drawer: LooseGroup | None) -> str:
    across, along = (False, False) if drawer is None else _ways_aside(whole, room, drawer)
    if across and not along:
        return say(
            "run its grain from side to side, fix it in the front's groove, and let it slide under the back: a slotted "
            "screw there, and room behind"
        )
    if along and not across:
        return say(
            "let it slide out under the drawer's back: cut the back narrower, so that only the groove of the front "
            "holds it"
        )
    return say(
        "leave {room:.0f} mm of room in the grooves at its edges, glue it at one line at most; or use plywood",
        room=AtLeast(room.growth_mm + 1),
    )


def _ways_aside(whole: WholePiece, room: CaptiveRoom, drawer: LooseGroup) -> tuple[bool, bool]:
    """Whether a drawer has room on both sides across the grain of its bottom, and along it.

    That way lie its sides: in front of it and behind it there is room on one end at most.
    """
    frame = whole.parts[room.captive.part].part.frame
    found: set[tuple[int, int]] = set()
    for gap in whole.touching.gaps:
        inside = [index in drawer.parts for index in (gap.first, gap.second)]
        if gap.surface != FLAT or sum(inside) != 1:
            continue
        outward = gap.normal if inside[0] else -gap.normal
        for axis in (WIDTH, 2):
            way = float(outward @ frame.axes[axis])
            if abs(way) > IN_PLANE and float((gap.centre - frame.centre) @ outward) > 0:
                found.add((axis, 1 if way > 0 else -1))
    across, along = ({(axis, -1), (axis, 1)} <= found for axis in (WIDTH, 2))
    return across, along
