"""The window starts with a clone of the add-on: no box in the way, the workbench there, with and without it alike."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from tests.running.hosts import SETTINGS

ROOT = Path(__file__).resolve().parents[2]

ASK = """
import json, os, sys
import FreeCAD, FreeCADGui
from PySide import QtCore, QtGui
try:
    from PySide import QtWidgets
except ImportError:
    QtWidgets = QtGui

def answer():
    box = QtWidgets.QApplication.activeModalWidget()
    found = {
        "workbenches": sorted(FreeCADGui.listWorkbenches()),
        "box": None if box is None else box.windowTitle(),
        "ours": sorted(name for name in sys.modules if name.startswith(("workbench_pkg", "movement_core"))),
        "file": getattr(sys.modules.get("workbench_pkg"), "__file__", ""),
    }
    with open(os.environ["HEARTSIDE_ANSWER"], "w") as file:
        json.dump(found, file)
    os._exit(0)

TIMER = QtCore.QTimer()
TIMER.setSingleShot(True)
TIMER.timeout.connect(answer)
TIMER.start(3000)
"""


@pytest.mark.parametrize("there", [True, False])
def test_the_window_starts(there, tmp_path):
    home = tmp_path / "home"
    place = home / "Mod" / "Heartside"
    home.mkdir()
    (home / "user.cfg").write_text(SETTINGS, encoding="utf-8")
    if there:
        for part in ("workbench_pkg", "movement_core", "icons"):
            shutil.copytree(ROOT / part, place / part)
        shutil.copyfile(ROOT / "package.xml", place / "package.xml")
    script, answer = tmp_path / "ask.py", tmp_path / "answer.json"
    script.write_text(ASK, encoding="utf-8")
    own = {
        name: value for name, value in os.environ.items() if name not in ("HEARTSIDE_WINDOW", "PYTHONPATH")
    }
    environment = {**own, "FREECAD_USER_HOME": str(home), "HEARTSIDE_ANSWER": str(answer)}
    program = shutil.which("freecad") or shutil.which("FreeCAD") or sys.executable
    subprocess.run(
        [program, str(script)], env=environment, stdin=subprocess.DEVNULL, capture_output=True, timeout=120
    )
    found = json.loads(answer.read_text(encoding="utf-8"))
    assert found["box"] is None
    assert ("HeartsideWorkbench" in found["workbenches"]) is there
    if there:
        assert Path(found["file"]).resolve().is_relative_to(place.resolve())
        # Nothing of ours but what listens for documents, labels and answers is loaded before it is asked for.
        assert found["ours"] == [
            "workbench_pkg",
            "workbench_pkg.objects",
            "workbench_pkg.objects.restoring",
            "workbench_pkg.panels",
            "workbench_pkg.panels.stale",
            "workbench_pkg.views",
            "workbench_pkg.views.watching",
        ]
    else:
        assert found["ours"] == []
