"""How parts sit together, what joint that likely is, and on how many sides a part is held."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import UnknownName
from movement_core.piece.contact import joints as kinds
from movement_core.piece.contact import meetings as shapes
from movement_core.piece.contact.captives import captives_of
from movement_core.piece.contact.contacts import contacts_of
from movement_core.piece.contact.joints import joints_of
from movement_core.piece.contact.meetings import meetings_of
from tests.core import test_contact_assemblies as known
from tests.core.contact_solids import blocks, bored, peg, piece_of, pose, prism

SEEDS = range(3)
OAK = "white oak; cut flat; built 8"


def meet(bodies, reach=8.0):
    return meetings_of(contacts_of(bodies, reach))


@pytest.mark.parametrize("seed", SEEDS)
@pytest.mark.parametrize(
    ("assembly", "shape", "inner"),
    [
        (known.side_by_side, shapes.FACE, None),
        (known.offset_boards, shapes.FACE, None),
        (known.door_gap, shapes.NEAR, None),
        (known.tongue_in_groove, shapes.GROOVE, 1),
        (known.mortise_and_tenon, shapes.MORTISE, 1),
        (known.sliding_dovetail, shapes.DOVETAIL, 1),
        (known.lapped, shapes.LAP, None),
        (known.sunk_into, shapes.OVERLAPPING, None),
        (known.tapered_gap, shapes.NEAR, None),
    ],
)
def test_shapes(assembly, shape, inner, seed):
    bodies, *_ = known.made(assembly, seed)
    (meeting,) = meet(bodies)
    assert (meeting.shape, meeting.inner) == (shape, inner)
    (turned,) = meet(bodies[::-1])
    assert (turned.shape, turned.inner) == (shape, None if inner is None else 1 - inner)


def test_a_rebate_is_a_corner_and_a_wedge_no_dovetail():
    frame = blocks("frame", [((0, 0, 0), (300, 60, 25))], [((0, 50, 10), (300, 60, 25))])
    back = blocks("back", [((0, 50, 10), (300, 200, 25))])
    (meeting,) = meet([frame, back])
    assert meeting.shape == shapes.CORNER
    taper = [(-8, 0), (8, 0), (10, 30), (-10, 30)]  # wider toward the way out: it only wedges
    seat = prism(
        "seat", [(-60, -30), (60, -30), (60, 30), (10, 30), (8, 0), (-8, 0), (-10, 30), (-60, 30)], 0, 20
    )
    (meeting,) = meet([seat, prism("wedge", taper, 0, 20)])
    assert meeting.shape != shapes.DOVETAIL


def test_a_peg_sits_in_a_round_hole():
    (meeting,) = meet([bored("rail", (-30, -30, 0), (30, 30, 40), 5.0), peg("peg", 5.0, -10, 30)])
    assert meeting.shape == shapes.ROUND_HOLE


@pytest.mark.parametrize("seed", SEEDS)
def test_a_panel_is_held_on_four_sides(seed):
    bodies, *_ = known.made(known.frame_and_panel, seed)
    where = pose(seed + 100)
    tags = [f"{OAK}; grain z"] * 2 + [f"{OAK}; grain x"] * 2 + [f"{OAK}; grain z"]
    parts = piece_of(list(zip(bodies, tags)), where)
    (captive,) = captives_of([part.frame for part in parts], meet(bodies))
    assert captive.part == 4
    assert captive.count == 4
    assert captive.between(0)
    assert captive.between(2)
    assert {side.other for side in captive.sides if side.axis == 0} == {0, 1}  # edges in the stiles
    for side in captive.sides:
        assert side.depth_mm == pytest.approx(9.0, abs=1e-3)
        assert side.room_mm == pytest.approx(3.0, abs=1e-3)
        assert side.slack_mm == pytest.approx(0.3, abs=1e-3)


@pytest.mark.parametrize("sides", [1, 2, 3])
def test_a_panel_held_on_fewer_sides(sides):
    bodies, *_ = known.made(known.frame_and_panel, 0)
    chosen = [*bodies[:sides], bodies[4]]
    parts = piece_of([(body, f"{OAK}; grain z") for body in chosen], pose(100))
    captives = captives_of([part.frame for part in parts], meet(chosen))
    assert [captive.count for captive in captives] == ([sides] if sides > 1 else [])


def test_a_fitted_panel_has_no_room():
    groove = ((0, 7, 48), (400, 15, 60))
    rail = blocks("rail", [((0, 0, 0), (400, 22, 60))], [groove])
    top = blocks("top", [((0, 0, 260), (400, 22, 320))], [((0, 7, 260), (400, 15, 272))])
    panel = blocks("panel", [((0, 7, 48), (400, 15, 272))])
    parts = piece_of([(rail, f"{OAK}; grain x"), (top, f"{OAK}; grain x"), (panel, f"{OAK}; grain x")])
    (captive,) = captives_of([part.frame for part in parts], meet([rail, top, panel]))
    assert [side.room_mm for side in captive.sides] == [0.0, 0.0]


# ---- joints --------------------------------------------------------------------------------------------------


def joint_between(pairs, confirmed=None, reach=8.0):
    bodies = [body for body, _ in pairs]
    (joint,) = joints_of(piece_of(pairs), meet(bodies, reach), confirmed)
    return joint


def two_boards(first="grain x", second="grain x"):
    one = blocks("one", [((0, 0, 0), (600, 100, 20))])
    other = blocks("other", [((0, 100, 0), (600, 200, 20))])
    return [(one, f"{OAK}; {first}; show z"), (other, f"{OAK}; {second}; show z")]


def test_edges_with_parallel_grain_are_glued():
    joint = joint_between(two_boards())
    assert (joint.kind, joint.origin, joint.parallel) == (kinds.GLUED_EDGE, kinds.INFERRED, True)
    assert joint.sides == ("edge", "edge")


def test_an_edge_under_a_face_may_merely_rest():
    apron = blocks("apron", [((0, 0, -80), (600, 22, 0))])
    top = blocks("top", [((-50, -100, 0), (650, 300, 25))])
    joint = joint_between([(apron, f"{OAK}; grain x; show -y"), (top, f"{OAK}; grain x; show z")])
    assert (joint.kind, joint.parallel, joint.sides) == (kinds.UNKNOWN, True, ("edge", "face"))


@pytest.mark.parametrize(("play", "kind"), [(0.0, kinds.UNKNOWN), (0.05, kinds.UNKNOWN), (0.5, kinds.HOUSED)])
def test_play_in_a_groove_is_drawn_to_be_free(play, kind):
    """The end of a shelf in a housing: without play nobody can tell, with play it is meant to move."""
    side = blocks("side", [((0, 0, 0), (22, 300, 700))], [((14, 0, 300), (22, 300, 322 + play))])
    shelf = blocks("shelf", [((14, 0, 300), (600, 300, 322))])
    joint = joint_between([(side, f"{OAK}; grain z; show x"), (shelf, f"{OAK}; grain x; show z")])
    assert joint.meeting.inner == 1
    assert joint.kind == kind


def test_a_panel_in_a_stopped_groove_is_no_tenon():
    stile = blocks("stile", [((0, 0, 0), (60, 22, 500))], [((48, 7, 50), (60, 15, 450))])
    panel = blocks("panel", [((51, 7, 50), (300, 15, 450))])
    joint = joint_between([(stile, f"{OAK}; grain z; show -y"), (panel, f"{OAK}; grain z; show -y")])
    assert joint.meeting.shape == shapes.MORTISE
    assert joint.kind == kinds.HOUSED


def crossing(metal=False):
    side = blocks("case side", [((0, 0, 0), (20, 400, 700))])
    runner = blocks("runner", [((20, 0, 100), (40, 380, 120))])
    return [(side, f"{OAK}; grain z; show x"), (runner, "steel" if metal else f"{OAK}; grain y; show x")]


def test_a_crossing_is_unknown_and_judged_as_glued():
    joint = joint_between(crossing())
    assert (joint.kind, joint.parallel) == (kinds.UNKNOWN, False)
    assert joint.as_if_glued
    assert "crossing" in joint.reason


def test_what_the_maker_confirms_replaces_it():
    for pair in (("case side", "runner"), ("runner", "case side")):
        joint = joint_between(crossing(), {pair: kinds.SLIDES})
        assert (joint.kind, joint.origin) == (kinds.SLIDES, kinds.CONFIRMED)
        assert not joint.as_if_glued


def test_a_kind_that_there_is_not():
    with pytest.raises(UnknownName, match="no joint is called 'slide'") as caught:
        joint_between(crossing(), {("case side", "runner"): "slide"})
    assert "slides" in caught.value.nearest


def test_metal_is_fixed_at_a_point():
    assert joint_between(crossing(metal=True)).kind == kinds.FIXED_POINT


def test_unknown_grain_leaves_the_joint_unknown():
    cube = blocks("cube", [((0, 0, 0), (50, 50, 50))])
    board = blocks("board", [((0, 0, 50), (400, 50, 70))])
    joint = joint_between([(cube, "white oak; built 8"), (board, f"{OAK}; grain x")])
    assert (joint.kind, joint.parallel) == (kinds.UNKNOWN, None)
    assert "not known" in joint.reason


@pytest.mark.parametrize(
    ("assembly", "grains", "kind"),
    [
        (known.mortise_and_tenon, ("z", "x"), kinds.TENONED),
        (known.tongue_in_groove, ("x", "z"), kinds.HOUSED),
        (known.lapped, ("x", "y"), kinds.LAPPED),
        (known.sliding_dovetail, ("x", "z"), kinds.SLIDES),
        (known.sunk_into, ("x", "x"), kinds.OVERLAP),
        (known.door_gap, ("z", "z"), kinds.NEAR),
    ],
)
def test_kinds(assembly, grains, kind):
    bodies, *_ = known.made(assembly, 2)
    where = pose(102)
    parts = piece_of([(b, f"{OAK}; grain {g}") for b, g in zip(bodies, grains)], where)
    (joint,) = joints_of(parts, meet(bodies))
    assert joint.kind == kind
    assert joint.reason


def test_the_end_of_a_drawer_side_is_dovetailed_and_does_not_slide():
    deep, slope = 12.0, 1 / 6
    tail = [(-15, 0), (15, 0), (15 + deep * slope, deep), (-15 - deep * slope, deep)]
    side = [(-40, -300), (40, -300), (40, 0), tail[1], tail[2], tail[3], tail[0], (-40, 0)]
    front = [(-40, 0), tail[0], tail[3], tail[2], tail[1], (40, 0), (40, 20), (-40, 20)]
    bodies = [prism("side", side, 0, 12), prism("front", front, 0, 300)]
    joint = joint_between([(bodies[0], f"{OAK}; grain y; show z"), (bodies[1], f"{OAK}; grain z; show y")])
    assert joint.meeting.inner == 0
    assert joint.kind == kinds.DOVETAILED


def test_every_kind_says_how_it_holds():
    assert set(kinds.HOLDS.values()) == {kinds.WHOLE, kinds.POINT, kinds.FREE, kinds.UNTOLD}
    assert len(kinds.KINDS) == len(set(kinds.KINDS))
    assert np.all([kind == kind.lower() for kind in kinds.KINDS])
