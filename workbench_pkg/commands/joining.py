"""How the parts go together: their joints, how the boards of a panel are laid, and the gaps to set today."""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command, open_panel
from workbench_pkg.panels.telling import problem

translate = App.Qt.translate


class Worked(Command):
    """A command whose panel shows a worked-out document."""

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.working_out import work_out_soon

        work_out_soon(doc, self.opened, key=self.name)

    def opened(self, doc: Any, answer: Any) -> None:
        """Show the answer, unless another panel has been opened meanwhile."""
        if Gui.Control.activeDialog():
            problem(translate("Heartside", "Close the open panel first, then try again."))
        else:
            self.show(doc, answer)

    def show(self, doc: Any, answer: Any) -> None:
        raise NotImplementedError


class Joints(Worked):
    name, picture = "Heartside_Joints", "joints"
    menu = QT_TRANSLATE_NOOP("Heartside_Joints", "Joints …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Joints",
        "Go through the joints, say what they are, and point at the line that holds a part",
    )

    def show(self, doc: Any, answer: Any) -> None:
        from workbench_pkg.panels.joints_panel import JointsPanel
        from workbench_pkg.views.joint_marks import JointMarks

        marks = JointMarks(doc.Name)
        open_panel(lambda: JointsPanel(doc, answer, marks), marks)


class LayBoards(Command):
    name, picture = "Heartside_LayBoards", "lay_boards"
    menu = QT_TRANSLATE_NOOP("Heartside_LayBoards", "Lay the boards …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_LayBoards",
        "See the boards of a panel from their ends, turn and reorder them, and see how flat the panel stays",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.arrangement_panel import open_arrangement

        open_arrangement(doc)


class GapsToday(Worked):
    name, picture = "Heartside_GapsToday", "gaps_today"
    kind = ""
    menu = QT_TRANSLATE_NOOP("Heartside_GapsToday", "Gaps today …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_GapsToday",
        "From the air of the shop or a meter: the gaps to set today, and what each becomes over the year",
    )

    def show(self, doc: Any, answer: Any) -> None:
        from workbench_pkg.panels.today_panel import TodayPanel

        open_panel(lambda: TodayPanel(doc, answer))


COMMANDS: tuple[Command, ...] = (Joints(), LayBoards(), GapsToday())
