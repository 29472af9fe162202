"""``step``: write the piece with its slots cut as STEP, the tags along. Standard library only."""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker
from workbench_pkg.batch.shared_words import Shared, file_typed, plan_typed, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    step = commands.add_parser(
        "step",
        parents=[shared.common, shared.air, shared.day, shared.settings, shared.plan],
        help=say("write the piece with the slots of a top cut, as STEP"),
    )
    step.add_argument(
        "file", type=Path, metavar="FILE", help=say("FCStd, STEP or BREP; it is never written to")
    )
    step.add_argument(
        "--output", type=Path, required=True, metavar="NEW",
        help=say("the STEP file to write; NEW's name with .wood.csv is written beside it"),
    )  # fmt: skip
    step.add_argument("--plan", default="", metavar="KIND", help=say("kind of the plan (default: the best)"))
    step.add_argument("--force", action="store_true", help=say("replace NEW if it exists"))
    step.set_defaults(command="step", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "step", **file_typed(options.file), **plan_typed(options), "plan": options.plan,
           "output": os.path.abspath(options.output), "output_shown": str(options.output),
           "force": options.force}  # fmt: skip
    answer = ask_worker({**job, **settings_typed(options)})
    for error in answer.get("errors", []):
        print(error["message"])
    if "parts" not in answer:
        return NOT_CHECKED
    for line in answer["not_cut"]:
        print(line)
    parts, cut = len(answer["parts"]), len(answer["cut"])
    print(
        say("Written: {path} ({parts} parts, {cut} of them cut)", path=options.output, parts=parts, cut=cut)
    )
    return ALL_HOLD
