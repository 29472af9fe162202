"""Tags of a part as typed properties of the document: reading them raw, writing and removing them.

Properties stay in the file when it is opened and saved without the add-on, and go along when a part is
copied. What the values mean is the core's business.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from movement_core.errors import InputError
from movement_core.wording import say
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.marks import explained
from workbench_pkg.host.relations import is_link, link_chain

PREFIX = "Heartside"
GROUP = "Heartside"
ELEMENTS = (
    "HeartsideElements"  # facts of the elements of a link array that are no objects: JSON, number → facts
)
_NOT_FACTS = {"HeartsideKind", "HeartsideSchema", ELEMENTS}
_NO_RECOMPUTE = 8  # attribute of a property whose change does not make dependent objects compute again

# Every fact, the type of its property, and what the host shows as its explanation.
FACTS: dict[str, tuple[str, str]] = {
    "HeartsideSpecies": ("App::PropertyString", explained("Species or material")),
    "HeartsideGrain": (
        "App::PropertyString",
        explained("Grain: x, y, z, -x … or a,b,c in the object's own frame"),
    ),
    "HeartsideShowFace": (
        "App::PropertyString",
        explained("Outward normal of the show face in the object's own frame"),
    ),
    "HeartsideCut": ("App::PropertyString", explained("Cut: flat, rift or quarter")),
    "HeartsideHeart": (
        "App::PropertyString",
        explained("Heart side: show, back or an axis of the own frame"),
    ),
    "HeartsideRingAngle": (
        "App::PropertyAngle",
        explained("Angle of the growth rings to the face at mid-section"),
    ),
    "HeartsidePith": (
        "App::PropertyFloatList",
        explained("Centre of the tree in the section frame: x, y in mm"),
    ),
    "HeartsideFarPith": ("App::PropertyFloatList", explained("The same at the far end of the grain")),
    "HeartsideRingRadius": ("App::PropertyFloat", explained("Radius of a ring at mid-section, mm")),
    "HeartsideRingPoints": (
        "App::PropertyFloatList",
        explained("Three points on one ring in the section frame: x, y, x, y, x, y in mm"),
    ),
    "HeartsideGrainSlope": ("App::PropertyFloat", explained("Slope of spiral grain, rise over length")),
    "HeartsideFinish": ("App::PropertyString", explained("Finish")),
    "HeartsideGlued": ("App::PropertyFloat", explained("Moisture content when glued, percent")),
    "HeartsideFlattened": ("App::PropertyFloat", explained("Moisture content when last flattened, percent")),
    "HeartsideFitted": ("App::PropertyFloat", explained("Moisture content when fitted, percent")),
    "HeartsideBuilt": (
        "App::PropertyFloat",
        explained("Moisture content when glued, flattened and fitted, percent"),
    ),
    "HeartsideKept": (
        "App::PropertyString",
        explained("Where it is kept when not in use: a year of air, or a place"),
    ),
    "HeartsideFixed": (
        "App::PropertyString",
        explained(
            "What is held across its width: centre, an edge as +y, -y … of the own frame, or mm from the middle"
        ),
    ),
    "HeartsideLot": (
        "App::PropertyString",
        explained("The lot of boards it was cut from: one lot learns together"),
    ),
    "HeartsideLooks": ("App::PropertyFloat", explained("How much better the show face looks than the back")),
    "HeartsideFigure": (
        "App::PropertyString",
        explained("Figure: plain, interlocked, curly, crotch, reaction or juvenile"),
    ),
}


@dataclass(frozen=True)
class RawTags:
    """What a part says about its wood, not yet understood.

    Attributes
    ----------
    properties : property name → str, float or tuple of floats; the instance before what it links to.
    texts : label and description of the instance, then of each object along its chain of links.
    """

    properties: dict[str, object]
    texts: tuple[str, ...]


def read_tags(leaf: Leaf) -> RawTags:
    """Tags of a leaf: of the array element, of the instance, then of what it links to, the nearest first."""
    properties: dict[str, object] = {}
    if leaf.element is not None:
        for link in link_chain(leaf.owner):
            for name, value in _element_map(link).get(str(leaf.element), {}).items():
                properties.setdefault(name, tuple(value) if isinstance(value, list) else value)
    said = said_by(_speakers(leaf))
    return RawTags({**said.properties, **properties}, said.texts)


def said_by(objects: Iterable[Any]) -> RawTags:
    """What several objects say together, the first outranking the later ones."""
    properties: dict[str, object] = {}
    texts: list[str] = []
    for obj in objects:
        for name, value in own_facts(obj).items():
            properties.setdefault(name, value)
        texts += [text for text in (obj.Label, _own_text(obj, "Label2")) if text and text not in texts]
    return RawTags(properties, tuple(texts))


def own_facts(obj: Any) -> dict[str, object]:
    """Facts that an object itself carries; for a link not those of its target, which it would answer with."""
    return {
        name: _plain(getattr(obj, name))
        for name in obj.PropertiesList
        if name.startswith(PREFIX) and name not in _NOT_FACTS
    }


def write_tags(obj: Any, facts: Mapping[str, object], element: int | None = None) -> None:
    """Set facts on an object, or on one element of a link array; a value of None takes the fact away.

    Other facts stay. The caller opens the transaction. Raises InputError for an unknown fact or a wrong
    value, before anything is changed.
    """
    values = {
        name: None if value is None else _checked(name, value, obj.Label) for name, value in facts.items()
    }
    if element is not None:
        _write_element(obj, element, values)
        return
    for name, value in values.items():
        if value is None:
            _remove_property(obj, name)
            continue
        kind, explanation = FACTS[name]
        if name in obj.PropertiesList and obj.getTypeIdOfProperty(name) != kind:
            obj.removeProperty(name)
        if name not in obj.PropertiesList:
            obj.addProperty(kind, name, GROUP, explanation, _NO_RECOMPUTE)
        setattr(obj, name, value)


def remove_tags(obj: Any, element: int | None = None) -> None:
    """Take all facts off an object and its elements, or off one element of an array."""
    if element is not None:
        table = _element_map(obj)
        table.pop(str(element), None)
        _store_elements(obj, table)
        return
    for name in [*own_facts(obj), ELEMENTS]:
        _remove_property(obj, name)


def _speakers(leaf: Leaf) -> list[Any]:
    """Objects whose tags count for a leaf: its owner, the array it is an element of, what they link to."""
    found: list[Any] = []
    for start in (leaf.owner, leaf.array, leaf.source):
        if start is None:
            continue
        for obj in link_chain(start):
            if obj not in found:
                found.append(obj)
    # Whatever order the chains ran in, the object that has the shape speaks last.
    return [obj for obj in found if obj != leaf.source] + [leaf.source]


def _own_text(obj: Any, name: str) -> str:
    return str(getattr(obj, name)) if name in obj.PropertiesList else ""


def _plain(value: Any) -> object:
    if hasattr(value, "Value") and hasattr(value, "Unit"):
        return float(value.Value)
    if isinstance(value, (list, tuple)):
        return tuple(value)
    return value


def _checked(name: str, value: object, where: str) -> object:
    if name not in FACTS:
        raise InputError(say("there is no fact '{name}'", name=name), where=where, allowed=", ".join(FACTS))
    if value is None:
        return None
    kind = FACTS[name][0]
    try:
        if kind == "App::PropertyString":
            if not isinstance(value, str):
                raise TypeError
            return value
        if kind == "App::PropertyFloatList":
            return [float(x) for x in value]  # type: ignore[attr-defined]
        return float(value)  # type: ignore[arg-type]
    except (TypeError, ValueError):
        wanted = {"App::PropertyString": say("text"), "App::PropertyFloatList": say("a list of numbers")}
        raise InputError(
            say("{name} cannot be {value!r}", name=name, value=value),
            where=where,
            allowed=wanted.get(kind, say("a number")),
        ) from None


def _element_map(obj: Any) -> dict[str, dict[str, Any]]:
    if ELEMENTS not in obj.PropertiesList:
        return {}
    try:
        table = json.loads(getattr(obj, ELEMENTS) or "{}")
        return {str(i): dict(facts) for i, facts in table.items()}
    except (ValueError, AttributeError, TypeError) as error:
        raise InputError(
            say("{name} is not a table of elements ({error})", name=ELEMENTS, error=error),
            where=obj.Label,
            allowed=say("JSON like {example}", example='{"0": {"HeartsideSpecies": "white oak"}}'),
            todo=say("mend or remove the property"),
        ) from None


def _write_element(obj: Any, element: int, values: Mapping[str, object]) -> None:
    if not is_link(obj):
        raise InputError(say("it has no elements to tag"), where=obj.Label, allowed=say("link arrays"))
    table = _element_map(obj)
    facts = table.setdefault(str(element), {})
    for name, value in values.items():
        if value is None:
            facts.pop(name, None)
        else:
            facts[name] = value
    if not facts:
        del table[str(element)]
    _store_elements(obj, table)


def _store_elements(obj: Any, table: dict[str, dict[str, Any]]) -> None:
    if not table:
        _remove_property(obj, ELEMENTS)
        return
    if ELEMENTS not in obj.PropertiesList:
        obj.addProperty(
            "App::PropertyString", ELEMENTS, GROUP, explained("Facts of single elements"), _NO_RECOMPUTE
        )
    ordered = {i: table[i] for i in sorted(table, key=int)}
    setattr(obj, ELEMENTS, json.dumps(ordered, ensure_ascii=False))


def _remove_property(obj: Any, name: str) -> None:
    if name in obj.PropertiesList:
        obj.removeProperty(name)
