"""Task panel: what is written on the movement sheet, on which paper, in which units, and into which file."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from movement_core.sheet.pages.told_lengths import lengths_told
from movement_core.sheet.pages.wish import SheetWish
from workbench_pkg.actions.check import Question, read_document
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.actions.sheet import FORMS, MadeSheet, making, told_units
from workbench_pkg.host.plain_files import check_new_file, write_file
from workbench_pkg.host.qt import QtGui, QtWidgets
from workbench_pkg.host.units import in_inches
from workbench_pkg.panels import recorded, working
from workbench_pkg.panels.accepting import Accepting
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.telling import attempt, explain, told

translate = App.Qt.translate
KEY = "sheet"


class SheetPanel(Accepting):
    """Asks, checks that the file may be written, then closes at once and works in the background."""

    def __init__(self, doc: Any) -> None:
        self.doc = doc
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsideSheetPanel")
        self.form.setWindowTitle(translate("Heartside", "Movement sheet"))
        self.form.setWindowIcon(QtGui.QIcon(icon("make_sheet")))
        self.job, self.place, self.file = (QtWidgets.QLineEdit() for _ in range(3))
        self.reader = _choice("HeartsideSheetReader", _readers())
        self.kind = _choice("HeartsideSheetKind", [("HTML", ".html"), ("PDF", ".pdf")])
        self.paper = _choice("HeartsideSheetPaper", [("A4", "a4"), ("Letter", "letter")])
        self.units = _choice("HeartsideSheetUnits", _units())
        self.units.setCurrentIndex(1 if in_inches() else 0)
        self.browse = QtWidgets.QPushButton("…")
        self.replace = QtWidgets.QCheckBox(translate("Heartside", "Replace the file that is there"))
        self.trouble = QtWidgets.QLabel()
        self._name_and_explain()
        self._lay_out()
        self.file.setText(str(self._usual_file()))
        self.kind.activated.connect(lambda *_: self._follow_kind())
        self.reader.activated.connect(lambda *_: self._follow_reader())
        self.file.textChanged.connect(lambda *_: self._look_at_file())
        self.replace.toggled.connect(lambda *_: self.trouble.setText(""))
        self.browse.clicked.connect(lambda *_: self._ask_file())
        self._look_at_file()
        self.live_with(doc.Name)

    def does(self) -> str:
        return translate("Heartside", "Write the sheet")

    def accept(self) -> bool:
        return attempt(self._make, self.trouble) and self.leave()

    def _make(self) -> None:
        """Begin the sheet, if the file may be written."""
        target = Path(self.file.text().strip()).expanduser()
        if not target.is_absolute():
            raise HeartsideError(
                translate("Heartside", "The file needs a folder"),
                todo=translate("Heartside", "choose one with …"),
            )
        if target.is_file() and not self.replace.isChecked():
            raise HeartsideError(
                translate("Heartside", "A file of that name is there"),
                todo=translate("Heartside", "tick that it is to be replaced, or choose another name"),
            )
        check_new_file(target, FORMS, [self.doc.FileName or None], self.replace.isChecked())
        self._begin(target)

    def _begin(self, target: Path) -> None:
        """Read the model now, make the sheet in the background, write it when it is done."""
        name, replace = self.doc.Name, self.replace.isChecked()
        wish = SheetWish(
            self.job.text().strip(),
            self.place.text().strip(),
            client=self.reader.currentData() == "client",
            paper=self.paper.currentData(),
            units=self.units.currentData(),
        )

        def still(question: Question) -> bool:
            now = App.listDocuments().get(name)
            return now is not None and fingerprint(now) == question.fingerprint

        def read() -> Question:
            with lengths_told(told_units(wish, target.suffix)):
                return read_document(self.doc)

        def write(made: MadeSheet) -> None:
            write_file(target, made.content, replace)
            told(translate("Heartside", "Written: {file}").format(file=target))

        self._record(target, wish, replace)
        working.work(
            translate("Heartside", "Making the movement sheet"),
            read=read,
            solve=lambda question: making(question, wish, target.suffix),
            then=write,
            still=still,
            key=KEY,
        )

    def _record(self, target: Path, wish: SheetWish, replace: bool) -> None:
        """A macro that is being recorded gets the line that does the same at once."""
        recorded.note(
            "sheet",
            "make_sheet",
            recorded.document(self.doc),
            repr(str(target)),
            *recorded.facts(
                {
                    "job": wish.job,
                    "place": wish.place,
                    "client": wish.client,
                    "paper": wish.paper,
                    "units": wish.units,
                    "force": replace,
                }
            ),
        )

    # ---- the file ----------------------------------------------------------------------------------------

    def _usual_file(self) -> Path:
        """Beside the model, or in the user's folder; a name that is not there yet."""
        model = Path(self.doc.FileName) if self.doc.FileName else Path.home() / self.doc.Name
        end = "client" if self.reader.currentData() == "client" else "sheet"
        for count in range(1, 1000):
            more = "" if count == 1 else f"-{count}"
            path = model.with_name(f"{model.stem}-{end}{more}{self.kind.currentData()}")
            if not path.exists():
                break
        return path

    def _follow_kind(self) -> None:
        path = self.file.text().strip()
        if path:
            self.file.setText(str(Path(path).with_suffix(self.kind.currentData())))

    def _follow_reader(self) -> None:
        """The page for the client gets a name of its own, unless the user chose one."""
        path = Path(self.file.text().strip())
        if path.stem.rpartition("-")[2].rstrip("0123456789") in ("sheet", "client", ""):
            self.file.setText(str(self._usual_file()))

    def _look_at_file(self) -> None:
        """Whether something is there already, and which form the ending names."""
        self.trouble.setText("")
        path = Path(self.file.text().strip())
        there = bool(self.file.text().strip()) and path.is_file()
        self.replace.setVisible(there)
        self.replace.setChecked(False)
        index = self.kind.findData(path.suffix.lower())
        if index >= 0:
            self.kind.setCurrentIndex(index)

    def _ask_file(self) -> None:
        title = translate("Heartside", "Where to write the sheet")
        answer = QtWidgets.QFileDialog.getSaveFileName(
            Gui.getMainWindow(), title, self.file.text(), "HTML (*.html);;PDF (*.pdf)"
        )
        if answer[0]:
            path = Path(answer[0])
            self.file.setText(str(path if path.suffix else path.with_suffix(self.kind.currentData())))
            self.replace.setChecked(path.is_file())  # the box has asked already

    # ---- looks -------------------------------------------------------------------------------------------

    def _name_and_explain(self) -> None:
        for widget, name in (
            (self.job, "HeartsideSheetJob"),
            (self.place, "HeartsideSheetPlace"),
            (self.file, "HeartsideSheetFile"),
            (self.browse, "HeartsideSheetBrowse"),
            (self.replace, "HeartsideSheetReplace"),
            (self.trouble, "HeartsideTrouble"),
        ):
            widget.setObjectName(name)
        self.trouble.setWordWrap(True)
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        self.job.setPlaceholderText(translate("Heartside", "left empty: a line to write on"))
        self.place.setPlaceholderText(translate("Heartside", "left empty: a line to write on"))
        self.browse.setMaximumWidth(40)
        self.browse.setAccessibleName(translate("Heartside", "Choose the file"))
        explain(
            self.reader,
            translate("Heartside", "The client's page says in plain words what will move and when"),
        )
        explain(
            self.units,
            translate("Heartside", "Inches come as fractions to 1/64, rounded the safe way for gaps"),
        )
        explain(
            self.kind, translate("Heartside", "HTML opens in every browser and prints; PDF keeps its pages")
        )

    def _lay_out(self) -> None:
        column = QtWidgets.QVBoxLayout(self.form)
        rows = QtWidgets.QFormLayout()
        rows.setFieldGrowthPolicy(QtWidgets.QFormLayout.ExpandingFieldsGrow)
        where = QtWidgets.QWidget()
        line = QtWidgets.QHBoxLayout(where)
        line.setContentsMargins(0, 0, 0, 0)
        line.addWidget(self.file, 1)
        line.addWidget(self.browse)
        rows.addRow(translate("Heartside", "Job"), self.job)
        rows.addRow(translate("Heartside", "Stands in"), self.place)
        rows.addRow(translate("Heartside", "For"), self.reader)
        rows.addRow(translate("Heartside", "Paper"), self.paper)
        rows.addRow(translate("Heartside", "Units"), self.units)
        rows.addRow(translate("Heartside", "Form"), self.kind)
        rows.addRow(translate("Heartside", "File"), where)
        column.addLayout(rows)
        column.addWidget(self.replace)
        column.addWidget(self.trouble)
        column.addStretch(1)


def _readers() -> list[tuple[str, str]]:
    return [(translate("Heartside", "the bench"), "bench"), (translate("Heartside", "the client"), "client")]


def _units() -> list[tuple[str, str]]:
    return [
        (translate("Heartside", "millimetres"), "mm"),
        (translate("Heartside", "inches, fractions"), "inch"),
    ]


def _choice(name: str, choices: list[tuple[str, str]]) -> QtWidgets.QComboBox:
    box = QtWidgets.QComboBox()
    box.setObjectName(name)
    for shown, value in choices:
        box.addItem(shown, value)
    return box
