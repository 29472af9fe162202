"""``annotate``: write the answer into a copy of a model. Standard library only."""

from __future__ import annotations

import argparse
import os
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ask_worker, exit_code, failed_entry
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed
from workbench_pkg.setup.speech import say


def add_words(commands: Any, shared: Shared) -> None:
    annotate = commands.add_parser(
        "annotate",
        parents=[shared.common, shared.air, shared.day, shared.settings],
        help=say("write the answer into a copy"),
    )
    annotate.add_argument(
        "file", type=Path, metavar="FILE", help=say("FCStd, STEP or BREP; it is never written to")
    )
    annotate.add_argument(
        "--output", type=Path, required=True, metavar="NEW", help=say("the FCStd file to write")
    )
    annotate.add_argument("--force", action="store_true", help=say("replace NEW if it exists"))
    annotate.set_defaults(command="annotate", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    job = {"command": "annotate", **file_typed(options.file), "output": os.path.abspath(options.output),
           "output_shown": str(options.output), "force": options.force}  # fmt: skip
    answer = ask_worker({**job, **settings_typed(options)})
    entry = answer.get("entry") or failed_entry(str(options.file), answer)
    print(answer.get("text") or "\n".join(e["message"] for e in entry["errors"]))
    if "entry" in answer:
        print("\n" + say("Written: {path}", path=options.output))
    return exit_code([entry])
