"""Runs inside the host's window: waits until the main window is up, runs pytest there, ends the process.

The host executes this file on start-up. What to run stands as JSON in the environment variable
HEARTSIDE_WINDOW: "arguments" for pytest, and "packages", a folder with pytest in it where the host has
none of its own.
"""

from __future__ import annotations

import json
import os
import site
import sys
import traceback

import FreeCADGui
from PySide import QtCore

PATIENCE_S = 60
POLL_MS = 250


class Session:
    """The one run of pytest in this process."""

    def __init__(self, task: dict[str, object]) -> None:
        """task: the arguments and the packages folder."""
        self.task = task
        self.waited_ms = 0
        self.timer = QtCore.QTimer()
        self.timer.timeout.connect(self.look)
        self.timer.start(POLL_MS)

    def look(self) -> None:
        """Start once the main window is visible and has had a moment to finish loading."""
        self.waited_ms += POLL_MS
        window = FreeCADGui.getMainWindow()
        if window is not None and window.isVisible() and self.waited_ms >= 1500:
            self.timer.stop()
            self.run()
        elif self.waited_ms > PATIENCE_S * 1000:
            os.write(2, b"the main window did not come up\n")
            os._exit(3)

    def run(self) -> None:
        """Run pytest; the process ends with its exit code, without the host's questions about closing."""
        # The host shows Python's output in a panel of its own; the log wants it.
        sys.stdout = os.fdopen(os.dup(1), "w", encoding="utf-8", errors="replace", buffering=1)
        sys.stderr = os.fdopen(os.dup(2), "w", encoding="utf-8", errors="replace", buffering=1)
        sys.__stdout__, sys.__stderr__ = sys.stdout, sys.stderr
        code = 3
        try:
            if self.task["packages"]:
                site.addsitedir(str(self.task["packages"]))
            import pytest

            code = int(pytest.main(self.task["arguments"]))
        except BaseException:
            traceback.print_exc()
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(code)


SESSION = Session(json.loads(os.environ["HEARTSIDE_WINDOW"]))  # kept, or its timer would go away
