"""Tenons through, wedged, shouldered and round: each fault is found, the mended piece is silent."""

from __future__ import annotations

import pytest

from movement_core.air.presets import find_year
from movement_core.checks.round_tenons import round_tenons
from movement_core.moisture.compression import CRUSHING_STRAIN
from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit
from tests.core.contact_solids import STILL, blocks, bored, peg, pose
from tests.core.whole_pieces import TURNED, found, only, whole

DAMP = "white oak; pith 0 -200; built 14"


def leg_and_rail(leg, depth, proud=0.0, shoulder=True, where=STILL, more=(), cut_too=()):
    """A rail along x whose tenon goes to the left into a leg so thick; the mortise so deep."""
    through = depth >= leg
    end = -leg - proud if through else -depth
    tenon = ((end, 5, 10), (0.0, 55, 20))
    mortise = ((-leg if through else -depth - 1, 5, 10), (0.0, 55, 20))
    core = ((0.0, 0, 0), (500, 60, 30)) if shoulder else ((0.0, 5, 10), (500, 55, 20))
    return [
        (blocks("rail", [core, tenon], cut_too, where), f"{DAMP}; grain x; show z"),
        (
            blocks("leg", [((-leg, -10, -300), (0, 70, 300))], [mortise, *more], where),
            f"{DAMP}; grain z; show -x",
        ),
    ]


@TURNED
def test_a_flush_through_tenon(where):
    pairs = leg_and_rail(70.0, 70.0, where=where)
    finding = only(pairs, "through-tenon", where)
    assert finding.severity == "seen"
    assert finding.parts == ("rail", "leg")
    thick = whole(pairs, where).parts[1].thickness  # the leg's face looks along the rail
    assert finding.figures["most_mm"] == pytest.approx(70 - float(thick.least_mm.min()), abs=0.01)
    assert finding.figures["drawn_mm"] == pytest.approx(0, abs=1e-6)


def test_a_through_tenon_that_stands_proud_or_is_short():
    assert not found(leg_and_rail(70.0, 70.0, proud=4.0), "through-tenon")
    assert not found(leg_and_rail(8.0, 8.0), "through-tenon")
    assert not found(leg_and_rail(70.0, 40.0), "through-tenon")  # it does not go through


def tusked(leg, where=STILL, built=14):
    tusk = ((-leg - 12.0, 20, -12), (-leg, 40, 42))
    pairs = leg_and_rail(leg, leg, 50.0, where=where, cut_too=[((-leg - 12.0, 20, 0), (-leg + 2, 40, 30))])
    pairs.append((blocks("tusk", [tusk], where=where), "white oak; pith 0 -200; grain z; show -x; built 8"))
    return [(body, tag.replace("built 14", f"built {built}")) for body, tag in pairs]


@TURNED
def test_a_tusk_behind_a_thick_leg(where):
    finding = only(tusked(70.0, where), "wedge-loosens", where)
    assert set(finding.parts) == {"tusk", "rail", "leg"}
    assert finding.figures["slack_mm"] >= limit("wedge slack")


def test_a_tusk_that_keeps_tight():
    assert not found(tusked(70.0, built=6), "wedge-loosens")
    assert not found(tusked(20.0, built=10), "wedge-loosens")


@TURNED
def test_a_shoulder_that_opens(where):
    pairs = leg_and_rail(100.0, 80.0, where=where)
    finding = only(pairs, "shoulder-opens", where)
    thick = whole(pairs, where).parts[1].thickness
    strain = float(thick.least_mm.min()) / 100 - 1
    assert finding.figures["gap_mm"] == pytest.approx(-40 * strain, abs=0.01)


def test_a_shoulder_that_a_peg_holds():
    hole = ((-16.0, 26, -5), (-8.0, 34, 35))
    pairs = leg_and_rail(100.0, 80.0, more=[((-16.0, 26, -300), (-8.0, 34, 300))], cut_too=[hole])
    pairs.append((blocks("peg", [((-16.0, 26, -300), (-8.0, 34, 300))]), f"{DAMP}; grain z; show y"))
    pegged = {("peg", "leg"): kinds.PEGGED, ("peg", "rail"): kinds.PEGGED}
    assert not found(pairs, "shoulder-opens", confirmed=pegged)
    assert not found(leg_and_rail(30.0, 20.0), "shoulder-opens")


def stool(grain, where=STILL):
    """Two legs let into a seat 400 wide, and a stretcher between them."""
    tops = [((25.0, y - 12, 400), (49, y + 12, 418)) for y in (60.0, 340.0)]
    pairs = [
        (
            blocks("seat", [((0, 0, 400), (800, 400, 430))], tops, where),
            f"white oak; pith 0 -200; built 8; grain {grain}; show z",
        )
    ]
    sockets = [((31.0, 70, 150), (43, 80, 180)), ((31.0, 320, 150), (43, 330, 180))]
    for number, (y, top, socket) in enumerate(zip((60.0, 340.0), tops, sockets)):
        body = blocks(f"leg {number}", [((17.0, y - 20, 0), (57, y + 20, 400)), top], [socket], where)
        pairs.append((body, "white oak; pith 0 -200; built 8; grain z; show x"))
    stretcher = blocks("stretcher", [((25.0, 80, 145), (49, 320, 185)), *sockets], where=where)
    pairs.append((stretcher, "white oak; pith 0 -200; built 8; grain y; show x"))
    return pairs


@TURNED
def test_legs_that_the_seat_moves_apart(where):
    pairs = stool("x", where)
    finding = only(pairs, "legs-moved-apart", where)
    assert finding.severity == "breaks"
    assert set(finding.parts) == {"stretcher", "leg 0", "leg 1", "seat"}
    seat = whole(pairs, where).parts[0].width
    assert finding.figures["least_mm"] == pytest.approx(
        (float(seat.least_mm.min()) / 400 - 1) * 280, abs=0.01
    )


def test_legs_that_stand_along_the_grain():
    assert not found(stool("y"), "legs-moved-apart")


def rung(radius, built, where=STILL):
    pairs = [
        (
            bored("leg", (-40, -40, 0), (40, 40, 50), radius, where),
            "white oak; rings 0; built 8; grain x; show z",
        )
    ]
    return [
        *pairs,
        (peg("rung", radius, 0, 300, where), f"white oak; rings 0; built {built}; grain z; show y"),
    ]


@TURNED
def test_a_damp_round_tenon_loosens(where):
    pairs = rung(13.0, 13, where)
    finding = only(pairs, "round-tenon-loosens", where)
    assert finding.severity == "breaks"
    assert finding.parts == ("rung", "leg")
    rung_part = whole(pairs, where).parts[1]
    # Along the leg's grain the hole stays; the rung's strain there is all play.
    assert finding.figures["play_mm"] == pytest.approx(26 - float(rung_part.width.least_mm.min()), rel=0.05)


def test_a_thin_or_dry_one_does_not():
    assert not found(rung(5.0, 8), "round-tenon-loosens")
    assert not found(rung(9.0, 6), "round-tenon-loosens")


def test_what_was_crushed_counts_as_play():
    """Fitted dry where a damp season comes, it swells beyond what the wood bears, and shrinks from what it crushed."""
    piece = whole(rung(16.0, 7), air=find_year("monsoon home"))
    (finding,) = round_tenons(piece)
    width = piece.parts[1].width
    pressed = float(width.most_mm.max()) - 32
    crushed = pressed - 32 * CRUSHING_STRAIN[0]
    assert finding.figures["crushed_mm"] == pytest.approx(crushed, abs=0.02)
    assert finding.figures["play_mm"] == pytest.approx(crushed + 32 - float(width.least_mm.min()), abs=0.02)


# ---- tenons side by side ---------------------------------------------------------------------------------------

ASKEW = pose(11)  # what lies level would be a top, which is judged as a whole


def tenons_side_by_side(places, width, where=ASKEW, room=0.0, deep=200.0):
    """A rail so deep with tenons at some places across it, in mortises of one post."""
    tenons = [((-40.0, y, 10), (0.0, y + width, 20)) for y in places]
    mortises = [((-40.0, y - room, 10), (0.0, y + width + room, 20)) for y in places]
    wood = "white oak; pith 0 -200; built 14"
    return [
        (blocks("rail", [((0, 0, 0), (500, deep, 30)), *tenons], where=where), f"{wood}; grain x; show z"),
        (blocks("post", [((-60, -50, 0), (0, deep + 50, 30))], mortises, where), f"{wood}; grain y; show z"),
    ]


def test_a_divided_tenon_is_told_as_divided():
    """Two tenons drawn tight: each is narrow enough, and nothing shows that both are glued."""
    pairs = tenons_side_by_side((20.0, 130.0), 50.0)
    piece = whole(pairs, ASKEW)
    (joint,) = piece.joints
    assert (joint.kind, joint.meeting.shape) == (kinds.TENONED, "in a mortise")
    finding = only(pairs, "wide-tenon", ASKEW)
    assert finding.severity == "unknown"
    assert finding.figures["width_mm"] == pytest.approx(160)
    assert finding.message.startswith("2 tenons, the widest 50 mm")
    said = {("rail", "post"): kinds.TENONED}
    assert only(pairs, "wide-tenon", ASKEW, said).severity == "breaks"
    assert not found(pairs, "wide-tenon", ASKEW, {("rail", "post"): kinds.SLIDES})


def test_one_of_two_tenons_that_is_too_wide_by_itself():
    finding = only(tenons_side_by_side((10.0, 200.0), 160.0, deep=400.0), "wide-tenon", ASKEW)
    assert finding.severity == "breaks"
    assert finding.figures["width_mm"] == pytest.approx(160)


def test_two_tenons_close_together():
    assert not found(tenons_side_by_side((10.0, 50.0), 30.0, deep=100.0), "wide-tenon", ASKEW)


def ended(room, where=ASKEW):
    """Three boards edge to edge, each with a tenon in a piece across their end; the outer ones with room."""
    wood = "white oak; pith 0 -200; built 14"
    middles, pairs, mortises = (75.0, 225.0, 375.0), [], []
    for number, middle in enumerate(middles):
        more = 0.0 if number == 1 else room
        tenon = ((600.0, middle - 40, 8), (640.0, middle + 40, 16))
        mortises.append(((600.0, middle - 40 - more, 8), (640.0, middle + 40 + more, 16)))
        low = number * 150.0
        board = blocks(f"board {number}", [((0, low, 0), (600, low + 150, 25)), tenon], where=where)
        pairs.append((board, f"{wood}; grain x; show z"))
    end = blocks("end", [((600, 0, 0), (680, 450, 25))], mortises, where)
    return [*pairs, (end, f"{wood}; grain y; show z")]


def test_a_tenon_that_alone_is_tight_holds_its_own_width_only():
    """Of three, the outer ones have room in their mortises: the one in the middle is all that may be glued."""
    pairs = ended(6.0)
    assert not found(pairs, "wide-tenon", ASKEW)


def test_tenons_of_several_boards_are_told_with_their_own_width():
    finding = only(ended(0.0), "wide-tenon", ASKEW)
    assert finding.severity == "unknown"
    assert finding.message.startswith("3 tenons, the widest 80 mm, reach over 380 mm")
    assert set(finding.parts) == {"board 0", "board 1", "board 2", "end"}
    assert not found(ended(0.0), "breadboard-glued", ASKEW)
