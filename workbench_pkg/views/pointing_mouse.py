"""The mouse over a 3D view, heard before the host turns the view or selects anything with it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCADGui as Gui

from workbench_pkg.host.qt import QtCore, QtWidgets

_LEFT = QtCore.Qt.LeftButton


def viewport_of(view: Any) -> Any:
    """The widget that a 3D view draws in.

    Where someone still keeps the Python side of a closed view, the binding takes a new view at the same address for
    the closed one; then the widget is looked for in the window in front.
    """
    try:
        return view.graphicsView().viewport()
    except RuntimeError:
        area = Gui.getMainWindow().findChild(QtWidgets.QMdiArea)
        inside = area.activeSubWindow() or area
        for widget in inside.findChildren(QtWidgets.QWidget, "qt_scrollarea_viewport"):
            if widget.isVisible():
                return widget
        raise


class Mouse(QtCore.QObject):
    """Hands left clicks, drags and Escape over one widget on; what the hand takes, the host never sees.

    The hand's ``press(eye)`` and ``escape()`` say whether it took the event; ``drag(eye)`` and ``drop(eye)`` follow a
    press that it took.
    """

    def __init__(self, widget: Any, hand: Any, eye_at: Callable[[float, float], Any]) -> None:
        """eye_at : the eye's ray from a place of the widget, 0 to 1 to the right and upward."""
        super().__init__()
        self.widget, self.hand, self.eye_at, self.held = widget, hand, eye_at, False
        widget.installEventFilter(self)

    def close(self) -> None:
        try:
            self.widget.removeEventFilter(self)
            self.widget.unsetCursor()
        except RuntimeError:  # the view has been closed
            pass

    def eventFilter(self, watched: Any, event: Any) -> bool:
        try:
            return self._heard(event)
        except Exception as error:  # raised into the event loop it would end the host
            self.hand.failed(error)
            return False

    def _heard(self, event: Any) -> bool:
        kind = event.type()
        if kind in (QtCore.QEvent.ShortcutOverride, QtCore.QEvent.KeyPress):
            if event.key() != QtCore.Qt.Key_Escape or not self.hand.is_busy():
                return False
            event.accept()
            if kind == QtCore.QEvent.KeyPress:
                self.hand.escape()
            return True
        if kind == QtCore.QEvent.MouseMove and self.held:
            eye = self._eye(event)
            if eye is not None:
                self.hand.drag(eye)
            return True
        if kind not in (QtCore.QEvent.MouseButtonPress, QtCore.QEvent.MouseButtonRelease):
            return False
        if event.button() != _LEFT:
            return False
        eye = self._eye(event)
        if kind == QtCore.QEvent.MouseButtonRelease:
            was, self.held = self.held, False
            if was and eye is not None:
                self.hand.drop(eye)
            return was
        self.held = bool(eye is not None and self.hand.press(eye))
        return self.held

    def _eye(self, event: Any) -> Any:
        place = event.position() if hasattr(event, "position") else event.localPos()
        width, height = self.widget.width(), self.widget.height()
        if width < 2 or height < 2:
            return None
        return self.eye_at(place.x() / width, 1.0 - place.y() / height)
