"""Tagging in the window: from the click to the properties; cancel, undo, redo, several boards, wrong entries."""

from __future__ import annotations

import json

import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.host.property_dump import differences, property_dump

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui


@pytest.fixture
def piece(main_window, doc, pump):
    """The boards of a small table; the workbench is open."""
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    boards = bench.small_table(doc)
    bench.isometric()
    pump(0.2)
    return boards


def open_panel(pump, *objects):
    """The tag panel on these objects, through the command."""
    bench.select(*objects)
    FreeCADGui.runCommand("Heartside_Tag")
    pump(0.2)
    return bench.widget("HeartsideTagPanel")


def choose(name, text):
    combo = bench.widget(name, QtWidgets.QComboBox)
    found = [i for i in range(combo.count()) if combo.itemData(i) == text]
    assert found, [combo.itemData(i) for i in range(combo.count())]
    combo.setCurrentIndex(found[0])


def choose_species(name):
    bench.choose_text(bench.widget("HeartsideSpeciesList", QtWidgets.QListWidget), name)


def enter(name, value):
    bench.widget(f"{name}Said", QtWidgets.QCheckBox).setChecked(True)
    box = bench.widget(name, QtWidgets.QAbstractSpinBox)
    if isinstance(value, str):  # as typed, with a unit
        box.findChild(QtWidgets.QLineEdit).setText(value)
    else:
        box.setValue(value)


def test_ok_writes_what_was_entered_in_one_undo_step(piece, doc, pump, shot):
    board = piece[0]
    before = property_dump(doc)
    open_panel(pump, board)
    search = bench.widget("HeartsideSpeciesSearch", QtWidgets.QLineEdit)
    search.setText("oak wh")
    choose_species("White oak, commercial")
    choose("HeartsideGrain", "x")
    choose("HeartsideShow", "z")
    choose("HeartsideHeart", "show")
    choose("HeartsideCut", "flat")
    enter("HeartsideBuilt", 8.5)
    shot("tagging")
    steps = doc.UndoCount
    bench.press("Write the tags")
    pump(0.2)
    assert not FreeCADGui.Control.activeDialog()
    assert board.HeartsideSpecies == "White oak, commercial"
    said = (board.HeartsideGrain, board.HeartsideShowFace, board.HeartsideHeart, board.HeartsideCut)
    assert said == ("x", "z", "show", "flat")
    assert board.HeartsideBuilt == 8.5
    assert doc.UndoCount == steps + 1
    after = property_dump(doc)
    doc.undo()
    assert differences(before, property_dump(doc)) == []
    doc.redo()
    assert differences(after, property_dump(doc)) == []


def test_cancel_leaves_nothing(piece, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    open_panel(pump, piece[0])
    choose_species("White oak, commercial")
    enter("HeartsideBuilt", 8.0)
    bench.press("Cancel")
    pump(0.2)
    assert not FreeCADGui.Control.activeDialog()
    assert differences(before, property_dump(doc)) == []
    assert doc.UndoCount == steps


def test_only_what_was_changed_is_written(piece, doc, pump):
    from workbench_pkg.actions.tag import tag

    tag([piece[0]], species="white oak", grain="x", built=9)
    steps = doc.UndoCount
    open_panel(pump, piece[0])
    choose("HeartsideHeart", "back")
    bench.press("Write the tags")
    assert doc.UndoCount == steps + 1
    assert piece[0].HeartsideHeart == "back"
    assert (piece[0].HeartsideSpecies, piece[0].HeartsideBuilt) == ("White oak, commercial", 9.0)


def test_ok_with_nothing_changed_makes_no_step(piece, doc, pump):
    from workbench_pkg.actions.tag import tag

    tag([piece[0]], species="white oak", grain="x", rings=30, pith=(5, -80), built=9, finish="varnish 2")
    before, steps = property_dump(doc), doc.UndoCount
    open_panel(pump, piece[0])
    bench.press("Write the tags")
    assert doc.UndoCount == steps
    assert differences(before, property_dump(doc)) == []


def test_a_fact_is_taken_back_by_saying_nothing(piece, doc, pump):
    from workbench_pkg.actions.tag import tag

    tag([piece[0]], species="white oak", cut="flat", built=9)
    open_panel(pump, piece[0])
    choose("HeartsideCut", "")
    bench.widget("HeartsideBuiltSaid", QtWidgets.QCheckBox).setChecked(False)
    bench.press("Write the tags")
    assert "HeartsideCut" not in piece[0].PropertiesList
    assert "HeartsideBuilt" not in piece[0].PropertiesList
    assert piece[0].HeartsideSpecies == "White oak, commercial"


def test_several_boards_keep_what_differs(piece, doc, pump):
    from workbench_pkg.actions.tag import tag

    tag([piece[0]], species="white oak", grain="x", built=9)
    tag([piece[1]], species="black walnut", grain="x", built=7)
    open_panel(pump, *piece[:3])
    assert "3 boards" in bench.widget("HeartsideParts", QtWidgets.QLabel).text()
    choose("HeartsideCut", "quarter")
    steps = doc.UndoCount
    bench.press("Write the tags")
    assert doc.UndoCount == steps + 1
    assert [b.HeartsideCut for b in piece[:3]] == ["quarter"] * 3
    assert [piece[0].HeartsideSpecies, piece[1].HeartsideSpecies] == [
        "White oak, commercial",
        "Walnut, black",
    ]
    assert [piece[0].HeartsideBuilt, piece[1].HeartsideBuilt] == [9.0, 7.0]
    assert "HeartsideSpecies" not in piece[2].PropertiesList


def test_lengths_are_entered_in_any_unit(piece, doc, pump):
    open_panel(pump, piece[0])
    enter("HeartsidePithAcross", "1 in")
    bench.widget("HeartsidePithThrough", QtWidgets.QAbstractSpinBox).findChild(QtWidgets.QLineEdit).setText(
        "-10 cm"
    )
    enter("HeartsideRings", "30 deg")
    pump(0.2)
    bench.press("Write the tags")
    assert list(piece[0].HeartsidePith) == pytest.approx([25.4, -100.0])
    assert piece[0].HeartsideRingAngle.Value == pytest.approx(30.0)


def test_an_unknown_species_is_told_in_the_panel_and_writes_nothing(piece, doc, pump, shot):
    before = property_dump(doc)
    open_panel(pump, piece[0])
    bench.widget("HeartsideSpeciesSearch", QtWidgets.QLineEdit).setText("wihte oak")
    shot("unknown-species")
    bench.press("Write the tags")
    pump(0.2)
    assert bench.widget("HeartsideTagPanel").isVisible()
    trouble = bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert "wihte oak" in trouble
    assert differences(before, property_dump(doc)) == []
    bench.press("Cancel")


def test_a_wrong_direction_is_told_and_writes_nothing(piece, doc, pump):
    before, steps = property_dump(doc), doc.UndoCount
    open_panel(pump, piece[0])
    choose_species("White oak, commercial")
    bench.widget("HeartsideGrain", QtWidgets.QComboBox).setEditText("lengthwise")
    bench.press("Write the tags")
    pump(0.2)
    assert "lengthwise" in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    assert differences(before, property_dump(doc)) == []
    assert doc.UndoCount == steps
    bench.press("Cancel")


def test_nothing_selected_is_told_and_then_followed(piece, doc, pump):
    open_panel(pump)
    assert "Nothing is selected" in bench.widget("HeartsideParts", QtWidgets.QLabel).text()
    choose_species("White oak, commercial")
    bench.press("Write the tags")
    pump(0.2)
    assert "no board is selected" in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    bench.select(piece[2])
    pump(0.3)
    assert "Board 3" in bench.widget("HeartsideParts", QtWidgets.QLabel).text()
    choose_species("White oak, commercial")
    bench.press("Write the tags")
    assert piece[2].HeartsideSpecies == "White oak, commercial"


def test_search_narrows_the_list_by_any_name(piece, pump):
    open_panel(pump, piece[0])
    rows = bench.widget("HeartsideSpeciesList", QtWidgets.QListWidget)
    search = bench.widget("HeartsideSpeciesSearch", QtWidgets.QLineEdit)

    def shown():
        return bench.shown_texts(rows)

    everything = len(shown())
    search.setText("quercus")
    assert 0 < len(shown()) < everything / 4
    search.setText("quercus alba")
    assert "White oak, commercial" in shown()
    choose_species("White oak, commercial")
    about = bench.widget("HeartsideSpeciesAbout", QtWidgets.QLabel).text()
    assert "0.365" in about and "0.180" in about  # FPL-GTR-190 (2010), table 13-5: C_T 0.00365, C_R 0.00180
    assert "FPL-GTR-190" in about
    search.clear()
    assert len(shown()) == everything


def test_the_instance_of_a_link_is_tagged_not_its_master(piece, doc, pump):
    link = doc.addObject("App::Link", "Twin")
    link.LinkedObject = piece[0]
    link.Placement.Base.z = 500
    doc.recompute()
    open_panel(pump, link)
    choose_species("Walnut, black")
    bench.press("Write the tags")
    assert "HeartsideSpecies" in link.PropertiesList
    assert "HeartsideSpecies" not in piece[0].PropertiesList


def test_a_container_stands_for_the_boards_in_it(piece, doc, pump):
    part = doc.addObject("App::Part", "Top")
    for board in piece[:2]:
        part.addObject(board)
    doc.recompute()
    open_panel(pump, part)
    choose_species("Walnut, black")
    bench.press("Write the tags")
    assert [b.HeartsideSpecies for b in piece[:2]] == ["Walnut, black"] * 2
    assert "HeartsideSpecies" not in part.PropertiesList


def test_taking_tags_off_is_one_step_and_says_when_nothing_is_selected(piece, doc, pump):
    before = property_dump(doc)
    bench.tag_all(doc)
    tagged = property_dump(doc)
    bench.select(*doc.findObjects("Part::Box"))
    FreeCADGui.runCommand("Heartside_Untag")
    assert differences(before, property_dump(doc)) == []
    doc.undo()
    assert differences(tagged, property_dump(doc)) == []
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.runCommand("Heartside_Untag")
    pump(0.2)
    (text,) = bench.problems()
    assert "No board is selected" in text
    assert differences(tagged, property_dump(doc)) == []


def test_escape_closes_without_a_trace(piece, doc, pump):
    from PySide import QtCore

    before = property_dump(doc)
    panel = open_panel(pump, piece[0])
    choose_species("White oak, commercial")
    event = QtGui.QKeyEvent(QtCore.QEvent.KeyPress, QtCore.Qt.Key_Escape, QtCore.Qt.NoModifier)
    QtWidgets.QApplication.sendEvent(panel, event)
    pump(0.3)
    assert not FreeCADGui.Control.activeDialog()
    assert differences(before, property_dump(doc)) == []


def test_what_a_label_says_is_shown_and_not_written(piece, doc, pump):
    piece[0].Label = "Board 1 wood{white oak; grain x; cut quarter; built 8}"
    before, steps = property_dump(doc), doc.UndoCount
    open_panel(pump, piece[0])
    assert bench.widget("HeartsideCut", QtWidgets.QComboBox).currentText().startswith("quarter")
    assert bench.widget("HeartsideBuilt", QtWidgets.QAbstractSpinBox).value() == 8
    bench.press("Write the tags")
    assert doc.UndoCount == steps and differences(before, property_dump(doc)) == []


def test_elements_of_a_link_array_are_tagged_in_one_step(piece, doc, pump):
    array = doc.addObject("App::Link", "Slats")
    array.LinkedObject = piece[0]
    array.ShowElement = False
    array.ElementCount = 3
    doc.recompute()
    steps = doc.UndoCount
    open_panel(pump, array)
    choose("HeartsideCut", "rift")
    bench.press("Write the tags")
    pump(0.2)
    assert doc.UndoCount == steps + 1
    said = [facts["HeartsideCut"] for facts in json.loads(array.HeartsideElements).values()]
    assert said == ["rift"] * 3
    doc.undo()
    assert "HeartsideElements" not in array.PropertiesList
