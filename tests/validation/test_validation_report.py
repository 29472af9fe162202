"""The report of the comparisons: every file compares something, and the kept report lists what a run gives."""

from __future__ import annotations

import os
from pathlib import Path

import numpy as np
import pytest

from movement_core.sources import READ, RECALLED
from tests.validation import record
from tests.validation.report_pages import listed, markdown

KEPT = Path(__file__).with_name("REPORT.md")


def test_every_file_records_what_it_compares(whole_run):
    silent = [
        file
        for file, outcomes in whole_run.items()
        if outcomes != {"skipped"}
        and file != Path(__file__).stem
        and not any(each.file == file for each in record.RECORDS.values())
    ]
    assert not silent, f"these compare nothing with the world, or do not record it: {silent}"


@pytest.mark.skipif("HEARTSIDE_REPORT_KEPT" in os.environ, reason="this run writes the report anew")
def test_the_kept_report_lists_the_comparisons_of_this_run(whole_run):
    ran = {file for file, outcomes in whole_run.items() if "skipped" not in outcomes}
    kept = {key for key in listed(KEPT.read_text(encoding="utf-8")) if key[0] in ran}
    now = {each.key for each in record.RECORDS.values() if each.file in ran}
    assert kept == now, "python3 -m tests validation --report writes it anew"


@pytest.fixture
def no_records(monkeypatch):
    monkeypatch.setattr(record, "RECORDS", {})


def test_a_comparison_that_is_off_fails_and_is_kept(no_records):
    record.compared("length", "a table", READ, 10.0, 10.4, "mm", within=0.5)
    with pytest.raises(AssertionError, match=r"ours 10.6, expected 10 mm .* source: a table"):
        record.compared("length", "a table", READ, 10.0, 10.6, "mm", within=0.5)
    with pytest.raises(AssertionError):
        record.compared("length", "a table", READ, 10.0, np.nan, "mm", within=0.5)
    with pytest.raises(AssertionError):
        record.within_range("share", "a handbook", RECALLED, 1, 2, [1.5, 2.1], "")
    assert len(record.RECORDS) == 2


def test_a_report_is_read_as_it_was_written(no_records):
    record.compared("sag | middle", "a | table", READ, [1.0, 2.0], [1.1, 2.0], "mm", within=0.5, note="why")
    record.within_range("share", "a handbook", RECALLED, 1, 2, 1.5, "")
    rows = list(record.RECORDS.values())
    text = markdown(rows, {Path(__file__).stem: "Report"})
    assert listed(text) == {row.key for row in rows}
    assert "- *sag | middle*: why" in text and "+0.1 (+10 %)" in text


@pytest.mark.parametrize("more", [{}, {"within": 1.0, "provenance": "hearsay"}])
def test_a_comparison_needs_a_tolerance_and_a_known_basis(no_records, more):
    basis = more.pop("provenance", READ)
    with pytest.raises(ValueError, match=r"tolerance|provenance"):
        record.compared("length", "a table", basis, 10.0, 10.4, "mm", **more)
