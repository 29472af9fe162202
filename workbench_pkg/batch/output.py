"""What the command line writes, on whatever it is given to write to. Standard library only."""

from __future__ import annotations

import codecs
import json
import os
import sys
import unicodedata
from collections.abc import Sequence
from itertools import pairwise
from typing import Any

REPORTS: dict[str, dict[str, Any]] = {  # command → its report with nothing in it
    "check": {"schema": "heartside-check-1", "files": []},
    "compare": {"schema": "heartside-compare-1", "old": "", "new": "", "models": []},
    "arrange": {"schema": "heartside-arrange-1", "path": "", "studies": []},
    "hold": {"schema": "heartside-hold-1", "path": "", "tops": []},
    "diagnose": {"schema": "heartside-diagnose-1", "path": None, "diagnosis": None},
    "measured": {"schema": "heartside-measured-1", "path": "", "lots": {}},
    "stock": {"schema": "heartside-stock-1", "stock": None},
}
_PLAIN = {
    "–": "-",
    "—": "-",
    "…": "~",
    "×": "x",
    "→": ">",
    "±": "~",
    "°": " ",
    "’": "'",
}  # one for one: tables stay
_HANDLER = "heartside-plain"


def prepare_streams() -> None:
    """Make stdout and stderr usable: there, even where the caller closed them, and never failing at a letter."""
    for descriptor in range(3):
        try:
            os.fstat(descriptor)
        except OSError:  # a file opened later would take its number, and our lines
            os.set_inheritable(os.open(os.devnull, os.O_RDWR), True)
    sys.stdout = sys.stdout or open(os.devnull, "w", encoding="utf-8")  # noqa: SIM115  (for the whole run)
    sys.stderr = sys.stderr or open(os.devnull, "w", encoding="utf-8")  # noqa: SIM115
    codecs.register_error(_HANDLER, _plain)
    reconfigure = getattr(sys.stdout, "reconfigure", None)  # not there where a test caught the stream
    if reconfigure:
        reconfigure(errors=_HANDLER)


def leave_stdout() -> None:
    """Write nothing more: nobody reads it, and the end of the program may not fail at what is left over."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def print_json(report: dict[str, Any]) -> None:
    """The report as JSON, in plain ASCII where stdout cannot take all its letters."""
    text = json.dumps(report, indent=1, ensure_ascii=False)
    try:
        text.encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        text = json.dumps(report, indent=1)
    print(text)


def wants_json(arguments: Sequence[str]) -> bool:
    """Whether JSON was asked for, by what was typed: also where the rest of it cannot be understood."""
    pairs = pairwise(arguments)
    return "--format=json" in arguments or ("--format", "json") in pairs


def print_failure(arguments: Sequence[str], message: str) -> None:
    """The report of a command that could not be begun, as JSON."""
    report = REPORTS.get(arguments[0] if arguments else "", REPORTS["check"])
    print_json({**report, "errors": [{"message": message, "part": ""}]})


def _plain(error: UnicodeError) -> tuple[str, int]:
    """The letters that a stream cannot show, each as one it can; a byte of no text as its code."""
    assert isinstance(error, UnicodeEncodeError)
    return "".join(_plain_letter(c) for c in error.object[error.start : error.end]), error.end


def _plain_letter(c: str) -> str:
    if "\udc80" <= c <= "\udcff":
        return f"\\x{ord(c) - 0xDC00:02x}"
    base = unicodedata.normalize("NFKD", c)[0]
    return _PLAIN.get(c, base if base.isascii() and base.isprintable() else "?")
