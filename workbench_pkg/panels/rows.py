"""Rows of lists and tables without item objects of Python's.

The host's binding of Qt may drop such an object before the list that owns it is gone and then crash on closing the
panel (seen on 1.1). So rows are written and read through the list's own model.
"""

from __future__ import annotations

from typing import Any

from workbench_pkg.host.qt import QtCore

TEXT, PICTURE, TIP = QtCore.Qt.DisplayRole, QtCore.Qt.DecorationRole, QtCore.Qt.ToolTipRole
ALIGNMENT, DATA = QtCore.Qt.TextAlignmentRole, QtCore.Qt.UserRole


def write(view: Any, row: int, column: int = 0, **values: Any) -> None:
    """Set what a cell shows or carries: text, picture, tip, alignment, data."""
    model = view.model()
    index = model.index(row, column)
    roles = {"text": TEXT, "picture": PICTURE, "tip": TIP, "alignment": ALIGNMENT, "data": DATA}
    for name, value in values.items():
        model.setData(index, value, roles[name])


def read(view: Any, row: int, column: int = 0, role: Any = DATA) -> Any:
    """What a cell carries; None where there is no such row."""
    index = view.model().index(row, column)
    return index.data(role) if index.isValid() else None


def append(view: Any, text: str, **values: Any) -> int:
    """Add a row to a list; its number."""
    view.addItem(text)
    row = int(view.count()) - 1
    write(view, row, **values)
    return row
