"""The limits that the checks judge by, from one table with the source of each."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from movement_core.errors import UnknownName
from movement_core.tables import rows


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


@cache
def limits() -> dict[str, Limit]:
    """Every limit by its name."""
    found = [Limit(**{**row, "value": float(row["value"])}) for row in rows("check_limits")]  # type: ignore[arg-type]
    return {one.name: one for one in found}


def limit(name: str) -> float:
    """The value of a limit.

    Raises
    ------
    UnknownName : there is no limit of that name.
    """
    try:
        return limits()[name].value
    except KeyError:
        raise UnknownName(f"no limit is called {name!r}", allowed=", ".join(limits())) from None
