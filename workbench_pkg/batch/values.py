"""Values as they are typed on the command line, each with an answer to what cannot be. Standard library only."""

from __future__ import annotations

import argparse
import datetime
import math
from collections.abc import Callable

from workbench_pkg.setup.speech import say

NotAllowed = argparse.ArgumentTypeError

MM, CELSIUS, PERCENT, DAYS, HOURS = ("mm",), ("°C", "C"), ("%",), ("days", "d"), ("hours", "h")
COLUMNS = ("date", "time", "temperature", "humidity")


def date(text: str) -> str:
    try:
        return datetime.date.fromisoformat(text).isoformat()
    except ValueError:
        raise argparse.ArgumentTypeError(say("{text!r} is no date; write YYYY-MM-DD", text=text)) from None


def number(text: str, units: tuple[str, ...] = ()) -> float:
    """A number with a point or a comma, and perhaps its unit behind it; no number is one that no range holds."""
    bare = text.strip()
    for unit in units:
        if bare.casefold().endswith(unit.casefold()):
            bare = bare[: -len(unit)].rstrip()
            break
    try:
        return float(bare.replace(",", "."))
    except ValueError:
        return float("nan")


def amount(*units: str) -> Callable[[str], float]:
    """The type of an option that takes any number, with one of these units behind it or none."""

    def typed(text: str) -> float:
        value = number(text, units)
        if not math.isfinite(value):
            raise NotAllowed(say("{text!r} is no number", text=text))
        return value

    return typed


def moisture(text: str) -> float:
    value = number(text, PERCENT)
    if not 0 <= value <= 30:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no moisture of furniture wood; allowed: 0 to 30 percent", text=text)
        )
    return value


def reading(text: str) -> float:
    value = number(text, PERCENT)
    if not 0 <= value <= 60:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no reading of a meter; allowed: 0 to 60 percent", text=text)
        )
    return value


def millimetres(text: str) -> float:
    value = number(text, MM)
    if math.isnan(value):
        raise NotAllowed(say("{text!r} is no length; write millimetres, such as 27", text=text))
    return value


def flatness(text: str) -> float:
    value = number(text, MM)
    if not 0 < value <= 50:
        raise argparse.ArgumentTypeError(say("{text!r} is no flatness; allowed: above 0 to 50 mm", text=text))
    return value


def room(text: str) -> tuple[float, float]:
    left, slash, right = text.partition("/")
    temperature, humidity = number(left, CELSIUS), number(right, PERCENT)
    if not slash or math.isnan(temperature) or math.isnan(humidity):
        raise NotAllowed(say("{text!r} is no room; write °C/RH, such as 20/50", text=text))
    return temperature, humidity


def columns(text: str) -> dict[str, int | str]:
    columns: dict[str, int | str] = {}
    for item in text.split(","):
        what, _, where = (piece.strip() for piece in item.partition("="))
        if what.lower() not in COLUMNS or not where:
            raise argparse.ArgumentTypeError(
                say(
                    "{item!r} names no column; write {names}, each with = and its number (1 = first) or heading, "
                    "such as temperature=3,humidity=4",
                    item=item,
                    names=", ".join(COLUMNS),
                )
            )
        columns[what.lower()] = int(where) if where.isdecimal() else where
    return columns


def jobs(text: str) -> int:
    if not text.isascii() or not text.isdecimal() or not 1 <= int(text) <= 64:
        raise NotAllowed(say("{text!r} is no number of models to work at; allowed: 1 to 64", text=text))
    return int(text)


def seconds(text: str) -> float:
    value = number(text, ("s",))
    if not (value == 0 or 1 <= value <= 1e6):
        raise NotAllowed(
            say("{text!r} is no time limit; allowed: 1 second or more, or 0 for none", text=text)
        )
    return value


def percent(text: str) -> float:
    value = number(text, PERCENT)
    if not 0 <= value <= 100:
        raise NotAllowed(say("{text!r} is no share; allowed: 0 to 100 percent", text=text))
    return value
