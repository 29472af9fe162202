"""Battens and breadboard ends as text."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.sheet.lines import wrapped
from movement_core.sheet.text import printable
from movement_core.wording import say, word


def bar_lines(recipes: Sequence[Mapping[str, Any]], datum: Mapping[str, str]) -> list[str]:
    """One block for each batten and breadboard end."""
    return [_block(recipe, datum) for recipe in recipes]


def _block(recipe: Mapping[str, Any], datum: Mapping[str, str]) -> str:
    name = printable(recipe["part"])
    if recipe["why_not"]:
        head = say("{part}, a {kind}", part=name, kind=word(recipe["kind"]))
        return wrapped(f"{head}: {recipe['why_not']}", "  ")
    batten = recipe["kind"] == "batten"
    head, rows, tail = (_batten if batten else _breadboard_end)(name, recipe, datum)
    return "\n".join([wrapped(head, "  "), *(wrapped(row, "    ") for row in rows), wrapped(tail, "    ")])


def _batten(name: str, recipe: Mapping[str, Any], datum: Mapping[str, str]) -> tuple[str, list[str], str]:
    head = say(
        "{part}, a batten: never glued. Screws {screw:g} mm thick: one plain hole in the middle, the others in slots "
        "along the batten; places from the middle of the top, + toward {other}.",
        part=name,
        screw=recipe["screw_mm"],
        other=printable(datum["other_edge"]),
    )
    rows = []
    for screw in recipe["screws"]:
        hole = say("plain hole")
        if screw["slot_length_mm"]:
            hole = say(
                "slot {length:.1f} mm long, screw today {today:.1f} mm from its end toward {edge}",
                length=screw["slot_length_mm"],
                today=screw["screw_from_slot_end_today_mm"],
                edge=printable(datum["edge"]),
            )
        rows.append(say("screw {place}: {hole}", place=_place(screw["across_mm"]), hole=hole))
    tail = say(
        "The top stands at least {dry:.1f} mm beyond the batten's end when driest, {wet:.1f} at most when wettest.",
        dry=recipe["overhang_driest_mm"],
        wet=recipe["overhang_wettest_mm"],
    )
    return head, rows, tail


def _breadboard_end(
    name: str, recipe: Mapping[str, Any], datum: Mapping[str, str]
) -> tuple[str, list[str], str]:
    head = say(
        "{part}, a breadboard end: tongue {thick:.0f} mm thick and {deep:.0f} deep, tenons {tenon:.0f} long, pegs "
        "{peg:g} mm thick; glue only from {low:+.0f} to {high:+.0f} mm from the middle of the top, + toward {other}.",
        part=name,
        thick=recipe["tongue_thickness_mm"],
        deep=recipe["tongue_depth_mm"],
        tenon=recipe["tenon_length_mm"],
        peg=recipe["peg_mm"],
        low=recipe["glue_from_mm"],
        high=recipe["glue_to_mm"],
        other=printable(datum["other_edge"]),
    )
    rows = [
        say(
            "tenon {place}, {wide:.0f} mm wide: {room}",
            place=_place(tenon["across_mm"]),
            wide=tenon["width_mm"],
            room=_room(tenon, datum),
        )
        for tenon in recipe["tenons"]
    ]
    tail = say(
        "Cut to the top's width today it stands about {dry:.1f} mm proud when driest and {wet:.1f} short when wettest, "
        "at each edge; up to {most_dry:.1f} and {most_wet:.1f}, the likely error included.",
        dry=abs(recipe["proud_driest_expected_mm"]),
        wet=abs(recipe["proud_wettest_expected_mm"]),
        most_dry=abs(recipe["proud_driest_mm"]),
        most_wet=abs(recipe["proud_wettest_mm"]),
    )
    return head, rows, tail


def _room(tenon: Mapping[str, Any], datum: Mapping[str, str]) -> str:
    if not tenon["slot_length_mm"]:
        return say("no slack, pegged tight")
    return say(
        "leave {front:.1f} mm in the mortise toward {edge} and {back:.1f} toward {other}; peg slot {length:.1f} mm "
        "long in the tenon, peg today {today:.1f} from its end toward {edge}",
        front=tenon["slack_front_today_mm"],
        back=tenon["slack_back_today_mm"],
        edge=printable(datum["edge"]),
        other=printable(datum["other_edge"]),
        length=tenon["slot_length_mm"],
        today=tenon["screw_from_slot_end_today_mm"],
    )


def _place(across: float) -> str:
    return say("in the middle") if abs(across) < 0.5 else say("at {place:+.0f} mm", place=across)
