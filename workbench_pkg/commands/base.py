"""What every command shares: its words and picture, when it can be clicked, and how its errors are told."""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.telling import problem, unexpected


def QT_TRANSLATE_NOOP(context: str, text: str) -> str:
    """Marks a text for translation; the host looks the translation up itself."""
    return text


class Command:
    name = ""
    menu = ""
    tip = ""
    picture = ""
    kind = "AlterDoc"

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
            self.do(App.ActiveDocument)
        except HeartsideError as error:
            problem(str(error))
        except Exception as error:
            problem(unexpected(error))

    def do(self, doc: Any) -> None:
        raise NotImplementedError
