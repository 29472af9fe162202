"""Task panel: copy the wood of one board to others. Choose the one, then the others; written when accepted."""

from __future__ import annotations

from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from movement_core.piece.tag_sources import without_tag
from workbench_pkg.actions.copying import CUT_WORDS, LIE_WORDS, WOOD_WORDS, said_of
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.qt import QtGui, QtWidgets
from workbench_pkg.panels import recorded
from workbench_pkg.panels.accepting import Accepting
from workbench_pkg.panels.chosen import SelectionWatch, chosen_boards
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.telling import attempt, explain, plain_label, told, unexpected

translate = App.Qt.translate


class TagCopyPanel(Accepting):
    """The board that is chosen first is copied from; those chosen after it take its wood."""

    def __init__(self, doc: Any) -> None:
        self.doc = doc
        self.source: Leaf | None = None
        self.targets: list[Leaf] = []
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsideCopyPanel")
        self.form.setWindowTitle(translate("Heartside", "Copy wood"))
        self.form.setWindowIcon(QtGui.QIcon(icon("copy_wood")))
        self.from_label, self.says = plain_label("HeartsideCopyFrom", True), plain_label("HeartsideCopySays")
        self.to_label, self.trouble = plain_label("HeartsideCopyTo", True), plain_label("HeartsideTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        self.anew = QtWidgets.QPushButton(translate("Heartside", "Copy from another board"))
        self.anew.setObjectName("HeartsideCopyAnew")
        self.anew.setAutoDefault(False)
        explain(self.anew, translate("Heartside", "Forget the board to copy from, and choose it anew"))
        self.anew.clicked.connect(self._forget)
        self.wood = _tick(
            "HeartsideCopyWood",
            translate("Heartside", "Species, finish, moistures, lot"),
            translate("Heartside", "What boards of one stack share"),
        )
        self.cut = _tick(
            "HeartsideCopyCut",
            translate("Heartside", "Cut and ring angle"),
            translate("Heartside", "Only where they were sawn alike"),
        )
        self.lie = _tick(
            "HeartsideCopyLie",
            translate("Heartside", "Grain, show face, pith"),
            translate("Heartside", "Only for boards out of one log that are drawn the same way"),
        )
        self.wood.setChecked(True)
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(2, 2, 2, 2)
        for part in (
            self.from_label,
            self.says,
            self.anew,
            self.to_label,
            self.wood,
            self.cut,
            self.lie,
            self.trouble,
        ):
            column.addWidget(part)
        column.addStretch(1)
        self.live_with(doc.Name, SelectionWatch(self.read))
        self.read()

    # ---- what it shows ----------------------------------------------------------------------------------

    def read(self) -> None:
        """Take the selection: first the board to copy from, then those to copy to."""
        if not self.alive:
            return
        self.trouble.setText("")
        try:
            leaves = list(chosen_boards(self.doc).leaves)
        except Exception as error:
            self.trouble.setText(unexpected(error))
            return
        if self.source is None and len(leaves) == 1:
            self.source = leaves[0]
        key = self.source.key if self.source is not None else ""
        self.targets = [leaf for leaf in leaves if leaf.key != key] if self.source is not None else []
        self._show(len(leaves))

    def _show(self, selected: int) -> None:
        if self.source is None:
            self.from_label.setText(
                translate("Heartside", "Click the board to copy from.")
                if selected == 0
                else translate("Heartside", "Click the one board to copy from, alone.")
            )
            self.says.setText("")
            self.to_label.setText("")
            return
        self.from_label.setText(
            translate("Heartside", "From: {board}").format(board=without_tag(self.source.name))
        )
        said = [f"{word} {_shown(value)}" for word, value in said_of(self.source).items()]
        self.says.setText("; ".join(said) or translate("Heartside", "It says nothing of its wood yet."))
        names = [without_tag(leaf.name) for leaf in self.targets]
        if names:
            listed = ", ".join(names[:5]) + (" …" if len(names) > 5 else "")
            words = translate("Heartside", "To {count}: {boards}")
            self.to_label.setText(words.format(count=len(names), boards=listed))
        else:
            self.to_label.setText(translate("Heartside", "Now click the boards to copy to."))

    def _forget(self, *_: object) -> None:
        self.source, self.targets = None, []
        Gui.Selection.clearSelection()
        self.read()

    def words(self) -> tuple[str, ...]:
        """The words that are ticked."""
        ticked = ((self.wood, WOOD_WORDS), (self.cut, CUT_WORDS), (self.lie, LIE_WORDS))
        return tuple(word for box, words in ticked if box.isChecked() for word in words)

    # ---- what the host calls ----------------------------------------------------------------------------

    def does(self) -> str:
        return translate("Heartside", "Copy the wood")

    def accept(self) -> bool:
        """Write and close; where something cannot be written, say so and stay open."""
        return attempt(self._copy, self.trouble) and self.leave()

    def _copy(self) -> None:
        """Write to the chosen parts what is ticked, in one step."""
        if self.source is None or not self.targets:
            raise HeartsideError(
                translate("Heartside", "there is nothing to copy to yet"),
                todo=translate("Heartside", "click the board to copy from, then those to copy to"),
            )
        if not self.words():
            raise HeartsideError(
                translate("Heartside", "nothing is ticked"),
                todo=translate("Heartside", "tick what to copy"),
            )
        targets: list[tuple[Any, int | None]] = []
        for leaf in self.targets:
            if (leaf.owner, leaf.element) not in targets:
                targets.append((leaf.owner, leaf.element))
        source = recorded.objects([(self.source.owner, None)])[1:-1]
        given = [source, recorded.objects(targets), f"words={self.words()!r}"]
        if self.source.element is not None:
            given.append(f"element={self.source.element!r}")
        recorded.run("copying", "copy_wood", *given)
        told(translate("Heartside", "Wood copied to {count}").format(count=len(targets)))


def _shown(value: object) -> str:
    if isinstance(value, (tuple, list)):
        return " ".join(_shown(v) for v in value)
    return f"{value:g}" if isinstance(value, float) else str(value)


def _tick(name: str, text: str, tip: str) -> QtWidgets.QCheckBox:
    box = QtWidgets.QCheckBox(text)
    box.setObjectName(name)
    box.setSizePolicy(QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Fixed)
    explain(box, tip)
    return box
