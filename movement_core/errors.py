"""One family of errors: each says what is wrong, where, what is allowed and what to do.

>>> print(InputError("humidity 140 is impossible", where="month 3", allowed="0 to 100 %", todo="check the columns"))
month 3: humidity 140 is impossible. Allowed: 0 to 100 %. To do: check the columns.
"""

from __future__ import annotations

from movement_core.wording import say

LONGEST = 1000  # characters of each part of what is told; a whole file may stand in one cell


class HeartsideError(Exception):
    """Base of every error that this project raises on purpose.

    Parameters
    ----------
    what : what is wrong, with the offending value.
    where : the part, file, line, column or argument it was found in.
    allowed : the allowed range or choices.
    todo : what the user can do about it.
    """

    def __init__(self, what: str, *, where: str = "", allowed: str = "", todo: str = "") -> None:
        what, where, allowed, todo = (_readable(each) for each in (what, where, allowed, todo))
        self.what, self.where, self.allowed, self.todo = what, where, allowed, todo
        text = f"{where}: {what}" if where else what
        for heading, more in ((say("Allowed"), allowed), (say("To do"), todo)):
            if more:
                text = f"{text.rstrip('.')}. {heading}: {more}"
        super().__init__(text if text.endswith((".", "?", "!")) else text + ".")


class InputError(HeartsideError, ValueError):
    """A value that cannot be used: a number out of range, an unknown word, a shape that does not fit."""


class UnknownName(InputError, LookupError):  # noqa: N818  (reads as what it is)
    """A species, place, finish or kind that is in none of the tables; carries the nearest names.

    ``fits``: what was asked for is a part of each of these names, or may mean each of them.
    """

    def __init__(self, what: str, *, nearest: tuple[str, ...] = (), fits: bool = False, **more: str) -> None:
        self.nearest, self.fits = nearest, fits
        super().__init__(what, **more)


class FileError(HeartsideError, OSError):
    """A file that is missing, unreadable, damaged, or not what it claims to be."""


def _readable(text: str) -> str:
    text = text.replace("\0", "\\0")
    return text if len(text) <= LONGEST else text[: LONGEST - 1] + "…"
