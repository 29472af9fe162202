"""Take what one part says of its wood, or what the host hints at, over to other parts: one undo step."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from movement_core.errors import InputError
from movement_core.piece.contact.joints import KINDS
from movement_core.piece.joint_table import no_such_kind
from movement_core.piece.tag_sources import merge, tags_from_text, values_by_word
from movement_core.piece.tags import PROPERTY_WORDS
from movement_core.wording import say
from workbench_pkg.actions.tag import properties_from_words
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.leaf import Leaf
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.tagging import read_tags, write_tags
from workbench_pkg.objects.joints import keep_joints, kept_joints

# Words that are true of several boards at once, those of their cut, and those of the one board and how it is drawn.
WOOD_WORDS = ("species", "figure", "finish", "built", "glued", "flattened", "fitted", "kept", "lot")
CUT_WORDS = ("cut", "rings", "radius", "slope")
LIE_WORDS = ("grain", "show", "heart", "pith", "points", "far", "fixed", "looks")

Target = tuple[
    Any, int | None
]  # an object, and the number of an element where it is a link array without objects


def said_of(leaf: Leaf) -> dict[str, object]:
    """What a part says by its properties, and where they are silent by its label, by word."""
    raw = read_tags(leaf)
    by_label = values_by_word(merge(*(tags_from_text(leaf.name, text, "label") for text in raw.texts)))
    by_property = {PROPERTY_WORDS[n]: v for n, v in raw.properties.items() if n in PROPERTY_WORDS}
    return by_label | by_property


def copy_wood(
    source: Any, targets: Iterable[Any], words: Sequence[str] = WOOD_WORDS, element: int | None = None
) -> int:
    """Say of other parts what one part says; returns how many parts it was said of.

    Parameters
    ----------
    source : a document object that is a part; ``element``: the number of its element where it is a link array
        without objects for its elements.
    targets : objects of the same document, or pairs (array, number). The source among them is left alone.
    words : those to copy. What the source does not say stays as it is with the others.

    Raises
    ------
    InputError : the source is no part or says none of the words, or there is no target; nothing is changed then.
    """
    leaf = _leaf_of(source, element)
    said = {word: value for word, value in said_of(leaf).items() if word in words}
    if not said:
        raise InputError(
            say("{name!r} says nothing of its wood that could be copied", name=leaf.name),
            where=say("copying"),
            allowed=", ".join(words),
            todo=say("tag it first"),
        )
    chosen: list[Target] = [one if isinstance(one, tuple) else (one, None) for one in targets]
    chosen = [one for one in chosen if one != (source, element)]
    if not chosen:
        raise InputError(
            say("no other part is chosen"), where=say("copying"), todo=say("select the parts to copy to")
        )
    properties = properties_from_words(said)
    with one_step(source.Document, say("Heartside: copy wood")):
        for obj, number in chosen:
            write_tags(obj, properties, number)
    return len(chosen)


def take_hints(
    doc: Any,
    species: Iterable[tuple[Any, int | None, str]] = (),
    joints: Iterable[tuple[str, str, str]] = (),
) -> None:
    """Say what the host hinted at and the maker agreed to, in one step.

    species : (object, number of an element or None, name of a wood). joints : (key, key, kind) of two parts.

    Raises
    ------
    InputError : a name or a kind that is none, or nothing at all; nothing is changed then.
    """
    woods = [(obj, number, properties_from_words({"species": name})) for obj, number, name in species]
    kinds = {tuple(sorted((one, other))): kind for one, other, kind in joints}
    for kind in kinds.values():
        if kind not in KINDS:
            raise InputError(no_such_kind(kind), where=say("joint"))
    if not woods and not kinds:
        raise InputError(say("no hint is ticked"), where=say("hints"), todo=say("tick those that are right"))
    kept = kept_joints(doc) if kinds else {}
    with one_step(doc, say("Heartside: take hints")):
        for obj, number, properties in woods:
            write_tags(obj, properties, number)
        if kinds:
            there = {pair: kind for pair, kind in kept.items() if tuple(sorted(pair)) not in kinds}
            keep_joints(doc, {**there, **{(one, other): kind for (one, other), kind in kinds.items()}})


def _leaf_of(source: Any, element: int | None) -> Leaf:
    for leaf in read_leaves(source.Document, hidden=True).leaves:
        if leaf.owner == source and leaf.element == element:
            return leaf
    raise InputError(
        say("{name!r} is no part of this document", name=source.Label),
        where=say("copying"),
        todo=say("choose a board to copy from"),
    )
