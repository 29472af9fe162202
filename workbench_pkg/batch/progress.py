"""What is told of the work while it goes on: on stderr, and only to somebody who looks. Standard library only."""

from __future__ import annotations

import sys
import time

from workbench_pkg.setup.speech import say

LEAST_S = 0.2


class Progress:
    """One line that is written over and over; silent where stderr is no terminal, or when asked to be."""

    def __init__(self, count: int, quiet: bool) -> None:
        self._count = count
        self._shown = count > 1 and not quiet and sys.stderr.isatty()
        self._began = time.monotonic()
        self._last = 0.0
        self._length = 0

    def tick(self, done: int) -> None:
        """Show how far it is."""
        now = time.monotonic()
        if not self._shown or now - self._last < LEAST_S:
            return
        self._last = now
        self._put(say("{done} of {count} models", done=done, count=self._count) + self._left(done, now))

    def clear(self) -> None:
        """Take the line away, for others to write."""
        if self._length:
            self._put("")
            sys.stderr.write("\r")
            sys.stderr.flush()
            self._length = 0

    def _put(self, line: str) -> None:
        sys.stderr.write(f"\r{line:<{self._length}}")
        sys.stderr.flush()
        self._length = len(line)

    def _left(self, done: int, now: float) -> str:
        spent = now - self._began
        if done < 3 or spent < 2:
            return ""
        return say(", about {time} left", time=duration(spent / done * (self._count - done)))


def duration(seconds: float) -> str:
    """Seconds as a person says them.

    >>> duration(4.2), duration(75), duration(7380)
    ('4 s', '1 min 15 s', '2 h 3 min')
    """
    whole = round(seconds)
    if whole < 60:
        return f"{whole} s"
    minutes, rest = divmod(whole, 60)
    if minutes < 60:
        return f"{minutes} min {rest} s"
    return f"{minutes // 60} h {minutes % 60} min"
