"""Take an object of several solids apart into an object for each, so that each can be told its own wood.

Older hosts read a whole STEP assembly into one object; a tag can only be said of an object.
"""

from __future__ import annotations

from typing import Any

from movement_core.errors import InputError
from movement_core.wording import say
from workbench_pkg.actions.transaction import one_step

_LOOKS = ("ShapeColor", "LineColor", "Transparency", "ShapeAppearance")


def is_several(obj: Any) -> bool:
    """Whether an object is a plain shape of several solids, such as an import makes."""
    return str(obj.TypeId) == "Part::Feature" and not obj.Shape.isNull() and len(obj.Shape.Solids) > 1


def take_apart(obj: Any) -> list[str]:
    """Put an object for each of its solids in its place, in one undo step; their names.

    Each new object keeps the solid's own frame, the container and the looks; what was said of the whole is said of
    none of them.

    Raises
    ------
    InputError : it is no plain shape of several solids, or other objects are made of it; nothing is changed then.
    """
    if not is_several(obj):
        raise InputError(
            say("{name!r} is not one plain object of several solids", name=obj.Label),
            where=say("taking apart"),
            todo=say("choose another"),
        )
    group = obj.getParentGeoFeatureGroup() or obj.getParentGroup()
    users = [user for user in obj.InList if user != group]
    if users:
        raise InputError(
            say(
                "other objects are made of {name!r}: {users}",
                name=obj.Label,
                users=", ".join(user.Label for user in users),
            ),
            where=say("taking apart"),
            todo=say("take those away first, or draw the parts as objects of their own"),
        )
    doc, label, view = obj.Document, obj.Label, obj.ViewObject
    solids = [solid.copy() for solid in obj.Shape.Solids]
    names = []
    with one_step(doc, say("Heartside: take apart")):
        for number, solid in enumerate(solids, start=1):
            made = doc.addObject("Part::Feature", obj.Name)
            made.Label, made.Shape = f"{label} {number}", solid
            if group is not None:
                group.addObject(made)
            for look in _LOOKS if view is not None else ():
                if look in view.PropertiesList and look in made.ViewObject.PropertiesList:
                    setattr(made.ViewObject, look, getattr(view, look))
            names.append(made.Name)
        doc.removeObject(obj.Name)
        doc.recompute()
    return names
