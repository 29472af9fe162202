"""The fixed line that the maker says: a free part moves away from it, and from nothing else."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.piece.tag_sources import tags_from_text, turned, values_by_word
from tests.core.contact_solids import STILL, blocks, piece_of, pose
from tests.core.whole_pieces import OAK, whole

WIDTH = 400.0
PLAY = 6.0  # at either edge of the panel in its groove


def framed_panel(fixed, where=STILL):
    """A panel between two stiles, free in their grooves and in those of two rails; its width runs along x."""
    left = blocks("left", [((-60, 0, 0), (0, 24, 700))], [((-12, 8, 0), (0, 16, 700))], where)
    low, high = (WIDTH, 0, 0), (WIDTH + 60, 24, 700)
    right = blocks("right", [(low, high)], [((WIDTH, 8, 0), (WIDTH + 12, 16, 700))], where)
    rails = [
        blocks("bottom", [((0, 0, 0), (WIDTH, 24, 60))], [((0, 8, 50), (WIDTH, 16, 60))], where),
        blocks("top", [((0, 0, 640), (WIDTH, 24, 700))], [((0, 8, 640), (WIDTH, 16, 650))], where),
    ]
    panel = blocks("panel", [((-12 + PLAY, 8, 50), (WIDTH + 12 - PLAY, 16, 650))], where=where)
    tag = f"{OAK}; grain z; show y" + (f"; fixed {fixed}" if fixed else "")
    return [
        (left, f"{OAK}; grain z; show y"),
        (right, f"{OAK}; grain z; show y"),
        (rails[0], f"{OAK}; grain x; show y"),
        (rails[1], f"{OAK}; grain x; show y"),
        (panel, tag),
    ]


KINDS = {
    ("left", "panel"): "housed free",
    ("right", "panel"): "housed free",
    ("bottom", "panel"): "housed free",
    ("top", "panel"): "housed free",
    ("left", "bottom"): "glued end grain",
    ("left", "top"): "glued end grain",
    ("right", "bottom"): "glued end grain",
    ("right", "top"): "glued end grain",
}


def edge_play(piece, held=False):
    """Swing of the room of the panel at its left and its right edge over the year, mm."""
    swing = {}
    for year in piece.held_gaps if held else piece.gaps:
        names = {piece.name(year.gap.first), piece.name(year.gap.second)}
        along = abs(year.gap.normal @ piece.parts[piece.index["panel"]].part.frame.axes[0])
        if "panel" in names and along > 0.99:
            (other,) = names - {"panel"}
            swing[other] = year.most_mm - year.least_mm
    return swing["left"], swing["right"]


@pytest.fixture(scope="module")
def free():
    return edge_play(whole(framed_panel(""), confirmed=KINDS))


@pytest.mark.parametrize("where", [STILL, pose(3)], ids=["as drawn", "turned"])
@pytest.mark.parametrize("held", [False, True])
def test_all_of_the_movement_comes_to_the_other_edge(where, held):
    for edge, still, moves in (("-x", 0, 1), ("x", 1, 0)):
        piece = whole(framed_panel(edge, where), where, KINDS)
        sides = edge_play(piece, held)
        swing = piece.parts[piece.index["panel"]].width.swing_mm
        assert sides[moves] == pytest.approx(swing, rel=0.08)  # the stile's own lip comes on top
        assert sides[still] < 0.08 * swing


def test_a_panel_that_is_held_at_its_centre_moves_as_much_to_either_side():
    left, right = edge_play(whole(framed_panel("centre"), confirmed=KINDS))
    assert left == pytest.approx(right, rel=1e-3)


@settings(max_examples=8, deadline=None)
@given(share=st.floats(-1, 1))
def test_the_play_of_both_edges_adds_up_wherever_the_line_is(share, free):
    """What one edge gains the other loses, and each edge moves by its distance from the line."""
    at = round(share * (WIDTH / 2 + 6), 2)
    left, right = edge_play(whole(framed_panel(f"{at} mm"), confirmed=KINDS))
    assert left + right == pytest.approx(sum(free), rel=0.05)  # the stiles move a little themselves
    assert (right - left) / (left + right) == pytest.approx(-at / (WIDTH / 2 + 6), abs=0.06)


def test_a_door_that_nothing_drawn_holds_turns_on_the_line_that_faces_its_post():
    def sides(fixed):
        door = blocks("panel", [((2, 0, 2), (WIDTH - 2, 20, 698))])
        left = blocks("left", [((-40, 0, 0), (0, 20, 700))])
        right = blocks("right", [((WIDTH, 0, 0), (WIDTH + 40, 20, 700))])
        floor = blocks("floor", [((-40, 0, -20), (WIDTH + 40, 20, 0))])
        tag = f"{OAK}; grain z; show y"
        parts = [(door, tag + fixed), (left, tag), (right, tag), (floor, f"{OAK}; grain x; show y")]
        glued = {("left", "floor"): "glued end grain", ("right", "floor"): "glued end grain"}
        return edge_play(whole(parts, confirmed=glued))

    even, hinged = sides(""), sides("; fixed -x")
    assert even[0] == pytest.approx(even[1], rel=0.05)
    assert hinged[0] < 0.15 * hinged[1]
    assert sum(hinged) == pytest.approx(sum(even), rel=0.05)  # posts and door are not widest on one day


def test_glue_outranks_the_line():
    glued = {**KINDS, ("right", "panel"): "glued edge"}
    for held in (False, True):
        said, not_said = (edge_play(whole(framed_panel(f), confirmed=glued), held) for f in ("-x", ""))
        assert said[1] < 0.1 * said[0]  # the right edge stays, whatever is said of the left one
        assert said == pytest.approx(not_said, abs=0.2)


@pytest.mark.parametrize(
    ("fixed", "word"),
    [("z", "does not lie across"), ("y", "does not lie across"), ("300", "beyond the edges")],
)
def test_a_line_that_is_none_is_told(fixed, word):
    panel = blocks("panel", [((0, 0, 0), (400, 20, 700))])
    (part,) = piece_of([(panel, f"{OAK}; grain z; show y; fixed {fixed}")], STILL)
    assert part.fixed_mm is None
    assert any(word in str(problem) for problem in part.problems)


def test_a_word_that_is_no_place_is_told():
    tags = tags_from_text("board", "wood{white oak; fixed sideways}", "label")
    assert tags.fixed is None and "no place across" in str(tags.problems[0])


@given(at=st.floats(-500, 500, allow_nan=False))
def test_what_is_said_comes_back_as_it_was_said(at):
    tags = tags_from_text("board", f"wood{{white oak; fixed {at!r}}}", "label")
    assert tags.fixed == pytest.approx(at)
    assert float(str(values_by_word(tags)["fixed"]).replace("centre", "0")) == pytest.approx(at, rel=1e-4)
    mirrored = turned(tags, [[-1, 0, 0], [0, 1, 0], [0, 0, 1]], "another")
    assert mirrored.fixed == pytest.approx(-at)


def test_an_edge_is_turned_with_its_object():
    tags = tags_from_text("board", "wood{white oak; fixed +y}", "label")
    assert values_by_word(tags)["fixed"] == "y"
    assert turned(tags, [[0, 1, 0], [-1, 0, 0], [0, 0, 1]], "another").fixed == pytest.approx((-1, 0, 0))


def test_a_piece_of_which_nothing_is_said_bears_nothing():
    """Nothing moves, so there is no course to solve for, and no error either."""
    boards = [blocks(name, [((0, y, 0), (600, y + 100, 20))]) for name, y in (("one", 0), ("other", 100))]
    piece = whole([(board, "grain x") for board in boards])
    assert piece.forces is not None and all(joint.force_n is None for joint in piece.forces.joints)
