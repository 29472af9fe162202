"""``template``: the drilling template of a top at full size, on ordinary paper. Standard library only."""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker
from workbench_pkg.batch.shared_words import Shared, file_typed, plan_typed, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    template = commands.add_parser(
        "template",
        parents=[shared.common, shared.air, shared.day, shared.settings, shared.plan],
        help=say("write a drilling template for the fasteners of a top, at full size"),
    )
    template.add_argument(
        "file", type=Path, metavar="FILE", help=say("FCStd, STEP or BREP; it is never written to")
    )
    template.add_argument(
        "--output", type=Path, required=True, metavar="OUT",
        help=say("the file to write: .pdf, .html, or .json (its figures alone)"),
    )  # fmt: skip
    template.add_argument(
        "--plan", default="", metavar="KIND", help=say("kind of the plan (default: the best)")
    )
    template.add_argument("--paper", choices=("a4", "letter"), default="a4")
    template.add_argument(
        "--units", choices=("mm", "inch"), default="mm", help=say("of the distances that are written")
    )
    template.add_argument("--force", action="store_true", help=say("replace OUT if it exists"))
    template.set_defaults(command="template", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "template", **file_typed(options.file), **plan_typed(options), "plan": options.plan,
           "output": os.path.abspath(options.output), "output_shown": str(options.output),
           "force": options.force, "paper": options.paper, "units": options.units}  # fmt: skip
    answer = ask_worker({**job, **settings_typed(options)})
    for error in answer.get("errors", []):
        print(error["message"])
    if "template" not in answer:
        return NOT_CHECKED
    made = answer["template"]
    for line in made["not_cut"]:
        print(line)
    count = len(made["tiles"])
    sheets = say("{count} sheets of {paper}", count=count, paper=made["paper"]["name"])
    if count == 1:
        sheets = say("one sheet of {paper}", paper=made["paper"]["name"])
    print(
        say(
            "Written: {path} ({top}: {screws} screws on {sheets})",
            path=options.output,
            top=made["top"],
            screws=len(made["screws"]),
            sheets=sheets,
        )
    )
    return ALL_HOLD
