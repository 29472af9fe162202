"""Marching through the thickness against what can be said of it without computing: sums, steady flows, limits."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture import nonlinear
from movement_core.moisture.marching import Spell, _time_steps, grid, march
from movement_core.moisture.nonlinear import nonlinear_year
from movement_core.moisture.response import (
    SlabTransport,
    slab_year,
)
from movement_core.moisture.slab import uptake

HOME = Year("invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test")


def slab(thickness=20.0, rate=3.0, show=4.0, back=4.0):
    return SlabTransport(np.array(thickness), np.array(rate), np.array(show), np.array(back), "made up")


@pytest.mark.parametrize("cells", [8, 40, 400])
def test_cells_fill_the_board_alike_from_both_faces_and_are_thinnest_there(cells):
    middles, widths = grid(30.0, cells)
    assert widths.sum() == pytest.approx(30.0)
    np.testing.assert_allclose(widths, widths[::-1])
    np.testing.assert_allclose(middles, 30.0 - middles[::-1])
    np.testing.assert_allclose(np.diff(middles), (widths[1:] + widths[:-1]) / 2)
    assert (np.diff(widths[: cells // 2]) > 0).all()
    assert widths[0] > 0.2 * 30.0 / cells  # softened: never thinner than a fifth of the even cell
    assert len(grid(30.0)[0]) == 40


def test_steps_of_time_grow_to_the_longest_and_sum_up():
    steps = _time_steps(10.0, 0.01, 0.5)
    assert steps.sum() == pytest.approx(10.0)
    assert steps[0] == 0.01
    np.testing.assert_allclose(steps[1:20] / steps[:19], 1.15)
    assert steps.max() == 0.5
    assert (steps[-2], steps[-1] <= 0.5) == (0.5, True)
    assert _time_steps(10.0, 60.0, 20.0).tolist() == [10.0]
    assert _time_steps(3.0, 1.0, 1.0).tolist() == [1.0, 1.0, 1.0]


@pytest.mark.parametrize(("days", "longest"), [(10.0, 10.0 / 200), (1000.0, 1.0)])
def test_a_step_is_a_two_hundredth_of_its_spell_and_a_day_at_most(days, longest):
    course = march(1.0, 8.0, [Spell(days, 9.0, 9.0, 1.0, 1.0)], 3.0, cells=8)
    assert np.diff(course.time_days).max() == pytest.approx(longest)
    given = march(1.0, 8.0, [Spell(days, 9.0, 9.0, 1.0, 1.0)], 3.0, cells=8, longest_step_days=days / 10)
    assert np.diff(given.time_days).max() == pytest.approx(days / 10)


def test_a_veneer_follows_its_air_from_the_first_moment_of_a_spell_to_its_last():
    """Samples are spread evenly over the spell and joined by straight lines; then the next spell goes on."""
    spells = [
        Spell(10.0, np.array([6.0, 12.0]), np.array([6.0, 12.0]), 1e3, 1e3),
        Spell(4.0, np.array([12.0, 8.0, 9.0]), np.array([12.0, 8.0, 9.0]), 1e3, 1e3),
    ]
    course = march(0.1, 6.0, spells, 30.0, cells=8)
    moments = [0.0, 2.5, 5.0, 10.0, 12.0, 13.0, 14.0]
    assert course.at(moments) == pytest.approx([6.0, 7.5, 9.0, 12.0, 8.0, 8.5, 9.0], abs=0.02)
    assert course.time_days[-1] == pytest.approx(14.0)
    assert course.at(10.0, "show_mc") == pytest.approx(12.0, abs=0.01)


def test_between_two_airs_a_board_rests_at_a_straight_profile():
    """Resistances in series, 1/h + t/D + 1/h: faces and difference by hand; the moment of a straight profile is its
    difference, whatever the cells."""
    show_air, back_air, t, rate, show, back = 12.0, 6.0, 20.0, 3.0, 2.0, 0.5
    flow = (show_air - back_air) / (1 / show + t / rate + 1 / back)
    course = march(t, 9.0, [Spell(1000.0, show_air, back_air, show, back)], rate, cells=12)
    assert course.show_mc[-1] == pytest.approx(show_air - flow / show, abs=1e-4)
    assert course.back_mc[-1] == pytest.approx(back_air + flow / back, abs=1e-4)
    assert course.face_difference_mc[-1] == pytest.approx(flow * t / rate, abs=1e-4)
    assert course.mean_mc[-1] == pytest.approx((course.show_mc[-1] + course.back_mc[-1]) / 2, abs=1e-4)
    assert course.core_mc[-1] == pytest.approx(course.mean_mc[-1], abs=1e-4)
    profile = np.interp(course.depth_mm, [0, t], [course.back_mc[-1], course.show_mc[-1]])
    np.testing.assert_allclose(course.profile_mc[-1], profile, atol=1e-4)
    assert course.cell_mm.sum() == pytest.approx(t)
    # the exact year of the same steady air says the same
    year = slab_year(np.full(365, show_air), slab(t, rate, show, back), np.full(365, back_air))
    assert year.show_mc == pytest.approx(np.full(365, course.show_mc[-1]), abs=1e-4)
    assert year.back_mc == pytest.approx(np.full(365, course.back_mc[-1]), abs=1e-4)
    assert year.face_difference_mc == pytest.approx(np.full(365, course.face_difference_mc[-1]), abs=1e-4)


@pytest.mark.parametrize("closed", ["show", "back"])
def test_a_closed_face_rests_at_the_air_of_the_open_one(closed):
    exchanges = {"show": 2.0, "back": 2.0} | {closed: 0.0}
    year = slab_year(np.full(365, 12.0), slab(**exchanges), np.full(365, 6.0))
    level = 6.0 if closed == "show" else 12.0
    assert year.mean_mc == pytest.approx(np.full(365, level))
    assert np.abs(year.face_difference_mc).max() < 1e-9
    # while it dries, the face that nothing passes lies level with a parabola: no slope there
    spell = Spell(2.0, 6.0, 6.0, exchanges["show"], exchanges["back"])
    course = march(20.0, 12.0, [spell], 3.0)
    shut = course.show_mc if closed == "show" else course.back_mc
    end, inner = (-1, -2) if closed == "show" else (0, 1)
    parabola = np.polyfit((course.depth_mm[[end, inner]] - (20.0 if closed == "show" else 0.0)) ** 2,
                          course.profile_mc[-1][[end, inner]], 1)  # fmt: skip
    assert shut[-1] == pytest.approx(parabola[1])


@pytest.mark.parametrize("faces", [1, 2])
def test_a_step_of_the_air_is_marched_as_it_is_solved_exactly(faces):
    """Crank's series for a plane sheet with surface resistance, one face open or both: within 0.1 % of the step."""
    rate, h, t = 3.0, 2.0, 20.0
    course = march(t, 12.0, [Spell(60.0, 6.0, 6.0, h, h if faces == 2 else 0.0)], rate)
    depth = t / 2 if faces == 2 else t
    days = np.array([0.02, 0.2, 1.0, 4.0, 15.0, 60.0])
    exact = uptake(rate * days / depth**2, h * depth / rate)
    np.testing.assert_allclose((12.0 - course.at(days)) / 6.0, exact, atol=1e-3)


def test_a_diffusivity_that_follows_the_moisture_lies_between_its_ends():
    """Faster where it is damper: drying from 12 to 6 % goes slower than at the rate of 12 %, quicker than of 6 %."""

    def rate(mc):
        return 0.3 * mc

    spell = Spell(5.0, 6.0, 6.0, 5.0, 5.0)
    slow, between, quick = (march(20.0, 12.0, [spell], one).mean_mc[-1] for one in (0.3 * 6, rate, 0.3 * 12))
    assert slow > between > quick
    even = march(20.0, 12.0, [spell], lambda mc: np.full(np.shape(mc), 3.0)).mean_mc
    np.testing.assert_allclose(even, march(20.0, 12.0, [spell], 3.0).mean_mc, atol=1e-12)


def test_a_march_begins_at_the_first_moment_of_its_air():
    """Bare as can be, the face is at once at the first sample of the air, not at one before it."""
    spell = Spell(10.0, np.array([6.0, 16.0]), np.array([9.0, 9.0]), 1e8, 1e8)
    course = march(20.0, 12.0, [spell], 3.0, cells=8)
    assert (course.show_mc[0], course.back_mc[0]) == pytest.approx((6.0, 9.0), abs=1e-5)
    assert course.profile_mc[0] == pytest.approx(np.full(8, 12.0))
    assert course.time_days[0] == 0


def test_a_board_is_marched_within_its_ranges():
    spell = Spell(1e-3, 6.0, 6.0, 1.0, 1.0)
    for taken in ({"thickness_mm": 0.1}, {"thickness_mm": 1000.0}, {"start_mc": 0.0}, {"start_mc": 30.0}):
        march(
            **{
                "thickness_mm": 20.0,
                "start_mc": 8.0,
                "spells": [spell],
                "diffusivity": 3.0,
                "cells": 8,
                **taken,
            }
        )
    assert len(march(20.0, 8.0, [spell], 3.0, cells=400, longest_step_days=1e-3).depth_mm) == 400
    for wrong, says in (
        ({"thickness_mm": 0.09}, "0.1 to 1000 mm"),
        ({"thickness_mm": 1000.4}, "0.1 to 1000 mm"),
        ({"start_mc": -0.1}, "0 to 30"),
        ({"start_mc": 30.4}, "0 to 30"),
        ({"cells": 7}, "8 to 400"),
        ({"cells": 401}, "8 to 400"),
    ):
        with pytest.raises(InputError) as caught:
            march(**{"thickness_mm": 20.0, "start_mc": 8.0, "spells": [spell], "diffusivity": 3.0, **wrong})
        assert says in str(caught.value)


@pytest.mark.parametrize("place", [1, 2, 3, 4])
def test_a_spell_is_of_moistures_of_wood_and_exchanges_of_faces(place):
    high, says = (30.0, "0 to 30") if place < 3 else (1e9, "0 to 1e+09")

    def spell(value):
        given = [1.0, 6.0, 6.0, 1.0, 1.0]
        given[place] = value
        return Spell(*given)

    assert spell(0.0) and spell(high)
    for wrong in (-0.1, high + 0.4):
        with pytest.raises(InputError) as caught:
            spell(wrong)
        assert says in str(caught.value)
    if place < 3:
        for wrong in (np.zeros((2, 2)), np.zeros(0)):
            with pytest.raises(InputError, match="a row of samples"):
                spell(wrong)


def test_years_are_marched_until_they_repeat_and_no_longer(monkeypatch):
    found = nonlinear_year(HOME, 5, 0.65, cells=8)
    assert 2 <= found.years < 12
    assert found.largest_difference_mc == pytest.approx(np.abs(found.mean_mc - found.spectral.mean_mc).max())
    assert found.share_of_swing == pytest.approx(found.largest_difference_mc / np.ptp(found.spectral.air_mc))
    difference = found.face_difference_mc - found.spectral.face_difference_mc
    assert found.face_difference_change == pytest.approx(np.abs(difference).max())
    monkeypatch.setattr(nonlinear, "MOST_YEARS", found.years - 1)
    with pytest.raises(InputError, match=f"after {found.years - 1} years"):
        nonlinear_year(HOME, 5, 0.65, cells=8)
