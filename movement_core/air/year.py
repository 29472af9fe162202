"""A year of air, month by month, and the moisture that wood in balance with it would have.

A ``Year`` is the climate a part lives in, as twelve monthly means. How late and how little of it the wood
follows is the business of ``movement_core.moisture``.
"""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.air.emc import equilibrium_moisture
from movement_core.errors import InputError
from movement_core.wording import say

MONTHS = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip


def told_date(date: datetime.date) -> str:
    """A date as people write it, in the language spoken: the month in words, so that no one swaps day and month.

    >>> told_date(datetime.date(2026, 3, 15))
    '15 March 2026'
    """
    return say("{day} {month} {year}", day=date.day, month=say(MONTHS[date.month - 1]), year=date.year)


@dataclass(frozen=True)
class Year:
    """Twelve monthly means of the air around the piece.

    Parameters
    ----------
    name : what the year is called in reports.
    temperature_c : 12 monthly mean temperatures, °C.
    rh_percent : 12 monthly mean relative humidities, percent.
    basis : what the months rest on: a standard, a table, a logger, or "own assumption".

    Raises
    ------
    InputError : not 12 months, or a value out of range, naming the month.

    >>> Year("shop", (20,) * 12, (50,) * 12, "own assumption").rh_percent[0]
    50.0
    """

    name: str
    temperature_c: tuple[float, ...]
    rh_percent: tuple[float, ...]
    basis: str

    def __post_init__(self) -> None:
        for field, unit in (("temperature_c", "temperatures"), ("rh_percent", "humidities")):
            months = tuple(float(value) for value in getattr(self, field))
            object.__setattr__(self, field, months)
            if len(months) != 12:
                raise InputError(
                    say("{count} monthly {unit} given", count=len(months), unit=unit),
                    where=say("year {name!r}", name=self.name),
                    allowed=say("exactly 12, January to December"),
                    todo=say("give one mean a month"),
                )
        for month, t, rh in zip(MONTHS, self.temperature_c, self.rh_percent):
            try:
                equilibrium_moisture(t, rh)
            except InputError as error:
                raise InputError(
                    error.what,
                    where=say("year {name!r}, {month}", name=self.name, month=month),
                    allowed=error.allowed,
                    todo=error.todo,
                ) from None

    @property
    def moisture(self) -> NDArray[np.float64]:
        """(12,) equilibrium moisture content of each month, percent."""
        return np.asarray(equilibrium_moisture(self.temperature_c, self.rh_percent), dtype=np.float64)

    @property
    def driest_month(self) -> int:
        """Index 0–11 of the month in which wood in balance with the air is driest."""
        return int(np.argmin(self.moisture))

    @property
    def wettest_month(self) -> int:
        """Index 0–11 of the month in which wood in balance with the air is wettest."""
        return int(np.argmax(self.moisture))


def year_of_months(name: str, months: Sequence[tuple[float, float]], basis: str = "") -> Year:
    """A ``Year`` from twelve ``(temperature °C, relative humidity %)`` pairs, January first."""
    told = basis or say("the maker's own months")
    return Year(name, tuple(t for t, _ in months), tuple(rh for _, rh in months), told)
