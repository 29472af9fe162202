"""Each check of the whole piece finds its fault on a small assembly and is silent on the mended one."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.checks import all_findings
from movement_core.errors import UnknownName
from movement_core.piece.contact import joints as kinds
from movement_core.piece.limits import limit, limits
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import whole_piece
from movement_core.sheet.between import between_entry
from movement_core.sheet.between_text import between_sentences
from movement_core.sources import PROVENANCES
from tests.core.contact_solids import STILL, blocks, peg, piece_of, prism
from tests.core.whole_pieces import DAY, HOME, OAK, TURNED, found, only, whole

# ---- panels in frames ------------------------------------------------------------------------------------------


def framed(room, where=STILL, cover=12.0, built=6.0, play=0.4, width=300.0):
    """A panel between two stiles: beside each edge ``room`` in grooves, ``cover`` of its edge in them."""
    depth, half = cover + room, play / 2
    inner = 60.0
    right = inner + width - 2 * cover
    left = blocks("left", [((0, 0, 0), (inner, 22, 400))], [((inner - depth, 7, 0), (inner, 15, 400))], where)
    other = blocks(
        "right", [((right, 0, 0), (right + 60, 22, 400))], [((right, 7, 0), (right + depth, 15, 400))], where
    )
    panel = blocks("panel", [((inner - cover, 7 + half, 20), (right + cover, 15 - half, 380))], where=where)
    wood = f"white oak; pith 0 -200; built {built:g}; show -y; grain z"
    return [(left, wood), (other, wood), (panel, wood)]


@TURNED
def test_a_panel_without_room_is_trapped(where):
    pairs = framed(0.0, where)
    finding = only(pairs, "trapped-panel", where)
    assert finding.severity == "breaks"
    assert set(finding.parts) == {"panel", "left", "right"}
    panel = whole(pairs, where).parts[2]
    assert finding.figures["growth_mm"] == pytest.approx(float(panel.width.most_mm.max()) - 300, abs=0.01)
    assert finding.month == panel.wettest_month


def test_a_panel_with_room_is_not():
    assert not found(framed(4.0), "trapped-panel")
    assert not found(framed(4.0), "panel-leaves-its-groove")


def test_a_panel_with_just_too_little_room_says_how_much():
    grows = only(framed(0.0), "trapped-panel").figures["growth_mm"]
    assert found(framed(grows / 2 - 0.05), "trapped-panel")
    assert not found(framed(grows / 2 + 0.05), "trapped-panel")


def test_a_panel_that_shrinks_out_of_its_groove():
    damp = framed(2.0, cover=4.0, built=13.0)
    finding = only(damp, "panel-leaves-its-groove")
    assert finding.figures["least_cover_mm"] == pytest.approx(
        4 - finding.figures["shrinkage_mm"] / 2, abs=0.02
    )
    assert not found(framed(2.0, cover=12.0, built=8.0), "panel-leaves-its-groove")


def test_a_panel_that_rattles():
    assert only(framed(4.0, play=1.6), "panel-rattles").severity == "seen"
    assert not found(framed(4.0, play=0.4), "panel-rattles")


# ---- drawers and doors -----------------------------------------------------------------------------------------


def drawer(grain="y", side_room=0.0, gap=1.0, where=STILL):
    """A drawer between two walls on a floor: front, back and sides round a bottom in grooves."""
    end = 390.0

    def at(x0, y0, z0, x1, y1, z1):
        return ((x0, y0, z0), (x1, y1, z1))

    groove = 6.0
    left = blocks("side left", [at(0, 20, 0, 12, end, 120)], [at(12 - groove, 20, 10, 12, end, 18.2)], where)
    right = blocks(
        "side right", [at(388, 20, 0, 400, end, 120)], [at(388, 20, 10, 388 + groove, end, 18.2)], where
    )
    front = blocks("front", [at(0, 0, 0, 400, 20, 120)], [at(12, 20 - groove, 10, 388, 20, 18.2)], where)
    back = blocks("back", [at(12, end - 12, 18.2, 388, end, 120)], where=where)
    edge = 12 - groove + side_room
    bottom = blocks("bottom", [at(edge, 20 - groove, 10, 400 - edge, end - 20, 18)], where=where)
    floor = blocks("floor", [at(-gap - 20, -10, -20, 400 + gap + 20, end + 20, 0)], where=where)
    walls = [
        blocks("wall left", [at(-gap - 20, -10, 0, -gap, end + 20, 200)], where=where),
        blocks("wall right", [at(400 + gap, -10, 0, 400 + gap + 20, end + 20, 200)], where=where),
    ]
    side, cross = f"{OAK}; grain y; show x", f"{OAK}; grain x; show -y"
    pairs = [(left, side), (right, side), (front, cross), (back, cross)]
    pairs.append((bottom, f"{OAK}; grain {grain}; show z"))
    pairs.append((floor, f"{OAK}; grain x; show -z"))
    return [*pairs, *((wall, f"{OAK}; grain z; show x") for wall in walls)]


GLUED = {(side, end): kinds.DOVETAILED for side in ("side left", "side right") for end in ("front", "back")}
CASE = {("floor", wall): kinds.DOVETAILED for wall in ("wall left", "wall right")}


@TURNED
def test_a_drawer_bottom_with_its_grain_from_front_to_back(where):
    finding = only(drawer("y", where=where), "drawer-bottom", where, GLUED | CASE)
    assert set(finding.parts) == {"bottom", "side left", "side right"}
    assert finding.severity == "breaks"
    borne = whole(drawer("y", where=where), where, confirmed=GLUED | CASE).forces.joints
    assert 0 < finding.figures["force_n"] <= max(joint.force_n or 0.0 for joint in borne) + 1
    assert "kN would press" in finding.message


def test_a_drawer_bottom_with_its_grain_from_side_to_side():
    checks = {f.check for f in all_findings(whole(drawer("x", 1.0), confirmed=GLUED | CASE))}
    assert not checks & {"drawer-bottom", "trapped-panel", "grain-crossing", "runner-across-the-side"}


def test_a_drawer_rests_on_what_it_runs_on():
    piece = whole(drawer("x", 1.0), confirmed=GLUED | CASE)
    (group,) = piece.loose
    assert {piece.name(i) for i in group.parts} == {"side left", "side right", "front", "back", "bottom"}
    resting = [joint for joint in piece.joints if joint.kind == kinds.RESTS]
    assert {piece.name(i) for joint in resting for i in joint.parts} >= {"floor", "side left", "side right"}


def test_a_board_in_a_gap_is_no_drawer():
    """A cleat with room at both its ends is glued as likely as not."""
    pairs = drawer("x", 1.0)[5:]
    cleat = blocks("cleat", [((0, 50, 0), (400, 90, 20))])
    piece = whole([*pairs, (cleat, f"{OAK}; grain x; show z")], confirmed=CASE)
    assert piece.loose == ()


def inset_door(gap, built=6.0, rings="pith 0 -200"):
    """A door of two boards between two posts, hung on steel at its left edge."""
    wide = 300.0
    posts = [
        blocks(
            "post left",
            [((-40, 0, 0), (0, 22, 500))],
            [((-6, 0, 100), (0, 22, 160)), ((-6, 0, 340), (0, 22, 400))],
        ),
        blocks("post right", [((wide + gap, 0, 0), (wide + gap + 40, 22, 500))]),
        blocks("rail", [((-40, 0, -40), (wide + gap + 40, 22, 0))]),
    ]
    first = blocks(
        "board left",
        [((0.6, 0, 1), (150, 22, 499))],
        [((0.6, 0, 100), (6, 22, 160)), ((0.6, 0, 340), (6, 22, 400))],
    )
    second = blocks("board right", [((150, 0, 1), (wide, 22, 499))])
    hinges = [blocks(f"hinge {i}", [((-6, 0, z), (6, 22, z + 60))]) for i, z in enumerate((100, 340))]
    wood = f"white oak; {rings}; built {built:g}; show -y"
    return [
        *((post, f"{wood}; grain {'x' if post.name == 'rail' else 'z'}") for post in posts),
        (first, f"{wood}; grain z"), (second, f"{wood}; grain z"),
        *((hinge, "steel") for hinge in hinges),
    ]  # fmt: skip


POSTS = {("post left", "rail"): kinds.TENONED, ("post right", "rail"): kinds.TENONED}


def test_an_inset_door_jams():
    pairs = inset_door(0.8)
    finding = only(pairs, "inset-jams", confirmed=POSTS)
    assert finding.severity == "jams"
    assert finding.parts == ("board right", "post right")
    piece = whole(pairs, confirmed=POSTS)
    grows = sum(
        float(piece.parts[i].width.most_mm.max()) - piece.parts[i].part.frame.width_mm for i in (3, 4)
    )
    # From the hinge to the lock edge nearly the whole door grows into the gap, and half of the post.
    assert -finding.figures["least_mm"] == pytest.approx(grows - 0.8, abs=0.5)


def test_an_inset_door_with_a_gap_for_its_season():
    assert not found(inset_door(5.0), "inset-jams", confirmed=POSTS)


def test_an_inset_door_whose_gap_gapes():
    finding = only(inset_door(2.5, built=11.0), "gap-too-wide", confirmed=POSTS)
    assert finding.figures["most_mm"] > limit("gap most")
    assert not found(inset_door(2.5, built=8.0, rings="rings 90"), "gap-too-wide", confirmed=POSTS)


def test_a_gap_that_nothing_works_in_may_close_too():
    one = blocks("one", [((0, 0, 0), (300, 20, 600))])
    other = blocks("other", [((300.5, 0, 0), (600, 20, 600))])
    wood = "white oak; pith 0 -200; built 5; grain z; show -y"
    assert only([(one, wood), (other, wood)], "gap-closes").severity == "jams"
    apart = blocks("other", [((306, 0, 0), (600, 20, 600))])
    assert not found([(one, wood), (apart, wood)], "gap-closes")


# ---- grain that crosses ----------------------------------------------------------------------------------------


def side_with(strip, tag="grain y; show x"):
    side = blocks("side", [((0, 0, 0), (20, 400, 700))])
    return [(side, f"{OAK}; grain z; show x"), (blocks("strip", [strip]), f"{OAK}; {tag}")]


OUTSIDE = ((20, 0, 100), (38, 400, 130))


def test_a_moulding_across_a_side():
    finding = only(side_with(OUTSIDE), "moulding-across-the-side")
    assert finding.severity == "unknown"
    assert "glued or screwed" in finding.message
    assert finding.figures["width_mm"] == pytest.approx(400)


def test_a_strip_with_something_beyond_it_is_no_moulding():
    beyond = (blocks("beyond", [((140, 0, 0), (160, 400, 700))]), f"{OAK}; grain z; show x")
    assert found([*side_with(OUTSIDE), beyond], "runner-across-the-side")
    assert not found([*side_with(OUTSIDE), beyond], "moulding-across-the-side")


def test_what_is_confirmed_decides():
    glued = {("side", "strip"): kinds.GLUED_CROSS}
    finding = only(side_with(OUTSIDE), "moulding-across-the-side", confirmed=glued)
    assert finding.severity == "breaks"
    (joint,) = whole(side_with(OUTSIDE), confirmed=glued).forces.joints
    assert finding.figures["force_n"] == pytest.approx(joint.force_n, abs=0.6)
    assert finding.figures["relaxed_n"] < finding.figures["force_n"]
    assert f"{joint.force_n / 1000:.1f} kN would bear on the joint in February" in finding.message
    for kind in (kinds.SLIDES, kinds.FIXED_POINT, kinds.HOUSED):
        assert not found(side_with(OUTSIDE), "moulding-across-the-side", confirmed={("strip", "side"): kind})


@pytest.mark.parametrize(("width", "severity"), [(70, None), (95, "seen"), (140, "breaks")])
def test_how_wide_a_joint_across_the_grain_may_be(width, severity):
    """Built damp, so that all of them move more than may be left alone."""
    wood = "white oak; pith 0 -200; built 16"
    board = blocks("board", [((0, 0, 0), (700, width, 20))])
    block = blocks("block", [((100, 0, 20), (140, width, 60))])
    pairs = [(board, f"{wood}; grain x; show z"), (block, f"{wood}; grain y; show z")]
    glued = {("board", "block"): kinds.GLUED_CROSS}
    severities = [f.severity for f in all_findings(whole(pairs, confirmed=glued)) if "board" in f.parts]
    assert severities == ([severity] if severity else [])


def test_what_crosses_a_glued_panel_is_judged_over_all_its_boards():
    """A batten over four upright boards of 70 mm, each of which would pass."""
    boards = [blocks(f"b{i}", [((i * 70, 0, 0), ((i + 1) * 70, 20, 600))]) for i in range(4)]
    batten = blocks("batten", [((0, 20, 300), (280, 45, 340))])
    wood = "white oak; pith 0 -200; built 14"
    pairs = [(board, f"{wood}; grain z; show -y") for board in boards]
    pairs.append((batten, f"{wood}; grain x; show y"))
    findings = [f for f in all_findings(whole(pairs)) if f.figures.get("width_mm") == pytest.approx(280)]
    assert findings
    assert all("batten" in f.parts for f in findings)


def test_solid_wood_on_a_core_that_does_not_move():
    core = blocks("core", [((0, 0, 0), (700, 400, 18))])
    face = blocks("face", [((0, 0, 18), (700, 400, 26))])
    stuck = {("core", "face"): kinds.GLUED_CROSS}
    pairs = [(core, "plywood; built 8"), (face, f"{OAK}; grain x; show z")]
    assert only(pairs, "solid-on-stable-core", confirmed=stuck).severity == "breaks"
    ply = [(core, "plywood; built 8"), (face, "plywood; built 8")]
    assert not found(ply, "solid-on-stable-core", confirmed=stuck)


def test_a_carcase_whose_grain_runs_round_moves_together():
    """Sides and top of one cut, grain round the corner: no finding, and the crossing is listed with its reason."""
    side = blocks("side", [((0, 0, 0), (20, 400, 700))])
    top = blocks("top", [((20, 0, 680), (900, 400, 700))])
    pairs = [(side, f"{OAK}; grain z; show -x"), (top, f"{OAK}; grain x; show z")]
    piece = whole(pairs, confirmed={("side", "top"): kinds.DOVETAILED})
    (crossing,) = piece.crossings
    assert crossing.verdict == "harmless"
    assert "runs round" in crossing.reason
    assert not [f for f in all_findings(piece) if "cross" in f.check]


def test_every_crossing_pair_is_listed():
    piece = whole(side_with(OUTSIDE))
    assert [(piece.name(c.carrier), piece.name(c.other)) for c in piece.crossings] == [("side", "strip")]
    along = side_with(((20, 0, 0), (38, 30, 700)), "grain z; show x")
    assert whole(along).crossings == ()
    unknown = side_with(OUTSIDE)
    unknown[1] = unknown[1][0], "grain y; built 8"
    (crossing,) = whole(unknown).crossings
    assert (crossing.verdict, "strip" in crossing.reason) == ("not known", True)


def tenoned(width):
    rail = blocks("rail", [((0, 0, 0), (500, width, 30)), ((-40, 5, 10), (0, width - 5, 20))])
    leg = blocks("leg", [((-60, -10, -300), (0, width + 10, 300))], [((-40, 5, 10), (0, width - 5, 20))])
    wood = "white oak; pith 0 -200; built 14"
    return [(rail, f"{wood}; grain x; show z"), (leg, f"{wood}; grain y; show -x")]


@pytest.mark.parametrize(("width", "severity"), [(80, None), (140, "seen"), (220, "breaks")])
def test_wide_tenons(width, severity):
    severities = [f.severity for f in found(tenoned(width), "wide-tenon")]
    assert severities == ([severity] if severity else [])


# ---- mitres, finishes, boards on their own, overlaps -----------------------------------------------------------


def mitred(width, where=STILL):
    outer = 400.0
    flat = prism("flat", [(0, 0), (outer, 0), (outer - width, width), (0, width)], 0, 20, where)
    upright = prism(
        "upright", [(outer, 0), (outer, outer), (outer - width, outer), (outer - width, width)], 0, 20, where
    )
    return [(flat, f"{OAK}; grain x; show z"), (upright, f"{OAK}; grain y; show z")]


@TURNED
def test_a_wide_mitre_opens(where):
    pairs = mitred(90.0, where)
    finding = only(pairs, "mitre-opens", where)
    strain = whole(pairs, where).parts[0].width.days_mm / 90 - 1
    assert finding.figures["gap_mm"] == pytest.approx(np.sqrt(2) * 90 * np.abs(strain).max(), abs=0.02)


def test_a_narrow_mitre_and_a_butt_joint_do_not():
    assert not found(mitred(25.0), "mitre-opens")
    butted = side_with(((20, 0, 0), (500, 90, 20)), "grain x; show z")
    assert not found(butted, "mitre-opens")


def test_unequal_finish():
    board = blocks("board", [((0, 0, 0), (900, 300, 20))])
    uneven = [(board, f"{OAK}; grain x; show z; finish show varnish 3, back bare")]
    finding = only(uneven, "unequal-finish")
    assert abs(finding.figures["uneven_cup_mm"]) >= limit("uneven cup")
    assert not found([(board, f"{OAK}; grain x; show z; finish varnish 3")], "unequal-finish")
    narrow = blocks("board", [((0, 0, 0), (900, 40, 20))])
    assert not found([(narrow, uneven[0][1])], "unequal-finish")  # too little to cure


def test_a_wide_board_that_nothing_holds():
    door = blocks("door", [((0, 0, 0), (300, 20, 900))])
    wood = "white oak; pith 0 -160; built 14; grain z; show -y"
    assert only([(door, wood)], "wide-free-board").figures["cup_mm"] >= limit("free cup")
    batten = blocks("batten", [((10, 20, 400), (290, 60, 440))])
    held = [(door, wood), (batten, f"{OAK}; grain x; show y")]
    assert not found(held, "wide-free-board", confirmed={("door", "batten"): kinds.SCREWED})
    quarter = wood.replace("pith 0 -160", "rings 90")
    assert not found([(door, quarter)], "wide-free-board")


def test_grain_that_runs_out():
    post = blocks("post", [((0, 0, 0), (120, 30, 2000))])
    said = "white oak; pith 0 -80; built 14; grain z; show -y; slope {}"
    assert only([(post, said.format(0.1))], "grain-runs-out").figures
    assert not found([(post, said.format(0.0))], "grain-runs-out")
    assert not found([(post, "white oak; pith 0 -80; built 14; grain z; show -y")], "grain-runs-out")


def test_solids_in_the_same_place():
    one = blocks("one", [((0, 0, 0), (400, 100, 20))])
    other = blocks("other", [((100, 50, 10), (200, 150, 30))])
    pairs = [(one, f"{OAK}; grain x; show z"), (other, f"{OAK}; grain y; show z")]
    assert only(pairs, "drawn-twice").figures["depth_mm"] == pytest.approx(10, abs=1e-3)
    assert not found(side_with(OUTSIDE), "drawn-twice")


def test_a_volume_that_is_not_known_is_left_out_of_an_overlap():
    rail, pin = blocks("rail", [((-30, -30, 0), (30, 30, 40))]), peg("pin", 5, -9, 30)
    one = only([(rail, f"{OAK}; grain x"), (pin, f"{OAK}; grain z")], "drawn-twice")
    assert one.figures == {"depth_mm": 30.0}
    assert one.message.startswith(
        "by the meshes of their curved faces they are drawn in the same place, some 30.00"
    )


# ---- limits ----------------------------------------------------------------------------------------------------


def test_every_limit_says_what_it_rests_on():
    for one in limits().values():
        assert one.meaning and one.unit and one.provenance in PROVENANCES
        assert one.source or one.provenance in ("own", "common practice")
    with pytest.raises(UnknownName, match="glued acros"):
        limit("glued acros")


def test_a_piece_without_faces_is_still_checked():
    piece = solve_piece(piece_of(side_with(OUTSIDE)), HOME, DAY)
    assert whole_piece(piece).crossings == ()
    assert all_findings(whole_piece(piece)) == ()


# ---- fixed lines -----------------------------------------------------------------------------------------------


def on_two_bars(second):
    """A top on two steel bars that a steel plate keeps apart; the second one held as asked."""
    board = blocks("board", [((0, 0, 0), (600, 300, 20))])
    bars = [blocks(f"bar {i}", [((100, y, -20), (500, y + 20, 0))]) for i, y in enumerate((0.0, 280.0))]
    plate = blocks("plate", [((100, 0, -40), (500, 300, -20))])
    pairs = [(board, f"{OAK}; grain x; show z"), *((bar, "steel") for bar in bars), (plate, "steel")]
    return pairs, {("board", "bar 0"): kinds.SCREWED, ("board", "bar 1"): second}


def test_a_board_with_two_fixed_lines():
    pairs, said = on_two_bars(kinds.SCREWED)
    finding = only(pairs, "two-fixed-lines", confirmed=said)
    assert finding.severity == "breaks"
    assert finding.figures["apart_mm"] == pytest.approx(280)
    assert set(finding.parts) == {"board", "bar 0", "bar 1"}


@pytest.mark.parametrize("second", [kinds.SLIDES, kinds.RESTS, kinds.HOUSED])
def test_a_board_with_one_fixed_line(second):
    pairs, said = on_two_bars(second)
    assert not found(pairs, "two-fixed-lines", confirmed=said)


def test_a_piece_too_large_to_be_carried_says_so(monkeypatch):
    """Too large is what is set to be: two parts here."""
    assert between_entry(whole(side_with(OUTSIDE)))["between_notes"] == []
    monkeypatch.setattr("movement_core.piece.whole.MOST_CARRIED", 1)
    large = whole(side_with(OUTSIDE))
    assert large.positions is None
    (note,) = between_entry(large)["between_notes"]
    assert "2 parts" in note and note in between_sentences(between_entry(large))
