"""The hosts that the host and window suites run in: the machine's own, and those of other Debian releases."""

from __future__ import annotations

import json
import os
import subprocess
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from tests.running import venvs
from tests.running.places import ONE_THREAD, ROOT, cache_folder, fresh, tool_environment
from tests.running.suites import Job, what_to_run
from workbench_pkg.setup import SetupError, find_host, link_project
from workbench_pkg.setup.hostrun import HOST_PACKAGES

RELEASES = {"bookworm": "FreeCAD 0.20", "trixie": "FreeCAD 1.0", "forky": "FreeCAD 1.1"}
"""Debian releases (12, 13, testing) and the FreeCAD each is expected to bring; a run prints what it found."""

WINDOW_PACKAGES = ("xvfb", "libgl1-mesa-dri", "fonts-dejavu-core")
CHROOT = Path(__file__).with_name("chroot.sh")
WINDOW_COMMAND = ("freecad", "tests/gui/window_session.py")

SETTINGS = """<?xml version="1.0" encoding="UTF-8" standalone="no" ?>
<FCParameters><FCParamGroup Name="Root"><FCParamGroup Name="BaseApp"><FCParamGroup Name="Preferences">
  <FCParamGroup Name="General"><FCText Name="AutoloadModule">PartWorkbench</FCText></FCParamGroup>
  <FCParamGroup Name="Mod"><FCParamGroup Name="Start">
    <FCBool Name="ShowOnStartup" Value="0"/><FCBool Name="FirstStart2024" Value="0"/>
  </FCParamGroup></FCParamGroup>
</FCParamGroup></FCParamGroup></FCParamGroup></FCParameters>
"""
"""Settings of the window's profile: no start page, which would fetch news and cover the model."""


def local_name() -> str:
    """Name of this machine's own host: its Debian release, or "local" on anything else."""
    try:
        lines = Path("/etc/os-release").read_text(encoding="utf-8").splitlines()
    except OSError:
        return "local"
    facts = dict(line.split("=", 1) for line in lines if "=" in line)
    codename = facts.get("VERSION_CODENAME", "").strip('"')
    return codename if codename in RELEASES else "local"


def chosen(text: str) -> list[str]:
    """Names of the hosts asked for ("local", "all" or names with commas); the machine's own first."""
    local = local_name()
    names = []
    for word in text.split(","):
        if word == "all":
            names += [local, *RELEASES]
        elif word in ("local", local):
            names.append(local)
        elif word in RELEASES:
            names.append(word)
        else:
            raise SetupError(f"no such host: {word}. There are: local, all, {', '.join(RELEASES)}")
    unique = list(dict.fromkeys(names))
    return sorted(unique, key=lambda name: name != local)


def pytest_arguments(suite: str, out: str, extra: Sequence[str]) -> list[str]:
    """Arguments of pytest for a suite that runs inside a host; out is the output folder as seen in there."""
    settings = ["-c", "tests/running/host.ini", "--rootdir=.", f"--junitxml={out}/report.xml"]
    return [*settings, *what_to_run(suite, extra)]


def window_task(out: str, extra: Sequence[str], packages: str) -> str:
    """What the window is told to do, as JSON for its environment variable."""
    return json.dumps({"arguments": pytest_arguments("gui", out, extra), "packages": packages})


def prepare_profile(folder: Path) -> None:
    """A profile for the host under the output folder. Without it the host would use the user's own."""
    home = folder / "home"
    home.mkdir()
    (home / "user.cfg").write_text(SETTINGS, encoding="utf-8")


def window_command(python: str) -> list[str]:
    """What runs the window suite: the hosts of its groups one after another on one virtual screen."""
    return [python, "tests/running/display.py", python, "tests/running/window_groups.py", *WINDOW_COMMAND]


def variables(out: str) -> dict[str, str]:
    """Environment of a host suite; out is the output folder as seen from where the suite runs."""
    return {
        "FREECAD_USER_HOME": f"{out}/home",
        "HEARTSIDE_TEST_OUTPUT": out,
        "QTWEBENGINE_DISABLE_SANDBOX": "1",  # Qt's browser part refuses to start as root otherwise
        "LIBGL_ALWAYS_SOFTWARE": "1",
        **ONE_THREAD,
    }


@dataclass(frozen=True)
class LocalHost:
    """The FreeCAD installed on this machine, with a Python environment made from the system's Python."""

    name: str
    python: Path

    def job(self, suite: str, output: Path, extra: Sequence[str]) -> Job:
        """The suite ("host" or "gui") as a job."""
        folder = fresh(output / f"{suite}-{self.name}")
        prepare_profile(folder)
        link_project(folder / "home")
        environment = {**tool_environment(), **variables(str(folder))}
        if suite == "gui":
            environment["HEARTSIDE_WINDOW"] = window_task(
                str(folder), extra, venvs.site_packages(self.python)
            )
            command = window_command(str(self.python))
        else:
            command = [str(self.python), "-m", "pytest", *pytest_arguments(suite, str(folder), extra)]
        return Job(suite, self.name, [command], folder, folder / "report.xml", environment)


@dataclass(frozen=True)
class ChrootHost:
    """The FreeCAD of another Debian release, in a tree below the user's cache folder."""

    name: str

    @property
    def tree(self) -> Path:
        """The root folder of that release."""
        return cache_folder() / "hosts" / self.name

    def ready(self) -> bool:
        """Whether the tree is built and complete."""
        return _chroot("ready", str(self.tree)).returncode == 0

    def build(self, log: Path) -> None:
        """Make or complete the tree; takes minutes and gigabytes the first time."""
        with log.open("wb") as file:
            command = ["bash", str(CHROOT), "build", self.name, str(self.tree)]
            code = subprocess.call(
                command, stdin=subprocess.DEVNULL, stdout=file, stderr=subprocess.STDOUT, cwd=ROOT
            )
        if code != 0:
            lines = log.read_text(encoding="utf-8", errors="replace").strip().splitlines()
            raise SetupError(f"building it failed (log: {log}): " + "; ".join(lines[-2:]))

    def job(self, suite: str, output: Path, extra: Sequence[str]) -> Job:
        """The suite ("host" or "gui") as a job."""
        folder = fresh(output / f"{suite}-{self.name}")
        prepare_profile(folder)
        mod = folder / "home" / "Mod"
        mod.mkdir()
        (mod / "Heartside").symlink_to("/project")
        inside = variables("/out")
        if suite == "gui":
            inside["HEARTSIDE_WINDOW"] = window_task("/out", extra, "")
            command = window_command(venvs.SYSTEM_PYTHON)
        else:
            command = [venvs.SYSTEM_PYTHON, "-m", "pytest", *pytest_arguments(suite, "/out", extra)]
        enter = ["bash", str(CHROOT), "run", str(self.tree), str(ROOT), "env"]
        full = [*enter, *(f"{name}={value}" for name, value in inside.items()), *command]
        return Job(suite, self.name, [full], folder, folder / "report.xml", {"OUT": str(folder)})


def packages_for_local(suites: Sequence[str]) -> list[str]:
    """Debian packages that the machine's own host and window need."""
    packages = [] if find_host() and os.path.exists(venvs.SYSTEM_PYTHON) else list(HOST_PACKAGES)
    return packages + (list(WINDOW_PACKAGES) if "gui" in suites else [])


def why_no_chroots() -> str:
    """Why chroots cannot be used here, or an empty text."""
    done = _chroot("can")
    return done.stderr.strip().removeprefix("chroot: ") if done.returncode != 0 else ""


def _chroot(*arguments: str) -> subprocess.CompletedProcess[str]:
    command = ["bash", str(CHROOT), *arguments]
    return subprocess.run(
        command, stdin=subprocess.DEVNULL, capture_output=True, encoding="utf-8", errors="replace", cwd=ROOT
    )
