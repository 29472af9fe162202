"""Where on a part the user points: the place across its width, in the words of a tag."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import FreeCAD as App
import FreeCADGui as Gui
import numpy as np

from movement_core.piece.part import Part
from movement_core.piece.tags import AXES
from workbench_pkg.host.leaves import Leaf, read_leaves
from workbench_pkg.host.units import short_length

translate = App.Qt.translate

SNAP = 0.15  # share of half the width within which the middle or an edge is meant
SQUARE = 0.99  # cosine from which an edge lies square to an axis of the object
ELEMENTS = ("Face", "Edge", "Vertex")


@dataclass(frozen=True, eq=False)
class Place:
    """A place across the width of a part: the word of its tag, and how it is told."""

    leaf: Leaf
    part: Part
    word: str
    told: str


def pointed_place(doc: Any, parts: Mapping[str, Part]) -> Place | str | None:
    """The place that was clicked last; a text tells why there is none; None where nothing was clicked in the view."""
    clicked = None
    for one in Gui.Selection.getSelectionEx(doc.Name, 0):
        for sub, point in zip(one.SubElementNames, one.PickedPoints):
            if sub.rpartition(".")[2].startswith(ELEMENTS):
                clicked = one.Object, sub, point
    if clicked is None:
        return None
    obj, sub, point = clicked
    leaves = read_leaves(doc, hidden=True).find(obj, sub)
    leaf = leaves[0] if len(leaves) == 1 else None
    part = None if leaf is None else parts.get(leaf.key)
    if leaf is None or part is None:
        return translate("Heartside", "That is no part of the piece: click one of its boards.")
    if not part.frame.grain.known or not part.moves:
        words = translate("Heartside", "{part} does not move across its grain as far as is known.")
        return words.format(part=part.name)
    return place_at(leaf, part, np.array([point.x, point.y, point.z]))


def place_at(leaf: Leaf, part: Part, point: np.ndarray) -> Place:
    """The place of a part nearest to a point (3,), global mm, moved to the middle or an edge where that is meant."""
    frame = part.frame
    half = frame.width_mm / 2
    along = float(np.clip((point - frame.centre) @ frame.axes[0], -half, half))
    if abs(along) < SNAP * half:
        return Place(leaf, part, "centre", translate("Heartside", "its middle"))
    if half - abs(along) < SNAP * half:
        edge = "" if part.outline is None else _edge_word(part, along)
        if edge in AXES:
            words = translate("Heartside", "its edge on the side {axis}")
            return Place(leaf, part, edge, words.format(axis=edge if edge[0] == "-" else f"+{edge}"))
        along = half if along > 0 else -half
    words = translate("Heartside", "a line {size} from its middle")
    return Place(leaf, part, f"{along:.1f}", words.format(size=short_length(abs(along))))


def _edge_word(part: Part, along: float) -> str:
    """The axis of the object's own frame that an edge looks along; "" where it is askew."""
    assert part.outline is not None
    own = part.outline.own_axes @ (np.sign(along) * part.frame.axes[0])
    axis = int(np.abs(own).argmax())
    if abs(own[axis]) < SQUARE:
        return ""
    return ("" if own[axis] > 0 else "-") + "xyz"[axis]


def told_line(part: Part) -> str:
    """Where a part is held, in words; "" where nobody said."""
    if part.fixed_mm is None:
        return ""
    half = part.frame.width_mm / 2
    if abs(part.fixed_mm) < 0.05:
        return translate("Heartside", "{part} is held at its middle").format(part=part.name)
    if half - abs(part.fixed_mm) < 0.05:
        edge = "" if part.outline is None else _edge_word(part, part.fixed_mm)
        words = translate("Heartside", "{part} is held at its edge {axis}")
        return words.format(part=part.name, axis=edge if edge[:1] == "-" else f"+{edge}").rstrip("+ ")
    words = translate("Heartside", "{part} is held {size} from its middle")
    return words.format(part=part.name, size=short_length(abs(part.fixed_mm)))
