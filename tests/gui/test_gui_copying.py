"""Copying wood, accepting what was inferred, taking the hints of the model: from click to properties and back."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump

try:
    from PySide import QtWidgets
except ImportError:
    from PySide import QtGui as QtWidgets

OAK = "White oak, commercial"


@pytest.fixture
def piece(main_window, doc, pump):
    """The boards of a small table; nothing is tagged."""
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.isometric()
    pump(0.2)
    return boards


def run(name, pump):
    FreeCADGui.runCommand(name)
    pump(0.2)


def label(name):
    return bench.widget(name, QtWidgets.QLabel).text()


def test_wood_is_copied_from_the_first_board_to_those_clicked_after_it(piece, doc, pump, shot):
    from workbench_pkg.actions.tag import tag

    tag([piece[0]], species="white oak", grain="x", cut="quarter", pith=(3, -80), finish="oil 2", built=8.5)
    before, steps = property_dump(doc), doc.UndoCount
    bench.select(piece[0])
    run("Heartside_CopyWood", pump)
    assert "Board 1" in label("HeartsideCopyFrom") and OAK in label("HeartsideCopySays")
    bench.select(piece[1], doc.Leg1)
    pump(0.3)
    assert "2" in label("HeartsideCopyTo")
    shot("copy-wood")
    bench.press("Copy the wood")
    pump(0.2)
    for obj in (piece[1], doc.Leg1):
        assert (obj.HeartsideSpecies, obj.HeartsideFinish, obj.HeartsideBuilt) == (OAK, "oil 2", 8.5)
        assert not {"HeartsideCut", "HeartsidePith", "HeartsideGrain"} & set(obj.PropertiesList)
    assert doc.UndoCount == steps + 1
    after = property_dump(doc)
    doc.undo()
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    assert differences(after, property_dump(doc)) == []


def test_how_it_lies_is_copied_on_request(piece, doc, pump):
    from workbench_pkg.actions.tag import tag

    tag([piece[0]], species="white oak", grain="x", show="z", pith=(3, -80), rings=20)
    bench.select(piece[0])
    run("Heartside_CopyWood", pump)
    for name in ("HeartsideCopyCut", "HeartsideCopyLie"):
        bench.widget(name, QtWidgets.QCheckBox).setChecked(True)
    bench.select(piece[1])
    pump(0.3)
    bench.press("Copy the wood")
    assert (piece[1].HeartsideGrain, piece[1].HeartsideShowFace) == ("x", "z")
    assert tuple(piece[1].HeartsidePith) == pytest.approx((3, -80), abs=1e-9)
    assert piece[1].HeartsideRingAngle.Value == pytest.approx(20)


def test_what_a_label_says_is_copied_too(piece, doc, pump):
    piece[0].Label = "Board 1 wood{black walnut; built 7}"
    bench.select(piece[0])
    run("Heartside_CopyWood", pump)
    bench.select(piece[1])
    pump(0.3)
    bench.press("Copy the wood")
    assert (piece[1].HeartsideSpecies, piece[1].HeartsideBuilt) == ("Walnut, black", 7.0)
    assert "HeartsideSpecies" not in piece[0].PropertiesList


def test_copying_tells_what_is_wrong_and_cancel_leaves_nothing(piece, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    FreeCADGui.Selection.clearSelection()
    run("Heartside_CopyWood", pump)
    bench.press("Copy the wood")
    assert "nothing to copy to" in label("HeartsideTrouble")
    bench.select(piece[0])
    pump(0.3)
    bench.select(piece[1])
    pump(0.3)
    bench.press("Copy the wood")
    assert "says nothing of its wood" in label("HeartsideTrouble")
    bench.press("Cancel")
    pump(0.2)
    assert not FreeCADGui.Control.activeDialog()
    assert differences(before, property_dump(doc)) == [] and doc.UndoCount == steps


def test_accepting_makes_what_was_inferred_said_in_one_step(piece, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    bench.select(piece[0], doc.Leg1)
    run("Heartside_Accept", pump)
    assert piece[0].HeartsideGrain.lstrip("-") == "x" and piece[0].HeartsideShowFace == "z"
    assert doc.Leg1.HeartsideGrain.lstrip("-") == "z"
    assert "HeartsideGrain" not in piece[1].PropertiesList
    assert doc.UndoCount == steps + 1
    doc.undo()
    assert differences(before, property_dump(doc)) == []
    FreeCADGui.Selection.clearSelection()
    run("Heartside_Accept", pump)
    assert all("HeartsideGrain" in obj.PropertiesList for obj in doc.findObjects("Part::Box"))
    run("Heartside_Accept", pump)
    (text,) = bench.problems()
    assert "Nothing was inferred" in text


def give_card(doc, obj, name, host_version):
    """Put a material card of this name on an object, as the host's own commands do."""
    if host_version >= (1, 0):
        import Materials

        card = Materials.Material()
        card.Name = name
        obj.ShapeMaterial = card
    else:
        card = doc.addObject("App::MaterialObjectPython", "Card")
        card.Material = {"Name": name}
        obj.addProperty("App::PropertyLink", "Material", "Component", "")
        obj.Material = card


def test_a_material_card_is_a_hint_until_it_is_taken(piece, doc, pump, shot, host_version):
    give_card(doc, piece[0], "Black walnut", host_version)
    give_card(doc, piece[1], "Unobtainium", host_version)
    give_card(doc, piece[2], "oak", host_version)
    doc.recompute()
    from workbench_pkg.actions.reading import read_piece

    assert read_piece(doc).parts[0].species.value is None
    before, steps = property_dump(doc), doc.UndoCount
    run("Heartside_Hints", pump)
    rows = bench.widget("HeartsideHintsList", QtWidgets.QListWidget)
    texts = bench.texts(rows)
    assert any("Board 1" in t and "Black walnut" in t and "→ Walnut, black" in t for t in texts)
    assert any("Board 2" in t and "no wood of that name" in t for t in texts)
    assert sum("Board 3" in t and "→" in t for t in texts) > 1, "a name of several woods offers each"
    bench.press("Take the hints")
    assert "nothing is ticked" in label("HeartsideTrouble")
    assert differences(before, property_dump(doc)) == [] and doc.UndoCount == steps
    tick(rows, "Board 1")
    shot("hints")
    bench.press("Take the hints")
    assert piece[0].HeartsideSpecies == "Walnut, black" and doc.UndoCount == steps + 1
    doc.undo()
    assert differences(before, property_dump(doc)) == []


def tick(rows, beginning):
    from PySide import QtCore

    state = QtCore.Qt.Checked
    (row,) = [i for i, text in enumerate(bench.texts(rows)) if text.startswith(beginning)]
    rows.model().setData(rows.model().index(row, 0), getattr(state, "value", state), QtCore.Qt.CheckStateRole)


def test_the_card_stands_in_the_tag_panel_as_a_hint(piece, doc, pump, shot, host_version):
    give_card(doc, piece[0], "Black walnut", host_version)
    doc.recompute()
    bench.select(piece[0])
    run("Heartside_Tag", pump)
    shown = {
        bench.widget(f"HeartsideKnown{i}", QtWidgets.QLabel).text(): i
        for i in range(9)
        if bench.widget(f"HeartsideKnown{i}", QtWidgets.QLabel).isVisibleTo(bench.widget("HeartsideKnown"))
    }
    (row,) = [i for text, i in shown.items() if text.startswith("Hint")]
    shot("hint-in-panel")
    bench.widget(f"HeartsideAccept{row}", QtWidgets.QPushButton).click()
    assert "HeartsideSpecies" not in piece[0].PropertiesList
    bench.press("Write the tags")
    assert piece[0].HeartsideSpecies == "Walnut, black"


def test_an_assembly_joint_is_a_hint_until_it_is_taken(main_window, doc, pump, shot, host_version):
    if host_version < (1, 0):
        pytest.skip("this host has no assemblies")
    import JointObject

    from workbench_pkg.objects.joints import kept_joints

    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    assembly = doc.addObject("Assembly::AssemblyObject", "Assembly")
    group = assembly.newObject("Assembly::JointGroup", "Joints")
    for name, at in (("Side", 0), ("Runner", 30), ("Post", 300)):
        box = assembly.newObject("Part::Box", name)
        box.Length, box.Width, box.Height = 20, 400, 60
        box.Placement.Base.x = at
    doc.recompute()
    for kind, one, other in (("Slider", "Side", "Runner"), ("Fixed", "Side", "Post")):
        joint = group.newObject("App::FeaturePython", f"{kind}Joint")
        JointObject.Joint(joint, JointObject.JointTypes.index(kind))
        joint.Reference1 = [assembly, [f"{one}.Face2", f"{one}.Vertex5"]]
        joint.Reference2 = [assembly, [f"{other}.Face1", f"{other}.Vertex1"]]
    steps = doc.UndoCount
    run("Heartside_Hints", pump)
    rows = bench.widget("HeartsideHintsList", QtWidgets.QListWidget)
    texts = bench.texts(rows)
    assert any("Slider" in t and "→ slides" in t for t in texts)
    assert any("Fixed" in t and "tells nothing" in t for t in texts)
    shot("hints-of-an-assembly")
    tick(rows, "Side and Runner")
    bench.press("Take the hints")
    ((pair, kind),) = kept_joints(doc).items()
    assert kind == "slides" and {key.split(".")[-1].split("/")[0] for key in pair} == {"Side", "Runner"}
    assert doc.UndoCount == steps + 1
    doc.undo()
    assert kept_joints(doc) == {}
    assert FreeCAD.ActiveDocument == doc
