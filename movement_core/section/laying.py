"""One way to lay the boards of a panel, changed step by step and judged at once.

The judgement is the chain of exact free shapes without what stiffness does where edges do not quite fit: a millisecond
instead of a finite-element solution, and a percent or two away from it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from movement_core.errors import InputError
from movement_core.section.arrangement import Season, way_of
from movement_core.section.board import Board
from movement_core.section.lays import Candidate
from movement_core.section.panel import Panel
from movement_core.wording import say

SAMPLES_A_BOARD = 16


@dataclass(frozen=True)
class Laying:
    """Which board lies at each place from left to right, and how; indices of the boards as they are drawn."""

    order: tuple[int, ...]
    over: tuple[bool, ...]
    turned: tuple[bool, ...]

    def __post_init__(self) -> None:
        n = len(self.order)
        if sorted(self.order) != list(range(n)) or len(self.over) != n or len(self.turned) != n:
            raise InputError(
                say(
                    "a laying of {order}, {over}, {turned}",
                    order=self.order,
                    over=self.over,
                    turned=self.turned,
                ),
                where=say("laying"),
                allowed=say("each board once, and for each place whether it is turned over and end for end"),
            )

    @classmethod
    def as_drawn(cls, count: int) -> Laying:
        return cls(tuple(range(count)), (False,) * count, (False,) * count)

    def flipped(self, place: int) -> Laying:
        """The board at a place turned over."""
        return replace(self, over=_but(self.over, place))

    def turned_round(self, place: int) -> Laying:
        """The board at a place turned end for end."""
        return replace(self, turned=_but(self.turned, place))

    def moved(self, place: int, to: int) -> Laying:
        """The board at a place taken out and put in so that it lies at another; the others close up."""
        rows = list(zip(self.order, self.over, self.turned))
        rows.insert(to, rows.pop(place))
        order, over, turned = zip(*rows)
        return Laying(tuple(order), tuple(over), tuple(turned))


def _but(flags: tuple[bool, ...], place: int) -> tuple[bool, ...]:
    return tuple(not flag if i == place else flag for i, flag in enumerate(flags))


@dataclass(frozen=True, eq=False)
class Judged:
    """What a laying comes to: its boards as they lie, its looks, its shape in both seasons.

    ``departure_mm``: greatest distance from the straight line edge to edge, worst of the seasons.
    """

    boards: tuple[Board, ...]
    looks: float
    driest: Season
    wettest: Season

    @property
    def departure_mm(self) -> float:
        return max(abs(self.driest.departure_mm), abs(self.wettest.departure_mm))


def judged(candidates: Sequence[Candidate], changes: tuple[float, float], laying: Laying) -> Judged:
    """Judge a laying.

    Parameters
    ----------
    candidates : the boards as they are drawn, left to right. changes : points of MC since they were made flat, at the
        driest and at the wettest time of the year. laying : of these boards.

    Raises
    ------
    InputError : another number of boards, or boards that make no panel.
    """
    if len(laying.order) != len(candidates):
        raise InputError(
            say("{places} places for {boards} boards", places=len(laying.order), boards=len(candidates)),
            where=say("laying"),
        )
    boards = tuple(
        candidates[i].board.turned(over=over, end_for_end=turned)
        for i, over, turned in zip(laying.order, laying.over, laying.turned)
    )
    shape = Panel(boards).shape(np.asarray(changes), SAMPLES_A_BOARD * len(boards) + 1, settle=False)
    seasons = [
        Season(
            float(changes[k]),
            float(shape.out_of_flat_mm[k]),
            float(shape.departure_mm[k]),
            way_of(shape.profile[k, :, 1]),
            shape.profile[k],
        )
        for k in range(2)
    ]
    looks = sum(
        candidates[i].looks_back if over else candidates[i].looks_show
        for i, over in zip(laying.order, laying.over)
    )
    return Judged(boards, float(looks), seasons[0], seasons[1])


def best_looking(candidates: Sequence[Candidate], laying: Laying) -> Laying:
    """The same order with the better face of every board up; boards whose faces are alike stay as they lie."""
    over = tuple(
        candidates[i].looks_back > candidates[i].looks_show
        if candidates[i].looks_back != candidates[i].looks_show
        else lies
        for i, lies in zip(laying.order, laying.over)
    )
    return replace(laying, over=over)
