"""Several places one after another, with dates: shop, transport, home."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import DAYS, Air, daily_moisture, days_from_months
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.wording import say

Array = NDArray[np.float64]

LONGEST_DAYS = 100 * DAYS


@dataclass(frozen=True)
class Stay:
    """A stay in one place.

    Attributes
    ----------
    name : what the place is called. air : its year.
    begins, ends : first day there, and the day it leaves (not counted).
    show, back : finish of each face meanwhile ("bare", "varnish 2", "blocked", "wrapped" …).
    """

    name: str
    air: Air
    begins: datetime.date
    ends: datetime.date
    show: str = "bare"
    back: str = "bare"

    @property
    def days(self) -> int:
        return (self.ends - self.begins).days


@dataclass(frozen=True)
class Stays:
    """Stays that follow one another without a gap.

    Raises
    ------
    InputError : none, dates out of order, a gap or an overlap, a stay of no day, more than a hundred years.
    """

    stays: tuple[Stay, ...]

    def __post_init__(self) -> None:
        object.__setattr__(self, "stays", tuple(self.stays))
        if not self.stays:
            raise InputError(say("no stay"), where=say("stays"), allowed=say("at least one"))
        for stay in self.stays:
            if stay.days < 1:
                raise InputError(
                    say("ends {ends} but begins {begins}", ends=stay.ends, begins=stay.begins),
                    where=say("stay {name!r}", name=stay.name),
                    allowed=say("an end after the beginning"),
                )
        for before, after in pairwise(self.stays):
            if before.ends != after.begins:
                kind = say("a gap") if before.ends < after.begins else say("an overlap")
                raise InputError(
                    say(
                        "{kind}: {name!r} ends {ends}, {name2!r} begins {begins}",
                        kind=kind,
                        name=before.name,
                        ends=before.ends,
                        name2=after.name,
                        begins=after.begins,
                    ),
                    where=say("stays"),
                    allowed=say("each stay begins on the day the one before ends"),
                    todo=say("say where the piece was on the days between")
                    if kind == "a gap"
                    else say("mend the dates"),
                )
        if sum(stay.days for stay in self.stays) > LONGEST_DAYS:
            raise InputError(
                say("more than a hundred years"), where=say("stays"), allowed=say("up to 36 500 days")
            )

    @property
    def first(self) -> datetime.date:
        return self.stays[0].begins

    @property
    def dates(self) -> list[datetime.date]:
        """Every day from the first to the last."""
        count = (self.stays[-1].ends - self.first).days
        return [self.first + datetime.timedelta(days=i) for i in range(count)]

    @property
    def moisture(self) -> Array:
        """(days,) equilibrium moisture of the air on each date, percent."""
        return np.concatenate([stay_moisture(stay) for stay in self.stays])


def day_of_year(date: datetime.date) -> int:
    """Place of a date in a year of 365 days, 0 = 1 January; 29 February is 28 February again."""
    day = 28 if (date.month, date.day) == (2, 29) else date.day
    return datetime.date(2001, date.month, day).timetuple().tm_yday - 1


def stay_moisture(stay: Stay) -> Array:
    """(days,) equilibrium moisture of the air on each day of a stay, percent."""
    return daily_moisture(stay.air)[_places(stay)]


def stay_midnights(stay: Stay) -> Array:
    """(days + 1,) the same at each midnight from the first to the last, halfway between the days it parts."""
    daily, places = daily_moisture(stay.air), _places(stay)
    noons = np.concatenate([[daily[places[0] - 1]], daily[places], [daily[(places[-1] + 1) % DAYS]]])
    return np.asarray((noons[1:] + noons[:-1]) / 2)


def stay_temperature(stay: Stay) -> Array:
    """(days,) temperature of each day of a stay, °C."""
    return _days(stay.air, "temperature_c")[_places(stay)]


def stay_humidity(stay: Stay) -> Array:
    """(days,) relative humidity of each day of a stay, percent."""
    return _days(stay.air, "rh_percent")[_places(stay)]


def _days(air: Air, field: str) -> Array:
    values = getattr(air, field)
    return days_from_months(values) if isinstance(air, Year) else np.asarray(values)


def _places(stay: Stay) -> NDArray[np.int64]:
    return np.array([day_of_year(stay.begins + datetime.timedelta(days=i)) for i in range(stay.days)])


def steady_air(name: str, temperature_c: float, rh_percent: float, basis: str = "held steady") -> Year:
    """A year in which nothing changes: a climate-controlled van, a museum case."""
    return Year(name, (temperature_c,) * 12, (rh_percent,) * 12, basis)


def in_sequence(stays: Sequence[Stay]) -> Stays:
    """Stays checked to follow one another."""
    return Stays(tuple(stays))
