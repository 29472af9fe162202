"""An object of several solids taken apart: the same solids at the same places, one step, nothing where it cannot be."""

from __future__ import annotations

import FreeCAD
import Part
import pytest

from movement_core.errors import InputError
from workbench_pkg.actions.apart import is_several, take_apart
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.property_dump import differences, property_dump


@pytest.fixture
def heap(doc):
    """A compound of three boxes, one turned, in a container that is moved."""
    boxes = [Part.makeBox(600, 100, 20) for _ in range(3)]
    boxes[1].Placement = FreeCAD.Placement(
        FreeCAD.Vector(0, 0, 300), FreeCAD.Rotation(FreeCAD.Vector(0, 1, 0), 90)
    )
    boxes[2].translate(FreeCAD.Vector(0, 150, 0))
    obj = doc.addObject("Part::Feature", "Table")
    obj.Shape = Part.makeCompound(boxes)
    obj.Placement = FreeCAD.Placement(FreeCAD.Vector(5, 6, 7), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 20))
    part = doc.addObject("App::Part", "Home")
    part.addObject(obj)
    part.Placement.Base = FreeCAD.Vector(1000, 0, 0)
    doc.recompute()
    return obj


def places(doc):
    solids = [leaf.global_solid() for leaf in read_leaves(doc).leaves]
    return sorted((round(s.Volume, 3), *(round(v, 6) for v in s.CenterOfMass)) for s in solids)


def test_the_solids_stay_where_they_are_and_can_be_tagged_alone(doc, heap):
    from workbench_pkg.actions.tag import tag

    before, dump = places(doc), property_dump(doc)
    doc.UndoMode = 1
    steps = doc.UndoCount
    names = take_apart(heap)
    assert places(doc) == before and len(names) == 3
    assert doc.UndoCount == steps + 1
    assert doc.getObject("Table") is None
    assert all(not is_several(doc.getObject(name)) for name in names)
    tag([doc.getObject(names[1])], species="white oak")
    said = ["HeartsideSpecies" in doc.getObject(name).PropertiesList for name in names]
    assert said == [False, True, False]
    doc.undo()
    doc.undo()
    # The host puts an object that was removed back at the end of its list.
    doc.recompute()
    left = [line for line in differences(dump, property_dump(doc)) if not line.startswith("document.objects")]
    assert left == [] and doc.getObject("Table").Label == "Table"


def test_what_others_are_made_of_is_left_alone(doc, heap):
    cut = doc.addObject("Part::Cut", "Cut")
    cut.Base, cut.Tool = heap, doc.addObject("Part::Box", "Tool")
    doc.recompute()
    count = len(doc.Objects)
    with pytest.raises(InputError, match="Cut"):
        take_apart(heap)
    assert len(doc.Objects) == count


def test_a_single_solid_is_no_heap(doc):
    with pytest.raises(InputError, match="several solids"):
        take_apart(doc.addObject("Part::Box", "One"))
