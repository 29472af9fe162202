"""Files written whole or not at all, and what killed runs left behind. Standard library only: runs before set-up too.

A file is made in a folder of its own beside its target, flushed, and takes the target's name in one step. The folder
names its owner, so that a later run can tell the leavings of a killed one from work under way.
"""

from __future__ import annotations

import contextlib
import json
import os
import shutil
import socket
import tempfile
import time
from collections.abc import Iterator
from pathlib import Path

from workbench_pkg.setup.speech import say

PREFIX = ".heartside-"
OWNER = "owner.json"
HOUR_S = 3600.0
OLD_S = 7 * 24 * HOUR_S  # no run of ours takes a week


@contextlib.contextmanager
def work_folder(beside: str | os.PathLike[str], prefix: str = PREFIX) -> Iterator[Path]:
    """A folder of our own inside another, gone at the end. What killed runs left there is swept first."""
    sweep(beside, prefix)
    with tempfile.TemporaryDirectory(prefix=prefix, dir=beside, ignore_cleanup_errors=True) as name:
        folder = Path(name)
        (folder / OWNER).write_text(json.dumps(_ourselves()), encoding="utf-8")
        yield folder


@contextlib.contextmanager
def written_whole(target: str | os.PathLike[str], *, replace: bool) -> Iterator[Path]:
    """A path to write the new file to; when all went well it takes the target's name, flushed to the disk.

    Whatever stops us leaves the target as it was. FileExistsError where it is there and ``replace`` is not given,
    also when somebody else made it in the meantime.
    """
    goal = Path(target)
    if not replace and os.path.lexists(goal):
        raise FileExistsError(17, say("it exists already"), str(goal))
    goal = Path(os.path.realpath(goal))  # through a link to what it points at, which stays a link
    try:
        with work_folder(goal.parent) as folder:
            made = folder / goal.name
            yield made
            put_in_place(made, goal, replace=replace)
    except OSError as error:
        if PREFIX in str(error.filename):  # where we make it is nobody's business
            raise type(error)(error.errno, error.strerror, str(target)) from error
        raise


def put_in_place(made: Path, goal: Path, *, replace: bool) -> None:
    """Flush a finished file and give it its name. FileExistsError where another has it and it may not be replaced."""
    with made.open("rb+") as stream:
        os.fsync(stream.fileno())
    if replace:
        os.replace(made, goal)
    else:
        try:
            os.link(made, goal)  # unlike a rename it never replaces what is there
        except FileExistsError:
            raise FileExistsError(17, say("it exists already"), str(goal)) from None
        except OSError:  # a file system without hard links
            if os.path.lexists(goal):
                raise FileExistsError(17, say("it exists already"), str(goal)) from None
            os.replace(made, goal)
    flush_folder(goal.parent)


def flush_folder(folder: Path) -> None:
    """Make a new name itself last; not every system lets a folder be opened for it."""
    with contextlib.suppress(OSError, AttributeError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def sweep(folder: str | os.PathLike[str], prefix: str = PREFIX) -> list[Path]:
    """Take away the work folders in a folder whose owners are gone; returns those that went.

    Only a real folder of our prefix and our user counts, which names an owner that no longer lives on this machine
    or has had a week, or is empty and an hour old (killed before it could name one).
    """
    gone = []
    with contextlib.suppress(OSError), os.scandir(folder) as entries:
        for entry in entries:
            if entry.name.startswith(prefix) and _is_leftover(Path(entry.path)):
                shutil.rmtree(entry.path, ignore_errors=True)
                gone.append(Path(entry.path))
    return gone


def _is_leftover(folder: Path) -> bool:
    try:
        facts = os.lstat(folder)
        if folder.is_symlink() or not folder.is_dir():
            return False
        if hasattr(os, "geteuid") and facts.st_uid != os.geteuid():
            return False
        age_s = time.time() - facts.st_mtime
        owner = folder / OWNER
        if not owner.is_file():
            return age_s > HOUR_S and not os.listdir(folder)
        said = json.loads(owner.read_text(encoding="utf-8"))
        if said["of"] != "heartside":
            return False
        if age_s > OLD_S:
            return True
        return said["machine"] == _machine() and _started(int(said["process"])) != said["started"]
    except (OSError, ValueError, KeyError, TypeError):
        return False  # what we do not understand is not ours


def _ourselves() -> dict[str, object]:
    process = os.getpid()
    return {"of": "heartside", "machine": _machine(), "process": process, "started": _started(process)}


def _machine() -> str:
    """This machine since it was last started: on another, or in another container, processes are not ours to judge."""
    boot = ""
    with contextlib.suppress(OSError):
        boot = Path("/proc/sys/kernel/random/boot_id").read_text(encoding="ascii").strip()
        boot += " " + os.readlink("/proc/self/ns/pid")
    return f"{socket.gethostname()} {boot}"


def _started(process: int) -> str | None:
    """When a living process was started, in the system's own count; None where there is none; "?" if not known."""
    if not os.path.isdir("/proc/self"):
        return _alive_elsewhere(process)
    try:
        line = Path(f"/proc/{process}/stat").read_text(encoding="utf-8", errors="replace")
    except OSError:
        return None
    state, *more = line[line.rindex(")") + 2 :].split()
    return None if state == "Z" else more[18]


def _alive_elsewhere(process: int) -> str | None:
    if os.name != "posix":
        return "?"  # there asking would end the process; age alone tells
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return None
    except OSError:
        pass
    return "?"
