"""Meters, sticks and spreads of the moisture room worked out by hand."""

from __future__ import annotations

import math

import numpy as np
import pytest

from movement_core.air.emc import equilibrium_moisture
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.moisture.meter import (
    METER_SD,
    MoistureReading,
    air_moisture,
    meter_moisture,
    stick_moisture,
)
from movement_core.moisture.spread import (
    LIKELY,
    NEARLY_CERTAIN,
    Uncertain,
    _standard_normal,
    between,
    normal_share,
    size_change_spread,
    spread,
    within_factor,
)
from movement_core.moisture.year_spread import year_moisture_spread

STEADY = Year("invented, steady", (20,) * 12, (50,) * 12, "invented for a test")


def test_what_a_pin_meter_is_not_told_widens_its_doubt():
    """Variances add: 1² of the meter, 0.5² of an unknown temperature, 2² of an unknown species."""
    assert meter_moisture(12).sd == pytest.approx(math.sqrt(1 + 0.25 + 4))
    assert meter_moisture(12, wood_temperature_c=20).sd == pytest.approx(math.sqrt(1 + 4))
    assert meter_moisture(12, species_correction=0).sd == pytest.approx(math.sqrt(1 + 0.25))
    several = meter_moisture([10, 12, 14], wood_temperature_c=20, species_correction=0)
    assert several.sd == pytest.approx(math.sqrt(1 + 4 / 3))  # and a third of the readings' own variance
    assert several.steps[0] == "3 readings, mean 12.0 %"
    assert meter_moisture(12).steps[0] == "1 reading, 12.0 %"


def test_pins_read_half_a_point_low_for_each_ten_degrees_fahrenheit():
    """0.5 % for 5.6 °C below 70 °F (21.1 °C), as the published columns have it."""
    cold = meter_moisture(10, wood_temperature_c=21.1 - 11.2, species_correction=1.5)
    assert cold.mc == pytest.approx(10 + 1.0 + 1.5)
    assert cold.steps[1:] == ("+1.0 for 10 °C", "+1.5 for the species")
    warm = meter_moisture(10, wood_temperature_c=30, calibration_temperature_c=24.4, species_correction=0)
    assert warm.mc == pytest.approx(10 - 0.5)


def test_a_pad_meter_feels_density_and_no_temperature():
    told = meter_moisture(10, kind="pad", set_gravity=0.5, specific_gravity=0.625)
    assert (told.mc, told.sd) == pytest.approx((8.0, 1.0))
    untold = meter_moisture(10, kind="pad")
    assert (untold.mc, untold.sd) == pytest.approx((10.0, math.sqrt(5)))
    assert len(untold.notes) == 1
    both = meter_moisture(
        10, kind="pad", set_gravity=0.5, specific_gravity=0.625, species_correction=-1, wood_temperature_c=0
    )
    assert both.mc == pytest.approx(7.0)
    for one in ({"set_gravity": 0.5}, {"specific_gravity": 0.5}):
        with pytest.raises(InputError, match="only one of the two densities"):
            meter_moisture(10, kind="pad", **one)
    for wrong in (0.09, 1.31):
        with pytest.raises(InputError, match=r"0\.1 to 1\.3"):
            meter_moisture(10, kind="pad", set_gravity=0.5, specific_gravity=wrong)


@pytest.mark.parametrize(("reading", "trusted"), [(5.9, False), (6.0, True), (25.0, True), (25.1, False)])
def test_a_meter_is_trusted_from_six_to_twenty_five_percent(reading, trusted):
    found = meter_moisture(reading, wood_temperature_c=21.1, species_correction=0)
    assert any("6 to 25 %" in note for note in found.notes) != trusted


def test_corrections_may_leave_nothing_but_not_less():
    assert meter_moisture(3, wood_temperature_c=21.1, species_correction=-3).mc == 0
    with pytest.raises(InputError, match="a moisture of 0 % or more"):
        meter_moisture(3, wood_temperature_c=21.1, species_correction=-3.1)


def test_ranges_of_a_reading_end_at_dry_wood():
    wet, dry = MoistureReading(10.0, 1.5), MoistureReading(1.0, 1.5)
    assert (wet.likely, wet.nearly_certain) == ((8.5, 11.5), (7.0, 13.0))
    assert (dry.likely, dry.nearly_certain) == ((0.0, 2.5), (0.0, 4.0))


def test_wood_that_lay_in_air_is_known_to_a_point():
    found = air_moisture(20, 65)
    assert found.mc == pytest.approx(float(equilibrium_moisture(20, 65)))
    assert found.likely == (found.mc - 1, found.mc + 1)
    assert found.steps == ("20 °C and 65 % relative humidity",)


def test_a_stick_is_as_good_as_its_calipers_and_its_own_wood():
    """Both widths to 0.05 mm, and 15 % of the change for the board (Wood Handbook ch. 4, recalled)."""
    found = stick_moisture(306.0, 300.0, 8.0, 0.004)
    assert found.mc == pytest.approx(8 + 0.02 / 0.004)
    calipers = math.sqrt(2) * 0.05 / 300 / 0.004
    assert found.sd == pytest.approx(math.hypot(calipers, 5 * 0.15))
    finer = stick_moisture(306.0, 300.0, 8.0, 0.004, caliper_sd_mm=0.01, coefficient_cv=0.0)
    assert finer.sd == pytest.approx(calipers / 5)
    assert found.steps == ("+6.00 mm is +5.0 %",)
    assert (stick_moisture(100.0, 100.0, 8.0, 0.004).notes, len(stick_moisture(99, 99, 8, 0.004).notes)) == (
        (),
        1,
    )
    for then in (0.0, 30.0):
        assert stick_moisture(300.0, 300.0, then, 0.004).mc == then
    with pytest.raises(InputError, match="stick says -0"):
        stick_moisture(299.9, 300.0, 0.0, 0.004)
    with pytest.raises(InputError, match=r"stick says 30\.1"):
        stick_moisture(300.12, 300.0, 30.0, 0.004)


def test_the_share_of_the_normal_law():
    """Against math.erf; the approximation used promises 1e-7."""
    for z in np.linspace(-4, 4, 33):
        assert float(normal_share(z)) == pytest.approx(0.5 * (1 + math.erf(z / math.sqrt(2))), abs=2e-7)
    for ends, z in ((LIKELY, 1.0), (NEARLY_CERTAIN, 2.0)):
        assert ends == pytest.approx([0.5 * (1 + math.erf(s * z / math.sqrt(2))) for s in (-1, 1)], abs=1e-12)


def test_stratified_deviates_follow_the_normal_law():
    drawn = np.sort(_standard_normal(1000, np.random.default_rng(1)))
    assert drawn.mean() == pytest.approx(0, abs=0.005)
    assert drawn.std() == pytest.approx(1, abs=0.01)
    shares = 0.5 * (1 + np.vectorize(math.erf)(drawn / math.sqrt(2)))
    assert (np.floor(shares * 1000 + 1e-3 * (0.5 - shares)) == np.arange(1000)).mean() > 0.99  # one a slice


def test_laws_by_their_ends_and_middles():
    deviates = np.array([-40.0, 0.0, 40.0])
    assert between(2, 5).from_standard(deviates) == pytest.approx([2, 3.5, 5], abs=1e-6)
    assert within_factor(2, 3).from_standard(np.array([-2.0, 0.0, 2.0])) == pytest.approx([2 / 3, 2, 6])
    assert Uncertain(5, 2).from_standard(np.array([-1.0, 0.0, 2.0])).tolist() == [3, 5, 9]
    assert (between(3, 3).sd, within_factor(2, 1).sd) == (0, 0)
    with pytest.raises(InputError, match=r"factor 0\.99"):
        within_factor(2, 0.99)
    with pytest.raises(InputError, match="the lower value first"):
        between(3, 2.99)
    for wrong in (0.0, -1.0):
        with pytest.raises(InputError, match="cannot vary by a factor"):
            Uncertain(wrong, 1.0, "lognormal")
    assert Uncertain(1e-9, 1.0, "lognormal").value == 1e-9


def test_samples_are_sixty_four_or_more_and_told():
    causes = {"a": Uncertain(1, 0.1)}
    assert spread(lambda a: a, causes, samples=64).method == "128 samples, seed 20"
    with pytest.raises(InputError, match="64 or more"):
        spread(lambda a: a, causes, samples=63)
    assert spread(lambda a: a, causes).method == "8192 samples, seed 20"


def test_shares_are_those_of_the_variances():
    """a + 2b: 0.25 and 0.16 of 0.41; what does not vary has no share, and what is constant all certain."""
    found = spread(lambda a, b, c: a + 2 * b + c, {"a": Uncertain(1, 0.5), "b": Uncertain(3, 0.2), "c": 7})
    assert found.sd == pytest.approx(math.sqrt(0.41), rel=0.01)
    assert found.mean == pytest.approx(14, abs=0.01)
    assert set(found.shares) == {"a", "b"}
    assert float(found.shares["b"]) == pytest.approx(0.16 / 0.41, abs=0.04)
    assert found.likely == pytest.approx((14 - 0.64, 14 + 0.64), abs=0.03)
    assert found.nearly_certain == pytest.approx((14 - 1.28, 14 + 1.28), abs=0.08)
    for seed in range(5):
        alone = spread(lambda a: a, {"a": Uncertain(1, 0.5)}, samples=64, seed=seed)
        assert 0.7 < float(alone.shares["a"]) <= 1
    known = spread(lambda a, b: a * b, {"a": Uncertain(4, 0.0), "b": 2})
    assert (known.method, known.likely, known.nearly_certain) == ("nothing varies", (8, 8), (8, 8))
    still = spread(lambda a: 0 * a + 3, {"a": Uncertain(1, 0.5)})
    assert (still.sd, still.shares["a"], still.ruling_cause) == (0, 0, None)


@pytest.mark.parametrize(
    ("angle", "doubt"), [(0.0, 0.0), (0.0, 12.0), (40.0, 0.0), (40.0, 12.0), (90.0, 30.0)]
)
def test_the_closed_form_is_the_variance_of_a_product(angle, doubt):
    """E of products of independent factors; the angle's by Gauss and Hermite quadrature."""
    nodes, weights = np.polynomial.hermite_e.hermegauss(60)
    weights = weights / weights.sum()
    theta = np.radians(angle + doubt * nodes)
    coefficient = 0.0037 * np.cos(theta) ** 2 + 0.0016 * np.sin(theta) ** 2
    mean, square = weights @ coefficient, weights @ coefficient**2
    found = size_change_spread(
        500,
        0.0016,
        0.0037,
        -4,
        ring_angle_deg=angle,
        ring_angle_sd_deg=doubt,
        mc_change_sd=0.8,
        climate_sd=0.6,
    )
    moisture = 0.8**2 + 0.6**2
    variance = 500**2 * ((1 + 0.15**2) * square * (16 + moisture) - (mean * -4) ** 2)
    assert float(found.mean) == pytest.approx(500 * mean * -4)
    assert float(found.sd) == pytest.approx(math.sqrt(variance))
    middle = 0.0037 * np.cos(np.radians(angle)) ** 2 + 0.0016 * np.sin(np.radians(angle)) ** 2
    assert float(found.value) == pytest.approx(500 * middle * -4)
    alone = {
        "coefficient": (0.15 * mean * 4) ** 2,
        "moisture": (0.8 * mean) ** 2,
        "climate": (0.6 * mean) ** 2,
        "rings": (square - mean**2) * 16,
    }
    for name, part in alone.items():
        assert float(found.shares.get(name, 0.0)) == pytest.approx(500**2 * part / variance, abs=1e-9)
    assert found.likely == (found.mean - found.sd, found.mean + found.sd)
    assert found.nearly_certain == (found.mean - 2 * found.sd, found.mean + 2 * found.sd)


def test_a_board_of_which_nothing_is_said_is_flat_sawn_and_read_by_a_meter():
    plain = size_change_spread(500, 0.0016, 0.0037, -4)
    said = size_change_spread(
        500, 0.0016, 0.0037, -4, mc_change_sd=METER_SD, climate_sd=0, ring_angle_deg=0, ring_angle_sd_deg=0
    )
    assert (plain.value, plain.sd, plain.shares) == (said.value, said.sd, said.shares)
    assert set(plain.shares) == {"coefficient", "moisture"}
    sure = size_change_spread(500, 0.0016, 0.0037, -4, mc_change_sd=0, coefficient_cv=0)
    assert (sure.sd, sure.shares, float(sure.value)) == (0, {}, pytest.approx(500 * 0.0037 * -4))


def test_a_steady_room_is_doubted_by_its_climate_and_the_wood_alone():
    """One point of each: √2 together, half the variance each, whatever the diffusivity."""
    found = year_moisture_spread(STEADY, 20, 0.65)
    assert found.method == "1024 samples, seed 20"
    np.testing.assert_allclose(found.sd, math.sqrt(2), rtol=0.03)
    assert found.shares["climate"] == pytest.approx(np.full(365, 0.5), abs=0.1)
    assert found.shares["sorption"] == pytest.approx(np.full(365, 0.5), abs=0.1)
    assert np.abs(found.shares["diffusivity"]).max() < 1e-9
    for name in ("climate_sd_mc", "sorption_sd_mc"):
        year_moisture_spread(STEADY, 20, 0.65, samples=64, **{name: 10.0})
        for wrong in (-0.1, 10.1):
            with pytest.raises(InputError, match="0 to 10"):
                year_moisture_spread(STEADY, 20, 0.65, samples=64, **{name: wrong})
