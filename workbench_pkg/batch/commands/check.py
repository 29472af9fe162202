"""``check``: report what every part does in the year, of one model or an archive of them. Standard library only."""

from __future__ import annotations

import argparse
import os
import shutil
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from functools import partial
from pathlib import Path
from typing import IO, Any

from workbench_pkg.batch import values
from workbench_pkg.batch.answering import ALL_HOLD, FINDINGS, NOT_CHECKED, failed_entry
from workbench_pkg.batch.caching import note_failure, ready_cache
from workbench_pkg.batch.forms import FORMS
from workbench_pkg.batch.html_index import SEVERITIES
from workbench_pkg.batch.known import Known, read_known
from workbench_pkg.batch.pool import answers, processors
from workbench_pkg.batch.progress import Progress
from workbench_pkg.batch.selecting import Wanted, select
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed
from workbench_pkg.batch.tally import Tally
from workbench_pkg.batch.targets import check_target
from workbench_pkg.setup import UseError, work_folder, written_whole
from workbench_pkg.setup.speech import say

MOST_HOSTS = 8  # unless more are asked for: each holds some 200 MB
TIME_LIMIT_S = 600.0


def add_words(commands: Any, shared: Shared) -> None:
    check = commands.add_parser(
        "check",
        parents=[shared.common, shared.air, shared.day, shared.settings],
        help=say("report what every part does in the year"),
        description=say(
            "Report what every part does in the year, and what comes of it. Models are never written to."
        ),
        epilog=say("Ends with 0 when all holds, 1 with findings, 2 when something could not be checked."),
    )
    check.add_argument(
        "models", nargs="+", metavar="FILE",
        help=say("FCStd, STEP or BREP; a folder, with all below it; a pattern in quotes, such as 'shop/**/*.step'"),
    )  # fmt: skip
    check.add_argument(
        "--leave-out", action="append", default=[], metavar="PATTERN",
        help=say("models in folders and patterns to pass over, such as '*-annotated.FCStd'; may be given again"),
    )  # fmt: skip
    told = check.add_argument_group(say("how it is told"))
    told.add_argument("--format", choices=tuple(FORMS), default="text",
                       help=say(
                           "text; json, jsonl (a line a model); csv (a line a part), findings-csv (a line a "
                           "finding); html (one page)"))  # fmt: skip
    told.add_argument(
        "--output", type=Path, default=None, metavar="FILE", help=say("write to a file, whole or not at all")
    )
    told.add_argument(
        "--force", action="store_true", help=say("replace the files to be written if they exist")
    )
    counts = check.add_argument_group(say("what counts"))
    counts.add_argument("--fail-on", choices=(*SEVERITIES, "never"), default=SEVERITIES[-1],
                       help=say(
                           "end with 1 only for findings as grave as this: {names} (default: any), never", names=
                               ', '.join(SEVERITIES)))  # fmt: skip
    counts.add_argument("--known", type=Path, default=None, metavar="FILE",
                       help=say("a baseline: findings that are accepted: only new or graver ones count"))  # fmt: skip
    counts.add_argument("--write-known", type=Path, default=None, metavar="FILE",
                       help=say("accept all that is found now, and write that baseline"))  # fmt: skip
    work = check.add_argument_group(say("how it goes on"))
    work.add_argument("--jobs", type=values.jobs, default=None, metavar="N",
                       help=say("models worked at side by side (default: one a processor)"))  # fmt: skip
    work.add_argument("--time-limit", type=values.seconds, default=TIME_LIMIT_S, metavar="SECONDS",
                       help=say(
                           "stop a model that takes longer (default {seconds:.0f}; 0: never)",
                           seconds=TIME_LIMIT_S))  # fmt: skip
    cache = work.add_mutually_exclusive_group()
    cache.add_argument("--cache", type=Path, default=None, metavar="DIR",
                       help=say(
                           "keep reports here, to be found again while nothing they rest on has changed (default:"
                           " in your cache folder). A run that was stopped goes on by that"))  # fmt: skip
    cache.add_argument(
        "--no-cache", action="store_true", help=say("work everything out anew, and keep nothing")
    )
    work.add_argument("--resume", action="store_true",
                       help=say(
                           "go on with a run that was stopped, leaving out what crashed or hung in it"))  # fmt: skip
    told.add_argument("--quiet", action="store_true", help=say("do not show how far it is"))
    check.set_defaults(command="check", carry_out=carry_out)


def carry_out(options: argparse.Namespace) -> int:
    wanted = select(options.models, options.leave_out)
    known = read_known(options.known) if options.known else None
    noted = Known(options.write_known, dict(known.models) if known else {}) if options.write_known else None
    for target in (options.output, options.write_known):
        if target is not None:
            check_target(target, [one.shown for one in wanted], options.force)
    cache = None if options.no_cache else ready_cache(options.cache)
    tally = Tally(options.fail_on)
    with written(options) as out:
        form = FORMS[options.format](out)
        for entry, answer in _checked(options, wanted, known, cache, form.needs):
            tally.add(entry, answer, known.gone(entry["path"], entry["findings"]) if known else 0)
            form.add(entry, answer)
            if options.output is None and not form.whole:
                out.flush()
            _tell_errors(entry, form.name)
            if noted is not None and not entry["errors"]:
                noted.note(entry["path"], entry["findings"])
        form.end(tally.summary() if len(wanted) > 1 or form.name == "html" else "")
    if options.output is not None:
        print(tally.summary() + "\n" + say("Written: {path}", path=options.output))
    if noted is not None:
        noted.write(options.force)
        print("heartside: " + say("accepted, and written: {path}", path=noted.path), file=sys.stderr)
    if tally.not_checked:
        return NOT_CHECKED
    return FINDINGS if tally.failing and noted is None else ALL_HOLD


def _checked(
    options: argparse.Namespace,
    wanted: list[Wanted],
    known: Known | None,
    cache: Path | None,
    forms: tuple[str, ...],
) -> Iterator[tuple[dict[str, Any], dict[str, Any]]]:
    """The report of each model with the host's answer, in the order in which they are wanted."""
    limit_s = options.time_limit or None
    shared = {
        **settings_typed(options),
        "command": "check",
        "forms": forms,
        "cache": None if cache is None else os.path.abspath(cache),
        "resume": options.resume,
        "time_limit_s": limit_s,
        "several": len(wanted) > 1,
    }
    jobs = [
        {**shared, **file_typed(Path(one.shown)), "known": known.of(one.shown) if known else None}
        for one in wanted
        if not one.problem
    ]
    progress = Progress(len(jobs), options.quiet)
    failed = partial(note_failure, cache, time_limit_s=limit_s) if cache else None
    hosts = options.jobs or min(processors(), MOST_HOSTS)
    with work_folder(tempfile.gettempdir(), "heartside-") as spool:
        coming = answers(jobs, hosts, spool, limit_s, progress.tick, failed)
        try:
            for one in wanted:
                if one.problem:
                    answer: dict[str, Any] = {"errors": [{"message": one.problem, "part": ""}]}
                else:
                    answer = next(coming)
                    if answer.get("of_all"):
                        raise UseError(answer["errors"][0]["message"])
                progress.clear()
                yield answer.get("entry") or failed_entry(one.shown, answer), answer
        finally:
            coming.close()
            progress.clear()


@contextmanager
def written(options: argparse.Namespace) -> Iterator[IO[str]]:
    """What to write the report to: stdout, or the file that was named, which comes whole or not at all."""
    if options.output is not None:
        with (
            written_whole(options.output, replace=options.force) as path,
            path.open("w", encoding="utf-8", errors="backslashreplace", newline="") as out,
        ):
            yield out
    elif FORMS[options.format].whole:
        with tempfile.TemporaryFile(
            "w+", encoding=sys.stdout.encoding, errors=sys.stdout.errors, newline=""
        ) as out:
            yield out
            out.seek(0)
            shutil.copyfileobj(out, sys.stdout)
    else:
        yield sys.stdout


def _tell_errors(entry: dict[str, Any], form: str) -> None:
    """On stderr, where the form has no place for errors."""
    if form.endswith("csv"):
        for error in entry["errors"]:
            print(f"heartside: {error['message']}", file=sys.stderr)
