"""Work out a document's piece for a year, as the plain data of the report."""

from __future__ import annotations

import csv
from collections.abc import Generator, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from movement_core.checks import CHECKS, Finding, by_gravity
from movement_core.errors import HeartsideError
from movement_core.piece.joint_table import NamedJoint
from movement_core.piece.measured import Measurement
from movement_core.piece.solve import SolvedPiece, solve_piece
from movement_core.piece.tag_sources import tags_from_table
from movement_core.piece.tags import Tags
from movement_core.piece.whole import WholePiece, whole_piece
from movement_core.sheet.entry import file_entry
from movement_core.wording import say
from workbench_pkg.actions.beside import find_beside, text_of
from workbench_pkg.actions.faces import read_faces
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.actions.joint import confirmed_joints, joints_beside
from workbench_pkg.actions.measured import measured_beside, with_learned
from workbench_pkg.actions.reading import ReadPiece, read_piece
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.year import settings_of
from workbench_pkg.host.documents import opened
from workbench_pkg.host.faces import LeafFaces
from workbench_pkg.host.leaves import read_leaves

TABLE_ENDING = ".wood.csv"


@dataclass(frozen=True, eq=False)
class Question:
    """Everything that is read of a document for an answer, so that it can be answered without the document.

    Attributes
    ----------
    read : the parts. faces : copies of their solids' faces. confirmed : kinds of joints by the keys of two parts.
    told : what could not be read or used. path : how the report calls the model.
    fingerprint : what the document stood at; see ``fingerprint``.
    """

    settings: Settings
    read: ReadPiece
    faces: LeafFaces
    confirmed: Mapping[tuple[str, str], str]
    told: tuple[str, ...]
    path: str
    fingerprint: str
    learned: tuple[str, ...] = ()


@dataclass(frozen=True, eq=False)
class Answer:
    """A document's parts as they were read, the piece through the year and as a whole, the report as plain data.

    ``fingerprint``: what the document stood at when it was read.
    """

    read: ReadPiece
    piece: SolvedPiece
    entry: dict[str, Any]
    whole: WholePiece
    fingerprint: str


def solve_document(
    doc: Any,
    settings: Settings | None = None,
    table: Mapping[str, Tags] | None = None,
    measured: Sequence[Measurement] = (),
) -> tuple[ReadPiece, SolvedPiece]:
    """A document's parts through the year, without what lies between them; the arguments are those of ``work_out``."""
    settings = settings or settings_of(doc)
    read, _ = with_learned(doc, read_piece(doc, table, settings.shop), settings, measured)
    return read, solve_piece(read.parts, settings.year, settings.today, settings.today_mc)


def read_document(
    doc: Any,
    settings: Settings | None = None,
    table: Mapping[str, Tags] | None = None,
    path: str = "",
    errors: tuple[str, ...] = (),
    joints: Sequence[NamedJoint] = (),
    measured: Sequence[Measurement] = (),
) -> Question:
    """Read all that an answer needs; nothing in the document is changed. The arguments are those of ``work_out``."""
    asked = None if settings is None else settings.asked
    settings = settings or settings_of(doc)
    leaves = read_leaves(doc, hidden=True)
    read, learned = with_learned(doc, read_piece(doc, table, settings.shop, leaves), settings, measured)
    confirmed, unmatched = confirmed_joints(doc, read.parts, joints)
    faces, faceless = read_faces(read.leaves)
    return Question(
        settings,
        read,
        faces,
        confirmed,
        (*errors, *read.unreadable, *unmatched, *faceless, *(learned.problems if learned else ())),
        path or doc.FileName or doc.Label,
        fingerprint(doc, asked, leaves),
        learned.told if learned else (),
    )


def answering(question: Question) -> Generator[float, None, Answer]:
    """Answer a question step by step. No document is looked at, so this may run in a thread of its own.

    Yields how far it is, from 0 to 1; returns the answer.
    """
    settings = question.settings
    yield 0.02
    piece = solve_piece(question.read.parts, settings.year, settings.today, settings.today_mc)
    yield 0.3
    whole = whole_piece(piece, question.faces.bodies, question.faces, question.confirmed)
    findings: list[Finding] = []
    for number, check in enumerate(CHECKS):
        yield 0.6 + 0.35 * number / len(CHECKS)
        findings += check(whole)
    entry = file_entry(
        question.path,
        piece,
        by_gravity(findings),
        question.told,
        question.read.hidden,
        (*settings.told, *question.learned),
        whole,
    )
    return Answer(question.read, piece, entry, whole, question.fingerprint)


def work_out(
    doc: Any,
    settings: Settings | None = None,
    table: Mapping[str, Tags] | None = None,
    path: str = "",
    errors: tuple[str, ...] = (),
    joints: Sequence[NamedJoint] = (),
    measured: Sequence[Measurement] = (),
) -> Answer:
    """Read a document and work it out; nothing in it is changed.

    ``settings`` None: what the document's own study says. ``table``: tags from beside the model, ``joints``: kinds of
    joints from there; what the document itself says outranks both. ``path`` and ``errors`` go into the report as they
    are.
    """
    return answer(read_document(doc, settings, table, path, errors, joints, measured))


def answer(question: Question) -> Answer:
    """Answer a question at once."""
    steps = answering(question)
    while True:
        try:
            next(steps)
        except StopIteration as end:
            return end.value


def check_document(doc: Any, settings: Settings | None = None) -> dict[str, Any]:
    """The report of an open document."""
    return work_out(doc, settings).entry


def check_file(path: Path, settings: Settings, shown: str = "") -> dict[str, Any]:
    """The report of a file, which is never written to.

    Raises FileError where the file cannot be opened or holds no solid.
    """
    table, errors = table_beside(path)
    joints, problems = joints_beside(path)
    measured, unread = measured_beside(path)
    errors = (*errors, *problems, *unread)
    with opened(path) as doc:
        return work_out(doc, settings, table, shown or str(path), errors, joints, measured).entry


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
        return {}, (say("the tags beside the model cannot be read: {error}", error=error),)
    return tags, tuple(problem.message for problem in problems)
