"""What lies on a face: nothing, a finish of some coats, or something that blocks it.

A film's permeance comes from published moisture-excluding effectiveness
(``movement_core.moisture.exclusion``). A finish slows and smooths; it never changes where the wood ends up.
"""

from __future__ import annotations

import difflib
import re
from dataclasses import dataclass
from functools import cache

import numpy as np

from movement_core.errors import InputError, UnknownName
from movement_core.moisture.transport import still_air_permeance
from movement_core.sources import DERIVED, OWN, RECALLED, Source
from movement_core.tables import number, rows
from movement_core.wording import say, word

HANDBOOK_TABLE = "US Forest Products Laboratory, Wood Handbook FPL-GTR-190"
HANDBOOK_PLACE = "Table 16-3, p. 16-4"
BARE_WORDS = ("bare", "none", "unfinished", "raw")
WRAPPED_NG = 4.6  # polyethylene film 0.1 mm, ng/(Pa s m²): ASHRAE Fundamentals, permeance table (recalled)
BLOCKED_WORDS = ("blocked", "wall", "bench", "ground")
MOST_COATS = 12


@dataclass(frozen=True)
class FaceFinish:
    """What covers one face.

    Attributes
    ----------
    name : in the maker's words, such as "varnish, 3 coats", "bare", "blocked".
    film_ng : vapour permeance of the film alone, ng/(Pa s m²): ``inf`` for bare wood, 0 for a blocked face.
    source : what the permeance rests on.
    note : what the reader must know: extrapolated coats, a stand-in finish.
    """

    name: str
    film_ng: float
    source: Source
    note: str = ""

    def told(self) -> str:
        """Its name in the language that is spoken.

        >>> find_finish("varnish", 3).told()
        'varnish, 3 coats'
        """
        kind, _, coats = self.name.rpartition(", ")
        count = coats.partition(" ")[0]
        if not kind or not count.isdecimal():
            return word(self.name)
        if count == "1":
            return say("{finish}, 1 coat", finish=word(kind))
        return say("{finish}, {count} coats", finish=word(kind), count=count)

    def permeance_ng(self, still_air_ng: float | None = None) -> float:
        """Permeance of film and still air in series, ng/(Pa s m²)."""
        air = still_air_permeance() if still_air_ng is None else still_air_ng
        if self.film_ng == 0:
            return 0.0
        return 1.0 / (1.0 / air + 1.0 / self.film_ng)


BARE = FaceFinish("bare", np.inf, Source("no film", provenance=OWN))
BLOCKED = FaceFinish("blocked", 0.0, Source("no air reaches the face", provenance=OWN))
WRAPPED = FaceFinish(
    "wrapped",
    WRAPPED_NG,
    Source("ASHRAE Handbook Fundamentals", "permeance of polyethylene film 0.1 mm", RECALLED),
)


@cache
def _films() -> dict[str, dict[int, tuple[float, str]]]:
    table: dict[str, dict[int, tuple[float, str]]] = {}
    for row in rows("finish_films"):
        permeance = number(row["permeance_ng"])
        film = np.inf if permeance is None else permeance
        table.setdefault(row["finish"], {})[int(row["coats"])] = (film, row["provenance"])
    return table


@cache
def finish_words() -> dict[str, str]:
    """Every word a finish may be called by, in lower case, and the row of the table it stands for."""
    words = {row["word"]: row["finish"] for row in rows("finish_words")}
    return words | {name.lower(): name for name in _films()}


def _note_of_word(word: str) -> str:
    return next((row["note"] for row in rows("finish_words") if row["word"] == word), "")


def find_finish(name: str, coats: int | None = None) -> FaceFinish:
    """The finish of this name and number of coats.

    Coats beyond the published ones go on as the last published coat did, or in proportion where only one
    number of coats was published; the note says so.

    Raises
    ------
    UnknownName : no such finish, with the nearest words. InputError : coats missing or impossible.
    """
    word = " ".join(name.lower().split())
    if word in BARE_WORDS:
        return BARE
    if word in BLOCKED_WORDS:
        return BLOCKED
    if word == "wrapped":
        return WRAPPED
    words = finish_words()
    if word not in words:
        nearest = tuple(
            difflib.get_close_matches(word, [*words, *BARE_WORDS, *BLOCKED_WORDS, "wrapped"], n=3, cutoff=0.5)
        )
        raise UnknownName(
            say("no finish {name!r}", name=name),
            where=say("finish"),
            allowed=", ".join(["bare", "blocked", "wrapped", *(row["word"] for row in rows("finish_words"))]),
            todo=say("did you mean {names}?", names=say(" or ").join(nearest))
            if nearest
            else say("choose the one nearest in kind"),
            nearest=nearest,
        )
    if coats is None or isinstance(coats, bool) or coats != int(coats) or not 1 <= coats <= MOST_COATS:
        raise InputError(
            say("{name} without its number of coats", name=name)
            if coats is None
            else say("{name} with {coats} coats", name=name, coats=coats),
            where=say("finish"),
            allowed=say("a whole number of coats, 1 to {most_coats}", most_coats=MOST_COATS),
            todo=say("write for instance '{word} 2'", word=word),
        )
    row = words[word]
    film, provenance, note = _film(row, int(coats))
    notes = "; ".join(text for text in (_note_of_word(word), note) if text)
    label = f"{word}, {coats} coat{'s' if coats != 1 else ''}"
    source = Source(HANDBOOK_TABLE, f"{HANDBOOK_PLACE}: {row}, exclusion {provenance}", DERIVED)
    return FaceFinish(label, film, source, notes)


def _film(row: str, coats: int) -> tuple[float, str, str]:
    """(permeance, provenance, note) of a table row at this number of coats."""
    published = _films()[row]
    if coats in published:
        film, provenance = published[coats]
        return film, provenance, "" if np.isfinite(film) else say("the test saw no effect")
    counts = sorted(published)
    provenance = published[counts[-1]][1]
    if len(counts) == 1:
        (only,) = counts
        film = published[only][0] * only / coats
        return (
            film,
            provenance,
            say("only {counts} coats published: resistance taken in proportion", counts=only),
        )
    nearest = counts[-2:] if coats > counts[-1] else counts[:2]
    first, second = (1 / published[count][0] for count in nearest)
    per_coat = (second - first) / (nearest[1] - nearest[0])
    resistance = max(second + per_coat * (coats - nearest[1]), min(first, second) / 10)
    return (
        1 / resistance,
        provenance,
        say(
            "{coats} coats carried on from {nearest} and {nearest2} published",
            coats=coats,
            nearest=nearest[0],
            nearest2=nearest[1],
        ),
    )


_FINISH_TEXT = re.compile(
    r"^(?P<name>.*?)(?:[\s,]+[x×]?\s*(?P<coats>\d{1,3})\s*(?:coats?|x|×)?)?$", re.IGNORECASE
)


def read_finish(text: str) -> FaceFinish:
    """One face from words such as ``"varnish 2"``, ``"shellac 3 coats"``, ``"bare"``, ``"blocked"``."""
    match = _FINISH_TEXT.match(text.strip())
    if not match or not match["name"].strip():
        raise InputError(
            say("{text!r} is not a finish", text=text),
            where=say("finish"),
            allowed=say("a finish and its coats, such as 'varnish 2', or 'bare'"),
        )
    return find_finish(match["name"].strip(), int(match["coats"]) if match["coats"] else None)


def read_faces(text: str) -> tuple[FaceFinish, FaceFinish]:
    """(show face, back face) of a tag: ``"varnish 2"`` is on both; ``"varnish 3, back bare"`` names each."""
    faces: dict[str, FaceFinish] = {}
    for item in (part.strip() for part in text.split(",")):
        head, _, rest = item.partition(" ")
        side = head.lower() if head.lower() in ("show", "back", "both") else "both"
        words = rest if side == head.lower() else item
        if side in faces:
            raise InputError(
                say("{text!r} gives the {side} face twice", text=text, side=side),
                where=say("finish"),
                allowed=say("each face once"),
            )
        faces[side] = read_finish(words)
    if "both" not in faces and len(faces) < 2:
        raise InputError(
            say("{text!r} says nothing of the other face", text=text),
            where=say("finish"),
            allowed=say("both faces, such as 'show varnish 2, back bare'"),
            todo=say("name the other face's finish; 'bare' if it has none"),
        )
    return faces.get("show", faces.get("both", BARE)), faces.get("back", faces.get("both", BARE))


def as_face(finish: FaceFinish | str) -> FaceFinish:
    """A finish given as itself or in words."""
    return finish if isinstance(finish, FaceFinish) else read_finish(finish)
