"""The language of the window: what the host has loaded of our translations, also for the sentences of the core."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import ExitStack

import FreeCAD as App

from movement_core.wording import speaking

SENTENCES = "HeartsideCore"  # the context of the core's sentences

_spoken: ExitStack | None = None


class Sentences(Mapping[str, str]):
    """Template of the core → template in the language that the window speaks at that moment."""

    def __getitem__(self, template: str) -> str:
        return str(App.Qt.translate(SENTENCES, template))

    def get(self, template: str, default: str | None = None) -> str:  # type: ignore[override]
        return self[template]

    def __iter__(self) -> Iterator[str]:
        return iter(())

    def __len__(self) -> int:
        return 1  # never empty, or nobody would ask


def speak() -> None:
    """From now on, let the core speak the window's language; once a session."""
    global _spoken
    if _spoken is None:
        _spoken = ExitStack()
        _spoken.enter_context(speaking(Sentences()))
