"""Makes odd documents on request, each in a process forked from this one, which does nothing else.

``python -m tests.fuzzing.making``: a line "NUMBER PATH" on the input is answered by "whole", by "not recomputed" where
the host did not end recomputing the document in its time, or by "not made". It has no threads of its own: a child
forked beside a thread may wait for ever on a lock which that thread held.
"""

from __future__ import annotations

import os
import signal
import sys
from pathlib import Path
from typing import NoReturn

MAKING_S = 10.0  # of processor time: the host may cut solids for ever, before anything comes to us
LIBRARIES = ("/usr/lib/freecad/lib", "/usr/lib/freecad-python3/lib")
WHOLE, NOT_RECOMPUTED, NOT_MADE = "whole", "not recomputed", "not made"


def save(number: int, path: Path) -> str:
    """Make one document and save it, without recomputing it where the host does not come to an end of that."""
    for recompute, answer in ((True, WHOLE), (False, NOT_RECOMPUTED)):
        child = os.fork()
        if child == 0:
            _save_here(number, path, recompute)
        _, status = os.waitpid(child, 0)
        if status == 0:
            return answer
    return NOT_MADE


def _save_here(number: int, path: Path, recompute: bool) -> NoReturn:
    """In a process of its own, which ends here. The system ends it: the host hears no Python while it cuts solids."""
    try:
        from tests.fuzzing import odd_documents

        signal.signal(signal.SIGPROF, signal.SIG_DFL)
        signal.setitimer(signal.ITIMER_PROF, MAKING_S)
        odd_documents.make(number, recompute).saveAs(str(path))
        os._exit(0)
    finally:
        os._exit(1)


def main() -> None:
    answers = os.fdopen(os.dup(1), "w", encoding="utf-8")
    os.dup2(2, 1)  # the host chatters on the output
    sys.path += [folder for folder in LIBRARIES if os.path.isdir(folder)]
    from tests.fuzzing import odd_documents  # imports the host, once for all

    assert odd_documents
    for line in sys.stdin:
        number, _, path = line.rstrip("\n").partition(" ")
        print(save(int(number), Path(path)), file=answers, flush=True)


if __name__ == "__main__":
    main()
