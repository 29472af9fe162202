"""What is asked of the plans: the top, its frame, how flat, with which kinds of fastener, and what stays put."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.holding.fasteners import all_kinds
from movement_core.piece.top_names import CENTRE, edge_names, fixed_line
from movement_core.piece.top_plan import FLATNESS_MM, METAL_KINDS
from movement_core.piece.tops import FoundTop
from movement_core.sheet.seasons import line_words
from movement_core.wording import word
from workbench_pkg.actions.hardware import PlaceWish
from workbench_pkg.host.qt import QtCore, QtWidgets
from workbench_pkg.host.units import short_length
from workbench_pkg.panels import rows

translate = App.Qt.translate
PREFERENCES = "User parameter:BaseApp/Preferences/Mod/Heartside"
KINDS_IN_SHOP = "KindsInShop"
USUAL = ("button", "clip", "figure-eight", "slotted screw")
CHECK = QtCore.Qt.CheckStateRole


def kind_words() -> dict[str, str]:
    """Every kind of fastener of the table, as it is called here; by its name there where nothing else is said."""
    called = {
        "button": translate("Heartside", "Buttons"),
        "clip": translate("Heartside", "Clips"),
        "figure-eight": translate("Heartside", "Figure-eights"),
        "slotted screw": translate("Heartside", "Slotted screws"),
        "plain screw": translate("Heartside", "Plain screws"),
        "slotted steel": translate("Heartside", "Slotted steel"),
    }
    return {kind.kind: called.get(kind.kind) or word(kind.name) for kind in all_kinds()}


def kinds_in_shop() -> tuple[str, ...]:
    """What the maker ticked last."""
    said = App.ParamGet(PREFERENCES).GetString(KINDS_IN_SHOP, ",".join(USUAL))
    return tuple(kind for kind in said.split(",") if kind in kind_words())


class AttachmentFields(QtWidgets.QWidget):
    """The questions. ``changed`` is called once after each change of the user's, a moment later."""

    def __init__(self, changed: Callable[[], object]) -> None:
        super().__init__()
        self.tops: tuple[FoundTop, ...] = ()
        self._filling = False
        self._timer = QtCore.QTimer(self)
        self._timer.setSingleShot(True)
        self._timer.setInterval(350)
        self._timer.timeout.connect(changed)
        self.top = QtWidgets.QComboBox()
        self.top.setObjectName("HeartsideHoldTop")
        self.top.setToolTip(translate("Heartside", "The top that is to be held; or click one of its boards"))
        self.rails = QtWidgets.QListWidget()
        self.rails.setObjectName("HeartsideHoldRails")
        self.rails.setMaximumHeight(80)
        self.rails.setToolTip(
            translate("Heartside", "Rails that may take fasteners; or select them in the view")
        )
        self.fixed = QtWidgets.QComboBox()
        self.fixed.setObjectName("HeartsideHoldFixed")
        self.fixed.setToolTip(
            translate("Heartside", "The line that stays where it is; all else moves from it")
        )
        for box in (self.top, self.fixed):
            box.setMinimumContentsLength(8)
            box.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        self._loader = Gui.UiLoader()  # type: ignore[attr-defined]  # the widget belongs to it
        self.flatness = self._loader.createWidget("Gui::QuantitySpinBox")
        self.flatness.setObjectName("HeartsideHoldFlatness")
        for name, value in (("unit", "mm"), ("minimum", 0.05), ("maximum", 50.0), ("rawValue", FLATNESS_MM)):
            self.flatness.setProperty(name, value)
        self.flatness.setToolTip(translate("Heartside", "Most that the top may be out of flat in any month"))
        self.kinds: dict[str, QtWidgets.QCheckBox] = {}
        for kind, words in kind_words().items():
            if kind not in METAL_KINDS:
                box = QtWidgets.QCheckBox(words)
                box.setObjectName(f"HeartsideKind{kind.title().replace(' ', '').replace('-', '')}")
                box.setChecked(kind in kinds_in_shop())
                box.toggled.connect(self._kinds_changed)
                self.kinds[kind] = box
        self._lay_out()
        self.top.activated.connect(self._top_chosen)
        self.fixed.activated.connect(self._soon)
        self.flatness.valueChanged.connect(self._soon)
        self.rails.model().dataChanged.connect(self._soon)

    # ---- what is asked ----------------------------------------------------------------------------------

    def wish(self) -> PlaceWish:
        """What is asked as it stands."""
        found = self.found()
        if found is None:
            return PlaceWish("", self.flatness_mm(), self.asked_kinds(False), "", ())
        fixed = self.fixed.itemData(max(self.fixed.currentIndex(), 0)) or ""
        return PlaceWish(
            found.short_name, self.flatness_mm(), self.asked_kinds(found.metal), fixed, self.taken_rails()
        )

    def flatness_mm(self) -> float:
        return float(self.flatness.property("rawValue"))

    def asked_kinds(self, metal: bool) -> tuple[str, ...]:
        """The kinds that are ticked; on a metal base the one that suits it."""
        return METAL_KINDS if metal else tuple(kind for kind, box in self.kinds.items() if box.isChecked())

    def found(self) -> FoundTop | None:
        at = self.top.currentIndex()
        return self.tops[at] if 0 <= at < len(self.tops) else None

    def rail_names(self) -> list[str]:
        return [str(rows.read(self.rails, row)) for row in range(self.rails.count())]

    def taken_rails(self) -> tuple[str, ...]:
        """The rails that are ticked; empty where all are."""
        names = self.rail_names()
        ticked = tuple(n for row, n in enumerate(names) if rows.read(self.rails, row, role=CHECK) in _CHECKED)
        return () if len(ticked) == len(names) else ticked

    # ---- what is shown ----------------------------------------------------------------------------------

    def show_tops(self, tops: Sequence[FoundTop], chosen: int) -> None:
        """List the tops of a document, the chosen one's rails and edges; nothing counts as changed by it."""
        before = None if self.found() is None else self.found().short_name  # type: ignore[union-attr]
        self.tops = tuple(tops)
        self.top.clear()
        for found in self.tops:
            place = found.place
            size = (place.length_mm, place.width_mm, place.thickness_mm)
            self.top.addItem(found.name)
            tip = " × ".join(short_length(value) for value in size)
            self.top.setItemData(self.top.count() - 1, tip, rows.TIP)
        self.top.setCurrentIndex(chosen)
        if self.found() is not None and self.found().short_name != before:  # type: ignore[union-attr]
            self._show_frame()

    def _show_frame(self) -> None:
        found = self.found()
        self._filling = True
        self.rails.clear()
        self.fixed.clear()
        stays = None if found is None else fixed_line(found.place)
        if found is not None and stays is not None and stays.said and not stays.differing:
            words = translate("Heartside", "as tagged: {line}")
            self.fixed.addItem(words.format(line=line_words(found.place, stays.at_mm)), "")
        self.fixed.addItem(translate("Heartside", "the middle"), CENTRE if self.fixed.count() else "")
        if found is not None:
            for name in edge_names(found.place):
                self.fixed.addItem(translate("Heartside", "outer edge of {board}").format(board=name), name)
            for rail in found.top.rails if found.top else ():
                way = translate("Heartside", "across the grain")
                if rail.direction == "along":
                    way = translate("Heartside", "along the grain")
                rows.append(self.rails, f"{rail.name}, {way}", data=rail.name)
                self._tick(self.rails.count() - 1, True)
        self._filling = False

    def point_at(self, keys: set[str]) -> None:
        """Boards or rails were selected in the view: their top is meant, or these rails alone."""
        for row, top in enumerate(self.tops):
            if any(board.part.key in keys for board in top.place.boards):
                if row != self.top.currentIndex():
                    self.top.setCurrentIndex(row)
                    self._top_chosen()
                return
        found = self.found()
        if found is None or not keys:
            return
        pointed = {one.name for one in found.place.under if one.solved.part.key in keys}
        names = self.rail_names()
        if pointed & set(names):
            for row, name in enumerate(names):
                self._tick(row, name in pointed)
            self._soon()

    def _tick(self, row: int, yes: bool) -> None:
        model = self.rails.model()
        state = QtCore.Qt.Checked if yes else QtCore.Qt.Unchecked
        model.setData(model.index(row, 0), getattr(state, "value", state), CHECK)

    def _top_chosen(self, *_: object) -> None:
        self._show_frame()
        self._soon()

    def _kinds_changed(self, *_: object) -> None:
        App.ParamGet(PREFERENCES).SetString(KINDS_IN_SHOP, ",".join(self.asked_kinds(False)))
        self._soon()

    def _soon(self, *_: object) -> None:
        if not self._filling:
            self._timer.start()

    def stop(self) -> None:
        self._timer.stop()

    def waits(self) -> bool:
        """Whether a change has not been told yet."""
        return bool(self._timer.isActive())

    def _lay_out(self) -> None:
        form = QtWidgets.QFormLayout(self)
        form.setContentsMargins(0, 0, 0, 0)
        form.setFieldGrowthPolicy(QtWidgets.QFormLayout.AllNonFixedFieldsGrow)
        form.addRow(translate("Heartside", "Top"), self.top)
        form.addRow(translate("Heartside", "Frame"), self.rails)
        form.addRow(translate("Heartside", "Flat within"), self.flatness)
        form.addRow(translate("Heartside", "Stays put"), self.fixed)
        shop = QtWidgets.QVBoxLayout()  # one column: task panels are narrow
        shop.setContentsMargins(0, 0, 0, 0)
        for box in self.kinds.values():
            shop.addWidget(box)
        form.addRow(QtWidgets.QLabel(translate("Heartside", "What the shop has")))
        form.addRow(shop)


_CHECKED = (QtCore.Qt.Checked, getattr(QtCore.Qt.Checked, "value", QtCore.Qt.Checked))
