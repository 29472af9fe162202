"""How the piece is built so that it can move: what holds its tops, and the slots that are cut for it."""

from __future__ import annotations

from typing import Any

import FreeCAD as App

from movement_core.errors import HeartsideError
from workbench_pkg.commands.base import QT_TRANSLATE_NOOP, Command, open_panel
from workbench_pkg.panels import recorded
from workbench_pkg.panels.telling import problem, told

translate = App.Qt.translate


class HoldTop(Command):
    name, picture = "Heartside_Hold", "hold_top"
    needs_solids = True
    menu = QT_TRANSLATE_NOOP("Heartside_Hold", "Hold the top flat …")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_Hold", "Compare ways to fasten a top to its frame, and place one of them in the model"
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.panels.attachment_panel import AttachmentPanel
        from workbench_pkg.views.hardware_preview import HardwarePreview

        preview = HardwarePreview(doc.Name)
        open_panel(lambda: AttachmentPanel(doc, preview), preview)


class CutSlots(Command):
    name, picture = "Heartside_CutSlots", "cut_slots"
    menu = QT_TRANSLATE_NOOP("Heartside_CutSlots", "Cut the slots")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_CutSlots",
        "Cut the slots, holes and mortises of the placed hardware; each part becomes the base of an ordinary cut",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.objects.hardware import cuts_of, uncut

        recorded.run("cutting", "cut_slots", recorded.document(doc))
        left = uncut(doc)
        if left:
            words = translate("Heartside", "The slots are cut, but not all of them:")
            problem("\n".join([words, *left]))
        else:
            told(translate("Heartside", "Slots cut in {count} parts").format(count=len(cuts_of(doc))))


class TakeHardwareOut(Command):
    name, picture = "Heartside_TakeHardware", "take_hardware"
    menu = QT_TRANSLATE_NOOP("Heartside_TakeHardware", "Take hardware out")
    tip = QT_TRANSLATE_NOOP(
        "Heartside_TakeHardware",
        "Take fasteners and the slots that were cut for them out; the model is as it was",
    )

    def do(self, doc: Any) -> None:
        from workbench_pkg.objects.hardware import has_hardware

        if not has_hardware(doc):
            raise HeartsideError(
                translate("Heartside", "There is no hardware in this document"),
                todo=translate("Heartside", "“Hold the top flat …” places some"),
            )
        recorded.run("hardware", "remove_hardware", recorded.document(doc))
        told(translate("Heartside", "Hardware taken out"))


COMMANDS = (HoldTop(), CutSlots(), TakeHardwareOut())
