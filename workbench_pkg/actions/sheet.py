"""The movement sheet of a document or a file, written as HTML, PDF or JSON."""

from __future__ import annotations

import json
import os
from collections.abc import Generator
from contextvars import copy_context
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from movement_core.sheet.pages.html import sheet_html
from movement_core.sheet.pages.lengths import MM
from movement_core.sheet.pages.material import Material, planned_tops
from movement_core.sheet.pages.pdf import sheet_pdf
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.told_lengths import lengths_told, tell_lengths
from movement_core.sheet.pages.wish import SheetWish
from workbench_pkg.actions.check import Question, answering, read_document, table_beside
from workbench_pkg.actions.joint import joints_beside
from workbench_pkg.actions.measured import measured_beside
from workbench_pkg.actions.settings import Settings
from workbench_pkg.host.documents import opened
from workbench_pkg.host.plain_files import check_new_file, write_file

FORMS = (".html", ".pdf", ".json")


@dataclass(frozen=True, eq=False)
class MadeSheet:
    """A sheet in memory: the bytes of its file, and the report that it rests on."""

    content: bytes
    report: dict[str, Any]


def make_sheet(
    doc: Any,
    output: str | os.PathLike[str],
    job: str = "",
    place: str = "",
    *,
    client: bool = False,
    paper: str = "a4",
    units: str = "mm",
    force: bool = False,
) -> dict[str, Any]:
    """Work an open document out and write its movement sheet; nothing in the document is changed.

    Parameters
    ----------
    output : the file to write, ending in .html, .pdf or .json (the figures alone).
    job, place : what it is and where it will stand, for the head; empty leaves a line to write on.
    client : the page for the client in place of the bench's sheet.
    paper : "a4" or "letter". units : "mm" or "inch". force : replace a file that is there.

    Returns
    -------
    The report that the sheet rests on.

    Raises
    ------
    UnknownName : no such paper or unit. FileError : the file cannot or may not be written.
    HeartsideError : a PDF is asked for and the plotting library is not there.
    """
    wish = SheetWish(job, place, client=client, paper=paper, units=units)
    target = Path(output)
    check_new_file(target, FORMS, [doc.FileName or None], force)
    with lengths_told(told_units(wish, target.suffix)):
        question = read_document(doc)
    made = _made(making(question, wish, target.suffix))
    write_file(target, made.content, force)
    return made.report


def sheet_file(
    path: Path, output: Path, settings: Settings, wish: SheetWish, shown: str = "", force: bool = False
) -> dict[str, Any]:
    """The same of a file, which is never written to."""
    check_new_file(output, FORMS, [path], force)
    table, errors = table_beside(path)
    joints, problems = joints_beside(path)
    with opened(path) as doc:
        measured, unread = measured_beside(path)
        told = (*errors, *problems, *unread)
        with lengths_told(told_units(wish, output.suffix)):
            question = read_document(doc, settings, table, shown or str(path), told, joints, measured)
        made = _made(making(question, wish, output.suffix))
    write_file(output, made.content, force)
    return made.report


def making(question: Question, wish: SheetWish, form: str) -> Generator[float, None, MadeSheet]:
    """Make a sheet step by step, looking at no document: may run in a thread of its own.

    ``form`` is one of ``FORMS``. Yields how far it is, from 0 to 1; returns the sheet. Its sentences tell
    lengths in the unit of the wish; in JSON in mm, as its figures are.
    """
    units = told_units(wish, form)
    steps = _making(question, wish, form, units)
    here = copy_context()  # between two steps the caller speaks as before
    here.run(tell_lengths, units)
    while True:
        try:
            done = here.run(next, steps)
        except StopIteration as end:
            return end.value
        yield done


def told_units(wish: SheetWish, form: str) -> str:
    """The unit of lengths in the sentences of a sheet: that of the wish, in JSON mm as its figures are."""
    return MM if form.lower() == ".json" else wish.units


def _making(question: Question, wish: SheetWish, form: str, units: str) -> Generator[float, None, MadeSheet]:
    steps = answering(question)
    while True:
        try:
            yield 0.6 * next(steps)
        except StopIteration as end:
            answer = end.value
            break
    yield 0.6
    tops = planned_tops(answer.whole)
    yield 0.8
    material = Material(answer.entry, answer.whole, question.faces.bodies, tops, units)
    if form.lower() == ".json":
        content = json.dumps(material.data, indent=1, ensure_ascii=False) + "\n"
        return MadeSheet(content.encode("utf-8", "backslashreplace"), answer.entry)
    sheet = movement_sheet(material, wish)
    yield 0.9
    if form.lower() == ".pdf":
        return MadeSheet(sheet_pdf(sheet), answer.entry)
    return MadeSheet(sheet_html(sheet).encode("utf-8", "backslashreplace"), answer.entry)


def _made(steps: Generator[float, None, MadeSheet]) -> MadeSheet:
    """A sheet made at once."""
    while True:
        try:
            next(steps)
        except StopIteration as end:
            return end.value
