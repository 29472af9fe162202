"""Draws a label as a small picture: a strip in the colour of its rank, a bold first line, the rest below it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from workbench_pkg.host.qt import QtCore, QtGui
from workbench_pkg.panels.palette import EDGE, INK, PAPER, Colour, rank_colour

POINT_SIZE = 9.0
STRIP, PAD_X, PAD_Y, ROUND = 5, 7, 4, 4  # at one pixel a point
LONGEST = 60  # letters; a longer line is cut short, the whole text stands in the report
MARKS = ("", "!", "!!")  # the rank said once more, for eyes that do not tell the colours apart


@dataclass(frozen=True)
class Picture:
    """Red, green, blue, alpha from 0 to 255 each, rows from the bottom up, as the scene wants them."""

    width: int
    height: int
    data: bytes


def label_picture(lines: Sequence[str], rank: int = 0, ratio: float = 1.0) -> Picture:
    """Picture of a label; `ratio` is how many pixels of the screen make one of the window system's."""
    shown = [_short(line) for line in lines] or [""]
    mark = MARKS[min(max(rank, 0), len(MARKS) - 1)]
    if mark:
        shown[0] = f"{mark} {shown[0]}"
    fonts = [_font(bold=i == 0, ratio=ratio) for i in range(len(shown))]
    measures = [QtGui.QFontMetrics(font) for font in fonts]
    text_width = max(m.boundingRect(line).width() for m, line in zip(measures, shown)) + round(2 * ratio)
    width = round((STRIP + 2 * PAD_X) * ratio) + text_width
    height = round(2 * PAD_Y * ratio) + sum(m.height() for m in measures)
    image = _blank(width, height)
    painter = QtGui.QPainter(image)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    _card(painter, width, height, ratio, rank_colour(rank))
    top = PAD_Y * ratio
    painter.setPen(QtGui.QColor(*INK))
    for font, measure, line in zip(fonts, measures, shown):
        painter.setFont(font)
        painter.drawText(QtCore.QPointF((STRIP + PAD_X) * ratio, top + measure.ascent()), line)
        top += measure.height()
    painter.end()
    return _picture(image)


def _card(painter: QtGui.QPainter, width: int, height: int, ratio: float, colour: Colour) -> None:
    """Paper with a dark edge and a light rim around that, so that it stands out from any background."""
    rim = QtCore.QRectF(0.5, 0.5, width - 1, height - 1)
    painter.setPen(QtGui.QPen(QtGui.QColor(255, 255, 255, 150), 1.0))
    painter.setBrush(QtGui.QColor(*EDGE))
    painter.drawRoundedRect(rim, ROUND * ratio, ROUND * ratio)
    inner = rim.adjusted(1, 1, -1, -1)
    path = QtGui.QPainterPath()
    path.addRoundedRect(inner, ROUND * ratio, ROUND * ratio)
    painter.setClipPath(path)
    painter.fillRect(inner, QtGui.QColor(*PAPER))
    painter.fillRect(QtCore.QRectF(0, 0, STRIP * ratio, height), QtGui.QColor(*colour))
    painter.setClipping(False)
    painter.setBrush(QtCore.Qt.NoBrush)
    painter.setPen(QtGui.QPen(QtGui.QColor(*EDGE), 1.0))
    painter.drawRoundedRect(inner, ROUND * ratio, ROUND * ratio)


def _font(*, bold: bool, ratio: float) -> QtGui.QFont:
    font = QtGui.QFont("DejaVu Sans")
    font.setStyleHint(QtGui.QFont.SansSerif)
    font.setPixelSize(round(POINT_SIZE * 96 / 72 * ratio))
    font.setBold(bold)
    return font


def _short(line: str) -> str:
    return line if len(line) <= LONGEST else line[: LONGEST - 1].rstrip() + "…"


def _blank(width: int, height: int) -> QtGui.QImage:
    image = QtGui.QImage(width, height, QtGui.QImage.Format_RGBA8888)
    image.fill(QtGui.QColor(0, 0, 0, 0))
    return image


def _picture(image: QtGui.QImage) -> Picture:
    width, height, line = image.width(), image.height(), image.bytesPerLine()
    data = bytes(image.constBits())
    rows = [data[i * line : i * line + 4 * width] for i in range(height)]
    return Picture(width, height, b"".join(reversed(rows)))
