"""From a logger's readings to days, and from days to a year."""

from __future__ import annotations

import datetime
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from movement_core.air.daily import DAYS, Air, DailyAir, days_from_months, month_of_day
from movement_core.air.emc import equilibrium_moisture
from movement_core.air.logger import LoggerRecord
from movement_core.air.logger_review import LoggerFinding
from movement_core.air.year import MONTHS, Year
from movement_core.errors import InputError
from movement_core.wording import say, word

Array = NDArray[np.float64]

SHARE_OF_A_DAY = 0.75  # of its hours with readings make a day (own)
LONGEST_STEP_HOURS = 6.0  # a logger that reads more seldom does not know a day
DAYS_OF_A_MONTH = 20  # days that make a month known (own)
UNIX_EPOCH = datetime.date(1970, 1, 1)


@dataclass(frozen=True, eq=False)
class LoggedDays:
    """Daily means of a logger's record.

    Attributes
    ----------
    first : date of the first day.
    temperature_c, rh_percent : (N,) means of each day's hourly means, nan for a day with too few hours.
    hours : (N,) hours of each day that have readings.
    findings : those of the record and the days left out.
    """

    name: str
    first: datetime.date
    temperature_c: Array
    rh_percent: Array
    hours: NDArray[np.int64]
    findings: tuple[LoggerFinding, ...]

    @property
    def moisture(self) -> Array:
        """(N,) equilibrium moisture of each day, percent; nan for a missing day."""
        known = np.isfinite(self.temperature_c)
        result = np.full(self.temperature_c.shape, np.nan)
        result[known] = equilibrium_moisture(self.temperature_c[known], self.rh_percent[known])
        return result

    @property
    def dates(self) -> list[datetime.date]:
        """The date of each day."""
        return [self.first + datetime.timedelta(days=i) for i in range(self.hours.size)]


def logged_days(record: LoggerRecord) -> LoggedDays:
    """Resample readings to days: mean of hourly means, so that uneven steps do not weigh.

    A day with readings in fewer than three quarters of the hours that this logger's steps allow is missing
    (nan), and the findings count such days.
    """
    hour = record.seconds // 3600
    starts = np.concatenate([[0], np.nonzero(np.diff(hour))[0] + 1])
    counts = np.diff(np.concatenate([starts, [hour.size]]))
    day = hour[starts] // 24
    index = day - day[0]
    size = int(index[-1]) + 1
    hours = np.bincount(index, minlength=size)
    step = float(np.median(np.diff(record.seconds))) / 3600 if record.seconds.size > 1 else 1.0
    needed = SHARE_OF_A_DAY * 24 / min(max(step, 1.0), LONGEST_STEP_HOURS)
    means = []
    for values in (record.temperature_c, record.rh_percent):
        hourly = np.add.reduceat(values, starts) / counts
        total = np.bincount(index, weights=hourly, minlength=size)
        means.append(np.where(hours >= needed, total / np.maximum(hours, 1), np.nan))
    missing = int((hours < needed).sum())
    findings = record.findings
    if missing:
        findings += (
            LoggerFinding(
                "few",
                0,
                0,
                say(
                    "{missing} of {size} days have readings in fewer than {needed:.0f} hours",
                    missing=missing,
                    size=size,
                    needed=needed,
                ),
            ),
        )
    first = UNIX_EPOCH + datetime.timedelta(days=int(day[0]))
    return LoggedDays(record.name, first, means[0], means[1], hours.astype(np.int64), findings)


def logged_year(days: LoggedDays, *, complete_with: Air | None = None) -> DailyAir:
    """A year from logged days: like days of several years averaged, single missing days filled by straight
    lines.

    Parameters
    ----------
    complete_with : another year for months with fewer than 20 known days; without it such months are an
        error.

    The basis of the result says what was logged, filled and taken over.
    """
    total = np.zeros((2, DAYS))
    count = np.zeros(DAYS)
    for i, date in enumerate(days.dates):
        if not np.isfinite(days.temperature_c[i]) or (date.month, date.day) == (2, 29):
            continue
        place = datetime.date(2001, date.month, date.day).timetuple().tm_yday - 1
        total[:, place] += days.temperature_c[i], days.rh_percent[i]
        count[place] += 1
    known = count > 0
    month = month_of_day(np.arange(DAYS))
    missing = [m for m in range(12) if known[month == m].sum() < DAYS_OF_A_MONTH]
    if missing and complete_with is None:
        raise InputError(
            say("too few logged days in {names}", names=", ".join(word(MONTHS[m]) for m in missing)),
            where=days.name,
            allowed=say("at least {days_of_a_month} days a month", days_of_a_month=DAYS_OF_A_MONTH),
            todo=say("log longer, or name a year to complete it with: complete_with=…"),
        )
    other = None if complete_with is None else _as_days(complete_with)
    taken = np.isin(month, missing)
    values = []
    for i in range(2):
        row = np.where(known, total[i] / np.maximum(count, 1), np.nan)
        if other is not None:
            row = np.where(taken, other[i], row)
        places = np.nonzero(np.isfinite(row))[0]
        # twice round, so that a gap over New Year is filled from both its sides
        round_places = np.concatenate([places - DAYS, places, places + DAYS])
        values.append(np.interp(np.arange(DAYS), round_places, np.tile(row[places], 3)))
    filled = int((~known & ~taken).sum())
    basis = say("logger, {count} days of the year", count=int(known.sum())) + (
        say(", {filled} filled between", filled=filled) if filled else ""
    )
    if missing and complete_with is not None:
        basis += say(
            "; {names} taken from {name}",
            names=", ".join(say(MONTHS[m]) for m in missing),
            name=complete_with.name,
        )
    return DailyAir(days.name, values[0], values[1], basis)


def _as_days(air: Air) -> tuple[Array, Array]:
    if isinstance(air, Year):
        return days_from_months(air.temperature_c), days_from_months(air.rh_percent)
    return air.temperature_c, air.rh_percent
