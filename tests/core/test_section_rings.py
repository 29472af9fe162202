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
        (lambda: Rings.curve(80, 5.0), "direction of the pith has shape ()"),
        (lambda: Rings.curve(80, (0, 1), seen_at=(1, 2, 3)), "point on the ring has shape (3,)"),
        (lambda: Rings(pith_mm=(1, 2, 3)), "pith has shape (3,)"),
        (lambda: Rings.through([(0, 0, 0), (1, 1, 1), (9, 9, 1)]), "ring points has shape (3, 3)"),
        (lambda: Rings.through([(0, 0), (1, 1)]), "(3, 2)"),
        (lambda: Rings.through([(0, 0), (0.5, 0.5), (50, 2)]), "apart"),
        (lambda: Rings.at(0, 60).with_slope(2), "-1 to 1"),
    ],
)
def test_what_cannot_be_is_refused_with_the_range(make, says):
    with pytest.raises(InputError) as caught:
        make()
    assert says in str(caught.value)


def test_three_points_give_the_range_that_their_errors_allow():
    """A chord of 80 with a rise of 8 mm: R = (40² + h²)/2h with h = 8 ∓ 0.75; the pith lies R − 8 from the middle."""
    rings = Rings.through([(-40, 0), (40, 0), (0, 8)])
    assert rings.pith_mm == pytest.approx((0, 8 - 104))

    def radius(rise):
        return (40**2 + rise**2) / (2 * rise)

    assert rings.radius_range_mm == pytest.approx((radius(8.75) - 8, radius(7.25) - 8))
    sharp = Rings.through([(-40, 0), (40, 0), (0, 8)], pick_error_mm=0.1)
    assert sharp.radius_range_mm == pytest.approx((radius(8.15) - 8, radius(7.85) - 8))
    over = Rings.through([(-40, 0), (40, 0), (0, -8)])
    assert over.pith_mm == pytest.approx((0, -8 + 104))
    assert over.radius_range_mm == pytest.approx(rings.radius_range_mm)


def test_a_ring_picked_off_its_middle_is_the_same_ring():
    centre, ring = np.array((12.0, 70.0)), 75.0
    for middle in (-100.0, -80.0, -65.0):
        turns = np.radians((-130.0, middle, -60.0))
        found = Rings.through(
            centre + ring * np.stack((np.cos(turns), np.sin(turns)), axis=-1), pick_error_mm=1e-6
        )
        assert found.pith_mm == pytest.approx(tuple(centre))
        assert found.radius_range_mm == pytest.approx((np.hypot(*centre),) * 2, rel=1e-5)


def test_a_nearly_straight_ring_has_a_least_radius_and_no_greatest():
    """A rise of 0.4 mm may be 0.4 + 0.75: the ring is no tighter than (40² + 1.15²)/2.3, and at most straight."""
    nearly = Rings.through([(-40, 0), (0, 0.4), (40, 0)])
    assert nearly.radius_range_mm == pytest.approx(((40**2 + 1.15**2) / 2.3, 100_000))
    assert nearly.angle_degrees == 0
    rising = Rings.through([(0, -40), (0.4, 0), (0, 40)])
    assert rising.angle_degrees == 90
    almost = Rings.through([(-40, 0), (0, 0.8), (40, 0)])  # may be 0.05 mm: 16 m, or 1.55 mm
    assert almost.radius_range_mm == pytest.approx(
        (1600 / 3.1 + 1.55 / 2 - 0.8, (1600 + 0.05**2) / 0.1 - 0.8), rel=1e-6
    )
    flat = Rings.through([(-400, 0), (0, 0.7), (400, 0)])  # a radius of 114 m is none
    assert (flat.pith_mm, flat.radius_range_mm) == (None, None)
    assert Rings.through([(-400, 0), (0, 0.9), (400, 0)]).radius_range_mm[1] == pytest.approx(99_999.1)


def test_a_radius_joins_the_range_that_was_said():
    assert Rings.angle(10, radius_mm=80, radius_range_mm=(60, 70)).radius_range_mm == (60, 80)
    assert Rings.angle(10, radius_mm=50, radius_range_mm=(60, 70)).radius_range_mm == (50, 70)
    assert Rings.angle(10, radius_range_mm=(70, 60)).radius_range_mm == (60, 70)
    known = Rings.angle(10, heart="show", radius_mm=80, radius_range_mm=(60, 90))
    assert known.radius_range_mm == (60, 90) and known.heart == "show" and known.side_assumed
    assert not Rings.angle(0, heart="show", radius_mm=80).side_assumed
    assert not Rings.angle(10, heart="show", pith_side="right", radius_mm=80).side_assumed


def test_a_pith_lies_at_its_distance_along_the_stated_angle():
    at_30 = Rings.angle(30, heart="back", pith_side="left")
    assert at_30.pith_at(100) == pytest.approx((-50, -100 * np.cos(np.pi / 6)))
    assert at_30.pith_at(100, 90) == (-100, 0)
    assert at_30.pith_at(100, 0) == pytest.approx((0, -100))
    assert Rings.angle(30).pith_at(100) == pytest.approx((50, 100 * np.cos(np.pi / 6)))
    assert Rings.at(30, -40).pith_at(100) == pytest.approx((60, -80))
    assert Rings.at(30, -40).pith_at(100, 90) == (100, 0)


def test_ranges_are_put_in_order_and_words_are_kept():
    rings = Rings(None, 45.0, (60.0, 30.0), "show", "left", (80.0, 40.0), 0.02)
    assert (rings.angle_range_degrees, rings.radius_range_mm) == ((30, 60), (40, 80))
    with pytest.raises(InputError, match="0 to 90°"):
        Rings(None, 45.0, (30.0, 90.5))
    with pytest.raises(InputError, match=r"0\.1 to 100000 mm"):
        Rings(None, 45.0, None, None, None, (40.0, 100_001.0))
    assert Rings.at(0, 60).with_slope(None).slope is None
    assert Rings.cut("rift", heart="back", radius_range_mm=(40, 80)).heart == "back"
    curve = Rings.curve(50, (0, 2))
    assert curve.pith_mm == (0, 50)
