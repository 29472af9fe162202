"""The search over orders and turns, when there are too many to try them all.

Steepest descent from several starts, once for each level of looks: from a layout, every single flip, turn and
swap of two places that the wishes allow is tried, the flattest whose looks stay at the level is taken, until
none is flatter. Looks do not hang on the order, so the levels are those that the faces alone allow.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from movement_core.section.field import Floats
from movement_core.section.lays import (
    OVER,
    SAME_MM,
    TURNED,
    Candidate,
    Ints,
    Table,
    Wishes,
    count_of_lays,
    front_of,
    own_order,
    product_of_lays,
    valid_orders,
)
from movement_core.wording import phrase

MOST_LEVELS = 12
MOST_STEPS = 200

Layouts = tuple[Ints, Ints]

# What is certain about the layouts found.
EXACT = phrase("exact: every allowed layout was tried")
SEARCHED = phrase(
    "searched: no single flip, turn or swap of two boards makes a listed layout flatter at its looks; "
    "a better one further away is possible"
)
SEARCHED_ALL_FLIPS = phrase(
    "searched: no single flip, turn or swap of two boards makes a listed layout flatter at its looks; "
    "a better one further away is possible; flips in the order given were all tried, so nothing there is better"
)


def searched(
    table: Table,
    wishes: Wishes,
    options: list[list[list[int]]],
    rng: np.random.Generator,
    restarts: int,
    most_exact: int,
) -> tuple[Ints, Ints, str]:
    """Layouts (batch, n) twice: all flips in the given order if they are few enough, and what descent finds.

    ``options``: for each way the grain may run, the lays each board may take.
    """
    candidates = table.candidates
    own = own_order(candidates, wishes)
    found: list[Layouts] = [(own[:0], own[:0])]
    # Where a board has to be turned for its grain its one lay stands; elsewhere the turn is left to the search.
    flips = [[[k for k in lays if not k & TURNED] or lays for lays in each] for each in options]
    all_flips = len(own) > 0 and sum(count_of_lays(each) for each in flips) <= most_exact
    if all_flips:
        lay = np.unique(np.concatenate([product_of_lays(each) for each in flips]), axis=0)
        found.append((np.repeat(own, len(lay), axis=0), lay))
    starts = start_orders(candidates, wishes, rng, restarts)
    for each in options:
        if all(each):
            found.append(_improve(table, wishes, each, starts, found, rng))
    order, lay = (np.concatenate([pair[k] for pair in found]) for k in (0, 1))
    order, lay = _polished(table, wishes, options, order, lay)
    return order, lay, SEARCHED_ALL_FLIPS if all_flips else SEARCHED


def _polished(
    table: Table, wishes: Wishes, options: list[list[list[int]]], order: Ints, lay: Ints
) -> Layouts:
    """Descend from every layout of the front, at its own looks, until the front is made of local optima."""
    done: set[tuple[int, ...]] = set()
    while True:
        looks, flat = table.looks_of(order, lay), table.departure(order, lay)
        fresh = [i for i in front_of(looks, flat) if (*order[i], *lay[i]) not in done]
        if not fresh:
            return order, lay
        for i in fresh:
            done.add((*order[i], *lay[i]))
            for each in options:
                if _fits(order[i], lay[i], each):
                    better = _descend(table, wishes, each, order[i], lay[i], float(looks[i]))
                    order, lay = np.vstack((order, better[0])), np.vstack((lay, better[1]))


def start_orders(
    candidates: Sequence[Candidate], wishes: Wishes, rng: np.random.Generator, restarts: int
) -> Ints:
    """(starts, n) orders to search from that the wishes allow: the maker's own first, then random ones."""
    n = len(candidates)
    own = np.arange(n, dtype=np.int64)[None, :]
    tries = own
    if wishes.may_reorder:
        random = np.argsort(rng.random((restarts, n)), axis=1)
        tries = np.concatenate(
            (own, [_mended(candidates, wishes, order, rng) for order in (own[0], *random)])
        )
    return tries[valid_orders(candidates, wishes, tries)]


def _mended(candidates: Sequence[Candidate], wishes: Wishes, order: Ints, rng: np.random.Generator) -> Ints:
    """The order brought nearer to the wishes by swaps that leave fewer of them broken."""
    order = order.copy()
    for i, c in enumerate(candidates):
        if c.place is not None:
            at = int(np.flatnonzero(order == i)[0])
            order[[at, c.place]] = order[[c.place, at]]
    swaps = _swaps(len(order))
    for _ in range(MOST_STEPS):
        broken = _breaches(candidates, wishes, order[None])[0]
        if broken == 0:
            break
        tries = _swapped(order, swaps)
        counts = _breaches(candidates, wishes, tries) + 0.5 * rng.random(len(tries))
        order = tries[int(np.argmin(counts))]
    return order


def _breaches(candidates: Sequence[Candidate], wishes: Wishes, order: Ints) -> Floats:
    """(batch,) how many single wishes each order breaks."""
    place_of = np.argsort(order, axis=1)
    count = np.zeros(len(order))
    for i, c in enumerate(candidates):
        if c.place is not None:
            count += place_of[:, i] != c.place
    for i, j in wishes.together:
        count += np.abs(place_of[:, i] - place_of[:, j]) - 1.0
    for i, j in wishes.apart:
        count += np.abs(place_of[:, i] - place_of[:, j]) == 1
    if wishes.colour_step is not None:
        colours = np.array([np.nan if c.colour is None else c.colour for c in candidates])[order]
        with np.errstate(invalid="ignore"):
            count += (np.abs(np.diff(colours, axis=1)) > wishes.colour_step).sum(axis=1)
    return count


def _swaps(n: int) -> Ints:
    return np.stack(np.triu_indices(n, 1), axis=1).astype(np.int64)


def _swapped(row: Ints, swaps: Ints) -> Ints:
    out = np.repeat(row[None, :], len(swaps), axis=0)
    rows = np.arange(len(swaps))
    out[rows, swaps[:, 0]], out[rows, swaps[:, 1]] = row[swaps[:, 1]], row[swaps[:, 0]]
    return out


def _improve(
    table: Table,
    wishes: Wishes,
    options: list[list[int]],
    starts: Ints,
    found: Sequence[Layouts],
    rng: np.random.Generator,
) -> Layouts:
    """Descend from every start, and from the best already found, once for each level of looks."""
    known_order, known_lay = (np.concatenate([pair[k] for pair in found]) for k in (0, 1))
    known_looks, known_flat = (
        table.looks_of(known_order, known_lay),
        table.departure(known_order, known_lay),
    )
    fits = _fits(known_order, known_lay, options)
    orders, lays = [], []
    for level in _levels(table, options):
        begin = [(order, _start_lay(table, options, order, level, rng)) for order in starts]
        among = np.flatnonzero(fits & (known_looks >= level - SAME_MM))
        if len(among):
            best = among[np.argmin(known_flat[among])]
            begin.append((known_order[best], known_lay[best]))
        for order, lay in begin:
            done_order, done_lay = _descend(table, wishes, options, order, lay, level)
            orders.append(done_order)
            lays.append(done_lay)
    return (np.array(orders), np.array(lays)) if orders else (known_order[:0], known_lay[:0])


def _fits(order: Ints, lay: Ints, options: list[list[int]]) -> NDArray[np.bool_]:
    """(…) whether layouts (…, n) take allowed lays only."""
    allowed = np.array([[k in lays for k in range(4)] for lays in options])
    return np.asarray(allowed[order, lay].all(axis=-1))


def _levels(table: Table, options: list[list[int]]) -> list[float]:
    """Sums of looks that the allowed faces can make, best first, thinned to a dozen."""
    sums = {0.0}
    for i, lays in enumerate(options):
        faces = {float(table.looks[i, lay & OVER]) for lay in lays}
        sums = {round(s + face, 9) for s in sums for face in faces}
        if len(sums) > 4096:  # many different scores: keep an even choice, both ends among them
            ordered = sorted(sums)
            sums = {ordered[k] for k in np.linspace(0, len(ordered) - 1, 2048).astype(int)}
    ordered = sorted(sums, reverse=True)
    keep = np.unique(np.linspace(0, len(ordered) - 1, min(MOST_LEVELS, len(ordered))).astype(int))
    return [ordered[k] for k in keep]


def _start_lay(
    table: Table, options: list[list[int]], order: Ints, level: float, rng: np.random.Generator
) -> Ints:
    """Best-looking lays, then flipped at random while the looks stay at the level."""
    best = [max(lays, key=lambda lay, i=i: table.looks[i, lay & OVER]) for i, lays in enumerate(options)]  # type: ignore[misc]
    lay = np.array([best[i] for i in order], dtype=np.int64)
    for place in rng.permutation(len(order)):
        trial = lay.copy()
        trial[place] = rng.choice(options[order[place]])
        if table.looks_of(order[None], trial[None])[0] >= level - SAME_MM:
            lay = trial
    return lay


def _descend(
    table: Table, wishes: Wishes, options: list[list[int]], order: Ints, lay: Ints, level: float
) -> Layouts:
    """Take the best single step until none is flatter."""
    swaps = _swaps(table.n) if wishes.may_reorder else np.zeros((0, 2), dtype=np.int64)
    now = table.departure(order[None], lay[None])[0]
    for _ in range(MOST_STEPS):
        try_order = [_swapped(order, swaps)]
        try_lay = [_swapped(lay, swaps)]  # a swapped board keeps its lay
        for place in range(table.n):
            others = [k for k in options[order[place]] if k != lay[place]]
            changed = np.repeat(lay[None, :], len(others), axis=0)
            changed[:, place] = others
            try_order.append(np.repeat(order[None, :], len(others), axis=0))
            try_lay.append(changed)
        orders, lays = np.concatenate(try_order), np.concatenate(try_lay)
        keep = table.looks_of(orders, lays) >= level - SAME_MM
        keep &= valid_orders(table.candidates, wishes, orders)
        orders, lays = orders[keep], lays[keep]
        if len(orders) == 0:
            break
        flat = table.departure(orders, lays)
        best = int(np.argmin(flat))
        if flat[best] >= now - SAME_MM:
            break
        order, lay, now = orders[best], lays[best], flat[best]
    return order, lay
