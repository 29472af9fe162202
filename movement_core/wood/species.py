"""Find a wood or another material by any of its names."""

from __future__ import annotations

from functools import cache, lru_cache

from movement_core.errors import UnknownName
from movement_core.names import NameIndex
from movement_core.tables import rows
from movement_core.wood.catalogue import Incomplete, everything
from movement_core.wood.record import SizeChange, Species
from movement_core.wording import phrase, say

__all__ = ["SizeChange", "Species", "all_species", "find_species"]


def all_species() -> tuple[Species, ...]:
    """Every wood, sheet material and inert material whose movement is known, woods first.

    >>> all_species()[0].kind
    'wood'
    """
    return everything()[0]


@cache
def _index() -> NameIndex[Species | Incomplete]:
    species, incomplete = everything()
    named: list[tuple[Species | Incomplete, tuple[str, ...]]] = []
    for wood in species:
        botanical = tuple(name for name in wood.botanical.split("; ") if name)
        named.append((wood, (wood.name, *botanical, *wood.trade_names)))
    named += [(wood, (wood.name, *wood.trade_names)) for wood in incomplete]
    # A row name of the coefficient table always means that row, although "black oak" alone is two woods.
    by_name = {names[0]: wood for wood, names in named}
    printed = {
        row["coefficients"].partition("/")[2]: by_name[row["name"]]
        for row in rows("species")
        if row["coefficients"]
    }
    return NameIndex(named, phrase("species"), printed)


@lru_cache(maxsize=4096)
def find_species(name: str) -> Species:
    """The material of a name: case, spaces, commas, accents and the order of the words do not matter.

    Parameters
    ----------
    name : the usual name, a trade name or the botanical name: "white oak", "oak, white", "Quercus alba".

    Raises
    ------
    UnknownName : no material has that name, or several have ("oak"): with the candidates, never a guess.

    >>> find_species("Quercus alba").tangential_coefficient
    0.00365
    """
    wood = _index().find(name)
    if isinstance(wood, Incomplete):
        raise UnknownName(
            say(
                "the movement of {name!r} cannot be worked out: {reason}", name=wood.name, reason=wood.reason
            ),
            where=say("species"),
            nearest=_index().nearest(wood.name),
            todo=say("use a near relative, or give coefficients of your own"),
        )
    return wood
