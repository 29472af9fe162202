"""Find the host, ask it what it is, and run a module or script inside it."""

from __future__ import annotations

import contextlib
import json
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import IO, Any

from workbench_pkg.setup.errors import SetupError
from workbench_pkg.setup.packages import ensure_packages
from workbench_pkg.setup.profile import link_project
from workbench_pkg.setup.speech import say
from workbench_pkg.setup.whole_files import work_folder

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
                raise SetupError(say("{source}no such program: {name}", source=source, name=name))
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
        ensure_packages(HOST_PACKAGES, install=install, why=say("reading FreeCAD models"), again=again)
        host = find_host()
        if host is None:
            raise SetupError(
                say("FreeCAD was installed but its command line, freecadcmd, is not on the path")
            )
    facts = ask_host(host)
    if not facts.supported:
        oldest = ".".join(str(n) for n in OLDEST_HOST)
        raise SetupError(
            say(
                "{host} is FreeCAD {version}; Heartside needs {oldest} or newer",
                host=host,
                version=facts.version,
                oldest=oldest,
            )
        )
    return host


def ask_host(host: str) -> HostFacts:
    """Start the host and ask it for its version. SetupError where it cannot answer."""
    if sys.platform.startswith("linux") and not os.path.exists("/proc/self"):
        raise SetupError(say("FreeCAD cannot start without /proc. Type as root:\n  mount -t proc proc /proc"))
    run = run_in_host(Path(__file__).with_name("asking.py"), host=host, capture=True, timeout_s=120)
    if run.returncode != 0 or not run.stdout:
        raise SetupError(
            say(
                "{host} does not start (code {code}):\n{chatter}",
                host=host,
                code=run.returncode,
                chatter=run.chatter,
            )
        )
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
    with prepared(target, arguments, host=host, profile=profile, env=env) as ready:
        scratch = ready.scratch
        captured = (scratch / "stdout").open("w+", encoding="utf-8") if capture else None
        with (scratch / "chatter").open("w+", encoding="utf-8", errors="replace") as chatter:
            process = start(ready, chatter, captured.fileno() if captured is not None else None)
            code = _wait(process, timeout_s)
        text = None
        if captured is not None:
            captured.seek(0)
            text = captured.read()
            captured.close()
        exit_file = scratch / "exit"
        crashed = not exit_file.exists()
        chatter_text = last_words(scratch)
        if crashed:
            chatter_text += f"\nthe host ended with code {code}"
        return HostRun(
            CRASHED if crashed else int(exit_file.read_text(encoding="utf-8")), crashed, text, chatter_text
        )


@dataclass(frozen=True)
class Ready:
    """A host that can be started: its command, what it will do, its environment, a folder that goes with it."""

    command: list[str]
    task: dict[str, Any]
    environment: dict[str, str]
    scratch: Path


@contextmanager
def prepared(
    target: str | Path,
    arguments: Sequence[str] = (),
    *,
    host: str | None = None,
    profile: Path | None = None,
    env: Mapping[str, str] | None = None,
) -> Iterator[Ready]:
    """Everything that a host needs to start on a module or script; the arguments are those of ``run_in_host``."""
    program = find_host(host)
    if program is None:
        raise SetupError(say("FreeCAD's command line, freecadcmd, was not found"))
    with work_folder(tempfile.gettempdir(), "heartside-") as scratch:
        home = profile if profile is not None else scratch / "profile"
        home.mkdir(parents=True, exist_ok=True)  # the host ignores a folder that is not there
        addon = link_project(home)
        script = scratch / "heartside_inside.py"
        shutil.copyfile(Path(__file__).with_name("inside.py"), script)
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
        yield Ready([program, str(script)], task, environment, scratch)


def last_words(scratch: Path) -> str:
    """The last lines that the host itself printed."""
    with contextlib.suppress(OSError), (scratch / "chatter").open("rb") as file:
        file.seek(max(0, file.seek(0, os.SEEK_END) - 65536))
        text = file.read().decode("utf-8", "replace")
        return "\n".join(text.strip().splitlines()[-20:])
    return ""


def _locale() -> dict[str, str]:
    """A UTF-8 locale where the environment has none, so that names with accents can be read."""
    named = os.environ.get("LC_ALL") or os.environ.get("LC_CTYPE") or os.environ.get("LANG")
    return {"LC_ALL": "C.UTF-8"} if named in (None, "", "C", "POSIX") else {}


def start(
    ready: Ready, chatter: IO[str], out: int | None = None, jobs: int | None = None
) -> subprocess.Popen[bytes]:
    """Start the host on its task.

    chatter  takes what the host itself prints
    out      descriptor for what the work prints on stdout; this process's own when None
    jobs     descriptor for the work's stdin; nothing to read when None
    """
    streams: dict[str, Any] = {}
    descriptors: list[int] = []
    task = dict(ready.task)
    if os.name == "posix":
        sys.stdout.flush()
        descriptors = [os.dup(1 if out is None else out), os.dup(2)]
        task.update(stdout=descriptors[0], stderr=descriptors[1])
        streams = {"stdout": chatter, "stderr": chatter, "pass_fds": descriptors}
    elif out is not None:
        streams = {"stdout": out}
    environment = {**ready.environment, "HEARTSIDE_TASK": json.dumps(task)}
    stdin = subprocess.DEVNULL if jobs is None else jobs
    try:
        return subprocess.Popen(ready.command, env=environment, stdin=stdin, **streams)
    except OSError as error:
        raise SetupError(
            say("{command} cannot be started: {error}", command=ready.command[0], error=error)
        ) from error
    finally:
        for descriptor in descriptors:
            os.close(descriptor)


def _wait(process: subprocess.Popen[bytes], timeout_s: float | None) -> int:
    """The exit code of the host (which means little)."""
    try:
        return process.wait(timeout_s)
    except subprocess.TimeoutExpired:
        process.kill()
        return process.wait()
    except BaseException:
        stop(process)
        raise


def stop(process: subprocess.Popen[bytes], patience_s: float = 10.0) -> None:
    """End the host: it may clear up, and is killed where it does not, or where we are stopped once more."""
    process.terminate()
    try:
        process.wait(patience_s)
    except subprocess.TimeoutExpired:
        pass
    finally:
        process.kill()
        process.wait()
