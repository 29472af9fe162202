"""Study how the boards of a glued panel may be laid, and what each way costs."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from movement_core.errors import InputError, UnknownName
from movement_core.piece.arrange import arrange_panel
from movement_core.piece.panels import GluedPanel, glued_panels
from movement_core.sheet.arrangements import study_entry
from workbench_pkg.actions.check import solve_document, table_beside
from workbench_pkg.actions.settings import Settings
from workbench_pkg.host.documents import opened


def arrange_document(
    doc: Any,
    settings: Settings | None = None,
    board: str = "",
    may_turn: bool = False,
    may_reorder: bool = False,
    table: Any = None,
) -> list[dict[str, Any]]:
    """The studies of a document's glued panels; ``board`` picks the panel that holds a board of that name."""
    panels = _picked(glued_panels(solve_document(doc, settings, table)[1]), board)
    found = []
    for panel in panels:
        study = arrange_panel(panel, may_turn, may_reorder)
        names, keys = [b.part.name for b in panel.boards], [b.part.key for b in panel.boards]
        found.append(study_entry(panel.name, names, study, keys))
    return found


def arrange_file(
    path: Path, settings: Settings, board: str = "", may_turn: bool = False, may_reorder: bool = False
) -> list[dict[str, Any]]:
    """The same for a file, which is never written to."""
    table, _ = table_beside(path)
    with opened(path) as doc:
        return arrange_document(doc, settings, board, may_turn, may_reorder, table)


def _picked(panels: tuple[GluedPanel, ...], board: str) -> list[GluedPanel]:
    if not panels:
        raise InputError(
            "no boards lie edge to edge in it",
            allowed="boards of one panel, their grain the same way, their edges within 0.2 mm",
            todo="draw the boards of the panel one by one",
        )
    if not board:
        return list(panels)
    picked = [panel for panel in panels if any(b.part.name == board for b in panel.boards)]
    if not picked:
        names = ", ".join(b.part.name for panel in panels for b in panel.boards)
        raise UnknownName(f"no panel has a board {board!r}", allowed=names)
    return picked
