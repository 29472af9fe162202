"""Lengths on paper: tenths of a millimetre and fractions of an inch, rounded to the safe side where that matters."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from movement_core.errors import UnknownName
from movement_core.sheet.pages.lengths import INCH_MM, Lengths, percent, plain
from movement_core.sheet.pages.year_view import ticks_at

MM, INCH = Lengths("mm"), Lengths("inch")
SIZES = st.floats(-5000, 5000)


def read(figure, lengths):
    """What a figure says, mm."""
    text = figure.shown.replace("−", "-").replace("+", "")
    if lengths.units == "mm":
        return float(text)
    negative = text.startswith("-")
    value = sum((Fraction(part) for part in text.lstrip("-").split()), Fraction(0))
    return float(-value if negative else value) * INCH_MM


@given(SIZES, st.sampled_from([MM, INCH]))
def test_rounding_goes_the_way_it_says_and_by_less_than_a_step(size, lengths):
    near, up, down = (read(getattr(lengths, how)(size, ()), lengths) for how in ("near", "up", "down"))
    slack = 1e-5 * max(1.0, lengths.step_mm)
    assert abs(near - size) <= lengths.step_mm / 2 + slack
    assert -slack <= up - size < lengths.step_mm + slack
    assert -slack <= size - down < lengths.step_mm + slack


@pytest.mark.parametrize(
    "mm, shown", [(25.4, "1"), (12.7, "1/2"), (30.1625, "1 3/16"), (0.3, "1/64"), (0.1, "0"), (-6.35, "−1/4")]
)
def test_fractions_of_an_inch_are_reduced(mm, shown):
    assert INCH.near(mm, ()).shown == shown


def test_what_hits_a_step_stays_there():
    assert MM.up(0.3, ()).shown == "0.3"  # 0.3 is no whole number of tenths in binary
    assert MM.up(0.30001, ()).shown == "0.4"
    assert MM.down(0.7, ()).shown == "0.7"
    assert INCH.up(INCH_MM / 64 * 3, ()).shown == "3/64"


def test_signs():
    assert MM.signed(1.0, ()).shown == "+1.0"
    assert MM.signed(-1.0, ()).shown == "−1.0"
    assert MM.signed(0.01, ()).shown == "0.0"
    assert INCH.signed(0.01, ()).shown == "0"


def test_what_is_not_known_is_a_question_mark():
    assert MM.near(None, ("x",)).shown == percent(None, ()).shown == plain(None, ()).shown == "?"


def test_a_unit_that_nobody_has():
    with pytest.raises(UnknownName, match="mm, inch"):
        Lengths("cubit")


def test_plain_numbers_have_no_minus_before_nothing():
    assert plain(-0.01, (), 1).shown == "0.0"
    assert plain(-0.6, ()).shown == "−1"


@pytest.mark.parametrize("units", ["mm", "inch"])
@pytest.mark.parametrize(("low", "high"), [(299.1, 299.6), (79.2, 80.3), (950.4, 962.0), (400.0, 460.0)])
def test_ticks_of_an_axis_are_round_and_no_two_read_alike(units, low, high):
    lengths = Lengths(units)
    ticks = ticks_at(low, high, lengths)
    shown = [lengths.near(tick, ()).shown for tick in ticks]
    assert 1 <= len(ticks) <= 5 and len(set(shown)) == len(shown)
    assert all(low <= tick <= high for tick in ticks)
    steps = [tick / lengths.step_mm for tick in ticks]
    assert steps == pytest.approx([round(step) for step in steps], abs=1e-6)
