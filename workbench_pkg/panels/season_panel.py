"""Task panel: run the piece through the year, see what comes close to its limit, and where.

It draws nothing in the model itself: the scene it is given does. Closing the panel takes all of that away again.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui

from movement_core.air.daily import DAYS
from movement_core.piece.whole import WholePiece
from movement_core.sheet.margins import Margin, shares_of_parts
from movement_core.sheet.section_picture import out_of_flat_mm, section_picture
from workbench_pkg.actions.check import Answer
from workbench_pkg.host.qt import QtCore
from workbench_pkg.host.units import short_length
from workbench_pkg.panels.closing import ClosingPanel
from workbench_pkg.panels.palette import Colour
from workbench_pkg.panels.season_colours import ASKS, DRY, STEPS, UNTOLD, WET
from workbench_pkg.panels.season_form import SeasonForm
from workbench_pkg.panels.season_list import day_name, rows_of, worth_marking
from workbench_pkg.panels.season_watch import SeasonWatch
from workbench_pkg.panels.telling import problem, unexpected

translate = App.Qt.translate

TICK_MS, DAYS_A_TICK = 40, 2
LOOK_MS = 500


class SeasonPanel(ClosingPanel, SeasonForm):
    """The panel of one worked-out document. ``again`` works it out anew and opens a new panel."""

    def __init__(
        self, scene: Any, answer: Answer, margins: Sequence[Margin], again: Callable[[], object] | None = None
    ) -> None:
        self.scene, self.motion, self.again = scene, scene.motion, again
        self.whole: WholePiece = answer.whole
        self.parts = [one.part for one in self.whole.parts]
        self.places = {leaf.key: (leaf.root.Name, leaf.sub) for leaf in answer.read.leaves}
        self.is_open = True  # not "open": the host calls that
        marked = worth_marking(margins)
        shares = shares_of_parts(margins, answer.entry["findings"], [p.key for p in self.parts])
        scene.mark(marked, shares)
        self.rows = rows_of(marked, answer.entry["findings"])
        self.sections = self._sections()
        self._make_widgets()
        self._lay_out()
        self.player, self.looker = QtCore.QTimer(), QtCore.QTimer()
        self.player.timeout.connect(lambda: self._safely(self._tick))
        self.looker.timeout.connect(lambda: self._safely(scene.attach))
        self.looker.start(LOOK_MS)
        self.watch = SeasonWatch(scene.name, self._gone, self._changed)
        self.form.destroyed.connect(lambda *_: self.take_away())
        for layer, box in self.layers.items():
            scene.switch(layer, box.isChecked())
        self._explain()
        self.show_day(self.motion.today)

    # ---- the year -----------------------------------------------------------------------------------------

    def show_day(self, day: int) -> None:
        """Move the piece to a day, 0 = 1 January."""
        if self.slider.value() != day:
            self.slider.setValue(day)  # comes back here
            return
        self.scene.show(day, self.factor)
        self.course.set_day(day)
        lines = self.air_lines(day)
        self.date.setText(lines[0])
        self.air.setText("\n".join(lines[1:3]))
        if self.layers["caption"].isChecked():
            self.scene.cards.say(lines)
        self._show_section(day)

    @property
    def factor(self) -> float:
        return float(self.magnify.itemData(self.magnify.currentIndex()))

    def air_lines(self, day: int) -> list[str]:
        """The day, its air, the wood, and how much the movement is magnified."""
        motion = self.motion
        air = translate("Heartside", "Air {temperature:.0f} °C, {humidity:.0f} % RH")
        lines = [
            day_name(day),
            air.format(temperature=motion.temperature_c[day], humidity=motion.rh_percent[day]),
        ]
        if motion.mc is not None:
            wood = translate("Heartside", "Wood {moisture:.1f} %, on its way to {air:.1f} %")
            lines.append(wood.format(moisture=motion.mc[day], air=motion.air_mc[day]))
        if self.factor != 1:
            lines.append(translate("Heartside", "Movement shown {factor:g} times").format(factor=self.factor))
        else:
            lines.append(translate("Heartside", "Movement at true size"))
        return lines

    def play(self, on: bool) -> None:
        """Run or stop the year."""
        self.player.start(TICK_MS) if on else self.player.stop()
        self.run.setText(translate("Heartside", "Stop") if on else translate("Heartside", "Play"))

    def _tick(self) -> None:
        self.show_day((self.slider.value() + DAYS_A_TICK) % DAYS)

    # ---- what lies over it --------------------------------------------------------------------------------

    def _switch(self, layer: str, on: bool) -> None:
        self.scene.switch(layer, on)
        self._explain()
        if layer == "caption":
            self.show_day(self.slider.value())

    def all_off(self) -> None:
        """Take off whatever lies over the piece."""
        for box in self.layers.values():
            box.setChecked(False)
        self.list.clearSelection()
        self.scene.point_at(())

    def _explain(self) -> None:
        swatches: list[tuple[Colour, str, str]] = []
        title = translate("Heartside", "How close to its limit")
        if self.layers["colours"].isChecked() or self.layers["places"].isChecked():
            words = (
                translate("Heartside", "far from it"),
                translate("Heartside", "a quarter of its room used"),
                translate("Heartside", "half of its room used"),
                translate("Heartside", "three quarters used"),
                translate("Heartside", "over it: jams, splits or shows"),
            )
            swatches += [(colour, "fill", text) for (_, colour), text in zip(STEPS, words)]
            swatches.append((ASKS, "fill", translate("Heartside", "depends on what is not said yet")))
            if not all(part.known for part in self.motion.parts):
                swatches.append((UNTOLD, "fill", translate("Heartside", "its wood is not said")))
        if self.layers["ghosts"].isChecked():
            if not swatches:
                title = translate("Heartside", "Outlines")
            swatches.append(
                (
                    DRY,
                    "dashes",
                    translate("Heartside", "driest, {day}").format(day=day_name(self.motion.driest_day)),
                )
            )
            swatches.append(
                (
                    WET,
                    "line",
                    translate("Heartside", "wettest, {day}").format(day=day_name(self.motion.wettest_day)),
                )
            )
        self.scene.cards.explain(title, swatches)
        self.scene.cards.show(bool(swatches) or self.layers["caption"].isChecked())
        self.scene.cards.show_caption(self.layers["caption"].isChecked())

    # ---- list ---------------------------------------------------------------------------------------------

    def _chosen(self) -> None:
        picked = [
            self.rows[index.row()] for index in self.list.selectedIndexes() if index.row() < len(self.rows)
        ]
        keys = [key for row in picked for key in row.keys]
        self.scene.point_at(keys)
        Gui.Selection.clearSelection(self.scene.name)
        doc: Any = App.listDocuments().get(self.scene.name)
        for key in keys:
            root, sub = self.places.get(key, ("", ""))
            if doc is not None and root and doc.getObject(root) is not None:
                Gui.Selection.addSelection(self.scene.name, root, sub)
        if picked:
            margin = picked[-1].margin
            if margin is None:
                self.scene.zoom_parts(keys)
            else:
                self.scene.zoom(margin)
                if margin.used is not None:
                    self.show_day(margin.day)

    # ---- section ------------------------------------------------------------------------------------------

    def _sections(self) -> list[tuple[str, tuple[int, ...]]]:
        """Glued panels first, then every board of its own that bends."""
        found, seen = [], set[int]()
        for panel in self.whole.panels:
            indices = [self.whole.index.get(board.part.key) for board in panel.boards]
            known = tuple(i for i in indices if i is not None)
            if len(known) == len(indices):
                found.append((panel.name, known))
                seen |= set(known)
        for index, part in enumerate(self.motion.parts):
            if part.bends and index not in seen:
                found.append((part.name, (index,)))
        return found

    def _show_section(self, day: int) -> None:
        row = self.which.currentIndex()
        if row < 0 or not self.sections:
            return
        _, indices = self.sections[row]
        boards = section_picture(self.motion, self.parts, indices, day, self.factor)
        true = out_of_flat_mm(section_picture(self.motion, self.parts, indices, day, 1.0))
        way = translate("Heartside", "crown {size}") if true > 0 else translate("Heartside", "hollow {size}")
        width = sum(self.parts[i].frame.width_mm for i in indices)
        self.section.show_section(boards, width, way.format(size=short_length(abs(true))))

    # ---- what happens to the document ---------------------------------------------------------------------

    def _gone(self) -> None:
        self.reject()

    def _changed(self, deleted: str) -> None:
        if deleted:
            self._safely(lambda: self.scene.drop([deleted]))
        self.stale.setVisible(True)
        self.renew.setVisible(self.again is not None)

    def _work_out_again(self) -> None:
        again = self.again
        self.reject()
        if again is not None:
            again()

    def _safely(self, what: Callable[[], object]) -> None:
        """Run what a timer or the document set off; whatever fails closes the panel and shows the parts again."""
        try:
            if self.is_open:
                what()
        except Exception as error:
            self.reject()
            problem(unexpected(error))

    # ---- the host's side of a task panel ------------------------------------------------------------------

    def take_away(self) -> None:
        if self.is_open:
            self.is_open = False
            self.player.stop()
            self.looker.stop()
            self.watch.close()
            self.scene.close()
