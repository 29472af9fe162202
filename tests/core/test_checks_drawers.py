"""Drawers and their bottoms: heights, boxes with blunt corners, room in grooves, and what is no drawer."""

from __future__ import annotations

import pytest

from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit
from movement_core.sheet.between import between_entry
from tests.core.contact_solids import STILL, blocks
from tests.core.test_checks_carcases import sides
from tests.core.test_checks_whole import CASE, GLUED, drawer
from tests.core.whole_pieces import OAK, TURNED, found, only, whole

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


def shut(stops, room=0.5, where=STILL):
    """The drawer under its rail, shut: it touches what it stops at, of the material said."""
    return [
        *under_a_rail(room, where),
        *((blocks(name, [box], where=where), tag) for name, box, tag in stops),
    ]


REAR = ("rear", ((-21, 390, -20), (421, 410, 200)), f"{OAK}; grain x; show y")
PLY = ("rear", ((-21, 390, -20), (421, 396, 200)), "plywood; built 8")
STOP = ("stop", ((150, 20, 0), (250, 40, 10)), f"{OAK}; grain x; show z")


@TURNED
@pytest.mark.parametrize(
    "stops", [(REAR,), (PLY,), (STOP,), (REAR, STOP)], ids=["back", "ply", "stop", "both"]
)
def test_a_drawer_that_is_drawn_shut_against_its_stop(stops, where):
    piece = whole(shut(stops, where=where), where, JOINED)
    (group,) = piece.loose
    assert {piece.name(i) for i in group.parts} == {"side left", "side right", "front", "back", "bottom"}
    touching = [
        one for one in piece.joints if len(group.parts & set(one.parts)) == 1 and one.meeting.contacts
    ]
    assert {one.kind for one in touching} == {kinds.RESTS}
    assert only(shut(stops, where=where), "drawer-height-jams", where, JOINED).severity == "jams"
    assert not found(shut(stops, 2.5, where), "drawer-height-jams", where, JOINED)


def test_what_is_held_between_two_stops_is_no_drawer():
    ahead = ("ahead", ((-1.0, -20, 0), (401, 0, 60)), f"{OAK}; grain x; show y")
    assert whole(shut((REAR, ahead)), confirmed=JOINED).loose == ()


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
def test_a_drawer_drawn_with_blunt_corners_and_shut(on_runners, where):
    """Its back touches the apron behind it, which is no corner of its own."""
    behind = blocks("behind", [((-300, 300, -40), (700, 322, 120))], where=where)
    pairs = [pair for pair in in_an_apron(0.3, where, on_runners) if pair[0].name != "back apron"]
    pairs.append((behind, f"{OAK}; grain x; show y"))
    piece = whole(pairs, where)
    (group,) = piece.loose
    assert {piece.name(i) for i in group.parts} == DRAWER
    (jams,) = found(pairs, "drawer-height-jams", where)
    assert jams.severity == "jams" and set(jams.parts) & DRAWER


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
