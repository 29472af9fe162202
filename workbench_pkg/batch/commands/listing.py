"""``woods``, ``years``, ``places``: what is known. Standard library only."""

from __future__ import annotations

import argparse
from typing import Any

from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker, tell_errors
from workbench_pkg.batch.shared_words import Shared

LISTINGS = (("woods", "species and materials"), ("years", "years of air"), ("places", "places"))


def add_words(commands: Any, shared: Shared) -> None:
    for name, what in LISTINGS:
        listing = commands.add_parser(name, parents=[shared.common], help=f"list the {what} that are known")
        listing.add_argument("word", nargs="*", default=[], help="only those with this in their names")
        listing.set_defaults(command=name, carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    answer = ask_worker({"command": options.command, "word": " ".join(options.word), "debug": options.debug})
    if "text" in answer:
        print(answer["text"])
    return NOT_CHECKED if tell_errors(answer) else ALL_HOLD
