"""Odd documents through the command line's worker: ``python -m tests.benchmarks.odd_in_host --count 500``.

Each is made in a process of its own (the host as a library), saved, and checked by one standing host. A traceback,
the host's end, more than the time allowed, or memory over 500 MB is a fault. What takes more than two seconds of
processor time, the host's own booleans among it, is told by its number. Needs the host's Python.
"""

from __future__ import annotations

import argparse
import contextlib
import os
import signal
import sys
import tempfile
import time
import warnings
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

import movement_core
import workbench_pkg
from workbench_pkg.setup.standing import HostEnded, StandingHost

LIMIT_S = 300.0  # by the clock, for an answer: the machine may be busy with others
SLOW_S, HANG_S = 2.0, 30.0  # of processor time, the host's own booleans with it: told, and a fault
MAKING_S = 10.0  # of processor time: the host may cut solids for ever, before anything comes to us
MOST_MB = 500.0
LIBRARIES = ("/usr/lib/freecad/lib", "/usr/lib/freecad-python3/lib")
PLAIN = (
    "year",
    "date",
    "moisture",
    "shop",
    "built_on",
    "date_order",
    "temperature_unit",
    "columns",
    "complete_with",
)


def job(path: Path) -> dict[str, Any]:
    plain = dict.fromkeys(PLAIN)
    return {
        "command": "check",
        "file": str(path),
        "shown": path.name,
        "rooms": {},
        "forms": ["text"],
        **plain,
    }


def save(number: int, path: Path) -> bool:
    """Make one document and save it; False where the host did not end recomputing it, and it is saved without."""
    from tests.fuzzing import odd_documents  # imports the host, once for all

    for recompute in (True, False):
        with warnings.catch_warnings():
            warnings.simplefilter(
                "ignore", DeprecationWarning
            )  # of forking beside the standing host's reader
            child = os.fork()
        if child == 0:
            _save_here(odd_documents.make, number, path, recompute)
        _, status = os.waitpid(child, 0)
        if status == 0:
            return recompute
    raise RuntimeError(f"document {number} could not be made (status {status})")


def _save_here(make: Callable[..., Any], number: int, path: Path, recompute: bool) -> None:
    """In a process of its own, which ends here. The system ends it: the host hears no Python while it cuts solids."""
    try:
        signal.signal(signal.SIGPROF, signal.SIG_DFL)
        signal.setitimer(signal.ITIMER_PROF, MAKING_S)
        make(number, recompute).saveAs(str(path))
        os._exit(0)
    finally:
        os._exit(1)


def processor_s(pid: int) -> float:
    """Processor time that a process has had."""
    fields = (
        Path(f"/proc/{pid}/stat").read_text(encoding="ascii", errors="replace").rpartition(")")[2].split()
    )
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def run(numbers: Iterable[int], folder: Path, limit_s: float = LIMIT_S) -> tuple[list[str], dict[str, float]]:
    """What went wrong, and the figures of the sweep."""
    problems, left, slow, most_s, most_mb, refused, answered = [], 0, 0, 0.0, 0.0, 0, 0
    host = StandingHost("workbench_pkg.batch.worker")
    try:
        for number in numbers:
            path = folder / f"odd-{number}.FCStd"
            left += not save(number, path)
            began, before = time.monotonic(), processor_s(host.pid)
            try:
                answer = host.ask(job(path), LIMIT_S)
            except HostEnded as error:
                problems.append(
                    f"{number}: {error} after {time.monotonic() - began:.1f} s: {error.chatter[-300:]}"
                )
                host = StandingHost("workbench_pkg.batch.worker")
                continue
            took = processor_s(host.pid) - before
            most_s, slow = max(most_s, took), slow + (took > SLOW_S)
            if took > HANG_S:
                problems.append(f"{number}: {took:.1f} s of processor time")
            if took > SLOW_S:
                print(f"{number}: {took:.1f} s", flush=True)
            most_mb = max(most_mb, answer.get("memory_mb") or 0.0)
            errors = [error["message"] for error in answer.get("errors", ())]
            refused += bool(errors)
            answered += "entry" in answer
            if any("fault in Heartside" in each or "Traceback" in each or "\n" in each for each in errors):
                problems.append(f"{number}: {errors}")
            elif not errors and "entry" not in answer:
                problems.append(f"{number}: no answer and no error")
    finally:
        with contextlib.suppress(Exception):
            host.close()
    if most_mb > MOST_MB:
        problems.append(f"{most_mb:.0f} MB of memory")
    return problems, {
        "answered": answered,
        "refused": refused,
        "not recomputed": left,
        "slow": slow,
        "most_s": most_s,
        "most_mb": most_mb,
    }


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=500)
    parser.add_argument("--first", type=int, default=0)
    asked = parser.parse_args()
    assert movement_core and workbench_pkg  # before the host puts copies of its own on the path
    sys.path += [folder for folder in LIBRARIES if os.path.isdir(folder)]
    with tempfile.TemporaryDirectory() as folder:
        os.environ.setdefault("FREECAD_USER_HOME", folder)
        problems, figures = run(range(asked.first, asked.first + asked.count), Path(folder))
    for problem in problems:
        print(problem)
    print(f"{asked.count} documents, {len(problems)} problems, {figures}")
    return 1 if problems else 0


if __name__ == "__main__":
    raise SystemExit(main())
