"""Find things by the names people use: case, spaces, commas, accents and word order do not matter.

>>> index = NameIndex([("a", ("Oak, white", "Quercus alba")), ("b", ("Oak, red",))], "wood")
>>> index.find("white  OAK"), index.find("oak white"), index.find("quercus alba")
('a', 'a', 'a')
"""

from __future__ import annotations

import difflib
import re
import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from typing import Generic, TypeVar

from movement_core.errors import UnknownName
from movement_core.wording import say, word

T = TypeVar("T")
SHOWN = 12  # candidates written out in a message
SIMILAR = 0.5  # least similarity of a name that is offered in place of an unknown one


@lru_cache(maxsize=20_000)  # every name that is not found is compared with all that are known
def words(name: str) -> tuple[str, ...]:
    """The words of a name, lower case, without accents and punctuation."""
    plain = unicodedata.normalize("NFKD", name.casefold().replace("'", "").replace("’", ""))
    return tuple(re.findall(r"[a-z0-9]+", "".join(c for c in plain if not unicodedata.combining(c))))


_UMLAUTS = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue"})


def spellings(name: str) -> tuple[str, ...]:
    """A name, and its umlauts written out where it has any: people type 'Lärche' and 'Laerche'.

    >>> spellings("Lärche"), spellings("white oak")
    (('Lärche', 'laerche'), ('white oak',))
    """
    composed = unicodedata.normalize("NFC", name)
    written_out = composed.casefold().translate(_UMLAUTS)
    return (name,) if written_out == composed.casefold() else (name, written_out)


def run_together(name: str) -> str:
    """A name as it is spoken, without spaces: 'Oak, white' and 'white oak' give 'whiteoak'."""
    head, _, tail = name.partition(",")
    return "".join(words(tail) + words(head))


def listed(names: Sequence[str]) -> str:
    """Names for a message, the first dozen written out."""
    more = say(" and {count} more", count=len(names) - SHOWN) if len(names) > SHOWN else ""
    return "; ".join(names[:SHOWN]) + more


class NameIndex(Generic[T]):
    """Items by all their names.

    Parameters
    ----------
    named : each item with its names, the one to show first. Names may be shared: such a name is ambiguous.
    noun : what the items are called in messages, a ``phrase``.
    exact : names that always mean one item, in just this spelling (case and spaces aside).
    """

    def __init__(
        self, named: Iterable[tuple[T, Sequence[str]]], noun: str, exact: Mapping[str, T] | None = None
    ) -> None:
        self._named = [
            (item, tuple(spelt for name in names for spelt in spellings(name))) for item, names in named
        ]
        self._noun = noun
        self._exact = {" ".join(names[0].casefold().split()): item for item, names in self._named}
        self._exact |= {" ".join(name.casefold().split()): item for name, item in (exact or {}).items()}
        self._shown = {id(item): names[0] for item, names in self._named}
        self._found: dict[tuple[str, ...] | str, list[T]] = {}
        for item, names in self._named:
            for key in {key for name in names for key in (tuple(sorted(words(name))), run_together(name))}:
                self._found.setdefault(key, []).append(item)

    def find(self, name: str) -> T:
        """The one item of that name; UnknownName with the candidates or the nearest names otherwise."""
        exact, noun = self._exact.get(" ".join(name.casefold().split())), word(self._noun)
        if exact is not None:
            return exact
        asked = words(name)
        if not asked:
            raise UnknownName(say("no {noun} named", noun=noun), where=noun, todo=say("give a name"))
        items = self._found.get(tuple(sorted(asked))) or self._found.get(run_together(name)) or []
        if len(items) == 1:
            return items[0]
        items = items or [item for item, names in self._named if any({*asked} <= {*words(n)} for n in names)]
        if items:
            shown = tuple(self._shown[id(item)] for item in items)
            what = (
                say("{name!r} can mean several", name=name)
                if len(shown) > 1
                else say("{name!r} is only a part of a name", name=name)
            )
            raise UnknownName(
                what,
                where=noun,
                nearest=shown,
                fits=True,
                allowed=listed(shown),
                todo=say("name one of them"),
            )
        near = self.nearest(name)
        raise UnknownName(
            say("no {noun} is called {name!r}", noun=noun, name=name),
            where=noun,
            nearest=near,
            allowed=say("nearest: {listed}", listed=listed(near))
            if near
            else say("the names of any known {noun}", noun=noun),
            todo=say("name one of them, or give figures of your own"),
        )

    def nearest(self, name: str, count: int = 5) -> tuple[str, ...]:
        """Names of the items with the most similar name of any kind, best first, without ``name`` itself."""
        matcher = difflib.SequenceMatcher()
        matcher.set_seq2(" ".join(sorted(words(name))))
        scores: dict[str, float] = {}
        for _, names in self._named:
            best = 0.0
            for other in names:
                matcher.set_seq1(" ".join(sorted(words(other))))
                if matcher.quick_ratio() > best:
                    best = max(best, matcher.ratio())
            scores[names[0]] = best
        ranked = sorted(
            (item for item in scores.items() if item[0] != name), key=lambda item: (-item[1], item[0])
        )
        return tuple(near for near, score in ranked[:count] if score >= SIMILAR)
