"""The lengths within sentences, in the unit of the sheet that they stand on.

The core's sentences are templates with millimetres: ``"it grows {growth:.1f} mm"``. Told in inches, each number before
"mm" is written as a fraction, as coarse as its own decimals ask for. The least of a range is rounded down and the most
up; ``AtLeast`` and ``AtMost`` to the safe side; all others to the nearest. What a user wrote is never touched.
"""

from __future__ import annotations

import math
import re
import string
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from fractions import Fraction

from movement_core.sheet.pages.lengths import FINEST, INCH_MM, MINUS, MM, SLIP, Lengths
from movement_core.wording import AtLeast, AtMost, Fill, fill_with, filling

COARSE = 16  # parts of an inch where the sentence gives whole millimetres
THOUSANDTHS = 1000  # where it gives hundredths of one, or where a 64th would say nothing
LEAST, MOST = ("least", "low"), ("most", "high")  # names of a range's ends in the templates

_UNIT = re.compile(r" mm\b(?![²³])")
_BETWEEN = frozenset((" to ", " and ", " or ", " × ", " x ", " bis ", " und ", " oder "))
_NUMBERS = re.compile(
    r"(?<![\w.,])(\d+(?:\.\d+)?(?:(?: to | and | × | bis | und )\d+(?:\.\d+)?)*) mm\b(?![²³])"
)


@contextmanager
def lengths_told(units: str) -> Iterator[None]:
    """Everything that is said inside tells its lengths in "mm" or "inch".

    >>> from movement_core.wording import say
    >>> with lengths_told("inch"):
    ...     say("it moves {least:+.1f} to {most:+.1f} mm on {width:.0f} mm", least=-2.6, most=2.1, width=420.0)
    'it moves −7/64 to +3/32 inch on 16 9/16 inch'

    Raises
    ------
    UnknownName : no such unit.
    """
    with filling(_filler(units)):
        yield


def tell_lengths(units: str) -> None:
    """From now on, tell lengths in this unit, as far as the running context reaches (``contextvars``).

    Raises
    ------
    UnknownName : no such unit.
    """
    fill_with(_filler(units))


def _filler(units: str) -> Fill | None:
    return None if Lengths(units).units == MM else filled_in_inches


def filled_in_inches(template: str, values: Mapping[str, object]) -> str:
    """A template filled with values, its millimetres told in inches."""
    pieces = list(string.Formatter().parse(template))
    in_mm = [False] * len(pieces)
    for place in reversed(range(len(pieces) - 1)):
        following = pieces[place + 1][0]
        value = values.get(pieces[place][1] or "")
        number = isinstance(value, (int, float)) and not isinstance(value, bool)
        in_mm[place] = number and bool(_UNIT.match(following) or (following in _BETWEEN and in_mm[place + 1]))
    said: list[str] = []
    for place, (literal, name, spec, conversion) in enumerate(pieces):
        if place and in_mm[place - 1]:
            literal = _UNIT.sub(" inch", literal, count=1) if _UNIT.match(literal) else literal
        said.append(_NUMBERS.sub(_literal, literal))
        if name is None:
            continue
        if in_mm[place]:
            said.append(inches(float(values[name]), spec or "", _toward(name, values[name])))  # type: ignore[arg-type]
        else:
            field = "{" + name + ("!" + conversion if conversion else "") + (":" + spec if spec else "") + "}"
            said.append(field.format(**values))
    return "".join(said)


def inches(mm: float, spec: str = "", toward: int = 0) -> str:
    """A length in inches without its unit. ``spec``: of the number in mm. ``toward``: 1 rounds up, −1 down.

    >>> inches(3.0, ".1f", 1), inches(75.0, ".0f"), inches(0.05, ".2f")
    ('1/8', '2 15/16', '0.002')
    """
    parts = COARSE if spec.endswith(".0f") else THOUSANDTHS if spec.endswith(".2f") else FINEST
    if 0 < abs(mm) < INCH_MM / parts:
        parts = THOUSANDTHS
    steps = mm / INCH_MM * parts
    count = {1: math.ceil(steps - SLIP), -1: math.floor(steps + SLIP), 0: round(steps)}[toward]
    sign = MINUS if count < 0 else "+" if "+" in spec and count else ""
    if parts == THOUSANDTHS:
        return f"{sign}{abs(count) / THOUSANDTHS:.3f}" if count else "0"
    whole, rest = divmod(abs(count), parts)
    fraction = Fraction(rest, parts)
    words = [str(whole)] if whole or not rest else []
    return sign + " ".join([*words, *([f"{fraction.numerator}/{fraction.denominator}"] if rest else [])])


def _toward(name: str, value: object) -> int:
    if isinstance(value, AtLeast) or name in MOST:
        return 1
    return -1 if isinstance(value, AtMost) or name in LEAST else 0


def _literal(found: re.Match[str]) -> str:
    """Numbers that stand in a template itself: rules of thumb."""

    def told(one: re.Match[str]) -> str:
        return inches(float(one[0]), "" if "." in one[0] else ".0f")

    return re.sub(r"\d+(?:\.\d+)?", told, found[1]) + " inch"
