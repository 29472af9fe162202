"""What the user has said about a part: the words, their values, and the tags they come to.

Every word is listed in ``WORDS``, and the typed property that says the same in ``PROPERTY_WORDS``. A bad item costs
only itself: it becomes a ``TagProblem`` that names the part, the word and the nearest right one. How words reach us
(properties, a line of text, a table) stands in ``tag_sources``.
"""

from __future__ import annotations

import difflib
import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

from movement_core.air.indoor import Rooms
from movement_core.air.places import find_place
from movement_core.air.presets import find_year
from movement_core.air.year import Year
from movement_core.errors import InputError, UnknownName
from movement_core.moisture.finish import read_faces
from movement_core.wood import Species, figure_effect, find_species
from movement_core.wording import phrase, say
from movement_core.wording import word as told

Vector = tuple[float, float, float]

AXES: dict[str, Vector] = {
    "x": (1.0, 0.0, 0.0), "y": (0.0, 1.0, 0.0), "z": (0.0, 0.0, 1.0),
    "-x": (-1.0, 0.0, 0.0), "-y": (0.0, -1.0, 0.0), "-z": (0.0, 0.0, -1.0),
}  # fmt: skip
CUTS = ("flat", "rift", "quarter")
MOISTURES = ("glued", "flattened", "fitted")
GREEN = 30.0
DRIEST = 2.0  # percent; no wood of furniture was drier when it was worked (own): 0.09 was meant as 9 %


@dataclass(frozen=True)
class TagProblem:
    """A tag that could not be used: in which part, which word, why, and what would be right."""

    part: str
    word: str
    message: str

    def __str__(self) -> str:
        return say("part {part!r}: {message}", part=self.part, message=self.message)


@dataclass(frozen=True)
class Tags:
    """Everything said about one part. Directions are in the object's own axes; None is *not said*.

    ``heart`` is ``"show"``, ``"back"`` or a direction; ``pith_mm`` is (x, y) in the section frame;
    ``far_pith_mm`` the same at the far end of the grain, ``ring_points_mm`` three points on one ring; ``grain_slope``
    is rise ÷ length of spiral grain; moistures are percent; ``looks`` is how much better the show face looks than
    the back, on the maker's own scale; ``kept`` is the air of where it is kept while it is not in use; ``lot`` names
    the boards it was cut from; ``fixed`` is
    the line that is held across the width, in mm from the middle or as the direction of an edge; ``said`` maps each
    word to the place where it was said.
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
    kept: Year | None = None
    lot: str | None = None
    fixed: float | Vector | None = None
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
        wanted = say("a number") if count == 1 else say("{count} numbers", count=count)
        raise InputError(
            say("{text!r} is not {what}", text=text, what=what),
            allowed=wanted,
            todo=say("write {what}", what=what),
        )
    return values


def _ranged(low: float, high: float, what: str, unit: str, todo: str = "") -> Callable[[str], float]:
    def parse(text: str) -> float:
        (value,) = _numbers(text, 1, told(what))
        if not low <= value <= high:
            raise InputError(
                say("{value:g} {unit} is out of range for {what}", value=value, unit=unit, what=told(what)),
                allowed=say("{low:g} to {high:g} {unit}", low=low, high=high, unit=unit),
                todo=told(todo) if todo else "",
            )
        return value

    return parse


def _axis(text: str) -> Vector:
    word = text.strip().lower().lstrip("+")
    if word in AXES:
        return AXES[word]
    try:
        x, y, z = _numbers(word, 3, say("a direction"))
    except InputError:
        raise InputError(
            say("{text!r} is no direction", text=text),
            allowed=say("x, y, z, -x, -y, -z or three numbers, in the object's own axes"),
            todo=say("write for example 'grain x'"),
        ) from None
    length = (x * x + y * y + z * z) ** 0.5
    if length < 1e-9:
        raise InputError(
            say("the direction {text!r} has no length", text=text), todo=say("give a vector that is not zero")
        )
    return (x / length, y / length, z / length)


def _choice(choices: tuple[str, ...], what: str) -> Callable[[str], str]:
    def parse(text: str) -> str:
        word = text.strip().lower()
        if word not in choices:
            raise InputError(
                say("{text!r} is no {what}", text=text, what=what),
                allowed=", ".join(choices),
                todo=did_you_mean(word, choices),
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
            say("{text!r} is no side of the part", text=text),
            allowed=say("show, back, or a direction such as +z in the object's own axes"),
            todo=did_you_mean(word, ("show", "back")),
        ) from None


def _pith(text: str) -> tuple[float, float]:
    x, y = _numbers(text, 2, say("a pith position (across the width and through the thickness, mm)"))
    return (x, y)


def _points(text: str) -> tuple[tuple[float, float], ...]:
    n = _numbers(text, 6, say("three points on one ring (x y x y x y, mm)"))
    return ((n[0], n[1]), (n[2], n[3]), (n[4], n[5]))


def _figure(text: str) -> str:
    return figure_effect(text.strip().lower()).name


def _finish(text: str) -> str:
    read_faces(text)  # raises for a finish that is not known
    return text.strip()


def _fixed(text: str) -> float | Vector:
    word = text.strip().lower()
    if word in ("centre", "center", "middle"):
        return 0.0
    try:
        return (
            _axis(word) if word.lstrip("+") in AXES else _numbers(word, 1, say("a place across the width"))[0]
        )
    except InputError:
        raise InputError(
            say("{text!r} is no place across the width", text=text),
            allowed=say(
                "centre, an edge as a direction such as +y in the object's own axes, or mm from the middle"
            ),
            todo=did_you_mean(word, ("centre",)),
        ) from None


def _lot(text: str) -> str:
    if not text.strip():
        raise InputError(
            say("a lot without a name"), allowed=say("any word"), todo=say("write for example 'lot 7'")
        )
    return text.strip()


def _kept(text: str) -> Year:
    """The air of a year, or indoors at a place, by its name."""
    try:
        return find_year(text.strip())
    except UnknownName as no_year:
        try:
            return find_place(text.strip()).indoors(Rooms())
        except UnknownName as no_place:
            near = (*no_year.nearest[:2], *no_place.nearest[:2])
            raise UnknownName(
                say("no year of air and no place is called {text!r}", text=text),
                nearest=near,
                allowed=say("nearest: {names}", names="; ".join(near))
                if near
                else say("the name of a year of air, or of a place"),
            ) from None


_moisture = _ranged(
    DRIEST,
    GREEN,
    phrase("a moisture content of furniture wood"),
    "%",
    phrase("write percent, such as 9 for 9 %"),
)

# word → (field of Tags, parser). "built" sets all three moistures.
WORDS: dict[str, tuple[str, Callable[[str], Any]]] = {
    "species": ("species", find_species),
    "grain": ("grain", _axis),
    "show": ("show", _axis),
    "cut": ("cut", _choice(CUTS, "cut")),
    "heart": ("heart", _heart),
    "rings": ("ring_angle_deg", _ranged(0.0, 90.0, phrase("a ring angle"), "degrees")),
    "pith": ("pith_mm", _pith),
    "far": ("far_pith_mm", _pith),
    "radius": ("ring_radius_mm", _ranged(1.0, 100_000.0, phrase("the radius of a ring"), "mm")),
    "points": ("ring_points_mm", _points),
    "slope": ("grain_slope", _ranged(-1.0, 1.0, phrase("the slope of spiral grain (rise ÷ length)"), "")),
    "finish": ("finish", _finish),
    "figure": ("figure", _figure),
    "looks": ("looks", _ranged(-100.0, 100.0, phrase("how much better the show face looks"), "points")),
    "glued": ("glued_mc", _moisture),
    "flattened": ("flattened_mc", _moisture),
    "fitted": ("fitted_mc", _moisture),
    "built": ("built", _moisture),
    "kept": ("kept", _kept),
    "fixed": ("fixed", _fixed),
    "lot": ("lot", _lot),
}


SIMILAR = (
    0.78  # of a word that is offered in place of another: "grian" of "grain" is, "faser" of "far" is not
)


def did_you_mean(word: str, choices: Iterable[str]) -> str:
    near = difflib.get_close_matches(word, list(choices), 1, SIMILAR)
    return say("did you mean {near!r}?", near=near[0]) if near else ""


# ---- from words to tags ---------------------------------------------------------------------------------


def tags_from_words(part: str, said: Mapping[str, str], where: str) -> Tags:
    """Tags of ``part`` from word → value texts, all said at ``where``; bad ones become problems."""
    facts: dict[str, Any] = {}
    problems = []
    built: float | None = None
    places: dict[str, str] = {}
    for word, value in said.items():
        try:
            if word not in WORDS:
                raise InputError(
                    say("{word!r} is not a word of ours", word=word),
                    allowed=", ".join(WORDS),
                    todo=did_you_mean(word, WORDS),
                )
            name, parse = WORDS[word]
            parsed = parse(value)
        except InputError as error:
            shown = replace_where(error, say("{where}, word {word!r}", where=where, word=word))
            problems.append(TagProblem(part, word, str(shown)))
            continue
        if name == "built":
            built = parsed
        else:
            facts[name] = parsed
        places[word] = where
    if built is not None:
        for word in MOISTURES:
            if facts.get(f"{word}_mc") is None:
                facts[f"{word}_mc"] = built
                places[word] = say("{where}, word 'built'", where=where)
    return Tags(**facts, said=places, problems=tuple(problems))


def replace_where(error: InputError, where: str) -> InputError:
    """The same error at another place."""
    return InputError(error.what, where=where, allowed=error.allowed, todo=error.todo)


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
    "HeartsideKept": "kept",
    "HeartsideFixed": "fixed",
    "HeartsideLot": "lot",
}  # the typed properties of an object, and the word that says the same in text
