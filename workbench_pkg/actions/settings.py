"""What an analysis is asked with: the year's air, the day, and the wood's moisture today."""

from __future__ import annotations

import datetime
from dataclasses import dataclass, field
from pathlib import Path

from movement_core import Year, find_year
from movement_core.air.months_table import year_from_table
from movement_core.errors import FileError, InputError

DEFAULT_YEAR = "heated cold-winter home"


@dataclass(frozen=True)
class Settings:
    """``today_mc`` None: the wood is taken to be in step with the year on that day."""

    year: Year = field(default_factory=lambda: find_year(DEFAULT_YEAR))
    today: datetime.date = field(default_factory=datetime.date.today)
    today_mc: float | None = None


def settings_from_texts(
    year: str | None = None, today: str | None = None, today_mc: float | None = None
) -> Settings:
    """Settings from what was typed; what is None or empty is the usual year, this day, no meter.

    ``year`` is the name of one of ours or the path of a CSV file of twelve months, ``today`` YYYY-MM-DD.
    """
    chosen = year_from_text(year) if year else find_year(DEFAULT_YEAR)
    return Settings(chosen, _date(today) if today else datetime.date.today(), today_mc)


def _date(text: str) -> datetime.date:
    try:
        return datetime.date.fromisoformat(text)
    except ValueError:
        raise InputError(f"{text!r} is no date", where="date", allowed="YYYY-MM-DD") from None


def year_from_text(text: str) -> Year:
    """A year by the name of one of ours, or from a CSV file of twelve months."""
    path = Path(text)
    if path.suffix.lower() != ".csv":
        return find_year(text)
    try:
        content = path.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        raise FileError(
            f"the year's file cannot be read ({error})",
            where=text,
            todo="give a CSV file of twelve months in UTF-8",
        ) from None
    return year_from_table(content, path.name)
