"""The window in which the boards of a panel are laid: by hand, as best-looking, as flattest; its price at once.

Nothing is written before the button that says so.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from movement_core.piece.arrange import panel_candidates
from movement_core.piece.panels import GluedPanel
from movement_core.section.arrangement import Study, arrangement_study
from movement_core.section.laying import Laying, best_looking, judged
from movement_core.section.lays import Candidate, Wishes
from workbench_pkg.actions.check import Answer
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.host.units import short_length
from workbench_pkg.panels import recorded, stale, working
from workbench_pkg.panels.laying_view import LayingView, Shown
from workbench_pkg.panels.season_watch import SeasonWatch
from workbench_pkg.panels.telling import attempt, explain, told
from workbench_pkg.panels.working_out import work_out_soon

translate = App.Qt.translate
NAME = "HeartsideArrangement"
WORK = "HeartsideArrangementStudy"


class ArrangementPanel(QtWidgets.QDockWidget):
    """Shows the panels of one document, one at a time."""

    def __init__(self, parent: QtWidgets.QWidget) -> None:
        super().__init__(translate("Heartside", "Boards of the panel"), parent)
        self.setObjectName(NAME)
        self.document = ""
        self.panels: tuple[GluedPanel, ...] = ()
        self.watch: SeasonWatch | None = None
        self.candidates: tuple[Candidate, ...] = ()
        self.changes = (0.0, 0.0)
        self.looks: list[float] = []
        self.looks_said: list[float] = []
        self.laying = Laying((), (), ())
        self.study: Study | None = None
        self._make_widgets()
        self._lay_out()

    # ---- widgets ------------------------------------------------------------------------------------------

    def _make_widgets(self) -> None:
        self.which = QtWidgets.QComboBox()
        self.which.setObjectName("HeartsideLayingWhich")
        self.which.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToContents)
        self.view = LayingView(self._move, self._flip, self._turn, self._mark)
        self.price, self.trouble = QtWidgets.QLabel(), QtWidgets.QLabel()
        self.price.setObjectName("HeartsideLayingPrice")
        self.trouble.setObjectName("HeartsideLayingTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        for label in (self.price, self.trouble):
            label.setWordWrap(True)
        self.buttons: dict[str, QtWidgets.QPushButton] = {}
        for name, text, tip, does in (
            (
                "Left",
                translate("Heartside", "Move left"),
                translate("Heartside", "Move the chosen board one place to the left (Shift and Left)"),
                lambda: self._step(-1),
            ),
            (
                "Right",
                translate("Heartside", "Move right"),
                translate("Heartside", "Move the chosen board one place to the right (Shift and Right)"),
                lambda: self._step(1),
            ),
            (
                "Flip",
                translate("Heartside", "Turn over"),
                translate("Heartside", "Turn the chosen board over, or click it (space bar)"),
                lambda: self._flip(self.view.place),
            ),
            (
                "Turn",
                translate("Heartside", "End for end"),
                translate("Heartside", "Turn the chosen board end for end (E)"),
                lambda: self._turn(self.view.place),
            ),
            (
                "Mark",
                translate("Heartside", "Better face"),
                translate("Heartside", "Which face of the chosen board looks better: up, down, alike (B)"),
                lambda: self._mark(self.view.place),
            ),
            (
                "Drawn",
                translate("Heartside", "As drawn"),
                translate("Heartside", "Lay the boards as they are drawn"),
                self._as_drawn,
            ),
            (
                "Looks",
                translate("Heartside", "Best-looking"),
                translate("Heartside", "The better face of every board up; of those ways the flattest"),
                lambda: self._take_studied("best_looks"),
            ),
            (
                "Flattest",
                translate("Heartside", "Flattest"),
                translate("Heartside", "The way that stays flattest over the year, whatever it looks like"),
                lambda: self._take_studied("flattest"),
            ),
            (
                "Write",
                translate("Heartside", "Write it into the model"),
                translate(
                    "Heartside",
                    "Say the wood of every place anew: rings, heart side, looks. No solid is moved; one undo step",
                ),
                self._write,
            ),
        ):
            button = QtWidgets.QPushButton(text)
            button.setObjectName(f"HeartsideLaying{name}")
            button.setAutoDefault(False)
            explain(button, tip)
            button.clicked.connect(lambda *_, does=does: self._safely(does))
            self.buttons[name] = button
        self.reorder = QtWidgets.QCheckBox(translate("Heartside", "Boards may change places"))
        self.reorder.setObjectName("HeartsideLayingReorder")
        self.ends = QtWidgets.QCheckBox(translate("Heartside", "and be turned end for end"))
        self.ends.setObjectName("HeartsideLayingEnds")
        explain(self.reorder, translate("Heartside", "For best-looking and flattest: try other orders too"))
        explain(
            self.ends,
            translate("Heartside", "For best-looking and flattest: try turning boards end for end too"),
        )
        explain(
            self.view,
            translate(
                "Heartside",
                "The boards from their ends, with their rings. Drag a board to another place, click it to turn it "
                "over. The pointer marks its better face. Keys: left, right, Shift with them, space bar, E, B.",
            ),
        )
        self.which.activated.connect(lambda row: self._safely(lambda: self._open_panel(row)))
        for box in (self.reorder, self.ends):
            box.toggled.connect(lambda *_: self._safely(self._start_study))

    def _lay_out(self) -> None:
        content = QtWidgets.QWidget()
        row = QtWidgets.QHBoxLayout(content)
        row.setContentsMargins(4, 2, 4, 4)
        left, right = QtWidgets.QVBoxLayout(), QtWidgets.QVBoxLayout()
        left.addWidget(self.view, 1)
        hands = QtWidgets.QHBoxLayout()
        for name in ("Left", "Right", "Flip", "Turn", "Mark"):
            hands.addWidget(self.buttons[name])
        hands.addStretch(1)
        left.addLayout(hands)
        right.addWidget(self.which)
        right.addWidget(self.price)
        ways = QtWidgets.QHBoxLayout()
        for name in ("Drawn", "Looks", "Flattest"):
            ways.addWidget(self.buttons[name])
        right.addLayout(ways)
        right.addWidget(self.reorder)
        right.addWidget(self.ends)
        right.addStretch(1)
        right.addWidget(self.trouble)
        right.addWidget(self.buttons["Write"])
        row.addLayout(left, 3)
        row.addLayout(right, 1)
        self.setWidget(content)

    # ---- which panel --------------------------------------------------------------------------------------

    def show_answer(self, doc: Any, answer: Answer) -> None:
        """Show the panels of a worked-out document."""
        before = self.panel.name if self.panels and doc.Name == self.document else ""
        if self.watch is not None:
            self.watch.close()
            stale.forget(self.document, NAME)
        self.document, self.panels = doc.Name, answer.whole.panels
        self.watch = SeasonWatch(doc.Name, self.close, lambda _: None)
        self.which.clear()
        for panel in self.panels:
            words = translate("Heartside", "{name} ({count} boards)")
            self.which.addItem(words.format(name=panel.name, count=len(panel.boards)))
        names = [panel.name for panel in self.panels]
        self._open_panel(names.index(before) if before in names else self._first())
        stale.follow(doc, NAME, answer.fingerprint, self._stale)

    def _first(self) -> int:
        """The first panel of which enough is known."""
        return next((row for row, panel in enumerate(self.panels) if panel.panel is not None), 0)

    @property
    def panel(self) -> GluedPanel:
        return self.panels[max(self.which.currentIndex(), 0)]

    def _open_panel(self, row: int) -> None:
        self.trouble.setText("")
        self.which.setCurrentIndex(row)
        self.study = None
        try:
            if not self.panels:
                raise _no_panel()
            self.candidates, self.changes = panel_candidates(self.panel)
        except HeartsideError as error:
            self.candidates = ()
            self.view.show_laying(None)
            self.price.setText("")
            self.trouble.setText(str(error))
            self._enable()
            return
        self.looks = [one.looks_show - one.looks_back for one in self.candidates]
        self.looks_said = list(self.looks)
        self._show(Laying.as_drawn(len(self.candidates)))
        self._start_study()

    def _stale(self, is_stale: bool) -> None:
        doc = App.listDocuments().get(self.document)
        if is_stale and doc is not None and self.isVisible():
            self._safely(lambda: work_out_soon(doc, self.show_answer, key=NAME))

    # ---- laying -------------------------------------------------------------------------------------------

    def _show(self, laying: Laying) -> None:
        self.laying = laying
        found = judged(self._marked(), self.changes, laying)
        names = [board.part.name for board in self.panel.boards]
        self.view.show_laying(Shown(names, self.looks, laying, found))
        self._tell_price(found)
        self._enable()

    def _marked(self) -> tuple[Candidate, ...]:
        """The candidates with the looks that are marked now."""
        return tuple(
            replace(one, looks_show=max(looks, 0.0), looks_back=max(-looks, 0.0))
            for one, looks in zip(self.candidates, self.looks)
        )

    def _move(self, place: int, to: int) -> None:
        self._safely(lambda: self._show(self.laying.moved(place, to)))

    def _step(self, by: int) -> None:
        place, to = self.view.place, self.view.place + by
        if 0 <= to < len(self.laying.order):
            self.view.place = to
            self._show(self.laying.moved(place, to))

    def _flip(self, place: int) -> None:
        self._safely(lambda: self._show(self.laying.flipped(place)))

    def _turn(self, place: int) -> None:
        self._safely(lambda: self._show(self.laying.turned_round(place)))

    def _mark(self, place: int) -> None:
        """The face that is up looks better, then the other, then both alike."""
        index = self.laying.order[place]
        up = -1.0 if self.laying.over[place] else 1.0
        now = self.looks[index] * up
        size = max(abs(self.looks[index]), 1.0)
        self.looks[index] = up * (size if now == 0 else -size if now > 0 else 0.0) + 0.0
        self._safely(lambda: self._show(self.laying))
        self._safely(self._start_study)

    def _as_drawn(self) -> None:
        self.looks = list(self.looks_said)
        self._show(Laying.as_drawn(len(self.candidates)))
        self._start_study()

    def _take_studied(self, name: str) -> None:
        if self.study is not None:
            found = getattr(self.study, name)
            self._show(Laying(found.order, found.over, found.turned))
        elif name == "best_looks":
            self._show(best_looking(self._marked(), self.laying))

    def _enable(self) -> None:
        known = bool(self.candidates)
        for name, button in self.buttons.items():
            button.setEnabled(known and (name != "Flattest" or self.study is not None))
        changed = known and (
            self.laying != Laying.as_drawn(len(self.candidates)) or self.looks != self.looks_said
        )
        self.buttons["Write"].setEnabled(changed)

    # ---- what it costs ------------------------------------------------------------------------------------

    def _start_study(self) -> None:
        """Look for the best ways in a thread; until they are there, nothing is said of the extra."""
        if not self.candidates:
            return
        self.study = None
        candidates, (dry, wet) = self._marked(), self.changes
        wishes = Wishes(may_turn=self.ends.isChecked(), may_reorder=self.reorder.isChecked())
        working.work(
            translate("Heartside", "Looking for the best ways to lay the boards"),
            read=lambda: None,
            solve=lambda _: arrangement_study(candidates, dry, wet, wishes),
            then=self._take_study,
            key=WORK,
        )

    def _take_study(self, study: Study) -> None:
        if len(study.own.order) == len(self.candidates):
            self.study = study
            self._tell_price(judged(self._marked(), self.changes, self.laying))
            self._enable()

    def _tell_price(self, found: Any) -> None:
        lines = [
            translate("Heartside", "At most {size} out of flat over the year.").format(
                size=short_length(found.departure_mm)
            )
        ]
        most = sum(abs(looks) for looks in self.looks)
        if most:
            words = translate("Heartside", "Better faces up: {count} of {all}.")
            up = [
                self.looks[i] * (-1 if over else 1) > 0
                for i, over in zip(self.laying.order, self.laying.over)
                if self.looks[i]
            ]
            lines.append(words.format(count=sum(up), all=len(up)))
        else:
            lines.append(translate("Heartside", "Mark the better face of each board: choose by looks."))
        if self.study is not None:
            best = self.study.flattest
            flattest = judged(self._marked(), self.changes, Laying(best.order, best.over, best.turned))
            extra = found.departure_mm - flattest.departure_mm
            if extra > 0.05:
                words = translate(
                    "Heartside",
                    "That is {extra} more than the flattest way: what fasteners or battens have to hold besides.",
                )
                lines.append(words.format(extra=short_length(extra)))
            else:
                lines.append(translate("Heartside", "No way that was found stays flatter."))
        self.price.setText("\n".join(lines))

    # ---- writing ------------------------------------------------------------------------------------------

    def _write(self) -> None:
        self.trouble.setText("")
        doc = App.getDocument(self.document)
        keys = [board.part.key for board in self.panel.boards]
        parts = [
            repr(keys),
            repr(self.laying.order),
            repr(self.laying.over),
            repr(self.laying.turned),
        ]
        if self.looks != self.looks_said:
            parts.append(repr(tuple(self.looks)))
        recorded.run("arrange", "lay_boards", recorded.document(doc), *parts)
        told(translate("Heartside", "The woods are said of their new places; no solid was moved"))
        work_out_soon(doc, self.show_answer, key=NAME)

    def _safely(self, what: Callable[[], object]) -> None:
        attempt(what, self.trouble)

    def keyPressEvent(self, event: QtGui.QKeyEvent) -> None:
        if event.key() == QtCore.Qt.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)

    def closeEvent(self, event: QtGui.QCloseEvent) -> None:
        stale.forget(self.document, NAME)
        if self.watch is not None:
            self.watch.close()
            self.watch = None
        super().closeEvent(event)


def existing_panel() -> ArrangementPanel | None:
    """The window if it has been opened."""
    return Gui.getMainWindow().findChild(QtWidgets.QDockWidget, NAME)


def open_arrangement(doc: Any) -> None:
    """Work a document out and open or raise the window with its panels. Raises what reading the document does."""
    work_out_soon(doc, _open_with, key=NAME)


def _open_with(doc: Any, answer: Answer) -> None:
    if not answer.whole.panels:
        raise _no_panel()
    window = Gui.getMainWindow()
    panel = existing_panel()
    if panel is not None and not panel.isVisible():  # made anew, in the language that is spoken now
        panel.setObjectName("")
        panel.deleteLater()
        panel = None
    if panel is None:
        panel = ArrangementPanel(window)
        window.addDockWidget(QtCore.Qt.BottomDockWidgetArea, panel)
    panel.show()
    panel.raise_()
    panel.show_answer(doc, answer)
    panel.view.setFocus()


def _no_panel() -> HeartsideError:
    return HeartsideError(
        translate("Heartside", "No boards lie edge to edge in this document"),
        todo=translate("Heartside", "draw the boards of a panel one by one, edge to edge"),
    )
