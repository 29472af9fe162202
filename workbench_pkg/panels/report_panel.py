"""The report in a window of its own along the lower edge: boards, findings, and the whole as text."""

from __future__ import annotations

import datetime
from collections.abc import Callable, Sequence
from functools import partial
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui
import numpy as np

from movement_core.errors import HeartsideError
from movement_core.sheet.text import as_text
from movement_core.wording import say
from workbench_pkg.actions.check import Answer
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.host.units import lengths_in
from workbench_pkg.panels import rows, stale
from workbench_pkg.panels.report_table import ReportTable, mark, rank_of
from workbench_pkg.panels.telling import explain, problem, unexpected
from workbench_pkg.panels.working_out import work_out_soon

translate = App.Qt.translate
NAME = "HeartsideReport"
Zoom = Callable[[str, Sequence[float], Sequence[float]], object]  # a document by name, a box in mm


class ReportPanel(QtWidgets.QDockWidget):
    """Shows what the last working-out of one document gave.

    Choosing a row selects its board in the model; choosing a finding also brings its boards close, by ``zoom``.
    """

    def __init__(self, parent: QtWidgets.QWidget, zoom: Zoom) -> None:
        super().__init__(translate("Heartside", "Heartside report"), parent)
        self.setObjectName(NAME)
        self.zoom = zoom
        self.document, self.fingerprint = "", ""
        self.points: dict[str, np.ndarray] = {}  # key of a board → points of its outline, (N, 3) mm, global
        self.places: dict[str, tuple[str, str]] = {}  # key of a board → root object and path below it
        self.heading = QtWidgets.QLabel()
        self.heading.setObjectName("HeartsideReportHeading")
        self.heading.setTextFormat(QtCore.Qt.PlainText)
        self.stale = QtWidgets.QLabel(
            translate("Heartside", "The model has changed since: work it out again.")
        )
        self.stale.setObjectName("HeartsideReportStale")
        self.stale.setStyleSheet("color: #b3261e; font-weight: bold")
        self.stale.hide()
        self.again = QtWidgets.QPushButton(translate("Heartside", "Work out again"))
        self.again.setObjectName("HeartsideReportAgain")
        self.copy = QtWidgets.QPushButton(translate("Heartside", "Copy as text"))
        self.copy.setObjectName("HeartsideReportCopy")
        self.table = ReportTable()
        self.findings = QtWidgets.QListWidget()
        self.findings.setObjectName("HeartsideReportFindings")
        self.findings.setWordWrap(True)
        self.findings.setAlternatingRowColors(True)
        self.text = QtWidgets.QPlainTextEdit()
        self.text.setObjectName("HeartsideReportText")
        self.text.setReadOnly(True)
        self.text.setLineWrapMode(QtWidgets.QPlainTextEdit.NoWrap)
        self.text.setFont(QtGui.QFontDatabase.systemFont(QtGui.QFontDatabase.FixedFont))
        explain(self.again, translate("Heartside", "Read the model as it is now and work it out again"))
        explain(self.copy, translate("Heartside", "Put the whole report on the clipboard"))
        explain(
            self.table,
            translate(
                "Heartside",
                "Every board with its width today, in its driest and in its wettest month. "
                "Choosing rows selects boards in the model; a double click brings one close.",
            ),
        )
        explain(
            self.findings,
            translate(
                "Heartside",
                "What breaks, jams or shows, the gravest first, and what to do. "
                "Choosing one selects its boards in the model and brings them close.",
            ),
        )
        self._lay_out()
        self.again.clicked.connect(self.work_out_again)
        self.copy.clicked.connect(self._copy)
        self.table.itemSelectionChanged.connect(lambda: self._select(self.table.chosen_keys()))
        self.table.doubleClicked.connect(lambda _: self._bring_close(self.table.chosen_keys()))
        self.findings.itemSelectionChanged.connect(self._select_finding)
        self.findings.clicked.connect(lambda _: self._bring_close(self._keys_of_finding()))

    def show_answer(self, doc: Any, answer: Answer) -> None:
        """Show what working a document out gave."""
        self.document = doc.Name
        self.places = {leaf.key: (leaf.root.Name, leaf.sub) for leaf in answer.read.leaves}
        self.points = {
            part.key: part.outline.points for part in answer.read.parts if part.outline is not None
        }
        self.fingerprint = answer.fingerprint
        self.fill(answer.entry)
        self._mark_stale(False)
        self._follow()

    def fill(self, entry: dict[str, Any]) -> None:
        """Show a report."""
        year, today = entry["year"], entry["today"]
        moisture = year["moisture_percent"]
        words = translate(
            "Heartside",
            "{year}: wood from {low:.1f} % in {dry} to {high:.1f} % in {wet}. Worked out {date}, {time}",
        )
        self.heading.setText(
            words.format(
                year=say(year["name"]),
                low=min(moisture),
                high=max(moisture),
                dry=say(year["driest_month"]),
                wet=say(year["wettest_month"]),
                date=today["date"],
                time=datetime.datetime.now().strftime("%H:%M"),
            )
        )
        self.table.fill(entry)
        self.findings.clear()
        for finding in entry["findings"]:
            where = " + ".join(finding["parts"])
            text = lengths_in(f"{where}: {finding['message']}\n→ {finding['remedy']}")
            sign = mark(rank_of(finding["severity"]))
            rows.append(self.findings, text, picture=sign, data=list(finding["keys"]))
        for error in entry["errors"]:
            rows.append(self.findings, lengths_in(error["message"]), picture=mark(1))
        if not self.findings.count():
            self.findings.addItem(translate("Heartside", "Nothing found that would break, jam or show."))
        self.text.setPlainText(lengths_in(as_text(entry)))

    def _follow(self) -> None:
        doc = App.listDocuments().get(self.document)
        if doc is not None:
            stale.follow(doc, NAME, self.fingerprint, self._mark_stale)

    def _mark_stale(self, is_stale: bool) -> None:
        self.stale.setVisible(is_stale)

    def showEvent(self, event: QtGui.QShowEvent) -> None:
        self._follow()
        super().showEvent(event)

    def closeEvent(self, event: QtGui.QCloseEvent) -> None:
        stale.forget(self.document, NAME)
        super().closeEvent(event)

    def work_out_again(self) -> None:
        doc = App.listDocuments().get(self.document)
        if doc is None:
            problem(translate("Heartside", "The document of this report is closed."))
            return
        try:
            open_report(doc, self.zoom)
        except HeartsideError as error:
            problem(str(error))
        except Exception as error:
            problem(unexpected(error))

    def _keys_of_finding(self) -> list[str]:
        chosen = sorted(index.row() for index in self.findings.selectedIndexes())
        return [key for row in chosen for key in rows.read(self.findings, row) or []]

    def _select_finding(self) -> None:
        keys = self._keys_of_finding()
        self._select(keys)
        self._bring_close(keys)

    def _bring_close(self, keys: Sequence[str]) -> None:
        points = [self.points[key] for key in keys if key in self.points]
        if points and self.document in App.listDocuments():
            every = np.concatenate(points)
            self.zoom(self.document, every.min(axis=0).tolist(), every.max(axis=0).tolist())

    def _select(self, keys: list[str]) -> None:
        doc: Any = App.listDocuments().get(self.document)
        if doc is None:
            return
        Gui.Selection.clearSelection(doc.Name)
        for key in keys:
            root, sub = self.places.get(key, ("", ""))
            if root and doc.getObject(root) is not None:
                Gui.Selection.addSelection(doc.Name, root, sub)

    def _copy(self) -> None:
        QtWidgets.QApplication.clipboard().setText(self.text.toPlainText())

    def _lay_out(self) -> None:
        content = QtWidgets.QWidget()
        column = QtWidgets.QVBoxLayout(content)
        column.setContentsMargins(4, 2, 4, 4)
        top = QtWidgets.QHBoxLayout()
        top.addWidget(self.heading, 1)
        top.addWidget(self.stale)
        top.addWidget(self.copy)
        top.addWidget(self.again)
        column.addLayout(top)
        both = QtWidgets.QSplitter(QtCore.Qt.Horizontal)
        both.addWidget(self.table)
        both.addWidget(self.findings)
        both.setStretchFactor(0, 3)
        both.setStretchFactor(1, 2)
        tabs = QtWidgets.QTabWidget()
        tabs.setObjectName("HeartsideReportTabs")
        tabs.addTab(both, translate("Heartside", "Boards and findings"))
        tabs.addTab(self.text, translate("Heartside", "As text"))
        column.addWidget(tabs)
        self.setWidget(content)


def existing_panel() -> ReportPanel | None:
    """The report window if it has been opened."""
    return Gui.getMainWindow().findChild(QtWidgets.QDockWidget, NAME)


def open_report(doc: Any, zoom: Zoom) -> None:
    """Work a document out and then open or raise the report window with it. Raises what reading the document does.

    zoom : brings a box of a document close.
    """
    work_out_soon(doc, partial(_open_with, zoom), key=NAME)


def _open_with(zoom: Zoom, doc: Any, answer: Answer) -> None:
    window = Gui.getMainWindow()
    panel = existing_panel()
    if panel is None:
        panel = ReportPanel(window, zoom)
        window.addDockWidget(QtCore.Qt.BottomDockWidgetArea, panel)
    panel.show_answer(doc, answer)
    panel.show()
    panel.raise_()


def show_if_open(doc: Any, answer: Answer) -> None:
    """Bring the report up to date where it is open and shows this document."""
    panel = existing_panel()
    if panel is not None and panel.isVisible() and panel.document == doc.Name:
        panel.show_answer(doc, answer)
