"""The search over layouts where it may move little or nothing, held against every layout there is."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations, product

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section import arrangement
from movement_core.section.arrangement import arrangement_study
from movement_core.section.lays import Candidate, Table, Wishes, allowed_lays, front_of, valid_orders
from movement_core.section.search import searched, start_orders
from tests.core.test_section_arrangement import by_hand, random_candidates


@pytest.fixture
def never_exact(monkeypatch):
    monkeypatch.setattr(arrangement, "MOST_EXACT", 1)


def every_flip(candidates, changes, allowed=lambda over: True):
    n = len(candidates)
    return [
        (over, *by_hand(candidates, range(n), over, (False,) * n, changes))
        for over in product((False, True), repeat=n)
        if allowed(over)
    ]


def test_in_the_order_given_no_flip_of_one_board_is_flatter_at_its_looks(never_exact):
    candidates = random_candidates(5)
    study = arrangement_study(candidates, -4, 2)
    assert "searched" in study.guarantee and study.flattest.order == (0, 1, 2, 3, 4)
    flat = {over: (looks, departure) for over, looks, departure in every_flip(candidates, (-4, 2))}
    for one in study.front:
        assert flat[one.over][1] == pytest.approx(one.departure_mm, rel=0.03)
        for place in range(5):
            other = tuple(over != (at == place) for at, over in enumerate(one.over))
            looks, departure = flat[other]
            assert looks < one.looks or departure >= 0.97 * one.departure_mm
    assert study.best_looks.looks == max(looks for looks, _ in flat.values())


def test_where_every_face_is_given_there_is_one_layout(never_exact):
    candidates = [
        replace(one, must_show=side) for one, side in zip(random_candidates(4), ("show", "back") * 2)
    ]
    study = arrangement_study(candidates, -4, 2)
    assert {one.over for one in study.front} == {(False, True, False, True)}


def test_a_grain_that_can_run_one_way_only_runs_that_way(never_exact):
    """Both boards must show the faces they show and may not be turned, so only their own way is left."""
    candidates = [replace(one, must_show="show", grain=1) for one in random_candidates(2)] + [
        replace(one, grain=-1) for one in random_candidates(2, seed=8)
    ]
    study = arrangement_study(candidates, -4, 2, Wishes(same_grain=True))
    assert {one.over for one in study.front} == {(False, False, True, True)}


def test_wishes_that_no_order_fulfils_are_refused(never_exact):
    """Three boards in a row: the middle one is beside both others, whichever it is."""
    wishes = Wishes(may_reorder=True, apart=((0, 1), (0, 2), (1, 2)))
    with pytest.raises(InputError):
        arrangement_study(random_candidates(3), -4, 2, wishes)


def test_starts_keep_the_wishes_and_begin_with_the_order_given():
    candidates = random_candidates(6)
    rng = np.random.default_rng(1)
    fixed = start_orders(candidates, Wishes(), rng, 8)
    assert fixed.tolist() == [[0, 1, 2, 3, 4, 5]]
    wishes = Wishes(may_reorder=True, together=((0, 5),), apart=((2, 3),))
    moved = start_orders(candidates, wishes, rng, 8)
    assert len(moved) > 1 and valid_orders(candidates, wishes, moved).all()
    held = [replace(one, place=5) if at == 0 else one for at, one in enumerate(candidates)]
    assert set(start_orders(held, wishes, rng, 8)[:, 5].tolist()) == {0}


def test_one_board_has_nobody_to_change_places_with(never_exact):
    (board,) = random_candidates(1)
    study = arrangement_study([board], -4, 2, Wishes(may_reorder=True, may_turn=True))
    assert study.own.order == (0,) and study.flattest.departure_mm <= study.own.departure_mm + 1e-9
    assert isinstance(board, Candidate)


def neighbours(table, options, wishes, order, lay):
    """Every layout one flip, one turn or one swap of two boards away, as the study promises to have looked."""
    for place in range(table.n):
        for other in options[order[place]]:
            yield order, [other if at == place else k for at, k in enumerate(lay)]
    if wishes.may_reorder:
        for i, j in combinations(range(table.n), 2):
            swapped = list(range(table.n))
            swapped[i], swapped[j] = j, i
            yield [order[k] for k in swapped], [lay[k] for k in swapped]


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_no_listed_layout_has_a_flatter_neighbour_of_its_looks(seed):
    """The promise, in the figures that the search itself weighs."""
    candidates = random_candidates(4, seed=seed)
    table = Table(candidates, np.array([-4.0, 2.0]))
    wishes = Wishes(may_reorder=True, may_turn=True)
    options = [allowed_lays(candidates, wishes, None)]
    order, lay, _ = searched(table, wishes, options, np.random.default_rng(seed), 0, 1)
    looks, flat = table.looks_of(order, lay), table.departure(order, lay)
    for i in front_of(looks, flat):
        near = list(neighbours(table, options[0], wishes, order[i].tolist(), lay[i].tolist()))
        orders, lays = (np.array([pair[k] for pair in near]) for k in (0, 1))
        as_good = table.looks_of(orders, lays) >= looks[i] - 1e-9
        assert table.departure(orders, lays)[as_good].min() >= flat[i] - 2e-9


@pytest.mark.parametrize(("most", "tried"), [(16, True), (15, False)])
def test_flips_in_the_order_given_are_all_tried_while_their_number_allows(monkeypatch, most, tried):
    """Four boards lie in sixteen ways; told in the guarantee, and then none of them beats the front."""
    monkeypatch.setattr(arrangement, "MOST_EXACT", most)
    candidates = random_candidates(4, seed=2)
    study = arrangement_study(candidates, -4, 2, Wishes(may_reorder=True, may_turn=True), restarts=0)
    assert ("flips in the order given were all tried" in study.guarantee) == tried
    assert study.tried >= (16 if tried else 1)
    if tried:
        flattest = {}
        for _, looks, flat in every_flip(candidates, (-4, 2)):
            flattest[looks] = min(flat, flattest.get(looks, np.inf))
        for looks, flat in flattest.items():
            best = min(one.departure_mm for one in study.front if one.looks >= looks)
            assert best <= 1.03 * flat  # settling moves the fine profiles a little


def test_flips_of_an_order_that_the_wishes_forbid_are_not_tried(monkeypatch):
    monkeypatch.setattr(arrangement, "MOST_EXACT", 16)
    study = arrangement_study(
        random_candidates(4, seed=2), -4, 2, Wishes(may_reorder=True, apart=((0, 1),)), restarts=2
    )
    assert "searched" in study.guarantee and "all tried" not in study.guarantee


def test_a_start_for_every_restart():
    candidates = random_candidates(5)
    for restarts in (0, 3):
        starts = start_orders(candidates, Wishes(may_reorder=True), np.random.default_rng(1), restarts)
        assert len(starts) == 2 + restarts  # the maker's own, that mended, and the random ones
        assert starts[0].tolist() == [0, 1, 2, 3, 4]
        assert all(sorted(order) == [0, 1, 2, 3, 4] for order in starts.tolist())
