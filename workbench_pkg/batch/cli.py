"""The command line: each command, and what is printed. Standard library only.

Each file is read by a host process of its own, so that one crash costs one file. The host's answer comes back
as JSON; a missing answer is the host's own failure, and is said as such.
"""

from __future__ import annotations

import argparse
import json
import os
import shlex
import sys
import tempfile
from pathlib import Path
from typing import Any

from workbench_pkg.batch.output import (
    REPORTS,
    leave_stdout,
    prepare_streams,
    print_failure,
    print_json,
    wants_json,
)
from workbench_pkg.batch.words import ROOMS, TypingError, help_text, parse
from workbench_pkg.demo.faults import BENCH, SIDEBOARD, TABLE
from workbench_pkg.setup import SetupError, ensure_host, run_in_host

ALL_HOLD, FINDINGS, NOT_CHECKED, INTERRUPTED = 0, 1, 2, 130
WORKER = "workbench_pkg.batch.worker"
# Our matrices are small: several threads only wait for each other, tenfold so on a busy machine.
ONE_THREAD = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1"}


def run(arguments: list[str]) -> int:
    """Parse and carry out; returns the exit code. Never shows a traceback unless ``--debug`` asks for it."""
    prepare_streams()
    try:
        code = _run(arguments)
        sys.stdout.flush()
        return code
    except KeyboardInterrupt:
        print("heartside: stopped", file=sys.stderr)
        return INTERRUPTED
    except BrokenPipeError:  # whoever reads us has seen enough
        leave_stdout()
        return NOT_CHECKED
    except OSError as error:
        if "--debug" in arguments:
            raise
        print(f"heartside: the answer cannot be written out ({error.strerror or error})", file=sys.stderr)
        leave_stdout()
        return NOT_CHECKED


def _run(arguments: list[str]) -> int:
    if not arguments:
        print(help_text(), end="")
        return NOT_CHECKED
    try:
        options = parse(arguments)
        ensure_host(install=options.install, again=_again(arguments))
        return CARRY_OUT[options.carry_out](options)
    except TypingError as error:
        print(f"{error.usage}heartside: {error}", file=sys.stderr)
        message = str(error)
    except SetupError as error:
        if options.debug:
            raise
        print(f"heartside: {error}", file=sys.stderr)
        message = str(error)
    if wants_json(arguments):
        print_failure(arguments, message)
    return NOT_CHECKED


def _again(arguments: list[str]) -> str:
    """The command as typed, with leave to install."""
    return shlex.join(["python3", "-m", "workbench_pkg", *arguments, "--install"])


def _settings(options: argparse.Namespace) -> dict[str, Any]:
    return {
        "year": options.year or None,
        "date": getattr(options, "date", None),
        "moisture": getattr(options, "moisture", None),
        "shop": getattr(options, "shop", None),
        "built_on": getattr(options, "built_on", None),
        "date_order": options.date_order,
        "temperature_unit": options.temperature_unit,
        "columns": options.columns,
        "complete_with": options.complete_with,
        "rooms": {
            field: getattr(options, name)
            for field, (name, _, _) in ROOMS.items()
            if getattr(options, name) is not None
        },
        "debug": options.debug,
    }


def _file(options: argparse.Namespace, path: Path | None = None) -> dict[str, Any]:
    """A file for the worker: where it lies, and how it was typed."""
    path = path or options.file
    return {"file": os.path.abspath(path), "shown": str(path)}


def ask_worker(job: dict[str, Any]) -> dict[str, Any]:
    """Run one job in a host process and return its answer; a host that dies gives an answer with an error."""
    run = run_in_host(WORKER, [json.dumps(job)], capture=True, env=ONE_THREAD)
    if not run.crashed:
        try:
            return dict(json.loads(run.stdout or ""))
        except ValueError:
            pass
    message = f"{job.get('shown', job['command'])}: the CAD host stopped without an answer"
    if job.get("debug"):
        print(run.chatter, file=sys.stderr)
    return {"errors": [{"message": message, "part": ""}]}


def _check(options: argparse.Namespace) -> int:
    settings = _settings(options)
    entries: list[dict[str, Any]] = []
    heading_shown = False
    for path in options.files:
        answer = ask_worker({"command": "check", **_file(options, path), **settings})
        entry = answer.get("entry") or _failed(str(path), answer)
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
    return _exit_code(entries)


def _failed(path: str, answer: dict[str, Any]) -> dict[str, Any]:
    return {"path": path, "parts": [], "findings": [], "errors": answer["errors"]}


def _exit_code(entries: list[dict[str, Any]]) -> int:
    if any(entry["errors"] for entry in entries):
        return NOT_CHECKED
    return FINDINGS if any(entry["findings"] for entry in entries) else ALL_HOLD


def _annotate(options: argparse.Namespace) -> int:
    job = {"command": "annotate", **_file(options), "output": os.path.abspath(options.output),
           "output_shown": str(options.output), "force": options.force}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    entry = answer.get("entry") or _failed(str(options.file), answer)
    print(answer.get("text") or "\n".join(e["message"] for e in entry["errors"]))
    if "entry" in answer:
        print(f"\nWritten: {options.output}")
    return _exit_code([entry])


def _arrange(options: argparse.Namespace) -> int:
    job = {"command": "arrange", **_file(options),
           "board": options.board, "turn": options.turn, "reorder": options.reorder}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    _print_answer(options, answer, {"path": str(options.file), "studies": answer.get("studies", [])})
    return NOT_CHECKED if answer.get("errors") else ALL_HOLD


def _hold(options: argparse.Namespace) -> int:
    job = {"command": "hold", **_file(options),
           "top": options.top, "flatness": options.flatness, "kinds": options.kind, "fixed": options.fixed}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    tops = answer.get("tops", [])
    _print_answer(options, answer, {"path": str(options.file), "tops": tops})
    if answer.get("errors") or any(top["missing"] for top in tops):
        return NOT_CHECKED
    held = all(top["flat_by_itself"] or any(plan["found"] for plan in top["plans"]) for top in tops)
    return ALL_HOLD if held else FINDINGS


def _stock(options: argparse.Namespace) -> int:
    job = {"command": "stock", "wood": " ".join(options.wood), "thickness": options.thickness,
           "readings": options.reading, "skin": options.skin, "meter": options.meter,
           "wood_temperature": options.wood_temperature, "species_correction": options.species_correction,
           "set_gravity": options.set_gravity, "room": options.room}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    _print_answer(options, answer, {"stock": answer.get("stock")})
    if answer.get("errors"):
        return NOT_CHECKED
    return ALL_HOLD if answer["stock"]["ready"] else FINDINGS


def _print_answer(options: argparse.Namespace, answer: dict[str, Any], found: dict[str, Any]) -> None:
    """An answer in the form that was asked for, and what could not be read for it."""
    errors = answer.get("errors", [])
    if options.format == "json":
        print_json({**REPORTS[options.carry_out], **found, "errors": errors})
        return
    told = [answer["text"]] if answer.get("text") else []
    print("\n\n".join([*told, *(error["message"] for error in errors)]))


def demo_names() -> dict[str, tuple[str, ...]]:
    """Each demo model that is checked, and the other files that a demo writes for it."""
    models = {f"{TABLE}.FCStd": (), f"{SIDEBOARD}.FCStd": (), f"{BENCH}.step": (f"{BENCH}.wood.csv",)}
    made = ("-annotated.FCStd", "-report.txt", "-report.json")
    return {name: (*more, *(Path(name).stem + end for end in made)) for name, more in models.items()}


def _demo(options: argparse.Namespace) -> int:
    folder: Path = options.output
    try:
        _refuse_to_replace(folder, options.force)
        folder.mkdir(parents=True, exist_ok=True)
        # Everything is made beside and moved at the end: whatever stops us leaves no half of it.
        with tempfile.TemporaryDirectory(prefix=".heartside-", dir=folder) as work:
            if not _make_demo(options, Path(work)):
                return NOT_CHECKED
            for name in _all_names():
                os.replace(Path(work, name), folder / name)
    except OSError as error:
        print(f"heartside: {folder}: the demo cannot be written there ({error.strerror or error}). "
              "To do: name another folder with --output.", file=sys.stderr)  # fmt: skip
        return NOT_CHECKED
    lines = [
        f"  {folder / model}\n    annotated  {folder / others[-3]}\n"
        f"    report     {folder / others[-2]}, and the same as .json"
        for model, others in demo_names().items()
    ]
    print("The demo pieces are invented, for trying Heartside out. Results:\n" + "\n".join(lines))
    return ALL_HOLD


def _all_names() -> list[str]:
    return [name for model, others in demo_names().items() for name in (model, *others)]


def _refuse_to_replace(folder: Path, force: bool) -> None:
    """SetupError where files of the demo's names are there: they may be somebody's work by now."""
    there = [name for name in _all_names() if os.path.lexists(folder / name)]
    if there and not force:
        named = ", ".join(there[:3]) + (f" and {len(there) - 3} more" if len(there) > 3 else "")
        raise SetupError(
            f"{folder}: {named} {'is' if len(there) == 1 else 'are'} there already. Nothing was written.\n"
            "To do: add --force to replace what is there, or name another folder with --output."
        )


def _make_demo(options: argparse.Namespace, work: Path) -> bool:
    """Build, check and annotate the demo models in a folder, printing each report; False where that failed."""
    settings = _settings(options)
    built = ask_worker({"command": "demo", "folder": str(work.resolve()), **settings})
    if _told(built):
        return False
    for name, others in demo_names().items():
        annotated, report, data = others[-3:]
        job = {"file": str(work.resolve() / name), "shown": str(options.output / name), **settings}
        target = {"output": str(work.resolve() / annotated), "output_shown": str(options.output / annotated)}
        answer = ask_worker({"command": "annotate", "force": False, **target, **job})
        if _told(answer):
            return False
        Path(work, report).write_text(answer["text"] + "\n", encoding="utf-8")
        whole = {**REPORTS["check"], "files": [answer["entry"]], "errors": []}
        text = json.dumps(whole, indent=1, ensure_ascii=False)
        Path(work, data).write_text(text + "\n", encoding="utf-8")
        print(answer["text"], end="\n\n", flush=True)
    return True


def _told(answer: dict[str, Any]) -> bool:
    """Whether an answer holds errors; they are printed."""
    for error in answer.get("errors", []):
        print(error["message"], file=sys.stderr)
    return bool(answer.get("errors"))


def _list(options: argparse.Namespace) -> int:
    answer = ask_worker({"command": options.listing, "word": " ".join(options.word), "debug": options.debug})
    if "text" in answer:
        print(answer["text"])
    return NOT_CHECKED if _told(answer) else ALL_HOLD


CARRY_OUT = {
    "check": _check,
    "annotate": _annotate,
    "arrange": _arrange,
    "hold": _hold,
    "stock": _stock,
    "demo": _demo,
    "list": _list,
}
