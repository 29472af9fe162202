"""Sentences for people, which a front end may want in another language.

Every sentence that the core says is written through :func:`say` as a template and its values. Without a catalogue the
template itself is said. A front end that has translations says everything inside :func:`speaking`. What is made once
and remembered, or compared with, is a :func:`phrase`, which :func:`word` says when it is shown, or a :func:`later`.
"""

from __future__ import annotations

import string
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass

Fill = Callable[[str, Mapping[str, object]], str]

_catalogue: ContextVar[Mapping[str, str] | None] = ContextVar("catalogue", default=None)
_filling: ContextVar[Fill | None] = ContextVar("filling", default=None)


class AtLeast(float):
    """A length in a sentence that has to be reached: where it is told in coarser steps, it is rounded up."""


class AtMost(float):
    """A length in a sentence that must not be passed, or that is left: in coarser steps it is rounded down."""


def say(template: str, /, **values: object) -> str:
    """A sentence: its template in the language that is spoken, filled with values.

    >>> say("{part} moves {mm:.1f} mm", part="door", mm=1.25)
    'door moves 1.2 mm'
    """
    spoken = (_catalogue.get() or {}).get(template, template)
    fill = _filling.get()
    return fill(spoken, values) if fill else spoken.format(**values)


def word(text: str) -> str:
    """A name that may be one of ours, such as that of a year of air, or a user's own, which stays as it is.

    >>> word("my {shop}")
    'my {shop}'
    """
    return (_catalogue.get() or {}).get(text, text)


def phrase(text: str) -> str:
    """Marks a text that is kept as it is, to compare with or to be remembered, until :func:`word` says it.

    >>> phrase("free to rock: what it stands on or is held by lies on one line")
    'free to rock: what it stands on or is held by lies on one line'
    """
    return text


@dataclass(frozen=True)
class Later:
    """A sentence that is remembered before it is known in which language it will be said: ``str`` says it."""

    template: str
    values: tuple[tuple[str, object], ...]

    def __str__(self) -> str:
        return say(self.template, **dict(self.values))


def later(template: str, /, **values: object) -> Later:
    """What :func:`say` would say, to be said when it is shown.

    >>> str(later("{n} boards", n=3))
    '3 boards'
    """
    return Later(template, tuple(values.items()))


@contextmanager
def speaking(catalogue: Mapping[str, str] | None) -> Iterator[None]:
    """Say everything inside in another language. ``catalogue``: template → template with the same fields.

    >>> with speaking({"{n} boards": "{n} Bretter"}):
    ...     say("{n} boards", n=3)
    '3 Bretter'
    """
    before = _catalogue.set(catalogue)
    try:
        yield
    finally:
        _catalogue.reset(before)


def fill_with(fill: Fill | None) -> None:
    """The same as :func:`filling` from now on, as far as the running context reaches (``contextvars``)."""
    _filling.set(fill)


@contextmanager
def filling(fill: Fill | None) -> Iterator[None]:
    """Fill the templates of everything that is said inside in another way than ``str.format`` does.

    >>> with filling(lambda template, values: template.format(**values).upper()):
    ...     say("{n} boards", n=3)
    '3 BOARDS'
    """
    before = _filling.set(fill)
    try:
        yield
    finally:
        _filling.reset(before)


def fields(template: str) -> frozenset[str]:
    """Names of the values that a template asks for: those of a translation must be the same.

    >>> sorted(fields("{part} moves {mm:.1f} mm"))
    ['mm', 'part']
    """
    return frozenset(name for _, name, _, _ in string.Formatter().parse(template) if name is not None)
