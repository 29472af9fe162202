"""Brings a place of the model close in the 3D view, without turning the camera."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import FreeCADGui as Gui
from pivy import coin

SLACK = 1.6  # of the place's size, to be seen around it


def views_of(name: str) -> list[Any]:
    """The 3D views of an open document, the active one first."""
    try:
        gui = Gui.getDocument(name)
    except NameError:
        return []
    views = list(gui.mdiViewsOfType("Gui::View3DInventor"))
    active: Any = gui.ActiveView
    if hasattr(active, "getCameraNode"):
        views.sort(key=lambda view: view.getSceneGraph() != active.getSceneGraph())
    return views


def zoom_to(name: str, low: Sequence[float], high: Sequence[float]) -> bool:
    """Show the box from ``low`` to ``high`` (mm, global) in the document's view; False where it has none."""
    views = views_of(name)
    if not views:
        return False
    width, height = (max(int(v), 1) for v in views[0].getSize())
    middle = [(a + b) / 2 for a, b in zip(low, high)]
    reach = [max((b - a) / 2, 1.0) * SLACK for a, b in zip(low, high)]
    box = coin.SbBox3f(
        *(float(m - r) for m, r in zip(middle, reach)), *(float(m + r) for m, r in zip(middle, reach))
    )
    views[0].getCameraNode().viewBoundingBox(box, width / height, 1.0)
    return True
