"""A hundred thousand spoilt inputs in one process: ``python -m tests.benchmarks.fuzz_inputs --count 100000``.

Prints what broke (none may), by kind and number; ``--only "tag 16"`` makes one of them again.
"""

from __future__ import annotations

import argparse
import resource
import tempfile
import time
from collections import Counter
from pathlib import Path

from tests.fuzzing.sweep import KINDS, ORDER, one


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=100_000)
    parser.add_argument("--first", type=int, default=0)
    parser.add_argument("--only", help="kind and number of one input")
    asked = parser.parse_args()
    assert len(ORDER) == 100 and set(ORDER) == set(KINDS)
    with tempfile.TemporaryDirectory() as folder:
        if asked.only:
            kind, _, number = asked.only.rpartition(" ")
            print(one(kind, int(number), Path(folder)) or "sound")
            return 0
        start, slowest, broken, kinds = time.monotonic(), (0.0, ""), 0, Counter[str]()
        for number in range(asked.first, asked.first + asked.count):
            kind = ORDER[number % len(ORDER)]
            began = time.process_time()
            problem = one(kind, number, Path(folder))
            slowest = max(slowest, (time.process_time() - began, f"{kind} {number}"))
            kinds[kind] += 1
            if problem:
                broken += 1
                print(problem, flush=True)
    memory_mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(", ".join(f"{kind} {count}" for kind, count in kinds.items()))
    print(f"{asked.count} inputs, {broken} broken, slowest {slowest[0]:.2f} s ({slowest[1]}), "
          f"most memory {memory_mb:.0f} MB, {time.monotonic() - start:.0f} s")  # fmt: skip
    return 1 if broken else 0


if __name__ == "__main__":
    raise SystemExit(main())
