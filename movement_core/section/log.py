"""Several boards from one slab or log: from the pith and the saw lines to boards with their rings.

Sections are seen on one end of the log or slab, y up; every board keeps that view, so its show face is its
upper one until it is turned. A board that holds the pith comes out too, marked by ``holds_pith``.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from movement_core.errors import InputError
from movement_core.section.board import Board, MovesAcrossGrain, checked_pith, checked_size, holds_pith
from movement_core.section.field import Floats, numbers
from movement_core.wording import phrase, say


def board_from_log(
    species: MovesAcrossGrain,
    pith_mm: tuple[float, float],
    centre_mm: tuple[float, float],
    width_mm: float,
    thickness_mm: float,
    turn_degrees: float = 0.0,
    name: str = "",
) -> Board:
    """The board cut anywhere out of a log end: by its centre and the direction of its width.

    ``pith_mm`` and ``centre_mm`` in one frame of the maker's choice on the log's end, mm; ``turn_degrees`` from
    that frame's x axis to the board's width, counter-clockwise.
    """
    where = f"board {name!r}" if name else "board"
    pith, centre = checked_pith(pith_mm, where), checked_pith(centre_mm, where)
    turn = float(np.radians(numbers(turn_degrees, phrase("turn"), where=where)))
    x, y = pith[0] - centre[0], pith[1] - centre[1]
    own = (x * np.cos(turn) + y * np.sin(turn), y * np.cos(turn) - x * np.sin(turn))
    at = (float(own[0]), float(own[1]))
    return Board(
        species, width_mm, thickness_mm, at, name, boxed_heart=holds_pith(width_mm, thickness_mm, at)
    )


def live_sawn(
    species: MovesAcrossGrain,
    diameter_mm: float,
    pith_mm: tuple[float, float],
    lines_mm: Sequence[float],
    kerf_mm: float = 3.0,
    name: str = "slab",
) -> tuple[Board, ...]:
    """Slabs sawn through and through, edged square to the narrower face, from the lowest to the highest.

    Parameters
    ----------
    diameter_mm : of the log under its bark; the origin is its centre.
    pith_mm : where the pith is from that centre (few logs have it there), mm.
    lines_mm : heights of the saw lines' middles, mm; the wood between each two is a slab.
    kerf_mm : width of the saw cut.

    Raises
    ------
    InputError : a line outside the log, or two lines closer than the kerf.
    """
    diameter = checked_size(diameter_mm, phrase("log diameter"), name, (10.0, 5000.0))
    lines = _checked_lines(lines_mm, kerf_mm, -0.5 * diameter, 0.5 * diameter, name)
    boards = []
    for i, (low, high) in enumerate(zip(lines[:-1] + 0.5 * kerf_mm, lines[1:] - 0.5 * kerf_mm), 1):
        width = 2.0 * np.sqrt((0.5 * diameter) ** 2 - max(abs(low), abs(high)) ** 2)
        middle = 0.5 * (low + high)
        pith = (pith_mm[0], pith_mm[1] - float(middle))
        size = float(width), float(high - low)
        boards.append(Board(species, *size, pith, f"{name} {i}", boxed_heart=holds_pith(*size, pith)))
    return tuple(boards)


def rip(board: Board, at_mm: Sequence[float], kerf_mm: float = 3.0) -> tuple[Board, ...]:
    """The board ripped along lines at these x (from its centre, mm), its strips from left to right."""
    return _split(board, at_mm, kerf_mm, 0, board.width_mm)


def resaw(board: Board, at_mm: Sequence[float], kerf_mm: float = 3.0) -> tuple[Board, ...]:
    """The board resawn at these heights y (from mid-thickness, mm), its leaves from the back face up."""
    return _split(board, at_mm, kerf_mm, 1, board.thickness_mm)


def _split(board: Board, at_mm: Sequence[float], kerf: float, axis: int, size: float) -> tuple[Board, ...]:
    lines = _checked_lines(at_mm, kerf, -0.5 * size, 0.5 * size, board.where)
    starts = np.concatenate(([-0.5 * size], lines + 0.5 * kerf))
    ends = np.concatenate((lines - 0.5 * kerf, [0.5 * size]))
    out = []
    for i, (start, end) in enumerate(zip(starts, ends), 1):
        middle = float(0.5 * (start + end))

        def seen(pith: tuple[float, float], middle: float = middle) -> tuple[float, float]:
            return (pith[0] - middle, pith[1]) if axis == 0 else (pith[0], pith[1] - middle)

        width = float(end - start) if axis == 0 else board.width_mm
        thickness = float(end - start) if axis == 1 else board.thickness_mm
        near, far = seen(board.pith_mm), None if board.far_pith_mm is None else seen(board.far_pith_mm)
        out.append(
            replace(
                board,
                width_mm=width,
                thickness_mm=thickness,
                pith_mm=near,
                far_pith_mm=far,
                name=f"{board.name or 'board'} {i}",
                boxed_heart=any(holds_pith(width, thickness, p) for p in (near, far) if p is not None),
            )
        )
    return tuple(out)


def _checked_lines(lines_mm: Sequence[float], kerf: float, low: float, high: float, where: str) -> Floats:
    lines = np.sort(numbers(list(lines_mm), phrase("saw lines"), where=where))
    checked_size(kerf, phrase("kerf"), where, (0.0, 50.0))
    edges = np.concatenate(([low - 0.5 * kerf], lines, [high + 0.5 * kerf]))
    if len(lines) == 0 or np.diff(edges).min() <= kerf:
        raise InputError(
            say(
                "saw lines at {lines} mm with a kerf of {kerf:g} mm",
                lines=", ".join(f"{line:g}" for line in lines) or say("no"),
                kerf=kerf,
            ),
            where=where,
            allowed=say(
                "one or more within {low:g} to {high:g} mm, further apart than the kerf", low=low, high=high
            ),
            todo=say("give the heights of the saw lines"),
        )
    return lines
