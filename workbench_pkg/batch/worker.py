"""What the command line runs inside the host: jobs in as JSON, answers out as JSON on stdout.

With a job as its argument it does that one. Without, it takes jobs from stdin, a line each, until that ends, and
answers with lines of their own (see ``workbench_pkg.setup.standing``).
"""

from __future__ import annotations

import gc
import json
import os
import signal
import sys
import traceback
from collections.abc import Callable, Iterable
from importlib import import_module
from typing import IO, Any

from movement_core.piece.limits import judged_by
from movement_core.wording import speaking
from workbench_pkg.batch.wording import told
from workbench_pkg.setup.speech import speak
from workbench_pkg.translations.files import catalogue

# command → module of batch.inside that carries it out, imported when it is first asked for
JOBS = {
    "check": "check",
    "annotate": "annotate",
    "arrange": "arrange",
    "demo": "demo",
    "diagnose": "diagnose",
    "hold": "hold",
    "measured": "measured",
    "sheet": "sheet",
    "step": "step",
    "stock": "stock",
    "template": "template",
    "woods": "listing",
    "years": "listing",
    "places": "listing",
}
NEED_TAGS = (
    "arrange",
    "hold",
    "step",
    "template",
)  # where tags are missing, a table that could not be read may be why


def carry_out(job: dict[str, Any], tell: Callable[[dict[str, Any]], None] | None = None) -> dict[str, Any]:
    """The answer to one job; every error of ours or of the host becomes a line in ``errors``.

    ``tell`` takes what a job has to say before its answer.
    """
    language = job.get("language") or "en"
    spoken = {} if language == "en" else catalogue(language)
    speak(spoken)
    with speaking(spoken):
        return _carry_out(job, tell)


def _carry_out(job: dict[str, Any], tell: Callable[[dict[str, Any]], None] | None) -> dict[str, Any]:
    try:
        module = import_module(f"workbench_pkg.batch.inside.{JOBS[job['command']]}")
        if hasattr(module, "begin"):
            begun = module.begin(job)
            job = {**job, **begun}
            if tell is not None:
                tell({"begun": begun})
        if "file" not in job:
            return dict(module.carry_out(job))
        from workbench_pkg.batch.inside.asked import limits_asked

        with judged_by(limits_asked(job)):
            return dict(module.carry_out(job))
    except Exception as error:  # the host's own errors have no common base, and no file may stop the others
        if job.get("debug"):
            traceback.print_exc()
        return {"errors": [{"message": told(error, job), "part": ""}, *_more_errors(job)]}


def _more_errors(job: dict[str, Any]) -> list[dict[str, str]]:
    if job["command"] not in NEED_TAGS:
        return []
    from workbench_pkg.batch.inside.asked import table_errors

    return table_errors(job)


def read_job(text: str) -> dict[str, Any]:
    """A job from its JSON. Bytes that the caller could not read as letters are read here, in UTF-8."""
    job = json.loads(text)
    return {key: _decoded(value) if isinstance(value, str) else value for key, value in job.items()}


def _decoded(text: str) -> str:
    return text.encode("utf-8", "surrogateescape").decode("utf-8", "surrogateescape")


def stand_by(jobs: Iterable[str], out: IO[str]) -> None:
    """Answer every job, one after another."""

    def tell(line: dict[str, Any]) -> None:
        out.write(json.dumps(line) + "\n")
        out.flush()

    # Seconds on a cold disk, and no fault of the first model.
    import_module("workbench_pkg.batch.inside.check")
    gc.collect()
    gc.freeze()  # what is loaded stays: no need to look through it after each model
    tell({"ready": {"memory_mb": memory_mb()}})
    for text in jobs:
        job = read_job(text)
        _end_by_itself(job.get("time_limit_s"))
        answer = carry_out(job, tell)
        _end_by_itself(None)
        gc.collect()
        tell({"answer": {**answer, "memory_mb": memory_mb()}})


def memory_mb() -> float | None:
    """Memory that this process holds now; None where the system does not tell."""
    try:
        with open("/proc/self/statm", encoding="ascii") as file:
            return int(file.read().split()[1]) * os.sysconf("SC_PAGE_SIZE") / 2**20
    except (OSError, ValueError, AttributeError):
        return None


def _end_by_itself(limit_s: float | None) -> None:
    """Let the system end us some time after the limit: whoever would do it may be killed himself."""
    if hasattr(signal, "setitimer"):
        signal.signal(
            signal.SIGALRM, signal.SIG_DFL
        )  # no handler: it ends the process also in the host's own code
        signal.setitimer(signal.ITIMER_REAL, 0 if limit_s is None else 1.2 * limit_s + 10)


if __name__ == "__main__":
    if len(sys.argv) > 1:
        json.dump(carry_out(read_job(sys.argv[1])), sys.stdout)
    else:
        with open(0, encoding="ascii") as jobs:
            stand_by(jobs, sys.stdout)
