"""Labels in the 3D view, and the one group that holds whatever Heartside puts into a document."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import FreeCAD as App

from movement_core.wording import phrase, word
from workbench_pkg.host.marks import explained, kind_of, mark, refuse_newer
from workbench_pkg.host.relations import is_ours, is_plain_group
from workbench_pkg.host.version import gui_is_up

GROUP_LABEL = phrase("Heartside results")
PART_PROPERTY = "HeartsidePart"
RESULTS_KIND, LABEL_KIND = "results", "label"
_READ_ONLY = 1

Colour = tuple[float, float, float]
Point = Sequence[float]


@dataclass(frozen=True)
class LabelStyle:
    """Looks of a label: walnut ink on oak, our own. The host draws the leader in the colour of the paper, so that
    must show on a white and on a dark view. Colours are red, green, blue from 0 to 1, never four numbers: hosts
    disagree about the fourth."""

    ink: Colour = (0.17, 0.11, 0.07)
    paper: Colour = (0.87, 0.72, 0.47)
    size: float = 14.0


def results_group(doc: Any) -> Any:
    """The group of our results, made if there is none; found again by its kind, whatever it is called.

    Raises InputError where it is of a later release.
    """
    for obj in doc.Objects:
        if kind_of(obj) == RESULTS_KIND:
            refuse_newer([obj])
            return obj
    group = doc.addObject("App::DocumentObjectGroup", "HeartsideResults")
    group.Label = word(GROUP_LABEL)
    return mark(group, RESULTS_KIND)


def add_label(
    doc: Any,
    lines: Iterable[str],
    base_mm: Point,
    text_mm: Point,
    *,
    part: str = "",
    name: str = "",
    style: LabelStyle = LabelStyle(),
) -> Any:
    """A label with a leader, in the results group.

    Parameters
    ----------
    lines : text.
    base_mm, text_mm : (3,) where the leader starts, and where the text stands, both in the global frame.
    part : key of the leaf it is about.
    name : label in the tree.
    """
    group = results_group(doc)
    label = mark(doc.addObject("App::AnnotationLabel", "HeartsideLabel"), LABEL_KIND)
    label.addProperty(
        "App::PropertyString", PART_PROPERTY, "Heartside", explained("Address of the part"), _READ_ONLY
    )
    setattr(label, PART_PROPERTY, part)
    if name:
        label.Label = name
    base, text = App.Vector(*base_mm), App.Vector(*text_mm)
    label.LabelText = list(lines)
    label.BasePosition = base
    label.TextPosition = text - base  # the host counts it from the base
    group.addObject(label)
    apply_style(label, style)
    return label


def apply_style(label: Any, style: LabelStyle) -> None:
    """Set the looks of a label; without the window there are none to set."""
    if not gui_is_up():
        return
    view = label.ViewObject
    view.TextColor, view.BackgroundColor, view.FontSize = style.ink, style.paper, style.size


def our_objects(doc: Any, kinds: Iterable[str] | None = None) -> list[Any]:
    """Objects of ours, of some kinds or of all."""
    wanted = None if kinds is None else set(kinds)
    return [obj for obj in doc.Objects if is_ours(obj) and (wanted is None or kind_of(obj) in wanted)]


def remove_results(doc: Any) -> int:
    """Remove the results group and everything of ours in it; how many objects went.

    Objects of the user that were put into the group are taken out of it and stay. Tags stay too.

    Raises InputError where any of it is of a later release; then nothing is removed.
    """
    doomed = {obj.Name: obj for obj in our_objects(doc, [RESULTS_KIND, LABEL_KIND])}
    groups = our_objects(doc, [RESULTS_KIND])
    refuse_newer([*doomed.values(), *(each for group in groups for each in group.Group if is_ours(each))])
    while groups:
        group = groups.pop()
        for member in group.Group:
            if not is_ours(member):
                group.removeObject(member)
            elif member.Name not in doomed or is_plain_group(member):
                doomed[member.Name] = member
                groups += [member] if is_plain_group(member) else []
    for name in doomed:
        doc.removeObject(name)
    return len(doomed)
