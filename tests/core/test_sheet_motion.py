"""The piece as a moving picture: arrays against the solved courses, whole pieces against themselves."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest

from movement_core.errors import InputError
from movement_core.piece.contact import joints as kinds
from movement_core.section.board import Board
from movement_core.sheet.bending import ArcBend, RingBend, TwistBend, normals_field
from movement_core.sheet.cutting import cut_line, cut_triangles, even_places
from movement_core.sheet.grain_marks import grain_marks, ring_lines
from movement_core.sheet.margins import JAM, SPLIT, margins_of, shares_of_parts
from movement_core.sheet.motion import board_lines, piece_motion
from movement_core.sheet.section_picture import out_of_flat_mm, section_picture
from movement_core.wood import find_species
from tests.core.contact_solids import blocks, pose
from tests.core.test_checks_whole import POSTS, framed, inset_door
from tests.core.whole_pieces import TURNED, whole

RINGED = "white oak; pith 0 -60; built 8; grain x; show z"


ASKEW = pose(1)


def single(tag=RINGED, where=ASKEW):
    return whole([(blocks("board", [((0, 0, 0), (1000, 200, 20))], where=where), tag)], where)


def moved(motion, index, points, day, factor=1.0):
    """(N, 3) where points of a part's frame go: bent, then carried by the matrix."""
    part = motion.parts[index]
    amounts, stretch = motion.bend_factors(index, day, factor)
    bent = points + sum(a * bend.field(points) for a, bend in zip(amounts, part.bends)) / stretch
    return np.column_stack([bent, np.ones(len(bent))]) @ motion.matrices(day, factor)[index][:, :3]


def line_across(width, y=0.0, count=41):
    x = np.linspace(-width / 2, width / 2, count)
    return np.column_stack([x, np.full(count, y), np.zeros(count)])


@pytest.mark.parametrize("day", [20, 130, 240])
def test_a_single_board_has_the_width_and_the_cup_that_were_solved(day):
    piece = single()
    motion = piece_motion(piece)
    (solved,) = piece.parts
    points = moved(motion, 0, line_across(200), day)
    chord = points[-1] - points[0]
    assert np.linalg.norm(chord) == pytest.approx(solved.width.days_mm[day], abs=0.02)
    normal = motion.parts[0].axes[1]
    rise = (points - points[0]) @ normal - np.linspace(0, 1, 41) * float(chord @ normal)
    assert rise[np.abs(rise).argmax()] == pytest.approx(solved.cup.days_mm[day], rel=0.03, abs=0.01)


def test_ten_times_is_ten_times_the_movement():
    motion = piece_motion(single())
    points = np.concatenate([line_across(200, y) for y in (-10.0, 0.0, 10.0)])
    drawn = motion.parts[0].centre + points @ motion.parts[0].axes
    once, tenfold = (moved(motion, 0, points, 40, factor) - drawn for factor in (1.0, 10.0))
    assert np.abs(once).max() > 0.3
    np.testing.assert_allclose(tenfold, 10 * once, atol=1e-8)


def test_a_factor_that_would_turn_parts_inside_out_is_refused():
    motion = piece_motion(single())
    assert 50 < motion.most_factor < 300
    with pytest.raises(InputError, match="factor"):
        motion.matrices(0, motion.most_factor * 1.01)
    assert np.linalg.det(motion.matrices(motion.driest_day, motion.most_factor)[0]) > 0


def test_what_is_not_told_stays_still_or_flat_and_says_so():
    cut = piece_motion(single("white oak; cut flat; built 8; grain x")).parts[0]
    assert cut.known and not cut.bends and "rings" in cut.untold
    nothing = piece_motion(single("grain x"))
    assert not nothing.parts[0].known
    assert not nothing.strain.any() and not nothing.shift.any()
    assert nothing.mc is None


@TURNED
def test_boards_of_a_glued_panel_stay_edge_to_edge(where):
    tags = [
        "white oak; pith 0 -70; built 8; grain x; show z",
        "white oak; pith 15 80; built 8; grain x; show -z",
    ]
    boards = [blocks(f"b{i}", [((0, 130 * i, 0), (1000, 130 * i + 130, 24))], where=where) for i in range(4)]
    piece = whole([(body, tags[i % 2]) for i, body in enumerate(boards)], where)
    motion = piece_motion(piece)
    (panel,) = piece.panels
    order = [piece.index[board.part.key] for board in panel.boards]
    day = motion.driest_day
    edges = np.array([[-65.0, 0, 0], [65.0, 0, 0]])
    ends = [moved(motion, index, edges, day, 5.0) for index in order]
    apart = []
    for one, other in pairwise(ends):
        gaps = np.linalg.norm(one[:, None] - other[None], axis=-1)
        apart.append(gaps.min())
    lines = board_lines(panel)
    assert np.abs(lines[day, :, :, 1]).max() > 0.3, "the panel really bends"
    # Its chords shorten by the cosine of their tilt, which a linear picture leaves out.
    assert max(apart) < 0.05 * 5


def test_a_door_carries_its_boards_and_its_gap_closes_as_the_check_says():
    piece = whole(inset_door(0.8), confirmed=POSTS)
    motion = piece_motion(piece)
    margins = margins_of(piece)
    jam = next(margin for margin in margins if margin.kind == JAM and margin.over)
    year = min(piece.gaps, key=lambda one: one.least_mm)
    first, second = year.gap.first, year.gap.second
    assert set(jam.keys) == {piece.parts[first].part.key, piece.parts[second].part.key}
    assert "missing" in jam.text or "left" in jam.text
    corner = year.gap.outline[0][0]
    there = []
    for index, sign in ((first, -0.5), (second, 0.5)):
        part = motion.parts[index]
        at = corner + sign * year.gap.size_mm * year.gap.normal
        local = ((at - part.centre) @ part.axes.T)[None]
        matrix = motion.matrices(jam.day)[index]  # without its bend
        there.append((np.append(local[0], 1.0) @ matrix)[:3])
    gap = float((there[1] - there[0]) @ year.gap.normal)
    assert gap == pytest.approx(float(year.narrowest.least_mm[jam.day]), abs=0.15)


def test_margins_of_grooves_and_their_shares():
    tight, loose = (margins_of(whole(framed(room))) for room in (0.0, 6.0))
    assert max(m.used for m in tight) >= 1
    assert all(m.used < 1 for m in loose if m.used is not None)
    piece = whole(framed(0.0))
    keys = [one.part.key for one in piece.parts]
    shares = shares_of_parts(tight, [], keys)
    assert all(shares[key] >= 1 for key in keys)
    assert shares_of_parts([], [], keys) == dict.fromkeys(keys, 0.0)
    jams = [{"keys": keys[:1], "severity": "jams"}, {"keys": keys[1:2], "severity": "unknown"}]
    assert shares_of_parts([], jams, keys) == {keys[0]: 1.0, keys[1]: None, keys[2]: 0.0}


def test_a_crossing_that_nobody_described_asks():
    side = blocks("side", [((0, 0, 0), (20, 400, 700))])
    strip = blocks("strip", [((20, 10, 100), (40, 390, 180))])
    pairs = [(side, "white oak; pith 0 -200; built 8; grain z; show x"),
             (strip, "white oak; pith 0 -200; built 8; grain y; show x")]  # fmt: skip
    asking = [m for m in margins_of(whole(pairs)) if m.kind == SPLIT]
    assert [m.used for m in asking] == [None]
    (fixed,) = [
        m
        for m in margins_of(whole(pairs, confirmed={("side", "strip"): kinds.GLUED_CROSS}))
        if m.kind == SPLIT
    ]
    assert fixed.over


# ---- bends ------------------------------------------------------------------------------------------------------


def test_an_arc_keeps_its_edges_and_its_crown():
    bend = ArcBend(200.0, np.ones(366))
    points = line_across(200)
    field = bend.field(points)
    assert field[0] == pytest.approx(0) and field[20, 1] == pytest.approx(200**2 / 8)


def test_a_twist_turns_one_end_against_the_other():
    field = TwistBend(1000.0, np.ones(366)).field(
        np.array([[100.0, 0, 500], [100.0, 0, -500], [100.0, 0, 0]])
    )
    np.testing.assert_allclose(field, [[0, 50, 0], [0, -50, 0], [0, 0, 0]], atol=1e-12)


@pytest.mark.parametrize("pith", [(0.0, -70.0), (30.0, 90.0), (5.0, 2.0)])
def test_a_ring_bend_keeps_edges_and_thickness(pith):
    inside = abs(pith[0]) < 60 and abs(pith[1]) < 12
    board = Board(find_species("white oak"), 120, 24, pith, boxed_heart=inside)
    bend = RingBend(board, np.ones(366))
    ends = bend.field(np.array([[60.0, 0, 0], [-60, 0, 0]]))
    np.testing.assert_allclose(ends, 0, atol=1e-9)
    middle = bend.field(np.array([[0.0, 0, 0]]))[0, 1]
    if not inside:  # the bark side grows wider than the heart side
        assert np.sign(middle) == -np.sign(pith[1])


def test_normals_follow_the_bent_surface():
    bend = ArcBend(200.0, np.ones(366))
    points = line_across(200, y=10.0)
    normals = np.tile([0.0, 1.0, 0.0], (41, 1))
    change = normals_field(bend, points, normals, np.array([200.0, 20.0, 1000.0]))
    amount = 1e-4
    bent = points + amount * bend.field(points)
    slope = np.gradient(bent[:, 1], bent[:, 0])
    expected = np.column_stack([-slope, np.ones(41)]) / np.hypot(slope, 1)[:, None]
    got = normals + amount * change
    got /= np.linalg.norm(got, axis=1)[:, None]
    np.testing.assert_allclose(got[2:-2, :2], expected[2:-2], atol=3e-4)


# ---- cutting and marks ------------------------------------------------------------------------------------------


def areas(points, triangles):
    a, b, c = (points[triangles[:, i]] for i in range(3))
    return np.cross(b - a, c - a) / 2


def test_cutting_keeps_area_side_and_the_first_vertices():
    rng = np.random.default_rng(3)
    points = rng.uniform(-50, 50, (30, 3))
    normals = np.tile([0.0, 0, 1.0], (30, 1))
    triangles = rng.permutation(30).reshape(10, 3)
    before = areas(points, triangles)
    cut, bent, after = cut_triangles(points, normals, triangles, 0, even_places(100, 7))
    assert len(cut) == len(bent) > 30
    np.testing.assert_array_equal(cut[:30], points)
    assert np.linalg.norm(areas(cut, after), axis=1).sum() == pytest.approx(
        np.linalg.norm(before, axis=1).sum()
    )
    np.testing.assert_allclose(areas(cut, after).sum(axis=0), before.sum(axis=0), atol=1e-9)
    slices = np.digitize(cut[after, 0].mean(axis=1), even_places(100, 7))
    low = np.array([-1e9, *even_places(100, 7)])[slices]
    high = np.array([*even_places(100, 7), 1e9])[slices]
    assert (cut[after, 0].min(axis=1) >= low - 1e-6).all() and (
        cut[after, 0].max(axis=1) <= high + 1e-6
    ).all()


def test_a_line_gains_points_only_where_it_crosses():
    line = np.array([[-50.0, 0, 0], [50.0, 10, 0], [50.0, 20, 5]])
    cut = cut_line(line, 0, even_places(100, 4))
    np.testing.assert_allclose(cut[:, 0], [-50, -25, 0, 25, 50, 50])
    np.testing.assert_allclose(cut[:, 1], [0, 2.5, 5, 7.5, 10, 20])


def test_marks_lie_on_the_ends_about_the_pith():
    (part,) = [one.part for one in single().parts]
    marks = grain_marks(part)
    assert marks.rings_told and marks.grain_told
    points = np.concatenate(marks.rings)
    assert set(np.round(np.abs(points[:, 2]), 3)) == {500.4}
    assert (np.abs(points[:, 0]) <= 100).all() and (np.abs(points[:, 1]) <= 10).all()
    for line in marks.rings:
        assert np.ptp(np.hypot(line[:, 0], line[:, 1] + 60)) < 1e-6
    shaft = marks.arrow[0]
    assert shaft[-1, 2] > shaft[0, 2] and (shaft[:, 1] > 10).all()


def test_inferred_marks_are_dashed_and_missing_ones_are_none():
    told = grain_marks(single(RINGED).parts[0].part)
    guessed = grain_marks(single("white oak; cut flat; built 8").parts[0].part)
    assert not guessed.grain_told and len(guessed.arrow) > len(told.arrow)
    assert not grain_marks(
        whole([(blocks("cube", [((0, 0, 0), (50, 50, 50))]), "white oak")]).parts[0].part
    ).arrow
    assert not grain_marks(single("white oak; built 8").parts[0].part).rings


def test_rings_stay_on_a_hollow_outline():
    (part,) = [one.part for one in single().parts]
    outer = np.array([[-100.0, -10], [100, -10], [100, 10], [-100, 10]])
    hole = outer * 0.5
    points = np.concatenate(grain_marks(part, ((outer, hole), (outer, hole))).rings)
    assert len(points) and not ((np.abs(points[:, 0]) < 50) & (np.abs(points[:, 1]) < 5)).any()


def test_straight_rings_run_at_their_angle():
    for line in ring_lines(100, 20, None, 30.0):
        run = line[-1] - line[0]
        assert np.degrees(np.arctan2(run[1], run[0])) == pytest.approx(30)


def test_uneven_faces_bend_a_glued_panel_as_one_arc():
    tag = "white oak; pith 0 {pith}; built 8; grain x; show {show}; finish {finish}"
    lays = [("z", -9000, "show varnish 3, back bare"), ("-z", 9000, "show bare, back varnish 3")]
    pairs = []
    for i in range(4):
        show, pith, finish = lays[i % 2]
        body = blocks(f"b{i}", [((0, 130 * i, 0), (1000, 130 * i + 130, 24))])
        pairs.append((body, tag.format(show=show, pith=pith, finish=finish)))
    piece = whole(pairs)
    motion = piece_motion(piece)
    (panel,) = piece.panels
    arcs = [bend for part in motion.parts for bend in part.bends if isinstance(bend, ArcBend)]
    assert len(arcs) == 4
    day = int(np.abs(arcs[0].amount).argmax())
    line = np.concatenate(
        [moved(motion, piece.index[b.part.key], line_across(130), day)[:, 1:] for b in panel.boards]
    )
    line = line[np.argsort(line[:, 0])]
    chord = line[0, 1] + (line[:, 0] - line[0, 0]) / (line[-1, 0] - line[0, 0]) * (line[-1, 1] - line[0, 1])
    rise = line[:, 1] - chord
    up = motion.parts[piece.index[panel.boards[0].part.key]].axes[1][2]
    crown = up * arcs[piece.index[panel.boards[0].part.key]].amount[day] * 520**2 / 8
    assert abs(crown) > 0.5
    assert rise[np.abs(rise).argmax()] == pytest.approx(crown, rel=0.1)
    assert np.abs(np.diff(rise)).max() < abs(crown) / 15, "no step at a glue line"


def test_the_section_of_a_panel_shows_its_boards_and_its_crown():
    tag = "white oak; pith 0 -70; built 8; grain x; show z"
    boards = [(blocks(f"b{i}", [((0, 130 * i, 0), (1000, 130 * i + 130, 24))]), tag) for i in range(3)]
    piece = whole(boards)
    motion = piece_motion(piece)
    (panel,) = piece.panels
    order = [piece.index[board.part.key] for board in panel.boards]
    parts = [one.part for one in piece.parts]
    day = motion.driest_day
    true, tenfold = (section_picture(motion, parts, order, day, factor) for factor in (1.0, 10.0))
    assert [board.name for board in true] == [board.part.name for board in panel.boards]
    assert all(board.told and board.rings for board in true)
    lines = board_lines(panel)
    assert out_of_flat_mm(true) == pytest.approx(
        lines[day, :, :, 1].flat[np.abs(lines[day, :, :, 1]).argmax()], abs=0.35
    )
    assert out_of_flat_mm(tenfold) == pytest.approx(10 * out_of_flat_mm(true), rel=0.05)
    assert abs(np.concatenate([board.outline for board in true])[:, 0]).max() == pytest.approx(195, abs=3)
