"""Task panel: say what the selected boards are made of. It follows the selection; written when accepted."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from movement_core.piece.facts import TAGGED
from movement_core.piece.part import Part
from workbench_pkg.actions.apart import is_several
from workbench_pkg.actions.drafts import Draft
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.qt import QtGui, QtWidgets
from workbench_pkg.host.units import short_length
from workbench_pkg.panels import recorded
from workbench_pkg.panels.accepting import Accepting
from workbench_pkg.panels.chosen import SelectionWatch, chosen_boards
from workbench_pkg.panels.fields import KEEP, common
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.species_field import SpeciesField
from workbench_pkg.panels.tag_fields import OF_ONE_BOARD, TagFields
from workbench_pkg.panels.tag_known import TagKnown, offers_for
from workbench_pkg.panels.tag_open import TagOpen
from workbench_pkg.panels.tag_pointing import TagPointing, View
from workbench_pkg.panels.tag_watch import Changes
from workbench_pkg.panels.telling import explain, plain_label, told, unexpected

translate = App.Qt.translate
MOST_DRAWN = 40  # boards whose rings are drawn at a time

Facts = dict[str, object]


class TagPanel(Accepting):
    """Fields by the words of a tag, what clicks in the view say, and what nobody has said yet."""

    def __init__(self, doc: Any, view: View | None = None) -> None:
        """view : draws rings and arrows and hears clicks; closed with the panel."""
        self.doc, self.view = doc, view
        self.own: dict[str, Facts] = {}  # facts that only one of the chosen boards will say, by key
        self.draft: Draft | None = None
        self.written: list[Part] = []  # all parts as the document has them
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsideTagPanel")
        self.form.setWindowTitle(translate("Heartside", "Tag wood"))
        self.form.setWindowIcon(QtGui.QIcon(icon("tag_wood")))
        self.parts = plain_label("HeartsideParts", bold=True)
        self.trouble = plain_label("HeartsideTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        self.state, self.rings_now = plain_label("HeartsideTagState"), plain_label("HeartsideRingsNow")
        self.still = TagOpen(self.go, self.write_on)
        self.fields = TagFields(self.draw)
        self.species = SpeciesField()
        self.species.list.currentRowChanged.connect(self.fields.soon)
        self.known = TagKnown(self.take)
        self.apart = QtWidgets.QPushButton()
        self.apart.setObjectName("HeartsideTakeApart")
        self.apart.setAutoDefault(False)
        self.apart.setSizePolicy(QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Fixed)
        explain(
            self.apart,
            translate("Heartside", "Make an object of each of its solids, as an undo step of its own"),
        )
        self.apart.clicked.connect(lambda *_: self.take_apart())
        self.pointing = TagPointing(view, self.point, self.tell, self._others)
        self._lay_out()
        self.chosen = chosen_boards(doc)
        self.changes = Changes(doc)
        self.live_with(doc.Name, self.changes, SelectionWatch(self.read))
        if view is not None:
            view.listen(self.pointing)
        self.read()

    # ---- what it shows ----------------------------------------------------------------------------------

    def read(self) -> None:
        """Show what the selected boards say. What was entered stays while boards are only added to the selection."""
        if not self.alive:
            return
        before = {leaf.key for leaf in self.chosen.leaves}
        entered = self._entered()
        self._complain("")
        self.tell("", False)
        self.own.clear()
        try:
            self.chosen = chosen_boards(self.doc)
            if self.changes.take() or self.draft is None:
                self.draft = Draft(self.doc)
                self.written = list(self.draft.parts().values())
        except Exception as error:  # the document is gone, or the host fails at reading it
            self.draft = None
            self._complain(unexpected(error))
            return
        self._name_chosen()
        said = self.chosen.said()
        leaf = self.chosen.leaves[0] if len(self.chosen.leaves) == 1 else None
        self.species.show(common([one.get("species") for one in said]))
        self.fields.show(said, leaf, sorted({part.lot for part in self.written if part.lot}))
        if entered and before <= {one.key for one in self.chosen.leaves}:
            self._enter_again(entered)
        self.draw()

    def _name_chosen(self) -> None:
        names = self.chosen.names()
        if names:
            shown = ", ".join(names[:4]) + (" …" if len(names) > 4 else "")
            count = translate("Heartside", "1 board") if len(names) == 1 else f"{len(names)} "
            count = count if len(names) == 1 else count + translate("Heartside", "boards")
            self.parts.setText(f"{count}: {shown}")
        else:
            self.parts.setText(
                translate("Heartside", "Nothing is selected. Click boards in the view or the tree.")
            )

        heaps = self._heaps()
        self.apart.setVisible(bool(heaps))
        if heaps:
            words = translate("Heartside", "One object of {count} solids: take it apart")
            self.apart.setText(words.format(count=len(heaps[0].Shape.Solids)))

    def _heaps(self) -> list[Any]:
        """Chosen objects that can only be told one wood although they are several boards."""
        found: list[Any] = []
        for leaf in self.chosen.leaves:
            if leaf.source not in found and leaf.source == leaf.owner and is_several(leaf.source):
                found.append(leaf.source)
        return found

    def draw(self) -> None:
        """Work out what the chosen boards would be as entered, and show it: rings, arrows, what nobody said."""
        if self.draft is None:
            return
        try:
            facts = self._drafted()
            every = self.draft.parts(facts) if facts else {part.key: part for part in self.written}
        except HeartsideError as error:
            self._complain(str(error))
            return
        keys = [leaf.key for leaf in self.chosen.leaves if leaf.key in every]
        chosen = [(self.draft.leaves[key], every[key]) for key in keys]
        single = chosen[0] if len(chosen) == 1 else None
        said = self.chosen.said()
        if single is None:
            self.pointing.aim(None, None, {})
        else:
            self.pointing.aim(*single, {**(said[0] if said else {}), **facts.get(keys[0], {})})
        self.still.show_parts(self.written, keys)
        self.known.show_offers(offers_for(chosen))
        self.rings_now.setText(_rings_in_words(single[1]) if single is not None else "")
        if self.view is not None:
            self.view.show([self.pointing.shown(leaf, part) for leaf, part in chosen[:MOST_DRAWN]])

    # ---- what is entered --------------------------------------------------------------------------------

    def answers(self) -> Facts:
        """The facts that the user changed for all chosen boards. Raises UnknownName for a species that is none."""
        species = self.species.answer()
        return {**({} if species is KEEP else {"species": species}), **self.fields.answers()}

    def point(self, facts: Mapping[str, object]) -> None:
        """Enter what was pointed at."""
        self._complain("")
        self.fields.set(facts)
        self.fields.stop()
        self.draw()

    def take(self, offered: Mapping[str, Mapping[str, object]]) -> None:
        """Enter what was offered: into the fields where it is one board, else beside them."""
        if len(self.chosen.leaves) == 1:
            (facts,) = offered.values()
            self._enter_again(dict(facts))
        else:
            for key, facts in offered.items():
                self.own.setdefault(key, {}).update(facts)
            words = translate("Heartside", "Accepted for {count} boards; “Write the tags” writes it.")
            self.tell(words.format(count=len(self.own)), False)
        self.draw()

    def tell(self, text: str, bad: bool) -> None:
        """What to click next, or what was wrong with a click."""
        self.state.setText("" if bad else text)
        if bad or text:
            self._complain(text if bad else "")
        self.state.setVisible(bool(self.state.text()))

    def _complain(self, text: str) -> None:
        """Tell what is wrong; "" when nothing is any more."""
        self.trouble.setText(text)
        self.trouble.setVisible(bool(text))

    def go(self, keys: Sequence[str]) -> None:
        """Choose parts, as clicks on them would; one alone is brought close."""
        known = self.draft.leaves if self.draft is not None else {}
        leaves = [known[key] for key in keys if key in known]
        Gui.Selection.clearSelection()
        for leaf in leaves:
            Gui.Selection.addSelection(leaf.root.Document.Name, leaf.root.Name, leaf.sub)
        if self.view is not None and len(leaves) == 1:
            self.view.zoom(leaves)

    def take_apart(self) -> None:
        """Make objects of the solids of what is chosen."""
        try:
            for heap in self._heaps():
                recorded.run("apart", "take_apart", recorded.objects([(heap, None)])[1:-1])
        except HeartsideError as error:
            self._complain(str(error))
            return
        except Exception as error:
            self._complain(unexpected(error))
            return
        self.read()

    def _entered(self) -> Facts:
        try:
            return {w: v for w, v in self.answers().items() if w not in OF_ONE_BOARD}
        except HeartsideError:
            return {}

    def _enter_again(self, facts: Facts) -> None:
        species = facts.pop("species", None)
        if isinstance(species, str):
            self.species.set(species)
        self.fields.set(facts)
        self.fields.stop()

    def _drafted(self) -> dict[str, Facts]:
        """The facts of each chosen board that would be written, by key."""
        shared = self.fields.answers()
        name = self.species.chosen_name()
        if name is not KEEP:
            shared["species"] = name
        found = {leaf.key: {**self.own.get(leaf.key, {}), **shared} for leaf in self.chosen.leaves}
        return {key: facts for key, facts in found.items() if facts}

    def _others(self, leaf: Leaf) -> Iterable[Leaf]:
        leaves = self.draft.leaves.values() if self.draft is not None else ()
        return [other for other in leaves if other.key != leaf.key]

    # ---- what the host calls ----------------------------------------------------------------------------

    def does(self) -> str:
        return translate("Heartside", "Write the tags")

    def accept(self) -> bool:
        """Write and close; where something cannot be written, say so and stay open."""
        if not self._write():
            return False
        return self.leave()

    def write_on(self) -> None:
        """Write, then choose the next part of which something is to be said."""
        if self.chosen.leaves and not self._write():
            return
        self.read()
        if self.still.parts:
            self.still.step(1)
        else:  # it is done: the piece without marks, ready for the next click
            Gui.Selection.clearSelection()

    def reject(self) -> bool:
        """Close; what was not written leaves nothing. Escape ends pointing first."""
        return False if self.pointing.escape() else self.leave()

    def _write(self) -> bool:
        try:
            if not self.chosen.leaves:
                raise HeartsideError(
                    translate("Heartside", "no board is selected"),
                    todo=translate("Heartside", "click boards in the view or the tree"),
                )
            shared = self.answers()
            if self.own:
                recorded.run("tag", "tag_each", recorded.parts_with_facts(self._each(shared)))
            elif shared:
                recorded.run("tag", "tag", recorded.objects(self.chosen.targets()), *recorded.facts(shared))
            if shared or self.own:
                told(translate("Heartside", "{count} tagged").format(count=len(self.chosen.leaves)))
        except HeartsideError as error:
            self._complain(str(error))
            return False
        except Exception as error:
            self._complain(unexpected(error))
            return False
        return True

    def _each(self, shared: Facts) -> list[tuple[Any, int | None, Facts]]:
        """Each target once with its facts; of solids that share an object the first counts."""
        found: dict[tuple[str, int | None], tuple[Any, int | None, Facts]] = {}
        for leaf in self.chosen.leaves:
            facts = {**self.own.get(leaf.key, {}), **shared}
            if facts:
                found.setdefault((leaf.owner.Name, leaf.element), (leaf.owner, leaf.element, facts))
        return list(found.values())

    def take_away(self) -> None:
        if self.alive:
            self.fields.stop()
            if self.view is not None:
                self.view.close()
        super().take_away()

    # ---- how it looks -----------------------------------------------------------------------------------

    def _lay_out(self) -> None:
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(2, 2, 2, 2)
        column.setSpacing(4)
        lie = self.fields.lie(self.pointing.widget, self.rings_now)
        for part in (
            self.still,
            self.parts,
            self.apart,
            self.state,
            self.trouble,
            self.species.widget,
            self.known,
            self.fields.moisture(),
            lie,
            self.fields.more(),
        ):
            column.addWidget(part)
        column.addStretch(1)


def _rings_in_words(part: Part) -> str:
    """Where the rings are, as it stands, and what contradicts it."""
    rings = part.rings.value
    if not part.moves:
        return translate("Heartside", "It has no rings.")
    if rings is None:
        return translate("Heartside", "Rings not known yet.")
    words = translate("Heartside", "Ring angle {degrees:.0f}° in the middle").format(
        degrees=rings.middle_angle_degrees
    )
    if rings.pith_mm is not None:
        x, y = rings.pith_mm
        radius = translate("Heartside", "radius {length}").format(length=short_length((x * x + y * y) ** 0.5))
        words += f", {radius}"
    if part.rings.origin != TAGGED:
        words += translate("Heartside", " (inferred)")
    return "\n".join([words + ".", *(problem.message for problem in part.problems)])
