"""Breadboard ends: proud or short, tongues and pegs that bind, ends glued along; and the mended ones silent."""

from __future__ import annotations

import pytest

from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit
from tests.core.contact_solids import STILL, blocks, pose
from tests.core.whole_pieces import TURNED, found, only, whole

FLAT = "white oak; pith 0 -200"


def top(
    built=8.0,
    rings=FLAT,
    where=STILL,
    tongue=(0.0, 400.0),
    groove=(0.0, 400.0),
    pegs=(),
    slot=0.0,
    width=400.0,
):
    """A board with a tongue in a piece across its end; pegs (places across) through both."""
    add = [((0, 0, 0), (800, width, 25)), ((800, tongue[0], 8), (815, tongue[1], 16))]
    holes = [((803.0, y - 4 - slot, 8), (811, y + 4 + slot, 16)) for y in pegs]
    through = [((803.0, y - 4, 0), (811, y + 4, 25)) for y in pegs]
    grooves = [((800, groove[0], 8), (816, groove[1], 16))]
    wood = f"{rings}; built {built:g}; grain"
    pairs = [
        (blocks("board", add, holes, where), f"{wood} x; show z"),
        (blocks("end", [((800, 0, 0), (880, width, 25))], [*grooves, *through], where), f"{wood} y; show z"),
    ]
    for number, peg in enumerate(through):
        pairs.append((blocks(f"peg {number}", [peg], where=where), f"{wood} z; show x"))
    said = {(f"peg {i}", other): kinds.PEGGED for i in range(len(pegs)) for other in ("board", "end")}
    return pairs, said | {("board", "end"): kinds.HOUSED}


def test_a_wide_top_shrinks_away_from_its_ends():
    pairs, said = top(13.0)
    finding = only(pairs, "breadboard-proud", confirmed=said)
    assert finding.severity == "seen"
    assert finding.parts == ("end", "board")
    width = whole(pairs, confirmed=said).parts[0].width
    assert finding.figures["most_mm"] == pytest.approx((400 - float(width.least_mm.min())) / 2, abs=0.01)
    assert finding.figures["most_mm"] >= limit("breadboard proud")


def test_a_narrow_or_quarter_sawn_top():
    pairs, said = top(8.0, "white oak; rings 90")
    assert not found(pairs, "breadboard-proud", confirmed=said)


CLOSED = {"groove": (20.0, 380.0)}


def test_a_tongue_that_binds_in_its_groove():
    pairs, said = top(4.0, tongue=(20.5, 379.5), **CLOSED)
    finding = only(pairs, "breadboard-tongue-binds", confirmed=said)
    assert finding.severity == "breaks"
    assert finding.figures["room_mm"] == pytest.approx(0.5)
    width = whole(pairs, confirmed=said).parts[0].width
    assert finding.figures["travels_mm"] == pytest.approx(
        (float(width.most_mm.max()) / 400 - 1) * 179.75, abs=0.02
    )


def test_a_tongue_with_room():
    pairs, said = top(4.0, tongue=(26.0, 374.0), **CLOSED)
    assert not found(pairs, "breadboard-tongue-binds", confirmed=said)


def test_pegs_in_round_holes():
    pairs, said = top(8.0, pegs=(50.0, 200.0, 350.0))
    finding = only(pairs, "breadboard-peg-binds", confirmed=said)
    assert finding.severity == "breaks"
    assert finding.figures["from_middle_mm"] == pytest.approx(150)
    assert set(finding.parts[:2]) == {"peg 0", "peg 2"}  # every one that binds
    assert finding.parts[2:] == ("end", "board")
    assert finding.message.startswith("2 pegs bind")


def test_the_one_peg_that_binds_is_told_alone():
    pairs, said = top(8.0, pegs=(200.0, 350.0))
    finding = only(pairs, "breadboard-peg-binds", confirmed=said)
    assert finding.parts == ("peg 1", "end", "board")
    assert finding.message.startswith("a peg 150 mm from the middle")


def test_pegs_in_slots_and_one_in_the_middle():
    pairs, said = top(8.0, pegs=(50.0, 350.0), slot=4.0)
    assert not found(pairs, "breadboard-peg-binds", confirmed=said)
    pairs, said = top(8.0, pegs=(200.0,))
    assert not found(pairs, "breadboard-peg-binds", confirmed=said)


@TURNED
def test_an_end_glued_along(where):
    pairs, _ = top(8.0, where=where)
    finding = only(pairs, "breadboard-glued", where, {("board", "end"): kinds.GLUED_CROSS})
    assert finding.severity == "breaks"
    assert finding.parts == ("board", "end")
    free = {("board", "end"): kinds.HOUSED}
    assert not found(pairs, "breadboard-glued", where, free)
    (crossing,) = whole(pairs, where, free).crossings
    assert crossing.reason


# ---- tenons and the tongue between them ------------------------------------------------------------------------


def haunched(where, room=(0.0, 0.0, 0.0)):
    """Four boards edge to edge, a tongue all along in a piece across, and three tenons deeper in it."""
    tenons = [((800.0, y - 40, 8), (860.0, y + 40, 16)) for y in (75.0, 300.0, 525.0)]
    mortises = [
        ((800.0, y - 40 - more, 8), (861.0, y + 40 + more, 16)) for y, more in zip((75.0, 300.0, 525.0), room)
    ]
    pairs = []
    for number, (low, high) in enumerate(((0.0, 150.0), (150.0, 250.0), (250.0, 350.0), (350.0, 600.0))):
        own = [tenon for tenon in tenons if low <= tenon[0][1] and tenon[1][1] <= high]
        add = [((0, low, 0), (800, high, 25)), ((800, low, 8), (810, high, 16)), *own]
        pairs.append((blocks(f"board {number}", add, where=where), f"{FLAT}; built 8; grain x; show z"))
    groove = ((800.0, 0, 8), (810.0, 600, 16))
    end = blocks("end", [((800, 0, 0), (880, 600, 25))], [groove, *mortises], where)
    return [*pairs, (end, f"{FLAT}; built 8; grain y; show z")]


def test_tenons_that_bind_are_told_each_with_its_side():
    """The one in the middle fits closely, and has to."""
    where = pose(11)  # lying level it would be judged with the top as a whole
    finding = only(haunched(where), "breadboard-tongue-binds", where)
    for part in ("board 0", "board 3"):
        for side in ("the edge", "the middle"):
            assert f"mm toward {side} at {part}" in finding.remedy
    assert "board 2" not in finding.remedy
    assert not found(haunched(where, (9.0, 0.0, 9.0)), "breadboard-tongue-binds", where)


def test_a_tongue_between_tenons_is_not_told_twice():
    """The tenons are too far apart to be glued all three; of the tongue beside them nothing more is asked."""
    where = pose(11)
    assert found(haunched(where), "wide-tenon", where)
    assert not found(haunched(where), "breadboard-glued", where)
    apart = haunched(where, (9.0, 0.0, 9.0))
    assert not found(apart, "wide-tenon", where)
    assert found(apart, "breadboard-glued", where)
