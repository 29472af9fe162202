"""What a placed plan leaves in a document: one group of plain solids, and, on request, ordinary cuts of parts.

``Heartside hardware`` holds a group for each top, which carries the figures of the plan; in it stand the fasteners,
and in a group of their own, hidden, the bodies that can be cut away. A cut is a Part::Cut of the host: it must count
as a part, so it is no object of ours and is known by one property, ``CutForHardware``, whose name is no fact of wood.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import Any

import FreeCAD as App

from movement_core.errors import InputError
from movement_core.piece.hardware_bodies import CutBody, Hardware, Marker
from movement_core.wording import phrase, say, word
from workbench_pkg.host.hardware_shapes import marker_shape, placement_of, solid_of
from workbench_pkg.host.marks import (
    NO_RECOMPUTE,
    READ_ONLY,
    add_property,
    explained,
    kind_of,
    mark,
    objects_of_kind,
    refuse_newer,
)
from workbench_pkg.host.relations import is_ours, is_placed_group, is_plain_group
from workbench_pkg.host.version import gui_is_up

ROOT, TOP, AWAY = "hardware", "hardware of a top", "bodies to cut away"
MARKER, CUT_BODY, CUTTER = "fastener", "cutting body", "cutters"
LABEL = phrase("Heartside hardware")
CUT_MARK = "CutForHardware"
KEY, PART, NUMBER, PURPOSE, BLIND = (
    "HeartsideTop",
    "HeartsidePart",
    "HeartsideNumber",
    "HeartsidePurpose",
    "HeartsideBlind",
)
PRINT, REFUSED, CAUTIONS = "HeartsideFingerprint", "HeartsideNotCut", "HeartsideCautions"
HIDDEN = 4
STEEL, WOOD, AIR = (0.62, 0.65, 0.69), (0.86, 0.74, 0.55), (0.30, 0.60, 0.72)

Figures = Mapping[str, tuple[str, Any, str]]  # property → (type, value, explanation)


def root_of(doc: Any) -> Any | None:
    """The group of all hardware, or None."""
    found = objects_of_kind(doc, ROOT)
    return found[0] if found else None


def has_hardware(doc: Any) -> bool:
    """Whether there is anything of it, placed or cut."""
    return root_of(doc) is not None or bool(cuts_of(doc))


def placed_tops(doc: Any) -> list[Any]:
    """One group for each top that has hardware."""
    return objects_of_kind(doc, TOP)


def cut_bodies(doc: Any) -> list[Any]:
    """The bodies that can be cut away."""
    return objects_of_kind(doc, CUT_BODY)


def _hardware_of(doc: Any) -> list[Any]:
    kinds = (ROOT, TOP, AWAY, MARKER, CUT_BODY, CUTTER)
    return [obj for kind in kinds for obj in objects_of_kind(doc, kind)]


def cuts_of(doc: Any) -> list[Any]:
    """The parts that have been cut for hardware."""
    return [obj for obj in doc.Objects if CUT_MARK in obj.PropertiesList]


def write_hardware(
    doc: Any, key: str, name: str, hardware: Hardware, figures: Figures, of_each: Mapping[int, Figures]
) -> Any:
    """Put the hardware of one top into the document, in place of what it had. The caller opens the transaction.

    ``key``: of the top's first board. ``figures``: of the plan; ``of_each``: of its fasteners by number.

    Raises InputError where there is hardware of a later release.
    """
    refuse_newer(_hardware_of(doc))
    root = root_of(doc)
    if root is None:
        root = mark(doc.addObject("App::DocumentObjectGroup", "HeartsideHardware"), ROOT)
        root.Label = word(LABEL)
    for old in placed_tops(doc):
        if getattr(old, KEY, "") == key:
            _remove_group(doc, old)
    group = mark(doc.addObject("App::DocumentObjectGroup", "HeartsideHardwareTop"), TOP)
    group.Label = name
    root.addObject(group)
    _set(group, KEY, ("App::PropertyString", key, explained("Address of the top's first board")))
    for prop, said in figures.items():
        _set(group, prop, said)
    for marker in hardware.markers:
        group.addObject(_marker(doc, marker, of_each.get(marker.number, {})))
    away = mark(doc.addObject("App::DocumentObjectGroup", "HeartsideCutAway"), AWAY)
    away.Label = say("To cut away")
    group.addObject(away)
    for cut in hardware.cuts:
        away.addObject(_body(doc, cut, of_each.get(cut.number, {})))
    away.Visibility = False
    for obj in (root, group, *group.Group, *away.Group):
        obj.purgeTouched()
    return group


def _marker(doc: Any, marker: Marker, figures: Figures) -> Any:
    obj = mark(doc.addObject("Part::Feature", "HeartsideFastener"), MARKER)
    obj.Label = marker.name
    obj.Shape = marker_shape(marker)
    _set(
        obj,
        NUMBER,
        ("App::PropertyInteger", marker.number, explained("Number in the plan; 0: of a batten or an end")),
    )
    for prop, said in figures.items():
        _set(obj, prop, said)
    if gui_is_up():
        obj.ViewObject.ShapeColor = WOOD if marker.wooden else STEEL
    return obj


def _body(doc: Any, cut: CutBody, figures: Figures) -> Any:
    obj = mark(doc.addObject("Part::Feature", "HeartsideCutBody"), CUT_BODY)
    obj.Label = cut.name
    obj.Shape = solid_of(cut.body)
    obj.Placement = placement_of(cut.body)
    _set(obj, PART, ("App::PropertyString", cut.part, explained("Address of the part that it is cut from")))
    _set(obj, PURPOSE, ("App::PropertyString", cut.purpose, explained("What it cuts")))
    _set(obj, NUMBER, ("App::PropertyInteger", cut.number, explained("Number of its fastener; 0: of none")))
    if cut.blind:
        said = "App::PropertyVector", App.Vector(*cut.blind), explained("Behind its bottom, must stay wood")
        _set(obj, BLIND, said, HIDDEN)
    for prop, told in figures.items():
        _set(obj, prop, told)
    obj.Visibility = False
    if gui_is_up():
        obj.ViewObject.ShapeColor = AIR
        obj.ViewObject.Transparency = 60
    return obj


def _set(obj: Any, name: str, said: tuple[str, Any, str], more: int = 0) -> None:
    kind, value, explanation = said
    if value is None:
        return
    add_property(obj, kind, name, explanation, READ_ONLY | NO_RECOMPUTE | more)
    setattr(obj, name, value)


def keep_fingerprint(group: Any, text: str) -> None:
    _set(group, PRINT, ("App::PropertyString", text, explained("What the plan rests on")), HIDDEN)
    group.purgeTouched()


def note_uncut(group: Any, refused: Sequence[str]) -> None:
    """Add what could not be cut to what the plan itself does not cut."""
    told = list(dict.fromkeys([*getattr(group, REFUSED, ()), *refused]))
    _set(group, REFUSED, ("App::PropertyStringList", told, explained("What is not cut, and why")))
    group.purgeTouched()


def uncut(doc: Any) -> list[str]:
    """What is not cut of the placed hardware, and why."""
    return list(dict.fromkeys(text for group in placed_tops(doc) for text in getattr(group, REFUSED, ())))


# ---- cuts -------------------------------------------------------------------------------------------------


def make_cut(doc: Any, base: Any, home: Any | None, name: str, tool_shape: Any) -> Any:
    """A cut of ``base`` by one solid of the base's own frame, beside the base in its container.

    The base stays what it was, hidden inside the cut. The caller opens the transaction.
    """
    tool = mark(doc.addObject("Part::Feature", "HeartsideCutters"), CUTTER)
    tool.Label = say("Cutters of {name}", name=name)
    tool.Shape = tool_shape
    cut = doc.addObject("Part::Cut", "SlottedPart")
    cut.Label = f"{name} with slots"
    add_property(
        cut, "App::PropertyString", CUT_MARK, explained("Made by Heartside"), READ_ONLY | NO_RECOMPUTE
    )
    setattr(cut, CUT_MARK, base.Name)
    if home is not None:
        home.addObject(tool)
        home.addObject(cut)
    cut.Base, cut.Tool = base, tool
    cut.recompute()
    _wear_the_looks(cut, base)
    base.Visibility = tool.Visibility = False
    for obj in (tool, cut):
        obj.purgeTouched()
    return cut


def _wear_the_looks(cut: Any, base: Any) -> None:
    if not gui_is_up():
        return
    view = base.getLinkedObject(True).ViewObject
    if hasattr(view, "ShapeColor"):
        cut.ViewObject.ShapeColor = view.ShapeColor[:3]


def remove_all(doc: Any) -> int:
    """Take all hardware and the cuts for it out; how many objects went. The caller opens the transaction.

    Raises
    ------
    InputError : something was built on a part that was cut, or any of it is of a later release.
    """
    refuse_newer(_hardware_of(doc))
    cuts = cuts_of(doc)
    for cut in cuts:
        _look_for_users(cut)
    count = 0
    for cut in cuts:
        base, tool = cut.Base, cut.Tool
        homes = [obj for obj in (base, *base.InList) if is_placed_group(obj)]
        doc.removeObject(cut.Name)
        count += 1
        if tool is not None and kind_of(tool) == CUTTER:
            doc.removeObject(tool.Name)
            count += 1
        base.Visibility = True
        for obj in (base, *homes):
            obj.purgeTouched()
    for group in objects_of_kind(doc, ROOT):
        count += _remove_group(doc, group)
    return count


def _look_for_users(cut: Any) -> None:
    for user in cut.InList:
        if is_placed_group(user) or is_plain_group(user) or is_ours(user):
            continue
        raise InputError(
            say("{user!r} is built on {name!r}", user=user.Label, name=cut.Label),
            where=say("taking hardware out"),
            todo=say("delete {name!r} first, or undo step by step", name=user.Label),
        )


def _remove_group(doc: Any, group: Any) -> int:
    """Remove a group of ours with all of ours in it; what the user put there is taken out and stays."""
    count = 0
    for member in group.Group:
        if not is_ours(member):
            group.removeObject(member)
        elif is_plain_group(member):
            count += _remove_group(doc, member)
        else:
            doc.removeObject(member.Name)
            count += 1
    doc.removeObject(group.Name)
    return count + 1


def labels(objects: Iterable[Any]) -> Sequence[str]:
    return [obj.Label for obj in objects]
