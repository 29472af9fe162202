"""From a document to the parts of a piece."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from movement_core.errors import InputError
from movement_core.piece.frame import Measure
from movement_core.piece.part import Part, Shop, Solid, parts_of
from movement_core.piece.tag_sources import merge, tags_from_properties, tags_from_text, turned, without_tag
from movement_core.piece.tags import TagProblem, Tags
from movement_core.wording import say
from workbench_pkg.host.ancestry import InheritedTags, fused_tags, inherited_tags
from workbench_pkg.host.leaves import Leaf, Reading, read_leaves
from workbench_pkg.host.relations import is_ours, is_placed_group, is_plain_group
from workbench_pkg.host.shapes import extents, outline
from workbench_pkg.host.tagging import RawTags, own_facts, read_tags


@dataclass(frozen=True, eq=False)
class ReadPiece:
    """The parts of a document, and the leaf each was read from (in the same order).

    ``hidden`` names the solids that are not shown and were left out; ``unreadable`` tells what could not be read.
    """

    parts: tuple[Part, ...]
    leaves: tuple[Leaf, ...]
    hidden: tuple[str, ...]
    unreadable: tuple[str, ...]


@dataclass(frozen=True, eq=False)
class ReadSolids:
    """The visible solids of a document with their tags, and the rest as in ReadPiece."""

    solids: tuple[Solid, ...]
    leaves: tuple[Leaf, ...]
    hidden: tuple[str, ...]
    unreadable: tuple[str, ...]


def read_piece(
    doc: Any,
    table: Mapping[str, Tags] | None = None,
    shop: Shop | None = None,
    reading: Reading | None = None,
) -> ReadPiece:
    """Read every visible leaf solid of a document with its tags.

    ``table`` holds further tags by part name, from a CSV file beside the model; properties and labels outrank it.
    ``shop`` gives the moisture of parts of which none was said. ``reading``: the document's leaves with the hidden
    ones, where they are read already.
    """
    read = read_solids(doc, table, reading)
    return ReadPiece(parts_of(read.solids, shop), read.leaves, read.hidden, read.unreadable)


def read_solids(
    doc: Any, table: Mapping[str, Tags] | None = None, reading: Reading | None = None
) -> ReadSolids:
    """The solids that ``read_piece`` makes parts of."""
    reading = reading or read_leaves(doc, hidden=True)
    unreadable = [str(one) for one in reading.unreadable]
    unused = dict(table or {})
    solids, leaves, hidden = [], [], []
    for leaf in reading.leaves:
        if not leaf.visible:
            hidden.append(without_tag(leaf.name))
            continue
        try:
            solids.append(_solid(leaf, unused))
        except InputError as error:
            unreadable.append(f"{leaf.name}: {error}")
            continue
        except Exception as error:  # whatever the host fails at costs this solid, not the others
            unreadable.append(
                say("{name}: the host failed to measure it ({error})", name=leaf.name, error=error)
            )
            continue
        leaves.append(leaf)
    names = ", ".join(sorted({solid.name for solid in solids}))
    unreadable += _unused_containers(doc)
    unreadable += [
        say("the tag table names a part {name!r} that is not there. Parts: {names}", name=name, names=names)
        for name in unused
    ]
    if hidden and not solids:
        unreadable.append(say("every solid in it is hidden. To do: show the parts that are to be checked"))
    return ReadSolids(tuple(solids), tuple(leaves), tuple(hidden), tuple(unreadable))


def _solid(leaf: Leaf, table: dict[str, Tags]) -> Solid:
    name = without_tag(leaf.name)
    return Solid(leaf.key, name, outline(leaf), _tags(leaf, name, table), _measure(leaf))


def _measure(leaf: Leaf) -> Measure:
    return lambda axes: extents(leaf, axes)


def _tags(leaf: Leaf, name: str, table: dict[str, Tags]) -> Tags:
    try:
        said = _understood(name, read_tags(leaf))
        made_from = [(one, _understood(name, one.tags)) for one in inherited_tags(leaf)]
        woods = _woods_of(fused_tags(leaf))
    except InputError as error:
        return Tags(problems=(TagProblem(name, "", str(error)),))
    if name in table:
        said.append(table.pop(name))
    for one, theirs in made_from:
        said += [turned(each, one.turn.tolist(), repr(without_tag(one.name))) for each in theirs]
    tags = merge(*said)
    if len(woods) > 1:
        counts = tags.species.name if tags.species else say("none of them")
        message = say(
            "it was fused of {woods}; {counts} counts. To do: keep boards of their own",
            woods=say(" and ").join(sorted(woods)),
            counts=counts,
        )
        return replace(tags, problems=(*tags.problems, TagProblem(name, "species", message)))
    return tags


def _woods_of(operands: Sequence[InheritedTags]) -> set[str]:
    """The different woods that the operands of a fusion were tagged with."""
    said = [merge(*_understood(one.name, one.tags)).species for one in operands]
    return {species.name for species in said if species is not None}


def _unused_containers(doc: Any) -> list[str]:
    """Tags on containers, which no part takes: a container has no grain, and its parts may be of many woods."""
    told = []
    for obj in doc.Objects:
        if is_ours(obj) or not (is_placed_group(obj) or is_plain_group(obj)):
            continue
        if own_facts(obj) or tags_from_text("", obj.Label, "").said:
            name = without_tag(obj.Label)
            told.append(
                say(
                    "the tag on {name!r} is used by no part, since it is a container. To do: tag the parts inside",
                    name=name,
                )
            )
    return told


def _understood(name: str, raw: RawTags) -> list[Tags]:
    texts = [tags_from_text(name, text, "label") for text in raw.texts]
    return [tags_from_properties(name, raw.properties), *texts]
