"""What task panels share that write when they are accepted: their two buttons, and how they end."""

from __future__ import annotations

from typing import Any, Protocol

import FreeCADGui as Gui

from workbench_pkg.host.qt import QtWidgets, enum_value
from workbench_pkg.panels.season_watch import SeasonWatch


class Closable(Protocol):
    """What is there as long as the panel is; closing it again does nothing."""

    def close(self) -> None: ...


class Accepting:
    """A panel with a button that says what it does, and Cancel.

    It ends with its document, and leaves nothing in the window however it ends: the host may close it by itself,
    which only its form hears of.
    """

    form: Any

    def does(self) -> str:
        """What the button that accepts says: what a click on it does."""
        raise NotImplementedError

    def live_with(self, document: str, *parts: Closable) -> None:
        """Once the form is made: end with this document, and close these parts at the end."""
        self.alive = True
        self._parts = (SeasonWatch(document, self.leave, lambda _: None), *parts)
        self.form.destroyed.connect(lambda *_: self.take_away())

    def take_away(self) -> None:
        """Leave nothing in the window; it may be called again."""
        if self.alive:
            self.alive = False
            for part in self._parts:
                part.close()

    def leave(self) -> bool:
        """Close the panel; what was not written leaves nothing."""
        self.take_away()
        Gui.Control.closeDialog()
        return True

    # ---- what the host calls ----------------------------------------------------------------------------

    def getStandardButtons(self) -> int:
        return enum_value(QtWidgets.QDialogButtonBox.Ok | QtWidgets.QDialogButtonBox.Cancel)

    def modifyStandardButtons(self, box: QtWidgets.QDialogButtonBox) -> None:
        """The host asks for this once it has made its buttons."""
        box.button(QtWidgets.QDialogButtonBox.Ok).setText(self.does())

    def reject(self) -> bool:
        return self.leave()
