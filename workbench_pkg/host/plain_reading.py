"""Reading a file that is no document, within bounds. No FreeCAD here."""

from __future__ import annotations

import os
import stat
from pathlib import Path

from movement_core.errors import FileError
from movement_core.wording import say
from workbench_pkg.host.guard import name_shown

LARGEST_BYTES = 64 << 20  # a logger that writes every second fills this in two weeks, and no table comes near


def read_plain(path: Path, largest_bytes: int = LARGEST_BYTES) -> bytes:
    """The bytes of a file beside a model. FileError where it is a pipe or a device, or too large; else OSError."""
    where = name_shown(path)
    facts = os.stat(path)
    if not stat.S_ISREG(facts.st_mode) and not stat.S_ISDIR(facts.st_mode):  # reading may never end
        raise FileError(
            say("it is not an ordinary file"), where=where, todo=say("put a file of that name in its place")
        )
    with path.open("rb") as file:  # what the system makes up as it is read says of itself that it is empty
        content = file.read(largest_bytes + 1) if facts.st_size <= largest_bytes else None
    if content is None or len(content) > largest_bytes:
        raise FileError(
            say("it is far too large"),
            where=where,
            allowed=say("up to {most:g} MiB", most=largest_bytes / (1 << 20)),
        )
    return content
