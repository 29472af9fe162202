"""``stock``: is this stock ready for that home, and how long till it is. Standard library only."""

from __future__ import annotations

import argparse
from typing import Any

from workbench_pkg.batch import values
from workbench_pkg.batch.answering import ALL_HOLD, FINDINGS, NOT_CHECKED, ask_worker, print_answer
from workbench_pkg.batch.shared_words import Shared, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    stock = commands.add_parser(
        "stock",
        parents=[shared.common, shared.air],
        help=say("is this stock ready for that home, and how long till it is"),
    )
    stock.add_argument("wood", metavar="WOOD", nargs="+", help=say("its species"))
    stock.add_argument(
        "--thickness",
        type=values.millimetres,
        required=True,
        metavar="MM",
        help=say("thickness of the boards"),
    )
    stock.add_argument(
        "--reading", type=values.reading, action="append", required=True, metavar="PERCENT",
        help=say("what the meter shows, of the core; give it once a board or place"),
    )  # fmt: skip
    stock.add_argument(
        "--skin", type=values.reading, default=None, metavar="PERCENT", help=say("reading at the surface")
    )
    stock.add_argument(
        "--meter", choices=("pin", "pad"), default="pin", help=say("kind of meter (default pin)")
    )
    stock.add_argument(
        "--wood-temperature",
        type=values.amount(*values.CELSIUS),
        default=None,
        metavar="C",
        help=say("a cold board reads low"),
    )
    stock.add_argument(
        "--species-correction", type=values.amount(*values.PERCENT), default=None, metavar="POINTS",
        help=say("from the meter's table; 0 if it is set to the species"),
    )  # fmt: skip
    stock.add_argument(
        "--set-gravity",
        type=values.amount("g/cm³", "g/cm3"),
        default=None,
        metavar="G",
        help=say("density that a pad meter is set to"),
    )
    stock.add_argument(
        "--room",
        type=values.room,
        default=(20.0, 50.0),
        metavar="C/RH",
        help=say("the room it lies in (default 20/50)"),
    )
    stock.add_argument("--format", choices=("text", "json"), default="text")
    stock.set_defaults(command="stock", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "stock", "wood": " ".join(options.wood), "thickness": options.thickness,
           "readings": options.reading, "skin": options.skin, "meter": options.meter,
           "wood_temperature": options.wood_temperature, "species_correction": options.species_correction,
           "set_gravity": options.set_gravity, "room": options.room}  # fmt: skip
    answer = ask_worker({**job, **settings_typed(options)})
    print_answer(options, answer, {"stock": answer.get("stock")})
    if answer.get("errors"):
        return NOT_CHECKED
    return ALL_HOLD if answer["stock"]["ready"] else FINDINGS
