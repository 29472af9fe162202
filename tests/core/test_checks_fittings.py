"""Hinges, locks, bed fittings and slides on wood that moves: each fault is found, the mended piece is silent."""

from __future__ import annotations

import pytest

from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit
from tests.core.contact_solids import STILL, blocks
from tests.core.whole_pieces import OAK, TURNED, found, only, whole

HINGES = (100.0, 340.0)


def hung_slab(grain="x", where=STILL, bolt_slack=None, hinges=HINGES):
    """A slab 500 high hung on steel at its left edge; with a bolt near its top where a slack is given."""
    leaf = [((0.0, 0, z), (6, 22, z + 60)) for z in hinges]
    sunk = [((-6.0, 0, z), (0, 22, z + 60)) for z in hinges]
    bolt = ((280.0, 8, 440), (312, 14, 450))
    hole = [] if bolt_slack is None else [grown(bolt, bolt_slack / 2)]
    let_in = [] if bolt_slack is None else [bolt]
    pairs = [
        (blocks("post left", [((-40, 0, -40), (0, 22, 540))], sunk, where), f"{OAK}; grain z; show -y"),
        (blocks("post right", [((302, 0, -40), (342, 22, 540))], hole, where), f"{OAK}; grain z; show -y"),
        (blocks("rail", [((-40, 0, -80), (342, 22, -40))], where=where), f"{OAK}; grain x; show -y"),
        (
            blocks("slab", [((0.6, 0, 0), (300, 22, 500))], [*leaf, *let_in], where),
            f"{OAK}; grain {grain}; show -y",
        ),
    ]
    for number, z in enumerate(hinges):
        pairs.append((blocks(f"hinge {number}", [((-6.0, 0, z), (6, 22, z + 60))], where=where), "steel"))
    if bolt_slack is not None:
        pairs.append((blocks("bolt", [bolt], where=where), "steel"))
    return pairs


def grown(box, by):
    """A hole round a box, larger by so much on all sides but deeper by one more millimetre."""
    low, high = box
    return (302.0, low[1] - by, low[2] - by), (high[0] + 1, high[1] + by, high[2] + by)


POSTS = {("post left", "rail"): kinds.TENONED, ("post right", "rail"): kinds.TENONED}


@TURNED
def test_hinges_on_a_slab_whose_grain_lies_level(where):
    pairs = hung_slab("x", where)
    finding = only(pairs, "hinge-line-drifts", where, POSTS)
    assert finding.severity == "breaks"
    assert set(finding.parts) == {"slab", "post left", "hinge 0", "hinge 1"}
    slab = whole(pairs, where, POSTS).parts[3]
    grows = (float(slab.width.most_mm.max()) / 500 - 1) * 240
    assert finding.figures["most_mm"] == pytest.approx(grows, abs=0.01)
    assert finding.figures["apart_mm"] == pytest.approx(240)
    assert not found(pairs, "two-fixed-lines", where, POSTS)  # told once


def test_hinges_on_a_slab_whose_grain_stands():
    assert not found(hung_slab("z"), "hinge-line-drifts", confirmed=POSTS)


def test_hinges_close_together():
    assert not found(hung_slab("x", hinges=(200.0, 265.0)), "hinge-line-drifts", confirmed=POSTS)


def test_a_bolt_that_misses_its_hole():
    finding = only(hung_slab("x", bolt_slack=1.0), "lock-line-drifts", confirmed=POSTS)
    assert finding.severity == "jams"
    assert set(finding.parts) == {"bolt", "post right", "slab"}
    assert finding.figures["room_mm"] == pytest.approx(0.5)
    assert finding.figures["drift_mm"] > 0.5


def test_a_bolt_that_still_finds_it():
    assert not found(hung_slab("z", bolt_slack=1.0), "lock-line-drifts", confirmed=POSTS)
    assert not found(
        hung_slab("x", bolt_slack=2.9, hinges=(340.0, 410.0)), "lock-line-drifts", confirmed=POSTS
    )


def chest(lid, where=STILL):
    """A chest whose lid is hinged at the back; a lock in its front's edge, the strike under the lid."""
    walls = {
        "front": ([((0.0, 0, 0), (600, 20, 300))], [((270, 4, 280), (330, 16, 300))]),
        "back": (
            [((0.0, 380, 0), (600, 400, 300))],
            [((100, 392, 270), (160, 400, 300)), ((440, 392, 270), (500, 400, 300))],
        ),
        "end left": ([((0.0, 20, 0), (20, 380, 300))], []),
        "end right": ([((580.0, 20, 0), (600, 380, 300))], []),
    }
    grains = {"front": "x", "back": "x", "end left": "y", "end right": "y"}
    pairs = [
        (
            blocks(name, add, cut, where),
            f"{OAK}; grain {grains[name]}; show {'-y' if grains[name] == 'x' else 'x'}",
        )
        for name, (add, cut) in walls.items()
    ]
    strike = ((275.0, 5, 300.5), (325, 15, 302))
    sunk = [strike, ((100, 392, 300), (160, 400, 310)), ((440, 392, 300), (500, 400, 310))]
    pairs.append((blocks("lid", [((0.0, 0, 300.5), (600, 400, 320))], sunk, where), lid))
    pairs.append((blocks("lock", [((270.0, 4, 280), (330, 16, 300))], where=where), "brass"))
    pairs.append((blocks("strike", [strike], where=where), "brass"))
    for number, x in enumerate((100.0, 440.0)):
        pairs.append((blocks(f"hinge {number}", [((x, 392, 270), (x + 60, 400, 310))], where=where), "brass"))
    corners = {(a, b): kinds.DOVETAILED for a in ("front", "back") for b in ("end left", "end right")}
    return pairs, corners


@TURNED
def test_a_lid_that_carries_its_strike_away(where):
    pairs, corners = chest(f"{OAK}; grain x; show z", where)
    finding = only(pairs, "lock-line-drifts", where, corners)
    assert set(finding.parts) == {"lock", "strike", "front", "lid"}
    lid = whole(pairs, where, corners).parts[4]
    strain = max(
        abs(float(lid.width.most_mm.max()) / 400 - 1), abs(float(lid.width.least_mm.min()) / 400 - 1)
    )
    # From the hinges to the strike, less a little of the thickness of back and front.
    assert finding.figures["drift_mm"] == pytest.approx(386 * strain, rel=0.08)


def test_a_lid_that_does_not():
    pairs, corners = chest("plywood; built 8")
    assert not found(pairs, "lock-line-drifts", confirmed=corners)


def locked_door(built, rings="pith 0 -200"):
    """A slab of upright grain hung at its left edge, a lock at its right one and a strike facing it on the post."""
    lock, strike = ((294.0, 4, 200), (300, 18, 260)), ((302.0, 4, 200), (305, 18, 260))
    pairs = hung_slab("z")
    wood = f"white oak; {rings}; built {built:g}; grain z; show -y"
    leaves = [((0.6, 0, z), (6, 22, z + 60)) for z in HINGES]
    pairs[1] = blocks("post right", [((302, 0, -40), (342, 22, 540))], [strike]), f"{OAK}; grain z; show -y"
    pairs[3] = blocks("slab", [((0.6, 0, 0), (300, 22, 500))], [*leaves, lock]), wood
    return [*pairs, (blocks("lock", [lock]), "brass"), (blocks("strike", [strike]), "brass")]


def test_a_strike_out_of_reach():
    finding = only(locked_door(14), "lock-line-drifts", confirmed=POSTS)
    assert set(finding.parts) == {"lock", "strike", "slab", "post right"}
    assert finding.figures["opens_mm"] >= limit("lock reach") and "hardly" in finding.message
    assert not found(locked_door(8, "rings 90"), "lock-line-drifts", confirmed=POSTS)


def bed(apart, where=STILL):
    """A rail 200 high with two bolts into a post."""
    bolts = [((-30.0, 8, z - 5), (30, 14, z + 5)) for z in (100 - apart / 2, 100 + apart / 2)]
    holes = list(bolts)
    pairs = [
        (blocks("rail", [((0, 0, 0), (900, 25, 200))], holes, where), f"{OAK}; grain x; show -y"),
        (blocks("post", [((-80, -20, -100), (0, 45, 400))], holes, where), f"{OAK}; grain z; show -y"),
    ]
    return pairs + [(blocks(f"bolt {i}", [bolt], where=where), "steel") for i, bolt in enumerate(bolts)]


@TURNED
def test_bolts_far_apart_in_a_bed_rail(where):
    finding = only(bed(140, where), "bed-rail-fittings", where)
    assert finding.severity == "jams"
    assert finding.parts[:2] == ("rail", "post")
    assert max(-finding.figures["least_mm"], finding.figures["most_mm"]) >= limit("strained joint")


def test_bolts_near_together_in_a_bed_rail():
    assert not found(bed(50), "bed-rail-fittings")


def slide(where=STILL):
    side = blocks("side", [((0, 0, 0), (20, 450, 600))], where=where)
    bar = blocks("slide", [((20, 10, 100), (32, 440, 130))], where=where)
    return [(side, f"{OAK}; grain z; show x"), (bar, "steel")]


@TURNED
def test_a_metal_slide_across_a_side(where):
    finding = only(slide(where), "slide-line", where)
    assert finding.severity == "unknown"
    assert finding.figures["width_mm"] == pytest.approx(430)


def test_a_metal_slide_whose_fixing_is_said_or_a_stable_side():
    said = {("side", "slide"): kinds.SLIDES}
    assert not found(slide(), "slide-line", confirmed=said)
    pairs = [(slide()[0][0], "plywood; built 8"), slide()[1]]
    assert not found(pairs, "slide-line")
    (crossing,) = whole(slide()).crossings
    assert crossing.reason  # and it is listed
