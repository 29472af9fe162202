"""Plans for the tops of real documents, by the action and as typed, rightly and wrongly."""

from __future__ import annotations

import hashlib
import json
import re
import subprocess
import sys
from pathlib import Path

import bench  # noqa: F401  (puts the host's own modules on the path)
import pytest

from workbench_pkg.actions.check import check_file
from workbench_pkg.actions.hold import HoldWish, hold_file
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.demo.build import build_demo

ROOT = Path(__file__).resolve().parents[2]


def heartside(*arguments):
    return subprocess.run(
        [sys.executable, "-m", "workbench_pkg", *map(str, arguments)],
        cwd=ROOT, capture_output=True, encoding="utf-8", timeout=300, stdin=subprocess.DEVNULL,
        env={**__import__("os").environ, "PYTHONPATH": str(ROOT)},
    )  # fmt: skip


@pytest.fixture(scope="module")
def demo(tmp_path_factory):
    folders = {}
    for repaired in (False, True):
        folders[repaired] = tmp_path_factory.mktemp("hold")
        build_demo(folders[repaired], repaired)
    return folders


@pytest.fixture(scope="module")
def settings():
    return settings_from_texts(None, "2026-03-15")


@pytest.fixture(scope="module")
def trestle(demo, settings):
    (entry,) = hold_file(demo[True] / "trestle_table.FCStd", settings)
    return entry


def test_the_repaired_table_has_a_plan(trestle):
    assert trestle["missing"] == []
    assert [trestle[f"{name}_mm"] for name in ("length", "width", "thickness")] == pytest.approx(
        [1900, 960, 28]
    )
    assert {rail["name"]: rail["runs"] for rail in trestle["rails"]} == {
        "Bearer 1": "across", "Bearer 2": "across", "Apron 1": "along", "Apron 2": "along",
    }  # fmt: skip
    best = trestle["plans"][0]
    assert best["found"] and best["worst_out_of_flat_mm"] <= 1.5
    assert best["worst_pull_n"] <= best["allowable_pull_n"]
    assert trestle["drawn_fasteners"] == 14
    eight = next(plan for plan in trestle["plans"] if plan["kind"] == "figure-eight")
    assert not eight["found"] and any("450 mm" in text for text in eight["refused"])


def test_the_table_may_stand_askew_in_the_room(trestle):
    """It is turned by 15° in its document: places are still whole distances from its own edge and end."""
    ends = [one["from_end_mm"] for one in trestle["plans"][0]["fasteners"] if one["rail"] == "Bearer 1"]
    other = [one["from_end_mm"] for one in trestle["plans"][0]["fasteners"] if one["rail"] == "Bearer 2"]
    low, high = sorted((max(ends), max(other)))
    assert low + high == pytest.approx(1900, abs=0.2)


def test_the_faulty_table_says_what_is_missing(demo, settings):
    (entry,) = hold_file(demo[False] / "trestle_table.FCStd", settings)
    assert entry["plans"] == []
    assert (
        len(entry["missing"]) == 1
        and "Top board 6" in entry["missing"][0]
        and "moisture" in entry["missing"][0]
    )


def test_the_repaired_pieces_raise_no_alarm_about_their_tops(demo, settings):
    for name in ("trestle_table.FCStd", "sideboard.FCStd", "hall_bench.step"):
        checks = {finding["check"] for finding in check_file(demo[True] / name, settings)["findings"]}
        assert not checks & {"top-not-flat", "fixed-across-the-grain"}, name


def test_the_seat_of_the_step_file_rests_on_its_ends(demo, settings):
    (entry,) = hold_file(demo[True] / "hall_bench.step", settings, HoldWish(flatness_mm=1.0))
    assert entry["rests_also_on"] == ["End left", "End right"] and entry["flat_by_itself"]


# ---- as typed ---------------------------------------------------------------------------------------------


def test_text_and_json_and_the_file_is_left_alone(demo):
    path = demo[True] / "trestle_table.FCStd"
    before = hashlib.sha256(path.read_bytes()).hexdigest()
    text = heartside("hold", path, "--date", "2026-03-15", "--kind", "slotted screw")
    assert text.returncode == 0, text.stderr
    assert "Chosen: 16 × screw in a slotted hole" in text.stdout
    assert len(re.findall(r"^ +\d+  (?:Bearer|Apron) \d", text.stdout, re.M)) == 16
    data = heartside(
        "hold", path, "--date", "2026-03-15", "--flatness", "2mm", "--format", "json", "--top", "Top board 3"
    )
    report = json.loads(data.stdout)
    assert report["schema"] == "heartside-hold-1" and report["path"] == str(path) and report["errors"] == []
    assert report["tops"][0]["wish"]["flatness_mm"] == 2.0
    assert hashlib.sha256(path.read_bytes()).hexdigest() == before


def test_what_is_missing_ends_with_2(demo):
    run = heartside("hold", demo[False] / "trestle_table.FCStd")
    assert run.returncode == 2 and "Top board 6" in run.stdout and "Traceback" not in run.stderr


def test_no_plan_ends_with_1(demo):
    run = heartside(
        "hold",
        demo[True] / "trestle_table.FCStd",
        "--flatness",
        "0.05",
        "--kind",
        "clip",
        "--date",
        "2026-03-15",
    )
    assert run.returncode == 1 and "What would help" in run.stdout


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["--flatness", "0"], "above 0 to 50 mm"),
        (["--flatness", "flat"], "is no flatness"),
        (["--kind", "nail"], "button"),
        (["--top", "Apron 1"], "Top board 1"),
        (["--fixed", "front"], "Top board 7"),
        (["--format", "csv"], "text"),
    ],
)
def test_typed_wrongly(demo, arguments, said):
    run = heartside("hold", demo[True] / "trestle_table.FCStd", *arguments)
    assert run.returncode == 2
    assert said in run.stdout + run.stderr and "Traceback" not in run.stdout + run.stderr


def test_a_piece_without_a_top_says_why(demo):
    run = heartside("hold", demo[True] / "sideboard.FCStd")
    assert run.returncode == 2 and "housed in Case side left" in run.stdout
    run = heartside("hold", demo[True] / "sideboard.FCStd", "--top", "Case top")
    assert run.returncode == 2 and "room in its groove" in run.stdout
