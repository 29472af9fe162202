"""What a ray points at on a part: exact in the section frame, whatever container the part stands in."""

from __future__ import annotations

import FreeCAD
import numpy as np
import Part
import pytest

from movement_core.errors import InputError
from workbench_pkg.actions.drafts import Draft, accepted, flipped, turned
from workbench_pkg.actions.pointing import (
    end_outlines,
    first_hit,
    heart_of,
    place_on_end,
    point_on_end,
    ray_between,
)
from workbench_pkg.actions.tag import tag, tag_each


@pytest.fixture
def board(doc):
    """A board in a container that is turned and moved, its grain along the object's y."""
    box = doc.addObject("Part::Box", "Board")
    box.Length, box.Width, box.Height = 120, 900, 26
    box.Placement = FreeCAD.Placement(
        FreeCAD.Vector(30, -40, 10), FreeCAD.Rotation(FreeCAD.Vector(1, 2, 0.5), 33)
    )
    part = doc.addObject("App::Part", "Frame")
    part.addObject(box)
    part.Placement = FreeCAD.Placement(
        FreeCAD.Vector(500, 200, 700), FreeCAD.Rotation(FreeCAD.Vector(0.3, -1, 2), 118)
    )
    doc.recompute()
    tag([box], species="white oak", grain="y", show="z")
    return box


def read(doc):
    """The one leaf and part of a document."""
    draft = Draft(doc)
    ((key, part),) = draft.parts().items()
    return draft.leaves[key], part


def outside(part, far, x, y, away=800.0, slant=(130.0, -70.0)):
    """A point before an end from which a place on it is seen at a slant."""
    frame = part.frame
    sign = 1.0 if far else -1.0
    return (
        place_on_end(part, x, y, far)
        + sign * away * frame.axes[2]
        + slant[0] * frame.axes[0]
        + slant[1] * frame.axes[1]
    )


@pytest.mark.parametrize("far", [False, True])
@pytest.mark.parametrize(
    ("x", "y", "on_wood"), [(12.5, -4.25, True), (-59.0, 12.0, True), (35.0, -140.0, False)]
)
@pytest.mark.parametrize("away", [800.0, 1e5])
def test_a_place_on_an_end_is_exact_in_the_section_frame(doc, board, far, x, y, on_wood, away):
    leaf, part = read(doc)
    target = place_on_end(part, x, y, far)
    found = point_on_end(leaf, part, ray_between(outside(part, far, x, y, away), target))
    assert (found.x, found.y) == pytest.approx((x, y), abs=1e-6)
    assert (found.far, found.on_wood) == (far, on_wood)


def test_the_section_frame_is_the_one_that_tags_speak_of(doc, board):
    """x = show × grain: with grain y and show z in the object's own axes, x is its −x; the corner tells."""
    leaf, part = read(doc)
    corner = leaf.matrix.multVec(FreeCAD.Vector(120, 0, 26))  # own x 60 right of the middle, on the show face
    x, y, z = part.frame.axes @ (np.array(tuple(corner)) - part.frame.centre)
    assert (x, y, z) == pytest.approx((-60.0, 13.0, -450.0), abs=1e-6)


def test_a_mitred_end_is_taken_where_it_is_seen(doc):
    """The ray meets the slanting face; a plane square to the grain would give another place."""
    wedge = Part.Face(
        Part.makePolygon(
            [FreeCAD.Vector(*p) for p in ((0, 0, 0), (600, 0, 0), (500, 100, 0), (0, 100, 0), (0, 0, 0))]
        )
    ).extrude(FreeCAD.Vector(0, 0, 20))
    doc.addObject("Part::Feature", "Stile").Shape = wedge
    doc.recompute()
    tag([doc.Stile], species="white oak", grain="x", show="z")
    leaf, part = read(doc)
    on_face = np.array([550.0, 50.0, 10.0])  # on the mitre, at the middle of the section
    eye = on_face + np.array([300.0, 250.0, 40.0])
    found = point_on_end(leaf, part, ray_between(eye, on_face))
    assert found.on_wood and found.far
    assert (found.x, found.y) == pytest.approx((0.0, 0.0), abs=1e-6)


def test_no_end_faces_a_ray_across_the_grain(doc, board):
    leaf, part = read(doc)
    eye = part.frame.centre + 1000 * part.frame.axes[1]
    with pytest.raises(InputError, match="no end"):
        point_on_end(leaf, part, ray_between(eye, part.frame.centre))


def test_the_first_face_along_a_ray_is_hit_and_none_beside_it(doc, board):
    leaf, part = read(doc)
    eye = part.frame.centre + 1000 * part.frame.axes[1]
    hit = first_hit(leaf, ray_between(eye, part.frame.centre))
    assert hit.distance == pytest.approx(1000 - 13, abs=1e-6)
    assert hit.normal == pytest.approx(part.frame.axes[1], abs=1e-9)
    assert first_hit(leaf, ray_between(eye, eye + part.frame.axes[0])) is None


@pytest.mark.parametrize(("row", "sign", "own"), [(1, 1, "z"), (1, -1, "-z"), (0, 1, "-x"), (0, -1, "x")])
def test_the_heart_face_is_told_in_the_objects_own_axes(doc, board, row, sign, own):
    leaf, part = read(doc)
    way = sign * part.frame.axes[row]
    aim = part.frame.centre + 30 * part.frame.axes[2]
    assert heart_of(leaf, part, ray_between(aim + 500 * way + 3 * part.frame.axes[2], aim)) == own


def test_an_end_is_no_heart_face(doc, board):
    leaf, part = read(doc)
    eye = part.frame.centre + 2000 * part.frame.axes[2]
    with pytest.raises(InputError, match="is an end"):
        heart_of(leaf, part, ray_between(eye, part.frame.centre))
    with pytest.raises(InputError, match="beside"):
        heart_of(leaf, part, ray_between(eye, eye + part.frame.axes[0]))


def test_a_round_face_is_hit(doc):
    leg = doc.addObject("Part::Cylinder", "Leg")
    leg.Radius, leg.Height = 30, 500
    doc.recompute()
    tag([leg], species="white oak", grain="z", show="x")
    leaf, _ = read(doc)
    hit = first_hit(leaf, ray_between(np.array([400.0, 0, 250]), np.array([0.0, 0, 250])))
    assert not hit.flat
    assert hit.point == pytest.approx((30, 0, 250), abs=1e-6)
    assert hit.normal == pytest.approx((1, 0, 0), abs=1e-6)


def test_flipping_the_grain_leaves_the_rings_where_they_are(doc, board):
    tag([board], pith=(20, -80), far=(-35, -60), heart="back")
    _, part = read(doc)
    near = place_on_end(part, *part.rings.value.pith_mm, False)
    beyond = place_on_end(part, *part.rings.value.far_end.pith_mm, True)
    facts = flipped(part, {"pith": (20, -80), "far": (-35, -60)})
    assert facts["grain"] == "-y"
    tag([board], **facts)
    _, after = read(doc)
    assert after.frame.axes[2] == pytest.approx(-part.frame.axes[2])
    assert place_on_end(after, *after.rings.value.pith_mm, False) == pytest.approx(beyond, abs=1e-6)
    assert place_on_end(after, *after.rings.value.far_end.pith_mm, True) == pytest.approx(near, abs=1e-6)


def test_flipping_picked_points_leaves_their_ring_where_it_is(doc, board):
    points = (-40.0, 5.0, 0.0, 10.0, 40.0, 4.0)
    tag([board], points=points)
    _, part = read(doc)
    tag([board], **flipped(part, {"points": points}))
    _, after = read(doc)
    before = place_on_end(part, *part.rings.value.pith_mm, True)
    assert place_on_end(after, *after.rings.value.pith_mm, False) == pytest.approx(before, abs=1e-6)


def test_turning_to_another_axis_takes_back_what_was_said_of_the_old_section(doc, board):
    tag([board], pith=(20, -80))
    _, part = read(doc)
    facts = turned(part, {"pith": (20.0, -80.0), "grain": "y", "show": "z"})
    assert facts == {"grain": "z", "pith": None, "show": None}


def test_what_is_accepted_is_what_was_inferred(doc):
    box = doc.addObject("Part::Box", "Board")
    box.Length, box.Width, box.Height = 900, 120, 26
    doc.recompute()
    tag([box], species="white oak", heart="back", fitted=8)
    _, before = read(doc)
    facts = accepted(before)
    assert facts.pop("grain").lstrip("-") == "x"  # which way along the longest edge is nobody's business
    assert facts == {"show": "z", "cut": "flat", "glued": 8.0, "flattened": 8.0}
    facts = accepted(before)
    tag([box], **facts)
    _, after = read(doc)
    assert accepted(after) == {}
    np.testing.assert_allclose(after.frame.axes, before.frame.axes, atol=1e-9)


def test_a_draft_tells_what_facts_would_make_of_a_part_and_writes_nothing(doc, board):
    before = board.PropertiesList
    draft = Draft(doc)
    (key,) = draft.leaves
    part = draft.parts({key: {"pith": (5, -70), "grain": "-y"}})[key]
    assert part.rings.value.pith_mm == (5, -70)
    assert part.frame.axes[2] == pytest.approx(-draft.parts()[key].frame.axes[2])
    assert draft.parts({key: {"species": None}})[key].species.value is None
    assert draft.parts()[key].species.value.name == "White oak, commercial"
    assert board.PropertiesList == before


def test_a_draft_of_a_word_that_is_wrong_carries_the_problem(doc, board):
    draft = Draft(doc)
    (key,) = draft.leaves
    part = draft.parts({key: {"grain": "lengthwise"}})[key]
    assert any("lengthwise" in problem.message for problem in part.problems)


def shoelace(loop):
    """Area within a loop; a loop whose corners are out of order gives another."""
    x, y = loop.T
    return abs(float(x @ np.roll(y, -1) - y @ np.roll(x, -1))) / 2


def test_end_outlines_follow_the_solid(doc):
    tube = Part.makeBox(100, 60, 500).cut(Part.makeCylinder(15, 500, FreeCAD.Vector(50, 30, 0)))
    doc.addObject("Part::Feature", "Post").Shape = tube
    doc.recompute()
    tag([doc.Post], species="white oak", grain="z", show="y")
    leaf, part = read(doc)
    near, far = end_outlines(leaf, part)
    for end in (near, far):
        assert len(end) == 2
        assert sorted(shoelace(loop) for loop in end) == pytest.approx([np.pi * 15**2, 6000.0], rel=2e-3)


def test_facts_of_several_parts_are_one_step_or_nothing(doc):
    boxes = [doc.addObject("Part::Box", name) for name in ("One", "Two")]
    doc.recompute()
    doc.UndoMode = 1
    steps = doc.UndoCount
    tag_each([(boxes[0], None, {"grain": "x"}), (boxes[1], None, {"grain": "-y", "built": 9})])
    assert (boxes[0].HeartsideGrain, boxes[1].HeartsideGrain, boxes[1].HeartsideBuilt) == ("x", "-y", 9.0)
    assert doc.UndoCount == steps + 1
    with pytest.raises(InputError, match="lengthwise"):
        tag_each([(boxes[0], None, {"grain": "z"}), (boxes[1], None, {"grain": "lengthwise"})])
    assert boxes[0].HeartsideGrain == "x" and doc.UndoCount == steps + 1
