"""The two properties by which our own objects are known, with the add-on installed or not.

``HeartsideKind`` says what an object is, ``HeartsideSchema`` which form its properties have. They outlive the
Python class: a host without the add-on forgets the class when it saves, never the properties.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from movement_core.errors import InputError
from movement_core.wording import say
from workbench_pkg.host.relations import KIND_PROPERTY as KIND

SCHEMA = "HeartsideSchema"
CURRENT_SCHEMA = 1
GROUP = "Heartside"
READ_ONLY, NO_RECOMPUTE = 1, 8  # attributes of a property, as the host numbers them


def kind_of(obj: Any) -> str:
    """What the object is to us: "study", "label", "results" …; "" for everything that is not ours."""
    return str(getattr(obj, KIND)) if KIND in obj.PropertiesList else ""


def schema_of(obj: Any) -> int:
    """The form of its properties; 0 where it was never marked.

    Raises InputError where something else than a form stands there.
    """
    form = getattr(obj, SCHEMA) if SCHEMA in obj.PropertiesList else 0
    if isinstance(form, bool) or not isinstance(form, int) or form < 0:
        raise InputError(
            say("{name} is {value!r}, which is no form of properties", name=SCHEMA, value=form),
            where=obj.Label,
            allowed=f"0 … {CURRENT_SCHEMA}",
            todo=say("mend or remove that property"),
        )
    return form


def refuse_newer(objects: Iterable[Any]) -> None:
    """Raise InputError where one of our objects has a form of a later release: we would read it wrongly or spoil it."""
    for obj in objects:
        form = schema_of(obj)
        if form > CURRENT_SCHEMA:
            raise InputError(
                say("its properties have form {form}, of a later release than this one", form=form),
                where=obj.Label,
                allowed=f"0 … {CURRENT_SCHEMA}",
                todo=say("install that release or a later one; until then the object stays as it is"),
            )


def mark(obj: Any, kind: str, schema: int = CURRENT_SCHEMA) -> Any:
    """Make an object known as ours; returns it."""
    add_property(
        obj,
        "App::PropertyString",
        KIND,
        explained("What this object is to Heartside"),
        READ_ONLY | NO_RECOMPUTE,
    )
    add_property(
        obj, "App::PropertyInteger", SCHEMA, explained("Form of its properties"), READ_ONLY | NO_RECOMPUTE
    )
    setattr(obj, KIND, kind)
    setattr(obj, SCHEMA, schema)
    return obj


def explained(text: str) -> str:
    """Marks what explains a property: it stays English in the file, and the host shows it in its own language."""
    return text


def add_property(obj: Any, kind: str, name: str, explanation: str, attributes: int = NO_RECOMPUTE) -> bool:
    """Add a property where it is missing; True where it was added."""
    if name in obj.PropertiesList:
        return False
    obj.addProperty(kind, name, GROUP, explanation, attributes)
    return True


def objects_of_kind(doc: Any, kind: str) -> list[Any]:
    """Every object of a document that is of this kind, in the order of the document."""
    return [obj for obj in doc.Objects if kind_of(obj) == kind]
