"""Names of STEP solids: by what the host writes, and by a file of another hand."""

from __future__ import annotations

import FreeCAD as App
import Import
import numpy as np
import pytest

from workbench_pkg.host.documents import opened
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.step_names import match_names, named_solids


@pytest.fixture
def step(doc, tmp_path):
    """Five solids: two alike boards, one with a hole, one rotated, one in a nested container."""
    boxes = []
    for i, (label, size) in enumerate(
        [("Rail ä wood{white oak; cut flat}", (700, 80, 20)), ("Twin left", (500, 60, 30)),
         ("Twin right", (500, 60, 30)), ("It's round", None), ("Panel", (400, 300, 10))]
    ):  # fmt: skip
        if size is None:
            obj = doc.addObject("Part::Cylinder", "C")
            obj.Radius, obj.Height = 20, 700
        else:
            obj = doc.addObject("Part::Box", "B")
            obj.Length, obj.Width, obj.Height = size
        obj.Placement = App.Placement(App.Vector(0, 400 * i, 0), App.Rotation(App.Vector(1, 2, 3), 20 * i))
        obj.Label = label
        boxes.append(obj)
    doc.recompute()
    path = tmp_path / "five.step"
    Import.export(boxes, str(path))
    return path, boxes


def test_every_solid_keeps_its_name_through_a_step_file(step):
    path, boxes = step
    with opened(path) as doc:
        leaves = {leaf.name: leaf for leaf in read_leaves(doc).leaves}
        assert set(leaves) == {box.Label for box in boxes}
        for box in boxes:
            assert leaves[box.Label].solid.Volume == pytest.approx(box.Shape.Volume)
            centre = leaves[box.Label].global_solid().CenterOfMass
            assert (centre - box.Shape.CenterOfMass).Length < 1e-6, box.Label


def test_the_text_alone_tells_names_and_vertices(step):
    path, boxes = step
    named = named_solids(path.read_text(encoding="utf-8"))
    assert sorted(one.name for one in named) == sorted(box.Label for box in boxes)
    vertices = [np.array([tuple(v.Point) for v in box.Shape.Vertexes]) for box in boxes]
    assert match_names(named, vertices) == [box.Label for box in boxes]
    assert match_names(named, [25.4 * vertices[0] + 5]) == [boxes[0].Label]  # another unit, another place
    assert match_names(named, [vertices[0] * (1, 1, 1.5)]) == [None]


@pytest.mark.parametrize(
    "text",
    ["", "ISO-10303-21; nonsense", "#1=PRODUCT('a','b'", "#1 = SHAPE_DEFINITION_REPRESENTATION(#2,#3);"],
)
def test_text_that_says_nothing_names_nothing(text):
    assert named_solids(text) == []
