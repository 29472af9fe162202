"""Words in the order in which they are drawn, for a drawing library that puts letter after letter from left to right.

Scripts written from right to left are turned round, and Arabic letters take the forms of their places in a word. That
serves names; it is no full treatment of text in two directions (brackets and numbers inside such a name stay simple).
"""

from __future__ import annotations

import re
import unicodedata
from functools import cache

_RIGHT = ("R", "AL")
_FORMS = {"<isolated>": 0, "<final>": 1, "<initial>": 2, "<medial>": 3}


def visual(text: str) -> str:
    """The text as drawn from left to right, its base direction being left to right.

    >>> visual("a \\u05d0\\u05d1 b") == "a \\u05d1\\u05d0 b"
    True
    """
    if not any(unicodedata.bidirectional(c) in _RIGHT for c in text):
        return text
    pieces = []
    start = 0
    while start < len(text):
        if unicodedata.bidirectional(text[start]) not in _RIGHT:
            pieces.append(text[start])
            start += 1
            continue
        end = last = start
        while end < len(text) and unicodedata.bidirectional(text[end]) != "L":
            if unicodedata.bidirectional(text[end]) in (*_RIGHT, "NSM", "EN", "AN"):
                last = end
            end += 1
        pieces.append(_turned(text[start : last + 1]))
        start = last + 1
    return "".join(pieces)


def _turned(run: str) -> str:
    """A run from right to left, with accents behind their letters and numbers the right way round."""
    clusters = re.findall(r"\d+|.[\u0300-\u036f\u0591-\u05c7\u064b-\u065f\u0670]*", _shaped(run))
    return "".join(reversed(clusters))


def _shaped(run: str) -> str:
    """Arabic letters in the forms of their places: alone, at the end, at the start, in the middle."""
    forms = _forms()
    letters = list(run)
    shaped = []
    for i, c in enumerate(letters):
        mine = forms.get(c)
        if mine is None:
            shaped.append(c)
            continue
        before = forms.get(_neighbour(letters, i, -1))
        after = forms.get(_neighbour(letters, i, 1))
        joins_before = before is not None and 2 in before and 1 in mine
        joins_after = after is not None and 1 in after and 2 in mine
        wanted = 3 if joins_before and joins_after else 1 if joins_before else 2 if joins_after else 0
        shaped.append(mine.get(wanted, c))
    return "".join(shaped)


def _neighbour(letters: list[str], place: int, step: int) -> str:
    """The letter before or behind, accents left out."""
    place += step
    while 0 <= place < len(letters) and unicodedata.category(letters[place]) == "Mn":
        place += step
    return letters[place] if 0 <= place < len(letters) else ""


@cache
def _forms() -> dict[str, dict[int, str]]:
    """Letter → its forms, from the characters' own data (Unicode, Arabic presentation forms)."""
    found: dict[str, dict[int, str]] = {}
    for code in (*range(0xFB50, 0xFBFF), *range(0xFE70, 0xFEFD)):
        kind, _, base = unicodedata.decomposition(chr(code)).partition(" ")
        if kind in _FORMS and len(base) == 4:
            found.setdefault(chr(int(base, 16)), {})[_FORMS[kind]] = chr(code)
    return found
