"""What a logger's file leaves open, asked in words: order of dates, unit, columns, months without readings."""

from __future__ import annotations

import re
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import FreeCAD as App

from movement_core.air.logger_table import cells_of, decode, lines_of
from movement_core.errors import HeartsideError
from movement_core.wording import say
from workbench_pkg.host.qt import QtCore, QtWidgets

translate = App.Qt.translate

COLUMNS = ("date", "time", "temperature", "humidity")
_LOOKED_AT = 40  # lines: headings stand above the readings
_READ_BYTES = 20000
_WIDEST = 24  # letters of a sample


class LoggerQuestions(QtWidgets.QGroupBox):
    """Lists to choose from; "" in each means that the file itself tells. ``changed`` is sent when one is chosen."""

    changed = QtCore.Signal()

    def __init__(self, airs: Sequence[str]) -> None:
        """airs: names of the years and places that can complete a file of fewer than twelve months."""
        super().__init__(translate("Heartside", "What the file leaves open"))
        self.setObjectName("HeartsideLogger")
        form = QtWidgets.QFormLayout(self)
        form.setRowWrapPolicy(QtWidgets.QFormLayout.WrapLongRows)
        itself = translate("Heartside", "as the file shows")
        self.dates = self._list(
            "HeartsideLoggerDates",
            [
                (itself, ""),
                (translate("Heartside", "day, month, year"), "dmy"),
                (translate("Heartside", "month, day, year"), "mdy"),
                (translate("Heartside", "year, month, day"), "ymd"),
            ],
        )
        self.unit = self._list("HeartsideLoggerUnit", [(itself, ""), ("°C", "C"), ("°F", "F")])
        self.columns = {
            what: self._list(f"HeartsideLogger{what.title()}", [(itself, "")]) for what in COLUMNS
        }
        nothing = translate("Heartside", "nothing: all twelve were logged")
        self.completing = self._list(
            "HeartsideLoggerRest", [(nothing, ""), *((say(air), air) for air in airs)]
        )
        form.addRow(translate("Heartside", "Dates are written"), self.dates)
        form.addRow(translate("Heartside", "Temperatures are in"), self.unit)
        form.addRow(translate("Heartside", "Column of the date"), self.columns["date"])
        form.addRow(translate("Heartside", "Column of the time"), self.columns["time"])
        form.addRow(translate("Heartside", "Column of the temperature"), self.columns["temperature"])
        form.addRow(translate("Heartside", "Column of the humidity"), self.columns["humidity"])
        form.addRow(translate("Heartside", "Months not logged come from"), self.completing)
        self.hide()

    def ask_about(self, path: str, answers: dict[str, Any] | None = None) -> None:
        """Offer the columns of a file, with what was answered before."""
        given = answers or {}
        shown = _columns_of(path)
        for what, widget in self.columns.items():
            while widget.count() > 1:
                widget.removeItem(1)
            for number, text in enumerate(shown, 1):
                widget.addItem(text, str(number))
            _choose(widget, str((given.get("columns") or {}).get(what, "")))
        _choose(self.dates, given.get("date_order") or "")
        _choose(self.unit, given.get("temperature_unit") or "")
        _choose(self.completing, given.get("complete_with") or "")
        self.show()

    def answers(self) -> dict[str, Any]:
        """What was answered, by the names that actions know; what is left to the file is absent."""
        columns = {what: int(said) for what, box in self.columns.items() if (said := box.currentData())}
        found: dict[str, Any] = {
            "date_order": self.dates.currentData(),
            "temperature_unit": self.unit.currentData(),
            "columns": columns,
            "complete_with": self.completing.currentData(),
        }
        return {name: value for name, value in found.items() if value}

    def _list(self, name: str, choices: Sequence[tuple[str, str]]) -> QtWidgets.QComboBox:
        box = QtWidgets.QComboBox()
        box.setObjectName(name)
        box.setMinimumContentsLength(8)
        box.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        for shown, value in choices:
            box.addItem(shown, value)
        box.activated.connect(lambda *_: self.changed.emit())
        return box


def in_words(error: Exception) -> str:
    """An error of reading, with the fields of the panel in place of what the library calls them."""
    text = str(error)
    pairs = {
        "date_order": translate("Heartside", "“Dates are written”"),
        "temperature_unit": translate("Heartside", "“Temperatures are in”"),
        "columns": translate("Heartside", "“Column of …”"),
        "complete_with": translate("Heartside", "“Months not logged come from”"),
    }
    values = {
        "dmy": translate("Heartside", "day, month, year"),
        "mdy": translate("Heartside", "month, day, year"),
        "ymd": translate("Heartside", "year, month, day"),
        "C": "°C",
        "F": "°F",
    }

    def put(match: re.Match[str]) -> str:
        value = values.get(match[2] or "", "")
        return pairs[match[1]] + (f" = {value}" if value else "")

    return re.sub(rf"\b({'|'.join(pairs)})\b(?:=(?:'(\w+)'|…|{{[^}}]*}}))?", put, text)


def _columns_of(path: str) -> list[str]:
    """Each column by its number, what stands above it, and a sample of what is in it."""
    try:
        with Path(path).open("rb") as stream:
            lines = [line for line in lines_of(decode(stream.read(_READ_BYTES), path)) if line.strip()]
    except (OSError, HeartsideError):
        return []
    lines = lines[:_LOOKED_AT]
    parted = max(
        ([cells_of(line, mark) for line in lines] for mark in ("\t", ";", ",")),
        key=lambda rows: sorted(len(row) for row in rows)[len(rows) // 2] if rows else 0,
    )
    widest = max((len(row) for row in parted), default=0)
    full = [row for row in parted if len(row) == widest]
    if widest < 2 or not full:
        return []
    heads = [cell.strip() for cell in full[0]]
    sample = [cell.strip() for cell in full[-1]]
    told = [head if head == one else f"{head}: {one}" for head, one in zip(heads, sample)]
    return [f"{number}  {text[:_WIDEST]}" for number, text in enumerate(told, 1)]


def _choose(box: QtWidgets.QComboBox, value: str) -> None:
    at = box.findData(value)
    if at < 0:  # a heading that was named from elsewhere
        box.addItem(value, value)
        at = box.count() - 1
    box.setCurrentIndex(at)
