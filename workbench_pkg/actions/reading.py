"""From a document to the parts of a piece."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from movement_core.errors import InputError
from movement_core.piece.frame import Measure
from movement_core.piece.part import Part, Shop, Solid, parts_of
from movement_core.piece.tag_sources import merge, tags_from_properties, tags_from_text, turned, without_tag
from movement_core.piece.tags import TagProblem, Tags
from workbench_pkg.host.ancestry import inherited_tags
from workbench_pkg.host.leaves import Leaf, read_leaves
from workbench_pkg.host.shapes import extents, outline
from workbench_pkg.host.tagging import RawTags, read_tags


@dataclass(frozen=True, eq=False)
class ReadPiece:
    """The parts of a document, and the leaf each was read from (in the same order).

    ``hidden`` names the solids that are not shown and were left out; ``unreadable`` tells what could not be read.
    """

    parts: tuple[Part, ...]
    leaves: tuple[Leaf, ...]
    hidden: tuple[str, ...]
    unreadable: tuple[str, ...]


def read_piece(doc: Any, table: Mapping[str, Tags] | None = None, shop: Shop | None = None) -> ReadPiece:
    """Read every visible leaf solid of a document with its tags.

    ``table`` holds further tags by part name, from a CSV file beside the model; properties and labels outrank it.
    ``shop`` gives the moisture of parts of which none was said.
    """
    reading = read_leaves(doc, hidden=True)
    unreadable = [str(one) for one in reading.unreadable]
    unused = dict(table or {})
    solids, leaves, hidden = [], [], []
    for leaf in reading.leaves:
        if not leaf.visible:
            hidden.append(without_tag(leaf.name))
            continue
        try:
            solids.append(_solid(leaf, unused))
        except Exception as error:  # whatever the host fails at costs this solid, not the others
            unreadable.append(f"{leaf.name}: the host failed to measure it ({error})")
            continue
        leaves.append(leaf)
    names = ", ".join(sorted({solid.name for solid in solids}))
    unreadable += [
        f"the tag table names a part {name!r} that is not there. Parts: {names}" for name in unused
    ]
    if hidden and not solids:
        unreadable.append("every solid in it is hidden. To do: show the parts that are to be checked")
    return ReadPiece(parts_of(solids, shop), tuple(leaves), tuple(hidden), tuple(unreadable))


def _solid(leaf: Leaf, table: dict[str, Tags]) -> Solid:
    name = without_tag(leaf.name)
    return Solid(leaf.key, name, outline(leaf), _tags(leaf, name, table), _measure(leaf))


def _measure(leaf: Leaf) -> Measure:
    return lambda axes: extents(leaf, axes)


def _tags(leaf: Leaf, name: str, table: dict[str, Tags]) -> Tags:
    try:
        said = _understood(name, read_tags(leaf))
        made_from = [(one, _understood(name, one.tags)) for one in inherited_tags(leaf)]
    except InputError as error:
        return Tags(problems=(TagProblem(name, "", str(error)),))
    if name in table:
        said.append(table.pop(name))
    for one, tags in made_from:
        said += [turned(each, one.turn.tolist(), repr(without_tag(one.name))) for each in tags]
    return merge(*said)


def _understood(name: str, raw: RawTags) -> list[Tags]:
    texts = [tags_from_text(name, text, "label") for text in raw.texts]
    return [tags_from_properties(name, raw.properties), *texts]
