"""Every leaf solid of a document: one per board that would be cut, however the model is built.

A board shown by a link, a link array, a group of links, a boolean or a body is met once per instance, with
the matrix that takes it to the global frame. What cannot be read is listed beside the leaves with the reason.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field, replace
from typing import Any

import numpy as np

from movement_core.wording import say
from workbench_pkg.host.leaf import AS_MATRIX, AS_OBJECT, Leaf, Reading, Unreadable
from workbench_pkg.host.own import OwnSolid
from workbench_pkg.host.relations import (
    can_be_a_part,
    is_a,
    is_body,
    is_hidden_master,
    is_link,
    is_ours,
    is_placed_group,
    is_plain_group,
    is_used_up,
    link_property,
    members,
    next_link,
    roots,
)

_OBJECT, _MATRIX = (
    1,
    6,
)  # return types of getSubObject: the object, and its matrix with link scale and transform
_MAX_DEPTH = 64
LARGEST_MM = 1e6  # own judgement: no piece is longer, and meshes of such things have no end

__all__ = ["Leaf", "Reading", "Unreadable", "read_leaves"]


def read_leaves(doc: Any, hidden: bool = False, first_only: bool = False) -> Reading:
    """Leaf solids of a document in the order of its tree; with `hidden` also those that are not shown.

    `first_only` stops at the first object that holds any: to see whether there are some.
    Inputs of booleans, compounds and fillets are no leaves, nor are hidden objects that are only linked to,
    nor the objects that Heartside made. Nothing in the document makes this raise: see Reading.unreadable.
    """
    walk = _Walk(hidden, first_only)
    for root in roots(doc):
        if walk.is_done():
            break
        if not is_used_up(root) and not is_hidden_master(root):
            walk.visit(_Place(root, "", root.Name, root.Visibility, ()))
    return Reading(_with_unique_names(walk.leaves), tuple(walk.unreadable))


@dataclass(frozen=True)
class _Place:
    """Where the walk stands: an object reached from a root by a path."""

    root: Any
    sub: str
    key: str  # like root + sub, but array elements always by number, shown as objects or not
    visible: bool
    trail: tuple[str, ...]  # labels of the containers passed
    label: str = ""  # set where the object's own label would not tell it from its sisters
    array: Any | None = None  # the link array this is an element of …
    element: int | None = None  # … and the number of the element
    containers: tuple[tuple[str, str], ...] = ()  # those passed, links followed: (document, name)

    def object(self) -> Any | None:
        return self.root.getSubObject(self.sub, retType=AS_OBJECT) if self.sub else self.root

    def name_of(self, obj: Any) -> str:
        return self.label or obj.Label

    def inside(self, obj: Any, path: str, visible: bool, shown: Any | None = None) -> _Place:
        """The place of a member of the container `obj` that stands here, or of the one it shows by a link."""
        key = f"{self.key}.{path.rstrip('.')}"
        trail = (*self.trail, self.name_of(obj))
        containers = self.containers if shown is None else (*self.containers, _identity(shown))
        return _Place(self.root, self.sub + path, key, self.visible and visible, trail, containers=containers)


@dataclass
class _Walk:
    hidden: bool
    first_only: bool
    leaves: list[Leaf] = field(default_factory=list)
    unreadable: list[Unreadable] = field(default_factory=list)
    shapes: dict[tuple[str, str], list[tuple[Any, OwnSolid]]] = field(default_factory=dict)

    def is_done(self) -> bool:
        return self.first_only and bool(self.leaves)

    def give_up(self, place: _Place, obj: Any | None, why: str) -> None:
        name = place.label or place.key if obj is None else place.name_of(obj)
        self.unreadable.append(Unreadable(name, why, place.key, place.visible))

    def visit(self, place: _Place, depth: int = 0) -> None:
        """Read what stands at a place; whatever goes wrong there stays there."""
        obj = None
        try:
            obj = place.object()
            if obj is None:
                self.give_up(place, None, say("the host cannot reach it"))
            elif is_ours(obj) or not (place.visible or self.hidden):
                return
            elif depth > _MAX_DEPTH:
                self.give_up(place, obj, say("nested more than {most} deep", most=_MAX_DEPTH))
            else:
                self._read(place, obj, depth)
        except Exception as error:
            self.give_up(place, obj, say("the host failed to read it ({reason})", reason=_one_line(error)))

    def _read(self, place: _Place, obj: Any, depth: int) -> None:
        array = _array_in_chain(obj)
        target = _end_of_chain(obj)
        if array is not None:
            self._visit_elements(place, obj, array, depth)
        elif target is None:
            self.give_up(place, obj, _why_link_is_missing(obj))
        elif _identity(target) in place.containers:
            self.give_up(place, obj, say("it leads back to {name!r}, which it lies in", name=target.Label))
        elif is_placed_group(target) or is_plain_group(target):
            self._visit_members(place, obj, target, depth)
        else:
            self._emit(place, obj, target)

    def _visit_elements(self, place: _Place, obj: Any, array: Any, depth: int) -> None:
        elements = link_property(array, "ElementList") or []
        count = int(link_property(array, "ElementCount") or 0)
        for i in range(count or len(elements)):
            if self.is_done():
                return
            element = elements[i] if i < len(elements) else None
            path = f"{element.Name if element else i}."
            inner = place.inside(obj, path, _element_visible(array, path[:-1], element))
            if count:
                label = f"{place.name_of(obj)} {i + 1}"
                key = f"{place.key}.{i}"
                inner = replace(inner, key=key, label=label, trail=place.trail, array=obj, element=i)
            self.visit(inner, depth + 1)

    def _visit_members(self, place: _Place, obj: Any, target: Any, depth: int) -> None:
        for path, member in members(target):
            if self.is_done():
                return
            if is_used_up(member) or is_hidden_master(member):
                continue
            visible = member.Visibility
            if is_link(obj) and is_plain_group(target):
                state = obj.isElementVisible(path[:-1])
                visible = visible if state < 0 else bool(state)
            self.visit(place.inside(obj, path, visible, target), depth + 1)

    def _emit(self, place: _Place, obj: Any, target: Any) -> None:
        name = place.name_of(obj)
        if is_a(target, "Mesh::Feature"):
            self.give_up(place, obj, say("a mesh, not a solid: make a solid of it first"))
            return
        if not can_be_a_part(target):
            return
        why = _why_no_solid(target)
        if why:
            self.give_up(place, obj, why)
            return
        solids = self._solids(target)
        if not solids:
            return
        matrix = place.root.getSubObject(place.sub, retType=AS_MATRIX)
        # The host meshes for ever what stands nowhere, so it is told before anything else is asked of it.
        length_mm = np.max([own.length_mm for _, own in solids]) * max(matrix.col(i).Length for i in range(3))
        if not np.isfinite([*matrix.A, length_mm]).all():
            self.give_up(place, obj, say("its place or its size is no number: give it a place again"))
            return
        if length_mm > LARGEST_MM:
            self.give_up(
                place,
                obj,
                say(
                    "it is {length:,.0f} km long: check its units, or its link's scale",
                    length=length_mm / 1e6,
                ),
            )
            return
        if abs(matrix.determinant()) < 1e-12:
            self.give_up(place, obj, say("its link is scaled to nothing"))
            return
        by_number = place.element is not None and not is_a(obj, "App::LinkElement")
        for i, (solid, own) in enumerate(solids):
            self.leaves.append(
                Leaf(
                    key=f"{place.key}/{i}",
                    name=name if len(solids) == 1 else f"{name} solid {i + 1}",
                    owner=place.array if by_number else obj,
                    element=place.element if by_number else None,
                    source=target,
                    solid=solid,
                    own=own,
                    matrix=matrix,
                    visible=place.visible,
                    root=place.root,
                    sub=place.sub,
                    index=i,
                    array=place.array,
                    trail=place.trail,
                )
            )

    def _solids(self, target: Any) -> list[tuple[Any, OwnSolid]]:
        """The solids of an object, taken from it once however many links show it."""
        key = _identity(target)
        if key not in self.shapes:
            self.shapes[key] = [(solid, OwnSolid(solid, target.Placement)) for solid in target.Shape.Solids]
        return self.shapes[key]


def _identity(obj: Any) -> tuple[str, str]:
    return obj.Document.Name, obj.Name


def _array_in_chain(obj: Any) -> Any | None:
    """The link array or link group that a link leads to: the array may sit on any link of a chain."""
    for _ in range(_MAX_DEPTH):
        if not is_link(obj):
            return None
        if link_property(obj, "ElementCount"):
            return obj
        following = next_link(obj)
        if following is None:
            return obj if link_property(obj, "ElementList") else None
        obj = following
    return None


def _end_of_chain(obj: Any) -> Any | None:
    """What a chain of links shows in the end; None when a target is missing."""
    for _ in range(_MAX_DEPTH):
        if not is_link(obj):
            return obj
        following = next_link(obj)
        if following is None:
            return None
        obj = following
    return None


def _element_visible(array: Any, name: str, element: Any | None) -> bool:
    state = array.isElementVisible(name)
    if state < 0:
        return element is None or bool(element.Visibility)
    return bool(state)


def _why_link_is_missing(obj: Any) -> str:
    status = _one_line(obj.getStatusString())
    if "Invalid" in obj.State and status:
        return say("what it links to is missing ({status})", status=status)
    return say("it links to nothing")


def _why_no_solid(obj: Any) -> str:
    """Reason why an object that can be a part gives no solid, or "" when it does or never meant to."""
    shape = obj.Shape
    if "Invalid" in obj.State:
        return say("the host marks it as broken ({reason})", reason=_one_line(obj.getStatusString()))
    if shape.isNull():
        return say("the body is empty") if is_body(obj) else say("it has no shape")
    if not shape.Solids and len(shape.Faces) > 1 and shape.Shells:
        return say("it has faces but encloses no solid")
    return ""


def _one_line(text: object) -> str:
    return "; ".join(line.strip() for line in str(text).splitlines() if line.strip())


def _with_unique_names(leaves: list[Leaf]) -> tuple[Leaf, ...]:
    """Where several leaves share a name, put the containers' labels before it, then number what is left."""
    for width in range(1, _MAX_DEPTH):
        count = Counter(leaf.name for leaf in leaves)
        longer = [
            replace(leaf, name=f"{_outer(leaf, width)} / {leaf.name}")
            if count[leaf.name] > 1 and _outer(leaf, width)
            else leaf
            for leaf in leaves
        ]
        if [leaf.name for leaf in longer] == [leaf.name for leaf in leaves]:
            break
        leaves = longer
    total, met, named = Counter(leaf.name for leaf in leaves), Counter[str](), []
    for leaf in leaves:
        met[leaf.name] += 1
        named.append(leaf if total[leaf.name] == 1 else replace(leaf, name=f"{leaf.name} ({met[leaf.name]})"))
    return tuple(named)


def _outer(leaf: Leaf, width: int) -> str:
    """The label of the container `width` steps out."""
    return leaf.trail[-width] if width <= len(leaf.trail) else ""
