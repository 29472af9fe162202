"""Errors in the words of the command line: paths as they were typed, and options in place of keywords."""

from __future__ import annotations

import re
from typing import Any

from movement_core.errors import HeartsideError
from movement_core.wording import say

# What the library calls it → what is typed. Values keep their place: date_order='dmy' → --date-order dmy.
_OPTIONS = {
    "date_order": "--date-order",
    "temperature_unit": "--temperature-unit",
    "complete_with": "--complete-with",
}
_COLUMNS_ASKED = re.compile(r"columns=\{'(\w+)': [^{}]*\}")
_KEYWORD = re.compile(r"\b(date_order|temperature_unit|complete_with)\b(?:=(?:'(\w+)'|…))?")


def in_options(text: str) -> str:
    """A message with the library's keywords put as options of the command line.

    >>> in_options("give temperature_unit='F' if they are, or columns={'humidity': its number, 1 = first}")
    'give --temperature-unit F if they are, or --columns humidity=NUMBER (1 = first)'
    """
    asked = say("NUMBER (1 = first)")
    text = _COLUMNS_ASKED.sub(rf"--columns \1={asked}", text).replace("columns=…", "--columns …")
    return _KEYWORD.sub(_option, text)


def _option(match: re.Match[str]) -> str:
    value = match[2] or ("AIR" if match[1] == "complete_with" else "")
    return f"{_OPTIONS[match[1]]} {value}".rstrip()


def told(error: Exception, job: dict[str, Any]) -> str:
    """One line for an error: what, where (the path as it was typed, once), and what to do."""
    if not isinstance(error, HeartsideError):
        text = " ".join(str(error).split())
        return _placed(
            say("the CAD host could not do it: {kind}: {text}", kind=type(error).__name__, text=text), job
        )
    return _placed(in_options(str(error)), job)


def _placed(message: str, job: dict[str, Any]) -> str:
    """The message with the path it begins with as it was typed; the model's is put before any other."""
    shown = _readable(job.get("shown", ""))
    for name, as_typed in (("file", shown), ("output", _readable(job.get("output_shown", "")))):
        lies_at = _readable(job.get(name, ""))
        if lies_at and as_typed and message.startswith(f"{lies_at}: "):
            return as_typed + message[len(lies_at) :]
    return f"{shown}: {message}" if shown and not message.startswith(f"{shown}: ") else message


def _readable(path: str) -> str:
    """A path as messages show it: bytes that are no letters as codes."""
    return path.encode("utf-8", "surrogateescape").decode("utf-8", "backslashreplace")
