"""A host that stays: started once, it takes one job after another, a line of JSON each, and answers likewise."""

from __future__ import annotations

import contextlib
import json
import os
import queue
import subprocess
import threading
import time
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from workbench_pkg.setup.hostrun import last_words, prepared, start, stop
from workbench_pkg.setup.speech import say

START_LIMIT_S = 120.0
PATIENCE_S = 5.0  # for a host to end by itself


class HostEnded(Exception):  # noqa: N818  (reads as what happened)
    """The host ended without an answer; the text says how, ``chatter`` what it printed last.

    ``begun`` holds what the job told before its answer.
    """

    def __init__(self, how: str, chatter: str = "", begun: dict[str, Any] | None = None) -> None:
        self.chatter, self.begun = chatter, begun or {}
        super().__init__(how)


class HostHung(HostEnded):
    """The host gave no answer in the time that it had, and was stopped."""


class StandingHost:
    """One host process on a module that reads jobs from stdin and writes answers to stdout.

    The module writes ``{"ready": …}`` when it can take jobs, and for each job any number of ``{"begun": {…}}`` and one
    ``{"answer": {…}}``. What else stands on stdout is passed over. To be used by one thread.
    """

    def __init__(self, module: str, env: Mapping[str, str] | None = None) -> None:
        """Starts at once; raises HostEnded where the host does not come up, SetupError where there is none."""
        self._lines: queue.SimpleQueue[dict[str, Any] | None] = queue.SimpleQueue()
        self._exit = contextlib.ExitStack()
        self.answered = 0
        try:
            ready = self._exit.enter_context(prepared(module, env=env))
            self._scratch: Path = ready.scratch
            chatter = self._exit.enter_context((ready.scratch / "chatter").open("w", encoding="utf-8"))
            jobs_end, self._jobs = os.pipe()
            answers, answers_end = os.pipe()
            try:
                self._process: subprocess.Popen[bytes] = start(ready, chatter, answers_end, jobs_end)
            except BaseException:
                os.close(answers)
                os.close(self._jobs)
                raise
            finally:
                os.close(jobs_end)
                os.close(answers_end)
            self._reader = threading.Thread(target=self._read, args=(answers,), daemon=True)
            self._reader.start()
            self.ready = self._next("ready", START_LIMIT_S, {})
        except HostEnded:
            self.kill()
            raise
        except BaseException:
            self.kill() if hasattr(self, "_process") else self._exit.close()
            raise

    def ask(self, job: Mapping[str, Any], timeout_s: float | None = None) -> dict[str, Any]:
        """The answer to a job. Raises HostHung or HostEnded, and then the host is gone."""
        begun: dict[str, Any] = {}
        try:
            data = json.dumps(job).encode("ascii") + b"\n"
            with contextlib.suppress(BrokenPipeError):  # it ended; the reader knows
                while data:
                    data = data[os.write(self._jobs, data) :]
            answer = self._next("answer", timeout_s, begun)
        except BaseException:
            self.kill()
            raise
        self.answered += 1
        return answer

    @property
    def pid(self) -> int:
        """Number of the host's process."""
        return self._process.pid

    def close(self) -> None:
        """Let the host end: it has no more jobs."""
        self._close_jobs()
        try:
            self._process.wait(PATIENCE_S)
        except subprocess.TimeoutExpired:
            stop(self._process, PATIENCE_S)
        self._clear()

    def kill(self) -> None:
        """End the host at once."""
        self._process.kill()
        self._process.wait()
        self._close_jobs()
        self._clear()

    def interrupt(self) -> None:
        """End the host at once, from another thread: the one that uses it gets HostEnded."""
        self._process.kill()

    def _clear(self) -> None:
        self._reader.join(PATIENCE_S)
        self._exit.close()

    def _close_jobs(self) -> None:
        if self._jobs >= 0:
            os.close(self._jobs)
            self._jobs = -1

    def _next(self, wanted: str, timeout_s: float | None, begun: dict[str, Any]) -> dict[str, Any]:
        until = None if timeout_s is None else time.monotonic() + timeout_s
        while True:
            try:
                left = None if until is None else max(0.0, until - time.monotonic())
                line = self._lines.get(timeout=left)
            except queue.Empty:
                raise HostHung(
                    say("no answer in {seconds:g} s", seconds=timeout_s), last_words(self._scratch), begun
                ) from None
            if line is None:
                code = self._process.wait()
                how = say("signal {number}", number=-code) if code < 0 else say("code {number}", number=code)
                raise HostEnded(how, last_words(self._scratch), begun)
            if wanted in line:
                return dict(line[wanted])
            begun.update(line.get("begun", {}))

    def _read(self, answers: int) -> None:
        with open(answers, "rb") as stream:
            for text in stream:
                with contextlib.suppress(
                    ValueError
                ):  # the host's own chatter, where the streams cannot be kept apart
                    line = json.loads(text)
                    if isinstance(line, dict):
                        self._lines.put(line)
        self._lines.put(None)
