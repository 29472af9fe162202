"""The core works with no host, no window system and no drawing library: numpy is all it needs."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
BLOCKED = ("FreeCAD", "FreeCADGui", "Part", "PySide", "PySide2", "PySide6", "matplotlib", "workbench_pkg")

IMPORT_ALL = """
import importlib, json, pkgutil, sys

class Block:
    def find_spec(self, name, path=None, target=None):
        if name.split(".")[0] in BLOCKED:
            raise ImportError("blocked: " + name)

BLOCKED = set(json.loads(sys.argv[1]))
sys.meta_path.insert(0, Block())
before = set(sys.modules)
import PACKAGE
found = [m.name for m in pkgutil.walk_packages(PACKAGE.__path__, "PACKAGE.")]
for name in found:
    importlib.import_module(name)
tops = {name.split(".")[0] for name in set(sys.modules) - before
        if "-packages" in (getattr(sys.modules[name], "__file__", None) or "")}
print(json.dumps({"modules": found, "libraries": sorted(tops)}))
"""


def import_all(package: str, folder: Path) -> subprocess.CompletedProcess[str]:
    """Import every module of the package in a fresh interpreter with the blocked names out of reach."""
    code = IMPORT_ALL.replace("PACKAGE", package)
    return subprocess.run(
        [sys.executable, "-W", "error", "-c", code, json.dumps(BLOCKED)],
        cwd=folder,
        capture_output=True,
        encoding="utf-8",
        timeout=120,
    )


def test_every_core_module_imports_with_numpy_alone():
    done = import_all("movement_core", ROOT)
    assert done.returncode == 0, done.stderr
    answer = json.loads(done.stdout)
    files = [path for path in (ROOT / "movement_core").rglob("*.py") if path.name != "__init__.py"]
    packages = {path.parent for path in (ROOT / "movement_core").glob("*/**/__init__.py")}
    assert len(answer["modules"]) == len(files) + len(packages)
    assert set(answer["libraries"]) <= {"numpy"}


def test_a_module_that_reaches_for_the_host_is_caught(tmp_path):
    package = tmp_path / "reaching"
    package.mkdir()
    (package / "__init__.py").write_text("", encoding="utf-8")
    (package / "good.py").write_text("import math\n", encoding="utf-8")
    assert import_all("reaching", tmp_path).returncode == 0
    (package / "bad.py").write_text("import FreeCAD\n", encoding="utf-8")
    done = import_all("reaching", tmp_path)
    assert done.returncode != 0
    assert "blocked: FreeCAD" in done.stderr
