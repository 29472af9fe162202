"""Saying how a board lies in the tree by pointing: buttons of the tag panel, and what a click in the view means then.

The view hands in rays; what they point at is worked out in the section frame of the part. Nothing is written: what was
pointed at goes into the fields of the panel.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Protocol

import FreeCAD as App
import numpy as np
from numpy.typing import NDArray

from movement_core.errors import HeartsideError
from movement_core.piece.part import Part
from movement_core.section.rings import Rings
from workbench_pkg.actions.drafts import as_it_lies, flipped, turned
from workbench_pkg.actions.pointing import Ray, end_centre, heart_of, place_on_end, point_on_end
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.qt import QtWidgets
from workbench_pkg.panels.telling import explain, unexpected

translate = App.Qt.translate
Floats = NDArray[np.float64]

GRAB_PIXELS = 14.0  # so near a press takes hold of the drawn centre
PITH, FAR, POINTS, HEART = "pith", "far", "points", "heart"
TENTH_UM = 4  # decimals of a picked mm that are kept


@dataclass(frozen=True, eq=False)
class Eye:
    """A place of the mouse: its ray, and how many pixels a point of the document is away from it on the screen."""

    ray: Ray
    pixels_to: Callable[[Floats], float]


@dataclass(frozen=True, eq=False)
class Shown:
    """A part to draw marks on; badges: (place, text) to put over it; line (K, 3): from the end to the centre."""

    leaf: Leaf
    part: Part
    badges: Sequence[tuple[Floats, str]] = ()
    line: Floats = field(default_factory=lambda: np.zeros((0, 3)))


class View(Protocol):
    """What draws on parts and hears the mouse."""

    def show(self, shown: Sequence[Shown]) -> None: ...
    def listen(self, hand: Any) -> None: ...
    def zoom(self, leaves: Iterable[Leaf]) -> bool: ...
    def look_at_end(self, leaf: Leaf, part: Part, others: Iterable[Leaf], far: bool) -> bool: ...
    def show_all(self) -> None: ...
    @property
    def is_at_end(self) -> bool: ...
    def close(self) -> None: ...


class TagPointing:
    """The hand: ``say(facts)`` gets what was pointed at, ``tell(text)`` what to do next or what went wrong."""

    def __init__(
        self,
        view: View | None,
        say: Callable[[Mapping[str, object]], object],
        tell: Callable[[str, bool], object],
        others: Callable[[Leaf], Iterable[Leaf]],
    ) -> None:
        """others(leaf): the other leaves of the document. tell(text, bad)."""
        self.view, self.say, self.tell, self.others = view, say, tell, others
        self.mode = ""
        self.part: Part | None = None
        self.leaf: Leaf | None = None
        self.facts: Mapping[str, object] = {}
        self.end_is_far = False
        self.picked: list[tuple[float, float, bool]] = []
        self.dragged = ""
        self.widget = QtWidgets.QWidget()
        self.buttons: dict[str, Any] = {}
        self._lay_out()
        self.aim(None, None, {})

    # ---- what is pointed at -------------------------------------------------------------------------------

    def aim(self, leaf: Leaf | None, part: Part | None, facts: Mapping[str, object]) -> None:
        """The one part that clicks are about, and what it says by word; None where there is none or several."""
        if leaf is None or self.leaf is None or leaf.key != self.leaf.key:
            self.stop()
            if self.view is not None:
                self.view.show_all()
            self.buttons["end"].setChecked(False)
        self.leaf, self.part, self.facts = leaf, part, facts
        lies = part is not None and self.view is not None and part.moves
        known = lies and part is not None and part.frame.grain.known
        for name in (PITH, FAR, POINTS, "end", "flip"):
            self.buttons[name].setEnabled(bool(known))
        for name in (HEART, "turn"):
            self.buttons[name].setEnabled(bool(lies))

    def shown(self, leaf: Leaf, part: Part) -> Shown:
        """What to draw on a part: with the handle and the picked points where it is the one that is pointed at."""
        if self.leaf is None or leaf.key != self.leaf.key or not part.frame.grain.known:
            return Shown(leaf, part)
        badges = [(place_on_end(part, x, y, far), str(i + 1)) for i, (x, y, far) in enumerate(self.picked)]
        line = np.zeros((0, 3))
        rings = part.rings.value
        if rings is not None and rings.pith_mm is not None:
            place = place_on_end(part, *rings.pith_mm, self.end_is_far)
            badges.append((place, "+"))
            line = np.array([end_centre(part, self.end_is_far), place])
        return Shown(leaf, part, badges, line)

    # ---- buttons ------------------------------------------------------------------------------------------

    def start(self, mode: str) -> None:
        """Let the next clicks in the view say this."""
        self.stop()
        self.mode = mode
        self.buttons[mode].setChecked(True)
        words = {
            PITH: translate(
                "Heartside", "Click where the centre of the tree was, on or beyond the end; drag it."
            ),
            FAR: translate(
                "Heartside", "Click where the centre of the tree was at the end that the arrow points to."
            ),
            POINTS: translate(
                "Heartside", "Click three points on one ring, well apart, on the end of the board."
            ),
            HEART: translate("Heartside", "Click the face that was nearer the centre of the tree."),
        }
        self.tell(words[mode], False)

    def stop(self) -> None:
        """Clicks in the view select again."""
        self.mode, self.dragged = "", ""
        self.picked.clear()
        for name in (PITH, FAR, POINTS, HEART):
            self.buttons[name].setChecked(False)

    def is_busy(self) -> bool:
        return bool(self.mode or self.dragged)

    def escape(self) -> bool:
        """End what the next clicks would say; whether there was anything to end."""
        was = self.is_busy()
        self.stop()
        if was:
            self.tell("", False)
            self.say({})
        return was

    def _pressed(self, mode: str) -> None:
        if self.buttons[mode].isChecked():
            self.start(mode)
        else:
            self.escape()

    def flip(self) -> None:
        """Turn the arrow round; the rings stay where they are."""
        if self.part is not None:
            self.say(flipped(self.part, self.facts))

    def turn(self) -> None:
        """Run the grain along another of the object's axes."""
        if self.part is not None:
            self.say(turned(self.part, self.facts))

    def look(self) -> None:
        """Look at an end alone, or at everything again; a further press shows the other end."""
        if self.leaf is None or self.part is None or self.view is None:
            return
        if self.view.is_at_end and not self.buttons["end"].isChecked():
            self.view.show_all()
        else:
            self.view.look_at_end(self.leaf, self.part, self.others(self.leaf), self.end_is_far)
        self.say({})

    # ---- the hand over the view ---------------------------------------------------------------------------

    def press(self, eye: Eye) -> bool:
        """Whether the click is ours."""
        if self.leaf is None or self.part is None:
            return False
        if self.mode in ("", PITH) and self._holds_pith(eye):
            self.dragged = PITH
            return True
        if not self.mode:
            return False
        try:
            self._point(eye)
        except HeartsideError as error:
            self.tell(str(error), True)
        return True

    def drag(self, eye: Eye) -> None:
        if self.dragged:
            try:
                self._place(self.dragged, eye)
            except HeartsideError as error:
                self.tell(str(error), True)

    def drop(self, eye: Eye) -> None:
        if self.dragged:
            self.drag(eye)
            self.stop()
            self.tell("", False)

    def failed(self, error: Exception) -> None:
        """Something nobody foresaw happened while the mouse was heard."""
        self.stop()
        self.tell(unexpected(error), True)

    def _holds_pith(self, eye: Eye) -> bool:
        assert self.part is not None
        rings = self.part.rings.value
        if rings is None or rings.pith_mm is None or not self.part.frame.grain.known:
            return False
        return eye.pixels_to(place_on_end(self.part, *rings.pith_mm, self.end_is_far)) <= GRAB_PIXELS

    def _point(self, eye: Eye) -> None:
        assert self.leaf is not None and self.part is not None
        if self.mode == HEART:
            self.say({"heart": heart_of(self.leaf, self.part, eye.ray)})
            self.stop()
            self.tell("", False)
        elif self.mode == POINTS:
            self._pick(eye)
        else:
            self.dragged = self.mode
            self._place(self.mode, eye)

    def _place(self, word: str, eye: Eye) -> None:
        assert self.leaf is not None and self.part is not None
        found = point_on_end(self.leaf, self.part, eye.ray)
        if word == FAR and not found.far:
            raise HeartsideError(
                translate("Heartside", "that is the end where the arrow starts"),
                todo=translate("Heartside", "look at the end that it points to"),
            )
        self.end_is_far = found.far
        place = (round(found.x, TENTH_UM), round(found.y, TENTH_UM))
        facts: dict[str, object] = {word: place, **as_it_lies(self.part)}
        if word == PITH:
            facts["points"] = None
        self.say({k: v for k, v in facts.items() if v is not None or self.facts.get(k) is not None})

    def _pick(self, eye: Eye) -> None:
        assert self.leaf is not None and self.part is not None
        found = point_on_end(self.leaf, self.part, eye.ray)
        if not found.on_wood:
            raise HeartsideError(
                translate("Heartside", "that is beside the end of the board"),
                todo=translate("Heartside", "click on the wood, where the ring is seen"),
            )
        self.end_is_far = found.far
        self.picked.append((round(found.x, TENTH_UM), round(found.y, TENTH_UM), found.far))
        if len(self.picked) < 3:
            self.tell(translate("Heartside", "{count} of 3 points").format(count=len(self.picked)), False)
            self.say({})
            return
        points = tuple((x, y) for x, y, _ in self.picked)
        try:
            Rings.through(points)
        except HeartsideError:
            self.picked.pop()
            raise
        facts: dict[str, object] = {"points": tuple(v for point in points for v in point), "pith": None}
        facts |= as_it_lies(self.part)
        self.stop()
        self.tell("", False)
        self.say({k: v for k, v in facts.items() if v is not None or self.facts.get(k) is not None})

    # ---- how it looks -------------------------------------------------------------------------------------

    def _lay_out(self) -> None:
        grid = QtWidgets.QGridLayout(self.widget)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(3)
        texts = {
            "flip": (
                translate("Heartside", "Flip the arrow"),
                translate("Heartside", "Point the grain the other way; the rings stay where they are"),
            ),
            "turn": (
                translate("Heartside", "Other axis"),
                translate("Heartside", "Run the grain along the next of the object's own axes"),
            ),
            PITH: (
                translate("Heartside", "Pith"),
                translate("Heartside", "Point at the pith on an end, or beyond its edge, and drag it"),
            ),
            POINTS: (
                translate("Heartside", "Three on a ring"),
                translate("Heartside", "Point at three places along one ring on an end"),
            ),
            HEART: (
                translate("Heartside", "Heart face"),
                translate("Heartside", "Click the face that was nearer the centre of the tree"),
            ),
            FAR: (
                translate("Heartside", "Pith, far end"),
                translate(
                    "Heartside", "Point at the pith on the end that the arrow points to, where it differs"
                ),
            ),
            "end": (
                translate("Heartside", "Look at the end"),
                translate("Heartside", "Look squarely at an end of this board alone; press again to go back"),
            ),
        }
        for place, (name, (text, tip)) in enumerate(texts.items()):
            button = QtWidgets.QPushButton(text)
            button.setObjectName(f"HeartsidePoint_{name}")
            button.setAutoDefault(False)
            button.setSizePolicy(QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Fixed)
            button.setCheckable(name in (PITH, FAR, POINTS, HEART, "end"))
            explain(button, tip)
            self.buttons[name] = button
            grid.addWidget(button, place // 2, place % 2)
        for mode in (PITH, FAR, POINTS, HEART):
            self.buttons[mode].clicked.connect(lambda *_, mode=mode: self._pressed(mode))
        self.buttons["flip"].clicked.connect(lambda *_: self.flip())
        self.buttons["turn"].clicked.connect(lambda *_: self.turn())
        self.buttons["end"].clicked.connect(lambda *_: self.look())
