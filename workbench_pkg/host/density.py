"""How dense the screen is: what is drawn by pixels has to grow with it."""

from __future__ import annotations

import math

import FreeCADGui as Gui

from workbench_pkg.host.qt import QtCore, QtGui

USUAL_DPI = 96.0  # what sizes in pixels are meant for


def device_ratio() -> float:
    """Pixels of the screen to one of the window system's: what the host's own decorations of a view grow by."""
    return float(Gui.getMainWindow().devicePixelRatioF())


def pixel_ratio() -> float:
    """Pixels of a 3D view to one that is drawn for a usual screen: texts and lines grow as the window's own do,
    whether the desktop scales whole windows or their letters alone. Never below 1.
    """
    return device_ratio() * max(1.0, float(Gui.getMainWindow().logicalDpiX()) / USUAL_DPI)


def icon_sheet(side: int) -> QtGui.QPixmap:
    """An empty picture of an icon, this wide and high in the window system's pixels, as fine as the screen."""
    ratio = device_ratio()
    pixels = math.ceil(side * ratio)
    sheet = QtGui.QPixmap(pixels, pixels)
    sheet.setDevicePixelRatio(ratio)
    sheet.fill(QtCore.Qt.transparent)
    return sheet
