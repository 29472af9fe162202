"""The test command: reads the arguments, sets up, runs the suites side by side, reports."""

from __future__ import annotations

import argparse
import os
import shlex
import sys
import traceback
from collections.abc import Callable
from concurrent.futures import FIRST_COMPLETED, Future, ThreadPoolExecutor, wait
from pathlib import Path

from tests.running import report, suites, venvs
from tests.running.hosts import (
    RELEASES,
    ChrootHost,
    LocalHost,
    chosen,
    local_name,
    packages_for_local,
    why_no_chroots,
)
from tests.running.places import ROOT, fresh, output_folder, tool_environment
from tests.running.suites import HOST_SUITES, SUITES, Job, Outcome, Runner
from workbench_pkg.setup import SetupError, ensure_packages, find_host

Step = Callable[[], "list[Step]"]
"""A piece of work; returns the steps that it makes possible."""

DESCRIPTION = """Run the tests. Without --install nothing is installed: what is missing is said, with the
command that brings it. Suites: core, validation, regression (no host), style, types (tools), host (inside
FreeCAD), gui (in its window, on a virtual screen), benchmarks. All but the benchmarks run when none is named.
Arguments after -- go to pytest, or name single benchmarks."""


class TestRun:
    """One call of the test command."""

    def __init__(self, options: argparse.Namespace, extra: list[str], again: str) -> None:
        """extra: arguments for pytest; again: the command that would install what is missing."""
        self.names: list[str] = options.suites or [name for name in SUITES if name != "benchmarks"]
        self.hosts = chosen(options.hosts) if any(name in HOST_SUITES for name in self.names) else []
        self.install: bool = options.install
        self.quick: bool = options.quick
        self.workers: int = options.jobs or len(os.sched_getaffinity(0))
        self.extra = extra
        self.again = again
        self.output = output_folder()
        self.outcomes: list[Outcome] = []
        single = len(self.names) == 1 and len(self.hosts) <= 1
        self.runner = Runner(live=single)

    def run(self) -> int:
        """Do it all; the exit code."""
        first = self._set_up()
        pool = ThreadPoolExecutor(self.workers)
        pending: set[Future[list[Step]]] = {pool.submit(step) for step in first}
        try:
            while pending:
                done, pending = wait(pending, return_when=FIRST_COMPLETED)
                for future in done:
                    pending |= {pool.submit(step) for step in future.result()}
        finally:  # also when interrupted: nothing more is begun, nothing is left running
            pool.shutdown(wait=False, cancel_futures=True)
            self.runner.stop()
            pool.shutdown()
        return self._report()

    def _set_up(self) -> list[Step]:
        """All that needs the system's package manager, then the first steps: the longest ones first."""
        core = [name for name in self.names if name not in HOST_SUITES]
        in_host = [name for name in self.names if name in HOST_SUITES]
        local = local_name() in self.hosts
        packages = venvs.packages_for("core") if core else []
        if local or ("benchmarks" in core and self.install):
            packages += [*packages_for_local(in_host), *venvs.packages_for("host")]
        if packages:
            unique = list(dict.fromkeys(packages))
            ensure_packages(unique, install=self.install, why="these tests", again=self.again)
        steps = self._chroot_steps(in_host)
        if core:
            steps.append(lambda: self._core_steps(core))
        if local:
            steps.append(lambda: self._local_steps(in_host))
        return steps

    def _chroot_steps(self, in_host: list[str]) -> list[Step]:
        others = [ChrootHost(name) for name in self.hosts if name != local_name()]
        if not others:
            return []
        try:
            ensure_packages(
                ["debootstrap", "debian-archive-keyring"],
                install=self.install,
                why=f"the hosts {', '.join(each.name for each in others)}",
                again=self.again,
            )
            why = why_no_chroots()
        except SetupError as error:
            why = str(error)
        steps: list[Step] = []
        for each in others:
            if why:
                self._leave_out(each.name, why)
            else:
                steps.append(lambda host=each: self._build_steps(host, in_host))  # type: ignore[misc]
        return steps

    def _build_steps(self, host: ChrootHost, in_host: list[str]) -> list[Step]:
        try:
            if not host.ready():
                if not self.install:
                    raise SetupError(f"it is not built yet. Type:\n  {self.again}")
                folder = fresh(self.output / f"build-{host.name}")
                print(f"setting up: building the host {host.name}", file=sys.stderr, flush=True)
                host.build(folder / "log.txt")
        except SetupError as error:
            self._leave_out(host.name, str(error))
            return []
        return [self._step(host.job(suite, self.output, self.extra)) for suite in in_host]

    def _core_steps(self, names: list[str]) -> list[Step]:
        try:
            python = venvs.ensure_core(install=self.install, again=self.again)
        except SetupError as error:
            return self._not_set_up(names, error)
        words = self._benchmark_words() if "benchmarks" in names else []
        jobs = suites.core_jobs(names, python, self.output, tool_environment(), self.extra, words)
        return [self._step(job) for job in jobs]

    def _benchmark_words(self) -> list[str]:
        """For tests/benchmarks/__main__.py: the host's Python, or why there is none."""
        alone = self.names == ["benchmarks"]  # else the words after -- are pytest's
        words = [*(self.extra if alone else []), *(["--quick"] if self.quick else [])]
        try:
            if find_host() is None:
                raise SetupError(f"FreeCAD is not installed on this machine. Type:\n  {self.again}")
            return [*words, "--host-python", str(venvs.ensure_host(install=self.install, again=self.again))]
        except SetupError as error:
            return [*words, "--no-host", " ".join(str(error).split())]

    def _local_steps(self, names: list[str]) -> list[Step]:
        try:
            python = venvs.ensure_host(install=self.install, again=self.again)
        except SetupError as error:
            return self._not_set_up(names, error)
        host = LocalHost(local_name(), python)
        return [self._step(host.job(suite, self.output, self.extra)) for suite in names]

    def _step(self, job: Job) -> Step:
        def step() -> list[Step]:
            self._add(self.runner.run(job))
            return []

        return step

    def _add(self, outcome: Outcome) -> None:
        self.outcomes.append(outcome)
        print(report.line(outcome), flush=True)
        text = report.tail(outcome)
        if text:
            print(text, flush=True)

    def _leave_out(self, name: str, why: str) -> None:
        """A host that was asked for but cannot be had is a failure; nobody else asks for it."""
        self._add(Outcome("host", name, 0, 1, 0, 0.0, f"left out: {why}"))

    def _not_set_up(self, names: list[str], error: SetupError) -> list[Step]:
        print(error, flush=True)
        for name in names:
            self._add(Outcome(name, "-", 0, 1, 0, 0.0, "not set up"))
        return []

    def _report(self) -> int:
        order = {name: place for place, name in enumerate(SUITES)}
        self.outcomes.sort(key=lambda each: (order[each.suite], each.where))
        print()
        print(report.table(self.outcomes))
        others = [name for name in chosen("all") if name not in self.hosts]
        if self.hosts and others:
            named = ", ".join(f"{name} ({RELEASES.get(name, 'its own')})" for name in others)
            print(f"\nHosts not asked for: {named}; --hosts all runs them")
        print(f"\nLogs, reports and pictures: {_short(self.output)}\n")
        print(report.total(self.outcomes), flush=True)
        return 1 if any(each.failed for each in self.outcomes) or not self.outcomes else 0


def _short(folder: Path) -> str:
    return str(folder.relative_to(ROOT)) if folder.is_relative_to(ROOT) else str(folder)


def parse(argv: list[str]) -> tuple[argparse.Namespace, list[str]]:
    """Options, and the arguments for pytest."""
    ours, extra = argv, []
    if "--" in argv:
        at = argv.index("--")
        ours, extra = argv[:at], argv[at + 1 :]
    parser = argparse.ArgumentParser(prog="python3 -m tests", description=DESCRIPTION)
    parser.add_argument("suites", nargs="*", metavar="SUITE", choices=[*SUITES, []], help=", ".join(SUITES))
    parser.add_argument("--install", action="store_true", help="install what is missing")
    parser.add_argument(
        "--hosts", default="local", metavar="NAME,…", help="local (default), all, or releases"
    )
    parser.add_argument(
        "--report", action="store_true", help="keep the validation's report as tests/validation/REPORT.md"
    )
    parser.add_argument(
        "--quick", action="store_true", help="benchmarks smaller and fewer: minutes instead of an hour"
    )
    parser.add_argument("--jobs", type=int, metavar="N", help="suites at once (default: one a processor)")
    return parser.parse_args(ours), extra


def main(argv: list[str]) -> int:
    """Exit code of the test command: 0 all passed, 1 something failed, 2 it could not be set up."""
    options, extra = parse(argv)
    ours = argv[: argv.index("--")] if "--" in argv else argv
    again = shlex.join(["python3", "-m", "tests", *dict.fromkeys(["--install", *ours])])
    os.chdir(ROOT)
    if options.report:
        os.environ["HEARTSIDE_REPORT_KEPT"] = "1"  # read by tests/validation/conftest.py
    try:
        return TestRun(options, extra, again).run()
    except SetupError as error:
        print(f"Not ready to test: {error}", file=sys.stderr)
        return 2
    except KeyboardInterrupt:
        print("stopped", file=sys.stderr)
        return 130
    except Exception:
        traceback.print_exc()
        return 2
