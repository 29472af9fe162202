"""Odd documents through the command line's worker: ``python -m tests.benchmarks.odd_in_host --count 500``.

Each is made in this process (the host as a library), saved, and checked by one standing host. A traceback, the host's
end, more than the time allowed, or memory over 500 MB is a fault. Needs the host's Python.
"""

from __future__ import annotations

import argparse
import contextlib
import os
import sys
import tempfile
import time
from collections.abc import Iterable
from pathlib import Path
from typing import Any

import movement_core
import workbench_pkg
from workbench_pkg.setup.standing import HostEnded, StandingHost

LIMIT_S = 30.0  # the host's own booleans count in it; what took more than SLOW_S is told
SLOW_S = 2.0
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


def run(numbers: Iterable[int], folder: Path) -> tuple[list[str], dict[str, float]]:
    """What went wrong, and the figures of the sweep."""
    from tests.fuzzing.odd_documents import make

    problems, slow, most_s, most_mb, refused, answered = [], 0, 0.0, 0.0, 0, 0
    host = StandingHost("workbench_pkg.batch.worker")
    try:
        for number in numbers:
            path = folder / f"odd-{number}.FCStd"
            doc = make(number)
            try:
                doc.saveAs(str(path))
            finally:
                sys.modules["FreeCAD"].closeDocument(doc.Name)
            began = time.monotonic()
            try:
                answer = host.ask(job(path), LIMIT_S)
            except HostEnded as error:
                problems.append(
                    f"{number}: {error} after {time.monotonic() - began:.1f} s: {error.chatter[-300:]}"
                )
                host = StandingHost("workbench_pkg.batch.worker")
                continue
            took = time.monotonic() - began
            most_s, slow = max(most_s, took), slow + (took > SLOW_S)
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
