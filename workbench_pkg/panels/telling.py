"""How the window tells the user something: in the status line what went well, in a box that blocks nothing the rest."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from workbench_pkg.host.qt import QtCore, QtWidgets

translate = App.Qt.translate
BOX = "HeartsideProblem"
_SHOWN_MS = 8000


def told(text: str) -> None:
    """Say in the status line that something was done."""
    Gui.getMainWindow().statusBar().showMessage(text, _SHOWN_MS)


def explain(widget: Any, text: str) -> None:
    """Let a widget say what it is for: as its tip, to "What's this?", and to a screen reader."""
    widget.setToolTip(text)
    widget.setWhatsThis(text)
    widget.setAccessibleDescription(text)


def problem(text: str) -> QtWidgets.QMessageBox:
    """Show what is wrong and what to do, without holding up the window."""
    box = QtWidgets.QMessageBox(Gui.getMainWindow())
    box.setObjectName(BOX)
    box.setWindowTitle("Heartside")
    box.setIcon(QtWidgets.QMessageBox.Warning)
    box.setText(text)
    box.setWindowModality(QtCore.Qt.NonModal)
    box.setAttribute(QtCore.Qt.WA_DeleteOnClose)
    box.show()
    App.Console.PrintWarning(f"Heartside: {text}\n")
    return box


def attempt(what: Callable[[], object], trouble: QtWidgets.QLabel) -> bool:
    """Do something that a panel was asked for; whether it was done. What is wrong with it stands in the panel."""
    try:
        what()
    except HeartsideError as error:
        trouble.setText(str(error))
    except Exception as error:
        trouble.setText(unexpected(error))
    else:
        return True
    return False


def unexpected(error: BaseException) -> str:
    """Words for an error that nobody foresaw."""
    words = translate("Heartside", "That did not work: {kind}: {text}. Nothing was changed.")
    return words.format(kind=type(error).__name__, text=error)


def plain_label(name: str, bold: bool = False) -> QtWidgets.QLabel:
    """A label that wraps and takes nothing in its text for markup."""
    label = QtWidgets.QLabel()
    label.setObjectName(name)
    label.setWordWrap(True)
    label.setTextFormat(QtCore.Qt.PlainText)
    if bold:
        label.setStyleSheet("font-weight: bold")
    return label
