"""The limits that the checks judge by, from one table with the source of each, and a maker's own in place of some."""

from __future__ import annotations

import difflib
import math
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from functools import cache

from movement_core.errors import InputError, UnknownName
from movement_core.tables import rows
from movement_core.wording import say

_own: ContextVar[OwnLimits | None] = ContextVar("own", default=None)


@dataclass(frozen=True)
class Limit:
    """One limit: its value and unit, what it means, and what it rests on."""

    name: str
    value: float
    unit: str
    meaning: str
    source: str
    provenance: str

    @property
    def basis(self) -> str:
        """What it rests on, in a few words."""
        return f"{self.source}; {self.provenance}" if self.source else self.provenance


@dataclass(frozen=True)
class OwnLimits:
    """Limits that a maker set in place of the table's, as pairs of name and value."""

    values: tuple[tuple[str, float], ...] = ()


@cache
def limits() -> dict[str, Limit]:
    """Every limit by its name."""
    found = [Limit(**{**row, "value": float(row["value"])}) for row in rows("check_limits")]  # type: ignore[arg-type]
    return {one.name: one for one in found}


@cache
def limit_ranges() -> dict[str, tuple[float, float]]:
    """From what to what a maker may set a limit, by its name; the others are not to be set."""
    return {row["name"]: (float(row["least"]), float(row["most"])) for row in rows("check_limit_ranges")}


def limit(name: str) -> float:
    """The value of a limit: a maker's own inside :func:`judged_by`, else that of the table.

    Raises
    ------
    UnknownName : there is no limit of that name.
    """
    own = _own.get()
    if own is not None:
        for named, value in own.values:
            if named == name:
                return value
    try:
        return limits()[name].value
    except KeyError:
        raise UnknownName(
            say("no limit is called {name!r}", name=name), allowed=", ".join(limits())
        ) from None


def own_limits(values: Mapping[str, float]) -> OwnLimits:
    """A maker's own limits from their names and values in the units of the table.

    Raises
    ------
    UnknownName : no limit that can be set is called so.
    InputError : a value is no number within the limit's range.
    """
    for name, value in values.items():
        own_limit(name, value)
    return OwnLimits(tuple(sorted((name, float(value)) for name, value in values.items())))


def own_limit(name: str, value: float) -> float:
    """One of a maker's own limits, if it can be; raises as :func:`own_limits`."""
    ranges = limit_ranges()
    if name not in ranges:
        near = tuple(difflib.get_close_matches(name.lower(), ranges, 3, 0.5))
        raise UnknownName(
            say("no limit that can be set is called {name!r}", name=name),
            nearest=near,
            allowed=say("nearest: {names}", names="; ".join(near)) if near else "; ".join(ranges),
            todo=say("name one of them"),
        )
    least, most = ranges[name]
    if isinstance(value, bool) or not isinstance(value, int | float) or not math.isfinite(value):
        raise InputError(
            say("{name!r} is to be a number, not {value!r}", name=name, value=value), allowed=_range(name)
        )
    if not least <= value <= most:
        raise InputError(say("{name!r} cannot be {value:g}", name=name, value=value), allowed=_range(name))
    return float(value)


@contextmanager
def judged_by(own: OwnLimits | None) -> Iterator[None]:
    """Judge everything inside by a maker's own limits; None, the table's.

    What a piece works out late (its crossings, its gaps) is judged where it is first asked for.

    >>> with judged_by(own_limits({"glued across": 60})):
    ...     limit("glued across")
    60.0
    """
    before = _own.set(own)
    try:
        yield
    finally:
        _own.reset(before)


def _range(name: str) -> str:
    least, most = limit_ranges()[name]
    return f"{least:g} to {most:g} {limits()[name].unit}"
