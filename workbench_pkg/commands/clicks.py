"""Tagging, the year, the report and the answer in the model. Each command only gathers what is selected, opens a
panel, or calls an action through the recorded channel.
"""

from __future__ import annotations

from typing import Any

import FreeCAD as App

from movement_core.errors import HeartsideError
from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command, open_panel
from workbench_pkg.panels import recorded
from workbench_pkg.panels.telling import told

translate = App.Qt.translate


class Tag(Command):
    name, picture = "Heartside_Tag", "tag_wood"
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_Tag", "Tag wood …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Tag",
        "Say what the selected boards are made of: species, grain, heart side, moisture when built",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.tag_panel import TagPanel
        from workbench_pkg.views.pointing import Pointing

        view = Pointing(doc.Name)
        open_panel(lambda: TagPanel(doc, view), view)


class Untag(Command):
    name, picture = "Heartside_Untag", "untag"
    needs_solids = True
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
        if not any(chosen.said()):
            raise HeartsideError(
                translate("Heartside", "Nothing is said of the selected boards that could be taken off"),
                todo=translate("Heartside", "“Tag wood …” shows what each board says"),
            )
        recorded.run("tag", "untag", recorded.objects(chosen.targets()))
        told(translate("Heartside", "Tags taken off {count}").format(count=len(chosen.leaves)))


class SetYear(Command):
    name, picture = "Heartside_Year", "set_year"
    menu = QT_TRANSLATE_NOOP("Heartside_Year", "Year of air …")
    tip = QT_TRANSLATE_NOOP("Heartside_Year", "Choose the air that the piece will live in, month by month")

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.year_panel import YearPanel

        open_panel(lambda: YearPanel(doc))


class OpenReport(Command):
    name, picture = "Heartside_Report", "report"
    kind = ""
    menu = QT_TRANSLATE_NOOP("Heartside_Report", "Report")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Report", "Work the piece out and show every board and finding; nothing is changed"
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.report_panel import open_report
        from workbench_pkg.views.zooming import zoom_to

        open_report(doc, zoom_to)


class Annotate(Command):
    name, picture = "Heartside_Annotate", "annotate"
    menu = QT_TRANSLATE_NOOP("Heartside_Annotate", "Annotate the model")
    tip = QT_TRANSLATE_NOOP("Heartside_Annotate", "Work the piece out and put a label at every board")

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.working_out import work_out_soon

        work_out_soon(doc, self._write, key=self.name)

    @staticmethod
    def _write(doc: Any, answer: Any) -> None:
        from workbench_pkg.actions.annotate import given
        from workbench_pkg.panels import report_panel

        with given(answer):
            recorded.run("annotate", "annotate", recorded.document(doc))
        report_panel.show_if_open(doc, answer)
        told(translate("Heartside", "Annotated"))


class Remove(Command):
    name, picture = "Heartside_Remove", "remove"
    menu = QT_TRANSLATE_NOOP("Heartside_Remove", "Remove the answer")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Remove",
        "Take labels and results out again; tags and the year stay, the model is as it was",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.objects.results import results_of

        if not results_of(doc):
            raise HeartsideError(
                translate("Heartside", "There is no answer in this document"),
                todo=translate("Heartside", "“Annotate the model” writes one"),
            )
        recorded.run("annotate", "remove", recorded.document(doc))
        told(translate("Heartside", "Answer removed"))


COMMANDS = (Tag(), Untag(), SetYear(), OpenReport(), Annotate(), Remove())
