"""How moist the wood is today: by the air of the shop, by a meter, or as the study says."""

from __future__ import annotations

from collections.abc import Callable

import FreeCAD as App

from movement_core.errors import InputError
from movement_core.moisture.meter import MoistureReading, air_moisture, meter_moisture
from workbench_pkg.host.qt import QtCore, QtWidgets
from workbench_pkg.host.units import in_inches
from workbench_pkg.panels.telling import explain

translate = App.Qt.translate

AIR, METER = "air", "meter"
LATER_MS = 350


class Warmth(QtWidgets.QDoubleSpinBox):
    """A temperature in the user's own degrees."""

    def __init__(self, name: str, celsius: float) -> None:
        super().__init__()
        self.setObjectName(name)
        self.fahrenheit = in_inches()
        self.setDecimals(0 if self.fahrenheit else 1)
        self.setRange(*((-20, 140) if self.fahrenheit else (-25.0, 60.0)))
        self.setSuffix(" °F" if self.fahrenheit else " °C")
        self.setValue(celsius * 1.8 + 32 if self.fahrenheit else celsius)

    def celsius(self) -> float:
        return (self.value() - 32) / 1.8 if self.fahrenheit else float(self.value())


class TodayFields(QtWidgets.QWidget):
    """The questions. ``changed`` is called once after each change of the user's, a moment later."""

    def __init__(self, changed: Callable[[], object]) -> None:
        super().__init__()
        self._timer = QtCore.QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(LATER_MS)
        self._timer.timeout.connect(changed)
        self.by = QtWidgets.QComboBox()
        self.by.setObjectName("HeartsideTodayBy")
        self.by.addItem(translate("Heartside", "Air of the shop"), AIR)
        self.by.addItem(translate("Heartside", "Moisture meter"), METER)
        self.warmth = Warmth("HeartsideTodayWarmth", 20.0)
        self.damp = QtWidgets.QDoubleSpinBox()
        self.damp.setObjectName("HeartsideTodayDamp")
        self.damp.setRange(1.0, 95.0)
        self.damp.setDecimals(0)
        self.damp.setSuffix(" %")
        self.damp.setValue(50.0)
        self.readings = QtWidgets.QLineEdit()
        self.readings.setObjectName("HeartsideTodayReadings")
        self.readings.setPlaceholderText("9.5  10  9.0")
        self.kind = QtWidgets.QComboBox()
        self.kind.setObjectName("HeartsideTodayKind")
        self.kind.addItem(translate("Heartside", "with pins"), "pin")
        self.kind.addItem(translate("Heartside", "with a pad"), "pad")
        self.species = QtWidgets.QDoubleSpinBox()
        self.species.setObjectName("HeartsideTodaySpecies")
        self.species.setRange(-10.0, 10.0)
        self.species.setDecimals(1)
        self.species.setSingleStep(0.5)
        self.species.setSuffix(" %")
        self.set_to_species = QtWidgets.QCheckBox(translate("Heartside", "Species correction"))
        self.set_to_species.setObjectName("HeartsideTodaySpeciesSaid")
        self.wood = Warmth("HeartsideTodayWood", 20.0)
        self.wood_said = QtWidgets.QCheckBox(translate("Heartside", "Wood's temperature"))
        self.wood_said.setObjectName("HeartsideTodayWoodSaid")
        self.air_box, self.meter_box = QtWidgets.QWidget(), QtWidgets.QWidget()
        self._lay_out()
        self._explain()
        self._show_boxes()
        self.by.activated.connect(lambda *_: self._asked())
        self.kind.activated.connect(lambda *_: self._asked())
        for box in (self.warmth, self.damp, self.species, self.wood):
            box.valueChanged.connect(lambda *_: self._timer.start())
        self.readings.textChanged.connect(lambda *_: self._timer.start())
        for tick in (self.set_to_species, self.wood_said):
            tick.toggled.connect(lambda *_: self._asked())

    def reading(self) -> MoistureReading:
        """The wood's moisture by what is entered.

        Raises
        ------
        InputError : nothing, or something that no meter shows.
        """
        if self.by.itemData(self.by.currentIndex()) == AIR:
            return air_moisture(self.warmth.celsius(), self.damp.value())
        kind = self.kind.itemData(self.kind.currentIndex())
        return meter_moisture(
            self._typed(),
            kind=kind,
            wood_temperature_c=self.wood.celsius() if kind == "pin" and self.wood_said.isChecked() else None,
            species_correction=self.species.value() if self.set_to_species.isChecked() else None,
        )

    def waits(self) -> bool:
        return bool(self._timer.isActive())

    def stop(self) -> None:
        self._timer.stop()

    def _typed(self) -> list[float]:
        pieces = self.readings.text().replace("%", " ").replace(";", " ").split()
        try:
            values = [float(piece.strip(",").replace(",", ".")) for piece in pieces]
        except ValueError:
            values = []
        if not values:
            raise InputError(
                translate("Heartside", "no reading of the meter"),
                allowed=translate("Heartside", "one number or several, in percent"),
                todo=translate("Heartside", "enter what the meter shows, a number for each place measured"),
            )
        return values

    def _asked(self) -> None:
        self._show_boxes()
        self._timer.start()

    def _show_boxes(self) -> None:
        by_air = self.by.itemData(self.by.currentIndex()) == AIR
        self.air_box.setVisible(by_air)
        self.meter_box.setVisible(not by_air)
        pins = self.kind.itemData(self.kind.currentIndex()) == "pin"
        self.wood_said.setEnabled(pins)
        self.wood.setEnabled(pins and self.wood_said.isChecked())
        self.species.setEnabled(self.set_to_species.isChecked())

    def _lay_out(self) -> None:
        column = QtWidgets.QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.by)
        air = QtWidgets.QFormLayout(self.air_box)
        air.addRow(translate("Heartside", "Temperature"), self.warmth)
        air.addRow(translate("Heartside", "Relative humidity"), self.damp)
        meter = QtWidgets.QFormLayout(self.meter_box)
        meter.addRow(translate("Heartside", "Readings, %"), self.readings)
        meter.addRow(translate("Heartside", "Meter"), self.kind)
        meter.addRow(self.set_to_species, self.species)
        meter.addRow(self.wood_said, self.wood)
        for form, box in ((air, self.air_box), (meter, self.meter_box)):
            form.setContentsMargins(0, 0, 0, 0)
            form.setRowWrapPolicy(QtWidgets.QFormLayout.WrapLongRows)
            column.addWidget(box)

    def _explain(self) -> None:
        for widget, text in (
            (self.by, translate("Heartside", "What tells how moist the wood is today")),
            (self.warmth, translate("Heartside", "Of the air in which the wood has lain")),
            (self.damp, translate("Heartside", "Of the air in which the wood has lain")),
            (
                self.readings,
                translate(
                    "Heartside",
                    "What the meter shows, with blanks between; several places tell more than one",
                ),
            ),
            (self.kind, translate("Heartside", "Pins read low in cold wood; a pad reads by density")),
            (
                self.set_to_species,
                translate(
                    "Heartside",
                    "Points to add, from the table of the meter; 0 where it is set to the species. "
                    "Without it the doubt is larger.",
                ),
            ),
            (
                self.wood_said,
                translate(
                    "Heartside", "Where the meter corrects by itself, enter the temperature that it is set to"
                ),
            ),
        ):
            explain(widget, text)
