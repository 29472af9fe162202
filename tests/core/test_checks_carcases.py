"""Shelves, web frames, face frames, backs, cores, drawers' heights: each fault is found, the mended piece is silent."""

from __future__ import annotations

import pytest

from movement_core.checks.back_panels import back_panels
from movement_core.checks.stable_cores import bow_mm
from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit
from movement_core.sheet.between import between_entry
from tests.core.contact_solids import STILL, blocks
from tests.core.test_checks_whole import CASE, GLUED, drawer
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


# ---- drawers ---------------------------------------------------------------------------------------------------


def under_a_rail(room, where=STILL):
    ceiling = blocks("ceiling", [((-1.0, -10, 120 + room), (401, 410, 140 + room))], where=where)
    return [*drawer("x", 1.0, where=where), (ceiling, f"{OAK}; grain x; show z")]


JOINED = GLUED | CASE | {("ceiling", wall): kinds.DOVETAILED for wall in ("wall left", "wall right")}


@TURNED
def test_a_drawer_that_swells_in_height(where):
    finding = only(under_a_rail(0.5, where), "drawer-height-jams", where, JOINED)
    assert finding.severity == "jams"
    assert finding.parts[1] == "ceiling"
    assert finding.parts[0] in ("side left", "side right", "front", "back")
    assert finding.figures["least_mm"] < limit("gap least")
    jams = found(under_a_rail(0.5, where), "inset-jams", where, JOINED)
    assert not [f for f in jams if "ceiling" in f.parts]  # told once


def test_a_drawer_with_room_above():
    assert not found(under_a_rail(2.5), "drawer-height-jams", confirmed=JOINED)


def boxed(where=STILL):
    """Front and sides of a drawer, butted, with a bottom in closed grooves that runs from the front to the back."""
    side, cross = f"{OAK}; grain y; show x", f"{OAK}; grain x; show -y"
    front = blocks("front", [((0, 0, 0), (400, 20, 70))], [((6, 14, 8), (394, 20, 16))], where)
    left = blocks("side left", [((0, 20, 0), (12, 300, 70))], [((6, 20, 8), (12, 300, 16))], where)
    right = blocks("side right", [((388, 20, 0), (400, 300, 70))], [((388, 20, 8), (394, 300, 16))], where)
    bottom = blocks("bottom", [((6, 14, 8), (394, 300, 16))], where=where)
    return [(front, cross), (left, side), (right, side), (bottom, f"{OAK}; grain y; show z")]


@TURNED
def test_a_bottom_by_its_end_in_a_groove_is_no_tenon(where):
    assert not found(boxed(where), "wide-tenon", where)
    piece = whole(boxed(where), where)
    (joint,) = (one for one in piece.joints if {piece.name(i) for i in one.parts} == {"bottom", "front"})
    assert joint.kind == kinds.HOUSED


def in_an_apron(gap=0.3, where=STILL, on_runners=False):
    """A drawer whose corners are drawn blunt, in an opening of an apron, over two runners."""
    under = 0.0 if on_runners else gap
    front = ((1.0, -20, gap), (399, 0, 80 - gap))
    pairs = [
        (
            blocks("apron", [((-300, -20, -40), (700, 2, 120))], [((0, -20, 0), (400, 2, 80))], where),
            f"{OAK}; grain x; show -y",
        ),
        (blocks("back apron", [((-300, 400, -40), (700, 422, 120))], where=where), f"{OAK}; grain x; show y"),
        (
            blocks("drawer front", [front], [((6, -6, 10), (394, 0, 18))], where),
            f"{OAK}; grain x; show -y",
        ),
    ]
    for name, x, groove in (("left", 1.0, (6.0, 13.0)), ("right", 387.0, (387.0, 394.0))):
        cut = [((groove[0], 0, 10), (groove[1], 300, 18))]
        pairs += [
            (
                blocks(f"drawer side {name}", [((x, 0, under), (x + 12, 300, 70))], cut, where),
                f"{OAK}; grain y; show x",
            ),
            (
                blocks(f"runner {name}", [((x - 4, 2, -20), (x + 16, 400, 0))], where=where),
                f"{OAK}; grain y; show z",
            ),
        ]
    back = blocks("drawer back", [((13, 288, 18), (387, 300, 68))], where=where)
    bottom = blocks("drawer bottom", [((6, -5, 10), (394, 300, 18))], where=where)
    return [*pairs, (back, f"{OAK}; grain x; show y"), (bottom, f"{OAK}; grain x; show z")]


DRAWER = {"drawer front", "drawer side left", "drawer side right", "drawer back", "drawer bottom"}


@TURNED
@pytest.mark.parametrize("on_runners", [False, True])
def test_a_drawer_drawn_with_blunt_corners_is_a_drawer(on_runners, where):
    piece = whole(in_an_apron(where=where, on_runners=on_runners), where)
    (group,) = piece.loose
    assert {piece.name(i) for i in group.parts} == DRAWER
    (jams,) = found(in_an_apron(where=where, on_runners=on_runners), "drawer-height-jams", where)
    assert jams.severity == "jams" and set(jams.parts) & DRAWER
    assert not found(in_an_apron(2.5, where, on_runners), "drawer-height-jams", where)


def test_a_drawer_drawn_with_blunt_corners_that_is_said_to_slide():
    said = {("apron", "drawer front"): kinds.SLIDES} | {
        (f"drawer side {side}", f"runner {side}"): kinds.SLIDES for side in ("left", "right")
    }
    (group,) = whole(in_an_apron(on_runners=True), confirmed=said).loose
    assert len(group.parts) == len(DRAWER)


def test_a_gap_past_which_something_is_said_to_slide_is_one_that_works():
    """A drawer drawn as one solid is no box of parts: the maker's word makes its gap one that has to stay open."""
    apron = blocks("apron", [((-300, -20, -40), (700, 2, 120))], [((0, -20, 0), (400, 2, 80))])
    box = blocks("box", [((0.3, -20, 0.25), (399.7, 0, 79.75))])
    pairs = [(apron, f"{OAK}; grain x; show -y"), (box, f"{OAK}; grain x; show -y")]
    assert not found(pairs, "inset-jams")
    said = {("apron", "box"): kinds.SLIDES}
    assert only(pairs, "inset-jams", confirmed=said).severity == "jams"
    (gap,) = {entry["works"] for entry in between_entry(whole(pairs, confirmed=said))["gaps"]}
    assert gap


def test_what_metal_holds_to_the_rest_is_no_box():
    bracket = (blocks("bracket", [((100, 300, 20), (150, 400, 40))]), "steel")
    assert whole([*in_an_apron(), bracket]).loose == ()
    knob = (blocks("knob", [((190, -50, 30), (210, -20, 50))]), "steel")
    assert len(whole([*in_an_apron(), knob]).loose) == 1


def test_a_drawer_front_that_stands_on_the_edge_of_its_opening():
    """Its opening is cut into one board: it is no panel in a groove, and no tenon in a mortise."""
    apron = blocks("apron", [((-300, -20, -40), (700, 0, 240))], [((0, -20, 0), (400, 0, 200))])
    front = blocks("front", [((1, -20, 0), (399, 0, 199))])
    pairs = [(apron, f"{OAK}; grain x; show -y"), (front, f"{OAK}; grain x; show -y")]
    (joint,) = whole(pairs).joints
    assert (joint.kind, joint.meeting.shape) == (kinds.UNKNOWN, "face to face")
    above = blocks("front", [((1, -20, 1), (399, 0, 199))])
    (joint,) = whole([pairs[0], (above, pairs[1][1])]).joints
    assert joint.kind == kinds.NEAR


def cleated():
    """Four butted cleats under a wide top, a little short of the aprons round them."""
    top = blocks("top", [((-50, -50, 100), (850, 450, 120))])
    aprons = [
        (blocks("apron left", [((-22, 0, 0), (0, 400, 100))]), f"{OAK}; grain y; show -x"),
        (blocks("apron right", [((800, 0, 0), (822, 400, 100))]), f"{OAK}; grain y; show x"),
        (blocks("apron front", [((-22, -22, 0), (822, 0, 100))]), f"{OAK}; grain x; show -y"),
        (blocks("apron back", [((-22, 400, 0), (822, 422, 100))]), f"{OAK}; grain x; show y"),
    ]
    cleats = [
        (blocks("cleat left", [((1, 1, 75), (31, 399, 100))]), f"{OAK}; grain y; show -x"),
        (blocks("cleat right", [((769, 1, 75), (799, 399, 100))]), f"{OAK}; grain y; show x"),
        (blocks("cleat front", [((31, 1, 75), (769, 31, 100))]), f"{OAK}; grain x; show -y"),
        (blocks("cleat back", [((31, 369, 75), (769, 399, 100))]), f"{OAK}; grain x; show y"),
    ]
    return [(top, f"{OAK}; grain x; show z"), *aprons, *cleats]


def test_butted_cleats_are_not_taken_for_lying_loose():
    """They may be glued to the top: that they stand free of the aprons takes no joint from what is judged."""
    kept = {joint.parts: joint.kind for joint in whole(cleated()).joints if joint.meeting.contacts}
    assert set(kept.values()) == {kinds.UNKNOWN}


def test_a_face_frame_round_two_doors_is_no_box():
    """Its middle stile has room on both sides, but the frame reaches past the doors beside it."""
    pairs = sides()
    for name, x0, z0, x1, z1 in (
        ("stile left", 0.0, 0.0, 50.0, 600.0),
        ("stile middle", 225.0, 50.0, 275.0, 550.0),
        ("stile right", 450.0, 0.0, 500.0, 600.0),
        ("rail bottom", 50.0, 0.0, 450.0, 50.0),
        ("rail top", 50.0, 550.0, 450.0, 600.0),
        ("door left", 52.0, 52.0, 223.0, 548.0),
        ("door right", 277.0, 52.0, 448.0, 548.0),
    ):
        grain = "x" if name.startswith("rail") else "z"
        pairs.append((blocks(name, [((x0, -20, z0), (x1, 0, z1))]), f"{OAK}; grain {grain}; show -y"))
    assert whole(pairs).loose == ()


# ---- bottoms ---------------------------------------------------------------------------------------------------


def trays(grain, grooves, where=STILL):
    """A drawer between two walls on a floor, its bottom in grooves of the parts named, which it fills."""
    at = {
        "front": ((0.0, 0, 0), (400, 20, 120)), "back": ((0.0, 380, 0), (400, 400, 120)),
        "side left": ((0.0, 20, 0), (20, 380, 120)), "side right": ((380.0, 20, 0), (400, 380, 120)),
    }  # fmt: skip
    low = [20.0 - 6 * ("side left" in grooves), 20.0 - 6 * ("front" in grooves), 10]
    high = [380.0 + 6 * ("side right" in grooves), 380.0 + 6 * ("back" in grooves), 18]
    pairs = [
        (
            blocks(name, [box], [(low, high)] if name in grooves else (), where),
            f"{OAK}; grain {'y' if name.startswith('side') else 'x'}; show {'x' if name.startswith('side') else 'y'}",
        )
        for name, box in at.items()
    ]
    pairs.append((blocks("bottom", [(low, high)], where=where), f"{OAK}; grain {grain}; show z"))
    pairs.append(
        (
            blocks("floor", [((-41, -10, -20), (441, 420, 0))], where=where),
            f"{OAK}; grain x; show -z",
        )
    )
    walls = [("wall left", -41.0, -1.0), ("wall right", 401.0, 441.0)]
    tag = f"{OAK}; grain z; show x"
    pairs += [(blocks(name, [((x, -10, 0), (to, 420, 200))], where=where), tag) for name, x, to in walls]
    return pairs


ROUND = ("front", "back", "side left", "side right")


@TURNED
@pytest.mark.parametrize(
    ("grain", "grooves", "told"),
    [
        ("y", ROUND, "run its grain from side to side"),
        ("y", ("front", "side left", "side right"), "run its grain from side to side"),
        ("x", ROUND, "let it slide out under the drawer's back"),
        ("x", ("front", "back"), "let it slide out under the drawer's back"),
    ],
)
def test_the_remedy_of_a_drawer_bottom_follows_its_grain(grain, grooves, told, where):
    finding = only(trays(grain, grooves, where), "drawer-bottom", where, GLUED | CASE)
    assert told in finding.remedy


@TURNED
def test_a_chest_under_its_lid_is_no_drawer(where):
    """The lid's strips stand beside the chest, a little off; the chest stands by itself."""
    chest = trays("x", ROUND, where)[:5]
    lid = [
        (blocks("lid", [((-30, -10, 120), (430, 410, 130))], where=where), f"{OAK}; grain x; show z"),
        (blocks("strip left", [((-16, 0, 100), (-1, 400, 120))], where=where), f"{OAK}; grain y; show x"),
        (blocks("strip right", [((401, 0, 100), (416, 400, 120))], where=where), f"{OAK}; grain y; show x"),
    ]
    assert not found([*chest, *lid], "drawer-bottom", where, GLUED)
    assert whole([*chest, *lid], where, GLUED).loose and not whole([*chest, *lid], where, GLUED).boxes
    finding = only([*chest, *lid], "trapped-bottom-or-back", where, GLUED)
    assert finding.remedy.startswith("leave ")


def test_posts_beside_the_strips_of_a_lid_are_no_drawer():
    """A strip that binds on the chest is told as a gap that closes, and not by the height of a drawer."""
    posts = [
        (blocks(f"post {i}", [((x, y, 0), (x + 60, y + 60, 300))]), f"{OAK}; grain z; show y")
        for i, (x, y) in enumerate(((0.0, 0.0), (540.0, 0.0), (0.0, 340.0), (540.0, 340.0)))
    ]
    panels = [
        (blocks("front", [((60, 20, 0), (540, 40, 300))]), f"{OAK}; grain x; show -y"),
        (blocks("back", [((60, 360, 0), (540, 380, 300))]), f"{OAK}; grain x; show y"),
        (blocks("left", [((20, 60, 0), (40, 340, 300))]), f"{OAK}; grain y; show -x"),
        (blocks("right", [((560, 60, 0), (580, 340, 300))]), f"{OAK}; grain y; show x"),
    ]
    lid = (blocks("lid", [((-30, -10, 300), (630, 410, 315))]), f"{OAK}; grain x; show z")
    strips = [
        (blocks(f"strip {side}", [((x, 0, 280), (x + 15, 400, 300))]), f"{OAK}; grain y; show x")
        for side, x in (("left", -15.1), ("right", 600.1))
    ]
    joined = {("front", f"post {i}"): kinds.TENONED for i in (0, 1)}
    joined |= {("back", f"post {i}"): kinds.TENONED for i in (2, 3)}
    joined |= {("left", f"post {i}"): kinds.TENONED for i in (0, 2)}
    joined |= {("right", f"post {i}"): kinds.TENONED for i in (1, 3)}
    pairs = [*posts, *panels, lid, *strips]
    assert whole(pairs, confirmed=joined).loose
    assert found(pairs, "inset-jams", confirmed=joined)
    assert not found(pairs, "drawer-height-jams", confirmed=joined)
