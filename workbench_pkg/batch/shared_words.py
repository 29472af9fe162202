"""Words that several commands share, and what was typed of them. Standard library only."""

from __future__ import annotations

import argparse
import os
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from workbench_pkg.batch import values
from workbench_pkg.batch.parsing import Parser
from workbench_pkg.setup import UseError
from workbench_pkg.setup.speech import phrase, say
from workbench_pkg.translations.files import languages

ROOMS = {  # field of the core's Rooms → option, unit, meaning
    "heating_c": ("heating", "C", phrase("rooms are kept at least this warm (default 20)")),
    "cooling_c": ("cooling", "C", phrase("rooms are kept at most this warm")),
    "humidifier_rh": ("humidify", "RH", phrase("rooms are kept at least this humid")),
    "dehumidifier_rh": ("dehumidify", "RH", phrase("rooms are kept at most this humid")),
}


@dataclass(frozen=True)
class Shared:
    """Parsers to be handed to a command as parents.

    What every command takes, the air, the day, the settings file, the plan of a top.
    """

    common: Parser
    air: Parser
    day: Parser
    settings: Parser
    plan: Parser


def shared_words(language: str = "en") -> Shared:
    return Shared(common_words(language), air_words(), day_words(), settings_words(), plan_words())


def common_words(language: str) -> Parser:
    common = Parser(add_help=False)
    add_language(common, language)
    common.add_argument(
        "--install", action="store_true", help=say("fetch what is missing with the system's packages")
    )
    common.add_argument("--debug", action="store_true", help=say("show the traceback of an error"))
    return common


def add_language(parser: Parser, language: str) -> None:
    parser.add_argument("--language", choices=("en", *languages()), default=language,
                        help=say("what everything is told in (default: en)"))  # fmt: skip


def language_typed(arguments: Sequence[str]) -> str:
    """The language that was asked for, by what was typed: also where the rest of it cannot be understood."""
    said = "en"
    for word, following in zip(arguments, [*arguments[1:], ""]):
        if word == "--":
            break
        if word == "--language":
            said = following
        elif word.startswith("--language="):
            said = word.partition("=")[2]
    return said if said in languages() else "en"


def air_words() -> Parser:
    """The air that the piece lives in, and what a logger's file may leave open."""
    parser = Parser(add_help=False)
    air = parser.add_argument_group(say("the air"))
    what = say("a year by name ('years'), a place ('places'), or a .csv file of twelve months or of a logger")
    air.add_argument(
        "--year", default=None, metavar="AIR", help=say("the air it lives in: {what}", what=what)
    )
    for name, unit, meaning in ROOMS.values():
        air.add_argument(
            f"--{name}",
            type=values.amount(*(values.CELSIUS if unit == "C" else values.PERCENT)),
            default=None,
            metavar=unit,
            help=say("with a place: {meaning}", meaning=say(meaning)),
        )
    air.add_argument("--date-order", choices=("ymd", "dmy", "mdy"), default=None,
                     help=say("how a logger writes its dates, where its file leaves that open"))  # fmt: skip
    air.add_argument("--temperature-unit", choices=("C", "F"), type=str.upper, default=None,
                     help=say("in what a logger writes temperatures, where its file leaves that open"))  # fmt: skip
    air.add_argument("--columns", type=values.columns, default=None, metavar="NAME=WHERE,…",
                     help=say(
                         "which columns of a logger's file are date, time, temperature and humidity: numbers (1 ="
                         " first) or headings, such as temperature=3,humidity=4"))  # fmt: skip
    air.add_argument("--complete-with", default=None, metavar="AIR",
                     help=say("the air of months that a logger did not see"))  # fmt: skip
    return parser


def day_words() -> Parser:
    """The day, the moisture of the wood on it, and the shop it was built in."""
    parser = Parser(add_help=False)
    day = parser.add_argument_group(say("the day, and the wood on it"))
    day.add_argument(
        "--date",
        type=values.date,
        default=None,
        metavar="DATE",
        help=say("today, YYYY-MM-DD (default: this day)"),
    )
    day.add_argument("--moisture", type=values.moisture, default=None, metavar="PERCENT",
                     help=say("moisture of the wood today by meter; default: in step with the air"))  # fmt: skip
    day.add_argument(
        "--shop", default=None, metavar=
            "AIR", help=say(
                "the air it was built in, for parts whose moisture was not metered; with --built-on"))  # fmt: skip
    day.add_argument(
        "--built-on", type=values.date, default=None, metavar="DATE", help=say("the day it was built")
    )
    return parser


def plan_words() -> Parser:
    """Which top is held, how flat, and with what."""
    parser = Parser(add_help=False)
    plan = parser.add_argument_group(say("the top, and what holds it"))
    plan.add_argument("--top", default="", metavar="NAME", help=say("the top that this board belongs to"))
    plan.add_argument("--flatness", type=values.flatness, default=None, metavar="MM",
                      help=say("most it may be out of flat in any month (default 1.5)"))  # fmt: skip
    plan.add_argument("--kind", action="append", default=[], metavar="NAME",
                      help=say("kind of fastener; give it once a kind (default: those that suit)"))  # fmt: skip
    plan.add_argument("--fixed", default="", metavar="WHERE",
                      help=say(
                          "the line that stays put: centre, or the board whose outer edge it is (default: what "
                          "the top's boards say by their tag 'fixed', else centre)"))  # fmt: skip
    return parser


def plan_typed(options: argparse.Namespace) -> dict[str, Any]:
    """What was typed of the top and what holds it, for the worker."""
    return {"top": options.top, "flatness": options.flatness, "kinds": options.kind, "fixed": options.fixed}


def settings_words() -> Parser:
    """Which settings file counts."""
    settings = Parser(add_help=False)
    either = settings.add_mutually_exclusive_group()
    either.add_argument("--settings", type=Path, default=None, metavar="FILE", dest="settings_file",
                        help=say(
                            "the settings of the air and the limits (default: the heartside.json in the model's "
                            "folder, or the nearest above it); what is typed outranks it"))  # fmt: skip
    either.add_argument("--no-settings", action="store_true", help=say("look at no settings file"))
    return settings


def settings_typed(options: argparse.Namespace) -> dict[str, Any]:
    """What was typed of the air and the day, for the worker."""
    return {
        "year": options.year or None,
        "date": getattr(options, "date", None),
        "moisture": getattr(options, "moisture", None),
        "shop": getattr(options, "shop", None),
        "built_on": getattr(options, "built_on", None),
        "date_order": options.date_order,
        "temperature_unit": options.temperature_unit,
        "columns": options.columns,
        "complete_with": options.complete_with,
        "rooms": {
            field: getattr(options, name)
            for field, (name, _, _) in ROOMS.items()
            if getattr(options, name) is not None
        },
        "settings_file": _settings_file(options),
        "no_settings": getattr(options, "no_settings", False),
        "language": options.language,
        "debug": options.debug,
    }


def file_typed(path: Path) -> dict[str, Any]:
    """A file for the worker: where it lies, and how it was typed."""
    return {"file": os.path.abspath(path), "shown": str(path)}


def _settings_file(options: argparse.Namespace) -> str | None:
    """The settings file that was named. Raises UseError where there is none."""
    path: Path | None = getattr(options, "settings_file", None)
    if path is None:
        return None
    if not path.is_file():
        raise UseError(say("there is no such file of settings"), where=str(path), todo=say("check the name"))
    return os.path.abspath(path)
