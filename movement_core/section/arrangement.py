"""Arrangement study: what each way of laying the boards costs in flatness, and what flatness costs in looks.

Looks come first. Nothing here forbids a layout: the maker's own is always listed, with its price, so that
the joinery which holds it can be chosen.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from movement_core.errors import InputError
from movement_core.section.field import Floats, numbers
from movement_core.section.lays import (
    OVER,
    TURNED,
    Candidate,
    Ints,
    Table,
    Wishes,
    all_orders,
    allowed_lays,
    check_candidates,
    count_of_lays,
    front_of,
    own_order,
    product_of_lays,
    runs,
    valid_orders,
)
from movement_core.section.panel import Panel
from movement_core.section.search import EXACT, searched
from movement_core.wording import phrase, say

MOST_EXACT = 2**16  # layouts that are simply all tried
WAVE_SHARE = 0.25  # a profile whose lesser side is above this share of its greater one is waves, not an arc


@dataclass(frozen=True)
class Season:
    """The panel in one season: which way it goes and how far."""

    mc_change: float
    out_of_flat_mm: float
    departure_mm: float  # greatest distance from the line edge to edge, crown positive
    way: str  # "crown", "hollow", "waves" or "flat"
    profile: Floats  # (N, 2) mm


@dataclass(frozen=True)
class Arrangement:
    """One layout with its price."""

    order: tuple[int, ...]  # index of the board at each place, left to right
    over: tuple[bool, ...]  # whether the board at each place lies with its present show face down
    turned: tuple[bool, ...]  # whether it is turned end for end
    looks: float
    departure_mm: float  # greatest distance from the straight line edge to edge, worst of the seasons
    price_mm: float  # departure above the flattest layout found
    looks_price: float  # looks below the best-looking layout found
    driest: Season
    wettest: Season
    panel: Panel
    broken_wishes: tuple[str, ...] = ()  # only the maker's own layout may break any


@dataclass(frozen=True)
class Study:
    """The answer: ``front`` runs from best looks to flattest; nothing on it beats another in both."""

    own: Arrangement
    best_looks: Arrangement
    flattest: Arrangement
    front: tuple[Arrangement, ...]
    tried: int
    guarantee: str  # what is certain about the front, in words

    @property
    def listed(self) -> tuple[Arrangement, ...]:
        """The front with the maker's own layout, each once."""
        same = [
            a
            for a in self.front
            if (a.order, a.over, a.turned) == (self.own.order, self.own.over, self.own.turned)
        ]
        return self.front if same else (self.own, *self.front)


def arrangement_study(
    candidates: Sequence[Candidate],
    driest_change: float,
    wettest_change: float,
    wishes: Wishes = Wishes(),  # noqa: B008 (frozen)
    *,
    seed: int = 0,
    restarts: int = 4,
) -> Study:
    """Best layouts for looks, for flatness, and the trade-off between.

    Parameters
    ----------
    candidates : the boards as the maker lays them now, left to right, all faces as they are.
    driest_change, wettest_change : points of MC from glue-up to the driest and the wettest time of the year.
    wishes : what proposed layouts must respect.
    seed, restarts : for the search over orders, when there are too many to try all.

    Returns
    -------
    Study. Flips are exact for up to 14 boards (all tried); orders and turns are exact while their number with the
    flips stays within 2¹⁶, else searched, and ``guarantee`` says which.

    Raises
    ------
    InputError : no boards, a wish that cannot be met, a value that cannot be.

    >>> oak = find_species("white oak")
    >>> boards = [Candidate(Board(oak, 100, 20, (0, y)), looks_show=2, looks_back=1) for y in (50, 60)]
    >>> study = arrangement_study(boards, driest_change=-4, wettest_change=2)
    >>> study.tried, study.best_looks.over
    (4, (False, False))
    """
    if not candidates:
        raise InputError(
            say("no boards to arrange"), allowed=say("one board or more"), todo=say("list the boards")
        )
    check_candidates(candidates, wishes)
    changes = numbers(
        (driest_change, wettest_change), phrase("moisture change"), where=phrase("arrangement study")
    )
    if changes[0] > changes[1]:
        raise InputError(
            say(
                "driest change {changes:g} is above the wettest {changes2:g}",
                changes=changes[0],
                changes2=changes[1],
            ),
            where=say("arrangement study"),
            allowed=say("driest ≤ wettest, points of MC"),
            todo=say("swap them"),
        )
    n = len(candidates)
    table = Table(candidates, changes)
    order, lay, guarantee = _layouts(table, wishes, np.random.default_rng(seed), restarts)
    if len(order) == 0:
        raise InputError(
            say("no layout meets all the wishes"),
            where=say("arrangement study"),
            allowed=say("wishes that can be met together"),
            todo=say("drop a wish, or let boards be turned or change places"),
        )
    looks, flat = table.looks_of(order, lay), table.departure(order, lay)
    picked = front_of(looks, flat)
    broken = _broken(candidates, wishes)
    raw = [(order[i], lay[i]) for i in picked]
    front = [_arrangement(table, o, k, changes) for o, k in raw]
    own = replace(
        _arrangement(table, np.arange(n), np.zeros(n, dtype=np.int64), changes), broken_wishes=broken
    )
    # The fine profiles may differ from the searched ones by 1/64 of a board's sag: keep the front a front.
    front = [a for i, a in enumerate(front) if all(a.departure_mm < b.departure_mm for b in front[:i])]
    least = min(a.departure_mm for a in front)
    most = max(a.looks for a in front)
    priced = [replace(a, price_mm=a.departure_mm - least, looks_price=most - a.looks) for a in front]
    own = replace(own, price_mm=own.departure_mm - least, looks_price=most - own.looks)
    return Study(own, priced[0], priced[-1], tuple(priced), len(order), guarantee)


def _layouts(table: Table, wishes: Wishes, rng: np.random.Generator, restarts: int) -> tuple[Ints, Ints, str]:
    """Every layout worth weighing (batch, n) twice, and what is certain about them."""
    candidates, n = table.candidates, table.n
    options = [allowed_lays(candidates, wishes, run) for run in runs(candidates, wishes)]
    lays = sum(count_of_lays(each) for each in options)
    orders = float(np.prod(np.arange(1.0, n + 1.0))) if wishes.may_reorder else 1.0
    if lays * orders > MOST_EXACT:
        return searched(table, wishes, options, rng, restarts, MOST_EXACT)
    order = all_orders(candidates, wishes) if wishes.may_reorder else own_order(candidates, wishes)
    lay = np.unique(np.concatenate([product_of_lays(each) for each in options]), axis=0)
    pick_order, pick_lay = np.divmod(np.arange(len(order) * len(lay)), max(1, len(lay)))
    order = order[pick_order]
    # product_of_lays is by board; a layout is by place
    return order, np.take_along_axis(lay[pick_lay], order, axis=-1), EXACT


def _broken(candidates: Sequence[Candidate], wishes: Wishes) -> tuple[str, ...]:
    """Which wishes the maker's own layout does not keep."""
    own = np.arange(len(candidates), dtype=np.int64)[None, :]
    broken = []
    if any(c.must_show == "back" for c in candidates):
        broken.append(phrase("a face that must show is down"))
    if wishes.same_grain and len({c.grain for c in candidates if c.grain is not None}) > 1:
        broken.append(phrase("grain runs both ways"))
    plain = Wishes(together=wishes.together, apart=wishes.apart, colour_step=wishes.colour_step)
    if not valid_orders(candidates, plain, own)[0]:
        broken.append(phrase("neighbours or colours"))
    return tuple(broken)


def _arrangement(table: Table, order: Ints, lay: Ints, changes: Floats) -> Arrangement:
    over, turned = (lay & OVER).astype(bool), (lay & TURNED).astype(bool)
    panel = Panel(
        [
            table.candidates[i].board.turned(over=bool(o), end_for_end=bool(e))
            for i, o, e in zip(order, over, turned)
        ]
    )
    shape = panel.shape(changes)
    seasons = [
        Season(
            mc_change=float(changes[k]),
            out_of_flat_mm=float(shape.out_of_flat_mm[k]),
            departure_mm=float(shape.departure_mm[k]),
            way=way_of(shape.profile[k, :, 1]),
            profile=shape.profile[k],
        )
        for k in range(2)
    ]
    return Arrangement(
        order=tuple(int(i) for i in order),
        over=tuple(bool(o) for o in over),
        turned=tuple(bool(e) for e in turned),
        looks=float(table.looks_of(order[None], lay[None])[0]),
        departure_mm=max(abs(season.departure_mm) for season in seasons),
        price_mm=0.0,
        looks_price=0.0,
        driest=seasons[0],
        wettest=seasons[1],
        panel=panel,
    )


def way_of(height: Floats) -> str:
    """Whether heights over the line edge to edge make a crown, a hollow, waves, or nothing to speak of."""
    up, down = float(height.max()), float(-height.min())
    if max(up, down) <= 1e-6:
        return "flat"
    if min(up, down) > WAVE_SHARE * max(up, down):
        return "waves"
    return "crown" if up > down else "hollow"
