"""Pictures that stand over the view while the year runs: the caption, the legend, the numbers of marked places.

Dark ink on paper with a light rim, so that they read on any background.
"""

from __future__ import annotations

from collections.abc import Sequence

from workbench_pkg.host.qt import QtCore, QtGui
from workbench_pkg.panels.palette import EDGE, INK, PAPER, Colour
from workbench_pkg.views.label_art import Picture

PAD = 8
SWATCH = 14


def card(
    lines: Sequence[str], swatches: Sequence[tuple[Colour, str, str]] = (), ratio: float = 1.0
) -> Picture:
    """A card: a bold first line, the rest below it, then rows of a swatch and its words.

    swatches : colour, "fill" / "line" / "dashes", words. ratio : pixels of the screen to one of the window system's.
    """
    bold, plain = font(12.5, True, ratio), font(10.5, False, ratio)
    fonts = [bold if i == 0 else plain for i in range(len(lines))]
    heights = [QtGui.QFontMetrics(each).height() for each in fonts]
    row = max(QtGui.QFontMetrics(plain).height(), round((SWATCH + 3) * ratio))
    widths = [QtGui.QFontMetrics(each).boundingRect(line).width() for each, line in zip(fonts, lines)]
    indent = round((SWATCH * 1.6 + 7) * ratio)
    widths += [QtGui.QFontMetrics(plain).boundingRect(words).width() + indent for _, _, words in swatches]
    pad = round(PAD * ratio)
    width = max(widths, default=1) + 2 * pad + round(3 * ratio)
    height = sum(heights) + row * len(swatches) + 2 * pad
    image, painter = _sheet(width, height)
    _paper(painter, width, height, 5 * ratio)
    top = float(pad)
    for each, line, high in zip(fonts, lines, heights):
        painter.setFont(each)
        painter.setPen(QtGui.QColor(*INK))
        painter.drawText(QtCore.QPointF(pad, top + QtGui.QFontMetrics(each).ascent()), line)
        top += high
    painter.setFont(plain)
    for colour, kind, words in swatches:
        swatch(
            painter,
            QtCore.QRectF(pad, top + 2 * ratio, SWATCH * 1.6 * ratio, SWATCH * ratio),
            colour,
            kind,
            ratio,
        )
        painter.setPen(QtGui.QColor(*INK))
        below = (row - QtGui.QFontMetrics(plain).height()) / 2
        painter.drawText(
            QtCore.QPointF(pad + indent, top + below + QtGui.QFontMetrics(plain).ascent()), words
        )
        top += row
    painter.end()
    return _picture(image)


def badge(text: str, colour: Colour, ratio: float = 1.0) -> Picture:
    """A number in a ring of a colour."""
    size = round(22 * ratio)
    image, painter = _sheet(size, size)
    painter.setPen(QtGui.QPen(QtGui.QColor(255, 255, 255), 1.0 * ratio))
    painter.setBrush(QtGui.QColor(*colour))
    painter.drawEllipse(QtCore.QRectF(0.5, 0.5, size - 1, size - 1))
    painter.setBrush(QtGui.QColor(*PAPER))
    painter.setPen(QtCore.Qt.NoPen)
    inset = 3.5 * ratio
    painter.drawEllipse(QtCore.QRectF(inset, inset, size - 2 * inset, size - 2 * inset))
    painter.setFont(font(9.5, True, ratio))
    painter.setPen(QtGui.QColor(*INK))
    painter.drawText(QtCore.QRectF(0, 0, size, size), QtCore.Qt.AlignCenter, text)
    painter.end()
    return _picture(image)


def swatch(
    painter: QtGui.QPainter, box: QtCore.QRectF, colour: Colour, kind: str, ratio: float = 1.0
) -> None:
    """One sample of a legend: filled, a line, or dashes."""
    if kind == "fill":
        painter.setPen(QtGui.QPen(QtGui.QColor(*EDGE), 1.0))
        painter.setBrush(QtGui.QColor(*colour))
        painter.drawRect(box)
        return
    pen = QtGui.QPen(QtGui.QColor(*colour), 3.0 * ratio)
    if kind == "dashes":
        pen.setDashPattern([1.8, 1.2])
    painter.setPen(pen)
    painter.drawLine(box.left(), box.center().y(), box.right(), box.center().y())


def font(points: float, bold: bool, ratio: float) -> QtGui.QFont:
    """The font of our pictures, whatever the screen's density."""
    made = QtGui.QFont("DejaVu Sans")
    made.setStyleHint(QtGui.QFont.SansSerif)
    made.setPixelSize(round(points * 96 / 72 * ratio))
    made.setBold(bold)
    return made


def _sheet(width: int, height: int) -> tuple[QtGui.QImage, QtGui.QPainter]:
    image = QtGui.QImage(width, height, QtGui.QImage.Format_RGBA8888)
    image.fill(QtGui.QColor(0, 0, 0, 0))
    painter = QtGui.QPainter(image)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    return image, painter


def _paper(painter: QtGui.QPainter, width: int, height: int, rounded: float) -> None:
    painter.setPen(QtGui.QPen(QtGui.QColor(255, 255, 255, 170), 1.0))
    painter.setBrush(QtGui.QColor(*EDGE))
    painter.drawRoundedRect(QtCore.QRectF(0.5, 0.5, width - 1, height - 1), rounded, rounded)
    painter.setPen(QtGui.QPen(QtGui.QColor(*EDGE), 1.0))
    painter.setBrush(QtGui.QColor(*PAPER))
    painter.drawRoundedRect(QtCore.QRectF(1.5, 1.5, width - 3, height - 3), rounded, rounded)


def _picture(image: QtGui.QImage) -> Picture:
    width, height, line = image.width(), image.height(), image.bytesPerLine()
    data = bytes(image.constBits())
    rows = [data[i * line : i * line + 4 * width] for i in range(height)]
    return Picture(width, height, b"".join(reversed(rows)))
