"""Opening, importing and saving: hidden, checked first, never over the input, nothing left open."""

from __future__ import annotations

import os
import zipfile

import FreeCAD as App
import numpy as np
import Part
import pytest
from bench import array, at, box, by_name, centre_of, host_documents, link

from movement_core.errors import FileError
from workbench_pkg.host.documents import open_file, opened
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.host.saving import save_copy
from workbench_pkg.host.shapes import extents, outline, volume
from workbench_pkg.host.tagging import read_tags, remove_tags, write_tags
from workbench_pkg.host.version import host_version


def saved(doc, path):
    doc.recompute()
    doc.saveAs(str(path))
    App.closeDocument(doc.Name)
    return path


def test_version_is_three_numbers():
    assert len(host_version()) == 3
    assert list(host_version()) == [int(part) for part in App.Version()[:3]]


def test_opened_closes_again_with_linked_files(doc, tmp_path):
    store = App.newDocument("Store", hidden=True)
    board = box(store, "Board")
    store.recompute()
    store.saveAs(str(tmp_path / "store.FCStd"))
    doc.saveAs(str(tmp_path / "main.FCStd"))
    link(doc, "Copy", board, at(0, 0, 5))
    saved(doc, tmp_path / "main.FCStd")
    App.closeDocument(store.Name)
    with opened(tmp_path / "main.FCStd") as found:
        assert len(App.listDocuments()) == 2
        assert [centre_of(leaf) for leaf in read_leaves(found).leaves] == [(200, 50, 15)]
    assert App.listDocuments() == {}


def test_opened_closes_after_an_error(doc, tmp_path):
    box(doc, "Board")
    path = saved(doc, tmp_path / "a.FCStd")
    with pytest.raises(RuntimeError, match="mine"), opened(path):
        raise RuntimeError("mine")
    assert App.listDocuments() == {}


def test_a_file_that_is_open_already_is_not_touched(doc, tmp_path):
    box(doc, "Board")
    doc.recompute()
    doc.saveAs(str(tmp_path / "a.FCStd"))
    with pytest.raises(FileError, match="open already"), opened(tmp_path / "a.FCStd"):
        pass
    assert [d.FileName for d in App.listDocuments().values()] == [str(tmp_path / "a.FCStd")]


def test_no_solids_is_an_error_that_tells_what_was_there(doc, tmp_path):
    doc.addObject("Spreadsheet::Sheet", "Cuts")
    empty = saved(doc, tmp_path / "empty.FCStd")
    with pytest.raises(FileError, match="no solids"):
        open_file(empty)
    other = App.newDocument("Loose")
    link(other, "Loose link", None)
    path = saved(other, tmp_path / "loose.FCStd")
    with pytest.raises(FileError, match="links to nothing"):
        open_file(path)
    assert App.listDocuments() == {}
    with opened(empty, need_solids=False) as found:
        assert found.Cuts


def test_what_the_guard_lets_pass_and_the_host_cannot_read(tmp_path):
    path = tmp_path / "strange.FCStd"
    with zipfile.ZipFile(path, "w") as archive:
        archive.writestr("Document.xml", "<Document><unheard-of/></Document>")
    with pytest.raises(FileError, match=r"strange\.FCStd"):
        open_file(path)
    assert App.listDocuments() == {}


def three_boards(doc):
    boards = [box(doc, name, 400 + 10 * i, 100, 20, at(0, 150 * i)) for i, name in enumerate("PQR")]
    for board, label in zip(boards, ("Deckel wood{oak}", "Mitte", "Boden größer")):
        board.Label = label
    doc.recompute()
    return boards


def test_step_with_several_roots(doc, tmp_path):
    import Import

    path = tmp_path / "three boards.step"
    Import.export(three_boards(doc), str(path))
    App.closeDocument(doc.Name)
    with opened(path) as found:
        reading = read_leaves(found)
        assert sorted(centre_of(leaf) for leaf in reading.leaves) == [
            (200, 50, 10),
            (205, 200, 10),
            (210, 350, 10),
        ]
        assert sorted(round(volume(leaf), 3) for leaf in reading.leaves) == [800000, 820000, 840000]
        texts = {text for leaf in reading.leaves for text in read_tags(leaf).texts}
        assert {"Deckel wood{oak}", "Mitte", "Boden größer"} <= texts
        assert len({leaf.name for leaf in reading.leaves}) == 3


def test_step_with_one_root_and_turned_parts(doc, tmp_path):
    import Import

    room, case = doc.addObject("App::Part", "Room"), doc.addObject("App::Part", "Case")
    room.addObject(case)
    case.Placement = at(0, 0, 100)
    turn = at(10, 20, 30, (1, 1, 0), 37)
    case.addObject(box(doc, "Side", placement=turn))
    array(doc, "Shelves", box(doc, "Shelf", 300, 80, 10), 2, (0, 0, 200), False)
    case.addObject(doc.Shelves)
    doc.Shelf.Visibility = False
    doc.recompute()
    Import.export([room], str(tmp_path / "case.step"))  # in the frame of the exported object itself
    App.closeDocument(doc.Name)
    with opened(tmp_path / "case.step") as found:
        leaves = read_leaves(found).leaves
        sizes = sorted(round(volume(leaf)) for leaf in leaves)
        assert sizes == [240000, 240000, 800000]
        side = max(leaves, key=volume)
        axes = np.array([tuple(turn.Rotation.multVec(App.Vector(*row))) for row in np.eye(3)])
        assert extents(side, axes)[1] == pytest.approx((400, 100, 20))
        middle = turn.multVec(App.Vector(200, 50, 10))
        assert extents(side, axes)[0] == pytest.approx((middle.x, middle.y, middle.z + 100))


def test_step_in_another_unit_comes_in_millimetres(tmp_path):
    path = tmp_path / "centimetres.step"
    Part.makeBox(40, 10, 2).exportStep(str(path))
    text = path.read_text(encoding="utf-8")
    assert "SI_UNIT(.MILLI.,.METRE.)" in text
    path.write_text(text.replace("SI_UNIT(.MILLI.,.METRE.)", "SI_UNIT(.CENTI.,.METRE.)"), encoding="utf-8")
    with opened(path) as found:
        (leaf,) = read_leaves(found).leaves
        assert extents(leaf, np.eye(3))[1] == pytest.approx((400, 100, 20))


def test_brep_of_two_solids(tmp_path):
    shape = Part.makeCompound([Part.makeBox(400, 100, 20), Part.makeCylinder(20, 300)])
    shape.exportBrep(str(tmp_path / "two.brep"))
    with opened(tmp_path / "two.brep") as found:
        leaves = read_leaves(found).leaves
        assert [leaf.name for leaf in leaves] == ["two solid 1", "two solid 2"]
        assert volume(leaves[0]) == pytest.approx(800000)


def test_step_with_no_solid(tmp_path):
    Part.makePlane(100, 50).exportStep(str(tmp_path / "face.step"))
    with pytest.raises(FileError, match="no solids"):
        open_file(tmp_path / "face.step")
    (tmp_path / "hollow.step").write_text(
        "ISO-10303-21;\nHEADER;\nENDSEC;\nEND-ISO-10303-21;\n", encoding="utf-8"
    )
    with pytest.raises(FileError, match=r"hollow\.step"):
        open_file(tmp_path / "hollow.step")
    assert App.listDocuments() == {}


@pytest.mark.parametrize("path", host_documents(), ids=lambda p: f"{p.parent.name}-{p.name}")
def test_hosts_own_documents_give_an_orderly_list(path):
    try:
        with opened(path, need_solids=False) as found:
            reading = read_leaves(found, hidden=True)
            keys = [leaf.key for leaf in reading.leaves]
            assert len(keys) == len(set(keys))
            assert len({leaf.name for leaf in reading.leaves}) == len(keys)
            for leaf in reading.leaves[:40]:
                assert volume(leaf) > 0
                shape = outline(leaf)
                _, lengths = extents(leaf, np.eye(3))
                spread = np.ptp(shape.points, axis=0)
                assert (spread <= lengths + 1e-4).all()
                assert lengths.prod() >= shape.volume_mm3 * (1 - 1e-6)
                read_tags(leaf)
            for item in reading.unreadable:
                assert item.name and item.why and "failed" not in item.why, str(item)
    except FileError as error:
        assert "not an archive" in str(error)


# --- saving ------------------------------------------------------------------------------------------------


def test_save_copy_leaves_the_document_and_the_input_alone(doc, tmp_path):
    box(doc, "Board")
    path = saved(doc, tmp_path / "in.FCStd")
    content = path.read_bytes()
    with opened(path) as found:
        write_tags(found.Board, {"HeartsideSpecies": "ash"})
        assert save_copy(found, tmp_path / "out.FCStd", original=path) == tmp_path / "out.FCStd"
        assert found.FileName == str(path)
    assert path.read_bytes() == content
    assert sorted(os.listdir(tmp_path)) == ["in.FCStd", "out.FCStd"]
    with opened(tmp_path / "out.FCStd") as found:
        assert found.Board.HeartsideSpecies == "ash"


def test_save_copy_refuses_the_input_under_any_name(doc, tmp_path):
    box(doc, "Board")
    path = saved(doc, tmp_path / "in.FCStd")
    (tmp_path / "link.FCStd").symlink_to(path)
    os.link(path, tmp_path / "hard.FCStd")
    (tmp_path / "sub").mkdir()
    content = path.read_bytes()
    with opened(path) as found:
        for name in ("in.FCStd", "link.FCStd", "hard.FCStd", "sub/../in.FCStd"):
            with pytest.raises(FileError, match="was read"):
                save_copy(found, tmp_path / name, original=path, replace=True)
        with pytest.raises(FileError, match="was read"):
            save_copy(found, path, replace=True)
    assert path.read_bytes() == content


def test_save_copy_refuses_existing_files_strange_names_and_missing_folders(doc, tmp_path):
    box(doc, "Board")
    doc.recompute()
    (tmp_path / "old.FCStd").write_text("precious", encoding="utf-8")
    with pytest.raises(FileError, match="exists"):
        save_copy(doc, tmp_path / "old.FCStd")
    assert (tmp_path / "old.FCStd").read_text(encoding="utf-8") == "precious"
    save_copy(doc, tmp_path / "old.FCStd", replace=True)
    assert zipfile.is_zipfile(tmp_path / "old.FCStd")
    with pytest.raises(FileError, match="ends in"):
        save_copy(doc, tmp_path / "old.step")
    with pytest.raises(FileError, match="folder"):
        save_copy(doc, tmp_path / "none" / "x.FCStd")


def test_a_failed_save_leaves_nothing_behind(doc, tmp_path, monkeypatch):
    box(doc, "Board")
    doc.recompute()

    def no_room(handle):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("workbench_pkg.host.saving.os.fsync", no_room)
    with pytest.raises(FileError, match="No space"):
        save_copy(doc, tmp_path / "out.FCStd")
    assert os.listdir(tmp_path) == []


def test_the_windows_half_is_taken_over(doc, tmp_path):
    box(doc, "Board")
    path = saved(doc, tmp_path / "in.FCStd")
    with zipfile.ZipFile(path, "a") as archive:
        archive.writestr("GuiDocument.xml", "<Document SchemaVersion='1'/>")
        archive.writestr("DiffuseColor", b"\1\2\3")
        archive.writestr("thumbnails/Thumbnail.png", b"png")
    with opened(path) as found:
        save_copy(found, tmp_path / "out.FCStd", original=path)
    names = zipfile.ZipFile(tmp_path / "out.FCStd").namelist()
    assert names[0] == "Document.xml"
    assert names[-3:] == ["GuiDocument.xml", "DiffuseColor", "thumbnails/Thumbnail.png"]
    assert zipfile.ZipFile(tmp_path / "out.FCStd").read("DiffuseColor") == b"\1\2\3"
    with opened(tmp_path / "out.FCStd") as found:
        assert len(read_leaves(found).leaves) == 1


def test_links_to_other_files_hold_when_the_copy_lies_elsewhere(doc, tmp_path):
    (tmp_path / "shop").mkdir()
    (tmp_path / "out").mkdir()
    store = App.newDocument("Store", hidden=True)
    board = box(store, "Board")
    store.recompute()
    store.saveAs(str(tmp_path / "shop" / "store & more.FCStd"))
    doc.saveAs(str(tmp_path / "shop" / "main.FCStd"))
    link(doc, "Copy", board, at(0, 0, 5))
    path = saved(doc, tmp_path / "shop" / "main.FCStd")
    App.closeDocument(store.Name)
    with opened(path) as found:
        save_copy(found, tmp_path / "out" / "new.FCStd", original=path)
    with opened(tmp_path / "out" / "new.FCStd") as found:
        reading = read_leaves(found)
        assert [centre_of(leaf) for leaf in reading.leaves] == [(200, 50, 15)]
        assert reading.unreadable == ()


# --- the dump ----------------------------------------------------------------------------------------------


def test_dump_sees_every_kind_of_change_and_no_other(doc, tmp_path):
    board, other = box(doc, "Board"), box(doc, "Other")
    folder = doc.addObject("App::DocumentObjectGroup", "Folder")
    array(doc, "Row", board, 2, (0, 0, 100), False)
    doc.recompute()
    before = property_dump(doc)
    assert differences(before, property_dump(doc)) == []
    steps = [
        (lambda: setattr(board, "Label", "New"), "Board.label"),
        (lambda: setattr(board, "Length", 401), "property Length"),
        (lambda: setattr(board, "Visibility", False), "visible"),
        (lambda: folder.addObject(other), "Folder"),
        (lambda: board.setEditorMode("Width", 1), "property Width"),
        (lambda: board.setExpression("Height", "10 mm + 10 mm"), "expressions"),
        (lambda: board.addProperty("App::PropertyString", "Note"), "property Note"),
        (lambda: doc.addObject("App::FeaturePython", "Extra"), "Extra: new"),
        (lambda: setattr(doc.Row, "PlacementList", [at(), at(1)]), "PlacementList"),
        (lambda: setattr(doc, "Comment", "mine"), "document.property Comment"),
    ]
    for change, expected in steps:
        old = property_dump(doc)
        change()
        assert any(expected in line for line in differences(old, property_dump(doc))), expected


def test_dump_is_the_same_after_saving_and_opening(doc, tmp_path):
    three_boards(doc)
    array(doc, "Row", doc.P, 2, (0, 0, 100), True)
    cut = doc.addObject("Part::Cut", "Cut")
    cut.Base, cut.Tool = doc.P, doc.Q
    doc.recompute()
    doc.saveAs(str(tmp_path / "a.FCStd"))
    before = property_dump(doc)
    App.closeDocument(doc.Name)
    assert differences(before, property_dump(App.openDocument(str(tmp_path / "a.FCStd"), True))) == []


def test_tagging_and_removing_leaves_the_document_property_for_property(doc, tmp_path):
    boards = three_boards(doc)
    array(doc, "Row", boards[0], 2, (0, 0, 100), False)
    array(doc, "Shown", boards[1], 2, (0, 0, 100), True)
    doc.recompute()
    before = property_dump(doc)
    leaves = read_leaves(doc).leaves
    for leaf in leaves:
        write_tags(leaf.owner, {"HeartsideSpecies": "ash", "HeartsideRingAngle": 20}, leaf.element)
    assert len(differences(before, property_dump(doc))) >= 6
    for leaf in leaves:
        remove_tags(leaf.owner, leaf.element)
    assert differences(before, property_dump(doc)) == []
    assert by_name(read_leaves(doc)).keys() == {leaf.name for leaf in leaves}
