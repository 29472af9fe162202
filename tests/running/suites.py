"""One suite in one place: the command, the run, the count."""

from __future__ import annotations

import os
import signal
import subprocess
import threading
import time
import xml.etree.ElementTree as ElementTree
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

from tests.running.places import ROOT, fresh

PYTEST_SUITES = ("core", "validation", "regression")
TOOL_SUITES = ("style", "types", "benchmarks")
SOURCES = ("movement_core", "workbench_pkg", "tests")
HOST_SUITES = ("host", "gui")
SUITES = (*PYTEST_SUITES, *TOOL_SUITES, *HOST_SUITES)
"""Every suite; all but the benchmarks run when none is named."""

LIMIT_S = 40 * 60
"""For a suite that hangs: the slowest takes half of it where two run side by side on two cores."""


@dataclass(frozen=True)
class Outcome:
    """What a suite gave: counts, seconds, where it ran (found out by the suite itself), a remark, its log."""

    suite: str
    where: str
    passed: int
    failed: int
    skipped: int
    seconds: float
    remark: str = ""
    log: Path | None = None
    is_tool: bool = False


@dataclass(frozen=True)
class Job:
    """One command to run.

    report   the JUnit file that it writes, or None for a tool that speaks by its exit code
    where    the name of the place, replaced by what the suite itself finds out where it does
    limit_s  seconds that each command may take, or None: as long as it needs
    """

    suite: str
    where: str
    commands: list[list[str]]
    folder: Path
    report: Path | None = None
    environment: dict[str, str] = field(default_factory=dict)
    limit_s: float | None = LIMIT_S

    @property
    def name(self) -> str:
        """Short name for progress lines."""
        return f"{self.suite} on {self.where}"


class Runner:
    """Runs jobs, at most one copy of it for a whole test run; can stop what still runs."""

    def __init__(self, *, live: bool) -> None:
        """live: let the only job write to the terminal instead of to its log."""
        self._live = live
        self._running: set[subprocess.Popen[bytes]] = set()
        self._lock = threading.Lock()

    def run(self, job: Job) -> Outcome:
        """Run the job to its end, or to the time limit."""
        began = time.monotonic()
        log = job.folder / "log.txt"
        remark = ""
        code = 0
        with log.open("wb") as file:
            for command in job.commands:
                one, late = self._call(command, job, None if self._live else file)
                code = code or one
                if late:
                    remark = f"stopped after {LIMIT_S // 60} minutes"
        seconds = time.monotonic() - began
        if job.report is None:
            failed = int(code != 0 or not job.commands)
            remark = remark if job.commands else "nothing to run"
            return Outcome(job.suite, job.where, 1 - failed, failed, 0, seconds, remark, log, is_tool=True)
        return _count(job, code, seconds, remark, log)

    def stop(self) -> None:
        """End every command that still runs, with its children."""
        with self._lock:
            for process in self._running:
                _end(process)

    def _call(self, command: list[str], job: Job, log: object) -> tuple[int, bool]:
        process = subprocess.Popen(
            command,
            cwd=ROOT,
            env={**os.environ, **job.environment},
            stdin=None if self._live else subprocess.DEVNULL,
            stdout=log,  # type: ignore[call-overload]
            stderr=None if log is None else subprocess.STDOUT,
            start_new_session=not self._live,
        )
        with self._lock:
            self._running.add(process)
        try:
            return process.wait(None if self._live else job.limit_s), False
        except subprocess.TimeoutExpired:
            _end(process)
            return process.wait(), True
        finally:
            with self._lock:
                self._running.discard(process)


def _end(process: subprocess.Popen[bytes]) -> None:
    for how, patience_s in ((signal.SIGTERM, 10), (signal.SIGKILL, 10)):
        try:
            os.killpg(process.pid, how)
            process.wait(patience_s)
            return
        except ProcessLookupError:
            return
        except subprocess.TimeoutExpired:
            continue


def _count(job: Job, code: int, seconds: float, remark: str, log: Path) -> Outcome:
    """Counts from the report; a suite that ran nothing, or died before it could report, has failed."""
    assert job.report is not None
    where, passed, failed, skipped = job.where, 0, 0, 0
    try:
        suites = list(ElementTree.parse(job.report).getroot().iter("testsuite"))
    except (OSError, ElementTree.ParseError):
        remark = remark or f"ended with code {code} before it could report"
        return Outcome(job.suite, where, 0, 1, 0, seconds, remark, log)
    for suite in suites:
        bad = int(suite.get("failures", 0)) + int(suite.get("errors", 0))
        skipped += int(suite.get("skipped", 0))
        failed += bad
        passed += int(suite.get("tests", 0)) - bad - int(suite.get("skipped", 0))
        for fact in suite.iter("property"):
            if fact.get("name") == "where":
                where = f"{job.where}: {fact.get('value')}"
            elif fact.get("name") == "remark":
                remark = "; ".join(filter(None, (remark, fact.get("value"))))
    if passed + failed == 0:
        failed, remark = 1, remark or "ran no test"
    elif code != 0 and failed == 0:
        failed, remark = 1, remark or f"all passed, yet it ended with code {code}"
    return Outcome(job.suite, where, passed, failed, skipped, seconds, remark, log)


def what_to_run(suite: str, extra: Sequence[str]) -> list[str]:
    """Pytest's words for a suite: its folder, unless the user named files of it, and what the user added."""
    folder = f"tests/{suite}"
    named = any(word.startswith(folder) for word in extra)
    return list(extra) if named else [folder, *extra]


def core_jobs(
    suites: list[str],
    python: Path,
    output: Path,
    environment: dict[str, str],
    pytest_arguments: list[str],
    benchmark_words: Sequence[str] = (),
) -> list[Job]:
    """The jobs that the core's Python begins, of those named; benchmark_words: for tests/benchmarks/__main__.py."""
    version, numpy_version = _versions(python)
    where = f"Python {version}, numpy {numpy_version}"
    # The types of numpy are written for the Python that it was installed for, not for an older one.
    language = ".".join(version.split(".")[:2])
    jobs = []
    for suite in (name for name in suites if name in PYTEST_SUITES):
        folder = fresh(output / suite)
        command = [
            *(str(python), "-m", "pytest", f"--junitxml={folder / 'report.xml'}"),
            *("-o", f"cache_dir={folder / 'cache'}", *what_to_run(suite, pytest_arguments)),
        ]
        wanted = {**environment, "HEARTSIDE_REPORT_FOLDER": str(folder)}  # where validation writes its report
        jobs.append(Job(suite, where, [command], folder, folder / "report.xml", wanted))
    run = [str(python), "-m"]
    tools = {
        "style": [[*run, "ruff", "check", *SOURCES], [*run, "ruff", "format", "--check", *SOURCES]],
        "types": [[*run, "mypy", "--python-version", language]],
        "benchmarks": [[*run, "tests.benchmarks", "--output", str(output / "benchmarks"), *benchmark_words]],
    }
    if "types" in suites and language == "3.10":
        print("types: left out, the numpy for Python 3.10 declares less than we rely on; use a newer Python")
        suites = [name for name in suites if name != "types"]
    for suite in (name for name in suites if name in TOOL_SUITES):
        folder = fresh(output / suite)
        limit_s = None if suite == "benchmarks" else LIMIT_S
        jobs.append(Job(suite, where, tools[suite], folder, None, environment, limit_s))
    return jobs


def _versions(python: Path) -> tuple[str, str]:
    """Versions of an environment's Python and of its numpy."""
    code = "import sys, numpy; print('%d.%d.%d' % sys.version_info[:3], numpy.__version__)"
    words = subprocess.run(
        [str(python), "-c", code], capture_output=True, encoding="utf-8", check=True
    ).stdout.split()
    return words[0], words[1]
