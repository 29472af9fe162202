"""What the host itself says of a part that may hint at its wood or at how it is joined. A hint is never a fact."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.relations import link_chain

UNSAID = {"", "default", "none"}  # names of a material card that say nothing
JOINT_KINDS = {  # of the host's assembly joints, and the kind of ours that each comes to, where it comes to one
    "Fixed": None,
    "Revolute": "hinged",
    "Cylindrical": "slides",
    "Slider": "slides",
    "Ball": "fixed at a point",
}


@dataclass(frozen=True)
class CardHint:
    """The name on a part's material card, and the property that holds it."""

    name: str
    where: str


@dataclass(frozen=True)
class JointHint:
    """A joint of an assembly between parts of these keys; ``kind`` of ours that it suggests, or None."""

    label: str
    kind_of_host: str
    kind: str | None
    keys: tuple[str, str]


def card_hint(leaf: Leaf) -> CardHint | None:
    """The material card of a part: of the instance, then of what it links to; None where none is set."""
    for start in (leaf.owner, leaf.source):
        for obj in link_chain(start):
            for where in ("ShapeMaterial", "Material"):
                name = _card_name(obj, where)
                if name.strip().lower() not in UNSAID:
                    return CardHint(name.strip(), where)
    return None


def joint_hints(doc: Any, leaves: Sequence[Leaf]) -> tuple[JointHint, ...]:
    """Joints of the document's assemblies that lie between two of the leaves."""
    found = []
    for obj in doc.Objects:
        if "JointType" not in obj.PropertiesList or "Reference2" not in obj.PropertiesList:
            continue
        sides = [_keys(getattr(obj, name), leaves) for name in ("Reference1", "Reference2")]
        kind = str(obj.JointType)
        if all(sides):
            found += [
                JointHint(obj.Label, kind, JOINT_KINDS.get(kind), (one, other))
                for one in sides[0]
                for other in sides[1]
                if one != other
            ]
    return tuple(found)


def _card_name(obj: Any, where: str) -> str:
    if where not in obj.PropertiesList:
        return ""
    value = getattr(obj, where)
    if value is None:
        return ""
    if isinstance(value, dict):  # a card kept as a map
        return str(value.get("Name", ""))
    card = getattr(value, "Material", None)  # a material object that several parts share
    if isinstance(card, dict):
        return str(card.get("Name") or getattr(value, "Label", ""))
    return str(getattr(value, "Name", "") or "")


def _keys(reference: Any, leaves: Sequence[Leaf]) -> list[str]:
    """Leaves that one side of a joint names: (object, paths such as "Part.Board.Face3")."""
    if not reference or reference[0] is None:
        return []
    obj, paths = reference[0], reference[1] or [""]
    names = [name for path in paths[:1] for name in _objects_along(obj, path)]
    found = [leaf.key for leaf in leaves if names and names[-1] in (leaf.owner, leaf.source)]
    return found[:1]


def _objects_along(obj: Any, path: str) -> Iterator[Any]:
    yield obj
    so_far = ""
    for name in path.split(".")[:-1]:
        so_far += f"{name}."
        inside = obj.getSubObject(so_far, retType=1)
        if inside is not None:
            yield inside
