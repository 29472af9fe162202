"""The fields of the tag panel: one for every word of a tag, those that are seldom needed folded away."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from typing import Any

import FreeCAD as App

from movement_core.air.presets import all_years
from movement_core.wood import all_figures
from movement_core.wording import say
from workbench_pkg.host.leaves import Leaf
from workbench_pkg.host.qt import QtCore, QtWidgets
from workbench_pkg.panels.directions import along, outward
from workbench_pkg.panels.fields import KEEP, MIXED, ChoiceField, NumberField, common
from workbench_pkg.panels.tag_fold import Fold, form_of
from workbench_pkg.panels.telling import explain

translate = App.Qt.translate
FINISHES = ("none", "oil 3", "wax 2", "shellac 3", "varnish 2", "varnish 3", "lacquer 3", "paint 2")
FURTHEST_MM = 5000.0
OF_ONE_BOARD = (
    "grain",
    "show",
    "heart",
    "pith",
    "far",
    "points",
)  # words that make no sense on another board


class PairField:
    """Two lengths that are said together: across the width and through the thickness."""

    def __init__(self, name: str) -> None:
        self.across = NumberField(f"{name}Across", -FURTHEST_MM, FURTHEST_MM, 0.0, unit="mm")
        self.through = NumberField(f"{name}Through", -FURTHEST_MM, FURTHEST_MM, -100.0, unit="mm")
        self.through.said.hide()  # one tick for the pair
        self.across.said.toggled.connect(self.through.said.setChecked)

    def show(self, value: object) -> None:
        for axis, field in enumerate((self.across, self.through)):
            field.show(value[axis] if isinstance(value, (tuple, list)) and len(value) == 2 else value)

    def answer(self) -> object:
        if self.across.answer() is KEEP and self.through.answer() is KEEP:
            return KEEP
        return (self.across.number(), self.through.number()) if self.across.said.isChecked() else None

    def set(self, value: Any) -> None:
        for axis, field in enumerate((self.across, self.through)):
            field.set(None if value is None else float(value[axis]))


class PointsField:
    """Three points on a ring: picked in the view, shown as words, and forgotten on request."""

    def __init__(self, name: str) -> None:
        self.widget = QtWidgets.QWidget()
        row = QtWidgets.QHBoxLayout(self.widget)
        row.setContentsMargins(0, 0, 0, 0)
        self.words = QtWidgets.QLabel()
        self.words.setObjectName(name)
        self.words.setWordWrap(True)
        self.forget = QtWidgets.QToolButton()
        self.forget.setObjectName(f"{name}Forget")
        self.forget.setText("×")
        explain(self.forget, translate("Heartside", "Forget the three points"))
        self.forget.clicked.connect(lambda *_: self.set(None))
        row.addWidget(self.words, 1)
        row.addWidget(self.forget)
        self.changed: Callable[[], object] = lambda: None
        self.first: object = None
        self.now: object = None
        self.show(None)

    def show(self, value: object) -> None:
        self.first = tuple(value) if isinstance(value, (tuple, list)) else value
        if isinstance(self.first, tuple) and self.first and isinstance(self.first[0], (tuple, list)):
            self.first = tuple(v for point in self.first for v in point)
        self._put(self.first)

    def answer(self) -> object:
        return KEEP if self.now == self.first else self.now

    def set(self, value: Any) -> None:
        self._put(None if value is None else tuple(float(v) for v in value))
        self.changed()

    def _put(self, value: object) -> None:
        self.now = value
        self.forget.setEnabled(value is not None and value is not MIXED)
        if value is MIXED:
            self.words.setText(translate("Heartside", "(different)"))
        elif isinstance(value, tuple) and len(value) == 6:
            places = [f"{value[i]:.1f} / {value[i + 1]:.1f}" for i in (0, 2, 4)]
            self.words.setText("   ".join(places))
        else:
            self.words.setText(translate("Heartside", "not picked"))


class TagFields:
    """All fields by their words. ``changed`` is called once, a moment after a change of the user's."""

    def __init__(self, changed: Callable[[], object]) -> None:
        flat = translate("Heartside", "flat-sawn"), "flat"
        rift = translate("Heartside", "rift-sawn"), "rift"
        quarter = translate("Heartside", "quarter-sawn"), "quarter"
        figures = [(figure.name, figure.name) for figure in all_figures()]
        self.fields: dict[str, Any] = {
            "grain": ChoiceField("HeartsideGrain", along(None), free=True),
            "show": ChoiceField("HeartsideShow", outward(None), free=True),
            "heart": ChoiceField("HeartsideHeart", _hearts(None), free=True),
            "cut": ChoiceField("HeartsideCut", [flat, rift, quarter]),
            "rings": NumberField("HeartsideRings", 0.0, 90.0, 0.0, unit="deg"),
            "pith": PairField("HeartsidePith"),
            "points": PointsField("HeartsidePoints"),
            "far": PairField("HeartsideFar"),
            "radius": NumberField("HeartsideRadius", 1.0, 100_000.0, 100.0, unit="mm"),
            "slope": NumberField("HeartsideSlope", -1.0, 1.0, 0.03, decimals=3),
            "built": NumberField("HeartsideBuilt", 0.0, 30.0, 9.0, suffix=" %"),
            "glued": NumberField("HeartsideGlued", 0.0, 30.0, 9.0, suffix=" %"),
            "flattened": NumberField("HeartsideFlattened", 0.0, 30.0, 9.0, suffix=" %"),
            "fitted": NumberField("HeartsideFitted", 0.0, 30.0, 9.0, suffix=" %"),
            "finish": ChoiceField("HeartsideFinish", [(name, name) for name in FINISHES], free=True),
            "figure": ChoiceField("HeartsideFigure", figures),
            "looks": NumberField("HeartsideLooks", -100.0, 100.0, 1.0),
            "kept": ChoiceField(
                "HeartsideKept", [(say(year.name), year.name) for year in all_years()], free=True
            ),
            "fixed": ChoiceField("HeartsideFixed", [], free=True),
            "lot": ChoiceField("HeartsideLot", [], free=True),
        }
        self._timer = QtCore.QTimer()
        self._timer.setSingleShot(True)
        self._timer.timeout.connect(changed)
        self._explain()
        for field in self.fields.values():
            self._hear(field)

    # ---- what it says -------------------------------------------------------------------------------------

    def show(self, said: Sequence[Mapping[str, object]], leaf: Leaf | None, lots: Sequence[str] = ()) -> None:
        """Show what boards say; ``leaf`` where it is one, whose sides then have names; ``lots`` of the document."""
        self.fields["lot"].choices = [(lot, lot) for lot in lots]
        self.fields["grain"].choices = along(leaf)
        self.fields["show"].choices = outward(leaf)
        self.fields["heart"].choices = _hearts(leaf)
        for word, field in self.fields.items():
            field.show(common([one.get(word) for one in said]))
        self._timer.stop()

    def answers(self) -> dict[str, object]:
        """What the user changed, by word."""
        given = {word: field.answer() for word, field in self.fields.items()}
        return {word: value for word, value in given.items() if value is not KEEP}

    def set(self, facts: Mapping[str, object]) -> None:
        """Enter as a user would."""
        for word, value in facts.items():
            self.fields[word].set(value)
        self.soon()

    def stop(self) -> None:
        self._timer.stop()

    def soon(self, *_: object) -> None:
        self._timer.start(0)

    def _hear(self, field: Any) -> None:
        if isinstance(field, ChoiceField):
            field.widget.activated.connect(self.soon)
            if field.line is not None:
                field.line.editingFinished.connect(self.soon)
        elif isinstance(field, PairField):
            self._hear(field.across)
            self._hear(field.through)
        elif isinstance(field, PointsField):
            field.changed = self.soon
        else:
            field.said.toggled.connect(self.soon)
            field.box.valueChanged.connect(self.soon)

    # ---- how it looks -------------------------------------------------------------------------------------

    def lie(self, buttons: QtWidgets.QWidget, now: QtWidgets.QWidget) -> Fold:
        """How the board lies in the tree; ``buttons`` to point with, and what it comes to ``now``."""
        w = {word: field.widget for word, field in self.fields.items() if not isinstance(field, PairField)}
        pith = self.fields["pith"]
        box = form_of(
            [
                (translate("Heartside", "Grain along"), w["grain"]),
                (translate("Heartside", "Show face"), w["show"]),
                (translate("Heartside", "Heart side"), w["heart"]),
                (translate("Heartside", "Cut"), w["cut"]),
                (translate("Heartside", "Ring angle"), w["rings"]),
                (translate("Heartside", "Pith across"), pith.across.widget),
                (translate("Heartside", "Pith through"), pith.through.widget),
            ]
        )
        box.layout().insertRow(0, buttons)
        box.layout().addRow(now)
        return Fold("HeartsideFoldLie", translate("Heartside", "How it lies in the tree"), box)

    def moisture(self) -> Fold:
        """The one moisture that is always asked."""
        rows = [(translate("Heartside", "When built"), self.fields["built"].widget)]
        return Fold("HeartsideFoldMoisture", translate("Heartside", "Moisture content"), form_of(rows))

    def more(self) -> Fold:
        """Everything that is seldom said."""
        f, far = self.fields, self.fields["far"]
        rows = [
            (translate("Heartside", "Three on a ring"), f["points"].widget),
            (translate("Heartside", "Ring radius"), f["radius"].widget),
            (translate("Heartside", "Far pith across"), far.across.widget),
            (translate("Heartside", "Far pith through"), far.through.widget),
            (translate("Heartside", "Spiral slope"), f["slope"].widget),
            (translate("Heartside", "When glued"), f["glued"].widget),
            (translate("Heartside", "When flattened"), f["flattened"].widget),
            (translate("Heartside", "When fitted"), f["fitted"].widget),
            (translate("Heartside", "Finish"), f["finish"].widget),
            (translate("Heartside", "Figure"), f["figure"].widget),
            (translate("Heartside", "Looks better"), f["looks"].widget),
            (translate("Heartside", "Kept in"), f["kept"].widget),
            (translate("Heartside", "Fixed line"), f["fixed"].widget),
            (translate("Heartside", "Lot"), f["lot"].widget),
        ]
        title = translate("Heartside", "More: finish, figure, lot, far end …")
        return Fold("HeartsideFoldMore", title, form_of(rows), is_open=False)

    def _explain(self) -> None:
        tips = {
            "grain": translate(
                "Heartside", "The axis of the object that the grain runs along; the arrow shows it"
            ),
            "show": translate("Heartside", "The side that is looked at: crown and hollow are told from it"),
            "heart": translate("Heartside", "The face that was nearer the centre of the tree"),
            "cut": translate("Heartside", "How the board was sawn, where the ring angle was not measured"),
            "rings": translate(
                "Heartside", "Angle of the rings to the face on the end: 0 flat-sawn, 90 quarter-sawn"
            ),
            "radius": translate("Heartside", "Radius of the ring at the middle, beside ring angle or cut"),
            "slope": translate("Heartside", "Slope of spiral grain, rise over length: the board twists"),
            "built": translate("Heartside", "Moisture content when it was glued, flattened and fitted"),
            "glued": translate("Heartside", "Moisture content when it was glued, where it differs"),
            "flattened": translate(
                "Heartside", "Moisture content when it was last flattened, where it differs"
            ),
            "fitted": translate("Heartside", "Moisture content when it was fitted, where it differs"),
            "finish": translate("Heartside", "What is on its faces, and how many coats"),
            "figure": translate("Heartside", "Grain out of the ordinary, which widens the spread"),
            "looks": translate(
                "Heartside", "How much better the show face looks than the back, on your own scale"
            ),
            "kept": translate("Heartside", "Where a leaf is kept when not in use: a year of air, or a place"),
            "fixed": translate(
                "Heartside", "The line that stays where it is: an edge as an axis, or mm from the middle"
            ),
            "lot": translate(
                "Heartside",
                "What you call the boards it was cut from: parts of one lot and wood learn together from what you "
                "measure later",
            ),
        }
        for word, tip in tips.items():
            field = self.fields[word]
            explain(field.widget if isinstance(field, ChoiceField) else field.box, tip)
        across = translate("Heartside", "Centre of the tree from the middle of the section, across the width")
        through = translate("Heartside", "The same through the thickness, positive toward the show face")
        for word in ("pith", "far"):
            explain(self.fields[word].across.box, across)
            explain(self.fields[word].through.box, through)


def _hearts(leaf: Leaf | None) -> list[tuple[str, str]]:
    show = translate("Heartside", "show face"), "show"
    back = translate("Heartside", "back"), "back"
    return [show, back, *(outward(leaf) if leaf is not None else [])]
