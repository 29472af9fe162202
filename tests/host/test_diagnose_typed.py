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


def test_rings_of_both_ends_are_read_off_the_model(doc, tmp_path, monkeypatch, capsys):
    from workbench_pkg.actions.tag import tag

    board = doc.addObject("Part::Box", "Board")
    board.Length, board.Width, board.Height = 2000, 200, 25
    doc.recompute()
    tag([board], species="white oak", grain="x", show="z", pith=(0.0, 80.0), far=(-80.0, 80.0), built=12.0)
    path = tmp_path / "board.FCStd"
    doc.saveCopy(str(path))
    monkeypatch.setattr(diagnose, "ask_worker", lambda job: carry_out(job))
    options = parse(["diagnose", str(path), "--part", "Board", "--hollow", "3", "--twist", "4"])
    assert options.carry_out(options) == 0
    assert "rings turned by 45° at the other end" in capsys.readouterr().out
