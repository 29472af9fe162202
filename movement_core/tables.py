"""Read the CSV tables that ship in movement_core/data. Only sheet/schemas.py touches files besides."""

from __future__ import annotations

import csv
import io
from collections.abc import Collection, Iterator, Sequence
from functools import cache
from importlib import resources

from movement_core.errors import InputError
from movement_core.wording import say


@cache
def rows(table: str) -> tuple[dict[str, str], ...]:
    """All rows of ``data/<table>.csv`` as dictionaries of strings; lines that start with ``#`` are notes."""
    text = resources.files("movement_core").joinpath("data", f"{table}.csv").read_text(encoding="utf-8")
    lines = (line for line in io.StringIO(text, newline="") if not line.startswith("#"))
    return tuple(csv.DictReader(lines))


def number(cell: str | None) -> float | None:
    """The number in a cell; an empty cell is a missing value and stays missing."""
    return float(cell) if cell not in (None, "") else None


def delimiter_of(heading: str) -> str:
    """Comma or semicolon, whichever the heading of a user's table has more of."""
    return ";" if heading.count(";") > heading.count(",") else ","


def read_headed(
    text: str, name: str, needed: Collection[str] = (), allowed: Sequence[str] = ()
) -> tuple[list[str], Iterator[tuple[int, list[str]]]]:
    """The columns of a user's table, lower case, and its rows as of ``read_cells``.

    ``needed`` : columns that must be there, and ``allowed`` those to name where one is not: InputError then.
    """
    lines = text.lstrip("\ufeff").splitlines()
    heading = lines[0] if lines else ""
    rows = read_cells(lines, delimiter_of(heading), name)
    columns = [column.strip().lower() for column in next(rows, (1, []))[1]]
    if not set(needed) <= set(columns):
        raise InputError(
            say("the heading {heading!r} lacks a column", heading=heading[:80]),
            where=say("{name}, line 1", name=name),
            allowed=", ".join(allowed),
            todo=say("write the heading in the first line"),
        )
    return columns, rows


def read_cells(lines: Sequence[str], delimiter: str, name: str) -> Iterator[tuple[int, list[str]]]:
    """The rows of a user's table with the line in which each ends. Raises InputError where it has no cells."""
    reader = csv.reader(io.StringIO("\n".join(lines)), delimiter=delimiter)
    while True:
        try:
            cells = next(reader, None)
        except csv.Error as error:
            raise InputError(
                say("the table cannot be cut into cells ({error})", error=error),
                where=say("{name}, line {line_num}", name=name, line_num=reader.line_num + 1),
                todo=say("look for a quote that is never closed"),
            ) from None
        if cells is None:
            return
        yield reader.line_num, cells
