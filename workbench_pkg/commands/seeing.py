"""The year in the model: the piece moves, and what comes close to its limit is marked."""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command, open_panel

translate = App.Qt.translate


class SeeYear(Command):
    name, picture = "Heartside_SeeYear", "see_year"
    kind = ""
    menu = QT_TRANSLATE_NOOP("Heartside_SeeYear", "See the year …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_SeeYear",
        "Run the piece through the year in the view, and see what jams, gapes or splits; nothing is changed",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.working_out import work_out_soon

        work_out_soon(doc, self.open, key=self.name)

    def open(self, doc: Any, answer: Any) -> None:
        """Show a worked-out document, unless another panel has been opened meanwhile."""
        from movement_core.sheet.margins import margins_of
        from movement_core.sheet.motion import piece_motion
        from workbench_pkg.host.units import short_length
        from workbench_pkg.panels.season_panel import SeasonPanel
        from workbench_pkg.panels.telling import problem
        from workbench_pkg.views.season_scene import SeasonScene

        if Gui.Control.activeDialog():
            problem(translate("Heartside", "Close the open panel first, then see the year again."))
            return
        parts = [one.part for one in answer.whole.parts]
        if all(part.missing for part in parts):
            raise HeartsideError(
                translate("Heartside", "Too little is said of the wood yet: nothing would move"),
                todo=translate("Heartside", "say it with “Tag wood …”, which steps through all parts"),
            )
        margins = margins_of(answer.whole, short_length)
        name = doc.Name
        scene = SeasonScene(name, piece_motion(answer.whole), parts, answer.read.leaves)
        open_panel(lambda: SeasonPanel(scene, answer, margins, again=lambda: self.again(name)), scene)

    def again(self, name: str) -> None:
        """Work the document out anew once the panel that asked for it has gone."""
        from workbench_pkg.host.qt import QtCore

        def work() -> None:
            doc = App.listDocuments().get(name)
            if doc is not None:
                self.do(doc)

        QtCore.QTimer.singleShot(0, work)


COMMANDS = (SeeYear(),)
