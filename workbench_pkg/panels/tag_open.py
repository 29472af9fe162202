"""The parts of which something is still to be said: how many, which, and one after the other."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import FreeCAD as App

from movement_core.piece.part import Part
from workbench_pkg.host.qt import QtCore, QtWidgets
from workbench_pkg.panels.telling import explain

translate = App.Qt.translate


def open_words() -> dict[str, str]:
    """How facts are called that a part still wants."""
    return {
        "species": translate("Heartside", "species"),
        "grain": translate("Heartside", "grain"),
        "rings": translate("Heartside", "rings"),
        "moisture": translate("Heartside", "moisture"),
    }


class TagOpen(QtWidgets.QWidget):
    """``go(keys)`` is called to choose parts, ``write_on()`` to write what was entered and go on to the next."""

    def __init__(self, go: Callable[[Sequence[str]], object], write_on: Callable[[], object]) -> None:
        super().__init__()
        self.go = go
        self.parts: list[Part] = []
        self.current = ""
        self.count = QtWidgets.QLabel()
        self.count.setObjectName("HeartsideOpenCount")
        self.count.setWordWrap(True)
        self.list = QtWidgets.QComboBox()
        self.list.setObjectName("HeartsideOpenList")
        self.list.setMinimumContentsLength(8)
        self.list.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        explain(self.list, translate("Heartside", "Boards of which something is still to be said"))
        self.previous = _arrow("HeartsideOpenPrevious", QtCore.Qt.LeftArrow)
        explain(self.previous, translate("Heartside", "The board before it of which something is to be said"))
        self.next = _arrow("HeartsideOpenNext", QtCore.Qt.RightArrow)
        explain(self.next, translate("Heartside", "The next board of which something is to be said"))
        self.write = QtWidgets.QPushButton(translate("Heartside", "Write, then next"))
        self.write.setObjectName("HeartsideWriteNext")
        self.write.setAutoDefault(False)
        explain(
            self.write,
            translate("Heartside", "Write what was entered, as one undo step, and go on to the next board"),
        )
        self.all = QtWidgets.QPushButton(translate("Heartside", "All of them"))
        self.all.setObjectName("HeartsideOpenAll")
        self.all.setAutoDefault(False)
        explain(self.all, translate("Heartside", "Select every board of which something is still to be said"))
        for button in (self.all, self.write):
            button.setSizePolicy(QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Fixed)
        row = QtWidgets.QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        for widget in (self.previous, self.list, self.next):
            row.addWidget(widget, 1 if widget is self.list else 0)
        column = QtWidgets.QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.count)
        column.addLayout(row)
        both = QtWidgets.QHBoxLayout()
        both.setContentsMargins(0, 0, 0, 0)
        both.addWidget(self.all)
        both.addWidget(self.write)
        column.addLayout(both)
        self.previous.clicked.connect(lambda *_: self.step(-1))
        self.next.clicked.connect(lambda *_: self.step(1))
        self.list.activated.connect(self._chosen)
        self.all.clicked.connect(lambda *_: self.go([part.key for part in self.parts]))
        self.write.clicked.connect(lambda *_: write_on())

    def show_parts(self, every: Sequence[Part], chosen: Sequence[str]) -> None:
        """every : all parts of the document. chosen : keys of those that are selected."""
        self.parts = [part for part in every if part.missing]
        names = open_words()
        self.list.clear()
        for part in self.parts:
            wants = ", ".join(names[word] for word in part.missing)
            self.list.addItem(translate("Heartside", "{part}: {facts}").format(part=part.name, facts=wants))
        self.current = chosen[0] if chosen else self.current
        at = self._at()
        self.list.setCurrentIndex(at if at is not None else -1)
        if self.parts:
            words = translate("Heartside", "Still to be told: {count} of {all} parts")
            self.count.setText(words.format(count=len(self.parts), all=len(every)))
        else:
            self.count.setText(translate("Heartside", "Nothing is left to be told."))
        for widget in (self.list, self.previous, self.next, self.all):
            widget.setEnabled(bool(self.parts))
        self._every = [part.key for part in every]

    def step(self, way: int) -> None:
        """Choose the next (1) or the previous (−1) open part in the order of the tree, round and round."""
        if not self.parts:
            return
        order = {key: place for place, key in enumerate(self._every)}
        places = [order[part.key] for part in self.parts]
        here = order.get(self.current)
        if here is None:
            at = 0 if way > 0 else len(places) - 1
        elif way > 0:
            at = next((i for i, place in enumerate(places) if place > here), 0)
        else:
            at = next((i for i in reversed(range(len(places))) if places[i] < here), len(places) - 1)
        self._choose(at)

    def _at(self) -> int | None:
        return next((i for i, part in enumerate(self.parts) if part.key == self.current), None)

    def _chosen(self, *_: object) -> None:
        self._choose(self.list.currentIndex())

    def _choose(self, at: int) -> None:
        if 0 <= at < len(self.parts):
            self.current = self.parts[at].key
            self.list.setCurrentIndex(at)
            self.go([self.current])


def _arrow(name: str, way: QtCore.Qt.ArrowType) -> QtWidgets.QToolButton:
    button = QtWidgets.QToolButton()
    button.setObjectName(name)
    button.setArrowType(way)
    button.setFocusPolicy(QtCore.Qt.TabFocus)
    return button
