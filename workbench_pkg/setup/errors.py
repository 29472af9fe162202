"""Errors before set-up: the family of ``movement_core.errors`` once more, since that may not be imported yet.

A test holds the two against each other: the same four facts, told in the same way.
"""

from __future__ import annotations

from workbench_pkg.setup.speech import say


class PlainError(Exception):
    """Base of every error that is raised on purpose before the host is there: what, where, allowed, what to do.

    >>> print(PlainError("it is no number", where="--jobs", allowed="1 to 64", todo="leave it out"))
    --jobs: it is no number. Allowed: 1 to 64. To do: leave it out.
    """

    def __init__(self, what: str, *, where: str = "", allowed: str = "", todo: str = "") -> None:
        self.what, self.where, self.allowed, self.todo = what, where, allowed, todo
        text = f"{where}: {what}" if where else what
        for heading, more in ((say("Allowed"), allowed), (say("To do"), todo)):
            if more:
                text = f"{text.rstrip('.')}. {heading}: {more}"
        a_command = text.rpartition("\n")[2].startswith("  ")  # to be copied as it stands
        super().__init__(text if a_command or text.endswith((".", "?", "!")) else text + ".")


class SetupError(PlainError, OSError):
    """Something that the work needs is not there; the text says what, and the command that brings it."""


class UseError(PlainError, ValueError):
    """What was asked for cannot be done so: an option that does not fit, a file that is not what it should be."""
