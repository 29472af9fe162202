"""The test command's environments: a half-made one is made anew, what is missing is found, nothing without leave."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from tests.running import venvs
from workbench_pkg.setup import SetupError

WHOLE = f"""mkdir -p "$0/bin"
printf '#!/bin/sh\\nexec {sys.executable} "$@"\\n' >"$0/bin/python"
chmod +x "$0/bin/python"
"""
HALF = 'mkdir -p "$0/bin"; ln -s /bin/false "$0/bin/python"; echo ensurepip is not available; exit 1'


@pytest.fixture
def folder(tmp_path, monkeypatch):
    """Where the core environment would be, in a cache of its own."""
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    return venvs.environment("core")


def make(folder, script, install=True):
    """Let the shell stand in for `python3 -m venv`."""
    return venvs._ensure_made(folder, ["sh", "-c", script], install, "python3 -m tests --install")


def test_the_environment_lies_in_the_users_cache(folder, tmp_path):
    assert folder == tmp_path / "heartside" / "venvs" / "core"


def test_nothing_is_made_without_leave(folder):
    with pytest.raises(SetupError, match="python3 -m tests --install"):
        make(folder, WHOLE, install=False)
    assert not folder.exists()


def test_a_failed_attempt_leaves_no_folder_and_says_why(folder):
    with pytest.raises(SetupError, match="ensurepip is not available"):
        make(folder, HALF)
    assert not folder.exists()


def test_a_half_made_folder_is_made_anew(folder):
    (folder / "bin").mkdir(parents=True)
    (folder / "bin" / "python").symlink_to("/bin/false")
    (folder / "rubbish").touch()
    assert not venvs.works(folder)
    python = make(folder, WHOLE)
    assert venvs.works(folder)
    assert python == folder / "bin" / "python"
    assert not (folder / "rubbish").exists()


def test_a_whole_one_is_kept(folder):
    make(folder, WHOLE)
    (folder / "mine").touch()
    make(folder, HALF)
    assert (folder / "mine").exists()


def test_what_an_environment_lacks_is_found(tmp_path):
    project = tmp_path / "pyproject.toml"
    project.write_text(
        '[project]\ndependencies = ["numpy>=1.0"]\n[project.optional-dependencies]\n'
        'more = ["numpy>=99", "no-such-package-of-ours", "gone; python_version < \\"3\\""]\nother = ["absent"]\n',
        encoding="utf-8",
    )
    script = Path(venvs.__file__).with_name("unmet.py")
    done = subprocess.run([sys.executable, script, project, "more"], capture_output=True, encoding="utf-8")
    assert done.stdout.split("\n") == ["numpy>=99", "no-such-package-of-ours", ""]
