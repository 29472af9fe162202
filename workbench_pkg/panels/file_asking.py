"""Asks where a new file is to be written."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCADGui as Gui

from workbench_pkg.host.qt import QtWidgets


def usual_file(doc: Any, end: str, ending: str) -> Path:
    """Beside the model, or in the user's folder; a name that is not there yet."""
    model = Path(doc.FileName) if doc.FileName else Path.home() / doc.Name
    path = model
    for count in range(1, 1000):
        more = "" if count == 1 else f"-{count}"
        path = model.with_name(f"{model.stem}-{end}{more}{ending}")
        if not path.exists():
            break
    return path


def ask_new_file(title: str, usual: Path, kinds: str) -> tuple[Path, bool] | None:
    """The file that the user names and whether it may replace one that is there, which the host's box has asked then.

    None where the user names none.
    """
    answer = QtWidgets.QFileDialog.getSaveFileName(Gui.getMainWindow(), title, str(usual), kinds)
    if not answer[0]:
        return None
    path = Path(answer[0])
    return (path, path.is_file()) if path.suffix else (path.with_suffix(usual.suffix), False)
