"""From the weather outside to the air in the rooms: warmed, moistened by living, held by machines.

Air that comes in keeps its vapour; warming it only lowers its relative humidity. Living adds some grams a
cubic metre, less as windows open in the warm season (EN ISO 13788, classes recalled). A humidifier holds a
lower limit, a dehumidifier an upper one; a cooler's coil dries the air to its own dew point.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from movement_core.air.daily import Air, DailyAir
from movement_core.air.moist_air import (
    STANDARD_PRESSURE_PA,
    VAPOUR_GAS_CONSTANT,
    WATER_TO_AIR_MASS,
    humidity_ratio,
    relative_humidity,
    saturation_pressure,
    vapour_pressure,
)
from movement_core.air.year import Year
from movement_core.errors import InputError
from movement_core.sources import told_basis
from movement_core.wording import say

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]

# EN ISO 13788 humidity classes, excess of vapour at and below 0 °C outside, g/m³, falling to none at 20 °C
# (recalled): stores 2, offices and shops 4, dwellings with few people 6, with many 8. Draughty old houses
# are nearer to 2.
DEFAULT_GAIN_G_M3 = 4.0
GAIN_FULL_AT_C, GAIN_NONE_AT_C = 0.0, 20.0

# How far the temperature runs within a day and within a month, for how long a cooler works. Own: about
# √12 standard deviations of the hours (8 to 12 a day, 7 to 21 a month) in the weather years of the
# validation tests.
WARMEST_WEATHER_C = 57.0  # highest ever measured outdoors, 56.7 °C (recalled)
DAY_SWING_C, MONTH_SWING_C = 9.0, 16.0


@dataclass(frozen=True)
class Rooms:
    """How the rooms are kept.

    Attributes
    ----------
    heating_c : held at least this warm; None = unheated. cooling_c : held at most this warm; None = not
        cooled.
    warmer_by_c : sun, people and lamps keep a house that is neither heated nor cooled above the outside by
        this.
    moisture_gain_g_m3 : vapour from living at and below 0 °C outside, g/m³, falling to none at 20 °C.
    humidifier_rh, dehumidifier_rh : lowest and highest humidity held, percent; None = no such machine.
    coil_c : temperature of the cooler's coil, which sets how dry it leaves the air.

    Raises
    ------
    InputError : a value out of its range, or a lower limit above the upper one, naming it.

    >>> Rooms(heating_c=18, humidifier_rh=40).humidifier_rh
    40
    """

    heating_c: float | None = 20.0
    cooling_c: float | None = None
    warmer_by_c: float = 2.0
    moisture_gain_g_m3: float = DEFAULT_GAIN_G_M3
    humidifier_rh: float | None = None
    dehumidifier_rh: float | None = None
    coil_c: float = 12.0

    def __post_init__(self) -> None:
        for name, low, high, unit in (
            ("heating_c", 0, 35, "°C"),
            ("cooling_c", 10, 40, "°C"),
            ("warmer_by_c", 0, 15, "°C"),
            ("moisture_gain_g_m3", 0, 20, "g/m³"),
            ("humidifier_rh", 1, 95, "%"),
            ("dehumidifier_rh", 5, 99, "%"),
            ("coil_c", 1, 25, "°C"),
        ):
            value = getattr(self, name)
            if value is not None and not low <= value <= high:
                raise InputError(
                    f"{value:g} {unit}",
                    where=say("rooms, {name}", name=name),
                    allowed=say("{low} to {high} {unit}", low=low, high=high, unit=unit),
                    todo=say("°F must be converted first") if unit == "°C" else "",
                )
        for lower, upper in (("heating_c", "cooling_c"), ("humidifier_rh", "dehumidifier_rh")):
            low_value, high_value = getattr(self, lower), getattr(self, upper)
            if low_value is not None and high_value is not None and low_value > high_value:
                raise InputError(
                    say(
                        "{lower} {low_value:g} is above {upper} {high_value:g}",
                        lower=lower,
                        low_value=low_value,
                        upper=upper,
                        high_value=high_value,
                    ),
                    where=say("rooms"),
                    allowed=say("the lower limit below the upper one"),
                )


@dataclass(frozen=True, eq=False)
class IndoorAir:
    """Air in the rooms, and what the machines did; every field of the shape of the weather given.

    Attributes
    ----------
    temperature_c, rh_percent : the rooms' air.
    humidity_ratio_kg : kg/kg.
    humidified, dehumidified, cooled : where a machine worked.
    condensing : where even the rooms' air could not hold its vapour: water on walls and panes, RH is 100.
    """

    temperature_c: Array
    rh_percent: Array
    humidity_ratio_kg: Array
    humidified: Flags
    dehumidified: Flags
    cooled: Flags
    condensing: Flags


def indoor_air(
    outdoor_temperature_c: ArrayLike,
    outdoor_rh_percent: ArrayLike,
    rooms: Rooms,
    *,
    pressure_pa: float = STANDARD_PRESSURE_PA,
    below_freezing: str = "water",
    outdoor_swing_c: float = 0.0,
) -> IndoorAir:
    """Air in the rooms for any weather: hours, days or months, any shape.

    Parameters
    ----------
    outdoor_temperature_c, outdoor_rh_percent : °C and percent; they broadcast.
    pressure_pa : air pressure, 50 000 to 110 000.
    below_freezing : "water" as weather stations report, "ice" otherwise (see ``saturation_pressure``).
    outdoor_swing_c : how far the temperature runs within each step, from lowest to highest: 0 for hours. A
        cooler then works, and dries, for the part of the step that is too warm.

    Months in give months out within 0.8 % moisture of the hourly way, within 2.1 % where a cooler works
    part of the time (validation tests).
    """
    if not 5e4 <= pressure_pa <= 1.1e5:
        raise InputError(
            say("{pressure_pa:g} Pa", pressure_pa=pressure_pa),
            where=say("air pressure"),
            allowed=say("50 000 to 110 000 Pa"),
        )
    outside, rh = np.broadcast_arrays(
        np.asarray(outdoor_temperature_c, dtype=np.float64), np.asarray(outdoor_rh_percent, dtype=np.float64)
    )
    if outside.size and float(np.nanmax(outside)) > WARMEST_WEATHER_C:
        at = int(np.nanargmax(outside))
        raise InputError(
            say("{flat:g} °C outdoors", flat=outside.flat[at]),
            where=say("outdoor temperature, value {at}", at=at + 1),
            allowed=say("up to {warmest_weather:g} °C", warmest_weather=WARMEST_WEATHER_C),
            todo=say("if these are °F, convert them first"),
        )
    ratio = np.asarray(humidity_ratio(outside, rh, pressure_pa, below_freezing=below_freezing))
    free = outside + rooms.warmer_by_c
    inside: Array = np.asarray(free if rooms.heating_c is None else np.maximum(free, rooms.heating_c))
    cooling: Array = np.zeros(outside.shape, dtype=np.float64)
    if rooms.cooling_c is not None:
        above = free - rooms.cooling_c
        share = 0.5 + above / outdoor_swing_c if outdoor_swing_c > 0 else (above > 0) * 1.0
        cooling = np.asarray(np.clip(share, 0.0, 1.0), dtype=np.float64)
        inside = np.asarray(np.minimum(inside, rooms.cooling_c))
    taper = np.clip((GAIN_NONE_AT_C - outside) / (GAIN_NONE_AT_C - GAIN_FULL_AT_C), 0.0, 1.0)
    gain_pa = rooms.moisture_gain_g_m3 * taper / 1000 * VAPOUR_GAS_CONSTANT * (inside + 273.15)
    vapour = np.asarray(vapour_pressure(ratio, pressure_pa)) + gain_pa
    saturated = np.asarray(saturation_pressure(inside))
    coil = np.asarray(saturation_pressure(rooms.coil_c))
    vapour = vapour + cooling * (np.minimum(vapour, coil) - vapour)
    humidified = np.zeros(outside.shape, dtype=bool)
    dehumidified = np.zeros(outside.shape, dtype=bool)
    if rooms.dehumidifier_rh is not None:
        most = saturated * rooms.dehumidifier_rh / 100
        dehumidified = vapour > most
        vapour = np.minimum(vapour, most)
    if rooms.humidifier_rh is not None:
        least = saturated * rooms.humidifier_rh / 100
        humidified = vapour < least
        vapour = np.maximum(vapour, least)
    condensing = vapour > saturated
    vapour = np.minimum(vapour, saturated)
    ratio = WATER_TO_AIR_MASS * vapour / (pressure_pa - vapour)
    humidity = np.where(condensing, 100.0, np.minimum(relative_humidity(inside, ratio, pressure_pa), 100.0))
    return IndoorAir(inside, humidity, ratio, humidified, dehumidified, cooling > 0, condensing)


def _describe(rooms: Rooms) -> str:
    words = [
        say("unheated")
        if rooms.heating_c is None
        else say("heated to {heating:g} °C", heating=rooms.heating_c)
    ]
    if rooms.cooling_c is not None:
        words.append(say("cooled to {cooling:g} °C", cooling=rooms.cooling_c))
    if rooms.humidifier_rh is not None:
        words.append(say("humidified to {humidifier:g} %", humidifier=rooms.humidifier_rh))
    if rooms.dehumidifier_rh is not None:
        words.append(say("dried to {dehumidifier:g} %", dehumidifier=rooms.dehumidifier_rh))
    return ", ".join(
        [*words, say("living adds {moisture_gain:g} g/m³ in frost", moisture_gain=rooms.moisture_gain_g_m3)]
    )


def indoor_year(
    outdoor: Air, rooms: Rooms, *, name: str = "", weather: str = "", below_freezing: str = "water"
) -> Year | DailyAir:
    """The rooms' year for the outdoor year: months in, months out; days in, days out.

    ``weather``: what the outdoor year rests on, where its own basis does not tell it in the language spoken.
    """
    swing = DAY_SWING_C if isinstance(outdoor, DailyAir) else MONTH_SWING_C
    air = indoor_air(
        outdoor.temperature_c, outdoor.rh_percent, rooms, below_freezing=below_freezing, outdoor_swing_c=swing
    )
    wet = (
        say(
            "; water condenses in {count} of {size} steps",
            count=int(air.condensing.sum()),
            size=air.condensing.size,
        )
        if air.condensing.any()
        else ""
    )
    basis = say(
        "rooms {rooms}; weather: {weather}{wet}",
        rooms=_describe(rooms),
        weather=weather or told_basis(outdoor.basis),
        wet=wet,
    )
    label = name or say("indoors, {name}", name=outdoor.name)
    if isinstance(outdoor, DailyAir):
        return DailyAir(label, air.temperature_c, air.rh_percent, basis)
    return Year(label, tuple(air.temperature_c.tolist()), tuple(air.rh_percent.tolist()), basis)
