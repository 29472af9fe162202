"""One plan in full, as text: what it does in which months, every fastener's place and room, what to buy."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from movement_core.sheet.datum import end_told
from movement_core.sheet.lines import capital, table, wrapped
from movement_core.sheet.text import printable
from movement_core.wording import say, word


def plan_text(plan: Mapping[str, Any], entry: Mapping[str, Any]) -> str:
    """The chosen plan of a top."""
    counted = ", ".join(f"{one['count']} × {one['name']}" for one in plan["hardware"])
    lines = ["  " + say("Chosen: {counted}", counted=counted)]
    lines += [wrapped(f"{text}.", "    ") for text in plan["seasons"]]
    told = (plan["fixed_line"], *plan["remarks"], *plan["flags"])
    lines += [wrapped(f"{capital(printable(text))}.", "    ") for text in told]
    lines += ["", *_fasteners(plan), "", wrapped(_legend(plan, entry["datum"]), "    ")]
    lines += [wrapped(_hardware(kind), "    ") for kind in plan["hardware"]]
    if entry["metal_base"]:
        lines.append(wrapped(_metal(entry["metal_base"]), "    "))
    return "\n".join(lines)


def _columns() -> tuple[str, ...]:
    return (
        say("no"), say("rail"), say("kind"), say("edge"), say("end"), say("on rail"), say("moves"), say("slot"),
        say("at"), say("aside"), say("screw"), say("tongue"), say("room"), say("pull"), say("allowed"),
    )  # fmt: skip


def _fasteners(plan: Mapping[str, Any]) -> list[str]:
    return table([_columns(), *(_row(one) for one in plan["fasteners"])], left=(1, 2))


def _row(one: Mapping[str, Any]) -> tuple[str, ...]:
    allowed, aside = one["allowable_pull_n"], one["slot_middle_aside_mm"]
    return (
        str(one["number"]),
        printable(one["rail"]),
        word(one["kind"]),
        f"{one['from_edge_today_mm']:.0f}",
        f"{one['from_end_mm']:.0f}",
        f"{one['on_rail_mm']:.0f}",
        "/".join(_signed(one[f"travel_{when}_mm"]) for when in ("least", "today", "most")),
        _optional(one["slot_length_mm"]),
        _optional(one["slot_middle_on_rail_mm"]),
        "" if aside is None else _signed(aside),
        _optional(one["screw_from_slot_end_today_mm"]),
        _optional(one["tongue_today_mm"]),
        _optional(one["margin_mm"]),
        f"{one['pull_n']:.0f}",
        "?" if allowed is None else f"{allowed:.0f}",
    )


def _signed(value: float) -> str:
    text = f"{value:+.1f}"
    return "0" if float(text) == 0 else text


def _optional(value: float | None) -> str:
    return "" if value is None else f"{value:.1f}"


def _legend(plan: Mapping[str, Any], datum: Mapping[str, str]) -> str:
    """What the columns mean, only those that are shown."""
    edge, other, end = (printable(datum[name]) for name in ("edge", "other_edge", "end"))
    told = [
        say(
            "mm, N. Edge: screw into the top, from the outer edge of {edge}, as the top is today. End: from the top's "
            "end at {where}. On rail: from the rail's own end (tenon included) toward {edge} or {end}. Moves: how far "
            "the top has gone there since it was fitted, + toward {other}: least/today/most, its likely error "
            "included.",
            edge=edge,
            end=end,
            where=end_told(datum, end),
            other=other,
        )
    ]
    fasteners = plan["fasteners"]
    if any(one["slot_length_mm"] for one in fasteners):
        told.append(
            say(
                "Slot: its length. At: its middle on the rail. Screw: its centre today, from the slot's end toward "
                "{edge}.",
                edge=edge,
            )
        )
    if any(one["slot_middle_aside_mm"] is not None for one in fasteners):
        told.append(
            say("Aside: from the rail's middle line to the slot's middle, + toward {other}.", other=other)
        )
    if any(one["tongue_today_mm"] is not None for one in fasteners):
        told.append(say("Tongue: how deep to set it in its groove today."))
    if any(one["margin_mm"] is not None for one in fasteners):
        told.append(say("Room: what is left in the worst month."))
    return " ".join(told)


def _hardware(kind: Mapping[str, Any]) -> str:
    if kind["screw_length_mm"]:
        screw = say(
            "screw {shank:g} × {length:.0f} mm; {before:g} mm of it lie before the top, and {left:g} mm of wood stay "
            "above its point",
            shank=kind["screw_shank_mm"],
            length=kind["screw_length_mm"],
            before=kind["passes_before_top_mm"],
            left=kind["wood_left_above_mm"],
        )
    else:
        screw = say("no stock screw stays inside the top")
    told = [f"{capital(kind['name'])}: {screw}"]
    if kind["allowable_pull_n"] is not None:
        told.append(
            say(
                "allowed {pull:.0f} N ({weakest}, ultimate ÷ {safety:g})",
                pull=kind["allowable_pull_n"],
                weakest=kind["weakest_known_link"],
                safety=kind["safety"],
            )
        )
    if kind["unknown_links"]:
        told.append(say("no published figure for {links}", links=", ".join(kind["unknown_links"])))
    return f"{'; '.join(told)}. {capital(kind['note'])}."


def _metal(base: Mapping[str, Any]) -> str:
    if base["insert_mm"] is None:
        return say("No stock threaded insert stays inside the top.")
    return say(
        "Threaded inserts up to {insert:.0f} mm long leave {left:g} mm of wood; washers of {washer:.0f} mm bear on "
        "both sides of every slot.",
        insert=base["insert_mm"],
        left=base["wood_left_above_mm"],
        washer=base["washer_mm"],
    )
