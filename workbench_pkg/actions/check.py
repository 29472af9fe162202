"""Work out a document's piece for a year, as the plain data of the report."""

from __future__ import annotations

import csv
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from movement_core.checks import all_findings
from movement_core.errors import HeartsideError
from movement_core.piece.joint_table import NamedJoint
from movement_core.piece.solve import SolvedPiece, solve_piece
from movement_core.piece.tag_sources import tags_from_table
from movement_core.piece.tags import Tags
from movement_core.sheet.entry import file_entry
from workbench_pkg.actions.beside import find_beside, text_of
from workbench_pkg.actions.joint import confirmed_joints, joints_beside
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


def solve_document(
    doc: Any, settings: Settings | None = None, table: Mapping[str, Tags] | None = None
) -> tuple[ReadPiece, SolvedPiece]:
    """A document's parts through the year, without what lies between them; the arguments are those of ``work_out``."""
    settings = settings or settings_of(doc)
    read = read_piece(doc, table, settings.shop)
    return read, solve_piece(read.parts, settings.year, settings.today, settings.today_mc)


def work_out(
    doc: Any,
    settings: Settings | None = None,
    table: Mapping[str, Tags] | None = None,
    path: str = "",
    errors: tuple[str, ...] = (),
    joints: Sequence[NamedJoint] = (),
) -> Answer:
    """Read a document and work it out; nothing in it is changed.

    ``settings`` None: what the document's own study says. ``table``: tags from beside the model, ``joints``: kinds of
    joints from there; what the document itself says outranks both. ``path`` and ``errors`` go into the report as they
    are.
    """
    settings = settings or settings_of(doc)
    read, piece = solve_document(doc, settings, table)
    confirmed, unmatched = confirmed_joints(doc, read.parts, joints)
    whole, faceless = whole_of(piece, read.leaves, confirmed)
    told = (*errors, *read.unreadable, *unmatched, *faceless)
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
    joints, problems = joints_beside(path)
    with opened(path) as doc:
        return work_out(doc, settings, table, shown or str(path), (*errors, *problems), joints).entry


def table_beside(path: Path) -> tuple[dict[str, Tags], tuple[str, ...]]:
    """Tags from the CSV file beside a model (``table.step`` → ``table.wood.csv``), and its problems.

    The name may be in capitals. UTF-8, or UTF-16 with its mark at the start.
    """
    try:
        beside = find_beside(path, path.stem + TABLE_ENDING)
        if beside is None:
            return {}, ()
        tags, problems = tags_from_table(text_of(beside), beside.name)
    except (HeartsideError, csv.Error, OSError) as error:
        return {}, (f"the tags beside the model cannot be read: {error}",)
    return tags, tuple(problem.message for problem in problems)
