"""The window suite in groups: each has a host of its own, a host that dies is started once more and that is told."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest

from tests.running import window_groups
from tests.running.places import ROOT
from tests.running.suites import Job, Runner

HOST = """
import json, os, sys
from pathlib import Path

words = json.loads(os.environ["HEARTSIDE_WINDOW"])["arguments"]
report = Path(next(w for w in words if w.startswith("--junitxml=")).partition("=")[2])
log = report.with_name("started")
before = log.read_text() if log.exists() else ""
log.write_text(before + report.stem + "\\n")
again = before.count(report.stem + "\\n")
if report.stem == "report-2" and again < int(sys.argv[1]):
    os._exit(139)
failed = report.stem == sys.argv[2]
files = [w for w in words if w.endswith(".py")]
report.write_text(
    f'<testsuites><testsuite name="pytest" tests="{len(files)}" failures="{int(failed)}" errors="0" skipped="0">'
    '<properties><property name="where" value="a host"/></properties></testsuite></testsuites>'
)
sys.exit(int(failed))
"""


def run(tmp_path, deaths=0, failing="none"):
    """The outcome of a suite whose second group's host dies so often, and the hosts that were started."""
    (tmp_path / "host.py").write_text(HOST, encoding="utf-8")
    command = [sys.executable, "tests/running/window_groups.py"]
    command += [sys.executable, str(tmp_path / "host.py"), str(deaths), failing]
    task = json.dumps({"arguments": [f"--junitxml={tmp_path}/report.xml", "tests/gui"], "packages": ""})
    job = Job("gui", "here", [command], tmp_path, tmp_path / "report.xml", {"HEARTSIDE_WINDOW": task})
    outcome = Runner(live=False).run(job)
    return outcome, (tmp_path / "started").read_text(encoding="utf-8").split()


FILES = len(list((ROOT / "tests/gui").glob("test_*.py")))


def test_every_file_is_run_once(tmp_path, monkeypatch):
    monkeypatch.chdir(ROOT)
    shared = window_groups.groups(["-q", "tests/gui"])
    files = [word for words in shared for word in words if word.endswith(".py")]
    assert len(shared) <= window_groups.GROUPS
    assert len(files) == len(set(files)) == FILES
    assert all(words[0] == "-q" for words in shared)
    outcome, started = run(tmp_path)
    assert (outcome.passed, outcome.failed, outcome.remark) == (FILES, 0, "")
    assert started == [f"report-{n}" for n in range(1, len(shared) + 1)]


def test_files_that_are_named_share_one_host():
    assert window_groups.groups(["tests/gui/test_a.py", "tests/gui/test_b.py"]) == [
        ["tests/gui/test_a.py", "tests/gui/test_b.py"]
    ]


def test_a_host_that_dies_once_is_told_and_its_group_is_run_again(tmp_path):
    outcome, started = run(tmp_path, deaths=1)
    assert (outcome.passed, outcome.failed) == (FILES, 0)
    assert started.count("report-2") == 2
    assert outcome.remark == "a host died (code 139) in group 2 and was started anew"
    assert "started anew" in outcome.log.read_text(encoding="utf-8")


def test_a_host_that_dies_twice_has_failed(tmp_path):
    outcome, started = run(tmp_path, deaths=2)
    assert (outcome.passed, outcome.failed) == (0, 1)
    assert outcome.remark == "ended with code 139 before it could report"
    assert started.count("report-2") == 2


@pytest.mark.parametrize("failing", ["report-1", "report-3"])
def test_a_failure_in_one_group_fails_the_suite(tmp_path, failing):
    outcome, _ = run(tmp_path, failing=failing)
    assert (outcome.passed, outcome.failed) == (FILES - 1, 1)


def test_a_filter_that_leaves_a_group_no_test_is_no_failure(tmp_path, monkeypatch):
    codes = iter([window_groups.NO_TESTS, 0, window_groups.NO_TESTS])
    empty = (
        '<testsuites><testsuite name="pytest" tests="0" failures="0" errors="0" skipped="0"/></testsuites>'
    )

    def host(_command, env):
        words = json.loads(env["HEARTSIDE_WINDOW"])["arguments"]
        report = next(w for w in words if w.startswith("--junitxml=")).partition("=")[2]
        (tmp_path / report).write_text(empty, encoding="utf-8")
        return next(codes)

    monkeypatch.chdir(ROOT)
    monkeypatch.setattr(subprocess, "call", host)
    monkeypatch.setattr(window_groups, "groups", lambda _: [["a"], ["b"], ["c"]])
    task = {"arguments": [f"--junitxml={tmp_path}/report.xml"], "packages": ""}
    monkeypatch.setenv("HEARTSIDE_WINDOW", json.dumps(task))
    assert window_groups.main(["host"]) == 0
