"""What later measurements say of a lot, against closed forms and against lots drawn by chance."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.moisture.learned import Observed, change_worth_measuring, learn_lot
from movement_core.sources import RECALLED
from tests.validation.record import compared


def test_one_reading_is_the_conjugate_update_of_the_textbook() -> None:
    """Precision-weighted mean of prior and reading (statistics texts, from memory)."""
    one = Observed(-8.0, -9.2, 2.0, 0.0, 0.5)
    got = learn_lot([one])
    prior, reading = 1 / 0.15**2, (8.0 / 0.5) ** 2
    source, sd = "conjugate normal update, statistics texts", (prior + reading) ** -0.5
    compared("lot's spread after one reading", source, RECALLED, sd, got.sd, "", share=1e-12)
    assert got.factor == pytest.approx((prior + reading * 9.2 / 8.0) / (prior + reading), rel=1e-12)


def test_repeated_readings_count_as_their_mean() -> None:
    """n readings with errors of their own count as one with the error ÷ √n (statistics texts, from memory)."""
    four = learn_lot([Observed(-8.0, m, 2.0, 0.0, 1.0, group=str(m)) for m in (-9.0, -8.6, -9.4, -9.0)])
    mean = learn_lot([Observed(-8.0, -9.0, 2.0, 0.0, 0.5)])
    assert (four.factor, four.sd) == pytest.approx((mean.factor, mean.sd), rel=1e-12)


def test_a_start_that_is_shared_does_not_average_out() -> None:
    """Ten readings against one unsure start tell no more than the start allows."""
    unsure = {"start_sd_mm": 1.0, "group": "top width"}
    ten = learn_lot([Observed(-8.0, -8.0, 2.0, 0.0, 0.1, **unsure)] * 10)  # type: ignore[arg-type]
    bound = (1 / 0.15**2 + (8.0 / 1.0) ** 2) ** -0.5
    assert bound <= ten.sd < bound * 1.01


def test_two_seasons_cancel_a_start_that_nobody_knows() -> None:
    """With an unknown start only the difference of two readings counts: slope of two points."""
    group = {"start_sd_mm": 1e3, "group": "gap"}
    got = learn_lot(
        [Observed(-4.0, 50.0, 2.0, 0.0, 0.1, **group), Observed(4.0, 59.2, 2.0, 0.0, 0.1, **group)]
    )  # type: ignore[arg-type]
    precision = 8.0**2 / (2 * 0.1**2)
    expected = (1 / 0.15**2 + precision * 9.2 / 8.0) / (1 / 0.15**2 + precision)
    assert got.factor == pytest.approx(expected, rel=1e-3)


def test_intervals_hold_the_truth_as_often_as_they_say() -> None:
    """4000 lots drawn from the spread, measured three times with tool, meter and start errors."""
    rng = np.random.default_rng(5)
    per_percent, within, twice, misses = 600 * 0.0032, 0, 0, []
    lots = 4000
    for _ in range(lots):
        lot, start_mc, start_mm = rng.normal(1, 0.15), rng.normal(0, 0.5), rng.normal(0, 0.5)
        readings = []
        for change in (-4.0, 3.0, -3.0):
            true = lot * per_percent * (change + rng.normal(0, 1.0) - start_mc)
            read = true + start_mm + rng.normal(0, 0.3)
            readings.append(
                Observed(per_percent * change, read, per_percent, 1.0, 0.3, 0.5, 0.5, "top width")
            )
        got = learn_lot(readings)
        misses.append((got.factor - lot) / got.sd)
        within += got.likely[0] <= lot <= got.likely[1]
        twice += got.nearly_certain[0] <= lot <= got.nearly_certain[1]
    source = "normal distribution, 1 and 2 sd; lots drawn by chance"
    compared("lots within the likely interval", source, RECALLED, 0.683, within / lots, "", within=0.03)
    compared("lots nearly certainly within", source, RECALLED, 0.954, twice / lots, "", within=0.02)
    assert abs(np.mean(misses)) < 0.05


def test_what_fits_no_lot_is_left_out_and_named() -> None:
    good = Observed(-8.0, -8.4, 2.0, 0.5, 0.3, group="a")
    held = Observed(-8.0, -0.2, 2.0, 0.5, 0.3, group="b")
    assert learn_lot([good, held]).outliers == (1,)
    assert learn_lot([good, held]).factor == learn_lot([good]).factor
    alone = learn_lot([held])
    assert (alone.factor, alone.tells) == (1.0, False)


def test_the_change_worth_measuring_narrows_by_what_it_says() -> None:
    probe = Observed(0.0, 0.0, 1.9, 1.0, 0.3, 0.5, 0.5)
    change = change_worth_measuring(probe)
    seen = learn_lot([Observed(1.9 * change, 1.9 * change, 1.9, 1.0, 0.3, 0.5, 0.5)])
    assert seen.narrowed == pytest.approx(0.3, abs=1e-9)
    assert not learn_lot([Observed(0.5, 0.5, 1.9, 1.0, 0.3, 0.5, 0.5)]).tells


def test_errors_that_cannot_be_are_refused() -> None:
    with pytest.raises(InputError, match="error of the tool"):
        learn_lot([Observed(-8.0, -8.0, 2.0, 0.5, 0.0)])
