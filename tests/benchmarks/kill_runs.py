"""Runs of annotate and sheet killed at random moments: ``python -m tests.benchmarks.kill_runs --count 500``.

Kills the whole group of processes with SIGKILL. After each: the input is the same to the last byte, and at the target
stands nothing, or the file of before, or a whole new one. After all: a run that is let be clears what the killed left.
"""

from __future__ import annotations

import argparse
import contextlib
import hashlib
import os
import random
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import zipfile
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
MODEL = ROOT / "tests" / "documents" / "frozen-0.1-host-0.20.FCStd"
ENDINGS = {"annotate": ".FCStd", "sheet": ".pdf"}
PATIENCE_S = 600.0  # of a run that nobody kills: a busy machine is no fault of it


@dataclass
class Tally:
    """What came of the runs."""

    killed: int = 0
    finished: int = 0  # before their moment came
    absent: int = 0
    old: int = 0
    new: int = 0
    problems: list[str] = field(default_factory=list)


def start(command: str, model: Path, target: Path) -> subprocess.Popen[bytes]:
    words = [sys.executable, "-m", "workbench_pkg", command, str(model), "--output", str(target), "--force"]
    none = subprocess.DEVNULL
    return subprocess.Popen(words, cwd=ROOT, stdin=none, stdout=none, stderr=none, start_new_session=True)


def let_be(command: str, model: Path, target: Path) -> float:
    """How long a run takes that nobody kills."""
    began = time.monotonic()
    code = start(command, model, target).wait(PATIENCE_S)
    if code == 2 or not is_whole(target):
        raise AssertionError(f"{command} by itself fails: {code}")
    return time.monotonic() - began


def is_whole(target: Path) -> bool:
    data = target.read_bytes()
    if target.suffix == ".pdf":
        return data.startswith(b"%PDF-") and data.rstrip().endswith(b"%%EOF")
    with zipfile.ZipFile(target) as archive:
        return archive.testzip() is None and {"Document.xml", "GuiDocument.xml"} <= set(archive.namelist())


def hash_of(path: Path) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()


def kill_one(
    command: str, moment_s: float, older: bool, model: Path, folder: Path, number: int, tally: Tally
) -> None:
    target = folder / f"{command}-{number}{ENDINGS[command]}"
    before = hash_of(model)
    if older:
        target.write_bytes(b"what was there before")
    run = start(command, model, target)
    with contextlib.suppress(subprocess.TimeoutExpired):
        run.wait(moment_s)
    done = run.poll() is not None
    with contextlib.suppress(ProcessLookupError):
        os.killpg(run.pid, signal.SIGKILL)
    run.wait()
    tally.finished += done
    tally.killed += not done
    if hash_of(model) != before:
        tally.problems.append(f"{number}: the input changed")
    if not target.exists():
        tally.absent += 1
        if older:
            tally.problems.append(f"{number}: the earlier output is gone")
    elif older and target.read_bytes() == b"what was there before":
        tally.old += 1
    elif is_whole(target):
        tally.new += 1
    else:
        tally.problems.append(f"{number}: half an output after {moment_s:.2f} s of {command}")


def kill_runs(count: int, folder: Path, seed: int = 1, jobs: int = 2) -> Tally:
    """Kill so many runs, at moments spread over somewhat more than their duration."""
    rng, tally = random.Random(seed), Tally()
    model = folder / "model.FCStd"
    shutil.copyfile(MODEL, model)
    lasts = {
        command: let_be(command, model, folder / f"whole{ending}") for command, ending in ENDINGS.items()
    }
    plan = []
    for number in range(count):
        command = ("annotate", "sheet")[number % 2]
        # The last half of a run writes; the first reads and works out. Runs side by side take longer than one alone.
        share = rng.uniform(0.5, 1.5) if rng.random() < 0.6 else rng.uniform(0, 1.3)
        plan.append((command, share * lasts[command], rng.random() < 0.5, model, folder, number, tally))
    with ThreadPoolExecutor(jobs) as pool:
        for done, _ in enumerate(pool.map(lambda one: kill_one(*one), plan), 1):
            if done % 50 == 0:
                print(f"{done} of {count} runs, {len(tally.problems)} problems", file=sys.stderr, flush=True)
    time.sleep(0.2)
    left = [path for path in folder.glob(".heartside-*") if any(path.iterdir())]
    let_be("annotate", model, folder / "last.FCStd")
    let_be("sheet", model, folder / "last.pdf")
    still = [path.name for path in folder.glob(".heartside-*") if any(path.iterdir())]
    if still:
        tally.problems.append(f"not cleared away: {still}")
    print(f"{count} runs: {tally.killed} killed, {tally.finished} done before; target absent {tally.absent}, "
          f"as before {tally.old}, new and whole {tally.new}; {len(left)} work folders left, {len(still)} after "
          f"the next run; {len(tally.problems)} problems")  # fmt: skip
    return tally


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=500)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--jobs", type=int, default=2)
    asked = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        tally = kill_runs(asked.count, Path(folder), asked.seed, asked.jobs)
    for problem in tally.problems:
        print(problem)
    return 1 if tally.problems else 0


if __name__ == "__main__":
    raise SystemExit(main())
