"""Pieces for the tests of sheets, worked out without a host: a table, a door, one board, hostile names, 300 slats."""

from __future__ import annotations

import datetime
from functools import cache

from movement_core.air.presets import find_year
from movement_core.checks import all_findings
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import whole_piece
from movement_core.sheet.entry import file_entry
from movement_core.sheet.pages.material import Material, planned_tops
from tests.core.contact_solids import blocks, piece_of
from tests.core.test_checks_whole import POSTS, framed, inset_door

DAY = datetime.date(2026, 3, 15)
HOSTILE = (
    "<script>alert('x')</script> & \"q\" </title>",
    "דלת ימנית עליונה",
    "باب الخزانة الأيمن",
    "桌面板第一块 — 一番上の板",
    "top\u202eboard\u2069\nsecond line\x07",
    "$\\frac{1}{2}$ %s {0} {name}",
    "A very long name of a board " * 20,
    "e\u0301 😀 ⁨isolated⁩ ]]> <!--",
)


def material(pairs, path="piece.FCStd", confirmed=None, moisture=None, kinds=("slotted screw",)):
    """Everything a sheet is drawn from, of (body, tags) pairs."""
    solved = solve_piece(piece_of(pairs), find_year("heated cold-winter home"), DAY, moisture)
    bodies = [body for body, _ in pairs]
    whole = whole_piece(solved, bodies, confirmed=confirmed)
    report = file_entry(path, solved, all_findings(whole), whole=whole)
    return Material(report, whole, bodies, planned_tops(whole, kinds=kinds) if kinds else ())


def named_boards(names):
    """Boards edge to edge with these names, as (body, tags) pairs."""
    wood = "white oak; pith {x} -120; built 8; grain x; show +z"
    return [
        (blocks(name, [((0, i * 100, 0), (900, i * 100 + 100, 24))]), wood.format(x=3 * i - 10))
        for i, name in enumerate(names)
    ]


def table_pairs():
    """Three boards on four aprons."""
    pairs = []
    for i, pith in enumerate(((20, -60), (-35, -70), (10, 75))):
        board = blocks(f"Board {i + 1}", [((0, i * 150, 0), (900, i * 150 + 150, 26))])
        pairs.append((board, f"white oak; pith {pith[0]} {pith[1]}; built 9; grain x; show +z"))
    aprons = {
        "Apron front": ((60, 40, -90), (840, 64, 0), "x"),
        "Apron back": ((60, 386, -90), (840, 410, 0), "x"),
        "Apron left": ((60, 64, -90), (84, 386, 0), "y"),
        "Apron right": ((816, 64, -90), (840, 386, 0), "y"),
    }
    for name, (low, high, grain) in aprons.items():
        pairs.append((blocks(name, [(low, high)]), f"white oak; rings 80; built 9; grain {grain}"))
    return pairs


@cache
def table():
    return material(table_pairs(), "Tisch/Küche.FCStd")


@cache
def metered_table():
    return material(table_pairs(), "table.FCStd", moisture=8.25, kinds=())


@cache
def door():
    """A door that jams, hung on hinges."""
    return material(inset_door(0.6), "door.step", POSTS)


@cache
def panel_in_frame():
    return material(framed(3.0), "frame.step")


@cache
def lid():
    """Three boards with breadboard ends and two battens."""
    pairs = []
    for i, pith in enumerate(((20, -60), (-35, -70), (10, 75))):
        board = blocks(f"Lid board {i + 1}", [((0, i * 140, 0), (900, i * 140 + 140, 22))])
        pairs.append((board, f"white oak; pith {pith[0]} {pith[1]}; built 9; grain x; show +z"))
    for name, low, high in (
        ("End left", (-70, 0, 0), (0, 420, 22)),
        ("End right", (900, 0, 0), (970, 420, 22)),
    ):
        pairs.append((blocks(name, [(low, high)]), "white oak; rings 10; built 9; grain y; show +z"))
    for name, x in (("Batten left", 200), ("Batten right", 650)):
        pairs.append(
            (blocks(name, [((x, 30, -22), (x + 50, 390, 0))]), "white oak; rings 80; built 9; grain y")
        )
    return material(pairs, "lid.step")


@cache
def one_board():
    return material(named_boards(["Shelf"]), "shelf.step")


@cache
def hostile():
    return material(named_boards(HOSTILE), "/tmp/<b>\u202e&\"'.FCStd")


@cache
def untold():
    """A board of which nothing is said, beside one of which the rings are not."""
    pairs = named_boards(["Known", "Nothing", "No rings"])
    return material(
        [pairs[0], (pairs[1][0], "glued 8"), (pairs[2][0], "white oak; built 8; grain x")], "untold.step"
    )


@cache
def three_hundred():
    """Three hundred slats in twenty layers."""
    pairs = []
    for layer in range(20):
        for i in range(15):
            low = (i * 60, 0, layer * 40)
            body = blocks(f"Slat {layer + 1}/{i + 1}", [(low, (low[0] + 50, 600 + 7 * i, low[2] + 20))])
            pairs.append((body, f"white oak; rings {5 * i}; heart show; built 8; grain y; show +z"))
    return material(pairs, "rack.step", kinds=())


ALL = {
    "table": table, "metered": metered_table, "door": door, "frame": panel_in_frame, "one": one_board,
    "lid": lid,
    "hostile": hostile, "untold": untold,
}  # fmt: skip
