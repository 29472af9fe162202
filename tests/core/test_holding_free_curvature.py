"""The free shape across a panel: curvatures and kinks integrate to the height, and back."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.holding.free_curvature import FreeCurvature


def test_even_crown_rises_by_the_parabola():
    free = FreeCurvature.even(500, 1.6e-4)
    assert free.height(0.0) == pytest.approx(1.6e-4 * 500**2 / 8)
    assert free.height([-250, 250]) == pytest.approx([0, 0], abs=1e-12)


def test_positive_kink_is_a_ridge():
    free = FreeCurvature((-100, 0, 100), (0, 0), (0.02,))
    assert free.height([-100, -50, 0, 50, 100]) == pytest.approx([0, 0.5, 1.0, 0.5, 0])


def test_surface_runs_on_straight_beyond_the_edges():
    free = FreeCurvature((-100, 0, 100), (0, 0), (0.02,))
    assert free.height([-150, 150]) == pytest.approx([-0.5, -0.5])


@settings(max_examples=60, deadline=None)
@given(
    st.lists(st.floats(30, 200), min_size=1, max_size=7).flatmap(
        lambda widths: st.tuples(
            st.just(widths),
            st.lists(st.floats(-3e-4, 3e-4), min_size=len(widths), max_size=len(widths)),
            st.lists(st.floats(-0.02, 0.02), min_size=len(widths) - 1, max_size=len(widths) - 1),
        )
    )
)
def test_profile_gives_back_curvatures_and_kinks(panel):
    widths, crown, kinks = panel
    lines = np.cumsum([0.0, *widths]) - sum(widths) / 2
    free = FreeCurvature(tuple(lines), tuple(crown), tuple(kinks))
    places = np.unique(np.concatenate([np.linspace(a, b, 9) for a, b in pairwise(lines)]))
    back = FreeCurvature.from_profile(np.column_stack([places, free.height(places)]), lines, pieces=1)
    assert back.crown_per_mm == pytest.approx(free.crown_per_mm, abs=1e-9)
    assert back.kinks_rad == pytest.approx(free.kinks_rad, abs=1e-7)


def test_uneven_curvature_is_followed_in_pieces():
    places = np.linspace(-100, 100, 81)
    height = 1e-9 * (100.0**4 - places**4)
    one, four = (
        FreeCurvature.from_profile(np.column_stack([places, height]), (-100, 100), n).height(places)
        for n in (1, 4)
    )
    assert np.max(np.abs(four - height)) < 0.02 * np.ptp(height) < 0.2 * np.max(np.abs(one - height))
    with pytest.raises(InputError, match="3 or more"):
        FreeCurvature.from_profile(np.column_stack([places[::20], height[::20]]), (-100, 100))


@settings(max_examples=40, deadline=None)
@given(st.floats(-3e-4, 3e-4), st.floats(-3e-4, 3e-4))
def test_curvatures_add(first, second):
    places = np.linspace(-200, 200, 21)
    both = FreeCurvature.even(400, first + second).height(places)
    apart = FreeCurvature.even(400, first).height(places) + FreeCurvature.even(400, second).height(places)
    assert both == pytest.approx(apart, abs=1e-9)


@pytest.mark.parametrize(
    "wrong",
    [
        {"lines_mm": (0.0,), "crown_per_mm": ()},
        {"lines_mm": (0.0, 0.0), "crown_per_mm": (0.0,)},
        {"lines_mm": (0.0, 100.0), "crown_per_mm": (0.0, 0.0)},
        {"lines_mm": (0.0, 100.0), "crown_per_mm": (0.0,), "kinks_rad": (0.1,)},
        {"lines_mm": (0.0, 100.0), "crown_per_mm": (float("nan"),)},
        {"lines_mm": (0.0, 100.0), "crown_per_mm": (0.0,), "twist_per_mm": float("inf")},
    ],
)
def test_bad_input_is_refused(wrong):
    with pytest.raises(InputError, match="free curvature"):
        FreeCurvature(**wrong)
