"""What is no board, what cannot be read, how boards are named and addressed, and how the selection finds them."""

from __future__ import annotations

import FreeCAD as App
import Part
from bench import V, array, at, box, centre_of, link

from workbench_pkg.host.leaves import read_leaves


def names(doc, hidden=False):
    return [leaf.name for leaf in read_leaves(doc, hidden).leaves]


def centres(doc):
    return {leaf.name: centre_of(leaf) for leaf in read_leaves(doc).leaves}


def test_our_own_results_are_never_boards_and_use_nothing_up(doc):
    board = box(doc, "Board")
    ghost = link(doc, "Ghost", board)
    ghost.addProperty("App::PropertyString", "HeartsideKind").HeartsideKind = "ghost"
    swollen = box(doc, "Swollen")
    swollen.addProperty("App::PropertyString", "HeartsideKind").HeartsideKind = "ghost"
    board.Visibility = False
    doc.recompute()
    assert names(doc, hidden=True) == ["Board"]


def test_analysis_object_with_a_link_does_not_hide_a_board(doc):
    board = box(doc, "Board")
    study = doc.addObject("App::FeaturePython", "Study")
    study.addProperty("App::PropertyLink", "Watches").Watches = board
    doc.recompute()
    assert names(doc) == ["Board"]


def test_names_of_equal_boards_differ(doc):
    for i in range(2):
        box(doc, f"Leg{i}").Label = "Leg"
    doc.recompute()
    found = names(doc)
    assert len(set(found)) == 2


def test_what_cannot_be_read_is_listed_with_its_reason(doc):
    import Mesh

    box(doc, "Good")
    broken = doc.addObject("Part::Cut", "Broken")
    broken.Base = doc.addObject("Part::Feature", "Nothing")
    link(doc, "Loose", None)
    mesh = doc.addObject("Mesh::Feature", "Scan")
    mesh.Mesh = Mesh.createBox(10, 10, 10)
    surface = doc.addObject("Part::Feature", "Skin")
    surface.Shape = Part.Shell(Part.makeBox(10, 10, 10).Faces[:4])
    link(doc, "Flat", doc.Good, ScaleVector=V(1, 1, 0))
    doc.addObject("PartDesign::Body", "Empty")
    doc.recompute()
    reading = read_leaves(doc)
    assert "Good" in [leaf.name for leaf in reading.leaves]
    why = {item.name: item.why for item in reading.unreadable}
    assert "broken" in why["Broken"]
    assert "links to nothing" in why["Loose"]
    assert "mesh" in why["Scan"]
    assert "no solid" in why["Skin"]
    assert "empty" in why["Empty"]
    assert "Flat" not in [leaf.name for leaf in reading.leaves]
    assert all(item.why and item.key and item.visible for item in reading.unreadable)
    broken.Visibility = False
    assert "Broken" not in [item.name for item in read_leaves(doc).unreadable]
    hidden = [item.name for item in read_leaves(doc, hidden=True).unreadable if not item.visible]
    assert "Broken" in hidden


def test_missing_external_file_is_listed_and_the_rest_read(doc, tmp_path):
    store = App.newDocument("Store", hidden=True)
    board = box(store, "Board", placement=at(3))
    store.recompute()
    store.saveAs(str(tmp_path / "store.FCStd"))
    box(doc, "Own")
    doc.saveAs(str(tmp_path / "main.FCStd"))
    link(doc, "Far", board, at(0, 0, 100))
    doc.recompute()
    assert centres(doc) == {"Own": (200, 50, 10), "Far": (200, 50, 110)}
    doc.save()
    App.closeDocument(doc.Name)
    App.closeDocument(store.Name)
    (tmp_path / "store.FCStd").rename(tmp_path / "elsewhere.FCStd")
    again = App.openDocument(str(tmp_path / "main.FCStd"), True)
    reading = read_leaves(again)
    assert [leaf.name for leaf in reading.leaves] == ["Own"]
    assert [item.name for item in reading.unreadable] == ["Far"]
    assert "store.FCStd" in reading.unreadable[0].why


def test_keys_survive_saving_under_another_name(doc, tmp_path):
    part = doc.addObject("App::Part", "Case")
    part.addObject(box(doc, "Side"))
    array(doc, "Shelves", box(doc, "Shelf"), 2, (0, 0, 300), True)
    doc.recompute()
    before = [leaf.key for leaf in read_leaves(doc).leaves]
    doc.saveAs(str(tmp_path / "another name.FCStd"))
    App.closeDocument(doc.Name)
    again = App.openDocument(str(tmp_path / "another name.FCStd"), True)
    assert [leaf.key for leaf in read_leaves(again).leaves] == before


def test_find_answers_for_what_the_selection_names(doc):
    case = doc.addObject("App::Part", "Case")
    case.addObject(box(doc, "Side"))
    case.addObject(box(doc, "Back"))
    link(doc, "Second", case, at(0, 600))
    folder = doc.addObject("App::DocumentObjectGroup", "Folder")
    folder.addObject(box(doc, "Top"))
    doc.recompute()
    reading = read_leaves(doc)

    def keys(obj, sub=""):
        return {leaf.key for leaf in reading.find(obj, sub)}

    assert keys(case) == {"Case.Side/0", "Case.Back/0"}
    assert keys(case, "Side.Face3") == {"Case.Side/0"}
    assert keys(doc.Second, "Back.Edge1") == {"Second.Back/0"}
    assert keys(doc.Side) == {"Case.Side/0", "Second.Side/0"}
    assert keys(doc.Top, "Face1") == {"Top/0"}
    assert keys(folder) == {"Top/0"}
    assert keys(folder, "Top.Face1") == {"Top/0"}
