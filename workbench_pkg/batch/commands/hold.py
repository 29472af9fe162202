"""``hold``: plan the fasteners that keep a top flat and let it move. Standard library only."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ALL_HOLD, FINDINGS, NOT_CHECKED, ask_worker, print_answer
from workbench_pkg.batch.shared_words import Shared, file_typed, plan_typed, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    hold = commands.add_parser(
        "hold",
        parents=[shared.common, shared.air, shared.day, shared.settings, shared.plan],
        help=say("plan the fasteners that keep a top flat and let it move"),
    )
    hold.add_argument(
        "file", type=Path, metavar="FILE", help=say("FCStd, STEP or BREP; it is never written to")
    )
    hold.add_argument("--format", choices=("text", "json"), default="text")
    hold.set_defaults(command="hold", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "hold", **file_typed(options.file), **plan_typed(options)}
    answer = ask_worker({**job, **settings_typed(options)})
    tops = answer.get("tops", [])
    print_answer(options, answer, {"path": str(options.file), "tops": tops})
    if answer.get("errors") or any(top["missing"] for top in tops):
        return NOT_CHECKED
    held = all(top["flat_by_itself"] or any(plan["found"] for plan in top["plans"]) for top in tops)
    return ALL_HOLD if held else FINDINGS
