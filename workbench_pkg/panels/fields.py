"""The entry fields of the tag panel. Each knows what it showed first, so that only what the user changed is written.

A field's answer is ``KEEP`` (untouched), None (say nothing of this) or a value.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from workbench_pkg.host.qt import QtCore, QtWidgets

translate = App.Qt.translate


class Sentinel:
    def __init__(self, name: str) -> None:
        self.name = name

    def __repr__(self) -> str:
        return self.name


KEEP = Sentinel("KEEP")
MIXED = Sentinel("MIXED")


def common(values: Sequence[object]) -> object:
    """The value that all share (None where none has one), or MIXED."""
    first = values[0] if values else None
    return first if all(value == first for value in values) else MIXED


class ChoiceField:
    """A list to choose from; `free` lets the user write something else."""

    def __init__(self, name: str, choices: Sequence[tuple[str, str]], free: bool = False) -> None:
        """choices: (shown, value) pairs."""
        self.widget = QtWidgets.QComboBox()
        self.widget.setObjectName(name)
        # Its line is made here and kept: the one that the list makes itself may be met as the leftover of another
        # that stood at its place in memory, and the window dies of that.
        self.line = QtWidgets.QLineEdit() if free else None
        if self.line is not None:
            self.widget.setLineEdit(self.line)
        self.widget.setMinimumContentsLength(6)
        self.widget.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        if self.line is not None:
            # Not currentIndexChanged: a list sends that once more while it is being destroyed.
            self.widget.activated.connect(self._show_beginning)
        self.choices = list(choices)
        self.first: object = None
        self.show(None)

    def show(self, value: object) -> None:
        """Show what is said so far."""
        self.first = value
        self._fill()
        self._select(value)

    def answer(self) -> object:
        now = self._current()
        return KEEP if now is MIXED or now == self.first else now

    def set(self, value: str | None) -> None:
        """Choose, as a user would."""
        self._select(value)

    def _fill(self) -> None:
        self.widget.blockSignals(True)
        self.widget.clear()
        if self.first is MIXED:
            self.widget.addItem(translate("Heartside", "(different)"), "mixed")
        self.widget.addItem(translate("Heartside", "not said"), "")
        for shown, value in self.choices:
            self.widget.addItem(shown, value)
        self.widget.blockSignals(False)

    def _select(self, value: object) -> None:
        wanted = "mixed" if value is MIXED else "" if value is None else str(value)
        index = self.widget.findData(wanted)
        if index < 0:  # something that is not in the list, from another hand
            self.widget.addItem(wanted, wanted)
            index = self.widget.count() - 1
        self.widget.setCurrentIndex(index)
        self._show_beginning()

    def _show_beginning(self, *_: object) -> None:
        """A narrow field shows where its text cursor is, and the beginning is what tells."""
        if self.line is not None:
            self.line.setCursorPosition(0)

    def _current(self) -> object:
        index = self.widget.currentIndex()
        if self.line is not None and self.widget.currentText() != self.widget.itemText(index):
            return self.widget.currentText().strip() or None
        data = self.widget.itemData(index)
        return MIXED if data == "mixed" else (data or None)


class NumberField:
    """A number that may be left unsaid. With a unit it is the host's own box and follows the host's unit system."""

    def __init__(
        self,
        name: str,
        low: float,
        high: float,
        start: float,
        unit: str = "",
        suffix: str = "",
        decimals: int = 1,
    ) -> None:
        self.widget = QtWidgets.QWidget()
        row = QtWidgets.QHBoxLayout(self.widget)
        row.setContentsMargins(0, 0, 0, 0)
        self.said = QtWidgets.QCheckBox()
        self.said.setObjectName(f"{name}Said")
        self.said.setToolTip(translate("Heartside", "Tick to say it"))
        self.unit = unit
        self.start = start
        if unit:
            self._loader = Gui.UiLoader()  # type: ignore[attr-defined]  # the widget belongs to it
            self.box: Any = self._loader.createWidget("Gui::QuantitySpinBox")
            self.box.setProperty("unit", unit)
            self.box.setProperty("minimum", low)
            self.box.setProperty("maximum", high)
        else:
            self.box = QtWidgets.QDoubleSpinBox()
            self.box.setRange(low, high)
            self.box.setDecimals(decimals)
            self.box.setSuffix(suffix)
        self.box.setObjectName(name)
        self.box.setMinimumWidth(60)  # task panels are narrow
        row.addWidget(self.said)
        row.addWidget(self.box, 1)
        self.said.toggled.connect(self.box.setEnabled)
        self.first: object = None
        self.show(None)

    def show(self, value: object) -> None:
        self.first = value
        self.said.setTristate(value is MIXED)
        known = value is not None and value is not MIXED
        if value is MIXED:
            self.said.setCheckState(_partly())
        else:
            self.said.setChecked(known)
        self.set_number(float(value) if known else self.start)  # type: ignore[arg-type]
        self.box.setEnabled(known)

    def answer(self) -> object:
        if self.first is MIXED and self.said.checkState() == _partly():
            return KEEP
        now = self.number() if self.said.isChecked() else None
        if isinstance(self.first, (int, float)) and now is not None and abs(now - self.first) < 1e-9:
            return KEEP
        return KEEP if now is None and self.first is None else now

    def set(self, value: float | None) -> None:
        """Enter, as a user would."""
        self.said.setTristate(False)
        self.said.setChecked(value is not None)
        if value is not None:
            self.set_number(value)

    def number(self) -> float:
        return float(self.box.property("rawValue") if self.unit else self.box.value())

    def set_number(self, value: float) -> None:
        if self.unit:
            self.box.setProperty("rawValue", float(value))
            self.box.findChild(QtWidgets.QLineEdit).setCursorPosition(0)
        else:
            self.box.setValue(float(value))


def _partly() -> Any:
    return QtCore.Qt.PartiallyChecked
