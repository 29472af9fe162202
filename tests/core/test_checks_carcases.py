"""Shelves, web frames, face frames, backs, cores: each fault is found, the mended piece is silent."""

from __future__ import annotations

import pytest

from movement_core.checks.back_panels import back_panels
from movement_core.checks.stable_cores import bow_mm
from movement_core.piece.contact import joints as kinds
from tests.core.contact_solids import STILL, blocks
from tests.core.whole_pieces import OAK, TURNED, found, only, whole

UPRIGHT, LEVEL = f"{OAK}; grain z; show x", f"{OAK}; grain x; show z"


def sides(cuts=((), ()), where=STILL, tag=UPRIGHT):
    """Two sides 400 deep and 600 high, 460 apart."""
    return [
        (blocks("side left", [((0, 0, 0), (20, 400, 600))], cuts[0], where), tag),
        (blocks("side right", [((480, 0, 0), (500, 400, 600))], cuts[1], where), tag),
    ]


def shelved(tag, where=STILL):
    housing = ((12.0, 0, 300), (488, 400, 320))
    cuts = [((12.0, 0, 300), (20, 400, 320))], [((480.0, 0, 300), (488, 400, 320))]
    return [*sides(cuts, where), (blocks("shelf", [housing], where=where), tag)]


@TURNED
@pytest.mark.parametrize("tag", [f"{OAK}; grain y; show z", "plywood; built 8"])
def test_a_shelf_that_does_not_move_with_the_sides(tag, where):
    finding = only(shelved(tag, where), "shelf-across-the-side", where)
    assert finding.severity == "unknown"
    assert set(finding.parts) == {"shelf", "side left", "side right"}
    assert finding.figures["width_mm"] == pytest.approx(400)


def test_a_shelf_that_is_said_to_be_glued_or_free():
    pairs = shelved(f"{OAK}; grain y; show z")
    glued = {("shelf", side): kinds.GLUED_CROSS for side in ("side left", "side right")}
    assert only(pairs, "shelf-across-the-side", confirmed=glued).severity == "breaks"
    free = dict.fromkeys(glued, kinds.HOUSED)
    assert not found(pairs, "shelf-across-the-side", confirmed=free)


def test_a_shelf_whose_grain_runs_from_side_to_side():
    pairs = shelved(LEVEL)
    assert not found(pairs, "shelf-across-the-side")
    reasons = [crossing.reason for crossing in whole(pairs).crossings]
    assert len(reasons) == 2 and all(
        "mm apart" in reason for reason in reasons
    )  # listed, and why it is harmless


def web_frame(room, where=STILL):
    rails = [
        (blocks(f"rail {name}", [((20.0, y, 300), (480, y + 60, 320))], where=where), LEVEL)
        for name, y in (("front", 0.0), ("back", 340.0))
    ]
    runner = blocks("runner", [((25.0, 60, 300), (65, 340 - room, 320))], where=where)
    return [*sides(where=where), *rails, (runner, f"{OAK}; grain y; show z")]


@TURNED
def test_a_web_frame_that_keeps_its_rails_apart(where):
    findings = found(web_frame(0.0, where), "web-frame-across-the-side", where)
    assert {finding.parts[0] for finding in findings} == {"side left", "side right"}
    assert {finding.severity for finding in findings} == {"unknown"}
    for finding in findings:
        assert set(finding.parts[1:]) == {"rail front", "rail back", "runner"}
        assert finding.figures["apart_mm"] == pytest.approx(340)


def test_a_web_frame_with_room_at_the_back():
    assert not found(web_frame(3.0), "web-frame-across-the-side")
    glued = {
        (rail, side): kinds.GLUED_END
        for rail in ("rail front", "rail back")
        for side in ("side left", "side right")
    }
    findings = found(web_frame(0.0), "web-frame-across-the-side", confirmed=glued)
    assert {finding.severity for finding in findings} == {"breaks"}
    free = {key: kinds.SLIDES for key in glued if key[0] == "rail back"}
    assert not found(web_frame(0.0), "web-frame-across-the-side", confirmed=free)


@TURNED
def test_a_web_frame_in_glued_up_sides(where):
    """Its rails stand on different boards of one side, which the runner keeps apart all the same."""
    halves = [
        (blocks(f"side {name} {half}", [((x, y, 0), (x + 20, y + 200, 600))], where=where), UPRIGHT)
        for name, x in (("left", 0.0), ("right", 480.0))
        for half, y in (("front", 0.0), ("back", 200.0))
    ]
    pairs = [*halves, *web_frame(0.0, where)[2:]]
    findings = found(pairs, "web-frame-across-the-side", where)
    assert len(findings) == 2
    for finding in findings:
        assert {"rail front", "rail back", "runner"} <= set(finding.parts)
        assert len(finding.parts) == 5
        assert finding.figures["apart_mm"] == pytest.approx(340)


def chest_end(where=STILL, grain="y"):
    """Three boards glued edge to edge, let by tongues into two posts; every tongue fills its groove."""
    posts = [
        (blocks(f"post {name}", [((0, y, 0), (45, y + 45, 480))], [groove], where), f"{OAK}; grain z; show x")
        for name, y, groove in (
            ("front", 0.0, ((17.0, 33, 60), (27, 45, 470))),
            ("back", 455.0, ((17.0, 455, 60), (27, 467, 470))),
        )
    ]
    heights = ((60.0, 200.0), (200.0, 330.0), (330.0, 470.0))
    boards = [
        (
            blocks(
                f"end board {number}",
                [((12.0, 45, low), (32, 455, high)), ((17.0, 33, low), (27, 467, high))],
                where=where,
            ),
            f"{OAK}; grain {grain}; show x",
        )
        for number, (low, high) in enumerate(heights)
    ]
    return [*posts, *boards]


@TURNED
def test_boards_of_one_panel_are_no_rails_of_a_web_frame(where):
    """The outer boards are no rails, and the post across their ends no runner between them."""
    glued = {(f"end board {i}", f"end board {i + 1}"): kinds.GLUED_EDGE for i in range(2)}
    assert not found(chest_end(where), "web-frame-across-the-side", where)
    assert not found(chest_end(where), "web-frame-across-the-side", where, glued)


@TURNED
def test_a_solid_end_whose_tongues_fill_the_grooves_of_posts(where):
    """Held over its whole height if it is glued: told as what it is, no moulding and no runner."""
    pairs = chest_end(where)
    finding = only(pairs, "end-held-by-a-post", where)
    assert finding.severity == "unknown"
    assert set(finding.parts) == {body.name for body, _ in pairs}
    assert finding.figures["width_mm"] == pytest.approx(410)
    for check in ("moulding-across-the-side", "runner-across-the-side", "grain-crossing"):
        assert not found(pairs, check, where)
    joined = {(f"post {post}", f"end board {i}") for post in ("front", "back") for i in range(3)}
    glued = dict.fromkeys(joined, kinds.GLUED_CROSS)
    assert only(pairs, "end-held-by-a-post", where, glued).severity == "breaks"
    assert not found(pairs, "end-held-by-a-post", where, dict.fromkeys(joined, kinds.SLIDES))


def test_a_solid_end_on_a_grooved_rail_is_held_by_its_posts_all_the_same():
    """One edge in a groove makes no frame round it: its ends may be glued."""
    rail = blocks("rail", [((10.0, 45, 30), (34, 455, 66))], [((17.0, 45, 60), (27, 455, 66))])
    pairs = [*chest_end(), (rail, f"{OAK}; grain y; show x")]
    low = blocks("end board 0", [((12.0, 45, 66), (32, 455, 200)), ((17.0, 33, 60), (27, 467, 200))])
    pairs[2] = low, pairs[2][1]
    assert only(pairs, "end-held-by-a-post").figures["width_mm"] == pytest.approx(410)


def chest_front(boards=1, thick=10.0, room=4.0, where=STILL):
    """A panel in grooves all round: its edges in two rails, its ends in two posts, which they fill in thickness."""
    low, high = 17.0, 17.0 + thick
    posts = [
        (
            blocks(
                f"post {name}",
                [((x, 0, 0), (x + 45, 45, 480))],
                [((gx, low, 130), (gx + 10, high, 410))],
                where,
            ),
            f"{OAK}; grain z; show -y",
        )
        for name, x, gx in (("left", 0.0, 35.0), ("right", 955.0, 955.0))
    ]
    rails = [
        (
            blocks(f"rail {name}", [((45, 10, z), (955, 34, z + 80))], [((45, low, gz), (955, high, gz + 10))], where),
            f"{OAK}; grain x; show -y",
        )
        for name, z, gz in (("bottom", 60.0, 130.0), ("top", 400.0, 400.0))
    ]  # fmt: skip
    edges = [130 + room + number * (280 - 2 * room) / boards for number in range(boards + 1)]
    panel = [
        (
            blocks(
                f"panel {number}", [((37, low, edges[number]), (963, high, edges[number + 1]))], where=where
            ),
            f"{OAK}; grain x; show -y",
        )
        for number in range(boards)
    ]
    return [*posts, *rails, *panel]


ACROSS = ("moulding-across-the-side", "runner-across-the-side", "end-held-by-a-post", "grain-crossing")


@TURNED
@pytest.mark.parametrize("boards", [1, 3, 6])
def test_a_panel_in_grooves_all_round_is_free_at_its_ends_too(boards, where):
    pairs = chest_front(boards, where=where)
    piece = whole(pairs, where)
    held = [joint for joint in piece.joints if joint.meeting.inner is not None]
    ends = [joint for joint in held if any(piece.name(i).startswith("post") for i in joint.parts)]
    assert len(ends) == 2 * boards
    assert {joint.kind for joint in ends} == {kinds.HOUSED}
    assert not [finding for check in ACROSS for finding in found(pairs, check, where)]


def test_a_thick_panel_that_fills_its_grooves_may_be_glued_in_them():
    assert only(chest_front(thick=16.0), "end-held-by-a-post").severity == "unknown"


def test_a_panel_in_grooves_all_round_that_is_said_to_be_glued():
    glued = {("panel 0", f"post {side}"): kinds.GLUED_CROSS for side in ("left", "right")}
    assert only(chest_front(), "end-held-by-a-post", confirmed=glued).severity == "breaks"


def face_framed(grain, where=STILL):
    stiles = [
        (blocks(f"stile {name}", [((x, -20, 0), (x + 50, 0, 600))], where=where), f"{OAK}; grain z; show -y")
        for name, x in (("left", 0.0), ("right", 450.0))
    ]
    rail = blocks("rail", [((50.0, -20, 540), (450, 0, 600))], where=where)
    tag = f"{OAK}; grain {grain}; show x"
    return [*sides(where=where, tag=tag), *stiles, (rail, f"{OAK}; grain x; show -y")]


@TURNED
def test_a_face_frame_on_sides_whose_grain_lies(where):
    findings = found(face_framed("y", where), "frame-across-the-side", where)
    assert {finding.parts for finding in findings} == {
        ("side left", "stile left"),
        ("side right", "stile right"),
    }
    assert all(finding.figures["width_mm"] == pytest.approx(600) for finding in findings)


def test_a_face_frame_on_sides_whose_grain_stands():
    pairs = face_framed("z")
    assert not found(pairs, "frame-across-the-side")
    checks = {f.check for f in found(face_framed("y"), "moulding-across-the-side")}
    assert not checks  # told once


def backed(room, where=STILL, built=8.0):
    """A back in rabbets 10 mm wide round a carcase."""
    wood = OAK.replace("built 8", f"built {built:g}")
    cuts = [((10.0, 390, 0), (20, 400, 600))], [((480.0, 390, 0), (490, 400, 600))]
    top = blocks("top", [((20, 0, 580), (480, 400, 600))], [((20, 390, 580), (480, 400, 587))], where)
    bottom = blocks("bottom", [((20, 0, 0), (480, 400, 20))], [((20, 390, 13), (480, 400, 20))], where)
    back = blocks("back", [((10 + room, 390, 13), (490 - room, 400, 587))], where=where)
    return [
        *sides(cuts, where),
        (top, LEVEL),
        (bottom, LEVEL),
        (back, f"{wood}; grain z; show -y"),
    ]


NAILED_IN_THE_MIDDLE = {("back", "top"): kinds.FIXED_POINT, ("back", "bottom"): kinds.FIXED_POINT}


@TURNED
def test_a_back_without_room_in_its_rabbets(where):
    pairs = backed(0.0, where)
    finding = only(pairs, "back-presses", where)
    assert set(finding.parts) == {"back", "side left", "side right"}
    back = whole(pairs, where).parts[4].width
    assert finding.figures["growth_mm"] == pytest.approx(float(back.most_mm.max()) - 480, abs=0.01)


def test_a_back_that_shrinks_out_of_its_rabbets():
    finding = only(backed(4.0, built=14.0), "back-leaves-its-rabbet")
    assert finding.figures["left_mm"] == pytest.approx(6 - finding.figures["shrinkage_mm"] / 2, abs=0.01)


def test_a_back_nailed_all_round():
    finding = only(backed(2.0), "back-fixed-across")
    assert finding.severity == "unknown"
    assert finding.parts[0] == "back"
    assert not found(backed(2.0), "grain-crossing")  # told once
    assert not found(backed(2.0), "web-frame-across-the-side")  # sides on a back are no web frame


def test_a_back_with_room_fixed_in_the_middle():
    assert back_panels(whole(backed(2.5), confirmed=NAILED_IN_THE_MIDDLE)) == []


# ---- cores -----------------------------------------------------------------------------------------------------


def faced(thick, both=False):
    core = (blocks("core", [((0, 0, 0), (700, 400, 18))]), "plywood; built 8")
    facings = [(blocks("face", [((0, 0, 18), (700, 400, 18 + thick))]), f"{OAK}; grain x; show z")]
    if both:
        facings.append((blocks("other face", [((0, 0, -thick), (700, 400, 0))]), f"{OAK}; grain x; show -z"))
    return [core, *facings], {("core", body.name): kinds.GLUED_CROSS for body, _ in facings}


def test_two_layers_alike_bend_as_the_textbook_says():
    """Equal thickness and stiffness: curvature 3/2 strain over the thickness of both (Timoshenko 1925, eq. 5)."""
    assert bow_mm(400, 0.01, 9, 9, 5000, 5000) == pytest.approx(1.5 * 0.01 / 18 * 400**2 / 8)


def test_a_core_faced_on_one_side_bows():
    pairs, stuck = faced(8.0)
    finding = only(pairs, "solid-on-stable-core", confirmed=stuck)
    assert finding.severity == "breaks"
    assert finding.figures["bow_mm"] > 1
    assert "bows" in finding.message


def test_a_core_faced_on_both_sides_does_not_bow_but_shears():
    pairs, stuck = faced(8.0, both=True)
    finding = only(pairs, "solid-on-stable-core", confirmed=stuck)
    assert "bow_mm" not in finding.figures


def test_veneer_on_a_core():
    pairs, stuck = faced(2.0, both=True)
    assert not found(pairs, "solid-on-stable-core", confirmed=stuck)
    assert all("veneer" in crossing.reason for crossing in whole(pairs, confirmed=stuck).crossings)
