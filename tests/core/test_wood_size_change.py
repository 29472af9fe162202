"""Properties of the size formulas: continuity, there-and-back, nothing above the start, consistent views."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.wood import (
    all_species,
    dimension_change,
    find_species,
    green_dimension_change,
    strain_at_ring_angle,
)

MATERIALS = all_species()
moisture = st.floats(0, 40)
direction = st.sampled_from(("radial", "tangential", "longitudinal"))
material = st.sampled_from(MATERIALS)
quick = settings(max_examples=150, derandomize=True, deadline=None)


@given(material, direction, st.floats(1, 3000), st.lists(moisture, min_size=1, max_size=6))
@quick
def test_a_round_trip_through_any_moistures_comes_home(species, way, size, stops):
    at, now = 9.0, size
    for stop in (*stops, 9.0):
        now += species.change(now, way, at, stop).mm
        at = stop
    assert now == pytest.approx(size, rel=1e-12)


@given(material, direction, moisture, st.sampled_from((6.0, 14.0)))
@quick
def test_nothing_jumps_at_the_ends_of_the_linear_range(species, way, start, edge):
    sizes = [species.change(1000, way, start, edge + step).mm for step in (-1e-7, 0, 1e-7)]
    assert max(sizes) - min(sizes) < 1e-5
    steps = np.diff([float(species.strain(way, 10, edge + s)) for s in (-0.5, 0, 0.5)])
    assert steps[0] == pytest.approx(steps[1], rel=1e-9, abs=1e-15)  # nor does the slope


@given(material, direction, moisture, moisture, st.floats(0, 3000))
@quick
def test_change_is_size_times_strain_exactly(species, way, before, after, size):
    assert species.change(size, way, before, after).mm == size * float(species.strain(way, before, after))


@given(material, direction, moisture, moisture)
@quick
def test_wetter_is_never_smaller(species, way, before, after):
    change = species.change(100, way, before, after).mm
    assert change * (after - before) >= 0


@given(st.floats(0, 0.05), st.floats(0, 0.05), st.floats(0, 90))
@quick
def test_ring_angle_keeps_the_sum_and_swaps_with_the_complement(radial, tangential, angle):
    width = float(strain_at_ring_angle(radial, tangential, angle))
    thickness = float(strain_at_ring_angle(radial, tangential, angle, "thickness"))
    assert width + thickness == pytest.approx(radial + tangential, abs=1e-15)
    assert thickness == pytest.approx(float(strain_at_ring_angle(radial, tangential, 90 - angle)), abs=1e-15)


def test_flat_and_quarter_sawn():
    angles = np.array([0, 45, 90])
    np.testing.assert_allclose(strain_at_ring_angle(0.01, 0.02, angles), [0.02, 0.015, 0.01])
    np.testing.assert_allclose(strain_at_ring_angle(0.01, 0.02, angles, "thickness"), [0.01, 0.015, 0.02])
    for bad in (-1, 91, float("nan")):
        with pytest.raises(InputError, match="ring_angle"):
            strain_at_ring_angle(0.01, 0.02, bad)
    with pytest.raises(InputError, match="direction"):
        strain_at_ring_angle(0.01, 0.02, 10, "length")


def test_above_the_start_of_shrinkage_nothing_moves():
    teak = find_species("teak")
    assert teak.change(100, "radial", 22, 80).mm == 0 and "none" in teak.change(100, "radial", 22, 80).basis
    assert teak.change(100, "radial", 80, 12).mm == teak.change(100, "radial", 22, 12).mm
    assert find_species("white oak").change(100, "radial", 22, 80).mm > 0


@pytest.mark.parametrize(
    "before, after, word",
    [
        (8, 12, "linear (Eq. 13-2)"),
        (6, 14, "linear (Eq. 13-2)"),
        (5.9, 8, "green dimension (Eq. 13-3)"),
        (8, 14.1, "green dimension (Eq. 13-3)"),
        (4, 18, "green dimension (Eq. 13-3)"),
        (40, 8, "only the part below"),
        (30, 60, "none"),
    ],
)
def test_the_basis_is_named(before, after, word):
    assert word in find_species("white oak").change(100, "tangential", before, after).basis


def test_strain_and_plain_formula_broadcast():
    oak = find_species("white oak")
    strains = oak.strain("radial", np.array([[6], [9]]), np.arange(12.0))
    assert strains.shape == (2, 12)
    assert strains[1, 5] == oak.strain("radial", 9, 5)
    sizes = oak.change([100, 200], "radial", 8, 10).mm
    assert sizes[1] == 2 * sizes[0]
    np.testing.assert_allclose(dimension_change([100, 200], 0.002, 8, [[9], [10]]), [[0.2, 0.4], [0.4, 0.8]])


@pytest.mark.parametrize("bad", [-1, 301, float("nan"), float("inf")])
def test_impossible_moistures_and_sizes_are_refused(bad):
    oak = find_species("white oak")
    with pytest.raises(InputError, match="from_mc"):
        oak.strain("radial", bad, 8)
    with pytest.raises(InputError, match="to_mc"):
        dimension_change(100, 0.002, 8, bad)
    if bad != 301:
        with pytest.raises(InputError, match="size"):
            oak.change(bad, "radial", 8, 9)


def test_green_dimension_formula_refuses_what_it_is_not_for():
    assert green_dimension_change(100, 10, 30, 0) == pytest.approx(-10)
    with pytest.raises(InputError, match="start of shrinkage"):
        green_dimension_change(100, 10, 35, 10)
    with pytest.raises(InputError, match="start of shrinkage"):
        green_dimension_change(100, 4, 8, 25, start_mc=22)
    for shrinkage in (0, -2, 60):
        with pytest.raises(InputError, match="shrinkage"):
            green_dimension_change(100, shrinkage, 20, 10)
