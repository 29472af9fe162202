"""What the command line says itself, in the language that is asked for. Standard library only.

The core's own ``say`` cannot be used here: the command line runs also where numpy is not installed yet.
"""

from __future__ import annotations

from collections.abc import Mapping

from workbench_pkg.translations.files import catalogue


class Speech:
    """Says sentences in one language.

    >>> Speech("de").say("no findings")
    'keine Befunde'
    """

    def __init__(self, language: str = "en") -> None:
        self._catalogue: Mapping[str, str] = {} if language == "en" else catalogue(language)

    def say(self, template: str, /, **values: object) -> str:
        """A sentence: its template in that language, filled with values."""
        return self._catalogue.get(template, template).format(**values)
