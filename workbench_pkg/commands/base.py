"""What every command shares: its words and picture, when it can be clicked, and how its errors are told."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from workbench_pkg.panels.enough import need_solids
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.telling import problem, unexpected


def QT_TRANSLATE_NOOP(context: str, text: str) -> str:
    """Marks a text for translation; the host looks the translation up itself."""
    return text


def open_panel(make: Callable[[], Any], view: Any = None) -> None:
    """Show a task panel; where that fails nothing is left of it, nor of the view that it would have drawn in."""
    panel = None
    try:
        panel = make()
        Gui.Control.showDialog(panel)
    except Exception:
        if panel is not None:
            panel.take_away()
        if view is not None:
            view.close()
        raise


class Command:
    name = ""
    menu = ""
    tip = ""
    picture = ""
    kind = "AlterDoc"
    needs_solids = False  # whether it can do nothing in a document that shows no solid

    def GetResources(self) -> dict[str, str]:
        return {
            "Pixmap": icon(self.picture),
            "MenuText": self.menu,
            "ToolTip": self.tip,
            "WhatsThis": self.tip,
            "StatusTip": self.tip,
            "CmdType": self.kind,
        }

    def IsActive(self) -> bool:
        """The host asks several times a second, so this looks at nothing inside the document."""
        return App.ActiveDocument is not None and not Gui.Control.activeDialog()

    def Activated(self, index: int = 0) -> None:
        try:
            if self.needs_solids:
                need_solids(App.ActiveDocument)
            self.do(App.ActiveDocument)
        except HeartsideError as error:
            problem(str(error))
        except Exception as error:
            problem(unexpected(error))

    def do(self, doc: Any) -> None:
        raise NotImplementedError
