"""Many inputs one after another, each told by its kind and number alone, so that one that breaks can be made again."""

from __future__ import annotations

import random
import signal
import tempfile
import traceback
import warnings
from collections.abc import Callable, Iterable
from pathlib import Path

from movement_core.errors import HeartsideError
from tests.fuzzing import files, solids, texts

LIMIT_S = 2.0  # of processor time: the machine may be busy with others

# kind → (what makes it, how many of a hundred)
KINDS: dict[str, tuple[Callable[[random.Random, Path], Callable[[], object]], int]] = {
    "tag": (texts.tag, 16),
    "properties": (texts.properties, 10),
    "tag table": (texts.tag_table, 10),
    "joint table": (texts.joint_table, 10),
    "settings": (texts.settings, 10),
    "logger": (texts.logger, 10),
    "months": (texts.months, 8),
    "document": (files.document, 12),
    "exchange": (files.exchange, 6),
    "frames": (solids.frames, 4),
    "contacts": (solids.contacts, 4),
}
ORDER = [kind for kind, (_, share) in KINDS.items() for _ in range(share)]


class Hang(BaseException):
    """An input took too long."""


def _too_long(*_: object) -> None:
    raise Hang


def one(kind: str, number: int, folder: Path) -> str:
    """What went wrong with one input; "" where it was taken or refused in our own words."""
    rng = random.Random(f"{kind} {number}")
    read = KINDS[kind][0](rng, folder)
    signal.signal(signal.SIGPROF, _too_long)
    signal.setitimer(signal.ITIMER_PROF, LIMIT_S)
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error")  # a warning of numpy's would be seen by the user
            read()
    except HeartsideError as error:
        if len(str(error)) > 5000 or "\0" in str(error):
            return f"{kind} {number}: its message cannot be shown ({len(str(error))} characters)"
    except Hang:
        return f"{kind} {number}: more than {LIMIT_S:g} s"
    except BaseException as error:  # the very thing we look for
        last = traceback.extract_tb(error.__traceback__)[-1]
        return (
            f"{kind} {number}: {type(error).__name__}: {str(error)[:200]!r} ({last.filename}:{last.lineno})"
        )
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
    return ""


def sweep(numbers: Iterable[int]) -> list[str]:
    """What went wrong with the inputs of these numbers; each number stands for one of a hundred places in ``ORDER``."""
    with tempfile.TemporaryDirectory() as folder:
        found = (one(ORDER[number % len(ORDER)], number, Path(folder)) for number in numbers)
        return [problem for problem in found if problem]
