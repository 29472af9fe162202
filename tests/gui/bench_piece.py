"""What the window tests build and press: a small table of our own, and the hands of a user."""

from __future__ import annotations

import gc
import time
from types import ModuleType
from typing import Any

import FreeCAD
import FreeCADGui
import pytest
from PySide import QtCore, QtGui

try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

WORKBENCH = "HeartsideWorkbench"
PATIENCE_S = 10
BOARDS = 5


def small_table(doc: FreeCAD.Document) -> list[FreeCAD.DocumentObject]:
    """A top of five boards on four legs; the boards are returned. Nothing is tagged."""
    boards = []
    for i in range(BOARDS):
        board = doc.addObject("Part::Box", f"Board{i + 1}")
        board.Label = f"Board {i + 1}"
        board.Length, board.Width, board.Height = 1200, 130, 26
        board.Placement.Base = FreeCAD.Vector(0, 130 * i, 700)
        board.ViewObject.ShapeColor = (0.78, 0.62, 0.42)
        boards.append(board)
    for i, (x, y) in enumerate(((40, 40), (1100, 40), (40, 550), (1100, 550))):
        leg = doc.addObject("Part::Box", f"Leg{i + 1}")
        leg.Label = f"Leg {i + 1}"
        leg.Length, leg.Width, leg.Height = 60, 60, 700
        leg.Placement.Base = FreeCAD.Vector(x, y, 0)
        leg.ViewObject.ShapeColor = (0.62, 0.47, 0.3)
    doc.recompute()
    return boards


def tag_all(doc: FreeCAD.Document) -> None:
    """Say enough of every part to be worked out."""
    from workbench_pkg.actions.tag import tag

    parts = {o.Name: o for o in doc.Objects if o.TypeId == "Part::Box"}
    boards = [o for name, o in parts.items() if name.startswith("Board")]
    legs = [o for name, o in parts.items() if name.startswith("Leg")]
    tag(boards, species="white oak", grain="x", show="z", cut="flat", heart="show", built=9)
    tag(legs, species="white oak", grain="z", show="x", cut="rift", built=9)


def isometric() -> None:
    """The whole model from the usual corner, without the host's gliding camera."""
    view = FreeCADGui.ActiveDocument.ActiveView
    view.setAnimationEnabled(False)
    view.viewIsometric()
    view.fitAll()


def widget(name: str, kind: type = QtWidgets.QWidget) -> QtWidgets.QWidget:
    """A widget of the window by its name; on a busy machine it may take a moment to come. Fails where none does."""
    until = time.monotonic() + PATIENCE_S
    while (found := FreeCADGui.getMainWindow().findChild(kind, name)) is None:
        assert time.monotonic() < until, f"no widget {name}; {state()}"
        QtWidgets.QApplication.processEvents()
        time.sleep(0.02)
    return found


def kept_panels(monkeypatch: pytest.MonkeyPatch, module: ModuleType, name: str) -> list[Any]:
    """The panels of a class of a module that are made from here on, in order."""
    made: list[Any] = []

    class Kept(getattr(module, name)):
        def __init__(self, *arguments: object, **named: object) -> None:
            super().__init__(*arguments, **named)
            made.append(self)

    monkeypatch.setattr(module, name, Kept)
    return made


def state() -> str:
    """What stands open in the window, for a test that does not find what it waits for."""
    panel = FreeCADGui.Control.activeDialog()
    boxes = [box.text() for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QMessageBox)]
    return f"a task panel is open: {panel}; boxes: {boxes}; document: {FreeCAD.ActiveDocument}"


def button_boxes() -> list[QtWidgets.QDialogButtonBox]:
    """The rows of buttons that can be seen; what Python still holds of closed panels is let go of first.

    The binding knows a widget by its address, or by that of its second half. What it still holds of a row that is gone,
    the host's own call for its buttons for one, it would take for a new row there, and to ask it anything would end the
    host. So every row that Python knows is forgotten, and what comes then and is none is forgotten too.
    """
    gc.collect()
    for known in gc.get_objects():
        if type(known) is QtWidgets.QDialogButtonBox:
            let_go(known)
    for _ in range(50):
        boxes = FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        gone = [box for box in boxes if not isinstance(box, QtWidgets.QDialogButtonBox)]
        if not gone:
            return [box for box in boxes if box.isVisible()]
        for box in gone:
            let_go(box)
    raise AssertionError(f"Python holds {len(gone)} widgets that are gone for rows of buttons; {state()}")


def press(text: str) -> None:
    """Click the button of the open task panel that says this."""
    boxes = button_boxes()
    buttons = [button for box in boxes for button in box.buttons()]
    said = [button.text().replace("&", "") for button in buttons]
    try:
        assert text in said, f"no button {text!r} to press; there are {said}"
        buttons[said.index(text)].click()
    finally:
        for gone in (*buttons, *boxes):
            let_go(gone)


def let_go(widget: QtWidgets.QWidget) -> None:
    """Forget the Python side of a widget that the host may delete: the binding would take what is made at its address
    for it.
    """
    try:
        import shiboken2 as binding
    except ImportError:
        import shiboken6 as binding
    binding.invalidate(widget)


def problems() -> list[str]:
    """Texts of the boxes that tell what went wrong; they are closed."""
    texts = []
    for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QMessageBox, "HeartsideProblem"):
        if box.isVisible():
            texts.append(box.text())
            box.close()
    return texts


def select(*objects: FreeCAD.DocumentObject) -> None:
    """Select these and nothing else."""
    FreeCADGui.Selection.clearSelection()
    for obj in objects:
        FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)


def click(target: QtWidgets.QWidget) -> None:
    """A true press and release of the left button in the middle of a widget."""
    middle = QtCore.QPoint(target.width() // 2, target.height() // 2)
    for kind in (QtCore.QEvent.MouseButtonPress, QtCore.QEvent.MouseButtonRelease):
        event = QtGui.QMouseEvent(
            kind,
            QtCore.QPointF(middle),
            QtCore.QPointF(target.mapToGlobal(middle)),
            QtCore.Qt.LeftButton,
            QtCore.Qt.LeftButton if kind == QtCore.QEvent.MouseButtonPress else QtCore.Qt.NoButton,
            QtCore.Qt.NoModifier,
        )
        QtWidgets.QApplication.sendEvent(target, event)


# A list's item objects are never asked for: the binding of the older hosts may hand out one of a list that is gone.


def texts(view: QtWidgets.QAbstractItemView, column: int = 0) -> list[str]:
    """What each row of a list or table shows in a column, hidden rows too."""
    model = view.model()
    return [model.index(row, column).data() for row in range(model.rowCount())]


def shown_texts(view: QtWidgets.QListView) -> list[str]:
    """What the rows of a list that are not hidden show."""
    return [text for row, text in enumerate(texts(view)) if not view.isRowHidden(row)]


def choose_text(view: QtWidgets.QAbstractItemView, text: str, column: int = 0) -> int:
    """Make the one row that begins with this text the current one; its number."""
    (row,) = [i for i, each in enumerate(texts(view, column)) if each.startswith(text)]
    view.setCurrentIndex(view.model().index(row, column))
    return row
