"""A warped top told on the command line, answered inside the host."""

from __future__ import annotations

from workbench_pkg.batch.commands import diagnose
from workbench_pkg.batch.inside.diagnose import carry_out
from workbench_pkg.batch.words import parse


def test_a_hollow_counts_below_zero_and_the_causes_are_told(monkeypatch, capsys):
    monkeypatch.setattr(diagnose, "ask_worker", lambda job: carry_out(job))
    words = "--width 600 --thickness 19 --hollow 25mm --flat-at 8 --humidity 90"
    options = parse(["diagnose", "--species", "sugar maple", *words.split()])
    assert options.carry_out(options) == 0
    assert "25.0 mm hollow" in capsys.readouterr().out
