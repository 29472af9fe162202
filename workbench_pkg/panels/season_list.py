"""What the season panel lists: margins near their limits, numbered as in the model, then what else was found."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import FreeCAD as App

from movement_core.sheet.margins import WORTH_MARKING, Margin
from workbench_pkg.host.density import icon_sheet
from workbench_pkg.host.qt import QtCore, QtGui
from workbench_pkg.panels.report_table import mark, rank_of
from workbench_pkg.panels.season_colours import share_colour

translate = App.Qt.translate
MOST_NAMES = 3
LONGEST = 130  # letters of a row; its tip says the whole
MOST_PLACES = 24  # numbered in the model; more would hide it


@dataclass(frozen=True, eq=False)
class Row:
    """One row: its text, its sign, the parts, and the margin where it is one (else what the report found)."""

    text: str
    sign: Any
    keys: tuple[str, ...]
    margin: Margin | None = None
    tip: str = ""


def worth_marking(margins: Sequence[Margin]) -> tuple[Margin, ...]:
    """The margins that are numbered in the model."""
    return tuple(one for one in margins if one.used is None or one.used >= WORTH_MARKING)[:MOST_PLACES]


def rows_of(margins: Sequence[Margin], findings: Sequence[Mapping[str, Any]]) -> list[Row]:
    """The numbered margins, then the findings that none of them tells already."""
    made = []
    for number, margin in enumerate(margins, start=1):
        names = " + ".join(margin.names[:2])
        text = f"{names}: {margin.text}"
        if margin.used is not None:
            text = f"{text}, {month_name(margin.month)}"
        made.append(Row(text, number_sign(number, margin), margin.keys, margin))
    told = [set(margin.keys[:2]) for margin in margins]
    for finding in findings:
        keys = set(finding["keys"])
        if not any(pair <= keys for pair in told):
            parts = finding["parts"]
            names = " + ".join(parts) if len(parts) <= MOST_NAMES else f"{parts[0]} … {parts[-1]}"
            tip = f"{' + '.join(parts)}: {finding['message']}\n→ {finding['remedy']}"
            text = _short(f"{names}: {finding['message']}")
            made.append(Row(text, mark(rank_of(finding["severity"])), tuple(finding["keys"]), tip=tip))
    return made


def _short(text: str) -> str:
    return text if len(text) <= LONGEST else f"{text[:LONGEST].rsplit(' ', 1)[0]} …"


def number_sign(number: int, margin: Margin) -> QtGui.QIcon:
    """The number in the ring of its colour, as it stands in the model."""
    picture = icon_sheet(22)
    painter = QtGui.QPainter(picture)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    painter.setPen(QtGui.QPen(QtGui.QColor(*share_colour(margin.used)), 3.0))
    painter.setBrush(QtGui.QColor(252, 247, 236))
    painter.drawEllipse(QtCore.QRectF(2, 2, 18, 18))
    painter.setPen(QtGui.QColor(38, 30, 22))
    font = painter.font()
    font.setPixelSize(11)
    font.setBold(True)
    painter.setFont(font)
    painter.drawText(QtCore.QRectF(0, 0, 22, 22), QtCore.Qt.AlignCenter, str(number))
    painter.end()
    return QtGui.QIcon(picture)


def month_name(month: int) -> str:
    """A month in the language of the window; 0 = January."""
    return str(QtCore.QLocale().toString(QtCore.QDate(2025, month + 1, 1), "MMMM"))


def day_name(day: int) -> str:
    """A day of the year in the language of the window; 0 = 1 January."""
    date = QtCore.QDate(2025, 1, 1).addDays(day)
    return str(
        translate("Heartside", "{day} {month}").format(day=date.day(), month=month_name(date.month() - 1))
    )
