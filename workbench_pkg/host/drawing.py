"""Views of a drawing page: whether they are drawn yet, and how to have them drawn without a window."""

from __future__ import annotations

import time
from typing import Any

import FreeCAD as App

LONGEST_S = 60.0
_own: list[Any] = []  # the application that we made; Qt wants it kept


def drawn(view: Any, longest_s: float = LONGEST_S) -> bool:
    """Whether a view of parts shows its lines, once it was given the time to draw them.

    Host 1.0 works them out beside the rest, and takes them over on an event of Qt. The window brings those by itself,
    and the view is filled there in a while; without one they are brought about here.
    """
    if view.getVisibleEdges() or App.GuiUp:
        return True
    from workbench_pkg.host.qt import (
        QtCore,  # only here: a host that is imported as a library may be without it
    )

    if QtCore.QCoreApplication.instance() is None:
        _own.append(QtCore.QCoreApplication([]))
    end = time.monotonic() + longest_s
    while not view.getVisibleEdges():
        if time.monotonic() > end:
            return False
        QtCore.QCoreApplication.processEvents()
        time.sleep(0.01)
    return True
