"""What can be typed on the command line. Standard library only; what each command does stands in ``cli``."""

from __future__ import annotations

import argparse
import datetime
import re
from collections.abc import Sequence
from pathlib import Path
from typing import Any, NoReturn

from workbench_pkg.setup import project_root

LISTINGS = (("woods", "species and materials"), ("years", "years of air"), ("places", "places"))
ROOMS = {  # field of the core's Rooms → option, unit, meaning
    "heating_c": ("heating", "C", "rooms are kept at least this warm (default 20)"),
    "cooling_c": ("cooling", "C", "rooms are kept at most this warm"),
    "humidifier_rh": ("humidify", "RH", "rooms are kept at least this humid"),
    "dehumidifier_rh": ("dehumidify", "RH", "rooms are kept at most this humid"),
}
COLUMNS = ("date", "time", "temperature", "humidity")


class TypingError(Exception):
    """What was typed cannot be understood; the text says why, ``usage`` what can be typed."""

    def __init__(self, usage: str, message: str) -> None:
        self.usage = usage
        super().__init__(message)


class Parser(argparse.ArgumentParser):
    """A parser whose errors are raised, so that they can be told in the form that was asked for.

    Options are not understood by their first letters: --date would be --date-order where there is no --date.
    """

    def __init__(self, **how: Any) -> None:
        super().__init__(**{"allow_abbrev": False, **how})

    def error(self, message: str) -> NoReturn:
        raise TypingError(self.format_usage(), message)


def parse(arguments: Sequence[str]) -> argparse.Namespace:
    """The options typed; ``carry_out`` names the command to carry out. Raises TypingError.

    Options may stand between the files; after "--" there are only files.
    """
    parser, commands = _parsers()
    if arguments and arguments[0] in commands and "--" not in arguments:
        return commands[arguments[0]].parse_intermixed_args(list(arguments[1:]))
    return parser.parse_args(arguments)


def help_text() -> str:
    """The commands and what they are for."""
    return _parsers()[0].format_help()


def version() -> str:
    """Our own version, read rather than imported: numpy need not be there yet."""
    text = (project_root() / "movement_core" / "__init__.py").read_text(encoding="utf-8")
    found = re.search(r'^__version__ = "([^"]+)"', text, re.MULTILINE)
    return found[1] if found else "unknown"


def _parsers() -> tuple[Parser, dict[str, argparse.ArgumentParser]]:
    """The parser of all commands, and each command's own."""
    parser = Parser(
        prog="heartside",
        description="How solid-wood furniture moves through the year, read from its CAD model.",
        epilog="Figures are estimates from averages, for movement only: loads, overhead, children and stairs "
        "belong to local codes and licensed practice.",
    )
    parser.add_argument("--version", action="version", version=f"heartside {version()}")
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)
    common, air, day = _common(), _air(), _day()

    check = commands.add_parser(
        "check", parents=[common, air, day], help="report what every part does in the year"
    )
    check.add_argument("files", nargs="+", type=Path, metavar="FILE", help="FCStd, STEP or BREP")
    check.add_argument("--format", choices=("text", "json", "csv"), default="text")
    check.set_defaults(carry_out="check")

    annotate = commands.add_parser(
        "annotate", parents=[common, air, day], help="write the answer into a copy"
    )
    annotate.add_argument("file", type=Path, metavar="FILE")
    annotate.add_argument("--output", type=Path, required=True, metavar="NEW", help="the FCStd file to write")
    annotate.add_argument("--force", action="store_true", help="replace NEW if it exists")
    annotate.set_defaults(carry_out="annotate")

    arrange = commands.add_parser(
        "arrange", parents=[common, air, day], help="price every way to lay the boards of a glued panel"
    )
    arrange.add_argument("file", type=Path, metavar="FILE")
    arrange.add_argument(
        "--board", default="", metavar="NAME", help="only the panel that this board belongs to"
    )
    arrange.add_argument("--turn", action="store_true", help="boards may be turned end for end")
    arrange.add_argument("--reorder", action="store_true", help="boards may change places")
    arrange.add_argument("--format", choices=("text", "json"), default="text")
    arrange.set_defaults(carry_out="arrange")

    _add_hold_words(
        commands.add_parser(
            "hold", parents=[common, air, day], help="plan the fasteners that keep a top flat and let it move"
        )
    )
    _add_stock_words(
        commands.add_parser(
            "stock", parents=[common, air], help="is this stock ready for that home, and how long till it is"
        )
    )

    demo = commands.add_parser(
        "demo", parents=[common, air, day], help="build, check and annotate the demo models"
    )
    demo.add_argument("--output", type=Path, default=Path("heartside-demo"), metavar="DIR")
    demo.add_argument("--force", action="store_true", help="replace files of these names in DIR")
    demo.set_defaults(carry_out="demo")

    for name, what in LISTINGS:
        listing = commands.add_parser(name, parents=[common], help=f"list the {what} that are known")
        listing.add_argument("word", nargs="*", default=[], help="only those with this in their names")
        listing.set_defaults(carry_out="list", listing=name)
    return parser, dict(commands.choices)


def _common() -> Parser:
    common = Parser(add_help=False)
    common.add_argument(
        "--install", action="store_true", help="fetch what is missing with the system's packages"
    )
    common.add_argument("--debug", action="store_true", help="show the traceback of an error")
    return common


def _air() -> Parser:
    """The air that the piece lives in, and what a logger's file may leave open."""
    air = Parser(add_help=False)
    what = "a year by name ('years'), a place ('places'), or a .csv file of twelve months or of a logger"
    air.add_argument("--year", default=None, metavar="AIR", help=f"the air it lives in: {what}")
    for name, unit, meaning in ROOMS.values():
        air.add_argument(f"--{name}", type=float, default=None, metavar=unit, help=f"with a place: {meaning}")
    air.add_argument("--date-order", choices=("ymd", "dmy", "mdy"), default=None,
                     help="how a logger writes its dates, where its file leaves that open")  # fmt: skip
    air.add_argument("--temperature-unit", choices=("C", "F"), type=str.upper, default=None,
                     help="in what a logger writes temperatures, where its file leaves that open")  # fmt: skip
    air.add_argument("--columns", type=_columns, default=None, metavar="NAME=WHERE,…",
                     help="which columns of a logger's file are date, time, temperature and humidity: "
                     "numbers (1 = first) or headings, such as temperature=3,humidity=4")  # fmt: skip
    air.add_argument("--complete-with", default=None, metavar="AIR",
                     help="the air of months that a logger did not see")  # fmt: skip
    return air


def _day() -> Parser:
    """The day, the moisture of the wood on it, and the shop it was built in."""
    day = Parser(add_help=False)
    day.add_argument(
        "--date", type=_date, default=None, metavar="DATE", help="today, YYYY-MM-DD (default: this day)"
    )
    day.add_argument("--moisture", type=_moisture, default=None, metavar="PERCENT",
                     help="moisture of the wood today by meter; default: in step with the air")  # fmt: skip
    day.add_argument("--shop", default=None, metavar="AIR", help="the air it was built in, for parts whose "
                     "moisture was not metered; with --built-on")  # fmt: skip
    day.add_argument("--built-on", type=_date, default=None, metavar="DATE", help="the day it was built")
    return day


def _add_hold_words(hold: argparse.ArgumentParser) -> None:
    hold.add_argument("file", type=Path, metavar="FILE")
    hold.add_argument("--top", default="", metavar="NAME", help="only the top that this board belongs to")
    hold.add_argument(
        "--flatness", type=_flatness, default=None, metavar="MM",
        help="most it may be out of flat in any month (default 1.5)",
    )  # fmt: skip
    hold.add_argument(
        "--kind", action="append", default=[], metavar="NAME",
        help="kind of fastener; give it once a kind (default: those that suit)",
    )  # fmt: skip
    hold.add_argument(
        "--fixed", default="centre", metavar="WHERE",
        help="the line that stays put: centre, or the board whose outer edge it is",
    )  # fmt: skip
    hold.add_argument("--format", choices=("text", "json"), default="text")
    hold.set_defaults(carry_out="hold")


def _add_stock_words(stock: argparse.ArgumentParser) -> None:
    stock.add_argument("wood", metavar="WOOD", nargs="+", help="its species")
    stock.add_argument("--thickness", type=_millimetres, required=True, metavar="MM")
    stock.add_argument(
        "--reading", type=_reading, action="append", required=True, metavar="PERCENT",
        help="what the meter shows, of the core; give it once a board or place",
    )  # fmt: skip
    stock.add_argument(
        "--skin", type=_reading, default=None, metavar="PERCENT", help="reading at the surface"
    )
    stock.add_argument("--meter", choices=("pin", "pad"), default="pin")
    stock.add_argument(
        "--wood-temperature", type=float, default=None, metavar="C", help="a cold board reads low"
    )
    stock.add_argument(
        "--species-correction", type=float, default=None, metavar="POINTS",
        help="from the meter's table; 0 if it is set to the species",
    )  # fmt: skip
    stock.add_argument(
        "--set-gravity", type=float, default=None, metavar="G", help="density that a pad meter is set to"
    )
    stock.add_argument(
        "--room", type=_room, default=(20.0, 50.0), metavar="C/RH", help="the room it lies in (default 20/50)"
    )
    stock.add_argument("--format", choices=("text", "json"), default="text")
    stock.set_defaults(carry_out="stock")


# ---- values ---------------------------------------------------------------------------------------------


def _date(text: str) -> str:
    try:
        return datetime.date.fromisoformat(text).isoformat()
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no date; write YYYY-MM-DD") from None


def _number(text: str) -> float:
    """A number with a point or a comma; no number is one that no range holds."""
    try:
        return float(text.replace(",", "."))
    except ValueError:
        return float("nan")


def _moisture(text: str) -> float:
    value = _number(text.rstrip("% "))
    if not 0 <= value <= 30:
        raise argparse.ArgumentTypeError(
            f"{text!r} is no moisture of furniture wood; allowed: 0 to 30 percent"
        )
    return value


def _reading(text: str) -> float:
    value = _number(text.rstrip("% "))
    if not 0 <= value <= 60:
        raise argparse.ArgumentTypeError(f"{text!r} is no reading of a meter; allowed: 0 to 60 percent")
    return value


def _millimetres(text: str) -> float:
    try:
        return float(text.removesuffix("mm").replace(",", "."))
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no length; write millimetres, such as 27") from None


def _flatness(text: str) -> float:
    value = _number(text.removesuffix("mm"))
    if not 0 < value <= 50:
        raise argparse.ArgumentTypeError(f"{text!r} is no flatness; allowed: above 0 to 50 mm")
    return value


def _room(text: str) -> tuple[float, float]:
    try:
        temperature, humidity = (float(part) for part in text.split("/"))
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no room; write °C/RH, such as 20/50") from None
    return temperature, humidity


def _columns(text: str) -> dict[str, int | str]:
    columns: dict[str, int | str] = {}
    for item in text.split(","):
        what, _, where = (piece.strip() for piece in item.partition("="))
        if what.lower() not in COLUMNS or not where:
            raise argparse.ArgumentTypeError(
                f"{item!r} names no column; write {', '.join(COLUMNS)}, each with = and its number (1 = first) "
                "or heading, such as temperature=3,humidity=4"
            )
        columns[what.lower()] = int(where) if where.isdecimal() else where
    return columns
