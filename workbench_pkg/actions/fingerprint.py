"""What an answer rests on, as one short text: it differs as soon as the model, its tags, what was asked or the
release differ, and is the same again after saving, opening, undoing and on every host.

Solids are told by their measures, rounded well above what kernels disagree in.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Any

from movement_core import __version__
from movement_core.errors import InputError
from workbench_pkg.host.ancestry import fused_tags, inherited_tags
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.leaves import Reading, read_leaves
from workbench_pkg.host.preferences import usual_year
from workbench_pkg.host.tagging import RawTags, read_tags
from workbench_pkg.objects.joints import JOINTS
from workbench_pkg.objects.measurements import MEASURED
from workbench_pkg.objects.study import DATE, YEAR, asked_of, get_text, today_moisture

PLACES_MM = 4  # decimals of a length that count


def fingerprint(doc: Any, asked: Mapping[str, Any] | None = None, reading: Reading | None = None) -> str:
    """Fingerprint of a document for an answer.

    ``asked`` None: what the document's own study asks. ``reading``: its leaves with the hidden ones, where they are
    read already.
    """
    told = hashlib.sha256()
    for line in _lines(
        doc, _asked(doc) if asked is None else asked, reading or read_leaves(doc, hidden=True)
    ):
        told.update(f"{line}\n".encode("utf-8", "replace"))
    return told.hexdigest()[:32]


def _asked(doc: Any) -> dict[str, Any]:
    """What the study asks, in the form in which settings keep it."""
    asked: dict[str, Any] = {
        "year": get_text(doc, YEAR) or usual_year(),
        "today": get_text(doc, DATE),
        "today_mc": today_moisture(doc),
        **asked_of(doc),
    }
    return {name: value for name, value in asked.items() if value not in (None, "", {})}


def _lines(doc: Any, asked: Mapping[str, Any], reading: Reading) -> Iterator[object]:
    yield __version__
    yield sorted((name, _plain(value)) for name, value in asked.items())
    for name in ("year", "shop"):
        yield _content(str(asked.get(name, "")))
    yield get_text(doc, JOINTS)
    yield get_text(doc, MEASURED)
    solids: dict[object, tuple[object, ...]] = {}  # a solid is measured once however many links show it
    for leaf in reading.leaves:
        if leaf.visible:
            if leaf.own not in solids:
                solids[leaf.own] = _solid(leaf.solid)
            yield leaf.key, leaf.name, _numbers(leaf.matrix.A), solids[leaf.own], _tags(leaf)
        else:
            yield "hidden", leaf.name


def _content(path: str) -> str:
    """What is in a file of the air, "" where the text names none."""
    try:
        return hashlib.sha256(Path(path).read_bytes()).hexdigest() if path else ""
    except (OSError, ValueError):
        return ""


def _solid(solid: Any) -> tuple[object, ...]:
    corners = sorted(_numbers(vertex.Point) for vertex in solid.Vertexes)
    middle = _numbers(solid.CenterOfMass)
    return len(solid.Faces), f"{solid.Volume:.7g}", f"{solid.Area:.7g}", middle, corners


def _numbers(values: Sequence[float]) -> tuple[float, ...]:
    return tuple(round(float(value), PLACES_MM) + 0.0 for value in values)


def _tags(leaf: Leaf) -> tuple[object, ...]:
    try:
        raw = read_tags(leaf)
        others = [(one.name, _raw(one.tags)) for one in (*inherited_tags(leaf), *fused_tags(leaf))]
    except InputError as error:
        return (str(error),)
    return _raw(raw), others


def _raw(raw: RawTags) -> tuple[object, ...]:
    return sorted((name, _plain(value)) for name, value in raw.properties.items()), raw.texts


def _plain(value: object) -> object:
    """A value that prints alike wherever it was kept."""
    if isinstance(value, (int, float)) and not isinstance(value, bool):
        return f"{value:.9g}"
    if isinstance(value, Mapping):
        return sorted((str(name), _plain(item)) for name, item in value.items())
    if isinstance(value, (list, tuple)):
        return [_plain(item) for item in value]
    return str(value)
