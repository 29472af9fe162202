"""Work out a document's piece for a year, as the plain data of the report."""

from __future__ import annotations

import codecs
import csv
import os
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from movement_core.checks import all_findings
from movement_core.errors import FileError, HeartsideError
from movement_core.piece.solve import SolvedPiece, solve_piece
from movement_core.piece.tag_sources import tags_from_table
from movement_core.piece.tags import Tags
from movement_core.sheet.entry import file_entry
from workbench_pkg.actions.reading import ReadPiece, read_piece
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.whole import whole_of
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
    whole, faceless = whole_of(piece, read.leaves)
    told = (*errors, *read.unreadable, *faceless)
    shown = path or doc.FileName or doc.Label
    entry = file_entry(shown, piece, all_findings(whole), told, read.hidden, settings.told, whole)
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
    """Tags from the CSV file beside a model (``table.step`` → ``table.wood.csv``), and its problems.

    The name may be in capitals. UTF-8, or UTF-16 with its mark at the start.
    """
    try:
        beside = _find_beside(path, path.stem + TABLE_ENDING)
        if beside is None:
            return {}, ()
        tags, problems = tags_from_table(_decoded(beside), beside.name)
    except (HeartsideError, csv.Error, OSError) as error:
        return {}, (f"the tags beside the model cannot be read: {error}",)
    return tags, tuple(problem.message for problem in problems)


def _find_beside(path: Path, name: str) -> Path | None:
    """The one of that name beside a file, else the one that differs in capitals only."""
    exact = path.with_name(name)
    if os.path.lexists(exact):
        return exact
    if not path.is_file():
        return None
    found = sorted(each for each in os.listdir(path.parent) if each.lower() == name.lower())
    if len(found) > 1:
        raise FileError(
            f"{' and '.join(found)} could both be meant", where=name, todo=f"keep one, and call it {name}"
        )
    return path.with_name(found[0]) if found else None


def _decoded(table: Path) -> str:
    if table.is_dir():
        raise FileError("it is a folder", where=table.name, allowed="a CSV file", todo="rename the folder")
    try:
        data = table.read_bytes()
    except OSError as error:
        raise FileError(
            f"{error.strerror}", where=table.name, todo="check the file and its permissions"
        ) from None
    encoding = "utf-16" if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)) else "utf-8-sig"
    try:
        return data.decode(encoding)
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise FileError(
            f"it is not written in {encoding.upper().removesuffix('-SIG')}",
            where=f"{table.name}, line {line}",
            todo="save it as UTF-8",
        ) from None
