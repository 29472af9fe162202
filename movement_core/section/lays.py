"""Laying boards side by side, many ways at once: lays, wishes, and the flatness of whole batches of panels.

A *lay* of one board is a number 0 to 3: bit 0 says that it is turned over, bit 1 that it is turned end for
end. A *layout* is an order of boards and one lay for each place; batches of layouts are two integer arrays
(batch, n): which board lies at each place, from left to right, and how.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import permutations

import numpy as np
from numpy.typing import NDArray

from movement_core.errors import InputError
from movement_core.section.board import Board
from movement_core.section.chain import Complex, segment
from movement_core.section.field import Floats
from movement_core.wording import say

Ints = NDArray[np.int64]
OVER, TURNED = 1, 2
SAMPLES = 9  # a board while searching: peaks are seen to 1/64 of the board's own sag
SAME_MM = 1e-9
_CHUNK = 2048


@dataclass(frozen=True)
class Candidate:
    """A board of the study, with what the maker thinks of its faces.

    Parameters
    ----------
    board : as the maker lays it now, his own arrangement.
    looks_show, looks_back : how good each face looks, on any scale the maker likes; more is better.
    grain : +1 when the grain of the present show face rises toward the far end, −1 when toward the near end,
        None when not looked at. Turning a board over reverses it, turning it end for end too.
    colour : a number for its colour or tone, or None.
    must_show : the face that has to be up, "show" or "back", or None.
    place : the place from the left (0 is the first) it has to keep, or None.

    Raises
    ------
    InputError : a word or a place that cannot be, naming it.

    >>> board = Board(find_species("white oak"), width_mm=100, thickness_mm=20, pith_mm=(0, 50))
    >>> Candidate(board, looks_show=2, looks_back=1, must_show="show").looks_show
    2
    """

    board: Board
    looks_show: float = 0.0
    looks_back: float = 0.0
    grain: int | None = None
    colour: float | None = None
    must_show: str | None = None
    place: int | None = None


@dataclass(frozen=True)
class Wishes:
    """What every proposed layout has to respect. Pairs are indices of boards in the list given.

    may_turn : boards may be turned end for end. may_reorder : boards may change places.
    same_grain : all boards whose grain is stated must run the same way, so that the panel planes clean.
    together, apart : pairs that must, or must not, be neighbours. colour_step : greatest difference of colour
    between neighbours whose colours are stated.

    >>> Wishes(may_reorder=True, together=((0, 1),)).may_turn
    False
    """

    may_turn: bool = False
    may_reorder: bool = False
    same_grain: bool = False
    together: tuple[tuple[int, int], ...] = ()
    apart: tuple[tuple[int, int], ...] = ()
    colour_step: float | None = None


def check_candidates(candidates: Sequence[Candidate], wishes: Wishes) -> None:
    """InputError on a wish that names no board, a face that does not exist, a place outside the panel."""
    n = len(candidates)
    for i, candidate in enumerate(candidates):
        where = candidate.board.name or say("board {number}", number=i + 1)
        facts = (
            ("must_show", candidate.must_show, (None, "show", "back")),
            ("grain", candidate.grain, (None, 1, -1)),
            ("place", candidate.place, (None, *range(n))),
        )
        for what, value, allowed in facts:
            if value not in allowed:
                raise InputError(
                    f"{what} {value!r}", where=where, allowed=", ".join(str(a) for a in allowed),
                    todo=say("choose one of these"),
                )  # fmt: skip
        for looks in (candidate.looks_show, candidate.looks_back):
            if not np.isfinite(looks):
                raise InputError(
                    say("looks {looks}", looks=looks),
                    where=where,
                    allowed=say("finite numbers"),
                    todo=say("give a score"),
                )
    for pair in (*wishes.together, *wishes.apart):
        if len(set(pair)) != 2 or not all(0 <= i < n for i in pair):
            raise InputError(
                say("pair {pair}", pair=pair),
                where=say("wishes"),
                allowed=say("two different boards, 0 to {n}", n=n - 1),
                todo=say("name two boards"),
            )


class Table:
    """Every board in every lay, as links of the chain for each season: the raw material of a search."""

    def __init__(self, candidates: Sequence[Candidate], mc_changes: Floats) -> None:
        self.candidates = tuple(candidates)
        self.n = len(candidates)
        links = [
            [
                segment(
                    c.board.turned(over=bool(lay & OVER), end_for_end=bool(lay & TURNED)), mc_changes, SAMPLES
                )
                for lay in range(4)
            ]
            for c in candidates
        ]
        self.surface: Complex = np.array([[link.surface for link in row] for row in links])  # (n, 4, C, S)
        self.turn: Complex = np.array([[link.turn for link in row] for row in links])  # (n, 4, C)
        self.looks = np.array([(c.looks_show, c.looks_back) for c in candidates], dtype=np.float64)

    def looks_of(self, order: Ints, lay: Ints) -> Floats:
        """(batch,) sum over the faces that are up."""
        return np.asarray(self.looks[order, lay & OVER].sum(axis=1), dtype=np.float64)

    def departure(self, order: Ints, lay: Ints) -> Floats:
        """(batch,) greatest distance from the straight line edge to edge, worst of the seasons, mm."""
        parts = [
            self._chunk(order[i : i + _CHUNK], lay[i : i + _CHUNK]) for i in range(0, len(order), _CHUNK)
        ]
        return np.concatenate(parts) if parts else np.zeros(0)

    def _chunk(self, order: Ints, lay: Ints) -> Floats:
        batch, seasons = len(order), self.surface.shape[2]
        height = np.empty((self.n, batch, seasons, SAMPLES))
        along = np.empty_like(height)
        place = np.zeros((batch, seasons), complex)
        direction = np.ones((batch, seasons), complex)
        for k in range(self.n):
            points = self.surface[order[:, k], lay[:, k]]
            points *= direction[..., None]
            points += place[..., None]
            along[k], height[k] = points.real, points.imag
            place = points[..., -1]
            direction = direction * self.turn[order[:, k], lay[:, k]]
        unit = place / np.abs(place)
        height *= unit.real[..., None]
        along *= unit.imag[..., None]
        height -= along
        return np.asarray(
            np.maximum(height.max(axis=(0, 2, 3)), -height.min(axis=(0, 2, 3))), dtype=np.float64
        )


def allowed_lays(candidates: Sequence[Candidate], wishes: Wishes, run: int | None) -> list[list[int]]:
    """The lays each board may take by itself; ``run`` is the way all stated grain has to go (+1, −1) or None."""
    out = []
    for c in candidates:
        lays = [lay for lay in range(4) if wishes.may_turn or not lay & TURNED]
        if c.must_show is not None:
            lays = [lay for lay in lays if (lay & OVER == OVER) == (c.must_show == "back")]
        if run is not None and c.grain is not None:
            lays = [lay for lay in lays if c.grain * (-1) ** ((lay & OVER) + (lay & TURNED) // TURNED) == run]
        out.append(lays)
    return out


def runs(candidates: Sequence[Candidate], wishes: Wishes) -> tuple[int | None, ...]:
    """The ways the grain of the whole panel may run: one entry of None where nobody minds."""
    minded = wishes.same_grain and any(c.grain is not None for c in candidates)
    return (1, -1) if minded else (None,)


def product_of_lays(options: list[list[int]]) -> Ints:
    """(batch, n) every combination of the options."""
    if not all(options):
        return np.zeros((0, len(options)), dtype=np.int64)
    grids = np.meshgrid(*[np.array(o, dtype=np.int64) for o in options], indexing="ij")
    return np.stack([g.ravel() for g in grids], axis=1)


def valid_orders(candidates: Sequence[Candidate], wishes: Wishes, order: Ints) -> NDArray[np.bool_]:
    """(batch,) whether each order keeps places, neighbours and colour steps."""
    good = np.ones(len(order), dtype=bool)
    place_of = np.argsort(order, axis=1)
    for i, c in enumerate(candidates):
        if c.place is not None:
            good &= place_of[:, i] == c.place
    for pairs, together in ((wishes.together, True), (wishes.apart, False)):
        for i, j in pairs:
            good &= (np.abs(place_of[:, i] - place_of[:, j]) == 1) == together
    if wishes.colour_step is not None:
        colours = np.array([np.nan if c.colour is None else c.colour for c in candidates])[order]
        with np.errstate(invalid="ignore"):
            good &= ~(np.abs(np.diff(colours, axis=1)) > wishes.colour_step).any(axis=1)
    return good


def all_orders(candidates: Sequence[Candidate], wishes: Wishes) -> Ints:
    """(batch, n) every order that the wishes allow: only for a handful of boards."""
    every = np.array(list(permutations(range(len(candidates)))), dtype=np.int64)
    return every[valid_orders(candidates, wishes, every)]


def own_order(candidates: Sequence[Candidate], wishes: Wishes) -> Ints:
    """(1, n) the order as given, or (0, n) when the wishes forbid it."""
    own = np.arange(len(candidates), dtype=np.int64)[None, :]
    return own[valid_orders(candidates, wishes, own)]


def count_of_lays(options: list[list[int]]) -> float:
    """How many combinations of lays there are; a float, since it may be very large."""
    return float(np.prod([float(len(lays)) for lays in options]))


def front_of(looks: Floats, flat: Floats) -> list[int]:
    """Indices of the layouts that no other beats in both looks and flatness, best looks first."""
    best, picked = np.inf, []
    for i in np.lexsort((flat, -looks)):
        if flat[i] < best - SAME_MM:
            best = flat[i]
            picked.append(int(i))
    return picked
