"""Whether a file may be written: looked at before the work begins. Standard library only."""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path

from workbench_pkg.batch.selecting import ENDINGS
from workbench_pkg.setup import UseError
from workbench_pkg.setup.speech import say

READ_BY_US = (*ENDINGS, ".wood.csv", ".joints.csv", "heartside.json")


def check_target(target: Path, read: Iterable[str], replace: bool) -> None:
    """UseError where a report may not be written there: over what is read, over what exists, where no folder is."""
    where = str(target)
    if where.lower().endswith(READ_BY_US):
        raise UseError(
            say("that is the name of a file that Heartside reads"), where=where, todo=say("name it otherwise")
        )
    if target.is_dir():
        raise UseError(say("it is a folder"), where=where, todo=say("name a file in it"))
    if not target.parent.is_dir():
        raise UseError(say("its folder does not exist"), where=where, todo=say("make the folder first"))
    if not os.path.lexists(target):
        return
    if any(os.path.exists(one) and target.exists() and os.path.samefile(target, one) for one in read):
        raise UseError(say("that is a file that is read"), where=where, todo=say("name another file"))
    if not replace:
        raise UseError(
            say("it exists already"), where=where, todo=say("name another file, or add --force to replace it")
        )
