"""``check``: report what every part does in the year. Standard library only."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ask_worker, exit_code, failed_entry
from workbench_pkg.batch.output import REPORTS, print_json
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed


def add_words(commands: Any, shared: Shared) -> None:
    check = commands.add_parser(
        "check",
        parents=[shared.common, shared.air, shared.day],
        help="report what every part does in the year",
    )
    check.add_argument("files", nargs="+", type=Path, metavar="FILE", help="FCStd, STEP or BREP")
    check.add_argument("--format", choices=("text", "json", "csv"), default="text")
    check.set_defaults(command="check", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    settings = settings_typed(options)
    entries: list[dict[str, Any]] = []
    heading_shown = False
    for path in options.files:
        answer = ask_worker({"command": "check", **file_typed(path), **settings})
        entry = answer.get("entry") or failed_entry(str(path), answer)
        entries.append(entry)
        if options.format == "text":
            print(answer.get("text") or "\n".join(f"{e['message']}" for e in entry["errors"]), flush=True)
        elif options.format == "csv":
            heading, _, body = answer.get("csv", "").partition("\n")
            if body and not heading_shown:
                print(heading)
                heading_shown = True
            sys.stdout.write(body)
            for error in entry["errors"]:
                print(f"heartside: {error['message']}", file=sys.stderr)
    if options.format == "json":
        print_json({**REPORTS["check"], "files": entries, "errors": []})
    return exit_code(entries)
