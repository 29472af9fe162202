"""Writing a file that is no document: whole or not at all, never over what was read."""

from __future__ import annotations

import os
from collections.abc import Sequence
from pathlib import Path

from movement_core.errors import FileError
from movement_core.wording import say, word
from workbench_pkg.host.guard import name_shown
from workbench_pkg.host.saving import exists_already
from workbench_pkg.setup.whole_files import written_whole


def check_new_file(
    target: Path, endings: Sequence[str], sources: Sequence[str | os.PathLike[str] | None], replace: bool
) -> None:
    """FileError where a file must not be written: another ending, over what was read, over a file that exists."""
    where = name_shown(target)
    if target.suffix.lower() not in endings:
        raise FileError(say("its ending says how it is written"), where=where, allowed=", ".join(endings))
    if not target.parent.is_dir():
        raise FileError(say("its folder does not exist"), where=where, todo=say("make the folder first"))
    for source in sources:
        if source and target.exists() and Path(source).exists() and os.path.samefile(target, source):
            raise FileError(say("that is the file that was read"), where=where, todo=say("name a new file"))
    if target.is_dir() or (os.path.lexists(target) and not replace):
        raise exists_already(where)


def write_file(target: Path, content: bytes, replace: bool) -> None:
    """FileError where it cannot be written, or is there and may not be replaced."""
    where = name_shown(target)
    try:
        with written_whole(target, replace=replace) as whole:
            whole.write_bytes(content)
    except FileExistsError:
        raise exists_already(where) from None
    except OSError as error:
        raise FileError(
            say("it cannot be written ({reason})", reason=word(error.strerror or str(error))), where=where
        ) from None
