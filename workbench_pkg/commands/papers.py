"""What leaves the model on paper."""

from __future__ import annotations

from typing import Any

import FreeCADGui as Gui

from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command


class MakeSheet(Command):
    name, picture = "Heartside_Sheet", "make_sheet"
    kind = ""
    menu = QT_TRANSLATE_NOOP("Heartside_Sheet", "Movement sheet …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Sheet",
        "Write the sheet for the bench, or the page for the client, to print; nothing in the model is changed",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.sheet_panel import SheetPanel

        Gui.Control.showDialog(SheetPanel(doc))


COMMANDS = (MakeSheet(),)
