"""Run a command inside a virtual screen of its own: python3 display.py COMMAND ARGUMENT...

The server picks a free display number itself and tells it, so that several runs at once, inside and outside
of chroots, never meet on one screen.
"""

from __future__ import annotations

import os
import subprocess
import sys

SCREEN = "1400x900x24"


def main(command: list[str]) -> int:
    """Exit code of the command."""
    reading, writing = os.pipe()
    server = subprocess.Popen(
        ["Xvfb", "-displayfd", str(writing), "-screen", "0", SCREEN, "-nolisten", "tcp"],
        pass_fds=[writing],
        stdin=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    os.close(writing)
    try:
        with os.fdopen(reading) as numbers:
            number = numbers.readline().strip()
        if not number:
            print("Xvfb did not start", file=sys.stderr)
            return 1
        return subprocess.call(command, env={**os.environ, "DISPLAY": f":{number}"})
    finally:
        server.terminate()
        server.wait()


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
