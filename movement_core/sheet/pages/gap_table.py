"""The table of gaps: what to leave today, what it becomes, and whether grooves still cover."""

from __future__ import annotations

from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import (
    NOTE,
    RIGHT,
    Block,
    Column,
    Heading,
    Paragraph,
    Row,
    Table,
    Text,
    tell,
)
from movement_core.sheet.pages.names import isolated
from movement_core.wording import say


def gap_blocks(material: Material, lengths: Lengths) -> list[Block]:
    """Working gaps, then panels in grooves; a sentence where there are none of either."""
    gaps, rooms = _gaps(material, lengths), _rooms(material, lengths)
    heading = Heading(say("Gaps to leave today"))
    if not gaps and not rooms:
        none = tell("No door, drawer or panel in grooves was found whose gap changes with the seasons.")
        return [heading, Paragraph(none)]
    return [heading, *gaps, *rooms]


def _gaps(material: Material, lengths: Lengths) -> list[Block]:
    report = material.data["report"]
    rows = []
    for line, place in enumerate(material.data["gaps"], 1):
        gap, at = report["gaps"][place], ("report", "gaps", place)
        numbers = [str(material.number.get(key, "?")) for key in gap["keys"]]
        between = Text(" | ".join(f"{n} {isolated(name)}" for n, name in zip(numbers, gap["parts"])))
        rows.append(
            Row(
                (
                    Text(f"G{line}"),
                    between,
                    tell("{drawn}", drawn=lengths.near(gap["drawn_mm"], (*at, "drawn_mm"))),
                    tell("{now}", now=lengths.near(gap["today_mm"], (*at, "today_mm"))),
                    tell("{least}", least=lengths.down(gap["least_mm"], (*at, "least_mm"))),
                    tell("{most}", most=lengths.up(gap["most_mm"], (*at, "most_mm"))),
                    tell("{leave}", leave=lengths.up(gap["leave_today_mm"], (*at, "leave_today_mm"))),
                    tell(
                        "{least} {month}",
                        least=lengths.down(gap["becomes_least_mm"], (*at, "becomes_least_mm")),
                        month=say(gap["becomes_least_month"])[:3],
                    ),
                    tell(
                        "{most} {month}",
                        most=lengths.up(gap["becomes_most_mm"], (*at, "becomes_most_mm")),
                        month=say(gap["becomes_most_month"])[:3],
                    ),
                )
            )
        )
    if not rows:
        return []
    drawn, left = (
        say("if built as drawn, {unit}", unit=lengths.unit),
        say("if left so today, {unit}", unit=lengths.unit),
    )
    columns = (
        Column(say("Gap"), 5),
        Column(say("between"), 34),
        Column(say("drawn"), 8, RIGHT, drawn),
        Column(say("today"), 8, RIGHT, drawn),
        Column(say("least"), 8, RIGHT, drawn),
        Column(say("most"), 8, RIGHT, drawn),
        Column(say("leave"), 9, RIGHT, left),
        Column(say("least, month"), 11, RIGHT, left),
        Column(say("most, month"), 11, RIGHT, left),
    )
    note = tell(
        "Leave: rounded up, so that the gap keeps its least in the tightest season. Below 0 the parts press."
    )
    return [Table(say("Round doors and drawers that move"), columns, tuple(rows)), Paragraph(note, NOTE)]


def _rooms(material: Material, lengths: Lengths) -> list[Block]:
    """Panels held by both edges: room in the damp season, cover in the dry one."""
    rows = []
    for place, room in enumerate(material.data["grooves"]):
        at = ("grooves", place)
        number = material.number.get(room["key"], "?")
        covers = room["cover_least_mm"] > 0
        rows.append(
            Row(
                (
                    Text(f"{number} {isolated(room['name'])}"),
                    tell("{room}", room=lengths.near(room["room_mm"], (*at, "room_mm"))),
                    tell("{least}", least=lengths.down(room["room_least_mm"], (*at, "room_least_mm"))),
                    Text(say(room["room_least_month"])[:3]),
                    tell("{cover}", cover=lengths.near(room["cover_mm"], (*at, "cover_mm"))),
                    tell("{least}", least=lengths.down(room["cover_least_mm"], (*at, "cover_least_mm"))),
                    Text(say(room["cover_least_month"])[:3]),
                    Text(say("yes") if covers else say("no: a line opens")),
                ),
                "" if covers and (room["room_least_mm"] is None or room["room_least_mm"] >= 0) else "grave",
            )
        )
    if not rows:
        return []
    room_of, cover = (
        say("room beside both edges, {unit}", unit=lengths.unit),
        say("tongue in its groove, {unit}", unit=lengths.unit),
    )
    columns = (
        Column(say("Panel in grooves"), 30),
        Column(say("drawn"), 9, RIGHT, room_of),
        Column(say("least"), 9, RIGHT, room_of),
        Column(say("in"), 7, "left", room_of),
        Column(say("drawn"), 9, RIGHT, cover),
        Column(say("least"), 9, RIGHT, cover),
        Column(say("in"), 7, "left", cover),
        Column(say("still covers?"), 14),
    )
    return [Table(say("Panels in grooves"), columns, tuple(rows))]
