"""Lengths as the user reads them: in the host's own unit schema, but never so coarse that the movement is lost."""

from __future__ import annotations

import re
from fractions import Fraction

import FreeCAD as App

OFF_MM = 0.06  # what a figure may be off, and
OFF_PART = 0.1  # the part of it that it may be off: the host writes 0.3 mm as 0 in feet and inches
FINEST = 64  # parts of an inch that a maker's rule still shows
SMALL_INCHES = 0.125  # below it, decimals: movement is read to less than 1/64"
INCH_MM = 25.4
_UNITS_MM = {
    "mm": 1.0, "cm": 10.0, "dm": 100.0, "m": 1000.0,
    "in": 25.4, '"': 25.4, "ft": 304.8, "yd": 914.4, "thou": 0.0254,
}  # fmt: skip
_NUMBER = r"[+−-]?\d+(?:\.\d+)?"
_IN_MM = re.compile(rf"(?<![\w.])({_NUMBER}(?:(?: to | bis | × | … | – ){_NUMBER})*) mm\b")


def length_text(millimetres: float) -> str:
    """A length with its unit, as the host writes it for this user: "119.60 mm", "4 45/64\\"" … Where the host itself
    would round the movement away, with as many decimals, or as fine a fraction, as it takes."""
    text = str(App.Units.Quantity(millimetres, App.Units.Length).UserString)
    found = re.fullmatch(r"(-?[\d.,]*\d)\s*([^\d\s.,'/]+)", text)
    if found is None or found[2] not in _UNITS_MM:
        return _inches(millimetres) if re.search(r"['\"/]", text) or text.strip("-") == "0" else text
    unit_mm, number = _UNITS_MM[found[2]], found[1]
    comma = "," in number and "." not in number
    try:
        shown = float(number.replace(",", ".") if comma else number.replace(",", "")) * unit_mm
    except ValueError:
        return text
    if abs(shown - millimetres) <= _off(millimetres):
        return text
    decimals = 1
    while abs(round(millimetres / unit_mm, decimals) * unit_mm - millimetres) > _off(millimetres):
        decimals += 1
    finer = f"{millimetres / unit_mm:.{decimals}f}"
    return f"{finer.replace('.', ',') if comma else finer} {found[2]}"


def short_length(millimetres: float) -> str:
    """The same without decimals that no board keeps: tenths of a millimetre where the user reads decimals."""
    return re.sub(r"(\d[.,]\d)0+(?=\D|$)", r"\1", length_text(round(millimetres, 1)))


def lengths_in(text: str) -> str:
    """A text with its lengths in millimetres put as this user reads them; nothing changes where that is millimetres."""
    if reads_millimetres():
        return text
    return _IN_MM.sub(lambda match: re.sub(_NUMBER, _put, match[1]), text)


def reads_millimetres() -> bool:
    """Whether this user reads the size of a board in millimetres."""
    return str(App.Units.Quantity(119.6, App.Units.Length).UserString).endswith("mm")


def _put(match: re.Match[str]) -> str:
    number = match[0].replace("−", "-")
    return ("+" if number.startswith("+") else "") + length_text(float(number))


def _off(millimetres: float) -> float:
    return min(OFF_MM, max(OFF_PART * abs(millimetres), 0.005))


def _inches(millimetres: float) -> str:
    """Feet, inches and fractions; small lengths in decimals of an inch."""
    inches = abs(millimetres) / INCH_MM
    sign = "-" if millimetres < 0 else ""
    if inches < SMALL_INCHES:
        text = f"{inches:.3f}"
        return f'{sign if float(text) else ""}{text}"'
    parts = round(inches * FINEST)
    feet, parts = divmod(parts, 12 * FINEST)
    whole, rest = divmod(parts, FINEST)
    words = [f"{feet}'"] if feet else []
    fraction = str(Fraction(rest, FINEST)) if rest else ""
    words += [" ".join(word for word in (str(whole) if whole or not rest else "", fraction) if word) + '"']
    return sign + " ".join(words)


def in_inches() -> bool:
    """Whether the user's unit schema writes a hand's breadth in inches or feet."""
    unit = App.Units.Quantity(100.0, App.Units.Length).getUserPreferred()[2]
    return unit in ("in", "ft", '"', "'", "thou", "mil")


def set_step_mm() -> float:
    """What this user sets a gap in: a tenth of a millimetre, or a 64th of an inch."""
    return INCH_MM / FINEST if in_inches() else 0.1


def set_text(millimetres: float) -> str:
    """A length that is set with a rule or feeler gauges: inches always as a fraction, however small."""
    if not in_inches():
        return short_length(millimetres)
    parts = round(abs(millimetres) / INCH_MM * FINEST)
    whole, rest = divmod(parts, FINEST)
    words = [str(whole)] if whole or not rest else []
    words += [str(Fraction(rest, FINEST))] if rest else []
    return ("-" if millimetres < 0 and parts else "") + " ".join(words) + '"'
