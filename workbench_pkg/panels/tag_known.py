"""What is taken of the chosen boards though nobody said it, and what the host hints at: each told as such, with
one click to make it said.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import FreeCAD as App

from movement_core.errors import UnknownName
from movement_core.piece.part import Part
from movement_core.wood import find_species
from workbench_pkg.actions.drafts import accepted
from workbench_pkg.host.hints import card_hint
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.qt import QtCore, QtWidgets
from workbench_pkg.panels.telling import explain

translate = App.Qt.translate
ROWS = 9
CANDIDATES = 3


@dataclass(frozen=True)
class Offer:
    """One row: its words, and the facts by the keys of parts that its button makes said."""

    words: str
    facts: Mapping[str, Mapping[str, object]]
    button: str


def word_names() -> dict[str, str]:
    """How the words are called that can be inferred."""
    return {
        "grain": translate("Heartside", "Grain"),
        "show": translate("Heartside", "Show face"),
        "cut": translate("Heartside", "Cut"),
        "glued": translate("Heartside", "When glued"),
        "flattened": translate("Heartside", "When flattened"),
        "fitted": translate("Heartside", "When fitted"),
    }


def offers_for(chosen: Sequence[tuple[Leaf, Part]]) -> list[Offer]:
    """What was inferred of these parts, then what the host hints at."""
    return [*_inferred(chosen), *_hinted(chosen)]


def _inferred(chosen: Sequence[tuple[Leaf, Part]]) -> list[Offer]:
    facts = {part.key: accepted(part) for _, part in chosen}
    accept = translate("Heartside", "Accept")
    offers = []
    for word, name in word_names().items():
        own = {key: {word: said[word]} for key, said in facts.items() if word in said}
        if not own:
            continue
        if len(chosen) == 1:
            part = chosen[0][1]
            value = _text(word, own[part.key][word])
            words = translate("Heartside", "{fact} {value}, inferred: {reason}").format(
                fact=name, value=value, reason=_reason(part, word)
            )
        else:
            words = translate("Heartside", "{fact} inferred on {count} boards").format(
                fact=name, count=len(own)
            )
        offers.append(Offer(words, own, accept))
    return offers


def _reason(part: Part, word: str) -> str:
    frame = part.frame
    facts = {"grain": frame.grain, "show": frame.show, "cut": part.rings}
    fact: Any = facts[word] if word in facts else getattr(part, f"{word}_mc")
    return str(fact.reason)


def _text(word: str, value: object) -> str:
    return f"{value:g} %" if isinstance(value, float) else str(value)


def _hinted(chosen: Sequence[tuple[Leaf, Part]]) -> list[Offer]:
    """Species by the names on the host's material cards, for parts of which no species was said."""
    by_card: dict[str, list[str]] = {}
    for leaf, part in chosen:
        hint = None if part.species.known else card_hint(leaf)
        if hint is not None:
            by_card.setdefault(hint.name, []).append(part.key)
    offers = []
    for card, keys in by_card.items():
        words = translate("Heartside", "Hint: the material card says “{card}”").format(card=card)
        if len(chosen) > 1:
            words += translate("Heartside", " on {count} boards").format(count=len(keys))
        names = species_like(card)
        if not names:
            offers.append(Offer(words + translate("Heartside", "; no wood of that name is known"), {}, ""))
        for name in names:
            take = translate("Heartside", "Take {species}").format(species=name)
            offers.append(Offer(words, {key: {"species": name} for key in keys}, take))
    return offers


def species_like(card: str) -> list[str]:
    """Species that a material card may mean: the one of that name, else the few that the name is a part of."""
    try:
        return [find_species(card).name]
    except UnknownName as error:
        return list(error.nearest[:CANDIDATES]) if error.fits else []


class TagKnown(QtWidgets.QGroupBox):
    """The rows. ``accept(facts by key)`` is called for the row whose button is pressed."""

    def __init__(self, accept: Callable[[Mapping[str, Mapping[str, object]]], object]) -> None:
        super().__init__(translate("Heartside", "Taken, but nobody said it"))
        self.setObjectName("HeartsideKnown")
        self.accept = accept
        self.offers: list[Offer] = []
        self.rows: list[tuple[QtWidgets.QLabel, QtWidgets.QPushButton]] = []
        grid = QtWidgets.QGridLayout(self)
        grid.setContentsMargins(6, 4, 6, 4)
        grid.setVerticalSpacing(2)
        grid.setColumnStretch(0, 1)
        for row in range(ROWS):
            label, button = QtWidgets.QLabel(), QtWidgets.QPushButton()
            label.setWordWrap(True)
            label.setTextFormat(QtCore.Qt.PlainText)
            label.setObjectName(f"HeartsideKnown{row}")
            button.setObjectName(f"HeartsideAccept{row}")
            button.setAutoDefault(False)
            explain(button, translate("Heartside", "Say it yourself: it is written with the other tags"))
            button.clicked.connect(lambda *_, row=row: self._pressed(row))
            grid.addWidget(label, row, 0)
            grid.addWidget(button, row, 1)
            self.rows.append((label, button))
        self.show_offers([])

    def show_offers(self, offers: Sequence[Offer]) -> None:
        """Show these rows; the box is not there while there are none."""
        self.offers = list(offers[:ROWS])
        for row, (label, button) in enumerate(self.rows):
            there = row < len(self.offers)
            label.setVisible(there)
            button.setVisible(there and bool(self.offers[row].facts))
            if there:
                label.setText(self.offers[row].words)
                button.setText(self.offers[row].button)
        self.setVisible(bool(self.offers))

    def _pressed(self, row: int) -> None:
        if row < len(self.offers):
            self.accept(self.offers[row].facts)
