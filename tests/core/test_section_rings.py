"""Every way of saying where the rings are."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section.rings import CUTS, Rings, cut_class


def test_angle_with_heart_side_and_radius_is_a_pith():
    assert Rings.angle(0, heart="show", radius_mm=80).pith_mm == pytest.approx((0, 80))
    assert Rings.angle(30, heart="back", pith_side="left", radius_mm=100).pith_mm == pytest.approx(
        (-50, -100 * np.cos(np.pi / 6))
    )
    assert Rings.angle(90, radius_mm=70).pith_mm == pytest.approx((70, 0))
    assert Rings.angle(90, radius_mm=70).side_assumed


def test_angle_without_heart_side_keeps_only_the_radius():
    rings = Rings.angle(20, radius_mm=80)
    assert rings.pith_mm is None
    assert rings.radius_range_mm == (80, 80)


def test_ring_angle_of_a_pith():
    assert Rings.at(0, 60).middle_angle_degrees == 0
    assert Rings.at(-60, 0).middle_angle_degrees == 90
    assert Rings.at(50, -50).middle_angle_degrees == pytest.approx(45)


@pytest.mark.parametrize("word", list(CUTS))
def test_a_class_carries_its_whole_range(word):
    rings = Rings.cut(word)
    assert rings.pith_mm is None
    assert rings.angle_range_degrees == (CUTS[word][0], CUTS[word][2])
    assert cut_class(rings.middle_angle_degrees) == word


def test_radius_of_curvature_seen_away_from_the_middle():
    assert Rings.curve(80, (0, -2)).pith_mm == pytest.approx((0, -80))
    assert Rings.curve(80, (3, 4), seen_at=(-40, 5)).pith_mm == pytest.approx((-40 + 48, 5 + 64))


@pytest.mark.parametrize("order", [(0, 1, 2), (2, 0, 1), (1, 2, 0), (2, 1, 0)])
def test_three_points_on_a_ring_find_its_centre(order):
    pith, radius = np.array((25.0, -90.0)), 95.0
    turns = np.radians((70.0, 95.0, 130.0))
    points = pith + radius * np.stack((np.cos(turns), np.sin(turns)), axis=-1)
    rings = Rings.through(points[list(order)])
    assert rings.pith_mm == pytest.approx(tuple(pith))
    low, high = rings.radius_range_mm
    assert low < np.hypot(*pith) < high


def test_the_range_of_picked_points_covers_their_errors():
    rng = np.random.default_rng(5)
    pith, radius = np.array((10.0, 120.0)), 118.0
    turns = np.radians((-115.0, -95.0, -70.0))
    inside = 0
    for _ in range(200):
        points = pith + radius * np.stack((np.cos(turns), np.sin(turns)), axis=-1)
        points += rng.uniform(-0.3, 0.3, (3, 2))
        low, high = Rings.through(points, pick_error_mm=0.5).radius_range_mm
        inside += low <= np.hypot(*pith) <= high
    assert inside >= 190
    assert Rings.through(points, pick_error_mm=0.1).radius_range_mm[1] < high


def test_straight_rings_leave_the_radius_unknown():
    rings = Rings.through([(-40, -10), (0, 0), (40, 10)])
    assert rings.pith_mm is None
    assert rings.angle_degrees == pytest.approx(np.degrees(np.arctan2(10, 40)))
    nearly = Rings.through(
        [(-40, 0), (0, 0.4), (40, 0)]
    )  # a bend within the pick error: which way is not known
    assert nearly.pith_mm is None
    assert nearly.heart is None
    assert nearly.radius_range_mm == pytest.approx((40**2 / 2 / (0.4 + 0.75), 100_000), rel=0.01)


def test_slope_and_far_end_ride_along():
    rings = Rings.at(0, 60).with_slope(0.03).with_far_end(Rings.at(10, 70))
    assert rings.slope == 0.03
    assert rings.far_end.pith_mm == (10, 70)


@pytest.mark.parametrize(
    ("make", "says"),
    [
        (lambda: Rings(), "exactly one"),
        (lambda: Rings(pith_mm=(0, 60), angle_degrees=3), "exactly one"),
        (lambda: Rings.at(float("nan"), 3), "nan"),
        (lambda: Rings.angle(91), "0 to 90°"),
        (lambda: Rings.angle(10, heart="up"), "show, back"),
        (lambda: Rings.angle(10, pith_side="top"), "left, right"),
        (lambda: Rings.angle(10, heart="show", radius_mm=-5), "0.1 to 100000 mm"),
        (lambda: Rings.cut("plain"), "flat, rift, quarter"),
        (lambda: Rings.curve(80, (0, 0)), "points nowhere"),
        (lambda: Rings.through([(0, 0), (1, 1)]), "(3, 2)"),
        (lambda: Rings.through([(0, 0), (0.5, 0.5), (50, 2)]), "apart"),
        (lambda: Rings.at(0, 60).with_slope(2), "-1 to 1"),
    ],
)
def test_what_cannot_be_is_refused_with_the_range(make, says):
    with pytest.raises(InputError) as caught:
        make()
    assert says in str(caught.value)
