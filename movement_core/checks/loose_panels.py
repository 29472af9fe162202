"""Panels that shrink out of their grooves, show a bare line, or rattle in them."""

from __future__ import annotations

from movement_core.checks.finding import BREAKS, SHOWS, Finding
from movement_core.checks.told import told
from movement_core.checks.trapped_panels import room_figures
from movement_core.piece.captive_room import CaptiveRoom
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, AtMost, say


def loose_panels(whole: WholePiece) -> list[Finding]:
    """One finding for each panel with too little tongue left in the dry season, and for each that rattles."""
    found = []
    for room in whole.rooms:
        if room.least_cover_mm < limit("panel cover") and room.shrinkage_mm > 0:
            found.append(_uncovered(whole, room))
        play = room.most_play_mm
        if play is not None and play > limit("panel rattle"):
            found.append(_rattles(whole, room, play))
    return found


def _uncovered(whole: WholePiece, room: CaptiveRoom) -> Finding:
    out = room.least_cover_mm < 0
    left = (
        say("{short:.1f} mm short of its groove", short=AtLeast(-room.least_cover_mm))
        if out
        else say("only {cover:.1f} mm of it left in its groove", cover=AtMost(room.least_cover_mm))
    )
    return _told(
        whole,
        room,
        "panel-leaves-its-groove",
        BREAKS if out else SHOWS,
        say(
            "it shrinks {shrinkage:.1f} mm: {left} at each edge, {wanted:.0f} mm are wanted",
            shrinkage=room.shrinkage_mm,
            left=left,
            wanted=AtLeast(limit("panel cover")),
        ),
        say(
            "deepen the grooves or widen the panel, keep it centred with a pin or a spot of glue at the middle of "
            "each end, and finish its edges before it goes in"
        ),
        room.shrinkage_month,
        {"least_cover_mm": round(room.least_cover_mm, 2)},
    )


def _rattles(whole: WholePiece, room: CaptiveRoom, play: float) -> Finding:
    return _told(
        whole,
        room,
        "panel-rattles",
        SHOWS,
        say("its tongue has {play:.1f} mm of play in the width of its groove", play=play),
        say(
            "fit the tongue with {play:.1f} mm of play or less, or set soft strips behind it",
            play=AtMost(limit("panel rattle") / 2),
        ),
        None,
        {"play_mm": round(play, 2)},
    )


def _told(
    whole: WholePiece,
    room: CaptiveRoom,
    check: str,
    severity: str,
    message: str,
    remedy: str,
    month: int | None,
    more: dict[str, float],
) -> Finding:
    indices = (room.captive.part, *room.holders)
    return told(
        whole,
        check,
        severity,
        indices,
        message,
        remedy,
        month,
        {**room_figures(room), **more},
    )
