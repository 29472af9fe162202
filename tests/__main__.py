"""`python3 -m tests`: see tests/running/command.py. Standard library only."""

import sys

if sys.version_info < (3, 10):  # noqa: UP036  (the line that tells users of an older one)
    sys.exit(f"Python 3.10 or newer is needed; this is {sys.version.split()[0]}")

from tests.running.command import main

sys.exit(main(sys.argv[1:]))
