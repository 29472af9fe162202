"""The command line: each command, and what is printed. Standard library only.

Each file is read by a host process of its own, so that one crash costs one file. The host's answer comes back
as JSON; a missing answer is the host's own failure, and is said as such.
"""

from __future__ import annotations

import argparse
import datetime
import json
import os
import shlex
import sys
from pathlib import Path
from typing import Any

from workbench_pkg.batch.words import ROOMS, make_parser
from workbench_pkg.setup import SetupError, ensure_host, run_in_host

SCHEMA = "heartside-check-1"
ARRANGE_SCHEMA = "heartside-arrange-1"
HOLD_SCHEMA = "heartside-hold-1"
STOCK_SCHEMA = "heartside-stock-1"
ALL_HOLD, FINDINGS, NOT_CHECKED = 0, 1, 2
WORKER = "workbench_pkg.batch.worker"
# Our matrices are small: several threads only wait for each other, tenfold so on a busy machine.
ONE_THREAD = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1"}


def run(arguments: list[str]) -> int:
    """Parse and carry out; returns the exit code. Never shows a traceback unless ``--debug`` asks for it."""
    parser = make_parser()
    if not arguments:
        parser.print_help()
        return NOT_CHECKED
    options = parser.parse_args(arguments)
    try:
        ensure_host(install=options.install, again=_again(arguments))
        return CARRY_OUT[options.carry_out](options)
    except BrokenPipeError:  # whoever reads us has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return NOT_CHECKED
    except (SetupError, OSError) as error:
        if options.debug:
            raise
        print(f"heartside: {error}", file=sys.stderr)
        return NOT_CHECKED


def _again(arguments: list[str]) -> str:
    """The command as typed, with leave to install."""
    return shlex.join(["python3", "-m", "workbench_pkg", *arguments, "--install"])


def _settings(options: argparse.Namespace) -> dict[str, Any]:
    return {
        "year": str(options.year) if options.year else None,
        "date": options.date or datetime.date.today().isoformat(),
        "moisture": options.moisture,
        "shop": options.shop,
        "built_on": options.built_on,
        "date_order": options.date_order,
        "rooms": {
            field: getattr(options, name)
            for field, (name, _, _) in ROOMS.items()
            if getattr(options, name) is not None
        },
        "debug": options.debug,
    }


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
        answer = ask_worker(
            {"command": "check", "file": os.path.abspath(path), "shown": str(path), **settings}
        )
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
        print(json.dumps({"schema": SCHEMA, "files": entries}, indent=1, ensure_ascii=False))
    return _exit_code(entries)


def _failed(path: str, answer: dict[str, Any]) -> dict[str, Any]:
    return {"path": path, "parts": [], "findings": [], "errors": answer["errors"]}


def _exit_code(entries: list[dict[str, Any]]) -> int:
    if any(entry["errors"] for entry in entries):
        return NOT_CHECKED
    return FINDINGS if any(entry["findings"] for entry in entries) else ALL_HOLD


def _annotate(options: argparse.Namespace) -> int:
    job = {"command": "annotate", "file": os.path.abspath(options.file), "shown": str(options.file),
           "output": os.path.abspath(options.output), "force": options.force}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    entry = answer.get("entry") or _failed(str(options.file), answer)
    print(answer.get("text") or "\n".join(e["message"] for e in entry["errors"]))
    return _exit_code([entry])


def _arrange(options: argparse.Namespace) -> int:
    job = {"command": "arrange", "file": os.path.abspath(options.file), "shown": str(options.file),
           "board": options.board, "turn": options.turn, "reorder": options.reorder}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    errors = answer.get("errors", [])
    if options.format == "json":
        report = {"schema": ARRANGE_SCHEMA, "path": str(options.file), "studies": answer.get("studies", [])}
        print(json.dumps({**report, "errors": errors}, indent=1, ensure_ascii=False))
    else:
        print(answer.get("text") or "\n".join(error["message"] for error in errors))
    return NOT_CHECKED if errors else ALL_HOLD


def _hold(options: argparse.Namespace) -> int:
    job = {"command": "hold", "file": os.path.abspath(options.file), "shown": str(options.file),
           "top": options.top, "flatness": options.flatness, "kinds": options.kind, "fixed": options.fixed}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    errors, tops = answer.get("errors", []), answer.get("tops", [])
    if options.format == "json":
        report = {"schema": HOLD_SCHEMA, "path": str(options.file), "tops": tops, "errors": errors}
        print(json.dumps(report, indent=1, ensure_ascii=False))
    else:
        print(answer.get("text") or "\n".join(error["message"] for error in errors))
    if errors or any(top["missing"] for top in tops):
        return NOT_CHECKED
    held = all(top["flat_by_itself"] or any(plan["found"] for plan in top["plans"]) for top in tops)
    return ALL_HOLD if held else FINDINGS


def _stock(options: argparse.Namespace) -> int:
    job = {"command": "stock", "wood": options.wood, "thickness": options.thickness, "readings": options.reading,
           "skin": options.skin, "meter": options.meter, "wood_temperature": options.wood_temperature,
           "species_correction": options.species_correction, "set_gravity": options.set_gravity,
           "room": options.room}  # fmt: skip
    answer = ask_worker({**job, **_settings(options)})
    errors = answer.get("errors", [])
    if options.format == "json":
        report = {"schema": STOCK_SCHEMA, "stock": answer.get("stock"), "errors": errors}
        print(json.dumps(report, indent=1, ensure_ascii=False))
    else:
        print(answer.get("text") or "\n".join(error["message"] for error in errors))
    if errors:
        return NOT_CHECKED
    return ALL_HOLD if answer["stock"]["ready"] else FINDINGS


def _demo(options: argparse.Namespace) -> int:
    folder = options.output
    built = ask_worker({"command": "demo", "folder": os.path.abspath(folder), **_settings(options)})
    if built.get("errors"):
        print("\n".join(error["message"] for error in built["errors"]), file=sys.stderr)
        return NOT_CHECKED
    lines = []
    for name in built["files"]:
        source = Path(name)
        job = {"file": str(source), "shown": str(folder / source.name), **_settings(options)}
        target = source.with_name(f"{source.stem}-annotated.FCStd")
        answer = ask_worker({"command": "annotate", "output": str(target), "force": True, **job})
        if answer.get("errors"):
            print("\n".join(error["message"] for error in answer["errors"]), file=sys.stderr)
            return NOT_CHECKED
        report = source.with_name(f"{source.stem}-report.txt")
        report.write_text(answer["text"] + "\n", encoding="utf-8")
        source.with_name(f"{source.stem}-report.json").write_text(
            json.dumps({"schema": SCHEMA, "files": [answer["entry"]]}, indent=1, ensure_ascii=False) + "\n",
            encoding="utf-8",
        )
        print(answer["text"], end="\n\n", flush=True)
        lines.append(f"  {folder / source.name}\n    annotated  {folder / target.name}\n"
                     f"    report     {folder / report.name}, and the same as .json")  # fmt: skip
    print("The demo pieces are invented, for trying Heartside out. Results:\n" + "\n".join(lines))
    return ALL_HOLD


def _list(options: argparse.Namespace) -> int:
    answer = ask_worker({"command": options.listing, "word": options.word})
    for error in answer.get("errors", []):
        print(error["message"], file=sys.stderr)
    if "text" in answer:
        print(answer["text"])
    return NOT_CHECKED if answer.get("errors") else ALL_HOLD


CARRY_OUT = {
    "check": _check,
    "annotate": _annotate,
    "arrange": _arrange,
    "hold": _hold,
    "stock": _stock,
    "demo": _demo,
    "list": _list,
}
