"""How each top is held: what it does, the ways to hold it, and every fastener of the chosen one."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.holding.plan_words import case_told
from movement_core.sheet.datum import end_told
from movement_core.sheet.lines import capital
from movement_core.sheet.pages.bar_blocks import bar_blocks
from movement_core.sheet.pages.lengths import MM, Lengths, plain
from movement_core.sheet.pages.material import Material, PlannedTop
from movement_core.sheet.pages.model import (
    CENTRE,
    DOWN,
    NOTE,
    RIGHT,
    UP,
    Block,
    Column,
    Heading,
    Listing,
    Paragraph,
    Pictures,
    Pointer,
    Row,
    Table,
    Text,
    joined,
    tell,
)
from movement_core.sheet.pages.names import isolated, sentence
from movement_core.sheet.pages.plan_view import plan_picture
from movement_core.wording import say, word


def hold_blocks(material: Material, lengths: Lengths, most_mm: tuple[float, float]) -> list[Block]:
    """A section for each top; none where the piece has no top."""
    blocks: list[Block] = []
    for place, top in enumerate(material.tops):
        blocks.append(Heading(say("Holding {name}", name=isolated(top.place.name))))
        if top.plans is None:
            blocks.append(Paragraph(tell("It cannot be worked out before this is said:")))
            blocks.append(Listing(tuple(Text(sentence(why, material.names)) for why in top.entry["missing"])))
        else:
            blocks += _held(material, top, place, lengths, most_mm)
    return blocks


def _held(
    material: Material, top: PlannedTop, place: int, lengths: Lengths, most_mm: tuple[float, float]
) -> list[Block]:
    entry, at = top.entry, ("tops", place)
    assert top.plans is not None  # the caller has looked
    names = [*material.names, *(rail["name"] for rail in entry["rails"])]
    chosen, plan_at = entry["plans"][0], (*at, "plans", 0)
    blocks: list[Block] = [_about(entry, at, lengths)]
    if len([plan for plan in entry["plans"] if plan["count"]]) > 1:
        blocks.append(_ways(entry, at, lengths))
    if entry["flat_by_itself"]:
        blocks.append(
            Paragraph(
                tell(
                    "It stays within the wish with nothing holding it down; fasteners only keep it in place."
                )
            )
        )
    elif not chosen["found"]:
        blocks.append(
            Paragraph(tell("No way to hold it that was tried keeps it within the wish. What would help:"))
        )
        helps = chosen["what_would"] or [say("nothing that was tried")]
        blocks.append(Listing(tuple(Text(sentence(text, names)) for text in helps)))
    if chosen["count"] and (chosen["found"] or entry["flat_by_itself"]):
        said = [*chosen["seasons"], chosen["fixed_line"], *chosen["remarks"]]
        blocks.append(Listing(tuple(Text(capital(sentence(text, names)) + ".") for text in said)))
        blocks += _picture(top, True, at, lengths, most_mm)
        blocks += _fasteners(chosen, plan_at, entry["datum"], lengths)
        blocks += _hardware(chosen, plan_at, lengths)
    elif entry["recipes"]:
        blocks += _picture(top, False, at, lengths, most_mm)
    blocks += bar_blocks(entry, at, lengths)
    if entry["notes"]:
        blocks.append(Heading(say("Taken for this top"), 3))
        blocks.append(
            Listing(tuple(Text(capital(sentence(text, names)) + ".") for text in entry["notes"]), NOTE)
        )
    return blocks


def _picture(
    top: PlannedTop, planned: bool, at: Pointer, lengths: Lengths, most_mm: tuple[float, float]
) -> list[Block]:
    picture, note = plan_picture(top, planned, at, lengths, most_mm)
    return [Pictures((picture,)), *note]


def _about(entry: Mapping[str, Any], at: Pointer, lengths: Lengths) -> Block:
    """What it would do if nothing held it, and what is wished for."""
    worst = max(entry["unheld_out_of_flat_mm"], key=lambda name: entry["unheld_out_of_flat_mm"][name])
    flat = lengths.near(entry["unheld_out_of_flat_mm"][worst], (*at, "unheld_out_of_flat_mm", worst))
    wish = lengths.near(entry["wish"]["flatness_mm"], (*at, "wish", "flatness_mm"))
    told = tell(
        "With its weight on its frame and no fastener it is at worst {flat} {unit} out of flat ({when}); wished is "
        "{wish} {unit} in every month.",
        flat=flat, wish=wish, unit=lengths.unit, when=case_told(worst),
    )  # fmt: skip
    hearts = f"{capital(sentence(entry['hearts']))}." if entry["hearts"] else ""
    return Paragraph(joined([told, hearts]))


def _ways(entry: Mapping[str, Any], at: Pointer, lengths: Lengths) -> Block:
    """The alternatives side by side."""
    rows = []
    for place, plan in enumerate(entry["plans"]):
        if not plan["count"]:
            continue
        here = (*at, "plans", place)
        used = plan["kinds_used"]
        name = " + ".join(f"{n} {word(kind)}" for kind, n in used.items()) if len(used) > 1 else plan["name"]
        rows.append(
            Row(
                (
                    Text(name),
                    tell("{n}", n=plain(plan["count"], (*here, "count"))),
                    *(
                        tell("{flat}", flat=lengths.up(plan[word], (*here, word)))
                        for word in (
                            "driest_out_of_flat_mm",
                            "wettest_out_of_flat_mm",
                            "worst_out_of_flat_mm",
                        )
                    ),
                    tell("{pull}", pull=plain(plan["worst_pull_n"], (*here, "worst_pull_n"))),
                    tell("{pull}", pull=plain(plan["allowable_pull_n"], (*here, "allowable_pull_n"))),
                    Text(say("holds it") if plan["found"] else say("does not hold it")),
                )
            )
        )
    flat = say("out of flat, {unit}", unit=lengths.unit)
    columns = (
        Column(say("Kind"), 30),
        Column(say("pieces"), 8, RIGHT),
        Column(say("driest"), 10, RIGHT, flat),
        Column(say("wettest"), 10, RIGHT, flat),
        Column(say("worst"), 10, RIGHT, flat),
        Column(say("worst"), 10, RIGHT, say("pull, N")),
        Column(say("allowed"), 10, RIGHT, say("pull, N")),
        Column(say("verdict"), 16),
    )
    shown = entry["plans"][0]["found"] or entry["flat_by_itself"]
    caption = (
        say("Ways to hold it; the first is drawn below") if shown else say("Ways to hold it that were tried")
    )
    return Table(caption, columns, tuple(rows))


def _fasteners(
    plan: Mapping[str, Any], at: Pointer, datum: Mapping[str, str], lengths: Lengths
) -> list[Block]:
    rows = tuple(_fastener(one, (*at, "fasteners", i), lengths) for i, one in enumerate(plan["fasteners"]))
    place, travel = (
        say("place, {unit}", unit=lengths.unit),
        say("travel since fitted, {unit}", unit=lengths.unit),
    )
    slot, tongue = say("slot, {unit}", unit=lengths.unit), say("tongue, {unit}", unit=lengths.unit)
    columns = (
        Column(say("No"), 5, RIGHT),
        Column(say("Kind"), 13),
        Column(say("Rail"), 16),
        Column(say("edge"), 8, RIGHT, place),
        Column(say("end"), 9, RIGHT, place),
        Column(say("on rail"), 9, RIGHT, place),
        Column(say("least"), 7, RIGHT, travel),
        Column(say("today"), 7, RIGHT, travel),
        Column(say("most"), 7, RIGHT, travel),
        Column(say("length"), 7, RIGHT, slot),
        Column(say("middle on rail"), 9, RIGHT, slot),
        Column(say("aside"), 7, RIGHT, slot),
        Column(say("screw today"), 8, RIGHT, slot),
        Column(say("today"), 8, RIGHT, tongue),
        Column(say("Room left"), 8, RIGHT),
        Column(say("Pull, N"), 8, RIGHT),
        Column(say("Done"), 6, CENTRE),
    )
    used = [0, 1, 2, 3, 4, 5, 6, 7, 8, *_used(plan["fasteners"]), 15, 16]
    shown = tuple(Row(tuple(row.cells[i] for i in used)) for row in rows)
    end = isolated(datum["end"])
    note = tell(
        "Edge: screw in the top, from the outer edge at {edge} as the top is today. End: from the end at {where}. On "
        "rail: from the rail's own end, tenon included, toward {edge} or {end}. Travel: + toward {other}; its likely "
        "error is included. Screw today: its centre from the slot's end toward {edge}. Aside: from the rail's middle "
        "line, + toward {other}. Slots are rounded up, room left is rounded down.",
        edge=isolated(datum["edge"]), end=end, where=end_told(datum, end), other=isolated(datum["other_edge"]),
    )  # fmt: skip
    caption = say("Every fastener; tick what is done")
    return [Table(caption, tuple(columns[i] for i in used), shown), Paragraph(note, NOTE)]


def _used(fasteners: Sequence[Mapping[str, Any]]) -> list[int]:
    words = {9: "slot_length_mm", 10: "slot_middle_on_rail_mm", 11: "slot_middle_aside_mm",
             12: "screw_from_slot_end_today_mm", 13: "tongue_today_mm", 14: "margin_mm"}  # fmt: skip
    return [column for column, word in words.items() if any(one[word] is not None for one in fasteners)]


def _fastener(one: Mapping[str, Any], at: Pointer, lengths: Lengths) -> Row:
    def figure(word: str, how: Any = lengths.near) -> Text:
        return Text() if one[word] is None else tell("{mm}", mm=how(one[word], (*at, word)))

    def signed(word: str, rounding: str) -> Text:
        return (
            tell("{mm}", mm=lengths.signed(one[word], (*at, word), rounding))
            if one[word] is not None
            else Text()
        )

    pull = tell("{pull}", pull=plain(one["pull_n"], (*at, "pull_n")))
    if one["allowable_pull_n"] is not None:
        allowed = plain(one["allowable_pull_n"], (*at, "allowable_pull_n"))
        pull = tell("{pull} of {allowed}", pull=pull, allowed=allowed)
    return Row(
        (
            Text(str(one["number"])),
            Text(word(one["kind"])),
            Text(isolated(one["rail"])),
            figure("from_edge_today_mm"),
            figure("from_end_mm"),
            figure("on_rail_mm"),
            signed("travel_least_mm", DOWN),
            signed("travel_today_mm", "nearest"),
            signed("travel_most_mm", UP),
            figure("slot_length_mm", lengths.up),
            figure("slot_middle_on_rail_mm"),
            signed("slot_middle_aside_mm", "nearest"),
            figure("screw_from_slot_end_today_mm"),
            figure("tongue_today_mm"),
            figure("margin_mm", lengths.down),
            pull,
            Text("□"),
        )
    )


def _hardware(plan: Mapping[str, Any], at: Pointer, lengths: Lengths) -> list[Block]:
    """What to buy or make."""
    items = []
    for place, kind in enumerate(plan["hardware"]):
        here = (*at, "hardware", place)
        head = tell("{n} × {name}", n=plain(kind["count"], (*here, "count")), name=kind["name"])
        if kind["screw_length_mm"]:
            both = Text()
            if lengths.units != MM:  # screws are sold by the millimetre: both are told
                words = ("screw_shank_mm", "screw_length_mm")
                shank, length = (lengths.near(kind[word], (*here, word)) for word in words)
                both = tell(" ({shank} × {length} inch)", shank=shank, length=length)
            screw = tell(
                "screw {shank} × {length} mm{both}, {left} {unit} of wood stay above its point",
                both=both,
                shank=plain(kind["screw_shank_mm"], (*here, "screw_shank_mm"), 1),
                length=plain(kind["screw_length_mm"], (*here, "screw_length_mm")),
                left=lengths.down(kind["wood_left_above_mm"], (*here, "wood_left_above_mm")),
                unit=lengths.unit,
            )
        else:
            screw = tell("no stock screw stays inside the top")
        link = (
            say(
                "gives first: {link}, ultimate ÷ {n}",
                link=kind["weakest_known_link"],
                n=f"{kind['safety']:g}",
            )
            if kind["weakest_known_link"]
            else ""
        )
        unknown = kind["unknown_links"]
        no_figure = say("no published figure for {links}", links=", ".join(unknown)) if unknown else ""
        items.append(joined([head, screw, link, no_figure, kind["note"]], "; "))
    return [Heading(say("To buy or make"), 3), Listing(tuple(items))] if items else []
