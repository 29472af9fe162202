"""What a board was made from: tags that were put on it before it was cut, rounded, mirrored or copied.

A maker tags a board, then cuts a mortise into it: the tag stays with the object that went into the cut. Here it
is found again, with the turn between the frame it was said in and the frame of what came out.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import FreeCAD as App
import numpy as np
from numpy.typing import NDArray

from workbench_pkg.host.leaf import AS_MATRIX, Leaf
from workbench_pkg.host.relations import is_a, is_ours, link_chain, link_property, linked_objects, proxy_name
from workbench_pkg.host.tagging import RawTags, said_by

_LONGEST = 32
_COPIES = {"Array", "PathArray", "PointArray", "PathTwistedArray"}  # Draft arrays that hold solids, not links


@dataclass(frozen=True, eq=False)
class InheritedTags:
    """What an object that the leaf was made from says.

    Attributes
    ----------
    name : label of that object.
    tags : its raw tags, and those of what it links to.
    turn : (3, 3); a direction said in that object's own axes, as a row, times `turn` is the direction in the own
        axes of the leaf. Its determinant is negative where a mirror lies between the two.
    """

    name: str
    tags: RawTags
    turn: NDArray[np.float64]


def inherited_tags(leaf: Leaf) -> tuple[InheritedTags, ...]:
    """Tags of the objects that the leaf was made from, the nearest first; empty for a board made from scratch.

    Followed are: the base of a cut, fillet, chamfer, thickness, offset and refinement; the largest input of a
    fusion or common part; the member of a compound; the source of a mirror, clone and Draft array. Where several
    solids come of one object (fragments, slices) nothing is inherited.
    """
    found: list[InheritedTags] = []
    obj, index = leaf.source, leaf.index
    frame: Any = App.Matrix()
    while len(found) < _LONGEST:
        step = _made_from(obj, index)
        if step is None:
            break
        ancestor, index, inward = step
        frame = frame.multiply(inward)
        chain = link_chain(ancestor)
        if is_ours(ancestor) or any(link_property(link, "ElementCount") for link in chain):
            break
        found.append(InheritedTags(ancestor.Label, said_by(chain), _turn(frame)))
        obj = chain[-1]
    return tuple(found)


def fused_tags(leaf: Leaf) -> tuple[InheritedTags, ...]:
    """Tags of every solid that a fusion or common part was made from, where the leaf's object is one."""
    obj = leaf.source
    inputs: list[Any] = []
    if is_a(obj, "Part::Fuse", "Part::Common"):
        inputs = [obj.Base, obj.Tool]
    elif is_a(obj, "Part::MultiFuse", "Part::MultiCommon"):
        inputs = list(obj.Shapes)
    return tuple(
        InheritedTags(one.Label, said_by(link_chain(one)), np.eye(3)) for one in inputs if one is not None
    )


def _made_from(obj: Any, index: int) -> tuple[Any, int, Any] | None:
    """(object it was made from, number of the solid there, matrix from that one's own frame to the frame of obj)."""
    if is_a(obj, "Part::Cut", "Part::FilletBase", "Part::Scale"):
        return _placed(obj.Base)
    if is_a(obj, "Part::Boolean"):  # fuse and common
        return _placed(_largest([obj.Base, obj.Tool]))
    if is_a(obj, "Part::MultiFuse", "Part::MultiCommon"):
        return _placed(_largest(obj.Shapes))
    if is_a(obj, "Part::Thickness"):
        return _placed(next(iter(linked_objects([obj.Faces])), None))
    if is_a(obj, "Part::Offset", "Part::Refine"):
        return _placed(obj.Source)
    if is_a(obj, "Part::Mirroring"):
        step = _placed(obj.Source)
        return step and (step[0], index, _reflection(obj.Normal).multiply(step[2]))
    if is_a(obj, "Part::Compound", "Part::Compound2"):
        return _member(obj.Links, index)
    if proxy_name(obj) == "Clone" and len(obj.Objects) == 1:
        return obj.Objects[0], index, App.Matrix()
    if proxy_name(obj) in _COPIES and obj.Base is not None:
        return _copied(obj, index)
    return None


def _placed(base: Any, index: int = 0) -> tuple[Any, int, Any] | None:
    """Operations of the host work on inputs where they stand, so the input's placement is the whole difference."""
    return None if base is None else (base, index, base.getSubObject("", retType=AS_MATRIX))


def _largest(inputs: list[Any]) -> Any | None:
    sized = [(_shape(one).Volume, -i, one) for i, one in enumerate(inputs) if one is not None]
    return max(sized, key=lambda item: item[:2])[2] if sized else None


def _member(inputs: list[Any], index: int) -> tuple[Any, int, Any] | None:
    for one in inputs:
        count = len(_shape(one).Solids)
        if index < count:
            return _placed(one, index)
        index -= count
    return None


def _copied(array: Any, index: int) -> tuple[Any, int, Any] | None:
    solids, base = array.Shape.Solids, _shape(array.Base).Solids
    if not base or len(solids) % len(base):
        return None
    of_base = index % len(base)
    moved = solids[index].Placement.multiply(base[of_base].Placement.inverse())
    inward = array.Placement.inverse().multiply(moved).toMatrix()
    return array.Base, of_base, inward.multiply(array.Base.getSubObject("", retType=AS_MATRIX))


def _shape(obj: Any) -> Any:
    import Part

    return Part.getShape(obj, "", needSubElement=False, transform=True)


def _reflection(normal: Any) -> Any:
    """Mirror in a plane through the origin: its distance from there turns nothing."""
    n = np.array([normal.x, normal.y, normal.z]) / normal.Length
    rows = np.eye(4)
    rows[:3, :3] -= 2 * np.outer(n, n)
    return App.Matrix(*(float(x) for x in rows.ravel()))


def _turn(frame: Any) -> NDArray[np.float64]:
    """Rows: where the unit axes of the inner frame point in the outer one."""
    linear = np.array(frame.A, dtype=float).reshape(4, 4)[:3, :3].T
    turn: NDArray[np.float64] = linear / np.linalg.norm(linear, axis=1, keepdims=True)
    return turn
