"""Saying what boards are made of by what is there already: another board, the shape, the host's own hints."""

from __future__ import annotations

from typing import Any

import FreeCAD as App

from movement_core.errors import HeartsideError
from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command, open_panel
from workbench_pkg.panels import recorded
from workbench_pkg.panels.telling import told

translate = App.Qt.translate


class CopyWood(Command):
    name, picture = "Heartside_CopyWood", "copy_wood"
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_CopyWood", "Copy wood …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_CopyWood",
        "Say of other boards what the selected one says of its wood: species, moisture, finish, lot",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.tag_copy import TagCopyPanel

        open_panel(lambda: TagCopyPanel(doc))


class AcceptInferred(Command):
    name, picture = "Heartside_Accept", "accept_inferred"
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_Accept", "Accept what was inferred")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Accept",
        "Make grain, show face and cut that were inferred for the selected boards, or for all, said by you",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.actions.drafts import Draft, accepted
        from workbench_pkg.panels.chosen import chosen_boards

        draft = Draft(doc)
        keys = [leaf.key for leaf in chosen_boards(doc).leaves] or list(draft.leaves)
        found: dict[tuple[str, int | None], tuple[Any, int | None, dict[str, object]]] = {}
        for key, part in draft.parts().items():
            said = {word: value for word, value in accepted(part).items() if word in ("grain", "show", "cut")}
            if key in keys and said:
                leaf = draft.leaves[key]
                found.setdefault((leaf.owner.Name, leaf.element), (leaf.owner, leaf.element, said))
        if not found:
            raise HeartsideError(
                translate("Heartside", "Nothing was inferred here that could be accepted"),
                todo=translate("Heartside", "Tag wood … shows what is still to be told"),
            )
        recorded.run("tag", "tag_each", recorded.parts_with_facts(list(found.values())))
        told(translate("Heartside", "Accepted for {count} boards").format(count=len(found)))


class TakeHints(Command):
    name, picture = "Heartside_Hints", "hints"
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_Hints", "Hints of the model …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Hints", "See what material cards and assembly joints hint at, and take what is right"
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.tag_hints import TagHintsPanel

        open_panel(lambda: TagHintsPanel(doc))


COMMANDS = (CopyWood(), AcceptInferred(), TakeHints())
