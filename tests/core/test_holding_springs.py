"""Springs on a body of one or two joints, solved by hand; what is read off a held panel, and its flags."""

from __future__ import annotations

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from movement_core.holding.contact_points import ContactPoints
from movement_core.holding.free_curvature import FreeCurvature
from movement_core.holding.held import (
    DEEP_BENDING,
    DEEP_CUP,
    ROCKS,
    TIPS,
    BeamResult,
    _lifted,
    _narrowest,
    _samples,
    _trapezoid,
    surface_result,
)
from movement_core.holding.model import Anchor, Beam, Bearing, Elastic, LoadCase, Plate
from movement_core.holding.plate import hold, prepare
from movement_core.holding.springs import (
    Body,
    ConvergenceError,
    Springs,
    _line_search,
    equilibrium,
    push_only,
)
from movement_core.holding.stiffeners import bar, bar_stress_mpa, tongue_load_n_mm

OAK = Elastic(13500, 1080, 1090, 0.42)
PLATE = Plate(1100, 600, 20, OAK, 750)
FLAT = LoadCase("flat", FreeCurvature.even(600, 0.0))
RIM = [Bearing(((-500, x), (500, x))) for x in (-250, 250)] + [
    Bearing(((s, -250), (s, 250))) for s in (-500, 500)
]


def springs(*rows):
    return Springs(*(np.array(column, dtype=float) for column in zip(*rows)))


LAWS = springs((100.0, -1.0, 50.0, 2.0, 75.0), (100.0, 0.0, 0.0, 0.0, np.inf), (0.0, 0.0, 50.0, 0.5, np.inf))


def test_a_spring_pushes_is_idle_pulls_and_gives_way():
    """100 N/mm below −1 mm, 50 N/mm above 2 mm up to 75 N, that is at 3.5 mm."""
    cases = ((-3.0, -200, -1), (-1.0, 0, 0), (2.0, 0, 0), (3.0, 50, 1), (3.5, 75, 2), (9.0, 75, 2))
    for extension, force, state in cases:
        assert LAWS.force(np.full(3, extension))[0] == pytest.approx(force)
        assert LAWS.states(np.full(3, extension))[0] == state
    assert LAWS.force(np.full(3, 4.0)).tolist() == [75, 0, 175]
    assert LAWS.states(np.full(3, 4.0)).tolist() == [2, 0, 1]
    assert LAWS.states(np.full(3, -0.5)).tolist() == [0, -1, 0]
    both = LAWS.joined(push_only(np.array([7.0])))
    assert both.force(np.array([0.0, 0.0, 0.0, -2.0])).tolist() == [0, 0, 0, -14]
    assert both.force(np.full(4, 5.0))[3] == 0


def lifted_body(load, unloaded=0.0):
    """One spring at a body that gives 0.01 mm/N and has one rigid motion, straight up."""
    return Body(np.array([[0.01]]), np.array([unloaded]), np.array([[1.0]]), np.array([load]), 1e-6)


def test_a_loaded_body_rests_on_its_spring():
    """30 N down on 100 N/mm: the spring shortens by 0.3 mm; pulled up with 30 N by 50 N/mm it goes up its slack too."""
    law = springs((100.0, 0.0, 50.0, 0.5, np.inf))
    down = equilibrium(lifted_body(-30.0), law, np.array([-1], dtype=np.int8))
    assert (down.extension_mm[0], down.force_n[0]) == pytest.approx((-0.3, -30), abs=1e-4)
    up = equilibrium(lifted_body(30.0), law, np.array([-1], dtype=np.int8))
    assert (up.extension_mm[0], up.force_n[0]) == pytest.approx((0.5 + 0.6, 30), abs=1e-4)
    assert up.steps > down.steps
    # extension = unloaded − compliance × force + rigid
    assert up.rigid_mm[0] == pytest.approx(1.1 + 0.3, abs=1e-4)


def test_two_springs_share_by_their_stiffness_and_slack():
    """A rigid body pulled up with 120 N by 20 and 40 N/mm, the second 1 mm later: 20 x + 40 (x − 1) = 120."""
    body = Body(np.zeros((2, 2)), np.zeros(2), np.ones((2, 1)), np.array([120.0]), 1e-9)
    law = springs((0.0, 0.0, 20.0, 0.0, np.inf), (0.0, 0.0, 40.0, 1.0, np.inf))
    found = equilibrium(body, law, np.array([1, 0], dtype=np.int8))
    assert found.rigid_mm[0] == pytest.approx(160 / 60)
    assert found.force_n == pytest.approx([20 * 160 / 60, 40 * 100 / 60])
    # where the first gives way at 30 N the second takes the rest
    weak = springs((0.0, 0.0, 20.0, 0.0, 30.0), (0.0, 0.0, 40.0, 1.0, np.inf))
    given = equilibrium(body, weak, np.array([1, 0], dtype=np.int8))
    assert given.force_n == pytest.approx([30, 90])
    assert given.rigid_mm[0] == pytest.approx(1 + 90 / 40)


@pytest.mark.parametrize("seed", range(12))
def test_any_springs_settle_where_every_force_is_its_law(seed):
    """Random bodies, stiff and soft, with slack and limits: forces by their laws, and in balance with the load."""
    rng = np.random.default_rng(seed)
    count = 24
    shapes = rng.normal(size=(count, count))
    rigid = np.column_stack([np.ones(count), np.linspace(-1.0, 1.0, count)])
    body = Body(
        shapes @ shapes.T * 10 ** rng.uniform(-4, -2),
        rng.normal(scale=0.5, size=count),
        rigid,
        np.array([rng.uniform(-200, 100), rng.uniform(-20, 20)]),
        1e-3,
    )
    law = Springs(
        10 ** rng.uniform(-1, 3, count),
        rng.normal(scale=0.1, size=count) - 0.3,
        np.where(rng.random(count) < 0.5, 10 ** rng.uniform(-1, 3, count), 0.0),
        rng.uniform(0.0, 0.3, count),
        np.where(rng.random(count) < 0.5, rng.uniform(1.0, 20.0, count), np.inf),
    )
    found = equilibrium(body, law, rng.integers(-1, 2, count).astype(np.int8) * (law.pull_n_mm > 0))
    np.testing.assert_allclose(found.force_n, law.force(found.extension_mm), atol=1e-6)
    np.testing.assert_allclose(
        found.extension_mm,
        body.unloaded_mm - body.compliance @ found.force_n + rigid @ found.rigid_mm,
        atol=1e-7,
    )
    np.testing.assert_allclose(rigid.T @ found.force_n + 1e-3 * found.rigid_mm, body.rigid_load_n, atol=1e-5)


def test_a_first_guess_that_is_right_takes_one_step():
    law = springs((0.5, 0.0, 0.5, 0.5, np.inf))
    found = equilibrium(lifted_body(-30.0), law, np.array([-1], dtype=np.int8), most_steps=1)
    assert (found.steps, found.force_n[0]) == (1, pytest.approx(-30, abs=1e-3))
    two = springs((100.0, 0.0, 50.0, 0.5, np.inf), (100.0, -50.0, 50.0, 50.0, np.inf))
    body = Body(np.diag([0.01, 0.01]), np.zeros(2), np.ones((2, 1)), np.array([-30.0]), 1e-6)
    idle = equilibrium(body, two, np.array([-1, 0], dtype=np.int8), most_steps=1)
    assert idle.force_n == pytest.approx([-30, 0], abs=1e-4) and idle.force_n[1] == 0


def test_a_search_that_may_take_no_step_says_that_it_did_not_settle():
    law = springs((100.0, 0.0, 50.0, 0.5, np.inf))
    with pytest.raises(ConvergenceError, match="after 1 steps"):
        equilibrium(lifted_body(30.0), law, np.array([-1], dtype=np.int8), most_steps=1)


def test_a_step_is_cut_where_the_energy_along_it_is_least():
    """Slope of the body −10; a spring that starts at 1 mm of 4 with 10 N/mm: 10·(4s − 1)·4 = 10 at s = 5/16."""
    law = springs((0.0, 0.0, 10.0, 1.0, np.inf))
    assert _line_search(-10.0, 0.0, np.zeros(1), np.array([4.0]), law) == pytest.approx(5 / 16)
    assert _line_search(-1000.0, 0.0, np.zeros(1), np.array([4.0]), law) == 1.0
    limited = springs((0.0, 0.0, 10.0, 1.0, 5.0))
    assert _line_search(-10.0, 0.0, np.zeros(1), np.array([4.0]), limited) == pytest.approx((1 + 0.25) / 4)
    assert _line_search(-40.0, 0.0, np.zeros(1), np.array([4.0]), limited) == 1.0  # it gives way before


# What is read off


def test_a_grid_holds_glue_lines_and_its_best_plane_takes_out_any_tilt():
    samples = _samples(PLATE, (4, 4), (-300.0, -77.7, 300.0))
    assert samples.along_mm.size == 33 and -77.7 in samples.across_mm
    assert (samples.along_mm[0], samples.along_mm[-1]) == (-550, 550)
    assert (samples.across_mm[0], samples.across_mm[-1]) == (-300, 300)
    s, x = samples.points_mm.T
    assert np.abs(samples.off_plane(3 + 0.01 * s - 0.02 * x)).max() < 1e-9
    # an even saddle keeps its shape; a dome of κ·x²/2 is off by its mean over the width, κW²/24
    np.testing.assert_allclose(samples.off_plane(1e-5 * s * x), 1e-5 * s * x, atol=1e-9)
    dome = samples.off_plane(0.5e-4 * x**2)
    assert dome.min() == pytest.approx(-1e-4 * 600**2 / 24, rel=5e-3)
    assert np.ptp(dome) == pytest.approx(1e-4 * 600**2 / 8, rel=1e-4)
    assert _trapezoid(np.array([0.0, 1.0, 3.0, 7.0])).tolist() == [0.5, 1.5, 3.0, 2.0]


def test_a_shaped_top_is_looked_at_to_its_corners():
    """A triangle: the grid inside it and its three corners, which stand for no area of their own."""
    corners = ((-550.0, -300.0), (550.0, -300.0), (-550.0, 300.0))
    shaped = Plate(1100, 600, 20, OAK, 750, corners)
    trial = prepare(shaped, terms=(6, 6))
    case = LoadCase("twisted", FreeCurvature((-300, 300), (0.0,), twist_per_mm=1e-5))
    (found,) = hold(trial, [], [case])
    across = np.array(corners)[:, 1]
    samples = _samples(shaped, trial.terms, case.free.lines_mm)
    assert samples.points_mm[-3:].tolist() == [list(corner) for corner in corners]
    inside = ~np.isnan(found.height_mm)
    assert inside[0, 0] and not inside[-1, -1] and not inside[20, 25]
    assert samples.points_mm.shape[0] == inside.sum() + 3
    off = samples.off_plane(1e-5 * samples.points_mm[:, 0] * samples.points_mm[:, 1])
    assert found.out_of_flat_mm == pytest.approx(np.ptp(off), abs=1e-6)
    given = np.zeros(len(trial.inverse))
    given[2 * trial.terms[1]] = 1.0  # P₂ along: 1 at both ends, −½ in the middle
    own = given.reshape(trial.terms)
    rim = ((samples.rim_along @ own) * samples.rim_across).sum(axis=1)
    assert rim == pytest.approx([1.0, 1.0, 1.0])
    tilted = np.zeros(trial.terms)
    tilted[0, 1] = 1.0  # P₁ across: its sign is the corner's side
    assert ((samples.rim_along @ tilted) * samples.rim_across).sum(axis=1) == pytest.approx(across / 300)


def test_the_narrowest_width_of_points():
    square = [(0, 0), (40, 0), (40, 30), (0, 30)]
    assert _narrowest(square) == pytest.approx(30)
    assert _narrowest([(x, x) for x in (0.0, 5.0, 9.0)]) == pytest.approx(0, abs=1e-9)  # 45° is looked along
    assert _narrowest([(0, 0), (9, 0)]) == 0
    assert _narrowest([(0, 0), (40, 0), (0, 30)]) == pytest.approx(
        24, rel=0.02
    )  # the height on its long side
    turned = np.array([(x - y, x + y) for x, y in square]) / np.sqrt(2)
    assert _narrowest(turned) == pytest.approx(30)


def test_stretches_that_lift_are_told_with_their_ends():
    places = np.array([(float(s), 0.0) for s in range(5)] + [(0.0, float(x)) for x in range(4)])
    contacts = ContactPoints(
        places, np.zeros(9), np.ones(9), np.ones(9), np.array([0] * 5 + [3] * 4), ((0, 5), (5, 9))
    )
    gaps = np.array([0.0, 0.06, 0.2, 0.05, 0.07, 0.3, 0.0, 0.0, 0.4])
    found = _lifted(SimpleNamespace(contacts=contacts), gaps)
    assert [(lift.bearing, lift.start_mm, lift.end_mm, lift.gap_mm) for lift in found] == [
        (0, (1, 0), (2, 0), 0.2), (0, (4, 0), (4, 0), 0.07), (3, (0, 0), (0, 0), 0.3), (3, (0, 3), (0, 3), 0.4),
    ]  # fmt: skip


TRIAL = prepare(PLATE, RIM)


def read_off(case=FLAT, coefficients=None, gap=0.0, carried=True, push=1.0, anchors=()):
    """The figures of a panel whose unknowns and forces are given, not solved."""
    count = len(TRIAL.inverse)
    given = np.zeros(count) if coefficients is None else coefficients
    contacts = len(TRIAL.contacts.points_mm)
    pulls = np.array([pull for _, pull in anchors])
    return surface_result(
        TRIAL,
        case,
        given,
        anchor_points_mm=np.array([point for point, _ in anchors], dtype=float).reshape(-1, 2),
        anchor_force_n=pulls,
        anchor_lift_mm=np.zeros(len(anchors)),
        contact_force_n=np.full(contacts, push) if np.isscalar(push) else push,
        contact_gap_mm=np.full(contacts, gap),
        beams=(),
        steps=1,
        carried=carried,
    )


def coefficients(**given):
    """Unknowns with P_i along times P_j across set, named w20 for i = 2, j = 0."""
    out = np.zeros(len(TRIAL.inverse))
    for name, value in given.items():
        out[int(name[1]) * TRIAL.terms[1] + int(name[2])] = value
    return out


def test_a_bend_is_measured_about_its_best_plane():
    """P₂ along of height a: from −a/2 to a; its mean is 0 and no plane leans."""
    found = read_off(coefficients=coefficients(w20=2.0, w00=5.0, w10=1.0, w01=-1.0))
    assert found.out_of_flat_mm == pytest.approx(3.0, rel=1e-3)
    assert found.deflection_mm == pytest.approx(2.0, rel=5e-3)
    assert found.height_mm[0, 0] == pytest.approx(2.0 + 5.0 - 1.0 + 1.0)
    np.testing.assert_allclose(found.edge_pressure_n_mm * TRIAL.contacts.reach_mm, 1.0)
    assert found.worst_anchor_n == 0


@pytest.mark.parametrize(("height", "deep"), [(9.8, False), (10.2, True)])
def test_more_than_half_the_thickness_is_beyond_thin_plates(height, deep):
    assert (DEEP_BENDING in read_off(coefficients=coefficients(w20=height)).flags) == deep
    free = LoadCase("cup", FreeCurvature.even(600, 8 * height / 600**2))
    assert (DEEP_CUP in read_off(free, coefficients(w20=0.01)).flags) == deep
    assert DEEP_CUP not in read_off(free, coefficients(w20=0.0005)).flags  # hardly bent, nothing is carried


@pytest.mark.parametrize(("sunk", "tips"), [(109.0, False), (111.0, True)])
def test_a_top_that_sinks_by_a_tenth_of_its_length_tips(sunk, tips):
    for rigid in ("w00", "w10", "w01"):
        for sign in (-1, 1):
            assert (TIPS in read_off(coefficients=coefficients(**{rigid: sign * sunk})).flags) == tips
    assert TIPS not in read_off(coefficients=coefficients(w00=200.0), carried=False).flags
    cup = LoadCase("cup", FreeCurvature.even(600, 8 * 40.0 / 600**2))  # three times 40 mm is more than 111
    assert TIPS not in read_off(cup, coefficients(w00=sunk)).flags


def test_a_top_rocks_on_one_line_where_it_stands_off_by_more_than_a_feeler():
    contacts = len(TRIAL.contacts.points_mm)
    line = np.where(np.abs(TRIAL.contacts.points_mm[:, 1] + 250) < 1e-6, 1.0, 0.0)
    for gap, rocks in ((0.29, False), (0.31, True)):
        assert (ROCKS in read_off(push=line, gap=gap).flags) == rocks
    assert ROCKS not in read_off(push=line, gap=0.5, carried=False).flags
    assert ROCKS not in read_off(push=np.ones(contacts), gap=0.5).flags
    assert ROCKS not in read_off(push=np.zeros(contacts), gap=0.5).flags  # carried by nothing at all
    for aside, rocks in ((-195.0, True), (-185.0, False)):  # a tenth of the narrower side is 60 mm
        held = read_off(push=line, gap=0.5, anchors=[((-400.0, aside), 5.0), ((400.0, aside), 5.0)])
        assert (ROCKS in held.flags) == rocks
    idle = read_off(push=line, gap=0.5, anchors=[((-400.0, 200.0), 0.09), ((400.0, 200.0), 0.09)])
    assert ROCKS in idle.flags


def test_the_worst_anchor_is_the_hardest_pulled_one():
    found = read_off(anchors=[((0.0, 0.0), 3.0), ((10.0, 0.0), 7.0)])
    assert found.worst_anchor_n == 7
    assert replace(found, anchor_force_n=np.array([-0.5, -0.25])).worst_anchor_n == 0
    assert replace(found, anchor_force_n=np.zeros(0)).worst_anchor_n == 0


# Beams


def test_a_bar_is_as_stiff_as_its_section():
    """E·b·h³/12 and M·6/(b·h²), with sizes below one as well as above."""
    beam = bar((0, 0), (0, 400), 0.5, 30.0, 0.8, screws_mm=(10.0,), play_mm=0.2, crown_per_mm=1e-5, name="b")
    assert beam.bending_stiffness_n_mm2 == pytest.approx(0.8 * 0.5 * 27000 / 12)
    assert (beam.screws_mm, beam.play_mm, beam.crown_per_mm, beam.name) == ((10.0,), 0.2, 1e-5, "b")
    plain = bar((0, 0), (0, 400), 40.0, 0.5, 12000.0)
    assert (plain.screws_mm, plain.play_mm, plain.crown_per_mm, plain.name) == ((), 0.0, 0.0, "")
    bent = BeamResult("b", 0.1, 6000.0, np.array([4.0, -10.0, 3.0, 6.0]), np.zeros((4, 2)))
    assert bar_stress_mpa(bent, 40.0, 30.0) == pytest.approx(6000 / 6000)
    assert bar_stress_mpa(bent, 0.5, 30.0) == pytest.approx(6 * 6000 / 450)
    # four joints over 300 mm: 100 mm each, half of it at the ends
    assert tongue_load_n_mm(bent, 300.0) == pytest.approx(max(10 / 100, 6 / 50))
    assert tongue_load_n_mm(
        replace(bent, joint_force_n=np.array([4.0, -20.0, 3.0, 6.0])), 300.0
    ) == pytest.approx(0.2)
    assert tongue_load_n_mm(replace(bent, joint_force_n=np.array([4.0, -20.0])), 0.5) == pytest.approx(80)


def test_a_stiff_bar_takes_its_own_crown_to_the_panel_and_is_bent_by_the_rest():
    """A bar far stiffer than the panel stays as it is; the moment in it is what bends the panel (their curvatures
    meet, as for two beams side by side)."""
    crowned = Beam((0, -250), (0, 250), 1e13, crown_per_mm=1e-4, name="bow")
    (held,) = hold(prepare(PLATE, [], [crowned]), [], [FLAT])
    middle = held.height_mm[16]
    sag = np.interp(0.0, held.across_mm, middle) - np.interp([-250.0, 250.0], held.across_mm, middle).mean()
    assert sag == pytest.approx(1e-4 * 500**2 / 8, rel=0.1)
    assert held.beams[0].name == "bow"
    assert held.beams[0].moment_n_mm > 0


def test_an_anchor_that_works_both_ways_also_pushes():
    domed = LoadCase("domed", FreeCurvature.even(600, -2e-4))
    places = [(-400.0, -200.0), (-400.0, 200.0), (400.0, -200.0), (400.0, 200.0), (0.0, 0.0)]
    (both,) = hold(TRIAL_FREE, [Anchor(*p, both_ways=True) for p in places], [domed])
    assert both.anchor_force_n.min() < -1
    assert both.anchor_force_n.sum() == pytest.approx(-PLATE.weight_n, abs=0.05)
    np.testing.assert_allclose(both.anchor_force_n, 2000 * both.anchor_lift_mm, atol=1e-5)


TRIAL_FREE = prepare(PLATE)
