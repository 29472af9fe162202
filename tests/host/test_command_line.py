"""The command line as a user types it, rightly and wrongly: a process of its own, its streams and its exit code."""

from __future__ import annotations

import csv
import hashlib
import io
import json
import subprocess
import sys
import zipfile
from pathlib import Path

import FreeCAD as App
import pytest

ROOT = Path(__file__).resolve().parents[2]


def heartside(*arguments, cwd=ROOT):
    return subprocess.run(
        [sys.executable, "-m", "workbench_pkg", *map(str, arguments)],
        cwd=cwd, capture_output=True, encoding="utf-8", timeout=300, stdin=subprocess.DEVNULL,
        env={**__import__("os").environ, "PYTHONPATH": str(ROOT)},
    )  # fmt: skip


def save(folder, name, *labels, solid=True):
    doc = App.newDocument("made", hidden=True)
    try:
        for i, label in enumerate(labels):
            kind = "Part::Box" if solid else "Part::Plane"
            box = doc.addObject(kind, "Part")
            box.Label = label
            box.Length, box.Width = 900, 120
            if solid:
                box.Height = 20
            box.Placement.Base = App.Vector(0, 200 * i, 0)
        doc.recompute()
        path = folder / name
        doc.saveAs(str(path))
    finally:
        App.closeDocument(doc.Name)
    return path


GOOD = "Shelf wood{white oak; pith 0 -70; built 9}"


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    return tmp_path_factory.mktemp("models")


@pytest.fixture(scope="module")
def good(folder):
    return save(folder, "good shelf ä.FCStd", GOOD)


@pytest.fixture(scope="module")
def untold(folder):
    return save(folder, "untold.FCStd", GOOD, "Silent")


@pytest.fixture(scope="module")
def mistagged(folder):
    return save(folder, "mistagged.FCStd", GOOD, "Rail wood{white oak; grian x; cut flat; built 9}")


def test_json_and_nothing_else_on_stdout(good, untold):
    run = heartside("check", good, untold, "--format", "json", "--date", "2026-03-15", "--year", "museum")
    report = json.loads(run.stdout)
    assert run.returncode == 1, run.stderr
    assert report["schema"]
    first, second = report["files"]
    assert first["path"] == str(good) and not first["findings"] and not first["errors"]
    (part,) = first["parts"]
    assert part["name"] == "Shelf" and part["missing"] == []
    assert 119 < part["driest_mm"] < part["today_mm"] < part["wettest_mm"] < 122
    assert first["year"]["name"] == "museum" and first["today"]["date"] == "2026-03-15"
    assert [p["missing"] for p in second["parts"]] == [[], ["species", "rings", "moisture"]]


def test_text_and_csv_say_the_same(good):
    text = heartside("check", good, "--moisture", "12 %")
    table = heartside("check", good, "--moisture", "12", "--format", "csv")
    assert text.returncode == table.returncode == 0, text.stderr
    (row,) = csv.DictReader(io.StringIO(table.stdout))
    assert f"{float(row['today_mm']):.1f}" in text.stdout and "No findings." in text.stdout
    assert row["today_percent"] == "12.0" and "by meter" in text.stdout
    assert "local codes" in text.stdout


def test_a_bad_tag_names_part_and_word_and_the_rest_is_still_worked_out(mistagged):
    run = heartside("check", mistagged, "--format", "json")
    (entry,) = json.loads(run.stdout)["files"]
    assert run.returncode == 2
    (error,) = entry["errors"]
    assert "'Rail'" in error["message"] and "'grian'" in error["message"] and "'grain'" in error["message"]
    assert all(part["today_mm"] for part in entry["parts"])


def test_what_cannot_be_opened_costs_one_line_and_the_others_are_checked(folder, good):
    missing = folder / "gone.FCStd"
    cut = folder / "cut.FCStd"
    cut.write_bytes(good.read_bytes()[:900])
    text = folder / "text.FCStd"
    text.write_text("not a document", encoding="utf-8")
    doctype = folder / "doctype.FCStd"
    with zipfile.ZipFile(doctype, "w") as archive:
        archive.writestr("Document.xml", '<!DOCTYPE x [<!ENTITY e "boom">]><Document>&e;</Document>')
    empty = save(folder, "flat.FCStd", "Sheet", solid=False)
    odd = folder / "notes.txt"
    odd.write_text("hello", encoding="utf-8")
    nothing = folder / "nothing"
    nothing.mkdir()
    bad = [missing, cut, text, doctype, empty, odd, nothing]
    run = heartside("check", *bad, good, "--format", "json")
    report = json.loads(run.stdout)
    assert run.returncode == 2
    assert "Traceback" not in run.stderr
    for path, entry in zip(bad, report["files"]):
        assert entry["path"] == str(path)
        assert len(entry["errors"]) == 1 and "\n" not in entry["errors"][0]["message"], entry
        assert entry["errors"][0]["message"].startswith(str(path))
    assert report["files"][-1]["parts"] and not report["files"][-1]["errors"]
    plain = heartside("check", *bad, good)
    assert plain.returncode == 2 and plain.stdout.count(str(folder)) >= len(bad)


def test_the_input_is_never_written(good):
    before = hashlib.sha256(good.read_bytes()).hexdigest(), good.stat().st_mtime_ns
    heartside("check", good)
    copy = good.with_name("copy.FCStd")
    assert heartside("annotate", good, "--output", copy).returncode == 0
    assert (hashlib.sha256(good.read_bytes()).hexdigest(), good.stat().st_mtime_ns) == before
    again = heartside("annotate", good, "--output", copy)
    assert again.returncode == 2 and "--force" in again.stdout + again.stderr
    assert heartside("annotate", good, "--output", copy, "--force").returncode == 0
    itself = heartside("annotate", good, "--output", good, "--force")
    assert itself.returncode == 2 and "the file that was read" in itself.stdout + itself.stderr
    assert (hashlib.sha256(good.read_bytes()).hexdigest(), good.stat().st_mtime_ns) == before


def test_an_annotated_copy_can_be_checked_like_its_model(good):
    copy = good.with_name("annotated.FCStd")
    heartside("annotate", good, "--output", copy, "--force")
    one, two = (
        json.loads(heartside("check", p, "--format", "json").stdout)["files"][0] for p in (good, copy)
    )
    assert one["parts"] == two["parts"]


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["check"], "FILE"),
        (["chek", "x"], "invalid choice"),
        (["check", "x.FCStd", "--date", "tomorrow"], "YYYY-MM-DD"),
        (["check", "x.FCStd", "--moisture", "85"], "0 to 30"),
        (["check", "x.FCStd", "--year", "musem"], "museum"),
        (["check", "x.FCStd", "--year", "gone.csv"], "gone.csv"),
        (["annotate", "x.FCStd"], "--output"),
        (["woods", "unobtainium"], "unobtainium"),
        ([], "check"),
    ],
)
def test_wrong_typing_gets_an_answer(arguments, said):
    run = heartside(*arguments)
    assert run.returncode == 2
    assert said in run.stdout + run.stderr
    assert "Traceback" not in run.stdout + run.stderr


def test_lists_of_woods_and_years():
    woods = heartside("woods", "cherry")
    assert woods.returncode == 0 and "Prunus serotina" in woods.stdout
    years = heartside("years")
    assert years.returncode == 0 and years.stdout.count("% in") >= 16


def test_a_maker_s_own_months(folder, good):
    months = folder / "months.csv"
    months.write_text("temperature_c,rh_percent\n" + "20,40\n" * 12, encoding="utf-8")
    run = heartside("check", good, "--year", months, "--format", "json")
    entry = json.loads(run.stdout)["files"][0]
    assert entry["year"]["name"] == "months.csv" and entry["year"]["basis"] == "the maker's own months"
    months.write_text("temperature_c,rh_percent\n" + "68,40\n" * 12, encoding="utf-8")
    wrong = heartside("check", good, "--year", months)
    assert wrong.returncode == 2 and "temperature_f" in wrong.stdout


def test_the_demo_says_where_its_results_lie(tmp_path):
    run = heartside("demo", "--output", "made", cwd=tmp_path)
    assert run.returncode == 0, run.stdout + run.stderr
    assert "invented" in run.stdout
    made = tmp_path / "made"
    named = [line.split()[-1] for line in run.stdout.splitlines() if line.strip().startswith("annotated")]
    assert len(named) == 3 and all((tmp_path / name).is_file() for name in named)
    for report in made.glob("*.json"):
        assert json.loads(report.read_text(encoding="utf-8"))["files"][0]["parts"]
