"""A maker's settings beside the models: the air they live in and the limits to judge by, for a folder and all below.

The file is called ``heartside.json``; the nearest one up the folders counts, alone. Its words are those of the command
line, which outranks it. Plain JSON: nothing in it is evaluated.
"""

from __future__ import annotations

import difflib
import json
import os
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from typing import Any, NoReturn

from movement_core.errors import FileError, HeartsideError
from movement_core.piece.limits import OwnLimits, own_limit, own_limits
from movement_core.wording import say, word
from workbench_pkg.actions.settings import FILES
from workbench_pkg.batch import values
from workbench_pkg.host.plain_reading import read_plain

NAME = "heartside.json"
LARGEST_BYTES = 1 << 20
EXAMPLE = '{"year": "museum", "limits": {"gap most": 5}}'
AIRS = ("year", "shop", "complete-with")


@dataclass(frozen=True)
class SettingsFile:
    """What a settings file says: words of the command line with their values, and limits. Empty where there is none."""

    path: Path | None = None
    words: Mapping[str, Any] = field(default_factory=dict)
    limits: OwnLimits = field(default_factory=OwnLimits)


def nearest_settings(model: Path) -> Path | None:
    """The settings file in the folder of a model, or in the nearest folder above that has one."""
    folder = Path(os.path.abspath(model)).parent
    for place in (folder, *folder.parents):
        if os.path.lexists(place / NAME):
            return place / NAME
    return None


def read_settings(path: Path) -> SettingsFile:
    """Read and judge a settings file. Raises FileError with the line of what is wrong."""
    text = _text(path)
    refuse = partial(_refuse, path, text)

    def no_twice(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
        for name, _ in pairs:
            if [one for one, _ in pairs].count(name) > 1:
                refuse(say("{name!r} is said twice", name=name), name)
        return dict(pairs)

    try:
        said = json.loads(text, object_pairs_hook=no_twice, parse_constant=lambda word: word)
    except json.JSONDecodeError as error:
        raise FileError(
            say("it is not JSON ({reason})", reason=error.msg),
            where=say("{name}, line {line}", name=_shown(path), line=error.lineno),
            allowed=say("such as {example}", example=EXAMPLE),
        ) from None
    except (RecursionError, ValueError) as error:
        if isinstance(error, FileError):
            raise
        raise FileError(
            say("it is nested too deep, or a number in it is too long"),
            where=_shown(path),
            allowed=say("such as {example}", example=EXAMPLE),
        ) from None
    if not isinstance(said, dict):
        raise FileError(
            say("it is to be one JSON object"),
            where=_shown(path),
            allowed=say("such as {example}", example=EXAMPLE),
        )
    limits = said.pop("limits", {})
    words = {}
    for name, value in said.items():
        if name not in WORDS:
            near = difflib.get_close_matches(name, [*WORDS, "limits"], 1, 0.6)
            also = say("; did you mean {near!r}?", near=near[0]) if near else ""
            refuse(
                say("no setting is called {name!r}{also}", name=name, also=also),
                name,
                allowed=", ".join([*WORDS, "limits"]),
            )
        try:
            words[name] = WORDS[name](value)
        except (ValueError, TypeError, values.NotAllowed) as error:
            refuse(f"{name!r}: {error}", name)
        if name in AIRS and Path(words[name]).suffix.lower() in FILES:
            words[name] = str(path.parent / words[name])
    return SettingsFile(path, words, _limits(limits, refuse))


def _limits(limits: Any, refuse: Callable[..., NoReturn]) -> OwnLimits:
    if not isinstance(limits, dict):
        refuse(
            say("'limits' is to be an object of names and numbers"),
            "limits",
            allowed=say("such as {example}", example='{"gap most": 5}'),
        )
    for name, value in limits.items():
        try:
            own_limit(name, value)
        except HeartsideError as error:
            refuse(error.what, name, "limits", allowed=error.allowed, todo=error.todo)
    return own_limits(limits)


def _text(path: Path) -> str:
    try:
        if path.stat().st_size > LARGEST_BYTES:
            raise FileError(
                say("it is far too large for settings"), where=_shown(path), allowed=say("up to 1 MB")
            )
        return read_plain(path, LARGEST_BYTES).decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = error.object.count(b"\n", 0, error.start) + 1
        raise FileError(
            say("it is not written in UTF-8"),
            where=say("{name}, line {line}", name=_shown(path), line=line),
            todo=say("save it as UTF-8"),
        ) from None
    except FileError:
        raise
    except OSError as error:
        raise FileError(
            say("the settings cannot be read ({reason})", reason=word(str(error.strerror))),
            where=_shown(path),
            todo=say("mend it or remove it"),
        ) from None


def _refuse(path: Path, text: str, what: str, name: str, below: str = "", **more: str) -> NoReturn:
    """FileError at the line in which a word stands, after that of the group it belongs to."""
    start = _place(text, below, 0) if below else 0
    line = text.count("\n", 0, _place(text, name, start)) + 1
    raise FileError(what, where=say("{name}, line {line}", name=_shown(path), line=line), **more)


def _place(text: str, name: str, start: int) -> int:
    """Where a member of a JSON object of that name begins, the last such; the start where it cannot be told."""
    written = {re.escape(json.dumps(name)), re.escape(json.dumps(name, ensure_ascii=False))}
    found = [match.start() for match in re.finditer(rf"(?:{'|'.join(written)})\s*:", text[start:])]
    return start + found[-1] if found else start


def _shown(path: Path) -> str:
    """A path from where we are, if it lies there."""
    shown = os.path.relpath(path)
    return str(path) if shown.startswith("..") else shown


def _word(value: Any) -> str:
    if not isinstance(value, str) or not value.strip():
        raise ValueError(say("{value!r} is no text; write it in quotes", value=value))
    return value


def _number(value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise ValueError(say("{value!r} is no number; write it without quotes", value=value))
    if not abs(value) < 1e6:
        raise ValueError(say("{value!r} is no figure of any room", value=value))
    return float(value)


def _percent(value: Any) -> float:
    return values.moisture(str(_number(value)))


def _day(value: Any) -> str:
    return values.date(_word(value))


def _one_of(*choices: str) -> Callable[[Any], str]:
    def chosen(value: Any) -> str:
        if value not in choices:
            raise ValueError(say("{value!r} is none of {names}", value=value, names=", ".join(choices)))
        return str(value)

    return chosen


def _columns(value: Any) -> dict[str, int | str]:
    if not isinstance(value, dict):
        raise ValueError(
            say("write an object, such as {example}", example='{"temperature": 3, "humidity": 4}')
        )
    made: dict[str, int | str] = {}
    for what, where in value.items():
        made.update(values.columns(f"{what}={where}"))
    return made


WORDS: dict[str, Callable[[Any], Any]] = {
    "year": _word,
    "heating": _number,
    "cooling": _number,
    "humidify": _number,
    "dehumidify": _number,
    "moisture": _percent,
    "shop": _word,
    "built-on": _day,
    "date-order": _one_of("ymd", "dmy", "mdy"),
    "temperature-unit": _one_of("C", "F"),
    "columns": _columns,
    "complete-with": _word,
}
