"""Indoor years of our own naming, for a maker who has not measured the place the piece will live in.

Each is a typical year of the northern half of the world, with its basis (``data/year_presets.csv``);
``half_a_year_later`` gives the southern one. A logger in the room beats any of them.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

from movement_core.air.year import Year
from movement_core.names import NameIndex
from movement_core.sources import Source
from movement_core.tables import rows
from movement_core.wording import phrase


@dataclass(frozen=True)
class YearPreset:
    """A year with the moisture its basis speaks of.

    Attributes
    ----------
    year : the twelve months.
    other_names : further names it is found by.
    stated_mc : (low, high) moisture content in percent that the basis states, which the months stay within.
    source : the basis once more, with how surely it is known.
    """

    year: Year
    other_names: tuple[str, ...]
    stated_mc: tuple[float, float]
    source: Source


@cache
def all_presets() -> tuple[YearPreset, ...]:
    """Every indoor year, with the moisture range its basis states."""
    presets = []
    for row in rows("year_presets"):
        temperature, rh = (
            tuple(map(float, row[column].split())) for column in ("temperature_c", "rh_percent")
        )
        presets.append(
            YearPreset(
                Year(row["name"], temperature, rh, f"{row['basis']} ({row['provenance']})"),
                tuple(name for name in row["other_names"].split("; ") if name),
                (float(row["mc_low"]), float(row["mc_high"])),
                Source(row["basis"], "", row["provenance"]),
            )
        )
    return tuple(presets)


def all_years() -> tuple[Year, ...]:
    """Every indoor year by name, in the order of the table.

    >>> "museum" in [year.name for year in all_years()]
    True
    """
    return tuple(preset.year for preset in all_presets())


@cache
def _index() -> NameIndex[Year]:
    return NameIndex([(p.year, (p.year.name, *p.other_names)) for p in all_presets()], phrase("indoor year"))


def find_year(name: str) -> Year:
    """The indoor year of that name; case, spaces, commas and word order do not matter.

    Raises
    ------
    UnknownName : no year is called so, or several could be: with the nearest names.

    >>> find_year("Museum").rh_percent[0]
    47.0
    """
    return _index().find(name)


def half_a_year_later(year: Year) -> Year:
    """The same year in the other half of the world: July's air in January."""
    return replace(
        year,
        name=f"{year.name}, southern",
        temperature_c=year.temperature_c[6:] + year.temperature_c[:6],
        rh_percent=year.rh_percent[6:] + year.rh_percent[:6],
    )
