"""Properties of the held plate that need no outside figure, and common practice of the trade."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.holding import basis, springs
from movement_core.holding.contact_points import contact_points
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.held import DEEP_BENDING, DEEP_CUP, ROCKS, TIPS
from movement_core.holding.model import Anchor, Beam, Bearing, Elastic, LoadCase, Plate
from movement_core.holding.plate import hold, prepare
from movement_core.holding.plate_energy import bending_stiffness
from movement_core.holding.polygon import clip_to_rectangle, inside_polygon
from movement_core.section.board import Board
from movement_core.section.panel import Panel

OAK = Elastic(13500, 1080, 1090, 0.42)


def frame(length, width, inset=30.0, broad=20.0):
    """Four flat rails under a top, seen from above."""
    a, b = length / 2 - inset, width / 2 - inset

    def box(s0, x0, s1, x1):
        return Bearing(((s0, x0), (s1, x0), (s1, x1), (s0, x1)))

    return [
        box(-a, -b, a, -b + broad), box(-a, b - broad, a, b), box(-a, -b, -a + broad, b), box(a - broad, -b, a, b)
    ]  # fmt: skip


TOP = Plate(1100, 600, 20, OAK, 750)
TRIAL = prepare(TOP, frame(1100, 600))
DRYING = LoadCase("driest", FreeCurvature.even(600, 0.8e-4))
DAMP = LoadCase("wettest", FreeCurvature.even(600, -0.8e-4))
ENDS = [Anchor(-510, 0.0), Anchor(510, 0.0)]


def test_no_curvature_no_force():
    weightless = prepare(Plate(1100, 600, 20, OAK), frame(1100, 600))
    (held,) = hold(weightless, ENDS, [LoadCase("as built", FreeCurvature.even(600, 0.0))])
    assert held.worst_anchor_n < 1e-9
    assert held.out_of_flat_mm < 1e-9


@settings(max_examples=15, deadline=None)
@given(
    st.lists(st.floats(-2e-4, 2e-4), min_size=5, max_size=5),
    st.lists(st.floats(-0.01, 0.01), min_size=4, max_size=4),
    st.floats(-2e-6, 2e-6),
)
def test_held_nowhere_keeps_its_free_shape(crown, kinks, twist):
    lines = tuple(np.linspace(-300, 300, 6))
    free = FreeCurvature(lines, tuple(crown), tuple(kinks), twist_per_mm=twist)
    (held,) = hold(prepare(TOP), [], [LoadCase("", free)])
    wanted = free.height(held.across_mm) + twist * np.outer(held.along_mm, held.across_mm)
    off = held.height_mm - wanted
    s, x = held.along_mm[:, None], held.across_mm[None, :]
    fit = np.stack([np.ones(off.shape), s + 0 * x, x + 0 * s], axis=-1).reshape(-1, 3)
    left = off.ravel() - fit @ np.linalg.lstsq(fit, off.ravel(), rcond=None)[0]
    assert np.max(np.abs(left)) < 1e-9
    assert held.deflection_mm < 1e-9


@settings(max_examples=25, deadline=None)
@given(
    st.lists(st.floats(-2e-4, 2e-4), min_size=4, max_size=4),
    st.lists(
        st.tuples(st.floats(-500, 500), st.floats(-250, 250), st.floats(0, 1), st.sampled_from([None, 60.0])),
        max_size=6,
    ),
)
def test_forces_balance_the_weight_and_obey_their_signs(crown, places):
    free = FreeCurvature((-300, -120, 10, 150, 300), tuple(crown))
    anchors = [Anchor(s, x, slack_mm=slack, limit_n=limit) for s, x, slack, limit in places]
    (held,) = hold(TRIAL, anchors, [LoadCase("", free)])
    push = held.contact_force_n
    assert np.all(push >= 0)
    assert np.all(held.anchor_force_n >= 0)
    points = np.vstack(
        [held.contact_points_mm, [(a.along_mm, a.across_mm) for a in anchors] or np.zeros((0, 2))]
    )
    up = np.concatenate([push, -held.anchor_force_n])
    assert np.sum(up) == pytest.approx(TOP.weight_n, abs=0.05)
    assert up @ points == pytest.approx([0, 0], abs=30.0)  # N·mm; the trace of stiffness takes what is left
    for anchor, force, lift in zip(anchors, held.anchor_force_n, held.anchor_lift_mm):
        pull = anchor.stiffness_n_mm * max(lift - anchor.slack_mm, 0.0)
        assert force == pytest.approx(min(pull, anchor.limit_n or np.inf), abs=1e-6)


def test_mirrored_panel_gives_the_mirrored_answer():
    free = FreeCurvature((-300, -50, 300), (2e-4, -0.5e-4), (0.004,))
    flipped = FreeCurvature((-300, 50, 300), (-0.5e-4, 2e-4), (0.004,))
    anchors, mirrored = [Anchor(200, 150), Anchor(-300, -250)], [Anchor(200, -150), Anchor(-300, 250)]
    one = hold(prepare(TOP, frame(1100, 600), glue_lines_mm=(-50,)), anchors, [LoadCase("", free)])[0]
    two = hold(prepare(TOP, frame(1100, 600), glue_lines_mm=(50,)), mirrored, [LoadCase("", flipped)])[0]
    assert one.out_of_flat_mm == pytest.approx(two.out_of_flat_mm, rel=1e-6)
    assert one.anchor_force_n == pytest.approx(two.anchor_force_n, rel=1e-6, abs=1e-6)


def test_a_like_trial_to_start_from_changes_nothing():
    cold = hold(TRIAL, ENDS, [DRYING, DAMP])
    near = hold(TRIAL, [Anchor(-510, 40.0), Anchor(510, -40.0)], [DRYING, DAMP])
    warm = hold(TRIAL, ENDS, [DRYING, DAMP], start=near)
    for a, b in zip(cold, warm):
        assert a.height_mm == pytest.approx(b.height_mm, abs=1e-6)
        assert a.anchor_force_n == pytest.approx(b.anchor_force_n, abs=1e-4)


def test_anchor_gives_way_at_its_limit():
    weak = [Anchor(s, 0.0, limit_n=50.0) for s in (-510, 510)]
    (held,) = hold(TRIAL, weak, [DRYING])
    assert held.anchor_force_n == pytest.approx([50, 50])
    (strong,) = hold(TRIAL, ENDS, [DRYING])
    assert strong.out_of_flat_mm < held.out_of_flat_mm


def test_clip_that_pulls_in_flattens_a_little_more():
    pulled = [Anchor(s, 0.0, seat_mm=-0.2) for s in (-510, 510)]
    (a,), (b,) = hold(TRIAL, ENDS, [DRYING]), hold(TRIAL, pulled, [DRYING])
    assert np.all(b.anchor_force_n > a.anchor_force_n)


# Common practice, no source: what the trade says of tops, as tests.


def test_heart_side_up_while_drying_edges_press_and_the_ends_hold_the_centre():
    (free,), (held,) = hold(TRIAL, [], [DRYING]), hold(TRIAL, ENDS, [DRYING])
    pressed = np.abs(held.contact_points_mm[held.contact_force_n > 1, 1])
    assert np.all(pressed > 240)  # on the long rails
    assert held.out_of_flat_mm < 0.6 * free.out_of_flat_mm
    assert np.all(held.anchor_force_n > 50)


def test_the_same_top_in_the_damp_is_not_held_by_its_ends():
    (free,), (held,) = hold(TRIAL, [], [DAMP]), hold(TRIAL, ENDS, [DAMP])
    assert held.out_of_flat_mm > 0.95 * free.out_of_flat_mm
    assert held.worst_anchor_n < 10
    assert ROCKS in held.flags
    assert max(lift.gap_mm for lift in held.lifted) > 1.0


def test_a_hair_of_hollow_is_not_called_rocking():
    (hair,) = hold(TRIAL, [], [LoadCase("", FreeCurvature.even(600, -4e-6))])
    assert ROCKS not in hair.flags
    weightless = prepare(Plate(1100, 600, 20, OAK), frame(1100, 600))
    (flat,) = hold(weightless, ENDS, [LoadCase("", FreeCurvature.even(600, 0.0))])
    assert flat.flags == ()


def test_mixed_faces_need_more_than_end_anchors():
    """Alternating boards, the same curvature each: the ends alone leave waves that six more take out."""
    mixed = LoadCase("", FreeCurvature((-300, -100, 100, 300), (2e-4, -2e-4, 2e-4)))
    more = ENDS + [Anchor(s, x) for s in (-510, 510) for x in (-190, 190)] + [Anchor(0, -260), Anchor(0, 260)]
    (few,), (many,) = hold(TRIAL, ENDS, [mixed]), hold(TRIAL, more, [mixed])
    assert many.out_of_flat_mm < 0.9 * few.out_of_flat_mm


@pytest.mark.parametrize(("length", "least", "most"), [(1000, 0.3, 0.6), (2000, 0.75, 1.0)])
def test_long_top_held_at_its_ends_keeps_its_crown_in_the_middle(length, least, most):
    """About half at twice the width (common practice, no source); longer tops keep nearly all."""
    plate = Plate(length, 500, 20, OAK, 750)
    trial = prepare(plate, frame(length, 500, inset=10))
    case = LoadCase("", FreeCurvature.even(500, 1.6e-4))
    (free,) = hold(trial, [], [case])
    (held,) = hold(trial, [Anchor(s * (length / 2 - 20), 0.0) for s in (-1, 1)], [case])
    assert least < held.out_of_flat_mm / free.out_of_flat_mm < most


def test_battens_keep_a_frameless_top_flat():
    battens = [Beam((s, -270), (s, 270), 12000 * 40 * 30**3 / 12) for s in (-350, 350)]
    (free,), (held,) = hold(prepare(TOP), [], [DRYING]), hold(prepare(TOP, [], battens), [], [DRYING])
    assert held.out_of_flat_mm < 0.6 * free.out_of_flat_mm
    assert all(beam.moment_n_mm > 0 for beam in held.beams)


def test_play_in_a_tongue_gives_back_some_cup():
    tight, loose = (Beam((540, -290), (540, 290), 3e9, play_mm=p, bearing_n_mm2=500) for p in (0.0, 0.6))
    (a,), (b,) = (hold(prepare(TOP, [], [beam]), [], [DRYING]) for beam in (tight, loose))
    assert a.out_of_flat_mm < b.out_of_flat_mm
    assert np.max(np.abs(b.beams[0].joint_force_n)) < np.max(np.abs(a.beams[0].joint_force_n))


def test_what_thin_plate_theory_does_not_cover_is_flagged():
    deep = LoadCase("", FreeCurvature.even(600, 4e-4))
    (held,) = hold(TRIAL, ENDS, [deep])
    assert DEEP_CUP in held.flags
    strong = [Anchor(s, x) for s in (-510, 0, 510) for x in (-200, 0, 200)]
    (flat,) = hold(TRIAL, strong, [LoadCase("", FreeCurvature.even(600, 6e-4))])
    assert DEEP_BENDING in flat.flags


# Contact points


def test_bearing_beyond_the_edge_is_cut_off_and_its_reach_adds_up():
    plate = Plate(1000, 400, 20, OAK)
    points = contact_points(plate, [Bearing(((-700, 0), (700, 0)))])
    assert np.ptp(points.points_mm[:, 0]) == pytest.approx(1000)
    assert points.reach_mm.sum() == pytest.approx(1000)
    assert len(contact_points(plate, [Bearing(((-700, 300), (700, 300)))]).points_mm) == 0


def test_glue_lines_are_among_the_contact_points():
    plate = Plate(1000, 400, 20, OAK)
    points = contact_points(plate, [Bearing(((300, -200), (300, 200)))], None, (-77.7, 31.0))
    assert {-77.7, 31.0} <= set(np.round(points.points_mm[:, 1], 6))
    assert points.reach_mm.sum() == pytest.approx(400)


def test_wide_bearing_carries_inside_too():
    plate = Plate(1000, 400, 20, OAK)
    board = Bearing(((-300, -150), (300, -150), (300, 150), (-300, 150)))
    places = contact_points(plate, [board]).points_mm
    assert np.any(np.all(np.abs(places) < 60, axis=1))


def test_clipping_and_inside():
    square = np.array([(-10.0, -10.0), (30, -10), (30, 30), (-10, 30)])
    clipped = clip_to_rectangle(square, np.array([20.0, 20.0]))
    assert clipped.min(axis=0) == pytest.approx([-10, -10])
    assert clipped.max(axis=0) == pytest.approx([20, 20])
    assert inside_polygon(np.array([(0.0, 0.0), (29, 29), (31, 0), (-11, 5)]), square).tolist() == [
        True, True, False, False
    ]  # fmt: skip


@pytest.mark.parametrize(
    "make",
    [
        lambda: Plate(0, 400, 20, OAK),
        lambda: Plate(1000, 400, float("nan"), OAK),
        lambda: Elastic(600, 10000, 700, 0.4),
        lambda: Elastic(600, -1, 700),
        lambda: Bearing(((0, 0),)),
        lambda: Anchor(0, 0, stiffness_n_mm=0),
        lambda: Anchor(float("inf"), 0),
        lambda: Beam((0, 0), (0, 0), 1e9),
        lambda: Beam((0, 0), (0, 100), 1e9, screws_mm=(150.0,)),
    ],
)
def test_impossible_values_are_refused(make):
    with pytest.raises(InputError):
        make()


def test_top_that_stands_on_one_side_only_tips_and_says_so():
    trial = prepare(TOP, [Bearing(((300, -200), (300, 200))), Bearing(((450, -200), (450, 200)))])
    (held,) = hold(trial, [], [LoadCase("", FreeCurvature.even(600, 0.0))])
    assert TIPS in held.flags
    (stands,) = hold(TRIAL, [], [LoadCase("", FreeCurvature.even(600, 0.0))])
    assert TIPS not in stands.flags


@pytest.mark.parametrize("place", [(551.0, 0.0), (0.0, -301.0)])
def test_anchor_beyond_the_panel_is_refused(place):
    with pytest.raises(InputError, match="beyond the panel"):
        hold(TRIAL, [Anchor(*place)], [DRYING])
    with pytest.raises(InputError, match="beyond the panel"):
        prepare(TOP, [], [Beam((0.0, 0.0), place, 1e9)])


def test_anchor_off_a_round_top_is_refused():
    angles = 2 * np.pi * np.arange(48) / 48
    rim = tuple((float(300 * np.cos(a)), float(300 * np.sin(a))) for a in angles)
    plate = Plate(600, 600, 20, OAK, 700, rim)
    assert plate.area_mm2 == pytest.approx(np.pi * 300**2, rel=0.01)
    assert plate.holds([(0, 0), (300, 0), (250, 250)]).tolist() == [True, True, False]
    trial = prepare(plate, [Bearing(((-300, 0), (300, 0))), Bearing(((250, -300), (250, 300)))])
    assert np.all(np.linalg.norm(trial.contacts.points_mm, axis=1) <= 300.01)
    with pytest.raises(InputError, match="beyond the panel"):
        hold(trial, [Anchor(250, 250)], [LoadCase("", FreeCurvature.even(600, 0.0))])


@settings(max_examples=12, deadline=None)
@given(st.integers(0, 10**6))
def test_contact_search_always_settles_and_balances(seed):
    """Random rails, battens and anchors: forces balance the weight unless the top tips off its support."""
    rng = np.random.default_rng(seed)
    plate = Plate(rng.uniform(300, 2500), rng.uniform(150, 1200), rng.uniform(10, 45), OAK, 700)
    size = np.array([plate.length_mm, plate.width_mm])
    rails = [
        Bearing(tuple(map(tuple, rng.uniform(-0.6, 0.6, (2, 2)) * size))) for _ in range(rng.integers(1, 6))
    ]
    bars = [
        Beam(*map(tuple, rng.uniform(-0.45, 0.45, (2, 2)) * size), 10 ** rng.uniform(7, 10), play_mm=0.3)
        for _ in range(rng.integers(0, 2))
    ]
    anchors = [
        Anchor(*(rng.uniform(-0.5, 0.5, 2) * size), 10 ** rng.uniform(2, 4), limit_n=rng.choice([None, 80.0]))
        for _ in range(rng.integers(0, 8))
    ]
    lines = tuple(np.linspace(-0.5, 0.5, 5) * plate.width_mm)
    free = FreeCurvature(lines, tuple(rng.normal(size=4) * 1e-4), tuple(rng.normal(size=3) * 3e-3))
    (held,) = hold(prepare(plate, rails, bars, glue_lines_mm=lines[1:-1]), anchors, [LoadCase("", free)])
    if TIPS not in held.flags:
        up = held.contact_force_n.sum() - held.anchor_force_n.sum()
        if len(held.contact_force_n):
            assert up == pytest.approx(plate.weight_n, rel=0.01, abs=0.3)


def test_panel_from_the_rings_held_nowhere_keeps_its_chained_profile():
    """Five boards 100 × 20 mm, pith 60 mm from mid-thickness, 4 % drier: 0.88 mm same way up.

    Finite elements of the whole panel gave 0.889 mm (an independent study).
    """

    class Wood:
        radial_coefficient, tangential_coefficient, name = 0.0013, 0.0027, "a test value"

    boards = [Board(Wood(), 100.0, 20.0, (0.0, 60.0)) for _ in range(5)]
    shape = Panel(boards).shape(-4.0)
    half = float(shape.width_mm) / 2
    lines = np.linspace(-half, half, 6)
    free = FreeCurvature.from_profile(shape.profile, lines)
    (held,) = hold(prepare(Plate(1000, 2 * half, 20, OAK)), [], [LoadCase("driest", free)])
    assert held.out_of_flat_mm == pytest.approx(float(shape.out_of_flat_mm), rel=0.005)
    assert held.out_of_flat_mm == pytest.approx(0.889, rel=0.02)


def test_ends_of_different_cup_blend_along_the_top():
    near, far = FreeCurvature.even(600, 1e-4), FreeCurvature.even(600, -1e-4)
    (held,) = hold(prepare(TOP), [], [LoadCase("", near, far)])
    middle = held.height_mm[:, 20] - (held.height_mm[:, 0] + held.height_mm[:, -1]) / 2
    rise = 1e-4 * 600**2 / 8
    assert middle == pytest.approx(np.linspace(rise, -rise, len(held.along_mm)), abs=1e-6)
    (same,) = hold(TRIAL, ENDS, [LoadCase("", near, near)])
    (plain,) = hold(TRIAL, ENDS, [LoadCase("", near)])
    assert same.anchor_force_n == pytest.approx(plain.anchor_force_n, rel=1e-9)


def bent(plate, terms, across_only):
    """½cᵀKc of the shape ½κx² over the width, or ½κs² over the length, with κ = 1e-4."""
    along, across = (np.linspace(-size / 2, size / 2, 41) for size in (plate.length_mm, plate.width_mm))
    square = across if across_only else along
    span = plate.width_mm if across_only else plate.length_mm
    table = basis.values(square, span, terms, 0)
    shape = np.linalg.lstsq(table, 0.5e-4 * square**2, rcond=None)[0]
    flat = np.zeros(terms)
    flat[0] = 1.0
    c = np.outer(flat, shape) if across_only else np.outer(shape, flat)
    return float(c.ravel() @ bending_stiffness(plate, (terms, terms)) @ c.ravel() / 2)


SHAPES = {
    "whole": (),
    "diamond": ((-400, 0), (0, -300), (400, 0), (0, 300)),
    "clipped": ((-400, -300), (200, -300), (400, -100), (400, 300), (-400, 300)),
}


@pytest.mark.parametrize("outline", SHAPES.values(), ids=SHAPES)
@pytest.mark.parametrize("across_only", [True, False])
def test_the_energy_of_an_evenly_bent_top_is_that_of_its_own_area(outline, across_only):
    """Kirchhoff: energy of an even curvature = ½ D κ² · area, for any outline; derived."""
    plate = Plate(800, 600, 20, OAK, outline_mm=outline)
    stiffness = plate.bending[1 if across_only else 0]
    assert bent(plate, 6, across_only) == pytest.approx(0.5 * stiffness * 1e-8 * plate.area_mm2, rel=1e-9)


def test_what_only_rounding_still_moves_has_come_to_rest(monkeypatch):
    """Where springs lie at the edge of their state, rounding alone may keep flipping it: no step is ever whole."""
    (before,) = hold(TRIAL, ENDS, [DAMP])
    monkeypatch.setattr(springs, "_line_search", lambda *_: 0.5)
    (halved,) = hold(TRIAL, ENDS, [DAMP])
    assert halved.out_of_flat_mm == pytest.approx(before.out_of_flat_mm, abs=1e-6)
    assert halved.contact_force_n == pytest.approx(before.contact_force_n, abs=1e-3)
