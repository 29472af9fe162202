"""What a document object is, and what else in the document is made from it."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import FreeCAD as App

KIND_PROPERTY = "HeartsideKind"  # every object that we made ourselves carries it

# The inputs of these are used up, whether they are shown or not.
_CONSUMES = (
    "Part::Boolean",
    "Part::MultiFuse",
    "Part::MultiCommon",
    "Part::Compound",
    "Part::Compound2",
    "Part::FilletBase",
    "Part::Thickness",
    "Part::Offset",
    "Part::Extrusion",
    "Part::Revolution",
    "Part::Sweep",
    "Part::Loft",
    "Part::Refine",
    "Part::Scale",
    "Part::ProjectOnSurface",
)
_CONSUMING_PROXIES = {
    "FeatureBooleanFragments",
    "FeatureSlice",
    "FeatureXOR",
    "FeatureConnect",
    "FeatureEmbed",
    "FeatureCutout",
}
# Link properties that say where an object sits or what it is drawn with, not what it is made of.
_NOT_AN_INPUT = {
    "AttachmentSupport",
    "ExpressionEngine",
    "ExternalGeo",
    "ExternalGeometry",
    "Group",
    "Material",
    "Origin",
    "PathLink",
    "PathObject",
    "Proxy",
    "ShapeMaterial",
    "Support",
    "_Body",
}
_NEVER_A_PART = (
    "Sketcher::SketchObject",
    "PartDesign::ShapeBinder",
    "PartDesign::SubShapeBinder",
    "Part::Datum",
    "App::OriginFeature",
    "App::Origin",
    "App::DatumElement",
)
_LONGEST_CHAIN = 64  # links on links
_ADDED_BY_USER = 21  # status bit of a property that was added to one object, not declared by its type
_LINK_EXTENSIONS = ("App::LinkBaseExtension", "App::LinkBaseExtensionPython")


def is_a(obj: Any, *types: str) -> bool:
    """isDerivedFrom that takes several types and answers False for those this host does not know."""
    for name in types:
        try:
            if obj.isDerivedFrom(name):
                return True
        except Exception:
            continue
    return False


def _has_extension(obj: Any, *names: str) -> bool:
    for name in names:
        try:
            if obj.hasExtension(name):
                return True
        except Exception:
            continue
    return False


def is_ours(obj: Any) -> bool:
    """Made by Heartside: a label, a ghost, a results group."""
    return KIND_PROPERTY in obj.PropertiesList


def is_link(obj: Any) -> bool:
    """App::Link, one element of a link array, a link group, or a Draft array made of links."""
    return is_a(obj, "App::Link", "App::LinkElement", "App::LinkGroup") or _has_extension(
        obj, *_LINK_EXTENSIONS
    )


def is_body(obj: Any) -> bool:
    """A PartDesign body: a container whose own Shape is the part."""
    return is_a(obj, "Part::BodyBase")


def is_placed_group(obj: Any) -> bool:
    """App::Part, an assembly, a linked assembly: its members move with it."""
    return not is_body(obj) and _has_extension(obj, "App::GeoFeatureGroupExtension")


def is_plain_group(obj: Any) -> bool:
    """A folder of the tree: it neither moves nor hides its members."""
    return (
        not is_body(obj)
        and not is_placed_group(obj)
        and (
            is_a(obj, "App::DocumentObjectGroup")
            or _has_extension(obj, "App::GroupExtension", "App::GroupExtensionPython")
        )
    )


def can_be_a_part(obj: Any) -> bool:
    """Has a shape of its own that a maker would count as a piece of material."""
    return is_a(obj, "Part::Feature") and not is_a(obj, *_NEVER_A_PART) and not is_ours(obj)


def proxy_name(obj: Any) -> str:
    return type(getattr(obj, "Proxy", None)).__name__


def linked_objects(value: Any) -> list[Any]:
    """The document objects in the value of any kind of link property."""
    if isinstance(value, App.DocumentObject):
        return [value]
    found = []
    if isinstance(value, (tuple, list)):
        for item in value:
            if isinstance(item, App.DocumentObject):
                found.append(item)
            elif isinstance(item, (tuple, list)) and item and isinstance(item[0], App.DocumentObject):
                found.append(item[0])
    return found


def link_property(link: Any, name: str) -> Any:
    """A property of a link by the name its type gives it: Draft link arrays rename theirs."""
    value = getattr(link, name, None)
    if value is None:
        try:
            value = link.getLinkExtProperty(name)
        except Exception:
            value = None
    return value


def next_link(obj: Any) -> Any | None:
    """The object that a link points at directly, None at the end of the chain or for a missing target."""
    if not is_link(obj):
        return None
    target = obj.getLinkedObject(False)
    if target is None or target == obj:
        target = next(iter(linked_objects(link_property(obj, "LinkedObject"))), None)
    return None if target is None or target == obj else target


def link_chain(obj: Any) -> list[Any]:
    """The object, and if it is a link, what it links to, and so on to the end."""
    chain = [obj]
    while len(chain) < _LONGEST_CHAIN:
        following = next_link(chain[-1])
        if following is None or following in chain:
            break
        chain.append(following)
    return chain


def input_properties(obj: Any) -> Iterator[str]:
    """Names of the properties that hold what a shape is made from."""
    python = "Python" in obj.TypeId  # all properties of a scripted object were added to it
    for name in obj.PropertiesList:
        if name in _NOT_AN_INPUT:
            continue
        kind = obj.getTypeIdOfProperty(name)
        if "Link" not in kind or "Hidden" in kind:
            continue
        if not python and _ADDED_BY_USER in obj.getPropertyStatus(name):
            continue
        yield name


def _consumes(user: Any) -> bool:
    if is_a(user, *_CONSUMES) or proxy_name(user) in _CONSUMING_PROXIES:
        return True
    # A Draft array's first copy lies exactly on its base; along a path or on points it need not.
    return proxy_name(user) == "Array" and getattr(user, "ArrayType", "") in ("ortho", "polar", "circular")


def is_used_up(obj: Any) -> bool:
    """Input of a boolean, fillet, compound …, or hidden input of a mirror, clone or array."""
    for user in set(obj.InList):
        if not can_be_a_part(user) or is_placed_group(user) or is_plain_group(user) or is_body(user):
            continue
        if is_link(user) and not _consumes(user):
            continue
        if any(obj in linked_objects(getattr(user, name, None)) for name in input_properties(user)) and (
            _consumes(user) or not obj.Visibility
        ):
            return True
    return False


def is_hidden_master(obj: Any) -> bool:
    """Hidden object that is there only to be linked to."""
    if obj.Visibility:
        return False
    return any(is_link(user) and not is_ours(user) and next_link(user) == obj for user in obj.InList)


def members(group: Any) -> list[tuple[str, Any]]:
    """(path below the group, object) of everything in a container, through the plain groups inside it.

    A group inside an App::Part is listed there and so are its members: each object comes once, by its
    shortest path, so that moving it between folders does not change its address.
    """
    found: dict[str, tuple[str, Any]] = {}
    inner: list[tuple[str, Any]] = [("", group)]
    seen = {group.Name}
    while inner:
        path, container = inner.pop(0)
        for member in container.Group:
            if is_plain_group(member):
                if member.Name not in seen:
                    seen.add(member.Name)
                    inner.append((f"{path}{member.Name}.", member))
            elif member.Name not in found:
                found[member.Name] = (f"{path}{member.Name}.", member)
    return list(found.values())


def roots(doc: Any) -> list[Any]:
    """Objects that stand directly in the document, inside no container but plain groups."""
    owned: set[str] = set()
    for obj in doc.Objects:
        inside: list[Any] = []
        if is_placed_group(obj) or is_body(obj):
            inside = obj.Group
        elif is_link(obj):
            inside = link_property(obj, "ElementList") or []
        owned.update(member.Name for member in inside if member.Document is doc)
    return [obj for obj in doc.Objects if obj.Name not in owned and not is_plain_group(obj)]
