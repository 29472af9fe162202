"""Papers inside a document: a schedule as the host's spreadsheet, and a drawing page of each top.

All of it lies in one group of ours, ``Heartside papers``, inside the results if there are any, and goes with them.
The objects are plain ones of the host, so a file opens whole without the add-on.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import FreeCAD as App
import Part

from movement_core.errors import HeartsideError
from movement_core.sheet.datum import end_told
from movement_core.sheet.schedule import Block, Cell, Length
from movement_core.sheet.template.marks import TemplateMarks
from movement_core.wording import phrase, say, word
from workbench_pkg.host.marks import kind_of, mark, objects_of_kind, refuse_newer
from workbench_pkg.host.units import in_inches
from workbench_pkg.host.version import host_version
from workbench_pkg.objects.results import results_of

GROUP, SCHEDULE, PAGE, DRAWN = "papers", "schedule", "drawing page", "drawing"
LABEL = phrase("Heartside papers")
BLANK = "A4_Landscape_blank.svg"
PAGE_MM, PLACE_FOR_VIEW_MM = (297.0, 210.0), (260.0, 96.0)
TABLE_TEXT = 20.0  # the host's dots, as the widths of its columns
ROW_MM, DOT_MM = 7.94, 0.265  # of the host's table: a row, and a dot of its columns
LETTER_DOTS, BESIDE_DOTS = 11.0, 14.0  # room of a letter, and beside a text
PLACE_FOR_TABLE_MM = (270.0, 82.0)
THIN_MM = 0.25  # lines of the view
DIGITS_MM = 3.0  # height of the numbers in it
FIRST_COLUMN_DOTS = 260  # names are long


def papers_group(doc: Any) -> Any:
    """The group of our papers, made if there is none."""
    found = objects_of_kind(doc, GROUP)
    if found:
        return found[0]
    group = mark(doc.addObject("App::DocumentObjectGroup", "HeartsidePapers"), GROUP)
    group.Label = word(LABEL)
    for results in results_of(doc)[:1]:
        results.addObject(group)
        results.purgeTouched()
    return group


def remove(doc: Any, kinds: Sequence[str] = (SCHEDULE, PAGE, DRAWN)) -> int:
    """Take papers of some kinds out, and their group once it is empty; how many objects went.

    Raises InputError where any of them is of a later release; then nothing is removed.
    """
    found = [obj for kind in kinds for obj in objects_of_kind(doc, kind)]
    refuse_newer([*found, *objects_of_kind(doc, GROUP)])
    names = [obj.Name for obj in found]
    names += [obj.Template.Name for obj in found if kind_of(obj) == PAGE and obj.Template is not None]
    for name in names:
        if doc.getObject(name) is not None:
            doc.removeObject(name)
    count = len(names)
    for group in objects_of_kind(doc, GROUP):
        if not group.Group:
            doc.removeObject(group.Name)
            count += 1
    return count


def write_sheet(doc: Any, name: str, blocks: Sequence[Block], kind: str = SCHEDULE) -> Any:
    """A spreadsheet with tables one below the other; lengths are quantities, shown in the user's unit."""
    sheet = mark(doc.addObject("Spreadsheet::Sheet", "HeartsideSchedule"), kind)
    sheet.Label = name
    row = 1
    for block in blocks:
        _fill(sheet, 0, row, block.title)
        sheet.setStyle(_address(0, row), "bold")
        for column, head in enumerate(block.heads):
            _fill(sheet, column, row + 1, head)
            sheet.setStyle(_address(column, row + 1), "bold|underline")
        for number, cells in enumerate(block.rows, row + 2):
            for column, cell in enumerate(cells):
                _fill(sheet, column, number, cell)
        row += len(block.rows) + 3
    if kind == SCHEDULE:
        sheet.setColumnWidth("A", FIRST_COLUMN_DOTS)
    papers_group(doc).addObject(sheet)
    sheet.recompute()
    return sheet


def _fill(sheet: Any, column: int, row: int, cell: Cell) -> None:
    if cell is None:
        return
    if isinstance(cell, Length):
        text = f"={cell.mm:.6g} mm"
    elif isinstance(cell, str):
        text = "'" + cell  # a name is never taken for a formula or a number
    else:
        text = repr(cell)
    sheet.set(_address(column, row), text)


def _address(column: int, row: int) -> str:
    return f"{chr(ord('A') + column)}{row}"


def write_page(doc: Any, marks: TemplateMarks, block: Block, solids: Sequence[Any], axes: Any) -> Any:
    """A drawing page: the top from below with its screws and slots, and the table of both below it."""
    along, down = App.Vector(*axes[2]), App.Vector(*axes[1]) * -1
    shape = mark(doc.addObject("Part::Feature", "HeartsideDrawn"), DRAWN)
    shape.Label = say("Drawn of {name}", name=marks.name)
    shape.Shape = Part.makeCompound([solid.copy() for solid in solids])
    shape.Visibility = False
    page = mark(doc.addObject("TechDraw::DrawPage", "HeartsidePage"), PAGE)
    page.Label = say("Drawing of {name}", name=marks.name)
    template = doc.addObject("TechDraw::DrawSVGTemplate", "HeartsidePaper")  # takes no property of ours
    template.Template = str(blank_paper())
    page.Template = template
    scale = page_scale(marks)
    view = mark(doc.addObject("TechDraw::DrawViewPart", "HeartsideView"), DRAWN)
    view.Label = say("{name} from below", name=marks.name)
    page.addView(view)
    view.Source = [shape]
    view.Direction, view.XDirection = down, along
    view.ScaleType, view.Scale = "Custom", scale
    view.X, view.Y = PAGE_MM[0] / 2, PAGE_MM[1] - 18.0 - PLACE_FOR_VIEW_MM[1] / 2
    table = write_sheet(doc, say("Fasteners of {name}", name=marks.name), [block], DRAWN)
    _tell_units(table, block)
    shown = mark(doc.addObject("TechDraw::DrawViewSpreadsheet", "HeartsideTable"), DRAWN)
    page.addView(shown)
    shown.Source = table
    shown.CellStart, shown.CellEnd = "A2", _address(len(block.heads) - 1, len(block.rows) + 2)
    high, wide = ROW_MM * (len(block.rows) + 1), DOT_MM * sum(_widen(table, block))
    fit = min(1.0, PLACE_FOR_TABLE_MM[1] / high, PLACE_FOR_TABLE_MM[0] / wide)
    shown.ScaleType, shown.Scale = "Custom", fit
    shown.TextSize = TABLE_TEXT
    shown.X, shown.Y = PAGE_MM[0] / 2, 8.0 + PLACE_FOR_TABLE_MM[1] / 2
    title = say("{title}, seen from below, 1:{by:g}", title=block.title, by=1 / scale)
    datum = say(
        "Datum: outer edge at {edge} (above) and end at {end} (left)",
        edge=marks.datum["edge"],
        end=end_told(marks.datum, marks.datum["end"]),
    )
    for line, height in ((title, 6.0), (datum, 12.0)):  # a note each: a DXF takes the first line of a note
        note = mark(doc.addObject("TechDraw::DrawViewAnnotation", "HeartsideNote"), DRAWN)
        page.addView(note)
        note.Text = [line]
        note.TextSize = 3.5
        note.X, note.Y = PAGE_MM[0] / 2, PAGE_MM[1] - height
    if App.GuiUp:
        view.ViewObject.LineWidth = THIN_MM
    group = papers_group(doc)
    for obj in (shape, page):
        group.addObject(obj)
    return page


def not_drawn(page: Any) -> str:
    """What is told where the host has left the view of a page empty."""
    return say(
        "the view on {page} is still empty: this host has not drawn it without its window. Save the document and open "
        "it in the window, where the view is drawn; all else on the page is there",
        page=page.Label,
    )


def page_scale(marks: TemplateMarks) -> float:
    """The scale at which a top is drawn."""
    return _plain_scale(
        min(PLACE_FOR_VIEW_MM[0] / marks.length_mm, PLACE_FOR_VIEW_MM[1] / marks.width_today_mm)
    )


def _tell_units(table: Any, block: Block) -> None:
    """Name the unit of each length: hosts before 1.0 show a table on a page without units otherwise."""
    if host_version() >= (1, 0, 0):
        return
    unit = "in" if in_inches() else "mm"
    for number, cells in enumerate(block.rows, 3):
        for column, cell in enumerate(cells):
            if isinstance(cell, Length):
                table.setDisplayUnit(_address(column, number), unit)
    table.recompute()


def _widen(table: Any, block: Block) -> list[float]:
    """Give each column of a table room for its longest text; the widths in dots."""
    widths = []
    for column, head in enumerate(block.heads):
        texts = [head, *(_shown(row[column]) for row in block.rows)]
        widths.append(max(map(len, texts)) * LETTER_DOTS + BESIDE_DOTS)
        table.setColumnWidth(chr(ord("A") + column), int(widths[-1]))
    return widths


def _shown(cell: Cell) -> str:
    if isinstance(cell, Length):
        return f"{cell.mm:,.2f} mm"
    return "" if cell is None else str(cell)


def _plain_scale(most: float) -> float:
    """The largest of the usual drawing scales that fits. Source: ISO 5455 (recalled)."""
    return next((1 / by for by in (1, 2, 5, 10, 20, 50, 100) if 1 / by <= most), 1 / 200)


def blank_paper() -> Path:
    """The host's own blank sheet; where it lies differs by version."""
    folder = Path(App.getResourceDir()) / "Mod" / "TechDraw" / "Templates"
    found = sorted(folder.rglob(BLANK), key=lambda path: ("ISO" not in path.parts, len(path.parts)))
    if not found:
        raise HeartsideError(
            say("the host's drawing paper is not there"), where=BLANK, todo=say("install its drawing module")
        )
    return found[0]
