"""Margins and motion where something is not told, does not move, or is no part of the picture."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.daily import DAYS
from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import whole_piece
from movement_core.sheet.bending import TwistBend
from movement_core.sheet.margins import GAPE, JAM, SPLIT, WORTH_MARKING, Margin, margins_of, shares_of_parts
from movement_core.sheet.motion import board_lines, in_panels, piece_motion, since_flat
from movement_core.sheet.section_picture import bent_points, section_picture
from tests.core.contact_solids import blocks, piece_of
from tests.core.test_checks_whole import POSTS, framed, inset_door
from tests.core.whole_pieces import DAY, HOME, OAK, whole


def margin(used, *keys):
    return Margin(SPLIT, keys, keys, used, 40, "a text", np.zeros(3))


def test_the_share_of_a_part_is_its_worst_and_unknown_where_only_what_nobody_said_could_tell():
    margins = [
        margin(0.3, "a", "b"),
        margin(0.7, "a"),
        margin(None, "b", "c"),
        margin(1.2, "c"),
        margin(0.9, "z"),
    ]
    assert shares_of_parts(margins, [], ["a", "b", "c", "d"]) == {"a": 0.7, "b": None, "c": 1.2, "d": 0.0}
    seen = [{"keys": ["a", "z"], "severity": "seen"}, {"keys": ["c", "d"], "severity": "unknown"}]
    assert shares_of_parts(margins, seen, ["a", "b", "c", "d"]) == {"a": 1.0, "b": None, "c": 1.2, "d": None}


def test_a_margin_knows_its_month_and_whether_it_is_over():
    assert (margin(1.0).over, margin(0.99).over, margin(None).over) == (True, False, False)
    assert margin(0.5).month == 1  # day 40 is in February
    assert 0 < WORTH_MARKING < 1


def test_what_does_not_move_uses_nothing_of_its_room():
    apart = [
        (blocks(name, [((x, 0, 0), (x + 100, 20, 300))]), "steel")
        for name, x in (("one", 0), ("other", 100.5))
    ]
    still = whole(apart)
    assert len(still.gaps) == 1 and margins_of(still) == ()
    moving = whole([(body, f"{OAK}; grain z; show -y") for body, _ in apart])
    assert {one.kind for one in margins_of(moving)} == {JAM}


def test_a_gap_drawn_as_a_room_is_not_watched_for_gaping():
    def kinds_of(gap):
        return {
            m.kind for m in margins_of(whole(inset_door(gap), confirmed=POSTS)) if "post right" in m.names
        }

    assert kinds_of(1.0) == {JAM, GAPE}
    assert kinds_of(limit("gap drawn") + 1.0) == {JAM}


def test_margins_are_told_in_the_readers_unit_worst_first():
    tight = whole(framed(0.0))
    inches = margins_of(tight, lambda mm: f"{mm / 25.4:.3f} in")
    assert all(" in" in one.text and " mm" not in one.text for one in inches)
    used = [one.used for one in inches if one.used is not None]
    assert used == sorted(used, reverse=True) and used[0] >= 1


def test_of_two_places_where_a_pair_crosses_the_worse_is_told():
    side = blocks("side", [((0, 0, 0), (20, 400, 700))])
    narrow, wide = ((20, 10, 100), (40, 60, 180)), ((20, 150, 100), (40, 390, 180))
    strip = blocks("strip", [narrow, wide, ((30, 10, 100), (40, 390, 180))])
    pairs = [(side, f"{OAK}; grain z; show x"), (strip, f"{OAK}; grain y; show x")]
    piece = whole(pairs, confirmed={("side", "strip"): kinds.GLUED_CROSS})
    split = [one for one in margins_of(piece) if one.kind == SPLIT]
    assert len(split) == 1 and split[0].over
    crossing = max(piece.crossings, key=lambda one: one.width_mm)
    assert split[0].used == pytest.approx(crossing.width_mm / limit("glued across"))


# ---- motion -----------------------------------------------------------------------------------------------------

RINGED = "white oak; pith 0 -60; grain x; show z"


def board(tag, at=0.0, name="board", width=200.0):
    return blocks(name, [((0, at, 0), (1000, at + width, 20))]), tag


def test_without_the_moisture_when_it_was_flat_no_cup_is_shown():
    untold = whole([board(RINGED)])
    assert since_flat(untold.parts[0]) is None
    (part,) = piece_motion(untold).parts
    assert part.known and part.bends == () and "made flat" in part.untold
    told = whole([board(f"{RINGED}; built 8")])
    change = since_flat(told.parts[0])
    assert change.shape == (DAYS + 1,) and change[0] == pytest.approx(told.parts[0].mc_days[0] - 8)


def test_a_board_of_spiral_grain_twists_as_it_was_solved():
    piece = whole([board(f"{RINGED}; slope 0.03; built 8")])
    (solved,) = piece.parts
    (twist,) = [bend for bend in piece_motion(piece).parts[0].bends if isinstance(bend, TwistBend)]
    states = [solved.driest_day, solved.wettest_day]
    middle = np.degrees(twist.amount[states])
    wanted = (solved.twist.degrees[0] + solved.twist.degrees[1]) / 2
    assert np.abs(wanted).max() > 0.05
    assert middle == pytest.approx(wanted, abs=0.15 * float(np.abs(wanted).max()))
    (straight,) = piece_motion(whole([board(f"{RINGED}; built 8")])).parts
    assert not [bend for bend in straight.bends if isinstance(bend, TwistBend)]


def a_panel(tags):
    return [board(tag, 130.0 * i, f"b{i}", 130.0) for i, tag in enumerate(tags)]


def test_a_board_of_a_panel_whose_rings_are_not_told_lies_flat_in_it():
    told, untold = f"{RINGED}; built 8", "white oak; cut flat; grain x; show z; built 8"
    all_told, one_not, none = (
        whole(a_panel(tags)) for tags in ((told,) * 3, (told, untold, told), (untold,) * 3)
    )
    bends = []
    for piece in (all_told, one_not, none):
        (panel,) = piece.panels
        bends.append(float(np.abs(board_lines(panel)[:, :, :, 1]).max()))
    assert bends[0] > bends[1] > 0.05 > bends[2]


def test_a_panel_moves_the_boards_that_are_in_the_picture():
    pairs = a_panel((f"{RINGED}; built 8",) * 3)
    solved = solve_piece(piece_of(pairs), HOME, DAY)
    piece = whole_piece(solved, [body for body, _ in pairs[:2]])
    assert len(piece.panels[0].boards) == 3
    moved = in_panels(piece)
    assert set(moved) == {0, 1} and len(piece_motion(piece).parts) == 2
    whole_moved = in_panels(whole(pairs))
    for index in (0, 1):
        assert moved[index][0] == pytest.approx(whole_moved[index][0])


def test_a_picture_of_a_section_leaves_out_rings_that_nobody_told():
    piece = whole(a_panel((f"{RINGED}; built 8", "white oak; grain x; show z; built 8")))
    motion = piece_motion(piece)
    told, untold = section_picture(motion, [one.part for one in piece.parts], [0, 1], motion.driest_day, 1.0)
    assert told.told and told.rings
    assert not untold.told and not untold.rings and len(untold.outline) > 3
    straight = np.array([(-65.0, 0.0, 0.0), (65.0, 0.0, 0.0)])
    assert bent_points(motion, 1, straight, motion.driest_day, 5.0) is straight
