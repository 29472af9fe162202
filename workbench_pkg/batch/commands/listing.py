"""``woods``, ``years``, ``places``: what is known. Standard library only."""

from __future__ import annotations

import argparse
from typing import Any

from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker, tell_errors
from workbench_pkg.batch.shared_words import Shared
from workbench_pkg.setup.speech import phrase, say

LISTINGS = (
    ("woods", phrase("list the species and materials that are known")),
    ("years", phrase("list the years of air that are known")),
    ("places", phrase("list the places that are known")),
)


def add_words(commands: Any, shared: Shared) -> None:
    for name, what in LISTINGS:
        listing = commands.add_parser(name, parents=[shared.common], help=say(what))
        listing.add_argument("word", nargs="*", default=[], help=say("only those with this in their names"))
        listing.set_defaults(command=name, carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    answer = ask_worker(
        {
            "command": options.command,
            "word": " ".join(options.word),
            "language": options.language,
            "debug": options.debug,
        }
    )
    if "text" in answer:
        print(answer["text"])
    return NOT_CHECKED if tell_errors(answer) else ALL_HOLD
