"""Task panel: the gaps to set today by the air of the shop or a meter, and what each becomes.

The document is not changed, unless the day is kept in it.
"""

from __future__ import annotations

import datetime
from collections.abc import Callable, Generator
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.air.year import MONTHS
from movement_core.errors import HeartsideError
from movement_core.moisture.meter import MoistureReading
from movement_core.sheet.today_gaps import as_table, cells
from movement_core.wording import say
from workbench_pkg.actions.check import Answer
from workbench_pkg.actions.today import Today, read_placed, todays
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets, enum_value
from workbench_pkg.host.units import set_step_mm, set_text
from workbench_pkg.panels import recorded, rows, stale, working
from workbench_pkg.panels.closing import ClosingPanel
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.season_watch import SeasonWatch
from workbench_pkg.panels.telling import attempt, explain, told
from workbench_pkg.panels.today_fields import TodayFields
from workbench_pkg.panels.working_out import work_out_soon

translate = App.Qt.translate
NAME = "HeartsideTodayPanel"
WORK = "HeartsideToday"
_RIGHT = QtCore.Qt.AlignRight | QtCore.Qt.AlignVCenter


class TodayPanel(ClosingPanel):
    """Questions above, gaps and screws below."""

    def __init__(self, doc: Any, answer: Answer) -> None:
        self.doc, self.name = doc, doc.Name
        self.alive = True
        self.found: Today | None = None
        self.reading: MoistureReading | None = None
        self.form = QtWidgets.QWidget()
        self.form.setObjectName(NAME)
        self.form.setWindowTitle(translate("Heartside", "Gaps today"))
        self.form.setWindowIcon(QtGui.QIcon(icon("gaps_today")))
        self._make_widgets()
        self._lay_out()
        self.form.destroyed.connect(lambda *_: self.take_away())
        self.document_watch = SeasonWatch(self.name, self.reject, lambda _: None)
        self._take_piece(doc, answer)

    # ---- widgets ------------------------------------------------------------------------------------------

    def _make_widgets(self) -> None:
        self.fields = TodayFields(lambda: self._safely(self.work_out))
        self.moisture, self.state, self.trouble = (QtWidgets.QLabel() for _ in range(3))
        self.moisture.setObjectName("HeartsideTodayMoisture")
        self.state.setObjectName("HeartsideTodayState")
        self.trouble.setObjectName("HeartsideTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        for label in (self.moisture, self.state, self.trouble):
            label.setWordWrap(True)
        self.careful = QtWidgets.QCheckBox(translate("Heartside", "Allow for the doubt"))
        self.careful.setObjectName("HeartsideTodayCareful")
        self.careful.setChecked(True)
        self.works = QtWidgets.QCheckBox(translate("Heartside", "Only round doors and drawers"))
        self.works.setObjectName("HeartsideTodayWorks")
        self.gaps = _table(
            "HeartsideTodayGaps",
            [
                translate("Heartside", "Gap"),
                translate("Heartside", "Set"),
            ],
        )
        self.screws = _table(
            "HeartsideTodayScrews",
            [
                translate("Heartside", "Screw"),
                translate("Heartside", "In its slot"),
                translate("Heartside", "Tongue"),
            ],
        )
        self.screws_heading = QtWidgets.QLabel(translate("Heartside", "Where screws sit today"))
        self.screws_heading.setStyleSheet("font-weight: bold")
        self.text = QtWidgets.QPushButton(translate("Heartside", "Copy as text"))
        self.text.setObjectName("HeartsideTodayText")
        self.csv = QtWidgets.QPushButton(translate("Heartside", "Copy as CSV"))
        self.csv.setObjectName("HeartsideTodayCsv")
        self.keep = QtWidgets.QPushButton(translate("Heartside", "Keep as the day of the study"))
        self.keep.setObjectName("HeartsideTodayKeep")
        for button in (self.text, self.csv, self.keep):
            button.setAutoDefault(False)
        for widget, words in (
            (
                self.careful,
                translate(
                    "Heartside",
                    "Gaps hold where the wood is drier or damper than it was read, as far as likely",
                ),
            ),
            (self.works, translate("Heartside", "Leave out the gaps inside frames and carcases")),
            (
                self.gaps,
                translate(
                    "Heartside",
                    "What to leave today, rounded up, and the least and the most that it becomes over the year. "
                    "Choosing rows selects their parts.",
                ),
            ),
            (
                self.screws,
                translate("Heartside", "From the end of the slot to the middle of the screw, as planned"),
            ),
            (self.text, translate("Heartside", "Put the tables on the clipboard, in columns")),
            (self.csv, translate("Heartside", "Put the tables on the clipboard, for a spreadsheet")),
            (
                self.keep,
                translate("Heartside", "The study is worked out for today and this moisture from now on"),
            ),
        ):
            explain(widget, words)
        self.careful.toggled.connect(lambda *_: self._safely(self.work_out))
        self.works.toggled.connect(lambda *_: self._safely(self._fill))
        self.gaps.itemSelectionChanged.connect(lambda: self._safely(self._select))
        self.text.clicked.connect(lambda *_: self._copy(""))
        self.csv.clicked.connect(lambda *_: self._copy(";" if _comma() else ","))
        self.keep.clicked.connect(lambda *_: self._safely(self._keep))

    def _lay_out(self) -> None:
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(4, 4, 4, 4)
        for part in (self.fields, self.moisture, self.careful, self.works, self.state):
            column.addWidget(part)
        column.addWidget(self.gaps, 3)
        column.addWidget(self.screws_heading)
        column.addWidget(self.screws, 1)
        for part in (self.text, self.csv, self.keep, self.trouble):
            column.addWidget(part)

    # ---- working out --------------------------------------------------------------------------------------

    def _take_piece(self, doc: Any, answer: Answer) -> None:
        """The piece as it is now; what is set today is worked out for it anew."""
        if not self.alive:
            return
        first = self.found is None
        self.answer, self.whole = answer, answer.whole
        self.placed = read_placed(doc)
        self.places = {leaf.key: leaf for leaf in answer.read.leaves}
        if first:
            self.works.setChecked(bool(answer.whole.loose))
        stale.follow(doc, NAME, answer.fingerprint, self._stale)
        self.work_out()

    def _stale(self, is_stale: bool) -> None:
        if is_stale and self.alive and self.name in App.listDocuments():
            self._safely(lambda: work_out_soon(self.doc, self._take_piece, key=NAME))

    def work_out(self) -> None:
        """Work out what is set at the moisture that is entered."""
        self.trouble.setText("")
        try:
            self.reading = reading = self.fields.reading()
        except HeartsideError as error:
            self._nothing(str(error))
            return
        low, high = reading.likely
        words = translate("Heartside", "Wood at {mc:.1f} %, likely {low:.1f} to {high:.1f} %")
        lines = [words.format(mc=reading.mc, low=low, high=high)]
        lines += [f"{note[:1].upper()}{note[1:]}." for note in reading.notes]
        self.moisture.setText("\n".join(lines))
        self.moisture.setToolTip("\n".join(reading.steps))
        moistures = (reading.mc, low, high) if self.careful.isChecked() else (reading.mc,)
        self.state.setText(translate("Heartside", "Working the gaps out …"))
        step, day, whole, placed = set_step_mm(), datetime.date.today(), self.whole, self.placed

        def solve(_: object) -> Generator[float, None, Today]:
            return todays(whole, placed, day, moistures, step)

        working.work(
            translate("Heartside", "Working the gaps out"),
            read=lambda: None,
            solve=solve,
            then=self._take,
            ended=self._ended,
            key=WORK,
        )

    def _take(self, found: Today) -> None:
        if self.alive:
            self.found = found
            self._fill()
            self.trouble.setText("\n".join(found.told))

    def _ended(self) -> None:
        if self.alive and not working.is_busy(WORK):
            self.state.setText(self._counted())

    def _counted(self) -> str:
        if self.found is None:
            return ""
        parts = [one.part for one in self.whole.parts]
        untold = sum(bool(part.missing) for part in parts)
        lines = []
        if self.found.gaps:
            words = translate("Heartside", "{shown} of {all} gaps; each is safe in every month")
            lines.append(words.format(shown=len(self._shown()), all=len(self.found.gaps)))
        elif not untold:
            lines.append(translate("Heartside", "No gap of this piece is a fit that moves."))
        if untold:
            words = translate(
                "Heartside",
                "Too little is said of the wood of {count} of {all} parts for their gaps: “Tag wood …” steps through "
                "them.",
            )
            lines.append(words.format(count=untold, all=len(parts)))
        return "\n".join(lines)

    def _nothing(self, why: str) -> None:
        working_now = working.is_busy(WORK)
        if working_now:
            working.cancel_all()
        self.found, self.reading = None, None
        self.moisture.setText("")
        self.state.setText("")
        self.trouble.setText(why)
        self._fill()

    # ---- what is shown ------------------------------------------------------------------------------------

    def _shown(self) -> list[Any]:
        found = () if self.found is None else self.found.gaps
        return [gap for gap in found if gap.works or not self.works.isChecked()]

    def _fill(self) -> None:
        step = set_step_mm()
        self.gaps.setRowCount(0)
        self.gaps.setRowCount(len(self._shown()))
        for row, gap in enumerate(self._shown()):
            _, drawn, wanted, least, low, most, high = cells(gap, set_text, _months(), step)
            where = f"{' – '.join(gap.parts)}\n{least} {low[:3]} … {most} {high[:3]}"
            words = translate(
                "Heartside",
                "{one} and {other}: drawn {drawn}, set {set}. It becomes {least} in {low}, {most} in {high}.",
            )
            tip = words.format(
                one=gap.parts[0],
                other=gap.parts[1],
                drawn=drawn,
                set=wanted,
                least=least,
                low=low,
                most=most,
                high=high,
            )
            rows.write(self.gaps, row, 0, text=where, tip=tip, data=list(gap.keys))
            rows.write(self.gaps, row, 1, text=wanted, tip=tip, alignment=enum_value(_RIGHT))
        screws = self._screws()
        self.screws.setVisible(bool(screws))
        self.screws_heading.setVisible(bool(screws))
        self.screws.setRowCount(len(screws))
        for column, known in ((1, "in_slot_mm"), (2, "tongue_mm")):
            self.screws.setColumnHidden(column, all(getattr(one, known) is None for one in screws))
        for row, screw in enumerate(screws):
            rows.write(self.screws, row, 0, text=f"{screw.number}: {screw.rail}", tip=screw.top)
            slot = "–" if screw.in_slot_mm is None else set_text(screw.in_slot_mm)
            tongue = "–" if screw.tongue_mm is None else set_text(screw.tongue_mm)
            for column, text in ((1, slot), (2, tongue)):
                rows.write(self.screws, row, column, text=text, alignment=enum_value(_RIGHT))
        for table in (self.gaps, self.screws):
            table.resizeRowsToContents()
        for button in (self.text, self.csv, self.keep):
            button.setEnabled(self.reading is not None)
        self.state.setText(self._counted())

    def _screws(self) -> list[Any]:
        """Those that sit somewhere in a slot, or have a tongue to set."""
        found = () if self.found is None else self.found.screws
        return [one for one in found if one.in_slot_mm is not None or one.tongue_mm is not None]

    def _select(self) -> None:
        Gui.Selection.clearSelection(self.name)
        for row in sorted({index.row() for index in self.gaps.selectedIndexes()}):
            for key in rows.read(self.gaps, row) or []:
                leaf = self.places.get(key)
                if leaf is not None:
                    Gui.Selection.addSelection(self.name, leaf.root.Name, leaf.sub)

    def _copy(self, separator: str) -> None:
        headings = [
            translate("Heartside", "between"),
            translate("Heartside", "as drawn"),
            translate("Heartside", "set today"),
            translate("Heartside", "least"),
            translate("Heartside", "in"),
            translate("Heartside", "most"),
            translate("Heartside", "in"),
        ]
        text = as_table(self._shown(), headings, set_text, _months(), separator, set_step_mm())
        if not separator:
            words = translate("Heartside", "Gaps to set on {date}")
            head = words.format(date=datetime.date.today().isoformat())
            text = f"{head}\n{self.moisture.text()}\n\n{text}\n"
        screws = self._screws()
        if screws:
            lines = [self._screw_line(screw, separator) for screw in screws]
            text += "\n" + "\n".join([self.screws_heading.text(), *lines]) + "\n"
        QtWidgets.QApplication.clipboard().setText(text)
        told(translate("Heartside", "Copied"))

    def _screw_line(self, screw: Any, separator: str) -> str:
        parts = [
            f"{screw.number}: {screw.rail}",
            "–" if screw.in_slot_mm is None else set_text(screw.in_slot_mm),
            "–" if screw.tongue_mm is None else set_text(screw.tongue_mm),
        ]
        return (separator or "  ").join(
            f'"{part}"' if separator and '"' not in part else part for part in parts
        )

    # ---- keeping ------------------------------------------------------------------------------------------

    def _keep(self) -> None:
        if self.reading is None:
            return
        facts = repr(datetime.date.today().isoformat()), f"{self.reading.mc:.2f}"
        recorded.run("year", "keep_today", recorded.document(self.doc), *facts)
        told(translate("Heartside", "Kept: the study is worked out for today"))

    # ---- what the host calls ------------------------------------------------------------------------------

    def _safely(self, what: Callable[[], object]) -> None:
        if self.alive:
            attempt(what, self.trouble)

    def take_away(self) -> None:
        if self.alive:
            self.alive = False
            self.fields.stop()
            self.document_watch.close()
            stale.forget(self.name, NAME)


def _months() -> list[str]:
    return [say(month) for month in MONTHS]


def _comma() -> bool:
    """Whether this user writes decimals with a comma."""
    return "," in QtCore.QLocale().toString(0.5, "f", 1)


def _table(name: str, headings: list[str]) -> QtWidgets.QTableWidget:
    table = QtWidgets.QTableWidget(0, len(headings))
    table.setObjectName(name)
    table.setHorizontalHeaderLabels(headings)
    table.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
    table.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
    table.setAlternatingRowColors(True)
    table.setWordWrap(False)
    table.setTextElideMode(QtCore.Qt.ElideMiddle)
    table.setMinimumHeight(130)
    table.verticalHeader().hide()
    header = table.horizontalHeader()
    header.setHighlightSections(False)
    for column in range(len(headings)):
        mode = "Stretch" if column == 0 else "ResizeToContents"
        header.setSectionResizeMode(column, getattr(QtWidgets.QHeaderView, mode))
    return table
