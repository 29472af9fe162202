"""Battens and breadboard ends in the picture of a top: where they are drawn, measured against the solids."""

from __future__ import annotations

import re
from functools import cache

import numpy as np
import pytest

from movement_core.piece.part import parts_of
from movement_core.piece.solve import solve_piece
from movement_core.piece.whole import whole_piece
from movement_core.sheet.pages.boxes import clashes, label_box, labels_of, overlap
from movement_core.sheet.pages.hold_blocks import hold_blocks
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import Material, planned_tops
from movement_core.sheet.pages.model import Arc, Label, Paragraph, Pictures
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.svg import picture_svg
from tests.core import sheet_pieces
from tests.core.tables import BOTH, DAY, UP, Made, frame, solved, top
from tests.core.test_top_shoulders import _table as jointed_table

ROOM = (240.0, 105.0)
OFF_MM = 0.06  # places in the recipes are told to a tenth


def shown(material, units="mm"):
    """The one picture of the material's top, and the words under it."""
    blocks = hold_blocks(material, Lengths(units), ROOM)
    (at,) = [i for i, block in enumerate(blocks) if isinstance(block, Pictures)]
    (picture,) = blocks[at].pictures
    note = blocks[at + 1]
    return picture, bare(note.text.words) if isinstance(note, Paragraph) else ""


def shape(picture, name):
    (found,) = [one for one in picture.shapes if not isinstance(one, Label) and one.id == name]
    return found


def ids(picture, word):
    return [one.id for one in picture.shapes if one.id.startswith(word)]


class Back:
    """From the paper back to mm of the piece: its top is the rectangle ``low`` to ``high``, level with x and y."""

    def __init__(self, material, picture, low, high):
        (planned,) = material.tops
        corners = np.array(shape(picture, "top").points)
        self.paper, far = corners.min(axis=0), corners.max(axis=0)
        self.size = far - self.paper
        self.low, self.high = np.array(low, float), np.array(high, float)
        # along runs right and across runs up; which way that is in the piece is the frame's to choose
        self.turned = planned.place.axes[2][0] < 0, planned.place.axes[0][1] > 0

    def __call__(self, points):
        share = (np.array(points) - self.paper) / self.size
        share = np.where(self.turned, 1 - share, share)
        return self.low + share * (self.high - self.low)

    def box(self, points):
        there = self(points)
        return (*there.min(axis=0), *there.max(axis=0))


@cache
def lid():
    """Three boards of 140, two ends of 70 and two battens from 30 to 390; nothing carries it."""
    material = sheet_pieces.lid()
    picture, note = shown(material)
    return material, picture, note, Back(material, picture, (0, 0), (900, 420))


def test_battens_are_drawn_where_their_solids_are():
    _, picture, _, back = lid()
    assert len(ids(picture, "batten ")) == 2
    for name, x in (("Batten left", 200), ("Batten right", 650)):
        box = back.box(shape(picture, f"batten {name}").points)
        assert box == pytest.approx((x, 30, x + 50, 390), abs=1e-6)


def test_screws_of_a_batten_stand_on_its_middle_line_and_all_but_the_middle_one_in_slots():
    material, picture, _, back = lid()
    across = [
        55.0,
        132.5,
        210.0,
        287.5,
        365.0,
    ]  # 25 mm from its ends, a plain hole in the middle, 150 mm at most apart
    scale = (shape(picture, "top").points[1][0] - shape(picture, "top").points[0][0]) / 900
    for place, (name, x) in enumerate((("Batten left", 225), ("Batten right", 675))):
        screws = [one for one in picture.shapes if re.fullmatch(rf"screw \d of {name}", one.id)]
        places = back([one.centre for one in screws])
        assert places[:, 0] == pytest.approx([x] * 5, abs=1e-6)
        assert sorted(places[:, 1]) == pytest.approx(across, abs=OFF_MM)
        recipe = material.tops[0].entry["recipes"][place]
        for number, (screw, there) in enumerate(zip(recipe["screws"], places), 1):
            slots = ids(picture, f"slot of screw {number} of {name}")
            assert bool(slots) == (abs(there[1] - 210) > 1), "only the middle of a batten stays"
            if slots:
                ((start, end),) = shape(picture, slots[0]).lines
                assert abs(end[1] - start[1]) >= screw["slot_length_mm"] * scale - 1e-9
                assert min(start[1], end[1]) < screws[number - 1].centre[1] < max(start[1], end[1])


def test_breadboard_ends_are_drawn_beyond_the_shoulders():
    _, picture, _, back = lid()
    assert len(ids(picture, "breadboard end ")) == 2
    for name, x in (("End left", -70), ("End right", 900)):
        box = back.box(shape(picture, f"breadboard end {name}").points)
        assert box == pytest.approx((x, 0, x + 70, 420), abs=1e-6)


@pytest.mark.parametrize("name, shoulder, outward", [("End left", 0, -1), ("End right", 900, 1)])
def test_tenons_pegs_and_glue_lie_in_the_ends(name, shoulder, outward):
    _, picture, _, back = lid()
    tenons = [one for one in picture.shapes if re.fullmatch(rf"tenon \d in {name}", one.id)]
    boxes = np.array([back.box(one.lines[0]) for one in tenons])
    long = 2 / 3 * 70
    assert len(tenons) == 3
    ends = sorted((shoulder, shoulder + outward * long))
    assert boxes[:, [0, 2]] == pytest.approx(np.array([ends] * 3), abs=OFF_MM)
    middles = np.sort((boxes[:, 1] + boxes[:, 3]) / 2)
    assert boxes[:, 3] - boxes[:, 1] == pytest.approx([75] * 3, abs=OFF_MM)
    margin = 75 / 2 + 22  # from the edge: half a tenon, and the top's thickness to keep the mortise closed
    assert middles == pytest.approx([margin, 210, 420 - margin], abs=OFF_MM)
    for number, (low, wide) in enumerate(zip(boxes[:, :2], boxes[:, 2:] - boxes[:, :2]), 1):
        (at,) = back([shape(picture, f"peg {number} in {name}").centre])
        assert np.all(at > low) and np.all(at < low + wide)
        assert at[1] == pytest.approx(low[1] + wide[1] / 2, abs=OFF_MM)
        assert bool(ids(picture, f"slot of peg {number} in {name}")) == (abs(at[1] - 210) > 1)
    glue = back.box([point for line in shape(picture, f"glue in {name}").lines for point in line])
    assert glue[1::2] == pytest.approx((185, 235), abs=2.5)  # hatched: its lines end near the corners
    assert glue[1] >= 185 - OFF_MM and glue[3] <= 235 + OFF_MM
    assert glue[0] >= ends[0] - OFF_MM and glue[2] <= ends[1] + OFF_MM
    assert glue[2] - glue[0] == pytest.approx(long, abs=2.5)
    tongue = back([point for line in shape(picture, f"tongue in {name}").lines for point in line])
    assert tongue[:, 0] == pytest.approx([shoulder + outward * 22 / 3] * len(tongue), abs=OFF_MM)
    assert (tongue[:, 1].min(), tongue[:, 1].max()) == pytest.approx((0, 420), abs=1e-6)
    for _, low, _, high in boxes:
        assert not np.any((tongue[:, 1] > low + 0.1) & (tongue[:, 1] < high - 0.1)), "behind its tenons"


def test_without_fasteners_the_picture_shows_the_bars_alone_and_says_what_its_signs_are():
    material, picture, note, _ = lid()
    assert material.tops[0].entry["plans"][0]["count"] == 0
    assert not ids(picture, "fastener") and not ids(picture, "datum") and not ids(picture, "distances along")
    assert "a dot is a screw" in note and "A ring is a peg" in note and "hatched" in note
    told = bare(picture.told)
    assert all(name in told for name in ("Batten left", "Batten right", "End left", "End right"))
    assert "fasteners" not in told and "Distances" not in bare(picture.title)


@pytest.mark.parametrize("units", ["mm", "inch"])
def test_every_place_of_a_screw_and_a_tenon_is_told_once_beside_the_top(units):
    material, *_ = lid()
    picture, _ = shown(material, units)
    figures = [figure for label in labels_of(picture) for figure in label.text.figures]
    recipes = material.tops[0].entry["recipes"]
    told = {
        each["across_mm"] for one in recipes for word in ("screws", "tenons") for each in one.get(word, ())
    }
    assert len(figures) == len(told) == 7  # five screws, three tenons, the middle of both
    for figure in figures:
        value = material.data
        for key in figure.at:
            value = value[key]
        assert value in told
    assert "screws of battens, tenons of breadboard ends" in bare(picture.title)
    assert f"in {units} from the middle" in bare(picture.title)


def test_names_stand_in_their_bars_and_over_no_sign():
    _, picture, _, _ = lid()
    names = {label.id: label for label in labels_of(picture) if label.id.startswith("name of ")}
    assert {bare(label.text.words) for label in names.values()} == {
        "Batten left", "Batten right", "End left", "End right",
    }  # fmt: skip
    signs = [one for one in picture.shapes if isinstance(one, Arc)]
    for key, label in names.items():
        left, up, right, down = label_box(label)
        kind = "batten" if "Batten" in key else "breadboard end"
        corners = np.array(shape(picture, key.replace("name of", kind)).points)
        low, high = corners.min(axis=0), corners.max(axis=0)
        assert low[0] < left and right < high[0] and low[1] < up and down < high[1], key
        for sign in signs:
            (x, y), r = sign.centre, sign.radius_mm
            assert not overlap((left, up, right, down), (x - r, y - r, x + r, y + r))


def test_the_forms_draw_them_too():
    _, picture, _, _ = lid()
    svg = picture_svg(picture)
    for name in (
        "batten Batten left",
        "breadboard end End right",
        "peg 2 in End left",
        "screw 3 of Batten right",
    ):
        assert f'data-shape="{name}"' in svg


def made(solids, kinds=("slotted screw",)):
    whole = whole_piece(solved(solids, BOTH))
    return Material({}, whole, (), planned_tops(whole, kinds=kinds))


def batten(x, low, high, name, breadth=40.0):
    size = (breadth, high - low, 25.0)
    return Made(name, size, (x, (low + high) / 2, 700 - 12.5), "white oak; grain y; cut quarter; built 9")


def end(x, breadth, width, name):
    return Made(name, (breadth, width, 20.0), (x, 0.0, 710), "white oak; grain y; cut quarter; built 9")


def test_a_framed_top_shows_rails_fasteners_and_ends_together():
    """A top of 900 × 440 from its middle, with ends of 80 that stand out 5 mm."""
    material = made([*top(UP), *frame(legs=False), end(-490, 80, 450, "Left"), end(490, 80, 450, "Right")])
    picture, note = shown(material)
    back = Back(material, picture, (-450, -220), (450, 220))
    for name, x in (("Left", -530), ("Right", 450)):
        box = back.box(shape(picture, f"breadboard end {name}").points)
        assert box == pytest.approx((x, -225, x + 80, 225), abs=1e-6)
    count = material.tops[0].entry["plans"][0]["count"]
    assert len(ids(picture, "fastener number")) == len(ids(picture, "fastener ")) - count == count > 0
    assert ids(picture, "rail ") and ids(picture, "datum") and len(ids(picture, "peg ")) == 6
    assert "A ring is a peg" in note and "a dot is a screw" not in note
    place, placed = material.tops[0].place, material.tops[0].plans.plans[0].placed
    for number, one in enumerate(placed, 1):
        (at,) = back([shape(picture, f"fastener {number}").centre])
        along, across = one.place_mm
        x, y, _ = along * place.axes[2] + across * place.axes[0]
        assert at == pytest.approx((x, y), abs=1e-6)
    for units in ("mm", "inch"):
        assert not clashes(shown(material, units)[0])


def test_a_framed_top_without_bars_keeps_its_words():
    picture, note = shown(made([*top(UP), *frame(legs=False)]))
    assert "On the right" not in picture.title and "Battens and" not in picture.told and note == ""


def joined(**how):
    """A framed top from -400 to 400 whose tongues reach into its ends of 80."""
    whole = whole_piece(solve_piece(parts_of(jointed_table(**how)), BOTH, DAY))
    return Material({}, whole, (), planned_tops(whole, kinds=("slotted screw",)))


@pytest.mark.parametrize("how", [{}, {"groove": 12.0}], ids=["tongues of the top", "tongues of the ends"])
def test_of_a_joined_end_only_what_lies_beyond_the_shoulder_is_drawn(how):
    material = joined(**how)
    picture, _ = shown(material)
    back = Back(material, picture, (-400, -220), (400, 220))
    for name, x in (("Breadboard left", -480), ("Breadboard right", 400)):
        box = back.box(shape(picture, f"breadboard end {name}").points)
        assert box == pytest.approx((x, -220, x + 80, 220), abs=1e-6)
        assert len(ids(picture, "peg ")) == 6
    assert not clashes(picture)


def test_where_the_shoulder_is_not_found_the_joint_is_not_drawn_and_that_is_said(monkeypatch):
    monkeypatch.setattr("movement_core.piece.top_place._faces", lambda place: ())
    material = joined()
    picture, note = shown(material)
    assert len(ids(picture, "breadboard end ")) == 2
    assert not any(ids(picture, word) for word in ("tenon ", "peg ", "glue in", "tongue in"))
    assert "not drawn where the shoulder is not found: Breadboard left, Breadboard right" in note
    assert "A ring is a peg" not in note


def test_a_bar_whose_recipe_fails_is_drawn_without_signs_and_a_name_without_room_is_said():
    bars = [batten(100, -210, -110, "Stub", 12.0), batten(-250, -150, 150, "Whole")]
    material = made([*top(UP), *bars])
    recipes = {recipe["part"]: recipe for recipe in material.tops[0].entry["recipes"]}
    assert recipes["Stub"]["why_not"] and not recipes["Whole"]["why_not"]
    picture, note = shown(material)
    assert ids(picture, "batten Stub") and not [one for one in ids(picture, "screw ") if "Stub" in one]
    assert len(ids(picture, "screw ")) == len(recipes["Whole"]["screws"]) == 3
    assert "No room" not in note
    crowd = [
        batten(-420 + 17 * i, -150, 150, f"A batten with a long name, number {i:02}", 14.0) for i in range(50)
    ]
    material = made([*top(UP), *crowd])
    picture, note = shown(material)
    named = ids(picture, "name of ")
    assert 0 < len(named) < 50 and "No room in the picture to name" in note
    assert not clashes(picture)
    for one in crowd:
        assert (f"name of {one.name}" in named) != (one.name in note), one.name


def test_places_that_find_no_room_beside_a_narrow_top_are_left_to_the_tables():
    def picture_of(count):
        bars = [batten(-1000 + 300 * i, -75 + i, 75 - i, f"Batten {i}", 30.0) for i in range(count)]
        return shown(made([*top(UP[:2], length=2400.0, width=80.0), *bars]))[0]

    few, many = picture_of(2), picture_of(6)
    assert "On the right" in few.title and len([one for one in labels_of(few) if one.text.figures]) == 5
    assert "On the right" not in many.title and not [one for one in labels_of(many) if one.text.figures]
    assert len(ids(many, "screw ")) == 18
    assert not clashes(few) and not clashes(many)


def test_a_small_wide_lid_has_room_for_the_names_of_its_edges():
    bars = [batten(x, -230, 230, f"Rib {x}", 20.0) for x in (-60, 60)]
    picture, _ = shown(made([*top(UP, length=200.0, width=130.0), *bars]), "inch")
    assert not clashes(picture) and picture.width_mm <= ROOM[0]
