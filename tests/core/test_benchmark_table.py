"""The benchmarks' table: a miss is shown, so is a script that died and what was left out; curves have their slope."""

from __future__ import annotations

import math
import sys

import pytest

from tests.benchmarks import __main__ as every
from tests.benchmarks.rows import Curve, Measured, Row, from_json, shortest, to_json
from tests.benchmarks.table import plot_curves, table_text

CURVE = Curve("plates", "plates", "s", ((10.0, 2.0), (100.0, 20.0), (1000.0, 200.0)))
FOUND = {
    "one": Measured([Row("fast", "slow", 12.0, least=10.0), Row("big", "small", 3.0, most=2.0)], [CURVE]),
    "two": Measured([Row("told", "nothing", 1.0)], left_out=["the kiln: there is none"]),
}


@pytest.mark.parametrize(
    ("row", "met"),
    [
        (Row("a", "b", 10.0, least=10.0), True),
        (Row("a", "b", 9.9, least=10.0), False),
        (Row("a", "b", 2.0, most=2.0), True),
        (Row("a", "b", 2.1, most=2.0), False),
        (Row("a", "b", 2.1, least=1.0, most=2.0), False),
        (Row("a", "b", math.nan, most=2.0), False),
        (Row("a", "b", math.nan, least=2.0), False),
        (Row("a", "b", 5.0), None),
    ],
)
def test_what_was_asked_decides(row, met):
    assert row.met is met
    assert row.line().startswith({True: "met", False: "MISSED", None: "told"}[met])


def test_the_slope_is_that_of_the_logarithms():
    assert CURVE.exponent == pytest.approx(1.0)
    square = Curve("s", "n", "s", ((2.0, 4.0), (4.0, 16.0), (8.0, 64.0)))
    assert square.exponent == pytest.approx(2.0)
    assert math.isnan(Curve("s", "n", "s", ((2.0, 4.0),)).exponent)


def test_json_gives_the_same_back():
    for each in FOUND.values():
        assert from_json(to_json(each)) == each


def test_the_table_tells_misses_and_what_was_left_out():
    text = table_text(FOUND, quick=True)
    lines = text.splitlines()
    assert lines[0].startswith("A quick run")
    assert next(line for line in lines if " big " in line).endswith("NO")
    assert next(line for line in lines if " fast " in line).endswith("yes")
    assert "left out of two: the kiln: there is none" in lines
    assert lines[-1] == "1 met, 1 missed, 1 told only, 1 left out"
    assert "plates^1.00" in text


def test_a_script_that_dies_is_a_miss(tmp_path, capfd):
    dies = tmp_path / "python"
    dies.write_text("#!/bin/sh\nexit 3\n", encoding="utf-8")
    dies.chmod(0o755)
    measured = every.run("sheet", str(dies), tmp_path, quick=True)
    assert [row.met for row in measured.rows] == [False]
    assert "code 3" in measured.rows[0].name
    assert "bench_sheet" in capfd.readouterr().out


def test_a_script_that_leaves_half_a_file_is_a_miss(tmp_path, capfd):
    (tmp_path / "sheet.json").write_text('{"rows": [', encoding="utf-8")
    assert every.run("sheet", "/bin/true", tmp_path, quick=False).rows[0].met is False


def test_every_script_gives_rows_and_the_host_is_wanted_by_known_ones():
    assert every.names()
    assert set(every.names()) >= every.IN_HOST
    for name in every.names():
        text = (every.HERE / f"bench_{name}.py").read_text(encoding="utf-8")
        assert "\ndef measure(asked" in text
        assert "    finish(measure, __doc__" in text


def test_the_picture_is_drawn_or_its_absence_told(tmp_path, monkeypatch):
    pytest.importorskip("matplotlib")
    kept = tmp_path / "curves.png"
    assert plot_curves(FOUND, kept) == str(kept)
    assert kept.stat().st_size > 5000
    monkeypatch.setitem(sys.modules, "matplotlib.figure", None)
    assert "matplotlib is not installed" in plot_curves(FOUND, tmp_path / "none.png")
    assert plot_curves({}, kept) == "no curves to draw"


def test_the_shortest_of_several_runs_counts():
    ticks = iter([0.0, 5.0, 5.0, 7.0, 7.0, 10.0])
    assert shortest(3, lambda: "done", clock=lambda: next(ticks)) == (2.0, "done")
