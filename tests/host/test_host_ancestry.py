"""Tags put on a board before it was cut, rounded, mirrored, fused or copied are found again, with their frame.

Each test turns the board by TILT and moves the result afterwards. The board's own x axis must then point along
the longest edges of the result.
"""

from __future__ import annotations

import FreeCAD as App
import numpy as np
import pytest
from bench import V, array, at, box, link

from workbench_pkg.host.ancestry import inherited_tags
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.shapes import outline
from workbench_pkg.host.tagging import write_tags

TILT = at(100, -50, 30, (1, 2, 3), 40)
AWAY = at(7, 8, 1000, (3, -1, 2), 65)


@pytest.fixture
def board(doc):
    made = box(doc, "Board", placement=TILT)
    write_tags(made, {"HeartsideSpecies": "ash", "HeartsideGrain": "x"})
    return made


def cut(doc, board):
    made = doc.addObject("Part::Cut", "Result")
    made.Base, made.Tool = board, box(doc, "Tool", 30, 30, 30, TILT)
    return made


def chamfer(doc, board):
    made = doc.addObject("Part::Chamfer", "Result")
    made.Base, made.Edges = board, [(1, 2.0, 2.0)]
    return made


def fuse(doc, board):
    made = doc.addObject("Part::Fuse", "Result")
    made.Base, made.Tool = box(doc, "Tenon", 30, 30, 20, TILT.multiply(at(-30, 20))), board
    return made


def multi_fuse(doc, board):
    made = doc.addObject("Part::MultiFuse", "Result")
    made.Shapes = [box(doc, "Tenon", 30, 30, 20, TILT.multiply(at(-30, 20))), board]
    return made


def mirror(doc, board):
    board.Visibility = False
    made = doc.addObject("Part::Mirroring", "Result")
    made.Source, made.Normal, made.Base = board, V(1, 2, 0), V(50, 0, 0)
    return made


def compound(doc, board):
    made = doc.addObject("Part::Compound", "Result")
    made.Links = [box(doc, "Other", 10, 10, 10), board]
    return made


def cut_of_a_link(doc, board):
    board.Visibility = False
    made = doc.addObject("Part::Cut", "Result")
    made.Base, made.Tool = link(doc, "Copy", board, TILT), box(doc, "Tool", 30, 30, 30, TILT)
    return made


def clone(doc, board):
    import Draft

    board.Visibility = False
    return Draft.make_clone(board)


def polar_array(doc, board):
    import Draft

    return Draft.make_polar_array(board, 3, 360, V(0, 0, 0), use_link=False)


def polar_array_of_a_cut(doc, board):
    import Draft

    inner = cut(doc, board)
    inner.Placement = at(5, 5, 5, (1, 0, 0), 33)
    doc.recompute()
    return Draft.make_polar_array(inner, 3, 360, V(0, 0, 0), use_link=False)


def chamfer_of_a_moved_cut(doc, board):
    inner = cut(doc, board)
    inner.Label = "Inner"
    inner.Placement = at(5, 5, 5, (1, 0, 0), 33)
    doc.recompute()
    return chamfer(doc, inner)


MAKERS = [
    cut,
    chamfer,
    fuse,
    multi_fuse,
    mirror,
    compound,
    cut_of_a_link,
    clone,
    polar_array,
    polar_array_of_a_cut,
    chamfer_of_a_moved_cut,
]


@pytest.mark.parametrize("make", MAKERS, ids=lambda make: make.__name__)
def test_tags_and_frame_are_found_again(doc, board, make):
    made = make(doc, board)
    made.Label = "Result"
    doc.recompute()
    made.Placement = AWAY.multiply(made.Placement)
    doc.recompute()
    leaves = [leaf for leaf in read_leaves(doc).leaves if leaf.solid.Volume > 10_000]
    assert leaves
    for leaf in leaves:
        assert leaf.owner == made
        (last,) = [one for one in inherited_tags(leaf) if one.tags.properties]
        assert last.tags.properties == {"HeartsideSpecies": "ash", "HeartsideGrain": "x"}
        assert "Board" in last.tags.texts
        found = outline(leaf)
        along, across, through = last.turn @ found.own_axes
        longest = found.edge_directions[np.argmax(found.edge_lengths)]
        assert abs(along @ longest) == pytest.approx(1)
        assert np.ptp(found.points @ through) == pytest.approx(20)
        assert np.ptp(found.points @ across) == pytest.approx(100)
        assert np.linalg.det(last.turn) == pytest.approx(-1 if make is mirror else 1)


def test_the_nearest_comes_first(doc, board):
    made = chamfer_of_a_moved_cut(doc, board)
    doc.recompute()
    (leaf,) = read_leaves(doc).leaves
    assert leaf.owner == made
    assert [one.name for one in inherited_tags(leaf)] == ["Inner", "Board"]


def test_nothing_is_inherited_by_a_plain_board_or_from_an_array(doc, board):
    doc.recompute()
    assert inherited_tags(read_leaves(doc).leaves[0]) == ()
    made = doc.addObject("Part::Chamfer", "Result")
    made.Base, made.Edges = array(doc, "Row", board, 2, (0, 0, 500), False), [(1, 2.0, 2.0)]
    board.Visibility = False
    doc.recompute()
    for leaf in read_leaves(doc).leaves:
        assert inherited_tags(leaf) == ()


def test_a_container_moves_the_frames_along(doc, board):
    made = cut(doc, board)
    case = doc.addObject("App::Part", "Case")
    case.addObjects([board, doc.Tool, made])
    case.Placement = AWAY
    doc.recompute()
    (leaf,) = read_leaves(doc).leaves
    (one,) = inherited_tags(leaf)
    along = (one.turn @ outline(leaf).own_axes)[0]
    assert along == pytest.approx(tuple(AWAY.Rotation.multVec(TILT.Rotation.multVec(App.Vector(1, 0, 0)))))
