"""Papers inside a document: schedule and drawing page, their figures, one undo step, gone without a trace."""

from __future__ import annotations

import re

import pytest

from movement_core.piece.hardware import hardware_of
from movement_core.sheet.template.marks import template_marks
from movement_core.sheet.template.numbers import drawn_numbers
from tests.host.test_hardware_placed import small_table
from workbench_pkg.actions.annotate import annotate, remove
from workbench_pkg.actions.hardware import PlaceWish, plans_of
from workbench_pkg.actions.papers import CROSS_MM, draw_page, remove_papers, write_schedule
from workbench_pkg.host.drawing import drawn
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
    shown = re.findall(r">([^<>]*\d[.,]\d[^<>]*)<", table.Symbol)
    assert len(shown) >= len(told) and all(
        re.search(r" mm$", text) for text in shown
    )  # no length without its unit
    heads = [table.Source.get(f"{letter}2") for letter in "ABCDEFGHI"]
    assert heads[:2] == ["number", "on"] and "slot length" in heads  # slots are there, so their columns are
    assert remove_papers(doc) >= 6
    assert differences(before, property_dump(doc)) == []


def entities(path):
    """Entities of a DXF file, as lists of (code, value). Source: the format's published reference (from memory)."""
    lines = path.read_text(encoding="utf-8", errors="replace").splitlines()
    pairs = [(code.strip(), value.strip()) for code, value in zip(lines[::2], lines[1::2])]
    found = []
    for code, value in pairs[pairs.index(("2", "ENTITIES")) :]:
        if code == "0":
            found.append([])
        if found:
            found[-1].append((code, value))
    return [one for one in found if one[0][1] not in ("ENDSEC", "EOF")]


@pytest.mark.parametrize("plan", ["slotted screw", "clip"])
def test_the_page_is_drawn_without_a_window_and_leaves_as_dxf(doc, plan, tmp_path):
    import TechDraw

    small_table(doc)
    page = draw_page(doc, plan=plan)
    view = next(one for one in page.Views if one.TypeId == "TechDraw::DrawViewPart")
    assert len(view.getVisibleEdges()) > 40  # host 1.0 leaves it empty where nothing brings its events
    target = tmp_path / "page.dxf"
    TechDraw.writeDXFPage(page, str(target))
    found = entities(target)
    kinds = [one[0][1] for one in found]
    table = next(v for v in page.Views if v.TypeId == "TechDraw::DrawViewSpreadsheet").Source
    count = next(row for row in range(3, 99) if not table.getContents(f"A{row}")) - 3
    assert count > 3 and kinds.count("CIRCLE") == count  # a hole for each row of the table
    texts = [value for one in found if one[0][1] == "TEXT" for code, value in one if code == "1"]
    assert any("1:" in text for text in texts) and any(text.startswith("Datum: ") for text in texts)
    lines = [dict(one) for one in found if one[0][1] == "LINE"]
    marks = drawn_marks(doc, plan)
    scale = kept.page_scale(marks)
    told = sum(
        len(line) - 1 for one in drawn_numbers(marks, scale, CROSS_MM, kept.DIGITS_MM) for line in one.lines
    )
    short = [
        one for one in lines
        if max(abs(float(one["11"]) - float(one["10"])), abs(float(one["21"]) - float(one["20"]))) <= kept.DIGITS_MM
    ]  # fmt: skip
    assert told > count and len(short) >= told  # every stroke of every number is there


def drawn_marks(doc, plan):
    plans = plans_of(doc, PlaceWish())
    chosen = next(one for one in plans.plans.plans if one.kind == plan)
    return template_marks(plans.plans, chosen, plans.entry, hardware_of(plans.plans, chosen))


def test_a_view_that_stays_empty_is_told_with_what_to_do(doc, monkeypatch):
    small_table(doc)
    monkeypatch.setattr("workbench_pkg.actions.papers.drawn", lambda view: False)
    with pytest.warns(UserWarning, match="Drawing of .* is still empty.* open it in the window"):
        draw_page(doc)


def test_a_view_without_anything_to_show_is_given_up_in_time(doc):
    view = doc.addObject("TechDraw::DrawViewPart", "Nothing")
    assert drawn(view, 0.05) is False


def test_own_papers_are_no_parts(doc):
    from workbench_pkg.actions.check import check_document

    small_table(doc)
    names = [part["name"] for part in check_document(doc)["parts"]]
    draw_page(doc)
    write_schedule(doc)
    assert [part["name"] for part in check_document(doc)["parts"]] == names
