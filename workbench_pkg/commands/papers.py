"""What leaves the model on paper."""

from __future__ import annotations

from typing import Any

import FreeCAD as App

from movement_core.errors import HeartsideError
from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command, open_panel
from workbench_pkg.panels import recorded
from workbench_pkg.panels.telling import told

translate = App.Qt.translate


class MakeSheet(Command):
    name, picture = "Heartside_Sheet", "make_sheet"
    kind = ""
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_Sheet", "Movement sheet …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Sheet",
        "Write the sheet for the bench, or the page for the client, to print; nothing in the model is changed",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.sheet_panel import SheetPanel

        open_panel(lambda: SheetPanel(doc))


class DrillingTemplate(Command):
    name, picture = "Heartside_Template", "drilling_template"
    kind = ""
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_Template", "Drilling template …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Template",
        "Write a template of a top's screws and slots at full size, to print; nothing in the model is changed",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.working_out import plans_soon

        plans_soon(doc, self._ask, key=self.name)

    @staticmethod
    def _ask(doc: Any, answer: Any) -> None:
        """The plans are there, so it is worth asking for a file."""
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
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_Schedule", "Schedule")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Schedule", "Put a spreadsheet with parts, joints, fasteners and gaps into the document"
    )

    def do(self, doc: Any) -> None:
        recorded.run("papers", "write_schedule", recorded.document(doc))
        told(translate("Heartside", "Schedule written"))


class DrawTop(Command):
    name, picture = "Heartside_DrawTop", "draw_top"
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_DrawTop", "Drawing of the top")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_DrawTop",
        "Put a drawing page into the document: the top from below, its screws and slots, and their table",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.working_out import plans_soon

        plans_soon(doc, self._draw, key=self.name)

    @staticmethod
    def _draw(doc: Any, answer: Any) -> None:
        recorded.run("papers", "draw_page", recorded.document(doc))
        told(translate("Heartside", "Drawing page written"))


class RemovePapers(Command):
    name, picture = "Heartside_RemovePapers", "remove_papers"
    menu = QT_TRANSLATE_NOOP("Heartside_RemovePapers", "Take the papers out")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_RemovePapers", "Take schedule and drawing pages out of the document; all else stays"
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.host.marks import objects_of_kind
        from workbench_pkg.objects.papers import GROUP

        if not objects_of_kind(doc, GROUP):
            raise HeartsideError(
                translate("Heartside", "There is no schedule and no drawing page in this document"),
                todo=translate("Heartside", "“Schedule” and “Drawing of the top” write them"),
            )
        recorded.run("papers", "remove_papers", recorded.document(doc))
        told(translate("Heartside", "Papers taken out"))


class ExportCut(Command):
    name, picture = "Heartside_ExportCut", "export_cut"
    kind = ""
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_ExportCut", "Export with slots …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_ExportCut",
        "Write the piece with the slots of the best plan cut, as STEP, its tags along; nothing in the model is changed",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.working_out import plans_soon

        plans_soon(doc, self._ask, key=self.name)

    @staticmethod
    def _ask(doc: Any, answer: Any) -> None:
        """The plans are there, so it is worth asking for a file."""
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
