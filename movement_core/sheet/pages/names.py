"""Names that users wrote, made fit for paper: nothing in them moves, hides or turns the words round them."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable

from movement_core.sheet.pages.measure import shortened_to, width_em

OPEN, CLOSE = "\u2068", "\u2069"  # first strong isolate, pop isolate
_JOINERS = "\u200c\u200d"  # letters of some scripts need them
NAME_EM = 26.0  # a name longer than so many em in running text loses its middle
MOST_LETTERS = 400  # of one text; a longer one loses its middle
_STEMS = (0.65, 0.35)  # shares of a shortened name kept from its start and its end


def clean(text: str) -> str:
    """The text on one line, without characters that steer the flow of text; what is taken out shows as its code.

    >>> clean("door\\u202etop\\n2")
    'door\\\\u202etop 2'
    """
    return "".join(_clean_letter(c) for c in re.sub(r"[\n\r\t\u2028\u2029]+", " ", text))


def _clean_letter(c: str) -> str:
    kind = unicodedata.category(c)
    if c in _JOINERS or c == " " or kind[0] not in "CZ" or kind == "Zs":
        return c
    if kind == "Co":
        return "\ufffd"
    return f"\\u{ord(c):04x}"


def isolated(name: str, most_em: float = NAME_EM) -> str:
    """A name to stand among other words: cleaned, cut to a length, and marked as a text of its own direction."""
    return f"{OPEN}{middle_out(clean(name), most_em)}{CLOSE}"


def whole(name: str) -> str:
    """The same, uncut, where there is room for all of it."""
    return isolated(name, float(MOST_LETTERS))


def middle_out(text: str, most_em: float) -> str:
    """A text that is too long without its middle: the start names it, the end tells it from its likes."""
    if width_em(text) <= most_em:
        return text
    start = shortened_to(text, _STEMS[0] * most_em)
    end = shortened_to(text[::-1], _STEMS[1] * most_em)[::-1]
    while end and unicodedata.combining(end[0]):  # an accent does not begin a text
        end = end[1:]
    return f"{start}…{end}"


def sentence(text: str, names: Iterable[str] = ()) -> str:
    """A sentence from the report, cleaned, with the names in it marked and cut."""
    found = sorted({name for name in names if name and name in text}, key=len, reverse=True)
    if not found:
        return clean(text)
    # One pass over the text: a name inside a longer one is part of that.
    pattern = re.compile("|".join(r"(?<!\w)" * (name[0].isalnum()) + re.escape(name) for name in found))
    pieces, last = [], 0
    for match in pattern.finditer(text):
        pieces += [clean(text[last : match.start()]), isolated(match[0])]
        last = match.end()
    return "".join([*pieces, clean(text[last:])])


def bare(text: str) -> str:
    """A text without the marks round its names."""
    return text.replace(OPEN, "").replace(CLOSE, "")
