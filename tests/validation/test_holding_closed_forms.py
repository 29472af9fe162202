"""The held plate against closed forms of beams and plates; the source is named beside each case.

Timoshenko and Woinowsky-Krieger, *Theory of Plates and Shells* (2nd ed., 1959) is cited from memory; the
beam formulas are in any handbook of strength of materials.
"""

from __future__ import annotations

import math

import numpy as np
import pytest

from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.model import Anchor, Beam, Bearing, Elastic, LoadCase, Plate
from movement_core.holding.plate import hold, prepare
from movement_core.sources import DERIVED, RECALLED
from tests.validation.record import compared

PLATES = "Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells (1959)"
BEAMS = "beam tables of any handbook of strength of materials"

STEEL_LIKE = Elastic(1000.0, 1000.0, 1000.0 / 2.6, 0.3)  # isotropic, ν = 0.3
FLAT = 1e-12


def grid_pins(length, width, step, stiffness=1e7):
    """Supports that hold both ways along all four edges, as a plate book's do."""
    s = np.linspace(-length / 2, length / 2, round(length / step) + 1)
    x = np.linspace(-width / 2, width / 2, round(width / step) + 1)
    places = {(float(a), b) for a in s for b in (-width / 2, width / 2)}
    places |= {(a, float(b)) for b in x for a in (-length / 2, length / 2)}
    return [Anchor(a, b, stiffness, both_ways=True) for a, b in sorted(places)]


def test_simply_supported_square_plate_under_its_weight():
    """w = 0.00406 q a⁴/D for ν = 0.3: Timoshenko and Woinowsky-Krieger, Table 8, p. 120."""
    plate = Plate(500, 500, 10, STEEL_LIKE, 8000)
    (held,) = hold(prepare(plate), grid_pins(500, 500, 12.5), [LoadCase("", FreeCurvature.even(500, 0.0))])
    q, stiffness = plate.weight_n / 500**2, plate.bending[0]
    expected = 0.00406 * q * 500**4 / stiffness
    name = "square plate under its weight"
    compared(name, f"{PLATES}, Table 8, p. 120", RECALLED, expected, -held.height_mm.min(), "mm", share=0.005)


def test_simply_supported_rectangle_two_to_one():
    """w = 0.01013 q b⁴/D for a = 2b: the same, Table 8, p. 120."""
    plate = Plate(800, 400, 10, STEEL_LIKE, 8000)
    (held,) = hold(prepare(plate), grid_pins(800, 400, 12.5), [LoadCase("", FreeCurvature.even(400, 0.0))])
    q, stiffness = plate.weight_n / (800 * 400), plate.bending[0]
    expected = 0.01013 * q * 400**4 / stiffness
    name = "rectangle two to one under its weight"
    compared(name, f"{PLATES}, Table 8, p. 120", RECALLED, expected, -held.height_mm.min(), "mm", share=0.005)


def test_point_load_at_the_centre_of_a_square_plate():
    """w = 0.0116 P a²/D: the same, Table 23, p. 143. The load is an anchor pulled down by a set amount."""
    plate = Plate(500, 500, 10, STEEL_LIKE)
    pull = Anchor(0.0, 0.0, stiffness_n_mm=1e6, seat_mm=-1.0)
    (held,) = hold(
        prepare(plate), [*grid_pins(500, 500, 12.5), pull], [LoadCase("", FreeCurvature.even(500, 0.0))]
    )
    force = held.anchor_force_n[-1]
    pulled = 0.0116 * force * 500**2 / plate.bending[0]
    name = "point load at a square plate's centre"
    compared(name, f"{PLATES}, Table 23, p. 143", RECALLED, 1.0, pulled, "", within=0.01)


def test_orthotropic_plate_under_sine_load_by_navier():
    """Navier's series for a simply supported orthotropic plate, the same, ch. 11, eq. (m), p. 371.

    w = Σ 16 q/(π⁶ m n) / [D_L (m/a)⁴ + 2 (D_1 + 2 D_k) (m n/(a b))² + D_T (n/b)⁴], m and n odd.
    """
    plate = Plate(900, 500, 20, Elastic(12000, 800, 900, 0.4), 700)
    (held,) = hold(prepare(plate), grid_pins(900, 500, 12.5), [LoadCase("", FreeCurvature.even(500, 0.0))])
    d_l, d_t, d_1, d_k = plate.bending
    q, total = plate.weight_n / (900 * 500), 0.0
    for m in range(1, 40, 2):
        for n in range(1, 40, 2):
            sign = (-1) ** ((m - 1) // 2 + (n - 1) // 2)
            below = (
                d_l * (m / 900) ** 4 + 2 * (d_1 + 2 * d_k) * (m * n / (900 * 500)) ** 2 + d_t * (n / 500) ** 4
            )
            total += sign * 16 * q / (math.pi**6 * m * n) / below
    name = "orthotropic plate, Navier's series"
    compared(name, f"{PLATES}, ch. 11, p. 371", RECALLED, total, -held.height_mm.min(), "mm", share=0.005)


# A strip across the grain, no Poisson effect: a beam of E_T·I per unit length.
STRIP = Plate(60, 500, 20, Elastic(10000, 600, 5000, 0.0))
STIFFNESS = STRIP.bending[1] * 60  # E·I, N·mm²
ENDS = [Bearing(((-30, t), (30, t)), stiffness_n_mm2=1e5) for t in (-250.0, 250.0)]


def row_of_anchors(across, stiffness=1e6, **more):
    return [Anchor(s, across, stiffness / 5, **more) for s in np.linspace(-30, 30, 5)]


def test_crowned_strip_pulled_down_in_its_middle():
    """P = 48 E I δ/L³, a simply supported beam loaded in the middle: beam tables."""
    crown = 1.6e-4
    (held,) = hold(prepare(STRIP, ENDS), row_of_anchors(0.0), [LoadCase("", FreeCurvature.even(500, crown))])
    rise = crown * 500**2 / 8
    expected, pull = 48 * STIFFNESS * rise / 500**3, np.sum(held.anchor_force_n)
    compared("crowned strip pulled down in its middle", BEAMS, RECALLED, expected, pull, "N", share=0.01)


def test_hollow_strip_pulled_down_at_both_edges():
    """P = 3 E I δ/l³ at the end of a cantilever of half the width: beam tables."""
    rail = [Bearing(((-30, 0), (30, 0)), stiffness_n_mm2=1e5)]
    anchors = row_of_anchors(-250.0) + row_of_anchors(250.0)
    (held,) = hold(prepare(STRIP, rail), anchors, [LoadCase("", FreeCurvature.even(500, -1.6e-4))])
    rise = 1.6e-4 * 250**2 / 2
    expected, pull = 3 * STIFFNESS * rise / 250**3, np.sum(held.anchor_force_n[:5])
    compared("hollow strip pulled down at its edges", BEAMS, RECALLED, expected, pull, "N", share=0.01)


def test_kinked_strip_pulled_down_at_its_glue_line():
    """Two straight boards that meet at an angle φ: δ = φ L/4, P = 48 E I δ/L³, as the crowned strip."""
    free = FreeCurvature((-250, 0, 250), (0.0, 0.0), (0.02,))
    (held,) = hold(prepare(STRIP, ENDS, glue_lines_mm=(0.0,)), row_of_anchors(0.0), [LoadCase("", free)])
    expected, pull = 48 * STIFFNESS * 0.02 * 500 / 4 / 500**3, np.sum(held.anchor_force_n)
    compared("kinked strip pulled down at its glue line", BEAMS, RECALLED, expected, pull, "N", share=0.01)


def test_overhang_sags_by_its_weight():
    """w = q l⁴/8 E I at the end of a cantilever: beam tables. A strip clamped level by two near rows."""
    plate = Plate(60, 500, 20, STRIP.elastic, 700)
    near = [*row_of_anchors(-1.0, 1e8, both_ways=True), *row_of_anchors(1.0, 1e8, both_ways=True)]
    (held,) = hold(prepare(plate), near, [LoadCase("", FreeCurvature.even(500, 0.0))])
    sag = plate.weight_n / 500 * 250**4 / (8 * STIFFNESS)
    ours = -held.height_mm[:, 0].mean()
    compared("overhang under its weight", BEAMS, RECALLED, sag, ours, "mm", share=0.03)


def test_batten_shares_the_curvature():
    """Two beams joined all along share one curvature: κ = κ_free·EI_panel/(EI_panel + EI_batten).

    Near its ends a springy joint lets the moment swing past by e^−π = 4 % (beam on elastic foundation).
    """
    crown, batten_stiffness = 1e-4, 2 * STIFFNESS
    batten = Beam((0, -250), (0, 250), batten_stiffness)
    (held,) = hold(prepare(STRIP, ENDS, [batten]), [], [LoadCase("", FreeCurvature.even(500, crown))])
    left = crown * 500**2 / 8 / 3
    compared(
        "batten and panel share a curvature", BEAMS, RECALLED, left, held.out_of_flat_mm, "mm", share=0.02
    )
    compared(
        "moment in the batten", BEAMS, RECALLED, batten_stiffness * crown / 3, held.beams[0].moment_n_mm, "N mm",
        share=0.07, note="near its ends a springy joint lets the moment swing past by e^−π = 4 %",
    )  # fmt: skip


def test_batten_with_a_crown_of_its_own_bends_the_panel():
    """The same sharing with the curvature in the batten: κ = κ_batten·EI_batten/(EI_panel + EI_batten)."""
    batten = Beam((0, -250), (0, 250), STIFFNESS, bearing_n_mm2=1e4, crown_per_mm=1e-4)
    (held,) = hold(prepare(STRIP, ENDS, [batten]), [], [LoadCase("", FreeCurvature.even(500, 0.0))])
    expected = 1e-4 * 500**2 / 8 / 2
    compared(
        "crowned batten bends the panel", BEAMS, RECALLED, expected, held.out_of_flat_mm, "mm", share=0.02
    )


def test_bow_of_all_boards_is_taken_without_force():
    """A uniform curvature along the grain is a stress-free cylinder: rise κ L²/8 (geometry)."""
    plate = Plate(1000, 400, 20, Elastic(10000, 600, 700, 0.4))
    free = FreeCurvature((-200, 200), (0.0,), (), (4e-5,))
    (held,) = hold(prepare(plate), [], [LoadCase("", free)])
    expected = 4e-5 * 1000**2 / 8
    compared(
        "stress-free cylinder", "geometry: κ L²/8", DERIVED, expected, held.out_of_flat_mm, "mm", share=1e-6
    )


def test_two_boards_that_bow_apart_settle_between():
    """Boards of equal width and opposite bow: the mean bow is nil, what is left is twist and a small warp.

    By energy: no straight-along panel can follow ±κ, so along its middle line it stays straight (symmetry).
    """
    plate = Plate(1000, 400, 20, Elastic(10000, 600, 700, 0.4))
    free = FreeCurvature((-200, 0, 200), (0.0, 0.0), (), (4e-5, -4e-5))
    (held,) = hold(prepare(plate), [], [LoadCase("", free)])
    middle = np.array([np.interp(0.0, held.across_mm, row) for row in held.height_mm])
    assert np.ptp(middle) < 1e-6
    assert 0.05 < held.out_of_flat_mm < 2 * 4e-5 * 1000**2 / 8


def disc(radius, corners=72):
    angles = 2 * np.pi * np.arange(corners) / corners
    return tuple((float(radius * np.cos(a)), float(radius * np.sin(a))) for a in angles)


def test_round_plate_simply_supported_under_its_weight():
    """w = (5 + ν)/(1 + ν)·q a⁴/64 D: Timoshenko and Woinowsky-Krieger, art. 16, p. 57."""
    rim = disc(300)
    plate = Plate(600, 600, 10, STEEL_LIKE, 8000, rim)
    pins = [Anchor(s, x, 1e7, both_ways=True) for s, x in rim]
    (held,) = hold(prepare(plate), pins, [LoadCase("", FreeCurvature.even(600, 0.0))])
    q = plate.weight_n / plate.area_mm2
    sag = (5 + 0.3) / (1 + 0.3) * q * 300**4 / (64 * plate.bending[0])
    ours = -np.nanmin(held.height_mm)
    compared(
        "round plate under its weight", f"{PLATES}, art. 16, p. 57", RECALLED, sag, ours, "mm", share=0.01
    )


def test_outline_of_the_whole_rectangle_is_the_rectangle():
    corners = ((-500, -250), (500, -250), (500, 250), (-500, 250))
    free = FreeCurvature((-250, -50, 250), (1.6e-4, 0.4e-4), (-0.004,), (1e-5, -1e-5))
    anchors = [Anchor(-490, 0), Anchor(490, 60), Anchor(0, -240)]
    rails = [Bearing(((-490, t), (490, t))) for t in (-240, 240)]
    results = []
    for outline in ((), corners):
        plate = Plate(1000, 500, 20, Elastic(10300, 600, 700, 0.4), 700, outline)
        results.append(hold(prepare(plate, rails), anchors, [LoadCase("", free)])[0])
    assert results[1].out_of_flat_mm == pytest.approx(results[0].out_of_flat_mm, rel=1e-3)
    assert results[1].anchor_force_n == pytest.approx(results[0].anchor_force_n, rel=2e-3, abs=0.1)
