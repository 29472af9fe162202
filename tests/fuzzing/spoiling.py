"""Spoiling: what goes wrong with a text, with bytes, with numbers. Every choice comes from the generator handed in."""

from __future__ import annotations

import random

CHARACTERS = (
    "\0\t\n\r \"'(),;:=-+*/\\{}[]<>&%#@|~\u00a0\u00b0\u2028\u202e\ufeff\ud800äß中𝔘0123456789.eExXyYzZ"
)
NUMBERS = (
    "0", "-0", "1", "-1", "0.5", "9", "45", "90", "100", "1e3", "1e-300", "1e308", "1e309", "-1e309", "nan", "inf",
    "-inf", "٣", "1_000", "1,5", "1.5.2", "0x10", "+7", "½", "12 %", "12 mm", "", " ", "99999999999999999999", "1e",
)  # fmt: skip
PIECES = (
    "wood{", "}", "{", ";;", "\n\n", '"', '""', "\ufeff", "\0", "=1+1", "%s%n", "../../etc/passwd", "a" * 3000,
    "(" * 99,
    "[" * 3000, "9" * 5000, "-" * 200, ",", ";", "\t", "\r", "\r\n", "None", "null", "true", "NaN", "Infinity", "1e999",
)  # fmt: skip


def number(rng: random.Random) -> str:
    """A number as people and programs write them, or nearly."""
    if rng.random() < 0.4:
        return rng.choice(NUMBERS)
    value = rng.choice((rng.uniform(-5, 5), rng.uniform(0, 100), 10 ** rng.uniform(-12, 12)))
    return rng.choice((f"{value:g}", f"{value:.2f}", f"{value:.1f}".replace(".", ","), str(int(value))))


def text(rng: random.Random, whole: str) -> str:
    """A text with none to four things wrong with it."""
    for _ in range(rng.choice((0, 1, 1, 2, 4))):
        here, there = sorted(rng.randint(0, len(whole)) for _ in range(2))
        how = rng.randrange(8)
        if how == 0:
            whole = whole[:here] + rng.choice(PIECES) + whole[here:]
        elif how == 1:
            whole = whole[:here] + whole[there:]
        elif how == 2:
            whole = whole[:here]
        elif how == 3:
            whole = whole[:here] + rng.choice(CHARACTERS) + whole[here + 1 :]
        elif how == 4:
            whole = whole[:there] + whole[here:there] * rng.choice((1, 2, 20)) + whole[there:]
        elif how == 5:
            whole = whole.swapcase()
        elif how == 6:
            whole = whole[:here] + number(rng) + whole[here + 1 :]
        else:
            whole = whole[:here] + "".join(rng.choice(CHARACTERS) for _ in range(5)) + whole[here:]
    return whole[:200_000]


def data(rng: random.Random, whole: bytes) -> bytes:
    """Bytes with one to four things wrong with them."""
    for _ in range(rng.choice((1, 1, 2, 4))):
        here, there = sorted(rng.randint(0, len(whole)) for _ in range(2))
        how = rng.randrange(7)
        if how == 0:
            whole = whole[:here]
        elif how == 1 and whole:
            at = rng.randrange(len(whole))
            whole = whole[:at] + bytes([whole[at] ^ (1 << rng.randrange(8))]) + whole[at + 1 :]
        elif how == 2:
            whole = whole[:here] + rng.randbytes(rng.choice((1, 4, 40))) + whole[here:]
        elif how == 3:
            whole = whole[:here] + whole[there:]
        elif how == 4:
            whole = whole[:there] + whole[here:there] + whole[there:]
        elif how == 5:
            wide = rng.choice((1, 2, 4, 8))
            filled = rng.choice((b"\0", b"\xff", b"\x7f", b"\x80")) * wide
            whole = whole[:here] + filled + whole[here + wide :]
        elif mark := rng.choice([b"PK\1\2", b"PK\3\4", b"PK\5\6"]):  # just behind a heading of an archive
            at = whole.find(mark)
            if at >= 0:
                at += rng.randrange(4, 46)
                whole = whole[:at] + rng.choice((b"\0", b"\xff", b"\1", rng.randbytes(2))) + whole[at + 1 :]
    return whole
