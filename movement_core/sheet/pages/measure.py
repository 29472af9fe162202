"""How wide words are before any font is at hand: to place the labels of pictures so that they do not touch.

The widths are those of DejaVu Sans, one of the widest of the usual faces, so that others fit too.
"""

from __future__ import annotations

import unicodedata
from functools import lru_cache

# Advance widths of the characters from space to tilde, hundredths of the font's size (derived from the font's table).
_PLAIN = (
    32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64,
    64, 64, 34, 34, 84, 84, 84, 53, 100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79,
    60, 79, 69, 63, 61, 73, 68, 99, 69, 61, 69, 39, 34, 39, 84, 50, 50, 61, 63, 55, 63, 62, 35, 63,
    63, 28, 28, 58, 28, 97, 63, 61, 63, 63, 41, 52, 39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84,
)  # fmt: skip
_BOLD = (
    35, 46, 52, 84, 70, 100, 87, 31, 46, 46, 52, 84, 38, 42, 38, 37, 70, 70, 70, 70, 70, 70, 70, 70,
    70, 70, 40, 40, 84, 84, 84, 58, 100, 77, 76, 73, 83, 68, 68, 82, 84, 37, 37, 77, 64, 100, 84, 85,
    73, 85, 77, 72, 68, 81, 77, 110, 77, 72, 73, 46, 37, 46, 84, 50, 50, 67, 72, 59, 72, 68, 44, 72,
    71, 34, 34, 67, 34, 104, 71, 69, 72, 72, 49, 60, 48, 71, 65, 92, 65, 65, 58, 71, 37, 71, 84,
)  # fmt: skip
_SIGNS = {"−": 0.84, "×": 0.84, "±": 0.84, "→": 0.84, "…": 1.0, "–": 0.5, "°": 0.5, "·": 0.32, "—": 1.0}
WIDE, OTHER = 1.0, 0.8  # of ideographs, and of whatever is not known
ASCENT, DESCENT = (
    0.76,
    0.24,
)  # of capitals and accents over the base line, of tails below it, by the font's size


@lru_cache(maxsize=20_000)
def width_em(text: str, bold: bool = False) -> float:
    """Width of a text on one line, in sizes of its font."""
    table = _BOLD if bold else _PLAIN
    return sum(_letter(c, table) for c in text)


def _letter(c: str, table: tuple[int, ...]) -> float:
    if " " <= c <= "~":
        return table[ord(c) - 32] / 100
    if c in _SIGNS:
        return _SIGNS[c]
    if unicodedata.combining(c) or unicodedata.category(c) in ("Cf", "Mn", "Me"):
        return 0.0
    base = unicodedata.normalize("NFKD", c)[0]
    if " " <= base <= "~" and base != c:
        return table[ord(base) - 32] / 100
    return WIDE if unicodedata.east_asian_width(c) in "WF" else OTHER


def width_mm(text: str, size_mm: float, bold: bool = False) -> float:
    """Width of a text on one line in a font of a size, mm."""
    return width_em(text, bold) * size_mm


def shortened_to(text: str, most_em: float) -> str:
    """The start of a text, as much of it as fits."""
    kept, used = [], 0.0
    for c in text:
        used += _letter(c, _PLAIN)
        if used > most_em:
            break
        kept.append(c)
    return "".join(kept)
