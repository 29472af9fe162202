"""What edges and ends of a top are called, and the line of it that stays put."""

from __future__ import annotations

import difflib
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import UnknownName
from movement_core.piece.top_place import Near, TopPlace
from movement_core.wording import say

AXES = "xyz"
CENTRE = "centre"
SAME_MM = 0.5  # lines of boards of one top that lie nearer to one another are one (own)


@dataclass(frozen=True)
class FixedLine:
    """The line of a top that stays put, all else moves from it.

    Attributes
    ----------
    at_mm : across from the middle of its width. asked : whether it was asked for, else it is what its boards say, or
        the middle where they say none, or lines that differ.
    said : (board, mm across from the middle of the top) of each board that says which line of it is held.
    """

    at_mm: float
    asked: bool
    said: tuple[tuple[str, float], ...] = ()

    @property
    def differing(self) -> bool:
        """Whether the boards say lines that differ: a glued top has one only."""
        places = [at for _, at in self.said]
        return bool(places) and max(places) - min(places) > SAME_MM

    @property
    def against(self) -> bool:
        """Whether it is not what the boards say."""
        return any(abs(at - self.at_mm) > SAME_MM for _, at in self.said)


def fixed_line(place: TopPlace, fixed: str | float = "") -> FixedLine:
    """The line that stays put.

    Parameters
    ----------
    fixed : "centre", the name of one of its edges (``edge_names``), or mm across from the middle; empty: what its
        boards say by their tag ``fixed``, or the middle.

    Raises
    ------
    UnknownName : no such line.
    """
    said = said_lines(place)
    half = place.width_mm / 2
    if not isinstance(fixed, str):
        if abs(fixed) <= half + 1e-6:
            return FixedLine(float(np.clip(fixed, -half, half)), True, said)
    elif not fixed:
        usual = FixedLine(0.0, False, said)
        return FixedLine(said[0][1], False, said) if said and not usual.differing else usual
    else:
        edges = edge_names(place)
        for name, at in zip((CENTRE, *edges), (0.0, -half, half)):
            if fixed == name:
                return FixedLine(at, True, said)
    names = (CENTRE, *edge_names(place))
    raise UnknownName(
        say("no fixed line {fixed!r}", fixed=fixed),
        nearest=tuple(difflib.get_close_matches(str(fixed), names, n=2, cutoff=0.3)),
        where=say("top {name!r}", name=place.name),
        allowed=say("{names}, or mm from the middle within its width", names=", ".join(names)),
    )


def said_lines(place: TopPlace) -> tuple[tuple[str, float], ...]:
    """(board, mm across from the middle of the top) of each board that says which line of it is held."""
    found = []
    for board, left, right in zip(place.boards, place.lines_mm, place.lines_mm[1:]):
        part = board.part
        if part.fixed_mm is not None:
            way = 1.0 if float(part.frame.axes[0] @ place.axes[0]) > 0 else -1.0
            found.append((part.name, (left + right) / 2 + way * part.fixed_mm))
    return tuple(found)


# ---- names ------------------------------------------------------------------------------------------------


def edge_names(place: TopPlace) -> tuple[str, str]:
    """What the edges toward −across and +across are called: by their boards, else by the model's axes."""
    first, last = place.boards[0].part.name, place.boards[-1].part.name
    if first != last:
        return first, last
    word = _toward(place.axes[0])
    return say("{axis} edge", axis=_opposite(word)), say("{axis} edge", axis=word)


def end_names(place: TopPlace) -> tuple[str, str]:
    """What the ends toward −along and +along are called: by what lies under them, else by the model's axes."""
    names = []
    taken: set[str] = set()
    for side, word in ((-1, _opposite(_toward(place.axes[2]))), (1, _toward(place.axes[2]))):
        candidates = [
            one
            for one in (*place.ends, *place.under, *place.let_in, *place.battens)
            if side * _along(one) > 0.25 * place.length_mm
        ]
        # A rail across the end names it better than a leg does.
        candidates.sort(
            key=lambda one: (one.high[1] - one.low[1] < 0.3 * place.width_mm, -side * _along(one), one.name)
        )
        by_axis = say("{axis} end", axis=word)
        name = candidates[0].name if candidates else by_axis
        names.append(by_axis if name in taken else name)
        taken.add(name)
    return names[0], names[1]


def _along(one: Near) -> float:
    return float(one.low[0] + one.high[0]) / 2


def _toward(direction: NDArray[np.float64]) -> str:
    at = int(np.argmax(np.abs(direction)))
    return f"{'+' if direction[at] > 0 else '-'}{AXES[at]}"


def _opposite(word: str) -> str:
    return f"{'-' if word[0] == '+' else '+'}{word[1]}"
