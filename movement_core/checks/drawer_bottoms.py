"""Solid bottoms and backs let into the boards around them, with less room across their grain than they swell."""

from __future__ import annotations

from movement_core.checks.finding import BREAKS, Finding
from movement_core.checks.force_words import force_figures, force_words, worst_force
from movement_core.checks.told import told
from movement_core.checks.trapped_panels import presses, room_figures, trapped_lengths
from movement_core.piece.captive_room import CaptiveRoom
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say


def drawer_bottoms(whole: WholePiece) -> list[Finding]:
    """One finding for each bottom or back that pushes the boards around it apart."""
    return [_finding(whole, room) for room in whole.rooms if not room.in_frame and presses(room)]


def _finding(whole: WholePiece, room: CaptiveRoom) -> Finding:
    in_drawer = any(room.captive.part in group.parts for group in whole.loose)
    indices = (room.captive.part, *room.holders)
    force = worst_force(whole, ((room.captive.part, holder) for holder in room.holders))
    return told(
        whole,
        "drawer-bottom" if in_drawer else "trapped-bottom-or-back",
        BREAKS,
        indices,
        say(
            "across its grain it grows {growth:.1f} mm wider than drawn and its grooves leave it {room:.1f} mm: "
            "{short:.1f} mm too little. It pushes them apart, or buckles",
            **trapped_lengths(room),
        )
        + force_words(force),
        _remedy(room, in_drawer),
        room.growth_month,
        room_figures(room) | force_figures(force),
    )


def _remedy(room: CaptiveRoom, in_drawer: bool) -> str:
    if not in_drawer:
        return say(
            "leave {room:.0f} mm of room in the grooves at its edges, glue it at one line at most; or use plywood",
            room=AtLeast(room.growth_mm + 1),
        )
    if room.captive.between(2):
        return say(
            "let it slide out under the drawer's back: cut the back narrower, so that only the groove of the front "
            "holds it"
        )
    return say(
        "run its grain from side to side, fix it in the front's groove, and let it slide under the back: a slotted "
        "screw there, and room behind"
    )
