"""Measurements that the maker took later: kept in the study of a document, or in a CSV file beside a model."""

from __future__ import annotations

import csv
import json
from collections.abc import Sequence
from dataclasses import asdict, replace
from pathlib import Path
from typing import Any

from movement_core.errors import HeartsideError, InputError
from movement_core.piece.measured import (
    COLUMNS,
    LearnedParts,
    Measurement,
    learn_from,
    measurements_from_table,
)
from movement_core.wording import say
from workbench_pkg.actions.beside import find_beside, text_of
from workbench_pkg.actions.reading import ReadPiece, read_piece
from workbench_pkg.actions.settings import Settings
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.actions.year import settings_of
from workbench_pkg.objects.measurements import keep_rows, kept_rows

MEASURED_ENDING = ".measured.csv"


def not_one_part(names: Sequence[str], part: str) -> str:
    """What is said where none or several parts have the name that one was to have."""
    count = names.count(part)
    if count == 0:
        return say("no part is called {part!r}", part=part)
    return say("{count} parts are called {part!r}", count=count, part=part)


def add_measurement(doc: Any, new: Measurement) -> LearnedParts:
    """Keep a measurement with the piece, and tell what is learned with it. One step to undo.

    Raises InputError where no part, or more than one, has its name; then nothing is changed.
    """
    settings = settings_of(doc)
    read = read_piece(doc, None, settings.shop)
    names = [part.name for part in read.parts]
    if names.count(new.part) != 1:
        raise InputError(
            not_one_part(names, new.part),
            where=say("measurement"),
            allowed=", ".join(names),
        )
    rows, _ = kept_measurements(doc)
    with one_step(doc, say("Heartside: measurement")):
        keep_measurements(doc, (*rows, new))
    return learn_from(read.parts, (*rows, new), settings.year)


def keep_measurements(doc: Any, rows: Sequence[Measurement]) -> None:
    """Keep these in place of what was there. The caller opens the transaction."""
    plain = [
        {name: None if value is None else _plain(value) for name, value in asdict(one).items()}
        for one in rows
    ]
    lines = [f"{one.date} {one.part}: {one.what} {one.value_mm:g} mm" for one in rows]
    keep_rows(doc, json.dumps(plain, ensure_ascii=False) if rows else None, lines)


def kept_measurements(doc: Any) -> tuple[tuple[Measurement, ...], tuple[str, ...]]:
    """What the document's study holds, and what of it cannot be used."""
    text = kept_rows(doc)
    if not text:
        return (), ()
    try:
        lines = [",".join(COLUMNS)]
        rows = json.loads(text)
        table = [",".join(_cell(row.get(name)) for name in COLUMNS) for row in rows]
        return measurements_from_table("\n".join(lines + table), say("measurements of the study"))
    except (ValueError, AttributeError, TypeError, RecursionError, HeartsideError) as error:
        return (), (say("the measurements of the study cannot be read: {error}", error=error),)


def measured_beside(path: Path) -> tuple[tuple[Measurement, ...], tuple[str, ...]]:
    """Measurements from the CSV file beside a model (``table.step`` → ``table.measured.csv``), and its problems."""
    try:
        beside = find_beside(path, path.stem + MEASURED_ENDING)
        return ((), ()) if beside is None else measurements_from_table(text_of(beside), beside.name)
    except (HeartsideError, csv.Error, OSError) as error:
        return (), (say("the measurements beside the model cannot be read: {error}", error=error),)


def with_learned(
    doc: Any, read: ReadPiece, settings: Settings, beside: Sequence[Measurement] = ()
) -> tuple[ReadPiece, LearnedParts | None]:
    """The parts with what was learned of their lots; None where nothing was measured."""
    kept, problems = kept_measurements(doc)
    if not (kept or beside or problems):
        return read, None
    learned = learn_from(read.parts, (*kept, *beside), settings.year)
    return replace(read, parts=learned.parts), replace(learned, problems=(*problems, *learned.problems))


def _plain(value: object) -> object:
    return value if isinstance(value, (int, float)) else str(value)


def _cell(value: object) -> str:
    text = "" if value is None else str(value)
    return '"' + text.replace('"', '""') + '"' if any(c in text for c in ',";') else text
