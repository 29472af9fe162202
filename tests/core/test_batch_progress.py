"""What is told while it goes on, and where reports are kept."""

from __future__ import annotations

import io
import os
import time

import pytest

from workbench_pkg.batch import caching, progress
from workbench_pkg.batch.caching import cache_folder, note_failure, ready_cache
from workbench_pkg.batch.progress import Progress, duration
from workbench_pkg.setup import UseError


class Terminal(io.StringIO):
    def isatty(self):
        return True


def told(monkeypatch, stream, count=5, quiet=False):
    monkeypatch.setattr("sys.stderr", stream)
    monkeypatch.setattr(progress, "LEAST_S", 0.0)
    one = Progress(count, quiet)
    for done in range(count):
        one.tick(done)
    one.clear()
    return stream.getvalue()


def test_a_terminal_sees_how_far_it_is_and_the_line_goes(monkeypatch):
    text = told(monkeypatch, Terminal())
    assert "\r3 of 5 models" in text and text.endswith(" \r") and "\n" not in text


def test_nobody_else_is_told_anything(monkeypatch):
    assert told(monkeypatch, io.StringIO()) == ""
    assert told(monkeypatch, Terminal(), quiet=True) == ""
    assert told(monkeypatch, Terminal(), count=1) == ""


@pytest.mark.parametrize(
    ("seconds", "said"), [(0.4, "0 s"), (59.6, "1 min 0 s"), (75, "1 min 15 s"), (3600, "1 h 0 min")]
)
def test_durations(seconds, said):
    assert duration(seconds) == said


def test_the_cache_lies_where_the_system_wants_it(monkeypatch, tmp_path):
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    assert cache_folder() == tmp_path / "heartside" / "reports"
    assert ready_cache(None) == cache_folder() and cache_folder().is_dir()


def test_a_cache_that_cannot_be_is_said_where_it_was_asked_for(monkeypatch, tmp_path):
    (tmp_path / "file").touch()
    with pytest.raises(UseError, match="no cache can be kept there"):
        ready_cache(tmp_path / "file" / "below")
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "file"))
    assert ready_cache(None) is None


def test_what_was_of_no_use_for_months_goes(tmp_path):
    old, new, other = (
        tmp_path / "ab" / "x.json.gz",
        tmp_path / "ab" / "y.json.gz",
        tmp_path / "ab" / "mine.txt",
    )
    old.parent.mkdir()
    for path in (old, new, other):
        path.touch()
    for path in (old, other):
        os.utime(path, (1, 1))
    ready_cache(tmp_path)
    assert not old.exists() and new.exists() and other.exists()
    os.utime(new, (1, 1))
    ready_cache(tmp_path)
    assert new.exists(), "once a day is enough"
    os.utime(tmp_path / caching.STAMP, (1, time.time() - 2 * caching.DAY_S))
    ready_cache(tmp_path)
    assert not new.exists()


def test_a_failure_is_noted_whole(tmp_path):
    note_failure(tmp_path, "abc", "it hung.", 3.0)
    assert (tmp_path / "ab" / "abc.failed.json").read_text(
        encoding="utf-8"
    ) == '{"how": "it hung.", "time_limit_s": 3.0}'
    note_failure(tmp_path / "file" / "none", "abc", "x", None)
