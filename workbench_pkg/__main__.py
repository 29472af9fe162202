"""``python3 -m workbench_pkg``, installed as ``heartside``. Standard library only: the work runs in the host."""

from __future__ import annotations

import sys


def main(arguments: list[str] | None = None) -> int:
    try:
        from workbench_pkg.batch.cli import run

        return run(sys.argv[1:] if arguments is None else arguments)
    except KeyboardInterrupt:  # so early that the command line was not even there
        return 130


if __name__ == "__main__":
    raise SystemExit(main())
