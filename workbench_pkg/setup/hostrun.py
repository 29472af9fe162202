"""Find the host, ask it what it is, and run a module or script inside it."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import IO, Any

from workbench_pkg.setup.packages import SetupError, ensure_packages
from workbench_pkg.setup.profile import link_project

HOST_PACKAGES = ("freecad",)
"""Debian packages that bring the host with its Python, numpy and Qt binding."""

OLDEST_HOST = (0, 20)

NAMES = ("freecadcmd", "FreeCADCmd", "freecad.cmd")
PLACES = (
    "/usr/lib/freecad/bin/freecadcmd-python3",
    "/Applications/FreeCAD.app/Contents/Resources/bin/freecadcmd",
    r"C:\Program Files\FreeCAD 1.1\bin\freecadcmd.exe",
    r"C:\Program Files\FreeCAD 1.0\bin\freecadcmd.exe",
)
CRASHED = 70


@dataclass(frozen=True)
class HostFacts:
    """What a host says of itself: its version and its Python's as text, and the folder it is installed in."""

    version: str
    python: str
    home: str

    @property
    def supported(self) -> bool:
        """True from FreeCAD 0.20 on."""
        numbers = [int(part) for part in self.version.split(".")[:2] if part.isdigit()]
        return tuple(numbers) >= OLDEST_HOST


@dataclass(frozen=True)
class HostRun:
    """How a run inside the host ended.

    returncode  the code of the work itself; CRASHED (70) where the host died under it
    crashed     True where the host ended before the work did
    stdout      what the work printed, where it was captured, else None
    chatter     the last lines that the host itself printed
    """

    returncode: int
    crashed: bool
    stdout: str | None
    chatter: str


def find_host(explicit: str | None = None) -> str | None:
    """Path of the host's command line, or None where there is none.

    Looked for in this order: the argument, $FREECADCMD, the names on the path, the usual places. One that was
    named but is not there raises SetupError.
    """
    for source, name in (("", explicit), ("$FREECADCMD: ", os.environ.get("FREECADCMD"))):
        if name:
            found = shutil.which(name)
            if found is None:
                raise SetupError(f"{source}no such program: {name}")
            return found
    for name in NAMES:
        found = shutil.which(name)
        if found:
            return found
    return next((place for place in PLACES if os.path.isfile(place)), None)


def ensure_host(*, install: bool, again: str) -> str:
    """Path of the host's command line, installing the host when that is allowed.

    again  the command of ours that installs, for the message ("python3 -m workbench_pkg demo --install")

    Raises SetupError with the command to type where there is no host and it may not be installed, where
    installing failed, where the host cannot start, or where it is older than 0.20.
    """
    host = find_host()
    if host is None:
        ensure_packages(HOST_PACKAGES, install=install, why="reading FreeCAD models", again=again)
        host = find_host()
        if host is None:
            raise SetupError("FreeCAD was installed but its command line, freecadcmd, is not on the path")
    facts = ask_host(host)
    if not facts.supported:
        oldest = ".".join(str(n) for n in OLDEST_HOST)
        raise SetupError(f"{host} is FreeCAD {facts.version}; Heartside needs {oldest} or newer")
    return host


def ask_host(host: str) -> HostFacts:
    """Start the host and ask it for its version. SetupError where it cannot answer."""
    if sys.platform.startswith("linux") and not os.path.exists("/proc/self"):
        raise SetupError("FreeCAD cannot start without /proc. Type as root:\n  mount -t proc proc /proc")
    run = run_in_host(Path(__file__).with_name("asking.py"), host=host, capture=True, timeout_s=120)
    if run.returncode != 0 or not run.stdout:
        raise SetupError(f"{host} does not start (code {run.returncode}):\n{run.chatter}")
    facts = json.loads(run.stdout)
    return HostFacts(version=facts["version"], python=facts["python"], home=facts["home"])


def run_in_host(
    target: str | Path,
    arguments: Sequence[str] = (),
    *,
    host: str | None = None,
    profile: Path | None = None,
    env: Mapping[str, str] | None = None,
    capture: bool = False,
    timeout_s: float | None = None,
) -> HostRun:
    """Run a module (given as str) or a script file (given as Path) as __main__ inside the host.

    arguments  become sys.argv[1:] of the work
    host       the host's command line; looked for when None
    profile    folder for the host's settings; a throw-away one when None, never the user's own
    env        further environment variables
    capture    collect what the work prints on stdout instead of passing it on
    timeout_s  seconds after which the host is stopped and counts as crashed

    The work's stdout and stderr are this process's own (or captured); whatever the host prints by itself is
    kept apart and ends in .chatter. The add-on is linked into the profile and importable.
    """
    program = find_host(host)
    if program is None:
        raise SetupError("FreeCAD's command line, freecadcmd, was not found")
    with tempfile.TemporaryDirectory(prefix="heartside-") as scratch_name:
        scratch = Path(scratch_name)
        home = profile if profile is not None else scratch / "profile"
        home.mkdir(parents=True, exist_ok=True)  # the host ignores a folder that is not there
        addon = link_project(home)
        start = scratch / "heartside_inside.py"
        shutil.copyfile(Path(__file__).with_name("inside.py"), start)
        task: dict[str, Any] = {
            "script": os.path.abspath(target) if isinstance(target, Path) else "",
            "module": target if isinstance(target, str) else "",
            "arguments": list(arguments),
            "python_paths": [str(addon)],
            "exit_file": str(scratch / "exit"),
            "stdout": None,
            "stderr": None,
        }
        environment = {**os.environ, **(env or {}), **_locale(), "FREECAD_USER_HOME": str(home)}
        captured = (scratch / "stdout").open("w+", encoding="utf-8") if capture else None
        with (scratch / "chatter").open("w+", encoding="utf-8", errors="replace") as chatter:
            code = _start([program, str(start)], task, environment, captured, chatter, timeout_s)
            chatter.seek(0)
            last_words = "\n".join(chatter.read().strip().splitlines()[-20:])
        text = None
        if captured is not None:
            captured.seek(0)
            text = captured.read()
            captured.close()
        exit_file = scratch / "exit"
        crashed = not exit_file.exists()
        if crashed:
            last_words += f"\nthe host ended with code {code}"
        return HostRun(CRASHED if crashed else int(exit_file.read_text()), crashed, text, last_words)


def _locale() -> dict[str, str]:
    """A UTF-8 locale where the environment has none, so that names with accents can be read."""
    named = os.environ.get("LC_ALL") or os.environ.get("LC_CTYPE") or os.environ.get("LANG")
    return {"LC_ALL": "C.UTF-8"} if named in (None, "", "C", "POSIX") else {}


def _start(
    command: list[str],
    task: dict[str, Any],
    environment: dict[str, str],
    captured: IO[str] | None,
    chatter: IO[str],
    timeout_s: float | None,
) -> int:
    """Start the host on the task and wait for it; its exit code (which means little)."""
    streams: dict[str, Any] = {}
    descriptors: list[int] = []
    if os.name == "posix":
        sys.stdout.flush()
        out = os.dup(captured.fileno() if captured is not None else 1)
        err = os.dup(2)
        descriptors = [out, err]
        task.update(stdout=out, stderr=err)
        streams = {"stdout": chatter, "stderr": chatter, "pass_fds": descriptors}
    elif captured is not None:
        streams = {"stdout": captured}
    environment["HEARTSIDE_TASK"] = json.dumps(task)
    try:
        process = subprocess.Popen(command, env=environment, stdin=subprocess.DEVNULL, **streams)
    except OSError as error:
        raise SetupError(f"{command[0]} cannot be started: {error}") from error
    finally:
        for descriptor in descriptors:
            os.close(descriptor)
    try:
        return process.wait(timeout_s)
    except subprocess.TimeoutExpired:
        process.kill()
        return process.wait()
    except BaseException:
        _stop(process)
        raise


def _stop(process: subprocess.Popen[bytes], patience_s: float = 10.0) -> None:
    """End the host: it may clear up, and is killed where it does not, or where we are stopped once more."""
    process.terminate()
    try:
        process.wait(patience_s)
    except subprocess.TimeoutExpired:
        pass
    finally:
        process.kill()
        process.wait()
