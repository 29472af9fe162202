"""Lines of text for a terminal: wrapped sentences and small tables."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence

from movement_core.sheet.text import WIDTH


def wrapped(text: str, indent: str = "") -> str:
    """A text over several lines, each with the indent, and two more after the first."""
    return textwrap.fill(text, WIDTH, initial_indent=indent, subsequent_indent=indent + "  ")


def capital(text: str) -> str:
    """The text with its first letter large."""
    return text[:1].upper() + text[1:]


def table(rows: Sequence[Sequence[str]], left: Sequence[int] = (), indent: str = "    ") -> list[str]:
    """Lines of a table with a heading row; columns in ``left`` are flush left; wholly empty columns are left out."""
    used = [c for c in range(len(rows[0])) if any(row[c] for row in rows[1:])]
    widths = {c: max(len(row[c]) for row in rows) for c in used}

    def line(row: Sequence[str]) -> str:
        cells = (row[c].ljust(widths[c]) if c in left else row[c].rjust(widths[c]) for c in used)
        return (indent + "  ".join(cells)).rstrip()

    rule = indent + "  ".join("-" * (widths[c] if rows[0][c] else 0) for c in used)
    return [line(rows[0]), rule.rstrip(), *(line(row) for row in rows[1:])]
