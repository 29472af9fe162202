"""Tables on pages: columns by weight, rows that do not break, the head again on every page."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from movement_core.sheet.pages import model
from movement_core.sheet.pages.model import Column, Row, Table
from movement_core.sheet.pages.pdf_flow import ASCENT, LINE, SMALL, TABLE, Flow, wrap
from movement_core.sheet.pages.pdf_items import Fill, Rule, Words

PAD_X, PAD_Y = 0.9, 0.7
SHADE = {model.GRAVE: "grave shade", model.MILD: "mild shade"}


@dataclass(frozen=True)
class _Grid:
    """Left edges and widths of the columns."""

    lefts: tuple[float, ...]
    widths: tuple[float, ...]


def lay_table(flow: Flow, table: Table) -> None:
    grid = _grid(flow, table.columns)
    caption = wrap(table.caption, flow.across, SMALL, flow.width)
    head = _head_height(flow, table.columns, grid)
    rows = [_wrapped(flow, row, table.columns, grid) for row in table.rows]
    first = _height(rows[0]) if rows else 0.0
    flow.need(len(caption) * SMALL * LINE + head + min(first, 40.0))
    flow.lines(caption, flow.left, SMALL, "quiet")
    flow.y += 0.6
    _head(flow, table.columns, grid)
    for row, cells in zip(table.rows, rows):
        for part in _parts(flow, cells, head):
            if _height(part) > flow.room + 1e-6:
                flow.new_page()
                _head(flow, table.columns, grid)
            _row(flow, part, row.mark, table.columns, grid)
    flow.put(Rule(flow.left, flow.y, flow.right, flow.y))
    flow.y += 2.5


def _grid(flow: Flow, columns: Sequence[Column]) -> _Grid:
    total = sum(column.share for column in columns)
    widths = [flow.across * column.share / total for column in columns]
    lefts = [flow.left + sum(widths[:place]) for place in range(len(widths))]
    return _Grid(tuple(lefts), tuple(widths))


def _wrapped(flow: Flow, row: Row, columns: Sequence[Column], grid: _Grid) -> list[list[str]]:
    return [
        wrap(cell.words, width - 2 * PAD_X, TABLE, flow.width, place == 0)
        for place, (cell, width) in enumerate(zip(row.cells, grid.widths))
    ]


def _height(cells: Sequence[Sequence[str]]) -> float:
    return max(len(lines) for lines in cells) * TABLE * LINE + 2 * PAD_Y


def _parts(flow: Flow, cells: list[list[str]], head: float) -> list[list[list[str]]]:
    """A row in one piece; one that is taller than a page in as many as it takes."""
    most = max(1, int((flow.bottom - flow.top - head - 2 * PAD_Y) / (TABLE * LINE)))
    count = max(len(lines) for lines in cells)
    return [[lines[start : start + most] for lines in cells] for start in range(0, max(count, 1), most)]


def _row(
    flow: Flow, cells: Sequence[Sequence[str]], mark: str, columns: Sequence[Column], grid: _Grid
) -> None:
    height = _height(cells)
    if mark:
        flow.put(Fill(flow.left, flow.y, flow.right, flow.y + height, SHADE[mark]))
    flow.put(Rule(flow.left, flow.y, flow.right, flow.y))
    for place, (lines, column) in enumerate(zip(cells, columns)):
        _cell(flow, lines, flow.y + PAD_Y, place, column.align, grid, bold=place == 0)
    flow.y += height


def _cell(
    flow: Flow, lines: Sequence[str], y: float, place: int, align: str, grid: _Grid, bold: bool, span: int = 1
) -> None:
    left, width = grid.lefts[place], sum(grid.widths[place : place + span])
    x, anchor = left + PAD_X, model.START
    if align == model.RIGHT:
        x, anchor = left + width - PAD_X, model.END
    elif align == model.CENTRE:
        x, anchor = left + width / 2, model.MIDDLE
    for number, line in enumerate(lines):
        base = y + TABLE * (LINE * number + ASCENT + (LINE - 1) / 2)
        if line:
            flow.put(Words(line, x, base, TABLE, "ink", bold, anchor))


def _groups(columns: Sequence[Column]) -> list[tuple[int, int, str]]:
    """(first column, how many, heading) of neighbouring columns under one heading."""
    found: list[tuple[int, int, str]] = []
    for place, column in enumerate(columns):
        if column.group and found and found[-1][2] == column.group and found[-1][0] + found[-1][1] == place:
            found[-1] = (found[-1][0], found[-1][1] + 1, column.group)
        elif column.group:
            found.append((place, 1, column.group))
    return found


def _head_lines(
    flow: Flow, columns: Sequence[Column], grid: _Grid
) -> tuple[list[list[str]], list[list[str]]]:
    titles = [
        wrap(column.title, width - 2 * PAD_X, TABLE, flow.width, True)
        for column, width in zip(columns, grid.widths)
    ]
    groups = [
        wrap(words, sum(grid.widths[at : at + span]) - 2 * PAD_X, TABLE, flow.width, True)
        for at, span, words in _groups(columns)
    ]
    return titles, groups


def _head_height(flow: Flow, columns: Sequence[Column], grid: _Grid) -> float:
    titles, groups = _head_lines(flow, columns, grid)
    upper = max((len(lines) for lines in groups), default=0)
    grouped = [i for i, column in enumerate(columns) if column.group]
    lower = max((len(titles[i]) for i in grouped), default=0)
    return max(upper + lower, max(len(lines) for lines in titles)) * TABLE * LINE + 2 * PAD_Y


def _head(flow: Flow, columns: Sequence[Column], grid: _Grid) -> None:
    """Headings stand at the bottom of the head, those over several columns at its top."""
    titles, groups = _head_lines(flow, columns, grid)
    height = _head_height(flow, columns, grid)
    flow.put(Fill(flow.left, flow.y, flow.right, flow.y + height, "shade"))
    for (at, span, _), lines in zip(_groups(columns), groups):
        _cell(flow, lines, flow.y + PAD_Y, at, model.CENTRE, grid, True, span)
    for place, (lines, column) in enumerate(zip(titles, columns)):
        top = flow.y + height - PAD_Y - len(lines) * TABLE * LINE
        _cell(flow, lines, top, place, column.align, grid, True)
    flow.y += height
