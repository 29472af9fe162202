"""``step``: write the piece with its slots cut as STEP, the tags along. Standard library only."""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from typing import Any

from workbench_pkg.batch import values
from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed


def add_words(commands: Any, shared: Shared) -> None:
    step = commands.add_parser(
        "step",
        parents=[shared.common, shared.language, shared.air, shared.day, shared.settings],
        help="write the piece with the slots of a top cut, as STEP",
    )
    step.add_argument("file", type=Path, metavar="FILE", help="FCStd, STEP or BREP; it is never written to")
    step.add_argument(
        "--output", type=Path, required=True, metavar="NEW",
        help="the STEP file to write; NEW's name with .wood.csv is written beside it",
    )  # fmt: skip
    step.add_argument(
        "--top", default="", metavar="NAME", help="the top that this board belongs to (default: the first)"
    )
    step.add_argument("--plan", default="", metavar="KIND", help="kind of the plan (default: the best)")
    step.add_argument(
        "--flatness", type=values.flatness, default=None, metavar="MM",
        help="most it may be out of flat in any month (default 1.5)",
    )  # fmt: skip
    step.add_argument(
        "--kind", action="append", default=[], metavar="NAME",
        help="kind of fastener; give it once a kind (default: those that suit)",
    )  # fmt: skip
    step.add_argument(
        "--fixed", default="centre", metavar="WHERE", help="the line that stays put, as for hold"
    )
    step.add_argument("--force", action="store_true", help="replace NEW if it exists")
    step.set_defaults(command="step", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "step", **file_typed(options.file), "output": os.path.abspath(options.output),
           "output_shown": str(options.output), "force": options.force, "top": options.top, "plan": options.plan,
           "flatness": options.flatness, "kinds": options.kind, "fixed": options.fixed}  # fmt: skip
    answer = ask_worker({**job, **settings_typed(options)})
    for error in answer.get("errors", []):
        print(error["message"])
    if "parts" not in answer:
        return NOT_CHECKED
    for line in answer["not_cut"]:
        print(line)
    print(f"Written: {options.output} ({len(answer['parts'])} parts, {len(answer['cut'])} of them cut)")
    return ALL_HOLD
