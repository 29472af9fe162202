"""The ways in which a user says what a part is: typed properties, a short line of text, a CSV file beside the model.

The line of text stands anywhere in a label or description::

    Top board 1 wood{white oak; grain x; heart show; pith 0 80; built 9 %}

Items are separated by semicolons. The first names the species or material; each other one is a word and its value
(a space, a colon or an equals sign between).
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Any

from movement_core.errors import InputError
from movement_core.piece.tags import (
    AXES,
    PROPERTY_WORDS,
    WORDS,
    TagProblem,
    Tags,
    Vector,
    did_you_mean,
    tags_from_words,
)
from movement_core.tables import delimiter_of, read_cells
from movement_core.wood import find_species
from movement_core.wording import say

_SIGIL = re.compile(r"\bwood\s*\{", re.IGNORECASE)


def tags_from_text(part: str, text: str, where: str) -> Tags:
    """Tags from a label or description; a text without ``wood{`` says nothing."""
    match = _SIGIL.search(text)
    if match is None:
        return Tags()
    end = text.find("}", match.end())
    if end < 0:
        problem = say(
            "{where}: the tag {text!r} has no closing brace. To do: end it with '}}'.",
            where=where,
            text=text[match.start() :],
        )
        return Tags(problems=(TagProblem(part, "wood", problem),))
    said, problems = _split_items(part, text[match.end() : end], where)
    if _SIGIL.search(text, end):
        problems.append(
            TagProblem(
                part, "wood", say("{where}: a second wood{{…}} is ignored. To do: write one.", where=where)
            )
        )
    tags = tags_from_words(part, said, where)
    return replace(tags, problems=(*problems, *tags.problems))


MOST_TOLD = 20  # words of one tag that are no words of ours and are told one by one


def _split_items(part: str, inside: str, where: str) -> tuple[dict[str, str], list[TagProblem]]:
    """Word → value of the items of a tag, and what is wrong with them; each word is told once."""
    said: dict[str, str] = {}
    unknown: dict[str, None] = {}
    twice: dict[str, None] = {}
    for position, item in enumerate(piece.strip() for piece in inside.split(";")):
        if not item:
            continue
        match = re.match(r"(\w+)\s*[:=]?\s*(.*)", item)
        word, value = (match.group(1).lower(), match.group(2)) if match else (item, "")
        if position == 0 and (word not in WORDS or _is_species(item)):
            word, value = "species", item
        if word not in WORDS:
            unknown[word] = None
        elif word in said:
            twice[word] = None
        else:
            said[word] = value
    told = [_not_ours(part, word, where) for word in list(unknown)[:MOST_TOLD]]
    if len(unknown) > MOST_TOLD:
        count = len(unknown) - MOST_TOLD
        told.append(
            TagProblem(part, "", say("{where}: {count} more words are not ours", where=where, count=count))
        )
    told += [
        TagProblem(
            part, word, say("{where}: {word!r} is said twice; the first counts.", where=where, word=word)
        )
        for word in twice
    ]
    return said, told


def _not_ours(part: str, word: str, where: str) -> TagProblem:
    near = did_you_mean(word, WORDS)
    message = say(
        "{where}: {word!r} is not a word of ours. Allowed: {names}.",
        where=where,
        word=word,
        names=", ".join(WORDS),
    )
    return TagProblem(part, word, f"{message} {near}".rstrip())


def _is_species(text: str) -> bool:
    try:
        find_species(text)
    except InputError:
        return False
    return True


def without_tag(text: str) -> str:
    """A label with its tag taken out: what a maker calls the part."""
    match = _SIGIL.search(text)
    if match is None:
        return text
    end = text.find("}", match.end())
    rest = text[: match.start()] + (text[end + 1 :] if end >= 0 else "")
    return " ".join(rest.split()) or text


def tags_from_properties(part: str, properties: Mapping[str, object]) -> Tags:
    """Tags from typed properties (name → plain value); an empty text is *not said*."""
    said = {}
    for name, value in properties.items():
        text = " ".join(f"{float(v)!r}" for v in value) if isinstance(value, (list, tuple)) else str(value)
        if name in PROPERTY_WORDS and text.strip():
            said[PROPERTY_WORDS[name]] = text
    tags = tags_from_words(part, said, "property")
    names = {word: name for name, word in PROPERTY_WORDS.items()}
    return replace(
        tags,
        said={w: say("property {names}", names=names[w]) if w in said else p for w, p in tags.said.items()},
    )


def tags_from_table(text: str, name: str) -> tuple[dict[str, Tags], tuple[TagProblem, ...]]:
    """Tags by part name from CSV text: a column ``part``, and a column for each word used.

    Returns the tags and the problems of the table itself. Comma or semicolon, found from the heading.

    Raises
    ------
    InputError : no heading with a column ``part``.
    """
    lines = text.lstrip("\ufeff").splitlines()
    heading = lines[0] if lines else ""
    delimiter = delimiter_of(heading)
    reader = read_cells(lines, delimiter, name)
    columns = [column.strip().lower() for column in next(reader, (1, []))[1]]
    if "part" not in columns:
        raise InputError(
            say("the heading {heading!r} has no column 'part'", heading=heading[:80]),
            where=say("{name}, line 1", name=name),
            allowed=say("a column 'part' and any of: ") + ", ".join(WORDS),
            todo=say("write the heading in the first line"),
        )
    problems = [
        TagProblem(
            "",
            column,
            say(
                "{name}, line 1: {column!r} is not a word of ours. {did_you_mean}",
                name=name,
                column=column,
                did_you_mean=did_you_mean(column, WORDS),
            ).rstrip(),
        )
        for column in columns
        if column not in ("part", *WORDS)
    ]
    result: dict[str, Tags] = {}
    for line, cells in reader:
        row = dict(zip(columns, (cell.strip() for cell in cells)))
        part = row.pop("part", "")
        where = say("{name}, line {line}", name=name, line=line)
        if len(cells) > len(columns):
            message = say(
                "{where}: {count} cells under a heading of {count2}, so nothing of the row is read. To "
                "do: put cells with a {delimiter} in them in quotes, and write decimals with a point",
                where=where,
                count=len(cells),
                count2=len(columns),
                delimiter=delimiter,
            )
            problems.append(TagProblem(part, "", message))
            continue
        if not part:
            if any(row.values()):
                problems.append(TagProblem("", "part", say("{where}: the row names no part.", where=where)))
            continue
        if part in result:
            problems.append(
                TagProblem(
                    part,
                    "part",
                    say("{where}: {part!r} stands here twice; the first counts.", where=where, part=part),
                )
            )
            continue
        result[part] = tags_from_words(part, {w: v for w, v in row.items() if v and w in WORDS}, where)
    return result, tuple(problems)


def merge(*tags: Tags) -> Tags:
    """One set of tags from several, the earlier outranking the later; problems of all are kept."""
    result = Tags()
    for one in tags:
        filled = {
            name: getattr(one, name)
            for name in Tags.__dataclass_fields__
            if name not in ("said", "problems") and getattr(result, name) is None
        }
        said = {**one.said, **result.said}
        result = replace(result, **filled, said=said, problems=(*result.problems, *one.problems))
    return result


def turned(tags: Tags, turn: Sequence[Sequence[float]], of: str) -> Tags:
    """Tags said of another object, in the axes of this one.

    ``turn`` (3, 3): a direction of the other's axes, as a row, times ``turn`` is the direction here. Where its
    determinant is negative a mirror lies between the two, and the section frame's x runs the other way. ``of`` names
    the other object in the places where things were said.
    """
    rows = [[float(v) for v in row] for row in turn]

    def direction(vector: Vector | None) -> Vector | None:
        if vector is None:
            return None
        x, y, z = (sum(vector[i] * rows[i][j] for i in range(3)) for j in range(3))
        return (x, y, z)

    (a, b, c), (d, e, f), (g, h, i) = rows
    mirrored = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g) < 0
    sign = -1.0 if mirrored else 1.0

    def point(pair: tuple[float, float] | None) -> tuple[float, float] | None:
        return None if pair is None else (sign * pair[0], pair[1])

    points = tags.ring_points_mm
    return replace(
        tags,
        grain=direction(tags.grain),
        show=direction(tags.show),
        heart=tags.heart if tags.heart is None or isinstance(tags.heart, str) else direction(tags.heart),
        pith_mm=point(tags.pith_mm),
        far_pith_mm=point(tags.far_pith_mm),
        fixed=sign * tags.fixed if isinstance(tags.fixed, float) else direction(tags.fixed),
        ring_points_mm=None if points is None else tuple((sign * x, y) for x, y in points),
        grain_slope=None if tags.grain_slope is None else sign * tags.grain_slope,
        said={word: f"{place} of {of}" for word, place in tags.said.items()},
    )


def values_by_word(tags: Tags) -> dict[str, object]:
    """What tags say, by word, as the typed properties would hold it: for showing beside them."""
    values: dict[str, object] = {}
    for word, place in tags.said.items():
        if place.endswith("word 'built'"):
            continue
        value: Any = tags.fitted_mc if word == "built" else getattr(tags, WORDS[word][0])
        if word == "species" and tags.species is not None:
            value = tags.species.name
        elif word == "fixed" and isinstance(value, float):
            value = f"{value:g}" if value else "centre"
        elif word in ("grain", "show", "heart", "fixed") and not isinstance(value, str):
            axis = next((name for name, vector in AXES.items() if vector == value), None)
            value = axis or ",".join(f"{v:g}" for v in value)
        values[word] = value
    return values
