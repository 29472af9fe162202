"""Leaf solids: once per instance, at the right place, with the right size, however the model is built.

Centres and volumes are worked out by hand from the sizes in each test.
"""

from __future__ import annotations

import Part
import pytest
from bench import V, array, at, box, by_name, centre_of, link

from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.version import host_version

BOARD = 400.0 * 100 * 20


def names(doc, hidden=False):
    return [leaf.name for leaf in read_leaves(doc, hidden).leaves]


def centres(doc):
    return {leaf.name: centre_of(leaf) for leaf in read_leaves(doc).leaves}


def test_plain_boxes_are_leaves_at_their_placement(doc):
    box(doc, "Rail", placement=at(10, 20, 30, angle=90))
    doc.recompute()
    (leaf,) = read_leaves(doc).leaves
    assert leaf.key == "Rail/0"
    assert leaf.owner == leaf.source == doc.Rail
    # turned 90° about z: the box goes from (10, 20) to (10 − 100, 20 + 400)
    assert centre_of(leaf) == (-40, 220, 40)
    assert leaf.global_solid().Volume == pytest.approx(BOARD)


def test_local_solid_lies_along_its_own_axes(doc):
    box(doc, "Rail", placement=at(10, 20, 30, (1, 1, 0), 37))
    doc.recompute()
    bounds = read_leaves(doc).leaves[0].local_solid().BoundBox
    assert (bounds.XLength, bounds.YLength, bounds.ZLength) == pytest.approx((400, 100, 20))
    assert (bounds.XMin, bounds.YMin, bounds.ZMin) == pytest.approx((0, 0, 0), abs=1e-9)


def test_hidden_boxes_come_only_when_asked_for(doc):
    box(doc, "Shown")
    box(doc, "Hidden").Visibility = False
    doc.recompute()
    assert names(doc) == ["Shown"]
    assert names(doc, hidden=True) == ["Shown", "Hidden"]


def test_boolean_inputs_are_used_up(doc):
    post = box(doc, "Post")
    tool = box(doc, "Mortise", 50, 50, 20)
    cut = doc.addObject("Part::Cut", "PostCut")
    cut.Base, cut.Tool = post, tool
    doc.recompute()
    assert names(doc) == ["PostCut"]
    leaf = read_leaves(doc).leaves[0]
    assert leaf.global_solid().Volume == pytest.approx(BOARD - 50 * 50 * 20)
    assert leaf.source.Shape.ShapeType == "Compound"  # a compound of one solid has no centre of mass


def test_fillet_and_chamfer_use_their_base_up(doc):
    first = box(doc, "First")
    chamfer = doc.addObject("Part::Chamfer", "Chamfered")
    chamfer.Base = first
    chamfer.Edges = [(1, 5.0, 5.0)]  # along the height of 20: takes 5 · 5 / 2 · 20 away
    second = box(doc, "Second", placement=at(0, 500))
    fillet = doc.addObject("Part::Fillet", "Rounded")
    fillet.Base = second
    fillet.Edges = [(1, 5.0, 5.0)]
    doc.recompute()
    assert names(doc) == ["Chamfered", "Rounded"]
    volumes = [leaf.solid.Volume for leaf in read_leaves(doc).leaves]
    assert volumes == pytest.approx([BOARD - 250, BOARD - (25 - 3.141592653589793 * 25 / 4) * 20])


def test_compound_gives_each_board_once(doc):
    boards = [box(doc, f"B{i}", placement=at(0, 120 * i)) for i in range(3)]
    top = doc.addObject("Part::Compound", "Top")
    top.Links = boards
    top.Placement = at(0, 0, 700)
    doc.recompute()
    assert centres(doc) == {f"Top solid {i + 1}": (200, 50 + 120 * i, 710) for i in range(3)}
    assert [leaf.key for leaf in read_leaves(doc).leaves] == ["Top/0", "Top/1", "Top/2"]


def test_mirrored_board_keeps_its_original(doc):
    side = box(doc, "Side", placement=at(100))
    twin = doc.addObject("Part::Mirroring", "Twin")
    twin.Source, twin.Normal, twin.Base = side, V(1, 0, 0), V(0, 0, 0)
    doc.recompute()
    assert centres(doc) == {"Side": (300, 50, 10), "Twin": (-300, 50, 10)}
    side.Visibility = False
    assert names(doc) == ["Twin"]
    assert names(doc, hidden=True) == ["Twin"]


def make_body(doc, name, width=60.0, height=40.0, length=700.0):
    body = doc.addObject("PartDesign::Body", name)
    sketch = body.newObject("Sketcher::SketchObject", name + "Sketch")
    corners = [V(0, 0), V(width, 0), V(width, height), V(0, height)]
    for i in range(4):
        sketch.addGeometry(Part.LineSegment(corners[i], corners[(i + 1) % 4]), False)
    pad = body.newObject("PartDesign::Pad", name + "Pad")
    pad.Profile, pad.Length = sketch, length
    doc.recompute()
    return body


def test_body_is_one_leaf_and_its_features_none(doc):
    body = make_body(doc, "Leg")
    body.Placement = at(1000)
    doc.recompute()
    assert centres(doc) == {"Leg": (1030, 20, 350)}
    assert read_leaves(doc, hidden=True).leaves[0].solid.Volume == pytest.approx(60 * 40 * 700)
    assert len(read_leaves(doc, hidden=True).leaves) == 1


def test_nested_containers_add_their_placements(doc):
    outer = doc.addObject("App::Part", "Cabinet")
    outer.Placement = at(0, 0, 1000)
    inner = doc.addObject("App::Part", "Drawer")
    inner.Placement = at(0, 0, 0, angle=90)
    outer.addObject(inner)
    inner.addObject(box(doc, "Front", placement=at(5)))
    doc.recompute()
    # own centre (205, 50, 10), turned 90° about z → (−50, 205, 10), raised by 1000
    assert centres(doc) == {"Front": (-50, 205, 1010)}
    leaf = read_leaves(doc).leaves[0]
    assert (leaf.key, leaf.sub, leaf.trail) == (
        "Cabinet.Drawer.Front/0",
        "Drawer.Front.",
        ("Cabinet", "Drawer"),
    )
    outer.Visibility = False
    assert names(doc) == []


def test_plain_groups_neither_move_nor_address(doc):
    part = doc.addObject("App::Part", "Part1")
    part.Placement = at(0, 0, 50)
    folder = doc.addObject("App::DocumentObjectGroup", "Folder")
    deeper = doc.addObject("App::DocumentObjectGroup", "Deeper")
    part.addObject(folder)
    folder.addObject(box(doc, "InFolder"))
    folder.addObject(deeper)
    deeper.addObject(box(doc, "InDeeper"))
    top = doc.addObject("App::DocumentObjectGroup", "TopFolder")
    top.addObject(box(doc, "InTop"))
    doc.recompute()
    assert centres(doc) == {"InFolder": (200, 50, 60), "InDeeper": (200, 50, 60), "InTop": (200, 50, 10)}
    assert {leaf.key for leaf in read_leaves(doc).leaves} == {
        "Part1.InFolder/0",
        "Part1.InDeeper/0",
        "InTop/0",
    }


def test_link_moves_its_target_and_owns_itself(doc):
    board = box(doc, "Board", placement=at(1, 2, 3, angle=30))
    link(doc, "Copy", board, at(0, 500))
    link(doc, "Moved", board, at(0, 0, 900), LinkTransform=True)
    link(doc, "Again", doc.Copy, at(0, 700))
    doc.recompute()
    found = by_name(read_leaves(doc))
    assert set(found) == {"Board", "Copy", "Moved", "Again"}
    assert centre_of(found["Copy"]) == (200, 550, 10)
    assert centre_of(found["Again"]) == (200, 750, 10)
    turned = board.Placement.multVec(V(200, 50, 10))
    assert centre_of(found["Moved"]) == tuple(round(c, 6) for c in (turned.x, turned.y, turned.z + 900))
    assert found["Copy"].owner == doc.Copy and found["Copy"].source == board
    board.Visibility = False
    assert set(names(doc, hidden=True)) == {"Copy", "Moved", "Again"}  # a hidden master is no board


def test_link_to_a_container_gives_its_boards_again_with_distinct_names(doc):
    chair = doc.addObject("App::Part", "Chair")
    chair.addObject(box(doc, "Seat"))
    link(doc, "Second", chair, at(0, 600))
    doc.recompute()
    assert centres(doc) == {"Chair / Seat": (200, 50, 10), "Second / Seat": (200, 650, 10)}
    second = by_name(read_leaves(doc))["Second / Seat"]
    assert second.key == "Second.Seat/0"
    assert second.owner == doc.Seat


@pytest.mark.parametrize("shown", [True, False])
def test_link_array_elements_are_numbered_from_one_and_keyed_alike(doc, shown):
    array(doc, "Slats", box(doc, "Slat"), 3, (0, 150, 0), shown)
    doc.Slat.Visibility = False
    doc.recompute()
    reading = read_leaves(doc)
    assert {leaf.name: centre_of(leaf) for leaf in reading.leaves} == {
        f"Slats {i + 1}": (200, 50 + 150 * i, 10) for i in range(3)
    }
    assert [leaf.key for leaf in reading.leaves] == ["Slats.0/0", "Slats.1/0", "Slats.2/0"]
    if shown:
        assert [leaf.owner for leaf in reading.leaves] == doc.Slats.ElementList
        assert [leaf.element for leaf in reading.leaves] == [None] * 3
    else:
        assert [leaf.owner for leaf in reading.leaves] == [doc.Slats] * 3
        assert [leaf.element for leaf in reading.leaves] == [0, 1, 2]


@pytest.mark.parametrize("shown", [True, False])
def test_hidden_array_elements_are_hidden(doc, shown):
    slats = array(doc, "Slats", box(doc, "Slat"), 3, (0, 150, 0), shown)
    doc.Slat.Visibility = False
    slats.setElementVisible(slats.ElementList[1].Name if shown else "1", False)
    doc.recompute()
    assert names(doc) == ["Slats 1", "Slats 3"]
    assert len(names(doc, hidden=True)) == 3


def test_what_a_link_shows_is_its_own_business(doc):
    """In the window the elements' own visibility goes off with their master's; they are shown all the same."""
    slats = array(doc, "Slats", box(doc, "Slat"), 2, (0, 150, 0), True)
    group = doc.addObject("App::LinkGroup", "Bundle")
    group.ElementList = [box(doc, "One")]
    folder = doc.addObject("App::DocumentObjectGroup", "Folder")
    folder.addObject(box(doc, "Two"))
    link(doc, "Copies", folder)
    doc.recompute()
    for obj in (doc.Slat, *slats.ElementList, doc.One, doc.Two, folder):
        obj.Visibility = False
    assert names(doc) == ["Slats 1", "Slats 2", "One", "Two"]
    doc.Two.Visibility = True  # a hidden folder does not hide what is shown in it
    assert names(doc) == ["Slats 1", "Slats 2", "One", "Two", "Copies / Two"]


@pytest.mark.parametrize("shown", [True, False])
def test_array_of_a_container_and_a_link_to_the_array(doc, shown):
    frame = doc.addObject("App::Part", "Frame")
    frame.addObject(box(doc, "Stile", placement=at(7)))
    frame.Visibility = False
    array(doc, "Frames", frame, 2, (0, 0, 300), shown)
    link(doc, "Far", doc.Frames, at(5000))
    doc.recompute()
    assert centres(doc) == {
        "Frames 1 / Stile": (207, 50, 10),
        "Frames 2 / Stile": (207, 50, 310),
        "Far 1 / Stile": (5207, 50, 10),
        "Far 2 / Stile": (5207, 50, 310),
    }


@pytest.mark.parametrize("shown", [True, False])
def test_array_of_an_array(doc, shown):
    array(doc, "Row", box(doc, "Peg", 10, 10, 10), 2, (100, 0, 0), shown)
    array(doc, "Grid", doc.Row, 2, (0, 100, 0), shown)
    doc.Peg.Visibility = doc.Row.Visibility = False
    doc.recompute()
    assert centres(doc) == {
        "Grid 1 1": (5, 5, 5),
        "Grid 1 2": (105, 5, 5),
        "Grid 2 1": (5, 105, 5),
        "Grid 2 2": (105, 105, 5),
    }


def test_link_group_members_move_with_it(doc):
    group = doc.addObject("App::LinkGroup", "Bundle")
    group.ElementList = [box(doc, "One"), box(doc, "Two", placement=at(0, 200))]
    group.Placement = at(0, 0, 100)
    doc.recompute()
    assert centres(doc) == {"One": (200, 50, 110), "Two": (200, 250, 110)}


def test_link_to_a_plain_group(doc):
    folder = doc.addObject("App::DocumentObjectGroup", "Folder")
    deeper = doc.addObject("App::DocumentObjectGroup", "Deeper")
    folder.addObject(box(doc, "One"))
    folder.addObject(deeper)
    deeper.addObject(box(doc, "Two", placement=at(0, 200)))
    link(doc, "Copies", folder, at(0, 0, 100))
    doc.recompute()
    assert centres(doc) == {
        "One": (200, 50, 10),
        "Two": (200, 250, 10),
        "Copies / One": (200, 50, 110),
        "Copies / Two": (200, 250, 110),
    }
    doc.Copies.setElementVisible("One", False)
    assert "Copies / One" not in names(doc) and "One" in names(doc)


def test_scaled_and_mirrored_links(doc):
    board = box(doc, "Board")
    board.Visibility = False
    link(doc, "Wide", board, at(0, 0, 100), ScaleVector=V(1, 2, 1))
    link(doc, "Flipped", board, at(0, 0, 200), ScaleVector=V(-1, 1, 1))
    link(doc, "Half", board, at(0, 0, 300), Scale=0.5)
    doc.recompute()
    found = by_name(read_leaves(doc))
    assert {name: centre_of(leaf) for name, leaf in found.items()} == {
        "Wide": (200, 100, 110),
        "Flipped": (-200, 50, 210),
        "Half": (100, 25, 305),
    }
    assert all(leaf.is_scaled() for leaf in found.values())
    assert found["Flipped"].global_solid().Volume == pytest.approx(BOARD)


@pytest.mark.parametrize("where", ["placed", "drawn"])
def test_a_round_solid_that_stands_nowhere_is_told_and_costs_no_other(doc, where):
    """The host meshes such a sphere for ever, and a mirror of it passes the place on into its geometry."""
    box(doc, "Rail")
    ball = doc.addObject("Part::Feature", "Ball")
    ball.Shape = Part.makeSphere(3)
    ball.Placement = at(float("nan"), 0, 0)
    if where == "drawn":
        mirror = doc.addObject("Part::Mirroring", "Mirror")
        mirror.Source = ball
        mirror.Normal = V(1, 0, 0)
        ball.Visibility = False
    doc.recompute()
    found = read_leaves(doc)
    assert [leaf.name for leaf in found.leaves] == ["Rail"]
    (told,) = [str(one) for one in found.unreadable if one.visible]
    assert "no number" in told


def test_what_is_longer_than_any_piece_is_told_with_its_length(doc):
    rail = box(doc, "Rail")
    far = link(doc, "Far", rail)
    far.Scale = 1e9
    doc.recompute()
    found = read_leaves(doc)
    assert [leaf.name for leaf in found.leaves] == ["Rail"]
    (told,) = map(str, found.unreadable)
    assert "400,000 km" in told and "scale" in told


@pytest.mark.parametrize("use_link", [True, False])
def test_draft_arrays(doc, use_link):
    import Draft

    board = box(doc, "Board")
    board.Visibility = False
    made = Draft.make_ortho_array(board, V(500, 0, 0), V(0, 150, 0), V(0, 0, 50), 2, 2, 1, use_link=use_link)
    made.Label = "Boards"
    doc.recompute()
    reading = read_leaves(doc)
    assert sorted(centre_of(leaf) for leaf in reading.leaves) == [
        (200, 50, 10),
        (200, 200, 10),
        (700, 50, 10),
        (700, 200, 10),
    ]
    assert {leaf.owner.Label for leaf in reading.leaves} == {"Boards"}


@pytest.mark.parametrize("use_link", [True, False])
def test_a_shown_base_of_a_draft_array_is_not_counted_twice(doc, use_link):
    import Draft

    Draft.make_ortho_array(
        box(doc, "Board"), V(500, 0, 0), V(0, 150, 0), V(0, 0, 50), 2, 1, 1, use_link=use_link
    )
    doc.recompute()
    assert len(read_leaves(doc).leaves) == 2


def test_expanded_draft_link_array_and_clone(doc):
    import Draft

    board = box(doc, "Board")
    made = Draft.make_ortho_array(board, V(500, 0, 0), V(0, 150, 0), V(0, 0, 50), 2, 1, 1, use_link=True)
    made.ExpandArray = True
    other = box(doc, "Other", placement=at(0, 1000))
    clone = Draft.make_clone(other)
    clone.Label = "Clone of it"
    clone.Placement = at(0, 2000)
    doc.recompute()
    found = {leaf.name: centre_of(leaf) for leaf in read_leaves(doc).leaves}
    assert found == {
        "Array 1": (200, 50, 10),
        "Array 2": (700, 50, 10),
        "Other": (200, 1050, 10),
        "Clone of it": (200, 2050, 10),
    }


@pytest.mark.parametrize("maker", ["makeBooleanFragments", "makeSlice", "makeXOR"])
def test_split_features_use_their_inputs_up(doc, maker):
    from BOPTools import SplitFeatures

    first, second = box(doc, "First"), box(doc, "Second", 100, 100, 20, at(350))
    made = getattr(SplitFeatures, maker)(name="Result")
    if maker == "makeSlice":
        made.Base, made.Tools = first, [second]
    else:
        made.Objects = [first, second]
    doc.recompute()
    reading = read_leaves(doc)
    # they overlap by 50: fragments 350, 50 and 50 long; sliced 350 and 50; all but the overlap 350 and 50
    expected = {"makeBooleanFragments": [50, 50, 350], "makeSlice": [50, 350], "makeXOR": [50, 350]}[maker]
    assert sorted(leaf.solid.Volume / 2000 for leaf in reading.leaves) == pytest.approx(expected)
    assert {leaf.owner.Name for leaf in reading.leaves} == {"Result"}


@pytest.mark.parametrize("maker", ["makeConnect", "makeEmbed", "makeCutout"])
def test_join_features_use_their_inputs_up(doc, maker):
    from BOPTools import JoinFeatures

    first, second = box(doc, "First"), box(doc, "Second", 100, 100, 20, at(350))
    made = getattr(JoinFeatures, maker)(name="Result")
    if maker == "makeConnect":
        made.Objects = [first, second]
    else:
        made.Base, made.Tool = first, second
    doc.recompute()
    assert {leaf.owner.Name for leaf in read_leaves(doc).leaves} == {"Result"}


def test_sketches_binders_and_datums_are_no_boards(doc):
    body = make_body(doc, "Leg")
    binder = doc.addObject("PartDesign::SubShapeBinder", "Binder")
    binder.Support = [(body, ("",))]
    doc.recompute()
    assert names(doc, hidden=True) == ["Leg"]


@pytest.mark.skipif(host_version() < (1, 0, 0), reason="assemblies came with 1.0")
def test_assembly_with_linked_parts(doc):
    assembly = doc.addObject("Assembly::AssemblyObject", "Table")
    assembly.Placement = at(0, 0, 10)
    board = box(doc, "Board")
    board.Visibility = False
    first = assembly.newObject("App::Link", "First")
    first.LinkedObject, first.Placement = board, at(0, 500)
    doc.recompute()
    assert centres(doc) == {"First": (200, 550, 20)}


@pytest.mark.skipif(host_version() < (1, 1, 0), reason="linked assemblies came with 1.1")
@pytest.mark.parametrize("rigid", [True, False])
def test_linked_assembly(doc, rigid):
    inner = doc.addObject("Assembly::AssemblyObject", "Drawer")
    inner.addObject(box(doc, "Front"))
    outer = doc.addObject("Assembly::AssemblyObject", "Cabinet")
    copy = outer.newObject("Assembly::AssemblyLink", "DrawerCopy")
    copy.LinkedObject = inner
    copy.Rigid = rigid
    doc.recompute()
    copy.Placement = at(0, 0, 300)
    doc.recompute()
    found = centres(doc)
    assert len(found) == 2
    assert (200, 50, 10) in found.values()
    assert (200, 50, 310) in found.values()


def test_a_part_that_holds_a_link_to_itself_is_read_once_and_told_once(doc):
    part = doc.addObject("App::Part", "Part")
    part.addObject(box(doc, "Board"))
    back = link(doc, "Back", part)
    part.addObject(back)
    doc.recompute()
    reading = read_leaves(doc)
    assert [leaf.name for leaf in reading.leaves] == ["Board"]
    assert [str(one) for one in reading.unreadable] == ["Back: it leads back to 'Part', which it lies in"]


def test_a_circle_over_two_parts_is_told_where_it_closes_and_sisters_are_no_circle(doc):
    first, second = (doc.addObject("App::Part", name) for name in ("First", "Second"))
    first.addObject(box(doc, "In first"))
    second.addObject(box(doc, "In second"))
    first.addObject(link(doc, "Down", second))
    second.addObject(link(doc, "Up", first))
    doc.recompute()
    reading = read_leaves(doc)
    assert sorted(str(one) for one in reading.unreadable) == [
        "Down: it leads back to 'Second', which it lies in",
        "Up: it leads back to 'First', which it lies in",
    ]
    assert len(reading.leaves) == 4, "each part as drawn, and once by the link in the other"
