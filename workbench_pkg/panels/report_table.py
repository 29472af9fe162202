"""The table of a report: one row a board, sizes in the host's unit system."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import FreeCAD as App

from movement_core.wording import say
from workbench_pkg.host.density import icon_sheet
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets, enum_value
from workbench_pkg.host.units import length_text
from workbench_pkg.panels import rows
from workbench_pkg.panels.palette import rank_colour

translate = App.Qt.translate
_RIGHT = QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter


def headings() -> list[str]:
    return [
        translate("Heartside", "Board"),
        translate("Heartside", "Material"),
        translate("Heartside", "Rings"),
        translate("Heartside", "Width drawn"),
        translate("Heartside", "Today"),
        translate("Heartside", "Driest"),
        translate("Heartside", "Wettest"),
        translate("Heartside", "Thickness"),
        translate("Heartside", "Cup"),
    ]


class ReportTable(QtWidgets.QTableWidget):
    """Rows carry the key of their board."""

    def __init__(self) -> None:
        super().__init__(0, len(headings()))
        self.setObjectName("HeartsideReportTable")
        self.setHorizontalHeaderLabels(headings())
        self.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.setSelectionMode(QtWidgets.QAbstractItemView.ExtendedSelection)
        self.setAlternatingRowColors(True)
        self.verticalHeader().hide()
        self.horizontalHeader().setHighlightSections(False)
        self.setWordWrap(False)

    def fill(self, entry: Mapping[str, Any]) -> None:
        self.setRowCount(0)
        ranks = ranks_of(entry)
        self.setRowCount(len(entry["parts"]))
        for row, part in enumerate(entry["parts"]):
            for column, text in enumerate(cells(part)):
                rows.write(self, row, column, text=text, tip=explanation(part, column), data=[part["key"]])
                if column >= 3:
                    rows.write(self, row, column, alignment=enum_value(_RIGHT))
            rows.write(self, row, 0, picture=mark(ranks.get(part["key"], 0)))
        self.resizeColumnsToContents()
        self.resizeRowsToContents()

    def chosen_keys(self) -> list[str]:
        chosen = sorted({index.row() for index in self.selectedIndexes()})
        return [key for row in chosen for key in rows.read(self, row) or []]


_DATED = {4: "today", 5: "driest", 6: "wettest"}  # columns of a size that rests on a moisture


def explanation(part: Mapping[str, Any], column: int) -> str:
    """What stands behind a cell: what nobody said, and how far off a size may well be."""
    lines = []
    if part["missing"]:
        lines.append(
            translate("Heartside", "Not said: {facts}").format(
                facts=", ".join(say(fact) for fact in part["missing"])
            )
        )
    doubt = (part.get("doubt") or {}).get(_DATED.get(column, ""))
    if doubt:
        words = translate("Heartside", "Likely between {low} and {high}; most of that is: {what}")
        low, high = (length_text(v) for v in doubt["likely_mm"])
        lines.append(words.format(low=low, high=high, what=doubt["rules"]))
    return "\n".join(lines)


def cells(part: Mapping[str, Any]) -> list[str]:
    """The texts of a row; "?" is what is not known."""
    rings = say(part["cut"]) if part["cut"] else ("?" if part["kind"] in (None, "wood") else "")
    if part["ring_angle_deg"] is not None:
        rings = f"{rings} {part['ring_angle_deg']:.0f}°"
    cup = part["cup"]
    return [
        part["name"],
        part["species"] or "?",
        rings,
        "?" if part["width_mm"] is None else length_text(part["width_mm"]),
        size(part, "today"),
        size(part, "driest"),
        size(part, "wettest"),
        span(part["thickness"]),
        span(cup, signed=True) if cup else "",
    ]


def size(group: Mapping[str, Any], name: str) -> str:
    """One size, or the least and the most it can be, with its month."""
    value, spread, month = group[f"{name}_mm"], group.get(f"{name}_range_mm"), group.get(f"{name}_month")
    if value is None and not spread:
        return "?"
    text = length_text(value) if value is not None else " – ".join(length_text(v) for v in spread or ())
    return f"{text} {say(month)[:3]}" if month else text


def span(group: Mapping[str, Any] | None, signed: bool = False) -> str:
    """Driest and wettest in one cell; a cup with its sign, + a crown on the show face."""
    if not group:
        return "?"
    texts = []
    for name in ("driest", "wettest"):
        values = group.get(f"{name}_range_mm") or [group[f"{name}_mm"]]
        if values[0] is None:
            return "?"
        texts.append(" – ".join(("+" if signed and v > 0 else "") + length_text(v) for v in values))
    return texts[0] if texts[0] == texts[1] else f"{texts[0]} … {texts[1]}"


def ranks_of(entry: Mapping[str, Any]) -> dict[str, int]:
    """Worst rank among the findings of each board, by its key."""
    ranks: dict[str, int] = {}
    for finding in entry["findings"]:
        for key in finding["keys"]:
            ranks[key] = max(ranks.get(key, 0), rank_of(finding["severity"]))
    return ranks


def rank_of(severity: str) -> int:
    """0 nothing, 1 look at it, 2 it will not hold or will not work."""
    return {"breaks": 2, "jams": 2}.get(severity, 1)


def mark(rank: int) -> QtGui.QIcon:
    """A small sign of a rank: a disc, a triangle or a square, each in its colour."""
    picture = icon_sheet(16)
    painter = QtGui.QPainter(picture)
    painter.setRenderHint(QtGui.QPainter.Antialiasing)
    painter.setPen(QtCore.Qt.NoPen)
    painter.setBrush(QtGui.QColor(*rank_colour(rank)))
    if rank == 0:
        painter.drawEllipse(QtCore.QRectF(5, 5, 6, 6))
    elif rank == 1:
        corners = [QtCore.QPointF(8, 2), QtCore.QPointF(15, 14), QtCore.QPointF(1, 14)]
        painter.drawPolygon(QtGui.QPolygonF(corners))
    else:
        painter.drawRect(QtCore.QRectF(2, 2, 12, 12))
    painter.end()
    return QtGui.QIcon(picture)
