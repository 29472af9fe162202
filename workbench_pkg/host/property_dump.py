"""A document as plain data, to see afterwards that nothing but what was meant to has changed."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import FreeCAD as App

# Written by the host itself at every save or opening.
_VOLATILE = {"FileName", "LastModifiedBy", "LastModifiedDate", "TransientDir", "Uid", "Id"}
_TOUCHED = {0, "Touched"}


def property_dump(doc: Any) -> dict[str, dict[str, object]]:
    """Object name → what can be asked of it: type, label, state, visibility, groups, and every property.

    The document itself stands under "" with its own properties and the order of its objects. Values are plain
    data that compare equal when nothing changed, also across saving and opening; shapes are told by their
    counts and measures.
    """
    dump: dict[str, dict[str, object]] = {"": {**_properties(doc), "objects": [o.Name for o in doc.Objects]}}
    for obj in doc.Objects:
        dump[obj.Name] = {
            "type": obj.TypeId,
            "label": obj.Label,
            "state": sorted(obj.State),
            "visible": bool(obj.Visibility),
            "in": sorted(parent.Name for parent in set(obj.InList)),
            "extensions": obj.hasExtension("App::GroupExtension"),
            "expressions": _plain(getattr(obj, "ExpressionEngine", [])),
            **_properties(obj),
        }
    return dump


def differences(before: Mapping[str, Any], after: Mapping[str, Any]) -> list[str]:
    """What differs between two dumps, one line each; empty when nothing does."""
    found = []
    for name in sorted({*before, *after}):
        if name not in before or name not in after:
            found.append(f"{name}: {'gone' if name in before else 'new'}")
            continue
        old, new = before[name], after[name]
        for key in sorted({*old, *new}):
            if old.get(key) != new.get(key):
                found.append(f"{name or 'document'}.{key}: {old.get(key)!r} → {new.get(key)!r}")
    return found


def _properties(obj: Any) -> dict[str, object]:
    found: dict[str, object] = {}
    for name in obj.PropertiesList:
        if name in _VOLATILE:
            continue
        found[f"property {name}"] = {
            "type": obj.getTypeIdOfProperty(name),
            "group": obj.getGroupOfProperty(name),
            "explanation": obj.getDocumentationOfProperty(name),
            "status": sorted((s for s in obj.getPropertyStatus(name) if s not in _TOUCHED), key=str),
            "editor": sorted(obj.getEditorMode(name)),
            "value": _plain(_value(obj, name)),
        }
    return found


def _value(obj: Any, name: str) -> Any:
    try:
        return getattr(obj, name)
    except Exception as error:
        return f"unreadable: {error}"


def _plain(value: Any) -> object:
    if value is None or isinstance(value, (bool, int, float, str)):
        return value
    if isinstance(value, App.DocumentObject):
        return f"<{value.Name}>"  # the document's name follows the file's
    if isinstance(value, Mapping):
        return {str(key): _plain(item) for key, item in value.items()}
    if isinstance(value, (list, tuple, set, frozenset)):
        items = [_plain(item) for item in value]
        return sorted(items, key=repr) if isinstance(value, (set, frozenset)) else items
    if isinstance(value, App.Placement):
        return [_plain(value.Base), _plain(value.Rotation)]
    if isinstance(value, App.Rotation):
        return list(value.Q)
    if isinstance(value, App.Vector):
        return [value.x, value.y, value.z]
    if isinstance(value, App.Matrix):
        return list(value.A)
    if hasattr(value, "Value") and hasattr(value, "Unit"):
        return [float(value.Value), str(value.Unit)]
    if hasattr(value, "isNull") and hasattr(value, "tessellate"):  # its type may not be asked of a null shape
        return _shape(value)
    text = repr(value)
    return type(value).__name__ if " at 0x" in text or "object" in text else text


def _shape(shape: Any) -> object:
    if shape.isNull():
        return "no shape"
    counts = [len(shape.Solids), len(shape.Faces), len(shape.Edges), len(shape.Vertexes)]
    measures = [float(f"{x:.9g}") for x in (shape.Volume, shape.Area, shape.Length)]
    points = [[round(c, 6) for c in vertex.Point] for vertex in shape.Vertexes]
    return [shape.ShapeType, counts, measures, points]
