"""What keeps a command from doing anything in a document, each in one sentence with what to do next."""

from __future__ import annotations

from typing import Any

import FreeCAD as App

from movement_core.errors import HeartsideError
from movement_core.piece.tops import FoundTop
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.panels.chosen import chosen_boards
from workbench_pkg.panels.tag_open import open_words

translate = App.Qt.translate


def need_solids(doc: Any) -> None:
    """Raises HeartsideError where a document has no solid that is shown, and none that is selected."""
    if not any(leaf.visible for leaf in read_leaves(doc).leaves) and not chosen_boards(doc).leaves:
        raise no_solid(doc)


def no_solid(doc: Any) -> HeartsideError:
    """Why there is nothing to work on in a document that shows no solid."""
    reading = read_leaves(doc, hidden=True)
    if reading.leaves:
        words = translate("Heartside", "No part of this document is shown: {count} are hidden")
        return HeartsideError(
            words.format(count=len(reading.leaves)),
            todo=translate("Heartside", "show them: choose them in the tree and press the space bar"),
        )
    if reading.unreadable:
        words = translate("Heartside", "There is no solid in this document ({why})")
        return HeartsideError(
            words.format(why=str(reading.unreadable[0]).rstrip(".")),
            todo=translate("Heartside", "make a solid of each board, or open a model that has them"),
        )
    if doc.Objects:
        return HeartsideError(
            translate(
                "Heartside", "There is no solid in this document; sketches and meshes are no boards yet"
            ),
            todo=translate("Heartside", "make a solid of each board, or open a model that has them"),
        )
    return HeartsideError(
        translate("Heartside", "This document is empty"),
        todo=translate("Heartside", "draw the piece, one solid for each board, or open a model of it"),
    )


def not_said(found: FoundTop) -> HeartsideError:
    """What keeps the plans of a top from being worked out."""
    lacking = [board.part for board in found.place.boards if board.part.missing]
    if not lacking:
        return HeartsideError("; ".join(found.why_not), where=found.name)
    names = open_words()
    facts = dict.fromkeys(word for part in lacking for word in part.missing)
    words = translate("Heartside", "not said yet of {count} of its {all} boards: {facts}")
    return HeartsideError(
        words.format(
            count=len(lacking), all=len(found.place.boards), facts=", ".join(names[word] for word in facts)
        ),
        where=found.name,
        todo=translate("Heartside", "say it with “Tag wood …”, which steps through these boards"),
    )
