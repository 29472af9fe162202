"""Panels of one file arranged from the command line, answered inside the host: one that lacks facts stops no other."""

from __future__ import annotations

import pytest

from movement_core.errors import InputError
from workbench_pkg.actions.arrange import arrange_document
from workbench_pkg.actions.tag import tag
from workbench_pkg.batch.commands import arrange
from workbench_pkg.batch.inside.arrange import carry_out
from workbench_pkg.batch.words import parse


def two_panels(doc, *known):
    """Two panels of two boards each; only the boards of those that are named say where their pith was."""
    for row, panel in enumerate(("A", "B")):
        for i in range(2):
            board = doc.addObject("Part::Box", f"{panel}{i + 1}")
            board.Length, board.Width, board.Height = 900, 120, 22
            board.Placement.Base.x, board.Placement.Base.y = 0, 120 * i
            board.Placement.Base.z = 500 * row
            rings = {"pith": (10.0, -80.0)} if panel in known else {"cut": "flat"}
            tag([board], species="white oak", grain="x", show="z", built=9.0, **rings)
    doc.recompute()


def test_a_panel_that_lacks_facts_is_told_and_the_other_arranged(doc, tmp_path, monkeypatch, capsys):
    two_panels(doc, "B")
    path = tmp_path / "panels.FCStd"
    doc.saveCopy(str(path))
    monkeypatch.setattr(arrange, "ask_worker", lambda job: carry_out(job))
    options = parse(["arrange", str(path)])
    assert options.carry_out(options) == 2
    told = capsys.readouterr().out
    assert "B1 is 1" in " ".join(told.split()) or "1 is B1" in " ".join(told.split())
    assert "pith or the moisture is not known of A1, A2" in " ".join(told.split())


def test_where_none_can_be_arranged_the_option_that_picks_one_is_named(doc):
    two_panels(doc)
    with pytest.raises(InputError, match="none of its 2 panels can be arranged") as refused:
        arrange_document(doc)
    assert (
        "--board" in str(refused.value) and "A1, A2" in str(refused.value) and "B1, B2" in str(refused.value)
    )
    with pytest.raises(InputError, match="B1, B2") as picked:
        arrange_document(doc, board="B1")
    assert "A1" not in str(picked.value)
