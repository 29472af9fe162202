"""Placing labels on the screen: rules that hold for any anchors, sizes and views."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from workbench_pkg.views.label_layout import LARGE_PX, SMALLEST_PX, arrange

VIEW = (1000.0, 700.0)


def random_case(seed, count, spread):
    rng = np.random.default_rng(seed)
    anchors = np.array([500.0, 350.0]) + rng.uniform(-spread, spread, (count, 2))
    sizes = np.column_stack([rng.uniform(60, 220, count), rng.uniform(20, 70, count)])
    return anchors, sizes, rng.integers(0, 3, count)


def pairs_that_touch(layout, sizes):
    shown = np.flatnonzero(layout.shown)
    found = []
    for n, i in enumerate(shown):
        for j in shown[:n]:
            apart = np.abs(layout.centres[i] - layout.centres[j]) >= (sizes[i] + sizes[j]) / 2
            found += [] if apart.any() else [(i, j)]
    return found


@settings(max_examples=40, deadline=None)
@given(
    seed=st.integers(0, 10_000), count=st.integers(0, 40), spread=st.sampled_from([2.0, 60.0, 300.0, 900.0])
)
def test_labels_never_touch_never_leave_the_view_and_are_all_accounted_for(seed, count, spread):
    anchors, sizes, ranks = random_case(seed, count, spread)
    layout = arrange(anchors, sizes, VIEW, ranks)
    assert pairs_that_touch(layout, sizes) == []
    low, high = layout.centres - sizes / 2, layout.centres + sizes / 2
    assert (low[layout.shown] >= 0).all() and (high[layout.shown] <= VIEW).all()
    inside = ((anchors >= 0) & (anchors <= VIEW)).all(axis=1)
    assert layout.crowded == inside.sum() - layout.shown.sum()
    assert not layout.shown[~inside].any()


@settings(max_examples=25, deadline=None)
@given(seed=st.integers(0, 10_000), count=st.integers(2, 30))
def test_no_leader_runs_over_a_label_or_another_leader(seed, count):
    anchors, sizes, ranks = random_case(seed, count, 300.0)
    layout = arrange(anchors, sizes, VIEW, ranks)
    shown = np.flatnonzero(layout.shown)
    steps = np.linspace(0.0, 1.0, 400)[:, None]
    for i in shown:
        walk = anchors[i] + steps * (layout.centres[i] - anchors[i])
        for j in shown[shown != i]:
            inside = np.abs(walk - layout.centres[j]) < sizes[j] / 2 - 1e-6
            assert not inside.all(axis=1).any()
            assert not cross(anchors[i], layout.centres[i], anchors[j], layout.centres[j])


def cross(p, q, r, s):
    def side(a, b, c):
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

    return side(p, q, r) * side(p, q, s) < 0 and side(r, s, p) * side(r, s, q) < 0


def test_a_lone_label_stands_beside_its_anchor():
    layout = arrange(np.array([[500.0, 350.0]]), np.array([[120.0, 40.0]]), VIEW)
    assert layout.shown.all()
    assert 20 < np.hypot(*(layout.centres[0] - [500, 350])) < 120
    assert not (np.abs(layout.centres[0] - [500, 350]) < [60, 20]).all()


def test_few_labels_with_room_all_show():
    anchors = np.array([[x, y] for x in (200.0, 500.0, 800.0) for y in (200.0, 500.0)])
    layout = arrange(anchors, np.full((6, 2), (140.0, 40.0)), VIEW)
    assert layout.shown.all() and layout.crowded == 0


def test_from_afar_the_worst_rank_stays():
    anchors = np.array([500.0, 350.0]) + np.random.default_rng(1).uniform(-6, 6, (40, 2))
    ranks = np.zeros(40, dtype=np.int64)
    ranks[33] = 2
    layout = arrange(anchors, np.full((40, 2), (160.0, 50.0)), VIEW, ranks)
    assert layout.shown[33]
    assert 0 < layout.shown.sum() < 12


def test_the_larger_part_comes_first_and_a_speck_gets_no_label():
    anchors = np.array([500.0, 350.0]) + np.random.default_rng(2).uniform(-5, 5, (30, 2))
    extents = np.full(30, 40.0)
    extents[17], extents[4] = LARGE_PX, SMALLEST_PX - 1
    layout = arrange(anchors, np.full((30, 2), (160.0, 50.0)), VIEW, extents=extents)
    assert layout.shown[17] and not layout.shown[4]
    ranks = np.zeros(30, dtype=np.int64)
    ranks[4] = 1
    assert arrange(anchors, np.full((30, 2), (160.0, 50.0)), VIEW, ranks, extents=extents).shown[4]


def test_corners_that_are_kept_free_stay_free():
    anchors = np.array([[880.0, 600.0], [860.0, 560.0], [900.0, 640.0]])
    free = np.array([[850.0, 550.0, 1000.0, 700.0]])
    sizes = np.full((3, 2), (120.0, 40.0))
    layout = arrange(anchors, sizes, VIEW, free=free)
    for i in np.flatnonzero(layout.shown):
        low, high = layout.centres[i] - sizes[i] / 2, layout.centres[i] + sizes[i] / 2
        assert (low >= free[0, 2:]).any() or (high <= free[0, :2]).any()


def test_a_small_move_does_not_make_labels_jump():
    anchors, sizes, ranks = random_case(5, 12, 320.0)
    first = arrange(anchors, sizes, VIEW, ranks)
    second = arrange(anchors + 0.5, sizes, VIEW, ranks, first.choice)
    both = first.shown & second.shown
    assert both.sum() >= first.shown.sum() - 1
    assert (np.abs(second.centres[both] - first.centres[both]) < 1.0).mean() > 0.9


@pytest.mark.parametrize("view", [(40.0, 30.0), (1000.0, 20.0)])
def test_a_view_too_small_for_any_label_shows_none(view):
    layout = arrange(np.array([[20.0, 10.0]]), np.array([[120.0, 40.0]]), view)
    assert not layout.shown.any()
    assert layout.crowded == 1
