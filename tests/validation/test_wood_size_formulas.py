"""The size formulas against the handbook's worked example and against each other where they overlap.

Source: Wood Handbook FPL-GTR-190 (2010) Eq. 13-2 and 13-3, pp. 13-15 to 13-17: the example's result read, its
species and starting moisture recalled.
"""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.sources import READ, RECALLED
from movement_core.wood import (
    all_species,
    coefficient_from_shrinkage,
    dimension_change,
    find_species,
    green_dimension_change,
)
from tests.validation.record import compared

WOODS = [s for s in all_species() if s.kind == "wood"]
SIDES = ("radial", "tangential")


def test_worked_example_white_fir():
    """Flat-sawn white fir, 232 mm at 8 %, becomes 233.7 mm at 11 %, by each of the three ways."""
    fir = find_species("white fir")
    plain = 232 + dimension_change(232, fir.tangential_coefficient, 8, 11)
    green = 232 + green_dimension_change(232, fir.tangential_shrinkage, 8, 11)
    through_reference = 232 + fir.change(232, "tangential", 8, 11).mm
    sizes = [round(float(size), 1) for size in (plain, green, through_reference)]
    source = "Wood Handbook FPL-GTR-190, pp. 13-15 to 13-17"
    compared("worked example, white fir", source, READ, 233.7, sizes, "mm", within=1e-9)


@pytest.mark.parametrize("side", SIDES)
def test_species_change_is_the_green_dimension_formula_on_the_same_basis(side):
    """From oven-dry to the start of shrinkage, all woods: equal but for the print of C (five decimals)."""
    moistures = np.array([0, 3, 6, 8, 10, 12, 14, 18, 21.9])
    before, after = (m.ravel() for m in np.meshgrid(moistures, moistures))
    for wood in WOODS:
        shrinkage = getattr(wood, f"{side}_shrinkage")
        handbook = green_dimension_change(100.0, shrinkage, before, after, wood.start_mc)
        ours = 100.0 * wood.strain(side, before, after)
        compared(
            f"all woods by the formula from green, {side}", "Wood Handbook FPL-GTR-190, Eq. 13-3", RECALLED, handbook,
            ours, "mm per 100 mm", share=0.008, within=1e-12, note="apart by the five decimals of the printed C",
        )  # fmt: skip


def test_plain_formula_is_the_tangent_at_the_size_at_ten_percent():
    """For a size measured at 10 % both formulas are one; from 6 or 14 % they part by 4 C at most (2 %)."""
    for wood in WOODS:
        c = wood.tangential_coefficient
        assert wood.change(500, "tangential", 10, 14).mm == pytest.approx(
            float(dimension_change(500, c, 10, 14)), rel=1e-12
        )
        for start, end in ((6, 14), (14, 6), (8, 11)):
            plain = float(dimension_change(500, c, start, end))
            assert wood.change(500, "tangential", start, end).mm == pytest.approx(plain, rel=4.2 * c)


@given(shrinkage=st.floats(0.1, 15), start=st.floats(20, 34), before=st.floats(0, 20), after=st.floats(0, 20))
@settings(max_examples=200, derandomize=True)
def test_coefficient_and_shrinkage_are_two_views_of_one_line(shrinkage, start, before, after):
    """Eq. 13-3 from any size equals Eq. 13-2 on the size that the same piece has at 10 %."""
    c = coefficient_from_shrinkage(shrinkage, start)
    green = 1000.0  # mm above the start of shrinkage
    size = {m: green * (1 - shrinkage / 100 * (start - m) / start) for m in (before, after, 10.0)}
    expected = size[after] - size[before]
    assert float(green_dimension_change(size[before], shrinkage, before, after, start)) == pytest.approx(
        expected, abs=1e-8
    )
    assert float(dimension_change(size[10.0], c, before, after)) == pytest.approx(expected, abs=1e-8)


def test_total_shrinkage_comes_out():
    """A green board dried in the oven loses its tabled shrinkage, whatever steps it takes on the way."""
    for wood in WOODS:
        size = 100.0
        for before, after in ((80, 25), (25, 14), (14, 7), (7, 6), (6, 0)):
            size += wood.change(size, "tangential", before, after).mm
        assert 100 - size == pytest.approx(wood.tangential_shrinkage, rel=0.008), wood.name
