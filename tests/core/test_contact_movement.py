"""Movement across joints and in gaps, against what the parts' own widths say."""

from __future__ import annotations

import datetime

import numpy as np
import pytest

from movement_core.air.presets import find_year
from movement_core.errors import InputError
from movement_core.piece.contact import joints as kinds
from movement_core.piece.contact.across import gap_to_leave, gap_year, joint_movement
from movement_core.piece.contact.carried import carried_positions
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.joints import joints_of
from movement_core.piece.contact.meetings import meetings_of
from movement_core.piece.contact.swelling import Span, fixed_point, swelling_of
from movement_core.piece.solve import solve_piece
from tests.core.contact_solids import STILL, blocks, bored, peg, piece_of, pose, prism

HOME = find_year("heated cold-winter home")
DAY = datetime.date(2026, 3, 15)
OAK = "white oak; pith 0 -200; built 8"


def studied(pairs, where=STILL, reach=10.0, today_mc=None, confirmed=None):
    """(solved piece, joints, contacts and gaps)."""
    bodies = [body for body, _ in pairs]
    touching = contacts_of(bodies, reach)
    parts = piece_of(pairs, where)
    assert not any(part.problems for part in parts)
    return (
        solve_piece(parts, HOME, DAY, today_mc),
        joints_of(parts, meetings_of(touching), confirmed),
        touching,
    )


def runner_on_side(where=STILL, tag=OAK):
    side = blocks("side", [((0, 0, 0), (20, 400, 700))], where=where)
    runner = blocks("runner", [((20, 10, 100), (40, 390, 120))], where=where)
    return [(side, f"{tag}; grain z; show x"), (runner, f"{tag}; grain y; show x")]


@pytest.mark.parametrize("where", [STILL, pose(1), pose(2)])
def test_a_runner_across_a_side(where):
    piece, (joint,), _ = studied(runner_on_side(where), where)
    movement = joint_movement(joint, *piece.parts)
    worst = movement.worst
    side, runner = piece.parts
    # Along the runner's grain the side swells and the runner does not.
    assert worst.axes == (0, 2)
    assert worst.extent_mm == pytest.approx(380)
    assert worst.course.days_mm == pytest.approx((side.width.days_mm / 400 - 1) * 380)
    assert worst.course.today.value == pytest.approx((side.width.today.value / 400 - 1) * 380)
    across = movement.differentials[1]
    assert across.axes[0] == 2
    assert across.extent_mm == pytest.approx(20)
    assert across.course.days_mm == pytest.approx(-(runner.width.days_mm - 20))
    assert worst.worst_mm == pytest.approx(np.abs(worst.course.days_mm).max())
    assert worst.worst_month in (side.driest_month, side.wettest_month)


def test_boards_that_run_the_same_way_do_not_differ():
    one = blocks("one", [((0, 0, 0), (600, 100, 20))])
    other = blocks("other", [((0, 100, 0), (600, 200, 20))])
    piece, (joint,), _ = studied([(one, f"{OAK}; grain x; show z"), (other, f"{OAK}; grain x; show z")])
    assert joint.kind == kinds.GLUED_EDGE
    assert joint_movement(joint, *piece.parts).worst.worst_mm == pytest.approx(0, abs=1e-9)


def test_a_range_where_the_rings_are_not_said():
    piece, (joint,), _ = studied(runner_on_side(tag="white oak; built 8"))
    worst = joint_movement(joint, *piece.parts).worst
    assert worst.course.days_mm is None
    assert np.all(worst.course.least_mm <= worst.course.most_mm)
    told, (known,), _ = studied(runner_on_side())
    exact = joint_movement(known, *told.parts).worst.course.days_mm
    assert np.all(worst.course.least_mm <= exact + 1e-9)
    assert np.all(exact <= worst.course.most_mm + 1e-9)


def test_nothing_is_said_of_a_part_whose_wood_is_not_known():
    pairs = runner_on_side()
    pairs[1] = (pairs[1][0], "grain y; built 8")
    piece, (joint,), _ = studied(pairs)
    assert joint_movement(joint, *piece.parts).worst is None
    assert swelling_of(piece.parts[1]) is None


def test_metal_does_not_move_and_sheets_move_in_their_plane():
    pairs = runner_on_side()
    pairs[1] = (pairs[1][0], "steel")
    piece, (joint,), _ = studied(pairs)
    side = piece.parts[0]
    assert joint_movement(joint, *piece.parts).worst.course.days_mm == pytest.approx(
        (side.width.days_mm / 400 - 1) * 380
    )


def test_a_tenon_is_judged_over_its_cheeks_and_not_its_shoulders():
    leg = blocks("leg", [((0, 0, 0), (60, 60, 400))], [((30, 24, 200), (60, 36, 260))])
    rail = blocks("rail", [((60, 10, 180), (500, 50, 280)), ((30, 24, 200), (60, 36, 260))])
    piece, (joint,), _ = studied([(leg, f"{OAK}; grain z; show x"), (rail, f"{OAK}; grain x; show y")])
    assert joint.kind == kinds.TENONED
    (worst, *_) = [d for d in joint_movement(joint, *piece.parts).differentials if d.axes == (2, 0)]
    assert worst.extent_mm == pytest.approx(60)
    assert worst.course.days_mm == pytest.approx(-(piece.parts[1].width.days_mm / 100 - 1) * 60)


def test_dovetailed_boards_whose_grain_runs_round_move_together():
    """Both swell across the corner alike: no alarm over the 300 mm of the joint."""
    tail = lambda x: [(x - 15, 0), (x + 15, 0), (x + 17, 12), (x - 17, 12)]  # noqa: E731
    ways = [tail(x) for x in (40.0, 150.0, 260.0)]
    side = [(0, -300), (300, -300), (300, 0)]
    front = [(300, 0), (300, 20), (0, 20), (0, 0)]
    for a, b, c, d in ways[::-1]:
        side += [b, c, d, a]
    side.append((0, 0))
    for a, b, c, d in ways:
        front += [a, d, c, b]
    bodies = [prism("side", side, 0, 20), prism("front", front, 0, 300)]
    tags = (f"{OAK}; grain y; show z", f"{OAK}; grain z; show y")
    piece, (joint,), _ = studied(list(zip(bodies, tags)))
    assert joint.kind == kinds.DOVETAILED
    across = next(d for d in joint_movement(joint, *piece.parts).differentials if d.axes == (0, 0))
    assert across.extent_mm > 250
    assert across.worst_mm < 1e-6


# ---- gaps ----------------------------------------------------------------------------------------------------


def stile_and_divider(where=STILL, gap=2.0):
    stile = blocks("stile", [((0, 0, 0), (65, 22, 600))], where=where)
    divider = blocks("divider", [((65 + gap, 0, 0), (85 + gap, 400, 600))], where=where)
    return [(stile, f"{OAK}; grain z; show -y"), (divider, f"{OAK}; grain z; show x")]


@pytest.mark.parametrize("where", [STILL, pose(5)])
def test_a_door_gap_takes_up_what_both_faces_do(where):
    piece, _, touching = studied(stile_and_divider(where), where)
    (gap,) = touching.gaps
    year = gap_year(gap, *piece.parts)
    stile, divider = piece.parts
    half = (stile.width.days_mm - 65) / 2 + (divider.thickness.days_mm - 20) / 2
    assert year.narrowest.days_mm == pytest.approx(2 - half)
    assert year.least_mm == pytest.approx(2 - half.max())
    assert year.most_mm == pytest.approx(2 - half.min())
    assert year.least_month == stile.wettest_month
    assert year.most_month == stile.driest_month


def test_the_fixed_line_decides_how_much():
    piece, _, touching = studied(stile_and_divider())
    (gap,) = touching.gaps
    days = {
        where: gap_year(gap, *piece.parts, fixed_first=where).narrowest.days_mm
        for where in ("front", "centre", "back")
    }
    # Held at the edge far from the gap the whole width pushes into it, at the near edge none of it.
    far, near = sorted((days["front"], days["back"]), key=np.ptp, reverse=True)
    assert near - far == pytest.approx(piece.parts[0].width.days_mm - 65)
    assert days["centre"] == pytest.approx((near + far) / 2)
    # A point and a place in mm from the middle say the same as a name.
    point = fixed_point(piece.parts[0].part, "front")
    assert gap_year(gap, *piece.parts, fixed_first=point).narrowest.days_mm == pytest.approx(days["front"])
    assert gap_year(gap, *piece.parts, fixed_first=-32.5).narrowest.days_mm == pytest.approx(days["front"])


def test_an_impossible_fixed_line():
    piece, _, touching = studied(stile_and_divider())
    with pytest.raises(InputError, match="fixed line"):
        gap_year(touching.gaps[0], *piece.parts, fixed_first="hinge")


def test_no_gap_year_for_unknown_wood():
    pairs = stile_and_divider()
    pairs[0] = (pairs[0][0], "grain z; built 8")
    piece, _, touching = studied(pairs)
    assert gap_year(touching.gaps[0], *piece.parts) is None


@pytest.mark.parametrize("today_mc", [None, 6.0, 11.0])
def test_the_gap_to_leave_today_neither_jams_nor_gapes_needlessly(today_mc):
    piece, _, touching = studied(stile_and_divider(), today_mc=today_mc)
    year = gap_year(touching.gaps[0], *piece.parts)
    leave = gap_to_leave(year, 1.0)
    days, today = year.narrowest.days_mm, year.narrowest.today.value
    becomes = leave.set_mm + days - today
    assert becomes.min() == pytest.approx(leave.least_mm)
    assert becomes.max() == pytest.approx(leave.most_mm)
    assert leave.least_month == year.least_month
    if days.min() < today:
        assert leave.least_mm == pytest.approx(1.0)
    else:  # damper today than it will ever be: what is left today is the least
        assert leave.set_mm == pytest.approx(1.0)


def test_dry_days_need_a_wider_gap():
    wanted = []
    for mc in (5.0, 8.0, 11.0):
        piece, _, touching = studied(stile_and_divider(), today_mc=mc)
        wanted.append(gap_to_leave(gap_year(touching.gaps[0], *piece.parts), 1.0).set_mm)
    assert wanted == sorted(wanted, reverse=True)
    assert wanted[0] > wanted[-1]


def test_a_negative_wish():
    piece, _, touching = studied(stile_and_divider())
    with pytest.raises(InputError, match="least gap"):
        gap_to_leave(gap_year(touching.gaps[0], *piece.parts), -1.0)


def test_a_round_tenon_in_wood_that_dries_across_it():
    """A steel peg in a hole in wood: the hole narrows across the grain and keeps its length along it."""
    where = pose(3)
    block = bored("seat", (-200, -60, 0), (200, 60, 40), 12.5, where)
    rod = peg("rod", 12.0, -10, 30, where)
    (gap,) = contacts_of([block, rod]).gaps
    assert gap.peg == 1
    seat = blocks("seat", [((-200, -60, 0), (200, 60, 40))], where=where)  # flat-faced: for its frame
    stub = blocks("rod", [((-12, -12, -10), (12, 12, 30))], where=where)
    parts = piece_of([(seat, f"{OAK}; grain x; show z"), (stub, "steel")], where)
    piece = solve_piece(parts, HOME, DAY)
    year = gap_year(gap, *piece.parts)
    radius = 12.25
    strain = piece.parts[0].width.days_mm / 120 - 1
    assert year.least_mm == pytest.approx(0.5 + min(0.0, radius * strain.min()), abs=1e-3)
    assert year.most_mm == pytest.approx(0.5 + max(0.0, radius * strain.max()), abs=1e-3)


# ---- parts that carry others ---------------------------------------------------------------------------------


def glued_row(count, where=STILL):
    boards = [
        blocks(f"b{i}", [((0, i * 100, 0), (600, (i + 1) * 100, 20))], where=where) for i in range(count)
    ]
    return [(board, f"{OAK}; grain x; show z") for board in boards]


@pytest.mark.parametrize("where", [STILL, pose(8)])
def test_boards_glued_in_a_row_push_each_other_along(where):
    piece, joints, _ = studied(glued_row(4, where), where)
    positions = carried_positions(piece.parts, joints)
    across = where[0][:, 1]
    for index, solved in enumerate(piece.parts):
        grows = np.append(solved.width.days_mm, solved.width.today.value) - 100
        assert positions.shift_mm[index] @ across == pytest.approx(index * grows, abs=1e-5)
    assert positions.strained_mm == pytest.approx(np.zeros(3), abs=1e-5)


def test_a_gap_at_the_end_of_a_row_closes_by_the_whole_row():
    pairs = glued_row(3)
    post = blocks("post", [((0, 305, 0), (600, 325, 20))])
    base = blocks("base", [((0, 0, -20), (600, 325, 0))])  # steel, holds the first board and the post
    pairs += [(post, "steel"), (base, "steel")]
    said = {("b0", "base"): kinds.FIXED_POINT, ("base", "post"): kinds.FIXED_POINT}
    said |= {(f"b{i}", "base"): kinds.RESTS for i in (1, 2)}
    piece, joints, touching = studied(pairs, confirmed=said)
    gap = next(gap for gap in touching.gaps if (gap.first, gap.second) == (2, 3))
    positions = carried_positions(piece.parts, joints, ground=4)
    year = gap_year(gap, piece.parts[2], piece.parts[3], positions=positions)
    grows = piece.parts[0].width.days_mm - 100
    # The first board is held at its middle: half of it and the two others push toward the post.
    assert year.narrowest.days_mm == pytest.approx(5 - 2.5 * grows, abs=0.02)


def test_a_floating_panel_stays_in_the_middle_and_strains_nothing():
    groove = lambda x: ((x, 7, 0), (x + 12, 15, 400))  # noqa: E731
    left = blocks("left", [((0, 0, 0), (60, 22, 400))], [groove(48)])
    right = blocks("right", [((260, 0, 0), (320, 22, 400))], [groove(260)])
    feet = blocks(
        "foot", [((0, 0, -40), (60, 22, 0)), ((260, 0, -40), (320, 22, 0)), ((60, 0, -40), (260, 22, -36))]
    )
    panel = blocks("panel", [((51, 7.1, 2), (269, 14.9, 398))])
    pairs = [
        (left, f"{OAK}; grain z; show -y"), (right, f"{OAK}; grain z; show -y"),
        (feet, "steel"), (panel, f"{OAK}; grain z; show -y"),
    ]  # fmt: skip
    said = {("left", "foot"): kinds.FIXED_POINT, ("right", "foot"): kinds.FIXED_POINT}
    piece, joints, _ = studied(pairs, confirmed=said)
    assert {joint.kind for joint in joints if 3 in joint.parts} == {kinds.HOUSED, kinds.NEAR}
    positions = carried_positions(piece.parts, joints, ground=2)
    assert positions.shift_mm[3][:, 0] == pytest.approx(np.zeros(366), abs=1e-3)
    assert positions.strained_mm.max() < 1e-3


def test_two_glued_crossings_strain_each_other():
    """A board glued at both its edges to a steel bar: one of the joints must take the movement."""
    board = blocks("board", [((0, 0, 0), (600, 300, 20))])
    bars = [blocks(f"bar{i}", [((100, y, -20), (500, y + 20, 0))]) for i, y in enumerate((0.0, 280.0))]
    plate = blocks("plate", [((100, 0, -40), (500, 300, -20))])
    pairs = [(board, f"{OAK}; grain x; show z"), *((bar, "steel") for bar in bars), (plate, "steel")]
    piece, joints, _ = studied(pairs)
    positions = carried_positions(piece.parts, joints, ground=3)
    grows = np.abs(piece.parts[0].width.days_mm - 300).max()
    assert positions.strained_mm.sum() == pytest.approx(grows * 280 / 300, rel=0.05)


def test_spans_keep_their_order():
    span = Span(None, np.array([1.0]), np.array([2.0]))
    turned = span.times(-2)
    assert (turned.least[0], turned.most[0]) == (-4, -2)
    gone = span - span
    assert (gone.least[0], gone.most[0]) == (-1, 1)
