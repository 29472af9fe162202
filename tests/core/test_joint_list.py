"""The list of joints: all of them, those that ask for an answer first."""

from __future__ import annotations

from movement_core.sheet.joint_list import joint_rows
from tests.core.contact_solids import blocks
from tests.core.test_contact_fixed_lines import KINDS, framed_panel
from tests.core.whole_pieces import OAK, whole


def cabinet(confirmed=None):
    side = blocks("side", [((0, 0, 0), (20, 400, 700))])
    runner = blocks("runner", [((20, 10, 100), (40, 390, 120))])
    cleat = blocks("cleat", [((20, 10, 300), (60, 30, 640))])
    post = blocks("post", [((23, 500, 0), (63, 540, 700))])
    door = blocks("door", [((-15, 402, 0), (20, 420, 700))])
    pairs = [
        (side, f"{OAK}; grain z; show x"),
        (runner, f"{OAK}; grain y; show x"),
        (cleat, f"{OAK}; grain z; show x"),
        (post, f"{OAK}; grain z; show x"),
        (door, f"{OAK}; grain z; show y"),
    ]
    return whole(pairs, confirmed=confirmed)


def test_every_joint_is_listed_once_and_those_that_touch_before_those_that_do_not():
    piece = cabinet()
    rows = joint_rows(piece)
    assert sorted(row.number for row in rows) == list(range(len(piece.joints)))
    touching = [row.touching for row in rows]
    assert touching == sorted(touching, reverse=True) and not all(touching)


def test_the_unknown_joint_across_the_grain_comes_first_until_it_is_confirmed():
    first = joint_rows(cabinet())[0]
    assert set(first.parts) == {"side", "runner"}
    assert first.state == "unknown" and first.matters and first.moves_mm > 1
    said = {("side", "runner"): "slides"}
    (row,) = [row for row in joint_rows(cabinet(said)) if set(row.parts) == {"side", "runner"}]
    assert (row.state, row.kind, row.matters) == ("confirmed", "slides", False)
    assert row.force_n is not None


def test_boards_along_each_other_do_not_matter_unless_a_finding_says_so():
    piece = cabinet()
    (row,) = [row for row in joint_rows(piece) if set(row.parts) == {"side", "cleat"}]
    keys = frozenset(row.keys)
    quiet = row.matters
    (told,) = [row for row in joint_rows(piece, [keys]) if set(row.parts) == {"side", "cleat"}]
    assert told.matters and not quiet


def test_figures_are_those_of_the_piece():
    piece = whole(framed_panel(""), confirmed=KINDS)
    for row in joint_rows(piece):
        worst = piece.movements[row.number].worst
        assert row.moves_mm == (None if worst is None else worst.worst_mm)
        assert row.kind == piece.joints[row.number].kind
