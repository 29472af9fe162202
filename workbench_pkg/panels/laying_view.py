"""The boards of a panel as they lie, seen from their ends: dragged, turned over and marked; below, the panel bent.

Everything can be done with the keys too: left and right choose a board, with Shift they move it, the space bar turns
it over, E turns it end for end, B marks its better face.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import FreeCAD as App
import numpy as np

from movement_core.section.board import Board
from movement_core.section.laying import Judged, Laying
from movement_core.sheet.grain_marks import ring_lines
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets, enum_value
from workbench_pkg.host.units import short_length
from workbench_pkg.panels.palette import RANKS
from workbench_pkg.panels.season_colours import DRY, WET
from workbench_pkg.panels.season_widgets import OUTLINE, RINGS, WOOD, WOOD_TOO

translate = App.Qt.translate

DRAG_PX = 6  # a press that goes further is a drag and no click
MARGIN, TOP = 14, 20
BENT_SHARE = 0.36  # of the height for the bent panel
KEYS = tuple(enum_value(getattr(QtCore.Qt, f"Key_{name}")) for name in ("Left", "Right", "Space", "E", "B"))
LIFT = 10  # px that a dragged board is lifted


@dataclass(frozen=True, eq=False)
class Shown:
    """What the view draws: names and looks by board as drawn, how they lie, and what that comes to.

    ``looks``: how much better the face of each board looks that is up as drawn.
    """

    names: Sequence[str]
    looks: Sequence[float]
    laying: Laying
    judged: Judged


class LayingView(QtWidgets.QWidget):
    """``moved(place, to)``, ``flipped``, ``turned`` and ``marked`` (place) are called for what the user does."""

    def __init__(
        self,
        moved: Callable[[int, int], object],
        flipped: Callable[[int], object],
        turned: Callable[[int], object],
        marked: Callable[[int], object],
    ) -> None:
        super().__init__()
        self.setObjectName("HeartsideLayingView")
        self.setMinimumSize(320, 170)
        self.setFocusPolicy(QtCore.Qt.StrongFocus)
        self.setSizePolicy(QtWidgets.QSizePolicy.Expanding, QtWidgets.QSizePolicy.Expanding)
        self.moved, self.flipped, self.turned, self.marked = moved, flipped, turned, marked
        self.shown: Shown | None = None
        self.place = 0
        self._pressed: QtCore.QPoint | None = None
        self._held = -1
        self._at = 0.0
        self._dragging = False

    def show_laying(self, shown: Shown | None) -> None:
        self.shown = shown
        count = 0 if shown is None else len(shown.names)
        self.place = min(self.place, max(count - 1, 0))
        self._drop()
        self.setAccessibleName(self.spoken())
        self.update()

    def choose(self, place: int) -> None:
        self.place = place
        self.setAccessibleName(self.spoken())
        self.update()

    def spoken(self) -> str:
        """The chosen board and how it lies, for a screen reader."""
        if self.shown is None:
            return ""
        laying, place = self.shown.laying, self.place
        name = self.shown.names[laying.order[place]]
        words = translate("Heartside", "Place {place}: {name}").format(place=place + 1, name=name)
        return " ".join([words, *self._ways(place)])

    # ---- places -------------------------------------------------------------------------------------------

    def scale(self) -> float:
        """Pixels a millimetre, the same both ways."""
        if self.shown is None:
            return 1.0
        boards = self.shown.judged.boards
        wide = (self.width() - 2 * MARGIN) / sum(board.width_mm for board in boards)
        high = self.height() * (1 - BENT_SHARE) - TOP - 42
        return max(min(wide, high / max(board.thickness_mm for board in boards)), 0.02)

    def edges(self) -> list[float]:
        """x of the left edge of every place, and of the right edge of the last."""
        if self.shown is None:
            return [0.0]
        widths = [board.width_mm * self.scale() for board in self.shown.judged.boards]
        left = (self.width() - sum(widths)) / 2
        return [left, *(left + total for total in np.cumsum(widths).tolist())]

    def place_at(self, x: float) -> int:
        """The place under a point, the nearest one beside the panel."""
        inner = self.edges()[1:-1]
        return sum(x >= edge for edge in inner)

    def middle_of(self, place: int) -> QtCore.QPoint:
        """The middle of a board on the screen."""
        edges = self.edges()
        return QtCore.QPoint(round((edges[place] + edges[place + 1]) / 2), round(self._middle()))

    def _middle(self) -> float:
        """y of the mid-thickness of the flat boards."""
        assert self.shown is not None
        thick = max(board.thickness_mm for board in self.shown.judged.boards) * self.scale()
        return TOP + LIFT + thick / 2

    # ---- hands --------------------------------------------------------------------------------------------

    def mousePressEvent(self, event: QtGui.QMouseEvent) -> None:
        if self.shown is None or event.button() != QtCore.Qt.LeftButton:
            return
        self.setFocus()
        self._pressed = _spot(event)
        self._held = self.place_at(_spot(event).x())
        self._dragging = False
        self.choose(self._held)

    def mouseMoveEvent(self, event: QtGui.QMouseEvent) -> None:
        if self._pressed is None:
            return
        if (_spot(event) - self._pressed).manhattanLength() > DRAG_PX:
            self._dragging = True
        self._at = float(_spot(event).x())
        self.update()

    def mouseReleaseEvent(self, event: QtGui.QMouseEvent) -> None:
        if self._pressed is None:
            return
        held, dragged = self._held, self._dragging
        to = self.place_at(_spot(event).x())
        self._drop()
        self.update()
        if not dragged:
            self.flipped(held)
        elif to != held:
            self.place = to
            self.moved(held, to)

    def _drop(self) -> None:
        self._pressed, self._held, self._dragging = None, -1, False

    def event(self, event: QtCore.QEvent) -> bool:
        """Our keys are ours while the view has the focus; the host has some of them as shortcuts."""
        ours = event.type() == QtCore.QEvent.ShortcutOverride and enum_value(event.key()) in KEYS
        if ours and not event.modifiers() & (QtCore.Qt.ControlModifier | QtCore.Qt.AltModifier):
            event.accept()
            return True
        return bool(super().event(event))

    def keyPressEvent(self, event: QtGui.QKeyEvent) -> None:
        key, last = enum_value(event.key()), 0 if self.shown is None else len(self.shown.names) - 1
        # By number: the bindings differ in whether an event tells a number or a member.
        step = {enum_value(QtCore.Qt.Key_Left): -1, enum_value(QtCore.Qt.Key_Right): 1}.get(key, 0)
        does = {
            enum_value(QtCore.Qt.Key_Space): self.flipped,
            enum_value(QtCore.Qt.Key_E): self.turned,
            enum_value(QtCore.Qt.Key_B): self.marked,
        }.get(key)
        if key == enum_value(QtCore.Qt.Key_Escape) and self._pressed is not None:
            self._drop()
            self.update()
        elif self.shown is not None and step:
            to = min(max(self.place + step, 0), last)
            if event.modifiers() & QtCore.Qt.ShiftModifier and to != self.place:
                place, self.place = self.place, to
                self.moved(place, to)
            else:
                self.choose(to)
        elif self.shown is not None and does is not None:
            does(self.place)
        else:
            super().keyPressEvent(event)

    # ---- drawing ------------------------------------------------------------------------------------------

    def paintEvent(self, event: QtGui.QPaintEvent) -> None:
        painter = QtGui.QPainter(self)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        painter.fillRect(self.rect(), self.palette().color(QtGui.QPalette.Base))
        if self.shown is not None:
            edges = self.edges()
            for place in range(len(self.shown.names)):
                if not (self._dragging and place == self._held):
                    self._board(painter, place, (edges[place] + edges[place + 1]) / 2, self._middle())
            self._bent(painter)
            if self._dragging:
                self._gap(painter, edges)
                self._board(painter, self._held, self._at, self._middle() - LIFT)
        painter.end()

    def _board(self, painter: QtGui.QPainter, place: int, x: float, y: float) -> None:
        assert self.shown is not None
        board, laying = self.shown.judged.boards[place], self.shown.laying
        index, scale = laying.order[place], self.scale()
        box = QtCore.QRectF(
            x - board.width_mm * scale / 2,
            y - board.thickness_mm * scale / 2,
            board.width_mm * scale,
            board.thickness_mm * scale,
        )
        painter.setPen(QtCore.Qt.NoPen)
        painter.setBrush(WOOD if index % 2 == 0 else WOOD_TOO)
        painter.drawRect(box)
        painter.save()
        painter.setClipRect(box)
        painter.setPen(QtGui.QPen(RINGS, 1.1))
        painter.setBrush(QtCore.Qt.NoBrush)
        for line in _rings(board):
            points = [QtCore.QPointF(x + px * scale, y - py * scale) for px, py in line.tolist()]
            painter.drawPolyline(QtGui.QPolygonF(points))
        painter.restore()
        painter.setBrush(QtCore.Qt.NoBrush)  # the rings lie under it
        chosen = place == self.place
        painter.setPen(QtGui.QPen(QtGui.QColor(*RANKS[0]) if chosen else OUTLINE, 3.0 if chosen else 1.4))
        painter.drawRect(box)
        self._better_face(painter, index, laying.over[place], box)
        if self._dragging and place == self._held:
            return
        painter.setPen(self.palette().color(QtGui.QPalette.Text))
        metrics = self.fontMetrics()
        for number, text in enumerate([self.shown.names[index], ", ".join(self._ways(place))]):
            area = QtCore.QRectF(
                box.left() + 2,
                box.bottom() + 13 + number * metrics.height(),
                box.width() - 4,
                metrics.height(),
            )
            words = metrics.elidedText(text, QtCore.Qt.ElideRight, int(area.width()))
            painter.drawText(area, QtCore.Qt.AlignHCenter | QtCore.Qt.AlignVCenter, words)

    def _ways(self, place: int) -> list[str]:
        """How a board lies other than drawn."""
        assert self.shown is not None
        ways = []
        if self.shown.laying.over[place]:
            ways.append(translate("Heartside", "turned over"))
        if self.shown.laying.turned[place]:
            ways.append(translate("Heartside", "end for end"))
        return ways

    def _better_face(self, painter: QtGui.QPainter, index: int, over: bool, box: QtCore.QRectF) -> None:
        """A pointer on the face that looks better: full where it is up, hollow where it is down."""
        assert self.shown is not None
        looks = self.shown.looks[index] * (-1 if over else 1)
        if not looks:
            return
        up = looks > 0
        tip, base = (box.top() - 2, box.top() - 10) if up else (box.bottom() + 2, box.bottom() + 10)
        x = box.center().x()
        corners = [QtCore.QPointF(x, tip), QtCore.QPointF(x - 6, base), QtCore.QPointF(x + 6, base)]
        colour = QtGui.QColor(*RANKS[0]) if up else QtGui.QColor(*RANKS[1])
        painter.setPen(QtGui.QPen(colour, 1.6))
        painter.setBrush(colour if up else QtCore.Qt.NoBrush)
        painter.drawPolygon(QtGui.QPolygonF(corners))
        painter.setBrush(QtCore.Qt.NoBrush)

    def _gap(self, painter: QtGui.QPainter, edges: Sequence[float]) -> None:
        """Where the dragged board would go in."""
        to = self.place_at(self._at)
        x = edges[to + 1] if to > self._held else edges[to]
        painter.setPen(QtGui.QPen(QtGui.QColor(*RANKS[2]), 3.0))
        painter.drawLine(QtCore.QPointF(x, TOP - 12), QtCore.QPointF(x, self._middle() * 2 - TOP + 12))

    def _bent(self, painter: QtGui.QPainter) -> None:
        """The panel at its driest and at its wettest, as much magnified as there is room for."""
        assert self.shown is not None
        judged, ink = self.shown.judged, self.palette().color(QtGui.QPalette.Text)
        height = self.height() * BENT_SHARE
        middle = self.height() - height / 2 - 8
        seasons = ((judged.driest, DRY, QtCore.Qt.DashLine), (judged.wettest, WET, QtCore.Qt.SolidLine))
        most = max(float(np.abs(season.profile[:, 1]).max()) for season, _, _ in seasons)
        scale = self.scale()
        magnified = magnification((height / 2 - 14) / scale / max(most, 1e-6))
        painter.setPen(QtGui.QPen(ink, 1.0, QtCore.Qt.DotLine))
        edges = self.edges()
        painter.drawLine(QtCore.QPointF(edges[0], middle), QtCore.QPointF(edges[-1], middle))
        for season, colour, style in seasons:
            painter.setPen(QtGui.QPen(QtGui.QColor(*colour), 3.0, style))
            points = [
                QtCore.QPointF(self.width() / 2 + px * scale, middle - py * scale * magnified)
                for px, py in season.profile.tolist()
            ]
            painter.drawPolyline(QtGui.QPolygonF(points))
        painter.setPen(ink)
        words = translate("Heartside", "bending shown {factor:g} times").format(factor=magnified)
        area = QtCore.QRectF(MARGIN, self.height() - 20, self.width() - 2 * MARGIN, 18)
        painter.drawText(area, QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter, words)
        legend = [
            (DRY, translate("Heartside", "driest {size}").format(size=season_text(judged.driest))),
            (WET, translate("Heartside", "wettest {size}").format(size=season_text(judged.wettest))),
        ]
        x = float(MARGIN)
        for colour, text in legend:
            painter.fillRect(QtCore.QRectF(x, self.height() - 15, 12, 8), QtGui.QColor(*colour))
            painter.drawText(QtCore.QPointF(x + 16, self.height() - 6), text)
            x += 30 + self.fontMetrics().boundingRect(text).width()


def _spot(event: QtGui.QMouseEvent) -> QtCore.QPoint:
    """Where a mouse event is; Qt 6 gives it another name."""
    return event.position().toPoint() if hasattr(event, "position") else event.pos()


def magnification(most: float) -> float:
    """A round factor not above this: 1, 2, 5, 10, 20 …; never below 1."""
    steps = [step * 10**power for power in range(4) for step in (1.0, 2.0, 5.0)]
    return max([step for step in steps if step <= most], default=1.0)


def season_text(season: object) -> str:
    """Which way a panel goes in a season, and how far."""
    ways = {
        "crown": translate("Heartside", "crown {size}"),
        "hollow": translate("Heartside", "hollow {size}"),
        "waves": translate("Heartside", "waves of {size}"),
        "flat": translate("Heartside", "flat"),
    }
    return ways[season.way].format(size=short_length(abs(season.departure_mm)))  # type: ignore[attr-defined]


def _rings(board: Board) -> list[np.ndarray]:
    return [np.asarray(line) for line in ring_lines(board.width_mm, board.thickness_mm, board.pith_mm, 0.0)]
