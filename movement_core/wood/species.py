"""Find a wood or another material by any of its names."""

from __future__ import annotations

import difflib
import re
import unicodedata
from functools import cache, lru_cache

from movement_core.errors import UnknownName
from movement_core.tables import rows
from movement_core.wood.catalogue import Incomplete, everything
from movement_core.wood.record import SizeChange, Species

__all__ = ["SizeChange", "Species", "all_species", "find_species"]

SHOWN = 12  # candidates written out in a message


def all_species() -> tuple[Species, ...]:
    """Every wood, sheet material and inert material whose movement is known, woods first."""
    return everything()[0]


def _words(name: str) -> tuple[str, ...]:
    plain = unicodedata.normalize("NFKD", name.casefold().replace("'", "").replace("’", ""))
    return tuple(re.findall(r"[a-z0-9]+", "".join(c for c in plain if not unicodedata.combining(c))))


def _natural(name: str) -> str:
    """'Oak, white' as it is spoken: 'White oak' (only for finding, lower case, no spaces)."""
    head, _, tail = name.partition(",")
    return "".join(_words(tail) + _words(head))


def _called(material: Species | Incomplete) -> tuple[str, ...]:
    botanical = (
        tuple(material.botanical.split("; ")) if isinstance(material, Species) and material.botanical else ()
    )
    return (material.name, *botanical, *material.trade_names)


@cache
def _index() -> tuple[dict[object, tuple[Species | Incomplete, ...]], dict[str, Species | Incomplete]]:
    """Names by their sorted words and by their run-together spelling; and exact names, which come first."""
    found: dict[object, list[Species | Incomplete]] = {}
    materials: list[Species | Incomplete] = [material for group in everything() for material in group]
    for material in materials:
        keys = {key for name in _called(material) for key in (tuple(sorted(_words(name))), _natural(name))}
        for key in keys:
            found.setdefault(key, []).append(material)
    exact: dict[str, Species | Incomplete] = {}
    by_name = {material.name: material for material in materials}
    # A row name of the coefficient table always means that row, although "black oak" alone is two woods.
    for row in rows("species"):
        if row["coefficients"].startswith("coefficients/"):
            exact[row["coefficients"].partition("/")[2].casefold()] = by_name[row["name"]]
    exact |= {name.casefold(): material for name, material in by_name.items()}
    return {key: tuple(value) for key, value in found.items()}, exact


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
    words = _words(name)
    if not words:
        raise UnknownName("no species named", where="species", todo="name a wood, such as white oak")
    index, exact = _index()
    material = exact.get(" ".join(name.casefold().split()))
    matches = (material,) if material else index.get(tuple(sorted(words))) or index.get(_natural(name)) or ()
    if len(matches) == 1:
        if isinstance(matches[0], Incomplete):
            wood = matches[0]
            raise UnknownName(
                f"the movement of {wood.name!r} cannot be worked out: {wood.reason}",
                where="species",
                nearest=_nearest(wood.name),
                todo="use a near relative, or give coefficients of your own",
            )
        return matches[0]
    candidates = matches or tuple(m for m in everything()[0] if _mentions(m, words))
    if candidates:
        names = tuple(m.name for m in candidates)
        raise UnknownName(
            f"{name!r} can be {'several woods' if len(names) > 1 else 'only part of a name'}",
            where="species",
            allowed=_listed(names),
            nearest=names,
            todo="name one of them",
        )
    near = _nearest(name)
    raise UnknownName(
        f"no material is called {name!r}",
        where="species",
        nearest=near,
        allowed=f"nearest: {_listed(near)}" if near else "the names of all_species()",
        todo="name one of them, or give coefficients of your own",
    )


def _mentions(material: Species, words: tuple[str, ...]) -> bool:
    return any(set(words) <= set(_words(name)) for name in _called(material))


def _listed(names: tuple[str, ...]) -> str:
    more = f" and {len(names) - SHOWN} more" if len(names) > SHOWN else ""
    return "; ".join(names[:SHOWN]) + more


def _nearest(name: str, count: int = 5) -> tuple[str, ...]:
    """Names of the materials with the most similar name or synonym, best first."""
    wanted = " ".join(sorted(_words(name)))
    scores: dict[str, float] = {}
    for material in everything()[0]:
        for called in _called(material):
            other = " ".join(sorted(_words(called)))
            score = difflib.SequenceMatcher(None, wanted, other).ratio()
            scores[material.name] = max(score, scores.get(material.name, 0.0))
    ranked = sorted(
        (item for item in scores.items() if item[0] != name), key=lambda item: (-item[1], item[0])
    )
    return tuple(near for near, score in ranked[:count] if score >= 0.5)
