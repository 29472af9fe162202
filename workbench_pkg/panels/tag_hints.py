"""Task panel: what the host's material cards and assembly joints hint at. Nothing of it counts before it is ticked."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from movement_core.piece.tag_sources import without_tag
from workbench_pkg.actions.copying import said_of
from workbench_pkg.host.hints import card_hint, joint_hints
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets
from workbench_pkg.objects.joints import kept_joints
from workbench_pkg.panels import recorded, rows
from workbench_pkg.panels.accepting import Accepting
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.tag_known import species_like
from workbench_pkg.panels.telling import attempt, explain, told

translate = App.Qt.translate
CHECK = QtCore.Qt.CheckStateRole


@dataclass(frozen=True)
class HintRow:
    """One hint in words, and what it comes to: a species for a leaf, or a kind for two keys; neither: only told."""

    words: str
    leaves: tuple[Leaf, ...]
    species: str = ""
    joint: tuple[str, str, str] | None = None


def hint_rows(doc: Any) -> list[HintRow]:
    """All hints of a document about parts that do not say the same themselves."""
    leaves = read_leaves(doc).leaves
    found = []
    for leaf in leaves:
        hint = card_hint(leaf)
        if hint is None or "species" in said_of(leaf):
            continue
        words = translate("Heartside", "{part}: material card “{card}”").format(
            part=without_tag(leaf.name), card=hint.name
        )
        names = species_like(hint.name)
        if not names:
            found.append(HintRow(words + translate("Heartside", ", no wood of that name"), (leaf,)))
        found += [HintRow(f"{words} → {name}", (leaf,), species=name) for name in names]
    by_key = {leaf.key: leaf for leaf in leaves}
    kept = {frozenset(pair) for pair in kept_joints(doc)}
    for joint in joint_hints(doc, leaves):
        if frozenset(joint.keys) in kept:
            continue
        pair = tuple(by_key[key] for key in joint.keys)
        words = translate("Heartside", "{one} and {other}: assembly joint “{joint}”").format(
            one=without_tag(pair[0].name), other=without_tag(pair[1].name), joint=joint.kind_of_host
        )
        if joint.kind is None:
            found.append(HintRow(words + translate("Heartside", ", tells nothing of the wood"), pair))
        else:
            found.append(HintRow(f"{words} → {joint.kind}", pair, joint=(*joint.keys, joint.kind)))
    return found


class TagHintsPanel(Accepting):
    """A list to tick."""

    def __init__(self, doc: Any) -> None:
        self.doc = doc
        self.rows = hint_rows(doc)
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsideHintsPanel")
        self.form.setWindowTitle(translate("Heartside", "Hints of the model"))
        self.form.setWindowIcon(QtGui.QIcon(icon("hints")))
        self.words, self.trouble = QtWidgets.QLabel(), QtWidgets.QLabel()
        for label in (self.words, self.trouble):
            label.setWordWrap(True)
        self.words.setText(
            translate(
                "Heartside", "Hints, not facts: tick those that are right, the others count for nothing."
            )
            if self.rows
            else translate("Heartside", "No material card and no assembly joint hints at anything new.")
        )
        self.trouble.setObjectName("HeartsideTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        self.list = QtWidgets.QListWidget()
        self.list.setObjectName("HeartsideHintsList")
        self.list.setWordWrap(True)
        explain(self.list, translate("Heartside", "Tick a hint to take it; choose it to see its parts"))
        model = self.list.model()
        for row in self.rows:
            at = rows.append(self.list, row.words, tip=row.words)
            if row.species or row.joint:
                state = QtCore.Qt.Unchecked
                model.setData(model.index(at, 0), getattr(state, "value", state), CHECK)
        self.list.currentRowChanged.connect(self._point)
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(2, 2, 2, 2)
        for part in (self.words, self.list, self.trouble):
            column.addWidget(part)
        self.live_with(doc.Name)

    def tick(self, row: int) -> None:
        """Take a hint, as a click on its box does."""
        model = self.list.model()
        state = QtCore.Qt.Checked
        model.setData(model.index(row, 0), getattr(state, "value", state), CHECK)

    def ticked(self) -> list[HintRow]:
        checked = (QtCore.Qt.Checked, getattr(QtCore.Qt.Checked, "value", QtCore.Qt.Checked))
        return [row for at, row in enumerate(self.rows) if rows.read(self.list, at, role=CHECK) in checked]

    def _point(self, at: int) -> None:
        if 0 <= at < len(self.rows):
            Gui.Selection.clearSelection()
            for leaf in self.rows[at].leaves:
                Gui.Selection.addSelection(leaf.root.Document.Name, leaf.root.Name, leaf.sub)

    def does(self) -> str:
        return translate("Heartside", "Take the hints")

    def accept(self) -> bool:
        """Write what is ticked, in one step, and close."""
        return attempt(self._take, self.trouble) and self.leave()

    def _take(self) -> None:
        """Write what is ticked, in one step."""
        ticked = self.ticked()
        if not ticked:
            raise HeartsideError(
                translate("Heartside", "nothing is ticked"),
                todo=translate("Heartside", "tick the hints that are right, or cancel"),
            )
        recorded.run("copying", "take_hints", *self._source(ticked))
        told(translate("Heartside", "{count} hints taken").format(count=len(ticked)))

    def _source(self, ticked: list[HintRow]) -> list[str]:
        woods = ", ".join(
            f"({recorded.objects([(leaf.owner, None)])[1:-1]}, {leaf.element!r}, {row.species!r})"
            for row in ticked
            if row.species
            for leaf in row.leaves
        )
        joints = [row.joint for row in ticked if row.joint]
        return [recorded.document(self.doc), f"species=[{woods}]", f"joints={joints!r}"]
