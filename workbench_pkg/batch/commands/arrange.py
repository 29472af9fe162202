"""``arrange``: price every way to lay the boards of a glued panel. Standard library only."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker, print_answer
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    arrange = commands.add_parser(
        "arrange",
        parents=[shared.common, shared.air, shared.day, shared.settings],
        help=say("price every way to lay the boards of a glued panel"),
    )
    arrange.add_argument(
        "file", type=Path, metavar="FILE", help=say("FCStd, STEP or BREP; it is never written to")
    )
    arrange.add_argument(
        "--board", default="", metavar="NAME", help=say("only the panel that this board belongs to")
    )
    arrange.add_argument("--turn", action="store_true", help=say("boards may be turned end for end"))
    arrange.add_argument("--reorder", action="store_true", help=say("boards may change places"))
    arrange.add_argument("--format", choices=("text", "json"), default="text")
    arrange.set_defaults(command="arrange", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "arrange", **file_typed(options.file),
           "board": options.board, "turn": options.turn, "reorder": options.reorder}  # fmt: skip
    answer = ask_worker({**job, **settings_typed(options)})
    print_answer(options, answer, {"path": str(options.file), "studies": answer.get("studies", [])})
    return NOT_CHECKED if answer.get("errors") else ALL_HOLD
