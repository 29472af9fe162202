"""What the command line says itself, in the language that is asked for. Standard library only.

The core's own ``say`` cannot be used here: the command line runs also where numpy is not installed yet.
"""

from __future__ import annotations

from collections.abc import Mapping

_catalogue: Mapping[str, str] = {}


def speak(catalogue: Mapping[str, str]) -> None:
    """Say everything from now on in another language. ``catalogue``: template → its translation; empty: English."""
    global _catalogue
    _catalogue = catalogue


def say(template: str, /, **values: object) -> str:
    """A sentence: its template in the language that is spoken, filled with values.

    >>> say("{count} models", count=3)
    '3 models'
    """
    return _catalogue.get(template, template).format(**values)


def word(text: str) -> str:
    """A word that may be one of ours, such as the name of a year of air, or somebody's own, which stays as it is."""
    return _catalogue.get(text, text)


def phrase(text: str) -> str:
    """Marks a text that is kept as it is until ``say`` or ``word`` says it."""
    return text
