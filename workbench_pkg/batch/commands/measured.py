"""``measured``: what later measurements teach of the lots; with --value, note another. Standard library only."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from workbench_pkg.batch import values
from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker, print_answer
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    words = commands.add_parser(
        "measured",
        parents=[shared.common, shared.air, shared.day, shared.settings],
        help=say("learn how lively the wood is from what you measured later"),
        description=say(
            "Tell what the measurements of a piece teach of its wood: those in the document's study, and those in"
            " NAME.measured.csv beside the model. With --part, --what and --value another is noted in that file."),
    )  # fmt: skip
    words.add_argument(
        "file", type=Path, metavar="FILE", help=say("FCStd, STEP or BREP; it is never written to")
    )
    words.add_argument("--part", default=None, metavar="NAME", help=say("the part that was measured"))
    words.add_argument(
        "--what", choices=("width", "thickness", "cup", "gap"), default="width", help=say("(default width)")
    )
    words.add_argument(
        "--value", type=_length, default=None, metavar="MM", help=say("what was read; a hollow is below 0")
    )
    words.add_argument(
        "--tool", type=_length, default=None, metavar="MM", help=say("how exact the tool is (default 0.5)")
    )
    words.add_argument(
        "--temperature",
        type=values.amount(*values.CELSIUS),
        default=None,
        metavar="C",
        help=say("the air, without a meter"),
    )
    words.add_argument(
        "--humidity",
        type=values.amount(*values.PERCENT),
        default=None,
        metavar="RH",
        help=say("the same, percent"),
    )
    words.add_argument("--format", choices=("text", "json"), default="text")
    words.set_defaults(command="measured", carry_out=carry_out)


def _length(text: str) -> float:
    value = values.number(text, values.MM)
    if not -1e4 < value < 1e5:
        raise argparse.ArgumentTypeError(say("{text!r} is no number", text=text))
    return value


def carry_out(options: argparse.Namespace) -> int:
    names = ("part", "what", "value", "tool", "temperature", "humidity")
    new = {name: getattr(options, name) for name in names}
    job = {"command": "measured", **file_typed(options.file), "new": new}
    answer = ask_worker({**job, **settings_typed(options)})
    print_answer(options, answer, {"path": str(options.file), "lots": answer.get("lots")})
    return NOT_CHECKED if answer.get("errors") else ALL_HOLD
