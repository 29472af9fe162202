"""The commands. Each only gathers what is selected, opens a panel, or calls an action through the recorded channel."""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from workbench_pkg.panels import recorded
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.telling import problem, told, unexpected

translate = App.Qt.translate


def QT_TRANSLATE_NOOP(context: str, text: str) -> str:
    """Marks a text for translation; the host looks the translation up itself."""
    return text


class _Command:
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
            "WhatsThis": self.name,
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


class Tag(_Command):
    name, picture = "Heartside_Tag", "tag_wood"
    menu = QT_TRANSLATE_NOOP("Heartside_Tag", "Tag wood …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Tag",
        "Say what the selected boards are made of: species, grain, heart side, moisture when built",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.tag_panel import TagPanel

        Gui.Control.showDialog(TagPanel())


class Untag(_Command):
    name, picture = "Heartside_Untag", "untag"
    menu = QT_TRANSLATE_NOOP("Heartside_Untag", "Take tags off")
    tip = QT_TRANSLATE_NOOP("Heartside_Untag", "Take everything said of their wood off the selected boards")

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.chosen import chosen_boards

        chosen = chosen_boards(doc)
        if not chosen.leaves:
            raise HeartsideError(
                translate("Heartside", "No board is selected"),
                todo=translate("Heartside", "click boards in the view or the tree, then try again"),
            )
        recorded.run("tag", "untag", recorded.objects(chosen.targets()))
        told(translate("Heartside", "Tags taken off {count}").format(count=len(chosen.leaves)))


class SetYear(_Command):
    name, picture = "Heartside_Year", "set_year"
    menu = QT_TRANSLATE_NOOP("Heartside_Year", "Year of air …")
    tip = QT_TRANSLATE_NOOP("Heartside_Year", "Choose the air that the piece will live in, month by month")

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.year_panel import YearPanel

        Gui.Control.showDialog(YearPanel(doc))


class OpenReport(_Command):
    name, picture = "Heartside_Report", "report"
    kind = ""
    menu = QT_TRANSLATE_NOOP("Heartside_Report", "Report")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Report", "Work the piece out and show every board and finding; nothing is changed"
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.report_panel import open_report

        open_report(doc)


class Annotate(_Command):
    name, picture = "Heartside_Annotate", "annotate"
    menu = QT_TRANSLATE_NOOP("Heartside_Annotate", "Annotate the model")
    tip = QT_TRANSLATE_NOOP("Heartside_Annotate", "Work the piece out and put a label at every board")

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels import report_panel

        recorded.run("annotate", "annotate", recorded.document(doc))
        report_panel.refresh(doc)
        told(translate("Heartside", "Annotated"))


class Remove(_Command):
    name, picture = "Heartside_Remove", "remove"
    menu = QT_TRANSLATE_NOOP("Heartside_Remove", "Remove the answer")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Remove",
        "Take labels and results out again; tags and the year stay, the model is as it was",
    )

    def do(self, doc: Any) -> None:
        recorded.run("annotate", "remove", recorded.document(doc))
        told(translate("Heartside", "Answer removed"))
