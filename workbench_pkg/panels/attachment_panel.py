"""Task panel: how a top is held flat. Plans are compared, one is shown in the view, and placed on request.

Nothing is written before that. Plans are worked out in a thread; each change of a question starts anew.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Any, Protocol

import FreeCAD as App

from movement_core.errors import HeartsideError
from movement_core.piece.hardware_bodies import Hardware
from movement_core.piece.top_plan import METAL_KINDS
from workbench_pkg.actions import hardware as action
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.host.qt import QtGui, QtWidgets
from workbench_pkg.panels import recorded, working
from workbench_pkg.panels.accepting import Accepting
from workbench_pkg.panels.attachment_fields import AttachmentFields
from workbench_pkg.panels.attachment_table import PlanTable, in_words
from workbench_pkg.panels.chosen import SelectionWatch, chosen_boards
from workbench_pkg.panels.enough import not_said
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.telling import told, unexpected

translate = App.Qt.translate
WORK = "HeartsideHold"


class Preview(Protocol):
    """What shows hardware in the view."""

    def show(self, hardware: Hardware | None) -> None: ...
    def close(self) -> None: ...


class AttachmentPanel(Accepting):
    """Questions above, plans below, the chosen one in words."""

    def __init__(self, doc: Any, preview: Preview) -> None:
        self.doc, self.preview = doc, preview
        self.question: action.PlanQuestion | None = None
        self.answer: action.PlanAnswer | None = None
        self.running: working.Work | None = None
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsideHoldPanel")
        self.form.setWindowTitle(translate("Heartside", "Hold the top flat"))
        self.form.setWindowIcon(QtGui.QIcon(icon("hold_top")))
        self.fields = AttachmentFields(self.work_out)
        self.table = PlanTable()
        self.words = QtWidgets.QTextBrowser()
        self.words.setObjectName("HeartsideHoldWords")
        self.words.setMinimumHeight(220)
        self.shown = QtWidgets.QCheckBox(translate("Heartside", "Show it in the view"))
        self.shown.setObjectName("HeartsideHoldShown")
        self.shown.setChecked(True)
        self.state, self.trouble = QtWidgets.QLabel(), QtWidgets.QLabel()
        self.state.setObjectName("HeartsideHoldState")
        self.trouble.setObjectName("HeartsideTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        for label in (self.state, self.trouble):
            label.setWordWrap(True)
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(2, 2, 2, 2)
        # What is wrong stands above: the panel is longer than a screen.
        for part in (self.trouble, self.fields, self.state, self.table, self.words, self.shown):
            column.addWidget(part)
        self.table.itemSelectionChanged.connect(self._show_chosen)
        self.shown.toggled.connect(self._draw)
        self._first_pointed = {leaf.key for leaf in chosen_boards(doc).leaves}
        self.live_with(doc.Name, SelectionWatch(self._pointed), preview)
        self.work_out()

    # ---- working out ------------------------------------------------------------------------------------

    def work_out(self) -> None:
        """Work the plans out for what is asked now."""
        if not self.alive:
            return
        self.trouble.setText("")
        wish = self.fields.wish()
        if not wish.kinds:
            self._say_nothing(translate("Heartside", "Tick at least one kind of fastener."))
            return
        try:
            self.running = working.work(
                translate("Heartside", "Working the plans out"),
                read=lambda: self._read(wish),
                solve=_solved,
                then=self._take,
                still=lambda question: self._holds(question),
                ended=self._ended,
                key=WORK,
            )
            self.state.setText(translate("Heartside", "Working the plans out …"))
        except HeartsideError as error:
            self._say_nothing(str(error))
        except Exception as error:
            self._say_nothing(unexpected(error))

    def _read(self, wish: action.PlaceWish) -> action.PlanQuestion:
        if self.question is not None and self._holds(self.question):
            self.question = replace(self.question, wish=wish)
        else:
            self.question = action.read_for_plans(self.doc, wish)
        return self.question

    def _holds(self, question: action.PlanQuestion) -> bool:
        there = self.doc in App.listDocuments().values()
        return there and fingerprint(self.doc) == question.fingerprint

    def _take(self, answer: action.PlanAnswer | HeartsideError) -> None:
        """In the window's thread: show what came."""
        if not self.alive:
            return
        if isinstance(answer, HeartsideError):
            self._say_nothing(str(answer))
            return
        before = self.table.chosen()
        self.fields.show_tops(answer.tops, answer.chosen)
        pointed, self._first_pointed = self._first_pointed, set()
        if pointed:  # what was selected when the panel was opened
            self.fields.point_at(pointed)
        if self.fields.waits():
            return
        if answer.tops[answer.chosen].metal and answer.wish.kinds != METAL_KINDS:
            self.work_out()
            return
        self.answer = answer
        action.remember(answer)
        self.table.fill(answer.entry, before)
        self._show_chosen()

    def _ended(self) -> None:
        if self.alive and not working.is_busy(WORK):
            stale = self.doc in App.listDocuments().values() and action.is_stale(self.doc)
            self.state.setText(
                translate("Heartside", "The hardware in the model is out of date: place it anew.")
                if stale
                else ""
            )

    def _say_nothing(self, why: str) -> None:
        self.answer = None
        self.state.setText("")
        self.trouble.setText(why)
        self.table.fill(None)
        self.words.setHtml("")
        self.preview.show(None)

    # ---- what is chosen ---------------------------------------------------------------------------------

    def _pointed(self) -> None:
        if self.alive and self.doc in App.listDocuments().values():
            self.fields.point_at({leaf.key for leaf in chosen_boards(self.doc).leaves})

    def _show_chosen(self) -> None:
        if self.answer is not None:
            self.words.setHtml(in_words(self.answer.entry, self.table.chosen()))
        self._draw()

    def _draw(self, *_: object) -> None:
        kind = self.table.chosen()
        hardware = None
        if self.answer is not None and kind and self.shown.isChecked():
            try:
                hardware = self.answer.hardware(kind)
            except HeartsideError:
                hardware = None
        self.preview.show(hardware)

    # ---- what the host calls ----------------------------------------------------------------------------

    def does(self) -> str:
        return translate("Heartside", "Place")

    def accept(self) -> bool:
        """Place the chosen plan and close; where that cannot be done, say so and stay open."""
        kind = self.table.chosen()
        wish = self.fields.wish()
        if self.fields.waits() or working.is_busy(WORK):
            self.trouble.setText(
                translate("Heartside", "The plans are still being worked out: a moment, please.")
            )
            return False
        if self.answer is None or not kind:
            self.trouble.setText(self._why_none())
            return False
        try:
            refused = self._place(wish, kind)
        except HeartsideError as error:
            self.trouble.setText(str(error))
            return False
        except Exception as error:
            self.trouble.setText(unexpected(error))
            return False
        words = translate("Heartside", "Hardware placed. Movement anchors are not lifting points")
        if refused:
            words = translate(
                "Heartside", "Hardware placed; not everything can be cut: see Not Cut in its properties"
            )
        told(words)
        return self.leave()

    def _why_none(self) -> str:
        """Why there is nothing to place."""
        if self.answer is not None and self.answer.plans is None:
            return str(not_said(self.answer.tops[self.answer.chosen]))
        return self.trouble.text() or translate("Heartside", "There is no plan to place.")

    def _place(self, wish: action.PlaceWish, kind: str) -> bool:
        facts: dict[str, object] = {
            "top": wish.top,
            "plan": kind,
            "flatness_mm": wish.flatness_mm,
            "kinds": wish.kinds,
        }
        if wish.fixed:
            facts["fixed"] = wish.fixed
        if wish.rails:
            facts["rails"] = wish.rails
        recorded.run("hardware", "place_plan", recorded.document(self.doc), *recorded.facts(facts))
        assert self.answer is not None
        return bool(self.answer.hardware(kind).refused)

    def take_away(self) -> None:
        if self.alive and self.running is not None:
            self.running.cancel(quietly=True)
        super().take_away()


def _solved(question: action.PlanQuestion) -> action.PlanAnswer | HeartsideError:
    """In a thread: the plans, or what is wrong, which the panel shows in its own place."""
    try:
        return action.answer_plans(question)
    except HeartsideError as error:
        return error
