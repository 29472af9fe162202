"""Hardware in real documents: placed, cut out of every kind of part, taken out again; measured on the shapes."""

from __future__ import annotations

import math

import bench  # noqa: F401  (puts the host's own modules on the path)
import FreeCAD as App
import Part
import pytest

from movement_core.errors import InputError, UnknownName
from movement_core.holding.fasteners import find_kind
from movement_core.piece.hardware_bodies import BOX, CYLINDER, SLOT, Body
from workbench_pkg.actions.cutting import cut_slots
from workbench_pkg.actions.hardware import PlaceWish, is_stale, place_plan, plans_of, remove_hardware
from workbench_pkg.actions.hold import hold_document
from workbench_pkg.demo.shapes import at, block, body, container, cut, link, link_array, wood
from workbench_pkg.demo.table import trestle_table
from workbench_pkg.host.hardware_shapes import solid_of
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects import hardware as kept

RAIL = {"species": "white oak", "cut": "quarter", "built": 9.0}
LENGTH, BOARD, UNDER = 1000.0, 110.0, 700.0
SIDE = math.sqrt(0.5)


def small_table(doc, turn=20.0, rails=("body", "link", "box", "step")):
    """A top of four boards on four rails, each modelled another way, all in a container that is turned."""
    home = container(doc, "Table", at(300, -200, 40, axis=(0, 0, 1), angle=turn))
    for i in range(4):
        low = (-LENGTH / 2, (i - 2) * BOARD, UNDER)
        board = block(home, f"Board {i + 1}", low, (LENGTH / 2, (i - 1) * BOARD, UNDER + 26))
        facts = {"grain": "x", "show": "z", "pith": (5.0 * i - 8, 70.0), "finish": "varnish 2", "built": 9.0}
        wood(board, species="white oak", **facts)
    low, high, reach, deep = UNDER - 70, UNDER, 400.0, 22.0
    frame = container(home, "Frame", at())
    outline = [(-180, low), (180, low), (180, high), (-180, high)]
    if "body" in rails:  # a body that is thick along x
        made = body(frame, "Left rail", pads=[(outline, 2 * deep)])
        made.Placement = at(-reach)
        wood(made, grain="y", **RAIL)
        if "link" in rails:
            link(frame, "Right rail", made, at(reach))
    if "box" in rails:
        apron = block(frame, "Front rail blank", (-reach, -180 - deep, low), (reach, -180 + deep, high))
        notch = block(frame, "Notch", (-20, -210, low - 1), (20, -150, low + 20))
        wood(cut(frame, "Front rail", apron, [notch]), grain="x", **RAIL)
    if "step" in rails:  # as an import leaves it: a bare shape, its place in the placement
        step = frame.newObject("Part::Feature", "BackRail")
        step.Label = "Back rail"
        step.Shape = Part.makeBox(2 * reach, 2 * deep, 70)
        step.Placement = at(-reach, 180 - deep, low)
        wood(step, grain="x", **RAIL)
    doc.recompute()
    return home


def volumes(doc):
    return {leaf.name: leaf.solid.Volume for leaf in read_leaves(doc).leaves}


def apart_from_state(before, after):
    return [line for line in differences(before, after) if ".state: " not in line]


# ---- solids against closed forms --------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("shape", "size"),
    [
        (BOX, (31.0, 9.0, 6.0)), (CYLINDER, (13.0, 13.0, 50.0)), (SLOT, (11.4, 5.0, 21.0)), (SLOT, (5.0, 5.0, 9.0)),
    ],
)  # fmt: skip
def test_solids_have_the_volume_of_their_closed_form(shape, size):
    axes = ((SIDE, SIDE, 0.0), (-SIDE, SIDE, 0.0), (0.0, 0.0, 1.0))
    made = Body(shape, (100.0, -50.0, 700.0), axes, size)
    solid = solid_of(made)
    assert solid.isValid() and solid.ShapeType == "Solid"
    assert solid.Volume == pytest.approx(made.volume_mm3, rel=1e-9)
    assert tuple(solid.CenterOfMass) == pytest.approx(made.centre_mm, abs=1e-6)
    box = solid.copy()
    box.Placement = solid.Placement.inverse().multiply(box.Placement)
    bound = box.BoundBox
    assert (bound.XLength, bound.YLength, bound.ZLength) == pytest.approx(size, abs=1e-6)


# ---- placing ----------------------------------------------------------------------------------------------


def test_placing_puts_plain_solids_in_one_group_and_undo_takes_them_away(doc):
    small_table(doc)
    before, steps = property_dump(doc), doc.UndoCount
    refused = place_plan(doc, plan="slotted screw", kinds=["slotted screw"])
    assert doc.UndoCount == steps + 1
    root = kept.root_of(doc)
    (group,) = root.Group
    assert root.Label == "Heartside hardware" and group.HeartsidePlan == "slotted screw"
    assert {o.TypeId for o in doc.Objects if "HeartsideKind" in o.PropertiesList} == {
        "App::DocumentObjectGroup", "Part::Feature",
    }  # fmt: skip
    (entry,) = hold_document(doc, wish=PlaceWish(kinds=["slotted screw"]))
    plan = entry["plans"][0]
    markers = [o for o in group.Group if o.TypeId == "Part::Feature"]
    assert len(markers) == plan["count"] and all(
        m.Shape.isValid() and len(m.Shape.Solids) == 1 for m in markers
    )
    for marker in markers:
        told = plan["fasteners"][marker.HeartsideNumber - 1]
        assert marker.HeartsideTravelMost.Value == told["travel_most_mm"]
        assert marker.HeartsideRail == told["rail"]
    assert list(group.HeartsideNotCut) == list(refused)
    assert any("lifting points" in text for text in group.HeartsideCautions)
    assert not is_stale(doc)
    doc.undo()
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    assert kept.root_of(doc) is not None


@pytest.mark.parametrize("kind", ["button", "clip", "figure-eight", "slotted screw"])
def test_every_kind_is_placed_and_taken_out_again(doc, kind):
    small_table(doc)
    before = property_dump(doc)
    place_plan(doc, plan=kind, kinds=[kind], flatness_mm=4.0)
    markers = [o for o in kept.placed_tops(doc)[0].Group if o.TypeId == "Part::Feature"]
    assert markers and all(m.Shape.isValid() and m.Shape.Volume > 100 for m in markers)
    place_plan(doc, plan=kind, kinds=[kind], flatness_mm=4.0)  # in place of the first
    assert len(kept.placed_tops(doc)) == 1
    assert remove_hardware(doc) > len(markers)
    assert differences(before, property_dump(doc)) == []
    assert remove_hardware(doc) == 0


def test_hardware_is_no_part_of_the_piece(doc):
    small_table(doc)
    before = [leaf.key for leaf in read_leaves(doc).leaves]
    place_plan(doc, kinds=["button"])
    assert [leaf.key for leaf in read_leaves(doc).leaves] == before


def test_rails_that_are_not_meant_take_no_fastener(doc):
    small_table(doc)
    place_plan(doc, kinds=["slotted screw"], rails=["Left rail", "Right rail"], flatness_mm=9.0)
    assert {m.HeartsideRail for m in kept.placed_tops(doc)[0].Group if m.TypeId == "Part::Feature"} == {
        "Left rail", "Right rail",
    }  # fmt: skip


def test_what_is_unknown_is_told_and_nothing_changes(doc):
    small_table(doc)
    before, steps = property_dump(doc), doc.UndoCount
    for wrong in (
        {"plan": "nail"},
        {"rails": ["Leg"]},
        {"top": "Left rail"},
        {"kinds": ["glue"]},
        {"fixed": "sky"},
    ):
        with pytest.raises(UnknownName):
            place_plan(doc, **wrong)
    with pytest.raises(InputError):
        place_plan(doc, flatness_mm=0.0)
    with pytest.raises(InputError, match="no hardware is placed"):
        cut_slots(doc)
    assert differences(before, property_dump(doc)) == [] and doc.UndoCount == steps


def test_a_model_that_changes_makes_it_stale_and_is_not_cut(doc):
    small_table(doc)
    place_plan(doc, kinds=["slotted screw"])
    assert not is_stale(doc)
    doc.getObject("Board2").Height = 27
    doc.recompute()
    assert is_stale(doc)
    with pytest.raises(InputError, match="have changed since"):
        cut_slots(doc)
    doc.getObject("Board2").Height = 26
    doc.recompute()
    assert not is_stale(doc)


# ---- cutting ----------------------------------------------------------------------------------------------


def test_slots_are_cut_out_of_bodies_links_booleans_and_bare_shapes_in_a_turned_container(doc):
    small_table(doc)
    place_plan(doc, kinds=["slotted screw"], fixed="Board 1")
    before, were, steps = property_dump(doc), volumes(doc), doc.UndoCount
    report = cut_slots(doc)
    assert doc.UndoCount == steps + 1 and report.refused == ()
    assert {"Left rail", "Right rail", "Front rail", "Back rail"} <= set(report.cut)
    now = volumes(doc)
    assert len(now) == len(were)
    for made in kept.cuts_of(doc):
        assert made.TypeId == "Part::Cut" and made.Shape.isValid()
        assert made.Base is not None and not made.Base.Visibility and made.getParentGeoFeatureGroup()
    for name in report.cut:
        gone = were[name] - now[f"{name} with slots"]
        away = [b for b in kept.cut_bodies(doc) if f"in {name}" in b.Label]
        whole = next(
            leaf for leaf in read_leaves(doc, hidden=True).leaves if leaf.name == f"{name} with slots"
        )
        joined = away[0].Shape.multiFuse([b.Shape for b in away[1:]]) if away[1:] else away[0].Shape
        assert gone > 0 and joined.common(whole.global_solid()).Volume == pytest.approx(0.0, abs=1e-6)
    assert not is_stale(doc)
    doc.undo()
    assert apart_from_state(before, property_dump(doc)) == []  # the host touches what it brings back
    doc.redo()
    assert len(kept.cuts_of(doc)) == len(report.cut)
    with pytest.raises(InputError, match="cut already"):
        cut_slots(doc)
    with pytest.raises(InputError, match="cut already"):
        place_plan(doc)


def test_taking_hardware_out_leaves_the_document_as_it_was(doc):
    small_table(doc)
    before = property_dump(doc)
    place_plan(doc, kinds=["slotted screw"])
    cut_slots(doc)
    remove_hardware(doc)
    assert differences(before, property_dump(doc)) == []
    doc.recompute()
    assert apart_from_state(before, property_dump(doc)) == []


def slot_lengths(doc, name, way):
    """Length of every slot of a part along a global direction, measured on the faces of the cut shape."""
    (leaf,) = [leaf for leaf in read_leaves(doc).leaves if leaf.name == name]
    solid = leaf.global_solid()
    rounds = [
        f for f in solid.Faces if isinstance(f.Surface, Part.Cylinder) and abs(f.Surface.Radius - 2.5) < 1e-7
    ]
    ends = sorted((f.Surface.Center.dot(way), f) for f in rounds)
    return [b - a + 5.0 for (a, _), (b, _) in zip(ends[::2], ends[1::2])]


def test_a_slot_measured_on_the_shape_is_travel_and_shank_and_a_millimetre(doc):
    """To a thousandth of a millimetre, along the way that the top moves."""
    home = small_table(doc)
    place_plan(doc, kinds=["slotted screw"], fixed="Board 1")
    answer = plans_of(doc, PlaceWish("", None, ("slotted screw",), "Board 1"))
    plan = answer.plans.plans[0]
    cut_slots(doc)
    across = home.Placement.Rotation.multVec(App.Vector(0, 1, 0))
    for rail in ("Left rail", "Right rail"):
        wanted = sorted(
            p.most_mm - p.least_mm + find_kind(p.kind).shank_mm + 1.0
            for p in plan.placed
            if p.rail == rail and p.slot is not None
        )
        measured = sorted(slot_lengths(doc, f"{rail} with slots", across))
        assert wanted and measured == pytest.approx(wanted, abs=1e-3)


def test_holes_in_the_top_are_blind(doc):
    small_table(doc)
    show = {}
    for leaf in read_leaves(doc).leaves:
        if leaf.name.startswith("Board"):
            faces = leaf.global_solid().Faces
            show[leaf.name] = max(f.Area for f in faces if f.normalAt(0, 0).z > 0.9)
    place_plan(doc, kinds=["slotted screw"])
    report = cut_slots(doc)
    boards = [name for name in report.cut if name.startswith("Board")]
    assert boards
    for leaf in read_leaves(doc).leaves:
        name = leaf.name.removesuffix(" with slots")
        if name in boards:
            faces = [f for f in leaf.global_solid().Faces if f.normalAt(0, 0).z > 0.9]
            assert max(f.Area for f in faces) == pytest.approx(show[name], rel=1e-9)


def test_the_wood_of_a_part_that_was_cut_is_still_known(doc):
    small_table(doc)
    (before,) = hold_document(doc, wish=PlaceWish(kinds=["slotted screw"]))
    place_plan(doc, kinds=["slotted screw"])
    cut_slots(doc)
    (after,) = hold_document(doc, wish=PlaceWish(kinds=["slotted screw"]))
    assert after["missing"] == [] and len(after["rails"]) == len(before["rails"])
    assert after["plans"][0]["count"] == before["plans"][0]["count"]


def test_a_top_that_is_hollow_above_a_fastener_is_not_drilled_there(doc):
    home = small_table(doc)
    hollow = next(o for o in home.Group if o.Label == "Board 1")
    groove = block(home, "Groove", (-LENGTH, -1.9 * BOARD, UNDER + 21), (LENGTH, -1.1 * BOARD, UNDER + 40))
    facts = {name: getattr(hollow, name) for name in hollow.PropertiesList if name.startswith("Heartside")}
    assert facts
    cut(home, "Hollow board", hollow, [groove])
    doc.recompute()
    place_plan(doc, kinds=["slotted screw"], flatness_mm=5.0)
    report = cut_slots(doc)
    assert any("come through" in text for text in report.refused)


def test_elements_of_an_array_and_parts_of_linked_containers_are_told_what_to_do(doc):
    small_table(doc, rails=("box", "step"))
    frame = next(o for o in doc.Objects if o.Label == "Frame")
    master = block(frame, "Rail blank", (-22, -180, 0), (22, 180, 70))
    wood(master, grain="y", **RAIL)
    master.Visibility = False
    link_array(frame, "Cross rails", master, [at(-350, 0, UNDER - 70), at(350, 0, UNDER - 70)])
    doc.recompute()
    place_plan(doc, kinds=["slotted screw"])
    report = cut_slots(doc)
    assert {"Front rail", "Back rail"} <= set(report.cut)
    assert any("Cross rails" in text and "own link or copy" in text for text in report.refused)

    other = App.newDocument("Other")
    other.UndoMode = 1
    home = small_table(other)
    for number, x in ((1, 0), (2, 3000)):
        link(other, f"Copy {number}", home, at(x))
    home.Visibility = False
    other.recompute()
    place_plan(other, kinds=["slotted screw"])
    before, steps = property_dump(other), other.UndoCount
    with pytest.raises(InputError, match="shown 2 times"):
        cut_slots(other)
    assert differences(before, property_dump(other)) == [] and other.UndoCount == steps


def test_what_was_built_on_a_cut_part_is_told(doc):
    small_table(doc)
    place_plan(doc, kinds=["slotted screw"])
    cut_slots(doc)
    later = doc.addObject("Part::Mirroring", "Later")
    later.Source = kept.cuts_of(doc)[0]
    doc.recompute()
    before = property_dump(doc)
    with pytest.raises(InputError, match="Later"):
        remove_hardware(doc)
    assert differences(before, property_dump(doc)) == []


# ---- files and the demo -----------------------------------------------------------------------------------


def test_a_saved_file_is_whole_and_can_be_emptied_again(doc, tmp_path):
    small_table(doc)
    plain, full = tmp_path / "plain.FCStd", tmp_path / "full.FCStd"
    doc.saveCopy(str(plain))
    place_plan(doc, kinds=["slotted screw"])
    cut_slots(doc)
    doc.saveAs(str(full))
    App.closeDocument(doc.Name)
    again = App.openDocument(str(full))
    assert not is_stale(again)
    assert all(o.Shape.isValid() for o in kept.cut_bodies(again))
    assert not any(getattr(o, "Proxy", None) for o in kept.cuts_of(again) + kept.cut_bodies(again))
    remove_hardware(again)
    fresh = App.openDocument(str(plain))
    changed = apart_from_state(property_dump(fresh), property_dump(again))
    assert [line for line in changed if not line.startswith("document.property Label")] == []


def test_the_repaired_demo_table_is_placed_cut_and_restored(doc):
    trestle_table(doc, repaired=True)
    before = property_dump(doc)
    place_plan(doc, kinds=["slotted screw"])
    report = cut_slots(doc)
    assert {"Bearer 1", "Bearer 2", "Apron 1", "Apron 2"} <= set(report.cut)
    assert all(c.Shape.isValid() and len(c.Shape.Solids) == 1 for c in kept.cuts_of(doc))
    remove_hardware(doc)
    assert differences(before, property_dump(doc)) == []


def test_refusals_of_the_core_are_told(doc):
    small_table(doc, rails=("box", "step"))
    for name in ("FrontRailBlank", "BackRail"):
        obj = doc.getObject(name)
        if name == "BackRail":
            obj.Shape = Part.makeBox(800, 12, 70)
            obj.Placement = at(-400, 174, UNDER - 70)
    doc.recompute()
    refused = place_plan(doc, kinds=["slotted screw"], flatness_mm=8.0)
    assert any("12 mm broad" in text for text in refused)
    assert any(o.Label.startswith("Block") for o in kept.placed_tops(doc)[0].Group)


def test_a_head_that_no_driver_reaches_is_told(doc):
    home = small_table(doc)
    leg = block(home, "Leg", (-440, -30, 0), (-360, 30, UNDER - 70))
    wood(leg, grain="z", **RAIL)
    doc.recompute()
    refused = place_plan(doc, kinds=["slotted screw"], flatness_mm=8.0)
    assert any("Left rail" in text and "runs into Leg" in text for text in refused)
    remove_hardware(doc)
    leg.Visibility = False
    assert not any("runs into" in text for text in place_plan(doc, kinds=["slotted screw"], flatness_mm=8.0))
