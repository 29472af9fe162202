"""The drilling template of a top, at full size on ordinary paper, written as HTML, PDF or JSON."""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any

from movement_core.sheet.pages.lengths import MM
from movement_core.sheet.pages.told_lengths import lengths_told
from movement_core.sheet.template.pages import Template, drilling_template, template_html, template_pdf
from workbench_pkg.actions.check import table_beside
from workbench_pkg.actions.hardware import (
    PlaceWish,
    PlanAnswer,
    PlanQuestion,
    answer_plans,
    plans_of,
)
from workbench_pkg.actions.reading import read_piece
from workbench_pkg.actions.settings import Settings
from workbench_pkg.host.documents import opened
from workbench_pkg.host.plain_files import check_new_file, write_file

FORMS = (".html", ".pdf", ".json")


def make_template(
    doc: Any,
    output: str | os.PathLike[str],
    top: str = "",
    plan: str = "",
    *,
    wish: PlaceWish | None = None,
    paper: str = "a4",
    units: str = MM,
    force: bool = False,
) -> dict[str, Any]:
    """Write the drilling template of a plan for an open document; nothing in the document is changed.

    Parameters
    ----------
    output : the file to write, ending in .html, .pdf or .json (the figures alone).
    top : a board of the top that is meant; empty: the first top. plan : kind of the plan; empty: the best that has
        fasteners. wish : what else is asked of the plans. paper : "a4" or "letter".
    units : "mm" or "inch", of what is written.
    force : replace a file that is there.

    Returns
    -------
    What is drawn, as data.

    Raises
    ------
    InputError : no top, no plan, or something that is missing. FileError : the file cannot or may not be written.
    """
    target = Path(output)
    check_new_file(target, FORMS, [doc.FileName or None], force)
    answer = plans_of(doc, wish or PlaceWish(top))
    return _write(template_of(answer, plan, paper, units), target, force)


def template_file(
    path: Path,
    output: Path,
    settings: Settings,
    wish: PlaceWish,
    plan: str = "",
    paper: str = "a4",
    units: str = MM,
    force: bool = False,
) -> dict[str, Any]:
    """The same of a file, which is never written to."""
    check_new_file(output, FORMS, [path], force)
    table, _ = table_beside(path)
    with opened(path) as doc:
        question = PlanQuestion(settings, read_piece(doc, table, settings.shop), wish, "")
    return _write(template_of(answer_plans(question), plan, paper, units), output, force)


def template_of(answer: PlanAnswer, plan: str = "", paper: str = "a4", units: str = MM) -> Template:
    """The template of a plan of an answer; the best that has fasteners where none is named."""
    kind = plan or answer.drillable
    with lengths_told(units):
        hardware = answer.hardware(kind)
    assert answer.plans is not None  # or there was no hardware
    chosen = next(one for one in answer.plans.plans if one.kind == kind)
    return drilling_template(answer.plans, chosen, answer.entry, hardware, paper, units)


def _write(template: Template, target: Path, force: bool) -> dict[str, Any]:
    form = target.suffix.lower()
    if form == ".pdf":
        content = template_pdf(template)
    elif form == ".json":
        content = (json.dumps(template.data, indent=1, ensure_ascii=False) + "\n").encode(
            "utf-8", "backslashreplace"
        )
    else:
        content = template_html(template).encode("utf-8", "backslashreplace")
    write_file(target, content, force)
    return template.data
