"""What an analysis is asked with: the air of the place, the day, the wood's moisture today, the shop."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from dataclasses import asdict, dataclass, field
from pathlib import Path
from typing import Any

from movement_core import Year, find_year
from movement_core.air.bounds import within
from movement_core.air.daily import DailyAir
from movement_core.air.indoor import Rooms
from movement_core.air.logger import read_logger
from movement_core.air.logger_days import logged_days, logged_year
from movement_core.air.months_table import is_months_table, year_from_table
from movement_core.air.places import find_place
from movement_core.errors import FileError, InputError, UnknownName
from movement_core.piece.part import Shop
from movement_core.piece.tags import GREEN
from movement_core.wording import say, word
from workbench_pkg.host.plain_reading import read_plain

Air = Year | DailyAir

DEFAULT_YEAR = "heated cold-winter home"
FILES = (".csv", ".txt", ".tsv", ".log")


@dataclass(frozen=True)
class LoggerAnswers:
    """What a logger's file may leave open.

    Attributes
    ----------
    date_order : "ymd", "dmy" or "mdy". temperature_unit : "C" or "F".
    columns : number (1 = first) or heading of "date", "time", "temperature", "humidity".
    complete_with : name of the air of months with too few logged days: a year, a place, or a file.
    """

    date_order: str | None = None
    temperature_unit: str | None = None
    columns: Mapping[str, int | str] | None = None
    complete_with: str | None = None


@dataclass(frozen=True)
class Settings:
    """``today_mc`` None: the wood is taken to be in step with the air on that day.

    ``told``: what the reading of a logger's file had to repair or leave out, one sentence each. ``asked``: what was
    typed, by the names of ``settings_from_texts``, so that a document can be asked the same again.
    """

    year: Air = field(default_factory=lambda: find_year(DEFAULT_YEAR))
    today: datetime.date = field(default_factory=datetime.date.today)
    today_mc: float | None = None
    shop: Shop | None = None
    told: tuple[str, ...] = ()
    asked: Mapping[str, Any] = field(default_factory=dict)


def settings_from_texts(
    year: str | None = None,
    today: str | None = None,
    today_mc: float | None = None,
    *,
    shop: str | None = None,
    built_on: str | None = None,
    rooms: Mapping[str, float] | None = None,
    answers: LoggerAnswers | None = None,
) -> Settings:
    """Settings from what was typed; what is None or empty is the usual year, this day, no meter, no shop.

    Parameters
    ----------
    year, shop : the name of one of our years or places, or the path of a file of twelve months or of a logger.
    today, built_on : YYYY-MM-DD; the shop needs the day the piece was built, and the other way round.
    rooms : how the rooms of a place are kept, by the names of ``Rooms``; the usual where not said.
    answers : what the files of loggers leave open.

    Raises
    ------
    InputError : what was said belongs to nothing: rooms without a place, answers without a logger's file; or the
        wood of furniture has no such moisture.
    """
    if today_mc is not None:
        within(today_mc, "moisture today", 0.0, GREEN, "%")
    told: list[str] = []
    answers = answers or LoggerAnswers()
    if answers != LoggerAnswers() and not any(is_logger(name) for name in (year, shop)):
        raise InputError(
            say("columns, units and the order of dates are said of no logger's file"),
            where=say("year"),
            todo=say("name the logger's file with --year, or leave them out"),
        )
    if rooms and not year:
        raise InputError(
            say("the rooms ({rooms}) belong to no place", rooms=_listed(rooms)),
            where=say("year"),
            todo=say("name a place with --year, such as --year Oslo, or leave them out"),
        )
    air = air_from_text(year, rooms, answers, told) if year else find_year(DEFAULT_YEAR)
    if bool(shop) != bool(built_on):
        raise InputError(
            say("the shop's air and the day the piece was built belong together"),
            where=say("shop"),
            todo=say("add --built-on") if shop else say("add --shop"),
        )
    bench = None
    if shop and built_on:
        bench = Shop(air_from_text(shop, None, answers, told), _date(built_on))
    asked = {
        "year": year,
        "today": today,
        "today_mc": today_mc,
        "shop": shop,
        "built_on": built_on,
        "rooms": dict(rooms or {}),
        "answers": {name: value for name, value in asdict(answers).items() if value},
    }
    return Settings(
        air,
        _date(today) if today else datetime.date.today(),
        today_mc,
        bench,
        tuple(told),
        {name: value for name, value in asked.items() if value not in (None, "", {})},
    )


def is_logger(name: str | None) -> bool:
    """Whether a text names a file that is no table of months; one that cannot be read is complained of later."""
    if not name or Path(name).suffix.lower() not in FILES:
        return False
    try:
        with open(name, "rb") as stream:
            return not is_months_table(stream.read(4096).decode("utf-8", "replace"))
    except OSError:
        return True


def _listed(rooms: Mapping[str, float]) -> str:
    return ", ".join(f"{name.rpartition('_')[0]} {value:g}" for name, value in rooms.items())


def _date(text: str) -> datetime.date:
    try:
        return datetime.date.fromisoformat(text)
    except ValueError:
        raise InputError(
            say("{text!r} is no date", text=text), where=say("date"), allowed=say("YYYY-MM-DD")
        ) from None


def air_from_text(
    text: str,
    rooms: Mapping[str, float] | None = None,
    answers: LoggerAnswers | None = None,
    told: list[str] | None = None,
) -> Air:
    """The air that a text names: one of our years, a place (indoors), a file of months, a logger's file.

    ``rooms`` belong to the place, or to the place that completes a logger's file. ``told`` collects what the
    reading of a logger's file had to repair.
    """
    path = Path(text)
    if path.suffix.lower() in FILES:
        return _air_from_file(path, rooms, answers or LoggerAnswers(), told)
    try:
        year = find_year(text)
    except UnknownName as no_year:
        try:
            return find_place(text).indoors(Rooms(**(rooms or {})))
        except UnknownName as no_place:
            near = (*no_year.nearest[:3], *no_place.nearest[:3])
            raise UnknownName(
                say("no year and no place is called {text!r}", text=text),
                where=say("year"),
                nearest=near,
                allowed=say("nearest: {names}", names="; ".join(near))
                if near
                else say("see 'heartside years' and 'heartside places'"),
                todo=say("name one of them, or a .csv file of twelve months or of a logger"),
            ) from None
    if rooms:
        raise InputError(
            say("{text!r} is a year of indoor air already", text=text),
            where=say("rooms"),
            todo=say("keep rooms only with a place"),
        )
    return year


def _air_from_file(
    path: Path, rooms: Mapping[str, float] | None, answers: LoggerAnswers, told: list[str] | None
) -> Air:
    try:
        data = read_plain(path)
    except FileError:
        raise
    except (OSError, ValueError) as error:
        reason = word(str(error.strerror)) if isinstance(error, OSError) else str(error)
        raise FileError(
            say("the file of the year cannot be read ({reason})", reason=reason),
            where=str(path),
            todo=say("check the name"),
        ) from None
    head = data[:4096].decode("utf-8", "replace")
    months = is_months_table(head)
    if rooms and (months or not answers.complete_with):
        raise InputError(
            say("the file is the air of rooms already, and {rooms} is said of them", rooms=_listed(rooms)),
            where=str(path),
            todo=say("say how rooms are kept only with a place"),
        )
    if months:
        return year_from_table(data.decode("utf-8", "replace"), path.name)
    record = read_logger(
        data,
        name=path.name,
        date_order=answers.date_order,
        temperature_unit=answers.temperature_unit,
        columns=answers.columns,
    )
    days = logged_days(record)
    if told is not None:
        told += [f"{path.name}: {finding}" for finding in days.findings]
    other = air_from_text(answers.complete_with, rooms, None, told) if answers.complete_with else None
    return logged_year(days, complete_with=other)
