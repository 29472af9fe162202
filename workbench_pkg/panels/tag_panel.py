"""Task panel: say what the selected boards are made of. It follows the selection; nothing is written before OK."""

from __future__ import annotations

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.errors import HeartsideError
from movement_core.wood import all_figures
from workbench_pkg.host.qt import QtCore, QtGui, QtWidgets, enum_value
from workbench_pkg.panels import recorded
from workbench_pkg.panels.chosen import SelectionWatch, chosen_boards
from workbench_pkg.panels.directions import along, outward
from workbench_pkg.panels.fields import KEEP, ChoiceField, NumberField, common
from workbench_pkg.panels.icons import icon
from workbench_pkg.panels.species_field import SpeciesField
from workbench_pkg.panels.telling import told, unexpected

translate = App.Qt.translate
FINISHES = ("none", "oil 3", "wax 2", "shellac 3", "varnish 2", "varnish 3", "lacquer 3", "paint 2")


class TagPanel:
    """Fields by the words of a tag. One undo step for each document element that is tagged."""

    def __init__(self) -> None:
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("HeartsideTagPanel")
        self.form.setWindowTitle(translate("Heartside", "Tag wood"))
        self.form.setWindowIcon(QtGui.QIcon(icon("tag_wood")))
        self.parts = _label("HeartsideParts", bold=True)
        self.trouble = _label("HeartsideTrouble")
        self.trouble.setStyleSheet("color: #b3261e; font-weight: bold")
        self.species = SpeciesField()
        flat = translate("Heartside", "flat-sawn"), "flat"
        rift = translate("Heartside", "rift-sawn"), "rift"
        quarter = translate("Heartside", "quarter-sawn"), "quarter"
        show, back = (translate("Heartside", "show face"), "show"), (translate("Heartside", "back"), "back")
        self.fields: dict[str, ChoiceField | NumberField] = {
            "grain": ChoiceField("HeartsideGrain", along(None), free=True),
            "show": ChoiceField("HeartsideShow", outward(None)),
            "heart": ChoiceField("HeartsideHeart", [show, back]),
            "cut": ChoiceField("HeartsideCut", [flat, rift, quarter]),
            "rings": NumberField("HeartsideRings", 0.0, 90.0, 0.0, unit="deg"),
            "built": NumberField("HeartsideBuilt", 0.0, 30.0, 9.0, suffix=" %"),
            "glued": NumberField("HeartsideGlued", 0.0, 30.0, 9.0, suffix=" %"),
            "flattened": NumberField("HeartsideFlattened", 0.0, 30.0, 9.0, suffix=" %"),
            "fitted": NumberField("HeartsideFitted", 0.0, 30.0, 9.0, suffix=" %"),
            "finish": ChoiceField("HeartsideFinish", [(name, name) for name in FINISHES], free=True),
            "figure": ChoiceField("HeartsideFigure", [(f.name, f.name) for f in all_figures()]),
        }
        self.pith = (
            NumberField("HeartsidePithAcross", -5000.0, 5000.0, 0.0, unit="mm"),
            NumberField("HeartsidePithThrough", -5000.0, 5000.0, -100.0, unit="mm"),
        )
        self.pith[1].said.hide()  # one tick for the pair
        self.pith[0].said.toggled.connect(self.pith[1].said.setChecked)
        self._lay_out()
        self.chosen = chosen_boards()
        self.watch = SelectionWatch(self.read)
        self.read()

    # ---- what it shows ----------------------------------------------------------------------------------

    def read(self) -> None:
        """Show what the selected boards say."""
        self.trouble.setText("")
        self.chosen = chosen_boards()
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
        said = self.chosen.said()
        leaf = self.chosen.leaves[0] if len(names) == 1 else None
        grain, show = self.fields["grain"], self.fields["show"]
        assert isinstance(grain, ChoiceField) and isinstance(show, ChoiceField)
        grain.choices, show.choices = along(leaf), outward(leaf)
        self.species.show(common([one.get("species") for one in said]))
        for word, field in self.fields.items():
            field.show(common([one.get(word) for one in said]))
        pith = common([one.get("pith") for one in said])
        for axis, field in enumerate(self.pith):
            field.show(pith[axis] if isinstance(pith, tuple) and len(pith) == 2 else pith)

    def answers(self) -> dict[str, object]:
        """The facts that the user changed, by word. Raises UnknownName for a species that is none."""
        facts: dict[str, object] = {"species": self.species.answer()}
        facts |= {word: field.answer() for word, field in self.fields.items()}
        across, through = (field.answer() for field in self.pith)
        if across is not KEEP or through is not KEEP:
            said = self.pith[0].said.isChecked()
            facts["pith"] = tuple(field.number() for field in self.pith) if said else None
        return {word: value for word, value in facts.items() if value is not KEEP}

    # ---- what the host calls ----------------------------------------------------------------------------

    def getStandardButtons(self) -> int:
        buttons = QtWidgets.QDialogButtonBox.Ok | QtWidgets.QDialogButtonBox.Cancel
        return enum_value(buttons)

    def accept(self) -> bool:
        """Write and close; where something cannot be written, say so and stay open."""
        try:
            if not self.chosen.leaves:
                raise HeartsideError(
                    translate("Heartside", "no board is selected"),
                    todo=translate("Heartside", "click boards in the view or the tree"),
                )
            facts = self.answers()
            if facts:
                recorded.run("tag", "tag", recorded.objects(self.chosen.targets()), *recorded.facts(facts))
                told(translate("Heartside", "{count} tagged").format(count=len(self.chosen.leaves)))
        except HeartsideError as error:
            self.trouble.setText(str(error))
            return False
        except Exception as error:
            self.trouble.setText(unexpected(error))
            return False
        self._close()
        return True

    def reject(self) -> bool:
        """Close; nothing was written, so nothing is left."""
        self._close()
        return True

    def _close(self) -> None:
        self.watch.close()
        Gui.Control.closeDialog()

    # ---- how it looks -----------------------------------------------------------------------------------

    def _lay_out(self) -> None:
        column = QtWidgets.QVBoxLayout(self.form)
        column.setContentsMargins(2, 2, 2, 2)
        column.addWidget(self.parts)
        column.addWidget(self.species.widget)
        lie = [
            (translate("Heartside", "Grain along"), self.fields["grain"].widget),
            (translate("Heartside", "Show face"), self.fields["show"].widget),
            (translate("Heartside", "Heart side"), self.fields["heart"].widget),
            (translate("Heartside", "Cut"), self.fields["cut"].widget),
            (translate("Heartside", "Ring angle"), self.fields["rings"].widget),
            (translate("Heartside", "Pith across"), self.pith[0].widget),
            (translate("Heartside", "Pith through"), self.pith[1].widget),
        ]
        moisture = [
            (translate("Heartside", "When built"), self.fields["built"].widget),
            (translate("Heartside", "When glued"), self.fields["glued"].widget),
            (translate("Heartside", "When flattened"), self.fields["flattened"].widget),
            (translate("Heartside", "When fitted"), self.fields["fitted"].widget),
        ]
        rest = [
            (translate("Heartside", "Finish"), self.fields["finish"].widget),
            (translate("Heartside", "Figure"), self.fields["figure"].widget),
        ]
        for title, rows in (
            (translate("Heartside", "How it lies in the tree"), lie),
            (translate("Heartside", "Moisture content"), moisture),
            (translate("Heartside", "Surface and figure"), rest),
        ):
            column.addWidget(_group(title, rows))
        column.addWidget(self.trouble)
        column.addStretch(1)


def _group(title: str, rows: list[tuple[str, QtWidgets.QWidget]]) -> QtWidgets.QGroupBox:
    box = QtWidgets.QGroupBox(title)
    form = QtWidgets.QFormLayout(box)
    form.setFieldGrowthPolicy(QtWidgets.QFormLayout.AllNonFixedFieldsGrow)
    form.setContentsMargins(6, 4, 6, 4)
    for label, widget in rows:
        form.addRow(label, widget)
    return box


def _label(name: str, bold: bool = False) -> QtWidgets.QLabel:
    label = QtWidgets.QLabel()
    label.setObjectName(name)
    label.setWordWrap(True)
    label.setTextFormat(QtCore.Qt.PlainText)
    if bold:
        label.setStyleSheet("font-weight: bold")
    return label
