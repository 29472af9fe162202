"""What an answer leaves in a document: one group, and one label a part. Plain objects of the host, so that a
file opens whole without the add-on, and so that removing the group leaves the document as it was.

The group carries the whole report as JSON (``HeartsideReport``); each label carries the figures of its part as
plain properties, which the host shows in the user's own units.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import FreeCAD as App

from movement_core.wording import say
from workbench_pkg.host.labels import RESULTS_KIND, add_label, remove_results, results_group
from workbench_pkg.host.marks import NO_RECOMPUTE, READ_ONLY, add_property, explained, objects_of_kind
from workbench_pkg.host.preferences import shows_labels

__all__ = ["PartLabel", "noted_fingerprint", "remove_results", "report_of", "results_of", "write_results"]

REPORT = "HeartsideReport"
FINGERPRINT = "HeartsideFingerprint"
HIDDEN = 4

Point = tuple[float, float, float]


@dataclass(frozen=True)
class PartLabel:
    """One label: its lines, its rank (0 nothing to say, 1 look, 2 will not hold), where it points and stands.

    ``span``: the part's two ends along the grain. ``figures``: property name → (host type, value, explanation).
    """

    name: str
    key: str
    lines: tuple[str, ...]
    rank: int
    anchor: Point
    place: Point
    span: tuple[Point, Point]
    figures: Mapping[str, tuple[str, Any, str]]


def results_of(doc: Any) -> list[Any]:
    """The groups of answers in a document."""
    return objects_of_kind(doc, RESULTS_KIND)


def report_of(doc: Any) -> dict[str, Any] | None:
    """The report that the document's last answer left, or None."""
    for group in results_of(doc):
        try:
            return dict(json.loads(getattr(group, REPORT)))
        except (AttributeError, ValueError):
            continue
    return None


def noted_fingerprint(doc: Any) -> str | None:
    """What the document stood at when its answer was worked out; None where there is no answer, "" where it was
    not noted."""
    for group in results_of(doc):
        return str(getattr(group, FINGERPRINT)) if FINGERPRINT in group.PropertiesList else ""
    return None


def write_results(
    doc: Any, entry: Mapping[str, Any], labels: Sequence[PartLabel], fingerprint: str = ""
) -> Any:
    """Put a group with its labels into the document. The caller opens the transaction."""
    group = results_group(doc)
    _set(group, "App::PropertyString", "HeartsideYear", entry["year"]["name"], explained("Year of air"))
    _set(
        group, "App::PropertyString", "HeartsideDate", entry["today"]["date"], explained("Day of the answer")
    )
    _set(
        group,
        "App::PropertyString",
        REPORT,
        json.dumps(entry, ensure_ascii=False),
        explained("The report"),
        HIDDEN,
    )
    _set(group, "App::PropertyString", FINGERPRINT, fingerprint, explained("What the model stood at"), HIDDEN)
    for label in labels:
        _label(doc, label)
    if not shows_labels():
        for obj in group.Group:
            obj.Visibility = False
    for obj in (group, *group.Group):
        obj.purgeTouched()
    return group


def _label(doc: Any, label: PartLabel) -> None:
    name = say("Label of {name}", name=label.name)
    obj = add_label(doc, label.lines, label.anchor, label.place, part=label.key, name=name)
    _set(
        obj,
        "App::PropertyInteger",
        "HeartsideRank",
        label.rank,
        explained("0 nothing to say, 1 look at it, 2 will not hold"),
    )
    ends = [App.Vector(*end) for end in label.span]
    _set(
        obj,
        "App::PropertyVectorList",
        "HeartsideSpan",
        ends,
        explained("Ends of the part along its grain"),
        HIDDEN,
    )
    for figure, (kind, value, explanation) in label.figures.items():
        _set(obj, kind, figure, value, explanation)


def _set(obj: Any, kind: str, name: str, value: Any, explanation: str, more: int = 0) -> None:
    add_property(obj, kind, name, explanation, READ_ONLY | NO_RECOMPUTE | more)
    setattr(obj, name, value)
