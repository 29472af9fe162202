"""Battens under a top and breadboard ends, as tables."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.model import RIGHT, Block, Column, Paragraph, Pointer, Row, Table, Text, tell
from movement_core.sheet.pages.names import isolated, sentence
from movement_core.wording import say, word


def bar_blocks(entry: Mapping[str, Any], at: Pointer, lengths: Lengths) -> list[Block]:
    """Battens and breadboard ends."""
    blocks: list[Block] = []
    for place, recipe in enumerate(entry["recipes"]):
        here = (*at, "recipes", place)
        head = say("{part}, a {kind}", part=isolated(recipe["part"]), kind=word(recipe["kind"]))
        if recipe["why_not"]:
            blocks.append(Paragraph(Text(f"{head}: {sentence(recipe['why_not'])}")))
        elif recipe["kind"] == "batten":
            blocks += _batten(head, recipe, here, entry["datum"], lengths)
        else:
            blocks += _breadboard(head, recipe, here, entry["datum"], lengths)
    return blocks


def _batten(
    head: str, recipe: Mapping[str, Any], at: Pointer, datum: Mapping[str, str], lengths: Lengths
) -> list[Block]:
    rows = []
    for place, screw in enumerate(recipe["screws"]):
        here = (*at, "screws", place)
        slot = screw["slot_length_mm"]
        rows.append(
            Row(
                (
                    tell("{at}", at=lengths.signed(screw["across_mm"], (*here, "across_mm"))),
                    tell("{mm}", mm=lengths.up(slot, (*here, "slot_length_mm"))) if slot else Text(say("plain hole")),
                    tell("{mm}", mm=lengths.near(screw["screw_from_slot_end_today_mm"],
                                                 (*here, "screw_from_slot_end_today_mm"))) if slot else Text(),
                )
            )
        )  # fmt: skip
    columns = (
        Column(say("From the middle of the top, {unit}", unit=lengths.unit), 1, RIGHT),
        Column(say("Slot along the batten, {unit}", unit=lengths.unit), 1, RIGHT),
        Column(say("Screw today, {unit}", unit=lengths.unit), 1, RIGHT),
    )
    thick = lengths.near(recipe["screw_mm"], (*at, "screw_mm")).shown
    caption = say(
        "{head}: never glued. Screws {screw} {unit} thick. Places + toward {other}; the screw today from the slot's "
        "end toward {edge}",
        head=head, screw=thick, unit=lengths.unit, other=isolated(datum["other_edge"]), edge=isolated(datum["edge"]),
    )  # fmt: skip
    return [Table(caption, columns, tuple(rows))]


def _breadboard(
    head: str, recipe: Mapping[str, Any], at: Pointer, datum: Mapping[str, str], lengths: Lengths
) -> list[Block]:
    def mm(group: Mapping[str, Any], here: Pointer, word: str, how: Any = lengths.near) -> Any:
        return how(group[word], (*here, word))

    rows = []
    for place, tenon in enumerate(recipe["tenons"]):
        here = (*at, "tenons", place)
        slotted = bool(tenon["slot_length_mm"])
        rows.append(
            Row(
                (
                    tell("{at}", at=mm(tenon, here, "across_mm", lengths.signed)),
                    tell("{mm}", mm=mm(tenon, here, "width_mm")),
                    tell("{mm}", mm=mm(tenon, here, "slack_front_today_mm", lengths.up))
                    if slotted
                    else Text(),
                    tell("{mm}", mm=mm(tenon, here, "slack_back_today_mm", lengths.up))
                    if slotted
                    else Text(),
                    tell("{mm}", mm=mm(tenon, here, "slot_length_mm", lengths.up))
                    if slotted
                    else Text(say("tight")),
                    tell("{mm}", mm=mm(tenon, here, "screw_from_slot_end_today_mm")) if slotted else Text(),
                )
            )
        )
    slack = say("leave in the mortise today, {unit}", unit=lengths.unit)
    peg = say("peg, {unit}", unit=lengths.unit)
    columns = (
        Column(say("Tenon from the middle"), 1, RIGHT),
        Column(say("its width"), 1, RIGHT),
        Column(say("toward the datum edge"), 1, RIGHT, slack),
        Column(say("away from it"), 1, RIGHT, slack),
        Column(say("slot in the tenon"), 1, RIGHT, peg),
        Column(say("peg today, from its end"), 1, RIGHT, peg),
    )
    caption = say("{head}. Datum edge: {edge}", head=head, edge=isolated(datum["edge"]))
    told = tell(
        "Tongue {thick} {unit} thick and {deep} deep, tenons {long} long, pegs {peg} thick. Glue only from {low} to "
        "{high} {unit} from the middle of the top. Cut to the top's width today, each end of it stands proud (+) or "
        "short (−) by about {dry} when driest and {wet} when wettest; at most {most_dry} and {most_wet}, the likely "
        "error included.",
        thick=mm(recipe, at, "tongue_thickness_mm"), deep=mm(recipe, at, "tongue_depth_mm"),
        long=mm(recipe, at, "tenon_length_mm"), low=mm(recipe, at, "glue_from_mm", lengths.signed),
        high=mm(recipe, at, "glue_to_mm", lengths.signed), peg=mm(recipe, at, "peg_mm"),
        dry=mm(recipe, at, "proud_driest_expected_mm", lengths.signed),
        wet=mm(recipe, at, "proud_wettest_expected_mm", lengths.signed),
        most_dry=mm(recipe, at, "proud_driest_mm", lengths.signed),
        most_wet=mm(recipe, at, "proud_wettest_mm", lengths.signed), unit=lengths.unit,
    )  # fmt: skip
    return [Table(caption, columns, tuple(rows)), Paragraph(told)]
