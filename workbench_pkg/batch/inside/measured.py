"""``measured``, inside the host: what was learned of the lots of one file, after noting another measurement."""

from __future__ import annotations

import csv
import datetime
import io
from dataclasses import asdict
from pathlib import Path
from typing import Any

from movement_core.errors import InputError
from movement_core.piece.measured import COLUMNS, USUAL_TOOL_MM, Measurement, refuse_slip
from movement_core.tables import delimiter_of
from movement_core.wording import say
from workbench_pkg.actions.beside import find_beside, text_of
from workbench_pkg.actions.check import table_beside
from workbench_pkg.actions.measured import MEASURED_ENDING, measured_beside, not_one_part, with_learned
from workbench_pkg.actions.reading import read_piece
from workbench_pkg.batch.inside.asked import settings_asked
from workbench_pkg.host.documents import opened
from workbench_pkg.setup import written_whole


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    path, settings = Path(job["file"]), settings_asked(job)
    table, errors = table_beside(path)
    rows, unread = measured_beside(path)
    new = _new(job)
    with opened(path) as doc:
        read = read_piece(doc, table, settings.shop)
        names = [part.name for part in read.parts]
        if new is not None and names.count(new.part) != 1:
            raise InputError(
                not_one_part(names, new.part),
                where="--part",
                allowed=", ".join(names),
            )
        if new is not None:
            refuse_slip(read.parts, new, settings.year)
        _, learned = with_learned(doc, read, settings, (*rows, *([new] if new else [])))
    told = list(learned.told) if learned else [say("nothing was measured yet")]
    if new is not None:
        told.append(say("Noted in {file}.", file=_note(path, new)))
    problems = [*errors, *unread, *(learned.problems if learned else ())]
    return {
        "lots": {name: asdict(lot) for name, lot in learned.lots.items()} if learned else {},
        "text": "\n".join(told),
        "errors": [{"message": problem, "part": ""} for problem in problems],
    }


def _new(job: dict[str, Any]) -> Measurement | None:
    new = job["new"]
    if (new["part"] is None) != (new["value"] is None):
        raise InputError(
            say("--part and --value belong together"), where="measured", todo=say("give both, or none")
        )
    if new["part"] is None:
        return None
    day = datetime.date.fromisoformat(job["date"]) if job["date"] else datetime.date.today()
    tool = USUAL_TOOL_MM if new["tool"] is None else new["tool"]
    air = (new["temperature"], new["humidity"])
    return Measurement(new["part"], new["what"], new["value"], day, job["moisture"], *air, tool)


def _note(model: Path, new: Measurement) -> str:
    """Add a row to the table beside the model, whose heading may hold the columns in any order."""
    target = find_beside(model, model.stem + MEASURED_ENDING) or model.with_name(model.stem + MEASURED_ENDING)
    text = text_of(target) if target.exists() else ",".join(COLUMNS) + "\n"
    heading = text.lstrip("\ufeff").splitlines()[0]
    delimiter = delimiter_of(heading)
    out = io.StringIO()
    row = ["" if (value := getattr(new, name.strip().lower(), None)) is None else str(value)
           for name in heading.split(delimiter)]  # fmt: skip
    csv.writer(out, delimiter=delimiter, lineterminator="\n").writerow(row)
    with written_whole(target, replace=True) as path:
        path.write_text(text + ("" if text.endswith("\n") else "\n") + out.getvalue(), encoding="utf-8")
    return target.name
