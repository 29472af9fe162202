"""Spread: closed form against sampling, shares, seeds."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.moisture.learned import learned_coefficient
from movement_core.moisture.spread import (
    Uncertain,
    between,
    normal_share,
    size_change_spread,
    spread,
    within_factor,
)


def _change(lot, angle, moisture, climate):
    theta = np.radians(angle)
    return 500 * lot * (0.0037 * np.cos(theta) ** 2 + 0.0016 * np.sin(theta) ** 2) * (-4 + moisture + climate)


@pytest.mark.parametrize(("angle", "doubt"), [(0, 0), (0, 15), (30, 10), (45, 8), (85, 12)])
def test_closed_form_against_sampling(angle: float, doubt: float) -> None:
    exact = size_change_spread(
        500,
        0.0016,
        0.0037,
        -4,
        ring_angle_deg=angle,
        ring_angle_sd_deg=doubt,
        mc_change_sd=1.0,
        climate_sd=0.6,
    )
    sampled = spread(
        _change,
        {
            "lot": Uncertain(1, 0.15),
            "angle": Uncertain(angle, doubt),
            "moisture": Uncertain(0, 1),
            "climate": Uncertain(0, 0.6),
        },
        samples=40_000,
    )
    assert float(exact.value) == pytest.approx(float(sampled.value), rel=1e-12)
    assert float(exact.mean) == pytest.approx(float(sampled.mean), rel=0.005)
    assert float(exact.sd) == pytest.approx(float(sampled.sd), rel=0.015)
    for ours, theirs in (
        ("coefficient", "lot"),
        ("moisture", "moisture"),
        ("climate", "climate"),
        ("rings", "angle"),
    ):
        assert float(exact.shares.get(ours, 0)) == pytest.approx(
            float(sampled.shares.get(theirs, 0)), abs=0.03
        )
    for name in ("likely", "nearly_certain"):
        assert np.array(getattr(exact, name)) == pytest.approx(
            np.array(getattr(sampled, name)), abs=0.35 * float(exact.sd)
        )


def test_ranges_hold_what_they_say() -> None:
    """A linear normal case: 68.3 % and 95.4 % of an independent sample lie within."""
    found = spread(lambda a, b: a + 2 * b, {"a": Uncertain(1, 0.5), "b": Uncertain(3, 0.2)})
    rng = np.random.default_rng(1)
    sample = rng.normal(1, 0.5, 200_000) + 2 * rng.normal(3, 0.2, 200_000)
    for (low, high), share in ((found.likely, 0.683), (found.nearly_certain, 0.954)):
        assert np.mean((sample > low) & (sample < high)) == pytest.approx(share, abs=0.012)
    assert float(found.shares["a"]) == pytest.approx(0.25 / 0.41, abs=0.03)
    assert found.ruling_cause == "a"


def test_same_seed_same_answer_and_unvectorised_alike() -> None:
    causes = {"a": Uncertain(2, 0.1), "b": 3.0}
    one, two = (spread(lambda a, b: a * b, causes, samples=256) for _ in range(2))
    assert one.sd == two.sd and one.likely == two.likely
    slow = spread(lambda a, b: a * b if isinstance(a, float) else None, causes, samples=256, vectorised=False)
    assert slow.sd == pytest.approx(one.sd)
    assert spread(lambda a, b: a * b, causes, samples=256, seed=7).sd != one.sd


def test_arrays_out() -> None:
    days = np.arange(5.0)
    found = spread(lambda a: a[:, None] * days, {"a": Uncertain(1, 0.1)})
    assert found.value.shape == (5,) and found.sd == pytest.approx(0.1 * days, rel=0.02)
    assert found.shares["a"][0] == 0 and found.shares["a"][1:] == pytest.approx(np.ones(4), abs=0.03)


def test_nothing_uncertain() -> None:
    found = spread(lambda a: a * 2, {"a": 4.0})
    assert found.value == 8 and found.sd == 0 and found.likely == (8, 8) and found.ruling_cause is None


def test_laws() -> None:
    flat = spread(lambda a: a, {"a": between(2, 4)})
    assert (
        flat.nearly_certain[0] > 2
        and flat.nearly_certain[1] < 4
        and float(flat.sd) == pytest.approx(2 / 12**0.5, rel=0.01)
    )
    factor = spread(lambda a: a, {"a": within_factor(2, 3)})
    assert factor.nearly_certain == pytest.approx((2 / 3, 6), rel=0.03)
    assert normal_share([-1.96, 0, 1, 1.96]) == pytest.approx([0.025, 0.5, 0.8413447, 0.975], abs=1e-4)


@settings(max_examples=40, deadline=None)
@given(
    st.floats(20, 2000), st.floats(0.0008, 0.002), st.floats(0.002, 0.004), st.floats(-8, 8), st.floats(0, 90),
    st.floats(0, 20), st.floats(0, 2), st.floats(0, 0.3),
)  # fmt: skip
def test_closed_form_is_sound(size, radial, tangential, change, angle, doubt, moisture, cv) -> None:
    found = size_change_spread(
        size, radial, tangential, change,
        ring_angle_deg=angle, ring_angle_sd_deg=doubt, mc_change_sd=moisture, coefficient_cv=cv,
    )  # fmt: skip
    assert (
        found.nearly_certain[0] <= found.likely[0] <= found.mean <= found.likely[1] <= found.nearly_certain[1]
    )
    assert sum(found.shares.values()) <= 1 + 1e-9
    double = size_change_spread(
        2 * size, radial, tangential, change,
        ring_angle_deg=angle, ring_angle_sd_deg=doubt, mc_change_sd=moisture, coefficient_cv=cv,
    )  # fmt: skip
    assert float(double.sd) == pytest.approx(2 * float(found.sd), rel=1e-9, abs=1e-12)


def test_bad_input_is_refused() -> None:
    for call in (
        lambda: Uncertain(1, -1),
        lambda: Uncertain(float("nan"), 1),
        lambda: Uncertain(1, 1, "triangle"),
        lambda: Uncertain(-1, 1, "lognormal"),
        lambda: between(3, 2),
        lambda: within_factor(2, 0.5),
        lambda: spread(lambda a: a, {"a": Uncertain(1, 1)}, samples=3),
        lambda: spread(lambda a: np.sqrt(a - 1.0) if np.all(a > 1) else a * np.nan, {"a": Uncertain(1, 1)}),
        lambda: size_change_spread(0, 0.001, 0.002, 3),
        lambda: size_change_spread(100, 0.001, 0.002, 3, ring_angle_deg=120),
    ):
        with pytest.raises(InputError):
            call()


def test_a_lot_is_learned_from_its_own_movement() -> None:
    """Against sampling: lots drawn from the species, measured with error; the learned value is unbiased for
    them.
    """
    lively = learned_coefficient(0.0035, 500, -9.0, -4.0, mc_change_sd=0.2)
    assert 0.0035 < lively.value < 9 / 500 / 4 and lively.sd < 0.15 * 0.0035
    vague = learned_coefficient(0.0035, 500, -9.0, -4.0, mc_change_sd=4.0)
    assert vague.value < lively.value and vague.sd > lively.sd
    rng = np.random.default_rng(4)
    misses = []
    for lot in rng.normal(0.0035, 0.15 * 0.0035, 400):
        seen = lot * 500 * (-4 + rng.normal(0, 0.5)) + rng.normal(0, 0.07)
        learned = learned_coefficient(0.0035, 500, seen, -4, mc_change_sd=0.5)
        misses.append((learned.value - lot) / learned.sd)
    assert abs(np.mean(misses)) < 0.15 and np.std(misses) == pytest.approx(1, abs=0.15)
    with pytest.raises(InputError, match="sign"):
        learned_coefficient(0.0035, 500, 9.0, -4.0, mc_change_sd=0.3)
