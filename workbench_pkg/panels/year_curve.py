"""A small picture of a year: the moisture that wood comes to, month by month, with its driest and wettest."""

from __future__ import annotations

from movement_core import Year
from movement_core.air.year import MONTHS
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.panels.palette import RANKS

LOW, HIGH = 3.0, 18.0  # percent, the range that furniture lives in
_LEFT, _BOTTOM, _TOP, _RIGHT = 30, 18, 16, 8


class YearCurve(QtWidgets.QWidget):
    """Draws one year in the colours of the window."""

    def __init__(self) -> None:
        super().__init__()
        self.year: Year | None = None
        self.setMinimumHeight(140)
        self.setObjectName("HeartsideYearCurve")

    def show_year(self, year: Year | None) -> None:
        self.year = year
        self.update()

    def paintEvent(self, event: QtGui.QPaintEvent) -> None:
        painter = QtGui.QPainter(self)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        ink = self.palette().color(QtGui.QPalette.WindowText)
        faint = QtGui.QColor(ink)
        faint.setAlpha(70)
        painter.fillRect(self.rect(), self.palette().color(QtGui.QPalette.Base))
        if self.year is None:
            painter.end()
            return
        moisture = [float(m) for m in self.year.moisture]
        low = min(LOW, min(moisture) - 1)
        high = max(HIGH, max(moisture) + 1)
        area = QtCore.QRectF(
            _LEFT, _TOP, self.width() - _LEFT - _RIGHT, max(self.height() - _TOP - _BOTTOM, 10)
        )

        def point(month: int) -> QtCore.QPointF:
            x = area.left() + area.width() * (month + 0.5) / 12
            return QtCore.QPointF(x, area.bottom() - area.height() * (moisture[month] - low) / (high - low))

        painter.setFont(_small(self.font()))
        for percent in range(5, int(high) + 1, 5):
            y = area.bottom() - area.height() * (percent - low) / (high - low)
            painter.setPen(faint)
            painter.drawLine(QtCore.QPointF(area.left(), y), QtCore.QPointF(area.right(), y))
            painter.setPen(ink)
            painter.drawText(QtCore.QPointF(2, y + 4), f"{percent} %")
        for month, name in enumerate(MONTHS):
            painter.drawText(QtCore.QPointF(point(month).x() - 3, self.height() - 4), name[0])
        painter.setPen(QtGui.QPen(QtGui.QColor(*RANKS[0]), 2.0))
        painter.drawPolyline(QtGui.QPolygonF([point(month) for month in range(12)]))
        for month, colour, above in (
            (self.year.driest_month, RANKS[1], False),
            (self.year.wettest_month, RANKS[2], True),
        ):
            painter.setPen(QtCore.Qt.NoPen)
            painter.setBrush(QtGui.QColor(*colour))
            painter.drawEllipse(point(month), 4.0, 4.0)
            painter.setPen(ink)
            text = f"{moisture[month]:.1f} %"
            x = min(max(point(month).x() - 16, area.left()), area.right() - 34)
            painter.drawText(QtCore.QPointF(x, point(month).y() + (-8 if above else 16)), text)
        painter.end()


def _small(font: QtGui.QFont) -> QtGui.QFont:
    smaller = QtGui.QFont(font)
    smaller.setPixelSize(11)
    return smaller
