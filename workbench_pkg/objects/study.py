"""The study: one object a document, holding what the piece is studied with.

It is a plain feature with plain properties:

HeartsideYear           name of the year of air, or the path of a CSV file of twelve months; "" is the usual one
HeartsideDate           day of the check, YYYY-MM-DD; "" is the day on which it is asked
HeartsideTodayMoisture  moisture content of the wood on that day, percent; absent where nobody measured it
HeartsideShop           air of the shop, named like the year, and
HeartsideBuiltOn        the day the piece was built there, YYYY-MM-DD; absent where nobody said
HeartsideFlatness       the most that a top may be out of flat, shown in the host's unit; absent: the usual
HeartsideAsked          what else the air was asked with, as JSON: rooms, answers to a logger; absent where nothing
HeartsideParts          the objects of the last answer, as hidden links: recomputing, deleting and copying the model
                        does not know of them
HeartsideForAnswer      there where an answer made the study, so that it goes with the answer if nothing else is in it

The parts are not claimed as children: the host's tree would take them out of their place and put them below the study.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any

import FreeCAD as App

from movement_core.errors import InputError
from movement_core.wording import say
from workbench_pkg.host.marks import (
    CURRENT_SCHEMA,
    NO_RECOMPUTE,
    SCHEMA,
    add_property,
    explained,
    kind_of,
    mark,
    objects_of_kind,
    refuse_newer,
    schema_of,
)
from workbench_pkg.host.preferences import usual_flatness_mm
from workbench_pkg.host.relations import KIND_PROPERTY
from workbench_pkg.objects.proxies import Study, StudyView

KIND = "study"
YEAR, DATE, TODAY, ASKED = "HeartsideYear", "HeartsideDate", "HeartsideTodayMoisture", "HeartsideAsked"
SHOP, BUILT_ON, FLATNESS = "HeartsideShop", "HeartsideBuiltOn", "HeartsideFlatness"
PARTS, FOR_ANSWER = "HeartsideParts", "HeartsideForAnswer"
HIDDEN = 4
_TEXTS = {
    YEAR: explained("Year of air that the piece lives in"),
    DATE: explained("Day of the check, YYYY-MM-DD; empty: the day on which it is asked"),
}
_EXPLAINED = {
    TODAY: explained("Moisture content of the wood on that day, percent"),
    SHOP: explained("Air of the shop in which the piece was built"),
    BUILT_ON: explained("Day on which the piece was built, YYYY-MM-DD"),
    FLATNESS: explained("The most that a top may be out of flat"),
    ASKED: explained("What else the air was asked with: rooms of a place, answers to a logger's file"),
    PARTS: explained("What the last answer is about"),
}
_WORDS = {"shop": SHOP, "built_on": BUILT_ON}  # words of the settings that have a property of their own


def find_study(doc: Any) -> Any | None:
    """The study of a document, or None."""
    found = objects_of_kind(doc, KIND)
    return found[0] if found else None


def known_study(doc: Any) -> Any | None:
    """The study of a document, or None, to read or to write what stands in it.

    Raises InputError where it is of a later release: it may mean something else there.
    """
    obj = find_study(doc)
    refuse_newer([] if obj is None else [obj])
    return obj


def study_label(doc: Any) -> str:
    """What the document calls its study, to say where something is wrong."""
    obj = find_study(doc)
    return "" if obj is None else str(obj.Label)


def ensure_study(doc: Any) -> Any:
    """The study of a document, made where there is none. The caller opens the transaction.

    Raises InputError where it is of a later release.
    """
    obj = known_study(doc)
    if obj is None:
        obj = doc.addObject("App::FeaturePython", "HeartsideStudy")
        obj.Label = say("Heartside study")
        mark(obj, KIND)
        _complete(obj)
        attach(obj)
        obj.purgeTouched()  # it has nothing to compute
    return obj


def attach(obj: Any) -> None:
    """Give a study its Python side again where a host without the add-on has dropped it."""
    if not isinstance(obj.Proxy, Study):
        touched = "Touched" in obj.State
        Study(obj)
        if not touched:
            obj.purgeTouched()
    if App.GuiUp and obj.ViewObject is not None and not isinstance(obj.ViewObject.Proxy, StudyView):
        StudyView(obj.ViewObject)


def migrate(obj: Any) -> None:
    """Bring a study of an older release up to the form of this one; a newer one is left as it is.

    Raises InputError where its form cannot be told.
    """
    if kind_of(obj) != KIND or schema_of(obj) > CURRENT_SCHEMA:
        return
    _complete(obj)
    if schema_of(obj) < CURRENT_SCHEMA:
        mark(obj, KIND)


def get_text(doc: Any, name: str) -> str:
    """Text of a property of the document's study; "" where there is no study. Raises as ``known_study`` does."""
    obj = known_study(doc)
    return str(getattr(obj, name)) if obj is not None and name in obj.PropertiesList else ""


def today_moisture(doc: Any) -> float | None:
    """Moisture content of the wood on the day of the check, percent, or None."""
    return _number(known_study(doc), TODAY)


def asked_of(doc: Any) -> dict[str, Any]:
    """What else the study was asked with: rooms, shop, day it was built, answers to a logger's file.

    Raises InputError where the property holds no such thing, or the study is of a later release.
    """
    text = get_text(doc, ASKED)
    asked: dict[str, Any] | None = {}
    try:
        asked = json.loads(text) if text else {}
    except (ValueError, RecursionError):
        asked = None
    if asked is None or not _is_asked(asked):
        raise InputError(
            say("{name} does not say what the air was asked with", name=ASKED),
            where=study_label(doc),
            allowed=say("JSON like {example}", example='{"rooms": {"heating_c": 20.0}}'),
            todo=say("mend or remove that property"),
        )
    for word, name in _WORDS.items():
        text = get_text(doc, name)
        if text:
            asked[word] = text
    return asked


def set_asked(obj: Any, asked: Mapping[str, Any]) -> None:
    """Note what else the study was asked with; nothing takes it away."""
    others = {word: value for word, value in asked.items() if word not in _WORDS}
    for word, name in _WORDS.items():
        _set_or_remove(obj, "App::PropertyString", name, asked.get(word) or None, _EXPLAINED[name])
    text = json.dumps(others, ensure_ascii=False) if others else None
    _set_or_remove(obj, "App::PropertyString", ASKED, text, _EXPLAINED[ASKED])


def set_today_moisture(obj: Any, percent: float | None) -> None:
    """Note the moisture of the day; None takes it away."""
    _set_or_remove(obj, "App::PropertyFloat", TODAY, percent, _EXPLAINED[TODAY])


def flatness_mm(doc: Any) -> float | None:
    """The most that a top of the document may be out of flat, mm, else what this user prefers; None is the usual."""
    said = _number(known_study(doc), FLATNESS)
    return usual_flatness_mm() if said is None else said


def set_flatness(obj: Any, most_mm: float | None) -> None:
    """Note how flat a top is to stay; None takes it away."""
    _set_or_remove(obj, "App::PropertyLength", FLATNESS, most_mm, _EXPLAINED[FLATNESS])


def set_parts(obj: Any, parts: Iterable[Any]) -> None:
    """Note the objects that an answer is about; those of other documents are left out. None take the list away."""
    own = [part for part in dict.fromkeys(parts) if part.Document == obj.Document]
    _set_or_remove(obj, "App::PropertyLinkListHidden", PARTS, own or None, _EXPLAINED[PARTS])


def parts_of(obj: Any) -> list[Any]:
    """The objects that the last answer is about."""
    return list(getattr(obj, PARTS)) if PARTS in obj.PropertiesList else []


def study_for_answer(doc: Any) -> Any:
    """The study of a document; one that is made here goes again with the answer. The caller opens the transaction."""
    found = known_study(doc)
    if found is not None:
        return found
    made = ensure_study(doc)
    add_property(
        made,
        "App::PropertyBool",
        FOR_ANSWER,
        explained("Made by an answer, and goes with it"),
        NO_RECOMPUTE | HIDDEN,
    )
    setattr(made, FOR_ANSWER, True)
    return made


def drop_answer(doc: Any) -> None:
    """Take the links of an answer off the study, and the study where nothing but the answer made it."""
    obj = known_study(doc)
    if obj is None:
        return
    set_parts(obj, ())
    if FOR_ANSWER in obj.PropertiesList and not _says_anything(obj):
        doc.removeObject(obj.Name)


def _says_anything(obj: Any) -> bool:
    ours = {KIND_PROPERTY, SCHEMA, FOR_ANSWER}
    said = [name for name in obj.PropertiesList if name.startswith("Heartside") and name not in ours]
    return any(getattr(obj, name) for name in said)


def _is_asked(asked: Any) -> bool:
    """Whether something read from JSON has the form of what was asked; an early release kept the shop in there too."""
    if not isinstance(asked, dict) or not set(asked) <= {"rooms", "answers", *_WORDS}:
        return False
    return all(isinstance(asked.get(word, ""), str) for word in _WORDS)


def _number(obj: Any | None, name: str) -> float | None:
    """A number of a study, None where it is not said. The property may be of any type in a file of somebody else's."""
    if obj is None or name not in obj.PropertiesList:
        return None
    value = getattr(obj, name)
    try:
        return float(value)
    except (TypeError, ValueError):
        raise InputError(
            say("{name} is {value!r}, which is no number", name=name, value=str(value)),
            where=obj.Label,
            todo=say("mend or remove that property"),
        ) from None


def _set_or_remove(obj: Any, kind: str, name: str, value: Any, explanation: str) -> None:
    if value is None:
        if name in obj.PropertiesList:
            obj.removeProperty(name)
        return
    add_property(obj, kind, name, explanation)
    setattr(obj, name, value)


def _complete(obj: Any) -> None:
    for name, explanation in _TEXTS.items():
        add_property(obj, "App::PropertyString", name, explanation)
