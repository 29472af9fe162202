"""Stands in for the work inside the host: takes jobs as it does, and crashes, hangs and chatters as it is told."""

from __future__ import annotations

import json
import os
import signal
import sys
import time


def main() -> None:
    print(json.dumps({"ready": {"memory_mb": 100.0}}), flush=True)
    for number, text in enumerate(sys.stdin):
        job = json.loads(text)
        what = job["do"]
        print("chatter of the host", flush=True)
        print(json.dumps({"begun": {"key": f"key of {job['shown']}"}}), flush=True)
        if what == "crash" or (what == "crash when used" and number > 0):
            os.kill(os.getpid(), signal.SIGSEGV)
        if what == "leave":
            sys.exit(3)
        if what == "hang":
            time.sleep(60)
        if what == "wait":
            time.sleep(0.4)
        memory = 5000.0 if what == "grow" else 100.0
        print(
            json.dumps({"answer": {"name": job["shown"], "process": os.getpid(), "memory_mb": memory}}),
            flush=True,
        )


if __name__ == "__main__":
    main()
