"""Every command tried where it cannot do much: it says what is missing and what to do, and leaves nothing behind."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtGui

from tests.gui import bench_piece as bench
from workbench_pkg.commands import registry
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.panels import file_asking, working

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

COMMANDS = tuple(command.name for module in registry.MODULES for command in module.COMMANDS)
PANEL, WINDOW, STEP, BOX = "panel", "window", "undo step", "box"
UNTAGGED = {
    "Heartside_Tag": PANEL,
    "Heartside_Untag": BOX,
    "Heartside_CopyWood": PANEL,
    "Heartside_Accept": STEP,
    "Heartside_Hints": PANEL,
    "Heartside_Year": PANEL,
    "Heartside_Report": WINDOW,
    "Heartside_Annotate": STEP,
    "Heartside_Remove": BOX,
    "Heartside_Joints": PANEL,
    "Heartside_LayBoards": WINDOW,
    "Heartside_GapsToday": PANEL,
    "Heartside_Hold": PANEL,
    "Heartside_CutSlots": BOX,
    "Heartside_TakeHardware": BOX,
    "Heartside_SeeYear": BOX,
    "Heartside_Sheet": PANEL,
    "Heartside_Template": BOX,
    "Heartside_Schedule": STEP,
    "Heartside_DrawTop": BOX,
    "Heartside_ExportCut": BOX,
    "Heartside_RemovePapers": BOX,
}
"""What each command gives for a table of which nothing is said."""

REFUSED = {
    "Heartside_Tag": "no board is selected",
    "Heartside_CopyWood": "nothing to copy to",
    "Heartside_Hints": "nothing is ticked",
    "Heartside_Hold": "not said yet of 5 of its 5 boards",
}
"""What panels say whose first button is pressed before anything is entered."""


def empty(doc):
    """Nothing at all."""


def hidden(doc):
    bench.small_table(doc)
    for obj in doc.Objects:
        obj.Visibility = False


def no_solids(doc):
    import Mesh
    import Part
    import Sketcher  # noqa: F401  (its objects are made by name)

    sketch = doc.addObject("Sketcher::SketchObject", "Sketch")
    sketch.addGeometry(Part.LineSegment(FreeCAD.Vector(0, 0, 0), FreeCAD.Vector(100, 0, 0)), False)
    doc.addObject("Mesh::Feature", "Mesh").Mesh = Mesh.createBox(100.0, 200.0, 20.0)
    doc.recompute()


NOTHING_SHOWN = {"empty": (empty, "This document is empty"), "hidden": (hidden, "9 are hidden"),
                 "no solids": (no_solids, "There is no solid")}  # fmt: skip
OF_ITS_OWN = {
    "Heartside_Remove": "no answer",
    "Heartside_CutSlots": "no hardware",
    "Heartside_TakeHardware": "no hardware",
    "Heartside_RemovePapers": "no schedule",
}
"""What commands say first that take something out, whatever the document holds."""


@pytest.fixture
def tried(main_window, doc, pump, wait_until, monkeypatch):
    """tried(command): carried out to its end; gives PANEL, WINDOW, STEP, BOX or "", and the texts of the boxes."""
    asked = []
    monkeypatch.setattr(file_asking, "ask_new_file", lambda *_: asked.append(1))
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    for name in ("HeartsideReport", "HeartsideArrangement"):
        for window in main_window.findChildren(QtWidgets.QDockWidget, name):
            window.close()

    def run(name):
        steps = doc.UndoCount
        FreeCADGui.runCommand(name)
        pump(0.2)
        wait_until(lambda: not working.is_busy(), 300)
        pump(0.2)
        assert not asked, "no file is asked for before it is clear that there is something to write"
        texts = bench.problems()
        docks = [each for each in main_window.findChildren(QtWidgets.QDockWidget) if is_ours(each)]
        shown = {
            BOX: bool(texts),
            PANEL: bool(FreeCADGui.Control.activeDialog()),
            WINDOW: bool(docks),
            STEP: doc.UndoCount > steps,
        }
        found = [kind for kind, there in shown.items() if there]
        assert len(found) <= 1, (found, texts)
        return (found or [""])[0], texts

    yield run
    for name in ("HeartsideReport", "HeartsideArrangement"):
        for window in main_window.findChildren(QtWidgets.QDockWidget, name):
            window.close()


def is_ours(dock):
    return dock.objectName() in ("HeartsideReport", "HeartsideArrangement") and dock.isVisible()


def one_sentence(texts):
    """What the one box says: what is missing, and what to do."""
    (text,) = texts
    missing, _, todo = text.partition(" To do: ")
    assert missing and todo, text
    assert "Error" not in text and len(text) < 250, text
    return text


def test_the_list_is_whole():
    assert set(UNTAGGED) == set(COMMANDS)


@pytest.mark.parametrize("name", COMMANDS)
def test_without_a_document_nothing_happens(name, main_window, pump):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    assert FreeCAD.ActiveDocument is None
    FreeCADGui.runCommand(name)
    pump(0.05)
    assert not bench.problems() and not FreeCADGui.Control.activeDialog()


@pytest.mark.parametrize("name", COMMANDS)
@pytest.mark.parametrize("kind", NOTHING_SHOWN)
def test_where_no_solid_is_shown(kind, name, tried, doc, pump):
    make, words = NOTHING_SHOWN[kind]
    make(doc)
    before, steps = property_dump(doc), doc.UndoCount
    gave, texts = tried(name)
    if name == "Heartside_Year":  # the air may be chosen before anything is drawn
        assert gave == PANEL
        bench.press("Cancel")
        pump(0.1)
    else:
        assert gave == BOX
        assert OF_ITS_OWN.get(name, words) in one_sentence(texts)
    assert not FreeCADGui.Control.activeDialog()
    assert doc.UndoCount == steps and differences(before, property_dump(doc)) == []


@pytest.mark.parametrize("name", COMMANDS)
def test_where_nothing_is_said_of_the_wood(name, tried, doc, pump, wait_until):
    bench.small_table(doc)
    before, steps = property_dump(doc), doc.UndoCount
    gave, texts = tried(name)
    assert gave == UNTAGGED[name], texts
    if gave == STEP:
        assert doc.UndoCount == steps + 1
        doc.undo()
        assert differences(before, property_dump(doc)) == []
        return
    if gave == BOX:
        one_sentence(texts)
    if name in REFUSED:
        accept_button().click()
        pump(0.2)
        assert REFUSED[name] in bench.widget("HeartsideTrouble", QtWidgets.QLabel).text()
    if gave == PANEL:
        box = buttons()
        button = box.button(QtWidgets.QDialogButtonBox.Cancel) or box.button(QtWidgets.QDialogButtonBox.Close)
        button.click()
        for gone in (button, box):
            bench.let_go(gone)
        wait_until(lambda: not FreeCADGui.Control.activeDialog(), 10)
    assert doc.UndoCount == steps and differences(before, property_dump(doc)) == []


def buttons():
    """The row of buttons of the open task panel."""
    return bench.button_boxes()[0]


def accept_button():
    return buttons().button(QtWidgets.QDialogButtonBox.Ok)


@pytest.mark.parametrize("name", [name for name, gives in UNTAGGED.items() if gives == PANEL])
def test_the_button_that_accepts_says_what_it_does(name, tried, doc):
    bench.small_table(doc)
    tried(name)
    button = accept_button()
    assert button is None or button.text().replace("&", "") not in ("OK", "Ok", "")


def test_a_hidden_board_that_is_selected_can_be_tagged(tried, doc):
    hidden(doc)
    bench.select(doc.Board1)
    assert tried("Heartside_Tag") == (PANEL, [])


def test_a_board_of_which_nothing_is_said_has_no_tags_to_take_off(tried, doc):
    board = bench.small_table(doc)[0]
    bench.select(board)
    steps = doc.UndoCount
    gave, texts = tried("Heartside_Untag")
    assert gave == BOX and "Nothing is said" in one_sentence(texts)
    assert doc.UndoCount == steps


def test_gaps_of_untold_wood_are_not_called_still(tried, doc):
    bench.small_table(doc)
    tried("Heartside_GapsToday")
    words = bench.widget("HeartsideTodayState", QtWidgets.QLabel).text()
    assert "9 of 9 parts" in words and "Tag wood" in words


@pytest.mark.parametrize(
    "name", ["Heartside_Tag", "Heartside_Hold", "Heartside_GapsToday", "Heartside_LayBoards"]
)
def test_pictures(name, tried, doc, shot, pump):
    bench.small_table(doc)
    bench.isometric()
    tried(name)
    if name == "Heartside_Hold":
        accept_button().click()
    shot(f"first-try-{name}")


def test_picture_of_a_box(main_window, doc, pump, shot, wait_until):
    FreeCADGui.activateWorkbench(bench.WORKBENCH)
    bench.small_table(doc)
    bench.isometric()
    FreeCADGui.runCommand("Heartside_DrawTop")
    wait_until(lambda: not working.is_busy(), 300)
    shot("first-try-box")
    one_sentence(bench.problems())
