"""Our page among the host's preferences."""

from __future__ import annotations

import FreeCAD as App

from movement_core.air.presets import all_years
from movement_core.piece.top_plan import FLATNESS_MM
from movement_core.wording import say
from workbench_pkg.actions.settings import DEFAULT_YEAR
from workbench_pkg.host import preferences
from workbench_pkg.host.qt import QtWidgets
from workbench_pkg.panels.fields import NumberField
from workbench_pkg.panels.telling import explain

translate = App.Qt.translate


class PreferencesPage:
    """The host shows ``form``, and calls ``loadSettings`` and ``saveSettings``."""

    def __init__(self) -> None:
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsidePreferences")
        self.form.setWindowTitle(translate("Heartside", "General"))
        column = QtWidgets.QVBoxLayout(self.form)
        box = QtWidgets.QGroupBox(translate("Heartside", "Where the document says nothing else"))
        fields = QtWidgets.QFormLayout(box)
        self.year = QtWidgets.QComboBox()
        self.year.setObjectName("HeartsideUsualYear")
        explain(
            self.year, translate("Heartside", "Air that a piece lives in until its own year of air is chosen")
        )
        usual = translate("Heartside", "{name} (usual)").format(name=say(DEFAULT_YEAR))
        self.year.addItem(usual, "")
        for year in all_years():
            if year.name != DEFAULT_YEAR:
                self.year.addItem(say(year.name), year.name)
        self.flatness = NumberField("HeartsideUsualFlatness", 0.1, 50.0, FLATNESS_MM, "mm")
        explain(
            self.flatness.widget,
            translate("Heartside", "The most that a table top may be out of flat in any month"),
        )
        fields.addRow(translate("Heartside", "Year of air"), self.year)
        fields.addRow(translate("Heartside", "Flatness of a top"), self.flatness.widget)
        looks = QtWidgets.QGroupBox(translate("Heartside", "In the 3D view"))
        row = QtWidgets.QVBoxLayout(looks)
        self.labels = QtWidgets.QCheckBox(
            translate("Heartside", "Show a label at every board after annotating")
        )
        self.labels.setObjectName("HeartsideShowLabels")
        explain(
            self.labels,
            translate("Heartside", "Without it the labels stand in the tree and can be shown one by one"),
        )
        row.addWidget(self.labels)
        for part in (box, looks):
            column.addWidget(part)
        column.addStretch(1)

    def loadSettings(self) -> None:
        self.year.setCurrentIndex(max(0, self.year.findData(preferences.usual_year())))
        self.flatness.show(preferences.usual_flatness_mm())
        self.labels.setChecked(preferences.shows_labels())

    def saveSettings(self) -> None:
        flatness = self.flatness.number() if self.flatness.said.isChecked() else None
        preferences.keep(self.year.currentData() or "", flatness, self.labels.isChecked())
