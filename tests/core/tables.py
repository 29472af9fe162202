"""Small tables of boxes for the tests of tops, made without a host. All of them are invented."""

from __future__ import annotations

import datetime
from dataclasses import dataclass

import numpy as np

from movement_core.air.year import Year
from movement_core.piece.part import Solid, parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.tag_sources import tags_from_text
from tests.core.solids import box

DAY = datetime.date(2026, 1, 15)
# Air that only dries a top built at 9 %, air that only wets it, and air that does both.
DRY = Year(
    "dry room", (21.0,) * 12, (40.0, 35.0, 35.0, 38.0, 40.0, 42.0, 45.0, 45.0, 42.0, 40.0, 40.0, 40.0), "own"
)
DAMP = Year(
    "damp room", (18.0,) * 12, (65.0, 62.0, 60.0, 60.0, 62.0, 65.0, 70.0, 72.0, 70.0, 68.0, 66.0, 65.0), "own"
)
BOTH = Year(
    "swinging room",
    (20.0,) * 12,
    (25.0, 25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 72.0, 65.0, 50.0, 40.0, 30.0),
    "own",
)


@dataclass(frozen=True)
class Made:
    """One solid to be: its name, size and centre along the piece's axes, and its tag."""

    name: str
    size: tuple[float, float, float]
    centre: tuple[float, float, float]
    tag: str


def solved(made, air=BOTH, turn=None):
    """The piece of such solids, all of it turned by the rows of ``turn``."""
    axes = np.eye(3) if turn is None else turn
    solids = [
        Solid(
            str(i), one.name, box(one.size, np.array(one.centre) @ axes, axes),
            tags_from_text(one.name, f"wood{{{one.tag}}}", "label"),
        )
        for i, one in enumerate(made)
    ]  # fmt: skip
    return solve_piece(parts_of(solids), air, DAY)


def top(
    piths,
    length=900.0,
    width=110.0,
    thickness=20.0,
    built=9,
    tag="white oak",
    height=700.0,
    finish="varnish 2",
):
    """Boards side by side along y, grain along x, their underside at ``height``."""
    whole = len(piths) * width
    return [
        Made(
            f"Board {i + 1}",
            (length, width, thickness),
            (0.0, (i + 0.5) * width - whole / 2, height + thickness / 2),
            f"{tag}; grain x; show z; {pith}; finish {finish}; built {built}",
        )
        for i, pith in enumerate(piths)
    ]


def frame(length=800.0, width=350.0, height=700.0, legs=True):
    """Two long aprons, two end aprons, four legs, their upper edges at ``height``."""
    rail = "white oak; cut quarter; built 9"
    a, b = length / 2, width / 2
    made = [
        Made("Front apron", (length, 20, 80), (0, -b, height - 40), f"{rail}; grain x"),
        Made("Back apron", (length, 20, 80), (0, b, height - 40), f"{rail}; grain x"),
        Made("Left apron", (20, width, 80), (-a, 0, height - 40), f"{rail}; grain y"),
        Made("Right apron", (20, width, 80), (a, 0, height - 40), f"{rail}; grain y"),
    ]
    if legs:
        made += [
            Made(f"Leg {i}", (45, 45, height), (x, y, height / 2), f"{rail}; grain z")
            for i, (x, y) in enumerate(((-a, -b), (a, -b), (-a, b), (a, b)), 1)
        ]
    return made


UP = ("pith 0 60", "pith 5 65", "pith -8 70", "pith 3 62")  # four boards heart side up
MIXED = ("pith 0 60", "pith 5 -65", "pith -8 70", "pith 3 -62")
