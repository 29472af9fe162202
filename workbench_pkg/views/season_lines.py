"""Vectors and lines of many parts in one node each, moved where the scene keeps them: one notice to the scene instead
of one a part, and nothing copied vector by vector.
"""

from __future__ import annotations

import ctypes
from collections.abc import Container, Mapping, Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray
from pivy import coin

from movement_core.sheet.carried import Carrier, Gathered, Moves, Single, point_basis
from movement_core.sheet.cutting import cut_line
from workbench_pkg.host.density import pixel_ratio
from workbench_pkg.panels.palette import Colour, fraction

Floats = NDArray[np.float64]

DASHED, SOLID = 0x0F0F, 0xFFFF  # a dash first: what is shorter than one is still seen


class Vectors:
    """A field of vectors in the scene, carried through the year."""

    def __init__(self, field: Any, gathered: Gathered) -> None:
        """field : SoMFVec3f; whatever it held is lost."""
        self.field, self.gathered = field, gathered
        field.setNum(gathered.count)

    def move(self, moves: Single) -> int:
        """Write all vectors anew; how many there are."""
        count = self.gathered.count
        if count:
            start = int(self.field.startEditing().this)
            kept = np.ctypeslib.as_array((ctypes.c_float * (3 * count)).from_address(start))
            self.gathered.write(moves, kept.reshape(count, 3))
            self.field.finishEditing()
        return count


class Lines:
    """Polylines of many parts, each in its part's frame; ``group`` draws them, without any style.

    lines : of each part by its index. slices : where those of a part are cut so that they can bend, by its index.
    """

    def __init__(
        self,
        carrier: Carrier,
        lines: Mapping[int, Sequence[Floats]],
        slices: Mapping[int, Mapping[int, Sequence[float]]],
    ) -> None:
        bases: dict[int, Single] = {}
        self.counts: dict[int, list[int]] = {}
        for index, own in lines.items():
            for axis, places in slices.get(index, {}).items():
                own = [cut_line(line, axis, places) for line in own]
            if own:
                bases[index] = point_basis(carrier.motion.parts[index], np.concatenate(own))
                self.counts[index] = [len(line) for line in own]
        self.coordinates, self.drawn = coin.SoCoordinate3(), coin.SoIndexedLineSet()
        self.vectors = Vectors(self.coordinates.point, Gathered(bases))
        self.group = coin.SoSeparator()
        self.group.addChild(shift_to(carrier.origin))
        self.group.addChild(self.coordinates)
        self.group.addChild(self.drawn)
        self.draw(self.drawn, self.counts)

    def move(self, moves: Moves) -> int:
        return self.vectors.move(moves.points)

    def draw(self, drawn: Any, parts: Container[int]) -> None:
        """Let a line set draw the lines of these parts and of no others."""
        numbers: list[int] = []
        for index, counts in self.counts.items():
            at = self.vectors.gathered.rows[index].start
            for count in counts if index in parts else ():
                numbers += [*range(at, at + count), -1]
                at += count
        drawn.coordIndex.setNum(len(numbers))
        if numbers:
            drawn.coordIndex.setValues(0, len(numbers), numbers)

    def drop(self, index: int) -> None:
        """Draw a part no longer."""
        if self.counts.pop(index, None):
            self.draw(self.drawn, self.counts)


class Reach:
    """A box that is not drawn and cannot be picked; the views only know that something is there."""

    def __init__(self) -> None:
        self.root, self._corners = coin.SoSeparator(), coin.SoCoordinate3()
        hidden, unpicked = coin.SoDrawStyle(), coin.SoPickStyle()
        hidden.style, unpicked.style = coin.SoDrawStyle.INVISIBLE, coin.SoPickStyle.UNPICKABLE
        for node in (hidden, unpicked, self._corners, coin.SoPointSet()):
            self.root.addChild(node)

    def set(self, low: Floats, high: Floats) -> None:
        """The box from one corner to the opposite one, mm, global."""
        self._corners.point.setValues(0, 2, [list(map(float, low)), list(map(float, high))])


def shift_to(place: Floats) -> Any:
    """A node that moves what follows."""
    shift = coin.SoTranslation()
    shift.translation.setValue(*map(float, place))
    return shift


def styled(group: Any, colour: Colour, width: float, pattern: int = SOLID) -> Any:
    """Lines of one colour, whatever the light; ``width`` in pixels of a usual screen."""
    flat, paint, style = coin.SoLightModel(), coin.SoBaseColor(), coin.SoDrawStyle()
    flat.model = coin.SoLightModel.BASE_COLOR
    paint.rgb.setValue(*fraction(colour))
    style.lineWidth, style.linePattern = width * pixel_ratio(), pattern
    styled = coin.SoSeparator()
    for node in (flat, paint, style, group):
        styled.addChild(node)
    return styled
