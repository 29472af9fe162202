"""A schedule of a piece for a table in the document: parts, joints, fasteners, gaps, as cells with their units."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from movement_core.wording import say


@dataclass(frozen=True)
class Length:
    """A length in mm; the host shows it in the user's own unit."""

    mm: float


Cell = str | int | float | Length | None
Row = tuple[Cell, ...]


@dataclass(frozen=True)
class Block:
    """One table of the schedule."""

    title: str
    heads: tuple[str, ...]
    rows: tuple[Row, ...]


def schedule(report: Mapping[str, Any], tops: Sequence[Mapping[str, Any]]) -> tuple[Block, ...]:
    """The tables of a report and of the best plan of each top; empty ones are left out."""
    blocks = [parts_block(report), joints_block(report), gaps_block(report)]
    blocks += [fasteners_block(top) for top in tops if top["plans"]]
    return tuple(block for block in blocks if block.rows)


def parts_block(report: Mapping[str, Any]) -> Block:
    """Every part with its sizes as drawn and its width through the year."""
    heads = (
        say("part"), say("wood"), say("width as drawn"), say("thickness"), say("length"), say("today"), say("driest"),
        say("wettest"), say("not said"),
    )  # fmt: skip
    rows = tuple(
        (
            part["name"], part["species"], _length(part.get("width_mm")), _length(part.get("thickness_mm")),
            _length(part.get("length_mm")), _length(part["today_mm"]), _length(part["driest_mm"]),
            _length(part["wettest_mm"]), ", ".join(part["missing"]) or None,
        )
        for part in report["parts"]
    )  # fmt: skip
    return Block(say("Parts"), heads, rows)


def joints_block(report: Mapping[str, Any]) -> Block:
    """Every joint with its parts and its kind."""
    rows = tuple(
        (" + ".join(joint["parts"]), say(joint["kind"].replace("-", " ")), say(joint["origin"]))
        for joint in report["joints"]
    )  # fmt: skip
    return Block(say("Joints"), (say("parts"), say("joint"), say("how it is known")), rows)


def gaps_block(report: Mapping[str, Any]) -> Block:
    """Every gap that works, with what it is today and its extremes."""
    heads = (say("between"), say("as drawn"), say("today"), say("least"), say("most"))
    rows = tuple(
        (
            " + ".join(gap["parts"]), _length(gap["drawn_mm"]), _length(gap["today_mm"]), _length(gap["least_mm"]),
            _length(gap["most_mm"]),
        )
        for gap in report["gaps"]
        if gap["works"]
    )  # fmt: skip
    return Block(say("Gaps"), heads, rows)


def fasteners_block(top: Mapping[str, Any]) -> Block:
    """Every fastener of the best plan of a top: its place today and its slot."""
    plan = top["plans"][0]
    heads = (
        say("number"), say("on"), say("from the end"), say("from the edge today"), say("slot length"),
        say("slot width"), say("screw from the slot's end today"), say("travel least"), say("travel most"),
    )  # fmt: skip
    rows = tuple(
        (
            one["number"], one["rail"], _length(one["from_end_mm"]), _length(one["from_edge_today_mm"]),
            _length(one["slot_length_mm"]), _length(one["slot_width_mm"]),
            _length(one["screw_from_slot_end_today_mm"]), _length(one["travel_least_mm"]),
            _length(one["travel_most_mm"]),
        )
        for one in plan["fasteners"]
    )  # fmt: skip
    title = say("Fasteners of {top}: {plan}", top=top["name"], plan=plan["name"])
    return Block(title, heads, rows)


def without_empty(block: Block) -> Block:
    """A block without the columns in which no row has anything: slots of a plan that has none."""
    kept = [at for at in range(len(block.heads)) if any(row[at] is not None for row in block.rows)]
    rows = tuple(tuple(row[at] for at in kept) for row in block.rows)
    return Block(block.title, tuple(block.heads[at] for at in kept), rows)


def _length(mm: float | None) -> Length | None:
    return None if mm is None else Length(float(mm))
