"""Travel from the fixed line, and the slots that follow it."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.holding.travel import WidthStrain, fixed_line_mm, seen_from_the_mover, slot, travel

OAK = WidthStrain.even(600, driest=-0.010, today=-0.002, wettest=0.006, spread=0.15)


def test_travel_is_distance_times_strain_both_ways():
    there = travel(OAK, [-250.0, 0.0, 250.0], fixed_mm=0.0)
    assert there.driest_mm == pytest.approx([2.5, 0.0, -2.5])
    assert there.wettest_mm == pytest.approx([-1.5, 0.0, 1.5])
    assert there.least_mm == pytest.approx([-1.5 * 1.15, 0.0, -2.5 * 1.15])
    assert there.most_mm == pytest.approx([2.5 * 1.15, 0.0, 1.5 * 1.15])


def test_fixed_front_sends_all_movement_to_the_back():
    there = travel(OAK, 300.0, fixed_line_mm("front", 600))
    assert float(there.driest_mm) == pytest.approx(-6.0)
    assert float(travel(OAK, -300.0, -300.0).most_mm) == 0.0


@settings(max_examples=60, deadline=None)
@given(st.floats(-300, 300), st.floats(-300, 300), st.floats(-300, 300))
def test_moving_the_fixed_line_shifts_every_travel_alike(a, b, fixed):
    apart = OAK.moved("driest", a, fixed) - OAK.moved("driest", b, fixed)
    assert apart == pytest.approx(OAK.moved("driest", a, 0.0) - OAK.moved("driest", b, 0.0), abs=1e-9)


def test_boards_of_different_wood_move_each_by_its_own():
    mixed = WidthStrain((-100, 0, 100), (-0.01, -0.002), (0, 0), (0.01, 0.002))
    assert mixed.moved("driest", [-100, 100], 0.0) == pytest.approx([1.0, -0.2])
    assert mixed.mean("driest") == pytest.approx(-0.006)


def test_a_year_that_never_returns_to_the_fitting_still_counts_the_fitting():
    drying = WidthStrain.even(200, -0.02, -0.015, -0.01, spread=0.0)
    there = travel(drying, 100.0)
    assert float(there.least_mm) == pytest.approx(-2.0)
    assert float(there.most_mm) == 0.0


@settings(max_examples=80, deadline=None)
@given(st.floats(-8, 0), st.floats(0, 8), st.floats(0, 1), st.floats(3, 8), st.floats(0, 2))
def test_screw_stays_inside_its_slot_all_year(least, most, share, shank, room):
    today = least + share * (most - least)
    hole = slot(least, today, most, shank, room)
    for now in (least, today, most):
        centre = hole.screw_today_mm + now - today
        assert shank / 2 + room / 2 - 1e-9 <= centre <= hole.length_mm - shank / 2 - room / 2 + 1e-9
    assert hole.length_mm == pytest.approx(shank + most - least + room)


def test_screw_is_rarely_mid_slot():
    hole = slot(-2.9, 0.5, 1.7, 4.5)
    assert hole.screw_today_mm == pytest.approx(4.5 / 2 + 0.5 + 3.4)
    assert abs(hole.screw_today_mm - hole.length_mm / 2) > 1.0


def test_slot_in_the_moving_part_is_the_mirror_image():
    here, there = slot(-2.0, 0.5, 1.0, 5.0), slot(*seen_from_the_mover(-2.0, 0.5, 1.0), 5.0)
    assert there.length_mm == pytest.approx(here.length_mm)
    assert there.screw_today_mm == pytest.approx(here.length_mm - here.screw_today_mm)


@pytest.mark.parametrize(
    "make",
    [
        lambda: WidthStrain.even(600, 0.01, 0.0, -0.01),
        lambda: WidthStrain((0, 100), (0.0,), (0.0, 0.0), (0.0,)),
        lambda: WidthStrain.even(600, float("nan"), 0.0, 0.01),
        lambda: WidthStrain.even(600, -0.01, 0.0, 0.01, spread=1.5),
        lambda: travel(OAK, 301.0),
        lambda: travel(OAK, 0.0, fixed_mm=-400.0),
        lambda: fixed_line_mm("middle", 600),
        lambda: fixed_line_mm(400.0, 600),
        lambda: slot(-1.0, 2.0, 1.0, 4.0),
    ],
)
def test_what_cannot_be_is_refused(make):
    with pytest.raises(InputError):
        make()


def test_arrays_and_scalars_agree():
    places = np.linspace(-300, 300, 7)
    whole = travel(OAK, places)
    for i, place in enumerate(places):
        assert float(travel(OAK, place).least_mm) == pytest.approx(float(whole.least_mm[i]))
