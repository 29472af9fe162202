"""What leaves the model on paper."""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command
from workbench_pkg.panels import recorded
from workbench_pkg.panels.telling import told

translate = App.Qt.translate


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


class DrillingTemplate(Command):
    name, picture = "Heartside_Template", "drilling_template"
    kind = ""
    menu = QT_TRANSLATE_NOOP("Heartside_Template", "Drilling template …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Template",
        "Write a template of a top's screws and slots at full size, to print; nothing in the model is changed",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.file_asking import ask_new_file, usual_file

        asked = ask_new_file(
            translate("Heartside", "Where to write the drilling template"),
            usual_file(doc, "template", ".pdf"),
            "PDF (*.pdf);;HTML (*.html)",
        )
        if asked is None:
            return
        target, replace = asked
        paper = "letter" if _in_inches() else "a4"
        recorded.run(
            "template",
            "make_template",
            recorded.document(doc),
            repr(str(target)),
            f"paper={paper!r}",
            f"force={replace}",
        )
        told(translate("Heartside", "Written: {file}").format(file=target))


class Schedule(Command):
    name, picture = "Heartside_Schedule", "schedule"
    menu = QT_TRANSLATE_NOOP("Heartside_Schedule", "Schedule")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Schedule", "Put a spreadsheet with parts, joints, fasteners and gaps into the document"
    )

    def do(self, doc: Any) -> None:
        recorded.run("papers", "write_schedule", recorded.document(doc))
        told(translate("Heartside", "Schedule written"))


class DrawTop(Command):
    name, picture = "Heartside_DrawTop", "draw_top"
    menu = QT_TRANSLATE_NOOP("Heartside_DrawTop", "Drawing of the top")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_DrawTop",
        "Put a drawing page into the document: the top from below, its screws and slots, and their table",
    )

    def do(self, doc: Any) -> None:
        recorded.run("papers", "draw_page", recorded.document(doc))
        told(translate("Heartside", "Drawing page written"))


class RemovePapers(Command):
    name, picture = "Heartside_RemovePapers", "remove_papers"
    menu = QT_TRANSLATE_NOOP("Heartside_RemovePapers", "Take the papers out")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_RemovePapers", "Take schedule and drawing pages out of the document; all else stays"
    )

    def do(self, doc: Any) -> None:
        recorded.run("papers", "remove_papers", recorded.document(doc))
        told(translate("Heartside", "Papers taken out"))


class ExportCut(Command):
    name, picture = "Heartside_ExportCut", "export_cut"
    kind = ""
    menu = QT_TRANSLATE_NOOP("Heartside_ExportCut", "Export with slots …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_ExportCut",
        "Write the piece with the slots of the best plan cut, as STEP, its tags along; nothing in the model is changed",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.file_asking import ask_new_file, usual_file

        asked = ask_new_file(
            translate("Heartside", "Where to write the piece with its slots"),
            usual_file(doc, "cut", ".step"),
            "STEP (*.step *.stp)",
        )
        if asked is None:
            return
        target, replace = asked
        recorded.run("step", "export_cut", recorded.document(doc), repr(str(target)), f"force={replace}")
        told(translate("Heartside", "Written: {file}").format(file=target))


def _in_inches() -> bool:
    from workbench_pkg.host.units import in_inches

    return in_inches()


COMMANDS = (MakeSheet(), DrillingTemplate(), Schedule(), DrawTop(), ExportCut(), RemovePapers())
