"""``sheet``: the movement sheet for the bench, or the page for the client, on paper. Standard library only."""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ask_worker, exit_code, failed_entry
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    sheet = commands.add_parser(
        "sheet",
        parents=[shared.common, shared.air, shared.day, shared.settings],
        help=say("write the movement sheet for the bench, or the page for the client"),
    )
    sheet.add_argument("file", type=Path, metavar="FILE")
    sheet.add_argument(
        "--output", type=Path, required=True, metavar="OUT",
        help=say("the file to write: .html, .pdf, or .json (its figures alone)"),
    )  # fmt: skip
    sheet.add_argument("--client", action="store_true", help=say("the page for the client, in plain words"))
    sheet.add_argument("--job", default="", metavar="TEXT", help=say("what it is, for the head of the sheet"))
    sheet.add_argument("--place", default="", metavar="TEXT", help=say("where it will stand, for the head"))
    sheet.add_argument("--paper", choices=("a4", "letter"), default="a4")
    sheet.add_argument(
        "--units", choices=("mm", "inch"), default="mm", help=say("inches come as fractions to 1/64")
    )
    sheet.add_argument("--force", action="store_true", help=say("replace OUT if it exists"))
    sheet.set_defaults(command="sheet", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "sheet", **file_typed(options.file), "output": os.path.abspath(options.output),
           "output_shown": str(options.output), "force": options.force, "client": options.client, "job": options.job,
           "place": options.place, "paper": options.paper, "units": options.units}  # fmt: skip
    answer = ask_worker({**job, **settings_typed(options)})
    entry = answer.get("entry") or failed_entry(str(options.file), answer)
    for error in entry["errors"]:
        print(error["message"])
    if "entry" in answer:
        found = len(entry["findings"])
        told = say("{count} findings", count=found) if found > 1 else say("1 finding")
        told = told if found else say("no findings")
        parts = len(entry["parts"])
        print(say("Written: {path} ({parts} parts, {told})", path=options.output, parts=parts, told=told))
    return exit_code([entry])
