"""Two drawings of the season panel: the wood's moisture through the year, and a section that moves with it."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np

from movement_core.air.daily import DAYS, MONTH_STARTS
from movement_core.air.year import MONTHS
from movement_core.sheet.section_picture import BoardSection
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.panels.season_colours import DRY, WET

WOOD = QtGui.QColor(231, 205, 160)
WOOD_TOO = QtGui.QColor(219, 188, 138)
RINGS = QtGui.QColor(128, 84, 44)
OUTLINE = QtGui.QColor(60, 42, 26)


class YearCourse(QtWidgets.QWidget):
    """Moisture of the wood and of the air it follows, with the day; a click or a drag chooses a day."""

    LEFT, RIGHT, TOP, BOTTOM = 8, 8, 6, 16

    def __init__(self, wood: np.ndarray | None, air: np.ndarray, chosen: Callable[[int], None]) -> None:
        super().__init__()
        self.setObjectName("HeartsideSeasonCourse")
        self.setMinimumHeight(84)
        self.wood, self.air, self.chosen = wood, air, chosen
        self.day = 0

    def set_day(self, day: int) -> None:
        self.day = day
        self.update()

    def day_at(self, x: float) -> int:
        part = (x - self.LEFT) / max(self.width() - self.LEFT - self.RIGHT, 1)
        return int(min(max(round(part * (DAYS - 1)), 0), DAYS - 1))

    def mousePressEvent(self, event: QtGui.QMouseEvent) -> None:
        self.chosen(self.day_at(event.pos().x()))

    mouseMoveEvent = mousePressEvent

    def paintEvent(self, event: QtGui.QPaintEvent) -> None:
        painter = QtGui.QPainter(self)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        ink = self.palette().color(QtGui.QPalette.WindowText)
        painter.fillRect(self.rect(), self.palette().color(QtGui.QPalette.Base))
        both = self.air if self.wood is None else np.concatenate([self.air, self.wood])
        low, high = float(both.min()) - 0.5, float(both.max()) + 0.5
        area = QtCore.QRectF(
            self.LEFT,
            self.TOP,
            self.width() - self.LEFT - self.RIGHT,
            max(self.height() - self.TOP - self.BOTTOM, 10),
        )

        def point(day: float, value: float) -> QtCore.QPointF:
            x = area.left() + area.width() * day / (DAYS - 1)
            return QtCore.QPointF(x, area.bottom() - area.height() * (value - low) / (high - low))

        small = QtGui.QFont(self.font())
        small.setPixelSize(10)
        painter.setFont(small)
        for start, name in zip(MONTH_STARTS, MONTHS):
            faint = QtGui.QColor(ink)
            faint.setAlpha(45)
            painter.setPen(faint)
            painter.drawLine(point(float(start), low), point(float(start), high))
            painter.setPen(ink)
            painter.drawText(QtCore.QPointF(point(float(start) + 11, low).x(), self.height() - 4), name[0])
        _curve(painter, self.air, point, QtGui.QPen(QtGui.QColor(130, 150, 165), 1.0, QtCore.Qt.DashLine))
        if self.wood is not None:
            _curve(painter, self.wood, point, QtGui.QPen(QtGui.QColor(150, 96, 44), 2.2))
            painter.setPen(QtCore.Qt.NoPen)
            for day, colour in ((int(self.wood.argmin()), DRY), (int(self.wood.argmax()), WET)):
                painter.setBrush(QtGui.QColor(*colour))
                painter.drawEllipse(point(day, float(self.wood[day])), 4.0, 4.0)
        painter.setPen(QtGui.QPen(ink, 2.0))
        painter.drawLine(point(self.day, low), point(self.day, high))
        painter.end()


def _curve(
    painter: QtGui.QPainter, values: np.ndarray, point: Callable[..., QtCore.QPointF], pen: QtGui.QPen
) -> None:
    painter.setPen(pen)
    painter.setBrush(QtCore.Qt.NoBrush)
    painter.drawPolyline(QtGui.QPolygonF([point(day, float(values[day])) for day in range(0, DAYS, 3)]))


class SectionView(QtWidgets.QWidget):
    """The section of a panel or board, to one scale both ways, and a line below it."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("HeartsideSeasonSection")
        self.setMinimumHeight(96)
        self.boards: Sequence[BoardSection] = ()
        self.words = ""
        self.drawn_width = 1.0

    def show_section(self, boards: Sequence[BoardSection], drawn_width_mm: float, words: str) -> None:
        self.boards, self.words, self.drawn_width = boards, words, drawn_width_mm
        self.update()

    def paintEvent(self, event: QtGui.QPaintEvent) -> None:
        painter = QtGui.QPainter(self)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        painter.fillRect(self.rect(), self.palette().color(QtGui.QPalette.Base))
        ink = self.palette().color(QtGui.QPalette.Text)
        if self.boards:
            # The scale hangs on the size as drawn alone, so that swelling is seen.
            scale = (self.width() - 24) / (self.drawn_width * 1.12)
            middle = QtCore.QPointF(self.width() / 2, (self.height() - 16) / 2)

            def shape(points: np.ndarray) -> QtGui.QPolygonF:
                return QtGui.QPolygonF(
                    [
                        QtCore.QPointF(middle.x() + x * scale, middle.y() - y * scale)
                        for x, y in points.tolist()
                    ]
                )

            dashed = QtGui.QPen(ink, 1.0, QtCore.Qt.DotLine)
            painter.setPen(dashed)
            half = self.drawn_width / 2 * scale
            painter.drawLine(
                QtCore.QPointF(middle.x() - half, middle.y()), QtCore.QPointF(middle.x() + half, middle.y())
            )
            for number, board in enumerate(self.boards):
                painter.setPen(QtCore.Qt.NoPen)
                painter.setBrush(WOOD if number % 2 == 0 else WOOD_TOO)
                painter.drawPolygon(shape(board.outline))
                painter.setBrush(QtCore.Qt.NoBrush)
                style = QtCore.Qt.SolidLine if board.told else QtCore.Qt.DashLine
                painter.setPen(QtGui.QPen(RINGS, 0.8, style))
                for ring in board.rings:
                    painter.drawPolyline(shape(ring))
                painter.setPen(QtGui.QPen(OUTLINE, 1.2))
                painter.drawPolygon(shape(board.outline))
        painter.setPen(ink)
        box = QtCore.QRectF(4, self.height() - 18, self.width() - 8, 16)
        painter.drawText(box, QtCore.Qt.AlignHCenter | QtCore.Qt.AlignVCenter, self.words)
        painter.end()
