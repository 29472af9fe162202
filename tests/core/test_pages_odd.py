"""Sheets of odd pieces: alike boards, rings by their angle, a pith inside, turned boards, nothing told, no faces."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

import numpy as np
import pytest

from movement_core.checks import all_findings
from movement_core.sheet.entry import file_entry
from movement_core.sheet.grain_marks import grain_marks
from movement_core.sheet.pages.boxes import clashes
from movement_core.sheet.pages.lengths import Lengths
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import Heading, Label, Pictures, Table
from movement_core.sheet.pages.names import bare
from movement_core.sheet.pages.piece_view import piece_pictures
from movement_core.sheet.pages.section_view import section_pictures
from movement_core.sheet.pages.seen import ABOVE, see
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.wish import SheetWish
from tests.core.contact_solids import blocks
from tests.core.sheet_pieces import material, named_boards, panel_in_frame
from tests.core.test_pages_sheet import words

WOOD = "white oak; built 8; grain x; show +z"


def plank(name, place, tag, width=180.0):
    """A single board; places lie far from each other."""
    at = 400.0 * place
    return blocks(name, [((0, at, 0), (900, at + width, 24))]), tag


@cache
def bag():
    """Single boards of every kind of rings, two of them alike, and one that twists."""
    pairs = [
        plank("Pith told", 0, f"{WOOD}; pith 10 -60"),
        plank("Its twin", 1, f"{WOOD}; pith 10 -60"),
        plank("By angle", 2, f"{WOOD}; cut flat; heart show"),
        plank("Boxed", 3, f"{WOOD}; pith 5 2"),
        plank("Spiral", 4, f"{WOOD}; pith 0 -90; slope 0.03; figure curly", 120.0),
    ]
    return material(pairs, "bag.step", kinds=())


def titles(pictures):
    return [bare(picture.title) for picture in pictures]


def test_alike_boards_are_drawn_once_and_named_together():
    shown = titles(section_pictures(bag(), Lengths("mm"), 170.0))
    (twins,) = [title for title in shown if "Pith told" in title]
    assert twins.startswith("1 Pith told (also 2).") and not any("Its twin" in title for title in shown)
    (angle,) = [title for title in shown if "By angle" in title]
    assert "rings drawn by their angle alone" in angle and "angle alone" not in twins


def test_a_cup_that_is_a_range_is_told_from_to():
    pictures = section_pictures(bag(), Lengths("mm"), 170.0)
    told = {
        bare(picture.title)[0]: " ".join(s.text.words for s in picture.shapes if isinstance(s, Label))
        for picture in pictures
    }
    assert "between" in told["3"] and "between" not in told["1"]
    for picture in pictures:
        assert not clashes(picture), picture.name


def test_rings_about_a_pith_inside_run_all_round_it():
    (boxed,) = [one.part for one in bag().parts if one.part.name == "Boxed"]
    rings = grain_marks(boxed).rings
    points = np.concatenate(rings)[:, :2] - np.array([5.0, 2.0])
    angle = np.arctan2(points[:, 1], points[:, 0])
    assert angle.min() < -3 and angle.max() > 3, "from all sides"
    assert (np.abs(np.concatenate(rings)[:, 1]) <= 12 + 1e-9).all()
    (told,) = [one.part for one in bag().parts if one.part.name == "Pith told"]
    below = np.concatenate(grain_marks(told).rings)[:, :2] - np.array([10.0, -60.0])
    assert (below[:, 1] > 0).all()


def test_a_board_that_lies_over_in_its_panel_is_drawn_over():
    """The same wood laid over in the middle: its rings bend the other way than its neighbours'."""
    up, over = f"{WOOD}; pith 0 -60", "white oak; built 8; grain x; show -z; pith 0 60"
    pairs = [(body, tag) for (body, _), tag in zip(named_boards(["a", "b", "c"]), (up, over, up))]
    piece = material(pairs, kinds=())
    (panel,) = piece.whole.panels
    assert sorted(panel.over) != [panel.over[0]] * 3
    (picture,) = section_pictures(piece, Lengths("mm"), 170.0)
    same = material([(body, up) for body, _ in pairs], kinds=())
    (straight,) = section_pictures(same, Lengths("mm"), 170.0)
    drawn = [
        [shape.lines for shape in one.shapes if "ring" in getattr(shape, "id", "")]
        for one in (picture, straight)
    ]
    assert drawn[0] and drawn[1]
    # Both boards have their pith below in the model: over and over again is the same wood in the same place.
    for one, other in zip(*drawn):
        assert len(one) == len(other)


def test_twist_is_told_where_the_slope_is():
    parts = {part["name"]: part for part in bag().report["parts"]}
    assert parts["Pith told"]["twist"] is None
    twist = parts["Spiral"]["twist"]
    low, high = sorted(twist["driest_deg"])
    assert low <= high and abs(high) > 0.05
    assert all(len(twist[f"{when}_corner_lift_mm"]) == 2 for when in ("driest", "wettest"))


def test_figured_grain_is_flagged_and_beyond_some_flags_they_are_counted():
    sheet = movement_sheet(bag())
    (parts,) = [b for b in sheet.blocks if isinstance(b, Table) and "Numbers are those" in b.caption]
    flags = {bare(row.cells[1].words): row.cells[-1].words for row in parts.rows}
    assert any("figured grain" in text for text in flags.values())
    assert sum("figured grain" in text for text in flags.values()) == 1
    finding = {"check": "gap-closes", "severity": "jams", "keys": ["Spiral"], "parts": ["Spiral"], "message": "m",
               "remedy": "r", "month": None, "figures": {}, "id": "x"}  # fmt: skip
    many = replace(bag(), report={**bag().report, "findings": [finding] * 9})
    assert re.search(r"F1 gap closes; F2 .*and \d more", words(movement_sheet(many)))


def test_what_was_hidden_and_what_went_wrong_is_told():
    piece = bag()
    report = file_entry(
        "bag.step",
        piece.whole.solved,
        all_findings(piece.whole),
        ["a face is broken"],
        ["Old leg"],
        whole=piece.whole,
    )
    said = words(movement_sheet(Material(report, piece.whole, piece.bodies)))
    assert "Could not be checked" in said and "a face is broken" in said
    assert "Hidden in the model, and left out: Old leg" in said
    assert "Could not be checked" not in words(movement_sheet(piece))


def test_metal_alone_and_parts_nobody_told_of_make_a_whole_sheet():
    for tag in ("steel", "", "white oak; built 8"):
        piece = material([(blocks("Cube", [((0, 0, 0), (60, 70, 65))]), tag)], kinds=())
        for client in (False, True):
            sheet = movement_sheet(piece, SheetWish(client=client))
            assert sheet.blocks and "nan" not in words(sheet)
    headings = {b.words for b in movement_sheet(material([plank("Bar", 0, "steel")], kinds=())).blocks
                if isinstance(b, Heading)}  # fmt: skip
    assert "What it rests on" in headings and "How sure the figures are" not in headings


def test_without_faces_it_is_not_drawn():
    piece = bag()
    bare_piece = Material(piece.report, piece.whole)
    sheet = movement_sheet(bare_piece)
    assert "The faces of its solids are not known" in words(sheet)
    drawn = movement_sheet(piece)
    names = [
        [p.name for b in s.blocks if isinstance(b, Pictures) for p in b.pictures] for s in (sheet, drawn)
    ]
    assert not [name for name in names[0] if name.startswith("piece-")]
    assert [name for name in names[1] if name.startswith("piece-")]


def test_a_part_inside_another_is_drawn_by_itself_after_it():
    """A core that is hidden from every side has a picture of its own."""
    shell = blocks("shell", [((0, 0, 0), (300, 300, 300))], [((100, 100, 100), (200, 200, 200))])
    core = blocks("core", [((120, 120, 120), (180, 180, 180))])
    piece = material([(shell, "steel"), (core, "steel")], kinds=())
    pictures, left = piece_pictures(piece.bodies, piece.number, {}, (126, 104))
    assert left == () and [picture.name for picture in pictures] == ["piece-1", "piece-3"]
    assert "What has no number in the pictures before" in pictures[1].title
    numbers = [[s.text.words for s in p.shapes if isinstance(s, Label)] for p in pictures]
    assert numbers == [["1"], ["2"]]
    assert len({picture.name for picture in pictures}) == len(pictures)


def test_a_pin_too_small_to_see_is_drawn_by_itself():
    beam = blocks("beam", [((0, 0, 0), (4000, 300, 300))])
    pin = blocks("pin", [((2000, 100, 300), (2000.4, 100.4, 300.4))])
    pictures, left = piece_pictures([beam, pin], {"beam": 1, "pin": 2}, {}, (126, 104))
    assert left == () and [picture.name for picture in pictures] == ["piece-1", "piece-3"]
    seen = see([pin, beam], ABOVE, (126, 104))
    assert (seen.bodies == 0).sum() <= 4 and (seen.bodies == 1).sum() > 1000


@pytest.mark.parametrize(
    ("least", "most", "said", "unsaid"),
    [
        (None, None, "no humidity keeps every part free", "Keep the air between"),
        (44, 47, "So narrow a range", "no humidity"),
        (30, 60, "Keep the air between 30 and 60 %", "So narrow"),
    ],
)
def test_the_client_is_told_what_the_room_must_be(least, most, said, unsaid):
    piece = panel_in_frame()
    changed = Material(piece.report, piece.whole, piece.bodies, piece.tops)
    room = {**piece.data["room"], "rh_least_percent": least, "rh_most_percent": most}
    changed.__dict__["data"] = {**piece.data, "room": room}  # in place of what it works out once
    text = words(movement_sheet(changed, SheetWish(client=True)))
    assert said in text and unsaid not in text
