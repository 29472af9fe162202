"""Lengths and moistures as a maker reads them: millimetres, or inches and fractions to 1/64; safe where it matters."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from movement_core.errors import UnknownName
from movement_core.sheet.pages.model import DOWN, NEAREST, UP, Figure, Pointer
from movement_core.wording import say

MM, INCH = "mm", "inch"
UNITS = (MM, INCH)
INCH_MM = 25.4
FINEST = 64  # of an inch
STEP_MM = 0.1
SLIP = 1e-6  # a figure that hits a step exactly, but for this share of it, is not rounded on to the next
MINUS = "−"


@dataclass(frozen=True)
class Lengths:
    """Writes lengths in one unit.

    Parameters
    ----------
    units : "mm" (to a tenth) or "inch" (fractions to 1/64).

    Raises
    ------
    UnknownName : no such unit.

    >>> Lengths("inch").near(30.0, ()).shown, Lengths("inch").up(3.0, ()).shown
    ('1 3/16', '1/8')
    """

    units: str = MM

    def __post_init__(self) -> None:
        if self.units not in UNITS:
            raise UnknownName(
                say("no unit is called {units!r}", units=self.units),
                where=say("units"),
                allowed=", ".join(UNITS),
            )

    @property
    def unit(self) -> str:
        """Its sign, as it stands behind a figure."""
        return "mm" if self.units == MM else "inch"

    @property
    def step_mm(self) -> float:
        """The finest step that is shown."""
        return STEP_MM if self.units == MM else INCH_MM / FINEST

    def near(self, mm: float | None, at: Pointer) -> Figure:
        """To the nearest step."""
        return self._figure(mm, at, NEAREST)

    def up(self, mm: float | None, at: Pointer) -> Figure:
        """To the next greater step: room to leave, lengths of slots, the widest that a gap becomes."""
        return self._figure(mm, at, UP)

    def down(self, mm: float | None, at: Pointer) -> Figure:
        """To the next smaller step: the least that a gap becomes, margins."""
        return self._figure(mm, at, DOWN)

    def signed(self, mm: float | None, at: Pointer, rounding: str = NEAREST) -> Figure:
        """With its sign."""
        figure = self._figure(mm, at, rounding)
        plain = figure.shown
        return (
            figure
            if plain[:1] in (MINUS, "?", "") or plain == self._shown(0)
            else Figure("+" + plain, at, rounding)
        )

    def _figure(self, mm: float | None, at: Pointer, rounding: str) -> Figure:
        if mm is None:
            return Figure("?", at, rounding)
        steps = mm / self.step_mm
        if rounding == UP:
            count = math.ceil(steps - SLIP)
        elif rounding == DOWN:
            count = math.floor(steps + SLIP)
        else:
            count = math.floor(abs(steps) + 0.5 + SLIP) * (1 if steps >= 0 else -1)
        return Figure(self._shown(count), at, rounding)

    def _shown(self, count: int) -> str:
        sign = MINUS if count < 0 else ""
        if self.units == MM:
            return f"{sign}{abs(count) * STEP_MM:.1f}"
        whole, rest = divmod(abs(count), FINEST)
        fraction = Fraction(rest, FINEST)
        parts = [str(whole)] if whole or not rest else []
        return sign + " ".join([*parts, *([f"{fraction.numerator}/{fraction.denominator}"] if rest else [])])


def percent(value: float | None, at: Pointer, digits: int = 1) -> Figure:
    """A moisture or humidity without its sign."""
    return plain(value, at, digits)


def plain(value: float | None, at: Pointer, digits: int = 0) -> Figure:
    """A number with so many decimals."""
    if value is None:
        return Figure("?", at)
    text = f"{abs(value):.{digits}f}"
    return Figure((MINUS if value < 0 and float(text) else "") + text, at)
