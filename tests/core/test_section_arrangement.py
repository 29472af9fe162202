"""Arrangement studies: exact flips, sound search, wishes, and the price of the maker's own layout."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations, product

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section import arrangement
from movement_core.section.arrangement import arrangement_study
from movement_core.section.board import Board
from movement_core.section.lays import Candidate, Wishes
from movement_core.section.panel import Panel


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


WOOD = Wood()


def random_candidates(count, seed=3, **more):
    rng = np.random.default_rng(seed)
    return [
        Candidate(
            Board(
                WOOD,
                rng.uniform(60, 120),
                20,
                (rng.uniform(-40, 40), rng.choice([-1, 1]) * rng.uniform(30, 150)),
                f"b{i}",
            ),
            looks_show=float(rng.integers(0, 4)),
            looks_back=float(rng.integers(0, 4)),
            grain=int(rng.choice([-1, 1])),
            colour=float(rng.uniform(0, 1)),
            **more,
        )
        for i in range(count)
    ]


def by_hand(candidates, order, over, turned, changes):
    panel = Panel([candidates[i].board.turned(over=o, end_for_end=e) for i, o, e in zip(order, over, turned)])
    looks = sum(candidates[i].looks_back if o else candidates[i].looks_show for i, o in zip(order, over))
    return looks, max(abs(panel.shape(change).departure_mm) for change in changes)


def test_flips_are_exact():
    candidates = random_candidates(4)
    study = arrangement_study(candidates, -4, 2)
    every = [
        by_hand(candidates, range(4), over, (False,) * 4, (-4, 2))
        for over in product((False, True), repeat=4)
    ]
    assert study.tried == 16
    assert "exact" in study.guarantee
    assert study.best_looks.looks == max(looks for looks, _ in every)
    assert study.flattest.departure_mm == pytest.approx(min(flat for _, flat in every), rel=0.02)
    for one in study.front:  # nothing beats it in both by more than settling can move
        assert not any(looks >= one.looks and flat < 0.97 * one.departure_mm for looks, flat in every)


def test_the_makers_own_layout_is_always_listed_with_its_price():
    candidates = random_candidates(5)
    study = arrangement_study(candidates, -4, 2, Wishes(may_reorder=True, may_turn=True))
    own = study.own
    assert own in study.listed
    assert own.order == (0, 1, 2, 3, 4)
    assert own.over == (False,) * 5
    looks, flat = by_hand(candidates, own.order, own.over, own.turned, (-4, 2))
    assert own.looks == looks
    assert own.departure_mm == pytest.approx(flat)
    assert own.price_mm == pytest.approx(flat - study.flattest.departure_mm)
    assert own.looks_price == study.best_looks.looks - looks


def test_front_runs_from_looks_to_flatness():
    study = arrangement_study(random_candidates(8), -4, 2)
    looks = [one.looks for one in study.front]
    flat = [one.departure_mm for one in study.front]
    assert (np.diff(looks) < 0).all()
    assert (np.diff(flat) < 0).all()
    assert study.front[0].looks_price == 0
    assert study.front[-1].price_mm == 0


def test_seasons_say_which_way_it_goes():
    boards = [Candidate(Board(WOOD, 100, 20, (0, 60)), looks_show=1.0) for _ in range(4)]
    study = arrangement_study(boards, -4, 2)
    own = study.own
    assert (own.driest.way, own.wettest.way) == ("crown", "hollow")
    assert own.driest.departure_mm > 0 > own.wettest.departure_mm
    assert own.departure_mm == own.driest.departure_mm
    assert study.flattest.driest.way == "waves"
    calm = arrangement_study(boards, 0, 0).own
    assert calm.driest.way == "flat"


def test_alternating_off_centre_piths_can_be_worse_and_the_study_shows_it():
    """Two boards from the left of their tree beside two from its right: same way up is flatter by far."""
    boards = [Candidate(Board(WOOD, 150, 20, (x, 66))) for x in (-105, -105, 105, 105)]
    study = arrangement_study(boards, -4, 0)
    alternating = Panel([c.board.turned(over=bool(i % 2)) for i, c in enumerate(boards)]).shape(-4)
    assert abs(alternating.departure_mm) > 4 * study.own.departure_mm
    assert study.flattest.departure_mm <= study.own.departure_mm
    assert study.flattest.over not in ((False, True) * 2, (True, False) * 2)


def test_same_grain_turns_what_is_flipped():
    candidates = [replace(c, grain=g) for c, g in zip(random_candidates(5), (1, -1, 1, 1, -1))]
    study = arrangement_study(candidates, -4, 2, Wishes(may_turn=True, same_grain=True))
    for one in study.front:
        runs = {candidates[i].grain * (-1) ** (o + e) for i, o, e in zip(one.order, one.over, one.turned)}
        assert len(runs) == 1
    assert study.own.broken_wishes == ("grain runs both ways",)


def test_neighbours_places_faces_and_colours_are_kept():
    candidates = random_candidates(6)
    candidates[3] = Candidate(candidates[3].board, must_show="back", place=0, colour=candidates[3].colour)
    wishes = Wishes(may_reorder=True, together=((0, 1),), apart=((4, 5),), colour_step=0.8)
    for most in (arrangement.MOST_EXACT, 10):  # exact, then searched
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr(arrangement, "MOST_EXACT", most)
            study = arrangement_study(candidates, -4, 2, wishes)
        assert ("exact" in study.guarantee) == (most > 10)
        for one in study.front:
            at = {board: place for place, board in enumerate(one.order)}
            assert at[3] == 0
            assert one.over[0]
            assert abs(at[0] - at[1]) == 1
            assert abs(at[4] - at[5]) > 1
            steps = np.abs(np.diff([candidates[i].colour for i in one.order]))
            assert steps.max() <= 0.8
    assert "a face that must show is down" in study.own.broken_wishes


def test_search_is_sound_against_every_order_and_flip():
    candidates = random_candidates(5, seed=11)
    wishes = Wishes(may_reorder=True)
    exact = arrangement_study(candidates, -4, 2, wishes)
    assert exact.tried == 120 * 32
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(arrangement, "MOST_EXACT", 100)
        found = arrangement_study(candidates, -4, 2, wishes)
    assert "searched" in found.guarantee
    flips = arrangement_study(candidates, -4, 2)
    assert found.flattest.departure_mm <= flips.flattest.departure_mm + 1e-9  # never worse than flips alone
    assert found.flattest.departure_mm <= 1.1 * exact.flattest.departure_mm
    assert found.best_looks.looks == exact.best_looks.looks
    # the promise: no single flip or swap of two makes a listed layout flatter at its looks (2 %: settling)
    for one in found.front:
        for i, j in permutations(range(5), 2):
            order, over = list(one.order), list(one.over)
            if i < j:
                order[i], order[j] = order[j], order[i]
                over[i], over[j] = over[j], over[i]
            else:
                over[i] = not over[i]
            looks, flat = by_hand(candidates, order, over, (False,) * 5, (-4, 2))
            assert looks < one.looks or flat >= 0.98 * one.departure_mm


def test_impossible_wishes_and_bad_numbers_are_refused():
    candidates = random_candidates(3)
    with pytest.raises(InputError, match="no boards"):
        arrangement_study([], -4, 2)
    with pytest.raises(InputError, match="driest change 2 is above the wettest -4"):
        arrangement_study(candidates, 2, -4)
    with pytest.raises(InputError, match="0 to 2"):
        arrangement_study(candidates, -4, 2, Wishes(together=((0, 7),)))
    with pytest.raises(InputError, match="no layout meets"):
        arrangement_study(candidates, -4, 2, Wishes(together=((0, 1),), apart=((0, 1),), may_reorder=True))
    for wrong, says in (
        ({"must_show": "top"}, "show, back"),
        ({"grain": 2}, "1, -1"),
        ({"place": 9}, "0, 1, 2"),
    ):
        with pytest.raises(InputError, match=says):
            arrangement_study([Candidate(candidates[0].board, **wrong), *candidates[1:]], -4, 2)
    with pytest.raises(InputError, match="looks nan"):
        arrangement_study([Candidate(candidates[0].board, looks_show=float("nan"))], -4, 2)


def test_grain_that_runs_one_way_is_no_broken_wish():
    candidates = [replace(c, grain=1) for c in random_candidates(4)]
    assert arrangement_study(candidates, -4, 2, Wishes(same_grain=True)).own.broken_wishes == ()
