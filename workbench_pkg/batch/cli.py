"""The command line: what can be typed, and what is printed. Standard library only.

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

from workbench_pkg.setup import SetupError, ensure_host, run_in_host

SCHEMA = "heartside-check-1"
ARRANGE_SCHEMA = "heartside-arrange-1"
ALL_HOLD, FINDINGS, NOT_CHECKED = 0, 1, 2
LISTINGS = (("woods", "species and materials"), ("years", "years of air"), ("places", "places"))
ROOMS = {  # field of the core's Rooms → option, unit, meaning
    "heating_c": ("heating", "C", "rooms are kept at least this warm (default 20)"),
    "cooling_c": ("cooling", "C", "rooms are kept at most this warm"),
    "humidifier_rh": ("humidify", "RH", "rooms are kept at least this humid"),
    "dehumidifier_rh": ("dehumidify", "RH", "rooms are kept at most this humid"),
}
WORKER = "workbench_pkg.batch.worker"


def run(arguments: list[str]) -> int:
    """Parse and carry out; returns the exit code. Never shows a traceback unless ``--debug`` asks for it."""
    parser = _parser()
    if not arguments:
        parser.print_help()
        return NOT_CHECKED
    options = parser.parse_args(arguments)
    try:
        ensure_host(install=options.install, again=_again(arguments))
        return int(options.carry_out(options))
    except BrokenPipeError:  # whoever reads us has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return NOT_CHECKED
    except (SetupError, OSError) as error:
        if options.debug:
            raise
        print(f"heartside: {error}", file=sys.stderr)
        return NOT_CHECKED


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="heartside",
        description="How solid-wood furniture moves through the year, read from its CAD model.",
        epilog="Figures are estimates from averages, for movement only: loads, overhead, children and stairs "
        "belong to local codes and licensed practice.",
    )
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)

    common = argparse.ArgumentParser(add_help=False)
    common.add_argument(
        "--install", action="store_true", help="fetch what is missing with the system's packages"
    )
    common.add_argument("--debug", action="store_true", help="show the traceback of an error")

    year = argparse.ArgumentParser(add_help=False)
    air = "a year by name ('years'), a place ('places'), or a .csv file of twelve months or of a logger"
    year.add_argument("--year", default=None, metavar="AIR", help=f"the air it lives in: {air}")
    year.add_argument(
        "--date", type=_date, default=None, metavar="DATE", help="today, YYYY-MM-DD (default: this day)"
    )
    year.add_argument("--moisture", type=_moisture, default=None, metavar="PERCENT",
                      help="moisture of the wood today by meter; default: in step with the air")  # fmt: skip
    year.add_argument("--shop", default=None, metavar="AIR", help="the air it was built in, for parts whose "
                      "moisture was not metered; with --built-on")  # fmt: skip
    year.add_argument("--built-on", type=_date, default=None, metavar="DATE", help="the day it was built")
    year.add_argument("--date-order", choices=("ymd", "dmy", "mdy"), default=None,
                      help="how a logger writes its dates, where its file leaves that open")  # fmt: skip
    for name, unit, what in ROOMS.values():
        year.add_argument(f"--{name}", type=float, default=None, metavar=unit, help=f"with a place: {what}")

    check = commands.add_parser(
        "check", parents=[common, year], help="report what every part does in the year"
    )
    check.add_argument("files", nargs="+", type=Path, metavar="FILE", help="FCStd, STEP or BREP")
    check.add_argument("--format", choices=("text", "json", "csv"), default="text")
    check.set_defaults(carry_out=_check)

    annotate = commands.add_parser("annotate", parents=[common, year], help="write the answer into a copy")
    annotate.add_argument("file", type=Path, metavar="FILE")
    annotate.add_argument("--output", type=Path, required=True, metavar="NEW", help="the FCStd file to write")
    annotate.add_argument("--force", action="store_true", help="replace NEW if it exists")
    annotate.set_defaults(carry_out=_annotate)

    arrange = commands.add_parser(
        "arrange", parents=[common, year], help="price every way to lay the boards of a glued panel"
    )
    arrange.add_argument("file", type=Path, metavar="FILE")
    arrange.add_argument(
        "--board", default="", metavar="NAME", help="only the panel that this board belongs to"
    )
    arrange.add_argument("--turn", action="store_true", help="boards may be turned end for end")
    arrange.add_argument("--reorder", action="store_true", help="boards may change places")
    arrange.add_argument("--format", choices=("text", "json"), default="text")
    arrange.set_defaults(carry_out=_arrange)

    demo = commands.add_parser(
        "demo", parents=[common, year], help="build, check and annotate the demo models"
    )
    demo.add_argument("--output", type=Path, default=Path("heartside-demo"), metavar="DIR")
    demo.set_defaults(carry_out=_demo)

    for name, what in LISTINGS:
        listing = commands.add_parser(name, parents=[common], help=f"list the {what} that are known")
        listing.add_argument("word", nargs="?", default="", help="only those with this word in them")
        listing.set_defaults(carry_out=_list, listing=name)
    return parser


def _again(arguments: list[str]) -> str:
    """The command as typed, with leave to install."""
    return shlex.join(["python3", "-m", "workbench_pkg", *arguments, "--install"])


def _date(text: str) -> str:
    try:
        return datetime.date.fromisoformat(text).isoformat()
    except ValueError:
        raise argparse.ArgumentTypeError(f"{text!r} is no date; write YYYY-MM-DD") from None


def _moisture(text: str) -> float:
    try:
        value = float(text.rstrip("% ").replace(",", "."))
    except ValueError:
        value = -1.0
    if not 0 <= value <= 30:
        raise argparse.ArgumentTypeError(
            f"{text!r} is no moisture of furniture wood; allowed: 0 to 30 percent"
        )
    return value


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
    run = run_in_host(WORKER, [json.dumps(job)], capture=True)
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
