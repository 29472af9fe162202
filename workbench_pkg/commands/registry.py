"""What can be clicked: registered with the host, and put into toolbar, menu and context menu."""

from __future__ import annotations

from typing import Any

import FreeCADGui as Gui

from workbench_pkg.commands.clicks import Annotate, OpenReport, Remove, SetYear, Tag, Untag

COMMANDS = {
    "Heartside_Tag": Tag(),
    "Heartside_Untag": Untag(),
    "Heartside_Year": SetYear(),
    "Heartside_Report": OpenReport(),
    "Heartside_Annotate": Annotate(),
    "Heartside_Remove": Remove(),
}
ORDER = [
    *("Heartside_Tag", "Heartside_Untag", "Separator", "Heartside_Year", "Separator"),
    *("Heartside_Report", "Heartside_Annotate", "Heartside_Remove"),
]


def register() -> None:
    """Make the commands known to the host."""
    for name, command in COMMANDS.items():
        Gui.addCommand(name, command)


def fill(workbench: Any) -> None:
    """Toolbar and menu of the workbench."""
    register()
    workbench.appendToolbar("Heartside", ORDER)
    workbench.appendMenu("Heartside", ORDER)


def fill_context_menu(workbench: Any, recipient: str) -> None:
    """What a right click offers: tagging where something is selected, else the report."""
    names = ["Heartside_Tag", "Heartside_Untag"] if Gui.Selection.getSelectionEx("", 0) else []
    workbench.appendContextMenu("Heartside", [*names, "Heartside_Report", "Heartside_Annotate"])
