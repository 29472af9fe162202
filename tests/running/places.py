"""Where things are: the project, the user's cache, the folder for what a run leaves behind."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]

ONE_THREAD = {"OPENBLAS_NUM_THREADS": "1", "OMP_NUM_THREADS": "1"}
"""Of every suite: several run side by side, and linear algebra on more threads than processors mostly waits."""


def cache_folder() -> Path:
    """Folder for environments and hosts that are built once and reused."""
    base = os.environ.get("XDG_CACHE_HOME")
    return (Path(base) if base else Path.home() / ".cache") / "heartside"


def output_folder() -> Path:
    """Folder for logs, reports and pictures of a run; in the cache where the project cannot be written to."""
    folder = ROOT / "test-output"
    try:
        folder.mkdir(exist_ok=True)
        if os.access(folder, os.W_OK):
            return folder
    except OSError:
        pass
    folder = cache_folder() / "test-output"
    folder.mkdir(parents=True, exist_ok=True)
    return folder


def fresh(folder: Path) -> Path:
    """The folder, empty."""
    if folder.is_dir():
        shutil.rmtree(folder)
    folder.mkdir(parents=True)
    return folder


def tool_environment() -> dict[str, str]:
    """Variables that keep every tool's scratch files out of the project, which may be read-only."""
    scratch = cache_folder() / "scratch"
    return {
        "PYTHONPYCACHEPREFIX": str(scratch / "pycache"),
        "HYPOTHESIS_STORAGE_DIRECTORY": str(scratch / "hypothesis"),
        "MPLCONFIGDIR": str(scratch / "matplotlib"),
        "RUFF_CACHE_DIR": str(scratch / "ruff"),
        "MYPY_CACHE_DIR": str(scratch / "mypy"),
        **ONE_THREAD,
    }
