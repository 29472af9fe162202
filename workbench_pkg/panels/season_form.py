"""The widgets of the season panel and how they stand; what they do is the panel's."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD as App

from movement_core.air.daily import DAYS
from movement_core.sheet.motion import PieceMotion
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.panels import rows
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.season_list import Row
from workbench_pkg.panels.season_widgets import SectionView, YearCourse

translate = App.Qt.translate

FACTORS = (1, 2, 5, 10, 20, 50)
USUAL_FACTOR = 10
NAME = "HeartsideSeasonPanel"


class SeasonForm:
    """Made by the panel once it knows its scene, rows and sections."""

    scene: Any
    motion: PieceMotion
    rows: list[Row]
    sections: list[tuple[str, tuple[int, ...]]]
    # What the widgets set off; the panel gives them.
    show_day: Callable[[int], None]
    play: Callable[[bool], None]
    all_off: Callable[[], None]
    _safely: Callable[[Callable[[], object]], None]
    _switch: Callable[[str, bool], None]
    _chosen: Callable[[], None]
    _show_section: Callable[[int], None]
    _work_out_again: Callable[[], None]

    # ---- widgets ------------------------------------------------------------------------------------------

    def _make_widgets(self) -> None:
        self.form = QtWidgets.QWidget()
        self.form.setObjectName(NAME)
        self.form.setWindowTitle(translate("Heartside", "The year in the model"))
        self.form.setWindowIcon(QtGui.QIcon(icon("see_year")))
        self.date, self.air = QtWidgets.QLabel(), QtWidgets.QLabel()
        self.date.setObjectName("HeartsideSeasonDate")
        self.date.setStyleSheet("font-weight: bold; font-size: 15pt")
        self.air.setObjectName("HeartsideSeasonAir")
        self.course = YearCourse(self.motion.mc, self.motion.air_mc, self.show_day)
        self.slider = QtWidgets.QSlider(QtCore.Qt.Horizontal)
        self.slider.setObjectName("HeartsideSeasonDay")
        self.slider.setRange(0, DAYS - 1)
        self.slider.setPageStep(30)
        self.slider.setAccessibleName(translate("Heartside", "Day of the year"))
        self.slider.setToolTip(translate("Heartside", "Day of the year; Page Up and Page Down go by a month"))
        self.slider.setValue(self.motion.today)
        self.slider.valueChanged.connect(lambda day: self._safely(lambda: self.show_day(day)))
        self.run = self._button("HeartsideSeasonPlay", translate("Heartside", "Play"))
        self.run.setCheckable(True)
        self.run.toggled.connect(self.play)
        self.jumps = []
        for name, text, day in (
            ("Driest", translate("Heartside", "Driest"), self.motion.driest_day),
            ("Wettest", translate("Heartside", "Wettest"), self.motion.wettest_day),
            ("Today", translate("Heartside", "Today"), self.motion.today),
        ):
            button = self._button(f"HeartsideSeason{name}", text)
            button.setMinimumWidth(40)
            button.clicked.connect(lambda *_, day=day: self.show_day(day))
            self.jumps.append(button)
        self.magnify = QtWidgets.QComboBox()
        self.magnify.setObjectName("HeartsideSeasonFactor")
        self.magnify.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        self.magnify.setMinimumContentsLength(4)
        for factor in FACTORS:
            if factor <= self.motion.most_factor:
                text = translate("Heartside", "true size") if factor == 1 else f"{factor} ×"
                self.magnify.addItem(text, factor)
        self.magnify.setCurrentIndex(max(self.magnify.findData(USUAL_FACTOR), 0))
        self.magnify.setToolTip(
            translate("Heartside", "Colours, figures and findings are always those of the true movement")
        )
        self.magnify.activated.connect(lambda *_: self._safely(lambda: self.show_day(self.slider.value())))
        self.layers = {}
        for layer, text, tip, on in (
            (
                "colours",
                translate("Heartside", "Colours by limit"),
                translate("Heartside", "How much of its room a part uses before it jams, splits or shows"),
                True,
            ),
            (
                "places",
                translate("Heartside", "Numbers where tight"),
                translate(
                    "Heartside",
                    "Gaps, grooves and joints that use half of their room or more, as listed below",
                ),
                True,
            ),
            (
                "ghosts",
                translate("Heartside", "Driest and wettest"),
                translate("Heartside", "Outlines of the piece on its driest and its wettest day"),
                False,
            ),
            (
                "rings",
                translate("Heartside", "Rings and grain"),
                translate(
                    "Heartside",
                    "Rings on the ends, an arrow along the grain; dashed where not said but inferred",
                ),
                False,
            ),
            (
                "caption",
                translate("Heartside", "Day and air"),
                translate(
                    "Heartside", "The day, its air and the moisture of the wood in a corner of the view"
                ),
                True,
            ),
        ):
            box = QtWidgets.QCheckBox(text)
            box.setObjectName(f"HeartsideSeason_{layer}")
            box.setToolTip(tip)
            box.setChecked(on)
            box.toggled.connect(lambda on, layer=layer: self._safely(lambda: self._switch(layer, on)))
            self.layers[layer] = box
        self.off = self._button("HeartsideSeasonOff", translate("Heartside", "Only the piece"))
        self.off.clicked.connect(lambda *_: self.all_off())
        self.list = QtWidgets.QListWidget()
        self.list.setObjectName("HeartsideSeasonList")
        self.list.setWordWrap(True)
        self.list.setMinimumHeight(110)
        self.list.setIconSize(QtCore.QSize(22, 22))
        for row in self.rows:
            rows.append(self.list, row.text, picture=row.sign, tip=row.tip or row.text)
        if not self.rows:
            self.list.addItem(translate("Heartside", "Nothing uses half of its room."))
        self.list.itemSelectionChanged.connect(lambda: self._safely(self._chosen))
        self.which, self.section = QtWidgets.QComboBox(), SectionView()
        self.which.setObjectName("HeartsideSeasonWhich")
        self.which.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        self.which.setMinimumContentsLength(8)
        for name, _ in self.sections:
            self.which.addItem(name)
        self.which.activated.connect(lambda *_: self._safely(lambda: self._show_section(self.slider.value())))
        self.stale = QtWidgets.QLabel(
            translate("Heartside", "The model has changed since this was worked out.")
        )
        self.stale.setObjectName("HeartsideSeasonStale")
        self.stale.setWordWrap(True)
        self.renew = self._button("HeartsideSeasonAgain", translate("Heartside", "Work out again"))
        self.renew.clicked.connect(lambda *_: self._work_out_again())

    @staticmethod
    def _button(name: str, text: str) -> QtWidgets.QPushButton:
        button = QtWidgets.QPushButton(text)
        button.setObjectName(name)
        button.setAutoDefault(False)
        return button

    def _lay_out(self) -> None:
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(2, 2, 2, 2)  # task panels are narrow
        for part in (self.stale, self.renew):
            part.setVisible(False)
            column.addWidget(part)
        for part in (self.date, self.air, self.course, self.slider):
            column.addWidget(part)
        jumps = QtWidgets.QHBoxLayout()
        for button in self.jumps:
            jumps.addWidget(button)
        column.addLayout(jumps)
        size = QtWidgets.QHBoxLayout()
        self.run.setMinimumWidth(50)
        size.addWidget(self.run, 1)
        size.addWidget(QtWidgets.QLabel(translate("Heartside", "Movement")))
        size.addWidget(self.magnify)
        column.addLayout(size)
        for box in self.layers.values():
            column.addWidget(box)
        column.addWidget(self.off)
        column.addWidget(self._heading(translate("Heartside", "What is close to its limit")))
        column.addWidget(self.list, 1)
        if self.sections:
            column.addWidget(self._heading(translate("Heartside", "Section")))
            column.addWidget(self.which)
            column.addWidget(self.section)
        note = QtWidgets.QLabel(self._note())
        note.setObjectName("HeartsideSeasonNote")
        note.setWordWrap(True)
        column.addWidget(note)

    @staticmethod
    def _heading(text: str) -> QtWidgets.QLabel:
        label = QtWidgets.QLabel(text)
        label.setStyleSheet("font-weight: bold")
        return label

    def _note(self) -> str:
        """What this picture leaves out."""
        lines = [translate("Heartside", "Boards are shown as they would lie if nothing held them flat.")]
        flat = sum(bool(part.untold) for part in self.motion.parts)
        if flat:
            words = translate(
                "Heartside", "{count} of {all} parts are shown without a cup: rings or moisture not said."
            )
            lines.append(words.format(count=flat, all=len(self.motion.parts)))
        if self.scene.unmeshed:
            words = translate("Heartside", "Not shown, the host gives no mesh of them: {names}")
            lines.append(words.format(names=", ".join(self.scene.unmeshed)))
        return " ".join(lines)
