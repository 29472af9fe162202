"""Regions of a plane, cut with each other: against clipping written anew here, and at the ends of what they may be."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.piece.contact.polygons import (
    NOTHING,
    area,
    centroid,
    half_plane,
    holds,
    mean_width,
    outline,
    region_of,
    shared,
    without,
)
from tests.core.contact_solids import circle, shoelace

SQUARE = [(0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0)]


def region(*loops):
    return region_of([np.array(loop, dtype=float) for loop in loops])


def turned(points, degrees, shift=(0.0, 0.0)):
    angle = np.radians(degrees)
    turn = np.array([[np.cos(angle), np.sin(angle)], [-np.sin(angle), np.cos(angle)]])
    return np.asarray(points, dtype=float) @ turn + shift


def clipped(subject, window):
    """A convex polygon cut by another, both anticlockwise: one side after the other (Sutherland and Hodgman)."""
    for a, b in zip(window, np.roll(window, -1, axis=0)):
        left = [float((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) for p in subject]
        kept = []
        for (p, at), (q, then) in zip(
            zip(subject, left), [*zip(subject[1:], left[1:]), (subject[0], left[0])]
        ):
            kept += [p] if at >= 0 else []
            kept += [p + (q - p) * at / (at - then)] if at * then < 0 else []
        subject = kept
        if len(subject) < 3:
            return 0.0
    return shoelace(np.array(subject))


def corners_of(count, turn, long, flat, x, y):
    """So many corners on an ellipse, anticlockwise."""
    angle = turn + 2 * np.pi * np.arange(count) / count
    return np.column_stack([long * np.cos(angle) + x, flat * long * np.sin(angle) + y])


convex = st.builds(
    corners_of, st.integers(3, 7), st.floats(0, 6.28), st.floats(3, 20), st.floats(0.3, 1),
    st.floats(-9, 9), st.floats(-9, 9),
)  # fmt: skip


@given(convex, convex)
@settings(max_examples=150, deadline=None, derandomize=True)
def test_what_two_share_and_what_one_leaves_make_the_whole(one, other):
    a, b = region(one), region(other)
    both = clipped(list(one), other)
    assert area(shared(a, b)) == pytest.approx(both, abs=1e-3)
    assert area(without(a, b)) == pytest.approx(area(a) - both, abs=1e-3)
    assert sum(shoelace(loop) for loop in outline(shared(a, b))) == pytest.approx(both, abs=1e-3)


def test_nothing_has_no_area_and_no_width():
    assert area(NOTHING) == mean_width(NOTHING) == 0.0
    strip = region([(0, 0), (100, 0), (100, 2), (0, 2)])
    assert mean_width(strip) == pytest.approx(2 * 200 / 204)
    for one, other in ((NOTHING, strip), (strip, NOTHING)):
        assert len(shared(one, other)) == 0
    assert without(strip, NOTHING) is strip and len(without(NOTHING, strip)) == 0


def test_loops_may_run_either_way_and_holes_are_taken_off():
    hole = [(4, 4), (6, 4), (6, 6), (4, 6)]
    for outer in (SQUARE, SQUARE[::-1]):
        for inner in (hole, hole[::-1]):
            ring = region(outer, inner)
            assert area(ring) == pytest.approx(96) and centroid(ring) == pytest.approx((5, 5))
            assert holds(ring, np.array([(1.0, 1.0), (5.0, 5.0), (11.0, 5.0)])).tolist() == [
                True,
                False,
                False,
            ]
            assert [abs(shoelace(loop)) for loop in outline(ring)] == pytest.approx([100, 4])


def test_rectangles_askew_whose_boxes_meet_but_not_they():
    bar = [(0, 0), (100, 0), (100, 10), (0, 10)]
    one, other = region(turned(bar, 45)), region(turned(bar, 45, (15.0, -15.0)))
    assert len(shared(one, other)) == 0
    assert area(without(one, other)) == pytest.approx(1000)
    beside = region(turned(bar, 45, (3.0, -3.0)))
    assert area(shared(one, beside)) == pytest.approx(100 * (10 - 3 * np.sqrt(2)))


@pytest.mark.parametrize("degrees", [0.0, 30.0, 45.0])
def test_a_square_turned_within_another(degrees):
    inner = region(turned(np.array(SQUARE) - 5, degrees, (50, 50)))
    outer = region([(0, 0), (100, 0), (100, 100), (0, 100)])
    assert area(shared(outer, inner)) == area(shared(inner, outer)) == pytest.approx(100)
    assert area(without(outer, inner)) == pytest.approx(9900) and area(
        without(inner, outer)
    ) == pytest.approx(0)


@pytest.mark.parametrize(
    "corners",
    [
        [(0, 0), (10, 0), (8, 6), (2, 6)],
        [(0, 0), (10, 0), (13, 6), (3, 6)],
        [(0, 0), (10, -4), (20, 0), (10, 12)],
    ],
    ids=["trapezium", "rhomboid", "kite"],
)
def test_four_sides_that_are_no_rectangle(corners):
    shape, half = region(corners), region([(-50, -50), (50, -50), (50, 2), (-50, 2)])
    below = clipped(
        [np.array(c, float) for c in corners], np.array([(-50, -50), (50, -50), (50, 2), (-50, 2)], float)
    )
    assert area(shared(shape, half)) == pytest.approx(below)
    (loop,) = outline(shape)
    assert sorted(map(tuple, loop.round(9).tolist())) == sorted((float(x), float(y)) for x, y in corners)


def test_round_regions_whose_boxes_meet_at_a_corner_share_nothing():
    one, other = region(circle(10, 60)), region(circle(10, 60, (18, 18)))
    assert len(shared(one, other)) == 0
    assert area(without(one, other)) == pytest.approx(area(one))


def test_one_within_the_other_without_any_edge_near():
    big, small = region([(0, 0), (100, 0), (0, 100)]), region([(20, 20), (30, 20), (20, 30)])
    assert area(shared(big, small)) == area(shared(small, big)) == pytest.approx(50)
    assert len(outline(without(big, small))) == 2


def test_a_strip_thinner_than_a_snap_is_cut_like_any_other():
    thin = region(turned([(0, 0), (100, 0), (100, 4e-7), (0, 4e-7)], 30))
    assert area(shared(thin, region(turned([(0, -5), (50, -5), (50, 5), (0, 5)], 30)))) < 1e-4


def test_two_squares_that_meet_in_a_point_are_two_loops():
    both = np.concatenate([region(SQUARE), region([(10, 10), (20, 10), (20, 20), (10, 20)])])
    assert [shoelace(loop) for loop in outline(both)] == pytest.approx([100, 100])


def test_a_region_of_no_area_has_no_outline():
    assert outline(region([(0, 0), (10, 0), (20, 0)])) == []


def test_edges_with_a_crack_still_close_and_with_a_hole_in_the_line_end_there():
    cracked = region(SQUARE)
    cracked[1, 0] += (4e-6, 0.0)  # begins a hair beside the end of the edge before
    (loop,) = outline(cracked[[2, 0, 3, 1]])
    assert shoelace(loop) == pytest.approx(100, abs=1e-3)
    cracked[1, 0] += (0.0, 1.0)
    assert all(len(loop) <= 4 for loop in outline(cracked))
    moved_end = region(SQUARE)
    moved_end[3, 1] += (0.0, 4e-6)
    (loop,) = outline(moved_end)
    assert shoelace(loop) == pytest.approx(100, abs=1e-3)


@pytest.mark.parametrize("normal", [(1.0, 0.0), (0.0, -2.0), (3.0, 4.0)])
def test_a_half_plane_holds_what_lies_before_its_line(normal):
    normal = np.array(normal)
    points = np.random.default_rng(2).uniform(-40, 40, (200, 2))
    limit = 7.0
    wanted = points @ normal <= limit
    assert holds(half_plane(normal, limit, points), points).tolist() == wanted.tolist()


def test_the_outline_of_a_square_is_its_corners():
    (loop,) = outline(region(SQUARE)[[1, 3, 0, 2]])
    assert sorted(map(tuple, loop.tolist())) == sorted(SQUARE) and shoelace(loop) == 100
