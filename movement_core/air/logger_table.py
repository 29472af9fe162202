"""Find the table in a logger's text: encoding, cells, heading, and which column holds what.

Loggers write several lines before the heading, commas or semicolons or tabs between cells, decimal points or
commas, and the unit in the heading only. What cannot be settled is asked for, never guessed.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from movement_core.errors import FileError, InputError
from movement_core.wording import say

DELIMITERS = (";", "\t", ",")
HEADING_SEARCH_LINES = 300
COLUMN_WORDS = ("date", "time", "temperature", "humidity")

_CONTROL = re.compile(r"[\x00-\x08\x0e-\x1f\x7f]")
_DATE_CELL = re.compile(
    r"^\s*(\d{1,4}[-/. ](\d{1,2}|[^\W\d_]{3,9}\.?)[-/. ]\s*\d{1,4}|[^\W\d_]{3,9}\.? \d{1,2},? \d{2,4})"
)
_TIME_CELL = re.compile(r"\d{1,2}[:.h]\d{2}")
_FAHRENHEIT = re.compile(r"(°|º|deg\.?\s*|\(|\[|_|\s)f(\b|\)|\]|$)|fahrenheit")
_CELSIUS = re.compile(r"(°|º|deg\.?\s*|\(|\[|_|\s)c(\b|\)|\]|$)|℃|celsius")


@dataclass(frozen=True)
class Layout:
    """Where things are in a logger's table.

    Attributes
    ----------
    delimiter : between cells. heading_line : 1-based, 0 = none. first_line : 1-based first reading.
    date, time, temperature, humidity : 0-based columns; time is None when the date's cell holds it too.
    half_day : 0-based column of a separate AM/PM, or None.
    fahrenheit : whether temperatures are in °F. decimal_comma : whether numbers may carry one.
    """

    delimiter: str
    heading_line: int
    first_line: int
    date: int
    time: int | None
    temperature: int
    humidity: int
    half_day: int | None
    fahrenheit: bool
    decimal_comma: bool


def decode(data: str | bytes, name: str) -> str:
    """Text of a logger file; binary junk raises ``FileError`` with line and column."""
    if isinstance(data, bytes):
        if data.startswith((b"\xff\xfe", b"\xfe\xff")):
            encodings: tuple[str, ...] = ("utf-16",)
        else:
            encodings = ("utf-8-sig", "cp1252")
        for encoding in encodings:
            try:
                text = data.decode(encoding)
                break
            except UnicodeDecodeError:
                continue
        else:
            text = data.decode("latin-1")
    elif isinstance(data, str):
        text = data.removeprefix("\ufeff")
    else:
        raise InputError(
            say("a value of type {name}", name=type(data).__name__),
            where=name,
            allowed=say("the file's text or its bytes"),
        )
    junk = _CONTROL.search(text)
    if junk:
        line = text.count("\n", 0, junk.start()) + 1
        column = junk.start() - (text.rfind("\n", 0, junk.start()) + 1) + 1
        raise FileError(
            say("byte {byte} is no text: this is not a logger's text file", byte=f"{ord(junk[0]):#04x}"),
            where=say("{name}, line {line}, column {column}", name=name, line=line, column=column),
            allowed=say("text with one reading a line"),
            todo=say("export the readings as CSV or text"),
        )
    if not text.strip():
        raise FileError(
            say("the file is empty"),
            where=say("{name}, line 1, column 1", name=name),
            allowed=say("one reading a line"),
        )
    return text


def cells_of(line: str, delimiter: str) -> list[str]:
    """The cells of one line; quoted cells may hold the delimiter."""
    if '"' not in line:
        return line.split(delimiter)
    try:
        return next(csv.reader([line], delimiter=delimiter))
    except (csv.Error, StopIteration):
        return line.replace('"', "").split(delimiter)


def lines_of(text: str) -> Iterator[str]:
    """Lines without their ends, one at a time, so that a long file is never held twice."""
    start, size = 0, len(text)
    while start < size:
        end = text.find("\n", start)
        end = size if end < 0 else end
        yield text[start:end].rstrip("\r")
        start = end + 1


def to_number(cell: str, decimal_comma: bool) -> float | None:
    """The number in a cell that may carry a unit or a status letter after it; None if there is none."""
    try:
        return float(cell)
    except ValueError:
        pass
    text = cell.strip().replace("−", "-")
    if decimal_comma:
        text = text.replace(",", ".")
    match = re.fullmatch(
        r"([-+]?\d+(?:\.\d+)?)\s*(?:°\s*[CF]|℃|[CF]|%\s*(?:RH|r\.?F\.?)?|RH)?", text, re.IGNORECASE
    )
    return float(match[1]) if match else None


def looks_like_date(cell: str) -> bool:
    return bool(_DATE_CELL.match(cell)) or bool(re.fullmatch(r"\s*(\d{5}(\.\d+)?|\d{10}|\d{13})\s*", cell))


def find_layout(
    text: str, name: str, columns: Mapping[str, int | str] | None, temperature_unit: str | None
) -> Layout:
    """Settle the layout of a logger's text, or say what is missing and which keyword settles it."""
    if temperature_unit is not None and temperature_unit.upper() not in ("C", "F"):
        raise InputError(f"{temperature_unit!r}", where=say("temperature_unit"), allowed=say("'C' or 'F'"))
    head = []
    for line in lines_of(text):
        head.append(line)
        if len(head) >= HEADING_SEARCH_LINES:
            break
    delimiter, first = _first_reading(head, name)
    cells = [cell.strip() for cell in cells_of(head[first], delimiter)]
    named = {given.strip().lower() for given in (columns or {}).values() if isinstance(given, str)}
    heading_line, heading = _heading(head, first, delimiter, named)
    chosen = _choose_columns(cells, heading, columns, name, first + 1)
    if len(heading) >= 3 and len(cells) > len(heading) and delimiter == "," and all(heading):
        extra = [cell for cell in cells[len(heading) :] if cell]
        if extra and all(cell.isdigit() for cell in extra):
            raise FileError(
                say(
                    "{count} cells under {count2} headings: commas part the cells and the decimals alike",
                    count=len(cells),
                    count2=len(heading),
                ),
                where=say(
                    "{name}, line {first}, column {count}", name=name, first=first + 1, count=len(heading) + 1
                ),
                allowed=say("one meaning for the comma"),
                todo=say("export with semicolons, or with decimal points"),
            )
    fahrenheit = _unit(heading, chosen["temperature"], cells, temperature_unit, name, heading_line)
    half_day = None
    for index, cell in enumerate(cells):
        if re.fullmatch(r"[ap]\.?m\.?", cell, re.IGNORECASE):
            half_day = index
    return Layout(
        delimiter,
        heading_line,
        _first_dated(head, heading_line, first, delimiter, chosen["date"]) + 1,
        chosen["date"],
        chosen.get("time"),
        chosen["temperature"],
        chosen["humidity"],
        half_day,
        fahrenheit,
        delimiter != "," or '"' in head[first],
    )


def _first_reading(head: list[str], name: str) -> tuple[str, int]:
    """(delimiter, 0-based line) of the first line that holds a date and two numbers, and so does the next."""
    for index, line in enumerate(head):
        for delimiter in DELIMITERS:
            if _is_reading(line, delimiter) and (
                index + 1 >= len(head) or not head[index + 1].strip() or _dated(head[index + 1], delimiter)
            ):
                return delimiter, index
    raise FileError(
        say("no line in the first {count} holds a date and two numbers", count=len(head)),
        where=say("{name}, line 1, column 1", name=name),
        allowed=say("a date, a time, a temperature and a humidity a line, parted by comma, semicolon or tab"),
        todo=say("export the readings as CSV or text"),
    )


def _first_dated(head: list[str], heading_line: int, first: int, delimiter: str, date: int) -> int:
    """0-based line with which the readings begin: damaged ones below the heading have a date, and are told of."""
    for index in range(heading_line if heading_line else first, first):
        cells = cells_of(head[index], delimiter)
        if len(cells) > date and looks_like_date(cells[date]):
            return index
    return first


def _dated(line: str, delimiter: str) -> bool:
    return any(looks_like_date(cell) for cell in cells_of(line, delimiter))


def _is_reading(line: str, delimiter: str) -> bool:
    cells = cells_of(line, delimiter)
    if len(cells) < 3:
        return False
    dates = [looks_like_date(cell) for cell in cells]
    numbers = [to_number(cell, True) is not None and not date for cell, date in zip(cells, dates)]
    return any(dates) and sum(numbers) >= 2


def _heading(head: list[str], first: int, delimiter: str, named: set[str]) -> tuple[int, list[str]]:
    """(1-based line, cells in lower case) of the last line before the readings that names temperature or
    humidity, or has all the headings that were named.
    """
    for index in range(first - 1, -1, -1):
        cells = [cell.strip().lower() for cell in cells_of(head[index], delimiter)]
        speaks = any(_means(cell, "temperature") or _means(cell, "humidity") for cell in cells)
        if len(cells) >= 2 and (speaks or (named and named <= set(cells))):
            return index + 1, cells
    return 0, []


def _means(cell: str, what: str) -> bool:
    """Whether a heading speaks of this quantity, in the languages loggers speak most."""
    if what == "temperature":
        named = "temp" in cell or bool(re.match(r"^t\b|^[°º][cf]$|^celsius|^fahrenheit", cell))
        return named and not re.search(r"dew|tau|ros[ée]e|roc[ií]o|wet|point", cell)
    if what == "humidity":
        named = bool(re.search(r"\brh\b|%rh|hum|feucht|r\.\s?h|r\.\s?f|\brf\b|umid|vocht|fukt", cell))
        return named and not re.search(r"abs|g/m|g/kg|mix", cell)
    if what == "date":
        return bool(re.search(r"dat|fecha|timestamp|dato|päivä", cell))
    return (
        bool(re.search(r"time|zeit|heure|hora|\bora\b|tijd|\btid\b|clock", cell)) and "timestamp" not in cell
    )


def _choose_columns(
    cells: list[str], heading: list[str], columns: Mapping[str, int | str] | None, name: str, line: int
) -> dict[str, int]:
    chosen: dict[str, int] = {}
    for what, given in (columns or {}).items():
        if what not in COLUMN_WORDS:
            raise InputError(
                say("no column is called {what!r}", what=what),
                where=say("columns"),
                allowed=", ".join(COLUMN_WORDS),
            )
        if isinstance(given, str):
            if given.strip().lower() not in heading:
                raise InputError(
                    say("no heading {given!r}", given=given),
                    where=say("{name}, columns", name=name),
                    allowed=", ".join(heading) or say("numbers, 1 = first"),
                )
            chosen[what] = heading.index(given.strip().lower())
        elif not 1 <= given <= len(cells):
            raise InputError(
                say("column {given}", given=given),
                where=say("{name}, columns", name=name),
                allowed=say("1 to {count}", count=len(cells)),
            )
        else:
            chosen[what] = given - 1
    dates = [index for index, cell in enumerate(cells) if looks_like_date(cell)]
    if "date" not in chosen:
        named = [
            index
            for index in dates
            if index < len(heading) and (_means(heading[index], "date") or _means(heading[index], "time"))
        ]
        strict = [index for index in (named or dates) if _DATE_CELL.match(cells[index])]
        chosen["date"] = (strict or named or dates)[0]
    if "time" not in chosen and not _TIME_CELL.search(_after_date(cells[chosen["date"]])):
        times = [
            i for i, cell in enumerate(cells) if i != chosen["date"] and re.match(r"^\d{1,2}[:.h]\d{2}", cell)
        ]
        named = [i for i in times if i < len(heading) and _means(heading[i], "time")]
        clock = [i for i in times if ":" in cells[i]]
        if named or clock:
            chosen["time"] = (named or clock)[0]
    for what in ("temperature", "humidity"):
        if what in chosen:
            continue
        fits = [index for index, cell in enumerate(heading) if _means(cell, what) and index < len(cells)]
        if len(fits) != 1:
            several = (
                say("{count} columns could be the {what}", count=len(fits), what=say(what))
                if fits
                else say("no heading names the {what}", what=say(what))
            )
            raise FileError(
                several,
                where=say("{name}, line {line}", name=name, line=line),
                allowed=say("headings: {names}", names=", ".join(heading))
                if heading
                else say("a heading line"),
                todo=say("say which: columns={{'{what}': its number, 1 = first}}", what=what),
            )
        chosen[what] = fits[0]
    return chosen


def _after_date(cell: str) -> str:
    match = _DATE_CELL.match(cell)
    return cell[match.end() :] if match else cell


def _unit(
    heading: list[str], column: int, cells: list[str], given: str | None, name: str, heading_line: int
) -> bool:
    if given is not None:
        return given.upper() == "F"
    for text in ((heading[column] if column < len(heading) else ""), cells[column].lower()):
        fahrenheit, celsius = (bool(pattern.search(" " + text)) for pattern in (_FAHRENHEIT, _CELSIUS))
        if fahrenheit != celsius:
            return fahrenheit
    raise FileError(
        say("nothing says whether temperatures are in °C or °F"),
        where=say(
            "{name}, line {value}, column {column}", name=name, value=heading_line or 1, column=column + 1
        ),
        allowed=say("a unit in the heading or the cell"),
        todo=say("give temperature_unit='C' or temperature_unit='F'"),
    )
