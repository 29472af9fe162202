"""The page for the client, in plain words: what will move, when, how much, and what to keep the room at."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.sheet.pages.head import day
from movement_core.sheet.pages.lengths import Lengths, percent
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import (
    CAUTION,
    Block,
    Field,
    Figure,
    Form,
    Heading,
    Listing,
    Paragraph,
    Pictures,
    Pointer,
    Text,
    joined,
    tell,
)
from movement_core.sheet.pages.names import isolated, whole
from movement_core.sheet.pages.part_table import GRAVE_FINDINGS
from movement_core.sheet.pages.wish import SheetWish
from movement_core.sheet.pages.year_view import year_pictures
from movement_core.wording import phrase, say, word

MOST = 6  # things that move, and gaps
LEAST_BAND = 15  # percent of humidity: a narrower range is not kept without a plant for it (own)
LEAST_MM = 0.8  # of movement: less is not noticed in a room (own)


def client_blocks(material: Material, wish: SheetWish, lengths: Lengths) -> list[Block]:
    report = material.data["report"]
    head = Form(
        (
            Field(say("For"), Text(whole(wish.job)) if wish.job else None),
            Field(say("Where it stands"), Text(whole(wish.place)) if wish.place else None),
            Field(say("Air it was made for"), Text(whole(word(report["year"]["name"])))),
            Field(say("Date"), Text(day(report["today"]["date"]))),
        ),
        columns=2,
    )
    blocks: list[Block] = [
        head,
        Paragraph(_what_wood_does(report["findings"])),
        Heading(say("What will move, and when")),
    ]
    moves = [*_movers(material, lengths), *_bars(material, lengths)]
    blocks.append(
        Listing(tuple(moves)) if moves else Paragraph(tell("Nothing on it moves enough to be noticed."))
    )
    gaps = _gaps(material, lengths)
    if gaps:
        blocks += [Heading(say("Doors and drawers")), Listing(tuple(gaps))]
    blocks += _room(material)
    pictures = year_pictures(material, lengths)[:2]
    if pictures:
        blocks += [Heading(say("Through the year")), Pictures(pictures)]
    blocks += [Heading(say("Please mind")), Listing(tuple(Text(say(text)) for text in MIND), CAUTION)]
    return blocks


def _what_wood_does(findings: Sequence[Mapping[str, Any]]) -> Text:
    """Nobody is told that the piece lets its wood move where a finding says that it breaks or jams."""
    if any(finding["severity"] in GRAVE_FINDINGS for finding in findings):
        return tell(
            "Solid wood takes up moisture from damp air and gives it off to dry air. Across the grain it grows and "
            "shrinks with it all its life; along the grain it hardly changes. This page says what you will see."
        )
    return tell(
        "Solid wood takes up moisture from damp air and gives it off to dry air. Across the grain it grows and "
        "shrinks with it all its life; along the grain it hardly changes. Your piece is built to let this "
        "happen. This page says what you will see."
    )


MIND = (
    phrase("Keep it away from radiators, stoves, damp outer walls and the sun; leave no wet cloths on it."),
    phrase(
        "Do not plane or sand a door or drawer that sticks in the damp season: it comes free as "
        "the air dries."
    ),
    phrase("Do not screw, glue or wedge anything that was left free to move, and do not fill the gaps."),
    phrase(
        "Lift a table by its frame, not by its top. Keep anti-tip straps and wall fixings as they "
        "were fitted."
    ),
    phrase(
        "The figures are estimates from averages: a board differs from its species by some 15 %, "
        "and years differ."
    ),
)


def _movers(material: Material, lengths: Lengths) -> list[Text]:
    """The widths that change most: whole panels, then boards of no panel, alike ones once."""
    data = material.data
    found: list[tuple[float | None, Pointer, Mapping[str, Any], str]] = []
    in_panels = {id(board) for panel in material.whole.panels for board in panel.boards}
    for place, panel in enumerate(data["report"]["panels"]):
        name = say(
            "{name}, {count} boards glued together", name=isolated(panel["name"]), count=len(panel["boards"])
        )
        found.append((data["panels"][place]["total_mm"], ("panels", place), panel, name))
    alike: dict[tuple[Any, ...], list[int]] = {}
    for place, part in enumerate(data["report"]["parts"]):
        if id(material.parts[place]) not in in_panels:
            key = (part["species"], part["width_mm"], part["driest_mm"], part["wettest_mm"],
                   str(part.get("driest_range_mm")), str(part.get("wettest_range_mm")))  # fmt: skip
            alike.setdefault(key, []).append(place)
    for places in alike.values():
        place, part = places[0], data["report"]["parts"][places[0]]
        name = isolated(part["name"])
        if len(places) > 1:
            name = say("{name} and {count} alike", name=name, count=len(places) - 1)
        found.append((data["parts"][place]["total_mm"], ("parts", place), part, name))
    lively = [one for one in found if one[0] is not None and one[0] >= LEAST_MM]
    return [_mover(lengths, *one) for one in sorted(lively, key=lambda one: -(one[0] or 0.0))[:MOST]]


def _mover(lengths: Lengths, total: float | None, at: Pointer, entry: Mapping[str, Any], name: str) -> Text:
    return tell(
        "{name}: narrowest in {dry}, widest in {wet}; about {total} {unit} between the two.",
        name=name, dry=say(entry["driest_month"]), wet=say(entry["wettest_month"]),
        total=lengths.near(total, (*at, "total_mm")), unit=lengths.unit,
    )  # fmt: skip


def _bars(material: Material, lengths: Lengths) -> list[Text]:
    """Breadboard ends that stand proud or short."""
    told = []
    for place, top in enumerate(material.tops):
        for number, recipe in enumerate(top.entry.get("recipes", [])):
            if recipe["kind"] != "breadboard end" or recipe["why_not"]:
                continue
            at = ("tops", place, "recipes", number)
            ends = []
            for when in ("driest", "wettest"):
                value, most = recipe[f"proud_{when}_expected_mm"], recipe[f"proud_{when}_mm"]
                figure = _size(lengths, value, (*at, f"proud_{when}_expected_mm"))
                way = (
                    say("longer than the top is wide")
                    if when == "driest"
                    else say("shorter than the top is wide")
                )
                ends.append(
                    tell("about {mm}, at most {most} {unit} {way} at each edge in the {when} time", mm=figure,
                         most=_size(lengths, most, (*at, f"proud_{when}_mm")), unit=lengths.unit, way=way,
                         when=say("driest") if when == "driest" else say("dampest"))
                )  # fmt: skip
            told.append(joined([tell("{name}:", name=isolated(recipe["part"])), joined(ends, ", ")]))
    return told


def _size(lengths: Lengths, value: float, at: Pointer) -> Figure:
    """A figure without its sign, which the words tell."""
    shown = lengths.near(abs(value), at)
    return Figure(shown.shown, at, "size")


def _gaps(material: Material, lengths: Lengths) -> list[Text]:
    report = material.data["report"]
    places = sorted(
        material.data["gaps"],
        key=lambda i: report["gaps"][i]["becomes_least_mm"] - report["gaps"][i]["becomes_most_mm"],
    )
    told = []
    for place in places[:MOST]:
        gap, at = report["gaps"][place], ("report", "gaps", place)
        told.append(
            tell(
                "Between {one} and {other}: from {least} {unit} in {tight} to {most} {unit} in {wide}.",
                one=isolated(gap["parts"][0]), other=isolated(gap["parts"][1]), unit=lengths.unit,
                least=lengths.down(gap["becomes_least_mm"], (*at, "becomes_least_mm")),
                most=lengths.up(gap["becomes_most_mm"], (*at, "becomes_most_mm")),
                tight=say(gap["becomes_least_month"]), wide=say(gap["becomes_most_month"]),
            )
        )  # fmt: skip
    return told


def _room(material: Material) -> list[Block]:
    """The humidity to keep, and what happens beyond it."""
    room, air = material.data["room"], material.data["air"]
    heading = Heading(say("What to keep the room at"))
    if room["rh_least_percent"] is None:
        told = tell(
            "As it is drawn, no humidity keeps every part free: see the maker's sheet before it is built or delivered."
        )
        return [heading, Paragraph(told, CAUTION)]
    band = tell(
        "Keep the air between {low} and {high} % relative humidity. Shorter spells outside do no harm: thick wood "
        "takes weeks to follow.",
        low=percent(room["rh_least_percent"], ("room", "rh_least_percent"), 0),
        high=percent(room["rh_most_percent"], ("room", "rh_most_percent"), 0),
    )
    year = tell(
        "It was worked out for air that runs from {low} to {high} % through the year.",
        low=percent(air["rh_least_percent"], ("air", "rh_least_percent"), 0),
        high=percent(air["rh_most_percent"], ("air", "rh_most_percent"), 0),
    )
    blocks: list[Block] = [heading, Paragraph(band), Paragraph(year), *_limits(material)]
    if room["rh_most_percent"] - room["rh_least_percent"] < LEAST_BAND:
        told = tell(
            "So narrow a range can hardly be kept in a home: ask your maker to give the piece more room first."
        )
        blocks.insert(2, Paragraph(told, CAUTION))
    return blocks


def _limits(material: Material) -> list[Block]:
    told = []
    for place, one in enumerate(material.data["room"]["limits"]):
        figure = percent(one["rh_percent"], ("room", "limits", place, "rh_percent"), 0)
        names = say(" and ").join(isolated(name) for name in one["parts"])
        way = say("for weeks above") if one["end"] == "most" else say("for weeks below")
        told.append(
            tell("{way} {rh} %: {names} {what}.", way=way, rh=figure, names=names, what=say(one["what"]))
        )
    return [Listing(tuple(Text(t.words[:1].upper() + t.words[1:], t.figures) for t in told))] if told else []
