"""Many jobs for a few hosts: a job that crashes or hangs its host costs itself only. Standard library only."""

from __future__ import annotations

import json
import os
import queue
import sys
import threading
from collections.abc import Callable, Generator, Mapping, Sequence
from pathlib import Path
from typing import Any

from workbench_pkg.batch.answering import ONE_THREAD, WORKER
from workbench_pkg.setup import HostEnded, HostHung, SetupError, StandingHost
from workbench_pkg.setup.speech import say

# A host keeps a little of every document that it had open: it is started anew after so many, or so much memory.
MOST_JOBS = 250
MOST_GROWTH_MB = 600.0
MOST_FAILED_STARTS = 3
TICK_S = 0.25

Job = Mapping[str, Any]
Answer = dict[str, Any]


def answers(
    jobs: Sequence[Job],
    hosts: int,
    spool: Path,
    time_limit_s: float | None = None,
    tick: Callable[[int], None] | None = None,
    failed: Callable[[str, str], None] | None = None,
) -> Generator[Answer, None, None]:
    """The answer to each job, in the order of the jobs.

    Parameters
    ----------
    jobs : with ``shown``, the name of the file to speak of. hosts : how many work side by side.
    spool : a folder for answers that have to wait for an earlier one, so that they need no memory.
    time_limit_s : what one job may take.
    tick : called with the number of answers there are, several times a second.
    failed : called with the key and the failure of a job that its host died of or that took too long.

    Closing the generator, or an exception in it, ends the hosts.
    """
    work = _Work(jobs, spool, time_limit_s, failed)
    threads = [threading.Thread(target=work.run, daemon=True) for _ in range(min(hosts, len(jobs)))]
    for thread in threads:
        thread.start()
    try:
        for index in range(len(jobs)):
            while index not in work.done:
                if tick:
                    tick(work.finished)
                work.wait(TICK_S)
            yield work.take(index)
    finally:
        work.stop()
        for thread in threads:
            thread.join()


class _Work:
    """What the threads share: the jobs to come, and which are done."""

    def __init__(
        self,
        jobs: Sequence[Job],
        spool: Path,
        time_limit_s: float | None,
        failed: Callable[[str, str], None] | None,
    ) -> None:
        self._jobs, self._spool, self._limit_s, self._failed = jobs, spool, time_limit_s, failed
        self._next = iter(range(len(jobs)))
        self._lock = threading.Lock()
        self._news: queue.SimpleQueue[int | Exception] = queue.SimpleQueue()
        self._hosts: set[StandingHost] = set()
        self._stopped = False
        self.done: set[int] = set()
        self.finished = 0

    # ---- for the one who waits

    def wait(self, seconds: float) -> None:
        try:
            news = self._news.get(timeout=seconds)
        except queue.Empty:
            return
        if isinstance(news, Exception):
            raise news
        self.done.add(news)
        self.finished += 1

    def take(self, index: int) -> Answer:
        path = self._spool / f"{index}.json"
        answer: Answer = json.loads(path.read_bytes())
        path.unlink()
        self.done.discard(index)
        return answer

    def stop(self) -> None:
        with self._lock:
            self._stopped = True
            for host in self._hosts:
                host.interrupt()

    # ---- for each thread

    def run(self) -> None:
        host: StandingHost | None = None
        failed_starts = 0
        try:
            while not self._stopped and (index := self._take_job()) is not None:
                job = self._jobs[index]
                for attempt in (1, 2):
                    fresh = host is None
                    try:
                        host = host or self._start()
                        failed_starts = 0
                        answer = host.ask(job, self._limit_s)
                    except HostEnded as failure:
                        started = host is not None
                        self._forget(host)
                        host = None
                        if self._stopped:
                            return
                        if not started:
                            failed_starts += 1
                        if attempt == 1 and not fresh and not isinstance(failure, HostHung):
                            continue  # perhaps what went before was too much for it
                        answer = self._told(job, failure, started)
                    break
                self._finish(index, answer)
                if failed_starts >= MOST_FAILED_STARTS:
                    raise SetupError(
                        say("the CAD host does not come up: {why}", why=answer["errors"][0]["message"])
                    )
                if host is not None and self._is_worn(host, answer):
                    self._forget(host)
                    host.close()
                    host = None
        except Exception as error:  # said by the one who waits
            self._news.put(error)
        finally:
            if host is not None:
                self._forget(host)
                host.kill() if self._stopped else host.close()

    def _take_job(self) -> int | None:
        with self._lock:
            return next(self._next, None)

    def _start(self) -> StandingHost:
        host = StandingHost(WORKER, ONE_THREAD)
        with self._lock:
            self._hosts.add(host)
            if self._stopped:
                host.interrupt()
        return host

    def _forget(self, host: StandingHost | None) -> None:
        with self._lock:
            if host is not None:
                self._hosts.discard(host)

    def _finish(self, index: int, answer: Answer) -> None:
        (self._spool / f"{index}.json").write_text(json.dumps(answer), encoding="ascii")
        self._news.put(index)

    def _is_worn(self, host: StandingHost, answer: Answer) -> bool:
        memory, at_start = answer.get("memory_mb"), host.ready.get("memory_mb")
        grown = memory is not None and at_start is not None and memory - at_start > MOST_GROWTH_MB
        return host.answered >= MOST_JOBS or grown

    def _told(self, job: Job, failure: HostEnded, started: bool) -> Answer:
        """The answer that stands for a host that gave none."""
        if not started:
            how = say("the CAD host does not start ({failure}).", failure=failure)
        elif isinstance(failure, HostHung):
            how = say(
                "it took longer than {seconds:g} s and was stopped. To do: allow more with --time-limit, or "
                "see in FreeCAD what makes it so large.",
                seconds=self._limit_s,
            )
        else:
            how = say(
                "the CAD host stopped without an answer ({failure}). To do: open it in FreeCAD and look for the part "
                "at which the host fails.",
                failure=failure,
            )
        if job.get("debug"):
            print(failure.chatter, file=sys.stderr)
        key = failure.begun.get("key")
        if started and key and self._failed:
            self._failed(key, how)
        return {"errors": [{"message": f"{job['shown']}: {how}", "part": ""}]}


def processors() -> int:
    """Processors that this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
