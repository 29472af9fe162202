"""The drilling template: true to scale, nothing lost between its sheets, the same places as the plan's figures."""

from __future__ import annotations

import re
import zlib
from functools import cache
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from movement_core.errors import UnknownName
from movement_core.piece.hardware import hardware_of
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import find_tops
from movement_core.sheet.holding import plans_entry
from movement_core.sheet.pages.boxes import clashes, label_box, labels_of, overlap
from movement_core.sheet.pages.model import Strokes
from movement_core.sheet.template.beside import apart
from movement_core.sheet.template.clip import clipped
from movement_core.sheet.template.numbers import DIGITS, drawn_numbers
from movement_core.sheet.template.pages import drilling_template, template_html, template_pdf
from movement_core.sheet.template.tiles import screw_box
from tests.core.tables import BOTH, UP, solved, top
from tests.core.test_hardware_bodies import broad

MM = 72 / 25.4  # points in a millimetre


@cache
def planned(kind="slotted screw", turned=False):
    turn = np.array([[0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]]) if turned else None
    (found,) = find_tops(solved(top(UP) + broad(), BOTH, turn))
    plans = plan_top(found, 1.0, (kind,), "centre")
    return plans, plans_entry(plans), hardware_of(plans, plans.plans[0])


def made(kind="slotted screw", paper="a4", turned=False):
    plans, entry, hardware = planned(kind, turned)
    return drilling_template(plans, plans.plans[0], entry, hardware, paper), entry


def shape(picture, name):
    return next(one for one in picture.shapes if getattr(one, "id", "") == name)


@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize("kind", ["slotted screw", "button", "clip", "figure-eight"])
def test_places_equal_the_plan_and_every_screw_has_one_sheet(kind, paper):
    template, entry = made(kind, paper)
    told = entry["plans"][0]["fasteners"]
    assert len(told) == len(template.marks.screws) > 3
    tiles = template.tiling.tiles
    for one, screw, data in zip(told, template.marks.screws, template.data["screws"]):
        assert screw.place == pytest.approx((one["from_end_mm"], one["from_edge_today_mm"]), abs=0.0501)
        owners = [tile for tile in tiles if tile.owns(screw.place)]
        assert len(owners) == 1 and owners[0].name == data["tile"]
        box = screw_box(template.marks, screw.number)
        corners = [(x, y) for x in (box[0], box[2]) for y in (box[1], box[3])]
        assert owners[0].shows(box) or all(any(t.shows((*c, *c)) for t in tiles) for c in corners)
    for tile in tiles:  # none is printed for nothing
        assert any(
            x0 < tile.high[0] and x1 >= tile.low[0] and y0 < tile.high[1] and y1 >= tile.low[1]
            for x0, y0, x1, y1 in (screw_box(template.marks, s.number) for s in template.marks.screws)
        )


def test_slots_lie_about_todays_screws_as_the_plan_says():
    template, entry = made()
    slots = {cut.number: cut for cut in template.marks.cuts if cut.purpose == "slot"}
    assert slots
    for one in entry["plans"][0]["fasteners"]:
        if one["number"] not in slots:
            continue
        ys = [point[1] for point in slots[one["number"]].points]
        xs = [point[0] for point in slots[one["number"]].points]
        assert max(ys) - min(ys) == pytest.approx(one["slot_length_mm"], abs=0.06)
        assert max(xs) - min(xs) == pytest.approx(one["slot_width_mm"], abs=0.06)
        screw = template.marks.screws[one["number"] - 1].place[1]
        assert screw - min(ys) == pytest.approx(one["screw_from_slot_end_today_mm"], abs=0.12)


def test_the_template_does_not_turn_with_the_piece():
    assert made(turned=True)[0].data["screws"] == made()[0].data["screws"]


@pytest.mark.parametrize(("paper", "size"), [("a4", (210.0, 297.0)), ("letter", (215.9, 279.4))])
def test_svg_and_html_are_true_to_scale(paper, size):
    template, _ = made(paper=paper)
    text = template_html(template)
    assert template.tiling.paper.width_mm in size
    wide, high = template.tiling.paper.width_mm, template.tiling.paper.height_mm
    assert {wide, high} == set(size)
    for box, width in re.findall(r'viewBox="0 0 ([\d. ]+)" style="width:([\d.]+)mm"', text):
        assert box == f"{wide:g} {high:g}" and float(width) == wide
    assert len(re.findall("<svg", text)) == len(template.pages) == len(template.tiling.tiles) + 1
    for page in template.pages[1:]:
        for way, axis in (("across", 0), ("down", 1)):
            for unit, length in (("mm", 100.0), ("inch", 101.6)):
                line = shape(page, f"ruler {unit} {way}").lines[0]
                assert line[1][axis] - line[0][axis] == pytest.approx(length, abs=1e-9)


def test_pictures_are_at_full_size_and_stay_on_their_paper():
    template, _ = made()
    for page, tile in zip(template.pages[1:], template.tiling.tiles):
        assert isinstance(shape(page, "own part"), Strokes)
        corner = shape(page, "own part").lines[0][0]
        for screw in template.marks.screws:
            if not tile.owns(screw.place):
                continue
            points = np.array(shape(page, f"hole {screw.number}").lines[0])
            middle = (points.min(axis=0) + points.max(axis=0)) / 2
            assert middle - corner == pytest.approx(np.array(screw.place) - tile.low, abs=0.01)
            assert np.ptp(points[:, 0]) == pytest.approx(screw.hole_mm, abs=0.01)
        for one in page.shapes:
            for line in getattr(one, "lines", ()):
                for x, y in line:
                    assert 5.0 <= x <= page.width_mm - 5.0 and 5.0 <= y <= page.height_mm - 5.0


WHITE_EDGE_MM = 5.0  # what many printers leave white (common practice, no source)
ANY_LINE = ("screw", "hole", "slot", "recess", "mortise", "block", "groove", "datum", "top", "ruler")


@pytest.mark.parametrize("units", ["mm", "inch"])
@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize("kind", ["slotted screw", "button", "clip", "figure-eight"])
def test_no_label_is_cut_off_or_lies_over_another_or_over_a_line_to_work_by(kind, paper, units):
    plans, entry, hardware = planned(kind)
    template = drilling_template(plans, plans.plans[0], entry, hardware, paper, units)
    for page in template.pages:
        assert clashes(page) == []
        for label in labels_of(page):
            x0, y0, x1, y1 = label_box(label)
            assert x0 >= WHITE_EDGE_MM and x1 <= page.width_mm - WHITE_EDGE_MM, label.text.words
            assert y0 >= WHITE_EDGE_MM and y1 <= page.height_mm - WHITE_EDGE_MM, label.text.words
    said = 0
    for page in template.pages[1:]:
        lines = [
            line for one in page.shapes
            if isinstance(one, Strokes) and one.id.startswith(ANY_LINE) for line in one.lines
        ]  # fmt: skip
        for label in labels_of(page):
            said += label.id.startswith("number")
            assert not any(clipped(line, label_box(label)) for line in lines), label.text.words
    assert said == len(template.marks.screws)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_neighbours_overlap_cross_on_cross(paper):
    template, _ = made("slotted screw", paper)
    pages = dict(zip((tile.name for tile in template.tiling.tiles), template.pages[1:]))
    corners = {}
    for tile in template.tiling.tiles:
        shift = np.array(shape(pages[tile.name], "own part").lines[0][0]) - tile.low
        for one, other in (lines := shape(pages[tile.name], "corners").lines)[::2]:
            middle = (np.array(one) + other) / 2 - shift
            corners.setdefault(tuple(np.round(middle, 6)), set()).add(tile.name)
        assert len(lines) == 8
    tiles = template.tiling.tiles
    neighbours = [
        (a.name, b.name)
        for a in tiles
        for b in tiles
        if (b.row - a.row, b.column - a.column) in ((0, 1), (1, 0))
    ]
    for pair in neighbours:  # two corners of each pair lie on the same two places of the top
        assert sum(set(pair) <= names for names in corners.values()) == 2
    assert neighbours


@pytest.mark.parametrize("kind", ["slotted screw", "clip"])
@pytest.mark.parametrize("scale", [1 / 5, 1 / 10, 1 / 20])
def test_numbers_drawn_as_lines_stand_apart_and_nearest_to_their_own_screw(kind, scale):
    marks = made(kind)[0].marks
    numbers = drawn_numbers(marks, scale, 1.8, 3.0)
    assert [one.number for one in numbers] == [screw.number for screw in marks.screws]
    for one in numbers:
        away = {other.number: apart(one.box, other.place) for other in marks.screws}
        assert min(away, key=away.get) == one.number and away[one.number] * scale < 25.0
        assert not any(overlap(one.box, other.box) for other in numbers if other is not one)
        points = np.array([point for line in one.lines for point in line])
        assert (points >= one.box[:2]).all() and (points <= one.box[2:]).all()
        assert np.ptp(points[:, 1]) * scale == pytest.approx(3.0)
        cuts = [(*cut.points, cut.points[0]) for cut in marks.cuts]
        assert not any(clipped(line, one.box) for line in cuts)


def test_no_two_digits_look_alike():
    assert sorted(DIGITS) == list("0123456789") and len(set(map(str, DIGITS.values()))) == 10
    for lines in DIGITS.values():
        points = np.array([point for line in lines for point in line])
        assert points.min(axis=0)[1] == 0 and points.max(axis=0)[1] == 6 and (points[:, 0] <= 4).all()


def test_the_pdf_is_true_to_scale():
    pytest.importorskip("matplotlib", reason="the PDF is drawn by matplotlib; install it to run this")
    template, _ = made()
    content = template_pdf(template)
    boxes = re.findall(rb"/MediaBox \[ ?([\d. ]+?) ?\]", content)
    assert len(boxes) == len(template.pages)
    paper = template.tiling.paper
    for box in boxes:
        wide, high = (float(v) for v in box.split()[2:])
        assert (wide, high) == pytest.approx((paper.width_mm * MM, paper.height_mm * MM), abs=0.01)
    streams = [
        zlib.decompress(s)
        for s in re.findall(rb"stream\r?\n(.*?)\r?\nendstream", content, re.S)
        if s[:1] == b"x"
    ]
    lengths = [
        round(abs(float(x1) - float(x0)), 3)
        for stream in streams
        for x0, y0, x1, y1 in re.findall(rb"([\d.]+) ([\d.]+) m\s+([\d.]+) ([\d.]+) l", stream)
        if y0 == y1
    ]
    count = len(template.tiling.tiles)
    for length in (283.465, 288.0):  # 100 mm and 4 inches in points, once on each sheet
        assert sum(abs(found - length) < 0.01 for found in lengths) == count


points = st.tuples(st.floats(-20, 20), st.floats(-20, 20))


@given(st.lists(points, min_size=2, max_size=6))
def test_a_clipped_line_stays_inside_and_on_the_line(line):
    box = (-5.0, -4.0, 6.0, 7.0)
    for run in clipped(line, box):
        for x, y in run:
            assert box[0] - 1e-9 <= x <= box[2] + 1e-9 and box[1] - 1e-9 <= y <= box[3] + 1e-9
            away = min(_distance((x, y), a, b) for a, b in pairwise(line))
            assert away < 1e-6


def _distance(point, a, b):
    p, a, b = np.array(point), np.array(a), np.array(b)
    run = b - a
    share = np.clip((p - a) @ run / max(run @ run, 1e-30), 0, 1)
    return float(np.linalg.norm(p - a - share * run))


def test_an_unknown_paper_is_refused():
    with pytest.raises(UnknownName, match="a4, letter"):
        made(paper="papyrus")
