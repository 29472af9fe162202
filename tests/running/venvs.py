"""The two Python environments of the tests, kept in the user's cache.

core  made with the Python that runs the command: newest numpy, tools, reference libraries; no host
host  made with the system's Python, which is the host's, and its site packages: numpy stays the host's own,
      since a newer one breaks the modules of the distribution that were compiled against it
"""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

from tests.running.places import ROOT, cache_folder
from workbench_pkg.setup import SetupError

SYSTEM_PYTHON = "/usr/bin/python3"
EXTRAS = ("dev", "validation", "plots")
HOST_NEEDS = ("pytest", "hypothesis", "jsonschema")


def environment(name: str) -> Path:
    """Folder of the environment called "core" or "host"."""
    return cache_folder() / "venvs" / name


def python_of(folder: Path) -> Path:
    """The interpreter of an environment."""
    return folder / "bin" / "python"


def can_make(python: str) -> bool:
    """Whether this Python can make an environment with pip in it (a bare Debian's cannot)."""
    return _quiet([python, "-c", "import ensurepip, venv"]) == 0


def works(folder: Path) -> bool:
    """Whether the environment is whole: a failed attempt leaves a folder with a Python but no pip."""
    return python_of(folder).exists() and _quiet([str(python_of(folder)), "-c", "import pip"]) == 0


def packages_for(name: str) -> list[str]:
    """Debian packages needed to make the environment: none where it exists, or can be made already."""
    python = sys.executable if name == "core" else SYSTEM_PYTHON
    if works(environment(name)) or can_make(python):
        return []
    return ["python3-venv"] if _is_system(python) else []


def ensure_core(*, install: bool, again: str) -> Path:
    """Interpreter of the core environment, made and filled up as far as needed."""
    python = _ensure_made(environment("core"), [sys.executable, "-m", "venv"], install, again)
    missing = _lines([str(python), str(Path(__file__).with_name("unmet.py")), "pyproject.toml", *EXTRAS])
    _fill(python, missing, install, again)
    return python


def ensure_host(*, install: bool, again: str) -> Path:
    """Interpreter of the host environment, made and filled up as far as needed."""
    make = [SYSTEM_PYTHON, "-m", "venv", "--system-site-packages"]
    python = _ensure_made(environment("host"), make, install, again)
    missing = [name for name in HOST_NEEDS if _quiet([str(python), "-c", f"import {name}"]) != 0]
    _fill(python, missing, install, again)
    return python


def site_packages(python: Path) -> str:
    """Folder that the environment's own packages are in."""
    return _lines([str(python), "-c", "import sysconfig; print(sysconfig.get_path('purelib'))"])[0]


def _is_system(python: str) -> bool:
    return Path(python).resolve().parent == Path("/usr/bin")


def _quiet(command: list[str]) -> int:
    return subprocess.run(command, stdin=subprocess.DEVNULL, capture_output=True).returncode


def _lines(command: list[str]) -> list[str]:
    done = subprocess.run(
        command, stdin=subprocess.DEVNULL, capture_output=True, encoding="utf-8", errors="replace", cwd=ROOT
    )
    if done.returncode != 0:
        raise SetupError(f"{' '.join(command)} failed:\n{done.stderr.strip()}")
    return done.stdout.split("\n")[:-1]


def _ensure_made(folder: Path, make: list[str], install: bool, again: str) -> Path:
    if works(folder):
        return python_of(folder)
    if not install:
        raise SetupError(
            f"The Python environment for these tests is not there yet ({folder}). Type:\n  {again}"
        )
    if folder.exists():  # what a failed attempt, or a Python that has since gone, left behind
        shutil.rmtree(folder)
    folder.parent.mkdir(parents=True, exist_ok=True)
    print("setting up:", *make, folder, file=sys.stderr, flush=True)
    done = subprocess.run(
        [*make, str(folder)],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        encoding="utf-8",
        errors="replace",
    )
    if done.returncode != 0 or not works(folder):
        shutil.rmtree(folder, ignore_errors=True)
        raise SetupError(f"{make[0]} could not make {folder}:\n{(done.stdout + done.stderr).strip()}")
    return python_of(folder)


def _fill(python: Path, missing: list[str], install: bool, again: str) -> None:
    if not missing:
        return
    if not install:
        raise SetupError(f"{', '.join(missing)} not installed for {python}. Type:\n  {again}")
    print("setting up: pip install", *missing, file=sys.stderr, flush=True)
    done = subprocess.run(
        [str(python), "-m", "pip", "install", "--quiet", "--disable-pip-version-check", *missing],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        errors="replace",
    )
    if done.returncode != 0:
        last = "\n  ".join(done.stdout.strip().splitlines()[-3:])
        raise SetupError(f"pip could not install {', '.join(missing)}:\n  {last}")
