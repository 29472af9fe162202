"""A maker's own year: twelve months from a small CSV table.

The heading names ``temperature_c`` (or ``temperature_f``) and ``rh_percent``; a column ``month`` may stand beside
them and is then checked. Comma or semicolon between cells; with semicolons a decimal comma is understood.
"""

from __future__ import annotations

from movement_core.air.year import MONTHS, Year
from movement_core.errors import InputError
from movement_core.tables import read_cells
from movement_core.wording import say

TEMPERATURES = ("temperature_c", "temperature_f")
PLAUSIBLE_INDOOR_C = (-30.0, 50.0)  # °F readings under a °C heading lie mostly above it


def is_months_table(text: str) -> bool:
    """Whether a text begins with the heading of a table of months."""
    first = text.lstrip("\ufeff").splitlines()[:1]
    columns = {
        cell.strip().strip('"').lower() for line in first for cell in line.replace(";", ",").split(",")
    }
    return "rh_percent" in columns and not columns.isdisjoint(TEMPERATURES)


def year_from_table(text: str, name: str) -> Year:
    """A ``Year`` from CSV text.

    Raises
    ------
    InputError : a heading or a cell that cannot be used, with its line.
    """
    lines = text.lstrip("\ufeff").splitlines()
    delimiter = ";" if lines and ";" in lines[0] else ","
    reader = read_cells(lines, delimiter, name)
    columns = [cell.strip().lower() for cell in next(reader, (1, []))[1]]
    temperature = next((column for column in TEMPERATURES if column in columns), None)
    if temperature is None or "rh_percent" not in columns:
        raise InputError(
            say("the heading lacks the two columns of a year"),
            where=say("{name}, line 1", name=name),
            allowed=say("temperature_c (or temperature_f) and rh_percent; month may stand beside them"),
            todo=say("write the heading in the first line"),
        )
    temperatures: list[float] = []
    humidities: list[float] = []
    for line, row in reader:
        if not any(cell.strip() for cell in row):
            continue
        where = say("{name}, line {line}", name=name, line=line)
        if len(row) > len(columns):
            raise InputError(
                say("{count} cells under a heading of {count2}", count=len(row), count2=len(columns)),
                where=where,
                todo=say(
                    "with commas between cells a decimal comma cuts a number in two: use semicolons or points"
                ),
            )
        cells = dict(zip(columns, (cell.strip() for cell in row)))
        _check_month(cells.get("month", ""), len(temperatures), where)
        degrees = _number(cells.get(temperature, ""), temperature, where, decimal_comma=delimiter == ";")
        celsius = degrees if temperature == "temperature_c" else (degrees - 32) / 1.8
        if not PLAUSIBLE_INDOOR_C[0] <= celsius <= PLAUSIBLE_INDOOR_C[1]:
            low, high = PLAUSIBLE_INDOOR_C
            raise InputError(
                say("{degrees:g} is no temperature of a room", degrees=degrees),
                where=say("{where}, column {temperature}", where=where, temperature=temperature),
                allowed=say("{low:g} to {high:g} °C", low=low, high=high),
                todo=say("head the column temperature_f if the figures are °F"),
            )
        temperatures.append(celsius)
        humidities.append(
            _number(cells.get("rh_percent", ""), "rh_percent", where, decimal_comma=delimiter == ";")
        )
    if humidities and max(humidities) <= 1.0:
        raise InputError(
            say("no humidity above {humidities:g} %", humidities=max(humidities)),
            where=say("{name}, column rh_percent", name=name),
            allowed=say("percent, 0 to 100"),
            todo=say("write 40 for 40 %, not 0.40"),
        )
    return Year(name, tuple(temperatures), tuple(humidities), say("the maker's own months"))


def _number(cell: str, column: str, where: str, decimal_comma: bool) -> float:
    try:
        return float(cell.replace(",", ".") if decimal_comma else cell)
    except ValueError:
        raise InputError(
            say("{cell!r} is not a number", cell=cell),
            where=say("{where}, column {column}", where=where, column=column),
        ) from None


def _check_month(cell: str, index: int, where: str) -> None:
    if not cell or index >= 12:
        return
    month = MONTHS[index]
    if cell.lower() not in (month.lower(), month[:3].lower(), str(index + 1), f"{index + 1:02d}"):
        raise InputError(
            say("{cell!r} stands where {month} should", cell=cell, month=say(month)),
            where=say("{where}, column month", where=where),
            allowed=say("January to December in order, as names or as 1 to 12"),
        )
