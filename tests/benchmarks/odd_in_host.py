"""Odd documents through the command line's worker: ``python -m tests.benchmarks.odd_in_host --count 500``.

Each is made by another process (``tests/fuzzing/making.py``), saved, and checked by one standing host, started as the
command line starts it. A traceback, the host's end, more than the time allowed, or memory over 500 MB is a fault. What
takes more than two seconds of processor time, the host's own booleans among it, is told by its number. Needs the host's
Python.
"""

from __future__ import annotations

import argparse
import contextlib
import os
import select
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from tests.fuzzing.making import NOT_MADE, NOT_RECOMPUTED, WHOLE
from workbench_pkg.batch.answering import ONE_THREAD, WORKER
from workbench_pkg.setup.standing import HostEnded, StandingHost

LIMIT_S = 300.0  # by the clock, for an answer: the machine may be busy with others
SLOW_S, HANG_S = 2.0, 30.0  # of processor time, the host's own booleans with it: told, and a fault
MOST_MB = 500.0
ROOT = Path(__file__).resolve().parents[2]
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


class Maker:
    """The process that makes the documents; chatter of the host is left out."""

    def __init__(self) -> None:
        command = [sys.executable, "-m", "tests.fuzzing.making"]
        self._process = subprocess.Popen(
            command,
            cwd=ROOT,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            encoding="utf-8",
        )

    def save(self, number: int, path: Path) -> str:
        """Make one document and save it: one of the answers of ``tests.fuzzing.making``."""
        assert self._process.stdin is not None and self._process.stdout is not None
        print(number, path, file=self._process.stdin, flush=True)
        ready, _, _ = select.select([self._process.stdout], [], [], LIMIT_S)
        answer = self._process.stdout.readline().strip() if ready else f"nothing within {LIMIT_S:.0f} s"
        if answer not in (WHOLE, NOT_RECOMPUTED, NOT_MADE):
            raise RuntimeError(f"document {number} could not be made: {answer or 'its maker has ended'}")
        return answer

    def close(self) -> None:
        self._process.kill()
        self._process.wait()


def processor_s(pid: int) -> float:
    """Processor time that a process has had."""
    fields = (
        Path(f"/proc/{pid}/stat").read_text(encoding="ascii", errors="replace").rpartition(")")[2].split()
    )
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def run(numbers: Iterable[int], folder: Path) -> tuple[list[str], dict[str, float]]:
    """What went wrong, and the figures of the sweep."""
    problems, slow, most_s, most_mb, refused, answered = [], 0, 0.0, 0.0, 0, 0
    made = dict.fromkeys((WHOLE, NOT_RECOMPUTED, NOT_MADE), 0)
    maker, host = Maker(), StandingHost(WORKER, ONE_THREAD)
    try:
        for number in numbers:
            path = folder / f"odd-{number}.FCStd"
            how = maker.save(number, path)
            made[how] += 1
            if how == NOT_MADE:  # the host itself ends while it makes it
                continue
            began, before = time.monotonic(), processor_s(host.pid)
            try:
                answer = host.ask(job(path), LIMIT_S)
            except HostEnded as error:
                problems.append(
                    f"{number}: {error} after {time.monotonic() - began:.1f} s: {error.chatter[-300:]}"
                )
                host = StandingHost(WORKER, ONE_THREAD)
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
        maker.close()
        with contextlib.suppress(Exception):
            host.close()
    if most_mb > MOST_MB:
        problems.append(f"{most_mb:.0f} MB of memory")
    return problems, {
        "answered": answered,
        "refused": refused,
        NOT_RECOMPUTED: made[NOT_RECOMPUTED],
        NOT_MADE: made[NOT_MADE],
        "slow": slow,
        "most_s": most_s,
        "most_mb": most_mb,
    }


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=500)
    parser.add_argument("--first", type=int, default=0)
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        os.environ.setdefault("FREECAD_USER_HOME", folder)
        problems, figures = run(range(asked.first, asked.first + asked.count), Path(folder))
    for problem in problems:
        print(problem)
    print(f"{asked.count} documents, {len(problems)} problems, {figures}")
    return 1 if problems else 0


if __name__ == "__main__":
    raise SystemExit(main())
