"""What one label draws in the 3D view: nodes of ours in place of the host's, below the label's own root.

The document object stays the host's plain annotation, readable without the add-on. Only its scene is exchanged,
never a property. Our nodes stand in a group that "fit all" leaves out, as the host does with its own decorations,
else each call would leave room for where the labels happened to be.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray
from pivy import coin

from workbench_pkg.host.density import pixel_ratio
from workbench_pkg.panels.palette import INK, PAPER, fraction
from workbench_pkg.views.label_art import Picture

_NAME = "HeartsideLabel"
Point = Sequence[float] | NDArray[np.float64]


class LabelNodes:
    """Dot at the part, leader, picture; positions are in the document's frame."""

    def __init__(self) -> None:
        self.group = _skipped_group()
        self.group.setName(_NAME)
        # A node made through its type has no owner in Python and would go with the first scene that drops it.
        self._keeper = coin.SoGroup()
        self._keeper.addChild(self.group)
        drawn = coin.SoAnnotation()
        self.drawn = coin.SoSwitch()
        self.drawn.whichChild = coin.SO_SWITCH_NONE
        self.line = coin.SoCoordinate3()
        self.place = coin.SoTranslation()
        self.image = coin.SoImage()
        self.image.vertAlignment = coin.SoImage.HALF
        self.image.horAlignment = coin.SoImage.CENTER
        flat = coin.SoLightModel()
        flat.model = coin.SoLightModel.BASE_COLOR
        for node in (
            flat,
            self.line,
            *_leader(PAPER, 4.0, 9.0),
            *_leader(INK, 1.5, 5.0),
            self.place,
            self.image,
        ):
            self.drawn.addChild(node)
        drawn.addChild(self.drawn)
        self.group.addChild(drawn)
        self.size = (1, 1)

    def draw(self, picture: Picture) -> None:
        self.size = (picture.width, picture.height)
        self.image.image.setValue(coin.SbVec2s(picture.width, picture.height), 4, picture.data)

    def put(self, anchor: Point, centre: Point) -> None:
        self.line.point.setValues(0, 2, [tuple(map(float, anchor)), tuple(map(float, centre))])
        self.place.translation.setValue(*map(float, centre))
        self.drawn.whichChild = coin.SO_SWITCH_ALL

    def hide(self) -> None:
        self.drawn.whichChild = coin.SO_SWITCH_NONE

    def shown(self) -> bool:
        return bool(self.drawn.whichChild.getValue() == coin.SO_SWITCH_ALL)

    def attach(self, root: Any) -> bool:
        """Take the place of what the host draws for this label; False where its scene is not as expected."""
        switch = _mode_switch(root)
        if switch is None or switch.getNumChildren() == 0:
            return False
        for i in range(switch.getNumChildren()):  # one child a display mode; we look the same in all
            if switch.getChild(i).getName().getString() != _NAME or switch.getChild(i) != self.group:
                switch.replaceChild(i, self.group)
        return True

    def is_attached(self, root: Any) -> bool:
        switch = _mode_switch(root)
        return bool(switch is not None and switch.getNumChildren() and switch.getChild(0) == self.group)


def _mode_switch(root: Any) -> Any | None:
    for i in range(root.getNumChildren()):
        child = root.getChild(i)
        if child.isOfType(coin.SoSwitch.getClassTypeId()):
            return child
    return None


def _skipped_group() -> Any:
    """A group that the host's "fit all" passes over; a plain one where the host does not know such."""
    kind = coin.SoType.fromName("SoSkipBoundingGroup")
    if kind.isBad():
        return coin.SoGroup()
    group = kind.createInstance()
    group.getField("mode").setValue(1)  # EXCLUDE_BBOX
    return group


def _leader(colour: tuple[int, int, int], line_width: float, dot: float) -> tuple[Any, ...]:
    paint = coin.SoBaseColor()
    paint.rgb.setValue(*fraction(colour))
    style = coin.SoDrawStyle()
    style.lineWidth, style.pointSize = line_width * pixel_ratio(), dot * pixel_ratio()
    line = coin.SoLineSet()
    line.numVertices.setValue(2)
    end = coin.SoPointSet()
    end.numPoints.setValue(1)
    return paint, style, line, end
