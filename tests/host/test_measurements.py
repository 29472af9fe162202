"""Measurements kept with a document, and what they change in its report."""

from __future__ import annotations

import datetime

import pytest

from movement_core.errors import InputError
from movement_core.piece.measured import Measurement
from workbench_pkg.actions.check import check_document, check_file
from workbench_pkg.actions.measured import add_measurement, kept_measurements, not_one_part
from workbench_pkg.actions.settings import settings_from_texts
from workbench_pkg.objects.study import find_study

DAY = datetime.date(2026, 1, 20)
TAG = "Top, wide wood{white oak; grain x; show z; heart show; pith 0 80; built 12; lot 7}"


@pytest.fixture
def top(doc):
    box = doc.addObject("Part::Box", "Top")
    box.Length, box.Width, box.Height = 1200, 400, 22
    box.Label = TAG
    doc.recompute()
    return box


def reading(part="Top, wide", value=390.0):
    return Measurement(part, "width", value, DAY, 5.0, tool_mm=0.1)


def test_a_measurement_is_kept_in_the_study_used_by_check_and_undone(doc, top):
    doc.UndoMode = 1
    before = check_document(doc)
    learned = add_measurement(doc, reading())
    assert learned.lots["lot 7"].factor != pytest.approx(1.0, abs=0.005)
    assert kept_measurements(doc) == ((reading(),), ())
    assert find_study(doc).HeartsideMeasuredList == ["2026-01-20 Top, wide: width 390 mm"]
    after = check_document(doc)
    assert "learned from one measurement" in after["parts"][0]["facts"]["species"]["reason"]
    assert after["parts"][0]["driest_mm"] != before["parts"][0]["driest_mm"]
    doc.undo()
    assert kept_measurements(doc) == ((), ())


def test_a_part_that_is_not_there_changes_nothing(doc, top):
    with pytest.raises(InputError, match="no part is called"):
        add_measurement(doc, reading("Bottom"))
    assert find_study(doc) is None


def test_a_table_beside_a_step_file_is_read_and_its_bad_rows_are_told(doc, top, tmp_path):
    import Import

    path = tmp_path / "top.step"
    Import.export([top], str(path))
    (tmp_path / "top.measured.csv").write_text(
        "part,what,value_mm,date,moisture_percent\n"
        '"Top, wide",width,390,2026-01-20,5\n"Top, wide",girth,1,2026-01-20,5\n',
        encoding="utf-8",
    )
    entry = check_file(path, settings_from_texts(None, "2026-01-20", None))
    assert "learned from one measurement" in entry["parts"][0]["facts"]["species"]["reason"]
    assert any("girth" in str(error) for error in entry["errors"])


@pytest.mark.parametrize(("count", "said"), [(0, "no part is called 'Top'"), (2, "2 parts are called 'Top'")])
def test_a_name_of_no_or_of_several_parts_is_told_as_a_sentence(count, said):
    assert not_one_part(["Rail", *["Top"] * count], "Top") == said
