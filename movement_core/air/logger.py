"""Read what a temperature and humidity logger wrote.

Text in, never a path. Nothing is guessed: an order of day and month that the file does not settle, or a
missing unit, is an error that names the keyword to settle it. Nothing is mended silently: every line left
out and every gap, repeat, jump and stuck sensor is a finding with its line.
"""

from __future__ import annotations

from array import array
from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from movement_core.air.logger_review import LoggerFinding, review
from movement_core.air.logger_table import Layout, cells_of, decode, find_layout, lines_of, to_number
from movement_core.air.logger_time import ORDERS, DateFields, seconds_of, settle_order, split_date
from movement_core.errors import FileError, InputError
from movement_core.wording import say

Array = NDArray[np.float64]

TEMPERATURE_RANGE_C = (-30.0, 70.0)  # what a room, a shed, a van or an attic can have
WORST_UNREADABLE = 0.2  # more lines than this that cannot be read: it is not this kind of file
FINDINGS_A_KIND = 50  # written out one by one; the rest are counted
ROOM_CANNOT_BE_C = 45.0  # median above this cannot be °C of a room


@dataclass(frozen=True, eq=False)
class LoggerRecord:
    """Readings in order of time.

    Attributes
    ----------
    name : of the file, for messages.
    seconds : (N,) whole seconds since 1 January 1970, in the logger's own clock, strictly rising.
    temperature_c, rh_percent : (N,) °C and percent. lines : (N,) line of the file.
    findings : what was left out, mended or is odd. layout : where things were in the file.
    date_order : "ymd", "dmy" or "mdy".
    """

    name: str
    seconds: NDArray[np.int64]
    temperature_c: Array
    rh_percent: Array
    lines: NDArray[np.int64]
    findings: tuple[LoggerFinding, ...]
    layout: Layout
    date_order: str


@dataclass
class _Rows:
    """Readings as they come off the file, and the lines that could not be read."""

    date: array[int] = field(default_factory=lambda: array("l"))
    second: array[int] = field(default_factory=lambda: array("l"))
    temperature: array[float] = field(default_factory=lambda: array("d"))
    humidity: array[float] = field(default_factory=lambda: array("d"))
    line: array[int] = field(default_factory=lambda: array("l"))
    dates: list[DateFields | int] = field(default_factory=list)
    date_lines: list[int] = field(default_factory=list)
    unreadable: list[LoggerFinding] = field(default_factory=list)
    unreadable_count: int = 0

    def refuse(self, line: int, column: int, what: str) -> None:
        self.unreadable_count += 1
        if len(self.unreadable) < FINDINGS_A_KIND:
            self.unreadable.append(LoggerFinding("left out", line, column, what))


def read_logger(
    data: str | bytes,
    *,
    name: str = "logger",
    date_order: str | None = None,
    temperature_unit: str | None = None,
    columns: Mapping[str, int | str] | None = None,
) -> LoggerRecord:
    """Read a logger's text.

    Parameters
    ----------
    data : the file's text or bytes.
    name : what to call it in messages.
    date_order : "ymd", "dmy" or "mdy"; needed only where the file does not settle it.
    temperature_unit : "C" or "F"; needed only where neither heading nor cells name it.
    columns : where "date", "time", "temperature", "humidity" are: number (1 = first) or heading; needed
        only where the heading does not tell.

    Raises
    ------
    FileError : not a logger's text, or something it leaves open; with line and column and what to do.
    InputError : an impossible keyword.
    """
    if date_order is not None and date_order not in ORDERS:
        raise InputError(
            say("date_order {date_order!r}", date_order=date_order),
            where=name,
            allowed=say("'ymd', 'dmy' or 'mdy'"),
        )
    text = decode(data, name)
    layout = find_layout(text, name, columns, temperature_unit)
    rows = _read_rows(text, layout)
    total = len(rows.line) + rows.unreadable_count
    if rows.unreadable_count > WORST_UNREADABLE * total:
        first = rows.unreadable[0]
        raise FileError(
            say(
                "{unreadable_count} of {total} lines cannot be read; the first: {what}",
                unreadable_count=rows.unreadable_count,
                total=total,
                what=first.what,
            ),
            where=say(
                "{name}, line {line}, column {column}", name=name, line=first.line, column=first.column
            ),
            allowed=say(
                "at most {worst_unreadable:.0f} % damaged lines", worst_unreadable=100 * WORST_UNREADABLE
            ),
            todo=say("check that this is the logger's own export, whole and undamaged"),
        )
    order, ordinals = _settle(rows, date_order, name)
    return _record(rows, order, ordinals, layout, name)


def _read_rows(text: str, layout: Layout) -> _Rows:
    rows = _Rows()
    seen: dict[str, tuple[int, str]] = {}
    places: dict[DateFields | int, int] = {}
    clocks: dict[tuple[str, str], int] = {}
    needed = max(layout.date, layout.time or 0, layout.temperature, layout.humidity, layout.half_day or 0)
    separate = layout.time is not None
    number = 0
    for line in lines_of(text):
        number += 1
        if number < layout.first_line or not line.strip():
            continue
        cells = cells_of(line, layout.delimiter)
        if len(cells) <= needed:
            rows.refuse(
                number,
                len(cells),
                say(
                    "{count} cells where {needed} are needed: {strip!r}",
                    count=len(cells),
                    needed=needed + 1,
                    strip=line.strip()[:40],
                ),
            )
            continue
        cell = cells[layout.date]
        found = seen.get(cell) if separate else None  # a date alone stands on every line of its day
        if found is None:
            split = split_date(cell)
            if split is None:
                rows.refuse(number, layout.date + 1, say("{strip!r} is no date", strip=cell.strip()[:30]))
                continue
            place = places.get(split[0])
            if place is None:
                place = places[split[0]] = len(rows.dates)
                rows.dates.append(split[0])
                rows.date_lines.append(number)
            found = (place, split[1])
            if separate:
                seen[cell] = found
        clock = cells[layout.time] if layout.time is not None else found[1]
        half = cells[layout.half_day] if layout.half_day is not None else ""
        second = clocks.get((clock, half))
        if second is None:
            second = seconds_of(clock, half)
            if second is not None:
                clocks[clock, half] = second  # at most one entry for each second of a day
        if second is None:
            rows.refuse(
                number,
                (layout.time or layout.date) + 1,
                say("{strip!r} is no time of day", strip=clock.strip()[:30]),
            )
            continue
        values = []
        for column in (layout.temperature, layout.humidity):
            value = to_number(cells[column], layout.decimal_comma)
            if value is None or not -1e6 < value < 1e6:
                rows.refuse(
                    number, column + 1, say("{strip!r} is no reading", strip=cells[column].strip()[:30])
                )
                break
            values.append(value)
        if len(values) == 2:
            rows.date.append(found[0])
            rows.second.append(second)
            rows.temperature.append(values[0])
            rows.humidity.append(values[1])
            rows.line.append(number)
    return rows


def _settle(rows: _Rows, date_order: str | None, name: str) -> tuple[str, NDArray[np.int64]]:
    """(order, ordinal of each distinct date, −1 where it is no date in that order)."""
    ordinals = np.full(len(rows.dates), -1, dtype=np.int64)
    open_dates = [(i, date) for i, date in enumerate(rows.dates) if not isinstance(date, int)]
    for i, date in enumerate(rows.dates):
        if isinstance(date, int):
            ordinals[i] = date
    order = date_order or "ymd"
    if open_dates:
        order, settled = settle_order(
            [date for _, date in open_dates], [rows.date_lines[i] for i, _ in open_dates], date_order, name
        )
        for (i, _), day in zip(open_dates, settled):
            ordinals[i] = -1 if day is None else day
    return order, ordinals


def _record(rows: _Rows, order: str, ordinals: NDArray[np.int64], layout: Layout, name: str) -> LoggerRecord:
    day = ordinals[np.frombuffer(rows.date, dtype=f"i{rows.date.itemsize}").astype(np.int64)]
    seconds = (day - 719163) * 86400 + np.frombuffer(rows.second, dtype=f"i{rows.second.itemsize}").astype(
        np.int64
    )
    temperature, rh = np.array(rows.temperature), np.array(rows.humidity)
    lines = np.frombuffer(rows.line, dtype=f"i{rows.line.itemsize}").astype(np.int64)
    findings = list(rows.unreadable)
    if rows.unreadable_count > len(findings):
        findings.append(
            LoggerFinding(
                "left out",
                0,
                0,
                say(
                    "and {unreadable_count} more lines unread",
                    unreadable_count=rows.unreadable_count - len(findings),
                ),
            )
        )
    if layout.fahrenheit:
        temperature = (temperature - 32) / 1.8
    _refuse_wrong_units(temperature, rh, layout, name, int(lines[0]))
    keep = np.ones(day.size, dtype=bool)
    for bad, what, column in (
        (day < 0, say("no such date"), layout.date),
        (~((rh >= 0) & (rh <= 100)), say("humidity outside 0 to 100 %"), layout.humidity),
        (
            ~((temperature >= TEMPERATURE_RANGE_C[0]) & (temperature <= TEMPERATURE_RANGE_C[1])),
            say(
                "temperature outside {temperature_range:g} to {temperature_range2:g} °C",
                temperature_range=TEMPERATURE_RANGE_C[0],
                temperature_range2=TEMPERATURE_RANGE_C[1],
            ),
            layout.temperature,
        ),
    ):
        count = int(bad.sum())
        if count > WORST_UNREADABLE * bad.size:
            raise FileError(
                say("{count} of {size} readings have a {what}", count=count, size=bad.size, what=what),
                where=say(
                    "{name}, line {lines}, column {column}",
                    name=name,
                    lines=lines[bad.argmax()],
                    column=column + 1,
                ),
                allowed=say("readings of the air in a room, shed or van"),
                todo=say("check which column is which and the unit: columns=…, temperature_unit=…"),
            )
        findings += [
            LoggerFinding("left out", int(line), column + 1, what) for line in lines[bad][:FINDINGS_A_KIND]
        ]
        if count > FINDINGS_A_KIND:
            findings.append(
                LoggerFinding(
                    "left out",
                    0,
                    column + 1,
                    say("{what}: {count} more", what=what, count=count - FINDINGS_A_KIND),
                )
            )
        keep &= ~bad
    seconds, temperature, rh, lines = seconds[keep], temperature[keep], rh[keep], lines[keep]
    seconds, temperature, rh, lines, more = review(seconds, temperature, rh, lines, name, FINDINGS_A_KIND)
    return LoggerRecord(name, seconds, temperature, rh, lines, (*findings, *more), layout, order)


def _refuse_wrong_units(temperature_c: Array, rh: Array, layout: Layout, name: str, line: int) -> None:
    middle = float(np.median(temperature_c))
    where = say(
        "{name}, line {line}, column {temperature}",
        name=name,
        line=line,
        temperature=layout.temperature + 1,
    )
    if not layout.fahrenheit and middle > ROOM_CANNOT_BE_C:
        raise FileError(
            say("the middle reading is {middle:.0f} °C: these look like °F", middle=middle),
            where=where,
            allowed=say("room temperatures"),
            todo=say("give temperature_unit='F' if they are, or say which column is the temperature"),
        )
    if layout.fahrenheit and middle < -10.0:
        raise FileError(
            say("the middle reading would be {middle:.0f} °C: these look like °C, not °F", middle=middle),
            where=where,
            allowed=say("room temperatures"),
            todo=say("give temperature_unit='C' if they are"),
        )
    if rh.size >= 10 and float(rh.max()) <= 1.0:
        raise FileError(
            say("no humidity is above 1: these look like fractions"),
            where=say(
                "{name}, line {line}, column {humidity}", name=name, line=line, humidity=layout.humidity + 1
            ),
            allowed=say("relative humidity in percent"),
            todo=say("multiply by 100"),
        )
