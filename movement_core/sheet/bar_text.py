"""Battens and breadboard ends as text."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.sheet.lines import wrapped
from movement_core.sheet.text import printable


def bar_lines(recipes: Sequence[Mapping[str, Any]], datum: Mapping[str, str]) -> list[str]:
    """One block for each batten and breadboard end."""
    return [_block(recipe, datum) for recipe in recipes]


def _block(recipe: Mapping[str, Any], datum: Mapping[str, str]) -> str:
    name = printable(recipe["part"])
    if recipe["why_not"]:
        return wrapped(f"{name}, a {recipe['kind']}: {recipe['why_not']}", "  ")
    if recipe["kind"] == "batten":
        head = (
            f"{name}, a batten: never glued. One plain hole in the middle, the other screws in slots along the batten; "
            f"places from the middle of the top, + toward {printable(datum['other_edge'])}."
        )
        rows = [
            f"screw {_place(screw['across_mm'])}: "
            + (
                f"slot {screw['slot_length_mm']:.1f} mm long, screw today {screw['screw_from_slot_end_today_mm']:.1f} "
                f"mm from its end toward {printable(datum['edge'])}"
                if screw["slot_length_mm"]
                else "plain hole"
            )
            for screw in recipe["screws"]
        ]
        tail = (
            f"The top stands {recipe['overhang_driest_mm']:.1f} mm beyond the batten's end when driest, "
            f"{recipe['overhang_wettest_mm']:.1f} when wettest."
        )
        return "\n".join(
            [wrapped(head, "  "), *(wrapped(row, "    ") for row in rows), wrapped(tail, "    ")]
        )
    head = (
        f"{name}, a breadboard end: tongue {recipe['tongue_thickness_mm']:.0f} mm thick and "
        f"{recipe['tongue_depth_mm']:.0f} deep, tenons {recipe['tenon_length_mm']:.0f} long; glue only from "
        f"{recipe['glue_from_mm']:+.0f} to {recipe['glue_to_mm']:+.0f} mm from the middle of the top, + toward "
        f"{printable(datum['other_edge'])}."
    )
    rows = []
    for tenon in recipe["tenons"]:
        room = (
            f"leave {tenon['slack_front_today_mm']:.1f} mm in the mortise toward {printable(datum['edge'])} and "
            f"{tenon['slack_back_today_mm']:.1f} toward {printable(datum['other_edge'])}; peg slot "
            f"{tenon['slot_length_mm']:.1f} mm long in the tenon, peg today "
            f"{tenon['screw_from_slot_end_today_mm']:.1f} from its end toward {printable(datum['edge'])}"
            if tenon["slot_length_mm"]
            else "no slack, pegged tight"
        )
        rows.append(f"tenon {_place(tenon['across_mm'])}, {tenon['width_mm']:.0f} mm wide: {room}")
    tail = (
        f"Cut to the top's width today it stands {_proud(recipe['proud_driest_mm'])} when driest, "
        f"{_proud(recipe['proud_wettest_mm'])} when wettest, at each edge."
    )
    return "\n".join([wrapped(head, "  "), *(wrapped(row, "    ") for row in rows), wrapped(tail, "    ")])


def _place(across: float) -> str:
    return "in the middle" if abs(across) < 0.5 else f"at {across:+.0f} mm"


def _proud(value: float) -> str:
    return f"{value:.1f} mm proud" if value >= 0 else f"{-value:.1f} mm short"
