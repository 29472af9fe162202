"""Reports kept by the content of everything they rest on, so that nothing is worked out twice, and a run that was
stopped goes on where it was.

A report is found again only where the model, the files it links to, the tables beside it, the settings, the day, this
program and the host are the same to the last byte. Reports lie as JSON, one a file; nothing else is ever read back.
"""

from __future__ import annotations

import gzip
import hashlib
import json
import os
import sys
from functools import cache
from pathlib import Path
from typing import Any

import numpy

import movement_core
import workbench_pkg
from movement_core.errors import HeartsideError
from workbench_pkg.actions.beside import find_beside
from workbench_pkg.actions.check import TABLE_ENDING
from workbench_pkg.actions.joint import JOINTS_ENDING
from workbench_pkg.actions.measured import MEASURED_ENDING
from workbench_pkg.actions.settings import FILES
from workbench_pkg.batch.inside.asked import Asked
from workbench_pkg.host.guard import files_opened
from workbench_pkg.host.version import host_version
from workbench_pkg.setup import written_whole

BESIDE = (TABLE_ENDING, JOINTS_ENDING, MEASURED_ENDING)
MADE, FAILED = ".json.gz", ".failed.json"


def content_key(model: Path, asked: Asked, day: str, language: str = "en") -> str | None:
    """A hash of everything that the report of a model rests on; None where some of it cannot be read.

    ``day``: the day that counts as today. ``language``: what its sentences are in.
    """
    try:
        files = {str(index): _hash_of(file) for index, file in enumerate(files_opened(model))}
        for ending in BESIDE:
            beside = find_beside(model, model.stem + ending)
            files[ending] = "" if beside is None else f"{beside.name} {_hash_of(beside)}"
        for word, value in asked.words.items():
            if isinstance(value, str) and Path(value).suffix.lower() in FILES:
                files[word] = _hash_of(Path(value))
    except (OSError, HeartsideError):
        return None
    rests_on = [
        model.name,
        files,
        sorted(asked.words.items()),
        asked.limits.values,
        day,
        language,
        _program(),
    ]
    return hashlib.sha256(json.dumps(rests_on, default=str).encode("utf-8")).hexdigest()


def kept(folder: Path, key: str) -> dict[str, Any] | None:
    """The report kept under a key, or None; one that is damaged is as good as none."""
    place = _place(folder, key, MADE)
    try:
        with gzip.open(place, "rb") as stream:
            entry = json.load(stream)
        os.utime(place)  # it is of use: what is not goes after some months
    except (OSError, EOFError, ValueError):
        return None
    return entry if isinstance(entry, dict) else None


def failed(folder: Path, key: str, time_limit_s: float | None) -> str | None:
    """How the host failed at this content in an earlier run, or None; a hang is worth another try with more time."""
    try:
        said = json.loads(_place(folder, key, FAILED).read_text(encoding="utf-8"))
        had_s = said["time_limit_s"]
        how = str(said["how"])
    except (OSError, ValueError, KeyError, TypeError):
        return None
    more_time = had_s is not None and (time_limit_s is None or time_limit_s > had_s)
    return None if more_time else how


def keep(folder: Path, key: str, entry: dict[str, Any]) -> None:
    """Keep a report; a cache that cannot be written to costs time only."""
    place = _place(folder, key, MADE)
    try:
        place.parent.mkdir(parents=True, exist_ok=True)
        with written_whole(place, replace=True) as path, gzip.open(path, "wb", 3) as stream:
            stream.write(json.dumps(entry).encode("ascii"))
    except OSError:
        pass


def _place(folder: Path, key: str, ending: str) -> Path:
    return folder / key[:2] / f"{key}{ending}"


def _hash_of(file: Path) -> str:
    digest = hashlib.sha256()
    with open(file, "rb") as stream:
        while chunk := stream.read(1 << 20):
            digest.update(chunk)
    return digest.hexdigest()


@cache
def _program() -> str:
    """What works it out: this program to the last byte, numpy, Python and the host."""
    digest = hashlib.sha256()
    for package in (movement_core, workbench_pkg):
        root = Path(os.path.realpath(package.__file__ or "")).parent
        for path in sorted(path for path in root.rglob("*") if path.suffix in (".py", ".csv", ".ts")):
            digest.update(str(path.relative_to(root)).encode("utf-8") + path.read_bytes())
    versions = (movement_core.__version__, numpy.__version__, sys.version, host_version())
    return f"{versions} {digest.hexdigest()}"
