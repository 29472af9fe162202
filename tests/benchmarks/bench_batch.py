"""A batch of many models: two hosts against one, and memory over a long run.

    python3 -m tests.benchmarks.bench_batch [--quick] [--models N] [--boards N] [--rounds N] [--long N]

Runs the command line as a user would, on copies of made-up models written through the host (boards of several sizes and
woods; nothing of it exists). Two figures, both of one run: how many times as fast N models are checked by two hosts as
by one, start of the hosts included, the cache left out; and how much memory a host and the command line hold after
``--long`` models against what they held after a fifth of them. Judged are the ratios; exit 1 when one is missed. Two
processors are needed to themselves: what else runs only adds to the time, so that the shortest of each is judged over
the rounds, and the load of the machine is told beside every one.
"""

from __future__ import annotations

import argparse
import math
import os
import subprocess
import sys
import tempfile
import threading
import time
from pathlib import Path

from tests.benchmarks.rows import Measured, Row, finish
from workbench_pkg.setup import find_host, run_in_host

ROOT = Path(__file__).resolve().parents[2]
FASTER, FLAT = 1.7, 1.15
MAKER = """
import sys
import FreeCAD as App

woods = ("white oak", "beech, American", "black walnut", "hard maple", "Scots pine")
for number in range(int(sys.argv[2])):
    doc = App.newDocument("made", hidden=True)
    for board in range(int(sys.argv[3])):
        box = doc.addObject("Part::Box", "Board")
        box.Length, box.Width, box.Height = 600 + 7 * number % 400, 90 + 3 * board, 20 + number % 5
        wood = woods[(number + board) % 5]
        box.Label = f"Board {board + 1} wood{{{wood}; pith {board} -{60 + number % 40}; built 9}}"
        box.Placement.Base = App.Vector(0, 150 * board, 0)
    doc.recompute()
    doc.saveAs(f"{sys.argv[1]}/model-{number:04}.FCStd")
    App.closeDocument(doc.Name)
"""


def make_models(folder: Path, count: int, boards: int) -> None:
    script = folder.parent / "make.py"
    script.write_text(MAKER, encoding="utf-8")
    folder.mkdir()
    run = run_in_host(script, [str(folder), str(count), str(boards)])
    assert run.returncode == 0, run.chatter


def check(folder: Path, jobs: int, watch: Watch | None = None) -> tuple[float, float]:
    """Seconds that a check of a folder takes, and seconds of processors that it uses."""
    began, used = time.perf_counter(), _used_s()
    process = subprocess.Popen(
        [sys.executable, "-m", "workbench_pkg", "check", str(folder), "--no-cache", "--no-settings",
         "--format", "jsonl", "--jobs", str(jobs), "--year", "museum", "--date", "2026-01-15"],
        cwd=ROOT, stdout=subprocess.PIPE, encoding="utf-8",
    )  # fmt: skip
    assert process.stdout is not None
    for count, _ in enumerate(process.stdout, 1):
        if watch is not None:
            watch.models = count
            watch.process = process.pid
    assert process.wait() in (0, 1)
    return time.perf_counter() - began, _used_s() - used


def _used_s() -> float:
    """Seconds of processors that programs started by this one have used."""
    spent = os.times()
    return spent.children_user + spent.children_system


class Watch:
    """Memory of the command line and of its hosts over a run, in MB by the number of models done."""

    def __init__(self) -> None:
        self.models, self.process = 0, 0
        self.held: list[tuple[int, float, float]] = []
        self._over = threading.Event()
        self._thread = threading.Thread(target=self._look)

    def __enter__(self) -> Watch:
        self._thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self._over.set()
        self._thread.join()

    def _look(self) -> None:
        while not self._over.wait(0.25):
            if self.process:
                hosts = _children(self.process)
                self.held.append(
                    (self.models, _memory_mb(self.process), max(map(_memory_mb, hosts), default=0.0))
                )

    def between(self, first: float, last: float, which: int) -> float:
        """The most that was held from one share of the run to another."""
        end = max((models for models, *_ in self.held), default=0)
        found = [held[which] for held in self.held if first * end <= held[0] <= last * end]
        return max(found, default=math.nan)


def _children(process: int) -> list[int]:
    found = []
    for thread in Path(f"/proc/{process}/task").glob("*/children"):
        try:
            found += [int(word) for word in thread.read_text(encoding="utf-8").split()]
        except OSError:
            continue
    return found


def _memory_mb(process: int) -> float:
    try:
        pages = int(Path(f"/proc/{process}/statm").read_text(encoding="utf-8").split()[1])
    except (OSError, IndexError):
        return 0.0
    return pages * os.sysconf("SC_PAGE_SIZE") / 2**20


def measure(asked: argparse.Namespace) -> Measured:
    if find_host() is None or len(os.sched_getaffinity(0)) < 2:
        why = "no FreeCAD on this machine" if find_host() is None else "one processor only"
        return Measured(left_out=[f"two hosts against one, and memory over a long run: {why}"])
    with tempfile.TemporaryDirectory(prefix="heartside-bench-") as name:
        folder = Path(name, "models")
        make_models(folder, asked.models, asked.boards)
        ones, twos = [], []
        for number in range(asked.rounds):
            load = os.getloadavg()[0]
            (one, one_used), (two, two_used) = check(folder, 1), check(folder, 2)
            ones.append(one)
            twos.append(two)
            print(f"round {number + 1}: {asked.models} models, one host {one:.1f} s, two {two:.1f} s: "
                  f"{one / two:.2f} times as fast (load before it {load:.1f}; processors busy {one_used:.1f} and "
                  f"{two_used:.1f} s)", flush=True)  # fmt: skip
        least = None if asked.quick else FASTER  # few models: the start of the hosts is most of it
        rows = [
            Row(f"two hosts, {asked.models} models: times as fast", "one host", min(ones) / min(twos), least)
        ]
        long = Path(name, "long")
        make_models(long, asked.long, 1)
        with Watch() as watch:
            check(long, 1, watch)
        for what, which in (("command line", 1), ("host", 2)):
            early, late = watch.between(0.1, 0.3, which), watch.between(0.8, 1.0, which)
            print(f"the {what} holds {early:.0f} MB after a fifth, {late:.0f} MB at the end")
            at = f"memory of the {what} after {asked.long} models"
            rows.append(Row(at, "after a fifth of them", late / early, most=FLAT))
    return Measured(rows)


WORDS = (
    ("--models", 200, 16, "models for the comparison of two hosts with one"),
    ("--boards", 12, 12, "boards in each of them"),
    ("--rounds", 3, 1, "rounds of it"),
    ("--long", 1000, 240, "models of the long run"),
)

if __name__ == "__main__":
    finish(measure, __doc__, WORDS)
