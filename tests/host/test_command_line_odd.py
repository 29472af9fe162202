"""The command line on odd streams, with odd files, stopped half way, and asked in odd ways."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time

import pytest

from movement_core import __version__
from tests.host.test_command_line import GOOD, ROOT, heartside, save
from workbench_pkg.batch.commands.demo import demo_names

ENVIRONMENT = {**os.environ, "PYTHONPATH": str(ROOT)}


def typed(line, cwd, **environment):
    """A line as typed in a shell; ``H`` stands for the command."""
    return subprocess.run(
        ["bash", "-c", line.replace("H ", f"{sys.executable} -m workbench_pkg ", 1)],
        cwd=cwd, capture_output=True, timeout=300, stdin=subprocess.DEVNULL, env={**ENVIRONMENT, **environment},
    )  # fmt: skip


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """A folder with two models that hold."""
    folder = tmp_path_factory.mktemp("odd")
    save(folder, "a.FCStd", GOOD)
    save(folder, "ä.FCStd", GOOD)
    return folder


# ---- streams --------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("encoding", "environment"),
    [
        ("latin-1", {"PYTHONIOENCODING": "latin-1"}),
        ("ascii", {"PYTHONIOENCODING": "ascii"}),
        ("ascii", {"LC_ALL": "C", "PYTHONCOERCECLOCALE": "0", "PYTHONUTF8": "0"}),
    ],
)
def test_what_stdout_cannot_show_is_replaced(folder, encoding, environment):
    run = typed("H check a.FCStd ä.FCStd", folder, **environment)
    assert run.returncode == 0 and b"Traceback" not in run.stderr, run.stderr
    text = run.stdout.decode(encoding)
    assert "900 " in text and " 120 " in text and "19.9..20.0" in text
    assert "900 x 120 x 20" in text if encoding == "ascii" else "900 × 120 × 20" in text
    report = json.loads(typed("H check ä.FCStd --format json", folder, **environment).stdout.decode(encoding))
    assert report["files"][0]["parts"], report


@pytest.mark.parametrize("closed", [">&-", ">&- 2>&-", "<&- >&- 2>&-"])
def test_closed_streams(folder, closed):
    run = typed(f"H check a.FCStd {closed}", folder)
    assert (run.returncode, run.stdout, run.stderr) == (0, b"", b"")


def test_a_full_disk_and_a_reader_that_goes_away(folder):
    run = typed("H check a.FCStd >/dev/full", folder)
    assert run.returncode == 2 and b"cannot be written out" in run.stderr and b"Traceback" not in run.stderr
    run = typed("H woods | head -1", folder)
    assert run.stdout.count(b"\n") == 1 and run.stderr == b""


def test_stopped_by_the_user(tmp_path):
    """Stopped while the host builds the demo: said in a word, the host gone with us, nothing half written."""
    (tmp_path / "made").mkdir()
    process = subprocess.Popen(
        [sys.executable, "-m", "workbench_pkg", "demo", "--output", "made"],
        cwd=tmp_path, stdout=subprocess.PIPE, stderr=subprocess.PIPE, env=ENVIRONMENT, encoding="utf-8",
        preexec_fn=lambda: signal.signal(signal.SIGINT, signal.default_int_handler),
    )  # fmt: skip
    try:
        until = time.monotonic() + 60
        while not [file for file in tmp_path.rglob("*.FCStd") if file.stat().st_size]:
            assert time.monotonic() < until and process.poll() is None, "it never began"
            time.sleep(0.05)
        hosts = children(process.pid)
        assert hosts
        process.send_signal(signal.SIGINT)
        _, told = process.communicate(timeout=60)
    finally:
        process.kill()
    assert process.returncode == 130 and told == "heartside: stopped\n"
    assert list((tmp_path / "made").iterdir()) == []
    assert not [pid for pid in hosts if os.path.exists(f"/proc/{pid}")]


def children(pid):
    with open(f"/proc/{pid}/task/{pid}/children", encoding="ascii") as file:
        return file.read().split()


# ---- JSON for what cannot be begun ----------------------------------------------------------------------


@pytest.mark.parametrize("host", ["/bin/true", "/no/such/host"])
def test_json_also_where_there_is_no_host(folder, host):
    for command, key in (("check a.FCStd", "files"), ("stock oak --thickness 20 --reading 8", "stock")):
        run = typed(f"H {command} --format json", folder, FREECADCMD=host)
        report = json.loads(run.stdout)
        assert run.returncode == 2 and host in report["errors"][0]["message"] and not report[key]
        assert host.encode() in run.stderr


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["check", "a.FCStd", "--date", "tomorrow"], "YYYY-MM-DD"),
        (["check"], "FILE"),
        (["stock", "oak", "--thickness", "20", "--reading", "dry"], "0 to 60"),
        (["hold", "a.FCStd", "--flatness", "0"], "flatness"),
    ],
)
def test_json_also_for_what_was_mistyped(arguments, said):
    run = heartside(*arguments, "--format=json")
    report = json.loads(run.stdout)
    assert run.returncode == 2 and said in report["errors"][0]["message"]
    assert report["schema"].startswith(f"heartside-{arguments[0]}") and said in run.stderr


# ---- typing ---------------------------------------------------------------------------------------------


def test_options_may_stand_between_files_and_words_need_no_quotes(folder):
    run = heartside("check", "a.FCStd", "--format", "json", "ä.FCStd", cwd=folder)
    assert [entry["path"] for entry in json.loads(run.stdout)["files"]] == ["a.FCStd", "ä.FCStd"]
    (folder / "a.FCStd").with_name("-x.FCStd").write_bytes((folder / "a.FCStd").read_bytes())
    assert heartside("check", "--moisture", "9", "--", "-x.FCStd", cwd=folder).returncode == 0
    woods = heartside("woods", "white", "oak")
    assert woods.returncode == 0 and "Quercus alba" in woods.stdout and "beech" not in woods.stdout.lower()
    assert heartside("--version").stdout == f"heartside {__version__}\n"


@pytest.mark.parametrize(
    ("command", "word", "near"), [("woods", "whyte oak", "White oak"), ("places", "Olso", "Oslo")]
)
def test_a_word_that_is_not_found_gives_the_nearest(command, word, near):
    run = heartside(command, word)
    assert run.returncode == 2 and near in run.stderr


def test_each_path_is_told_once_as_typed(folder):
    (folder / "q.FCStd").write_text("no document", encoding="utf-8")
    run = heartside("check", "q.FCStd", "./gone.FCStd", cwd=folder)
    assert run.returncode == 2 and str(folder) not in run.stdout
    assert run.stdout.splitlines()[0].startswith("q.FCStd: it is not") and run.stdout.count("q.FCStd") == 1
    assert run.stdout.count("gone.FCStd: there is no such file") == 1


def test_annotate_says_what_it_wrote(folder):
    run = heartside("annotate", "a.FCStd", "--output", "written.FCStd", cwd=folder)
    assert run.returncode == 0 and run.stdout.endswith("\nWritten: written.FCStd\n")
    run = heartside("annotate", "a.FCStd", "--output", "written.FCStd", cwd=folder)
    assert run.returncode == 2 and run.stdout.startswith("written.FCStd: it exists already")


# ---- stock ----------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("typed_", "said"),
    [
        ("8 --thickness 0", "1 to 300 mm"),
        ("8 --thickness nan", "is no length"),
        ("8 --thickness=-5", "1 to 300 mm"),
        ("8 --thickness 1e9", "1 to 300 mm"),
        ("8 --thickness 27 --room 20/0.5", "write 50"),
        ("8 --thickness 27 --room 68/50", "write 20"),
        ("8 --thickness 27 --heating 20", "no place"),
        ("8 --thickness 27 --date 2026-01-01", "--date"),
        ("8 --thickness 27 --moisture 9", "--moisture"),
        ("61 --thickness 27", "0 to 60"),
    ],
)
def test_stock_refuses_what_cannot_be(typed_, said):
    run = heartside("stock", "white", "oak", "--reading", *typed_.split())
    assert run.returncode == 2 and said in run.stdout + run.stderr
    assert "Ready" not in run.stdout and "Warning" not in run.stderr


def test_wet_stock_is_judged_not_refused():
    run = heartside("stock", "white oak", "--reading", "40", "--thickness", "27", "--format", "json")
    report = json.loads(run.stdout)
    assert run.returncode == 1 and not report["stock"]["ready"] and not report["errors"]
    assert "free water" in " ".join(report["stock"]["notes"])


# ---- files ----------------------------------------------------------------------------------------------


def test_a_link_in_a_circle_and_a_name_that_is_no_text(folder):
    (folder / "round.FCStd").symlink_to("round.FCStd")
    run = heartside("annotate", "a.FCStd", "--output", "round.FCStd", "--force", cwd=folder)
    assert run.returncode == 2 and run.stdout.count("\n") == 1
    assert run.stdout.startswith("round.FCStd: ") and "circle" in run.stdout
    run = heartside("check", "round.FCStd", cwd=folder)
    assert run.returncode == 2 and run.stdout.count("\n") == 1 and "To do" in run.stdout
    name = os.fsdecode(b"odd\xff.FCStd")
    (folder / name).write_bytes((folder / "a.FCStd").read_bytes())
    run = heartside("check", name, cwd=folder)
    assert run.returncode == 2 and run.stdout.startswith(r"odd\xff.FCStd: its name holds bytes"), run.stdout
    json.loads(heartside("check", name, "--format", "json", cwd=folder).stdout)
    run = heartside("annotate", "a.FCStd", "--output", name, cwd=folder)
    assert run.returncode == 2 and "rename" not in run.stdout and r"odd\xff.FCStd: its name" in run.stdout


def test_tags_beside_a_model_in_other_encodings_and_spellings(tmp_path):
    save(tmp_path, "m.FCStd", "Shelf")
    table = "part;species;cut\nShelf;beech, American;quarter\n"

    def species(*more):
        run = heartside("check", "m.FCStd", "--format", "json", *more, cwd=tmp_path)
        (entry,) = json.loads(run.stdout)["files"]
        return entry["parts"][0]["species"], " ".join(e["message"] for e in entry["errors"]), run.returncode

    beside = tmp_path / "m.wood.csv"
    beside.write_text(table, encoding="utf-16")
    assert species() == ("Beech, American", "", 1)
    beside.write_text(table + "Tür;oak;flat", encoding="latin-1")
    made, told, code = species()
    assert made is None and "line 3" in told and "save it as UTF-8" in told and code == 2
    beside.unlink()
    beside.mkdir()
    made, told, code = species()
    assert made is None and "m.wood.csv: it is a folder" in told and code == 2
    beside.rmdir()
    (tmp_path / "M.WOOD.CSV").write_text(table, encoding="utf-8")
    assert species() == ("Beech, American", "", 1)
    (tmp_path / "m.Wood.csv").write_text(table, encoding="utf-8")
    made, told, code = species()
    assert made is None and "could both be meant" in told and code == 2


def test_arrange_tells_of_a_table_that_cannot_be_read(tmp_path):
    labels = [f"Board {i} wood{{white oak; pith 0 -70; built 8}}" for i in (1, 2)]
    move_together(save(tmp_path, "top.FCStd", *labels))
    (tmp_path / "top.wood.csv").write_bytes(b"part;species\nT\xfcr;oak\n")
    run = heartside("arrange", "top.FCStd", cwd=tmp_path)
    assert run.returncode == 2 and "save it as UTF-8" in run.stdout and "Board 1" in run.stdout
    (tmp_path / "top.FCStd").write_bytes(b"PK no document")
    told = heartside("arrange", "top.FCStd", cwd=tmp_path).stdout
    assert "save it as UTF-8" in told and "it is not a FreeCAD document" in told, "both, and each once"


def move_together(path):
    import FreeCAD as App

    doc = App.openDocument(str(path), True)
    doc.Objects[1].Placement.Base = App.Vector(0, 120, 0)
    doc.recompute()
    doc.save()
    App.closeDocument(doc.Name)


# ---- the demo -------------------------------------------------------------------------------------------


def test_the_demo_replaces_nobodys_files(tmp_path):
    made = tmp_path / "made"
    made.mkdir()
    mine = made / "sideboard-report.txt"
    mine.write_text("mine", encoding="utf-8")
    run = heartside("demo", "--output", "made", cwd=tmp_path)
    assert run.returncode == 2 and "Traceback" not in run.stderr
    assert "made: sideboard-report.txt is there already" in run.stderr
    assert "--force" in run.stderr and "--output" in run.stderr
    assert [file.name for file in made.iterdir()] == [mine.name] and mine.read_text(
        encoding="utf-8"
    ) == "mine"
    run = heartside("demo", "--output", "made", "--force", cwd=tmp_path)
    assert run.returncode == 0 and mine.read_text(encoding="utf-8") != "mine"
    names = {name for model, others in demo_names().items() for name in (model, *others)}
    assert {file.name for file in made.iterdir()} == names


@pytest.mark.parametrize("place", ["file", "file/below", "/proc/none"])
def test_the_demo_where_nothing_can_be_written(tmp_path, place):
    (tmp_path / "file").write_text("", encoding="utf-8")
    run = heartside("demo", "--output", place, cwd=tmp_path)
    assert run.returncode == 2 and run.stderr.count("\n") == 1 and "To do" in run.stderr
    assert place in run.stderr and run.stdout == ""
