"""A year of air day by day, and the daily moisture that any description of a year's air gives."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.emc import FIBRE_SATURATION_MC, equilibrium_moisture
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.wording import say

Array = NDArray[np.float64]

DAYS = 365
MONTH_LENGTHS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
MONTH_STARTS = np.concatenate([[0], np.cumsum(MONTH_LENGTHS)[:-1]])
_MONTHS = np.repeat(np.arange(12), MONTH_LENGTHS)
MID_MONTHS = MONTH_STARTS + MONTH_LENGTHS / 2


def month_of_day(day: ArrayLike) -> NDArray[np.int64]:
    """Month index 0–11 of a day of the year, 0 = 1 January; days beyond 364 wrap round."""
    if isinstance(day, int):  # one by one it is asked for most
        return _MONTHS[day % DAYS]
    return np.asarray(np.searchsorted(MONTH_STARTS, np.mod(day, DAYS), side="right") - 1, dtype=np.int64)[()]


def days_from_months(months: ArrayLike) -> Array:
    """(…, 12) monthly means → (…, 365) days: straight lines between the middles of the months, round the
    year.

    Straight lines never leave the range of the months given, so no day is drier or damper than the driest or
    dampest month. The month's own mean is kept within a few hundredths of the steps between months.
    """
    values = np.asarray(months, dtype=np.float64)
    if values.shape[-1:] != (12,):
        raise InputError(
            say("shape {shape} of monthly values", shape=values.shape), where=say("months"), allowed="(…, 12)"
        )
    day = np.arange(DAYS) + 0.5
    middles = np.concatenate([[MID_MONTHS[-1] - DAYS], MID_MONTHS, [MID_MONTHS[0] + DAYS]])
    left = np.searchsorted(middles, day, side="right") - 1
    part = (day - middles[left]) / (middles[left + 1] - middles[left])
    before, after = (left - 1) % 12, left % 12
    return np.asarray(values[..., before] * (1 - part) + values[..., after] * part)


def months_from_days(days: ArrayLike) -> Array:
    """(…, 365) days → (…, 12) means of the calendar months."""
    values = np.asarray(days, dtype=np.float64)
    if values.shape[-1:] != (DAYS,):
        raise InputError(
            say("shape {shape} of daily values", shape=values.shape), where=say("days"), allowed="(…, 365)"
        )
    return np.asarray(np.add.reduceat(values, MONTH_STARTS, axis=-1) / MONTH_LENGTHS)


@dataclass(frozen=True, eq=False)
class DailyAir:
    """365 daily means of the air around a piece, 1 January first.

    Parameters
    ----------
    name : what it is called in reports.
    temperature_c, rh_percent : (365,) daily means, °C and percent.
    basis : what the days rest on.

    Raises
    ------
    InputError : not 365 days, or a value out of range, naming the day.

    >>> DailyAir("shop", np.full(365, 20.0), np.full(365, 50.0), "own assumption").rh_percent.shape
    (365,)
    """

    name: str
    temperature_c: Array
    rh_percent: Array
    basis: str

    def __post_init__(self) -> None:
        for field in ("temperature_c", "rh_percent"):
            values = np.array(getattr(self, field), dtype=np.float64)
            if values.shape != (DAYS,):
                raise InputError(
                    say("{shape} values of {field}", shape=values.shape, field=field),
                    where=say("daily air {name!r}", name=self.name),
                    allowed=say("365 days, 1 January first"),
                    todo=say("average longer records over the years, leave 29 February out"),
                )
            values.flags.writeable = False
            object.__setattr__(self, field, values)
        try:
            equilibrium_moisture(self.temperature_c, self.rh_percent)
        except InputError as error:
            raise InputError(
                say("{where}: {what} (day 0 is 1 January)", where=error.where, what=error.what),
                where=say("daily air {name!r}", name=self.name),
                allowed=error.allowed,
                todo=error.todo,
            ) from None

    @property
    def moisture(self) -> Array:
        """(365,) equilibrium moisture content of each day, percent."""
        return np.asarray(equilibrium_moisture(self.temperature_c, self.rh_percent), dtype=np.float64)

    @property
    def months(self) -> Year:
        """The same air as a ``Year`` of twelve monthly means."""
        return Year(
            self.name,
            tuple(months_from_days(self.temperature_c).tolist()),
            tuple(months_from_days(self.rh_percent).tolist()),
            say("{basis}; monthly means of daily values", basis=self.basis),
        )


Air = Year | DailyAir


def daily_moisture(air: Air | ArrayLike) -> Array:
    """(365,) equilibrium moisture of each day of a ``Year`` or ``DailyAir``, or of 12 or 365 moistures
    given.
    """
    if isinstance(air, Year):
        return days_from_months(air.moisture)
    if isinstance(air, DailyAir):
        return air.moisture
    values = np.asarray(air, dtype=np.float64)
    if values.shape not in ((12,), (DAYS,)):
        raise InputError(
            say("shape {shape} of moistures", shape=values.shape),
            where=say("year"),
            allowed=say("12 months or 365 days of moisture, a Year, or a DailyAir"),
        )
    bad = ~((values >= 0) & (values <= FIBRE_SATURATION_MC))
    if bad.any():
        at = int(np.argmax(bad))
        raise InputError(
            say("{values:g} % is not a moisture that air can give", values=values[at]),
            where=say("month {number}", number=at + 1)
            if values.size == 12
            else say("day {number}", number=at + 1),
            allowed=say("0 to {fibre_saturation:g} %", fibre_saturation=FIBRE_SATURATION_MC),
            todo=say("give equilibrium moisture content, not relative humidity"),
        )
    return days_from_months(values) if values.size == 12 else values


def mean_temperature(air: Air) -> float:
    """Mean temperature over the year, °C, each month weighted by its length."""
    if isinstance(air, Year):
        return float(np.average(air.temperature_c, weights=MONTH_LENGTHS))
    return float(np.mean(air.temperature_c))


def mean_humidity(air: Air) -> float:
    """Mean relative humidity over the year, percent, each month weighted by its length."""
    if isinstance(air, Year):
        return float(np.average(air.rh_percent, weights=MONTH_LENGTHS))
    return float(np.mean(air.rh_percent))
