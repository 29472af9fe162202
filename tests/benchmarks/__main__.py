"""Every benchmark, each with the Python that it needs, and one table of what they gave: `python3 -m tests benchmarks`.

Keeps table.txt, curves.png (where matplotlib is there) and each script's own figures as JSON in the output folder.
A script that fails or says nothing is a miss.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import time
from pathlib import Path

from tests.benchmarks.rows import Measured, Row, from_json
from tests.benchmarks.table import plot_curves, table_text

HERE = Path(__file__).parent
IN_HOST = frozenset({"contact", "whole"})
"""Benchmarks that import the host, named by what follows ``bench_``; all others run in the core's Python."""


def names() -> list[str]:
    """Every benchmark there is."""
    return [path.stem.removeprefix("bench_") for path in sorted(HERE.glob("bench_*.py"))]


def run(name: str, python: str, folder: Path, quick: bool) -> Measured:
    """What one benchmark gives; one that ends without figures is a row that missed."""
    kept = folder / f"{name}.json"
    command = [python, "-m", f"tests.benchmarks.bench_{name}", "--kept", str(kept)]
    began = time.monotonic()
    print(f"== {name}: {' '.join(command)}", flush=True)
    code = subprocess.call([*command, *(["--quick"] if quick else [])])
    print(f"== {name}: {time.monotonic() - began:.0f} s", flush=True)
    try:
        return from_json(kept.read_text(encoding="utf-8"))
    except (OSError, ValueError, KeyError, TypeError):
        return Measured([Row(f"ended with code {code} and gave no figures", "–", float("nan"), least=0.0)])


def main() -> int:
    words = argparse.ArgumentParser(prog="python3 -m tests.benchmarks", description=__doc__.split("\n")[0])
    words.add_argument(
        "names", nargs="*", metavar="NAME", help=f"{', '.join(names())}; all when none is named"
    )
    words.add_argument("--quick", action="store_true", help="smaller and fewer: minutes instead of an hour")
    words.add_argument("--output", type=Path, default=Path("test-output/benchmarks"), metavar="FOLDER")
    words.add_argument("--host-python", metavar="PATH", help="a Python that can import FreeCAD")
    words.add_argument(
        "--no-host", metavar="WHY", default="no --host-python was given", help=argparse.SUPPRESS
    )
    asked = words.parse_args()
    unknown = set(asked.names) - set(names())
    if unknown:
        words.error(f"no such benchmark: {', '.join(sorted(unknown))}. There are: {', '.join(names())}")
    asked.output.mkdir(parents=True, exist_ok=True)
    found = {}
    for name in asked.names or names():
        (asked.output / f"{name}.json").unlink(missing_ok=True)  # an old run's figures are not this one's
        python = asked.host_python if asked.host_python and name in IN_HOST else sys.executable
        found[name] = run(name, python, asked.output, asked.quick)
        if name in IN_HOST and not asked.host_python:
            found[name].left_out = [f"{text} ({asked.no_host})" for text in found[name].left_out]
    text = table_text(found, quick=asked.quick)
    (asked.output / "table.txt").write_text(text + "\n", encoding="utf-8")
    print(
        f"\n{text}\n\nKept: {asked.output / 'table.txt'}; {plot_curves(found, asked.output / 'curves.png')}"
    )
    return int(any(row.met is False for each in found.values() for row in each.rows))


if __name__ == "__main__":
    sys.exit(main())
