"""What is said of a board's wood, said of the place in a panel that it is laid into.

Laying a board elsewhere moves no drawn solid: the wood of one place is said of another. What belongs to the place
(grain and show direction, finish, what is fixed) stays with it; what belongs to the wood goes with the board, turned
with it.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

import numpy as np

from movement_core.errors import InputError
from movement_core.piece.panels import GluedPanel
from movement_core.piece.part import Part
from movement_core.piece.solve import SolvedPart
from movement_core.section.laying import Laying
from movement_core.wording import say

OF_THE_WOOD = (
    "species", "cut", "heart", "rings", "radius", "pith", "far", "points", "slope", "figure", "looks",
    "glued", "flattened", "fitted", "built", "kept",
)  # fmt: skip
SAME_SIZE_MM = 0.5  # boards that differ by more do not fit each other's place


def relaid(said: Mapping[str, Any], part: Part, side: float, up: float) -> dict[str, Any]:
    """Words of a board's wood for another place.

    Parameters
    ----------
    said : word → value as the typed properties hold it. part : that it is said of.
    side, up : +1 or −1: whether x and y of its section frame run the same way as those of the place's frame.

    Returns
    -------
    The same for the place: only words of the wood, positions turned, heart side and looks of the face that is up now.
    """
    words = {word: value for word, value in said.items() if word in OF_THE_WOOD}
    for word in ("pith", "far", "points"):
        if word in words:
            pairs = np.reshape(np.asarray(_numbers(words[word]), dtype=float), (-1, 2))
            words[word] = [float(v) + 0.0 for v in np.ravel(pairs * (side, up))]
    if side * up < 0 and "far" in words and "pith" in words:  # its far end is near now
        words["pith"], words["far"] = words["far"], words["pith"]
    if "heart" in words:
        words["heart"] = _heart(words["heart"], part, up)
    if "looks" in words:
        words["looks"] = up * float(words["looks"]) + 0.0
    return words


def _numbers(value: Any) -> Sequence[float]:
    if isinstance(value, str):
        return [float(text) for text in value.replace(",", " ").split()]
    return [float(v) for v in np.ravel(value)]


def _heart(value: str, part: Part, up: float) -> str:
    word = value.strip().lower()
    if word not in ("show", "back"):
        rings = part.rings.value
        side = None if rings is None else rings.heart
        if (
            rings is not None
            and rings.pith_mm is not None
            and abs(rings.pith_mm[1]) > part.frame.thickness_mm / 2
        ):
            side = "show" if rings.pith_mm[1] > 0 else "back"
        if side not in ("show", "back"):
            raise InputError(
                say("the heart side {value!r} is neither its show face nor its back", value=value),
                where=say("board {name!r}", name=part.name),
                todo=say("say it as show or back"),
            )
        word = side
    return word if up > 0 else {"show": "back", "back": "show"}[word]


def words_of_places(
    panel: GluedPanel, said: Sequence[Mapping[str, Any]], laying: Laying, looks: Sequence[float] | None = None
) -> list[dict[str, Any]]:
    """For each place of a panel, what to say of its wood once the boards are laid; None takes a word away.

    Parameters
    ----------
    panel : as drawn. said : of each of its boards, in that order. laying : of them.
    looks : how much better each board's face looks that is up as drawn, in place of what is said.

    Raises
    ------
    InputError : a board does not fit the place it is laid into.
    """
    found = []
    for place, index in enumerate(laying.order):
        here, board = panel.boards[place], panel.boards[index]
        _check_size(here, board)
        side, up = _signs(panel, index)
        more = {} if looks is None else {"looks": up * looks[index]}
        if laying.over[place]:
            side, up = -side, -up
        if laying.turned[place]:
            side = -side
        own_side, own_up = _signs(panel, place)
        words = relaid({**said[index], **more}, board.part, side * own_side, up * own_up)
        if not words.get("looks") and "looks" not in said[place] and "looks" not in said[index]:
            words.pop("looks", None)  # nobody looked
        gone = {word: None for word in said[place] if word in OF_THE_WOOD and word not in words}
        found.append({**words, **gone})
    return found


def _signs(panel: GluedPanel, index: int) -> tuple[float, float]:
    """Whether x and y of a board's own section frame run as those of its panel."""
    own = panel.boards[index].part.frame.axes
    return float(np.sign(own[0] @ panel.axes[0])), float(np.sign(own[1] @ panel.axes[1]))


def _check_size(here: SolvedPart, board: SolvedPart) -> None:
    away = np.abs(np.asarray(here.part.frame.size_mm) - np.asarray(board.part.frame.size_mm))
    if float(away.max()) > SAME_SIZE_MM:
        sizes = [
            " × ".join(f"{v:.0f}" for v in one.part.frame.size_mm[[2, 0, 1]]) + " mm" for one in (board, here)
        ]
        raise InputError(
            say(
                "{name} ({sizes}) does not fit the place of {name2} ({sizes2})",
                name=board.part.name,
                sizes=sizes[0],
                name2=here.part.name,
                sizes2=sizes[1],
            ),
            where=say("laying"),
            allowed=say("boards of one size changing places, or any board turned where it lies"),
            todo=say("move the boards in the model, or draw them of one size"),
        )
