"""What the user has said about a part: read from typed properties, from a short line of text, or from a CSV file.

The line of text stands anywhere in a label or description::

    Top board 1 wood{white oak; grain x; heart show; pith 0 80; built 9 %}

Items are separated by semicolons. The first names the species or material; each other one is a word and its
value (a space, a colon or an equals sign between). Every word is listed in ``WORDS``. A bad item costs only
itself: it becomes a ``TagProblem`` that names the part, the word and the nearest right one.
"""

from __future__ import annotations

import csv
import difflib
import io
import re
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from movement_core.errors import InputError
from movement_core.moisture.finish import read_faces
from movement_core.wood import Species, figure_effect, find_species

Vector = tuple[float, float, float]

AXES: dict[str, Vector] = {
    "x": (1.0, 0.0, 0.0), "y": (0.0, 1.0, 0.0), "z": (0.0, 0.0, 1.0),
    "-x": (-1.0, 0.0, 0.0), "-y": (0.0, -1.0, 0.0), "-z": (0.0, 0.0, -1.0),
}  # fmt: skip
CUTS = ("flat", "rift", "quarter")
MOISTURES = ("glued", "flattened", "fitted")
GREEN = 30.0


@dataclass(frozen=True)
class TagProblem:
    """A tag that could not be used: in which part, which word, why, and what would be right."""

    part: str
    word: str
    message: str

    def __str__(self) -> str:
        return f"part {self.part!r}: {self.message}"


@dataclass(frozen=True)
class Tags:
    """Everything said about one part. Directions are in the object's own axes; None is *not said*.

    ``heart`` is ``"show"``, ``"back"`` or a direction; ``pith_mm`` is (x, y) in the section frame;
    ``far_pith_mm`` the same at the far end of the grain, ``ring_points_mm`` three points on one ring; ``grain_slope``
    is rise ÷ length of spiral grain; moistures are percent; ``looks`` is how much better the show face looks than
    the back, on the maker's own scale; ``said`` maps each word to the place where it was said.
    """

    species: Species | None = None
    grain: Vector | None = None
    show: Vector | None = None
    cut: str | None = None
    heart: str | Vector | None = None
    ring_angle_deg: float | None = None
    pith_mm: tuple[float, float] | None = None
    far_pith_mm: tuple[float, float] | None = None
    ring_radius_mm: float | None = None
    ring_points_mm: tuple[tuple[float, float], ...] | None = None
    grain_slope: float | None = None
    finish: str | None = None
    figure: str | None = None
    looks: float | None = None
    glued_mc: float | None = None
    flattened_mc: float | None = None
    fitted_mc: float | None = None
    said: Mapping[str, str] = field(default_factory=dict)
    problems: tuple[TagProblem, ...] = ()


# ---- one value ------------------------------------------------------------------------------------------


def _numbers(text: str, count: int, what: str) -> tuple[float, ...]:
    cleaned = re.sub(r"(mm|deg|°|%)", " ", text)
    pieces = cleaned.split() if len(cleaned.split()) == count else re.split(r"[,/\s]+", cleaned.strip(" ,()"))
    try:
        values = tuple(float(piece.strip(",()").replace(",", ".")) for piece in pieces)
    except ValueError:
        values = ()
    if len(values) != count or any(not abs(value) < 1e7 for value in values):
        wanted = "a number" if count == 1 else f"{count} numbers"
        raise InputError(f"{text!r} is not {what}", allowed=wanted, todo=f"write {what}")
    return values


def _ranged(low: float, high: float, what: str, unit: str) -> Callable[[str], float]:
    def parse(text: str) -> float:
        (value,) = _numbers(text, 1, what)
        if not low <= value <= high:
            raise InputError(
                f"{value:g} {unit} is out of range for {what}", allowed=f"{low:g} to {high:g} {unit}"
            )
        return value

    return parse


def _axis(text: str) -> Vector:
    word = text.strip().lower().lstrip("+")
    if word in AXES:
        return AXES[word]
    try:
        x, y, z = _numbers(word, 3, "a direction")
    except InputError:
        raise InputError(
            f"{text!r} is no direction",
            allowed="x, y, z, -x, -y, -z or three numbers, in the object's own axes",
            todo="write for example 'grain x'",
        ) from None
    length = (x * x + y * y + z * z) ** 0.5
    if length < 1e-9:
        raise InputError(f"the direction {text!r} has no length", todo="give a vector that is not zero")
    return (x / length, y / length, z / length)


def _choice(choices: tuple[str, ...], what: str) -> Callable[[str], str]:
    def parse(text: str) -> str:
        word = text.strip().lower()
        if word not in choices:
            raise InputError(
                f"{text!r} is no {what}", allowed=", ".join(choices), todo=_did_you_mean(word, choices)
            )
        return word

    return parse


def _heart(text: str) -> str | Vector:
    word = text.strip().lower()
    if word in ("show", "back"):
        return word
    try:
        return _axis(word)
    except InputError:
        raise InputError(
            f"{text!r} is no side of the part",
            allowed="show, back, or a direction such as +z in the object's own axes",
            todo=_did_you_mean(word, ("show", "back")),
        ) from None


def _pith(text: str) -> tuple[float, float]:
    x, y = _numbers(text, 2, "a pith position (across the width and through the thickness, mm)")
    return (x, y)


def _points(text: str) -> tuple[tuple[float, float], ...]:
    n = _numbers(text, 6, "three points on one ring (x y x y x y, mm)")
    return ((n[0], n[1]), (n[2], n[3]), (n[4], n[5]))


def _figure(text: str) -> str:
    return figure_effect(text.strip().lower()).name


def _finish(text: str) -> str:
    read_faces(text)  # raises for a finish that is not known
    return text.strip()


_moisture = _ranged(0.0, GREEN, "a moisture content of furniture wood", "%")

# word → (field of Tags, parser). "built" sets all three moistures.
WORDS: dict[str, tuple[str, Callable[[str], Any]]] = {
    "species": ("species", find_species),
    "grain": ("grain", _axis),
    "show": ("show", _axis),
    "cut": ("cut", _choice(CUTS, "cut")),
    "heart": ("heart", _heart),
    "rings": ("ring_angle_deg", _ranged(0.0, 90.0, "a ring angle", "degrees")),
    "pith": ("pith_mm", _pith),
    "far": ("far_pith_mm", _pith),
    "radius": ("ring_radius_mm", _ranged(1.0, 100_000.0, "the radius of a ring", "mm")),
    "points": ("ring_points_mm", _points),
    "slope": ("grain_slope", _ranged(-1.0, 1.0, "the slope of spiral grain (rise ÷ length)", "")),
    "finish": ("finish", _finish),
    "figure": ("figure", _figure),
    "looks": ("looks", _ranged(-100.0, 100.0, "how much better the show face looks", "points")),
    "glued": ("glued_mc", _moisture),
    "flattened": ("flattened_mc", _moisture),
    "fitted": ("fitted_mc", _moisture),
    "built": ("built", _moisture),
}


def _did_you_mean(word: str, choices: Iterable[str]) -> str:
    near = difflib.get_close_matches(word, list(choices), 1, 0.5)
    return f"did you mean {near[0]!r}?" if near else ""


# ---- from words to tags ---------------------------------------------------------------------------------


def tags_from_words(part: str, said: Mapping[str, str], where: str) -> Tags:
    """Tags of ``part`` from word → value texts, all said at ``where``; bad ones become problems."""
    tags, problems = Tags(), []
    built: float | None = None
    places: dict[str, str] = {}
    for word, value in said.items():
        try:
            if word not in WORDS:
                raise InputError(
                    f"{word!r} is not a word of ours",
                    allowed=", ".join(WORDS),
                    todo=_did_you_mean(word, WORDS),
                )
            name, parse = WORDS[word]
            parsed = parse(value)
        except InputError as error:
            shown = replace_where(error, f"{where}, word {word!r}")
            problems.append(TagProblem(part, word, str(shown)))
            continue
        if name == "built":
            built = parsed
        else:
            tags = replace(tags, **{name: parsed})
        places[word] = where
    if built is not None:
        for word in MOISTURES:
            if getattr(tags, f"{word}_mc") is None:
                filled: dict[str, Any] = {f"{word}_mc": built}
                tags = replace(tags, **filled)
                places[word] = f"{where}, word 'built'"
    return replace(tags, said=places, problems=tuple(problems))


def replace_where(error: InputError, where: str) -> InputError:
    """The same error at another place."""
    return InputError(error.what, where=where, allowed=error.allowed, todo=error.todo)


_SIGIL = re.compile(r"\bwood\s*\{", re.IGNORECASE)


def tags_from_text(part: str, text: str, where: str) -> Tags:
    """Tags from a label or description; a text without ``wood{`` says nothing."""
    match = _SIGIL.search(text)
    if match is None:
        return Tags()
    end = text.find("}", match.end())
    if end < 0:
        problem = f"{where}: the tag {text[match.start() :]!r} has no closing brace. To do: end it with '}}'."
        return Tags(problems=(TagProblem(part, "wood", problem),))
    said, problems = _split_items(part, text[match.end() : end], where)
    if _SIGIL.search(text, end):
        problems.append(
            TagProblem(part, "wood", f"{where}: a second wood{{…}} is ignored. To do: write one.")
        )
    tags = tags_from_words(part, said, where)
    return replace(tags, problems=(*problems, *tags.problems))


def _split_items(part: str, inside: str, where: str) -> tuple[dict[str, str], list[TagProblem]]:
    said: dict[str, str] = {}
    problems: list[TagProblem] = []
    for position, item in enumerate(piece.strip() for piece in inside.split(";")):
        if not item:
            continue
        match = re.match(r"(\w+)\s*[:=]?\s*(.*)", item)
        word, value = (match.group(1).lower(), match.group(2)) if match else (item, "")
        if position == 0 and (word not in WORDS or _is_species(item)):
            word, value = "species", item
        elif word not in WORDS:
            near = _did_you_mean(word, WORDS)
            message = f"{where}: {word!r} is not a word of ours. Allowed: {', '.join(WORDS)}."
            problems.append(TagProblem(part, word, f"{message} {near}".rstrip()))
            continue
        if word in said:
            problems.append(TagProblem(part, word, f"{where}: {word!r} is said twice; the first counts."))
            continue
        said[word] = value
    return said, problems


def _is_species(text: str) -> bool:
    try:
        find_species(text)
    except InputError:
        return False
    return True


# ---- the three ways in ----------------------------------------------------------------------------------

PROPERTY_WORDS = {
    "HeartsideSpecies": "species",
    "HeartsideGrain": "grain",
    "HeartsideShowFace": "show",
    "HeartsideCut": "cut",
    "HeartsideHeart": "heart",
    "HeartsideRingAngle": "rings",
    "HeartsidePith": "pith",
    "HeartsideFarPith": "far",
    "HeartsideRingRadius": "radius",
    "HeartsideRingPoints": "points",
    "HeartsideGrainSlope": "slope",
    "HeartsideFinish": "finish",
    "HeartsideFigure": "figure",
    "HeartsideLooks": "looks",
    "HeartsideGlued": "glued",
    "HeartsideFlattened": "flattened",
    "HeartsideFitted": "fitted",
    "HeartsideBuilt": "built",
}  # the typed properties of an object, and the word that says the same in text


def tags_from_properties(part: str, properties: Mapping[str, object]) -> Tags:
    """Tags from typed properties (name → plain value); an empty text is *not said*."""
    said = {}
    for name, value in properties.items():
        text = " ".join(f"{float(v)!r}" for v in value) if isinstance(value, (list, tuple)) else str(value)
        if name in PROPERTY_WORDS and text.strip():
            said[PROPERTY_WORDS[name]] = text
    tags = tags_from_words(part, said, "property")
    names = {word: name for name, word in PROPERTY_WORDS.items()}
    return replace(tags, said={w: f"property {names[w]}" if w in said else p for w, p in tags.said.items()})


def tags_from_table(text: str, name: str) -> tuple[dict[str, Tags], tuple[TagProblem, ...]]:
    """Tags by part name from CSV text: a column ``part``, and a column for each word used.

    Returns the tags and the problems of the table itself. Comma or semicolon, found from the heading.

    Raises
    ------
    InputError : no heading with a column ``part``.
    """
    lines = text.lstrip("\ufeff").splitlines()
    heading = lines[0] if lines else ""
    delimiter = ";" if heading.count(";") > heading.count(",") else ","
    reader = csv.reader(io.StringIO("\n".join(lines)), delimiter=delimiter)
    columns = [column.strip().lower() for column in next(reader, [])]
    if "part" not in columns:
        raise InputError(
            f"the heading {heading[:80]!r} has no column 'part'",
            where=f"{name}, line 1",
            allowed="a column 'part' and any of: " + ", ".join(WORDS),
            todo="write the heading in the first line",
        )
    problems = [
        TagProblem(
            "",
            column,
            f"{name}, line 1: {column!r} is not a word of ours. {_did_you_mean(column, WORDS)}".rstrip(),
        )
        for column in columns
        if column not in ("part", *WORDS)
    ]
    result: dict[str, Tags] = {}
    for cells in reader:
        row = dict(zip(columns, (cell.strip() for cell in cells)))
        part = row.pop("part", "")
        where = f"{name}, line {reader.line_num}"
        if not part:
            if any(row.values()):
                problems.append(TagProblem("", "part", f"{where}: the row names no part."))
            continue
        if part in result:
            problems.append(
                TagProblem(part, "part", f"{where}: {part!r} stands here twice; the first counts.")
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


def without_tag(text: str) -> str:
    """A label with its tag taken out: what a maker calls the part."""
    match = _SIGIL.search(text)
    if match is None:
        return text
    end = text.find("}", match.end())
    rest = text[: match.start()] + (text[end + 1 :] if end >= 0 else "")
    return " ".join(rest.split()) or text


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
        ring_points_mm=None if points is None else tuple((sign * x, y) for x, y in points),
        grain_slope=None if tags.grain_slope is None else sign * tags.grain_slope,
        said={word: f"{place} of {of}" for word, place in tags.said.items()},
    )
