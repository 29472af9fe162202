"""What a section's shape is measured by, against integrals and slopes of the exact free shape, and its flags."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.section import movement
from movement_core.section.board import Board
from movement_core.section.boxed_heart import WARNING as BOXED_HEART
from movement_core.section.chain import _upright, segment
from movement_core.section.field import free_shape
from movement_core.section.movement import free_section, section_movement
from movement_core.section.rings import Rings

A, B = -0.0052, -0.0108
PITH = (30.0, 45.0)


class Wood:
    radial_coefficient, tangential_coefficient = 0.0013, 0.0027


def moved(points):
    return free_shape(np.array(points, dtype=float), PITH, A, B)


def mean(function, low, high):
    """∫ f ÷ (high − low), by Gauss and Legendre with forty points."""
    nodes, weights = np.polynomial.legendre.leggauss(40)
    return sum(w * function(0.5 * (low + high) + 0.5 * (high - low) * n) for n, w in zip(nodes, weights)) / 2


def chord(height):
    ends = moved([(-60.0, height), (60.0, height)])
    return float(np.hypot(*(ends[1] - ends[0]))) - 120.0


def thick(place):
    ends = moved([(place, -20.0), (place, 20.0)])
    return float(np.hypot(*(ends[1] - ends[0]))) - 40.0


def test_width_and_thickness_are_means_over_the_section():
    found = free_section(120.0, 40.0, PITH, A, B)
    assert found.width_change_mm == pytest.approx(mean(chord, -20.0, 20.0), rel=1e-5)
    assert found.thickness_change_mm == pytest.approx(mean(thick, -60.0, 60.0), rel=5e-4)
    assert found.width_change_show_mm == pytest.approx(chord(20.0))
    assert found.width_change_back_mm == pytest.approx(chord(-20.0))
    every = [thick(x) for x in np.linspace(-60.0, 60.0, 9)]
    assert found.thickness_least_mm == pytest.approx(min(every))
    assert found.thickness_most_mm == pytest.approx(max(every))


def test_cup_and_diamond_are_measured_from_the_chord():
    """The greatest height of the mid-surface over its chord, and how the two middles of the faces lie to it."""
    found = free_section(120.0, 40.0, PITH, A, B)
    ends = moved([(-60.0, 0.0), (60.0, 0.0)])
    along = (ends[1] - ends[0]) / np.linalg.norm(ends[1] - ends[0])
    normal = np.array([-along[1], along[0]])
    heights = (moved([(x, 0.0) for x in np.linspace(-60.0, 60.0, 2001)]) - ends[0]) @ normal
    assert found.cup_mm == pytest.approx(heights[np.abs(heights).argmax()], rel=1e-3)
    faces = moved([(0.0, -20.0), (0.0, 20.0)])
    through = faces[1] - faces[0]
    assert found.diamond_degrees == pytest.approx(
        np.degrees(np.arctan2(through @ along, through @ normal)), rel=1e-9
    )


@pytest.mark.parametrize("pith", [(0.0, 60.0), (25.0, -40.0), (70.0, 0.0)])
def test_ring_angles_across_the_width(pith):
    found = section_movement(120.0, 20.0, Rings.at(*pith), A, B)
    x = np.linspace(-60.0, 60.0, 100_001)
    angles = np.degrees(np.arctan2(np.abs(x - pith[0]), abs(pith[1])))
    assert found.ring_angle_degrees == pytest.approx(angles.mean(), rel=0.015)
    assert found.ring_angle_range_degrees == pytest.approx(
        (angles.min(), angles.max()), abs=1.4
    )  # half a sample
    assert found.cut_class == Rings.at(*pith).cut_class


def test_an_angle_alone_is_the_angle_everywhere():
    alone = section_movement(120.0, 20.0, Rings.angle(40.0), A, B)
    assert (alone.ring_angle_degrees, alone.ring_angle_range_degrees) == (40.0, (40.0, 40.0))
    rift = section_movement(120.0, 20.0, Rings.cut("rift"), A, B)
    assert (rift.ring_angle_degrees, rift.ring_angle_range_degrees) == (45.0, (30.0, 60.0))
    assert not rift.pith_inside


@pytest.mark.parametrize(
    ("rings", "flags"),
    [
        (Rings.at(0, 60), ()),
        (Rings.angle(0), (movement.RADIUS_UNKNOWN,)),
        (Rings.angle(90), (movement.RADIUS_UNKNOWN,)),
        (Rings.angle(20), (movement.RADIUS_UNKNOWN, movement.SIDE_UNKNOWN)),
        (Rings.angle(20, heart="show"), (movement.RADIUS_UNKNOWN, movement.SIDE_UNKNOWN)),
        (Rings.angle(20, heart="back", pith_side="left"), (movement.RADIUS_UNKNOWN,)),
        (Rings.angle(90, radius_range_mm=(80, 200)), (movement.RADIUS_A_RANGE,)),
        (
            Rings.angle(20, radius_mm=80),
            (movement.RADIUS_A_RANGE, movement.HEART_UNKNOWN, movement.SIDE_UNKNOWN),
        ),
        (Rings.angle(20, heart="show", radius_mm=80), (movement.SIDE_UNKNOWN,)),
        (Rings.angle(20, heart="show", pith_side="left", radius_mm=80), ()),
        (Rings.angle(0, heart="show", radius_mm=80), ()),
        (Rings.cut("flat"), (movement.RADIUS_UNKNOWN, movement.SIDE_UNKNOWN, movement.CLASS_ONLY)),
        (
            Rings.cut("quarter", radius_range_mm=(80, 200)),
            (movement.RADIUS_A_RANGE, movement.HEART_UNKNOWN, movement.SIDE_UNKNOWN, movement.CLASS_ONLY),
        ),
        (Rings.at(0, 0.5), (BOXED_HEART,)),
    ],
)
def test_each_thing_that_is_unsure_has_its_flag(rings, flags):
    assert section_movement(80.0, 20.0, rings, A, B).flags == flags


def test_radii_that_all_box_the_heart_leave_no_cup():
    found = section_movement(90.0, 90.0, Rings.angle(0, radius_range_mm=(5, 40)), A, B)
    assert found.cup_range_mm is None
    assert movement.MAYBE_BOXED in found.flags


def test_an_unsure_side_leaves_either_lean():
    sure = section_movement(60.0, 60.0, Rings.angle(30, heart="show", pith_side="right", radius_mm=90), A, B)
    unsure = section_movement(60.0, 60.0, Rings.angle(30, heart="show", radius_mm=90), A, B)
    assert sure.diamond_range_degrees == (sure.diamond_degrees, sure.diamond_degrees)
    assert unsure.diamond_degrees is None
    most = abs(sure.diamond_degrees)
    assert unsure.diamond_range_degrees == pytest.approx((-most, most))


@pytest.mark.parametrize("heart", ["show", "back"])
def test_an_unsure_side_of_a_class_leaves_the_greatest_lean_of_its_range(heart):
    """Flat-sawn is 0 to 30°: level rings do not lean, those at 30° most, one way or the other by the heart side."""
    most = section_movement(60.0, 60.0, Rings.angle(30, heart=heart, pith_side="right"), A, B).diamond_degrees
    found = section_movement(60.0, 60.0, Rings.cut("flat", heart=heart), A, B)
    assert found.diamond_range_degrees == pytest.approx((-abs(most), abs(most)), rel=1e-6)


def test_an_edge_points_as_a_bending_moment_feels_it():
    """x = c·y³ on −1 … 1: ∫ y·(c·y³ + i·y) dy = 2c/5 + 2i/3, by calculus."""
    heights = np.concatenate(([-1.0], np.polynomial.legendre.leggauss(8)[0], [1.0]))
    for c in (0.0, 0.2, -0.5):
        wish = (0.6 * c + 1j) / abs(0.6 * c + 1j) / 1j
        assert _upright(c * heights**3 + 1j * heights) == pytest.approx(wish)


@pytest.mark.parametrize("pith", [(0.0, 60.0), (30.0, -45.0)])
def test_links_tell_the_slope_of_the_surface_at_both_edges(pith):
    board = Board(Wood(), 120.0, 30.0, pith)
    link = segment(board, -4.0, 5)
    radial, tangential = board.strains(-4.0)
    heights, weights = np.polynomial.legendre.leggauss(40)
    for place, slope in ((-60.0, link.slope_left), (60.0, link.slope_right)):
        near = free_shape([(place - 1e-4, 0.0), (place + 1e-4, 0.0)], pith, radial, tangential)
        edge = free_shape([(place, 15.0 * h) for h in heights], pith, radial, tangential)
        upright = (weights * heights) @ edge
        tangent = np.arctan2(*(near[1] - near[0])[::-1])
        lean = np.arctan2(-upright[0], upright[1])
        assert slope == pytest.approx(tangent - lean, abs=1e-7)
    assert link.surface.shape == (5,) and link.surface[0] == 0
    corners = free_shape([(60.0, -15.0), (60.0, 15.0), (60.0, 0.0)], pith, radial, tangential)
    across = upright / np.linalg.norm(upright)
    np.testing.assert_allclose(link.height_right, (corners[:2] - corners[2]) @ across, rtol=1e-6)
