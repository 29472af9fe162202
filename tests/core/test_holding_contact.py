"""Where a panel bears and is joined, counted by hand: every length is shared out once."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.holding.contact_points import contact_points
from movement_core.holding.fasteners import find_kind
from movement_core.holding.model import Anchor, Beam, Bearing, Elastic, Plate
from movement_core.holding.plate import _joints

OAK = Elastic(13000.0, 1000.0, 900.0, 0.4)
PLATE = Plate(1200.0, 600.0, 20.0, OAK, 700.0)
# a U lying on its side: a notch 100 mm across, open toward +along
TROUGH = ((-300.0, -150.0), (300.0, -150.0), (300.0, -50.0), (-100.0, -50.0), (-100.0, 50.0), (300.0, 50.0),
          (300.0, 150.0), (-300.0, 150.0))  # fmt: skip


def test_an_edge_stands_for_its_whole_length():
    rail = Bearing(((-500, -20), (500, -20)), 0.5, 150.0)
    found = contact_points(PLATE, [rail])
    assert found.reach_mm.sum() == pytest.approx(1000)
    assert found.stiffness_n_mm == pytest.approx(150 * found.reach_mm)
    assert np.diff(found.points_mm[:, 0]).max() <= 1200 / 80 + 1e-9
    assert found.height_mm.tolist() == [0.5] * len(found.points_mm)
    assert found.runs == ((0, len(found.points_mm)),)
    assert found.reach_mm[0] == pytest.approx(found.reach_mm[1] / 2)
    small = contact_points(Plate(300, 200, 20, OAK), [Bearing(((-100, 0), (100, 0)))])
    assert np.diff(small.points_mm[:, 0]).max() == pytest.approx(8.0)  # never finer than 8 mm
    given = contact_points(PLATE, [rail], 100.0)
    assert len(given.points_mm) == 11


def test_glue_lines_are_met_and_what_lies_beyond_is_left_out():
    across = Bearing(((0, -200), (0, 400)))
    found = contact_points(PLATE, [across, Bearing(((700, 0), (900, 0)))], 90.0, (-100.0, 3.0, 290.0))
    assert found.points_mm[:, 1].max() == 300 and found.reach_mm.sum() == pytest.approx(500)
    for line in (-100.0, 3.0, 290.0):
        assert np.abs(found.points_mm[:, 1] - line).min() < 1e-9
    assert set(found.bearing) == {0}
    nothing = contact_points(PLATE, [Bearing(((700, 0), (900, 0)))])
    assert len(nothing.points_mm) == 0 and nothing.runs == ()


def test_a_wide_bearing_is_met_inside_too():
    """Its rim all round, and points inside that stand for its area by the 20 mm that a rail is broad."""
    found = contact_points(PLATE, [Bearing(((-400, -200), (400, -200), (400, 200), (-400, 200)))])
    rim = found.runs[:4]
    assert sum(found.reach_mm[a:b].sum() for a, b in rim) == pytest.approx(2400)
    first, last = found.runs[4]
    inside = found.points_mm[first:last]
    assert 100 <= len(inside) <= 170  # some 150, by whole rows
    assert (np.abs(inside) < (400, 200)).all()
    assert (found.reach_mm[first:last] * 20).sum() == pytest.approx(800 * 400, rel=0.15)
    narrow = contact_points(PLATE, [Bearing(((-400, -15), (400, -15), (400, 15), (-400, 15)))])
    assert len(narrow.runs) == 4


def test_a_rail_under_a_shaped_top_is_met_where_the_top_lies():
    trough = Plate(600, 300, 20, OAK, 700, TROUGH)
    found = contact_points(trough, [Bearing(((200, -150), (200, 150)))], 10.0)
    assert len(found.runs) == 2
    assert ((np.abs(found.points_mm[:, 1]) >= 50) & (np.abs(found.points_mm[:, 1]) <= 150)).all()


def test_joints_all_along_a_beam_share_its_length():
    places, from_start, springs = _joints(Beam((0, -250), (0, 250), 1e8, bearing_n_mm2=150.0, play_mm=0.4))
    assert springs.push_n_mm.sum() == pytest.approx(150 * 500)
    assert springs.push_n_mm[0] == springs.push_n_mm[-1] == pytest.approx(springs.push_n_mm[1] / 2)
    assert springs.pull_n_mm == pytest.approx(springs.push_n_mm)
    assert set(springs.push_from_mm) == {-0.2} and set(springs.pull_from_mm) == {0.2}
    assert (from_start[0], from_start[-1]) == (0, 500)
    np.testing.assert_allclose(places[:, 1], from_start - 250)
    assert np.diff(from_start).max() <= 25 + 1e-9
    short = _joints(Beam((0, -40), (0, 40), 1e8))[1]
    assert len(short) == 9


def test_screws_of_a_batten_pull_and_its_edge_pushes():
    beam = Beam((0, -250), (0, 250), 1e8, (50.0, 450.0), joint_stiffness_n_mm=900.0, play_mm=0.4)
    places, from_start, springs = _joints(beam)
    screws = springs.pull_n_mm > 0
    assert from_start[screws].tolist() == [50, 450]
    assert places[screws].tolist() == [[0, -200], [0, 200]]
    assert springs.pull_n_mm[screws].tolist() == [900, 900]
    assert springs.push_n_mm[screws].tolist() == [0, 0] == springs.push_from_mm[screws].tolist()
    assert springs.pull_from_mm[screws].tolist() == [0.4, 0.4]
    assert springs.push_n_mm[~screws].sum() == pytest.approx(200 * 500)


def test_a_screw_of_a_batten_is_as_stiff_as_a_screwed_button():
    """One estimate serves the table of kinds, an anchor and a batten's screw; and one what presses across the grain."""
    beam = Beam((0, 0), (0, 90), 1e6)
    assert beam.joint_stiffness_n_mm == Anchor(0, 0).stiffness_n_mm == find_kind("button").stiffness_n_mm
    assert beam.bearing_n_mm2 == Bearing(((0, 0), (0, 90))).stiffness_n_mm2
    assert (beam.play_mm, beam.crown_per_mm, beam.screws_mm) == (0, 0, ())
    plain = Anchor(0, 0)
    assert (plain.slack_mm, plain.seat_mm, plain.limit_n, plain.both_ways) == (0, 0, None, False)
