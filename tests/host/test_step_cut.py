"""STEP of the piece with its slots cut: volumes, tags, and that nothing else changes."""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.errors import FileError
from tests.host.test_hardware_placed import small_table
from workbench_pkg.actions.check import check_document, check_file
from workbench_pkg.actions.cutting import cut_slots
from workbench_pkg.actions.hardware import place_plan
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.actions.step import export_cut
from workbench_pkg.demo.table import trestle_table
from workbench_pkg.host.documents import opened
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.host.property_dump import differences, property_dump

DAY = "2026-03-15"


def test_the_file_has_the_slots_and_the_tags(doc, tmp_path):
    small_table(doc)
    before = property_dump(doc)
    target = tmp_path / "cut.step"
    report = export_cut(doc, target, plan="slotted screw")
    assert differences(before, property_dump(doc)) == []
    assert len(report.parts) == 8 and "Board 1" in report.parts and report.cut
    with opened(target) as other:
        written = sorted(leaf.global_solid().Volume for leaf in read_leaves(other).leaves)
    place_plan(doc, plan="slotted screw")
    cut_slots(doc)
    wanted = sorted(leaf.global_solid().Volume for leaf in read_leaves(doc).leaves)
    assert written == pytest.approx(wanted, rel=1e-6)
    assert sorted(path.name for path in tmp_path.iterdir()) == ["cut.step", "cut.wood.csv"]


def test_the_written_piece_says_the_same_of_its_wood(doc, tmp_path):
    small_table(doc)
    target = tmp_path / "cut.step"
    export_cut(doc, target, plan="slotted screw")
    settings = settings_from_texts(None, DAY)
    told = {part["name"]: part for part in check_document(doc, settings)["parts"]}
    again = check_file(target, settings)
    assert again["errors"] == []
    for part in again["parts"]:
        same = told[part["name"]]
        assert part["species"] == same["species"] and part["missing"] == same["missing"]
        assert part["axes"]["grain"] == pytest.approx(same["axes"]["grain"], abs=1e-6)
        assert part["today_mm"] == pytest.approx(same["today_mm"], abs=0.002)


def test_a_turned_piece_comes_back_as_it_lies(doc, tmp_path):
    """The trestle table stands askew, so that the places of its boards are turned in their document."""
    trestle_table(doc, True)
    doc.recompute()
    target = tmp_path / "table.step"
    export_cut(doc, target)
    settings = settings_from_texts(None, DAY)
    told = {part["name"]: part for part in check_document(doc, settings)["parts"]}
    again = check_file(target, settings)
    assert again["errors"] == []
    assert [len(panel["boards"]) for panel in again["panels"]] == [7]
    for part in again["parts"]:
        same = told[part["name"]]
        assert np.abs(np.array(part["axes"]["grain"]) @ same["axes"]["grain"]) == pytest.approx(1, abs=1e-6)
        assert part["length_mm"] == pytest.approx(same["length_mm"], abs=0.01)


def test_it_writes_over_nothing(doc, tmp_path):
    small_table(doc)
    (tmp_path / "a.step").write_text("mine", encoding="utf-8")
    with pytest.raises(FileError, match="exists"):
        export_cut(doc, tmp_path / "a.step", plan="slotted screw")
    (tmp_path / "b.wood.csv").write_text("mine", encoding="utf-8")
    with pytest.raises(FileError, match="exists"):
        export_cut(doc, tmp_path / "b.step", plan="slotted screw")
    with pytest.raises(FileError, match="step"):
        export_cut(doc, tmp_path / "c.obj", plan="slotted screw")
    assert sorted(p.name for p in tmp_path.iterdir()) == ["a.step", "b.wood.csv"]
    assert (
        (tmp_path / "a.step").read_text(encoding="utf-8")
        == (tmp_path / "b.wood.csv").read_text(encoding="utf-8")
        == "mine"
    )
