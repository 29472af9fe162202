"""Panels in frames that have less room in their grooves than they swell."""

from __future__ import annotations

from movement_core.checks.finding import BREAKS, Finding
from movement_core.checks.force_words import force_figures, force_words, worst_force
from movement_core.checks.told import told
from movement_core.errors import InputError
from movement_core.holding.loose_recipes import panel_in_frame
from movement_core.holding.travel import WidthStrain
from movement_core.piece.captive_room import CaptiveRoom
from movement_core.piece.course import Course
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, AtMost, say


def trapped_panels(whole: WholePiece) -> list[Finding]:
    """One finding for each panel that presses on its frame in the damp season."""
    return [_finding(whole, room) for room in whole.rooms if room.in_frame and presses(room)]


def presses(room: CaptiveRoom) -> bool:
    """Whether a panel grows beyond its room."""
    return room.least_room_mm is not None and room.least_room_mm < limit("panel room")


def trapped_lengths(room: CaptiveRoom) -> dict[str, float]:
    """How much a panel that presses grows, what its grooves leave it, and what it lacks, mm, as sentences tell it."""
    assert room.room_mm is not None and room.least_room_mm is not None  # it presses
    return {
        "growth": AtLeast(room.growth_mm),
        "room": AtMost(room.room_mm),
        "short": AtLeast(-room.least_room_mm),
    }


def room_figures(room: CaptiveRoom) -> dict[str, float]:
    """The figures of a panel in its grooves."""
    return {
        "room_mm": round(room.room_mm or 0.0, 2),
        "growth_mm": round(room.growth_mm, 2),
        "shrinkage_mm": round(room.shrinkage_mm, 2),
        "cover_mm": round(room.cover_mm, 2),
    }


def _finding(whole: WholePiece, room: CaptiveRoom) -> Finding:
    indices = (room.captive.part, *room.holders)
    force = worst_force(whole, ((room.captive.part, holder) for holder in room.holders))
    return told(
        whole,
        "trapped-panel",
        BREAKS,
        indices,
        say(
            "it grows {growth:.1f} mm wider than drawn and its grooves leave it {room:.1f} mm: "
            "{short:.1f} mm too little. It bows, or bursts the joints of its frame{force}",
            force=force_words(force),
            **trapped_lengths(room),
        ),
        _remedy(room),
        room.growth_month,
        room_figures(room) | force_figures(force),
    )


def _remedy(room: CaptiveRoom) -> str:
    opening = room.width.as_drawn_mm - 2 * room.cover_mm
    try:
        recipe = panel_in_frame(width_strain(room.width), opening, cover_mm=limit("panel cover"))
    except InputError:
        return say("give it room, or divide it")
    return say(
        "today leave {gap:.1f} mm beside each edge in grooves at least {groove:.1f} mm deep; "
        "glue or pin it at the middle of each end only",
        gap=AtLeast(recipe.gap.today_mm),
        groove=AtLeast(recipe.groove_mm),
    )


def width_strain(course: Course) -> WidthStrain:
    """The strain of a part from its course: the most that it is narrower and wider, and today."""
    drawn = course.as_drawn_mm
    low, high = float(course.least_mm.min()) / drawn - 1, float(course.most_mm.max()) / drawn - 1
    today = (
        course.today.value if course.today.value is not None else (course.today.least + course.today.most) / 2
    )
    now = min(max(today / drawn - 1, low), high)
    return WidthStrain.even(drawn, low, now, high)
