"""The host's side of a task panel in which nothing waits to be accepted: its one button closes it."""

from __future__ import annotations

import FreeCADGui as Gui

from workbench_pkg.host.qt import QtWidgets, enum_value


class ClosingPanel:
    """What the host calls; Esc and the button do the same."""

    def getStandardButtons(self) -> int:
        return enum_value(QtWidgets.QDialogButtonBox.Close)

    def reject(self) -> bool:
        self.take_away()
        Gui.Control.closeDialog()
        return True

    def accept(self) -> bool:
        return self.reject()

    def take_away(self) -> None:
        """Leave nothing in the window, also where the host closed the panel by itself; it may be called again."""
        raise NotImplementedError
