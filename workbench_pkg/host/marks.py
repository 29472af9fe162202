"""The two properties by which our own objects are known, with the add-on installed or not.

``HeartsideKind`` says what an object is, ``HeartsideSchema`` which form its properties have. They outlive the
Python class: a host without the add-on forgets the class when it saves, never the properties.
"""

from __future__ import annotations

from typing import Any

from workbench_pkg.host.relations import KIND_PROPERTY as KIND

SCHEMA = "HeartsideSchema"
CURRENT_SCHEMA = 1
GROUP = "Heartside"
READ_ONLY, NO_RECOMPUTE = 1, 8  # attributes of a property, as the host numbers them


def kind_of(obj: Any) -> str:
    """What the object is to us: "study", "label", "results" …; "" for everything that is not ours."""
    return str(getattr(obj, KIND)) if KIND in obj.PropertiesList else ""


def schema_of(obj: Any) -> int:
    """The form of its properties; 0 where it was never marked."""
    return int(getattr(obj, SCHEMA)) if SCHEMA in obj.PropertiesList else 0


def mark(obj: Any, kind: str, schema: int = CURRENT_SCHEMA) -> Any:
    """Make an object known as ours; returns it."""
    add_property(
        obj, "App::PropertyString", KIND, "What this object is to Heartside", READ_ONLY | NO_RECOMPUTE
    )
    add_property(obj, "App::PropertyInteger", SCHEMA, "Form of its properties", READ_ONLY | NO_RECOMPUTE)
    setattr(obj, KIND, kind)
    setattr(obj, SCHEMA, schema)
    return obj


def add_property(obj: Any, kind: str, name: str, explanation: str, attributes: int = NO_RECOMPUTE) -> bool:
    """Add a property where it is missing; True where it was added."""
    if name in obj.PropertiesList:
        return False
    obj.addProperty(kind, name, GROUP, explanation, attributes)
    return True


def objects_of_kind(doc: Any, kind: str) -> list[Any]:
    """Every object of a document that is of this kind, in the order of the document."""
    return [obj for obj in doc.Objects if kind_of(obj) == kind]
