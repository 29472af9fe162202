"""The one place that imports Qt, so that panels run unchanged on PySide2 and PySide6."""

from __future__ import annotations

from typing import Any

from PySide import QtCore, QtGui  # the host's own

try:
    from PySide import QtWidgets
except ImportError:  # the host's own PySide of 0.20 keeps the widgets in QtGui
    QtWidgets = QtGui

__all__ = ["QtCore", "QtGui", "QtWidgets", "enum_value", "run_modal"]


def enum_value(member: Any) -> int:
    """Number of an enum member or a combination of flags: PySide6 has real enums, PySide2 has integers."""
    value = getattr(member, "value", member)
    return int(value)


def run_modal(dialog: Any) -> int:
    """Run a dialog until it is closed; the method's name differs between bindings."""
    run = getattr(dialog, "exec", None) or dialog.exec_
    return int(run())
