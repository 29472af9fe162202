"""Study how the boards of a glued panel may be laid, and what each way costs."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from movement_core.errors import HeartsideError, InputError, UnknownName
from movement_core.piece.arrange import arrange_panel
from movement_core.piece.panels import GluedPanel, glued_panels
from movement_core.piece.relaid import words_of_places
from movement_core.piece.tag_sources import merge, tags_from_text, values_by_word
from movement_core.piece.tags import PROPERTY_WORDS
from movement_core.section.laying import Laying
from movement_core.sheet.arrangements import study_entry
from movement_core.wording import say
from workbench_pkg.actions.check import solve_document, table_beside
from workbench_pkg.actions.measured import measured_beside
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.tag import properties_from_words
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.documents import opened
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.tagging import read_tags, write_tags


@dataclass(frozen=True)
class Arranged:
    """The studies of panels as data, and of those that cannot be studied why."""

    studies: tuple[dict[str, Any], ...]
    refused: tuple[str, ...]


def arrange_document(
    doc: Any,
    settings: Settings | None = None,
    board: str = "",
    may_turn: bool = False,
    may_reorder: bool = False,
    table: Any = None,
    measured: Any = (),
) -> Arranged:
    """The studies of a document's glued panels; ``board`` picks the panel that holds a board of that name.

    Raises InputError where none can be studied, and of the picked panel what it lacks.
    """
    panels = _picked(glued_panels(solve_document(doc, settings, table, measured)[1]), board)
    studies, refused = [], []
    for panel in panels:
        try:
            study = arrange_panel(panel, may_turn, may_reorder)
        except HeartsideError as error:
            if len(panels) == 1:
                raise
            refused.append(str(error))
            continue
        names, keys = [b.part.name for b in panel.boards], [b.part.key for b in panel.boards]
        studies.append(study_entry(panel.name, names, study, keys))
    if not studies:
        raise InputError(
            say("none of its {count} panels can be arranged: {reasons}", count=len(panels), reasons=" ".join(refused)),
            todo=say("say what one of them lacks, and pick it with --board and the name of a board of it"),
        )  # fmt: skip
    return Arranged(tuple(studies), tuple(refused))


def lay_boards(
    doc: Any,
    boards: Sequence[str],
    order: Sequence[int],
    over: Sequence[bool],
    turned: Sequence[bool],
    looks: Sequence[float] | None = None,
) -> None:
    """Say the woods of a panel's boards of the places that they are laid into; nothing drawn is moved.

    Parameters
    ----------
    boards : keys of the panel's boards as it is drawn, from left to right. order : number of the board, from 0, at each
        place. over, turned : for each place, whether its board is turned over, or end for end.
    looks : for each board as drawn, how much better the face looks that is up; None leaves that as it is said.

    Raises
    ------
    InputError : no such panel, or a board does not fit its new place; then nothing is changed.
    """
    laying = Laying(tuple(order), tuple(bool(v) for v in over), tuple(bool(v) for v in turned))
    read, piece = solve_document(doc)
    leaves = {part.key: leaf for part, leaf in zip(read.parts, read.leaves)}
    panel = next((p for p in glued_panels(piece) if [b.part.key for b in p.boards] == list(boards)), None)
    if panel is None:
        raise InputError(
            say("the boards make no panel of this document"),
            where=say("laying"),
            allowed=say("the keys of all its boards from left to right, as 'arrange' tells them"),
            todo=say("read the panel anew"),
        )
    said = [words_said(leaves[key]) for key in boards]
    places = words_of_places(panel, said, laying, looks)
    in_text = [
        merge(*(tags_from_text("", text, "") for text in read_tags(leaves[key]).texts)).said for key in boards
    ]
    with one_step(doc, say("Heartside: lay the boards")):
        for key, words, text in zip(boards, places, in_text):
            stays = sorted(word for word, value in words.items() if value is None and word in text)
            if stays:
                raise InputError(
                    say(
                        "its label says {words}, which would stay behind when its wood goes elsewhere",
                        words=", ".join(stays),
                    ),
                    where=say("board {name!r}", name=leaves[key].name),
                    todo=say("take it out of the label, and tag the board instead"),
                )
            write_tags(leaves[key].owner, properties_from_words(words), leaves[key].element)


def words_said(leaf: Leaf) -> dict[str, Any]:
    """What a board says by its properties, and where they are silent by its label, by word."""
    raw = read_tags(leaf)
    by_label = values_by_word(merge(*(tags_from_text(leaf.name, text, "label") for text in raw.texts)))
    return by_label | {PROPERTY_WORDS[n]: v for n, v in raw.properties.items() if n in PROPERTY_WORDS}


def arrange_file(
    path: Path, settings: Settings, board: str = "", may_turn: bool = False, may_reorder: bool = False
) -> Arranged:
    """The same for a file, which is never written to."""
    table, _ = table_beside(path)
    with opened(path) as doc:
        return arrange_document(doc, settings, board, may_turn, may_reorder, table, measured_beside(path)[0])


def _picked(panels: tuple[GluedPanel, ...], board: str) -> list[GluedPanel]:
    if not panels:
        raise InputError(
            say("no boards lie edge to edge in it"),
            allowed=say("boards of one panel, their grain the same way, their edges within 0.2 mm"),
            todo=say("draw the boards of the panel one by one"),
        )
    if not board:
        return list(panels)
    picked = [panel for panel in panels if any(b.part.name == board for b in panel.boards)]
    if not picked:
        names = ", ".join(b.part.name for panel in panels for b in panel.boards)
        raise UnknownName(say("no panel has a board {board!r}", board=board), allowed=names)
    return picked
