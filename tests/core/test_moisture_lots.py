"""What measurements of a lot teach, worked out by hand."""

from __future__ import annotations

import math

import pytest

from movement_core.errors import InputError
from movement_core.moisture.learned import (
    LearnedLot,
    Observed,
    change_worth_measuring,
    learn_lot,
    learned_coefficient,
)


def test_one_measurement_without_doubt_of_the_moisture_is_the_conjugate_update():
    """Normal prior and normal calipers, linear: 1/sd² = 1/(cv·c)² + x²/σ² (statistics texts, from memory)."""
    x = 500 * -4.0
    for measured, caliper, cv in ((-8.0, 0.4, 0.15), (-6.5, 0.2, 0.1), (-7.0, 0.07, 0.15)):
        found = learned_coefficient(
            0.0035, 500, measured, -4.0, mc_change_sd=0, caliper_sd_mm=caliper, coefficient_cv=cv
        )
        precision = 1 / (cv * 0.0035) ** 2 + x**2 / caliper**2
        mean = (0.0035 / (cv * 0.0035) ** 2 + x * measured / caliper**2) / precision
        assert found.value == pytest.approx(mean, rel=1e-6)
        assert found.sd == pytest.approx(precision**-0.5, rel=1e-3)


def test_what_is_not_said_of_a_measurement():
    """Two moistures to half a point, two widths to 0.05 mm: √2 of each, a little rounded; lots by 15 %."""
    plain = learned_coefficient(0.0035, 500, -8.0, -4.0)
    said = learned_coefficient(
        0.0035, 500, -8.0, -4.0, mc_change_sd=round(0.5 * math.sqrt(2), 1),
        caliper_sd_mm=round(0.05 * math.sqrt(2), 2), coefficient_cv=0.15,
    )  # fmt: skip
    assert plain == said


@pytest.mark.parametrize(("beyond_sd", "taken"), [(3.9, True), (4.1, False)])
def test_four_standard_deviations_from_any_lot_is_a_mistake(beyond_sd, taken):
    """The liveliest lot looked at is six standard deviations from the species."""
    most = 0.0035 * (1 + 6 * 0.01) * 500 * 4.0
    measured = most + beyond_sd * 0.1
    figures = {"mc_change_sd": 0.0, "caliper_sd_mm": 0.1, "coefficient_cv": 0.01}
    if taken:
        assert learned_coefficient(0.0035, 500, measured, 4.0, **figures).value > 0.0035
    else:
        with pytest.raises(InputError, match="within four standard deviations"):
            learned_coefficient(0.0035, 500, measured, 4.0, **figures)


def one(predicted, measured, **more):
    return Observed(predicted, measured, per_percent_mm=1.0, moisture_sd=0.0, **{"tool_sd_mm": 0.5, **more})


def test_readings_of_a_lot_add_their_precision():
    lot = learn_lot([one(-4, -5), one(-2, -2)], 0.2)
    precision = 1 / 0.2**2 + (16 + 4) / 0.5**2
    assert lot.sd == pytest.approx(precision**-0.5)
    assert lot.factor == pytest.approx((1 / 0.2**2 + (20 + 4) / 0.5**2) / precision)
    assert lot.likely == (lot.factor - lot.sd, lot.factor + lot.sd)
    assert lot.nearly_certain == (lot.factor - 2 * lot.sd, lot.factor + 2 * lot.sd)
    assert lot.narrowed == pytest.approx(1 - lot.sd / 0.2)
    assert (lot.prior_sd, lot.used, lot.outliers) == (0.2, (0, 1), ())
    assert learn_lot([]) == LearnedLot(1.0, 0.15, 0.15, (), ())


def test_a_doubt_of_moisture_counts_for_more_in_a_livelier_lot():
    """Mean of the square of a factor 1 ± p: 1 + p²."""
    lot = learn_lot(
        [Observed(-4, -5, per_percent_mm=1.0, moisture_sd=0.3, tool_sd_mm=0.4, start_sd_mm=0.2)], 0.2
    )
    noise = (1 + 0.2**2) * 0.3**2 + 0.4**2 + 0.2**2
    assert lot.sd == pytest.approx((1 / 0.2**2 + 16 / noise) ** -0.5)
    start = learn_lot([Observed(-4, -5, 1.0, 0.0, 0.4, start_sd_mc=0.3)], 0.2)
    assert start.sd == pytest.approx((1 / 0.2**2 + 16 / ((1 + 0.2**2) * 0.3**2 + 0.4**2)) ** -0.5)


def test_readings_of_one_group_share_their_start_and_others_do_not():
    """Sum of two readings with a shared start: 2·tool² + 4·start²; with starts of their own 2·tool² + 2·start²."""
    for groups, start in ((("a", "a"), 4), (("a", "b"), 2)):
        lot = learn_lot([one(-4, -4, start_sd_mm=0.3, group=group) for group in groups], 0.2)
        assert lot.sd == pytest.approx((1 / 0.2**2 + 8**2 / (2 * 0.25 + start * 0.09)) ** -0.5)


@pytest.mark.parametrize(("measured", "left_out"), [(-6.3, False), (-6.5, True), (-1.7, False), (-1.5, True)])
def test_a_reading_further_than_three_standard_deviations_is_left_out(measured, left_out):
    """Of the lots 0.15 × 4 mm, of the tool 0.5 mm: hypot 0.781, three of them 2.34."""
    lot = learn_lot([one(-4, measured), one(-4, -4)])
    assert lot.outliers == ((0,) if left_out else ())
    assert lot.used == ((1,) if left_out else (0, 1))


def test_a_lot_tells_where_its_doubt_shrinks_by_a_tenth():
    assert LearnedLot(1.0, 0.09, 0.1, (0,), ()).tells == (1 - 0.09 / 0.1 >= 0.1)
    assert LearnedLot(1.0, 0.0899, 0.1, (0,), ()).tells
    assert not LearnedLot(1.0, 0.0901, 0.1, (0,), ()).tells
    assert not LearnedLot(1.0, 0.01, 0.1, (), ()).tells


@pytest.mark.parametrize("slope", [1.8, -1.8])
def test_at_the_change_worth_measuring_the_doubt_narrows_by_three_tenths(slope):
    reading = Observed(0.0, 0.0, slope, moisture_sd=0.3, tool_sd_mm=0.4, start_sd_mc=0.2, start_sd_mm=0.1)
    change = change_worth_measuring(reading)
    moved = Observed(slope * change, slope * change, slope, 0.3, 0.4, 0.2, 0.1)
    assert learn_lot([moved]).narrowed == pytest.approx(0.3)
    assert learn_lot([moved]).factor == pytest.approx(1.0)
    assert change_worth_measuring(Observed(0.0, 0.0, 0.0, 0.3, 0.4)) == math.inf
