"""Where a figure comes from, and how surely we know that."""

from __future__ import annotations

from dataclasses import dataclass

from movement_core.wording import word

READ = "read"  # taken from a copy of the publication or a reprint
RECALLED = "recalled"  # from memory, not checked against a copy
DERIVED = "derived"  # computed from other figures
PRACTICE = "common practice"  # a fact of the trade, no source
OWN = "own"  # our own judgement or arithmetic
PROVENANCES = (READ, RECALLED, DERIVED, PRACTICE, OWN)


@dataclass(frozen=True)
class Source:
    """A published source of one figure: its title, the place in it, and how we know it."""

    title: str
    locator: str = ""
    provenance: str = RECALLED

    def __post_init__(self) -> None:
        if self.provenance not in PROVENANCES:
            raise ValueError(f"provenance {self.provenance!r} is not one of {', '.join(PROVENANCES)}")

    def __str__(self) -> str:
        """As it is kept and compared: ``told`` and ``told_basis`` say it in another language."""
        place = f", {self.locator}" if self.locator else ""
        return f"{self.title}{place} ({self.provenance})"

    def told(self) -> str:
        """The same in the language that is spoken; a title that has no translation stays."""
        place = f", {word(self.locator)}" if self.locator else ""
        return f"{word(self.title)}{place} ({word(self.provenance)})"


def told_basis(basis: str) -> str:
    """What something rests on, in the language that is spoken: its words, and how surely we know them.

    >>> told_basis("a humidifier that keeps 40 % in winter: own assumption (own)")
    'a humidifier that keeps 40 % in winter: own assumption (own)'
    """
    words, _, provenance = basis.removesuffix(")").rpartition(" (")
    if words and basis.endswith(")") and provenance in PROVENANCES:
        return f"{word(words)} ({word(provenance)})"
    return word(basis)
