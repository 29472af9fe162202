"""Values as they are typed on the command line, each with an answer to what cannot be. Standard library only."""

from __future__ import annotations

import argparse
import datetime

from workbench_pkg.setup.speech import say

NotAllowed = argparse.ArgumentTypeError

COLUMNS = ("date", "time", "temperature", "humidity")


def date(text: str) -> str:
    try:
        return datetime.date.fromisoformat(text).isoformat()
    except ValueError:
        raise argparse.ArgumentTypeError(say("{text!r} is no date; write YYYY-MM-DD", text=text)) from None


def number(text: str) -> float:
    """A number with a point or a comma; no number is one that no range holds."""
    try:
        return float(text.replace(",", "."))
    except ValueError:
        return float("nan")


def moisture(text: str) -> float:
    value = number(text.rstrip("% "))
    if not 0 <= value <= 30:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no moisture of furniture wood; allowed: 0 to 30 percent", text=text)
        )
    return value


def reading(text: str) -> float:
    value = number(text.rstrip("% "))
    if not 0 <= value <= 60:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no reading of a meter; allowed: 0 to 60 percent", text=text)
        )
    return value


def millimetres(text: str) -> float:
    try:
        return float(text.removesuffix("mm").replace(",", "."))
    except ValueError:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no length; write millimetres, such as 27", text=text)
        ) from None


def flatness(text: str) -> float:
    value = number(text.removesuffix("mm"))
    if not 0 < value <= 50:
        raise argparse.ArgumentTypeError(say("{text!r} is no flatness; allowed: above 0 to 50 mm", text=text))
    return value


def room(text: str) -> tuple[float, float]:
    try:
        temperature, humidity = (float(part) for part in text.split("/"))
    except ValueError:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no room; write °C/RH, such as 20/50", text=text)
        ) from None
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
    value = number(text.removesuffix("s").strip())
    if not (value == 0 or 1 <= value <= 1e6):
        raise NotAllowed(
            say("{text!r} is no time limit; allowed: 1 second or more, or 0 for none", text=text)
        )
    return value


def percent(text: str) -> float:
    value = number(text.rstrip("% "))
    if not 0 <= value <= 100:
        raise NotAllowed(say("{text!r} is no share; allowed: 0 to 100 percent", text=text))
    return value
