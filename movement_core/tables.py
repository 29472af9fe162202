"""Read the CSV tables that ship in movement_core/data. Only sheet/schemas.py touches files besides."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator, Sequence
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
