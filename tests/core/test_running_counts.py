"""The test command counts right: what ran, what failed, what died, what never ran."""

from __future__ import annotations

import sys

import pytest

from tests.running import report
from tests.running.command import parse
from tests.running.hosts import RELEASES, chosen, local_name
from tests.running.suites import Job, Outcome, Runner, what_to_run
from workbench_pkg.setup import SetupError

REPORT = """<testsuites><testsuite name="pytest" errors="{errors}" failures="{failures}" skipped="{skipped}"
tests="{tests}"><properties><property name="where" value="FreeCAD 9.9"/></properties></testsuite></testsuites>"""


def run(tmp_path, code=0, text=None):
    """Run a job that writes this report and ends with this code."""
    report_file = tmp_path / "report.xml"
    write = "" if text is None else f"open({str(report_file)!r}, 'w').write({text!r});"
    command = [sys.executable, "-c", f"import sys; {write} print('log line'); sys.exit({code})"]
    return Runner(live=False).run(Job("host", "here", [command], tmp_path, report_file))


def counts(errors=0, failures=0, skipped=0, tests=0):
    """A report with these counts."""
    return REPORT.format(errors=errors, failures=failures, skipped=skipped, tests=tests)


def test_counts_and_place_come_from_the_report(tmp_path):
    outcome = run(tmp_path, 1, counts(errors=1, failures=2, skipped=3, tests=10))
    assert (outcome.passed, outcome.failed, outcome.skipped) == (4, 3, 3)
    assert outcome.where == "here: FreeCAD 9.9"
    assert "log line" in report.tail(outcome)


@pytest.mark.parametrize(
    ("code", "text", "remark"),
    [
        (5, counts(), "ran no test"),
        (0, counts(skipped=4, tests=4), "ran no test"),
        (139, None, "ended with code 139 before it could report"),
        (0, None, "ended with code 0 before it could report"),
        (0, "<testsuites><half", "ended with code 0 before it could report"),
        (3, counts(tests=5), "all passed, yet it ended with code 3"),
    ],
)
def test_a_suite_that_ran_nothing_or_died_has_failed(tmp_path, code, text, remark):
    outcome = run(tmp_path, code, text)
    assert outcome.failed == 1
    assert outcome.remark == remark


def test_every_command_of_a_tool_counts(tmp_path):
    good, bad = [sys.executable, "-c", "pass"], [sys.executable, "-c", "raise SystemExit(1)"]
    for commands, failed in (([good, good], 0), ([bad, good], 1), ([good, bad], 1), ([], 1)):
        assert Runner(live=False).run(Job("style", "here", commands, tmp_path)).failed == failed


def test_the_last_line_adds_up():
    outcomes = [
        Outcome("core", "a", 10, 0, 1, 1.0),
        Outcome("host", "b", 5, 2, 0, 1.0),
        Outcome("style", "a", 1, 0, 0, 1.0, is_tool=True),
        Outcome("types", "a", 0, 1, 0, 1.0, is_tool=True),
    ]
    assert report.total(outcomes) == "15 passed, 3 failed, 1 skipped"
    assert "FAILED" in report.line(outcomes[1])
    assert report.table(outcomes).count("\n") == 4


def test_a_named_file_runs_instead_of_the_folder():
    assert what_to_run("gui", ["-k", "panel"]) == ["tests/gui", "-k", "panel"]
    assert what_to_run("gui", ["tests/gui/test_gui_starts.py"]) == ["tests/gui/test_gui_starts.py"]


def test_hosts_by_name():
    local = local_name()
    assert chosen("local") == [local]
    assert set(chosen("all")) == {local, *RELEASES}
    assert chosen("all")[0] == local
    assert chosen("forky,trixie,forky").count("forky") == 1
    with pytest.raises(SetupError, match="no such host: potato"):
        chosen("potato")


def test_arguments_after_two_dashes_go_to_pytest():
    options, extra = parse(["core", "--install", "--", "-k", "name", "--", "x"])
    assert options.suites == ["core"]
    assert options.install
    assert extra == ["-k", "name", "--", "x"]
    with pytest.raises(SystemExit):
        parse(["no-such-suite"])
