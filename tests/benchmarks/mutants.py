"""Mutation testing of the physics: does a test notice when one sign, constant or comparison is wrong?

    python -m tests.benchmarks.mutants                     # 420 mutants of section, moisture and holding, seed 1
    python -m tests.benchmarks.mutants --count 50 --rooms section --seed 7
    python -m tests.benchmarks.mutants --only survivors.txt  # the survivors of an earlier run once more

Needs `cosmic-ray` (its operators make the mutants) and `coverage` in the environment; neither is needed elsewhere.
Works in copies in a temporary folder, never in the project. One mutant a place, places drawn at random with the seed.
Each mutant meets first the quick tests that ran its line, then every other test that did, until one fails; longer
than the time limit counts as killed. Takes about an hour of one processor. Ends with code 1 below the share wanted.
"""

from __future__ import annotations

import argparse
import compileall
import importlib
import os
import random
import resource
import shutil
import subprocess
import sys
import tempfile
import time
import xml.etree.ElementTree as ElementTree
from collections import Counter, defaultdict
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

from tests.running.places import ROOT

ROOMS = ("section", "moisture", "holding")
SUITES = ("tests/core", "tests/validation", "tests/regression")
WANTED = 0.85
MEMORY_BYTES = 6 << 30
FIRST_S = 8.0
"""Seconds of tests that a mutant meets first; what survives them meets the rest."""

SENSELESS = ("BitAnd", "BitOr", "BitXor", "LShift", "RShift", "_Is", "_IsNot", "Mod_", "_Mod", "FloorDiv")
SENSELESS_SIGNS = ("USub_Not", "USub_Invert", "Invert_")
"""Parts of the names of operators left out: on numbers they raise at once, or (is) change nothing."""


@dataclass(frozen=True, order=True)
class Place:
    """Where a mutant changes the code: the operator of the tool, and its how-manieth chance in the file."""

    path: str
    line: int
    column: int
    operator: str
    occurrence: int

    def __str__(self) -> str:
        return f"{self.path}:{self.line}:{self.column} {self.operator} {self.occurrence}"

    @classmethod
    def read(cls, text: str) -> Place:
        """From the text that str() gives."""
        where, operator, occurrence = text.split()[:3]
        path, line, column = where.split(":")
        return cls(path, int(line), int(column), operator, int(occurrence))


def sensible(operator: str) -> bool:
    """Whether mutants of this operator can tell anything."""
    if operator.startswith("ReplaceUnaryOperator"):
        return not any(part in operator for part in SENSELESS_SIGNS)
    if operator in ("ReplaceComparisonOperator_Is_IsNot", "ReplaceComparisonOperator_IsNot_Is"):
        return True
    return not any(part in operator for part in SENSELESS)


def places(rooms: list[str]) -> list[Place]:
    """Every mutant that the tool can make of the rooms."""
    from cosmic_ray.ast import ast_nodes, get_ast_from_path
    from cosmic_ray.plugins import get_operator, operator_names

    found = []
    names = [name for name in operator_names() if sensible(name.split("/")[-1])]
    operators = [(name, get_operator(name)) for name in names]
    for path in sorted(each for room in rooms for each in (ROOT / "movement_core" / room).glob("*.py")):
        nodes = list(ast_nodes(get_ast_from_path(path)))
        for name, operator in operators:
            if operator.arguments():
                continue
            spots = [start for node in nodes for start, _ in operator().mutation_positions(node)]
            relative = str(path.relative_to(ROOT))
            found += [
                Place(relative, start[0], start[1], name.split("/")[-1], at) for at, start in enumerate(spots)
            ]
    return found


def sample(found: list[Place], count: int, seed: int) -> list[Place]:
    """One mutant at each of so many spots of the code."""
    spots = defaultdict(list)
    for place in sorted(found):
        spots[place.path, place.line, place.column].append(place)
    draw = random.Random(seed)
    return [draw.choice(spots[spot]) for spot in draw.sample(sorted(spots), min(count, len(spots)))]


class Tests:
    """Which tests ran a line, and how long each takes."""

    def __init__(self, copy: Path, folder: Path, patience_s: float) -> None:
        """Run the suites once in the copy, watched, unless the folder holds the watching of an earlier run."""
        self._patience_s = patience_s
        if not (folder / "seen").exists():
            settings = folder / "watch.ini"
            settings.write_text(
                "[run]\nbranch = True\nsource = movement_core\nrelative_files = True\n", encoding="utf-8"
            )
            words = ["--cov=movement_core", "--cov-context=test", f"--cov-config={settings}", "--cov-report="]
            command = [
                sys.executable,
                "-m",
                "pytest",
                *SUITES,
                "-q",
                *words,
                f"--junitxml={folder / 'times'}",
            ]
            environment = {**os.environ, "COVERAGE_FILE": str(folder / "seen")}
            subprocess.run(command, cwd=copy, env=environment, check=False)
        from coverage import CoverageData

        self._data = CoverageData(str(folder / "seen"))
        self._data.read()
        self.seconds: dict[str, float] = {}
        self.failed: set[str] = set()
        for case in ElementTree.parse(folder / "times").getroot().iter("testcase"):
            name = _test_name(case, copy)
            self.seconds[name] = float(case.get("time", 0.0))
            if case.find("failure") is not None or case.find("error") is not None:
                self.failed.add(name)
        listed = [sys.executable, "-m", "pytest", "--collect-only", "-o", "addopts=", "-q", *SUITES]
        there = subprocess.run(listed, cwd=copy, capture_output=True, encoding="utf-8", check=True).stdout
        self.failed |= set(self.seconds) - set(there.splitlines())  # a watching kept from before may be older
        print(
            f"{len(self.seconds)} tests, {len(self.failed)} fail without any mutant, or are gone", flush=True
        )
        for name in sorted(self.failed):
            print(f"  left out: {name}")

    def of(self, place: Place) -> list[list[str]]:
        """Tests for a mutant: the quick ones that ran its line, then the others."""
        seen = self._data.contexts_by_lineno(place.path)
        names = {context.rpartition("|")[0] for context in seen.get(place.line, [])} - {""}
        # What stands outside functions ran at import: every test that ran a line of the file may notice it.
        names = names or {each.rpartition("|")[0] for line in seen.values() for each in line} - {""}
        names = (names & set(self.seconds)) - self.failed
        room = place.path.split("/")[1]
        own = [name for name in names if room in name.split("::")[0]]
        order = sorted(own, key=self._time) + sorted(names - set(own), key=self._time)
        first, total = [], 0.0
        for name in order:
            total += self._time(name)
            if total > FIRST_S:
                break
            first.append(name)
        rest, total = [], 0.0
        for name in order[len(first) :]:
            total += self._time(name)
            if total > self._patience_s:
                break
            rest.append(name)
        return [first, rest]

    def _time(self, name: str) -> float:
        return self.seconds.get(name, 0.1)


def _test_name(case: ElementTree.Element, copy: Path) -> str:
    """The name for pytest of a test in its report."""
    words = (case.get("classname") or "").split(".")
    at = next(
        (k for k in range(len(words), 0, -1) if (copy / "/".join(words[:k])).with_suffix(".py").exists()), 0
    )
    return "::".join(["/".join(words[:at]) + ".py", *words[at:], case.get("name") or ""])


def changed(place: Place) -> str:
    """The file with the mutant in it."""
    from cosmic_ray.mutating import mutate_code
    from cosmic_ray.plugins import get_operator

    text = (ROOT / place.path).read_text(encoding="utf-8")
    mutant = mutate_code(text, get_operator(f"core/{place.operator}")(), place.occurrence)
    if mutant is None:
        raise LookupError(f"no such mutant: {place}")
    return str(mutant)


def fails(copy: Path, tests: list[str], limit_s: float) -> bool:
    """Whether one of the tests fails in the copy: in a child of this process, where numpy is loaded already."""
    child = os.fork()
    if child == 0:
        _run_and_leave(copy, tests, limit_s)
    end = time.monotonic() + 10 * limit_s  # one that waits for ever uses no processor
    while time.monotonic() < end:
        done, status = os.waitpid(child, os.WNOHANG)
        if done:
            return _failed(os.waitstatus_to_exitcode(status), tests)
        time.sleep(0.02)
    os.kill(child, 9)
    os.waitpid(child, 0)
    return True


def _failed(code: int, tests: list[str]) -> bool:
    """What pytest's exit code says: 1 a test failed, 2 or 4 the code cannot be imported, below 0 it crashed.

    4 may also mean that a test is not there, but only tests that were listed are asked for.
    """
    if code in (0, 1, 2, 4) or code < 0:
        return code != 0
    raise RuntimeError(f"pytest ended with {code} for {tests}")


def _run_and_leave(copy: Path, tests: list[str], limit_s: float) -> None:
    code = 3
    try:
        os.chdir(copy)
        for name in [each for each in sys.modules if each.split(".")[0] in ("tests", "movement_core")]:
            del sys.modules[name]
        sys.path[:] = [str(copy), *(each for each in sys.path if each not in ("", str(ROOT)))]
        resource.setrlimit(resource.RLIMIT_AS, (MEMORY_BYTES, MEMORY_BYTES))
        # Of the processor, not of the clock: on a busy machine a slow test is no kill.
        resource.setrlimit(resource.RLIMIT_CPU, (int(limit_s), int(limit_s)))
        silent = os.open(os.devnull, os.O_WRONLY)
        os.dup2(silent, 1)
        os.dup2(silent, 2)
        import pytest

        words = ["-x", "-q", "-p", "no:cacheprovider", "--tb=no", "-p", "no:pytest_cov"]
        words.append("--assert=plain")  # pytest cannot rewrite what is imported already, and says so
        code = int(pytest.main([*words, *tests]))
    finally:
        os._exit(code)


def survives(place: Place, copy: Path, tests: Tests, limit_s: float) -> bool:
    """Whether every test passes with the mutant in place."""
    file = copy / place.path
    kept = file.read_bytes()
    file.write_text(changed(place), encoding="utf-8")
    for stale in file.parent.glob(f"__pycache__/{file.stem}.*"):
        stale.unlink()
    try:
        return not any(fails(copy, some, limit_s) for some in tests.of(place) if some)
    finally:
        file.write_bytes(kept)


def a_copy(folder: Path) -> Path:
    """The project, without its history and its output."""
    leave_out = shutil.ignore_patterns(".git", "test-output", "__pycache__", ".*_cache", ".hypothesis")
    return Path(shutil.copytree(ROOT, folder, ignore=leave_out))


def main() -> int:
    options = _options()
    folder = Path(options.keep or tempfile.mkdtemp(prefix="mutants-"))
    folder.mkdir(exist_ok=True)
    os.environ["HYPOTHESIS_STORAGE_DIRECTORY"] = str(folder / "hypothesis")
    for name in ("pytest", "hypothesis", "numpy", "numpy.testing", "cosmic_ray.mutating"):
        importlib.import_module(name)  # once here, for every child
    copies = [folder / f"copy{k}" for k in range(options.jobs)]
    for copy in copies:
        shutil.rmtree(copy, ignore_errors=True)
        a_copy(copy)
    tests = Tests(copies[0], folder, options.patience)
    if options.only:
        lines = Path(options.only).read_text(encoding="utf-8").splitlines()
        chosen = [Place.read(line) for line in lines if line.strip() and not line.startswith("#")]
    else:
        chosen = sample(places(options.rooms), options.count, options.seed)
    for copy in copies:
        compileall.compile_dir(copy / "movement_core", quiet=2)
        compileall.compile_dir(copy / "tests", quiet=2)
    sys.dont_write_bytecode = True
    if fails(copies[0], tests.of(chosen[0])[0], options.limit):
        raise RuntimeError("the tests fail without any mutant")
    survivors: list[Place] = []
    with ThreadPoolExecutor(options.jobs) as pool:
        free = list(copies)

        def meet(place: Place) -> bool:
            copy = free.pop()
            try:
                return survives(place, copy, tests, options.limit)
            finally:
                free.append(copy)

        for number, (place, alive) in enumerate(zip(chosen, pool.map(meet, chosen)), 1):
            survivors += [place] if alive else []
            print(f"{number:4} {'ALIVE ' if alive else 'killed'} {place}", flush=True)
    (folder / "survivors.txt").write_text(
        "".join(f"{place}\n" for place in sorted(survivors)), encoding="utf-8"
    )
    return _report(chosen, survivors, folder)


def _report(chosen: list[Place], survivors: list[Place], folder: Path) -> int:
    print(f"\n{'room':12}{'mutants':>9}{'killed':>8}{'share':>8}")
    all_of, alive = (Counter(place.path.split("/")[1] for place in some) for some in (chosen, survivors))
    for room, count in sorted(all_of.items()):
        print(f"{room:12}{count:9}{count - alive[room]:8}{1 - alive[room] / count:8.1%}")
    share = 1 - len(survivors) / len(chosen)
    print(f"{'all':12}{len(chosen):9}{len(chosen) - len(survivors):8}{share:8.1%}\n")
    for kind, count in Counter(place.operator for place in survivors).most_common():
        print(f"{count:4} alive of {kind}")
    print(f"survivors: {folder / 'survivors.txt'}")
    return 0 if share >= WANTED else 1


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m tests.benchmarks.mutants", description=__doc__)
    parser.add_argument("--rooms", nargs="+", default=list(ROOMS), help="rooms of movement_core")
    parser.add_argument("--count", type=int, default=420, help="how many mutants")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--jobs", type=int, default=1, help="mutants at once")
    parser.add_argument(
        "--limit", type=float, default=120.0, metavar="S", help="processor seconds for the tests of one"
    )
    parser.add_argument("--patience", type=float, default=45.0, metavar="S", help="… and of further tests")
    parser.add_argument("--only", metavar="FILE", help="the mutants of this list instead of a sample")
    parser.add_argument("--keep", metavar="FOLDER", help="keep copies, watching and survivors here")
    return parser.parse_args()


if __name__ == "__main__":
    sys.exit(main())
