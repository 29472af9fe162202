"""What can be typed on the command line. Standard library only; what each command does stands in ``cli``."""

from __future__ import annotations

import argparse
import datetime
from pathlib import Path

LISTINGS = (("woods", "species and materials"), ("years", "years of air"), ("places", "places"))
ROOMS = {  # field of the core's Rooms → option, unit, meaning
    "heating_c": ("heating", "C", "rooms are kept at least this warm (default 20)"),
    "cooling_c": ("cooling", "C", "rooms are kept at most this warm"),
    "humidifier_rh": ("humidify", "RH", "rooms are kept at least this humid"),
    "dehumidifier_rh": ("dehumidify", "RH", "rooms are kept at most this humid"),
}


def make_parser() -> argparse.ArgumentParser:
    """The parser of all commands; ``carry_out`` of its result names the command to carry out."""
    parser = argparse.ArgumentParser(
        prog="heartside",
        description="How solid-wood furniture moves through the year, read from its CAD model.",
        epilog="Figures are estimates from averages, for movement only: loads, overhead, children and stairs "
        "belong to local codes and licensed practice.",
    )
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)

    common = argparse.ArgumentParser(add_help=False)
    common.add_argument(
        "--install", action="store_true", help="fetch what is missing with the system's packages"
    )
    common.add_argument("--debug", action="store_true", help="show the traceback of an error")

    year = argparse.ArgumentParser(add_help=False)
    air = "a year by name ('years'), a place ('places'), or a .csv file of twelve months or of a logger"
    year.add_argument("--year", default=None, metavar="AIR", help=f"the air it lives in: {air}")
    year.add_argument(
        "--date", type=_date, default=None, metavar="DATE", help="today, YYYY-MM-DD (default: this day)"
    )
    year.add_argument("--moisture", type=_moisture, default=None, metavar="PERCENT",
                      help="moisture of the wood today by meter; default: in step with the air")  # fmt: skip
    year.add_argument("--shop", default=None, metavar="AIR", help="the air it was built in, for parts whose "
                      "moisture was not metered; with --built-on")  # fmt: skip
    year.add_argument("--built-on", type=_date, default=None, metavar="DATE", help="the day it was built")
    year.add_argument("--date-order", choices=("ymd", "dmy", "mdy"), default=None,
                      help="how a logger writes its dates, where its file leaves that open")  # fmt: skip
    for name, unit, what in ROOMS.values():
        year.add_argument(f"--{name}", type=float, default=None, metavar=unit, help=f"with a place: {what}")

    check = commands.add_parser(
        "check", parents=[common, year], help="report what every part does in the year"
    )
    check.add_argument("files", nargs="+", type=Path, metavar="FILE", help="FCStd, STEP or BREP")
    check.add_argument("--format", choices=("text", "json", "csv"), default="text")
    check.set_defaults(carry_out="check")

    annotate = commands.add_parser("annotate", parents=[common, year], help="write the answer into a copy")
    annotate.add_argument("file", type=Path, metavar="FILE")
    annotate.add_argument("--output", type=Path, required=True, metavar="NEW", help="the FCStd file to write")
    annotate.add_argument("--force", action="store_true", help="replace NEW if it exists")
    annotate.set_defaults(carry_out="annotate")

    arrange = commands.add_parser(
        "arrange", parents=[common, year], help="price every way to lay the boards of a glued panel"
    )
    arrange.add_argument("file", type=Path, metavar="FILE")
    arrange.add_argument(
        "--board", default="", metavar="NAME", help="only the panel that this board belongs to"
    )
    arrange.add_argument("--turn", action="store_true", help="boards may be turned end for end")
    arrange.add_argument("--reorder", action="store_true", help="boards may change places")
    arrange.add_argument("--format", choices=("text", "json"), default="text")
    arrange.set_defaults(carry_out="arrange")

    hold = commands.add_parser(
        "hold", parents=[common, year], help="plan the fasteners that keep a top flat and let it move"
    )
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

    stock = commands.add_parser(
        "stock", parents=[common, year], help="is this stock ready for that home, and how long till it is"
    )
    stock.add_argument("wood", metavar="WOOD", help="its species")
    stock.add_argument("--thickness", type=float, required=True, metavar="MM")
    stock.add_argument(
        "--reading", type=_moisture, action="append", required=True, metavar="PERCENT",
        help="what the meter shows, of the core; give it once a board or place",
    )  # fmt: skip
    stock.add_argument(
        "--skin", type=_moisture, default=None, metavar="PERCENT", help="reading at the surface"
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

    demo = commands.add_parser(
        "demo", parents=[common, year], help="build, check and annotate the demo models"
    )
    demo.add_argument("--output", type=Path, default=Path("heartside-demo"), metavar="DIR")
    demo.set_defaults(carry_out="demo")

    for name, what in LISTINGS:
        listing = commands.add_parser(name, parents=[common], help=f"list the {what} that are known")
        listing.add_argument("word", nargs="?", default="", help="only those with this word in them")
        listing.set_defaults(carry_out="list", listing=name)
    return parser


def _date(text: str) -> str:
    try:
        return datetime.date.fromisoformat(text).isoformat()
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no date; write YYYY-MM-DD") from None


def _moisture(text: str) -> float:
    try:
        value = float(text.rstrip("% ").replace(",", "."))
    except ValueError:
        value = -1.0
    if not 0 <= value <= 30:
        raise argparse.ArgumentTypeError(
            f"{text!r} is no moisture of furniture wood; allowed: 0 to 30 percent"
        )
    return value


def _flatness(text: str) -> float:
    try:
        value = float(text.removesuffix("mm").replace(",", "."))
    except ValueError:
        value = -1.0
    if not 0 < value <= 50:
        raise argparse.ArgumentTypeError(f"{text!r} is no flatness; allowed: above 0 to 50 mm")
    return value


def _room(text: str) -> tuple[float, float]:
    try:
        temperature, humidity = (float(part) for part in text.split("/"))
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no room; write °C/RH, such as 20/50") from None
    return temperature, humidity
