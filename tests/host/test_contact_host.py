"""Faces read from the host: contacts of links, arrays and turned containers, curved faces, and the demo's joints."""

from __future__ import annotations

import math

import FreeCAD as App
import numpy as np
import Part
import pytest
from bench import V, array, at, box, link

from movement_core.piece.contact.contacts import contacts_of
from workbench_pkg.demo.build import build_demo
from workbench_pkg.host.faces import faces_of
from workbench_pkg.host.leaves import read_leaves

MICRON = 1e-3
TILT = at(300, -200, 150, (1, 2, 3), 40)


def found_in(doc, reach=8.0):
    doc.recompute()
    read = faces_of([leaf for leaf in read_leaves(doc).leaves if leaf.visible])
    return read, contacts_of(read.bodies, reach, read)


def feature(doc, name, shape, placement=None):
    made = doc.addObject("Part::Feature", name)
    made.Shape = shape
    if placement is not None:
        made.Placement = placement
    return made


def areas(found):
    return sorted(round(contact.area_mm2, 3) for contact in found.contacts)


def test_two_boxes(doc):
    box(doc, "One")
    box(doc, "Other", placement=at(0, 100))
    _, found = found_in(doc)
    (contact,) = found.contacts
    assert contact.area_mm2 == pytest.approx(400 * 20, abs=MICRON)
    assert contact.normal == pytest.approx((0, 1, 0))


@pytest.mark.parametrize("shown", [True, False], ids=["elements shown", "by number"])
def test_a_row_of_links_and_a_nested_turned_container(doc, shown):
    board = box(doc, "Board")
    board.Visibility = False
    row = array(doc, "Row", board, 4, (0, 101.5, 0), shown)
    inner = doc.addObject("App::Part", "Inner")
    inner.addObject(board)
    inner.addObject(row)
    inner.Placement = at(10, 20, 30, (0, 1, 0), 25)
    outer = doc.addObject("App::Part", "Outer")
    outer.addObject(inner)
    outer.Placement = TILT
    read, found = found_in(doc)
    assert len(read.bodies) == 4
    assert found.contacts == ()
    assert [gap.least_mm for gap in found.gaps] == pytest.approx([1.5] * 3, abs=MICRON)
    assert [gap.area_mm2 for gap in found.gaps] == pytest.approx([8000.0] * 3, abs=1.0)


def test_a_link_to_a_container_in_another_place(doc):
    part = doc.addObject("App::Part", "Frame")
    for name, y in (("Lower", 0.0), ("Upper", 100.0)):
        part.addObject(box(doc, name, placement=at(0, y)))
    link(doc, "Again", part, TILT)
    _, found = found_in(doc)
    assert areas(found) == [8000.0, 8000.0]


def test_a_scaled_and_a_mirrored_link(doc):
    board = box(doc, "Board")
    link(doc, "Wide", board, at(0, 100), Scale=2.0)
    doc.addObject("Part::Mirroring", "Mirror").Source = board
    doc.Mirror.Normal = V(0, 1, 0)
    _, found = found_in(doc)
    assert areas(found) == [8000.0, 8000.0]  # the double-size board meets the board on its whole edge
    assert found.overlaps == ()


def test_each_solid_is_read_once(doc, monkeypatch):
    from workbench_pkg.host import faces as host_faces

    board = box(doc, "Board")
    board.Visibility = False
    array(doc, "Row", board, 20, (0, 100, 0), False)
    doc.recompute()
    counted = []
    own = host_faces._own_faces
    monkeypatch.setattr(host_faces, "_own_faces", lambda solid: counted.append(1) or own(solid))
    read = faces_of([leaf for leaf in read_leaves(doc).leaves if leaf.visible])
    assert (len(read.bodies), len(counted)) == (20, 1)
    assert len(contacts_of(read.bodies).contacts) == 19


def test_a_board_with_holes_and_round_corners(doc):
    board = Part.makeBox(400, 100, 20)
    for x in (50, 150, 250, 350):
        board = board.cut(Part.makeCylinder(6, 20, V(x, 50, 0)))
    board = board.makeFillet(
        15, [e for e in board.Edges if e.Length == 20 and isinstance(e.Curve, Part.Line)]
    )
    feature(doc, "Drilled", board, TILT)
    feature(doc, "Base", Part.makeBox(500, 200, 10, V(-50, -50, -10)), TILT)
    _, found = found_in(doc)
    (contact,) = found.contacts
    exact = 400 * 100 - 4 * math.pi * 36 - 4 * (1 - math.pi / 4) * 225
    assert contact.area_mm2 == pytest.approx(exact, rel=2e-4)  # arcs are polygons with chords within 0.02 mm
    assert len(contact.outline) == 5
    assert found.overlaps == ()


def test_a_peg_in_its_hole_through_two_parts(doc):
    block = Part.makeBox(60, 60, 40, V(-30, -30, 0)).cut(Part.makeCylinder(5, 40))
    upper = Part.makeBox(60, 60, 40, V(-30, -30, 40)).cut(Part.makeCylinder(5.4, 25, V(0, 0, 40)))
    feature(doc, "Lower", block, TILT)
    feature(doc, "Upper", upper, TILT)
    feature(doc, "Peg", Part.makeCylinder(5, 60), TILT)
    _, found = found_in(doc)
    tight = next(c for c in found.contacts if c.surface == "round")
    assert (tight.first, tight.second, tight.peg) == (0, 2, 2)
    assert tight.area_mm2 == pytest.approx(2 * math.pi * 5 * 40, rel=1e-9)
    loose = next(g for g in found.gaps if g.surface == "round")
    assert (loose.least_mm, loose.most_mm) == pytest.approx((0.4, 0.4), abs=MICRON)
    assert found.overlaps == ()


def test_a_ball_between_boards_is_measured_by_the_kernel(doc):
    feature(doc, "Floor", Part.makeBox(200, 200, 10, V(-100, -100, -10)), TILT)
    feature(doc, "Ball", Part.makeSphere(30, V(0, 0, 31.25)), TILT)
    _, found = found_in(doc)
    (gap,) = found.gaps
    assert gap.surface == "curved"
    assert gap.exact
    assert gap.least_mm == pytest.approx(1.25, abs=MICRON)
    assert found.overlaps == ()


def test_a_ball_sunk_into_a_board_overlaps_by_what_the_kernel_says(doc):
    feature(doc, "Floor", Part.makeBox(200, 200, 40, V(-100, -100, -40)), TILT)
    feature(doc, "Ball", Part.makeSphere(30, V(0, 0, 25)), TILT)
    _, found = found_in(doc)
    (overlap,) = found.overlaps
    cap = math.pi * 5**2 * (3 * 30 - 5) / 3
    assert overlap.volume_mm3 == pytest.approx(cap, rel=1e-4)


def test_an_inside_out_solid_still_touches(doc):
    flipped = Part.makeBox(400, 100, 20)
    flipped.reverse()
    feature(doc, "Flipped", flipped)
    box(doc, "Other", placement=at(0, 100))
    _, found = found_in(doc)
    assert areas(found) == [8000.0]


def test_a_planed_strained_solid_of_splines(doc):
    """The host makes splines of every face when it strains a solid; planes stay planes."""
    board = Part.makeBox(400, 100, 20).transformGeometry(App.Matrix(1.0, 0, 0, 0, 0, 1.02, 0, 0, 0, 0, 1, 0))
    feature(doc, "Swollen", board.Solids[0])
    box(doc, "Other", placement=at(0, 103))
    _, found = found_in(doc)
    (gap,) = found.gaps
    assert gap.least_mm == pytest.approx(1.0, abs=MICRON)
    assert gap.area_mm2 == pytest.approx(8000.0, abs=1.0)


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    folder = tmp_path_factory.mktemp("contact-demo")
    build_demo(folder)
    return folder


def bare(name):
    return name.split(" wood{")[0]


def test_the_sideboard_as_it_is_drawn(demo):
    doc = App.openDocument(str(demo / "sideboard.FCStd"), True)
    read, found = found_in(doc, 10.0)
    names = [bare(body.name) for body in read.bodies]
    assert found.overlaps == ()
    pairs = {frozenset((names[c.first], names[c.second])) for c in found.contacts}
    for one, other in (
        ("Base moulding left", "Case side left"), ("Base moulding right", "Case side right"),
        ("Lower runner right", "Case side right"), ("Upper runner left", "Divider"),
        ("Door panel", "Door stile left"), ("Door panel", "Door stile right"),
    ):  # fmt: skip
        assert frozenset((one, other)) in pairs, (one, other)
    widths = {frozenset((names[g.first], names[g.second])): g.least_mm for g in found.gaps}
    assert widths[frozenset(("Divider", "Door stile right"))] == pytest.approx(0.6, abs=MICRON)
    assert widths[frozenset(("Case side left", "Door stile left"))] == pytest.approx(0.6, abs=MICRON)


def test_contacts_of_the_table_agree_with_the_kernel(demo):
    """Area from our faces against the host's own common faces, over every pair that touches."""
    doc = App.openDocument(str(demo / "trestle_table.FCStd"), True)
    _read, found = found_in(doc, 10.0)
    assert found.overlaps == ()
    ours = {}
    for contact in found.contacts:
        ours[contact.first, contact.second] = (
            ours.get((contact.first, contact.second), 0.0) + contact.area_mm2
        )
        solids = [leaf.global_solid() for leaf in read_leaves(doc).leaves if leaf.visible]
    checked = 0
    for (one, other), area in sorted(ours.items())[::4]:
        theirs = 0.0
        for a in solids[one].Faces:
            for b in solids[other].Faces:
                near = a.BoundBox
                near.enlarge(1e-3)
                if near.intersect(b.BoundBox):
                    theirs += a.common(b).Area
        assert area == pytest.approx(theirs, rel=1e-6, abs=0.01), (one, other)
        checked += 1
    assert checked >= 10
    assert np.isfinite(list(ours.values())).all()
