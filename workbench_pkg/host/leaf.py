"""What is known of one leaf solid, and what a document holds of them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import FreeCAD as App

from workbench_pkg.host.own import OwnSolid
from workbench_pkg.host.relations import is_plain_group, members

AS_OBJECT, AS_MATRIX = (
    1,
    6,
)  # return types of getSubObject: the object; its matrix with link transform and scale


@dataclass(frozen=True, eq=False)
class Leaf:
    """One solid at one place.

    Attributes
    ----------
    key : stable address: root object, path below it, number of the solid; the document's name is not in it.
    name : what a maker calls it: the label, with the number of the array element or solid; no two alike.
    owner : the object whose properties belong to this instance: the link, its element, or the object itself.
    element : index in a link array whose elements are not objects of the document; then owner is the array.
    source : the object that has the shape.
    solid : the solid, in the frame of the document or container that `source` lies in.
    own : the same in the own frame of `source`, for reading; all leaves that show this solid share it.
    matrix : from the own frame of `source` (its Placement taken off) to the global frame.
    root, sub : object and path that getSubObject and the selection understand.
    array : the link array that the instance is an element of.
    trail : labels of the containers it lies in, outermost first.
    """

    key: str
    name: str
    owner: Any
    element: int | None
    source: Any
    solid: Any
    own: OwnSolid
    matrix: Any
    visible: bool
    root: Any
    sub: str
    index: int
    array: Any | None
    trail: tuple[str, ...]

    def local_solid(self) -> Any:
        """A copy of the solid in its own frame."""
        return self.own.solid.copy()

    def is_scaled(self) -> bool:
        """True when the matrix stretches, shears or mirrors: a link with a scale."""
        columns = [self.matrix.col(i) for i in range(3)]
        stretched = any(abs(c.dot(c) - 1.0) > 1e-9 for c in columns)
        skewed = any(abs(columns[i].dot(columns[(i + 1) % 3])) > 1e-9 for i in range(3))
        return stretched or skewed or columns[0].cross(columns[1]).dot(columns[2]) < 0

    def global_solid(self) -> Any:
        """A copy of the solid where it stands. Unless scaled, its surfaces keep their types."""
        return moved(self.local_solid(), self.matrix, self.is_scaled())


def moved(solid: Any, matrix: Any, scaled: bool) -> Any:
    """A solid of nobody else's, moved; ``scaled``: the matrix stretches, shears or mirrors."""
    if scaled:
        return solid.transformGeometry(matrix).Solids[0]  # comes back as an untyped shape
    solid.Placement = App.Placement(matrix).multiply(solid.Placement)
    return solid


@dataclass(frozen=True)
class Unreadable:
    """An object that should hold a solid and gives none; `visible` like a leaf's."""

    name: str
    why: str
    key: str
    visible: bool = True

    def __str__(self) -> str:
        return f"{self.name}: {self.why}"


@dataclass(frozen=True)
class Reading:
    """What a document holds: its leaf solids, and what could not be read."""

    leaves: tuple[Leaf, ...]
    unreadable: tuple[Unreadable, ...]

    def find(self, obj: Any, sub: str = "") -> list[Leaf]:
        """Leaves that an object and sub-path, as the selection gives them, stand for.

        A selected container stands for all leaves inside it; a face or edge at the end of the path for its
        solid's object; a board inside a container, selected without its path, for all its instances.
        """
        path = sub[: sub.rfind(".") + 1]
        found = [leaf for leaf in self.leaves if leaf.root == obj and leaf.sub.startswith(path)]
        if found:
            return found
        chosen = obj.getSubObject(path, retType=AS_OBJECT) if path else obj
        if chosen is None:
            return []
        insides = [member for _, member in members(chosen)] if is_plain_group(chosen) else [chosen]
        return [
            leaf for leaf in self.leaves if any(x in (leaf.root, leaf.owner, leaf.source) for x in insides)
        ]
