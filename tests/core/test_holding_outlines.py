"""Outlines by hand: cut, measured, sampled and integrated; and the sizes that plates, bearings and beams allow."""

from __future__ import annotations

import math

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.holding import basis
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.free_surface import free_height
from movement_core.holding.model import Anchor, Beam, Bearing, Elastic, LoadCase, Plate
from movement_core.holding.plate import default_terms
from movement_core.holding.plate_energy import bending_stiffness, plate_load, strips
from movement_core.holding.polygon import (
    clip_to_rectangle,
    convex_hull,
    distance_to_edge,
    inside_polygon,
    polygon_area,
)

OAK = Elastic(13000.0, 1000.0, 900.0, 0.4)
PLATE = Plate(1200.0, 600.0, 20.0, OAK, 700.0)
TRIANGLE = np.array([(0.0, 0.0), (40.0, 0.0), (0.0, 30.0)])
# a U lying on its side: a notch 100 mm across, open toward +along
TROUGH = ((-300.0, -150.0), (300.0, -150.0), (300.0, -50.0), (-100.0, -50.0), (-100.0, 50.0), (300.0, 50.0),
          (300.0, 150.0), (-300.0, 150.0))  # fmt: skip


def points(*pairs):
    return np.array(pairs, dtype=float)


# Polygons


def test_a_distance_is_to_the_edge_and_not_to_the_line_it_lies_on():
    """By hand: beside a side, beyond its end, inside, at a corner, on an edge."""
    found = distance_to_edge(points((20, -7), (43, -4), (-5, 40), (2, 3), (0, 30), (20, 15)), TRIANGLE)
    assert found == pytest.approx([7, 5, math.hypot(5, 10), 2, 0, 0])
    square = points((0, 0), (10, 0), (10, 0), (10, 10), (0, 10))  # a corner given twice
    assert distance_to_edge(points((12, 5), (13, -4)), square) == pytest.approx([2, 5])


def test_inside_is_an_odd_number_of_crossings():
    assert inside_polygon(points((1, 1), (30, 20), (-1, 1), (39, 0.1), (41, 0.1)), TRIANGLE).tolist() == [
        True, False, False, True, False,
    ]  # fmt: skip
    trough = np.array(TROUGH)
    assert inside_polygon(points((0, 0), (-200, 0), (0, 100), (0, -100), (301, 100)), trough).tolist() == [
        False, True, True, True, False,
    ]  # fmt: skip


def test_what_lies_beyond_the_rectangle_is_cut_off_at_its_edge():
    half = np.array([10.0, 5.0])
    line = clip_to_rectangle(points((-14, 0), (6, 0)), half)
    assert line.tolist() == [[-10, 0], [6, 0]]
    assert clip_to_rectangle(points((-4, -5.5), (-4, 7)), half).tolist() == [[-4, -5], [-4, 5]]
    assert clip_to_rectangle(points((11, 0), (20, 3)), half).shape == (0, 2)
    slant = clip_to_rectangle(points((0, 0), (20, 10)), half)
    assert slant.tolist() == [[0, 0], [10, 5]]
    cut = clip_to_rectangle(points((0, 0), (10.5, 0), (10.5, 4), (0, 4)), half)
    assert polygon_area(cut) == pytest.approx(40)
    assert cut[:, 0].max() == 10
    corner = clip_to_rectangle(points((5, 0), (15, 0), (15, 10), (5, 10)), half)
    assert polygon_area(corner) == pytest.approx(25)
    assert clip_to_rectangle(points((-10, -5), (10, -5), (10, 5), (-10, 5)), half).shape == (4, 2)
    assert clip_to_rectangle(points((11, 6), (12, 6), (12, 7)), half).shape == (0, 2)


def test_a_hull_leaves_out_what_hardly_stands_out():
    ring = points((0, 0), (100, 0), (100, 50), (0, 50), (50, 25), (50, -0.1), (101, 25))
    hull = convex_hull(ring)
    assert sorted(map(tuple, hull.tolist())) == [(0, 0), (0, 50), (100, 0), (100, 50), (101, 25)]
    assert polygon_area(hull) == pytest.approx(5000 + 25)
    x, y = hull.T
    assert np.sum(x * np.roll(y, -1) - y * np.roll(x, -1)) > 0  # from the first axis to the second
    flat = convex_hull(points((0, 0), (100, 0), (100, 50), (0, 50), (100.1, 25)))
    assert len(flat) == 4
    assert convex_hull(points((0, 0), (1, 1), (1, 1))).tolist() == [[0, 0], [1, 1]]


# Plates


def test_a_plate_holds_its_edge_and_nothing_beyond():
    assert PLATE.holds([(600, 300), (-600, -300), (600.01, 0), (0, -300.01)]).tolist() == [1, 1, 0, 0]
    trough = Plate(600, 300, 20, OAK, 700, TROUGH)
    assert trough.holds([(300, 100), (0, 50), (0, 49), (-100, 0), (-101, 0)]).tolist() == [1, 1, 0, 1, 1]
    assert trough.area_mm2 == pytest.approx(600 * 300 - 400 * 100)
    assert PLATE.area_mm2 == 720000
    assert PLATE.weight_n == pytest.approx(1.2 * 0.6 * 0.02 * 700 * 9.80665)
    assert Plate(600, 300, 20, OAK).weight_n == 0


def test_bending_stiffness_of_an_orthotropic_plate_by_hand():
    """Timoshenko and Woinowsky-Krieger ch. 11 (recalled): E t³/12(1 − ν₁ν₂), ν₁ times the one across, G t³/12."""
    along, across, coupling, twist = PLATE.bending
    back = 0.4 * 1000 / 13000
    assert along == pytest.approx(13000 * 8000 / 12 / (1 - 0.4 * back))
    assert across == pytest.approx(1000 * 8000 / 12 / (1 - 0.4 * back))
    assert coupling == pytest.approx(0.4 * across)
    assert twist == pytest.approx(900 * 8000 / 12)


@pytest.mark.parametrize(
    ("make", "where", "allowed"),
    [
        (lambda: Plate(1200, 600, 0, OAK), "plate: thickness_mm is 0", "a finite number above 0"),
        (lambda: Plate(-1, 600, 20, OAK), "length_mm is -1", "a finite number above 0"),
        (lambda: Plate(1200, math.nan, 20, OAK), "width_mm is nan", "a finite number above 0"),
        (lambda: Plate(1200, 600, 20, OAK, -1), "density_kg_m3 is -1", "a finite number, 0 or more"),
        (lambda: Plate(1200, 600, 20, OAK, math.inf), "density_kg_m3 is inf", "a finite number, 0 or more"),
        (lambda: Elastic(13000, 0, 900), "e_across_mpa is 0", "a finite number above 0"),
        (lambda: Elastic(1000, 1000, 900, 1.0), "poisson 1 gives", "below 1.00 for these moduli"),
        (lambda: Elastic(4000, 1000, 900, 2.0), "poisson 2 gives", "below 2.00 for these moduli"),
        (lambda: Bearing(((0, 0), (1, 1)), stiffness_n_mm2=0), "stiffness_n_mm2 is 0", "above 0"),
        (lambda: Bearing(((0, 0), (1, 1)), math.inf), "height_mm is inf", "Allowed: a finite number"),
        (lambda: Bearing(((0, 0),)), "outline of (1, 2)", "2 or more finite"),
        (lambda: Bearing(((0, 0), (1, math.nan))), "outline of (2, 2)", "2 or more finite"),
        (lambda: Anchor(0, 0, 0), "stiffness_n_mm is 0", "above 0"),
        (lambda: Anchor(0, 0, limit_n=0), "limit_n is 0", "above 0"),
        (lambda: Anchor(0, 0, slack_mm=-0.1), "slack_mm is -0.1", "0 or more"),
        (lambda: Beam((0, 0), (0, 0), 1e6), "one point", ""),
        (lambda: Beam((0, 0), (0, 9), 0), "bending_stiffness_n_mm2 is 0", "above 0"),
        (lambda: Beam((0, 0), (0, 9), 1, joint_stiffness_n_mm=0), "joint_stiffness_n_mm is 0", "above 0"),
        (lambda: Beam((0, 0), (0, 9), 1, bearing_n_mm2=0), "bearing_n_mm2 is 0", "above 0"),
        (lambda: Beam((0, 0), (0, 9), 1, play_mm=-1), "play_mm is -1", "0 or more"),
        (lambda: Beam((0, 0), (0, 9), 1, (9.1,)), "screws at (9.1,)", "0 to 9 mm from its start"),
        (lambda: Beam((0, 0), (0, 9), 1, (-0.1,)), "screws at (-0.1,)", "0 to 9 mm from its start"),
        (lambda: Plate(10, 10, 1, OAK, 0, ((0, 0), (1, 1))), "no polygon", "3 or more"),
        (lambda: Plate(10, 10, 1, OAK, 0, ((0, 0), (1, 1), (2, 2))), "no polygon", "3 or more"),
        (lambda: Plate(10, 8, 1, OAK, 0, ((0, 0), (5.1, 0), (0, 4))), "leaves", "along ±5 mm, across ±4 mm"),
        (lambda: Plate(10, 8, 1, OAK, 0, ((0, 0), (5, 0), (0, 4.1))), "leaves", "along ±5 mm, across ±4 mm"),
    ],
)
def test_sizes_that_cannot_be_are_refused_with_what_can(make, where, allowed):
    with pytest.raises(InputError) as caught:
        make()
    assert where in str(caught.value)
    assert allowed in str(caught.value)
    if allowed.endswith("a finite number"):
        assert "above" not in str(caught.value) and "or more" not in str(caught.value)


def test_sizes_at_their_ends_are_taken():
    assert Elastic(4000, 1000, 900, 1.99).poisson == 1.99
    assert Anchor(-5, 5, 0.5, 0.0, -3.0, 0.5).slack_mm == 0
    assert Beam((0, 0), (3, 4), 0.5, (0, 5)).length_mm == 5
    assert Plate(10, 8, 1, OAK, 0, ((0, 0), (5, 0), (0, 4))).area_mm2 == 10


# Integrals


PRONGS = Plate(300, 600, 20, OAK, 700, tuple((x, s) for s, x in reversed(TROUGH)))  # the same U upright


@pytest.mark.parametrize("plate", [Plate(600, 300, 20, OAK, 700, TROUGH), PRONGS, PLATE])
def test_strips_cover_the_outline_once(plate):
    lines = strips(plate, 9)
    lengths = lines.high_mm - lines.low_mm
    assert (lengths > 0).all()
    assert (lines.weight_mm * lengths).sum() == pytest.approx(plate.area_mm2)
    middle = (lines.low_mm + lines.high_mm) / 2
    moments = [(lines.weight_mm * lengths * place).sum() for place in (middle, lines.across_mm)]
    if plate.outline_mm:  # the notch of 400 × 100 about 100 mm from the middle is missing
        assert sorted(moments) == pytest.approx([-400 * 100 * 100, 0], abs=1e-3)
    else:
        assert moments == pytest.approx([0, 0], abs=1e-3)


def test_strips_stop_at_glue_lines():
    lines = strips(PLATE, 4, (-100.0, 100.0, 900.0))
    for low, high in ((-300, -100), (-100, 100), (100, 300)):
        inside = (lines.across_mm > low) & (lines.across_mm < high)
        assert lines.weight_mm[inside].sum() == pytest.approx(high - low)


def test_an_outlined_rectangle_bends_as_the_rectangle_whatever_the_terms():
    corners = ((-600.0, -300.0), (600.0, -300.0), (600.0, 300.0), (-600.0, 300.0))
    outlined = Plate(1200.0, 600.0, 20.0, OAK, 700.0, corners)
    for terms in ((4, 14), (14, 4)):
        plain, given = bending_stiffness(PLATE, terms), bending_stiffness(outlined, terms)
        np.testing.assert_allclose(given, plain, atol=1e-9 * np.abs(plain).max())


def test_the_energy_of_simple_bends_by_hand():
    """½cᵀKc for w = P₂ along, P₂ across, P₁·P₁: curvatures 12/L², 12/W², twist 4/LW (P₂″ = 3·(2/L)²)."""
    stiffness = bending_stiffness(PLATE, (4, 4))
    along, across, coupling, twist = PLATE.bending
    area, k_along, k_across, k_twist = 720000.0, 12 / 1200.0**2, 12 / 600.0**2, 4 / (1200.0 * 600.0)
    assert stiffness[8, 8] == pytest.approx(along * k_along**2 * area)
    assert stiffness[2, 2] == pytest.approx(across * k_across**2 * area)
    assert stiffness[2, 8] == stiffness[8, 2] == pytest.approx(coupling * k_along * k_across * area)
    assert stiffness[5, 5] == pytest.approx(4 * twist * k_twist**2 * area)
    assert np.abs(stiffness[[0, 1, 4]]).max() < 1e-9  # rigid motions cost nothing


def test_weight_and_bow_load_the_plate():
    """Weight acts on the mean height alone; a bow κ works on w = P₂ along: −D κ·12/L²·area, D₁₂ for P₂ across."""
    case = LoadCase("flat", FreeCurvature.even(600.0, 0.0))
    load = plate_load(PLATE, (4, 4), case, True)
    assert load[0] == pytest.approx(-PLATE.weight_n)
    assert np.abs(load[1:]).max() < 1e-9
    assert not plate_load(PLATE, (4, 4), case, False).any()
    bowed = FreeCurvature((-300.0, 0.0, 300.0), (0.0, 0.0), (), (1e-5, 1e-5))
    for carried in (True, False):
        load = plate_load(PLATE, (4, 4), LoadCase("bowed", bowed), carried)
        along, _, coupling, _ = PLATE.bending
        assert load[8] == pytest.approx(-along * 1e-5 * 12 / 1200.0**2 * 720000)
        assert load[2] == pytest.approx(-coupling * 1e-5 * 12 / 600.0**2 * 720000)
        assert load[0] == pytest.approx(-PLATE.weight_n if carried else 0, abs=1e-9)
    one_side = FreeCurvature((-300.0, 0.0, 300.0), (0.0, 0.0), (), (1e-5, 0.0))
    half = plate_load(PLATE, (4, 4), LoadCase("one", one_side), False)
    assert half[8] == pytest.approx(load[8] / 2)
    round_top = Plate(600, 300, 20, OAK, 700, TROUGH)
    notched = plate_load(round_top, (3, 3), case, True)
    assert notched[0] == pytest.approx(-round_top.weight_n)
    # first moment of the trough: −4 000 000 mm³ over an area of 140 000 mm²
    assert notched[3] == pytest.approx(-round_top.weight_n * -4e6 / 140000 / 300)


def test_legendre_shapes_and_their_slopes_by_hand():
    """P₀ 1, P₁ u, P₂ (3u² − 1)/2 with u = 2x/span; slopes by 2/span a time."""
    x = np.array([-5.0, 0.0, 2.5])
    u = x / 5
    np.testing.assert_allclose(basis.values(x, 10.0, 3).T, [u**0, u, (3 * u**2 - 1) / 2])
    np.testing.assert_allclose(basis.values(x, 10.0, 3, 1).T, [0 * u, 0.2 + 0 * u, 0.2 * 3 * u])
    np.testing.assert_allclose(basis.values(x, 10.0, 3, 2).T, [0 * u, 0 * u, 0.12 + 0 * u])
    np.testing.assert_allclose(
        basis.overlap(10.0, 4, 0, 0), np.diag(10.0 / (2 * np.arange(4) + 1)), atol=1e-12
    )
    places, weights = basis.gauss(2.0, 6.0, 3)
    assert (weights.sum(), weights @ places) == pytest.approx((4, 16))


def test_terms_grow_with_how_slender_the_panel_is():
    counts = [default_terms(Plate(length, 600, 20, OAK)) for length in (200, 600, 1200, 2400, 9000)]
    assert [along for along, _ in counts] == sorted(along for along, _ in counts)
    assert [across for _, across in counts] == sorted((across for _, across in counts), reverse=True)
    assert all(16 <= along <= 32 and 20 <= across <= 26 for along, across in counts)
    assert any(16 < along < 32 for along, _ in counts) and any(20 < across < 26 for _, across in counts)
    assert counts[0][0] == 16 and counts[-1] == (32, 20)


def test_a_free_surface_goes_from_end_to_end():
    near, far = FreeCurvature.even(600, 1e-4), FreeCurvature((-300, 300), (3e-4,), twist_per_mm=1e-5)
    case = LoadCase("warped", near, far)
    places = np.array([(-600, 0), (600, 0), (0, 0), (300, 150)], dtype=float)
    crown = 600**2 / 8
    heights = free_height(PLATE, case, places)
    at_150 = (300**2 - 150**2) / 2
    twisted = 3e-4 * at_150 + 1e-5 * 300 * 150
    assert heights == pytest.approx(
        [1e-4 * crown, 3e-4 * crown, 2e-4 * crown, 0.25 * 1e-4 * at_150 + 0.75 * twisted]
    )
    alone = free_height(
        PLATE, LoadCase("one", FreeCurvature((-300, 300), (0.0,), twist_per_mm=1e-5)), places[3]
    )
    assert alone == pytest.approx([1e-5 * 300 * 150])
