"""``demo``: build, check and annotate the demo models. Standard library only."""

from __future__ import annotations

import argparse
import json
import os
import sys
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker, tell_errors
from workbench_pkg.batch.output import REPORTS
from workbench_pkg.batch.shared_words import Shared, settings_typed
from workbench_pkg.demo.faults import BENCH, SIDEBOARD, TABLE
from workbench_pkg.setup import UseError, work_folder
from workbench_pkg.setup.speech import say, word
from workbench_pkg.setup.whole_files import put_in_place


def add_words(commands: Any, shared: Shared) -> None:
    demo = commands.add_parser(
        "demo",
        parents=[shared.common, shared.air, shared.day],
        help=say("build, check and annotate the demo models"),
    )
    demo.add_argument("--output", type=Path, default=Path("heartside-demo"), metavar="DIR",
                      help=say("the folder to write to (default heartside-demo)"))  # fmt: skip
    demo.add_argument("--force", action="store_true", help=say("replace files of these names in DIR"))
    demo.set_defaults(command="demo", carry_out=carry_out)


def demo_names() -> dict[str, tuple[str, ...]]:
    """Each demo model that is checked, and the other files that a demo writes for it."""
    models = {f"{TABLE}.FCStd": (), f"{SIDEBOARD}.FCStd": (), f"{BENCH}.step": (f"{BENCH}.wood.csv",)}
    made = ("-annotated.FCStd", "-report.txt", "-report.json")
    return {name: (*more, *(Path(name).stem + end for end in made)) for name, more in models.items()}


def carry_out(options: argparse.Namespace) -> int:
    folder: Path = options.output
    try:
        _refuse_to_replace(folder, options.force)
        folder.mkdir(parents=True, exist_ok=True)
        # Everything is made beside and moved at the end: whatever stops us leaves no half of it.
        with work_folder(folder) as work:
            if not _make_demo(options, work):
                return NOT_CHECKED
            for name in _all_names():
                put_in_place(work / name, folder / name, replace=True)
    except OSError as error:
        told = say(
            "{folder}: the demo cannot be written there ({reason}). To do: name another folder with --output.",
            folder=folder,
            reason=word(error.strerror or str(error)),
        )
        print(f"heartside: {told}", file=sys.stderr)
        return NOT_CHECKED
    lines = [say("The demo pieces are invented, for trying Heartside out. Results:")]
    for model, others in demo_names().items():
        lines += [
            f"  {folder / model}",
            "    " + say("annotated  {path}", path=folder / others[-3]),
            "    " + say("report     {path}, and the same as .json", path=folder / others[-2]),
        ]
    print("\n".join(lines))
    return ALL_HOLD


def _all_names() -> list[str]:
    return [name for model, others in demo_names().items() for name in (model, *others)]


def _refuse_to_replace(folder: Path, force: bool) -> None:
    """UseError where files of the demo's names are there: they may be somebody's work by now."""
    there = [name for name in _all_names() if os.path.lexists(folder / name)]
    if there and not force:
        named = ", ".join(there[:3])
        if len(there) > 3:
            named += say(" and {count} more", count=len(there) - 3)
        is_there = say("{folder}: {named} is there already.", folder=folder, named=named)
        are_there = say("{folder}: {named} are there already.", folder=folder, named=named)
        todo = say("add --force to replace what is there, or name another folder with --output")
        raise UseError(
            (is_there if len(there) == 1 else are_there) + " " + say("Nothing was written."), todo=todo
        )


def _make_demo(options: argparse.Namespace, work: Path) -> bool:
    """Build, check and annotate the demo models in a folder, printing each report; False where that failed."""
    settings = settings_typed(options)
    built = ask_worker({"command": "demo", "folder": str(work.resolve()), **settings})
    if tell_errors(built):
        return False
    for name, others in demo_names().items():
        annotated, report, data = others[-3:]
        job = {"file": str(work.resolve() / name), "shown": str(options.output / name), **settings}
        target = {"output": str(work.resolve() / annotated), "output_shown": str(options.output / annotated)}
        answer = ask_worker({"command": "annotate", "force": False, **target, **job})
        if tell_errors(answer):
            return False
        Path(work, report).write_text(answer["text"] + "\n", encoding="utf-8")
        whole = {**REPORTS["check"], "files": [answer["entry"]], "errors": []}
        text = json.dumps(whole, indent=1, ensure_ascii=False)
        Path(work, data).write_text(text + "\n", encoding="utf-8")
        print(answer["text"], end="\n\n", flush=True)
    return True
