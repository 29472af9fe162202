"""What is set today at a moisture that was just read: gaps, and the screws of placed hardware. Nothing is changed."""

from __future__ import annotations

import datetime
from collections.abc import Generator, Sequence
from dataclasses import dataclass, replace
from typing import Any

from movement_core.errors import HeartsideError
from movement_core.piece.another_day import on_another_day
from movement_core.piece.whole import WholePiece
from movement_core.sheet.today_gaps import STEP_MM, GapToday, gaps_today
from movement_core.wording import say
from workbench_pkg.actions.hardware import (
    FIXED_AT,
    RAILS,
    PlaceWish,
    PlanQuestion,
    answer_plans,
    read_for_plans,
)
from workbench_pkg.objects import hardware as kept

SAME_MM = 0.5  # a screw that is planned further away than this is another one


@dataclass(frozen=True, eq=False)
class PlacedTop:
    """Hardware in the document: its plan's kind, and rail and place of each fastener by number."""

    name: str
    question: PlanQuestion
    kind: str
    screws: dict[int, tuple[str, float]]


@dataclass(frozen=True)
class ScrewToday:
    """Where a fastener sits: mm from the end of its slot, and how deep its tongue; None where it has none."""

    top: str
    number: int
    rail: str
    from_edge_mm: float
    in_slot_mm: float | None
    slot_mm: float | None
    tongue_mm: float | None


@dataclass(frozen=True, eq=False)
class Today:
    """The answer. ``told``: what could not be worked out, one sentence each."""

    gaps: tuple[GapToday, ...]
    screws: tuple[ScrewToday, ...]
    told: tuple[str, ...]


def read_placed(doc: Any) -> tuple[PlacedTop, ...]:
    """The hardware that is placed in a document, with all that its plan needs."""
    names = {leaf.key: leaf.name for leaf in _leaves(doc)}
    found = []
    for group in kept.placed_tops(doc):
        board = names.get(getattr(group, kept.KEY, ""), "")
        markers = [
            obj for obj in group.Group if getattr(obj, kept.NUMBER, 0) and hasattr(obj, "HeartsideOnRail")
        ]
        if not (board and markers and hasattr(group, "HeartsidePlan")):
            continue
        kind = str(group.HeartsidePlan)
        wish = PlaceWish(
            board,
            float(getattr(group, "HeartsideFlatness", 0.0)) or None,
            (kind,),
            float(getattr(group, FIXED_AT, 0.0)),
            tuple(getattr(group, RAILS, ())),
        )
        screws = {
            int(getattr(obj, kept.NUMBER)): (str(obj.HeartsideRail), float(obj.HeartsideOnRail))
            for obj in markers
        }
        found.append(PlacedTop(group.Label, read_for_plans(doc, wish), kind, screws))
    return tuple(found)


def _leaves(doc: Any) -> Sequence[Any]:
    from workbench_pkg.host.leaves import read_leaves

    return read_leaves(doc, hidden=True).leaves


def todays(
    whole: WholePiece,
    placed: Sequence[PlacedTop],
    day: datetime.date,
    moistures: Sequence[float],
    step_mm: float = STEP_MM,
) -> Generator[float, None, Today]:
    """Work out what is set on a day, step by step; no document is looked at.

    Parameters
    ----------
    whole : the piece. placed : hardware in it. day : today. moistures : percent, what the wood is taken to be at, and
        where that is doubtful the least and the most that it may be.
    step_mm : what gaps are set in.

    Yields how far it is, from 0 to 1; returns the answer.
    """
    yield 0.05
    gaps = gaps_today([on_another_day(whole, day, mc) for mc in moistures], step_mm)
    screws: list[ScrewToday] = []
    told: list[str] = []
    for number, top in enumerate(placed):
        yield 0.3 + 0.7 * number / len(placed)
        settings = replace(top.question.settings, today=day, today_mc=moistures[0])
        try:
            answer = answer_plans(replace(top.question, settings=settings))
        except HeartsideError as error:
            told.append(f"{top.name}: {error}")
            continue
        plan = next((one for one in answer.entry.get("plans", []) if one["kind"] == top.kind), None)
        now = {} if plan is None else {one["number"]: one for one in plan["fasteners"]}
        for fastener, (rail, on_rail) in sorted(top.screws.items()):
            one = now.get(fastener)
            if one is None or one["rail"] != rail or abs(one["on_rail_mm"] - on_rail) > SAME_MM:
                told.append(say("{top}: the hardware rests on an older plan: place it anew", top=top.name))
                break
            screws.append(
                ScrewToday(
                    top.name,
                    fastener,
                    rail,
                    one["from_edge_today_mm"],
                    one["screw_from_slot_end_today_mm"],
                    one["slot_length_mm"],
                    one["tongue_today_mm"],
                )
            )
    return Today(gaps, tuple(screws), tuple(told))
