"""What the add-on costs at start-up, and that the host's own test command finds ours."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys

import FreeCAD
import pytest

from tests.host.conftest import ROOT
from workbench_pkg.setup import find_host

# Under the host's own test command sys.executable is the host, which is no Python.
PYTHON = sys.executable if "python" in sys.executable else shutil.which("python3")
ENTRY = ROOT / "workbench_pkg" / "entry"
LIGHT = {
    "workbench_pkg",
    "workbench_pkg.objects",
    "workbench_pkg.objects.restoring",
    "workbench_pkg.panels",
    "workbench_pkg.panels.stale",
    "workbench_pkg.views",
    "workbench_pkg.views.watching",
}

# Stands in for the host, so that nothing but the two files' own imports is counted.
PROBE = """
import sys, types
app, gui = types.ModuleType("FreeCAD"), types.ModuleType("FreeCADGui")
app.addDocumentObserver = lambda observer: None
gui.Workbench = type("Workbench", (), {})
gui.addWorkbench = gui.addLanguagePath = gui.addIconPath = lambda it: None
gui.addPreferencePage = lambda page, group: None
gui.getLocale = lambda: "English"
app.Qt = types.SimpleNamespace(translate=lambda context, text: text)
sys.modules.update(FreeCAD=app, FreeCADGui=gui)
before = set(sys.modules)
for name in ("Init.py", "InitGui.py"):
    with open(sys.argv[1] + "/" + name, encoding="utf-8") as file:
        exec(compile(file.read(), name, "exec"), {"__name__": "__main__"})
print(" ".join(sorted(set(sys.modules) - before)))
"""


def test_the_start_imports_next_to_nothing():
    done = subprocess.run(
        [PYTHON, "-c", PROBE, str(ENTRY)], capture_output=True, encoding="utf-8", cwd=ROOT, check=True
    )
    loaded = set(done.stdout.split())
    assert "workbench_pkg.views.watching" in loaded
    ours = {name for name in loaded if name.startswith(("workbench_pkg", "movement_core"))}
    assert ours == LIGHT
    assert not loaded & {"numpy", "PySide", "PySide2", "PySide6", "pivy"}


def test_the_host_knows_our_tests():
    assert FreeCAD.__unit_test__.count("workbench_pkg.host_tests") == 1


def test_a_failing_test_of_ours_fails_the_command(doc):
    import unittest

    from workbench_pkg import host_tests

    class Broken(host_tests.InThisHost):
        def test_tags_are_properties_and_one_undo_step(self):
            self.fail("on purpose")

    result = unittest.TestResult()
    unittest.defaultTestLoader.loadTestsFromTestCase(Broken).run(result)
    assert result.testsRun == 4
    assert len(result.failures) == 1
    assert result.errors == []


ASK = """
import json, os, sys
import FreeCAD
import movement_core, workbench_pkg
answer = [FreeCAD.__unit_test__, movement_core.__file__, workbench_pkg.__file__]
with open(os.environ["HEARTSIDE_ANSWER"], "w") as file:
    json.dump(answer, file)
os._exit(0)
"""


@pytest.mark.parametrize("way", ["clone", "symlink"])
def test_the_host_finds_it_however_it_was_put_there(way, tmp_path):
    place = tmp_path / "home" / "Mod" / "Heartside"
    place.parent.mkdir(parents=True)
    if way == "symlink":
        place.symlink_to(ROOT)
    else:
        for part in ("workbench_pkg", "movement_core", "icons"):
            shutil.copytree(ROOT / part, place / part)
        shutil.copyfile(ROOT / "package.xml", place / "package.xml")
    script, answer = tmp_path / "ask.py", tmp_path / "answer.json"
    script.write_text(ASK, encoding="utf-8")
    environment = {**os.environ, "FREECAD_USER_HOME": str(tmp_path / "home"), "HEARTSIDE_ANSWER": str(answer)}
    environment.pop("PYTHONPATH", None)
    subprocess.run(
        [find_host(), str(script)],
        env=environment,
        stdin=subprocess.DEVNULL,
        capture_output=True,
        timeout=120,
    )
    tests, *files = json.loads(answer.read_text(encoding="utf-8"))
    assert "workbench_pkg.host_tests" in tests
    assert all(os.path.realpath(file).startswith(os.path.realpath(place)) for file in files)
