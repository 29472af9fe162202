"""Cut the slots of placed hardware, each part by an ordinary cut of the host that leaves the part as its base."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import FreeCAD as App

from movement_core.errors import InputError
from movement_core.piece.tag_sources import without_tag
from movement_core.wording import say
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.actions.hardware import is_stale
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.hardware_shapes import holds_point, in_frame, joined, shared_volume
from workbench_pkg.host.leaf import AS_MATRIX, AS_OBJECT, Leaf
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.relations import is_a, is_link
from workbench_pkg.objects import hardware as kept

LEAST_VOLUME_MM3 = 1e-3


@dataclass(frozen=True)
class CutReport:
    """What was done: labels of the parts that were cut, and what was not, one sentence each."""

    cut: tuple[str, ...]
    refused: tuple[str, ...]


def cut_slots(doc: Any) -> CutReport:
    """Cut everything that was placed out of the parts. One undo step; undo or ``remove_hardware`` brings them back.

    Each part becomes the base of a Part::Cut and stays what it was. A part that cannot be cut is told, the others
    are cut.

    Raises
    ------
    InputError : no hardware is placed, it rests on a model that has changed, it is cut already, or no part at all
        can be cut; then nothing is changed.
    """
    bodies = kept.cut_bodies(doc)
    if not bodies:
        raise InputError(
            say("no hardware is placed"),
            where=say("cutting the slots"),
            todo=say("plan how the top is held, and place it"),
        )
    if kept.cuts_of(doc):
        raise InputError(
            say("they are cut already"),
            where=say("cutting the slots"),
            todo=say("undo, or take the hardware out, first"),
        )
    if is_stale(doc):
        raise InputError(
            say("the model, its tags or the year have changed since the hardware was placed"),
            where=say("cutting the slots"),
            todo=say("place the plan again, then cut"),
        )
    refused: list[str] = []
    ready = _ready(doc, bodies, refused)
    if not ready:
        raise InputError(
            say("nothing can be cut: {why}", why="; ".join(refused)), where=say("cutting the slots")
        )
    with one_step(doc, say("Heartside: cut the slots")):
        labels = [_cut(doc, leaf, tools) for leaf, tools in ready]
        now = fingerprint(doc)
        for group in kept.placed_tops(doc):
            kept.keep_fingerprint(group, now)
            kept.note_uncut(group, refused)
    return CutReport(tuple(labels), tuple(refused))


def _ready(doc: Any, bodies: list[Any], refused: list[str]) -> list[tuple[Leaf, list[Any]]]:
    """Parts that can be cut, each with the global solids to cut away."""
    leaves = read_leaves(doc).leaves
    by_key = {leaf.key: leaf for leaf in leaves}
    wanted: dict[str, list[Any]] = {}
    for body in bodies:
        wanted.setdefault(getattr(body, kept.PART), []).append(body)
    by_object: dict[tuple[str, str], tuple[Leaf, list[Any]]] = {}
    for key, ours in wanted.items():
        leaf = by_key.get(key)
        why = say("it is not in the model any more") if leaf is None else why_not(leaf, leaves)
        if leaf is None or why:
            name = ", ".join(kept.labels(ours)) if leaf is None else without_tag(leaf.name)
            refused.append(f"{name}: {why}")
            continue
        solid = leaf.global_solid()
        for body in ours:
            problem = _fault(body, solid)
            if problem:
                refused.append(f"{body.Label}: {problem}")
            else:
                by_object.setdefault((leaf.root.Name, leaf.sub), (leaf, []))[1].append(body.Shape.copy())
    return list(by_object.values())


def _fault(body: Any, solid: Any) -> str:
    """What is wrong with one body in the part as it stands, or ""."""
    if shared_volume(solid, body.Shape) < LEAST_VOLUME_MM3:
        return say("there is no wood to cut: a groove or hole is there already, or the part ends before it")
    if kept.BLIND in body.PropertiesList and not holds_point(solid, getattr(body, kept.BLIND)):
        return say("it would come through, or nearly, on the other side; take a shorter screw or move it")
    return ""


def why_not(leaf: Leaf, leaves: Any) -> str:
    """Why a part cannot be cut where it stands, and what to do; "" if it can."""
    same = sum(other.source == leaf.source for other in leaves)
    if leaf.array is not None:
        return say(
            "it is one of the elements of '{array}', which are one object; make an own link or copy of it, then place "
            "and cut again",
            array=leaf.array.Label,
        )
    steps = leaf.sub.rstrip(".").split(".")[:-1] if leaf.sub else []
    for count in range(len(steps) + 1):
        if not leaf.sub:
            break
        path = "".join(f"{step}." for step in steps[:count])
        home = leaf.root.getSubObject(path, retType=AS_OBJECT) if path else leaf.root
        if home is None or is_link(home):
            label = home.Label if home is not None else path
            return say(
                "it lies in '{container}', which is linked, and is shown {count} times: a cut would be in all of them; "
                "make a copy of that container of its own, then place and cut again",
                container=label,
                count=same,
            )
        if is_a(home, "Assembly::AssemblyObject"):
            return say(
                "an assembly holds it by its joints; cut it in the document or container that it comes from"
            )
    if leaf.is_scaled():
        return say(
            "it is a link with a scale or a mirror image; make a plain copy of it, then place and cut again"
        )
    if leaf.owner.Document != leaf.root.Document:
        return say("it belongs to another file; cut it there")
    return ""


def _cut(doc: Any, leaf: Leaf, tools: list[Any]) -> str:
    home, frame = _home(leaf)
    name = without_tag(leaf.name)
    before = leaf.owner.Visibility
    cut = kept.make_cut(doc, leaf.owner, home, name, in_frame(joined(tools), frame))
    shape = cut.Shape
    if "Invalid" in cut.State or shape.isNull() or not shape.isValid() or not before:
        raise InputError(
            say("the host fails to cut it ({why})", why=cut.getStatusString()),
            where=name,
            todo=say("check the part's geometry"),
        )
    whole = leaf.solid.Volume if len(leaf.source.Shape.Solids) == 1 else leaf.source.Shape.Volume
    if not shape.Volume < whole - LEAST_VOLUME_MM3:
        raise InputError(
            say("the host's cut took nothing away"), where=name, todo=say("check the part's geometry")
        )
    return name


def _home(leaf: Leaf) -> tuple[Any | None, Any]:
    """The container to put the cut into, and the matrix of its frame."""
    owner = leaf.owner
    home = owner.getParentGeoFeatureGroup() or owner.getParentGroup()
    if not leaf.sub:
        return home, App.Matrix()
    above = "".join(f"{step}." for step in leaf.sub.rstrip(".").split(".")[:-1])
    return home, leaf.root.getSubObject(above, retType=AS_MATRIX)
