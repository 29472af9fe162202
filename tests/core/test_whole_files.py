"""Files come whole or not at all; what killed runs left behind is swept, and nothing else."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from workbench_pkg.setup import whole_files
from workbench_pkg.setup.whole_files import OLD_S, OWNER, sweep, work_folder, written_whole

ROOT = Path(__file__).resolve().parents[2]


def test_a_file_takes_its_name_at_the_end(tmp_path):
    goal = tmp_path / "report.txt"
    with written_whole(goal, replace=False) as path:
        path.write_text("whole", encoding="utf-8")
        assert not goal.exists() and path.parent.parent == tmp_path
    assert goal.read_text(encoding="utf-8") == "whole" and os.listdir(tmp_path) == ["report.txt"]


def test_what_stops_it_leaves_what_was_there(tmp_path):
    goal = tmp_path / "report.txt"
    goal.write_text("before", encoding="utf-8")
    with pytest.raises(ZeroDivisionError), written_whole(goal, replace=True) as path:
        path.write_text("half", encoding="utf-8")
        raise ZeroDivisionError
    assert goal.read_text(encoding="utf-8") == "before" and os.listdir(tmp_path) == ["report.txt"]
    with written_whole(goal, replace=True) as path:
        path.write_text("after", encoding="utf-8")
    assert goal.read_text(encoding="utf-8") == "after"


def test_what_exists_is_not_replaced_unasked(tmp_path):
    goal = tmp_path / "report.txt"
    goal.write_text("mine", encoding="utf-8")
    with pytest.raises(FileExistsError), written_whole(goal, replace=False):
        pytest.fail("it began all the same")
    goal.unlink()
    with pytest.raises(FileExistsError), written_whole(goal, replace=False) as path:
        path.write_text("ours", encoding="utf-8")
        goal.write_text("made by somebody else in the meantime", encoding="utf-8")
    assert goal.read_text(encoding="utf-8").startswith("made by somebody") and os.listdir(tmp_path) == [
        "report.txt"
    ]


def test_where_there_are_no_hard_links(tmp_path, monkeypatch):
    def refused(*_):
        raise PermissionError

    monkeypatch.setattr(os, "link", refused)
    goal = tmp_path / "report.txt"
    with written_whole(goal, replace=False) as path:
        path.write_text("whole", encoding="utf-8")
    assert goal.read_text(encoding="utf-8") == "whole"
    goal.unlink()
    with pytest.raises(FileExistsError), written_whole(goal, replace=False) as path:
        path.write_text("ours", encoding="utf-8")
        goal.write_text("theirs", encoding="utf-8")
    assert goal.read_text(encoding="utf-8") == "theirs"


def test_a_link_stays_a_link(tmp_path):
    (tmp_path / "far").mkdir()
    real, link = tmp_path / "far" / "real.txt", tmp_path / "link.txt"
    real.write_text("before", encoding="utf-8")
    link.symlink_to(real)
    with written_whole(link, replace=True) as path:
        path.write_text("after", encoding="utf-8")
    assert link.is_symlink() and real.read_text(encoding="utf-8") == "after"


def test_killed_at_its_worst_moment(tmp_path):
    """Killed with the new file half written: the old one is whole, and the next run takes the leavings away."""
    goal = tmp_path / "report.txt"
    goal.write_text("before", encoding="utf-8")
    code = (
        "import sys, time\n"
        "from workbench_pkg.setup.whole_files import written_whole\n"
        "with written_whole(sys.argv[1], replace=True) as path:\n"
        "    path.write_text('half'); print('now', flush=True); time.sleep(60)\n"
    )
    process = subprocess.Popen(
        [sys.executable, "-c", code, str(goal)],
        stdout=subprocess.PIPE,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )
    assert process.stdout is not None and process.stdout.readline() == b"now\n"
    assert sweep(tmp_path) == [], "its owner lives"
    process.send_signal(signal.SIGKILL)
    process.wait()
    process.stdout.close()
    assert goal.read_text(encoding="utf-8") == "before" and len(os.listdir(tmp_path)) == 2
    with written_whole(goal, replace=True) as path:
        path.write_text("after", encoding="utf-8")
    assert goal.read_text(encoding="utf-8") == "after" and os.listdir(tmp_path) == ["report.txt"]


def leaving(folder, name=".heartside-abc", owner=None, age_s=0.0, **more):
    made = folder / name
    made.mkdir()
    if owner is not None:
        (made / OWNER).write_text(
            owner if isinstance(owner, str) else json.dumps({**owner, **more}), encoding="utf-8"
        )
    when = time.time() - age_s
    os.utime(made, (when, when))
    return made


def dead_owner():
    return {**whole_files._ourselves(), "process": 2**22 + 1}


def test_only_what_is_ours_and_left_is_swept(tmp_path):
    gone = [
        leaving(tmp_path, ".heartside-dead", dead_owner()),
        leaving(tmp_path, ".heartside-number-used-again", whole_files._ourselves(), started="1"),
        leaving(tmp_path, ".heartside-old", {**whole_files._ourselves(), "machine": "another"}, OLD_S + 60),
        leaving(tmp_path, ".heartside-empty", None, 7200),
    ]
    kept = [
        leaving(tmp_path, ".heartside-alive", whole_files._ourselves()),
        leaving(tmp_path, ".heartside-far", dead_owner(), machine="another"),
        leaving(tmp_path, ".heartside-new", None, 0),
        leaving(tmp_path, ".heartside-of-others", dead_owner(), of="somebody"),
        leaving(tmp_path, ".heartside-garbled", "{"),
        leaving(tmp_path, ".heartside-a-list", "[1]"),
        leaving(tmp_path, "heartside-demo", dead_owner()),
    ]
    full = leaving(tmp_path, ".heartside-full", None)
    (full / "work.txt").write_text("mine", encoding="utf-8")
    os.utime(full, (0, 0))
    link = tmp_path / ".heartside-link"
    link.symlink_to(leaving(tmp_path, "elsewhere", dead_owner()))
    file = tmp_path / ".heartside-file"
    file.write_text("x", encoding="utf-8")
    assert sorted(sweep(tmp_path)) == sorted(gone)
    assert all(path.exists() for path in (*kept, full, link, file, tmp_path / "elsewhere"))
    assert sweep(tmp_path / "nowhere") == []


def test_a_work_folder_names_its_owner_and_goes(tmp_path):
    with work_folder(tmp_path) as folder:
        said = json.loads((folder / OWNER).read_text(encoding="utf-8"))
        assert said["process"] == os.getpid() and said["of"] == "heartside"
    assert os.listdir(tmp_path) == []
