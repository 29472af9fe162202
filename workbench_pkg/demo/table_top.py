"""The trestle table's top: seven boards glued edge to edge, each with its own place in the tree."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from workbench_pkg.demo.shapes import block, container, said, wood

LENGTH = 1900.0
THICKNESS = 28.0
BUILT_MC = 9.0
SPECIES = "white oak"
FINISH_UNEQUAL = "show varnish 3, back bare"
FINISH_EQUAL = "varnish 3"


@dataclass(frozen=True)
class TopBoard:
    """Width in mm, and what is known of the rings: the pith in the board's section (mm), or their angle and radius.

    ``looks``: how much better the maker finds the face that is up.
    """

    width: float
    heart: str
    pith: tuple[float, float] | None = None
    ring_angle: float | None = None
    ring_radius: float | None = None
    looks: float = 0.0
    by_label: bool = False  # tagged by text in the label instead of by properties
    built_known: bool = True


BOARDS = (
    TopBoard(142, "show", pith=(18, 74), looks=1),
    TopBoard(128, "show", pith=(-30, 92), by_label=True),
    TopBoard(150, "show", pith=(0, 58), looks=2),
    TopBoard(136, "show", pith=(-150, 60)),
    TopBoard(146, "back", pith=(12, -66), looks=4),  # flipped, for its looks
    TopBoard(124, "show", ring_angle=80, ring_radius=140, built_known=False),
    TopBoard(134, "show", pith=(-20, 110), by_label=True),
)
WIDTH = sum(board.width for board in BOARDS)


def table_top(home: Any, placement: Any, repaired: bool) -> Any:
    """The boards in a container whose z = 0 is the underside and whose y = 0 is the middle of the top."""
    top = container(home, "Top", placement)
    finish = FINISH_EQUAL if repaired else FINISH_UNEQUAL
    edge = -WIDTH / 2
    for number, board in enumerate(BOARDS, start=1):
        label = f"Top board {number}"
        if board.by_label:
            x, y = board.pith or (0.0, 0.0)
            facts = f"{SPECIES}; grain x; show z; heart {board.heart}; pith {x:g} {y:g}; finish {finish}"
            label = said(label, f"{facts}; built {BUILT_MC:g}")
        low, high = (-LENGTH / 2, edge, 0.0), (LENGTH / 2, edge + board.width, THICKNESS)
        made = block(top, label, low, high)
        if not board.by_label:
            wood(made, **_facts(board, finish, repaired))
        edge += board.width
    return top


def _facts(board: TopBoard, finish: str, repaired: bool) -> dict[str, object]:
    facts: dict[str, object] = {
        "species": SPECIES,
        "grain": "x",
        "show": "z",
        "heart": board.heart,
        "finish": finish,
    }
    if board.pith is not None:
        facts["pith"] = board.pith
    if board.ring_angle is not None:
        facts["rings"] = board.ring_angle
    if board.ring_radius is not None:
        facts["radius"] = board.ring_radius
    if board.looks:
        facts["looks"] = board.looks
    if board.built_known or repaired:
        facts["built"] = BUILT_MC
    return facts
