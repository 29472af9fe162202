"""What can be clicked: registered with the host, and put into toolbar, menu and context menu.

Each module of ``MODULES`` holds the commands of one kind of work as ``COMMANDS``, in the order in which they stand in
the menu; a separator divides the modules.
"""

from __future__ import annotations

from typing import Any

import FreeCADGui as Gui

from workbench_pkg.commands import building, clicks, joining, papers, pointing, seeing
from workbench_pkg.host.language import speak

MODULES = (clicks, pointing, joining, building, seeing, papers)


def register() -> None:
    """Make the commands known to the host."""
    for module in MODULES:
        for command in module.COMMANDS:
            Gui.addCommand(command.name, command)


def order() -> list[str]:
    """Names of all commands as they stand in toolbar and menu."""
    names: list[str] = []
    for module in MODULES:
        names += ["Separator"] if names else []
        names += [command.name for command in module.COMMANDS]
    return names


def fill(workbench: Any) -> None:
    """Toolbar and menu of the workbench."""
    speak()
    register()
    workbench.appendToolbar("Heartside", order())
    workbench.appendMenu("Heartside", order())


def fill_context_menu(workbench: Any, recipient: str) -> None:
    """What a right click offers: tagging where something is selected, else the report."""
    names = ["Heartside_Tag", "Heartside_Untag"] if Gui.Selection.getSelectionEx("", 0) else []
    workbench.appendContextMenu("Heartside", [*names, "Heartside_Report", "Heartside_Annotate"])
