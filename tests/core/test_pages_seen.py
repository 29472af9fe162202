"""Pictures of the piece: what is hidden is not drawn, numbers lie on their parts, nothing is covered."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.sheet.pages.boxes import clashes, label_box, overlap
from movement_core.sheet.pages.model import Area, Label
from movement_core.sheet.pages.numbering import spots
from movement_core.sheet.pages.piece_view import piece_pictures
from movement_core.sheet.pages.seen import ABOVE, BELOW, NOTHING, Side, see
from tests.core.contact_solids import blocks, bored, peg
from tests.core.sheet_pieces import table, three_hundred

FRONT = Side("from the front", (1, 0, 0), (0, 0, 1))  # looks along +y


def length(lines):
    return float(np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1).sum())


def test_a_block_shows_its_nine_edges():
    seen = see([blocks("a", [((0, 0, 0), (100, 100, 100))])], ABOVE, (100, 100))
    assert len(seen.lines[0]) == 9
    # Nine edges of a cube seen along its diagonal are shortened by √(2/3); the hexagon is √2 · 100 wide.
    assert length(seen.lines[0]) == pytest.approx(
        9 * 100 * np.sqrt(2 / 3) * seen.width_mm / (100 * np.sqrt(2)), rel=0.01
    )


def test_what_lies_behind_is_not_drawn():
    front = blocks("front", [((0, 0, 0), (100, 10, 100))])
    behind = blocks("behind", [((20, 50, 20), (80, 60, 80))])
    seen = see([front, behind], FRONT, (100, 100))
    assert len(seen.lines[0]) == 4
    assert len(seen.lines[1]) == 0
    assert not spots(seen, [1], ["2"], 2.5)


def test_an_edge_is_drawn_as_far_as_it_is_seen():
    front = blocks("front", [((0, 0, 0), (50, 10, 100))])
    bar = blocks("bar", [((10, 50, 40), (100, 60, 60))])
    seen = see([front, bar], FRONT, (100, 100))
    assert length(seen.lines[1]) == pytest.approx(50 + 50 + 20, abs=1.0)  # its free half, and its free end


def test_through_a_hole_what_is_behind_is_seen():
    wall = bored("wall", (0, 0, 0), (100, 100, 10), 30, centre=(50, 50))
    spot = blocks("spot", [((40, 40, -50), (60, 60, -40))])
    above = Side("from above", (1, 0, 0), (0, 1, 0))
    seen = see([wall, spot], above, (100, 100))
    assert len(seen.lines[1]) == 4
    assert (seen.bodies == 1).any()


def test_a_peg_shows_its_two_sides_and_its_near_end():
    seen = see([peg("peg", 20, 0, 200)], ABOVE, (100, 100))
    k = seen.height_mm / (200 * np.sqrt(2 / 3) + 40 * np.sqrt(1 / 3))
    ends = (
        np.pi * (3 * (1 + np.sqrt(1 / 3)) - np.sqrt((3 + np.sqrt(1 / 3)) * (1 + 3 * np.sqrt(1 / 3)))) * 20
    )  # Ramanujan
    assert length(seen.lines[0]) == pytest.approx((1.5 * ends + 2 * 200 * np.sqrt(2 / 3)) * k, rel=0.04)


@pytest.mark.parametrize("side", [ABOVE, BELOW])
def test_numbers_lie_on_their_parts(side):
    bodies = table().bodies
    seen = see(bodies, side, (120, 100))
    found = spots(seen, range(len(bodies)), [str(i) for i in range(len(bodies))], 2.6)
    assert len(found) >= 5
    for spot in found:
        column, row = (int(v / seen.step_mm) for v in spot.place)
        assert seen.bodies[row, column] == spot.index


def test_the_two_sides_look_at_each_other():
    assert ABOVE.axes[2] == pytest.approx(-BELOW.axes[2])
    for side in (ABOVE, BELOW):
        assert np.linalg.det(side.axes) == pytest.approx(1.0)
    assert see([blocks("a", [((0, 0, 0), (9, 9, 9))])], ABOVE, (9, 9)).faces.max() > NOTHING


def numbered(pictures):
    words = [s.text.words for p in pictures for s in p.shapes if isinstance(s, Label)]
    assert len(words) == len(set(words))
    return {int(word) for word in words}


@pytest.mark.parametrize("make, size", [(table, (126, 104)), (three_hundred, (250, 150))])
def test_every_part_is_numbered_once_or_named_as_hidden(make, size):
    material = make()
    marks = {material.parts[0].part.key: "grave", material.parts[3].part.key: "mild"}
    pictures, left = piece_pictures(material.bodies, material.number, marks, size)
    assert numbered(pictures) | set(left) == set(range(1, len(material.parts) + 1))
    assert numbered(pictures).isdisjoint(left)
    for picture in pictures:
        assert picture.width_mm <= size[0] + 0.1
        assert not clashes(picture)


def test_a_marked_number_has_a_frame_of_its_own():
    material = table()
    key = material.parts[0].part.key
    pictures, _ = piece_pictures(material.bodies, material.number, {key: "grave"}, (126, 104))
    shapes = [shape for picture in pictures for shape in picture.shapes]
    frames = [s for s in shapes if isinstance(s, Area) and s.id == "mark-1"]
    numbers = [s for s in shapes if isinstance(s, Label) and s.id == "number-1"]
    (frame,), (number,) = frames, numbers
    box = label_box(number)
    assert overlap(box, (*frame.points[0], *frame.points[2]))
    assert frame.points[0][0] < box[0] and frame.points[2][0] > box[2]


def test_a_clash_is_found():
    material = table()
    pictures, _ = piece_pictures(material.bodies, material.number, {}, (126, 104))
    labels = [s for s in pictures[0].shapes if isinstance(s, Label)]
    doubled = type(pictures[0])("p", "t", "d", 126, 104, (labels[0], labels[0]))
    assert clashes(doubled)
    outside = type(labels[0])(labels[0].text, (500.0, 10.0))
    assert clashes(type(pictures[0])("p", "t", "d", 126, 104, (outside,)))
