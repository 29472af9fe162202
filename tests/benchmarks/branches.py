"""Branch coverage of the core: which way out of a decision does no test take?

    python -m tests.benchmarks.branches                             # core, validation, regression; some minutes
    python -m tests.benchmarks.branches --of piece/contact -- tests/core/test_contact_blocks.py
    python -m tests.benchmarks.branches --again                     # print the last measurement once more

Counts branches alone: lines, of which far more are covered, do not raise the figure. Needs `coverage` in the
environment (the extra "measure"). Prints each file that misses some as "line->line it never went to from there"
(exit: out of the function). Ends with code 1 below the share wanted, or where a test fails.
"""

from __future__ import annotations

import argparse
import importlib.util
import json
import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

from tests.running.places import ROOT, output_folder

SUITES = ("tests/core", "tests/validation", "tests/regression")
WANTED = 0.95


@dataclass(frozen=True)
class FileBranches:
    """One file's branches: how many there are, and the arcs (line, line gone to) that no test took."""

    path: str
    count: int
    missed: tuple[tuple[int, int], ...]

    def line(self) -> str:
        """The file's line of the list."""
        arcs = " ".join(f"{start}->{end if end > 0 else 'exit'}" for start, end in self.missed)
        return f"{len(self.missed):4} of {self.count:3}  {self.path}  {arcs}"


def branches_of(report: dict) -> list[FileBranches]:
    """The files of coverage's JSON report that have branches, those that miss most first."""
    found = [
        FileBranches(path, each["summary"]["num_branches"], tuple(map(tuple, each["missing_branches"])))
        for path, each in report["files"].items()
    ]
    return sorted((each for each in found if each.count), key=lambda each: (-len(each.missed), each.path))


def share(files: list[FileBranches]) -> float:
    """The share of all branches that some test took."""
    return 1 - sum(len(each.missed) for each in files) / sum(each.count for each in files)


def measure(folder: Path, words: list[str]) -> int:
    """Run the tests, watched; pytest's exit code. The watching lies in the folder afterwards."""
    settings = folder / "watch.ini"
    settings.write_text(
        "[run]\nbranch = True\nsource = movement_core\nrelative_files = True\n", encoding="utf-8"
    )
    _coverage(folder, "erase")
    return _coverage(folder, "run", f"--rcfile={settings}", "-m", "pytest", *(words or SUITES))


def read(folder: Path) -> dict:
    """Coverage's report of the watching in the folder."""
    report = folder / "branches.json"
    settings = folder / "watch.ini"
    if (
        not (folder / "seen").exists()
        or _coverage(folder, "json", "-q", f"--rcfile={settings}", "-o", str(report)) != 0
    ):
        raise SystemExit(f"no measurement in {folder}: run once without --again")
    return json.loads(report.read_text(encoding="utf-8"))


def _coverage(folder: Path, *words: str) -> int:
    environment = {**os.environ, "COVERAGE_FILE": str(folder / "seen")}
    return subprocess.run([sys.executable, "-m", "coverage", *words], cwd=ROOT, env=environment).returncode


def main() -> int:
    options = _options()
    if importlib.util.find_spec("coverage") is None:
        raise SystemExit(
            f'{sys.executable} has no coverage: install the extra "measure" of pyproject.toml there'
        )
    folder = Path(options.keep).resolve() if options.keep else output_folder() / "branches"
    folder.mkdir(parents=True, exist_ok=True)
    code = 0 if options.again else measure(folder, options.words)
    files = [each for each in branches_of(read(folder)) if options.of in each.path]
    if not files:
        raise SystemExit(f"--of {options.of}: no measured file with branches has this in its path")
    for each in files:
        if each.missed:
            print(each.line())
    count, missed = sum(each.count for each in files), sum(len(each.missed) for each in files)
    print(f"{count - missed} of {count} branches taken: {share(files):.1%} (wanted: {WANTED:.0%})")
    if code != 0:
        print(f"pytest ended with code {code}: the figure is of a run in which a test failed")
    return 0 if code == 0 and share(files) >= WANTED else 1


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(
        prog="python -m tests.benchmarks.branches",
        description=__doc__,
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("--of", default="", metavar="PART", help="only files whose path contains this")
    parser.add_argument(
        "--keep", metavar="FOLDER", help="keep the watching here, not in test-output/branches"
    )
    parser.add_argument("--again", action="store_true", help="no run: the last measurement once more")
    parser.add_argument("words", nargs="*", help="words for pytest after --; all three suites without")
    return parser.parse_args()


if __name__ == "__main__":
    sys.exit(main())
