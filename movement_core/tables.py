"""Read the CSV tables that ship in movement_core/data. The only place of the core that touches files."""

from __future__ import annotations

import csv
import io
from functools import cache
from importlib import resources


@cache
def rows(table: str) -> tuple[dict[str, str], ...]:
    """All rows of ``data/<table>.csv`` as dictionaries of strings; lines that start with ``#`` are notes."""
    text = resources.files("movement_core").joinpath("data", f"{table}.csv").read_text(encoding="utf-8")
    lines = (line for line in io.StringIO(text, newline="") if not line.startswith("#"))
    return tuple(csv.DictReader(lines))


def number(cell: str | None) -> float | None:
    """The number in a cell; an empty cell is a missing value and stays missing."""
    return float(cell) if cell not in (None, "") else None
