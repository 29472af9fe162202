"""A laying changed step by step, and the lays, orders and fronts that a study is made of, counted by hand."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section import arrangement
from movement_core.section.arrangement import arrangement_study
from movement_core.section.board import Board
from movement_core.section.laying import Laying, best_looking, judged
from movement_core.section.lays import (
    OVER,
    TURNED,
    Candidate,
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
from movement_core.section.search import _breaches, _levels, _mended, _swapped, _swaps


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


WOOD = Wood()
NO, YES = False, True


def some(count, **given):
    return [Candidate(Board(WOOD, 100.0, 20.0, (0.0, 60.0 + i)), **given) for i in range(count)]


def faces(*pairs):
    board = Board(WOOD, 100.0, 20.0, (0.0, 60.0))
    return [Candidate(board, looks_show=show, looks_back=back) for show, back in pairs]


def test_one_board_is_turned_and_the_others_lie():
    drawn = Laying.as_drawn(3)
    assert drawn == Laying((0, 1, 2), (NO, NO, NO), (NO, NO, NO))
    assert drawn.flipped(1) == Laying((0, 1, 2), (NO, YES, NO), (NO, NO, NO))
    assert drawn.flipped(0).flipped(0) == drawn
    assert drawn.turned_round(1) == Laying((0, 1, 2), (NO, NO, NO), (NO, YES, NO))


def test_a_board_that_changes_its_place_keeps_its_lay():
    laid = Laying((0, 1, 2, 3), (YES, NO, NO, NO), (NO, NO, NO, YES))
    assert laid.moved(0, 2) == Laying((1, 2, 0, 3), (NO, NO, YES, NO), (NO, NO, NO, YES))
    assert laid.moved(3, 0) == Laying((3, 0, 1, 2), (NO, YES, NO, NO), (YES, NO, NO, NO))
    assert laid.moved(0, 2).moved(2, 0) == laid


def test_the_better_face_comes_up_and_like_faces_stay():
    candidates = faces((1.0, 2.0), (2.0, 1.0), (3.0, 3.0), (3.0, 3.0))
    best = best_looking(candidates, Laying((3, 1, 0, 2), (YES, YES, NO, NO), (NO,) * 4))
    assert best.over == (YES, NO, YES, NO)
    assert judged(candidates, (-4.0, 2.0), best).looks == 3 + 2 + 2 + 3


def test_a_laying_is_judged_by_the_worse_season():
    """Twice the change is nearly twice the way, and a plain chain of the boards says the same."""
    candidates = some(3)
    for changes, worse in (((-4.0, 2.0), 0), ((-2.0, 4.0), 1)):
        found = judged(candidates, changes, Laying((2, 0, 1), (NO, YES, NO), (NO, NO, YES)))
        seasons = (found.driest, found.wettest)
        assert [season.mc_change for season in seasons] == list(changes)
        assert found.departure_mm == abs(seasons[worse].departure_mm)
        boards = [candidates[2].board, candidates[0].board.turned(over=True)]
        boards.append(candidates[1].board.turned(end_for_end=True))
        assert found.boards == tuple(boards)
        for season in seasons:
            plain = Panel(boards).shape(season.mc_change, 3 * 16 + 1, settle=False)
            assert season.departure_mm == pytest.approx(float(plain.departure_mm))
            assert season.out_of_flat_mm == pytest.approx(float(plain.out_of_flat_mm))
    with pytest.raises(InputError, match="2 places for 3 boards"):
        judged(candidates, (-4.0, 2.0), Laying.as_drawn(2))


def test_lays_that_a_board_may_take():
    plain, down, against = Candidate(some(1)[0].board), *some(1, must_show="back"), *some(1, grain=-1)
    up = some(1, must_show="show")[0]
    every = [0, OVER, TURNED, OVER | TURNED]
    assert allowed_lays([plain, down, up], Wishes(), None) == [[0, OVER], [OVER], [0]]
    assert allowed_lays([plain, down, up], Wishes(may_turn=True), None) == [
        every,
        [OVER, OVER | TURNED],
        [0, TURNED],
    ]
    # turned over, the grain of a face runs the other way; turned end for end as well, as before
    turn = Wishes(may_turn=True, same_grain=True)
    assert allowed_lays([plain, against], turn, 1) == [every, [OVER, TURNED]]
    assert allowed_lays([plain, against], turn, -1) == [every, [0, OVER | TURNED]]


def test_grain_runs_either_way_where_somebody_minds():
    assert runs(some(2, grain=1), Wishes(same_grain=True)) == (1, -1)
    assert runs(some(2), Wishes(same_grain=True)) == (None,)
    assert runs(some(2, grain=1), Wishes()) == (None,)


def test_lays_are_combined_and_counted():
    assert product_of_lays([[0, 1], [2], [0, 3]]).tolist() == [[0, 2, 0], [0, 2, 3], [1, 2, 0], [1, 2, 3]]
    assert count_of_lays([[0, 1], [2], [0, 3]]) == 4
    assert product_of_lays([[0, 1], []]).shape == (0, 2)
    assert count_of_lays([[0, 1], []]) == 0


def test_orders_that_keep_the_wishes():
    three = some(3)
    assert len(all_orders(three, Wishes())) == 6
    beside = all_orders(three, Wishes(together=((0, 2),)))
    assert sorted(map(tuple, beside.tolist())) == [(0, 2, 1), (1, 0, 2), (1, 2, 0), (2, 0, 1)]
    between = all_orders(three, Wishes(apart=((0, 2),)))
    assert sorted(map(tuple, between.tolist())) == [(0, 1, 2), (2, 1, 0)]
    held = [three[0], *some(1, place=0), three[2]]
    assert sorted(map(tuple, all_orders(held, Wishes()).tolist())) == [(1, 0, 2), (1, 2, 0)]
    assert own_order(three, Wishes(apart=((0, 2),))).tolist() == [[0, 1, 2]]
    assert own_order(three, Wishes(together=((0, 2),))).shape == (0, 3)


def test_colours_step_by_no_more_than_the_wish_where_they_are_stated():
    shades = [Candidate(one.board, colour=c) for one, c in zip(some(4), (0.0, 0.5, 1.0, None))]
    wish = Wishes(colour_step=0.5)
    orders = np.array([(0, 1, 2, 3), (0, 2, 1, 3), (0, 3, 2, 1), (1, 0, 2, 3)])
    assert valid_orders(shades, wish, orders).tolist() == [True, False, True, False]
    assert valid_orders(shades, Wishes(), orders).all()
    assert _breaches(shades, wish, orders).tolist() == [0, 1, 0, 1]


def test_breaches_are_counted_and_mended():
    """Two apart that lie beside each other; two together with two between them; one off its place."""
    boards = [*some(4), *some(1, place=0)]
    wishes = Wishes(apart=((0, 1),), together=((0, 3),))
    rng = np.random.default_rng(3)
    assert _breaches(boards, wishes, np.array([(0, 1, 2, 3, 4)])).tolist() == [1 + 2 + 1]
    assert _breaches(boards, wishes, np.array([(4, 1, 2, 3, 0)])).tolist() == [0]
    for order in (np.arange(5), np.array([2, 0, 1, 4, 3])):
        mended = _mended(boards, wishes, order, rng)
        assert valid_orders(boards, wishes, mended[None]).all()
    assert sorted(_mended(boards, wishes, np.arange(5), rng)) == [0, 1, 2, 3, 4]


def test_every_two_places_change_once():
    assert _swaps(3).tolist() == [[0, 1], [0, 2], [1, 2]]
    assert _swapped(np.array([7, 8, 9]), _swaps(3)).tolist() == [[8, 7, 9], [9, 8, 7], [7, 9, 8]]
    assert _swaps(1).shape == (0, 2)


def test_levels_of_looks_are_the_sums_of_faces():
    table = Table(faces((1.0, 0.0), (4.0, 2.0), (5.0, 5.0)), np.array([-4.0, 2.0]))
    assert _levels(table, [[0, 1], [0, 1], [0, 1]]) == [10.0, 9.0, 8.0, 7.0]
    assert _levels(table, [[0], [1], [0, 1]]) == [8.0]
    many = Table(faces(*[(2.0**k, 0.0) for k in range(6)]), np.array([-4.0, 2.0]))
    levels = _levels(many, [[0, 1]] * 6)  # 64 sums, thinned to a dozen with both ends among them
    assert (len(levels), levels[0], levels[-1]) == (12, 63.0, 0.0)
    assert sorted(levels, reverse=True) == levels


def test_a_table_judges_a_batch_as_the_panels_do():
    """Nine samples a board see a sag to 1/64 of it; the panel's own chain is sampled at the same points."""
    candidates = [*some(2), Candidate(Board(WOOD, 70.0, 20.0, (30.0, -80.0), far_pith_mm=(10.0, -70.0)))]
    changes = np.array([-4.0, 2.0])
    table = Table(candidates, changes)
    order = np.array([(0, 1, 2), (2, 1, 0), (1, 2, 0)])
    lay = np.array([(0, 0, 0), (OVER, 0, TURNED), (OVER | TURNED, TURNED, OVER)])
    for flat, row, lays in zip(table.departure(order, lay), order, lay):
        boards = [
            candidates[i].board.turned(over=bool(k & OVER), end_for_end=bool(k & TURNED))
            for i, k in zip(row, lays)
        ]
        links = [Panel(boards).shape(change, 800, settle=False).departure_mm for change in changes]
        assert flat == pytest.approx(max(map(abs, links)), rel=1 / 64)
    assert table.departure(order[:0], lay[:0]).shape == (0,)


def test_the_front_is_what_nothing_beats_in_both():
    looks = np.array([1.0, 3.0, 2.0, 2.0, 3.0, 0.0])
    flat = np.array([0.5, 2.0, 1.0, 0.9, 1.5, 0.5])
    assert front_of(looks, flat) == [4, 3, 0]


@pytest.mark.parametrize(("most", "exact"), [(24 * 16, True), (24 * 16 - 1, False)])
def test_every_order_and_flip_is_tried_while_their_number_allows(monkeypatch, most, exact):
    """Four boards lie in 4! orders and 2⁴ ways."""
    monkeypatch.setattr(arrangement, "MOST_EXACT", most)
    study = arrangement_study(some(4), -4, 2, Wishes(may_reorder=True), restarts=1)
    assert ("exact" in study.guarantee) == exact
    assert (study.tried == most) == exact


def test_places_and_pairs_are_those_of_the_boards():
    check_candidates(some(3, place=2), Wishes(together=((0, 2),), apart=((2, 1),)))
    for wrong in (-1, 3):
        with pytest.raises(InputError, match=f"place {wrong}"):
            check_candidates(some(3, place=wrong), Wishes())
        for wishes in (Wishes(together=((0, wrong),)), Wishes(apart=((wrong, 1),))):
            with pytest.raises(InputError, match="0 to 2"):
                check_candidates(some(3), wishes)
    with pytest.raises(InputError, match="two different boards"):
        check_candidates(some(3), Wishes(apart=((1, 1),)))
    with pytest.raises(InputError, match="board 2: grain 0"):
        check_candidates([*some(1), *some(1, grain=0)], Wishes())
