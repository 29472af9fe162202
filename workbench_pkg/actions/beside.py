"""Text files that lie beside a model under its name."""

from __future__ import annotations

import codecs
import os
from pathlib import Path

from movement_core.errors import FileError
from movement_core.wording import say, word
from workbench_pkg.host.plain_reading import read_plain


def find_beside(path: Path, name: str) -> Path | None:
    """The one of that name beside a file, else the one that differs in capitals only."""
    exact = path.with_name(name)
    if os.path.lexists(exact):
        return exact
    if not path.is_file():
        return None
    found = sorted(each for each in os.listdir(path.parent) if each.lower() == name.lower())
    if len(found) > 1:
        raise FileError(
            say("{one} and {other} could both be meant", one=", ".join(found[:-1]), other=found[-1]),
            where=name,
            todo=say("keep one, and call it {name}", name=name),
        )
    return path.with_name(found[0]) if found else None


def text_of(table: Path) -> str:
    """Its text: UTF-8, or UTF-16 with its mark at the start. Raises FileError where it cannot be read."""
    if table.is_dir():
        raise FileError(
            say("it is a folder"), where=table.name, allowed=say("a CSV file"), todo=say("rename the folder")
        )
    try:
        data = read_plain(table)
    except FileError:
        raise
    except OSError as error:
        raise FileError(
            word(str(error.strerror)), where=table.name, todo=say("check the file and its permissions")
        ) from None
    encoding = "utf-16" if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)) else "utf-8-sig"
    try:
        return data.decode(encoding)
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        raise FileError(
            say("it is not written in {encoding}", encoding=encoding.upper().removesuffix("-SIG")),
            where=say("{name}, line {line}", name=table.name, line=line),
            todo=say("save it as UTF-8"),
        ) from None
