"""Words of a tag, tables for a spreadsheet and cut meshes at their ends."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

import numpy as np
import pytest

from movement_core.air.year import MONTHS
from movement_core.piece.tags import tags_from_words
from movement_core.sheet.cutting import cut_triangles
from movement_core.sheet.today_gaps import as_table, gaps_today
from tests.core.contact_solids import blocks, piece_of
from tests.core.test_checks_whole import POSTS, inset_door
from tests.core.whole_pieces import whole


def a_part(tag):
    (one,) = piece_of([(blocks("board", [((0, 0, 0), (900, 120, 24))]), tag)])
    return one


@pytest.mark.parametrize(
    ("words", "said"), [({"lot": "  "}, "a lot without a name"), ({"colour": "red"}, "'colour'")]
)
def test_a_word_that_says_nothing_is_a_problem_of_its_own(words, said):
    tags = tags_from_words("board", {"built": "8", **words}, "label")
    (problem,) = tags.problems
    assert said in problem.message and problem.part == "board" and tags.fitted_mc == 8.0


@pytest.mark.parametrize(
    ("direction", "heart", "side"),
    [("z", "show", None), ("-z", "back", None), ("y", None, "edge"), ("-y", None, "edge")],
)
def test_a_heart_side_lies_toward_a_face_or_an_edge(direction, heart, side):
    rings = a_part(f"white oak; grain x; show z; built 8; rings 40; heart {direction}").rings.value
    assert rings.heart == heart
    assert (rings.pith_side in ("left", "right")) == (side == "edge")


def test_toward_opposite_edges_the_pith_lies_on_opposite_sides():
    sides = {
        a_part(f"white oak; grain x; show z; built 8; rings 40; heart {way}").rings.value.pith_side
        for way in ("y", "-y")
    }
    assert sides == {"left", "right"}


def test_no_name_of_a_part_becomes_a_formula_of_a_spreadsheet():
    pairs = [
        (replace(body, name="=SUM(A1:A9)") if body.name == "post right" else body, tag)
        for body, tag in inset_door(0.8)
    ]
    gaps = [gap for gap in gaps_today([whole(pairs, confirmed=POSTS)]) if gap.parts[0].startswith("=")]
    assert gaps
    text = as_table(gaps, ["-", "a", "b", "c", "d", "e", "f"], lambda mm: f"{-mm:.1f}", MONTHS, ",")
    heading, *rows = csv.reader(io.StringIO(text))
    assert heading[0] == "'-"
    for row in rows:
        assert row[0].startswith("'=SUM") and row[1].startswith("-"), "a negative figure stays one"


def test_a_plane_beside_a_mesh_leaves_it_and_one_through_a_corner_makes_two_of_a_triangle():
    points = np.array([(-10.0, 0.0, 0.0), (10.0, 0.0, 0.0), (0.0, 8.0, 0.0)])
    normals, one = np.tile([0.0, 0.0, 1.0], (3, 1)), np.array([[0, 1, 2]])
    for beside in (-10.0, 10.0, 25.0):
        same = cut_triangles(points, normals, one, 0, [beside])
        assert same[0] is points and same[2] is one
    cut, bent, triangles = cut_triangles(points, normals, one, 0, [0.0])
    assert len(triangles) == 2 and len(cut) == len(bent) == 4
    assert cut[3].tolist() == [0.0, 0.0, 0.0]
    assert {frozenset(np.sign(cut[corners, 0])) for corners in triangles} == {
        frozenset({-1, 0}),
        frozenset({0, 1}),
    }
    none = np.zeros((0, 3), dtype=np.int64)
    assert len(cut_triangles(np.zeros((0, 3)), np.zeros((0, 3)), none, 0, [0.0])[2]) == 0
