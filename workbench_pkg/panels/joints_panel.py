"""Task panel: go through the joints, say what they are, and point at the line on which a part is held.

Each change is an undo step of its own, kept in the model; the piece is worked out anew after it.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any, Protocol

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.piece.contact.joints import HOLDS, KINDS, NEAR, OVERLAP, POINT, UNKNOWN, WHOLE, Joint
from movement_core.piece.part import Part
from movement_core.sheet.joint_list import JointRow, joint_rows
from movement_core.wording import say
from workbench_pkg.actions.check import Answer
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.panels import joints_table, recorded, stale, working
from workbench_pkg.panels.chosen import SelectionWatch
from workbench_pkg.panels.closing import ClosingPanel
from workbench_pkg.panels.fixed_picking import Place, pointed_place, told_line
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.joints_table import JointsTable, explained
from workbench_pkg.panels.season_watch import SeasonWatch
from workbench_pkg.panels.telling import attempt, explain, told
from workbench_pkg.panels.whole_words import WholeWords
from workbench_pkg.panels.working_out import work_out_soon

translate = App.Qt.translate
NAME = "HeartsideJointsPanel"
UNASKED = (NEAR, OVERLAP, UNKNOWN)  # kinds that nobody makes on purpose


class Marks(Protocol):
    """What marks joints in the view."""

    def show(self, joints: Sequence[Joint], held: Sequence[Part]) -> None: ...
    def zoom(self, parts: Sequence[Part]) -> None: ...
    def close(self) -> None: ...


class JointsPanel(ClosingPanel):
    """The list above, the chosen joint and what can be said of it below."""

    def __init__(self, doc: Any, answer: Answer, marks: Marks) -> None:
        self.doc, self.name, self.marks = doc, doc.Name, marks
        self.alive = True
        self.form = QtWidgets.QWidget()
        self.form.setObjectName(NAME)
        self.form.setWindowTitle(translate("Heartside", "Joints"))
        self.form.setWindowIcon(QtGui.QIcon(icon("joints")))
        self._make_widgets()
        self._lay_out()
        self.form.destroyed.connect(lambda *_: self.take_away())
        self.watch = SelectionWatch(lambda: self._safely(self._clicked))
        self.document_watch = SeasonWatch(self.name, self._gone, lambda _: None)
        self._take(doc, answer, first=True)

    # ---- widgets ------------------------------------------------------------------------------------------

    def _make_widgets(self) -> None:
        self.filter, self.words = QtWidgets.QComboBox(), QtWidgets.QLineEdit()
        self.filter.setObjectName("HeartsideJointsFilter")
        self.filter.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        self.filter.setMinimumContentsLength(12)
        for shown, value in joints_table.filters():
            self.filter.addItem(shown, value)
        self.words.setObjectName("HeartsideJointsWords")
        self.words.setPlaceholderText(translate("Heartside", "Part or kind of joint"))
        self.words.setClearButtonEnabled(True)
        self.table = JointsTable()
        self.about = WholeWords(name="HeartsideJointsAbout")
        self.about.setTextInteractionFlags(QtCore.Qt.TextSelectableByMouse)
        self.kind = QtWidgets.QComboBox()
        self.kind.setObjectName("HeartsideJointsKind")
        self.kind.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        self.kind.setMinimumContentsLength(10)
        holds = {
            WHOLE: translate("Heartside", "{kind} (holds all over)"),
            POINT: translate("Heartside", "{kind} (holds one spot)"),
        }
        for kind in KINDS:
            if kind not in UNASKED:
                free = translate("Heartside", "{kind} (lets them move)")
                self.kind.addItem(holds.get(HOLDS[kind], free).format(kind=say(kind)), kind)
        self.change = _button("HeartsideJointsChange", translate("Heartside", "Say so"))
        self.confirm = _button("HeartsideJointsConfirm", translate("Heartside", "Confirm as it is"))
        self.forget = _button("HeartsideJointsForget", translate("Heartside", "Forget what was said"))
        self.line = WholeWords(name="HeartsideJointsLine")
        self.point = _button("HeartsideJointsPoint", translate("Heartside", "Point at the line …"))
        self.point.setCheckable(True)
        self.unfix = _button("HeartsideJointsUnfix", translate("Heartside", "Forget the line"))
        self.state, self.trouble = (
            WholeWords(name="HeartsideJointsState"),
            WholeWords(name="HeartsideTrouble"),
        )
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        self._explain()
        # ``activated`` and ``textEdited``: what the user does, not what happens when a list is taken down.
        self.filter.activated.connect(lambda *_: self._safely(self._fill))
        self.words.textChanged.connect(lambda *_: self._safely(self._fill))
        self.table.itemSelectionChanged.connect(lambda: self._safely(self._chosen))
        self.change.clicked.connect(lambda *_: self._safely(self._change))
        self.confirm.clicked.connect(lambda *_: self._safely(self._confirm))
        self.forget.clicked.connect(lambda *_: self._safely(self._forget))
        self.point.toggled.connect(lambda on: self._safely(lambda: self._start_pointing(on)))
        self.unfix.clicked.connect(lambda *_: self._safely(self._unfix))

    def _explain(self) -> None:
        for widget, text in (
            (self.filter, translate("Heartside", "Which joints are listed")),
            (
                self.table,
                translate(
                    "Heartside",
                    "Choosing joints selects their parts, marks where they meet and brings them close. "
                    "Several can be chosen and said at once.",
                ),
            ),
            (self.kind, translate("Heartside", "What the chosen joints are")),
            (self.change, translate("Heartside", "Keep this kind in the model for all chosen joints")),
            (self.confirm, translate("Heartside", "What was inferred of the chosen joints is right")),
            (self.forget, translate("Heartside", "Go back to what is inferred from the drawing")),
            (
                self.point,
                translate(
                    "Heartside",
                    "Then click a part in the view where it is held across its width: an edge, a face or a spot. "
                    "Elsewhere it is free to move away from there.",
                ),
            ),
            (
                self.unfix,
                translate("Heartside", "The parts of the chosen joints have no line of their own any more"),
            ),
        ):
            explain(widget, text)

    def _lay_out(self) -> None:
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(4, 4, 4, 4)
        for part in (self.filter, self.words, self.state):
            column.addWidget(part)
        column.addWidget(self.table, 1)
        column.addWidget(self.about)
        column.addWidget(_heading(translate("Heartside", "The chosen joints are")))
        for part in (self.kind, self.change, self.confirm, self.forget):
            column.addWidget(part)
        column.addWidget(_heading(translate("Heartside", "Held on a line across its width")))
        column.addWidget(self.line)
        column.addWidget(self.point)
        column.addWidget(self.unfix)
        column.addWidget(self.trouble)

    # ---- working out --------------------------------------------------------------------------------------

    def work_out(self) -> None:
        """Work the piece out as it is now."""
        if not self.alive:
            return
        if self.name not in App.listDocuments():
            self.reject()
            return
        self.state.setText(translate("Heartside", "Working the piece out …"))
        work_out_soon(self.doc, lambda doc, answer: self._take(doc, answer), key=NAME, ended=self._ended)

    def _ended(self) -> None:
        if self.alive and not working.is_busy(NAME):
            self.state.setText(self._counted())

    def _take(self, doc: Any, answer: Answer, first: bool = False) -> None:
        if not self.alive:
            return
        self.answer = answer
        found = [frozenset(f["keys"]) for f in answer.entry["findings"] if len(f["keys"]) == 2]
        self.rows = joint_rows(answer.whole, found)
        self.parts: dict[str, Part] = {one.part.key: one.part for one in answer.whole.parts}
        self.places = {leaf.key: leaf for leaf in answer.read.leaves}
        if first and not any(row.matters and row.touching for row in self.rows):
            self.filter.setCurrentIndex(self.filter.findData(joints_table.TOUCH))
        self.state.setText(self._counted())
        self._fill()
        stale.follow(doc, NAME, answer.fingerprint, self._stale)

    def _stale(self, is_stale: bool) -> None:
        if is_stale:
            self._safely(self.work_out)

    def _counted(self) -> str:
        touching = [row for row in self.rows if row.touching]
        if not touching:
            return translate("Heartside", "No two parts touch in this document.")
        unknown = sum(row.state == "unknown" for row in touching)
        matter = sum(row.matters for row in touching)
        words = translate(
            "Heartside", "{all} joints; nothing is known of {unknown}; {matter} decide something"
        )
        return words.format(all=len(touching), unknown=unknown, matter=matter)

    # ---- what is chosen -----------------------------------------------------------------------------------

    def _fill(self) -> None:
        before = {frozenset(row.keys) for row in self.table.chosen()}
        self.table.fill(
            self.rows, self.filter.itemData(self.filter.currentIndex()), self.words.text(), before
        )
        self._show_chosen()

    def _chosen(self) -> None:
        self._show_chosen()
        chosen = self.table.chosen()
        keys = list(dict.fromkeys(key for row in chosen for key in row.keys))
        Gui.Selection.clearSelection(self.name)
        for key in keys:
            leaf = self.places.get(key)
            if leaf is not None:
                Gui.Selection.addSelection(self.name, leaf.root.Name, leaf.sub)
        self.marks.zoom([self.parts[key] for key in keys if key in self.parts])

    def _show_chosen(self) -> None:
        chosen = self.table.chosen()
        for button in (self.change, self.confirm, self.forget):
            button.setEnabled(bool(chosen))
        self.confirm.setEnabled(any(row.state == "inferred" and row.kind not in UNASKED for row in chosen))
        self.forget.setEnabled(any(row.state == "confirmed" for row in chosen))
        kinds = {row.kind for row in chosen}
        if len(kinds) == 1 and self.kind.findData(min(kinds)) >= 0:
            self.kind.setCurrentIndex(self.kind.findData(min(kinds)))
        self.about.setText(explained(chosen[0]) if len(chosen) == 1 else self._several(chosen))
        held = [part for part in self._held(chosen) if part.fixed_mm is not None]
        self.line.setText("\n".join(told_line(part) for part in held) or self._how_held(chosen))
        self.unfix.setEnabled(bool(held))
        everywhere = list(self.parts.values()) if self.point.isChecked() else held
        self.marks.show([self.answer.whole.joints[row.number] for row in chosen], everywhere)

    def _held(self, chosen: Sequence[JointRow]) -> list[Part]:
        keys = dict.fromkeys(key for row in chosen for key in row.keys)
        return [self.parts[key] for key in keys if key in self.parts]

    def _several(self, chosen: Sequence[JointRow]) -> str:
        if not chosen:
            return translate("Heartside", "Choose a joint to see it in the view.")
        return translate("Heartside", "{count} joints are chosen.").format(count=len(chosen))

    def _how_held(self, chosen: Sequence[JointRow]) -> str:
        if self.point.isChecked():
            return translate("Heartside", "Click the part in the view, where it is held. Esc leaves it.")
        return translate("Heartside", "Where nothing is said, a free part moves to both sides alike.")

    # ---- saying -------------------------------------------------------------------------------------------

    def _change(self) -> None:
        kind = self.kind.itemData(self.kind.currentIndex())
        self._say([(*row.keys, kind) for row in self.table.chosen()])

    def _confirm(self) -> None:
        right = [row for row in self.table.chosen() if row.state == "inferred" and row.kind not in UNASKED]
        self._say([(*row.keys, row.kind) for row in right])

    def _forget(self) -> None:
        self._say([(*row.keys, None) for row in self.table.chosen() if row.state == "confirmed"])

    def _say(self, joints: list[tuple[str, str, str | None]]) -> None:
        self.trouble.setText("")
        recorded.run("joint", "confirm_joints", recorded.document(self.doc), repr(joints))
        told(translate("Heartside", "Said of {count} joints").format(count=len(joints)))
        self.work_out()

    # ---- the fixed line -----------------------------------------------------------------------------------

    def _start_pointing(self, on: bool) -> None:
        self.trouble.setText("")
        if on:
            Gui.Selection.clearSelection(self.name)
        self._show_chosen()

    def _clicked(self) -> None:
        """Something was selected: while pointing, that is the place."""
        if not self.point.isChecked():
            return
        place = pointed_place(self.doc, self.parts)
        if isinstance(place, str):
            self.trouble.setText(place)
        elif place is not None:
            self.point.setChecked(False)
            self._fix(place)

    def _fix(self, place: Place) -> None:
        target = recorded.objects([(place.leaf.owner, place.leaf.element)])
        recorded.run("tag", "tag", target, *recorded.facts({"fixed": place.word}))
        told(
            translate("Heartside", "{part} is held at {place}").format(part=place.part.name, place=place.told)
        )
        self.work_out()

    def _unfix(self) -> None:
        held = [part for part in self._held(self.table.chosen()) if part.fixed_mm is not None]
        leaves = [self.places[part.key] for part in held]
        targets = list(dict.fromkeys((leaf.owner, leaf.element) for leaf in leaves))
        recorded.run("tag", "tag", recorded.objects(targets), *recorded.facts({"fixed": None}))
        self.work_out()

    # ---- what the host calls ------------------------------------------------------------------------------

    def _safely(self, what: Callable[[], object]) -> None:
        if self.alive:
            attempt(what, self.trouble)

    def reject(self) -> bool:
        """Esc leaves pointing first, then the panel. What was said is kept; undo takes it back."""
        if self.alive and self.point.isChecked():
            self.point.setChecked(False)
            return False
        return super().reject()

    def _gone(self) -> None:
        self.point.setChecked(False)
        self.reject()

    def take_away(self) -> None:
        if self.alive:
            self.alive = False
            self.watch.close()
            self.document_watch.close()
            stale.forget(self.name, NAME)
            self.marks.close()


def _button(name: str, text: str) -> QtWidgets.QPushButton:
    button = QtWidgets.QPushButton(text)
    button.setObjectName(name)
    button.setAutoDefault(False)
    return button


def _heading(text: str) -> QtWidgets.QLabel:
    label = WholeWords(text)
    label.setStyleSheet("font-weight: bold")
    return label
