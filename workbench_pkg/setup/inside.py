"""What runs inside the host: one module or script, with true streams and a true exit code.

Never imported by us: the host executes a copy of this file. The host itself prints banners, progress and
statistics on file descriptors 1 and 2 and swallows exceptions with exit code 0, so the work gets the caller's
streams under other descriptors, and the process ends here.
"""

from __future__ import annotations

import json
import os
import runpy
import signal
import sys
import traceback
from typing import Any, NoReturn, TextIO


def stream(descriptor: int | None, kept: int) -> TextIO:
    """Text stream on a descriptor the caller passed, or on a copy of the one the process started with."""
    return os.fdopen(
        os.dup(kept) if descriptor is None else descriptor, "w", encoding="utf-8", errors="replace"
    )


def _stopped(*_: object) -> NoReturn:
    raise KeyboardInterrupt


def main(task: dict[str, Any]) -> int:
    """Run the task; 0, the code of sys.exit, or 1 for an exception."""
    target = task["script"] or task["module"]
    sys.argv = [target, *task["arguments"]]
    signal.signal(signal.SIGTERM, _stopped)  # so that half-written files are cleared away
    if signal.getsignal(signal.SIGINT) is not signal.SIG_IGN:
        signal.signal(signal.SIGINT, _stopped)
    for folder in reversed(task["python_paths"]):
        if folder not in sys.path:
            sys.path.insert(0, folder)
    try:
        if task["script"]:
            sys.path.insert(0, os.path.dirname(os.path.abspath(target)))
            runpy.run_path(target, run_name="__main__")
        else:
            runpy.run_module(target, run_name="__main__", alter_sys=True)
    except SystemExit as stop:
        if stop.code is None or isinstance(stop.code, int):
            return (stop.code or 0) & 0xFF
        print(stop.code, file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        return 130
    except BaseException:
        traceback.print_exc()
        return 1
    return 0


def run() -> None:
    """Read the task from the environment, run it, note the exit code, end the process."""
    task = json.loads(os.environ.pop("HEARTSIDE_TASK"))
    out, err = stream(task["stdout"], 1), stream(task["stderr"], 2)
    if task["stdout"] is None:
        os.dup2(2, 1)  # no spare descriptors on this system: at least stdout stays clean
    sys.stdout, sys.stderr = out, err
    code = main(task)
    for each in (sys.stdout, sys.stderr, out, err):
        try:
            each.flush()
        except (OSError, ValueError):  # the reader has gone away, or the work closed the stream
            code = code or 1
    with open(task["exit_file"], "w", encoding="utf-8") as file:
        file.write(str(code))
    os._exit(code)  # no console, no banner, no crash while tearing down


run()
