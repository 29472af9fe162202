"""Dates and times as loggers write them; the order of day and month is settled by the file or asked for."""

from __future__ import annotations

import datetime
import re
from collections.abc import Sequence
from itertools import pairwise

from movement_core.air.year import told_date
from movement_core.errors import FileError
from movement_core.wording import say

ORDERS = ("ymd", "dmy", "mdy")
_ENGLISH = "jan feb mar apr may jun jul aug sep oct nov dec"
_GERMAN = "jan feb mär apr mai jun jul aug sep okt nov dez"
MONTH_NAMES = {
    name: number for names in (_ENGLISH, _GERMAN) for number, name in enumerate(names.split(), start=1)
}
EXCEL_EPOCH = datetime.date(1899, 12, 30).toordinal()
UNIX_EPOCH = datetime.date(1970, 1, 1).toordinal()
EARLIEST, LATEST = datetime.date(1970, 1, 1).toordinal(), datetime.date(2100, 1, 1).toordinal()

_NUMERIC = re.compile(r"(\d{1,4})[-/. ](\d{1,2})[-/. ] ?(\d{1,4})")
_DAY_NAME = re.compile(r"(\d{1,4})[-/. ] ?([^\W\d_]{3,9})\.?[-/. ,]+(\d{1,4})")
_NAME_DAY = re.compile(r"([^\W\d_]{3,9})\.? (\d{1,2}),? (\d{2,4})")
_TIME = re.compile(
    r"\s*T?(\d{1,2})[:.h](\d{2})(?:[:.](\d{2})(?:[.,]\d+)?)?\s*(?:([ap])\.?\s?m\.?)?\s*(Z|UTC|[-+]\d{2}:?\d{2})?\s*",
    re.IGNORECASE,
)

DateFields = tuple[
    int, int, int, int
]  # three numbers as written, and how many digits the first and last have


def split_date(cell: str) -> tuple[DateFields | int, str] | None:
    """(fields as written, or an ordinal already settled) and the rest of the cell; None if there is no
    date.
    """
    text = cell.strip()
    if match := _NUMERIC.match(text):
        first, second, third = match.groups()
        return (int(first), int(second), int(third), 10 * len(first) + len(third)), text[match.end() :]
    for pattern, day_at, month_at in ((_DAY_NAME, 1, 2), (_NAME_DAY, 2, 1)):
        if match := pattern.match(text):
            month = MONTH_NAMES.get(match[month_at].lower()[:3])
            day, year = int(match[day_at]), int(match[3])
            if len(match[day_at]) == 4:
                day, year = year, day
            settled = _ordinal(full_year(year, len(str(year))), month or 0, day)
            return (settled, text[match.end() :]) if settled is not None else None
    if re.fullmatch(r"\d{5}(\.\d+)?", text):
        days = float(text)
        seconds = round((days % 1) * 86400)
        return EXCEL_EPOCH + int(days), f"{seconds // 3600:02d}:{seconds // 60 % 60:02d}:{seconds % 60:02d}"
    if re.fullmatch(r"\d{10}|\d{13}", text):
        seconds = int(text[:10])
        clock = seconds % 86400
        return UNIX_EPOCH + seconds // 86400, f"{clock // 3600:02d}:{clock // 60 % 60:02d}:{clock % 60:02d}"
    return None


def seconds_of(text: str, half_day: str = "") -> int | None:
    """Seconds since midnight; None if this is no time of day. Empty means midnight."""
    if not text.strip(" T"):
        return 0
    match = _TIME.fullmatch(text)
    if not match:
        return None
    hour, minute, second = int(match[1]), int(match[2]), int(match[3] or 0)
    half = (match[4] or half_day.strip()[:1]).lower()
    if half in ("a", "p"):
        if not 1 <= hour <= 12:
            return None
        hour = hour % 12 + (12 if half == "p" else 0)
    if hour > 24 or minute > 59 or second > 59 or (hour == 24 and (minute or second)):
        return None
    return hour * 3600 + minute * 60 + second


def full_year(year: int, digits: int) -> int:
    """Two-digit years are of this half century before and after 2000: 70–99 are 19xx, the rest 20xx."""
    if digits > 2:
        return year
    return year + (1900 if year >= 70 else 2000)


def _ordinal(year: int, month: int, day: int) -> int | None:
    try:
        ordinal = datetime.date(year, month, day).toordinal()
    except ValueError:
        return None
    return ordinal if EARLIEST <= ordinal < LATEST else None


def in_order(fields: DateFields, order: str) -> int | None:
    """Ordinal of a date whose numbers stand in this order; None if there is no such date."""
    first, second, third, digits = fields
    first_digits, third_digits = divmod(digits, 10)
    if order == "ymd":
        if third_digits > 2:
            return None
        return _ordinal(full_year(first, first_digits), second, third)
    if first_digits > 2:
        return None
    day, month = (first, second) if order == "dmy" else (second, first)
    return _ordinal(full_year(third, third_digits), month, day)


def settle_order(
    dates: Sequence[DateFields], lines: Sequence[int], given: str | None, name: str
) -> tuple[str, list[int | None]]:
    """(order, ordinals) of the distinct dates of a file; an order that the file does not settle is asked for.

    Single dates that fit no order that the rest fits (damage) give None; the caller reports their lines.
    """
    readings = {
        order: [in_order(fields, order) for fields in dates] for order in ([given] if given else ORDERS)
    }
    counts = {order: sum(day is not None for day in days) for order, days in readings.items()}
    best = max(counts.values())
    if best < max(1, 0.8 * len(dates)):
        order = max(counts, key=lambda key: counts[key])
        bad = readings[order].index(None)
        raise FileError(
            say("{names} is no date", names="-".join(str(part) for part in dates[bad][:3]))
            + (
                say(" in the order {given!r}", given=given)
                if given
                else say(" in any order that fits the others")
            ),
            where=say("{name}, line {lines}", name=name, lines=lines[bad]),
            allowed=say("one order of year, month and day throughout"),
            todo=say("check the file, or give date_order='dmy', 'mdy' or 'ymd'"),
        )
    fitting = [order for order in readings if counts[order] == best and not _absurd(readings[order])]
    fitting = fitting or [order for order in readings if counts[order] == best]
    distinct = {tuple(readings[order]): order for order in fitting}
    if len(distinct) > 1:
        example = next(i for i in range(len(dates)) if len({readings[order][i] for order in fitting}) > 1)
        written = "/".join(str(part) for part in dates[example][:3])
        meanings = say(" or ").join(
            f"{_spoken(readings[order][example])} ({order!r})" for order in distinct.values()
        )
        steady = [order for order in distinct.values() if _steady(readings[order])]
        hint = (
            say("; only {steady!r} makes the days follow one another", steady=steady[0])
            if len(steady) == 1 and len(dates) > 1
            else ""
        )
        raise FileError(
            say(
                "{written} can be {meanings}, and no date in the file settles it{hint}",
                written=written,
                meanings=meanings,
                hint=hint,
            ),
            where=say("{name}, line {lines}", name=name, lines=lines[example]),
            allowed="; ".join(f"date_order={order!r}" for order in distinct.values()),
            todo=say("say which: give date_order"),
        )
    order = fitting[0]
    return order, readings[order]


def _spoken(ordinal: int | None) -> str:
    if ordinal is None:
        return say("no date")
    return told_date(datetime.date.fromordinal(ordinal))


def _absurd(days: Sequence[int | None]) -> bool:
    """Most dates a year or more apart: a two-digit year taken for a day."""
    known = [day for day in days if day is not None]
    steps = [abs(later - earlier) for earlier, later in pairwise(known)]
    return len(steps) > 0 and sum(step >= 300 for step in steps) > 0.5 * len(steps)


def _steady(days: Sequence[int | None]) -> bool:
    known = [day for day in days if day is not None]
    return all(abs(later - earlier) <= 2 for earlier, later in pairwise(known))
