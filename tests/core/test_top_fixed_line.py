"""The line of a top that stays put: what its boards say by their tag, what is asked for, or the middle."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from types import SimpleNamespace

import numpy as np
import pytest

from movement_core.errors import UnknownName
from movement_core.piece.top_names import edge_names, fixed_line
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import find_tops
from movement_core.sheet.holding import plans_entry
from movement_core.sheet.seasons import fixed_line_sentence
from tests.core.tables import BOTH, UP, frame, solved, top

KINDS = ("slotted screw",)
HALF_TURN = np.array([[-1.0, 0.0, 0.0], [0.0, -1.0, 0.0], [0.0, 0.0, 1.0]])


@cache
def table(*said, turned=False):
    """A table of four boards, 440 mm wide; said: (number of the board from 0, the tag ``fixed`` of it)."""
    boards = top(UP)
    for number, tag in said:
        boards[number] = replace(boards[number], tag=f"{boards[number].tag}; fixed {tag}")
    (found,) = find_tops(solved([*boards, *frame()], BOTH, HALF_TURN if turned else None))
    return found


def sentence(found, fixed=""):
    """What is told of the line, of a plan without fasteners: no plan has to be worked out for that."""
    plans = SimpleNamespace(found=found, stays=fixed_line(found.place, fixed))
    return fixed_line_sentence(plans, SimpleNamespace(placed=()))


def across_of(found, name):
    """Where the middle of a board lies across the top, mm."""
    lines = found.place.lines_mm
    at = [board.part.name for board in found.place.boards].index(name)
    return (lines[at] + lines[at + 1]) / 2


def test_the_middle_where_nobody_says_anything():
    found = table()
    line = fixed_line(found.place)
    assert (line.at_mm, line.asked, line.said, line.against) == (0.0, False, (), False)
    assert "the middle of its width:" in sentence(found)


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(("tag", "aside"), [("centre", 0.0), ("y", 55.0), ("-y", -55.0), ("20", 20.0)])
def test_a_board_that_is_held_holds_the_top_there(tag, aside, turned):
    """The board's own y is one way across, wherever the table stands; a number counts along its frame's width."""
    found = table((1, tag), turned=turned)
    (board,) = [b for b in found.place.boards if b.part.name == "Board 2"]
    middle = across_of(found, "Board 2")
    way = float(np.sign(board.part.frame.axes[0] @ found.place.axes[0]))
    if tag in ("y", "-y"):
        # Its own y is the global y here, turned or not with all of it.
        own = HALF_TURN[1] if turned else np.array([0.0, 1.0, 0.0])
        way = float(np.sign(own @ found.place.axes[0]))
    line = fixed_line(found.place)
    assert line.at_mm == pytest.approx(middle + way * aside) and not line.asked and not line.against
    assert "(the tag 'fixed' of Board 2)" in sentence(found)


def test_travel_starts_from_the_line_that_is_tagged():
    """Fasteners beside it travel least, those far from it most; held at the middle they would be alike."""
    found = table((0, "-y"))
    edge = -220.0 if edge_names(found.place)[0] == "Board 1" else 220.0
    plans = plan_top(found, kinds=KINDS)
    assert plans.wish.fixed_mm == pytest.approx(edge)
    travel = {round(p.place_mm[1] - edge): p.most_mm - p.least_mm for p in plans.plans[0].placed}
    near, far = min(travel, key=abs), max(travel, key=abs)
    assert travel[far] > 1.5 * travel[near]
    wish = plans_entry(plans)["wish"]
    assert wish["fixed_line_mm"] == pytest.approx(edge) and wish["fixed_line_asked"] is False
    assert wish["fixed_lines_said_mm"] == {"Board 1": pytest.approx(edge)}
    line = fixed_line(found.place, "Board 1")
    assert line.at_mm == pytest.approx(edge) and line.asked and not line.against


def test_the_sentence_tells_a_line_within_a_board_from_its_nearer_edge():
    found = table((0, "centre"))
    assert "the line 55 mm inside its edge at Board 1 (the tag 'fixed' of Board 1)" in sentence(found)


def test_asking_for_another_line_outranks_the_tag_and_says_so():
    found = table((0, "-y"))
    line = fixed_line(found.place, "centre")
    assert line.at_mm == 0.0 and line.asked and line.against
    told = sentence(found, fixed="centre")
    assert "asked for, though the tag 'fixed' says otherwise: Board 1: its edge at Board 1" in told


def test_boards_that_say_different_lines_leave_the_middle_and_it_says_so():
    found = table((0, "centre"), (3, "centre"))
    line = fixed_line(found.place)
    assert line.at_mm == 0.0 and line.differing and line.against
    told = sentence(found)
    assert "a glued top is held at one line and the tags 'fixed' say several" in told
    assert "Board 1: the line 55 mm inside" in told and "Board 4: the line 55 mm inside" in told


def test_boards_that_say_the_same_line_agree():
    found = table((1, "y"), (2, "-y"))  # the glue line between them
    line = fixed_line(found.place)
    assert abs(line.at_mm) < 1e-6 and len(line.said) == 2 and not line.differing
    assert "the middle of its width (the tag 'fixed' of " in sentence(found)


@pytest.mark.parametrize("at", [0.0, 100.0, -220.0, 220.0])
def test_a_place_in_millimetres(at):
    assert fixed_line(table().place, at).at_mm == pytest.approx(at)


@pytest.mark.parametrize("at", [220.1, -1e6, float("nan"), "sky", "Board 2"])
def test_a_line_that_is_not_there_is_refused(at):
    with pytest.raises(UnknownName, match="centre, Board"):
        fixed_line(table().place, at)
