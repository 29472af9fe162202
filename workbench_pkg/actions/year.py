"""The year of air that a document's piece lives in."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import fields
from typing import Any

from movement_core.air.indoor import Rooms
from movement_core.errors import InputError
from movement_core.wording import say
from workbench_pkg.actions.settings import LoggerAnswers, Settings, air_from_text, settings_from_texts
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.preferences import usual_year
from workbench_pkg.objects.study import (
    ASKED,
    BUILT_ON,
    DATE,
    SHOP,
    YEAR,
    asked_of,
    ensure_study,
    get_text,
    set_asked,
    set_today_moisture,
    study_label,
    today_moisture,
)


def set_year(doc: Any, name: str, answers: Mapping[str, Any] | None = None) -> None:
    """Keep a year in the document: the name of a year or a place of ours, or the path of a file
    of twelve months or of a logger.

    ``answers``: what a logger's file leaves open, by the names of ``LoggerAnswers``.

    Raises UnknownName or InputError, and changes nothing, where there is no such year.
    """
    air_from_text(name, answers=LoggerAnswers(**answers) if answers else None)
    with one_step(doc, say("Heartside: set the year")):
        study = ensure_study(doc)
        # Rooms and answers belonged to the air before, and are not even read.
        kept = {"shop": get_text(doc, SHOP), "built_on": get_text(doc, BUILT_ON)}
        study.HeartsideYear = name
        set_asked(study, {**kept, **({"answers": dict(answers)} if answers else {})})


def keep_today(doc: Any, date: str, moisture: float | None) -> None:
    """Keep the day that the piece is worked out for, and the moisture of its wood on it.

    Parameters
    ----------
    date : YYYY-MM-DD; "" is the day on which it is asked. moisture : percent; None: in step with the year's air.

    Raises
    ------
    InputError : no date, or a moisture that furniture wood does not have; then nothing is changed.
    """
    settings_from_texts(today=date, today_mc=moisture)
    with one_step(doc, say("Heartside: set today")):
        study = ensure_study(doc)
        study.HeartsideDate = date
        set_today_moisture(study, moisture)


def year_of(doc: Any) -> str:
    """What ``set_year`` kept, or an empty text."""
    return get_text(doc, YEAR)


def settings_of(doc: Any) -> Settings:
    """What the document's study asks to be worked out with; what it leaves open is what this user prefers, or the
    usual.

    Raises InputError where what stands in the study cannot be used, or is of a later release.
    """
    asked = asked_of(doc)
    answers, rooms = answers_of(doc), _told_by_name(doc, asked, "rooms", Rooms, _is_number)
    year, date = get_text(doc, YEAR) or usual_year() or None, get_text(doc, DATE) or None
    return settings_from_texts(
        year,
        date,
        today_moisture(doc),
        shop=asked.get("shop"),
        built_on=asked.get("built_on"),
        rooms=rooms,
        answers=LoggerAnswers(**answers) if answers else None,
    )


def answers_of(doc: Any) -> dict[str, Any]:
    """What the study answers to a logger's file, by the names of ``LoggerAnswers``; InputError where it is no such."""
    return _told_by_name(doc, asked_of(doc), "answers", LoggerAnswers, _is_answer)


def _is_number(name: str, value: object) -> bool:
    return isinstance(value, (int, float))


def _is_answer(name: str, value: object) -> bool:
    if name != "columns":
        return isinstance(value, str)
    return isinstance(value, dict) and all(isinstance(each, (int, str)) for each in value.values())


def _told_by_name(
    doc: Any, asked: Mapping[str, Any], word: str, known: Any, fits: Callable[[str, object], bool]
) -> dict[str, Any]:
    """One word of what the study asks, as values by name; a file of somebody else's may hold anything there."""
    said = asked.get(word) or {}
    names = [field.name for field in fields(known)]
    if not isinstance(said, dict) or not all(name in names and fits(name, said[name]) for name in said):
        raise InputError(
            say("{name} says {word} that cannot be used", name=ASKED, word=word),
            where=study_label(doc),
            allowed=", ".join(names),
            todo=say("mend or remove that property"),
        )
    return said


def keep_settings(doc: Any, settings: Settings) -> None:
    """Note in the document's study what it was asked with. The caller opens the transaction."""
    asked = dict(settings.asked)
    if not asked:
        return
    study = ensure_study(doc)
    study.HeartsideYear = asked.pop("year", "")
    study.HeartsideDate = asked.pop("today", "")
    set_today_moisture(study, asked.pop("today_mc", None))
    set_asked(study, asked)
