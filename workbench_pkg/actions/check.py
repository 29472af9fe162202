"""Work out a document's piece for a year, as the plain data of the report."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from movement_core.checks import all_findings
from movement_core.errors import HeartsideError
from movement_core.piece.solve import SolvedPiece, solve_piece
from movement_core.piece.tag_sources import tags_from_table
from movement_core.piece.tags import Tags
from movement_core.sheet.entry import file_entry
from workbench_pkg.actions.reading import ReadPiece, read_piece
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.year import settings_of
from workbench_pkg.host.documents import opened

TABLE_ENDING = ".wood.csv"


@dataclass(frozen=True, eq=False)
class Answer:
    """A document's parts as they were read, the piece through the year, and the report as plain data."""

    read: ReadPiece
    piece: SolvedPiece
    entry: dict[str, Any]


def work_out(
    doc: Any,
    settings: Settings | None = None,
    table: Mapping[str, Tags] | None = None,
    path: str = "",
    errors: tuple[str, ...] = (),
) -> Answer:
    """Read a document and work it out; nothing in it is changed.

    ``settings`` None: what the document's own study says. ``table``: tags from beside the model. ``path`` and
    ``errors`` go into the report as they are.
    """
    settings = settings or settings_of(doc)
    read = read_piece(doc, table, settings.shop)
    piece = solve_piece(read.parts, settings.year, settings.today, settings.today_mc)
    told = (*errors, *read.unreadable)
    entry = file_entry(
        path or doc.FileName or doc.Label, piece, all_findings(piece), told, read.hidden, settings.told
    )
    return Answer(read, piece, entry)


def check_document(doc: Any, settings: Settings | None = None) -> dict[str, Any]:
    """The report of an open document."""
    return work_out(doc, settings).entry


def check_file(path: Path, settings: Settings, shown: str = "") -> dict[str, Any]:
    """The report of a file, which is never written to.

    Raises FileError where the file cannot be opened or holds no solid.
    """
    table, errors = table_beside(path)
    with opened(path) as doc:
        return work_out(doc, settings, table, shown or str(path), errors).entry


def table_beside(path: Path) -> tuple[dict[str, Tags], tuple[str, ...]]:
    """Tags from the CSV file beside a model (``table.step`` → ``table.wood.csv``), and its problems."""
    beside = path.with_name(path.stem + TABLE_ENDING)
    if not beside.is_file():
        return {}, ()
    try:
        tags, problems = tags_from_table(beside.read_text(encoding="utf-8-sig"), beside.name)
    except (HeartsideError, UnicodeDecodeError, OSError) as error:
        return {}, (f"the tags beside the model cannot be read: {error}",)
    return tags, tuple(problem.message for problem in problems)
