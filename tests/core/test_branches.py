"""The command that counts the branches that no test takes."""

from __future__ import annotations

import importlib.util
import sys

import pytest

from tests.benchmarks import branches
from tests.benchmarks.branches import branches_of, share


@pytest.fixture(autouse=True)
def coverage_is_there(monkeypatch):
    """Nothing here measures: the tests run where coverage is not installed."""
    monkeypatch.setattr(importlib.util, "find_spec", lambda name: object())


def entry(count, missing):
    return {"summary": {"num_branches": count}, "missing_branches": missing}


REPORT = {
    "files": {
        "movement_core/whole.py": entry(4, []),
        "movement_core/none.py": entry(0, []),
        "movement_core/few.py": entry(6, [[3, -1]]),
        "movement_core/many.py": entry(10, [[3, 5], [7, 9]]),
    }
}


def test_branches_alone_make_the_share():
    assert share(branches_of(REPORT)) == pytest.approx(17 / 20)


def test_files_come_by_what_they_miss_and_say_where():
    many, few, whole = branches_of(REPORT)
    assert many.line() == "   2 of  10  movement_core/many.py  3->5 7->9"
    assert few.line().endswith("few.py  3->exit") and not whole.missed


@pytest.mark.parametrize("wanted, code", [("many", 1), ("whole", 0), ("", 1)])
def test_the_command_prints_what_is_missed_and_fails_below_the_share(
    wanted, code, monkeypatch, capsys, tmp_path
):
    monkeypatch.setattr(branches, "read", lambda folder: REPORT)
    monkeypatch.setattr(sys, "argv", ["branches", "--again", "--of", wanted, "--keep", str(tmp_path)])
    assert branches.main() == code
    printed = capsys.readouterr().out
    assert ("many.py" in printed) == (wanted != "whole") and "whole.py" not in printed
    assert "branches taken" in printed


def test_a_failed_test_fails_the_command(monkeypatch, capsys, tmp_path):
    monkeypatch.setattr(branches, "measure", lambda folder, words: 1)
    monkeypatch.setattr(branches, "read", lambda folder: {"files": {"a.py": entry(2, [])}})
    monkeypatch.setattr(sys, "argv", ["branches", "--keep", str(tmp_path)])
    assert branches.main() == 1 and "a test failed" in capsys.readouterr().out


def test_a_part_of_a_path_that_no_file_has_is_refused(monkeypatch, tmp_path):
    monkeypatch.setattr(branches, "read", lambda folder: REPORT)
    monkeypatch.setattr(sys, "argv", ["branches", "--again", "--of", "sheeet", "--keep", str(tmp_path)])
    with pytest.raises(SystemExit, match="sheeet"):
        branches.main()


def test_without_coverage_it_says_what_to_install(monkeypatch):
    monkeypatch.setattr(importlib.util, "find_spec", lambda name: None)
    monkeypatch.setattr(sys, "argv", ["branches"])
    with pytest.raises(SystemExit, match='the extra "measure"'):
        branches.main()
