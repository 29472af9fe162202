"""Say what parts are made of, and take it back: typed properties of the objects, one undo step."""

from __future__ import annotations

import reprlib
from collections.abc import Iterable, Mapping
from typing import Any

import numpy as np

from movement_core.errors import InputError
from movement_core.piece.tags import PROPERTY_WORDS, WORDS, Tags, tags_from_words
from movement_core.wording import say
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.tagging import remove_tags, write_tags

_PROPERTIES = {word: name for name, word in PROPERTY_WORDS.items()}
_POINTS = {"pith": "pith_mm", "far": "far_pith_mm", "points": "ring_points_mm"}  # word → field of Tags
_NUMBERS = {  # word → field of Tags
    "rings": "ring_angle_deg",
    "glued": "glued_mc",
    "flattened": "flattened_mc",
    "fitted": "fitted_mc",
    "built": "fitted_mc",
    "looks": "looks",
    "radius": "ring_radius_mm",
    "slope": "grain_slope",
}


def tag(objects: Any, element: int | None = None, **facts: object) -> None:
    """Set facts on objects of one document.

    Parameters
    ----------
    objects : a document object or several; for a link the instance is tagged, not what it links to. A pair
        ``(array, number)`` stands for one element (from 0) of a link array without objects for its elements.
    element : the number for all the objects, where they are such arrays.
    facts : by the words of a tag: ``tag(top, species="white oak", grain="x", built=9)``. None takes a fact away.

    Raises
    ------
    InputError : no object, an unknown word, or a value that cannot be used; then nothing is changed.
    """
    chosen = _chosen(objects, element, "tag")
    properties = properties_from_words(facts)
    with one_step(chosen[0][0].Document, say("Heartside: tag")):
        for obj, number in chosen:
            write_tags(obj, properties, number)


def tag_each(parts: Iterable[tuple[Any, int | None, Mapping[str, object]]]) -> None:
    """Set facts of their own on each of several parts of one document, in one step.

    parts : (object, number of the element of a link array or None, facts by the words of a tag).

    Raises
    ------
    InputError : as ``tag``; then nothing is changed.
    """
    given = list(parts)
    chosen = _chosen([(obj, number) if number is not None else obj for obj, number, _ in given], None, "tag")
    properties = [properties_from_words(facts) for _, _, facts in given]
    with one_step(chosen[0][0].Document, say("Heartside: tag")):
        for (obj, number), facts in zip(chosen, properties):
            write_tags(obj, facts, number)


def untag(objects: Any, element: int | None = None) -> None:
    """Take all typed facts off a document object or several; text in labels is the user's and stays."""
    chosen = _chosen(objects, element, "untag")
    with one_step(chosen[0][0].Document, say("Heartside: untag")):
        for obj, number in chosen:
            remove_tags(obj, number)


def _chosen(objects: Any, element: int | None, where: str) -> list[tuple[Any, int | None]]:
    """The objects with their element numbers; InputError for what is none, and for objects of several documents."""
    allowed = say("a document object, or several of one document")
    if _is_object(objects):
        return [(objects, element)]
    if objects is None or isinstance(objects, (str, bytes)) or not isinstance(objects, Iterable):
        raise InputError(
            say("{given} is no part", given=reprlib.repr(objects)),
            where=where,
            allowed=allowed,
            todo=say("give the object itself"),
        )
    chosen: list[tuple[Any, int | None]] = []
    for one in objects:
        pair = isinstance(one, tuple) and len(one) == 2 and isinstance(one[1], int)
        obj, number = one if pair else (one, element)
        if not _is_object(obj):
            raise InputError(
                say("{given} is no part", given=reprlib.repr(obj)),
                where=where,
                allowed=allowed,
                todo=say("give the objects themselves"),
            )
        if chosen and obj.Document != chosen[0][0].Document:
            raise InputError(
                say("{name!r} is of another document", name=obj.Label), where=where, allowed=allowed
            )
        chosen.append((obj, number))
    if not chosen:
        raise InputError(say("no part is chosen"), where=where, todo=say("select one or more parts first"))
    return chosen


def _is_object(thing: Any) -> bool:
    try:
        return hasattr(thing, "PropertiesList") and hasattr(thing, "Document")
    except ReferenceError:  # it has been deleted
        return False


def properties_from_words(facts: Mapping[str, object]) -> dict[str, object]:
    """Property name → value for facts given by word, each checked; InputError names every bad one."""
    said = {word: as_text(value) for word, value in facts.items() if value is not None}
    tags = tags_from_words("", said, "tag")
    if tags.problems:
        raise InputError("; ".join(problem.message.rstrip(".") for problem in tags.problems))
    unknown = [word for word in facts if word not in WORDS]
    if unknown:
        raise InputError(say("{word!r} is not a word of ours", word=unknown[0]), allowed=", ".join(WORDS))
    return {_PROPERTIES[word]: _value(word, value, said.get(word, ""), tags) for word, value in facts.items()}


def as_text(value: Any) -> str:
    """A value as the text of a tag: numbers, however nested, one after the other."""
    if isinstance(value, str):
        return value
    try:
        rows = [np.ravel(np.asarray(row if np.isscalar(row) else list(row), dtype=float)) for row in value]
        numbers = np.concatenate(rows)
    except (TypeError, ValueError):
        return str(value)  # a number, or what is refused where it is read, with the word it was given for
    return " ".join(repr(float(v)) for v in numbers)


def _value(word: str, given: object, text: str, tags: Tags) -> object:
    if given is None:
        return None
    if word in _POINTS:
        return [float(v) for v in np.ravel(getattr(tags, _POINTS[word]))]
    if word == "species":
        return tags.species.name if tags.species else None
    if word in _NUMBERS:
        return getattr(tags, _NUMBERS[word])
    return text.strip()
