"""What joints of real assemblies bear: by hand where it can be reckoned, and nothing where nothing is held."""

from __future__ import annotations

import datetime
import itertools

import numpy as np
import pytest

from movement_core.air.presets import find_year
from movement_core.checks import all_findings
from movement_core.piece.contact.across import gap_year
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.found import Contact
from movement_core.piece.contact.swelling import STILL as NO_STRAIN
from movement_core.piece.contact.swelling import Span, Swelling, courses
from movement_core.piece.restrained import PRESSED, PULLED, RELAXED, SHEARED, gap_years
from movement_core.piece.restrained_parts import moduli_of
from movement_core.piece.restrained_ties import GLUE_N_PER_MM3, four_points, slip_modulus
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import whole_piece
from movement_core.sheet.between import between_entry
from movement_core.sheet.between_text import between_sentences
from tests.core.contact_solids import STILL, blocks, bored, peg, piece_of, pose

HOME = find_year("heated cold-winter home")
DAY = datetime.date(2026, 3, 15)
OAK = "white oak; pith 0 -200; built 8"


def whole(pairs, where=STILL, **confirmed):
    piece = solve_piece(piece_of(pairs, where), HOME, DAY)
    names = {tuple(pair.split("__")): kind for pair, kind in confirmed.items()}
    return whole_piece(piece, [body for body, _ in pairs], confirmed=names)


def borne(pairs, where=STILL, **confirmed):
    (found,) = whole(pairs, where, **confirmed).forces.joints
    return found


def runner(tag=OAK, other=OAK, where=STILL):
    side = blocks("side", [((0, 0, 0), (20, 400, 700))], where=where)
    strip = blocks("runner", [((20, 0, 340), (40, 400, 360))], where=where)
    return [(side, f"{tag}; grain z; show x"), (strip, f"{other}; grain y; show x")]


@pytest.mark.parametrize("where", [STILL, pose(4)], ids=["as drawn", "turned"])
def test_a_runner_glued_across_a_side_by_hand(where):
    found = borne(runner(where=where), where, side__runner="glued cross-grain")
    side, strip = whole(runner(where=where), where).parts
    wide, long = moduli_of(side), moduli_of(strip)
    reach = 400 / np.pi * np.sqrt(wide.shear_mpa / wide.e_mpa[0])
    one = wide.e_mpa[0] * 20 * (20 + 2 * reach)
    other = long.e_mpa[2] * 20 * 20
    glue = 12 / (
        GLUE_N_PER_MM3 * 20 * 400**2
    )  # the joint's own give, as that of a bar: ∫ x² dA = 20 · 400³ / 12
    strain = np.abs(side.width.days_mm / side.width.as_drawn_mm - 1).max()
    assert found.force_n == pytest.approx(strain / (1 / one + 1 / other + glue), rel=0.01)
    assert found.way == SHEARED
    assert found.area_mm2 == pytest.approx(20 * 400 / 2)  # each half pulls against the other
    assert found.stress_mpa == pytest.approx(found.force_n / 4000)
    assert found.strength_mpa == side.part.species.value.shear_mpa
    assert found.month in (side.driest_month, side.wettest_month)
    assert not found.assumed
    assert found.relaxed_n == pytest.approx([RELAXED[0] * found.force_n, RELAXED[1] * found.force_n])


def test_a_joint_nobody_told_of_is_taken_as_glued_and_said_so():
    told, untold = borne(runner(), side__runner="glued cross-grain"), borne(runner())
    assert untold.assumed
    assert untold.force_n == pytest.approx(told.force_n)


@pytest.mark.parametrize("kind", ["rests", "slides", "housed free", "fixed at a point", "hinged"])
def test_a_joint_that_leaves_it_free_bears_nothing(kind):
    found = borne(runner(), side__runner=kind)
    assert found.force_n == pytest.approx(0.0, abs=1.0)
    assert found.month is None


def test_screws_bear_less_than_glue_and_have_no_area():
    screwed, glued = (
        borne(runner(), side__runner="screwed"),
        borne(runner(), side__runner="glued cross-grain"),
    )
    assert 0 < screwed.force_n < glued.force_n
    assert screwed.stress_mpa is None
    assert "area" in screwed.reason


def test_what_is_not_known_stays_unknown():
    pairs = runner()
    pairs[1] = (pairs[1][0], "grain y; built 8")
    found = borne(pairs, side__runner="glued cross-grain")
    assert (found.force_n, found.stress_mpa, found.month) == (None, None, None)
    assert "runner" in found.reason


def test_a_strength_that_was_never_published_stays_none():
    pairs = runner(tag="European beech; pith 0 -200; built 8", other="European beech; pith 0 -200; built 8")
    found = borne(pairs, side__runner="glued cross-grain")
    part = whole(pairs).parts[0].part.species.value
    assert part.shear_mpa is None  # else the test needs another wood
    assert found.force_n > 0
    assert found.strength_mpa is None


def frame(room, where=STILL, built=6.0, rails=True):
    """A panel between stiles that rails hold together: with ``room`` beside each edge."""
    depth = 12.0 + room
    left = blocks("left", [((0, 0, 0), (60, 22, 500))], [((60 - depth, 7, 50), (60, 15, 450))], where)
    right = blocks("right", [((336, 0, 0), (396, 22, 500))], [((336, 7, 50), (336 + depth, 15, 450))], where)
    panel = blocks("panel", [((48, 7.2, 60), (348, 14.8, 440))], where=where)
    wood = f"white oak; pith 0 -200; built {built:g}; show -y"
    pairs = [(left, f"{wood}; grain z"), (right, f"{wood}; grain z"), (panel, f"{wood}; grain z")]
    if rails:
        for name, low in (("bottom", 0), ("top", 460)):
            rail = blocks(name, [((60, 0, low), (336, 22, low + 40))], where=where)
            pairs.append((rail, f"{wood}; grain x"))
    return pairs


def in_frame(room, **more):
    return whole(
        frame(room, **more),
        left__bottom="tenoned",
        left__top="tenoned",
        right__bottom="tenoned",
        right__top="tenoned",
    )


def test_a_panel_without_room_presses_on_its_frame_and_the_rails_hold_it():
    piece = in_frame(0.0)
    named = {frozenset(piece.name(i) for i in one.joint.parts): one for one in piece.forces.joints}
    press = named[frozenset(("left", "panel"))]
    assert press.way == PRESSED
    assert abs(press.month - piece.parts[2].wettest_month) <= 1  # the stiles answer a little later
    assert press.force_n == pytest.approx(named[frozenset(("right", "panel"))].force_n, rel=1e-3)
    held = [named[frozenset(("left", rail))] for rail in ("bottom", "top")]
    assert {one.way for one in held} == {PULLED}
    assert sum(one.force_n for one in held) == pytest.approx(press.force_n, rel=0.01)
    panel = piece.forces.parts[2]
    assert panel.compression_mpa > 1 and panel.compression_month == press.month
    (finding,) = [one for one in all_findings(piece) if one.check == "trapped-panel"]
    assert finding.figures["force_n"] == pytest.approx(press.force_n, abs=1)
    assert f"{press.force_n / 1000:.1f} kN" in finding.message


def test_more_room_presses_less_and_enough_of_it_not_at_all():
    forces = []
    for room in (0.0, 0.5, 1.0, 1.5, 2.0, 4.0, 8.0):
        piece = in_frame(room)
        joints = {frozenset(piece.name(i) for i in one.joint.parts): one for one in piece.forces.joints}
        forces.append(joints[frozenset(("left", "panel"))].force_n)
    assert all(one >= other for one, other in itertools.pairwise(forces))
    assert forces[0] > 1000
    assert forces[-1] == 0.0


def test_stiles_that_nothing_ties_together_yield_to_the_panel():
    assert all(not one.force_n for one in whole(frame(0.0, rails=False)).forces.joints)


def drawer_in_opening(where=STILL):
    """Nothing is restrained: boards stand side by side, one rests on the other, gaps on the way."""
    base = blocks("base", [((0, 0, 0), (600, 300, 20))], where=where)
    post = blocks("post", [((0, 0, 20), (40, 300, 220))], where=where)
    loose = blocks("loose", [((45, 10, 20), (500, 290, 40))], where=where)
    far = blocks("far", [((560, 0, 20), (600, 300, 220))], where=where)
    wood = f"{OAK}; show z"
    return [
        (base, f"{wood}; grain x"),
        (post, f"{OAK}; show x; grain z"),
        (loose, f"{wood}; grain x"),
        (far, f"{OAK}; show x; grain z"),
    ]


@pytest.mark.parametrize("told", [True, False], ids=["told", "unknown"])
@pytest.mark.parametrize("where", [STILL, pose(8)], ids=["as drawn", "turned"])
def test_gaps_are_those_of_the_carried_positions_where_nothing_is_restrained(where, told):
    kinds = {"base__post": "fixed at a point", "base__loose": "rests", "base__far": "hinged"} if told else {}
    piece = whole(drawer_in_opening(where), where, **kinds)
    assert all(not one.force_n for one in piece.forces.joints if not one.assumed)
    ours = piece.held_gaps
    theirs = [
        gap_year(gap, piece.parts[gap.first], piece.parts[gap.second], positions=piece.positions)
        for gap in piece.touching.gaps
    ]
    assert len(ours) == len(theirs) > 0
    for one, other in zip(ours, theirs):
        assert one.least_mm == pytest.approx(other.least_mm, abs=1e-4)
        assert one.most_mm == pytest.approx(other.most_mm, abs=1e-4)
        assert (one.least_month, one.most_month) == (other.least_month, other.most_month)


def test_a_board_kept_from_growing_opens_its_gap_less():
    side = blocks("side", [((0, 0, 0), (20, 400, 700))])
    bar = blocks("bar", [((20, 0, 0), (60, 400, 700))])
    wall = blocks("wall", [((-40, 403, 0), (100, 443, 700))])
    tags = (f"{OAK}; grain z; show x", "steel", "steel")
    pairs = list(zip((side, bar, wall), tags))
    free, held = (whole(pairs, side__bar=kind) for kind in ("fixed at a point", "glued cross-grain"))
    gaps = []
    for piece in (free, held):
        (year,) = [
            year
            for year in gap_years(piece.parts, piece.touching.gaps, piece.forces)
            if {year.gap.first, year.gap.second} == {0, 2}
        ]
        gaps.append(year.most_mm - year.least_mm)
    assert gaps[1] < 0.2 * gaps[0]


def test_the_report_tells_the_force_of_each_joint_or_why_not():
    entry = between_entry(whole(runner(), side__runner="glued cross-grain"))
    assert all({"held_least_mm", "held_most_mm"} <= set(gap) for gap in entry["gaps"])
    (joint,) = entry["joints"]
    assert joint["force_n"] > 1000 and joint["stress_mpa"] > 1
    assert joint["month"] and joint["way"] == SHEARED and joint["if_solid"] is False
    assert any("before the wood gives way" in one for one in entry["force_caveats"])
    pairs = runner()
    pairs[1] = (pairs[1][0], "grain y; built 8")
    (joint,) = between_entry(whole(pairs))["joints"]
    assert joint["force_n"] is None and joint["stress_mpa"] is None and joint["month"] is None
    assert joint["force_note"]


def test_the_text_tells_joints_that_bear_much_of_their_strength():
    entry = between_entry(in_frame(0.0))
    assert any("left | panel" in line and "kN" in line for line in between_sentences(entry))
    calm = between_entry(in_frame(8.0))
    assert not any("kN" in line for line in between_sentences(calm))


def test_four_points_keep_area_centre_and_second_moments():
    body = blocks("plate", [((0, 0, 0), (120, 80, 10))], [((20, 20, 0), (50, 60, 10))])
    under = blocks("under", [((-50, -50, -10), (200, 200, 0))])
    (contact,) = contacts_of([body, under], 1.0).contacts
    assert isinstance(contact, Contact)
    points = four_points(contact)
    assert points.mean(axis=0) == pytest.approx(contact.centre)
    whole_plate, hole = 120 * 80, 30 * 40
    centre = (np.array([60, 40]) * whole_plate - np.array([35, 40]) * hole) / (whole_plate - hole)
    assert contact.centre[:2] == pytest.approx(centre)
    about = np.array([120, 80]) ** 2 / 12 * whole_plate + (np.array([60, 40]) - centre) ** 2 * whole_plate
    about = about - np.array([30, 40]) ** 2 / 12 * hole - (np.array([35, 40]) - centre) ** 2 * hole
    spread = ((points - contact.centre) ** 2).mean(axis=0)[:2]
    assert spread == pytest.approx(about / (whole_plate - hole))


def test_few_courses_stand_for_all_days():
    rng = np.random.default_rng(3)
    days = rng.normal(size=(40, 2, 4)) @ rng.normal(size=(4, 366)) * 0.01
    spans = [[Span(each, each, each) for each in board] for board in days]
    ranged = Span(None, spans[0][0].least - 0.001, spans[0][0].least + 0.001)  # its middle is what counts
    boards = [Swelling(np.eye(3), np.zeros(3), (wide, thick, NO_STRAIN)) for wide, thick in spans]
    states, course = courses(
        [*boards, None, Swelling(np.eye(3), np.zeros(3), (ranged, NO_STRAIN, NO_STRAIN))]
    )
    assert states.shape == (42, 3, 4)
    still = np.zeros(366)
    strains = [[wide, thick, still] for wide, thick in days]
    assert states @ course == pytest.approx(
        np.array([*strains, [still] * 3, [days[0, 0], still, still]]), abs=1e-8
    )


def test_where_nothing_moves_there_is_one_course_of_nothing():
    inert = Swelling(np.eye(3), np.zeros(3), (NO_STRAIN, NO_STRAIN, NO_STRAIN))
    for parts in ([], [None], [inert, None]):
        states, course = courses(parts)
        assert states.shape == (len(parts), 3, 1) and course.shape == (1, 366)
        assert not states.any() and not course.any()


def test_slip_modulus():
    """EN 1995-1-1 table 7.1: ρ^1.5 d / 23; 420 kg/m³ and 8 mm give 2 994 N/mm (by hand; formula from memory)."""
    assert slip_modulus(420.0, 8.0) == pytest.approx(2994, abs=1)


def test_a_peg_in_a_round_hole_is_held_at_a_point_or_glued_at_its_middle():
    block = bored("block", (-60, -40, 0), (60, 40, 30), 8.0)
    pin = peg("pin", 8.0, -20, 40)
    pairs = [(block, f"{OAK}; grain x; show z"), (pin, f"{OAK}; grain z; show x")]
    inferred, glued = whole(pairs), whole(pairs, block__pin="glued cross-grain")
    assert inferred.joints[0].kind == "pegged"
    for piece in (inferred, glued):
        assert piece.forces.joints[0].force_n == pytest.approx(0.0, abs=1.0)  # one point strains nothing


def test_parts_of_metal_alone_and_parts_far_apart_bear_nothing():
    one = blocks("one", [((0, 0, 0), (100, 50, 20))])
    other = blocks("other", [((100, 0, 0), (200, 50, 20))])
    far = blocks("far", [((900, 0, 0), (950, 50, 20))])
    metal = whole([(one, "steel"), (other, "steel"), (far, f"{OAK}; grain x; show z")])
    assert all(not joint.force_n for joint in metal.forces.joints)
    assert whole([(far, f"{OAK}; grain x; show z")]).forces is None


def finding_of(check, pairs, **confirmed):
    piece = whole(pairs, **confirmed)
    (finding,) = [one for one in all_findings(piece) if one.check == check]
    return piece, finding


def test_findings_on_crossing_grain_and_on_two_fixed_lines_tell_the_force():
    under = blocks("under", [((0, 0, 0), (400, 400, 20))])
    over = blocks("over", [((0, 0, 20), (400, 400, 40))])
    crossed = [(under, f"{OAK}; grain x; show z"), (over, f"{OAK}; grain y; show z")]
    piece, finding = finding_of("grain-crossing", crossed, under__over="glued cross-grain")
    (joint,) = piece.forces.joints
    assert finding.figures["force_n"] == pytest.approx(joint.force_n, abs=1)
    assert finding.figures["relaxed_n"] == pytest.approx(RELAXED[1] * joint.force_n, abs=1)
    assert f"{joint.force_n / 1000:.1f} kN" in finding.message

    board = blocks("board", [((0, 0, 20), (800, 400, 40))])
    posts = [blocks(name, [((380, low, -10), (420, low + 20, 20))]) for name, low in (("a", 0), ("b", 380))]
    beam = blocks("beam", [((380, 0, -40), (420, 400, -10))])
    held = [
        (board, f"{OAK}; grain x; show z"),
        *((post, f"{OAK}; grain z; show x") for post in posts),
        (beam, f"{OAK}; grain y; show z"),
    ]
    kinds = {f"{one}__{post}": "glued cross-grain" for one in ("board", "beam") for post in "ab"}
    piece, finding = finding_of("two-fixed-lines", held, **kinds)
    forces = [
        one.force_n for one in piece.forces.joints if "board" in {piece.name(i) for i in one.joint.parts}
    ]
    assert finding.figures["force_n"] == pytest.approx(max(forces), abs=1)
    assert forces[0] == pytest.approx(forces[1], rel=0.01)
    assert "kN" in finding.message
