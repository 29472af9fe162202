"""What the holding of tops refuses, and the corners of its small helpers."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.holding.elastic import board_elastic, elastic_ratios, typical_ratios
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.polygon import polygon_area
from movement_core.holding.stiffeners import bar, bar_stress_mpa
from movement_core.holding.travel import WidthStrain

OAK = elastic_ratios("Oak, red")
EDGES = {
    "lines_mm": (-100.0, 0.0, 100.0),
    "driest": (-0.02, -0.01),
    "today": (0.0, 0.0),
    "wettest": (0.0, 0.0),
}


@pytest.mark.parametrize("angle", [-0.1, 90.1, math.nan])
def test_an_angle_between_rings_and_face_is_at_most_square(angle):
    with pytest.raises(InputError, match="ring angle"):
        board_elastic(OAK, 12500, angle)


@pytest.mark.parametrize("moe", [0.0, -1.0, math.inf, math.nan])
def test_a_modulus_is_above_nothing(moe):
    with pytest.raises(InputError, match="modulus"):
        board_elastic(OAK, moe)


@pytest.mark.parametrize(
    ("gone", "angle", "named"),
    [
        (("mu_lt", "mu_tl"), 0, "mu_lt"),
        (("mu_lr", "mu_rl"), 90, "mu_lr"),
        (("mu_rt", "mu_tr"), 45, "mu_rt"),
        (("et",), 0, "et"),
        (("er",), 90, "er"),
    ],
)
def test_an_angle_asks_only_for_the_figures_it_needs(gone, angle, named):
    whole = typical_ratios("hardwood")
    without = replace(whole, **dict.fromkeys(gone))
    with pytest.raises(InputError, match=f"no published .*{named}"):
        board_elastic(without, 12500, angle)
    if angle != 45:  # cut the other way it is not needed
        other = board_elastic(without, 12500, 90 - angle)
        assert other == board_elastic(whole, 12500, 90 - angle)


def test_one_published_poisson_ratio_is_taken_alone():
    """Reciprocity: ν_LT/E_L = ν_TL/E_T, so ν_TL alone gives ν_LT = ν_TL·E_L/E_T."""
    whole = typical_ratios("hardwood")
    assert board_elastic(replace(whole, mu_tl=None), 12500).poisson == pytest.approx(whole.mu_lt)
    assert board_elastic(replace(whole, mu_lt=None), 12500).poisson == pytest.approx(whole.mu_tl / whole.et)


@pytest.mark.parametrize("place", range(3))
@pytest.mark.parametrize("bad", [0.0, -5.0])
def test_a_bar_without_a_size_is_refused(place, bad):
    sizes = [40.0, 25.0, 12000.0]
    sizes[place] = bad
    with pytest.raises(InputError, match="above 0"):
        bar((0.0, 0.0), (0.0, 400.0), *sizes)
    if place < 2:
        with pytest.raises(InputError, match="above 0"):
            bar_stress_mpa(None, *sizes[:2])


@pytest.mark.parametrize(
    ("wrong", "says"),
    [
        ({"driest": (-0.02,)}, "driest"),
        ({"today": (0.0, math.nan)}, "today"),
        ({"lines_mm": (-100.0, 50.0, 50.0)}, "do not rise"),
        ({"lines_mm": (0.0,), "driest": (), "today": (), "wettest": ()}, "do not rise"),
        ({"driest": (0.01, -0.01)}, "driest is larger"),
        ({"spread": 1.0}, "spread 1.0"),
        ({"spread": -0.1}, "spread -0.1"),
    ],
)
def test_a_strain_over_the_width_fits_its_lines(wrong, says):
    assert WidthStrain(**EDGES).width_mm == 200.0
    with pytest.raises(InputError, match=says):
        WidthStrain(**{**EDGES, **wrong})


@pytest.mark.parametrize(("point", "fixed"), [(100.1, 0.0), (-100.1, 0.0), (0.0, 100.1), (0.0, -100.1)])
def test_nothing_travels_beyond_the_edges(point, fixed):
    strain = WidthStrain(**EDGES)
    assert strain.moved("driest", 100.0, -100.0) == pytest.approx(100 * -0.02 + 100 * -0.01)
    with pytest.raises(InputError, match="-100 to 100 mm"):
        strain.moved("driest", point, fixed)


@pytest.mark.parametrize(
    ("given", "says"),
    [
        ({"lines_mm": (0.0,), "crown_per_mm": ()}, "do not rise"),
        ({"lines_mm": (0.0, 10.0, 10.0), "crown_per_mm": (0.0, 0.0)}, "do not rise"),
        ({"lines_mm": (0.0, 10.0), "crown_per_mm": (math.inf,)}, "crown_per_mm"),
        ({"lines_mm": (0.0, 10.0), "crown_per_mm": (0.0, 0.0)}, "2 values in crown_per_mm for 1 boards"),
        ({"lines_mm": (0.0, 10.0), "crown_per_mm": (0.0,), "kinks_rad": (0.1,)}, "1 values in kinks_rad"),
        ({"lines_mm": (0.0, 10.0), "crown_per_mm": (0.0,), "twist_per_mm": math.nan}, "twist_per_mm"),
    ],
)
def test_a_free_curvature_fits_its_boards(given, says):
    with pytest.raises(InputError, match=says):
        FreeCurvature(**given)


def test_a_profile_is_cut_into_one_stretch_or_more():
    with pytest.raises(InputError, match="0 pieces"):
        FreeCurvature.from_profile(np.zeros((9, 2)), (0.0, 100.0), pieces=0)


def test_two_points_hold_no_area():
    assert polygon_area(np.array([(0.0, 0.0), (3.0, 4.0)])) == 0.0
    assert polygon_area(np.array([(0.0, 0.0), (0.0, 4.0), (3.0, 0.0)])) == 6.0
