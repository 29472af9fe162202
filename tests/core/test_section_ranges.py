"""Sections at the ends of what they allow: the last value taken, the first one refused, and what the refusal says."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.section.arrangement import way_of
from movement_core.section.board import Board, checked_samples, holds_pith
from movement_core.section.elastic import CrossStiffness
from movement_core.section.field import strains
from movement_core.section.log import live_sawn, rip
from movement_core.section.movement import free_section, section_movement
from movement_core.section.panel import Panel
from movement_core.section.rings import Rings, cut_class
from movement_core.section.settled import why_not_settled
from movement_core.section.shapes import bend, end_grain_block, leg, moved_outline, round_top


@dataclass(frozen=True)
class Wood:
    radial_coefficient: float = 0.0013
    tangential_coefficient: float = 0.0027


WOOD = Wood()
FAR = (0.0, 9000.0)
A, B = -0.0052, -0.0108


def board(**given):
    return Board(**{"species": WOOD, "width_mm": 100.0, "thickness_mm": 20.0, "pith_mm": FAR, **given})


def moved_width(width):
    return section_movement(width, 20.0, Rings.at(*FAR), A, B)


def moved_thickness(thickness):
    return section_movement(100.0, thickness, Rings.at(*FAR), A, B)


RANGES = {
    "width": (lambda v: board(width_mm=v), 0.1, 5000.0, "0.1 to 5000 mm"),
    "thickness": (lambda v: board(thickness_mm=v), 0.1, 1000.0, "0.1 to 1000 mm"),
    "length": (lambda v: board(length_mm=v), 1.0, 20000.0, "1 to 20000 mm"),
    "change": (lambda v: board().strains(v), -100.0, 100.0, "−100 to 100"),
    "moved width": (moved_width, 0.1, 5000.0, "0.1 to 5000 mm"),
    "moved thickness": (moved_thickness, 0.1, 1000.0, "0.1 to 1000 mm"),
    "kerf": (lambda v: rip(board(width_mm=300.0), [0.0], v), 0.0, 50.0, "0 to 50 mm"),
    "ring angle": (lambda v: Rings.angle(v), 0.0, 90.0, "0 to 90°"),
    "least ring angle": (lambda v: Rings(None, 45.0, (v, 45.0)), 0.0, 90.0, "0 to 90°"),
    "ring radius": (lambda v: Rings.angle(9, heart="show", radius_mm=v), 0.1, 1e5, "0.1 to 100000 mm"),
    "radius alone": (lambda v: Rings.angle(9, radius_mm=v), 0.1, 1e5, "0.1 to 100000 mm"),
    "radius range": (lambda v: Rings.cut("flat", radius_range_mm=(v, 80.0)), 0.1, 1e5, "0.1 to 100000 mm"),
    "curve": (lambda v: Rings.curve(v, (0, 1)), 0.1, 1e5, "0.1 to 100000 mm"),
    "slope": (lambda v: Rings.at(0, 60).with_slope(v), -1.0, 1.0, "-1 to 1"),
    "diameter": (lambda v: round_top(v, A), 1.0, 10000.0, "1 to 10000 mm"),
    "bend angle": (lambda v: bend(v, 300.0, 25.0, A), 0.0, 360.0, "0 to 360°"),
    "bend radius": (lambda v: bend(90.0, v, 25.0, A), 0.0, 1e5, "0 to 100000 mm"),
    "bend thickness": (lambda v: bend(90.0, 300.0, v, A), 0.1, 1000.0, "0.1 to 1000 mm"),
    "leg width": (lambda v: leg(v, 60.0, FAR, A, B), 0.1, 5000.0, "0.1 to 5000 mm"),
    "leg thickness": (lambda v: leg(60.0, v, FAR, A, B), 0.1, 5000.0, "0.1 to 5000 mm"),
    "block length": (lambda v: end_grain_block(v, 300.0, A, B), 1.0, 10000.0, "1 to 10000 mm"),
    "block width": (lambda v: end_grain_block(300.0, v, A, B), 1.0, 10000.0, "1 to 10000 mm"),
    "grain": (lambda v: moved_outline([(1.0, 2.0)], (0.0, v), A, B), 1e-9, 1e9, "1e-09 to 1e+09"),
    "samples": (lambda v: checked_samples(v, "board"), 2, 1_000_000, "2 to 1000000"),
}


@pytest.mark.parametrize("name", list(RANGES))
def test_both_ends_are_taken_and_nothing_beyond(name):
    make, low, high, says = RANGES[name]
    assert make(low) is not None
    assert make(high) is not None
    beyond = 1 if isinstance(low, int) else 0.5 * min(abs(low) or 1.0, 1.0)
    for wrong in (low - beyond, high + 0.0005 * high):
        with pytest.raises(InputError) as caught:
            make(wrong)
        assert says in str(caught.value)


@pytest.mark.parametrize(("diameter", "taken"), [(9.9, False), (10.0, True), (5000.0, True), (5000.5, False)])
def test_a_log_is_thicker_than_a_twig(diameter, taken):
    lines = [-0.05 * diameter, 0.05 * diameter]
    if taken:
        assert len(live_sawn(WOOD, diameter, (0.0, 4000.0), lines, 0.5)) == 1
    else:
        with pytest.raises(InputError, match=r"log diameter.*10 to 5000 mm"):
            live_sawn(WOOD, diameter, (0.0, 4000.0), lines, 0.5)


@pytest.mark.parametrize("which", ["radial_coefficient", "tangential_coefficient"])
def test_a_wood_moves_by_less_than_two_percent_a_point(which):
    for taken in (0.0, 0.0199):
        assert getattr(board(species=Wood(**{which: taken})).species, which) == taken
    for wrong in (-1e-6, 0.02, np.inf, np.nan):
        with pytest.raises(InputError, match=rf"{which} is .*0 to 0\.02"):
            board(species=Wood(**{which: wrong}))


def test_half_a_sample_is_none():
    with pytest.raises(InputError, match=r"2\.5 samples"):
        checked_samples(2.5, "board")


def test_a_pith_on_the_edge_is_outside():
    for pith in ((50.0, 0.0), (-50.0, 3.0), (0.0, 10.0), (4.0, -10.0)):
        assert not holds_pith(100.0, 20.0, pith)
        assert not board(pith_mm=pith).holds_pith
    for pith in ((49.99, 0.0), (-49.99, 9.99), (0.0, -9.99)):
        assert holds_pith(100.0, 20.0, pith)
        with pytest.raises(InputError, match=r"\|x\| ≥ 50 mm or \|y\| ≥ 10 mm"):
            board(pith_mm=pith)


def test_strain_leaves_some_wood():
    assert strains(-0.999, 0.5)[0] == -0.999
    for wrong in ((-1.0, 0.0), (0.0, -1.0)):
        with pytest.raises(InputError, match="leaves no wood"):
            strains(*wrong)


def test_sizes_of_many_sections_are_above_nothing():
    assert free_section([0.5, 1e-6], 1e-6, (0.0, 60.0), A, B).width_change_mm.shape == (2,)
    for wrong in (0.0, -3.0):
        with pytest.raises(InputError, match=f"width {wrong:g} mm.*above 0 mm"):
            free_section([90.0, wrong], 20.0, (0.0, 60.0), A, B)
        with pytest.raises(InputError, match=f"thickness {wrong:g} mm.*above 0 mm"):
            free_section(90.0, [20.0, wrong], (0.0, 60.0), A, B)


@pytest.mark.parametrize(
    "wrong",
    [
        (0.0, 620.0, 180.0, 0.5),
        (1130.0, 0.0, 180.0, 0.5),
        (1130.0, 620.0, 0.0, 0.5),
        (1e6, 620.0, 180.0, 0.5),
        (1130.0, 620.0, np.nan, 0.5),
        (800.0, 200.0, 180.0, 2.0),
        (800.0, 200.0, 180.0, np.nan),
    ],
)
def test_stiffness_is_that_of_a_stable_material(wrong):
    with pytest.raises(InputError, match="poisson_rt² below E_R ÷ E_T"):
        CrossStiffness(*wrong)


def test_stiffness_is_taken_up_to_the_edge_of_stability():
    """The compliance in the plane has a determinant above 0 as long as ν² < E_R ÷ E_T; a soft wood is wood too."""
    for taken in ((800.0, 200.0, 180.0, 1.999), (800.0, 200.0, 180.0, 0.0), (0.5, 0.5, 0.5, 0.3)):
        assert np.linalg.eigvalsh(CrossStiffness(*taken).matrix()).min() > 0.0


def test_the_stiffness_taken_is_the_mean_of_the_table():
    """Means of the ratios to E_L = 11.5 GPa of seven woods, FPL-GTR-190 Tables 5-1 and 5-2 (recalled), to 10 MPa."""
    taken = CrossStiffness()
    values = (taken.radial_mpa, taken.tangential_mpa, taken.shear_mpa)
    assert values == tuple(round(11500.0 * ratio, -1) for ratio in (0.098, 0.054, 0.016))
    assert taken.poisson_rt == 0.56


def test_boards_of_one_panel_differ_by_a_quarter_at_most():
    Panel([board(), board(thickness_mm=25.0)])
    with pytest.raises(InputError, match=r"ratio of 1\.25"):
        Panel([board(), board(thickness_mm=25.1), board(thickness_mm=22.0)])


def test_a_hundredth_of_the_thickness_is_passed_over_when_settling():
    assert why_not_settled([board(), board(thickness_mm=20.2)]) == ""
    assert "20 to 20.3 mm" in why_not_settled([board(thickness_mm=20.3), board()])


@pytest.mark.parametrize(
    ("degrees", "word"),
    [(0, "flat"), (29.9, "flat"), (30, "rift"), (59.9, "rift"), (60, "quarter"), (90, "quarter")],
)
def test_a_cut_begins_at_its_least_angle(degrees, word):
    assert cut_class(degrees) == word
    assert Rings.angle(degrees).cut_class == word


@pytest.mark.parametrize(
    ("heights", "way"),
    [
        ((0.0, 1.0, -0.25, 0.0), "crown"),
        ((0.0, 1.0, -0.26, 0.0), "waves"),
        ((0.0, -1.0, 0.25, 0.0), "hollow"),
        ((0.0, -1.0, 0.26, 0.0), "waves"),
        ((0.0, 1e-6, 0.0), "flat"),
        ((0.0, -1e-6, 0.0), "flat"),
        ((0.0, 1.1e-6, 0.0), "crown"),
        ((0.0, -1.1e-6, 0.0), "hollow"),
    ],
)
def test_an_arc_is_an_arc_while_its_other_side_is_a_quarter_of_it(heights, way):
    assert way_of(np.array(heights)) == way


def test_picked_points_lie_twice_the_pick_error_apart():
    near = [(0.0, 0.0), (1.0, 0.0), (60.0, 9.0)]
    with pytest.raises(InputError, match=r"only 1 mm apart.*pick error of 0\.5 mm"):
        Rings.through(near)
    assert Rings.through(near, pick_error_mm=0.49)
    # by default a pick may be half a millimetre off, so that a bend of 0.75 mm may be none
    assert Rings.through([(-40.0, 0.0), (0.0, 0.75), (40.0, 0.0)]).pith_mm is None
    assert Rings.through([(-40.0, 0.0), (0.0, 0.76), (40.0, 0.0)]).pith_mm is not None
