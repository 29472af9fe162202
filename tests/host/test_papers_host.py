"""Papers inside a document: schedule and drawing page, their figures, one undo step, gone without a trace."""

from __future__ import annotations

import pytest

from tests.host.test_hardware_placed import small_table
from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.actions.hardware import PlaceWish, plans_of
from workbench_pkg.actions.papers import draw_page, remove_papers, write_schedule
from workbench_pkg.host.property_dump import differences, property_dump
from workbench_pkg.objects import papers as kept


def cell_of(sheet, text, column=0):
    """Row of the first cell of a column with a text."""
    for row in range(1, 200):
        try:
            value = sheet.get(f"{chr(65 + column)}{row}")
        except ValueError:
            continue
        if value == text:
            return row
    raise AssertionError(text)


def test_the_schedule_holds_the_reports_figures_with_units(doc):
    small_table(doc)
    before, steps = property_dump(doc), doc.UndoCount
    sheet = write_schedule(doc)
    assert doc.UndoCount == steps + 1 and sheet.TypeId == "Spreadsheet::Sheet"
    from workbench_pkg.actions.check import check_document

    part = next(one for one in check_document(doc)["parts"] if one["name"] == "Board 2")
    row = cell_of(sheet, "Board 2")
    width, today = sheet.get(f"C{row}"), sheet.get(f"F{row}")
    assert (width.Value, today.Value) == pytest.approx((part["width_mm"], part["today_mm"]), abs=1e-3)
    assert str(width.Unit) == str(__import__("FreeCAD").Units.Length)
    assert cell_of(sheet, "Parts") < cell_of(sheet, "Joints")
    again = write_schedule(doc)
    assert [o.Name for o in doc.Objects if o.TypeId == "Spreadsheet::Sheet"] == [again.Name]
    assert remove_papers(doc) == 2
    assert differences(before, property_dump(doc)) == []
    doc.undo()
    assert any(o.TypeId == "Spreadsheet::Sheet" for o in doc.Objects)


def test_the_schedule_goes_with_the_answer(doc):
    small_table(doc)
    before = property_dump(doc)
    annotate(doc)
    write_schedule(doc)
    remove(doc)
    assert not kept.objects_of_kind(doc, kept.SCHEDULE) and not kept.objects_of_kind(doc, kept.GROUP)
    assert differences(before, property_dump(doc)) == []


def test_the_drawing_page_shows_the_top_from_below(doc):
    small_table(doc)
    before, steps = property_dump(doc), doc.UndoCount
    page = draw_page(doc, plan="slotted screw")
    assert doc.UndoCount == steps + 1
    (fresh,) = kept.objects_of_kind(doc, kept.PAGE)
    assert fresh is page or fresh.Name == page.Name
    view = next(v for v in page.Views if v.TypeId == "TechDraw::DrawViewPart")
    table = next(v for v in page.Views if v.TypeId == "TechDraw::DrawViewSpreadsheet")
    assert tuple(view.Direction) == pytest.approx((0, 0, -1), abs=1e-6)
    plan = plans_of(doc, PlaceWish()).entry["plans"]
    told = next(one for one in plan if one["kind"] == "slotted screw")["fasteners"]
    for row, one in enumerate(told, 3):
        assert table.Source.get(f"A{row}") == one["number"]
        assert table.Source.get(f"C{row}").Value == pytest.approx(one["from_end_mm"])
    heads = [table.Source.get(f"{letter}2") for letter in "ABCDEFGHI"]
    assert heads[:2] == ["number", "on"] and "slot length" in heads  # slots are there, so their columns are
    assert remove_papers(doc) >= 6
    assert differences(before, property_dump(doc)) == []


def test_own_papers_are_no_parts(doc):
    from workbench_pkg.actions.check import check_document

    small_table(doc)
    names = [part["name"] for part in check_document(doc)["parts"]]
    draw_page(doc)
    write_schedule(doc)
    assert [part["name"] for part in check_document(doc)["parts"]] == names
