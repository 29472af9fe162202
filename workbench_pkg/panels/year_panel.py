"""Task panel: choose the year of air that the piece will live in."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core import Year
from movement_core.air.daily import DailyAir
from movement_core.air.indoor import Rooms
from movement_core.air.places import all_places
from movement_core.air.presets import all_years
from movement_core.air.year import MONTHS
from movement_core.errors import HeartsideError
from movement_core.names import words
from movement_core.sources import told_basis
from movement_core.wording import say
from workbench_pkg.actions.settings import DEFAULT_YEAR, FILES, LoggerAnswers, air_from_text, is_logger
from workbench_pkg.actions.year import answers_of, year_of
from workbench_pkg.host.preferences import usual_year
from workbench_pkg.host.qt import QtGui, QtWidgets
from workbench_pkg.panels import recorded, rows
from workbench_pkg.panels.accepting import Accepting
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.logger_questions import LoggerQuestions, in_words
from workbench_pkg.panels.telling import attempt, explain, told
from workbench_pkg.panels.year_curve import YearCurve

translate = App.Qt.translate


class YearPanel(Accepting):
    """Our years, places taken indoors, or a file; the chosen one as a curve. Taking it is one undo step."""

    def __init__(self, doc: Any) -> None:
        self.doc = doc
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsideYearPanel")
        self.form.setWindowTitle(translate("Heartside", "Year of air"))
        self.form.setWindowIcon(QtGui.QIcon(icon("set_year")))
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(2, 2, 2, 2)  # task panels are narrow
        question = QtWidgets.QLabel(translate("Heartside", "Where will the piece stand?"))
        question.setStyleSheet("font-weight: bold")
        self.list = QtWidgets.QListWidget()
        self.list.setObjectName("HeartsideYearList")
        self.list.setMinimumHeight(200)
        self.search = QtWidgets.QLineEdit()
        self.search.setObjectName("HeartsideYearSearch")
        self.search.setClearButtonEnabled(True)
        self.search.setPlaceholderText(translate("Heartside", "Search: home, office, a city …"))
        self.file = QtWidgets.QPushButton(translate("Heartside", "From a file of months or a logger …"))
        self.file.setObjectName("HeartsideYearFile")
        explain(
            self.list,
            translate(
                "Heartside",
                "Kinds of home and places. The figures are the moisture that its air brings wood to, "
                "in the driest and the wettest month.",
            ),
        )
        explain(self.search, translate("Heartside", "Show only what has these beginnings of words"))
        explain(
            self.file,
            translate(
                "Heartside",
                "Twelve lines of temperature and humidity, or what a logger wrote over a year or part of one",
            ),
        )
        self.years: list[Year] = []  # one a row, and the text it is kept by
        self.texts: list[str] = []
        self.curve = YearCurve()
        self.about, self.trouble = QtWidgets.QLabel(), QtWidgets.QLabel()
        self.about.setObjectName("HeartsideYearAbout")
        self.trouble.setObjectName("HeartsideTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        for label in (self.about, self.trouble):
            label.setWordWrap(True)
        for year in all_years():
            self._add(year.name, year)
        for place in all_places():
            self._add(f"{place.name}, {place.country}", place.indoors(Rooms()))
        self.questions = LoggerQuestions(self.texts)
        for part in (
            *(question, self.search, self.list, self.file),
            *(self.trouble, self.questions),  # what is wrong stands above what mends it
            *(self.curve, self.about),
        ):
            column.addWidget(part)
        column.addStretch(1)
        self.asked_file = ""  # the logger's file that the questions are about
        self.questions.changed.connect(self._answered)
        self.search.textChanged.connect(self._filter)
        self.list.currentRowChanged.connect(self._tell)
        self.file.clicked.connect(self._ask_file)
        self.first = year_of(doc)
        self.first_answers = answers_of(doc)
        self.choose(self.first or usual_year() or DEFAULT_YEAR, self.first_answers)
        self.live_with(doc.Name)

    def choose(self, text: str, answers: Mapping[str, Any] | None = None) -> None:
        """Choose a year by name, or add and choose one from a file, with answers to what the file leaves open."""
        self.trouble.setText("")
        if text in self.texts:
            self.list.setCurrentRow(self.texts.index(text))
            return
        if is_logger(text):
            self.asked_file = text
            self.questions.ask_about(text, dict(answers or {}))
            self._answered()
        else:
            self._read(text, None)

    def _answered(self) -> None:
        self.trouble.setText("")
        self._read(self.asked_file, self.questions.answers())

    def _read(self, text: str, answers: dict[str, Any] | None) -> None:
        try:
            air = air_from_text(text, answers=LoggerAnswers(**answers) if answers else None)
        except (HeartsideError, OSError) as error:
            self.trouble.setText(in_words(error))
            self._forget(text)
            return
        year = air.months if isinstance(air, DailyAir) else air
        if text in self.texts:
            row = self.texts.index(text)
            self.years[row] = year
            rows.write(self.list, row, text=self._shown(text, year))
        else:
            self._add(text, year)
        self.list.setCurrentRow(self.texts.index(text))
        self._tell(self.list.currentRow())

    def _forget(self, text: str) -> None:
        """A file that cannot be read with these answers cannot be chosen."""
        if text in self.texts:
            row = self.texts.index(text)
            del self.texts[row], self.years[row]
            self.list.model().removeRow(row)

    def does(self) -> str:
        return translate("Heartside", "Take this year")

    def accept(self) -> bool:
        row = self.list.currentRow()
        if row < 0 or self.list.isRowHidden(row):
            self.trouble.setText(translate("Heartside", "Choose a year first."))
            return False
        if self.trouble.text() and self.asked_file and self.asked_file not in self.texts:
            return False  # the file that was asked for is not read yet
        name = self.texts[row]
        answers = self.questions.answers() if name == self.asked_file else {}
        return attempt(lambda: self._set(name, answers), self.trouble) and self.leave()

    def _set(self, name: str, answers: dict[str, Any]) -> None:
        """Make this the document's year, if it is another than before."""
        if (name, answers) != (self.first, self.first_answers):
            said = [repr(name), *([repr(answers)] if answers else [])]
            recorded.run("year", "set_year", recorded.document(self.doc), *said)
            told(translate("Heartside", "Year: {name}").format(name=name))

    def _add(self, text: str, year: Year) -> None:
        self.texts.append(text)  # first: adding the row may make it the current one
        self.years.append(year)
        rows.append(self.list, self._shown(text, year), tip=say(year.name), data=text)

    @staticmethod
    def _shown(text: str, year: Year) -> str:
        dry, wet = year.moisture[year.driest_month], year.moisture[year.wettest_month]
        shown = Path(text).name if Path(text).suffix.lower() in FILES else say(text)
        return f"{shown}\n      {dry:.1f} … {wet:.1f} %"

    def _filter(self, text: str) -> None:
        for row, (name, year) in enumerate(zip(self.texts, self.years)):
            known = words(f"{name} {year.name} {say(name)}")
            self.list.setRowHidden(
                row, not all(any(word.startswith(part) for word in known) for part in words(text))
            )

    def _tell(self, row: int) -> None:
        year = self.years[row] if row >= 0 else None
        self.questions.setVisible(row >= 0 and self.texts[row] == self.asked_file)
        self.curve.show_year(year)
        if year is None:
            self.about.setText("")
            return
        words = translate("Heartside", "Wood is driest in {dry} and wettest in {wet}. Basis: {basis}")
        self.about.setText(
            words.format(
                dry=say(MONTHS[year.driest_month]),
                wet=say(MONTHS[year.wettest_month]),
                basis=told_basis(year.basis),
            )
        )

    def _ask_file(self) -> None:
        title = translate("Heartside", "A file of twelve months or of a logger")
        kinds = f"{translate('Heartside', 'Tables')} ({' '.join(f'*{ending}' for ending in FILES)})"
        answer = QtWidgets.QFileDialog.getOpenFileName(Gui.getMainWindow(), title, "", kinds)
        if answer[0]:
            self.choose(answer[0])
