"""Real places and their outdoor climate, month by month, each row with its source.

A typical climate is no measurement of a room: the rooms' own air follows through
``movement_core.air.indoor``, and a logger beats both. Where only the outdoor moisture of wood is tabulated,
the humidity is what gives it.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

from movement_core.air.daily import DailyAir
from movement_core.air.indoor import Rooms, indoor_year
from movement_core.air.moist_air import humidity_of_moisture
from movement_core.air.year import Year
from movement_core.names import NameIndex
from movement_core.sources import DERIVED, Source
from movement_core.tables import rows
from movement_core.wording import phrase, say

MONTH_COLUMNS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")


@dataclass(frozen=True)
class Place:
    """A place and its weather.

    Attributes
    ----------
    name, country : as found by ``find_place``.
    outdoor : monthly means of the air outside.
    temperature_source, humidity_source : what they rest on.
    """

    name: str
    country: str
    outdoor: Year
    temperature_source: Source
    humidity_source: Source

    def indoors(self, rooms: Rooms) -> Year:
        """The year inside rooms kept like this."""
        weather = say(
            "monthly climate: temperature {temperature}; humidity {humidity}",
            temperature=self.temperature_source.told(),
            humidity=self.humidity_source.told(),
        )
        year = indoor_year(
            self.outdoor, rooms, name=say("indoors in {name}", name=self.name), weather=weather
        )
        assert not isinstance(year, DailyAir)
        return year


@cache
def all_places() -> tuple[Place, ...]:
    """Every place of the table, by name."""
    table: dict[tuple[str, str], dict[str, tuple[tuple[float, ...], Source]]] = {}
    for row in rows("places"):
        values = tuple(float(row[month]) for month in MONTH_COLUMNS)
        source = Source(row["source"], row["locator"], row["provenance"])
        table.setdefault((row["place"], row["country"]), {})[row["quantity"]] = (values, source)
    places = []
    for (name, country), quantities in table.items():
        temperature, temperature_source = quantities["temperature_c"]
        if "rh_percent" in quantities:
            humidity, humidity_source = quantities["rh_percent"]
        else:
            moisture, source = quantities["outdoor_moisture"]
            humidity = tuple(float(rh) for rh in humidity_of_moisture(temperature, moisture))
            humidity_source = Source(
                source.title, f"{source.locator} ({source.provenance}): outdoor moisture", DERIVED
            )
        basis = f"monthly climate: temperature {temperature_source}; humidity {humidity_source}"
        places.append(
            Place(
                name,
                country,
                Year(f"outdoors in {name}", temperature, humidity, basis),
                temperature_source,
                humidity_source,
            )
        )
    return tuple(places)


@cache
def _index() -> NameIndex[Place]:
    named = []
    for place in all_places():
        region = place.country.partition(",")[0]
        named.append((place, (place.name, f"{place.name}, {place.country}", f"{place.name}, {region}")))
    return NameIndex(named, phrase("place"))


def find_place(name: str) -> Place:
    """The place of this name, with the monthly means of its weather.

    Parameters
    ----------
    name : a city or town; case, spaces, accents and the order of the words do not matter.

    Raises
    ------
    UnknownName : no place is called so, or several could be, with the nearest names.

    >>> find_place("oslo").name
    'Oslo'
    """
    return _index().find(name)
