"""What touches what through links: to other documents open and closed, arrays, nested and turned containers."""

from __future__ import annotations

import FreeCAD as App
import numpy as np
import pytest
from bench import array, at, box, link

from movement_core.piece.contact.alike import Alike
from movement_core.piece.contact.contacts import contacts_of
from movement_core.wood import find_species
from workbench_pkg.actions.check import check_document, check_file
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.actions.tag import tag
from workbench_pkg.demo.shapes import container
from workbench_pkg.host.faces import faces_of
from workbench_pkg.host.leaves import read_leaves

MICRON = 1e-3
GAP = 1.5
TURNS = [((0, 0, 1), 0.0), ((0, 0, 1), 37.0), ((1, 2, 3), 64.0)]
OAK = {"species": "white oak", "grain": "x", "show": "z", "pith": (0, -80), "built": 8}


def read(doc):
    return faces_of([leaf for leaf in read_leaves(doc).leaves if leaf.visible])


def found_in(doc, reach=8.0):
    doc.recompute()
    faces = read(doc)
    return faces, contacts_of(faces.bodies, reach, faces)


def between(faces, found):
    """What was found as numbers by the names of both parts, however the parts are ordered."""
    named = [body.name for body in faces.bodies]
    told = {}
    for one in found.contacts:
        told["touch", frozenset((named[one.first], named[one.second]))] = one.area_mm2
    for one in found.gaps:
        told["gap", frozenset((named[one.first], named[one.second]))] = one.least_mm
    return told


@pytest.fixture
def store(tmp_path):
    """A saved document of one tagged board, as a shop keeps its stock, and where it lies."""
    made = App.newDocument("Store", hidden=True)
    board = box(made, "Board")
    tag([board], **OAK)
    made.recompute()
    path = tmp_path / "store.FCStd"
    made.saveAs(str(path))
    return board, path


@pytest.fixture
def shelf(doc, store, tmp_path):
    """A document that shows the board of another: once beside a board of its own, once apart, in a turned container."""
    board, _ = store
    doc.saveAs(str(tmp_path / "shelf.FCStd"))  # links to other files ask for a file of its own
    holder = container(doc, "Holder", at(300, -200, 150, (1, 2, 3), 40))
    own = box(doc, "Own")
    tag([own], **OAK)
    holder.addObject(own)
    for name, y in (("Beside", 100.0), ("Apart", 200.0 + GAP)):
        holder.addObject(link(doc, name, board, at(0, y)))
    doc.recompute()
    return tmp_path / "shelf.FCStd"


WANTED = {
    ("touch", frozenset(("Own", "Beside"))): 400.0 * 20,
    ("gap", frozenset(("Beside", "Apart"))): GAP,
}


def test_contacts_and_gaps_through_links_to_an_open_document(doc, shelf):
    assert between(*found_in(doc)) == pytest.approx(WANTED, abs=MICRON)


def test_tags_of_another_document_count_and_a_link_outranks_them(doc, shelf):
    parts = {part["name"]: part for part in check_document(doc)["parts"]}
    oak, maple = (find_species(name).name for name in ("white oak", "hard maple"))
    assert {name: part["species"] for name, part in parts.items()} == dict.fromkeys(
        ("Own", "Beside", "Apart"), oak
    )
    tag([doc.Beside], species="hard maple")
    species = {part["name"]: part["species"] for part in check_document(doc)["parts"]}
    assert species == {"Own": oak, "Beside": maple, "Apart": oak}


def test_a_file_whose_other_document_is_closed_is_checked_alike(doc, shelf):
    doc.save()
    while_open = check_document(doc)
    for name in list(App.listDocuments()):
        App.closeDocument(name)
    settings = settings_from_texts("", "2026-03-15", None)
    report = check_file(shelf, settings)
    assert not App.listDocuments()  # the other document was opened for it, and closed again
    assert report["errors"] == []
    assert {part["name"] for part in report["parts"]} == {"Own", "Beside", "Apart"}
    joints = [(joint["parts"], joint["area_mm2"]) for joint in report["joints"]]
    assert joints == [(joint["parts"], joint["area_mm2"]) for joint in while_open["joints"]]
    ((_, area),) = joints
    assert area == pytest.approx(8000.0, abs=0.1)
    assert {frozenset(gap["parts"]) for gap in report["gaps"]} == {frozenset(("Beside", "Apart"))}


def test_a_file_whose_other_document_is_gone_says_so(doc, shelf, store):
    doc.save()
    for name in list(App.listDocuments()):
        App.closeDocument(name)
    store[1].unlink()
    report = check_file(shelf, settings_from_texts("", "2026-03-15", None))
    assert [part["name"] for part in report["parts"]] == ["Own"]
    told = " ".join(error["message"] for error in report["errors"])
    assert "Beside" in told and "Apart" in told


@pytest.mark.parametrize(("axis", "angle"), TURNS)
@pytest.mark.parametrize("shown", [True, False], ids=["elements shown", "by number"])
def test_each_element_of_an_array_counts_at_its_own_place(doc, store, shown, axis, angle):
    """Five boards of another document at unlike distances, in a container in a turned one."""
    board, path = store
    doc.saveAs(str(path.with_name("row.FCStd")))
    row = array(doc, "Row", board, 5, (0, 100, 0), shown)
    steps = [0.0, 100.0, 201.0, 303.0, 403.0]
    places = [at(0, y) for y in steps]
    if shown:
        for element, place in zip(row.ElementList, places):
            element.Placement = place
    else:
        row.PlacementList = places
    outer = container(doc, "Outer", at(20, 30, 40, axis, angle))
    inner = container(outer, "Inner", at(1, 2, 3, (0, 1, 0), 25))
    inner.addObject(row)
    faces, found = found_in(doc)
    touching = sorted(round(one.area_mm2, 3) for one in found.contacts)
    widths = sorted(round(one.least_mm, 3) for one in found.gaps)
    assert (touching, widths) == ([8000.0, 8000.0], [1.0, 2.0])
    # The two that touch stand alike, so they are worked out once and carried.
    first, second = (np.array([getattr(one, end) for one in found.contacts]) for end in ("first", "second"))
    kinds = Alike(faces.bodies).kinds(first, second)
    assert kinds[0] is not None and kinds[0] == kinds[1]
    turn = App.Rotation(App.Vector(*axis), angle).multiply(App.Rotation(App.Vector(0, 1, 0), 25))
    for one in found.contacts:
        assert one.normal == pytest.approx(tuple(turn.multVec(App.Vector(0, 1, 0))), abs=1e-9)


def test_scaled_and_mirrored_links_are_other_solids(doc):
    """Two pairs in the same position to each other, one of them twice as large: not carried from one to the other."""
    board = box(doc, "Board")
    link(doc, "Beside", board, at(0, 100))
    link(doc, "Large", board, at(0, 1000), Scale=2.0)
    link(doc, "Large beside", board, at(0, 1200), Scale=2.0)
    _, found = found_in(doc)
    assert sorted(round(one.area_mm2, 3) for one in found.contacts) == [8000.0, 32000.0]
