"""No check judges by the movement of a part that could not be worked out."""

from __future__ import annotations

from dataclasses import replace

import pytest

from movement_core.checks import CHECKS
from movement_core.checks.finding import Finding
from movement_core.checks.held_tops import held_tops
from movement_core.piece.contact import joints as kinds
from movement_core.piece.crossing import HARMLESS, SPLITS
from movement_core.piece.solve import SolvedPart, solve_piece
from movement_core.piece.tops import find_tops
from movement_core.piece.whole import whole_piece
from movement_core.sheet.entry import file_entry
from tests.core import test_checks_breadboards as breadboards
from tests.core import test_checks_carcases as carcases
from tests.core import test_checks_drawers as drawers
from tests.core import test_checks_fittings as fittings
from tests.core import test_checks_leaves as leaves
from tests.core import test_checks_tenons as tenons
from tests.core import test_checks_whole as others
from tests.core.contact_solids import blocks, piece_of
from tests.core.tables import UP, frame, solved, top
from tests.core.whole_pieces import DAY, HOME, OAK, found, whole


def unsolved(pairs, names, confirmed=None):
    """The whole piece; some parts could not be worked out, as a part of an absurd size cannot."""
    assert names <= {body.name for body, _ in pairs}
    piece = solve_piece(piece_of(pairs), HOME, DAY)
    parts = tuple(
        SolvedPart(one.part, None, None, 0, 0, None, None, None, trouble="its size is absurd")
        if one.part.name in names
        else one
        for one in piece.parts
    )
    return whole_piece(replace(piece, parts=parts), [body for body, _ in pairs], confirmed=confirmed)


def findings(piece, check):
    """The findings of one check; that of tops takes its time and has tests of its own."""
    return [f for one in CHECKS if one is not held_tops for f in one(piece) if f.check == check]


def panel(room, **kwargs):
    return others.framed(room, **kwargs)


# What makes the finding, the kinds of joints that are confirmed, the check, and the parts whose movement it rests on.
CASES = [
    (tenons.leg_and_rail(70.0, 70.0), None, "through-tenon", {"leg"}),
    (tenons.tusked(70.0), None, "wedge-loosens", {"leg"}),
    (tenons.leg_and_rail(100.0, 80.0), None, "shoulder-opens", {"leg"}),
    (tenons.stool("x"), None, "legs-moved-apart", {"seat"}),
    (tenons.rung(13.0, 13), None, "round-tenon-loosens", {"rung"}),
    (tenons.rung(13.0, 13), None, "round-tenon-loosens", {"leg"}),
    (leaves.extended(leaves.CELLAR), None, "leaf-kept-elsewhere", {"leaf"}),
    (leaves.extended(leaves.CELLAR), None, "leaf-kept-elsewhere", {"half left", "half right"}),
    (others.mitred(90.0), None, "mitre-opens", {"flat"}),
    (panel(0.0), None, "trapped-panel", {"panel"}),
    (panel(2.0, cover=4.0, built=13.0), None, "panel-leaves-its-groove", {"panel"}),
    (others.inset_door(0.8), others.POSTS, "inset-jams", {"board right"}),
    (fittings.hung_slab("x"), fittings.POSTS, "hinge-line-drifts", {"slab"}),
    (fittings.hung_slab("x"), fittings.POSTS, "hinge-line-drifts", {"post left"}),
    (fittings.hung_slab("x", bolt_slack=1.0), fittings.POSTS, "lock-line-drifts", {"slab"}),
    (fittings.hung_slab("x", bolt_slack=1.0), fittings.POSTS, "lock-line-drifts", {"post right"}),
    (fittings.locked_door(14), fittings.POSTS, "lock-line-drifts", {"slab"}),
    (fittings.bed(140), None, "bed-rail-fittings", {"rail"}),
    (carcases.backed(0.0), None, "back-presses", {"back"}),
    (carcases.web_frame(0.0), None, "web-frame-across-the-side", {"side left", "side right"}),
    (carcases.web_frame(0.0), None, "web-frame-across-the-side", {"runner"}),
    (carcases.shelved(f"{carcases.OAK}; grain y; show z"), None, "shelf-across-the-side", {"side left", "side right"}),
    (drawers.under_a_rail(0.5), drawers.JOINED, "drawer-height-jams", {"side left", "side right", "front", "back"}),
    (*breadboards.top(13.0), "breadboard-proud", {"board"}),
    (*breadboards.top(4.0, tongue=(20.5, 379.5), **breadboards.CLOSED), "breadboard-tongue-binds", {"board"}),
    (*breadboards.top(8.0, pegs=(50.0, 200.0, 350.0)), "breadboard-peg-binds", {"board"}),
]  # fmt: skip


@pytest.mark.parametrize(
    ("pairs", "confirmed", "check", "names"),
    CASES,
    ids=[f"{case[2]}: {', '.join(sorted(case[3]))}" for case in CASES],
)
def test_no_finding_rests_on_a_movement_that_is_not_known(pairs, confirmed, check, names):
    assert found(pairs, check, confirmed=confirmed), "the fault is there while all is known"
    assert not findings(unsolved(pairs, names, confirmed), check)


def test_forces_are_not_told_of_what_is_not_known():
    piece = unsolved(others.drawer("y"), {"bottom"}, others.GLUED | others.CASE)
    beside = [one for one in piece.forces.joints if "bottom" in {piece.name(i) for i in one.joint.parts}]
    assert beside
    for one in beside:
        assert one.force_n is None
    assert "the movement of bottom is not known" in {one.reason for one in beside}


def test_a_trouble_is_told_with_the_part_it_is_of():
    piece = unsolved(others.framed(0.0), {"panel"})
    report = file_entry("piece.step", piece.solved, [], whole=piece)
    assert report["errors"] == [{"message": "part 'panel': its size is absurd", "part": "panel"}]
    assert [gap for gap in report["gaps"] if "panel" in gap["keys"]] == []


def test_a_top_too_thin_to_be_one_says_so_and_stops_nothing():
    """A skin of 0.05 mm, say a face that was drawn as a solid."""
    piece = solved(top(UP, thickness=0.05) + frame())
    (skin,) = find_tops(piece)
    assert skin.top is None and len(skin.why_not) == 4
    assert skin.why_not[0].startswith("Board 1: ") and "0.1 to 1000 mm" in skin.why_not[0]
    assert [trouble for trouble in skin.why_not if "Board 3" in trouble]


def test_a_crossing_of_unknown_movement_is_not_known():
    side = blocks("side", [((0, 0, 0), (20, 400, 700))])
    strip = blocks("strip", [((20, 10, 100), (40, 390, 180))])
    pairs = [(side, f"{OAK}; grain z; show x"), (strip, f"{OAK}; grain y; show x")]
    glued = {("side", "strip"): kinds.GLUED_CROSS}
    assert {c.verdict for c in whole(pairs, confirmed=glued).crossings} == {SPLITS}
    assert not {c.verdict for c in unsolved(pairs, {"side"}, glued).crossings} & {SPLITS, HARMLESS}


def test_a_severity_that_is_none_of_ours_is_refused():
    with pytest.raises(ValueError, match="'grave' is not one of"):
        Finding("check", "grave", ("part",), ("key",), "message", "remedy")
