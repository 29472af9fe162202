"""A label of a panel whose words wrap and are never cut off, however narrow the dock is.

The host gives a panel the height that it asks for at its own best width, not what its wrapped words need at the width
that the dock has (seen on all three). So the label asks for that itself whenever its width or its words change.
"""

from __future__ import annotations

from typing import Any

from workbench_pkg.host.qt import QtWidgets


class WholeWords(QtWidgets.QLabel):
    """Wraps its words and asks for the height that they need at the width it has."""

    def __init__(self, text: str = "", name: str = "") -> None:
        """text: what it says at first; name: the widget's."""
        super().__init__(text)
        self.setWordWrap(True)
        if name:
            self.setObjectName(name)

    def setText(self, text: str) -> None:
        super().setText(text)
        self._ask()

    def resizeEvent(self, event: Any) -> None:
        super().resizeEvent(event)
        self._ask()

    def _ask(self) -> None:
        needed = self.heightForWidth(self.width()) if self.text() else 0
        if needed >= 0 and needed != self.minimumHeight():
            self.setMinimumHeight(needed)
